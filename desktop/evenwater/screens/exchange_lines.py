"""What is known of an exchange, for people: danger and cautions first, then the old water left, each value, the pair and the jugs."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.exchange import Course, ExchangeAnswer
from evenwater.engine.exchange_pair import DosingChange
from evenwater.engine.stock import Dissolved
from evenwater.screens import exchange_words, words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.shown import Shown, about, significant, span, with_unit
from evenwater.screens.terms import capitalized, term, terms
from evenwater.wording import say, say_all

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
    said = [
        line
        for batch in batches
        for line in (terms(batch.cautions) if isinstance(batch, Dissolved) else say_all(BOTTLE))
    ]
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
    yield from (
        say("Danger: {reason}", reason=words.sentence(reason)) for reason in answer.remarks if reason.code in DANGERS
    )
    yield from (say("Caution: {line}", line=line) for line in cautions(answer))
    percent = exchange_words.percent
    yield say(
        "{out} a day go out, {in_} a day come in.", out=about(1000.0 * q.pair.out_l), in_=about(1000.0 * q.pair.in_l)
    )
    low, high = answer.left_band
    yield (
        say(
            "After {days}, {left} of the old water are left ({low} to {high} by how well the volume is known). A batch change of {batch_whole} leaves as much.",
            days=span(q.days),
            left=percent(answer.left),
            low=percent(low),
            high=percent(high),
            batch_whole=percent(answer.batch_whole),
        )
    )
    yield say(
        "The exchange of a week equals a batch change of {batch_weekly}.", batch_weekly=percent(answer.batch_weekly)
    )
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
    yield from (
        say("Note: {reason}", reason=words.sentence(reason)) for reason in answer.remarks if reason.code not in DANGERS
    )


def _course(answer: ExchangeAnswer, each: Course) -> Iterator[str]:
    shown, days = shown_of(answer, each), answer.question.days
    name = capitalized(each.moved.parameter.name)
    yield say(
        "{name}: {points} at the start, new water {new_water}",
        name=term(name),
        points=shown.value(each.points[0]),
        new_water=shown.value(each.moved.new_water),
    )
    if each.runs_out is None or each.runs_out > days:
        low, high = each.band
        yield say(
            "After {days}: {end} ({low} to {high})",
            days=span(days),
            end=shown.value(each.end),
            low=shown.value(max(low, 0.0)),
            high=shown.value(high),
        )
    if each.settles is not None and each.half_way is not None:
        yield say(
            "Settles at {settles}; half of the way takes {half_way}",
            settles=shown.value(each.settles),
            half_way=span(each.half_way),
        )


def _pair(answer: ExchangeAnswer) -> Iterator[str]:
    found, jugs, percent = answer.match, answer.jugs, exchange_words.percent
    if found.ratio is not None and found.low is not None and found.high is not None and found.settles is not None:
        yield (
            say(
                "In is {ratio} of out; {low} hold salinity within 0.5. With the level held by top-off it settles at {settles}.",
                ratio=percent(found.ratio),
                low=exchange_words.between(found.low, found.high),
                settles=significant(found.settles, 4),
            )
        )
    for what, lasts, weekly in (
        ("old", jugs.old_lasts, jugs.old_weekly_l),
        ("new", jugs.new_lasts, jugs.new_weekly_l),
    ):
        moves = about(1000.0 * weekly)
        if what == "old":
            swap = say("A week moves {weekly} of old water.", weekly=moves)
            full = "" if lasts is None else say(" The jug is full after {lasts}.", lasts=span(lasts))
        else:
            swap = say("A week moves {weekly} of new water.", weekly=moves)
            full = "" if lasts is None else say(" The jug lasts {lasts}.", lasts=span(lasts))
        yield swap + full


def _dosing(change: DosingChange) -> str:
    name = change.moved.parameter.name
    less = change.more <= 0.0
    how = say("{more} a day {less}", more=about(abs(change.more)), less=say("less") if less else say("more"))
    return say(
        "To keep {name} where it is takes {with_exchange} of its stock a day with the exchange, {without} without: {how}.",
        name=term(name),
        with_exchange=about(change.with_exchange),
        without=about(change.without),
        how=how,
    )


def _bucket(answer: ExchangeAnswer) -> Iterator[str]:
    bucket, mixing = answer.bucket, answer.question.mixing
    if bucket is None or mixing is None:
        return
    yield say(
        "{volume} of new water take {mix_g} of salt mix.",
        volume=about(1000.0 * mixing.volume_l),
        mix_g=with_unit(significant(bucket.mix_g, 3), "g"),
    )
    yield say(exchange_words.LABEL_ONLY)
    if bucket.salt_g:
        yield say("The bucket lacks {salt_g} of sodium chloride.", salt_g=with_unit(significant(bucket.salt_g, 3), "g"))
    elif bucket.water_l:
        yield say("The bucket takes {water} of fresh water.", water=about(1000.0 * bucket.water_l))
