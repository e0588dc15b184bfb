"""How long the jugs last: what is in one by its batch, the doses logged and the daily rate, and when that is due."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta

from evenwater.engine.fields import MADE_UP_TO
from evenwater.engine.quantities import Typed, to_canonical
from evenwater.engine.reader import Ok, read
from evenwater.screens.rounds_room import DUE, JUG, ORDER, RUNS_OUT_AHEAD, SOON, WRONG, Clock, Contents, Duty, Room
from evenwater.screens.shown import about
from evenwater.wording import marked, say

LOGGED, RATE, UNSURE, READ = "logged", "rate", "unsure", "read"
_DAY = timedelta(days=1)
# Where the log has less than this share of what the daily rate has taken, not every dose was logged, or not every one
# was given; nobody knows which. Common practice, no source.
_LOGGED_SHARE = 0.5
# A rest below this [mL] is no dose.
_NOTHING_ML = 1e-6
# Further ahead nobody needs a date.
_LONGEST_DAYS = 3650.0

_LOOK = marked("Look how much is left")


def made_up_ml(batch: Mapping[str, Typed]) -> float | None:
    """Return what a batch was made up to.

    Parameters
    ----------
    batch : mapping of str to Typed
        The batch's fields.

    Returns
    -------
    float or None
        Volume [mL], or None while it cannot be read.
    """
    typed = batch.get("made_up_to", Typed(""))
    found = read(typed.text, MADE_UP_TO, typed.unit)
    if not isinstance(found, Ok):
        return None
    return 1000.0 * to_canonical(float(found.entered.number), MADE_UP_TO.kind, found.entered.unit)


@dataclass(frozen=True)
class Drawn:
    """What one system takes from a jug: dosed in a day [mL], logged since the batch was put in use [mL], last logged."""

    per_day_ml: float = 0.0
    logged_ml: float = 0.0
    last: datetime | None = None


def filled(
    jug: Contents,
    made_ml: float | None,
    since: datetime | None,
    drawn: Sequence[Drawn],
    now: datetime,
    below_ml: float = 0.0,
) -> Contents:
    """Return a jug with what is left in it and when it is empty, as far as that is known.

    Logged doses count as logged. After the last one of a system, and of a system that logs none since the batch was put
    in use, the daily rate counts: whoever stops writing has likelier not stopped the pump.

    Parameters
    ----------
    jug : Contents
        The jug.
    made_ml : float or None
        What was in it at first: what its batch was made up to, or its level as read [mL].
    since : datetime or None
        When that was: when the batch was put in use, or the level read.
    drawn : sequence of Drawn
        What each system takes from it.
    now : datetime
        The present.
    below_ml : float
        What lies below the intake and no pump reaches [mL].

    Returns
    -------
    Contents
        The jug; unchanged when nothing is known.
    """
    if made_ml is None or since is None:
        return jug
    found = _filled(jug, max(made_ml - below_ml, 0.0), since, drawn, now)
    return found if found.amount is None else replace(found, amount=found.amount + min(below_ml, made_ml))


def taken(drawn: Sequence[Drawn], since: datetime, now: datetime, most_ml: float) -> tuple[float, str]:
    """Return what was taken from a jug, and what that rests on.

    Parameters
    ----------
    drawn : sequence of Drawn
        What each system takes from it.
    since, now : datetime
        Instants with zone.
    most_ml : float
        What was in it at first [mL].

    Returns
    -------
    tuple of (float, str)
        Volume [mL], which may be more than there was, and ``LOGGED``, ``RATE`` or ``UNSURE``.
    """
    by_rate = math.fsum(d.per_day_ml for d in drawn) * _days(since, now)
    used = math.fsum(d.logged_ml + d.per_day_ml * _days(d.last or since, now) for d in drawn)
    if not any(d.last is not None and d.logged_ml > 0.0 for d in drawn):
        return used, RATE
    return (by_rate, UNSURE) if used < _LOGGED_SHARE * min(by_rate, most_ml) else (used, LOGGED)


def _filled(jug: Contents, made_ml: float, since: datetime, drawn: Sequence[Drawn], now: datetime) -> Contents:
    now, since = now.astimezone(UTC), since.astimezone(UTC)
    lasts = [each.last.astimezone(UTC) for each in drawn if each.last is not None and each.logged_ml > 0.0]
    until = max(lasts, default=None)
    per_day, logged = (math.fsum(figures) for figures in ([d.per_day_ml for d in drawn], [d.logged_ml for d in drawn]))
    jug = replace(jug, since=since, until=until, per_day=per_day if per_day > 0.0 else None)
    if jug.read_at is not None and made_ml <= _NOTHING_ML:
        return replace(jug, amount=0.0, runs_out=since, basis=READ)
    if until is not None and logged >= made_ml - _NOTHING_ML:
        return replace(jug, amount=0.0, runs_out=until, basis=LOGGED)
    if per_day <= 0.0:
        return jug if until is None else replace(jug, amount=made_ml - logged, basis=LOGGED)
    used, basis = taken(drawn, since, now, made_ml)
    ahead = (made_ml - used) / per_day
    runs_out = now + timedelta(days=ahead) if ahead <= _LONGEST_DAYS else None
    return replace(jug, amount=max(made_ml - used, 0.0), runs_out=runs_out, basis=basis)


def _days(begin: datetime, end: datetime) -> float:
    return max((end - begin.astimezone(UTC)) / _DAY, 0.0)


def jugs(room: Room, clock: Clock) -> Iterator[Duty]:
    """Yield a line for each jug that is empty, soon empty, or too old; never two for one jug.

    Parameters
    ----------
    room : Room
        The fish room.
    clock : Clock
        The present.

    Yields
    ------
    Duty
        Most urgent first of the reasons of one jug, which stand in one line.
    """
    for jug in room.jugs:
        found = [each for each in (_empty(jug, clock), _old(jug, clock)) if each is not None]
        if not found:
            continue
        first = min(found, key=lambda duty: ORDER.index(duty.urgency))
        yield replace(
            first,
            at=min(duty.at for duty in found),
            why=" ".join(duty.why for duty in found),
            plain=" ".join(duty.plain for duty in found),
        )


def _old(jug: Contents, clock: Clock) -> Duty | None:
    urgency = None if jug.use_by is None else clock.urgency(jug.use_by)
    if jug.use_by is None or urgency is None:
        return None
    why = say(
        "Its batch {was} to be used by {use_by}.",
        was=say("was") if urgency == DUE else say("is"),
        use_by=clock.day(jug.use_by),
    )
    return _duty(jug, urgency, jug.use_by, say("Mix a new batch"), why, why)


def _empty(jug: Contents, clock: Clock) -> Duty | None:
    """Return the line of a jug that runs out: wrong when it is empty, due a day before, soon five days before."""
    at = jug.runs_out
    if at is None or clock.urgency(at, RUNS_OUT_AHEAD) is None:
        return None
    gone = at <= clock.now
    if jug.basis == UNSURE:
        # Whether the pump stood still or the keeper did not write is not known: nothing is claimed.
        plain = say("By the daily rate it {gone} {at}.", gone=_would(gone), at=clock.day(at))
        why = say(
            "At {per_day} a day it {gone} {at}, but far less is logged.",
            per_day=about(jug.per_day or 0.0),
            gone=_would(gone),
            at=clock.day(at),
        )
        return _duty(jug, _early(at, clock, DUE), at, say(_LOOK), why, plain)
    urgency = _early(at, clock, WRONG)
    if jug.basis == READ:
        why = plain = say("Its level was read on {at}: it is empty.", at=clock.day(at))
    elif jug.basis == LOGGED and jug.until is not None and at <= jug.until:
        why = plain = say("By the doses logged it is empty.")
    elif jug.basis == LOGGED and jug.until is not None:
        plain = say("It {gone} {at}, reckoned from the doses logged.", gone=_would(gone), at=clock.day(at))
        logged = say("reckoned from the doses logged until {until}", until=clock.day(jug.until))
        why = say(
            "At {per_day} a day it {gone} {at}, {logged}.",
            per_day=about(jug.per_day or 0.0),
            gone=_would(gone),
            at=clock.day(at),
            logged=logged,
        )
    else:
        plain = say("By the daily rate it {gone} {at}.", gone=_would(gone), at=clock.day(at))
        since = say(" since {since}", since=clock.day(jug.since)) if jug.since is not None else ""
        why = say(
            "At {per_day} a day{since} it {gone} {at}; no dose is logged.",
            per_day=about(jug.per_day or 0.0),
            since=since,
            gone=_would(gone),
            at=clock.day(at),
        )
    # What is only reckoned to be empty is looked at first.
    certain = not gone or jug.basis == READ or (jug.until is not None and at <= jug.until)
    return _duty(jug, urgency, at, say("Mix a new batch") if certain else say(_LOOK), why, plain)


def _early(at: datetime, clock: Clock, gone: str) -> str:
    """Return how urgent a jug is: ``gone`` when it is empty, due a day before, soon before that."""
    return gone if at <= clock.now else DUE if at <= clock.now + _DAY else SOON


def _would(gone: bool) -> str:
    return say("would be empty since") if gone else say("is empty on")


def _duty(jug: Contents, urgency: str, at: datetime, what: str, why: str, plain: str) -> Duty:
    sheet = "Jugs" if what == say(_LOOK) else "Stocks"
    return Duty(urgency, at, jug.name, what, why, sheet, jug.stock_id, "", JUG, jug.stock_id, plain)
