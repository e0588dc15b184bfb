"""What the Pumps sheet says of a calibration and of its pump: the flow first, then what follows, line by line."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime

from evenwater.engine import fields, quantities
from evenwater.engine.calibration import WIDEST_SPREAD, CalibrationAnswer
from evenwater.engine.calibration_runs import volume
from evenwater.engine.pump_line import Priming, dead_volume, priming
from evenwater.engine.pump_wear import AMBER, PER_HOURS, RED
from evenwater.engine.quantities import Typed
from evenwater.screens import pump_fields, pump_sheet, words
from evenwater.screens.calibration_words import flow as flow_words
from evenwater.screens.calibration_words import hours as hours_words
from evenwater.screens.calibration_words import more_or_less, share
from evenwater.screens.jug_words import CHECKS, SENTENCES
from evenwater.screens.pump_drift import Drift, until
from evenwater.screens.pump_sheet import Measured, Values, method_of, quantity, text_of
from evenwater.screens.pump_use import Use
from evenwater.screens.pump_words import SCALE
from evenwater.screens.shown import NBSP, about, date_words, dose, every, figure, seconds, significant, with_unit
from evenwater.screens.terms import term
from evenwater.screens.views import AnswerView, Bar, Message, WorkLine
from evenwater.wording import marked, say, say_all, say_many

_BORE, _LENGTH = (pump_fields.PUMP_FIELDS[f"pump.line_{name}"] for name in ("bore", "length"))
_SOURCES = {
    "spread": marked("scatter of the runs"),
    "reading": marked("reading"),
    "tolerance": marked("tolerance of the instrument"),
    "timing": marked("timing"),
    "conditions": marked("temperature and air"),
}


@dataclass(frozen=True)
class Check:
    """One line of what is looked at before a pump runs by itself; ``wrong`` where the sheet knows that it is not so."""

    words: str
    wrong: bool = False


def answer(found: Measured, wears: Drift, newest: bool, notes: Sequence[str] = ()) -> AnswerView:
    """Turn a calibration into the upper part of the sheet.

    Parameters
    ----------
    found : Measured
        The calibration that is shown.
    wears : Drift
        How its pump wears.
    newest : bool
        Whether it is the pump's newest.
    notes : sequence of str
        What else the keeper must know, such as cards made with another flow.

    Returns
    -------
    AnswerView
        Flow, verdict, how near each limit is, the working.
    """
    if found.answer is None:
        said = " ".join(message.text for message in found.messages)
        return AnswerView("refused" if found.wrong else "empty", messages=found.messages, spoken=said)
    result = found.answer
    best = result.chosen
    repeat, remarks = pump_sheet.sentences(found, newest)
    mean, half = best.summary.mean, best.known.half_width
    verdict = say("good enough to dose by") if result.passed else say("repeat the calibration")
    figure_ = significant(mean, 3)
    return AnswerView(
        state="answered" if result.passed else "stop",
        figure=figure_,
        figure_unit=say("mL per min"),
        second=verdict[0].upper() + verdict[1:],
        third=say(
            "Within {half}: from {mean} to {mean_2}. {result}.",
            half=share(half / mean),
            mean=significant(max(mean - half, 0.0), 3),
            mean_2=flow_words(mean + half),
            result=_runs(result),
        ),
        bars=tuple(_bars(result, wears, newest)),
        working=tuple(_working(result)),
        remarks=(*notes, *remarks),
        messages=tuple(Message(text) for text in repeat),
        spoken=f"{flow_words(mean)}, {verdict}.",
    )


def _runs(result: CalibrationAnswer) -> str:
    group = result.chosen.summary
    count = say_many("1 run", "{n} runs", group.count)
    doses = result.question.runs[group.indices[0]].doses
    of = (
        seconds(group.seconds)
        if doses == 1
        else say("{doses} doses of {seconds}", doses=doses, seconds=seconds(group.seconds))
    )
    return say("{count} of {of}", count=count, of=of)


def _bars(result: CalibrationAnswer, wears: Drift, newest: bool) -> Iterator[Bar]:
    spread = result.chosen.summary.cv
    if spread is not None:
        yield _bar("spread", say("Scatter of the runs"), spread, WIDEST_SPREAD)
    if result.bias is not None and newest:
        off = abs(result.bias.value)
        yield _bar("bias", say("Off the flow in use"), off, AMBER if off <= AMBER else RED)
    if wears.head is not None:
        left = wears.head
        text = say("{hours} of {life}", hours=hours_words(left.hours), life=hours_words(left.life))
        yield Bar("head", say("Head"), text, left.hours / left.life, over=left.hours >= left.life)


def _bar(code: str, label: str, value: float, most: float) -> Bar:
    return Bar(
        code, label, say("{value} of {most}", value=share(value), most=share(most)), value / most, over=value > most
    )


def _working(result: CalibrationAnswer) -> Iterator[WorkLine]:
    means, best = result.question.means, result.chosen
    for number, run in enumerate(result.question.runs, start=1):
        ml = volume(run, means)
        read = (
            with_unit(significant(run.mass_g, 5), "g")
            if run.mass_g is not None
            else with_unit(significant(run.volume_ml or 0.0, 5), "mL")
        )
        by = f" × {significant(means.z_ml_per_g, 5)}" if run.mass_g is not None else ""
        counted = "" if number - 1 in best.summary.indices else say(", not counted")
        yield WorkLine(
            say("Run {number}", number=number),
            say(
                "{read}{by} in {total_seconds}{counted}",
                read=read,
                by=by,
                total_seconds=seconds(run.total_seconds),
                counted=counted,
            ),
            flow_words(60.0 * ml / run.total_seconds, 4),
        )
    for name, part in best.known.shares.items():
        if part >= 0.005:
            yield WorkLine(
                say("How well it is known"), say("share of {sources}", sources=say_all(_SOURCES[name])), share(part)
            )


def facts(found: Measured, pump: Values, wears: Drift, used: Sequence[Use], now: datetime) -> tuple[WorkLine, ...]:
    """Return what follows from the flow, in the order in which it is needed.

    Parameters
    ----------
    found : Measured
        The calibration that is shown.
    pump : mapping of str to Typed
        The pump's fields.
    wears : Drift
        How it wears.
    used : sequence of Use
        The doses in use.
    now : datetime
        The present in the keeper's zone, which dates are written in.

    Returns
    -------
    tuple of WorkLine
        What, how, what it gives.
    """
    return (*_run(found), *_doses(found, pump, used), *_line(found, pump), *_drift(wears, now), *_head(wears, now))


def _run(found: Measured) -> Iterator[WorkLine]:
    what = say("To know it to {wanted}", wanted=share(pump_sheet.WANTED))
    wanted, lasts = pump_sheet.run_needed(found), pump_sheet.proposed(found)
    if lasts is not None and wanted is not None:
        ml = wanted.volume_ml * lasts / wanted.seconds
        yield WorkLine(
            what,
            say("each run, with this {found}, three times", found=_instrument(found)),
            f"{seconds(lasts)}, {about(ml)}",
        )
    elif wanted is not None:
        yield WorkLine(what, say("with this {found}", found=_instrument(found)), say("take a finer one"))


def _instrument(found: Measured) -> str:
    return say("scale") if method_of(found.values) == SCALE else say("cylinder")


def _doses(found: Measured, pump: Values, used: Sequence[Use]) -> Iterator[WorkLine]:
    flow = quantity(pump, fields.FLOW) if found.answer is None else found.answer.chosen.summary.mean
    for use in used:
        lasts = "" if not flow else say(" in {dose}", dose=seconds(60.0 * use.dose_ml / flow))
        yield WorkLine(
            say("A dose in use"),
            f"{use.place}, {term(use.parameter)}, {every(use.per_day)}",
            f"{dose(use.dose_ml)}{lasts}",
        )
    wanted, small = pump_sheet.run_needed(found), min((use.dose_ml for use in used), default=0.0)
    if wanted is not None and small > 0.0 and wanted.volume_ml > small:
        count = math.ceil(wanted.volume_ml / small - 1e-9)
        yield WorkLine(
            say("At the smallest dose"),
            say("let the pump give so many into one reading"),
            say("{count} doses", count=count),
        )


def _line(found: Measured, pump: Values) -> Iterator[WorkLine]:
    held = primed(found, pump)
    if held is not None:
        up = float(math.ceil(held.at_most_seconds))
        gives = f"{about(held.dead_volume_ml)}, {seconds(up)}" if held.seconds > 0.0 else about(held.dead_volume_ml)
        yield WorkLine(
            say("The line holds"), say("after a refill run it so long, and see the liquid at its end"), gives
        )


def primed(found: Measured, pump: Values) -> Priming | None:
    """Return what the line holds, and how long the pump fills it; None where bore, length or flow is not known."""
    bore, length = quantity(pump, _BORE), quantity(pump, _LENGTH)
    if bore is None or length is None:
        return None
    if found.answer is not None:
        mean, half = found.answer.chosen.summary.mean, found.answer.chosen.known.half_width
        return priming(bore, length, mean, mean - half)
    flow = quantity(pump, fields.FLOW)
    return Priming(dead_volume(bore, length), 0.0, 0.0) if flow is None else priming(bore, length, flow, flow)


def _drift(wears: Drift, now: datetime) -> Iterator[WorkLine]:
    found = wears.wear
    if found is None:
        if wears.why:
            yield WorkLine(say("Drift"), wears.why, "")
        return
    at = (
        ""
        if wears.hours is None
        else say("at {amount}{hours}", amount=say("about ") if wears.estimated else "", hours=hours_words(wears.hours))
    )
    yield WorkLine(say("Expected today"), at, flow_words(found.expected))
    if not found.leaves:
        yield from (WorkLine(say("Drift"), words.sentence(reason), "") for reason in found.remarks)
        return
    yield WorkLine(
        say("Drift in {per_hours}", per_hours=hours_words(PER_HOURS)),
        say("give or take {drift_half_width}", drift_half_width=share(found.drift_half_width)),
        f"{share(found.drift)} {more_or_less(found.drift)}",
    )
    for each in found.leaves:
        first = (
            ""
            if each.earliest_hours <= 0.0
            else say(
                "at the earliest {earliest_hours}",
                earliest_hours=until(each.earliest_hours, _here(each.earliest_at, now), wears),
            )
        )
        yield WorkLine(
            say("{limit} off", limit=share(each.limit)), first, until(each.hours, _here(each.at, now), wears)
        )


def _head(wears: Drift, now: datetime) -> Iterator[WorkLine]:
    if wears.head is None:
        return
    left, at = wears.head, _here(wears.head.at, now)
    ran = say(
        "{amount}{hours} of {life} run",
        amount=say("about ") if wears.estimated else "",
        hours=hours_words(left.hours),
        life=hours_words(left.life),
    )
    gives = say("used up") if left.left <= 0.0 else say("{left} left", left=hours_words(left.left))
    yield WorkLine(say("The head"), ran, f"{gives}, {_day(at)}" if at is not None and left.left > 0.0 else gives)


def _day(at: datetime) -> str:
    """Write a date that no line breaks."""
    return date_words(at).replace(" ", NBSP)


def _here(at: datetime | None, now: datetime) -> datetime | None:
    return None if at is None else at.astimezone(now.tzinfo)


def installation(pump: Values) -> tuple[Check, ...]:
    """Return what is looked at before a pump runs by itself, so that no jug runs in (H25).

    Parameters
    ----------
    pump : mapping of str to Typed
        The pump's fields, for how high its outlet ends.

    Returns
    -------
    tuple of Check
        Sentences in the order of looking.
    """
    height = quantity(pump, pump_fields.OUTLET)
    outlet = Check(say_all(CHECKS["outlet_above_water"]))
    if height is not None:
        outlet = (
            Check(
                say(
                    "The outlet ends {height} above the highest water line.",
                    height=with_unit(figure(height / 10.0, 1), "cm"),
                )
            )
            if height > 0.0
            else Check(SENTENCES["outlet_under_water"]({}), wrong=True)
        )
    rest = (say_all(CHECKS[name]) for name in ("jug_below_outlet", "tube_lifted", "outlets_apart", "line_primed"))
    return (outlet, *(Check(text) for text in rest))


def expected_flow(wears: Drift) -> str:
    """Return the flow expected today as it would be typed [mL per min]; empty where no drift can be told."""
    return "" if wears.wear is None or not wears.wear.leaves else quantities.significant(wears.wear.expected, 4)


def found_flow(found: Measured) -> str:
    """Return the flow of a calibration as it would be typed [mL per min]; empty unless it is good enough to dose by."""
    return (
        quantities.significant(found.answer.chosen.summary.mean, 4)
        if found.answer is not None and found.answer.passed
        else ""
    )


def typed_flow(text: str) -> Typed:
    """Return a flow of the two above as it is entered into the pump."""
    return Typed(text, fields.FLOW.unit)


def same_flow(text: str, pump: Values) -> bool:
    """Return whether a flow, as it would be typed, is the one the pump has already."""
    now = quantity(pump, fields.FLOW)
    return bool(text) and now is not None and math.isclose(float(text), now, rel_tol=1e-6)


def flow_in_use(pump: Values) -> float | None:
    """Return the flow that doses are reckoned with [mL/min]; None while it cannot be read."""
    return quantity(pump, fields.FLOW)


def motor(pump: Values) -> str:
    """Return what is to be known of the motor, in a sentence; empty where nothing is."""
    if text_of(pump, "motor") == "brushed":
        # Common practice, no source.
        return say("A brushed motor slows with age as well: calibrate more often.")
    return ""


def guide(found: Measured) -> str:
    """Say how to make the runs, with the time that tells the flow well enough; the runs' fields stand below."""
    scale = method_of(found.values) == SCALE
    into = say("into a jar on the scale") if scale else say("into the cylinder")
    read = say("Weigh each") if scale else say("Read each at eye height")
    # Once the first run has its time, the others are to be like it.
    lasts = pump_sheet.first_lasted(found) or pump_sheet.proposed(found)
    run = say("Let it run {lasts}", lasts=seconds(lasts)) if lasts is not None else say("Let it run the same time")
    return say("Prime the line. {run} {into}, three times. {read}.", run=run, into=into, read=read)


def proposal(found: Measured) -> str:
    """Say why that time is proposed for a run; empty where none is."""
    wanted, lasts = pump_sheet.run_needed(found), pump_sheet.proposed(found)
    if wanted is None or lasts is None:
        return ""
    ml = about(wanted.volume_ml * lasts / wanted.seconds)
    return say(
        "In {lasts} about {dose} come out, enough to know the flow to {wanted}.",
        lasts=seconds(lasts),
        dose=ml,
        wanted=share(pump_sheet.WANTED),
    )
