"""What is known of a jug, for people: cautions first, then until when it lasts, what it would do, and how its pump delivers."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, tzinfo

from evenwater.engine.absence import Absence
from evenwater.engine.jug import JugAnswer
from evenwater.engine.jug_check import AMBER_MARK, CANNOT_TELL, RED_MARK, JugCheck
from evenwater.engine.jug_siphon import RunIn
from evenwater.engine.quantities import from_canonical, significant
from evenwater.engine.stock import Dissolved
from evenwater.engine.units import KINDS
from evenwater.screens import jug_words, words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.shown import NBSP, about, date_words, span, with_unit

# What must be done at once stands before everything, what else speaks of danger right after the handling.
URGENT = ("siphon_possible", "fell_without_doses", "jug_above_outlet", "outlet_under_water")
DANGERS = (*URGENT, "jug_would_harm")


def cautions(answer: JugAnswer) -> tuple[str, ...]:
    """Return the handling lines of what is in the jug, to stand before any number."""
    batch = answer.question.batch
    return batch.cautions if isinstance(batch, Dissolved) else BOTTLE


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
    yield from (f"Danger: {words.sentence(reason)}" for reason in answer.remarks if reason.code in URGENT)
    yield from (f"Caution: {line}" for line in cautions(answer))
    late = [reason for reason in answer.remarks if reason.code in DANGERS and reason.code not in URGENT]
    yield from (f"Danger: {words.sentence(reason)}" for reason in late)
    yield ""
    yield from _lasts(answer, zone)
    yield from (f"Note: {words.sentence(reason)}" for reason in answer.remarks if reason.code not in DANGERS)
    if answer.check is not None:
        yield ""
        yield from _checked(answer.check, answer.question.pumps[0].flow_ml_per_min, zone)
    if answer.run_in:
        yield ""
        yield from (run_in(each, answer) for each in answer.run_in)
    if answer.largest is not None:
        safe, advised = answer.largest
        yield f"Largest jug that leaves every value in its hard range: {about(safe)}. Advised: {about(advised)} or less."
        yield jug_words.ADVICE
    if answer.absence is not None:
        yield ""
        yield from _away(answer.absence, zone)


def _lasts(answer: JugAnswer, zone: tzinfo | None) -> Iterator[str]:
    seen, line = answer.forecast, answer.question.line
    yield f"In the jug now: about {about(seen.level_ml)}. The pumps take {about(seen.per_day_ml)} a day."
    if seen.last_full is None or seen.refill_before is None:
        yield "At that it lasts more than ten years."
    elif not seen.empty:
        yield (
            f"It lasts {span(seen.days_left or 0.0)}, until {_when(seen.last_full, zone)}. Refill it before "
            f"{_when(seen.refill_before, zone)}."
        )
        if answer.earliest is not None:
            yield (
                f"By {_when(answer.earliest, zone)} if the level was read high and the pumps deliver as much more as their calibration "
                "leaves open."
            )
    if line is not None:
        lost = answer.doses_lost
        which = "the first dose does" if lost == 1 else f"the first {lost} doses do"
        yield f"The line holds {about(line.volume_ml)}: prime it after a refill, or {which} not arrive whole."


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

    said = "assumed, not tested" if each.assumed else "as tested"
    return f"If the whole jug ran in, {p.name} would go from {value(each.before)} ({said}) to {value(each.after)}."


def _checked(found: JugCheck, flow: float | None, zone: tzinfo | None) -> Iterator[str]:
    bias, half = found.ratio - 1.0, found.ratio_half
    way = "more" if bias > 0.0 else "less"
    yield (
        f"Jug check from {_when(found.since, zone)} to {_when(found.until, zone)}: {about(max(found.real_ml, 0.0))} left the jug (give or take "
        f"{about(found.real_half_ml)}), {about(found.expected_ml)} were expected."
    )
    yield f"That is {jug_words.percent(abs(bias))} {way} (give or take {jug_words.percent(half)}): {jug_words.MARKS[found.mark]}."
    if found.mark not in (AMBER_MARK, RED_MARK) and half > 0.05:
        yield f"To tell {jug_words.percent(0.05)}, read levels between which {about(found.clear_from_ml)} or more are dosed."
    if found.cause == CANNOT_TELL:
        possible = [jug_words.CAUSES[name] for name, _ in found.candidates]
        yield jug_words.CANNOT_TELL + (f" Possible: {'; '.join(possible)}." if possible else "")
    else:
        yield f"Likely: {jug_words.CAUSES[found.cause]}."
    yield from (f"{number}. {jug_words.STEPS[step]}" for number, step in enumerate(found.steps, start=1))
    if found.factor is not None:
        f = found.factor
        yield (
            f"If a calibration says the same, multiply the pump's flow by {significant(f.value, 3)} ({significant(f.low, 3)} to "
            f"{significant(f.high, 3)}). Nothing is changed by itself."
        )
        if flow is not None:
            yield f"The flow would then be {with_unit(significant(flow * f.value, 3), 'mL per min')}."


def _away(away: Absence, zone: tzinfo | None) -> Iterator[str]:
    yield f"Away until {_when(away.until, zone)}:"
    for filling in away.fillings:
        if filling.left_alone_until is not None:
            yield f"Left as it is, the jug misses doses from {_when(filling.left_alone_until, zone)} on."
        if filling.add_ml > 0.0:
            yield f"{about(filling.needed_ml)} are needed until then. Add {about(filling.add_ml)} before you leave."
        else:
            yield f"{about(filling.needed_ml)} are needed until then, and there is enough."
        if filling.lasts_until is not None:
            yield f"Even full it lasts only until {_when(filling.lasts_until, zone)}: ask somebody to refill it."
    yield jug_words.NEVER_MADE_UP
