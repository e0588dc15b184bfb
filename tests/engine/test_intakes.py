"""Every field of every kind of question, left out, broken and changed: what is missing or wrong is said at its own field, and all counts."""

from __future__ import annotations

import copy
import re
import tomllib
from collections.abc import Callable, Iterator, Mapping
from datetime import datetime, timedelta
from typing import Any

import pytest

from evenwater.assets import resources
from evenwater.engine import (
    calibration_intake,
    chemistry_intake,
    consumption_intake,
    exchange_intake,
    intake,
    jug_intake,
    recovery_intake,
    stock_intake,
    timetable_intake,
    upkeep_intake,
)
from evenwater.engine.form import Unread
from tests.engine.asking import NOW, known

Raw = dict[str, Any]
READERS: Mapping[str, Callable[[Raw], Any]] = {
    "correction": lambda raw: intake.correction(raw, known(), NOW),
    "upkeep": lambda raw: upkeep_intake.upkeep(raw, known(), NOW),
    "exchange": lambda raw: exchange_intake.exchange(raw, known()),
    "recovery": lambda raw: recovery_intake.recovery(raw, known(), NOW),
    "jug": lambda raw: jug_intake.jug(raw, known(), NOW),
    "calibration": lambda raw: calibration_intake.calibration(raw, NOW),
    "timetable": lambda raw: timetable_intake.timetable(raw, known()),
    "stock": lambda raw: stock_intake.stock(raw, known()),
    "chemistry": lambda raw: chemistry_intake.chemistry(raw, known()),
    "consumption": lambda raw: consumption_intake.consumption(raw, known(), NOW),
}


def example(kind: str) -> Raw:
    return tomllib.loads((resources() / "questions" / f"{kind}.toml").read_text(encoding="utf-8"))


def leaves(raw: Any, path: tuple[str, ...] = ()) -> Iterator[str]:
    """Yield the path of every field; rows of a list count from 1."""
    if isinstance(raw, dict):
        for name, inner in raw.items():
            yield from leaves(inner, (*path, name))
    elif isinstance(raw, list) and raw and isinstance(raw[0], dict):
        for number, inner in enumerate(raw, start=1):
            yield from leaves(inner, (*path, str(number)))
    elif path != ("kind",):
        yield ".".join(path)


def _key(name: str) -> str | int:
    return int(name) - 1 if name.isdecimal() else name


def value_at(raw: Any, path: str) -> Any:
    for name in path.split("."):
        raw = raw[_key(name)]
    return raw


def put(raw: Raw, path: str, value: Any) -> Raw:
    """Return the question with one field changed; None leaves it out."""
    changed: Any = copy.deepcopy(raw)
    *tables, last = map(_key, path.split("."))
    place = changed
    for name in tables:
        place = place[name]
    if value is None:
        del place[last]
    else:
        place[last] = value
    return changed


def broken(value: Any) -> Any:
    """Return what cannot be taken where such a value stands."""
    return "noon" if isinstance(value, datetime) else "much"


def other(value: Any) -> Any:
    """Return another value of the same sort: a figure a tenth smaller, an instant a minute earlier, hours an hour earlier."""
    if isinstance(value, datetime):
        return value - timedelta(minutes=1)
    if isinstance(value, bool):
        return not value
    if isinstance(value, int):
        return value - 1
    if isinstance(value, list):
        return value[1:]
    if ":" in value:
        return re.sub(r"^\d\d", lambda hour: f"{int(hour[0]) - 1:02}", value)
    number = re.match(r"[0-9.]+", value)
    return f"{float(number[0]) * 0.9:.6f}{value[number.end() :]}" if number else None


def plain(path: str) -> str:
    """Return a path without the numbers of rows."""
    return ".".join(name for name in path.split(".") if not name.isdecimal())


