"""The Exchange sheet without its widgets: a pair of pumps and its new water to what is shown of them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import Any

from evenwater.engine import exchange_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.correction import Refused
from evenwater.engine.exchange import ExchangeAnswer, solve
from evenwater.engine.exchange_question import ExchangeQuestion
from evenwater.engine.form import Unread
from evenwater.engine.reasons import Reason
from evenwater.screens import exchange_fields, exchange_lines, exchange_parts, words
from evenwater.screens.exchange_chart import CourseChart, charts
from evenwater.screens.exchange_parts import DoseRow, ValueRow
from evenwater.screens.exchange_words import percent
from evenwater.screens.shown import about, span
from evenwater.screens.terms import capitalized, listed, terms
from evenwater.screens.views import Bar, Message, WorkLine
from evenwater.screens.water_given import way
from evenwater.wording import marked, say

ELSEWHERE = marked("Stands on the Correct sheet.")
# One sentence stands for all of these.
_SAID_TOGETHER = ("exchange_new_water_assumed",)


@dataclass(frozen=True)
class ExchangeView:
    """Everything the sheet shows.

    ``state`` is ``"empty"`` (something is still to be filled in), ``"answered"`` or ``"refused"``. ``dangers`` and ``cautions`` stand
    before the numbers. ``figure`` is what is left of the old water. A message's ``path`` is the name of its field, or empty.
    """

    state: str
    figure: str = ""
    figure_unit: str = ""
    second: str = ""
    third: str = ""
    dangers: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    values: tuple[ValueRow, ...] = ()
    charts: Mapping[str, CourseChart] = field(default_factory=dict)
    bars: tuple[Bar, ...] = ()
    pair: tuple[WorkLine, ...] = ()
    dosing: tuple[DoseRow, ...] = ()
    bucket: tuple[WorkLine, ...] = ()
    remarks: tuple[str, ...] = ()
    messages: tuple[Message, ...] = ()
    spoken: str = ""


@dataclass(frozen=True)
class Exchanged:
    """The view, with the answer when there is one."""

    view: ExchangeView
    answer: ExchangeAnswer | None = None


def evaluate(raw: Mapping[str, Any], catalogue: Catalogue, now: datetime) -> Exchanged:
    """Read an exchange, follow it, and turn the result into what the sheet shows.

    Parameters
    ----------
    raw : mapping
        The question's tables as typed, see ``exchange_given.raw_question``; ``way`` says how the flow is said.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present in the keeper's zone, from which the age of readings counts.

    Returns
    -------
    Exchanged
        The view, and the answer when there is one.
    """
    place = _Place(way(raw), tuple(str(row.get("parameter", "")) for row in raw.get("value", ())))
    question, beside = _read(raw, catalogue)
    if isinstance(question, Unread):
        messages = tuple(_message(reason, place) for reason in (*question.reasons, *beside))
        wrong = bool(question.wrong) or any(reason.code != "missing" for reason in beside)
        return Exchanged(ExchangeView("refused" if wrong else "empty", messages=messages, spoken=_spoken(messages)))
    result = solve(question)
    if isinstance(result, Refused):
        messages = tuple(_message(reason, place) for reason in result.reasons)
        return Exchanged(ExchangeView("refused", messages=messages, spoken=_spoken(messages)))
    shown = view(result, raw, now)
    return Exchanged(replace(shown, messages=tuple(_message(reason, place) for reason in beside)), result)


@dataclass(frozen=True)
class _Place:
    """Where the fields of a question stand on this sheet."""

    way: str
    parameters: tuple[str, ...]


def _read(raw: Mapping[str, Any], catalogue: Catalogue) -> tuple[ExchangeQuestion | Unread, tuple[Reason, ...]]:
    """Return the question; a bucket that is not filled in yet keeps nobody from the rest, so its reasons come apart."""
    found = exchange_intake.exchange(raw, catalogue)
    if not isinstance(found, Unread):
        return found, ()
    beside = tuple(reason for reason in found.reasons if reason.path.startswith("mixing."))
    if not beside:
        return found, ()
    rest = exchange_intake.exchange({name: table for name, table in raw.items() if name != "mixing"}, catalogue)
    return rest, beside


def view(answer: ExchangeAnswer, raw: Mapping[str, Any], now: datetime) -> ExchangeView:
    """Turn an answer into what the sheet shows.

    Parameters
    ----------
    answer : ExchangeAnswer
        What the exchange does.
    raw : mapping
        The question as typed, for the age of its readings.
    now : datetime
        The present.

    Returns
    -------
    ExchangeView
        Figures, rows and sentences.
    """
    q = answer.question
    low, high = answer.left_band
    figure, _, unit = percent(answer.left).partition("\u00a0")
    dangers = tuple(words.sentence(r) for r in answer.remarks if r.code in exchange_lines.DANGERS)
    second = say("of the old water are left after {days}", days=span(q.days))
    third = say(
        "{out} a day go out, {in_} come in: as much as a batch change of {batch_weekly} every week, or of {batch_whole} once in {days}. By how well the volume is known, {low} to {high} are left.",
        out=about(1000.0 * q.pair.out_l),
        in_=about(1000.0 * q.pair.in_l),
        batch_weekly=percent(answer.batch_weekly),
        batch_whole=percent(answer.batch_whole),
        days=span(q.days),
        low=percent(low),
        high=percent(high),
    )
    return ExchangeView(
        state="answered",
        figure=figure,
        figure_unit=unit,
        second=second,
        third=third,
        dangers=dangers,
        cautions=exchange_lines.cautions(answer),
        values=exchange_parts.values(answer, raw, now),
        charts=charts(answer),
        bars=exchange_parts.bars(answer),
        pair=exchange_parts.pair(answer),
        dosing=exchange_parts.dosing(answer),
        bucket=exchange_parts.bucket(answer),
        remarks=tuple(_remarks(answer, raw, now)),
        spoken=f"{percent(answer.left)} {second}.",
    )


def _remarks(answer: ExchangeAnswer, raw: Mapping[str, Any], now: datetime) -> Iterator[str]:
    assumed = [each.moved.parameter.name for each in answer.courses if each.moved.assumed]
    if assumed:
        yield (
            say(
                "Nobody said how much {assumed} the new water has: natural seawater is assumed. Test it, or read the bag.",
                assumed=listed(terms(assumed)),
            )
        )
    yield from exchange_parts.old_readings(answer, raw, now)
    jug = answer.question.new_jug_l
    if jug is not None:
        # A line that is full goes on by itself when the pump stands still and the outlet hangs in the water.
        yield say(
            "Should the jug of new water siphon across, {jug} run in: the system must hold that.",
            jug=about(1000.0 * jug),
        )
    apart = (*exchange_lines.DANGERS, *_SAID_TOGETHER)
    yield from (words.sentence(reason) for reason in answer.remarks if reason.code not in apart)


def _message(reason: Reason, place: _Place) -> Message:
    path = exchange_fields.field_of(reason.path, place.way, place.parameters)
    said = words.sentence(reason)
    parameter = exchange_fields.parameter_of(reason.path, place.parameters)
    if not path and parameter:
        said = f"{capitalized(parameter)}: {said} {say(ELSEWHERE)}"
    return Message(said, path, reason.code)


def _spoken(messages: tuple[Message, ...]) -> str:
    return " ".join(message.text for message in messages)
