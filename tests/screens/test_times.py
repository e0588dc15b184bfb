"""Dates and clock times in words, over changes of clock, in six zones and in the zone of this machine."""

from __future__ import annotations

import sys
import time
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

import pytest

from evenwater.screens.dose_card import card
from evenwater.screens.local_zone import LocalZone
from evenwater.screens.shown import date_time, date_words, weekday_time
from tests.screens.asked import answer
from tests.screens.lint import NBSP

# Half an hour in Lord Howe, at midnight in Beirut; Kathmandu never changes its clock.
ZONES = (
    "Europe/Berlin",
    "America/New_York",
    "Australia/Lord_Howe",
    "Pacific/Auckland",
    "Asia/Beirut",
    "Asia/Kathmandu",
)


def zone(name: str) -> ZoneInfo:
    try:
        return ZoneInfo(name)
    except ZoneInfoNotFoundError:
        if sys.platform == "linux" and Path("/usr/share/zoneinfo").is_dir():
            raise
        pytest.skip("this machine has no time zone data")


def utc(text: str) -> datetime:
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


# zone, instant in UTC, what a clock on the wall there says: just before and just after each change of clock.
ON_THE_WALL = [
    ("Europe/Berlin", "2026-03-29 00:59", "Sun 29 Mar 01:59"),
    ("Europe/Berlin", "2026-03-29 01:00", "Sun 29 Mar 03:00"),
    ("Europe/Berlin", "2026-10-25 00:30", "Sun 25 Oct 02:30"),
    ("Europe/Berlin", "2026-10-25 01:30", "Sun 25 Oct 02:30"),
    ("America/New_York", "2026-03-08 06:59", "Sun 8 Mar 01:59"),
    ("America/New_York", "2026-03-08 07:00", "Sun 8 Mar 03:00"),
    ("America/New_York", "2026-11-01 05:59", "Sun 1 Nov 01:59"),
    ("America/New_York", "2026-11-01 06:00", "Sun 1 Nov 01:00"),
    ("Australia/Lord_Howe", "2026-04-04 14:59", "Sun 5 Apr 01:59"),
    ("Australia/Lord_Howe", "2026-04-04 15:00", "Sun 5 Apr 01:30"),
    ("Australia/Lord_Howe", "2026-10-03 15:29", "Sun 4 Oct 01:59"),
    ("Australia/Lord_Howe", "2026-10-03 15:30", "Sun 4 Oct 02:30"),
    ("Pacific/Auckland", "2026-09-26 13:59", "Sun 27 Sep 01:59"),
    ("Pacific/Auckland", "2026-09-26 14:00", "Sun 27 Sep 03:00"),
    ("Pacific/Auckland", "2026-12-31 11:00", "Fri 1 Jan 00:00"),
    ("Asia/Beirut", "2026-03-28 21:59", "Sat 28 Mar 23:59"),
    ("Asia/Beirut", "2026-03-28 22:00", "Sun 29 Mar 01:00"),
    ("Asia/Kathmandu", "2026-11-25 18:15", "Thu 26 Nov 00:00"),
]


def test_every_zone_is_walked_through() -> None:
    assert {name for name, _, _ in ON_THE_WALL} == set(ZONES)


@pytest.mark.parametrize(("name", "instant", "words"), ON_THE_WALL)
def test_wall_clock(name: str, instant: str, words: str) -> None:
    local = utc(instant).astimezone(zone(name))
    assert date_time(local).replace(NBSP, " ") == words
    day, number, month, _ = words.split()
    assert date_words(local) == f"{day} {number} {month} {local.year}"


@pytest.mark.parametrize(("name", "instant", "words"), ON_THE_WALL)
def test_weekday_time_is_the_same_clock(name: str, instant: str, words: str) -> None:
    when, here = utc(instant), zone(name)
    clock = words.rsplit(" ", 1)[1]
    full = {"Mon": "Monday", "Tue": "Tuesday", "Wed": "Wednesday", "Thu": "Thursday", "Fri": "Friday", "Sat": "Saturday",
            "Sun": "Sunday"}[words[:3]]  # fmt: skip
    assert plain(when, when.astimezone(here)) == f"today {clock}"
    assert plain(when, (when - timedelta(days=2)).astimezone(here)) == f"{full} {clock}"
    assert plain(when, (when - timedelta(days=7, hours=2)).astimezone(here)).startswith(words[:3] + " ")


def plain(when: datetime, now: datetime) -> str:
    return weekday_time(when, now).replace(NBSP, " ")


def test_weekday_is_never_that_of_another_week() -> None:
    now = utc("2026-11-25 09:00")
    assert plain(now + timedelta(days=6), now) == "Tuesday 09:00"
    assert plain(now + timedelta(days=7), now) == "Wed 2 Dec 2026 09:00"
    assert plain(now + timedelta(hours=14, minutes=59), now) == "today 23:59"
    assert plain(now + timedelta(hours=15), now) == "Thursday 00:00"


def hours_of_change(name: str) -> Iterator[datetime]:
    """Yield every half hour of 2026 within a day of a change of clock."""
    here, at = zone(name), utc("2026-01-01 00:00")
    offsets = [(at + timedelta(hours=h)).astimezone(here).utcoffset() for h in range(24 * 365)]
    for hour in (h for h in range(1, len(offsets)) if offsets[h] != offsets[h - 1]):
        yield from (at + timedelta(hours=hour, minutes=30 * n) for n in range(-48, 48))


@pytest.mark.parametrize("name", ZONES)
def test_local_zone_is_that_of_the_machine_through_its_changes(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    if not hasattr(time, "tzset"):
        pytest.skip("the zone of this system cannot be set for a process")
    here = zone(name)
    monkeypatch.setenv("TZ", name)
    time.tzset()
    try:
        instants = list(hours_of_change(name)) or [utc("2026-06-01 00:00")]
        for instant in instants:
            mine, known = instant.astimezone(LocalZone()), instant.astimezone(here)
            assert mine.replace(tzinfo=None) == known.replace(tzinfo=None)
            assert (mine.fold, mine.utcoffset(), mine.tzname()) == (known.fold, known.utcoffset(), known.tzname())
            assert mine.astimezone(UTC) == instant
    finally:
        monkeypatch.undo()
        time.tzset()


@pytest.mark.parametrize("name", ZONES)
def test_doses_over_a_change_of_clock_are_at_the_times_the_wall_shows(name: str) -> None:
    here = zone(name)
    changes = list(hours_of_change(name))
    starts = changes[::24] or [utc("2026-06-01 09:00")]
    for start in starts:
        plan = answer({"now": start, "change.measured_at": start - timedelta(hours=1)})
        made = card(plan, start.astimezone(here))
        first = start + timedelta(days=1) / plan.doses.per_day
        last = start + plan.doses.count * (timedelta(days=1) / plan.doses.per_day)
        after = last + timedelta(days=1) / plan.doses.per_day
        ramp, upkeep = made.rows
        assert ramp.when.startswith(f"From {date_time(first.astimezone(here))} ")
        assert ramp.when.endswith(f"last {date_time(last.astimezone(here))}")
        assert upkeep.when.startswith(f"From {date_time(after.astimezone(here))} ")
