"""The same question asked in any unit gives the same mL (common practice, no source: a metamorphic test)."""

from __future__ import annotations

import copy
from collections.abc import Iterator
from typing import Any

import pytest

from tests.engine.asking import answered
from tests.engine.generated import drawn
from tests.engine.reckoning import GRAVITIES, MASSES, UNITS, VOLUMES, canonical, nearly, written

Raw = dict[str, Any]
# Every fifth generated correction, so that all parameters and forms take their turn.
SOME = range(0, 300, 5)

FIELDS = {
    "system.net_volume": VOLUMES,
    "system.alkalinity": UNITS["alkalinity"],
    "system.calcium": UNITS["calcium"],
    "system.evaporation": VOLUMES,
    "change.measured": None,
    "change.target": None,
    "change.daily_use": None,
    "change.fastest_rise": None,
    "additive.dissolved": MASSES,
    "additive.made_up_to": VOLUMES,
    "additive.label.dose": VOLUMES,
    "additive.label.water": VOLUMES,
    "additive.label.raises": None,
}
READINGS = ("change.measured", "change.target")


def _holder(raw: Raw, path: str) -> tuple[Any, str]:
    *tables, field = path.split(".")
    node: Any = raw
    for table in tables:
        node = node.get(table, {})
    return node, field


def _again(raw: Raw) -> Iterator[tuple[str, str, Raw]]:
    """Yield path, unit and the question with that field in that unit; then with all fields in another unit."""
    system = raw["system"]
    water = (float(system.get("salinity", "35").split()[0]), float(system.get("temperature", "25 degC").split()[0]))
    last = copy.deepcopy(raw)
    for path, fixed in FIELDS.items():
        table, field = _holder(raw, path)
        if field not in table:
            continue
        text = table[field]
        tail = " per day" if text.endswith(" per day") else ""
        value = canonical(text, water)
        for unit in fixed or _concentrations(raw["change"]["parameter"], path):
            changed = copy.deepcopy(raw)
            target, name = _holder(changed, path)
            target[name] = written(value, unit, water, tail)
            yield path, unit, changed
        target, name = _holder(last, path)
        target[name] = written(value, unit, water, tail)
    yield "every field", "another unit", last


def _concentrations(parameter: str, path: str) -> tuple[str, ...]:
    return tuple(u for u in UNITS[parameter] if path in READINGS or u not in GRAVITIES)


@pytest.mark.parametrize("number", SOME)
def test_same_millilitres_in_any_unit(number: int) -> None:
    raw = drawn()[0][number][0]
    first = answered(raw)
    for path, unit, changed in _again(raw):
        answer, how = answered(changed), f"{path} in {unit}: {raw}"
        assert answer.set_by == first.set_by, how
        for name in ("dose_ml_per_day", "single_dose_ml", "total_ml", "lasts_days", "upkeep_ml_per_day", "per_ml"):
            figure, expected = getattr(answer, name), getattr(first, name)
            assert nearly(figure, expected) or figure == expected == 0.0, f"{name} {figure} against {expected}: {how}"
        assert answer.doses.dose_ml == first.doses.dose_ml, how


def test_every_unit_took_its_turn() -> None:
    seen = {(path, unit) for number in SOME for path, unit, _ in _again(drawn()[0][number][0])}
    expected = {
        (path, unit)
        for path, fixed in FIELDS.items()
        for unit in fixed or {u for name in UNITS for u in _concentrations(name, path)}
    }
    assert seen - {("every field", "another unit")} == expected
