"""Reminders for any calendar: what is to be tested, refilled, replaced and ended, as an iCalendar file (RFC 5545).

A reminder is no order to dose: it never holds an amount, and where the room has changed since, the Rounds sheet is
right. Its instants stand in UTC, so that no change of clock and no calendar's zone can move them.
"""

from __future__ import annotations

import json
import math
import unicodedata
import uuid
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from evenwater.engine.catalogue import Catalogue
from evenwater.screens.rounds_plans import plans
from evenwater.screens.rounds_room import CARD, JUG, PLAN, TEST, WRONG, Clock, Room, place_of
from evenwater.screens.rounds_tests import due_at
from evenwater.screens.terms import inside, term
from evenwater.wording import marked, say

DOMAIN = "evenwater.invalid"
PRODUCT = f"-//{DOMAIN}//Evenwater//EN"
SAFETY = marked(
    "This is a reminder, not an order to dose. Missed doses are never made up. Look at the Rounds sheet first: it knows what came since."
)
# Under which the ids are worked out; drawn once, and never to be changed, or calendars would hold everything twice.
_IDS = uuid.UUID("2b1e0d8e-6a53-4c39-9f0c-7f4f5f6d9b12")
# Further ahead than any card is valid, nothing is known well enough. Common practice, no source.
_HORIZON = timedelta(days=30)
# Nobody tests water at four in the morning; these hours also keep clear of every change of clock.
_MORNING, _EVENING, _NIGHT = 7, 21, 22
_LENGTH = timedelta(minutes=15)
_TO_OPEN, _QUARTER = timedelta(minutes=5), timedelta(minutes=15)
_BEFORE_EMPTY = timedelta(days=1)
_COUNTED_FROM = datetime(2026, 1, 1, tzinfo=UTC)


@dataclass(frozen=True)
class Reminder:
    """One entry of a calendar: ``kind``, ``record`` and ``about`` say what it is about and make its id.

    ``at`` is an instant in UTC. One that is ``cancelled`` takes an entry of an earlier file out of force.
    """

    kind: str
    record: str
    about: str
    at: datetime
    summary: str
    text: str
    cancelled: bool = False

    @property
    def uid(self) -> str:
        """Its id, the same in every file."""
        about = json.dumps([self.kind, self.record, self.about], ensure_ascii=True)
        return f"{uuid.uuid5(_IDS, about)}@{DOMAIN}"


def reminders(room: Room, catalogue: Catalogue, now: datetime) -> tuple[Reminder, ...]:
    """Return what a calendar is to remind of within thirty days, and at once of what is overdue.

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
    tuple of Reminder
        In the order of time; of one thing one, as on the Rounds sheet.
    """
    clock = Clock.of(now)
    found = (*_tests(room, catalogue, clock), *_jugs(room, clock), *_cards(room, clock), *_plans(room, clock))
    near = [each for each in found if each.at <= clock.now + _HORIZON]
    return tuple(sorted(near, key=lambda each: (each.at, each.summary, each.uid)))


def waking(at: datetime, clock: Clock) -> datetime:
    """Return when to remind of an instant: in waking hours, and not later than that instant unless it is over.

    Parameters
    ----------
    at : datetime
        The instant.
    clock : Clock
        The present, and the zone of the keeper's clock.

    Returns
    -------
    datetime
        An instant in UTC; of one in the night the evening before, of one that is over the next waking quarter of an hour.
    """
    at = at.astimezone(UTC)
    # A calendar that reads the file a minute later would never ring for what begins with it.
    soon = _COUNTED_FROM + math.ceil((clock.now + _TO_OPEN - _COUNTED_FROM) / _QUARTER) * _QUARTER
    local = max(at, soon).astimezone(clock.zone)
    if _MORNING <= local.hour < _NIGHT:
        return local.astimezone(UTC)
    day = local if local.hour >= _NIGHT else local - timedelta(days=1)
    evening = day.replace(hour=_EVENING, minute=0, second=0, microsecond=0, fold=0).astimezone(UTC)
    if evening >= soon:
        return evening
    day = local if local.hour < _MORNING else local + timedelta(days=1)
    return day.replace(hour=_MORNING, minute=0, second=0, microsecond=0, fold=0).astimezone(UTC)


def _tests(room: Room, catalogue: Catalogue, clock: Clock) -> Iterator[Reminder]:
    """Yield a test of each reading that grows old, at the instant that a plan asks for where that is earlier."""
    asked = {(p.system_id, p.parameter): p for p in room.plans if p.retest_at is not None}
    last = {(r.system_id, r.parameter): r for r in room.readings}
    for system, name in dict.fromkeys((*last, *room.corrected, *asked)):
        parameter = catalogue.parameters.get(name)
        if parameter is None or system not in room.systems:
            continue
        reading, plan = last.get((system, name)), asked.get((system, name))
        at = clock.now if reading is None else min(due_at(reading, parameter), clock.now + _HORIZON)
        why = (
            say("No reading is in the log yet.")
            if reading is None
            else say("The last reading holds until {at}.", at=clock.time(at))
        )
        if plan is not None and plan.retest_at is not None and (reading is None or reading.at < plan.retest_at <= at):
            at, why = (
                plan.retest_at,
                say(
                    "Plan {plan_id} asks for it by {retest_at}.",
                    plan_id=plan.plan_id,
                    retest_at=clock.time(plan.retest_at),
                ),
            )
        said = say("{systems}: test {name}", systems=room.systems[system], name=term(name))
        yield Reminder(TEST, system, name, waking(at, clock), said, f"{why} {say(SAFETY)}")


