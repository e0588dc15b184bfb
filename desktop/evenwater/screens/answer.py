"""The answer of a correction as the sheet shows it: figure, limits, arithmetic, remarks."""

from __future__ import annotations

import math
from datetime import datetime, tzinfo

from evenwater.engine.correction import Answer, Refused
from evenwater.engine.formula import molar_mass
from evenwater.engine.intake import Unread
from evenwater.engine.limits import Nearness
from evenwater.engine.quantities import density_kg_per_l, figure, significant
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from evenwater.engine.schedule import Schedule
from evenwater.engine.stock import Dissolved
from evenwater.engine.units import KINDS
from evenwater.screens import words
from evenwater.screens.shown import Shown, about, dose, every, seconds, span, weekday_time, with_unit
from evenwater.screens.views import AnswerView, Bar, Message, Offer, WorkLine

_LABELS = {
    "daily_rise": "Daily rise",
    "single_dose": "Single dose",
    "pump_share": "Pump running",
    "smallest_dose": "Smallest dose",
    "jug": "Jug",
    "solubility": "Dissolved",
    "target": "Target",
}
SET_BY = {
    "daily_rise": "The daily rise sets the pace",
    "single_dose": "The size of a single dose sets the pace",
    "pump_share": "The pump sets the pace",
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
    order = tuple(words.FIELD_WORDS)
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
            Offer(f"It was {with_unit(figure(n, 6), words.unit_words(u))}", figure(n, 6), u) for n, u, _ in instead
        )
    return ()


def headline(doses: Schedule) -> str:
    """Return the figure to set, per hour, never above what is dosed: 4.7."""
    hourly = doses.dose_ml * doses.per_day / 24.0
    digits = max(0, 2 - math.floor(math.log10(hourly)))
    grain = 10.0**digits
    return figure(math.floor(hourly * grain + 1e-9) / grain, digits)


def _answered(answer: Answer, now: datetime) -> AnswerView:
    q, doses = answer.question, answer.doses
    shown = shown_of(q)
    ends = weekday_time(answer.ends_at, now)
    third = (
        f"{dose(doses.dose_ml)} {every(doses.per_day)} ({seconds(doses.run_time_s)}) · "
        f"{dose(doses.in_24_hours_ml)} in 24 hours · {dose(doses.total_ml)} in all"
    )
    second = f"for {span(doses.lasts_days)}, until {ends}"
    bars = tuple(_bar(item, answer.set_by) for item in answer.limits)
    set_by = _set_by(answer, bars)
    cautions = q.additive.chemical.cautions if isinstance(q.additive, Dissolved) else BOTTLE
    return AnswerView(
        state="answered",
        figure=headline(doses),
        figure_unit="mL per hour",
        second=second,
        third=third,
        set_by=set_by,
        bars=bars,
        working=working(answer, shown),
        cautions=cautions,
        remarks=tuple(words.sentence(r, shown) for r in answer.remarks),
        spoken=f"{headline(doses)} millilitres per hour {second}. {set_by}.",
    )


# For a bottle known only by its label; common practice, no source.
BOTTLE = (
    "Read the bottle's own safety sheet first; it wins over this page.",
    "If it gets in the eyes, rinse for at least 15 minutes and get medical help.",
)


def _set_by(answer: Answer, bars: tuple[Bar, ...]) -> str:
    binding = next((b for b in bars if b.binds), None)
    if answer.set_by.startswith("also_raises_"):
        head = f"What it does to {answer.set_by.removeprefix('also_raises_')} sets the pace"
    else:
        head = SET_BY[answer.set_by]
    return f"{head}: {binding.text}" if binding else head


def _bar(item: Nearness, set_by: str) -> Bar:
    label = _LABELS.get(item.code) or item.code.removeprefix("also_raises_").capitalize() + " too"
    unit = {"g/L": "g per L"}.get(item.unit) or words.unit_words(item.unit)
    if item.code == "smallest_dose":
        text = f"{dose(item.value)}, at least {dose(item.bound)}"
    elif item.unit.startswith("SG"):
        text = f"{significant(item.value, 5)} of {with_unit(significant(item.bound, 5), unit)}"
    elif item.unit == "mL" and max(item.value, item.bound) >= 1000.0:
        text = f"{about(item.value).removesuffix(' (litres)')} of {about(item.bound).removesuffix(' (litres)')}"
    else:
        text = f"{_number(item.value)} of {with_unit(_number(item.bound), unit)}"
    return Bar(item.code, label, text, item.share, item.code == set_by, item.over)


def _number(value: float) -> str:
    return significant(value, 2 if abs(value) < 1.0 else 3)


