"""H32: a fault in the planner never reaches the keeper: the second reckoning refuses the sabotaged plan.

Common practice, no source: an independent second check.
"""

from __future__ import annotations

import ast
import dataclasses
import inspect
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from evenwater.engine import caps, check, check_ph, correction, schedule, stock, water_limits
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.limits import Cap, pace
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.schedule import Schedule
from evenwater.screens.answer import shown_of, view
from tests.engine.asking import NOW, read, worked
from tests.engine.generated import drawn

PER_UNIT, DENSITY = water_limits._per_unit, water_limits.density_kg_per_l
MAKE, STRENGTH, CAPS, PACE, PULSE = schedule.make, stock.strength, caps.caps, pace, correction.pulse
SOME = range(0, 300, 12)


def _scheduled(change: Callable[[Schedule], Schedule]) -> Callable[..., Schedule | None]:
    def make(*args: Any, **named: Any) -> Schedule | None:
        made = MAKE(*args, **named)
        return None if made is None else change(made)

    return make


def _faster(_caps: Any) -> Cap:
    bound = PACE(_caps)
    return replace(bound, fastest=1.5 * bound.fastest)


# Module, name, what stands there instead: a fault in each step of the planner.
FAULTS: dict[str, tuple[Any, str, Any]] = {
    "strength twice as high": (correction, "strength", lambda *a: 2.0 * STRENGTH(*a)),
    "strength a hundredth lower": (correction, "strength", lambda *a: 0.99 * STRENGTH(*a)),
    "litres taken for gallons": (
        correction,
        "pulse",
        lambda dose, per_ml, volume: PULSE(dose, per_ml, volume / 3.785411784),
    ),
    "volume forgotten": (correction, "pulse", lambda dose, per_ml, volume: PULSE(dose, per_ml, 1.0)),
    "pace half as fast again": (correction, "pace", _faster),
    "a dose a step larger": (schedule, "make", _scheduled(lambda d: replace(d, dose_ml=d.dose_ml + d.step_ml))),
    "a dose ten times larger": (schedule, "make", _scheduled(lambda d: replace(d, dose_ml=10.0 * d.dose_ml))),
    "a day's dose at once": (
        schedule,
        "make",
        _scheduled(lambda d: replace(d, dose_ml=d.dose_ml * d.per_day, per_day=1)),
    ),
    "a dose too many": (schedule, "make", _scheduled(lambda d: replace(d, count=d.count + 1))),
    "a dose too few": (schedule, "make", _scheduled(lambda d: replace(d, count=d.count - 1, shortfall=d.shortfall))),
    "twice as often": (schedule, "make", _scheduled(lambda d: replace(d, interval_days=d.interval_days / 2.0))),
    "the pump runs longer": (schedule, "make", _scheduled(lambda d: replace(d, run_time_s=1.2 * d.run_time_s))),
    "minutes for seconds": (schedule, "make", _scheduled(lambda d: replace(d, run_time_s=d.run_time_s / 60.0))),
    "upkeep a step larger": (schedule, "make", _scheduled(lambda d: replace(d, upkeep_ml=d.upkeep_ml + d.step_ml))),
    "not a number": (schedule, "make", _scheduled(lambda d: replace(d, dose_ml=float("nan")))),
}


def _fine(number: int) -> CorrectionQuestion:
    """Return a generated question with a step so fine that rounding down cannot hide a fault."""
    question = read(drawn()[0][number][0])
    return replace(question, pump=replace(question.pump, step_ml=1e-5, smallest_ml=None))


def _long(question: CorrectionQuestion) -> bool:
    """Return whether a fault must show: with one dose a day a day's dose at once is none, nor is haste within a day."""
    honest = correction.solve(question)
    assert isinstance(honest, Answer)
    return question.pump.doses_per_day > 1 and honest.doses.count > honest.doses.per_day


@pytest.mark.parametrize("fault", FAULTS)
def test_H32_a_sabotaged_planner_is_refused(fault: str, monkeypatch: pytest.MonkeyPatch) -> None:
    module, name, instead = FAULTS[fault]
    honest = [question for number in SOME if _long(question := _fine(number))]
    assert len(honest) >= 15
    monkeypatch.setattr(module, name, instead)
    codes = []
    for question in honest:
        result = correction.solve(question)
        assert isinstance(result, Refused), f"{fault}: {question}"
        codes.append(result.reasons[0].code)
    # A fault may also make nonsense that is refused earlier; most must be found by the second reckoning.
    assert codes.count("check_disagrees") >= 0.4 * len(codes), codes


def _only_rise(question: Any, per_ml: float, tank: Any) -> tuple[Cap, ...]:
    return CAPS(question, per_ml, tank)[:1]


