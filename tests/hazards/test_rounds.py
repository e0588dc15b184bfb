"""H7, H9, H16, H17, H24 and H26 on the rounds: what is old, stuck, empty or void is told, whatever the clock does."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest

from evenwater.screens import rounds
from evenwater.screens.rounds import DUE, SOON, WRONG, Contents, Hanging, LastReading, Room
from evenwater.screens.rounds_jugs import Drawn, filled
from tests.screens.asked import catalogue

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
READ = LastReading("n", "alkalinity", NOW)
JUG = Contents("a", "Ash", None)
ROOM = Room({"n": "North"}, (), (), (), ())
# The two days of 2026 on which clocks change, or did in the year named, in six zones.
CHANGES = [
    ("Europe/Berlin", "2026-03-29"), ("Europe/Berlin", "2026-10-25"), ("America/New_York", "2026-03-08"),
    ("America/New_York", "2026-11-01"), ("America/Sao_Paulo", "2018-11-04"), ("America/Sao_Paulo", "2019-02-17"),
    ("Australia/Lord_Howe", "2026-04-05"), ("Australia/Lord_Howe", "2026-10-04"), ("Africa/Casablanca", "2026-02-15"),
    ("Africa/Casablanca", "2026-03-22"), ("Asia/Kathmandu", "2026-03-29"), ("Asia/Kathmandu", "2026-10-25"),
]  # fmt: skip
over_changes = pytest.mark.parametrize(("zone", "day"), CHANGES)


def urgency(room: Room, now: datetime) -> list[str]:
    return [duty.urgency for duty in rounds.duties(room, catalogue(), now)]


def test_H7_a_reading_grows_old_as_the_clock_goes_on() -> None:
    """Hour by hour for five days: it is quiet, then told two days ahead, then due, and never quiet again."""
    seen = [urgency(replace(ROOM, readings=(READ,)), NOW + timedelta(hours=hour)) for hour in range(120)]
    assert seen == [[]] * 24 + [[SOON]] * 48 + [[DUE]] * 48


@pytest.mark.parametrize("ahead", [timedelta(minutes=6), timedelta(days=2), timedelta(days=400)])
def test_H7_a_reading_dated_ahead_does_not_stay_fresh_for_ever(ahead: timedelta) -> None:
    """A clock that was wrong when it was noted, or is wrong now, is asked about instead of believed."""
    (duty,) = rounds.duties(replace(ROOM, readings=(replace(READ, at=NOW + ahead),)), catalogue(), NOW)
    assert duty.urgency == DUE
    assert "still to come" in duty.why
    assert "clock" in duty.why


def test_H7_clocks_that_differ_by_minutes_are_no_fault() -> None:
    assert not urgency(replace(ROOM, readings=(replace(READ, at=NOW + timedelta(minutes=5)),)), NOW)


@over_changes
def test_H17_a_reading_holds_its_hours_over_a_change_of_clock(zone: str, day: str) -> None:
    """Three days are 72 hours, whatever the wall clock shows."""
    here = ZoneInfo(zone)
    at = datetime.fromisoformat(f"{day}T00:00").replace(tzinfo=here) - timedelta(days=1)
    room = replace(ROOM, readings=(replace(READ, at=at),))
    for hours, expected in ((71.9, [SOON]), (72.1, [DUE])):
        now = (at.astimezone(UTC) + timedelta(hours=hours)).astimezone(here)
        assert urgency(room, now) == expected


@over_changes
def test_H24_a_jug_lasts_its_hours_over_a_change_of_clock(zone: str, day: str) -> None:
    here = ZoneInfo(zone)
    since = datetime.fromisoformat(f"{day}T00:00").replace(tzinfo=here) - timedelta(days=2)
    empty = since.astimezone(UTC) + timedelta(hours=96)
    for hours, expected in ((71.9, SOON), (72.1, DUE), (95.9, DUE), (96.1, WRONG)):
        now = (since.astimezone(UTC) + timedelta(hours=hours)).astimezone(here)
        jug = filled(JUG, 400.0, since, [Drawn(100.0)], now)
        assert jug.runs_out is not None
        assert abs(jug.runs_out - empty) < timedelta(seconds=1)
        assert urgency(replace(ROOM, jugs=(jug,)), now) == [expected]


def test_H24_the_date_follows_from_what_is_left_and_the_rate() -> None:
    """By hand: 1000 mL less 400 mL logged, at 120 mL a day, are five days."""
    jug = filled(JUG, 1000.0, NOW - timedelta(days=4), [Drawn(120.0, 400.0, NOW)], NOW)
    assert jug.runs_out == NOW + timedelta(days=5)
    (duty,) = rounds.duties(replace(ROOM, jugs=(jug,)), catalogue(), NOW)
    assert duty.urgency == SOON
    assert "empty on Mon 30 Nov 2026" in duty.why


def test_H24_a_jug_only_ever_grows_more_urgent_while_nothing_is_done() -> None:
    order = {None: 0, SOON: 1, DUE: 2, WRONG: 3}
    seen = []
    for hour in range(24 * 14):
        now = NOW + timedelta(hours=hour)
        jug = filled(JUG, 1000.0, NOW, [Drawn(60.0), Drawn(40.0, 55.0, NOW + timedelta(hours=1))], now)
        found = urgency(replace(ROOM, jugs=(jug,)), now)
        seen.append(order[found[0] if found else None])
    assert all(one <= other for one, other in pairwise(seen))
    assert set(seen) == {0, 1, 2, 3}


def test_H24_more_takers_never_make_a_jug_last_longer() -> None:
    alone = filled(JUG, 1000.0, NOW - timedelta(days=2), [Drawn(50.0)], NOW).runs_out
    shared = filled(JUG, 1000.0, NOW - timedelta(days=2), [Drawn(50.0), Drawn(1.0)], NOW).runs_out
    assert alone is not None
    assert shared is not None
    assert shared < alone


def test_H9_a_kit_that_always_says_the_same_is_questioned() -> None:
    stuck = replace(READ, same=3, typed="8.0\u00a0dKH")
    (duty,) = rounds.duties(replace(ROOM, readings=(stuck,)), catalogue(), NOW)
    assert (duty.urgency, duty.what) == (DUE, "Test alkalinity again with a fresh kit")


def test_H26_a_superseded_card_is_shown_until_it_is_ticked() -> None:
    """However long it hangs: it is wrong on every round, before anything that is due."""
    card = Hanging("OLD123-22", "n", "alkalinity", NOW + timedelta(days=9), True, "Another card has taken its place.")
    room = replace(ROOM, cards=(card,), readings=(replace(READ, at=NOW - timedelta(days=9)),))
    for days in (0, 8, 10, 400):
        first, *_ = rounds.duties(room, catalogue(), NOW + timedelta(days=days))
        assert (first.urgency, first.what) == (WRONG, "Take down card OLD123-22")
    assert urgency(replace(room, cards=()), NOW) == [DUE]


def test_H16_nothing_missed_is_ever_added_up() -> None:
    """Two weeks away: each thing is due once, with no amount to give."""
    room = replace(
        ROOM,
        readings=(READ,),
        jugs=(filled(JUG, 9000.0, NOW, [Drawn(100.0)], NOW + timedelta(days=14)),),
    )
    found = rounds.duties(room, catalogue(), NOW + timedelta(days=14))
    assert [duty.what for duty in found] == ["Test alkalinity"]
    assert not any(word in f"{duty.what} {duty.why}" for duty in found for word in ("missed", "catch", "mL"))
