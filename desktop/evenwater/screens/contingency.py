"""Four cards for when something goes wrong, made from the plan that is shown: what to do, in the order of doing it.

Numbers come from the plan or from the question solved again (``contingency_doses``); what the dose card says too is
said in its words. Rules of expression are those of the dose card.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import datetime

import numpy as np

from evenwater.engine.correction import Answer
from evenwater.engine.stock import Dissolved
from evenwater.screens import dose_card
from evenwater.screens.answer import shown_of
from evenwater.screens.contingency_batch import new_batch
from evenwater.screens.contingency_doses import HOURS, Band, ByHand, Readings, Tool, after_a_gap, by_hand
from evenwater.screens.contingency_views import PHONE, ContingencyCard, Step, WriteIn, apart, identity
from evenwater.screens.shown import date_time, dose, every, span, with_unit
from evenwater.screens.views import CardView, DoseRow

HIGH, MISSED, FAILED = "The test reads high", "Two days were missed", "The pump failed"
_READINGS = WriteIn("What the tests read", ("Date", "Time", "Reading", "Initials"), 8)
_DOSED = WriteIn("What the test read and what was set", ("Date", "Time", "Reading or dose", "Initials"), 8)
_GIVEN = WriteIn("What was really given", ("Date", "Time", "Amount given", "Initials"), 12)
# Hours without the pump before the first dose by hand: then no 24 hours hold more than a day's doses.
_PUMP_OFF_HOURS = 24 - min(hours[-1] - hours[0] for hours in HOURS.values())


def contingencies(answer: Answer, now: datetime, batch_id: str = "", mixed_on: str = "") -> tuple[ContingencyCard, ...]:
    """Return the cards that hang beside the dose card.

    Parameters
    ----------
    answer : Answer
        The plan.
    now : datetime
        The present in the keeper's zone, which all dates are written in.
    batch_id : str
        Id of the record of the batch in the jug; empty when there is none.
    mixed_on : str
        Date the batch was mixed, as the keeper wrote it; empty when it is not known.

    Returns
    -------
    tuple of ContingencyCard
        The test reads high, two days were missed, the pump failed, a new batch goes into the jug.
    """
    base = dose_card.card(answer, now, mixed_on, "", batch_id)
    return (
        _reads_high(answer, base, now),
        _days_missed(answer, base),
        _pump_failed(answer, base),
        new_batch(answer, base),
    )


def _reads_high(answer: Answer, base: CardView, now: datetime) -> ContingencyCard:
    q, shown = answer.question, shown_of(answer.question)
    name, stop, target = q.parameter.name, shown.value(answer.stop_above), shown.value(q.target)
    early = _early(answer, base)
    by = date_time(answer.retest_at.astimezone(now.tzinfo))
    hard = shown.value(q.parameter.canonical(q.parameter.target_hard[1]))
    if early is None:
        use_when = f"Use this card when {name} reads above {stop}."
    else:
        use_when = f"Use this card when {name} reads above {early} before {by}, or above {stop} at any time."
    keeps = answer.doses.upkeep_ml > 0.0
    return ContingencyCard(
        title=HIGH,
        use_when=use_when,
        identity=identity(base),
        steps=(
            Step("At once", "Stop the pump."),
            Step("At once", f"Give nothing else that raises {name}."),
            Step("At once", "Test again with a fresh kit. Let a second person do it, if there is one."),
            Step(
                "Second test not high",
                "Start the pump as it was set. The plan goes on. Make nothing up.",
            ),
            Step("Second test high too", "Leave the pump off. Call the keeper."),
            Step(f"Reads above {hard}", "Call the keeper at once. Exchange water only when the keeper says so."),
            Step("Every day", f"Test {name} at the same hour. Write it down."),
            Step(
                "It has fallen",
                f"When it reads {target} or less, and less than the day before: "
                + ("set the pump to the upkeep below." if keeps else "call the keeper. Leave the pump off."),
            ),
            Step("No lower after a day", "Leave the pump off: the animals use nothing. Call the keeper."),
        ),
        rows=tuple(_upkeep_row(answer, base, f"Only when it has fallen: {every(answer.doses.per_day)}")),
        limits=(
            f"Give nothing that lowers {name}: no acid, no second chemical against the first.",
            base.maximum,
            "Never make up missed doses.",
        ),
        facts=tuple(_falls(answer)),
        phone=PHONE,
        write_in=_READINGS,
    )


def _early(answer: Answer, base: CardView) -> str | None:
    """Return what is high until the next test, where that is less than the stop rule: the upper end of the plan's band."""
    if base.ramp is None or answer.retest_at <= answer.question.now:
        return None
    readings = Readings(answer.question)
    band = float(np.interp(answer.retest_at.timestamp(), base.ramp.times, base.ramp.high))
    high = readings.down(readings.canonical(band))
    return readings.words(high) if readings.canonical(high) < answer.stop_above else None