def test_H32_a_forgotten_limit_is_found(monkeypatch: pytest.MonkeyPatch) -> None:
    """Plans that the size of a dose, the pump or another value holds back, with that limit forgotten."""
    monkeypatch.setattr(caps, "caps", _only_rise)
    held = {
        "single_dose": worked(pump__doses_per_day=4),
        "pump_share": worked(pump__flow="0.1 mL/min"),
    }
    for what, raw in held.items():
        result = correction.solve(read(raw))
        assert isinstance(result, Refused), what
        assert result.reasons[0].code == "check_disagrees", what


# Plans that each limit of the water holds back: the fault that the second reckoning must name, and the question.
_LYE = {
    "additive__chemical": "sodium hydroxide", "change__daily_use": "0.1 dKH per day", "change__reason": "a test",
    "change__fastest_rise": "1.3 dKH per day", "pump__doses_per_day": 2,
}  # fmt: skip
_TANK = {"net_volume": "340 L", "salinity": "35", "temperature": "25 degC"}
WATER: dict[str, tuple[str, str, dict[str, Any]]] = {
    "rise of pH": ("ph_rise", "rise of pH", worked(**_LYE)),
    "rise of pH that was measured": ("ph_rise", "rise of pH", {**worked(**_LYE), "system": {**_TANK, "ph": "8.1"}}),
    "rise of pH by a bottle": (
        "ph_rise",
        "rise of pH",
        {**worked(**_LYE), "additive": {"label": {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}}},
    ),
    "highest pH": (
        "ph_ceiling",
        "pH",
        {**worked(**{**_LYE, "pump__doses_per_day": 6}), "system": {**_TANK, "ph": "8.4"}},
    ),
    "saturation": (
        "saturation",
        "saturation",
        worked(
            change__measured="11 dKH", change__target="11.6 dKH", change__daily_use="0.3 dKH per day", pump__doses_per_day=4,
            system__ph="8.3", system__calcium="500 mg/L", system__salinity="35", system__temperature="25 degC",
        ),
    ),
    "saturation by calcium": (
        "saturation",
        "saturation",
        worked(
            change__parameter="calcium", change__measured="480 mg/L", change__target="500 mg/L", pump__doses_per_day=2,
            change__fastest_rise="45 mg/L per day", change__reason="a test", change__daily_use=None, system__ph="8.41",
            system__alkalinity="10.6 dKH", additive__chemical="calcium chloride dihydrate", system__salinity="35",
            system__temperature="25 degC",
        ),
    ),
    "evaporation": (
        "evaporation",
        "evaporation",
        {
            **worked(pump__flow="50 mL/min", system__evaporation="3 L per day", change__daily_use="0.3 dKH per day"),
            "additive": {"chemical": "calcium hydroxide", "made_up_to": "20 L", "saturated": True},
        },
    ),
}  # fmt: skip


def _without(code: str) -> Callable[..., tuple[Cap, ...]]:
    return lambda q, per_ml, tank: tuple(cap for cap in CAPS(q, per_ml, tank) if cap.code != code)


@pytest.mark.parametrize("case", WATER)
def test_H32_a_forgotten_limit_of_the_water_is_found(case: str, monkeypatch: pytest.MonkeyPatch) -> None:
    code, what, raw = WATER[case]
    question = replace(read(raw), pump=replace(read(raw).pump, step_ml=1e-5))
    honest = correction.solve(question)
    assert isinstance(honest, Answer), honest
    assert honest.set_by == code
    monkeypatch.setattr(caps, "caps", _without(code))
    result = correction.solve(question)
    assert isinstance(result, Refused)
    assert [reason.code for reason in result.reasons] == ["check_disagrees"]
    assert what in result.reasons[0].params["what"]


# Module, name, what stands there instead: a fault in each thing that the limits of the water are reckoned from.
WATER_FAULTS: dict[str, tuple[Any, str, Any]] = {
    "a rise of half a pH": (water_limits, "PH_RISE_PER_HOUR", 0.5),
    "a higher ceiling": (water_limits, "PH_KEPT", (7.8, 9.0)),
    "more saturation": (water_limits, "SATURATION_CEILING", 14.0),
    "no carbonate side at all": (water_limits, "chemistry_of", lambda *_: None),
    "half of what the additive brings": (water_limits, "_per_unit", lambda q, per_ml: PER_UNIT(q, per_ml).times(0.5)),
    "the total scale taken for a meter's": (water_limits, "nbs_offset", lambda _: 0.0),
    "the start only": (
        water_limits,
        "replace",
        lambda tank, **_: dataclasses.replace(tank, end=tank.start),
    ),
    "seawater twice as heavy": (water_limits, "density_kg_per_l", lambda water: 2.0 * DENSITY(water)),
}


