"""The second reckoning catches a sabotaged plan (the idea of an independent second opinion: common practice)."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import given, settings

from evenwater.engine import check
from evenwater.engine.caps import allowed_rise, dose_rise
from evenwater.engine.correction import Answer, disagreement
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from evenwater.engine.schedule import Schedule
from tests.engine.asking import answered, worked
from tests.property.plans import Drawn, plans


def _dose(doses: Schedule, ml: float) -> Schedule:
    """Return the schedule with another dose, and the pump's seconds to fit it."""
    return replace(doses, dose_ml=ml, run_time_s=doses.run_time_s * (ml / doses.dose_ml))


def _upkeep(doses: Schedule, ml: float) -> Schedule:
    """Return the schedule with another upkeep dose, and the pump's seconds to fit it."""
    return replace(doses, upkeep_ml=ml, upkeep_run_time_s=doses.run_time_s * (ml / doses.dose_ml))


# What a fault in the planner could do to the doses; each must be seen on any plan it changes.
SABOTAGE: dict[str, Callable[[Schedule], Schedule]] = {
    "a step more": lambda d: _dose(d, d.dose_ml + d.step_ml),
    "a step less": lambda d: _dose(d, d.dose_ml - d.step_ml),
    "ten times the dose": lambda d: _dose(d, 10.0 * d.dose_ml),
    "not a number": lambda d: replace(d, dose_ml=math.nan),
    "without end": lambda d: replace(d, dose_ml=math.inf),
    "a dose more": lambda d: replace(d, count=d.count + 1),
    "a dose less": lambda d: replace(d, count=d.count - 1),
    "twice as often": lambda d: replace(d, interval_days=d.interval_days / 2.0),
    "half as often": lambda d: replace(d, interval_days=d.interval_days * 2.0),
    "twice the doses a day": lambda d: replace(d, per_day=2 * d.per_day),
    "runs half as long again": lambda d: replace(d, run_time_s=1.5 * d.run_time_s),
    "runs half as long": lambda d: replace(d, run_time_s=0.5 * d.run_time_s),
    "upkeep a step more": lambda d: _upkeep(d, d.upkeep_ml + d.step_ml),
    "upkeep runs too long": lambda d: replace(d, upkeep_run_time_s=2.0 * d.upkeep_run_time_s + 1.0),
    "more left than said": lambda d: replace(d, shortfall=d.shortfall * 0.5 - 1e-3),
}


def _objection(question: CorrectionQuestion, doses: Schedule, per_ml: float) -> Reason | None:
    told = check.Doses(doses.dose_ml, doses.count, doses.upkeep_ml, doses.per_day, doses.interval_days, doses.per_day)
    return disagreement(question, doses, per_ml, check.simulate(question, told))


def _of(answer: Answer, doses: Schedule) -> Reason | None:
    return _objection(answer.question, doses, answer.per_ml)


@settings(max_examples=60)
@given(drawn=plans())
def test_an_honest_plan_has_no_objection(drawn: Drawn) -> None:
    assert _of(drawn.answer, drawn.answer.doses) is None


@pytest.mark.parametrize("how", SABOTAGE)
@settings(max_examples=25)
@given(drawn=plans())
def test_sabotaged_doses_are_seen(how: str, drawn: Drawn) -> None:
    doses = SABOTAGE[how](drawn.answer.doses)
    assert doses != drawn.answer.doses
    reason = _of(drawn.answer, doses)
    assert reason is not None
    assert reason.code == "check_disagrees"
    assert reason.params["what"]


@settings(max_examples=40)
@given(drawn=plans())
def test_a_plan_for_another_tank_or_stock_is_seen(drawn: Drawn) -> None:
    answer, question = drawn.answer, drawn.answer.question
    system = question.system
    assert _objection(
        replace(question, system=replace(system, volume_l=1.2 * system.volume_l)), answer.doses, answer.per_ml
    )
    assert _objection(
        replace(question, system=replace(system, volume_l=system.volume_l / 1.2)), answer.doses, answer.per_ml
    )
    assert _objection(
        replace(question, measured=question.measured - 0.01 * question.target), answer.doses, answer.per_ml
    )
    assert _objection(replace(question, target=question.target * 0.99), answer.doses, answer.per_ml)
    assert _objection(replace(question, pump=replace(question.pump, flow_ml_per_min=1.1 * question.pump.flow_ml_per_min)),
                      answer.doses, answer.per_ml)  # fmt: skip


