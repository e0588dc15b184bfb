"""H17, H20 and H21 of a timetable: clocks that are changed, additives that fall out together, too much in a day.

The days are those of the tz database (https://www.iana.org/time-zones). Minutes apart: common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from fractions import Fraction
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest

from evenwater.engine.timetable import Refused, TimetableAnswer, TimetableQuestion, solve
from evenwater.engine.timetable_instants import DoseAt, instants
from evenwater.engine.timetable_intake import timetable
from evenwater.engine.timetable_question import Apart
from tests.engine.asking import known
from tests.engine.timetables import LIME, PAIR, SODA, doses, drawn
from tests.hazards.test_clocks import DAYS

BOTH = [(zone, day) for zone, days in DAYS.items() for day in days]
over_the_change = pytest.mark.parametrize(("zone", "day"), BOTH, ids=str)
# Sums that are no multiple of a step, different numbers of doses, a dose shortly before and after each midnight.
PLAN = solve(
    TimetableQuestion(
        (doses(replace(SODA, per_day_ml=52.83), 24), doses(replace(LIME, per_day_ml=31.07), 20)), (Apart(0, 1, 15.0),)
    )
)


def plan() -> TimetableAnswer:
    assert isinstance(PLAN, TimetableAnswer)
    return PLAN


def around(zone: str, day: date) -> list[DoseAt]:
    """Return the doses of six days, the clocks set two days before the change."""
    place = ZoneInfo(zone)
    set_at = datetime(day.year, day.month, day.day, 12, tzinfo=UTC) - timedelta(days=3)
    first = set_at.astimezone(place).date()
    return [dose for k in range(7) for dose in instants(plan(), first + timedelta(days=k), place, set_at)]


def test_there_are_six_zones_with_days_of_other_lengths() -> None:
    hours = set()
    for zone, day in BOTH:
        bounds = [datetime(d.year, d.month, d.day, tzinfo=ZoneInfo(zone)) for d in (day, day + timedelta(days=1))]
        hours.add((bounds[1].astimezone(UTC) - bounds[0].astimezone(UTC)) / timedelta(hours=1))
    assert len(DAYS) == 6
    assert hours == {23.0, 23.5, 24.0, 24.5, 25.0}


@over_the_change
def test_H17_no_dose_is_left_out_or_given_twice(zone: str, day: date) -> None:
    given = around(zone, day)
    assert all(dose.at.tzinfo is UTC for dose in given)
    for pump in (0, 1):
        minutes = [row.minute for row in plan().rows if row.pump == pump]
        between = [
            timedelta(minutes=(later - each - 1) % 1440 + 1)
            for each, later in zip(minutes, [*minutes[1:], minutes[0]], strict=True)
        ]
        own = [dose.at for dose in given if dose.pump == pump]
        seen = [later - each for each, later in pairwise(own)]
        # The intervals of the timetable, one after the other, beginning somewhere in it.
        begin = next(k for k in range(len(between)) if seen[: len(between)] == between[k:] + between[:k])
        assert seen == [between[(begin + k) % len(between)] for k in range(len(seen))]


@over_the_change
def test_H17_the_day_on_the_wall_has_its_own_doses_only(zone: str, day: date) -> None:
    place = ZoneInfo(zone)
    set_at = datetime(2017, 1, 1, tzinfo=UTC)
    begin, end = (
        datetime(d.year, d.month, d.day, tzinfo=place).astimezone(UTC) for d in (day, day + timedelta(days=1))
    )
    given = instants(plan(), day, place, set_at)
    assert all(dose.at.astimezone(place).date() == day for dose in given)
    # 24 doses in 24 hours; one more or fewer when an hour is.
    expected = 24 * ((end - begin) / timedelta(days=1))
    assert abs(sum(dose.pump == 0 for dose in given) - expected) <= 1.0


@over_the_change
def test_H17_no_24_hours_hold_more_than_the_day_and_one_dose(zone: str, day: date) -> None:
    given = around(zone, day)
    for place, of in enumerate(plan().pumps):
        own = [dose for dose in given if dose.pump == place]
        largest = max(dose.ml for dose in own)
        for first in own:
            within = [dose.ml for dose in own if timedelta() <= dose.at - first.at <= timedelta(days=1)]
            assert sum(within) <= of.in_day_ml + of.pump.step_ml + largest + 1e-9
            within = [dose.ml for dose in own if timedelta() <= dose.at - first.at < timedelta(days=1)]
            assert sum(within) <= of.in_day_ml + of.pump.step_ml + 1e-9


@over_the_change
def test_H17_H20_calcium_and_alkalinity_stay_apart_across_the_change(zone: str, day: date) -> None:
    given = around(zone, day)
    for one, other in pairwise(given):
        if one.pump != other.pump:
            assert other.at - one.at - timedelta(seconds=one.run_time_s) >= timedelta(minutes=15)


@over_the_change
def test_H17_what_is_carried_over_the_change_is_not_lost(zone: str, day: date) -> None:
    place = ZoneInfo(zone)
    first = day - timedelta(days=3)
    # At the pump's own midnight, so that its first day is a whole one.
    set_at = datetime(first.year, first.month, first.day, tzinfo=place)
    offset = set_at.utcoffset() or timedelta()
    given = [dose for k in range(12) for dose in instants(plan(), first + timedelta(days=k), place, set_at)]
    for days in range(1, 10):
        end = set_at.astimezone(UTC) + timedelta(days=days)
        for pump, of in enumerate(plan().pumps):
            total = sum(Fraction(repr(dose.ml)) for dose in given if dose.pump == pump and dose.at < end)
            owed = days * Fraction(repr(of.pump.per_day_ml)) - total
            assert 0 <= owed < Fraction(repr(of.pump.step_ml)), (offset, days)


def test_H17_nothing_is_dosed_before_the_clock_is_set() -> None:
    set_at = datetime(2026, 3, 29, 9, 30, tzinfo=UTC)
    given = instants(plan(), date(2026, 3, 29), ZoneInfo("Europe/Berlin"), set_at)
    assert given
    assert min(dose.at for dose in given) >= set_at
    assert instants(plan(), date(2026, 3, 28), ZoneInfo("Europe/Berlin"), set_at) == ()


def asked(minutes: str | None, **pair: str) -> TimetableQuestion | Refused:
    pumps = [
        {"name": name, "raises": raises, "per_day": "52.8 mL per day", "flow": "24 mL/min", "doses_per_day": 12}
        for name, raises in (("Soda", "alkalinity"), ("Lime", "calcium"), ("Lime B", "calcium"), ("Salt", "magnesium"))
    ]
    raw = {"pump": pumps, **({"keep_apart": minutes} if minutes else {}), **({"apart": [pair]} if pair else {})}
    question = timetable(raw, known())
    assert isinstance(question, TimetableQuestion), question
    return question


def test_H20_calcium_and_alkalinity_are_kept_apart_without_being_asked() -> None:
    question = asked(None)
    assert isinstance(question, TimetableQuestion)
    assert [(pair.first, pair.second, pair.minutes) for pair in question.apart] == [(0, 1, 15.0), (0, 2, 15.0)]
    answer = solve(question)
    assert isinstance(answer, TimetableAnswer)
    assert min(answer.seen.nearest_s) >= 900.0


def test_H20_no_wish_brings_them_nearer_than_common_practice() -> None:
    for question in (asked("5 min"), asked("0 min"), asked("20 min", first="Lime", second="Soda", at_least="14 min")):
        assert isinstance(question, TimetableQuestion)
        result = solve(question)
        assert isinstance(result, Refused)
        assert {reason.code for reason in result.reasons} == {"timetable_apart_least"}


def test_H20_less_than_half_an_hour_apart_is_said() -> None:
    near = solve(replace(PAIR, pumps=(doses(SODA, 36), doses(LIME, 36))))
    assert isinstance(near, TimetableAnswer)
    assert [reason.code for reason in near.remarks] == ["timetable_rather_further"]
    far = solve(replace(PAIR, pumps=(doses(SODA, 12), doses(LIME, 12))))
    assert isinstance(far, TimetableAnswer)
    assert far.remarks == ()


def test_H20_pairs_stay_apart_round_midnight() -> None:
    for seed in range(0, 120, 2):
        answer = solve(drawn(seed))
        if isinstance(answer, Refused):
            continue
        for pair in answer.question.apart:
            ends = [
                (60 * row.minute + row.run_time_s + row.more_s, 60 * row.minute, row.pump)
                for row in answer.rows
                if row.pump in (pair.first, pair.second)
            ]
            for end, _, pump in ends:
                for _, begin, other in ends:
                    if other != pump:
                        assert (begin - end) % 86400 >= 60 * pair.minutes - 1e-6, seed


def test_H21_no_single_dose_is_above_the_jump_that_is_allowed() -> None:
    seen = 0
    for seed in range(1, 160, 2):
        answer = solve(drawn(seed))
        if isinstance(answer, Refused):
            continue
        for row in answer.rows:
            largest = answer.question.pumps[row.pump].largest_ml
            if largest is not None:
                seen += 1
                assert row.ml + row.more_ml <= largest + 1e-9
    assert seen > 100


def test_H21_doses_of_a_pump_are_never_packed_into_one() -> None:
    for seed in range(0, 160, 2):
        answer = solve(drawn(seed))
        if isinstance(answer, Refused):
            continue
        for place, day in enumerate(answer.pumps):
            shut: set[int] = set()
            for hours in answer.question.hours(place):
                shut |= {(hours.start + k) % 1440 for k in range(hours.lasts)}
            longest_s = max(row.run_time_s + row.more_s for row in answer.rows if row.pump == place)
            # A dose that cannot end before the quiet hours takes its own length from the open hours too.
            open_min = 1440 - len(shut) - len(answer.question.hours(place)) * (longest_s / 60.0 + 1.0)
            wished = day.pump.closest_min
            least = open_min / day.doses.count / 2.0 - 1.0 if wished is None else wished
            assert day.doses.count == 1 or day.shortest_min >= least, seed
