"""What is due in the fish room, in order and with the reason."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

from evenwater.screens import rounds
from evenwater.screens.rounds import Contents, Hanging, LastReading, Room
from tests.screens.asked import catalogue

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
EMPTY = Room({"n": "North", "s": "South"}, (), (), (), ())


def said(room: Room) -> list[tuple[str, str, str]]:
    return [(duty.urgency, duty.place, duty.what) for duty in rounds.duties(room, catalogue(), NOW)]


def ago(**spans: float) -> datetime:
    return NOW - timedelta(**spans)


def test_nothing_to_do_is_said():
    assert said(EMPTY) == []
    assert rounds.headline(()) == "Nothing is wrong and nothing is due."


def test_a_reading_is_due_when_it_is_stale_and_soon_two_days_before():
    # Alkalinity holds three days, magnesium fourteen: common practice, no source.
    room = replace(
        EMPTY,
        readings=(
            LastReading("n", "alkalinity", ago(days=3, minutes=1)),
            LastReading("s", "alkalinity", ago(days=2)),
            LastReading("n", "magnesium", ago(days=11)),
        ),
    )
    assert said(room) == [("due", "North", "Test alkalinity"), ("soon", "South", "Test alkalinity")]
    assert rounds.duties(room, catalogue(), NOW)[0].why == "The last reading is 3 days old; it holds 3 days."


def test_what_is_corrected_without_a_reading_is_due():
    assert said(replace(EMPTY, corrected=(("n", "calcium"),))) == [("due", "North", "Test calcium")]


def test_H26_a_void_card_stands_first_with_its_reason():
    card = Hanging("ABC123-11", "n", "alkalinity", NOW + timedelta(days=9), void=True, why="Another strength.")
    old = Hanging("DEF456-22", "s", "calcium", ago(hours=1), void=False)
    room = replace(EMPTY, cards=(old, card), readings=(LastReading("n", "alkalinity", ago(days=9)),))
    assert said(room) == [
        ("wrong", "North", "Take down card ABC123-11"),
        ("due", "North", "Test alkalinity"),
        ("due", "South", "Replace card DEF456-22"),
    ]
    assert rounds.duties(room, catalogue(), NOW)[0].why == "Another strength."


def test_a_batch_is_due_by_its_date():
    jugs = (
        Contents("a", "Ash", ago(days=1)),
        Contents("b", "Lime", NOW + timedelta(days=1)),
        Contents("c", "Salt", None),
    )
    assert said(replace(EMPTY, jugs=jugs)) == [("due", "Ash", "Mix a new batch"), ("soon", "Lime", "Mix a new batch")]


def test_the_oldest_comes_first_within_what_is_due():
    room = replace(
        EMPTY,
        readings=(LastReading("n", "alkalinity", ago(days=4)), LastReading("s", "alkalinity", ago(days=8))),
    )
    assert [place for _, place, _ in said(room)] == ["South", "North"]
    assert rounds.headline(rounds.duties(room, catalogue(), NOW)) == "2 due."
