"""Readings held against a plan that is followed, reckoned here anew from doses, use and spreads."""

from __future__ import annotations

import math
from datetime import datetime, timedelta
from statistics import NormalDist

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine.consumption_estimate import Span
from evenwater.engine.correction import Refused
from evenwater.engine.following import (
    ABOVE,
    BELOW,
    ENDED,
    INSIDE,
    STOP,
    WAITING,
    Course,
    course,
    doses_until,
    expected,
    follow,
    instants,
    volume,
)  # fmt: skip
from evenwater.engine.projection import project
from tests.engine.asking import NOW, answered, worked

DAY = timedelta(days=1)


def plan(**changes: object) -> Course:
    return course(answered(worked(system__volume_uncertainty="3 %", **changes)))


def dkh(course_: Course, value: float) -> float:
    return value * course_.measured / 6.8


def test_the_course_is_the_projection_of_its_plan() -> None:
    answer = answered(worked(system__volume_uncertainty="3 %"))
    drawn = project(answer)
    lines = expected(course(answer), drawn.days)
    assert lines.plan == pytest.approx(drawn.plan, rel=1e-12)
    # The chart joins fewer points of the band by straight lines.
    assert lines.low == pytest.approx(drawn.low, rel=2e-3)
    assert lines.high == pytest.approx(drawn.high, rel=2e-3)


def test_doses_are_due_at_their_instants_and_upkeep_goes_on() -> None:
    p = plan()
    assert doses_until(p, NOW + timedelta(minutes=59)) == (0, 0.0)
    assert doses_until(p, NOW + timedelta(hours=1)) == (1, p.dose_ml)
    number, ml = doses_until(p, p.ends_at)
    assert (number, ml) == (p.count, pytest.approx(p.count * p.dose_ml))
    later = doses_until(p, p.ends_at + timedelta(hours=3))
    assert later == (p.count + 3, pytest.approx(p.count * p.dose_ml + 3 * p.upkeep_ml))
    assert doses_until(p, NOW - DAY) == (0, 0.0)


def test_the_band_holds_what_a_hand_reckoning_gives() -> None:
    """Variances of independent sources add (JCGM 100:2008, 5.1.2); the band goes from the 5th to the 95th percentile."""
    p = plan()
    at = NOW + timedelta(hours=20)
    seen = follow(p, [(at, p.measured)], at).retests[0]
    days = 20.0 / 24.0
    dosed, used = days * p.per_day * p.dose_ml * p.per_ml, days * p.use
    middle = p.measured + dosed - used
    of_dose = math.sqrt(p.spread.volume**2 + p.spread.strength**2 + p.spread.pump**2)
    sd = math.sqrt((dosed * of_dose) ** 2 + (used * p.spread.use) ** 2 + p.spread.reading**2 + (p.kit / 2.0) ** 2)
    wide = NormalDist().inv_cdf(0.95) * sd
    assert seen.plan == pytest.approx(middle, rel=1e-9)
    assert seen.high - middle == pytest.approx(wide, rel=0.02)
    assert middle - seen.low == pytest.approx(wide, rel=0.02)


@pytest.mark.parametrize(("off", "state"), [(0.0, INSIDE), (0.55, ABOVE), (-0.55, BELOW)])
def test_one_reading_is_inside_above_or_below(off: float, state: str) -> None:
    p = plan()
    at = NOW + timedelta(hours=10)
    line = float(expected(p, np.array([10.0 / 24.0])).plan[0])
    found = follow(p, [(at, line + dkh(p, off))], at)
    assert found.state == state
    assert found.in_a_row == 1
    assert not found.above_stop


def test_readings_before_the_start_still_to_come_or_no_numbers_say_nothing() -> None:
    p = plan()
    now = NOW + timedelta(hours=10)
    odd = [(NOW, 9.0), (NOW - DAY, 9.0), (now + timedelta(minutes=1), 9.0), (now, math.nan), (now, math.inf)]
    found = follow(p, odd, now)
    assert found.state == WAITING
    assert found.retests == ()


def test_the_order_of_the_readings_does_not_matter() -> None:
    p = plan()
    now = NOW + timedelta(hours=30)
    readings = [(NOW + timedelta(hours=h), dkh(p, v)) for h, v in ((4, 7.0), (12, 7.9), (25, 8.0))]
    assert follow(p, readings, now) == follow(p, readings[::-1], now)


