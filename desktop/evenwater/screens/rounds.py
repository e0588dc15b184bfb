"""The Rounds sheet without its widgets: what is wrong and what is due in the whole fish room, in order, with the reason."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta

from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.screens.shown import date_time

# What must be seen to at once stands before what is due, and that before what comes within two days.
WRONG, DUE, SOON = "wrong", "due", "soon"
_ORDER = (WRONG, DUE, SOON)
_AHEAD = timedelta(days=2)


@dataclass(frozen=True)
class Duty:
    """One line: how urgent, where, what to do, why, and what to open for it.

    ``sheet`` is the name of the sheet, ``record`` the id of the system or jug, ``subject`` a parameter or a plan id.
    """

    urgency: str
    at: datetime
    place: str
    what: str
    why: str
    sheet: str
    record: str
    subject: str = ""


@dataclass(frozen=True)
class LastReading:
    """The newest reading of a parameter of a system."""

    system_id: str
    parameter: str
    at: datetime


@dataclass(frozen=True)
class Hanging:
    """A card on a stand: ``void`` when it must not be followed, with the reason."""

    plan_id: str
    system_id: str
    parameter: str
    valid_until: datetime
    void: bool
    why: str = ""


@dataclass(frozen=True)
class Contents:
    """A batch in a jug, with the last day it is to be used, or None."""

    stock_id: str
    name: str
    use_by: datetime | None


@dataclass(frozen=True)
class Room:
    """All that decides what is due: names of the systems by id, readings, cards, jugs, and what is corrected there."""

    systems: Mapping[str, str]
    readings: tuple[LastReading, ...]
    corrected: tuple[tuple[str, str], ...]
    cards: tuple[Hanging, ...]
    jugs: tuple[Contents, ...]


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
        The most urgent first, within that the oldest first, then by place.
    """
    found = (*_cards(room, now), *_tests(room, catalogue, now), *_jugs(room, now))
    return tuple(sorted(found, key=lambda duty: (_ORDER.index(duty.urgency), duty.at, duty.place, duty.what)))


def _urgency(at: datetime, now: datetime) -> str | None:
    if at <= now:
        return DUE
    return SOON if at <= now + _AHEAD else None


def _cards(room: Room, now: datetime) -> Iterator[Duty]:
    for card in room.cards:
        place = room.systems.get(card.system_id, "A system that is gone")
        if card.void:
            why = card.why or "Another card has taken its place."
            yield Duty(
                WRONG,
                card.valid_until,
                place,
                f"Take down card {card.plan_id}",
                why,
                "Correct",
                card.system_id,
                card.parameter,
            )
            continue
        urgency = _urgency(card.valid_until, now)
        if urgency is not None:
            ends = date_time(card.valid_until.astimezone(now.tzinfo))
            why = f"It {'was' if urgency == DUE else 'is'} valid until {ends}."
            what = f"Replace card {card.plan_id}"
            yield Duty(urgency, card.valid_until, place, what, why, "Correct", card.system_id, card.parameter)


def _tests(room: Room, catalogue: Catalogue, now: datetime) -> Iterator[Duty]:
    last = {(r.system_id, r.parameter): r.at for r in room.readings}
    for system, parameter in dict.fromkeys((*last, *room.corrected)):
        known = catalogue.parameters.get(parameter)
        if known is None or system not in room.systems:
            continue
        at = last.get((system, parameter))
        if at is None:
            yield Duty(
                DUE,
                now,
                room.systems[system],
                f"Test {parameter}",
                "No reading is in the log yet.",
                "Log",
                system,
                parameter,
            )
            continue
        due = at + timedelta(days=known.stale_days)
        urgency = _urgency(due, now)
        if urgency is not None:
            yield Duty(
                urgency, due, room.systems[system], f"Test {parameter}", _age(at, known, now), "Log", system, parameter
            )


def _age(at: datetime, parameter: Parameter, now: datetime) -> str:
    days = (now - at) / timedelta(days=1)
    age = "less than a day" if days < 1.0 else "1 day" if days < 2.0 else f"{int(days)} days"
    held = "a day" if parameter.stale_days == 1.0 else f"{parameter.stale_days:.0f} days"
    return f"The last reading is {age} old; it holds {held}."


def _jugs(room: Room, now: datetime) -> Iterator[Duty]:
    for jug in room.jugs:
        if jug.use_by is None:
            continue
        urgency = _urgency(jug.use_by, now)
        if urgency is not None:
            why = f"Its batch {'was' if urgency == DUE else 'is'} to be used by {jug.use_by.day} {jug.use_by:%b %Y}."
            yield Duty(urgency, jug.use_by, jug.name, "Mix a new batch", why, "Stocks", jug.stock_id)


def headline(found: Iterable[Duty]) -> str:
    """Return how much there is to do, in words."""
    counts = dict.fromkeys(_ORDER, 0)
    for duty in found:
        counts[duty.urgency] += 1
    if not any(counts.values()):
        return "Nothing is wrong and nothing is due."
    said = [
        f"{counts[urgency]} {words}"
        for urgency, words in ((WRONG, "wrong"), (DUE, "due"), (SOON, "due within two days"))
        if counts[urgency]
    ]
    return ", ".join(said) + "."
