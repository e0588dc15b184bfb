"""H17 and H18 from the keeper's side: what is typed and read in local time, on the days on which clocks are changed and after.

The days are those of the tz database (https://www.iana.org/time-zones).
"""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Typed, Water
from evenwater.screens import dose_card
from evenwater.screens.answer import shown_of
from evenwater.screens.local_zone import LocalZone
from evenwater.screens.logbook import Taken, row, take
from evenwater.screens.ramp import chart
from evenwater.screens.when import read_when, written
from evenwater.store import Entry, Store
from tests.engine.asking import answered, ask, known, worked
from tests.store.writing import added
from tests.ui.log_making import living_in

# Two changes of clocks in a year: by an hour, at midnight, by half an hour, back before Ramadan and forth after it;
# and a zone 45 minutes off that has none, on two ordinary days.
DAYS = {
    "Europe/Berlin": (date(2026, 3, 29), date(2026, 10, 25)),
    "America/New_York": (date(2026, 3, 8), date(2026, 11, 1)),
    "America/Sao_Paulo": (date(2018, 11, 4), date(2018, 2, 17)),
    "Australia/Lord_Howe": (date(2026, 10, 4), date(2026, 4, 5)),
    "Africa/Casablanca": (date(2026, 3, 22), date(2026, 2, 15)),
    "Asia/Kathmandu": (date(2026, 3, 29), date(2026, 10, 25)),
}
BOTH = [(zone, day) for zone, days in DAYS.items() for day in days]
over_the_change = pytest.mark.parametrize(("zone", "day"), BOTH, ids=str)
# How much longer than 24 hours each day is [h].
LONGER = {"Australia/Lord_Howe": 0.5, "Asia/Kathmandu": 0.0}
_WHEN = re.compile(r"From (\w+ \d+ \w+)\s(\d\d:\d\d) .*, last (\w+ \d+ \w+)\s(\d\d:\d\d)")


def start_of(zone: str, day: date) -> datetime:
    """Return the first instant of a local day, in UTC."""
    noon_before = datetime(day.year, day.month, day.day, 12, tzinfo=ZoneInfo(zone)) - timedelta(days=1)
    at = noon_before.astimezone(UTC)
    while at.astimezone(ZoneInfo(zone)).date() < day:
        at += timedelta(minutes=15)
    return at


def said(instant: datetime, zone: str) -> tuple[str, str]:
    """Return an instant as a clock on the wall shows it, by the tz database: date and time."""
    there = instant.astimezone(ZoneInfo(zone))
    return f"{there:%a} {there.day} {there:%b}", f"{there:%H:%M}"


@over_the_change
def test_H17_the_days_are_as_long_as_they_are_said_to_be(zone: str, day: date) -> None:
    hours = (start_of(zone, day + timedelta(days=1)) - start_of(zone, day)) / timedelta(hours=1)
    by = LONGER.get(zone, 1.0)
    assert hours == 24.0 + (-by if day == DAYS[zone][0] else by)


@over_the_change
def test_H17_the_doses_of_a_plan_keep_their_interval_over_the_change(zone: str, day: date) -> None:
    with living_in(zone):
        now = (start_of(zone, day) - timedelta(hours=5)).astimezone(LocalZone())
        answer = answered(worked(change__measured_at=now.isoformat()), now)
        view = chart(answer, shown_of(answer.question, now.tzinfo))
        apart = np.diff(view.doses_at)
        assert view.doses_at.size > 30, "the plan must reach over the change"
        assert np.allclose(apart, 3600.0, rtol=0.0, atol=1e-3), "an hour is an hour, whatever the wall shows"
        assert view.doses_at[0] == pytest.approx(now.timestamp() + 3600.0, abs=1e-3)
        # No clock of the world gives a dose more in 24 hours.
        for at in view.doses_at:
            within = (view.doses_at >= at) & (view.doses_at < at + 86400.0 - 1e-3)
            assert view.doses_ml[within].sum() <= answer.never_more_ml + 1e-9


