"""Live plans on the rounds: one line each, the dangerous first, and no card named beside its own plan's end."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from evenwater.screens import rounds
from evenwater.screens.rounds import DUE, PLAN, SOON, WRONG, Contents, Followed, Hanging, LastReading, Room
from tests.screens.asked import catalogue
from tests.screens.lint import faults

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
LIVE = Followed("ABC123-11", "n", "alkalinity", "inside", "", None, NOW - timedelta(days=2), NOW + timedelta(days=9))
FRESH = LastReading("n", "alkalinity", NOW - timedelta(hours=1))
EMPTY = Room({"n": "North"}, (FRESH,), (), (), ())


def said(room: Room) -> list[tuple[str, str, str]]:
    found = rounds.duties(room, catalogue(), NOW)
    for duty in found:
        assert not faults(duty.plain)
    return [(duty.urgency, duty.what, duty.why) for duty in found]


@pytest.mark.parametrize("state", ["inside", "waiting"])
def test_a_plan_inside_its_band_or_not_tested_yet_says_nothing(state: str) -> None:
    assert said(replace(EMPTY, plans=(replace(LIVE, state=state),))) == []


def test_H19_stop_stands_before_everything_else_that_is_wrong() -> None:
    """A dosing that goes on although less is used is the first thing to see to, however old the rest is."""
    stop = replace(LIVE, state="stop", why="Two readings lie above the band.")
    old = Contents(
        "a", "Ash", None, NOW - timedelta(days=30), per_day=1.0, basis="rate", since=NOW - timedelta(days=60)
    )
    void = Hanging("XYZ", "n", "calcium", NOW - timedelta(days=40), void=True, why="Void.")
    found = said(replace(EMPTY, plans=(stop,), jugs=(old,), cards=(void,)))
    assert found[0] == (WRONG, "Stop dosing alkalinity", "Two readings lie above the band.")
    assert [urgency for urgency, _, _ in found] == [WRONG, WRONG, WRONG]


@pytest.mark.parametrize("state", ["above", "below", "unreadable"])
def test_a_plan_off_its_band_is_looked_at(state: str) -> None:
    found = said(replace(EMPTY, plans=(replace(LIVE, state=state, why="Why."),)))
    assert found == [(WRONG, "Look at the plan for alkalinity", "Why.")]


def test_a_plan_past_its_end_is_ended_and_its_card_is_not_named_beside_it() -> None:
    ended = replace(LIVE, ends_at=NOW - timedelta(hours=2))
    card = Hanging(LIVE.plan_id, "n", "alkalinity", NOW - timedelta(hours=1), void=False)
    assert said(replace(EMPTY, plans=(ended,), cards=(card,))) == [
        (DUE, "End the plan for alkalinity", "Plan ABC123-11 reached its end on Wed 25 Nov\u00a007:00.")
    ]
    assert said(replace(EMPTY, cards=(card,)))[0][1] == "Replace card ABC123-11", "without a plan the card is named"
    void = replace(card, void=True, why="Another strength.")
    assert [what for _, what, _ in said(replace(EMPTY, plans=(ended,), cards=(void,)))] == [
        "Take down card ABC123-11",
        "End the plan for alkalinity",
    ]


def test_the_end_is_told_two_days_before() -> None:
    soon = replace(LIVE, ends_at=NOW + timedelta(hours=47))
    assert said(replace(EMPTY, plans=(soon,)))[0][:2] == (SOON, "End the plan for alkalinity")
    assert said(replace(EMPTY, plans=(replace(LIVE, ends_at=None),))) == []


def test_a_line_of_a_plan_opens_its_correction() -> None:
    (duty,) = rounds.duties(replace(EMPTY, plans=(replace(LIVE, state="stop", why="Why."),)), catalogue(), NOW)
    assert (duty.sheet, duty.record, duty.subject) == ("Correct", "n", "alkalinity")
    assert duty.key == (PLAN, "n", "ABC123-11")