def _falls(answer: Answer) -> Iterator[tuple[str, str]]:
    """Yield how long the animals take to bring a high value back to the target."""
    q, shown = answer.question, shown_of(answer.question)
    if q.use <= 0.0:
        yield "How long", "How fast it falls is not known: no use per day was entered. Test every day."
        return
    hard, readings = q.parameter.canonical(q.parameter.target_hard[1]), Readings(q)
    middle = readings.canonical(readings.down((answer.stop_above + hard) / 2.0))
    said = [value for value in (answer.stop_above, middle, hard) if value > q.target]
    for value in sorted(set(said)):
        hours = math.ceil((value - q.target) / q.use * 24.0 - 1e-6)
        yield (
            f"From {shown.value(value)}",
            f"about {span(hours / 24.0)} without a dose, down to {shown.value(q.target)}",
        )
    yield "How long", f"Reckoned with {shown.per_day(q.use)} used."


def _upkeep_row(answer: Answer, base: CardView, when: str) -> Iterator[DoseRow]:
    """Yield the plan's own upkeep, if it has one: as the last row of the dose card, but at another time."""
    if answer.doses.upkeep_ml > 0.0:
        last = base.rows[-1]
        yield DoseRow(when, last.dose, last.additive, last.setting)


def _days_missed(answer: Answer, base: CardView) -> ContingencyCard:
    name = answer.question.parameter.name
    bands = after_a_gap(answer)
    then = (
        Step("Then", "Find that reading below: the dose, and how many at most."),
        Step("Not found below", "Leave the pump off. Call the keeper. Test again the next day."),
        Step("Every day", f"Test {name}. Look at the jug, the line and the outlet."),
        Step(
            "After the last dose",
            "Set the pump to the upkeep." if answer.doses.upkeep_ml > 0.0 else "Switch the pump off.",
        ),
    )
    wait = (
        Step("Then", "Leave the pump off and call the keeper: a new plan is needed."),
        Step("Every day", f"Test {name}. Write it down."),
    )
    rows = list(_band_rows(bands, answer, base))
    if bands:
        rows += _upkeep_row(answer, base, f"After the last of them: {every(answer.doses.per_day)}")
    return ContingencyCard(
        title=MISSED,
        use_when="Use this card when nothing was dosed for about two days.",
        identity=identity(base),
        steps=(
            Step("At once", "Stop the pump."),
            Step("At once", "Do not give the missed doses, neither now nor later."),
            Step("At once", "Find out why: no current, an empty jug, air in the line."),
            Step("Then", f"Test {name} twice. Take the higher reading. Write it down."),
            *(then if bands else wait),
        ),
        rows=tuple(rows),
        limits=(base.maximum, base.stop),
        facts=apart(base),
        phone=PHONE,
        write_in=_DOSED,
    )


def _band_rows(bands: tuple[Band, ...], answer: Answer, base: CardView) -> Iterator[DoseRow]:
    """Yield a row for each size of dose, with how many of them each reading allows; nearly always they are all of one."""
    sizes: dict[float, list[str]] = {}
    for number, band in enumerate(bands):
        doses = band.plan.doses
        said = sizes.setdefault(doses.dose_ml, [f"{every(doses.per_day).capitalize()}, no more than:"])
        count = f"{doses.count} {'dose' if doses.count == 1 else 'doses'}"
        said.append(f"{_reads(answer, band.low, band.high, not number)}: {count}")
    for band in bands:
        found = sizes.pop(band.plan.doses.dose_ml, None)
        if found is not None:
            setting = dose_card.pump_setting(band.plan.doses.run_time_s, answer.question.pump)
            yield DoseRow("\n".join(found), dose(band.plan.doses.dose_ml), base.additive, setting)


