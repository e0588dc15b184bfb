"""The Rounds sheet without its widgets: what is wrong and what is due in the whole fish room, in order, with the reason."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from evenwater.engine.catalogue import Catalogue
from evenwater.screens.rounds_foods import foods, kept_food
from evenwater.screens.rounds_jugs import jugs
from evenwater.screens.rounds_plans import cards, plans
from evenwater.screens.rounds_room import (
    CARD,
    DUE,
    FOOD,
    JUG,
    ORDER,
    PLAN,
    SOON,
    TEST,
    WRONG,
    Clock,
    Contents,
    Duty,
    Followed,
    Hanging,
    KeptFood,
    LastReading,
    Room,
)
from evenwater.screens.rounds_tests import tests
from evenwater.wording import say

__all__ = [
    "CARD",
    "DUE",
    "FOOD",
    "JUG",
    "PLAN",
    "SOON",
    "TEST",
    "WRONG",
    "Clock",
    "Contents",
    "Duty",
    "Followed",
    "Hanging",
    "KeptFood",
    "LastReading",
    "Room",
    "duties",
    "headline",
    "kept_food",
]


def duties(room: Room, catalogue: Catalogue, now: datetime) -> tuple[Duty, ...]:
    """Return what is wrong, due, or due soon, in the order in which to see to it.

    Parameters
    ----------
    room : Room
        The fish room.
    catalogue : Catalogue
        Parameters, for how long a reading holds.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    tuple of Duty
        The most urgent first, within that the oldest first, then by place; of one thing one line.
    """
    clock = Clock.of(now)
    found = (
        *plans(room, clock),
        *cards(room, clock),
        *tests(room, catalogue, clock),
        *jugs(room, clock),
        *foods(room, clock),
        *room.at_pumps,
    )
    return tuple(sorted(found, key=_order))


def _order(duty: Duty) -> tuple[int, bool, datetime, str, str]:
    """Sort by urgency, then by age; a dosing that must end stands before everything else that is wrong."""
    return ORDER.index(duty.urgency), duty.kind != PLAN or duty.urgency != WRONG, duty.at, duty.place, duty.what


def headline(found: Iterable[Duty]) -> str:
    """Return how much there is to do, in words."""
    counts = dict.fromkeys(ORDER, 0)
    for duty in found:
        counts[duty.urgency] += 1
    if not any(counts.values()):
        return say("Nothing is wrong and nothing is due.")
    said = [
        f"{counts[urgency]} {words}"
        for urgency, words in ((WRONG, say("wrong")), (DUE, say("due")), (SOON, say("due soon")))
        if counts[urgency]
    ]
    return ", ".join(said) + "."
