"""What the dose card says: an answer turned into the lines that hang on the stand.

Rules of expression: full names with the telling part in capitals, one rule per line, a space
between number and unit, no slash, no trailing zero, sums of rounded doses, dates that cannot be
turned round, one decimal mark for the whole card.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from evenwater.engine.correction import Answer
from evenwater.engine.question import Pump
from evenwater.engine.stock import Dissolved, made_per_litre
from evenwater.screens import plan_id, words
from evenwater.screens.answer import BOTTLE, shown_of
from evenwater.screens.ramp import chart
from evenwater.screens.shown import (
    date_text,
    date_time,
    date_words,
    dose,
    every,
    figure,
    formula,
    seconds,
    significant,
    with_unit,
)
from evenwater.screens.terms import term, terms
from evenwater.screens.views import CardView, DoseRow
from evenwater.wording import marked, say, say_all, say_many

WRITE_IN_ROWS = 14
# Nobody tests water at four in the morning.
_MORNING, _NIGHT = 7, 22
_APART = {"alkalinity", "calcium", "magnesium", "strontium"}

KNOWN_WORDS = {
    "measured by filling": marked("measured by filling"),
    "dose and test": marked("found by dose and test"),
    "dimensions": marked("reckoned from dimensions"),
    "unknown": marked("not known, low end used"),
}


def card(answer: Answer, now: datetime, mixed_on: str = "", draft: str = "", batch_id: str = "") -> CardView:
    """Return everything the card says.

    Parameters
    ----------
    answer : Answer
        The plan.
    now : datetime
        The present in the keeper's zone, which all dates are written in.
    mixed_on : str
        Date the batch was mixed, as the keeper wrote it; empty when it is not known.
    draft : str
        Words stamped across a card that must not be followed.
    batch_id : str
        Id of the batch's record, whose code is on the jug's label too; empty when there is none.

    Returns
    -------
    CardView
        Lines in the order in which they are needed.
    """
    q, doses = answer.question, answer.doses
    shown, zone = shown_of(q, now.tzinfo), now.tzinfo
    name = q.parameter.name
    batch = q.additive if isinstance(q.additive, Dissolved) else None
    known = f", {say_all(KNOWN_WORDS[q.system.volume_known])}" if q.system.volume_known else ""
    volume = with_unit(significant(q.system.volume_l, 4), "L")
    percent = with_unit(figure(100.0 * q.system.volume_uncertainty, 1), "%")
    reading = (
        say(", measured {measured_at}", measured_at=date_time(q.measured_at.astimezone(zone))) if q.measured_at else ""
    )
    remarks = [words.sentence(r, shown) for r in answer.remarks if r.code in _PRINTED]
    if q.reason.strip():
        remarks.append(say("Reason given for the limits set: {reason}", reason=q.reason.strip()))
    return CardView(
        title=say('Raise {name} from {measured} to {target}', name=term(name), measured=shown.value(q.measured), target=shown.value(q.target)),
        system=q.system.name or say('Unnamed system'),
        volume=say("Net volume {volume}{known}, within {percent}. Reading {measured}{reading}.", volume=volume, known=known, percent=percent, measured=shown.value(q.measured), reading=reading),
        plan_id=plan_id.make(q),
        issued=say('Issued {date_words} {clock}', date_words=date_words(now), clock=f'{now:%H:%M}'),
        replace=say("Replace this card when the plan id changes."),
        valid_until=say('Valid until {valid_until}', valid_until=date_words(answer.valid_until.astimezone(zone))),
        additive=term(batch.tall_man) if batch else say('Bottle, by its label'),
        formula=say(' and ').join(formula(p.chemical.formula) for p in batch.portions) if batch else "",
        strength=_strength(answer, mixed_on, batch_id),
        rows=_rows(answer, now),
        maximum=say("Never more than {never_more} in 24 hours, all doses together.", never_more=dose(answer.never_more_ml)),
        stop=say("Stop and test again if {name} reads above {stop_above}. Never make up missed doses.", name=term(name), stop_above=shown.value(answer.stop_above)),
        retest=say("Test {name} on {answer} at the latest, then once more at the end.", name=term(name), answer=date_time(_waking(answer, now))),
        refill=_refill(answer, now),
        totals=say("{in_24_hours} in 24 hours, {total} in all.", in_24_hours=dose(doses.in_24_hours_ml), total=dose(doses.total_ml)),
        whole_jug="" if answer.whole_jug is None else (
            say("If the whole jug ran in, {name} would reach {whole_jug}: keep the outlet above the water.", name=term(name), whole_jug=shown.value(answer.whole_jug))
        ),
        separation=_separation(name),
        cautions=_cautions(answer),
        remarks=tuple(remarks),
        emergency=say("In the eyes: rinse for at least 15 minutes and get medical help. Poison centre:"),
        write_in=WRITE_IN_ROWS,
        ramp=chart(answer, shown),
        draft=draft,
    )  # fmt: skip


# Remarks that matter to whoever follows the card, not only to whoever plans it.
_PRINTED = {"low_end_volume", "jug_too_small", "nearly_saturated", "raises_too", "restricted", "no_use",
            "target_above_range", "beyond_recommended", "upkeep_too_small", "ph_assumed", "ph_above_afterwards",
            "may_precipitate", "evaporation_unknown"}  # fmt: skip


def _rows(answer: Answer, now: datetime) -> tuple[DoseRow, ...]:
    q, doses = answer.question, answer.doses
    zone = now.tzinfo
    batch = q.additive if isinstance(q.additive, Dissolved) else None
    additive = term(batch.tall_man) if batch else say("Bottle, by its label")
    interval = timedelta(days=doses.interval_days)
    # Intervals are added to instants, never to clock times: a change of clock must not move a dose.
    first, last = (q.now + interval).astimezone(zone), answer.ends_at.astimezone(zone)
    when = say_many(
        "From {first} {per_day}, {n} dose, last {last}",
        "From {first} {per_day}, {n} doses, last {last}",
        doses.count,
        first=date_time(first),
        per_day=every(doses.per_day),
        last=date_time(last),
    )
    rows = [DoseRow(when, dose(doses.dose_ml), additive, pump_setting(doses.run_time_s, q.pump))]
    if doses.upkeep_ml > 0.0:
        after = (answer.ends_at + interval).astimezone(zone)
        when = say("From {after} {per_day}, to keep it there", after=date_time(after), per_day=every(doses.per_day))
        rows.append(DoseRow(when, dose(doses.upkeep_ml), additive, pump_setting(doses.upkeep_run_time_s, q.pump)))
    return tuple(rows)


def pump_setting(run_time_s: float, pump: Pump) -> str:
    """Return what a pump is set to for a dose: how long it runs [s], and how fast."""
    return say(
        "Pump runs {run_time} at {flow_ml_per}",
        run_time=seconds(run_time_s),
        flow_ml_per=with_unit(significant(pump.flow_ml_per_min, 4), say("mL per min")),
    )


def _waking(answer: Answer, now: datetime) -> datetime:
    """Return when to test again, moved to the evening before when it falls into the night."""
    when = answer.retest_at.astimezone(now.tzinfo)
    if _MORNING <= when.hour < _NIGHT:
        return when
    day = when if when.hour >= _NIGHT else when - timedelta(days=1)
    evening = day.replace(hour=_NIGHT - 1, minute=0, second=0, microsecond=0)
    return max(evening, answer.question.now.astimezone(now.tzinfo))


def _strength(answer: Answer, mixed_on: str, batch_id: str) -> str:
    q = answer.question
    code = say(" The jug's label says batch {batch_id}.", batch_id=plan_id.batch_code(batch_id)) if batch_id else ""
    mixed = say(", mixed {mixed_on}", mixed_on=date_text(mixed_on)) if mixed_on else say(", date mixed: see the jug")
    if isinstance(q.additive, Dissolved):
        return say("Strength: {additive}{mixed}.{code}", additive=strength_words(q.additive), mixed=mixed, code=code)
    return say("Strength by its label: {label}.{code}", label=label_words(answer), code=code)


def label_words(answer: Answer) -> str:
    """Return what the label of a bottle says: 10 mL raise 100 L by 0.5 dKH; empty where it is none."""
    label = answer.question.additive
    if isinstance(label, Dissolved):
        return ""
    return say(
        "{dose} raise {water} by {raises}",
        dose=dose(label.dose_ml),
        water=with_unit(significant(label.water_l, 4), "L"),
        raises=shown_of(answer.question).rise(label.raises),
    )


def strength_words(batch: Dissolved) -> str:
    """Return the strength as quantity per volume: dissolved 106 g per 1 L (L12)."""
    litre = with_unit("1", "L")
    if batch.saturated:
        most = with_unit(significant(made_per_litre(batch), 3), "g")
        return say(
            "saturated, {most} per {litre} at {coolest}",
            most=most,
            litre=litre,
            coolest=with_unit(figure(batch.coolest_c, 1), "°C"),
        )
    parts, pure = [], ""
    for part in batch.portions:
        pure = (
            "" if part.purity == 1.0 else say(", {purity} pure", purity=with_unit(figure(100.0 * part.purity, 2), "%"))
        )
        name = f" {term(part.chemical.tall_man)}{pure}" if batch.also else ""
        parts.append(f"{with_unit(significant(part.grams / batch.made_up_l, 4), 'g')}{name}")
    return say(
        "dissolved {parts} per {litre}{pure}",
        parts=say(" and ").join(parts),
        litre=litre,
        pure="" if batch.also else pure,
    )


def _refill(answer: Answer, now: datetime) -> str:
    if answer.runs_out_at is None:
        return say("Look at the jug every day.")
    return say(
        "A full jug is empty on {runs_out_at}: refill before then.",
        runs_out_at=date_words(answer.runs_out_at.astimezone(now.tzinfo)),
    )


def _separation(name: str) -> str:
    if name not in _APART:
        return ""
    opposite = say("calcium or magnesium") if name == "alkalinity" else term("alkalinity")
    return say(
        "Keep 30 minutes and another outlet between this and any {opposite} dose. Never mix the concentrates.",
        opposite=opposite,
    )


def _cautions(answer: Answer) -> tuple[str, ...]:
    additive = answer.question.additive
    if not isinstance(additive, Dissolved):
        return say_all(BOTTLE)
    word = f"{term(additive.signal_word)}: " if additive.signal_word else ""
    statements = tuple(f"{word}{s}." for s in terms(additive.statements))
    return statements + terms(additive.cautions) + (say("The bag's own safety sheet and local rules come first."),)
