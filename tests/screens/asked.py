"""Questions as a form hands them over, their outcomes, and a grid of answers over everything that can be asked."""

from __future__ import annotations

import copy
from collections.abc import Callable, Iterator, Mapping
from datetime import UTC, datetime, timedelta
from functools import cache
from typing import Any

import pytest

from evenwater.assets import resources
from evenwater.engine import intake
from evenwater.engine.catalogue import Catalogue, Chemical, Parameter, load
from evenwater.engine.correction import Answer, Refused, solve
from evenwater.engine.quantities import from_canonical
from evenwater.engine.units import KINDS
from evenwater.screens.shown import Shown

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)

BASE: dict[str, Any] = {
    "kind": "correction",
    "now": NOW,
    "system": {"name": "North frag bay", "net_volume": "340 L", "volume_uncertainty": "3 %", "salinity": "35",
               "temperature": "25 degC"},
    "change": {"parameter": "alkalinity", "measured": "6.8 dKH", "measured_at": NOW - timedelta(hours=1),
               "target": "8.4 dKH", "daily_use": "0.9 dKH per day"},
    "additive": {"chemical": "sodium carbonate anhydrous", "dissolved": "106 g", "made_up_to": "1 L"},
    "pump": {"flow": "24 mL/min", "smallest_dose": "0.5 mL", "step": "0.1 mL", "doses_per_day": 24},
}  # fmt: skip

LABEL = {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}


@cache
def catalogue() -> Catalogue:
    """Return the parameters and chemicals that ship with the product."""
    return load(resources())


def raw(changes: Mapping[str, Any]) -> dict[str, Any]:
    """Return the base question with dotted fields changed; None takes a field out."""
    made = copy.deepcopy(BASE)
    for path, value in changes.items():
        *tables, name = path.split(".")
        node = made
        for table in tables:
            node = node[table]
        if value is None:
            node.pop(name, None)
        else:
            node[name] = value
    return made


def outcome(changes: Mapping[str, Any]) -> Answer | Refused | intake.Unread:
    """Return what becomes of a question."""
    question = intake.correction(raw(changes), catalogue(), NOW)
    return question if isinstance(question, intake.Unread) else solve(question)


def answer(changes: Mapping[str, Any] | None = None) -> Answer:
    """Return the answer of a question that has one."""
    found = outcome(changes or {})
    assert isinstance(found, Answer), found
    return found


def shown_for(changes: Mapping[str, Any], zone: Any = UTC) -> Shown:
    """Return the writer of values for a question that is read, whether it is answered or refused."""
    question = intake.correction(raw(changes), catalogue(), NOW)
    assert not isinstance(question, intake.Unread), question
    return Shown(question.parameter, question.unit, question.system.water, zone)


# An ordinary reading, target and use per day of every parameter, in its display unit.
ORDINARY = {
    "alkalinity": (6.8, 8.4, 0.9), "calcium": (385.0, 430.0, 9.0), "magnesium": (1210.0, 1350.0, 3.0),
    "potassium": (350.0, 400.0, 1.0), "strontium": (6.0, 8.0, 0.05), "iodide": (0.02, 0.06, 0.002),
    "nitrate": (1.0, 5.0, 0.8), "phosphate": (0.01, 0.05, 0.01), "salinity": (32.0, 35.0, 0.1),
}  # fmt: skip

PUMPS: tuple[dict[str, Any], ...] = (
    {"pump.flow": "24 mL/min"},
    {"pump.flow": "50 mL/min", "pump.doses_per_day": 4, "pump.step": None, "pump.smallest_dose": None},
    {"pump.flow": "1.1 mL/min", "pump.doses_per_day": 96, "pump.step": "0.01 mL", "pump.smallest_dose": None},
)
TANKS: tuple[dict[str, Any], ...] = (
    {},
    {"system.net_volume": "20 L", "system.name": "Shelf", "system.volume_uncertainty": None},
    {"system.net_volume": "900 US gal", "pump.flow": "200 mL/min", "additive.made_up_to": "20 L"},
)


def written(parameter: Parameter, value: float, unit: str) -> str:
    """Write a value of the display unit in another unit of the same kind, with at least four decimals."""
    return f"{from_canonical(parameter.canonical(value), parameter.kind, unit):.6f} {unit}"


def grams(chemical: Chemical, parameter: Parameter) -> float:
    """Return grams per litre for a stock of which a few millilitres an hour are given to 340 L, well dissolved."""
    wanted = parameter.canonical(parameter.rise_recommended) * 340.0 / 0.2 / chemical.per_gram(parameter.name)
    return min(wanted, 0.6 * (chemical.most_per_litre(20.0) or wanted))


