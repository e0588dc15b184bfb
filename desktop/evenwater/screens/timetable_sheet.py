"""The Timetable sheet without its widgets: all pumps of a system on one day, in order of time."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from evenwater.engine import timetable_intake, timetable_water
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.engine.timetable import TimetableAnswer, solve
from evenwater.screens import (
    plan_id,
    timetable_beside,
    timetable_given,
    timetable_rows,
    timetable_wishes,
    upkeep,
    words,
)
from evenwater.screens.clock_change import clock_words, next_change
from evenwater.screens.terms import capitalized
from evenwater.screens.timetable_given import FollowedPlan, Given, Usual
from evenwater.screens.timetable_rows import Lane, PumpSummary, TimetableRow
from evenwater.screens.views import Message
from evenwater.wording import marked, say_all

Values = Mapping[str, Typed]
# Always beside the doses; common practice, no source.
RULES = (
    marked("Missed doses are never made up: go on with the next one."),
    marked("Let alkalinity and calcium flow in at different places, where the water moves."),
)
# Beside any pump; how each chemical is mixed stands where it is mixed and on the printed sheet.
CAUTIONS = (
    marked("Wear goggles and gloves at the jugs. In the eyes: rinse for at least 15 minutes and get medical help."),
    marked("Never mix the concentrates."),
)
# What the summary says already.
_SAID_ELSEWHERE = ("timetable_carried",)


@dataclass(frozen=True)
class Asked:
    """What a timetable is asked for.

    ``upkeep`` is the question of the upkeep, ``system`` the fields of the system, ``corrections`` those of each correction by its
    parameter, ``plans`` the plans that are followed in it.
    """

    upkeep: Mapping[str, Any]
    system: Values
    corrections: Mapping[str, Values]
    plans: tuple[FollowedPlan, ...] = ()


@dataclass(frozen=True)
class TimetableView:
    """Everything the sheet shows.

    ``state`` is ``"empty"`` (something is still to be filled in), ``"answered"`` or ``"refused"``. ``rows`` are merged where doses
    are the same and evenly spaced; ``every`` has each dose of the day. ``quiet`` are minutes of the day [min], from and to.
    ``messages`` are whole sentences, ``beside`` what of them stands in few words beside the field of a wish.
    ``hazards`` and ``cautions`` stand before the numbers. ``usual`` is what stands for empty wishes,
    ``code`` what the printed sheet is told from others by.
    """

    state: str
    rows: tuple[TimetableRow, ...] = ()
    every: tuple[TimetableRow, ...] = ()
    pumps: tuple[PumpSummary, ...] = ()
    lanes: tuple[Lane, ...] = ()
    quiet: tuple[tuple[int, int], ...] = ()
    hazards: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    rules: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()
    messages: tuple[Message, ...] = ()
    beside: tuple[Message, ...] = ()
    usual: Usual = field(default_factory=Usual)
    code: str = ""
    spoken: str = ""


@dataclass(frozen=True)
class Timetabled:
    """The view, with the timetable and what each pump gives when there is one."""

    view: TimetableView
    answer: TimetableAnswer | None = None
    given: tuple[Given, ...] = ()


def evaluate(asked: Asked, catalogue: Catalogue, now: datetime) -> Timetabled:
    """Plan the day of all pumps, and turn the result into what the sheet shows.

    Parameters
    ----------
    asked : Asked
        The upkeep, the plans and the wishes, as typed.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    Timetabled
        The view, with the timetable when there is one.
    """
    wishes = timetable_wishes.read(asked.system, asked.corrections)
    plans, stopped = timetable_given.going(asked.plans, catalogue, now)
    if wishes.faults or stopped:
        return _without("refused", (*stopped, *wishes.faults), beside=wishes.faults)
    # The doses of a plan make good the daily use as well.
    followed = {plan.parameter for plan, _, _ in plans}
    items = [item for item in asked.upkeep.get("item", ()) if item["parameter"] not in followed]
    kept = upkeep.evaluate({**asked.upkeep, "item": items}, catalogue, now) if items else None
    if kept is not None and kept.answer is None:
        return _without(kept.view.state, tuple(_of_upkeep(message, items) for message in kept.view.messages))
    pumps = {name: values.get("pump", Typed("")).text for name, values in asked.corrections.items()}
    given = timetable_given.givens(None if kept is None else kept.answer, plans, pumps, wishes)
    if not given:
        return Timetabled(TimetableView("empty"))
    names, twice = timetable_given.names_of(given)
    usual = timetable_given.usual(given)
    if twice:
        return _without("refused", twice, usual)
    parameters = tuple(one.parameter for one in given)
    question = timetable_intake.timetable(timetable_given.raw_question(given, names, wishes), catalogue)
    if isinstance(question, Unread):
        state = "refused" if question.wrong else "empty"
        return _without(
            state, _sentences(question.reasons), usual, timetable_beside.unread(question.reasons, parameters, wishes)
        )
    result = solve(question)
    if isinstance(result, Refused):
        short = timetable_beside.refused(result.reasons, question, parameters, wishes)
        return _without("refused", _sentences(result.reasons), usual, short)
    tank = timetable_given.water_question(None if kept is None else kept.answer, plans)
    if tank is not None:
        against = timetable_water.objections(tank, result, [one.carried for one in given])
        if against:
            return _without("refused", tuple(Message(upkeep.sentence(r, tank), "", r.code) for r in against), usual)
    return Timetabled(_view(result, given, usual, clock_words(next_change(now))), result, given)


def _without(
    state: str, messages: Sequence[Message], usual: Usual | None = None, beside: tuple[Message, ...] = ()
) -> Timetabled:
    spoken = " ".join(message.text for message in messages)
    view = TimetableView(state, messages=tuple(messages), beside=beside, usual=usual or Usual(), spoken=spoken)
    return Timetabled(view)


def _sentences(reasons: Sequence[Reason]) -> tuple[Message, ...]:
    return tuple(Message(words.sentence(reason), "", reason.code) for reason in reasons)


def _of_upkeep(message: Message, items: Sequence[Mapping[str, Any]]) -> Message:
    """Say of which value a message of the upkeep speaks: its fields stand on another sheet."""
    table, _, rest = message.path.partition(".")
    number = rest.partition(".")[0]
    if table == "item" and number.isdigit() and int(number) <= len(items):
        name = capitalized(str(items[int(number) - 1]["parameter"]))
        return Message(f"{name}: {message.text}", "", message.code)
    return Message(message.text, "", message.code)


def _view(answer: TimetableAnswer, given: tuple[Given, ...], usual: Usual, clocks: str) -> TimetableView:
    summaries = timetable_rows.summaries(answer, given)
    return TimetableView(
        state="answered",
        rows=timetable_rows.merged(answer, given),
        every=timetable_rows.every_dose(answer, given),
        pumps=summaries,
        lanes=timetable_rows.lanes(answer, given),
        quiet=tuple((hours.start, hours.end) for hours in answer.question.quiet),
        hazards=tuple(dict.fromkeys(line for one in given for line in one.hazards)),
        cautions=say_all(CAUTIONS),
        rules=say_all(RULES),
        remarks=(
            *timetable_rows.nearest_lines(answer),
            *(words.sentence(reason) for reason in answer.remarks if reason.code not in _SAID_ELSEWHERE),
            *filter(None, (clocks,)),
        ),
        usual=usual,
        code=plan_id.timetable_code(answer),
        spoken=" ".join(f"{one.pump}: {one.doses}, {one.each}." for one in summaries),
    )