@pytest.mark.parametrize("fault", WATER_FAULTS)
def test_H32_a_fault_in_the_chemistry_is_found(fault: str, monkeypatch: pytest.MonkeyPatch) -> None:
    module, name, instead = WATER_FAULTS[fault]
    found = 0
    for case, (code, _, raw) in WATER.items():
        if code == "evaporation":
            continue
        question = replace(read(raw), pump=replace(read(raw).pump, step_ml=1e-5))
        honest = correction.solve(question)
        assert isinstance(honest, Answer)
        with monkeypatch.context() as patch:
            patch.setattr(module, name, instead)
            result = correction.solve(question)
        if isinstance(result, Refused):
            assert [reason.code for reason in result.reasons] == ["check_disagrees"], case
            found += 1
        else:
            # A fault that makes a plan slower, or leaves it as it is, harms nobody.
            assert result.pace <= honest.pace * (1.0 + 1e-9), case
    assert found >= 1


def test_H32_doses_of_the_fullest_hour_are_counted_twice(monkeypatch: pytest.MonkeyPatch) -> None:
    # 30 doses a day: two of them fall into one hour.
    question = read(WATER["highest pH"][2])
    question = replace(
        question, pump=replace(question.pump, doses_per_day=30, step_ml=1e-5), system=replace(question.system, ph=8.412)
    )
    assert isinstance(honest := correction.solve(question), Answer)
    assert honest.set_by == "ph_ceiling"
    monkeypatch.setattr(water_limits, "doses_in_an_hour", lambda _: 1)
    result = correction.solve(question)
    assert isinstance(result, Refused)
    assert "pH" in result.reasons[0].params["what"]


def test_H32_the_second_opinion_on_pH_takes_nothing_from_the_first() -> None:
    imported = {
        node.module.rpartition(".")[2]
        for node in ast.walk(ast.parse(inspect.getsource(check_ph)))
        if isinstance(node, ast.ImportFrom) and node.module and node.module.startswith("evenwater")
    }
    # The constants are those of the planner, as a handbook is; nothing that solves or limits is.
    planners = {
        "carbonate",
        "carbonate_point",
        "carbonate_solver",
        "carbonate_state",
        "water_limits",
        "caps",
        "limits",
        "mix",
    }
    assert not imported & planners


def test_H32_what_else_is_raised_is_reckoned_twice(monkeypatch: pytest.MonkeyPatch) -> None:
    # 10 mg/L of potassium from potassium nitrate brings 15.9 mg/L of nitrate; the hard limit is 2.
    raw = worked(
        change__parameter="potassium", change__measured="380 mg/L", change__target="390 mg/L", change__daily_use=None,
        change__fastest_rise=None, additive__chemical="potassium nitrate", additive__dissolved="100 g",
    )  # fmt: skip
    honest = correction.solve(read(raw))
    assert isinstance(honest, Answer)
    assert honest.set_by == "also_raises_nitrate"
    monkeypatch.setattr(caps, "also_raised", lambda *_: iter(()))
    result = correction.solve(read(raw))
    assert isinstance(result, Refused)
    assert result.reasons[0].code == "check_disagrees"


def test_H32_a_dose_below_the_smallest_is_found(monkeypatch: pytest.MonkeyPatch) -> None:
    # Doses of 4.7 mL, and a planner that has forgotten to look at the pump's smallest dose.
    monkeypatch.setattr(correction, "_below_smallest", lambda *_: None)
    assert isinstance(correction.solve(read(worked(pump__smallest_dose="4.7 mL"))), Answer)
    result = correction.solve(read(worked(pump__smallest_dose="4.8 mL")))
    assert isinstance(result, Refused)
    assert result.reasons[0].code == "check_disagrees"


def test_H32_a_refused_plan_shows_no_figure(monkeypatch: pytest.MonkeyPatch) -> None:
    module, name, instead = FAULTS["strength twice as high"]
    monkeypatch.setattr(module, name, instead)
    question = read(worked())
    shown = view(correction.solve(question), NOW, shown_of(question))
    assert shown.state == "refused"
    assert shown.figure == ""
    assert shown.bars == ()
    assert "second reckoning" in shown.messages[0].text


def test_H32_the_simulation_takes_nothing_from_the_planner() -> None:
    imported = {
        node.module.rpartition(".")[2]
        for node in ast.walk(ast.parse(inspect.getsource(check)))
        if isinstance(node, ast.ImportFrom) and node.module and node.module.startswith("evenwater")
    }
    assert not imported & {"balance", "caps", "correction", "schedule", "limits"}
