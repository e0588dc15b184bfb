"""H32: a fault in the planner never reaches the keeper: the second reckoning refuses the sabotaged plan.

Common practice, no source: an independent second check.
"""

from __future__ import annotations

import ast
import inspect
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from evenwater.engine import caps, check, correction, schedule, stock
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.limits import Cap, pace
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.schedule import Schedule
from evenwater.screens.answer import shown_of, view
from tests.engine.asking import NOW, read, worked
from tests.engine.generated import drawn

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


@pytest.mark.parametrize("fault", FAULTS)
def test_H32_a_sabotaged_planner_is_refused(fault: str, monkeypatch: pytest.MonkeyPatch) -> None:
    module, name, instead = FAULTS[fault]
    # With one dose a day already, a day's dose at once is no fault.
    honest = [question for number in SOME if (question := _fine(number)).pump.doses_per_day > 1]
    assert all(isinstance(correction.solve(question), Answer) for question in honest)
    monkeypatch.setattr(module, name, instead)
    codes = []
    for question in honest:
        result = correction.solve(question)
        assert isinstance(result, Refused), f"{fault}: {question}"
        codes.append(result.reasons[0].code)
    # A fault may also make nonsense that is refused earlier; most must be found by the second reckoning.
    assert codes.count("check_disagrees") >= 0.4 * len(codes), codes


def _only_rise(question: Any, per_ml: float) -> tuple[Cap, ...]:
    return CAPS(question, per_ml)[:1]


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