@over_the_change
def test_H17_the_card_says_the_first_and_last_dose_as_the_wall_clock_will_show_them(zone: str, day: date) -> None:
    with living_in(zone):
        now = (start_of(zone, day) - timedelta(hours=5)).astimezone(LocalZone())
        answer = answered(worked(change__measured_at=now.isoformat()), now)
        found = _WHEN.match(dose_card.card(answer, now).rows[0].when.replace("\u00a0", " "))
        assert found is not None
        first = datetime.fromtimestamp(now.timestamp() + 3600.0, UTC)
        last = datetime.fromtimestamp(now.timestamp() + 3600.0 * answer.doses.count, UTC)
        assert last > start_of(zone, day + timedelta(days=1)), "the last dose lies behind the change"
        assert found.groups() == (*said(first, zone), *said(last, zone))


@over_the_change
def test_H17_every_minute_that_is_there_once_is_taken_and_every_other_is_asked_about(zone: str, day: date) -> None:
    there = ZoneInfo(zone)
    with living_in(zone):
        now = (start_of(zone, day) + timedelta(days=3)).astimezone(LocalZone())
        counts = {"once": 0, "other": 0}
        for minutes in range(0, 24 * 60, 10):
            wall = datetime(day.year, day.month, day.day, tzinfo=there) + timedelta(minutes=minutes)
            text = f"{day.isoformat()} {minutes // 60:02}:{minutes % 60:02}"
            # By the tz database alone: a wall time comes twice, or not at all, when its two folds differ.
            once = wall.utcoffset() == wall.replace(fold=1).utcoffset()
            noted = take("note", {"text": Typed("x"), "at": Typed(text)}, known(), now, Water())
            if once:
                counts["once"] += 1
                assert isinstance(noted, Taken), text
                assert noted.at.timestamp() == wall.timestamp()
                assert written(noted.at, now) == text
                continue
            counts["other"] += 1
            assert not isinstance(noted, Taken), text
            assert [message.path for message in noted] == ["log.at"]
            assert "comes twice, or not at all" in noted[0].text
        assert counts["other"] == round(60 * LONGER.get(zone, 1.0) / 10)


@over_the_change
def test_H17_an_instant_written_with_its_offset_is_read_back_in_every_hour(zone: str, day: date) -> None:
    with living_in(zone):
        at = start_of(zone, day) - timedelta(hours=1)
        now = (at + timedelta(days=2)).astimezone(LocalZone())
        for _ in range(27 * 4):
            local = at.astimezone(LocalZone())
            assert local.isoformat() == at.astimezone(ZoneInfo(zone)).isoformat()
            again = read_when(local.isoformat(), now)
            assert isinstance(again, datetime)
            assert again.timestamp() == at.timestamp()
            at += timedelta(minutes=15)


@over_the_change
def test_H17_the_list_of_the_log_has_the_order_of_time_and_the_words_of_the_wall(zone: str, day: date) -> None:
    with living_in(zone), Store.open_memory() as store:
        store.apply(added("a"))
        times = [start_of(zone, day) - timedelta(hours=2) + timedelta(minutes=30 * n) for n in range(56)]
        # Logged in any order, and with the offset of the place.
        entries = [
            Entry(f"{n:03}", "a", "dose", "jug", at.astimezone(ZoneInfo(zone)), "", {"amount": Typed("1", "mL")}, 1.0)
            for n, at in enumerate(times)
        ]
        store.log([*entries[::-2], *entries[::2]])
        found = store.entries("a", newest_first=True)
        rows = [
            row(e.id, Taken(e.kind, e.subject, e.at.astimezone(LocalZone()), "", e.fields, e.value), known(), {})
            for e in found
        ]
        assert [r.entry_id for r in rows] == [f"{n:03}" for n in range(55, -1, -1)]
        for line, at in zip(rows, reversed(times), strict=True):
            local = at.astimezone(ZoneInfo(zone))
            assert line.when == f"{local:%a} {local.day} {local:%b %Y %H:%M}"
        # The sum of 24 hours is one of elapsed time: 47 half hours before, the moment itself, and none twice.
        for n, at in enumerate(times):
            before = [t for t in times if at - timedelta(hours=24) < t <= at]
            after = [t for t in times if at < t < at + timedelta(hours=24)]
            assert store.doses_within("a", "jug", 24, at.astimezone(LocalZone())) == len(before) + len(after)
            assert len(before) == min(n + 1, 48)


