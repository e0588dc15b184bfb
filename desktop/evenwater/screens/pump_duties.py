"""What is due at the pumps: calibrations that are old, flows that have drifted, heads near their end. Common practice, no source."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from evenwater.engine.pump_wear import RED
from evenwater.screens.calibration_words import flow, hours, more_or_less, share
from evenwater.screens.pump_drift import Drift, drift
from evenwater.screens.pump_sheet import Measured, Values, measured, newest
from evenwater.screens.rounds_room import DUE, SOON, WRONG, Duty
from evenwater.screens.shown import date_words, span
from evenwater.wording import say

PUMP = "pump"
OLDEST = timedelta(days=60)
AHEAD = timedelta(days=14)
_CALIBRATE, _HEAD, _DRIFT = "calibration", "head", "drift"


@dataclass(frozen=True)
class Installed:
    """A pump with its records: fields, calibrations by their ids, and its running hours in a day for the doses in use [h/d]."""

    pump_id: str
    name: str
    values: Values
    calibrations: Mapping[str, Values] = field(default_factory=dict)
    hours_per_day: float = 0.0


def duties(pumps: Iterable[Installed], now: datetime) -> tuple[Duty, ...]:
    """Return what is due at the pumps.

    Parameters
    ----------
    pumps : iterable of Installed
        The pumps of the fish room.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    tuple of Duty
        For each pump at most one line about its flow, which names the most urgent, and one about its head.
    """
    return tuple(duty for pump in pumps for duty in _of_pump(pump, now))


def _of_pump(pump: Installed, now: datetime) -> Iterator[Duty]:
    found = [measured(record, pump.values, values, None, now) for record, values in pump.calibrations.items()]
    good = [each for each in found if each.answer is not None and each.answer.passed]
    wears = drift(pump.values, good, pump.hours_per_day, now)
    last = newest(good)
    yield from _expected(pump, wears, now) or _old(pump, last, now)
    yield from _worn(pump, wears, now)


def _expected(pump: Installed, wears: Drift, now: datetime) -> tuple[Duty, ...]:
    """Return the line for a flow that is expected to have left its tolerance, or leaves it soon."""
    if wears.wear is None:
        return ()
    off = wears.wear.expected / wears.wear.reference - 1.0
    past = [each.limit for each in wears.wear.leaves if abs(off) >= each.limit]
    coming = [each for each in wears.wear.leaves if each.at is not None and now < each.at <= now + AHEAD]
    if past:
        why = say(
            "By its hours it gives about {expected}, {off} {more_or_less} than it is set to.",
            expected=flow(wears.wear.expected),
            off=share(off),
            more_or_less=more_or_less(off),
        )
        urgency = WRONG if RED in past else DUE
        what = (
            say("Do not dose on with the flow it is set to: calibrate it") if urgency == WRONG else say("Calibrate it")
        )
        plain = say("By its running hours it is no longer near the flow it is set to.")
        return (_duty(urgency, now, pump, what, why, _DRIFT, plain),)
    if coming:
        first = coming[0]
        at = first.at or now
        why = say(
            "By its hours it will be {limit} off on {at}.",
            limit=share(first.limit),
            at=date_words(at.astimezone(now.tzinfo)),
        )
        return (
            _duty(SOON, at, pump, say("Calibrate it"), why, _DRIFT, say("By its running hours its flow will be off.")),
        )
    return ()


def _old(pump: Installed, last: Measured | None, now: datetime) -> tuple[Duty, ...]:
    """Return the line for a calibration that is old."""
    if last is None or last.at is None or now - last.at <= OLDEST:
        return ()
    on = date_words(last.at.astimezone(now.tzinfo))
    why = say("Its calibration of {on} is {span} old.", on=on, span=span((now - last.at) / timedelta(days=1)))
    return (
        _duty(
            DUE,
            last.at + OLDEST,
            pump,
            say("Calibrate it"),
            why,
            _CALIBRATE,
            say("Its last calibration was on {on}.", on=on),
        ),
    )


def _worn(pump: Installed, wears: Drift, now: datetime) -> Iterator[Duty]:
    """Yield the line for a head whose life is over, or nearly so."""
    left = wears.head
    if left is None:
        return
    about = say("about ") if wears.estimated else ""
    ran = say(
        "It has run {amount}{hours} of the {life} that one lasts.",
        amount=about,
        hours=hours(left.hours),
        life=hours(left.life),
    )
    plain = say("The head is near the end of its running hours.")
    if left.left <= 0.0:
        yield _duty(DUE, now, pump, say("Change the head, then calibrate it"), ran, _HEAD, plain)
    elif left.at is not None and left.at <= now + AHEAD:
        yield _duty(SOON, left.at, pump, say("Have a new head ready"), ran, _HEAD, plain)


def _duty(urgency: str, at: datetime, pump: Installed, what: str, why: str, about: str, plain: str) -> Duty:
    return Duty(urgency, at, pump.name, what, why, "Pumps", pump.pump_id, "", PUMP, about, plain)