def working(answer: Answer, shown: Shown) -> tuple[WorkLine, ...]:
    """Return the arithmetic, line by line, in the keeper's own units.

    Parameters
    ----------
    answer : Answer
        The plan.
    shown : Shown
        The keeper's unit.

    Returns
    -------
    tuple of WorkLine
        From the stock to the upkeep.
    """
    q, doses = answer.question, answer.doses
    per_ml = answer.per_ml
    rise, use = shown.rise(answer.pace, 4), shown.rise(q.use, 4)
    to_give = shown.rise(answer.pace + q.use, 4)
    used = f" and {use} used" if q.use > 0.0 else ""
    climb = shown.rise(q.target - q.measured, 4)
    net = doses.dose_ml * per_ml - q.use * doses.interval_days
    lines = [
        _stock_line(answer),
        WorkLine("1 mL raises", _spread_line(answer, shown), shown.rise(per_ml, 5)),
        WorkLine("Rise wanted", f"{shown.value(q.target)} less {shown.value(q.measured)}", climb),
        WorkLine("Pace", SET_BY.get(answer.set_by, "limited by what else it raises").lower(), f"{rise} per day"),
        WorkLine("To be given in 24 hours", f"{rise} rise{used}", to_give),
        WorkLine("", f"{to_give} ÷ {shown.rise(per_ml, 5)} per mL", with_unit(figure(answer.dose_ml_per_day, 3), "mL")),
        WorkLine(
            "Each dose", f"÷ {doses.per_day} doses, in steps of {dose(doses.step_ml)}, rounded down",
            f"{figure(answer.single_dose_ml, 4)}, set {dose(doses.dose_ml)}",
        ),
        WorkLine("Left after use", "what each dose leaves in the water until the next", shown.rise(net, 4)),
        WorkLine("Number of doses", f"{climb} ÷ {shown.rise(net, 4)}, whole doses only", str(doses.count)),
        WorkLine("Left to the target", "by rounding down", shown.rise(doses.shortfall, 2)),
        WorkLine(
            "Pump runs", f"{dose(doses.dose_ml)} ÷ {with_unit(significant(q.pump.flow_ml_per_min, 4), 'mL per min')}",
            f"{seconds(doses.run_time_s)} each",
        ),
    ]  # fmt: skip
    if q.use > 0.0:
        hourly = with_unit(figure(answer.upkeep_ml_per_day / 24.0, 4), "mL per hour")
        lines.append(WorkLine("Afterwards", f"{use} used per day ÷ {shown.rise(per_ml, 5)} per mL", hourly))
    lines.append(
        WorkLine("Second reckoning", "all doses given one by one", f"ends at {shown.value(answer.seen.end_value)}")
    )
    low, high = answer.band
    lines.append(
        WorkLine("9 times in 10 it ends", _largest_source(answer), f"{shown.value(low)} to {shown.value(high)}")
    )
    return tuple(lines)


def _stock_line(answer: Answer) -> WorkLine:
    q = answer.question
    salt = q.parameter.name == "salinity"
    carried = answer.strength * (density_kg_per_l(q.system.water) if salt else 1.0)
    unit = {"alkalinity": "meq", "salinity": "g of salt"}.get(q.parameter.name, "mg")
    strength = f"{with_unit(significant(carried, 5), unit)} per mL"
    if isinstance(q.additive, Dissolved):
        batch = q.additive
        grams, litres = with_unit(significant(batch.grams, 5), "g"), with_unit(significant(batch.made_up_l, 4), "L")
        mass = with_unit(figure(molar_mass(batch.chemical.formula), 2), "g per mol")
        pure = "" if batch.purity == 1.0 else f", {figure(100.0 * batch.purity, 2)} % pure"
        return WorkLine("1 mL of stock carries", f"{grams} in {litres}{pure}, {mass}", strength)
    label = q.additive
    rise = f"{significant(label.raises, 4)} {KINDS[label.kind].canonical.shown}"
    how = f"{with_unit(significant(label.dose_ml, 4), 'mL')} raise {with_unit(significant(label.water_l, 4), 'L')} by {rise}"
    return WorkLine("1 mL of stock carries", f"by its label, {how}", strength)


def _spread_line(answer: Answer, shown: Shown) -> str:
    """Say how what a millilitre carries becomes a rise, with every factor that is needed."""
    q = answer.question
    litres = with_unit(significant(q.system.volume_l, 5), "L")
    if q.parameter.name == "salinity":
        return f"that ÷ ({litres} × {with_unit(significant(density_kg_per_l(q.system.water), 5), 'kg per L')})"
    plain = Shown(q.parameter, shown.rise_unit, q.system.water)
    factor = plain.number(1.0)
    if abs(factor - 1.0) < 1e-12:
        return f"that ÷ {litres}"
    canonical = KINDS[q.parameter.kind].canonical.shown
    return f"that ÷ {litres} × {with_unit(significant(factor, 5), plain.unit_words)} per {canonical}"


def _largest_source(answer: Answer) -> str:
    name, share = max(answer.by_source.items(), key=lambda item: item[1])
    source = {"reading": "the reading", "use": "the use per day", "pump": "the pump", "volume": "the volume",
              "strength": "the strength"}[name]  # fmt: skip
    return f"the largest part of the doubt ({figure(100.0 * share, 0)} %) comes from {source}"
