"""What a record says of the use, for people: the use now, what is odd about the record, and what was used before."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import tzinfo

from evenwater.engine.consumption import ConsumptionAnswer
from evenwater.engine.consumption_estimate import Period, Span
from evenwater.screens import words
from evenwater.screens.consumption_words import minus
from evenwater.screens.shown import Shown, date_words, significant, span
from evenwater.screens.terms import capitalized
from evenwater.wording import say


def shown_of(answer: ConsumptionAnswer, zone: tzinfo | None) -> Shown:
    """Return how the values of an answer are written: in the keeper's unit, dates in a zone."""
    q = answer.question
    return Shown(q.parameter, q.unit, q.water, zone)


def lines(answer: ConsumptionAnswer, zone: tzinfo | None) -> tuple[str, ...]:
    """Return the lines of an answer.

    Parameters
    ----------
    answer : ConsumptionAnswer
        Use and remarks.
    zone : tzinfo or None
        The zone that dates are written in.

    Returns
    -------
    tuple of str
        Lines with ordinary spaces; an empty one between the parts.
    """
    return tuple(line.replace("\u00a0", " ") for line in _lines(answer, shown_of(answer, zone)))


def _lines(answer: ConsumptionAnswer, shown: Shown) -> Iterator[str]:
    found = answer.estimate
    yield say(
        "{parameter} used now: {use}.", parameter=capitalized(shown.parameter.name), use=per_day(found.use, shown)
    )
    value = found.value
    yield (
        say(
            "It should now be at {value_value} ({low} to {high}).",
            value_value=shown.value(value.value),
            low=significant(shown.number(value.low), 3),
            high=shown.value(value.high),
        )
    )
    age = (
        say("just now")
        if found.since_days * 1440.0 < 1.0
        else say("{since_days} ago", since_days=span(found.since_days))
    )
    yield say("From {readings} readings, the last one {age}.", readings=found.readings, age=age)
    if found.trend_per_week is not None:
        yield _trend(found.trend_per_week, (found.use.high - found.use.low) / 2.0, shown)
    if answer.odd or answer.remarks:
        yield ""
    yield from (say("Not believed: {reason}", reason=words.sentence(reason, shown)) for reason in answer.odd)
    yield from (say("Note: {reason}", reason=words.sentence(reason, shown)) for reason in answer.remarks)
    yield ""
    yield from (_period(period, shown) for period in found.by_period)


def per_day(use: Span, shown: Shown) -> str:
    """Write a use with its interval, in the keeper's unit."""
    low, high = (minus(shown.per_day(end)) for end in (use.low, use.high))
    return say("{use_value} (from {low} to {high})", use_value=minus(shown.per_day(use.value)), low=low, high=high)


def _trend(per_week: float, seen: float, shown: Shown) -> str:
    """Say how use moves, when it moves in a week by more than it is known to."""
    if abs(per_week) < seen:
        return say("In the last weeks use has been steady.")
    return say(
        "In a week use {grows} by {per_week} per day.",
        grows=say("grows") if per_week > 0.0 else say("falls"),
        per_week=shown.rise(abs(per_week), 2),
    )


def _period(period: Period, shown: Shown) -> str:
    start, end = (date_words(at.astimezone(shown.zone)) for at in (period.start, period.end))
    return say("{start} to {end}: {use}", start=start, end=end, use=per_day(period.use, shown))
