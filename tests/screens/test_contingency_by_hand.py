"""The card of the failed pump, followed day by day as it stands: no limit is passed, whatever the tank uses."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from evenwater.engine import check_ph
from evenwater.engine.correction import Answer
from evenwater.screens.contingency import contingencies
from evenwater.screens.contingency_doses import Readings
from evenwater.screens.contingency_views import ContingencyCard
from tests.engine.asking import ask
from tests.engine.generated import WAYS, draw_one
from tests.screens.asked import NOW, answer, over_everything
from tests.screens.contingency_reading import (
    BATCH,
    FAILED,
    SLACK,
    allowed_jump,
    allowed_rise,
    by_hand,
    hours,
    made,
    plain,
    shown,
    steps,
)
from tests.screens.contingency_reading import given as rows_of
from tests.screens.lint import millilitres
from tests.screens.reckoned import MEQ_PER_DKH, most_in_a_day, per_ml


@over_everything
def test_by_hand_no_row_passes_a_limit(name: str) -> None:
    plan, cards = made(name)
    check_by_hand(plan, cards[FAILED])


def check_by_hand(plan: Answer, failed: ContingencyCard) -> None:
    q = plan.question
    rows = rows_of(failed, plan)
    assert len(rows) == len(failed.rows)
    if not rows:
        assert "give nothing" in steps(failed)
        assert any(step.when == "Every morning" and step.what.startswith("Test ") for step in failed.steps)
        return
    per_day = len(hours(rows[0].row))
    for below, row in zip([None, *rows], rows, strict=False):
        assert row.low <= row.high if below is None else below.low <= below.high == row.low < row.high
        assert below is None or row.ml < below.ml
        at = hours(row.row)
        assert len(at) == per_day in (4, 6, 8)
        assert at[0] >= 7
        assert at[-1] <= 22
        assert min(b - a for a, b in pairwise(at)) >= 2
        # To a mark of what it is measured with, never up.
        tool = re.match(r"([\d.]+)\u00a0(mL|L) (?:syringe|measuring cylinder), to the mark of ", row.row.setting)
        assert tool
        holds = float(tool[1]) * (1.0 if tool[2] == "mL" else 1000.0)
        mark = {1.0: 0.05, 5.0: 0.2, 10.0: 0.5, 20.0: 1.0, 60.0: 1.0, 250.0: 5.0, 1000.0: 10.0}[holds]
        assert row.ml <= holds
        assert row.ml / mark == pytest.approx(round(row.ml / mark), abs=1e-6)
        assert millilitres(row.row.setting.partition("mark of ")[2]) == millilitres(row.row.dose)
        assert row.ml * per_day <= most_in_a_day(plan) * SLACK
        assert row.ml * per_ml(plan) <= allowed_jump(plan) * SLACK
        assert row.high + row.ml * per_day * per_ml(plan) <= q.target * SLACK, (
            "a whole day's doses pass the target if nothing is used"
        )
        water = check_ph.look(Readings(q).asked(q, shown(row.low, plan)), per_ml(plan), row.ml)
        assert water is None or water.highest_ph_rise <= 0.2 + 1e-6
    for used in (q.use, 0.0):
        for start in (rows[0].low, rows[-1].high):
            followed = by_hand(start, plan, rows, 6, used)
            assert max(value for _, value in followed) <= q.target * SLACK
            values = dict(followed)
            rises = [value - values[at - 24.0] for at, value in followed if at - 24.0 in values]
            if used > 0.0:
                assert max(rises, default=0.0) <= allowed_rise(plan) * SLACK


def test_the_first_dose_by_hand_waits_until_no_day_holds_more_than_a_days_doses() -> None:
    """A day's doses by hand take at least 14 hours; the last of them must lie 24 hours after the pump's last one."""
    plan = answer()
    failed = contingencies(plan, NOW)[FAILED]
    assert "off for 10 h or longer" in steps(failed)
    at = hours(failed.rows[0])
    pump = range(-24, at[0] - 10 + 1)
    raised = dict.fromkeys(pump, plan.doses.dose_ml) | {hour: float(millilitres(failed.rows[0].dose)) for hour in at}
    for end in at:
        in_a_day = sum(ml for hour, ml in raised.items() if end - 24 < hour <= end)
        assert in_a_day <= plan.doses.in_24_hours_ml


def test_by_hand_reckoned() -> None:
    """Four doses a day, each at most 0.35 dKH: 21.2 mL, which a 60 mL syringe shows as 21; the use alone is 13.6 mL."""
    plan = answer()
    first, second = rows_of(contingencies(plan, NOW)[FAILED], plan)
    raised = per_ml(plan) / MEQ_PER_DKH
    assert first.ml == int(0.35 / raised) == 21
    assert plain(first.row.setting) == "60 mL syringe, to the mark of 21 mL"
    assert first.high / MEQ_PER_DKH == pytest.approx(int((8.4 - 4 * 21 * raised) * 10) / 10)
    assert second.ml == int(0.9 / 4 / raised) == 13
    assert second.high / MEQ_PER_DKH == pytest.approx(int((8.4 - 4 * 13 * raised) * 10) / 10)
    assert hours(first.row) == [7, 12, 17, 22]


@pytest.mark.parametrize(
    ("use", "doses_a_day", "rows"),
    [("0.9", 4, 2), ("1.39", 6, 2), ("2.79", 8, 1), ("2.85", 0, 0)],
    ids=["four a day", "six, because four would lift too much at once", "only what is used, in eight", "nothing"],
)
def test_as_few_doses_by_hand_as_the_limits_allow(use: str, doses_a_day: int, rows: int) -> None:
    """Eight doses of 0.35 dKH are 2.8 a day: what is used must lie below that, and there must be something left to rise."""
    plan = answer({"change.daily_use": f"{use} dKH per day"})
    failed = contingencies(plan, NOW)[FAILED]
    found = rows_of(failed, plan)
    assert len(found) == rows
    assert {len(hours(row.row)) for row in found} == ({doses_a_day} if rows else set())
    if rows == 1:
        assert found[0].ml * doses_a_day * per_ml(plan) <= plan.question.use * SLACK, "no more than is used"


@pytest.mark.parametrize("chemical", ["sodium hydroxide"])
def test_what_only_trained_people_handle_is_not_given_by_hand(chemical: str) -> None:
    cards = contingencies(answer({"additive.chemical": chemical, "additive.dissolved": "40 g"}), NOW)
    assert cards[FAILED].rows == ()
    assert "trained people only: give nothing" in steps(cards[FAILED])
    assert "only if you are trained" in cards[BATCH].steps[0].what


def test_nobody_pours_litres_by_hand() -> None:
    plan, cards = made("fish farm")
    assert cards[FAILED].rows == ()
    assert plan.doses.dose_ml > 1000.0


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow])
@given(way=st.sampled_from(WAYS), draw=st.randoms(use_true_random=False))
def test_by_hand_no_limit_of_any_plan_is_passed(way, draw) -> None:
    plan = ask(draw_one(draw, *way))
    if not isinstance(plan, Answer):
        return
    check_by_hand(plan, contingencies(plan, plan.question.now)[FAILED])
