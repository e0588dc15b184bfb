"""The Upkeep sheet without its widgets: a row for each value kept, what it all does in time, limits and remarks."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from evenwater.engine import upkeep_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.limits import Nearness
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Dissolved
from evenwater.engine.upkeep import UpkeepAnswer, UpkeepDose, UpkeepItem, UpkeepQuestion, solve
from evenwater.engine.upkeep_intake import EXCHANGE_PER_DAY
from evenwater.screens import upkeep_lines, words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.shown import (
    Shown,
    about,
    date_words,
    dose,
    every,
    figure,
    seconds,
    significant,
    span,
    unit_words,
    with_unit,
)
from evenwater.screens.terms import capitalized, headed, term, terms
from evenwater.screens.upkeep_lines import SpanLine
from evenwater.screens.views import Bar, Message, WorkLine
from evenwater.wording import marked, say, say_all

EXCHANGED = EXCHANGE_PER_DAY
# Always beside the doses; common practice, no source.
RULES = (
    marked("Missed doses are never made up: go on with the next one."),
    marked("Test again within the week, and after every change of doses, batch or pump."),
)
_LABELS = {
    "pump_share": marked("Pump running"),
    "smallest_dose": marked("Smallest dose"),
    "single_dose": marked("Doses at one moment"),
    "daily_rise": marked("Daily rise"),
    "solubility": marked("Dissolved"),
    "evaporation": marked("Evaporation"),
    "ph_rise": marked("Rise of pH in an hour"),
    "ph_ceiling": marked("Highest pH"),
    "saturation": marked("Aragonite saturation"),
}


@dataclass(frozen=True)
class UpkeepRow:
    """One value kept: its use, what is dosed for it and how the pump is set, when its jug is empty.

    ``additive`` is the full name with the telling part in capitals. ``share`` says how much of the use the others bring;
    ``dose``, ``run_time``, ``jug`` and ``jug_empty`` are empty of a value that the others keep. ``name`` is the parameter's id.
    """

    parameter: str
    use: str
    additive: str
    per_hour: str
    dose: str
    run_time: str
    in_24_hours: str
    share: str
    jug: str
    jug_empty: str
    name: str = ""


@dataclass(frozen=True)
class UpkeepView:
    """Everything the sheet shows.

    ``state`` is ``"empty"`` (something is still to be filled in), ``"answered"`` or ``"refused"``. ``hazards`` and
    ``cautions`` stand before the numbers, ``rules`` beside them; ``spans`` is what a week, a month and a year do; ``lines`` what else it does.
    """

    state: str
    rows: tuple[UpkeepRow, ...] = ()
    bars: tuple[Bar, ...] = ()
    spans: tuple[SpanLine, ...] = ()
    lines: tuple[WorkLine, ...] = ()
    hazards: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    rules: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()
    messages: tuple[Message, ...] = ()
    spoken: str = ""


@dataclass(frozen=True)
class Kept:
    """The view, with the answer when there is one."""

    view: UpkeepView
    answer: UpkeepAnswer | None = None


def evaluate(raw: Mapping[str, Any], catalogue: Catalogue, now: datetime) -> Kept:
    """Read an upkeep, plan it, and turn the result into what the sheet shows.

    Parameters
    ----------
    raw : mapping
        The question's tables as typed, see ``upkeep_intake.upkeep``.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present in the keeper's zone, which dates are written in.

    Returns
    -------
    Kept
        The view, and the answer when there is one.
    """
    question = upkeep_intake.upkeep(raw, catalogue, now)
    if isinstance(question, Unread):
        messages = tuple(_message(reason, None) for reason in question.reasons)
        return Kept(UpkeepView("refused" if question.wrong else "empty", messages=messages, spoken=_spoken(messages)))
    result = solve(question)
    if isinstance(result, Refused):
        messages = tuple(_message(reason, question) for reason in result.reasons)
        return Kept(UpkeepView("refused", messages=messages, spoken=_spoken(messages)))
    return Kept(view(result, now), result)


def view(answer: UpkeepAnswer, now: datetime) -> UpkeepView:
    """Turn an answer into what the sheet shows.

    Parameters
    ----------
    answer : UpkeepAnswer
        The plan.
    now : datetime
        The present in the zone that dates are written in.

    Returns
    -------
    UpkeepView
        Rows and sentences.
    """
    rows = tuple(_row(answer.question, each, now) for each in answer.doses)
    return UpkeepView(
        state="answered",
        rows=rows,
        bars=tuple(map(_bar, answer.limits)),
        spans=upkeep_lines.spans(answer),
        lines=upkeep_lines.lines(answer),
        hazards=hazards(answer.question),
        cautions=cautions(answer.question),
        rules=say_all(RULES),
        remarks=tuple(_remark(reason, answer.question) for reason in answer.remarks),
        spoken=" ".join(f"{row.parameter}: {row.per_hour or say('nothing is dosed')}." for row in rows),
    )


def sentence(reason: Reason, question: UpkeepQuestion | None) -> str:
    """Return the sentence for a reason, in the unit of the value that it is about.

    Parameters
    ----------
    reason : Reason
        Code, figures and field.
    question : UpkeepQuestion or None
        The question; None while it cannot be read, when no reason speaks of a value.

    Returns
    -------
    str
        One or two sentences.
    """
    if question is None or not question.items:
        return words.sentence(reason)
    item = item_of(reason, question) or question.items[0]
    return words.sentence(reason, Shown(item.parameter, item.unit, question.system.water))


def item_of(reason: Reason, question: UpkeepQuestion) -> UpkeepItem | None:
    """Return the item whose field a reason is about, or None when it concerns no single one."""
    table, _, rest = reason.path.partition(".")
    number = rest.partition(".")[0]
    return question.items[int(number) - 1] if table == "item" and number.isdigit() else None


def hazards(question: UpkeepQuestion) -> tuple[str, ...]:
    """Return the hazard statements of everything that is dosed, each chemical's signal word before them.

    Parameters
    ----------
    question : UpkeepQuestion
        The question.

    Returns
    -------
    tuple of str
        Sentences, to stand before any number.
    """
    portions = [p for item in question.items if isinstance(item.additive, Dissolved) for p in item.additive.portions]
    return tuple(
        dict.fromkeys(
            f"{term(p.chemical.signal_word) or say('Caution')}, {term(p.chemical.name)}: {statement}."
            for p in portions
            for statement in terms(p.chemical.statements)
        )
    )


def cautions(question: UpkeepQuestion) -> tuple[str, ...]:
    """Return the handling lines of everything that is dosed, each once.

    Parameters
    ----------
    question : UpkeepQuestion
        The question.

    Returns
    -------
    tuple of str
        Sentences, to stand before any number.
    """
    said = (
        terms(item.additive.cautions) if isinstance(item.additive, Dissolved) else say_all(BOTTLE)
        for item in question.items
    )
    return tuple(dict.fromkeys(line for lines in said for line in lines))


def _message(reason: Reason, question: UpkeepQuestion | None) -> Message:
    return Message(sentence(reason, question), reason.path, reason.code)


def _spoken(messages: tuple[Message, ...]) -> str:
    return " ".join(message.text for message in messages)


def _remark(reason: Reason, question: UpkeepQuestion) -> str:
    """Return a remark; one that other questions know too does not say which of the values it is about."""
    said, item = sentence(reason, question), item_of(reason, question)
    if item is None or reason.code.startswith("upkeep_"):
        return said
    return headed(capitalized(item.parameter.name), said)


def _row(question: UpkeepQuestion, each: UpkeepDose, now: datetime) -> UpkeepRow:
    item = each.item
    shown = Shown(item.parameter, item.unit, question.system.water)
    batch = item.additive
    dosed = each.dose_ml > 0.0
    share = with_unit(significant(100.0 * each.own_share, 3), "%")
    return UpkeepRow(
        parameter=capitalized(item.parameter.name),
        use=shown.per_day(item.use or 0.0),
        additive=term(batch.tall_man) if isinstance(batch, Dissolved) else say("a bottle, by its label"),
        per_hour=say("{in_24_hours} per hour", in_24_hours=about(each.in_24_hours_ml / 24.0)) if dosed else "",
        dose=f"{dose(each.dose_ml)} {every(each.per_day)}" if dosed else "",
        run_time=seconds(each.run_time_s) if dosed else "",
        in_24_hours=dose(each.in_24_hours_ml) if dosed else "",
        share=""
        if each.own_share > 1.0 - 1e-9
        else say("{share} of the use; the other additives bring the rest", share=share),
        jug=span(each.jug_days) if each.jug_days is not None else "",
        jug_empty=date_words(each.empty_at.astimezone(now.tzinfo)) if each.empty_at is not None else "",
        name=item.parameter.name,
    )


def _bar(item: Nearness) -> Bar:
    kind = next(code for code in _LABELS if item.code == code or item.code.startswith(f"{code}_"))
    of = item.code.removeprefix(kind).removeprefix("_")
    label = headed(say_all(_LABELS[kind]), term(of)) if of else say_all(_LABELS[kind])
    unit = {"g/L": say("g per L")}.get(item.unit) or unit_words(item.unit)
    if kind == "smallest_dose":
        text = say("{item_value}, at least {bound}", item_value=dose(item.value), bound=dose(item.bound))
    elif kind == "evaporation":
        text = say("{item_value} of {bound}", item_value=about(item.value), bound=about(item.bound))
    elif kind in ("ph_rise", "ph_ceiling"):
        text = say("{item_value} of {bound}", item_value=figure(item.value, 2), bound=figure(item.bound, 2))
    else:
        text = say(
            "{item_value} of {bound}",
            item_value=significant(item.value, 3),
            bound=with_unit(significant(item.bound, 3), unit),
        )
    return Bar(item.code, label, text, item.share, over=item.over)
