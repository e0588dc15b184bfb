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
from evenwater.screens.terms import capitalized, term
from evenwater.screens.views import CardView, DoseRow
from evenwater.wording import marked, say, say_all, say_many

HIGH, MISSED, FAILED = marked("The test reads high"), marked("Two days were missed"), marked("The pump failed")
_READINGS = WriteIn(
    marked("What the tests read"), (marked("Date"), marked("Time"), marked("Reading"), marked("Initials")), 8
)
_DOSED = WriteIn(
    marked("What the test read and what was set"),
    (marked("Date"), marked("Time"), marked("Reading or dose"), marked("Initials")),
    8,
)
_GIVEN = WriteIn(
    marked("What was really given"), (marked("Date"), marked("Time"), marked("Amount given"), marked("Initials")), 12
)
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
        use_when = say("Use this card when {name} reads above {stop}.", name=term(name), stop=stop)
    else:
        use_when = say(
            "Use this card when {name} reads above {early} before {by}, or above {stop} at any time.",
            name=term(name),
            early=early,
            by=by,
            stop=stop,
        )
    keeps = answer.doses.upkeep_ml > 0.0
    return ContingencyCard(
        title=say(HIGH),
        use_when=use_when,
        identity=identity(base),
        steps=(
            Step(say("At once"), say("Stop the pump.")),
            Step(say("At once"), say("Give nothing else that raises {name}.", name=term(name))),
            Step(say("At once"), say("Test again with a fresh kit. Let a second person do it, if there is one.")),
            Step(
                say("Second test not high"),
                say("Start the pump as it was set. The plan goes on. Make nothing up."),
            ),
            Step(say("Second test high too"), say("Leave the pump off. Call the keeper.")),
            Step(
                say("Reads above {hard}", hard=hard),
                say("Call the keeper at once. Exchange water only when the keeper says so."),
            ),
            Step(say("Every day"), say("Test {name} at the same hour. Write it down.", name=term(name))),
            Step(
                say("It has fallen"),
                say("When it reads {target} or less, and less than the day before: ", target=target)
                + (say("set the pump to the upkeep below.") if keeps else say("call the keeper. Leave the pump off.")),
            ),
            Step(say("No lower after a day"), say("Leave the pump off: the animals use nothing. Call the keeper.")),
        ),
        rows=tuple(
            _upkeep_row(answer, base, say("Only when it has fallen: {per_day}", per_day=every(answer.doses.per_day)))
        ),
        limits=(
            say("Give nothing that lowers {name}: no acid, no second chemical against the first.", name=term(name)),
            base.maximum,
            say("Never make up missed doses."),
        ),
        facts=tuple(_falls(answer)),
        phone=say(PHONE),
        write_in=say_all(_READINGS),
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
        yield say("How long"), say("How fast it falls is not known: no use per day was entered. Test every day.")
        return
    hard, readings = q.parameter.canonical(q.parameter.target_hard[1]), Readings(q)
    middle = readings.canonical(readings.down((answer.stop_above + hard) / 2.0))
    said = [value for value in (answer.stop_above, middle, hard) if value > q.target]
    for value in sorted(set(said)):
        hours = math.ceil((value - q.target) / q.use * 24.0 - 1e-6)
        yield (
            say("From {value}", value=shown.value(value)),
            say(
                "about {hours} without a dose, down to {target}", hours=span(hours / 24.0), target=shown.value(q.target)
            ),
        )
    yield say("How long"), say("Reckoned with {use} used.", use=shown.per_day(q.use))


def _upkeep_row(answer: Answer, base: CardView, when: str) -> Iterator[DoseRow]:
    """Yield the plan's own upkeep, if it has one: as the last row of the dose card, but at another time."""
    if answer.doses.upkeep_ml > 0.0:
        last = base.rows[-1]
        yield DoseRow(when, last.dose, last.additive, last.setting)


def _days_missed(answer: Answer, base: CardView) -> ContingencyCard:
    name = answer.question.parameter.name
    bands = after_a_gap(answer)
    then = (
        Step(say("Then"), say("Find that reading below: the dose, and how many at most.")),
        Step(say("Not found below"), say("Leave the pump off. Call the keeper. Test again the next day.")),
        Step(say("Every day"), say("Test {name}. Look at the jug, the line and the outlet.", name=term(name))),
        Step(
            say("After the last dose"),
            say("Set the pump to the upkeep.") if answer.doses.upkeep_ml > 0.0 else say("Switch the pump off."),
        ),
    )
    wait = (
        Step(say("Then"), say("Leave the pump off and call the keeper: a new plan is needed.")),
        Step(say("Every day"), say("Test {name}. Write it down.", name=term(name))),
    )
    rows = list(_band_rows(bands, answer, base))
    if bands:
        rows += _upkeep_row(answer, base, say("After the last of them: {per_day}", per_day=every(answer.doses.per_day)))
    return ContingencyCard(
        title=say(MISSED),
        use_when=say("Use this card when nothing was dosed for about two days."),
        identity=identity(base),
        steps=(
            Step(say("At once"), say("Stop the pump.")),
            Step(say("At once"), say("Do not give the missed doses, neither now nor later.")),
            Step(say("At once"), say("Find out why: no current, an empty jug, air in the line.")),
            Step(say("Then"), say("Test {name} twice. Take the higher reading. Write it down.", name=term(name))),
            *(then if bands else wait),
        ),
        rows=tuple(rows),
        limits=(base.maximum, base.stop),
        facts=apart(base),
        phone=say(PHONE),
        write_in=say_all(_DOSED),
    )


def _band_rows(bands: tuple[Band, ...], answer: Answer, base: CardView) -> Iterator[DoseRow]:
    """Yield a row for each size of dose, with how many of them each reading allows; nearly always they are all of one."""
    sizes: dict[float, list[str]] = {}
    for number, band in enumerate(bands):
        doses = band.plan.doses
        said = sizes.setdefault(
            doses.dose_ml, [say("{per_day}, no more than:", per_day=capitalized(every(doses.per_day)))]
        )
        count = say_many("{n} dose", "{n} doses", doses.count)
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
        return say("Reads {low} to {high}", low=readings.bare(low), high=readings.words(high))
    return say("Above {low}, up to {high}", low=readings.bare(low), high=readings.words(high))


def _pump_failed(answer: Answer, base: CardView) -> ContingencyCard:
    q = answer.question
    name = q.parameter.name
    restricted = isinstance(q.additive, Dissolved) and q.additive.restricted
    hand = None if restricted else by_hand(answer)
    start = (
        Step(say("At once"), say("Dry your hands. Pull the pump's plug.")),
        Step(say("At once"), say("Take the line out of the jug: nothing may siphon.")),
        Step(say("At once"), say("Call the keeper.")),
    )
    daily = Step(say("Every morning"), say("Test {name}. Write it down.", name=term(name)))
    if hand is None:
        why = (
            say("This additive is for trained people only: give")
            if restricted
            else say("No dose by hand is safe here: give")
        )
        return ContingencyCard(
            title=say(FAILED),
            use_when=say(_FAILED_WHEN),
            identity=identity(base),
            steps=(*start, Step(say("Until the pump runs"), say("{why} nothing.", why=why)), daily),
            limits=(base.stop,),
            phone=say(PHONE),
            write_in=say_all(_READINGS),
        )
    pump_off = with_unit(str(_PUMP_OFF_HOURS), "h")
    return ContingencyCard(
        title=say(FAILED),
        use_when=say(_FAILED_WHEN),
        identity=identity(base),
        cautions=base.cautions,
        emergency=base.emergency,
        steps=(
            *start,
            Step(
                say("The rest of this day"),
                say("Give nothing. Begin tomorrow, when the pump was off for {pump_off} or longer.", pump_off=pump_off),
            ),
            daily,
            Step(say("Then"), say("Find that reading below. Its row is for this day only.")),
            Step(say("Not found below"), say("Give nothing on this day.")),
            Step(say("At each hour"), say("Draw clear stock, exactly to the mark that the row names.")),
            Step(say("At each hour"), say("Pour it slowly into strong flow, away from the animals.")),
            Step(say("At each hour"), say("Write it down at once, before anything else is done.")),
            Step(say("An hour was missed"), say("Leave that dose out.")),
            Step(say("After each dose"), say("Rinse what it was measured with. Use it for nothing else.")),
        ),
        rows=tuple(_hand_rows(answer, hand, base)),
        limits=(say("{maximum}, the pump's with them.", maximum=base.maximum[:-1]), base.stop),
        facts=apart(base),
        phone=say(PHONE),
        write_in=say_all(_GIVEN),
    )


_FAILED_WHEN = marked("Use this card when the pump does not run, or runs and nothing comes.")


def _hand_rows(answer: Answer, hand: ByHand, base: CardView) -> Iterator[DoseRow]:
    hours = [f"{hour:02d}:00" for hour in HOURS[hand.per_day]]
    at = say("At {first} and {last}", first=", ".join(hours[:-1]), last=hours[-1])
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
    return say("{holds} {tool}, to the mark of {dose}", holds=holds, tool=tool.name, dose=dose(ml))