def _reads(answer: Answer, low: float, high: float, first: bool) -> str:
    """Say which readings a row is for; the lowest row has its own lower end in it."""
    readings = Readings(answer.question)
    if first:
        return f"Reads {readings.bare(low)} to {readings.words(high)}"
    return f"Above {readings.bare(low)}, up to {readings.words(high)}"


def _pump_failed(answer: Answer, base: CardView) -> ContingencyCard:
    q = answer.question
    name = q.parameter.name
    restricted = isinstance(q.additive, Dissolved) and q.additive.restricted
    hand = None if restricted else by_hand(answer)
    start = (
        Step("At once", "Dry your hands. Pull the pump's plug."),
        Step("At once", "Take the line out of the jug: nothing may siphon."),
        Step("At once", "Call the keeper."),
    )
    daily = Step("Every morning", f"Test {name}. Write it down.")
    if hand is None:
        why = "This additive is for trained people only: give" if restricted else "No dose by hand is safe here: give"
        return ContingencyCard(
            title=FAILED,
            use_when=_FAILED_WHEN,
            identity=identity(base),
            steps=(*start, Step("Until the pump runs", f"{why} nothing."), daily),
            limits=(base.stop,),
            phone=PHONE,
            write_in=_READINGS,
        )
    pump_off = with_unit(str(_PUMP_OFF_HOURS), "h")
    return ContingencyCard(
        title=FAILED,
        use_when=_FAILED_WHEN,
        identity=identity(base),
        cautions=base.cautions,
        emergency=base.emergency,
        steps=(
            *start,
            Step(
                "The rest of this day", f"Give nothing. Begin tomorrow, when the pump was off for {pump_off} or longer."
            ),
            daily,
            Step("Then", "Find that reading below. Its row is for this day only."),
            Step("Not found below", "Give nothing on this day."),
            Step("At each hour", "Draw clear stock, exactly to the mark that the row names."),
            Step("At each hour", "Pour it slowly into strong flow, away from the animals."),
            Step("At each hour", "Write it down at once, before anything else is done."),
            Step("An hour was missed", "Leave that dose out."),
            Step("After each dose", "Rinse what it was measured with. Use it for nothing else."),
        ),
        rows=tuple(_hand_rows(answer, hand, base)),
        limits=(f"{base.maximum[:-1]}, the pump's with them.", base.stop),
        facts=apart(base),
        phone=PHONE,
        write_in=_GIVEN,
    )


_FAILED_WHEN = "Use this card when the pump does not run, or runs and nothing comes."


def _hand_rows(answer: Answer, hand: ByHand, base: CardView) -> Iterator[DoseRow]:
    hours = [f"{hour:02d}:00" for hour in HOURS[hand.per_day]]
    at = f"At {', '.join(hours[:-1])} and {hours[-1]}"
    low, first = hand.low, True
    if hand.dose_upto is not None:
        when = f"{_reads(answer, low, hand.dose_upto, first)}\n{at}"
        yield DoseRow(when, dose(hand.dose_ml), base.additive, _mark(hand.tool, hand.dose_ml))
        low, first = hand.dose_upto, False
    if hand.upkeep_upto is not None:
        when = f"{_reads(answer, low, hand.upkeep_upto, first)}\n{at}"
        yield DoseRow(when, dose(hand.upkeep_ml), base.additive, _mark(hand.upkeep_tool, hand.upkeep_ml))


def _mark(tool: Tool, ml: float) -> str:
    holds = with_unit("1", "L") if tool.holds_ml >= 1000.0 else dose(tool.holds_ml)
    return f"{holds} {tool.name}, to the mark of {dose(ml)}"