def test_a_plan_waits_for_its_test_in_the_middle_and_at_its_end() -> None:
    p = plan()
    assert not follow(p, [], p.retest_at - timedelta(minutes=1)).retest_due
    assert follow(p, [], p.retest_at).retest_due
    # A reading before the middle does not count for the one in the middle.
    early = (p.retest_at - timedelta(hours=1), dkh(p, 7.5))
    assert follow(p, [early], p.retest_at).retest_due
    middle = (p.retest_at + timedelta(minutes=1), dkh(p, 7.6))
    assert not follow(p, [early, middle], p.retest_at + timedelta(hours=1)).retest_due
    assert follow(p, [early, middle], p.ends_at).retest_due
    last = (p.ends_at + timedelta(minutes=1), dkh(p, 8.4))
    assert not follow(p, [early, middle, last], p.ends_at + timedelta(hours=1)).retest_due


def test_after_its_time_a_plan_has_ended_whatever_it_read() -> None:
    p = plan()
    after = p.valid_until + timedelta(minutes=1)
    assert follow(p, [], after).state == ENDED
    line = float(expected(p, np.array([(p.ends_at - NOW) / DAY])).plan[0])
    assert follow(p, [(p.ends_at, line)], after).state == ENDED
    # But a stop stays a stop.
    assert follow(p, [(p.ends_at, p.stop_above + 0.1)], after).state == STOP


def test_what_was_untested_belongs_to_the_course() -> None:
    p = plan(change__untested="0.4 dKH")
    assert float(expected(p, np.array([0.0])).plan[0]) == pytest.approx(p.measured + p.untested)


def test_the_instants_hold_the_knee_and_reach_the_present() -> None:
    p = plan()
    late = NOW + 9 * DAY
    days = instants(p, late)
    assert p.lasts_days in days
    assert days[-1] == pytest.approx(9.0)
    assert np.all(np.diff(days) > 0.0)


@settings(max_examples=200, deadline=None)
@given(
    hours=st.lists(st.floats(0.1, 200.0), min_size=1, max_size=6, unique=True),
    offs=st.lists(st.floats(-2.0, 2.0), min_size=6, max_size=6),
)
def test_the_state_follows_from_the_places_of_the_last_readings(hours: list[float], offs: list[float]) -> None:
    p = plan()
    ordered = sorted(hours)
    lines = expected(p, np.array(ordered) / 24.0).plan
    readings = [
        (NOW + timedelta(hours=h), max(0.0, float(line) + dkh(p, off)))
        for h, line, off in zip(ordered, lines, offs, strict=False)
    ]
    now = NOW + timedelta(hours=ordered[-1])
    found = follow(p, readings, now)
    places = [r.place for r in found.retests]
    for retest in found.retests:
        assert (retest.place == ABOVE) == (retest.value > retest.high)
        assert (retest.place == BELOW) == (retest.value < retest.low)
        assert retest.low <= retest.plan <= retest.high
    two_above = len(places) > 1 and places[-2:] == [ABOVE, ABOVE]
    must_stop = two_above or readings[-1][1] > p.stop_above
    assert (found.state == STOP) == must_stop
    if not must_stop:
        assert found.state == (ENDED if now > p.valid_until else places[-1])


def test_a_wider_spread_never_makes_a_reading_leave_the_band() -> None:
    sure, unsure = plan(), course(answered(worked(system__volume_uncertainty="20 %")))
    at: datetime = NOW + timedelta(hours=15)
    for off in np.linspace(-1.5, 1.5, 31):
        reading = [(at, dkh(sure, 7.4 + float(off)))]
        if follow(sure, reading, at).retests[0].place == INSIDE:
            assert follow(unsure, reading, at).retests[0].place == INSIDE


@pytest.mark.parametrize("true_l", [250.0, 340.0, 450.0])
def test_the_rise_of_a_plan_tells_the_volume_it_was_diluted_in(true_l: float) -> None:
    """A tracer: volume is what was given over the rise it made, once what was used is added back."""
    p = plan()
    at = NOW + timedelta(hours=36)
    given = 36 * p.dose_ml * p.per_ml * 340.0
    value = p.measured + given / true_l - p.use * 1.5
    seen = follow(p, [(at, value)], at).retests[0]
    found = volume(p, seen, 340.0)
    assert isinstance(found, Span)
    assert found.value == pytest.approx(true_l, rel=1e-9)
    assert found.low < true_l < found.high


def test_no_volume_is_told_from_a_rise_that_is_lost_in_the_tests() -> None:
    p = plan()
    at = NOW + timedelta(hours=2)
    seen = follow(p, [(at, p.measured)], at).retests[0]
    assert isinstance(volume(p, seen, 340.0), Refused)
