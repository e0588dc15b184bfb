"""What is to be tested: readings that are old, readings that never move, and tests that a plan asks for."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from itertools import takewhile

from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.quantities import Typed
from evenwater.screens.rounds_room import DUE, ORDER, TEST, Clock, Duty, LastReading, Room
from evenwater.screens.terms import term
from evenwater.wording import say, say_many

# So many readings alike are likelier a kit that does not answer, or a figure copied, than a tank that stands still. Common
# practice, no source.
FLAT = 3
# A clock may be so far ahead of another one. Common practice, no source.
_CLOCKS_DIFFER = timedelta(minutes=5)


@dataclass(frozen=True)
class _Asked:
    """One reason to test."""

    urgency: str
    at: datetime
    why: str
    plain: str
    fresh: bool = False


def tests(room: Room, catalogue: Catalogue, clock: Clock) -> Iterator[Duty]:
    """Yield a line for each parameter of each system that is to be tested; all reasons to stand in one line.

    Parameters
    ----------
    room : Room
        The fish room.
    catalogue : Catalogue
        Parameters, for how long a reading holds.
    clock : Clock
        The present.

    Yields
    ------
    Duty
        In the order of the readings.
    """
    last = {(r.system_id, r.parameter): r for r in room.readings}
    planned = {(p.system_id, p.parameter): p for p in room.plans}
    for system, name in dict.fromkeys((*last, *room.corrected, *planned)):
        parameter = catalogue.parameters.get(name)
        if parameter is None or system not in room.systems:
            continue
        reading = last.get((system, name))
        asked = list(_by_reading(reading, parameter, clock))
        plan = planned.get((system, name))
        if plan is not None and plan.retest_at is not None and not _answered(reading, plan.retest_at):
            asked += _by_plan(plan.plan_id, plan.retest_at, clock)
        if asked:
            yield _duty(system, room.systems[system], parameter, asked)


def due_at(reading: LastReading, parameter: Parameter) -> datetime:
    """Return when a reading no longer holds, in UTC."""
    return reading.at.astimezone(UTC) + timedelta(days=parameter.stale_days)


def _answered(reading: LastReading | None, retest_at: datetime) -> bool:
    """Say whether the test was made that a plan asks for at an instant."""
    return reading is not None and reading.at >= retest_at


def _duty(system: str, place: str, parameter: Parameter, asked: list[_Asked]) -> Duty:
    urgency = min((each.urgency for each in asked), key=ORDER.index)
    fresh = any(each.fresh for each in asked)
    return Duty(
        urgency,
        min(each.at for each in asked),
        place,
        say("Test {parameter} again with a fresh kit", parameter=term(parameter.name))
        if fresh
        else say("Test {parameter}", parameter=term(parameter.name)),
        " ".join(each.why for each in asked),
        "Log",
        system,
        parameter.name,
        TEST,
        parameter.name,
        " ".join(each.plain for each in asked),
    )


def _by_reading(reading: LastReading | None, parameter: Parameter, clock: Clock) -> Iterator[_Asked]:
    if reading is None:
        why = say("No reading is in the log yet.")
        yield _Asked(DUE, clock.now, why, why)
        return
    at = reading.at.astimezone(UTC)
    if at > clock.now + _CLOCKS_DIFFER:
        why = say(
            "The last reading is dated {at}, which is still to come. Look at the clock and at the reading.",
            at=clock.time(at),
        )
        yield _Asked(DUE, clock.now, why, why)
        return
    if reading.same >= FLAT:
        why = say("The last {same} readings all say {typed}.", same=reading.same, typed=reading.typed)
        yield _Asked(DUE, at, why, say("The last {same} readings are all alike.", same=reading.same), fresh=True)
    due = due_at(reading, parameter)
    urgency = clock.urgency(due)
    if urgency is not None:
        why = _age(at, parameter, clock.now)
        yield _Asked(urgency, due, why, why)


def _by_plan(plan_id: str, at: datetime, clock: Clock) -> Iterator[_Asked]:
    urgency = clock.urgency(at)
    if urgency is not None:
        why = say(
            "Plan {plan_id} {asked} for a test by {at}.",
            plan_id=plan_id,
            asked=say("asked") if urgency == DUE else say("asks"),
            at=clock.time(at),
        )
        yield _Asked(urgency, at.astimezone(UTC), why, why)


def _age(at: datetime, parameter: Parameter, now: datetime) -> str:
    days = (now - at) / timedelta(days=1)
    age = say("less than a day") if days < 1.0 else say("1 day") if days < 2.0 else say("{days} days", days=int(days))
    held = say_many("a day", "{n} days", round(parameter.stale_days))
    return say("The last reading is {age} old; it holds {held}.", age=age, held=held)


def alike(newest_first: Sequence[Mapping[str, Typed]]) -> int:
    """Return how many of the newest readings in a row were typed exactly alike, with the same kit.

    Parameters
    ----------
    newest_first : sequence of mapping of str to Typed
        The fields of readings of one parameter, the newest first.

    Returns
    -------
    int
        How many; with another kit the same figure is a second opinion.
    """
    said = [(fields.get("value", Typed("")), fields.get("kit", Typed(""))) for fields in newest_first]
    return len(list(takewhile(said[0].__eq__, said))) if said else 0
