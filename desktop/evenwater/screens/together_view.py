"""What every sheet shows of all plans together: a line for each value that moves, a chart of each, and its budget."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from typing import cast

import numpy as np

from evenwater.engine.together_answer import Outlook, Part, TogetherAnswer
from evenwater.engine.together_question import CORRECTION
from evenwater.engine.together_range import BELOW, Leaving
from evenwater.screens import words
from evenwater.screens.shown import NBSP, Shown, date_time, date_words, significant
from evenwater.screens.terms import capitalized, inside, terms
from evenwater.screens.together import DAYS_AHEAD, Together
from evenwater.screens.together_views import BudgetLine, Course, TogetherView, ValueLine
from evenwater.screens.together_words import held, source_words
from evenwater.screens.views import Floats
from evenwater.wording import marked, say

_SECONDS = 86400.0
# A value that changes by less than this share of what a test tells does not move; common practice, no source.
_SHARE_OF_KIT = 0.1
_STEADY = marked("stays there")

_AGAINST_A_START = ("together_rises_too_fast", "together_one_rises_too_fast", "together_overshoots")


def view(found: Together, now: datetime) -> TogetherView:
    """Turn the answer into what is shown.

    Parameters
    ----------
    found : Together
        The answer, and what was left out.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    TogetherView
        Lines, sentences and series.
    """
    left_out = tuple(each.text for each in found.left_out)
    answer = found.answer
    if answer is None:
        return TogetherView("empty", left_out=left_out, summary=(say("All plans together: nothing can be said yet."),))
    stops = (*found.against, *(words.sentence(reason) for reason in answer.dangers))
    named = {str(reason.params["parameter"]) for reason in answer.dangers}
    lines = tuple(
        _line(answer, each, each.moved.parameter.name in named, now)
        for each in answer.outlooks
        if moves(each) or each.moved.parameter.name in named
    )
    still = [each.moved.parameter.name for each in answer.outlooks if each.known and not moves(each)]
    remarks = tuple(words.sentence(reason) for reason in answer.remarks)
    said = say("What does not move: {still}.", still=", ".join(terms(still))) if still else ""
    return TogetherView("stop" if stops else "answered", lines, stops, remarks, left_out, said, _summary(lines))


def objection(found: Together, parameter: str) -> str:
    """Return why the correction of a parameter must not be begun beside everything else that runs.

    Parameters
    ----------
    found : Together
        Everything together, the correction with it.
    parameter : str
        What it corrects.

    Returns
    -------
    str
        The first sentence about a rise it takes part in, or an end above its target; empty where nothing speaks against it.
    """
    for reason in found.answer.dangers if found.answer is not None else ():
        plans = tuple(cast("Sequence[tuple[str, str]]", reason.params.get("plans", ())))
        own = reason.params["parameter"] == parameter or (CORRECTION, parameter) in plans
        if own and reason.code in _AGAINST_A_START:
            return words.sentence(reason)
    return ""


def moves(each: Outlook) -> bool:
    """Return whether a value changes by more than a trace within the days looked at."""
    p = each.moved.parameter
    return max(each.high) - min(each.low) > _SHARE_OF_KIT * p.canonical(p.kit_accuracy)


def used_up(each: Outlook) -> bool:
    """Return whether nothing will be left of a value: it is not out of its range, but gone."""
    return each.hard is not None and each.hard.side == BELOW and each.moved.parameter.target_hard[0] <= 0.0


def shown_of(answer: TogetherAnswer, each: Outlook, now: datetime) -> Shown:
    """Return the writer of a value in the keeper's unit."""
    return Shown(each.moved.parameter, each.moved.unit, answer.question.tank.water, now.tzinfo)


def _summary(lines: tuple[ValueLine, ...]) -> tuple[str, ...]:
    """Return the summary for rooms of every width, the longest first."""
    if not lines:
        return (say("All plans together: nothing moves."),)
    said = [f"{inside(line.parameter)} {line.week}" for line in lines]
    shorter = [
        say(
            "All plans together, in a week: {said} and {said_2} more.",
            said=", ".join(said[:count]),
            said_2=len(said) - count,
        )
        for count in range(len(said) - 1, 0, -1)
    ]
    return (
        say("All plans together, in a week: {said}.", said=", ".join(said)),
        *shorter,
        say("{said} values move.", said=len(said)),
        "",
    )


def _line(answer: TogetherAnswer, each: Outlook, stop: bool, now: datetime) -> ValueLine:
    shown = shown_of(answer, each, now)
    values = (each.moved.now, each.week, each.month)
    if each.known:
        at_now, week, month = (held(shown.value(_or_nothing(each, value))) for value in values)
    else:
        at_now = say("not known")
        week, month = (_change(shown, value - each.moved.now) for value in values[1:])
    return ValueLine(
        parameter=capitalized(each.moved.parameter.name),
        now=at_now,
        week=week,
        month=month,
        then=_then(each, shown, now) if each.known else "",
        unit=held(f" {shown.unit_words}").strip(),
        figures=(_bare(at_now), _bare(week), _bare(month)),
        stop=stop,
        course=_course(answer, each, shown, now) if each.known else None,
        budget=tuple(_budget(each, shown, now)),
        limits=tuple(_limits(each, shown)),
    )


def _or_nothing(each: Outlook, value: float) -> float:
    """Return a value, or nothing where no test would tell it from nothing."""
    p = each.moved.parameter
    return value if value >= _SHARE_OF_KIT * _SHARE_OF_KIT * p.canonical(p.kit_accuracy) else 0.0