@settings(max_examples=40)
@given(drawn=plans())
def test_a_limit_tightened_after_planning_is_seen(drawn: Drawn) -> None:
    answer, question = drawn.answer, drawn.answer.question
    pump, p, doses = question.pump, question.parameter, drawn.answer.doses
    rise = answer.seen.highest_rise_in_24_hours
    jump = answer.seen.largest_jump / p.canonical(1.0)
    share = doses.per_day * doses.run_time_s / 86400.0
    tightened = {
        "rise": replace(question, fastest=0.99 * rise),
        "jump": replace(question, parameter=replace(p, dose_rise_recommended=0.99 * jump, dose_rise_hard=0.99 * jump)),
        "running": replace(question, pump=replace(pump, largest_share=0.99 * share)),
    }
    for what, changed in tightened.items():
        reason = _objection(changed, doses, answer.per_ml)
        assert reason is not None, what
        found = reason.params["what"]
        assert isinstance(found, tuple)
        assert what in found


SEEN: dict[str, Callable[[Answer], dict[str, float]]] = {
    "end": lambda a: {"end_value": a.seen.end_value * (1.0 + 1e-6)},
    "overshoot": lambda a: {"highest_value": a.question.target * (1.0 + 1e-6)},
    "rise": lambda a: {"highest_rise_in_24_hours": allowed_rise(a.question) * (1.0 + 1e-6)},
    "jump": lambda a: {"largest_jump": dose_rise(a.question) * (1.0 + 1e-6)},
    "total": lambda a: {"total_ml": a.seen.total_ml * (1.0 + 1e-6) + 1e-6},
}


@pytest.mark.parametrize("what", SEEN)
@settings(max_examples=20)
@given(drawn=plans())
def test_each_thing_the_simulation_sees_is_held_against_the_plan(what: str, drawn: Drawn) -> None:
    answer = drawn.answer
    seen = replace(answer.seen, **SEEN[what](answer))  # type: ignore[arg-type]
    reason = disagreement(answer.question, answer.doses, answer.per_ml, seen)
    assert reason is not None
    assert reason.params["what"] == (what,)


@settings(max_examples=60)
@given(drawn=plans())
def test_the_two_reckonings_of_the_strength_agree(drawn: Drawn) -> None:
    question = drawn.answer.question
    assert check.amount_per_ml(question) == pytest.approx(drawn.answer.strength, rel=1e-12)
    assert check.amount_per_ml(question) == pytest.approx(float(drawn.by_hand.strength), rel=1e-9)


def test_what_the_simulation_sees_by_hand() -> None:
    # 2 meq/L of reading, 0.24 used a day in 24 intervals, 10 doses of 0.02 and a day of upkeep of 0.01 meq/L each.
    answer = answered(worked())
    per_ml = check.amount_per_ml(answer.question) / 340.0
    question = replace(answer.question, measured=2.0, use=0.24)
    seen = check.simulate(question, check.Doses(0.02 / per_ml, 10, 0.01 / per_ml, 24, 1.0 / 24.0, 24))
    assert seen.end_value == pytest.approx(2.1, rel=1e-12)
    assert seen.highest_value == pytest.approx(2.1, rel=1e-12)
    assert seen.largest_jump == pytest.approx(0.02, rel=1e-9)
    assert seen.highest_rise_in_24_hours == pytest.approx(0.1, rel=1e-9)
    assert seen.total_ml == pytest.approx(0.2 / per_ml, rel=1e-12)
    # Ten of the correction and fourteen of the upkeep.
    assert seen.most_ml_in_24_hours == pytest.approx(0.34 / per_ml, rel=1e-9)