# What each kind cannot do without, as the comments in its example say, and where it is said to be missing when not there.
_ADDITIVE = "additive.chemical additive.dissolved additive.made_up_to"
NEEDED: dict[str, str] = {
    "correction": f"system.net_volume change.parameter change.measured change.target {_ADDITIVE} pump.flow",
    "upkeep": "system.net_volume item.parameter item.daily_use item.additive.chemical item.additive.dissolved item.additive.made_up_to "
    "item.pump.flow",
    "exchange": "system.net_volume exchange.out exchange.in value.parameter value.now value.additive.chemical value.additive.dissolved "
    "value.additive.made_up_to dose.parameter dose.after_days dose.raises mixing.volume mixing.label_mass mixing.label_water "
    "mixing.label_salinity",
    "recovery": f"system.net_volume overdose.volume {_ADDITIVE}",
    "jug": f"jug.holds system.net_volume {_ADDITIVE} pump.single_dose level.at level.level refill.at refill.added line.bore line.length "
    "retest.parameter retest.expected retest.measured",
    "calibration": "pump.hours line.bore line.length run.seconds run.mass earlier.at earlier.hours earlier.flow",
    "timetable": "pump.name pump.per_day pump.flow apart.first apart.second",
    "stock": _ADDITIVE,
    "chemistry": "system.net_volume system.salinity system.temperature system.alkalinity system.ph addition.chemical addition.amount",
    "consumption": f"parameter system.net_volume {_ADDITIVE} reading.at reading.value dose.at dose.raises dose.volume exchange.at "
    "exchange.share exchange.new_water",
}
MISSING_AT = {"run.mass": "volume", "dose.volume": "raises"}
UNKNOWN_WHERE_EMPTY = {("jug", "retest.parameter"), ("consumption", "parameter")}
# What the example says that would be taken without it too: the default.
DEFAULTS: dict[str, str] = {
    "correction": "now additive.purity pump.largest_share pump.doses_per_day",
    "upkeep": "now item.pump.largest_share item.pump.doses_per_day",
    "exchange": "system.salinity system.temperature exchange.days new_water.salinity",
    "recovery": "now change.target hold.calcium signs.cloudy signs.white_film",
    "jug": "now pump.doses_per_day pump.calibration retest.kit_accuracy",
    "calibration": "now wanted pump.life cylinder.material conditions.salinity conditions.weights conditions.timing pump.name",
    "timetable": "pump.step pump.largest_share",
    "stock": "temperature additive.purity",
    "chemistry": "system.ph_scale",
    "consumption": "now kit_accuracy system.salinity system.temperature",
}
# Where any text will do: names, and what is true only when it says so.
TEXTS = {"system.name", "jug.name", "hold.calcium", "signs.cloudy", "signs.white_film", "one_at_a_time"}
TEXTS |= {"setting.outlet_above_water", "setting.jug_below_outlet"}
CODES = {
    "chemical": "unknown_chemical", "parameter": "unknown_parameter", "raises": "unknown_parameter", "quiet": "timetable_hours",
    "first": "timetable_which_pump", "second": "timetable_which_pump", "material": "unknown_choice", "ph_scale": "unknown_choice",
}  # fmt: skip


def reasons(kind: str, raw: Raw) -> list[tuple[str, str]]:
    found = READERS[kind](raw)
    return [(reason.code, reason.path) for reason in found.reasons] if isinstance(found, Unread) else []


@pytest.mark.parametrize("kind", READERS)
def test_what_is_left_out_is_missing_at_its_own_field_or_has_its_default(kind: str) -> None:
    raw = example(kind)
    whole = READERS[kind](raw)
    assert not isinstance(whole, Unread)
    needed, defaults = NEEDED[kind].split(), DEFAULTS[kind].split()
    for path in leaves(raw):
        without = put(raw, path, None)
        found = reasons(kind, without)
        if plain(path) not in needed:
            assert found == [], path
            assert (READERS[kind](without) == whole) == (plain(path) in defaults), path
            continue
        table, _, field = path.rpartition(".")
        place = f"{table}.{MISSING_AT.get(plain(path), field)}".removeprefix(".")
        code = "unknown_parameter" if (kind, plain(path)) in UNKNOWN_WHERE_EMPTY else "missing"
        # A pump without a name is no longer the one that some other is to be apart from.
        assert [each for each in found if each[0] != "timetable_which_pump"] == [(code, place)], path


@pytest.mark.parametrize("kind", READERS)
def test_what_cannot_be_read_is_said_once_at_its_own_field(kind: str) -> None:
    raw = example(kind)
    for path in leaves(raw):
        value, last = value_at(raw, path), path.rpartition(".")[2]
        if plain(path) in TEXTS or last == "name":
            continue
        quantity = (isinstance(value, str) and value[0].isdecimal() and ":" not in value) or isinstance(value, int)
        code = "not_a_time" if isinstance(value, datetime) else "not_a_number" if quantity else CODES[last]
        assert reasons(kind, put(raw, path, broken(value))) == [(code, path)], path


@pytest.mark.parametrize("kind", READERS)
def test_every_figure_counts(kind: str) -> None:
    raw = example(kind)
    whole = READERS[kind](raw)
    for path in leaves(raw):
        changed = other(value_at(raw, path))
        if changed is None or changed == value_at(raw, path) or str(changed).startswith("0.000000"):
            continue
        found = READERS[kind](put(raw, path, changed))
        assert not isinstance(found, Unread), (path, changed)
        assert found != whole, path
