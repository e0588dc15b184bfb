"""What is known of an exchange, for people: danger and cautions first, then the old water left, each value, the pair and the jugs."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.exchange import Course, ExchangeAnswer
from evenwater.engine.exchange_pair import DosingChange
from evenwater.engine.quantities import significant
from evenwater.engine.stock import Dissolved
from evenwater.screens import exchange_words, words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.shown import Shown, about, span, with_unit

DANGERS = ("exchange_may_flood", "exchange_rise_too_fast", "exchange_fall_too_fast")

# Common practice, no source.
_SHARE_OF_KIT = 0.001


def shown_of(answer: ExchangeAnswer, course: Course) -> Shown:
    """Return what writes a course's values in the keeper's unit."""
    return Shown(course.moved.parameter, course.moved.unit, answer.question.water)


def tellable(course: Course) -> float:
    """Return the least change of a value that is told [canonical unit]: what is below a thousandth of a test kit's error is nothing."""
    p = course.moved.parameter
    return _SHARE_OF_KIT * p.canonical(p.kit_accuracy)


def cautions(answer: ExchangeAnswer) -> tuple[str, ...]:
    """Return the handling lines of every stock whose dose is spoken of, each once."""
    batches = [change.moved.batch for change in answer.dosing]
    said = [line for batch in batches for line in (batch.cautions if isinstance(batch, Dissolved) else BOTTLE)]
    return tuple(dict.fromkeys(said))


def lines(answer: ExchangeAnswer) -> tuple[str, ...]:
    """Return the lines of an answer.

    Parameters
    ----------
    answer : ExchangeAnswer
        What the exchange does.

    Returns
    -------
    tuple of str
        Lines with ordinary spaces; an empty one between the parts.
    """
    return tuple(line.replace("\u00a0", " ") for line in _lines(answer))


def _lines(answer: ExchangeAnswer) -> Iterator[str]:
    q = answer.question
    yield from (f"Danger: {words.sentence(reason)}" for reason in answer.remarks if reason.code in DANGERS)
    yield from (f"Caution: {line}" for line in cautions(answer))
    percent = exchange_words.percent
    yield f"{about(1000.0 * q.pair.out_l)} a day go out, {about(1000.0 * q.pair.in_l)} a day come in."
    low, high = answer.left_band
    yield (
        f"After {span(q.days)}, {percent(answer.left)} of the old water are left ({percent(low)} to {percent(high)} by how well the "
        f"volume is known). A batch change of {percent(answer.batch_whole)} leaves as much."
    )
    yield f"The exchange of a week equals a batch change of {percent(answer.batch_weekly)}."
    for each in answer.courses:
        yield ""
        yield from _course(answer, each)
    yield ""
    yield from _pair(answer)
    for change in answer.dosing:
        yield _dosing(change)
    if answer.bucket is not None:
        yield ""
        yield from _bucket(answer)
    yield from (f"Note: {words.sentence(reason)}" for reason in answer.remarks if reason.code not in DANGERS)


def _course(answer: ExchangeAnswer, each: Course) -> Iterator[str]:
    shown, days = shown_of(answer, each), answer.question.days
    name = each.moved.parameter.name.capitalize()
    yield f"{name}: {shown.value(each.points[0])} at the start, new water {shown.value(each.moved.new_water)}"
    if each.runs_out is None or each.runs_out > days:
        low, high = each.band
        yield f"After {span(days)}: {shown.value(each.end)} ({shown.value(max(low, 0.0))} to {shown.value(high)})"
    if each.settles is not None and each.half_way is not None:
        yield f"Settles at {shown.value(each.settles)}; half of the way takes {span(each.half_way)}"


def _pair(answer: ExchangeAnswer) -> Iterator[str]:
    found, jugs, percent = answer.match, answer.jugs, exchange_words.percent
    if found.ratio is not None and found.low is not None and found.high is not None and found.settles is not None:
        yield (
            f"In is {percent(found.ratio)} of out; {exchange_words.between(found.low, found.high)} hold salinity within 0.5. With the "
            f"level held by top-off it settles at {significant(found.settles, 4)}."
        )
    for what, lasts, weekly in (
        ("old", jugs.old_lasts, jugs.old_weekly_l),
        ("new", jugs.new_lasts, jugs.new_weekly_l),
    ):
        swap = f"A week moves {about(1000.0 * weekly)} of {what} water."
        if lasts is not None:
            doing = "is full after" if what == "old" else "lasts"
            swap += f" The jug {doing} {span(lasts)}."
        yield swap


def _dosing(change: DosingChange) -> str:
    name = change.moved.parameter.name
    less = change.more <= 0.0
    how = f"{about(abs(change.more))} a day {'less' if less else 'more'}"
    return (
        f"To keep {name} where it is takes {about(change.with_exchange)} of its stock a day with the exchange, "
        f"{about(change.without)} without: {how}."
    )


def _bucket(answer: ExchangeAnswer) -> Iterator[str]:
    bucket, mixing = answer.bucket, answer.question.mixing
    if bucket is None or mixing is None:
        return
    yield f"{about(1000.0 * mixing.volume_l)} of new water take {with_unit(significant(bucket.mix_g, 3), 'g')} of salt mix."
    yield exchange_words.LABEL_ONLY
    if bucket.salt_g:
        yield f"The bucket lacks {with_unit(significant(bucket.salt_g, 3), 'g')} of sodium chloride."
    elif bucket.water_l:
        yield f"The bucket takes {about(1000.0 * bucket.water_l)} of fresh water."
