"""When something was measured: strict, and never in the future (hazard H8)."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from evenwater.engine.reasons import Reason
from evenwater.screens.when import AskWhen, age_words, choice_words, read_when, when_words, written

BERLIN = ZoneInfo("Europe/Berlin")
NOW = datetime(2026, 11, 25, 9, 0, tzinfo=BERLIN)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("now", datetime(2026, 11, 25, 9, 0, tzinfo=BERLIN)),
        ("today 08:00", datetime(2026, 11, 25, 8, 0, tzinfo=BERLIN)),
        ("Today, 8:00", datetime(2026, 11, 25, 8, 0, tzinfo=BERLIN)),
        ("yesterday 18:30", datetime(2026, 11, 24, 18, 30, tzinfo=BERLIN)),
        ("08:00", datetime(2026, 11, 25, 8, 0, tzinfo=BERLIN)),
        ("2026-11-25 08:00", datetime(2026, 11, 25, 8, 0, tzinfo=BERLIN)),
        ("2026-11-3 8:05", datetime(2026, 11, 3, 8, 5, tzinfo=BERLIN)),
        ("2026-11-25T07:00:00+00:00", datetime(2026, 11, 25, 8, 0, tzinfo=BERLIN)),
        ("2026-11-25T08:00:00", datetime(2026, 11, 25, 8, 0, tzinfo=BERLIN)),
        ("09:05", datetime(2026, 11, 25, 9, 5, tzinfo=BERLIN)),
    ],
)
def test_times_that_have_one_meaning(text: str, expected: datetime) -> None:
    found = read_when(text, NOW)
    assert isinstance(found, datetime)
    assert found.utcoffset() is not None
    assert found.timestamp() == expected.timestamp()


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("3/11 8:00", "when_day_or_month"),
        ("03.11.2026 08:00", "when_day_or_month"),
        ("11-3-26", "when_day_or_month"),
        ("6:30 pm", "when_twelve_hour"),
        ("today 8am", "when_twelve_hour"),
        ("2026-11-24", "when_no_clock"),
        ("2026-02-30 08:00", "when_no_such_time"),
        ("2026-13-01 08:00", "when_no_such_time"),
        ("today 24:00", "when_no_such_time"),
        ("08:60", "when_no_such_time"),
        ("today", "when_unknown"),
        ("eight", "when_unknown"),
        ("0800", "when_unknown"),
        ("٠٨:٠٠", "when_unknown"),
        ("08:00:61", "when_unknown"),
    ],
)
def test_times_that_cannot_be_taken_say_why(text: str, code: str) -> None:
    found = read_when(text, NOW)
    assert isinstance(found, Reason)
    assert found.code == code
    assert when_words(found).startswith("“")


@pytest.mark.parametrize(
    "text", ["09:06", "today 10:00", "2026-11-26 08:00", "2027-11-25 08:00", "2026-11-25T09:00:00+00:00"]
)
def test_H8_more_than_five_minutes_ahead_is_refused(text: str) -> None:
    found = read_when(text, NOW)
    assert isinstance(found, Reason)
    assert found.code == "when_future"


def test_nothing_is_nothing() -> None:
    assert read_when("  ", NOW) is None


@pytest.mark.parametrize(
    ("hour", "minute", "text", "days"),
    [(0, 10, "23:50", [24]), (0, 10, "00:05", [24, 25]), (23, 40, "23:30", [24, 25]), (23, 40, "08:00", [24, 25])],
)
def test_H8_near_midnight_a_bare_time_is_asked_about(hour: int, minute: int, text: str, days: list[int]) -> None:
    now = NOW.replace(hour=hour, minute=minute)
    found = read_when(text, now)
    assert isinstance(found, AskWhen)
    assert [t.day for t in found.readings] == days
    assert when_words(found.reason).endswith("today or yesterday?")


def test_a_day_in_words_is_not_asked_about_near_midnight() -> None:
    found = read_when("yesterday 23:50", NOW.replace(hour=0, minute=10))
    assert isinstance(found, datetime)
    assert found.day == 24


@pytest.mark.parametrize("text", ["2026-10-25 02:30", "2026-03-29 02:30"])
def test_H17_an_hour_that_comes_twice_or_never_is_refused(text: str) -> None:
    found = read_when(text, NOW)
    assert isinstance(found, Reason)
    assert found.code == "when_clock_changed"


def test_H17_an_offset_names_one_instant_in_the_hour_that_comes_twice() -> None:
    for offset, hour in (("+02:00", 0), ("+01:00", 1)):
        found = read_when(f"2026-10-25T02:30:00{offset}", NOW)
        assert isinstance(found, datetime)
        assert found.astimezone(UTC) == datetime(2026, 10, 25, hour, 30, tzinfo=UTC)


def test_H17_age_counts_hours_that_passed_not_hours_on_the_clock() -> None:
    before = datetime(2026, 10, 24, 12, 0, tzinfo=BERLIN)
    after = datetime(2026, 10, 25, 12, 0, tzinfo=BERLIN)
    assert age_words(before, after) == "25\u00a0h ago"


@pytest.mark.parametrize(
    ("minutes", "words"),
    [
        (0, "just now"),
        (25, "25\u00a0min ago"),
        (60, "1\u00a0h ago"),
        (47 * 60, "47\u00a0h ago"),
        (49 * 60, "2\u00a0days ago"),
    ],
)
def test_age_in_words(minutes: int, words: str) -> None:
    assert age_words(NOW - timedelta(minutes=minutes), NOW) == words


def test_what_is_written_reads_back_as_the_same_instant() -> None:
    for hours in (0, 1, 8, 20, 30, 40, 24 * 9):
        instant = NOW - timedelta(hours=hours)
        found = read_when(written(instant, NOW), NOW)
        assert isinstance(found, datetime)
        assert found.timestamp() == instant.timestamp()


def test_another_zone_can_be_given() -> None:
    found = read_when("today 08:00", datetime(2026, 11, 25, 9, 0, tzinfo=UTC), BERLIN)
    assert isinstance(found, datetime)
    assert found.astimezone(UTC).hour == 7


def test_a_button_spells_out_a_day_that_is_further_off() -> None:
    assert choice_words(NOW - timedelta(days=1), NOW) == "yesterday 09:00"
    assert choice_words(NOW - timedelta(days=4), NOW) == "Sat 21 Nov 2026 09:00"
