"""What is in the water already counts: a new plan never ignores what the reading could not show (H14, H18, H21)."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine.correction import Answer, solve
from evenwater.engine.projection import project
from tests.engine.asking import NOW, answered, ask, read, worked

# The limits of the worked example, common practice, no source: 1.4 dKH a day at the most.
HARD = 1.4
# One German degree is 10 mg of CaO in a litre (DIN 38409-6, from memory); CaO has 56.077 g/mol and two equivalents.
_PER_DKH = 10.0 / (56.077 / 2.0)


def test_H21_what_is_untested_shortens_the_plan_and_nothing_else() -> None:
    whole = answered(worked())
    rest = answered(worked(change__untested="0.4 dKH"))
    # 1.6 dKH are wanted; 0.4 are in the water, so three quarters of the doses are left.
    assert rest.doses.count == pytest.approx(0.75 * whole.doses.count, abs=1.0)
    assert rest.doses.dose_ml == whole.doses.dose_ml
    assert rest.seen.end_value <= rest.question.target
    assert project(rest).plan[0] == pytest.approx(project(whole).plan[0] + 0.4 * _PER_DKH, rel=1e-3)


def test_H21_a_plan_from_the_untested_is_the_plan_from_a_reading_that_shows_it() -> None:
    counted = answered(worked(change__untested="0.4 dKH"))
    shown = answered(worked(change__measured="7.2 dKH"))
    assert counted.doses.dose_ml == shown.doses.dose_ml
    assert counted.doses.count == shown.doses.count
    # Nobody saw it: the band is wider than from a reading.
    assert project(counted).high[0] - project(counted).low[0] > project(shown).high[0] - project(shown).low[0]


def test_H21_what_may_reach_the_target_already_asks_for_a_test() -> None:
    assert ask(worked(change__untested="1.6 dKH")) == ("untested_reaches",)
    assert isinstance(ask(worked(change__untested="1.3 dKH")), Answer)


def test_H21_nothing_is_counted_unseen_in_an_unknown_volume() -> None:
    assert ask(worked(change__untested="0.1 dKH", system__volume_known="unknown")) == ("untested_unknown",)


@settings(max_examples=150, deadline=None)
@given(
    untested=st.floats(0.0, 1.5), lately=st.floats(0.0, 2.0), fastest=st.floats(0.1, 1.0), per_day=st.integers(1, 96),
    use=st.floats(0.0, 2.0),
)  # fmt: skip
def test_H18_no_24_hours_hold_more_than_the_hard_rise(
    untested: float, lately: float, fastest: float, per_day: int, use: float
) -> None:
    question = read(worked(pump__doses_per_day=per_day))
    asked = replace(
        question, untested=untested * _PER_DKH, lately=lately * _PER_DKH, fastest=fastest * _PER_DKH, use=use * _PER_DKH
    )
    result = solve(asked)
    if isinstance(result, Answer):
        # The doses one by one, apart from the planner: what comes in any 24 hours, with what was there before.
        highest = result.seen.highest_rise_in_24_hours + max(untested, lately) * _PER_DKH
        assert highest <= question.parameter.canonical(HARD) * (1.0 + 1e-9)
        assert result.seen.highest_value <= question.target * (1.0 + 1e-9)
    elif lately >= HARD:
        assert "given_lately_forbids" in {reason.code for reason in result.reasons} | {"untested_reaches"}


def test_H18_what_was_given_an_hour_ago_slows_the_plan() -> None:
    free, slowed = answered(worked()), answered(worked(change__raised_lately="0.9 dKH"))
    assert slowed.set_by == "given_lately"
    assert slowed.pace == pytest.approx(0.5 * _PER_DKH, rel=1e-4)
    assert free.set_by == "daily_rise"


def test_H21_the_second_reckoning_sees_a_planner_that_forgets_the_untested(monkeypatch: pytest.MonkeyPatch) -> None:
    question = read(worked(change__untested="0.4 dKH"))
    forgetful = solve(replace(question, untested=0.0))
    assert isinstance(forgetful, Answer)
    from evenwater.engine.check import Doses, simulate

    d = forgetful.doses
    seen = simulate(question, Doses(d.dose_ml, d.count, d.upkeep_ml, d.per_day, d.interval_days, d.per_day))
    assert seen.highest_value > question.target


def test_H14_the_time_of_the_question_does_not_change_what_is_untested() -> None:
    first = answered(worked(change__untested="0.4 dKH", change__measured_at=NOW - timedelta(hours=5)))
    later = answered(worked(change__untested="0.4 dKH", change__measured_at=NOW - timedelta(hours=50)))
    assert first.doses == later.doses