def _reading_age(parameter: Parameter, zone: str, day: date) -> tuple[float, bool]:
    """Return how far apart two wall clock noons over a change are [h], and whether a reading of the first still holds."""
    now = datetime(day.year, day.month, day.day, 12, tzinfo=ZoneInfo(zone)) + timedelta(days=1)
    then = datetime(now.year, now.month, now.day, 12, tzinfo=ZoneInfo(zone)) - timedelta(days=parameter.stale_days)
    elapsed = (now.timestamp() - then.timestamp()) / 3600.0
    return elapsed, elapsed <= 24.0 * parameter.stale_days


@over_the_change
def test_H7_H17_an_age_is_elapsed_time_over_the_change(zone: str, day: date) -> None:
    parameter = known().parameters["alkalinity"]
    elapsed, holds = _reading_age(parameter, zone, day)
    now = datetime(day.year, day.month, day.day, 12, tzinfo=ZoneInfo(zone)) + timedelta(days=1)
    then = (now - timedelta(days=parameter.stale_days)).replace(tzinfo=ZoneInfo(zone))
    assert abs(elapsed - 72.0) == LONGER.get(zone, 1.0)
    found = ask(worked(change__measured_at=then.isoformat()), now)
    assert (found == ("reading_stale",)) is not holds


# H18: the turn of the day


@pytest.mark.parametrize("zone", DAYS)
def test_H18_a_day_for_the_limit_is_none_of_the_calendar(zone: str) -> None:
    there = ZoneInfo(zone)
    before, after = datetime(2026, 11, 25, 23, 59, tzinfo=there), datetime(2026, 11, 26, 0, 1, tzinfo=there)
    with Store.open_memory() as store:
        store.apply(added("a"))
        one = Entry("one", "a", "dose", "jug", before, "Ada", {"amount": Typed("20", "mL")}, 20.0)
        two = Entry("two", "a", "dose", "jug", after, "Bo", {"amount": Typed("20", "mL")}, 20.0)
        store.log([one])
        assert [dose.id for dose in store.near_duplicates(two)] == ["one"], "two minutes, whatever the date says"
        assert store.doses_within("a", "jug", 24, after) == 20.0
        store.log([two])
        assert store.doses_within("a", "jug", 24, after) == 40.0
        assert store.doses_within("a", "jug", 24, before + timedelta(hours=23, minutes=59)) == 40.0
        assert store.doses_within("a", "jug", 24, before + timedelta(hours=24)) == 20.0


@pytest.mark.parametrize("hour", range(0, 24, 3))
def test_H18_no_24_hours_of_a_plan_hold_more_than_it_says_whenever_it_begins(hour: int) -> None:
    now = datetime(2026, 11, 25, hour, 59, tzinfo=UTC)
    answer = answered(worked(), now)
    view = chart(answer, shown_of(answer.question, UTC))
    assert view.doses_at.size > 24
    # Any window of 24 hours that begins right before a dose; a calendar day is one of them.
    for at in view.doses_at:
        within = (view.doses_at >= at - 1e-3) & (view.doses_at < at + 86400.0 - 1e-3)
        assert view.doses_ml[within].sum() <= answer.doses.in_24_hours_ml + 1e-9
    gaps = {round(b - a) for a, b in pairwise(view.doses_at.tolist())}
    assert gaps == {3600}
