"""What is known of a jug, for people: cautions first, then until when it lasts, what it would do, and how its pump delivers."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, tzinfo

from evenwater.engine.absence import Absence
from evenwater.engine.jug import JugAnswer
from evenwater.engine.jug_check import AMBER_MARK, CANNOT_TELL, RED_MARK, JugCheck
from evenwater.engine.jug_siphon import RunIn
from evenwater.engine.quantities import from_canonical
from evenwater.engine.stock import Dissolved
from evenwater.engine.units import KINDS
from evenwater.screens import jug_words, words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.shown import NBSP, about, date_words, significant, span, with_unit
from evenwater.screens.terms import term, terms
from evenwater.wording import say, say_all, say_many

# What must be done at once stands before everything, what else speaks of danger right after the handling.
URGENT = ("siphon_possible", "fell_without_doses", "jug_above_outlet", "outlet_under_water")
DANGERS = (*URGENT, "jug_would_harm")


def cautions(answer: JugAnswer) -> tuple[str, ...]:
    """Return the handling lines of what is in the jug, to stand before any number."""
    batch = answer.question.batch
    return terms(batch.cautions) if isinstance(batch, Dissolved) else say_all(BOTTLE)


def lines(answer: JugAnswer, zone: tzinfo | None) -> tuple[str, ...]:
    """Return the lines of an answer.

    Parameters
    ----------
    answer : JugAnswer
        What is known of the jug.
    zone : tzinfo or None
        The zone that dates are written in.

    Returns
    -------
    tuple of str
        Lines with ordinary spaces; an empty one between the parts.
    """
    return tuple(line.replace("\u00a0", " ") for line in _lines(answer, zone))


def _lines(answer: JugAnswer, zone: tzinfo | None) -> Iterator[str]:
    yield from (
        say("Danger: {reason}", reason=words.sentence(reason)) for reason in answer.remarks if reason.code in URGENT
    )
    yield from (say("Caution: {line}", line=line) for line in cautions(answer))
    late = [reason for reason in answer.remarks if reason.code in DANGERS and reason.code not in URGENT]
    yield from (say("Danger: {reason}", reason=words.sentence(reason)) for reason in late)
    yield ""
    yield from _lasts(answer, zone)
    yield from (
        say("Note: {reason}", reason=words.sentence(reason)) for reason in answer.remarks if reason.code not in DANGERS
    )
    if answer.check is not None:
        yield ""
        yield from _checked(answer.check, answer.question.pumps[0].flow_ml_per_min, zone)
    if answer.run_in:
        yield ""
        yield from (run_in(each, answer) for each in answer.run_in)
    if answer.largest is not None:
        safe, advised = answer.largest
        yield say(
            "Largest jug that leaves every value in its hard range: {safe}. Advised: {advised} or less.",
            safe=about(safe),
            advised=about(advised),
        )
        yield say(jug_words.ADVICE)
    if answer.absence is not None:
        yield ""
        yield from _away(answer.absence, zone)


def _lasts(answer: JugAnswer, zone: tzinfo | None) -> Iterator[str]:
    seen, line = answer.forecast, answer.question.line
    yield say(
        "In the jug now: about {level}. The pumps take {per_day} a day.",
        level=about(seen.level_ml),
        per_day=about(seen.per_day_ml),
    )
    if seen.last_full is None or seen.refill_before is None:
        yield say("At that it lasts more than ten years.")
    elif not seen.empty:
        yield (
            say(
                "It lasts {days_left}, until {last_full}. Refill it before {refill_before}.",
                days_left=span(seen.days_left or 0.0),
                last_full=_when(seen.last_full, zone),
                refill_before=_when(seen.refill_before, zone),
            )
        )
        if answer.earliest is not None:
            yield (
                say(
                    "By {earliest} if the level was read high and the pumps deliver as much more as their calibration leaves open.",
                    earliest=_when(answer.earliest, zone),
                )
            )
    if line is not None:
        lost = answer.doses_lost
        which = say_many("the first dose does", "the first {n} doses do", lost)
        yield say(
            "The line holds {volume}: prime it after a refill, or {which} not arrive whole.",
            volume=about(line.volume_ml),
            which=which,
        )


def _when(at: datetime, zone: tzinfo | None) -> str:
    local = at.astimezone(zone)
    return f"{date_words(local)}{NBSP}{local:%H:%M}"


def run_in(each: RunIn, answer: JugAnswer) -> str:
    """Say what a parameter would come to if the whole jug ran in."""
    p = each.parameter
    shown = KINDS[p.kind].unit(p.display_unit).shown

    def value(canonical: float) -> str:
        number = from_canonical(canonical, p.kind, p.display_unit, answer.question.tank.water)
        return with_unit(significant(number, 3), shown)

    said = say("assumed, not tested") if each.assumed else say("as tested")
    return say(
        "If the whole jug ran in, {name} would go from {before} ({said}) to {after}.",
        name=term(p.name),
        before=value(each.before),
        said=said,
        after=value(each.after),
    )


def _checked(found: JugCheck, flow: float | None, zone: tzinfo | None) -> Iterator[str]:
    bias, half = found.ratio - 1.0, found.ratio_half
    way = say("more") if bias > 0.0 else say("less")
    yield (
        say(
            "Jug check from {since} to {until}: {real} left the jug (give or take {real_half}), {expected} were expected.",
            since=_when(found.since, zone),
            until=_when(found.until, zone),
            real=about(max(found.real_ml, 0.0)),
            real_half=about(found.real_half_ml),
            expected=about(found.expected_ml),
        )
    )
    yield say(
        "That is {bias} {way} (give or take {half}): {marks}.",
        bias=jug_words.percent(abs(bias)),
        way=way,
        half=jug_words.percent(half),
        marks=say_all(jug_words.MARKS[found.mark]),
    )
    if found.mark not in (AMBER_MARK, RED_MARK) and half > 0.05:
        yield say(
            "To tell {percent}, read levels between which {clear_from} or more are dosed.",
            percent=jug_words.percent(0.05),
            clear_from=about(found.clear_from_ml),
        )
    if found.cause == CANNOT_TELL:
        possible = [say_all(jug_words.CAUSES[name]) for name, _ in found.candidates]
        yield say(jug_words.CANNOT_TELL) + (
            say(" Possible: {possible}.", possible="; ".join(possible)) if possible else ""
        )
    else:
        yield say("Likely: {causes}.", causes=say_all(jug_words.CAUSES[found.cause]))
    yield from (f"{number}. {say_all(jug_words.STEPS[step])}" for number, step in enumerate(found.steps, start=1))
    if found.factor is not None:
        f = found.factor
        yield (
            say(
                "If a calibration says the same, multiply the pump's flow by {f_value} ({low} to {high}). Nothing is changed by itself.",
                f_value=significant(f.value, 3),
                low=significant(f.low, 3),
                high=significant(f.high, 3),
            )
        )
        if flow is not None:
            yield say(
                "The flow would then be {flow}.", flow=with_unit(significant(flow * f.value, 3), say("mL per min"))
            )


def _away(away: Absence, zone: tzinfo | None) -> Iterator[str]:
    yield say("Away until {until}:", until=_when(away.until, zone))
    for filling in away.fillings:
        if filling.left_alone_until is not None:
            yield say(
                "Left as it is, the jug misses doses from {left_alone_until} on.",
                left_alone_until=_when(filling.left_alone_until, zone),
            )
        if filling.add_ml > 0.0:
            yield say(
                "{needed} are needed until then. Add {add} before you leave.",
                needed=about(filling.needed_ml),
                add=about(filling.add_ml),
            )
        else:
            yield say("{needed} are needed until then, and there is enough.", needed=about(filling.needed_ml))
        if filling.lasts_until is not None:
            yield say(
                "Even full it lasts only until {lasts_until}: ask somebody to refill it.",
                lasts_until=_when(filling.lasts_until, zone),
            )
    yield say(jug_words.NEVER_MADE_UP)