def _jugs(room: Room, clock: Clock) -> Iterator[Reminder]:
    for jug in room.jugs:
        ends = [at.astimezone(UTC) for at in (jug.runs_out, jug.use_by) if at is not None]
        if not ends:
            continue
        empty = jug.runs_out is not None and min(ends) == jug.runs_out.astimezone(UTC)
        at = min(ends) - _BEFORE_EMPTY
        day = clock.day(min(ends))
        why = (
            say("As far as is known it is empty on {day}.", day=day)
            if empty
            else say("Its batch is to be used by {day}.", day=day)
        )
        yield Reminder(
            JUG,
            jug.stock_id,
            "batch",
            waking(at, clock),
            say("{jug}: look at the jug, mix a new batch", jug=jug.name),
            f"{why} {say(SAFETY)}",
        )


def _cards(room: Room, clock: Clock) -> Iterator[Reminder]:
    for card in room.cards:
        place = place_of(room, card.system_id)
        if card.void:
            text = say("Card {plan_id} must not be followed. {safety}", plan_id=card.plan_id, safety=say(SAFETY))
            at = waking(card.valid_until, clock)
            yield Reminder(
                CARD,
                card.system_id,
                card.plan_id,
                at,
                say("{place}: card {plan_id} is void", place=place, plan_id=card.plan_id),
                text,
                True,
            )
            continue
        said = say("{place}: replace card {plan_id}", place=place, plan_id=card.plan_id)
        text = say(
            "It is valid until {valid_until}. {safety}", valid_until=clock.time(card.valid_until), safety=say(SAFETY)
        )
        yield Reminder(CARD, card.system_id, card.plan_id, waking(card.valid_until, clock), said, text)


def _plans(room: Room, clock: Clock) -> Iterator[Reminder]:
    """Yield the end of each plan; one that must be stopped or looked at reminds of that, at once."""
    urgent = {duty.about: duty for duty in plans(room, clock) if duty.urgency == WRONG}
    for plan in room.plans:
        place = place_of(room, plan.system_id)
        duty = urgent.get(plan.plan_id)
        if duty is not None:
            said, at, text = f"{place}: {inside(duty.what)}", clock.now, duty.plain
        elif plan.ends_at is not None:
            said, at = (
                say("{place}: end the plan for {parameter}", place=place, parameter=term(plan.parameter)),
                plan.ends_at,
            )
            text = say("Plan {plan_id} ends on {at}.", plan_id=plan.plan_id, at=clock.time(at))
        else:
            continue
        yield Reminder(PLAN, plan.system_id, plan.plan_id, waking(at, clock), said, f"{text} {say(SAFETY)}")


def file_of(found: Iterable[Reminder], now: datetime) -> bytes:
    """Return an iCalendar file; parameters as of ``pieces_of``.

    Parameters
    ----------
    found : iterable of Reminder
        What to remind of.
    now : datetime
        The present, with zone.

    Returns
    -------
    bytes
        The file in UTF-8 (RFC 5545, 3.1: lines end in CRLF and have at most 75 octets).
    """
    return b"".join(pieces_of(found, now))


def pieces_of(found: Iterable[Reminder], now: datetime) -> Iterator[bytes]:
    """Yield an iCalendar file piece by piece: the reminders of hundreds of systems take seconds.

    Parameters
    ----------
    found : iterable of Reminder
        What to remind of.
    now : datetime
        The present, with zone.

    Yields
    ------
    bytes
        The head, then each event, then the end; joined they are the file.
    """
    from icalendar import Calendar  # a tenth of a second, only when a file is written

    calendar = Calendar()
    calendar.add("prodid", PRODUCT)
    calendar.add("version", "2.0")
    calendar.add("calscale", "GREGORIAN")
    calendar.add("method", "PUBLISH")
    head, end, _ = calendar.to_ical().partition(b"END:VCALENDAR")
    yield head
    stamp = now.astimezone(UTC).replace(microsecond=0)
    # Nothing is remembered of the file before; minutes since a fixed day only grow, so that a newer file wins whatever
    # was changed (3.8.7.4 asks for a number that grows with each revision, not for steps of one).
    sequence = max(int((stamp - _COUNTED_FROM) / timedelta(minutes=1)), 0)
    for each in found:
        yield _event(each, stamp, sequence)
    yield end + b"\r\n"


def _event(each: Reminder, stamp: datetime, sequence: int) -> bytes:
    from icalendar import Alarm, Event

    event = Event()
    event.add("uid", each.uid)
    event.add("dtstamp", stamp)
    event.add("sequence", sequence)
    at = each.at.astimezone(UTC).replace(microsecond=0)
    event.add("dtstart", at)
    event.add("dtend", at + _LENGTH)
    event.add("summary", _clean(each.summary))
    event.add("description", _clean(each.text))
    event.add("status", "CANCELLED" if each.cancelled else "CONFIRMED")
    # The keeper is not busy for it.
    event.add("transp", "TRANSPARENT")
    if not each.cancelled:
        alarm = Alarm()
        alarm.add("action", "DISPLAY")
        alarm.add("trigger", timedelta(0))
        alarm.add("description", _clean(each.summary))
        event.add_component(alarm)
    return bytes(event.to_ical())


def _clean(text: str) -> str:
    """Return a text without control characters, which 3.3.11 does not admit; a name may hold anything."""
    return "".join(" " if unicodedata.category(letter) == "Cc" else letter for letter in text)
