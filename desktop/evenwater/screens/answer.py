"""The answer of a correction as the sheet shows it: figure, limits, arithmetic, remarks."""

from __future__ import annotations

import math
from datetime import datetime, tzinfo

from evenwater.engine.correction import Answer, Refused
from evenwater.engine.intake import Unread
from evenwater.engine.limits import Nearness
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from evenwater.engine.schedule import Schedule
from evenwater.engine.side_effects import side_effects
from evenwater.engine.stock import Dissolved
from evenwater.screens import plan_words, side_effect_lines, words
from evenwater.screens.field_words import FIELD_WORDS
from evenwater.screens.shown import (
    Shown,
    dose,
    every,
    figure,
    seconds,
    significant,
    span,
    unit_words,
    weekday_time,
    with_unit,
)
from evenwater.screens.terms import capitalized, headed, term, terms
from evenwater.screens.views import AnswerView, Bar, Message, Offer
from evenwater.screens.working import PACE, working
from evenwater.wording import marked, say, say_all

_LABELS = {
    "daily_rise": marked("Daily rise"),
    "given_lately": marked("With what was given"),
    "single_dose": marked("Single dose"),
    "pump_share": marked("Pump running"),
    "smallest_dose": marked("Smallest dose"),
    "jug": marked("Jug"),
    "solubility": marked("Dissolved"),
    "target": marked("Target"),
    "evaporation": marked("Evaporation"),
    "ph_rise": marked("Rise of pH in an hour"),
    "ph_ceiling": marked("Highest pH"),
    "saturation": marked("Aragonite saturation"),
}


def shown_of(question: CorrectionQuestion, zone: tzinfo | None = None) -> Shown:
    """Return the writer of values in the keeper's unit."""
    return Shown(question.parameter, question.unit, question.system.water, zone)


def view(result: Answer | Refused | Unread, now: datetime, shown: Shown | None = None) -> AnswerView:
    """Turn a result into the right half of the sheet.

    Parameters
    ----------
    result : Answer, Refused or Unread
        What the engine said.
    now : datetime
        The present in the keeper's zone, which dates are written in.
    shown : Shown or None
        The keeper's unit, for a refusal; an answer carries its own.

    Returns
    -------
    AnswerView
        Rows and sentences.
    """
    if isinstance(result, Unread):
        wrong = tuple(_message(r, shown) for r in sorted(result.wrong, key=_place))
        missing = tuple(_message(r, shown) for r in sorted(result.missing, key=_place))
        return AnswerView("refused" if wrong else "empty", messages=wrong + missing, spoken=_spoken(wrong + missing))
    if isinstance(result, Refused):
        messages = tuple(_message(r, shown) for r in result.reasons)
        return AnswerView("refused", messages=messages, spoken=_spoken(messages))
    return _answered(result, now)


def _place(reason: Reason) -> int:
    """Return where a reason's field stands in the form, so that a list of them reads downwards."""
    order = tuple(FIELD_WORDS)
    return order.index(reason.path) if reason.path in order else len(order)


def _spoken(messages: tuple[Message, ...]) -> str:
    return " ".join(m.text for m in messages)


def _message(reason: Reason, shown: Shown | None) -> Message:
    return Message(words.sentence(reason, shown), reason.path, reason.code, _offers(reason))


def _offers(reason: Reason) -> tuple[Offer, ...]:
    if reason.code == "implausible":
        instead = reason.params["instead"]
        assert isinstance(instead, tuple)  # noqa: S101  (narrowing)
        return tuple(
            Offer(say("It was {number}", number=with_unit(figure(n, 6), unit_words(u))), figure(n, 6), u)
            for n, u, _ in instead
        )
    return ()


def headline(doses: Schedule) -> tuple[str, str]:
    """Return the figure to set and its unit, per hour, never above what is dosed: 4.7, mL per hour."""
    return per_hour(doses.dose_ml, doses.per_day)


def per_hour(dose_ml: float, per_day: int) -> tuple[str, str]:
    """Return so many doses [mL] a day as a figure per hour and its unit, rounded down."""
    hourly, unit = dose_ml * per_day / 24.0, say("mL per hour")
    if hourly >= 1000.0:
        hourly, unit = hourly / 1000.0, say("L (litres) per hour")
    digits = max(0, 2 - math.floor(math.log10(hourly)))
    grain = 10.0**digits
    return figure(math.floor(hourly * grain + 1e-9) / grain, digits), unit