def _bare(text: str) -> str:
    """Return a figure without its unit, which stands once in its row."""
    number, _, _ = text.partition(NBSP)
    return number


def _spoken(each: Outlook, shown: Shown) -> str:
    at = ((say("now"), each.moved.now), (say("in a week"), each.week), (say("in a month"), each.month))
    return ", ".join(f"{when} {shown.value(_or_nothing(each, value))}" for when, value in at)


def _then(each: Outlook, shown: Shown, now: datetime) -> str:
    p, last = each.moved.parameter, each.hard
    if last is not None and used_up(each):
        return say("used up on {date_words}", date_words=date_words(now + timedelta(days=last.day)))
    leavings = [(each.usual, p.range_kept, say("the usual ")), (each.hard, p.target_hard, "")]
    if last is not None and last.day <= DAYS_AHEAD:
        leavings.reverse()
    for leaving, ends, named in leavings:
        inside = p.canonical(ends[0]) <= each.month <= p.canonical(ends[1])
        if leaving is not None and (leaving.day > 0.0 or not inside):
            return _leaving(leaving, tuple(map(p.canonical, ends)), named, shown, now)
    if each.settles is not None:
        return say("settles at {settles}", settles=held(shown.value(each.settles)))
    return say(_STEADY)


def _leaving(leaving: Leaving, ends: tuple[float, ...], named: str, shown: Shown, now: datetime) -> str:
    below = leaving.side == BELOW
    side, bound = say("below") if below else say("above"), held(shown.value(ends[0] if below else ends[1]))
    if leaving.day <= 0.0:
        return say("{side} {named}{bound} now", side=side, named=named, bound=bound)
    return say(
        "{side} {named}{bound} on {date_words}",
        side=side,
        named=named,
        bound=bound,
        date_words=date_words(now + timedelta(days=leaving.day)),
    )


def _change(shown: Shown, value: float) -> str:
    if value == 0.0:
        return say("no change")
    rise = held(shown.rise(abs(value)))
    return say("up {rise}", rise=rise) if value > 0.0 else say("down {rise}", rise=rise)


def _budget(each: Outlook, shown: Shown, now: datetime) -> list[BudgetLine]:
    parts = sorted((part for part in each.budget if _counts(part, each)), key=lambda part: -part.per_day)
    lines = [
        BudgetLine(_capital(source_words(p.sort, p.name)), _change(shown, p.per_day), _when(p, now)) for p in parts
    ]
    return [*lines, BudgetLine(say("Together now"), _change(shown, _noiseless(each)), "")]


def _limits(each: Outlook, shown: Shown) -> Iterator[BudgetLine]:
    p = each.moved.parameter
    most = say("of {rise_hard} at the most", rise_hard=held(shown.rise(p.canonical(p.rise_hard))))
    for what, value in ((say("Largest rise in 24 hours"), each.rise), (say("Largest fall in 24 hours"), each.fall)):
        if value > 1e-3 * p.canonical(p.kit_accuracy):
            yield BudgetLine(what, held(shown.rise(value)), most)


def _counts(part: Part, each: Outlook) -> bool:
    """Return whether a line of the budget is more than a trace."""
    p = each.moved.parameter
    return abs(part.per_day) >= 1e-3 * p.canonical(p.kit_accuracy) / 7.0


def _noiseless(each: Outlook) -> float:
    largest = max((abs(part.per_day) for part in each.budget), default=0.0)
    return 0.0 if abs(each.per_day) < 1e-9 * largest else each.per_day


def _when(part: Part, now: datetime) -> str:
    begins = (
        say("from {date_time}", date_time=date_time(now + timedelta(days=part.begins))) if part.begins > 0.0 else ""
    )
    ends = (
        say("until {date_time}", date_time=date_time(now + timedelta(days=part.ends)))
        if math.isfinite(part.ends)
        else ""
    )
    return " ".join(filter(None, (begins, ends)))


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _numbers(shown: Shown, values: Floats) -> Floats:
    """Return canonical values as the keeper's figures; every unit but specific gravity is a straight line."""
    if shown.unit.startswith("SG"):
        return np.array([shown.number(float(value)) for value in values])
    at_none = shown.number(0.0)
    return at_none + (shown.number(1.0) - at_none) * values


def _course(answer: TogetherAnswer, each: Outlook, shown: Shown, now: datetime) -> Course:
    p = each.moved.parameter
    series = (each.points, each.low, each.high, each.alone)
    plan, low, high, alone = (_numbers(shown, np.maximum(values, 0.0)) for values in series)
    middle = float(np.max(np.abs(plan))) or 1.0
    named = f"{capitalized(p.name)}, {shown.unit_words}"
    return Course(
        title=say("{named}, next {times} days", named=named, times=significant(answer.times[-1], 2)),
        unit=shown.unit_words,
        times=now.timestamp() + np.array(answer.times) * _SECONDS,
        plan=plan,
        low=low,
        high=high,
        alone=alone,
        usual=(shown.number(p.canonical(p.range_kept[0])), shown.number(p.canonical(p.range_kept[1]))),
        exchanged=answer.question.tank.pair.out_l > 0.0,
        decimals=max(0, 2 - math.floor(math.log10(middle))),
        spoken=f"{named}: {_spoken(each, shown)}.",
    )
