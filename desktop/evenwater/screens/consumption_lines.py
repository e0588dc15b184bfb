"""What a record says of the use, for people: the use now, what is odd about the record, and what was used before."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import tzinfo

from evenwater.engine.consumption import ConsumptionAnswer
from evenwater.engine.consumption_estimate import Period, Span
from evenwater.engine.quantities import significant
from evenwater.screens import words
from evenwater.screens.consumption_words import minus
from evenwater.screens.shown import Shown, date_words, span


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
    yield f"{shown.parameter.name.capitalize()} used now: {per_day(found.use, shown)}."
    value = found.value
    yield (
        f"It should now be at {shown.value(value.value)} ({significant(shown.number(value.low), 3)} to "
        f"{shown.value(value.high)})."
    )
    age = "just now" if found.since_days * 1440.0 < 1.0 else f"{span(found.since_days)} ago"
    yield f"From {found.readings} readings, the last one {age}."
    if found.trend_per_week is not None:
        yield _trend(found.trend_per_week, (found.use.high - found.use.low) / 2.0, shown)
    if answer.odd or answer.remarks:
        yield ""
    yield from (f"Not believed: {words.sentence(reason, shown)}" for reason in answer.odd)
    yield from (f"Note: {words.sentence(reason, shown)}" for reason in answer.remarks)
    yield ""
    yield from (_period(period, shown) for period in found.by_period)


def per_day(use: Span, shown: Shown) -> str:
    """Write a use with its interval, in the keeper's unit."""
    low, high = (minus(shown.per_day(end)) for end in (use.low, use.high))
    return f"{minus(shown.per_day(use.value))} (from {low} to {high})"


def _trend(per_week: float, seen: float, shown: Shown) -> str:
    """Say how use moves, when it moves in a week by more than it is known to."""
    if abs(per_week) < seen:
        return "In the last weeks use has been steady."
    return f"In a week use {'grows' if per_week > 0.0 else 'falls'} by {shown.rise(abs(per_week), 2)} per day."


def _period(period: Period, shown: Shown) -> str:
    start, end = (date_words(at.astimezone(shown.zone)) for at in (period.start, period.end))
    return f"{start} to {end}: {per_day(period.use, shown)}"
