"""What the printed round sheet says: every duty once, by place, with no amount and a place for what was read."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from evenwater.screens import round_page, rounds
from evenwater.screens.round_page import RoundLine, page
from evenwater.screens.rounds import Contents, Hanging, LastReading, Room
from tests.screens.asked import catalogue
from tests.screens.lint import faults, strings

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("Europe/Berlin"))
ROOM = Room(
    {"n": "North", "s": "South", "t": "South"},
    (
        LastReading("n", "alkalinity", NOW - timedelta(days=2)),
        LastReading("s", "calcium", NOW - timedelta(days=9)),
        LastReading("t", "nitrate", NOW - timedelta(days=90)),
        LastReading("n", "salinity", NOW - timedelta(days=90)),
    ),
    (),
    (Hanging("ABC123-11", "n", "alkalinity", NOW, True, "It was made for 5\u00a0mL of another strength."),),
    (
        Contents("a", "Ash", None, NOW + timedelta(days=3), 129.6, 43.2, NOW - timedelta(days=4), None, "rate"),
        Contents("b", "Lime", NOW),
    ),
)


def test_every_duty_stands_once_at_its_place_in_the_order_of_the_rounds() -> None:
    made = page(rounds.duties(ROOM, catalogue(), NOW), catalogue(), NOW)
    assert [(place.name, [line.what for line in place.lines]) for place in made.places] == [
        ("North", ["Take down card ABC123-11", "Test salinity", "Test alkalinity"]),
        # Two systems may have one name, and are two places.
        ("South", ["Test nitrate"]),
        ("South", ["Test calcium"]),
        ("Jugs on the shelf", ["Lime: mix a new batch", "Ash: mix a new batch"]),
    ]
    assert made.count == "7 things to do"
    assert made.issued == "Printed Wed 25 Nov 2026 09:00"


def test_a_line_says_when_and_why_and_where_to_write_what_was_read() -> None:
    made = page(rounds.duties(ROOM, catalogue(), NOW), catalogue(), NOW)
    north, _, _, shelf = made.places
    assert north.lines[0] == RoundLine("Take down card ABC123-11", "At once", "It must not be followed.", wrong=True)
    assert (north.lines[1].when, north.lines[1].reads, north.lines[1].unit) == ("Today", True, "ppt")
    assert (north.lines[2].when, north.lines[2].unit) == ("By Thu 26 Nov 2026", "dKH")
    assert not any(line.reads for line in shelf.lines)


def test_no_amount_stands_on_the_sheet() -> None:
    """What is read off a stand must never be taken for a dose."""
    duties = rounds.duties(ROOM, catalogue(), NOW)
    assert any("mL" in duty.why for duty in duties), "on the screen the reasons have their amounts"
    said = list(strings(page(duties, catalogue(), NOW)))
    assert len(said) > 20
    assert not [text for text in said if "mL" in text]
    assert not [fault for text in said for fault in faults(text, dose=True)]


def test_the_sheet_says_that_missed_doses_are_never_made_up() -> None:
    assert any("Missed doses are never made up" in text for text in round_page.RULES)


def test_nothing_to_do_is_said() -> None:
    made = page((), catalogue(), NOW)
    assert (made.places, made.count) == ((), "Nothing is wrong and nothing is due.")
    one = page(
        rounds.duties(replace(ROOM, readings=(), cards=(), jugs=ROOM.jugs[1:]), catalogue(), NOW), catalogue(), NOW
    )
    assert one.count == "1 thing to do"


def test_dates_stand_in_the_zone_of_the_keeper() -> None:
    tokyo = datetime(2026, 11, 25, 23, tzinfo=UTC).astimezone(ZoneInfo("Asia/Tokyo"))
    assert page((), catalogue(), tokyo).issued == "Printed Thu 26 Nov 2026 08:00"
