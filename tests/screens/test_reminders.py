"""Reminders as an iCalendar file: read back by a parser, held to RFC 5545 line by line, and never an order to dose."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import pytest

from evenwater.screens import reminders
from evenwater.screens.reminders import DOMAIN, Reminder, file_of, waking
from evenwater.screens.rounds import Clock, Contents, Followed, Hanging, LastReading, Room
from tests.screens.asked import catalogue

if TYPE_CHECKING:
    from icalendar import Calendar, Event

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
ROOM = Room(
    {"n": "North, with\ntwo lines; and \\ more", "s": "Süd, 北の水槽, " + "long " * 30},
    (LastReading("n", "alkalinity", NOW - timedelta(hours=2)), LastReading("s", "calcium", NOW - timedelta(days=9))),
    (("n", "magnesium"),),
    (
        Hanging("ABC123-11", "n", "alkalinity", NOW + timedelta(days=9), False),
        Hanging("OLD123-22", "n", "calcium", NOW + timedelta(days=5), True, "5 mL of another strength."),
    ),
    (
        Contents("a", "Ash", None, NOW + timedelta(days=3), 129.6, 43.2, NOW - timedelta(days=4), None, "rate"),
        Contents("b", "Lime", NOW + timedelta(days=6)),
        Contents("c", "Salt", None),
    ),
    (
        Followed("ABC123-11", "n", "alkalinity", "inside", "", NOW + timedelta(days=1), NOW, NOW + timedelta(days=4)),
        Followed("STP123-33", "s", "calcium", "stop", "Give no 12 mL more.", None, NOW, NOW + timedelta(days=4)),
    ),
)
ZONES = (
    "Europe/Berlin", "America/New_York", "America/Sao_Paulo", "Australia/Lord_Howe", "Africa/Casablanca", "Asia/Kathmandu",
)  # fmt: skip


def read(data: bytes) -> Calendar:
    """Read a file back."""
    from icalendar import Calendar

    return Calendar.from_ical(data)


def made(room: Room = ROOM, now: datetime = NOW) -> bytes:
    return file_of(reminders.reminders(room, catalogue(), now), now)


def events(data: bytes) -> dict[str, Event]:
    found = read(data).walk("VEVENT")
    return {str(event["SUMMARY"]): event for event in found}


def test_every_duty_to_come_is_reminded_of() -> None:
    at = {said.partition("more: ")[2] or said: event["DTSTART"].dt for said, event in events(made()).items()}
    assert {said: when for said, when in at.items() if "long" not in said} == {
        # The plan asks before the reading is old.
        "test alkalinity": NOW + timedelta(days=1),
        "test magnesium": datetime(2026, 11, 25, 9, 15, tzinfo=UTC),
        "replace card ABC123-11": NOW + timedelta(days=9),
        "card OLD123-22 is void": NOW + timedelta(days=5),
        # A day before it is empty, or too old.
        "Ash: look at the jug, mix a new batch": NOW + timedelta(days=2),
        "Lime: look at the jug, mix a new batch": NOW + timedelta(days=5),
        "end the plan for alkalinity": NOW + timedelta(days=4),
    }
    assert sorted(said.rpartition(": ")[2] for said in at if "long" in said) == ["stop dosing calcium", "test calcium"]


def test_RFC5545_3_1_lines_end_in_CRLF_and_have_75_octets_at_most() -> None:
    data = made()
    assert data.endswith(b"\r\n")
    assert b"\n" not in data.replace(b"\r\n", b"")
    assert b"\r" not in data.replace(b"\r\n", b"")
    assert max(len(line) for line in data.split(b"\r\n")) <= 75
    # Folded between letters: unfolded it is the same text again.
    assert "北の水槽" in data.replace(b"\r\n ", b"").decode("utf-8")


def test_RFC5545_3_6_the_calendar_has_what_it_must() -> None:
    calendar = read(made())
    # 3.7.3 and 3.7.4: required, once each; no real company's name.
    assert calendar["VERSION"] == "2.0"
    assert calendar["PRODID"] == f"-//{DOMAIN}//Evenwater//EN"
    assert DOMAIN.endswith(".invalid"), "RFC 2606: a domain that is nobody's"
    assert calendar["CALSCALE"] == "GREGORIAN"
    assert calendar["METHOD"] == "PUBLISH"
    assert calendar.errors == []
    lines = made().decode().split("\r\n")
    assert (lines[0], lines[-2]) == ("BEGIN:VCALENDAR", "END:VCALENDAR")
    assert lines.count("BEGIN:VCALENDAR") == lines.count("END:VCALENDAR") == 1


def test_RFC5545_3_6_1_every_event_has_what_it_must() -> None:
    found = read(made()).walk("VEVENT")
    assert len({str(event["UID"]) for event in found}) == len(found) == 9
    for event in found:
        assert event.errors == []
        # 3.8.7.2 and 3.8.4.7: required, once each.
        assert event["DTSTAMP"].dt == NOW
        assert re.fullmatch(rf"[0-9a-f-]{{36}}@{re.escape(DOMAIN)}", event["UID"])
        # 3.3.5, form 2: an instant in UTC, and 3.6.1: the end comes after it and has the same form.
        assert event["DTSTART"].dt.tzinfo is not None
        assert event["DTEND"].dt - event["DTSTART"].dt == timedelta(minutes=15)
        assert event["DTSTART"].dt >= NOW, "what begins in the past never rings"
        # 3.8.2.7: the keeper is not busy.
        assert event["TRANSP"] == "TRANSPARENT"
        for name in ("UID", "DTSTAMP", "DTSTART", "DTEND", "SEQUENCE", "SUMMARY", "STATUS"):
            assert not isinstance(event[name], list), f"{name} stands more than once"
    assert not re.search(rb"^(?:DTSTART|DTEND|DTSTAMP)(?!:\d{8}T\d{6}Z\r?$)", made(), re.MULTILINE)


def test_RFC5545_3_6_6_every_alarm_has_what_it_must_and_a_void_card_none() -> None:
    for said, event in events(made()).items():
        alarms = event.walk("VALARM")
        if "void" in said:
            # 3.8.1.11: what an earlier file asked for is taken back.
            assert (event["STATUS"], alarms) == ("CANCELLED", [])
            continue
        assert event["STATUS"] == "CONFIRMED"
        (alarm,) = alarms
        assert alarm["ACTION"] == "DISPLAY"
        assert alarm["TRIGGER"].dt == timedelta(0)
        assert str(alarm["DESCRIPTION"]) == said


def test_RFC5545_3_3_11_text_is_escaped_and_holds_no_control() -> None:
    room = replace(ROOM, systems={**ROOM.systems, "n": "A\x07B\r\nBEGIN:VEVENT; \\, C\x00\u0085"})
    data = made(room)
    assert data.count(b"\r\nBEGIN:VEVENT\r\n") == 9, "a name begins no event"
    assert not re.search(rb"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]", data)
    said = next(text for text in events(data) if text.endswith("test alkalinity"))
    assert said == "A B  BEGIN:VEVENT; \\, C  : test alkalinity"


def test_H16_a_reminder_never_holds_an_amount_and_says_that_it_is_no_order() -> None:
    """A stale calendar is a stale card: the amount stands on the card alone, and nothing missed is added up."""
    for said, event in events(made()).items():
        text = str(event["DESCRIPTION"])
        assert "not an order to dose" in text
        assert "never made up" in text
        assert not re.search(r"\d\s*(?:mL|L|g|dKH|mg|drops)\b", said + text.replace("\u00a0", " ")), text


def test_UIDs_are_the_same_in_every_file_and_SEQUENCE_grows() -> None:
    """RFC 5545, 3.8.7.4: a newer revision has a higher number, or a calendar keeps the old one."""
    first, later = events(made()), events(made(now=NOW + timedelta(minutes=1)))
    assert first.keys() == later.keys()
    for said, event in first.items():
        assert event["UID"] == later[said]["UID"]
        assert later[said]["SEQUENCE"] == event["SEQUENCE"] + 1
        assert 0 <= event["SEQUENCE"] < 2**31, "3.3.8: an integer has 32 bits"
    before = file_of([Reminder("test", "n", "x", NOW, "a", "b")], datetime(2025, 1, 1, tzinfo=UTC))
    assert events(before)["a"]["SEQUENCE"] == 0, "a clock that is years behind"


def test_a_reminder_of_something_else_has_another_UID() -> None:
    one = Reminder("test", "n", "alkalinity", NOW, "", "")
    others = (replace(one, kind="jug"), replace(one, record="s"), replace(one, about="calcium"))
    assert one.uid not in {each.uid for each in others}
    assert one.uid == replace(one, at=NOW + timedelta(days=1), summary="x", text="y", cancelled=True).uid


# Both days of a change of clock in each zone that has them in 2026, and a plain day where there is none any more.
CHANGES = [
    ("Europe/Berlin", (2026, 3, 29), (2026, 10, 25)),
    ("America/New_York", (2026, 3, 8), (2026, 11, 1)),
    ("America/Sao_Paulo", (2018, 11, 4), (2019, 2, 17)),
    ("Australia/Lord_Howe", (2026, 4, 5), (2026, 10, 4)),
    ("Africa/Casablanca", (2026, 2, 15), (2026, 3, 22)),
    ("Asia/Kathmandu", (2026, 3, 29), (2026, 10, 25)),
]


@pytest.mark.parametrize(("zone", "one", "other"), CHANGES, ids=[zone for zone, _, _ in CHANGES])
def test_H17_no_change_of_clock_moves_a_reminder(
    zone: str, one: tuple[int, int, int], other: tuple[int, int, int]
) -> None:
    """Every half hour of both days, written in six zones and read again: the same instant, at a waking hour."""
    here = ZoneInfo(zone)
    for day in (one, other):
        now = (datetime(*day, tzinfo=UTC) - timedelta(days=3)).astimezone(here)
        clock = Clock.of(now)
        begin = datetime(*day, tzinfo=here).astimezone(UTC)
        for half in range(50):
            at = begin + timedelta(minutes=30 * half)
            when = waking(at, clock)
            local = when.astimezone(here)
            assert 7 <= local.hour < 22
            assert timedelta(0) <= at - when <= timedelta(hours=11)
            if 7 <= at.astimezone(here).hour < 22:
                assert when == at
            data = file_of([Reminder("test", "n", "x", when, "a", "b")], now)
            assert events(data)["a"]["DTSTART"].dt == when
            # The day before, in hours that pass, not in what clocks show.
            assert events(data)["a"]["DTEND"].dt - when == timedelta(minutes=15)


@pytest.mark.parametrize("zone", ZONES)
def test_a_reading_holds_whole_days_of_24_hours_over_a_change_of_clock(zone: str) -> None:
    for _, one, other in CHANGES:
        for day in (one, other):
            noon = datetime(*day, 12, tzinfo=ZoneInfo(zone))
            now = noon - timedelta(days=1)
            reading = LastReading("n", "alkalinity", now)
            found = reminders.reminders(Room({"n": "N"}, (reading,), (), (), ()), catalogue(), now)
            due = now.astimezone(UTC) + timedelta(days=3)
            assert [each.at for each in found] == [waking(due, Clock.of(now))]
            assert due - found[0].at <= timedelta(hours=11)


def test_what_is_over_is_reminded_of_at_the_next_quarter_of_a_waking_hour() -> None:
    old = NOW - timedelta(days=9)
    for hour, minute, expected in ((9, 0, (25, 9, 15)), (9, 11, (25, 9, 30)), (21, 50, (26, 7, 0)), (3, 0, (25, 7, 0))):
        clock = Clock.of(datetime(2026, 11, 25, hour, minute, tzinfo=UTC))
        when = waking(old, clock)
        assert (when.day, when.hour, when.minute) == expected


def test_the_evening_before_is_taken_only_while_it_is_to_come() -> None:
    clock = Clock.of(datetime(2026, 11, 25, 20, 30, tzinfo=UTC))
    assert waking(datetime(2026, 11, 26, 2, tzinfo=UTC), clock) == datetime(2026, 11, 25, 21, tzinfo=UTC)
    for hour, minute in ((20, 58), (21, 10)):
        late = Clock.of(datetime(2026, 11, 25, hour, minute, tzinfo=UTC))
        assert waking(datetime(2026, 11, 26, 2, tzinfo=UTC), late) == datetime(2026, 11, 26, 7, tzinfo=UTC)


def test_nothing_further_away_than_a_card_is_valid() -> None:
    far = replace(ROOM, jugs=(Contents("b", "Lime", NOW + timedelta(days=40)),))
    assert not any(said.startswith("Lime") for said in events(made(far)))


def test_an_empty_room_makes_a_calendar_without_events() -> None:
    assert events(made(Room({}, (), (), (), ()))) == {}