def asked() -> Iterator[tuple[str, dict[str, Any]]]:
    """Yield questions over every parameter, unit and chemical, with three pumps and three tanks in turn."""
    number = 0
    for parameter in catalogue().parameters.values():
        low, high, use = ORDINARY[parameter.name]
        for chemical in catalogue().raising(parameter.name):
            for unit in KINDS[parameter.kind].units:
                for turn in range(2):
                    number += 1
                    tank, pump = TANKS[(number + turn) % 3], PUMPS[number % 3]
                    litres = 20.0 if "additive.made_up_to" in tank else 1.0
                    per_day = f"{parameter.display_unit} per day"
                    yield (
                        f"{parameter.name}-{unit.id}-{chemical.name}-{number % 3}-{(number + turn) % 3}",
                        {
                            "change.parameter": parameter.name,
                            "change.measured": written(parameter, low, unit.id),
                            "change.target": written(parameter, high, unit.id),
                            "change.daily_use": f"{use} {per_day}" if number % 5 else None,
                            "additive.chemical": chemical.name,
                            "additive.dissolved": f"{grams(chemical, parameter) * litres:.6f} g",
                            "additive.purity": "94.5 %" if number % 4 == 0 else None,
                            **pump,
                            **tank,
                        },
                    )


MORE: dict[str, dict[str, Any]] = {
    "label": {"additive": {"label": LABEL}},
    "label in mL": {"additive": {"label": {"dose": "12.5 mL", "water": "25 US gal", "raises": "0.5 meq/L"}}},
    "once a day": {"pump.doses_per_day": 1, "change.daily_use": "0.1 dKH per day"},
    "seven a day": {"pump.doses_per_day": 7},
    "every minute": {"pump.doses_per_day": 1440, "pump.smallest_dose": None, "pump.step": None},
    "with a reason": {"change.fastest_rise": "1.3 dKH per day", "change.reason": "frags leave on Friday"},
    "slow": {"change.fastest_rise": "0.05 dKH per day"},
    "a month and more": {"change.fastest_rise": "0.05 dKH per day", "additive.dissolved": "2.12 kg",
                         "additive.made_up_to": "20 L"},
    "unknown volume": {"system.volume_known": "unknown", "system.volume_uncertainty": None},
    "measured by filling": {"system.volume_known": "measured by filling"},
    "above the range": {"change.measured": "10.5 dKH", "change.target": "11.5 dKH"},
    "one dose": {"change.measured": "8.35 dKH", "change.target": "8.4 dKH", "change.daily_use": "0.1 dKH per day",
                 "pump.doses_per_day": 2},
    "small jug": {"additive.dissolved": "10.6 g", "additive.made_up_to": "100 mL"},
    "no upkeep": {"change.daily_use": None},
    "pump sets": {"pump.flow": "0.1 mL/min"},
    "single dose sets": {"pump.doses_per_day": 3},
    "no name": {"system.name": None, "change.measured_at": None},
    "slaked lime": {"additive.chemical": "calcium hydroxide", "additive.dissolved": "15 g", "additive.made_up_to": "10 L",
                    "pump.flow": "50 mL/min", "pump.smallest_dose": None},
    "pH sets": {"pump.doses_per_day": 2, "additive.chemical": "sodium hydroxide", "change.daily_use": "0.1 dKH per day",
                "change.fastest_rise": "1.3 dKH per day", "change.reason": "frags leave on Friday"},
    "highest pH sets": {"system.ph": "8.4", "pump.doses_per_day": 6, "additive.chemical": "sodium hydroxide",
                        "change.daily_use": "0.1 dKH per day"},
    "saturation sets": {"system.ph": "8.3", "system.calcium": "500 mg/L", "change.measured": "11 dKH", "change.target": "11.6 dKH",
                        "change.daily_use": "0.3 dKH per day", "pump.doses_per_day": 4},
    "evaporation sets": {"system.evaporation": "5 L per day", "additive": {"chemical": "calcium hydroxide", "made_up_to": "20 L",
                         "saturated": True}, "pump.flow": "50 mL/min", "pump.smallest_dose": None},
    "mixed magnesium": {"change.parameter": "magnesium", "change.measured": "1210 mg/L", "change.target": "1300 mg/L",
                        "change.daily_use": None, "additive": {"chemical": "magnesium chloride hexahydrate", "dissolved": "300 g",
                        "made_up_to": "2 L", "also": {"chemical": "magnesium sulfate heptahydrate", "dissolved": "400 g", "purity": "98 %"}}},
    "fish farm": {"system.net_volume": "400000 L", "pump.flow": "9000 mL/min", "additive.dissolved": "106 kg", "additive.made_up_to": "1000 L"},
}  # fmt: skip


@cache
def grid() -> dict[str, Answer]:
    """Return every answer of the questions above, by a name that says what was asked."""
    found = {}
    for name, changes in (*asked(), *MORE.items()):
        result = outcome(changes)
        if isinstance(result, Answer):
            found[name] = result
    return found


def over_everything(check: Callable[[str], None]) -> Callable[[str], None]:
    """Turn a check of one answer of the grid into tests over all of them, one for each parameter and one for the rest."""

    @pytest.mark.parametrize("group", [*ORDINARY, "more"])
    def test(group: str) -> None:
        names = [name for name in grid() if (name in MORE if group == "more" else name.startswith(f"{group}-"))]
        assert names
        for name in names:
            try:
                check(name)
            except AssertionError as error:
                error.add_note(f"the question: {name}")
                raise

    test.__doc__ = check.__doc__
    return test