def _answered(answer: Answer, now: datetime) -> AnswerView:
    q, doses = answer.question, answer.doses
    shown = shown_of(q)
    ends = weekday_time(answer.ends_at, now)
    third = say(
        "{dose} {per_day} ({run_time}) · {in_24_hours} in 24 hours · {total} in all",
        dose=dose(doses.dose_ml),
        per_day=every(doses.per_day),
        run_time=seconds(doses.run_time_s),
        in_24_hours=dose(doses.in_24_hours_ml),
        total=dose(doses.total_ml),
    )
    second = say("for {lasts_days}, until {ends}", lasts_days=span(doses.lasts_days), ends=ends)
    bars = tuple(_bar(item, answer.set_by) for item in answer.limits)
    set_by = _set_by(answer, bars)
    number, unit = headline(doses)
    spoken_unit = say("millilitres per hour") if unit == say("mL per hour") else say("litres per hour")
    cautions = terms(q.additive.cautions) if isinstance(q.additive, Dissolved) else say_all(BOTTLE)
    return AnswerView(
        state="answered",
        figure=number,
        figure_unit=unit,
        second=second,
        third=third,
        set_by=set_by,
        bars=bars,
        working=working(answer, shown),
        side_effects=side_effect_lines.lines(side_effects(answer), shown),
        cautions=cautions,
        remarks=_faster(answer) + tuple(words.sentence(r, shown) for r in answer.remarks),
        spoken=f"{number} {spoken_unit} {second}. {set_by}.",
    )


# For a bottle known only by its label; common practice, no source.
BOTTLE = (
    marked("Read the bottle's own safety sheet first; it wins over this page."),
    marked("If it gets in the eyes, rinse for at least 15 minutes and get medical help."),
)


# What to do when it is not the daily rise that sets the pace.
_FASTER = {
    "single_dose": (marked("More doses a day would make it faster."),),
    "pump_share": (marked("A faster pump or a stronger stock would make it faster."),),
    "ph_rise": (marked("Sodium bicarbonate, which does not lift pH at once, would make it faster."),),
    "ph_ceiling": (marked("Sodium bicarbonate, which does not lift pH at once, would make it faster."),),
    "evaporation": (marked("A stronger additive than limewater would make it faster."),),
}


def _faster(answer: Answer) -> tuple[str, ...]:
    """Say what would make it faster, where it is not the daily rise that sets the pace."""
    more = (
        plan_words.smaller_doses(answer.doses.per_day).strip()
        if answer.set_by in ("ph_rise", "ph_ceiling", "saturation")
        else ""
    )
    return (*([more] if more else []), *say_all(_FASTER.get(answer.set_by, ())))


def _set_by(answer: Answer, bars: tuple[Bar, ...]) -> str:
    binding = next((b for b in bars if b.binds), None)
    if answer.set_by.startswith("also_raises_"):
        head = say("What it does to {set_by} sets the pace", set_by=term(answer.set_by.removeprefix("also_raises_")))
    else:
        head = capitalized(say_all(PACE[answer.set_by]))
    return headed(head, binding.text) if binding else head


def _bar(item: Nearness, set_by: str) -> Bar:
    label = say_all(_LABELS.get(item.code)) or capitalized(item.code.removeprefix("also_raises_")) + say(" too")
    unit = {"g/L": say("g per L")}.get(item.unit) or unit_words(item.unit)
    if item.code == "smallest_dose":
        text = say("{item_value}, at least {bound}", item_value=dose(item.value), bound=dose(item.bound))
    elif item.unit.startswith("SG"):
        text = say(
            "{item_value} of {bound}",
            item_value=significant(item.value, 5),
            bound=with_unit(significant(item.bound, 5), unit),
        )
    elif item.code in ("ph_rise", "ph_ceiling"):
        text = say("{item_value} of {bound}", item_value=figure(item.value, 2), bound=figure(item.bound, 2))
    elif item.code == "saturation":
        text = say("{item_value} of {bound}", item_value=figure(item.value, 1), bound=figure(item.bound, 1))
    elif item.unit == "mL":
        value, bound = dose(item.value, spelled=False), dose(item.bound, spelled=False)
        text = say("{item_value} of {bound}", item_value=value, bound=bound)
    else:
        text = say(
            "{item_value} of {bound}", item_value=_number(item.value), bound=with_unit(_number(item.bound), unit)
        )
    return Bar(item.code, label, text, item.share, item.code == set_by, item.over)


def _number(value: float) -> str:
    return significant(value, 2 if abs(value) < 1.0 else 3)
