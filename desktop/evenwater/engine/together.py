"""What everything that runs in a tank does together: every value in time, what moves it, and what must not go on."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

import numpy as np

from evenwater.engine import exchange_check, together_dangers
from evenwater.engine.balance import Floats, steady
from evenwater.engine.correction import AGREEMENT, Refused
from evenwater.engine.exchange_course import Stretch, course, fall_in_a_day, rise_in_a_day, stretches
from evenwater.engine.exchange_question import Moved
from evenwater.engine.reasons import Reason
from evenwater.engine.together_answer import EXCHANGE, LOSS, USE, Outlook, Part, TogetherAnswer
from evenwater.engine.together_question import TogetherQuestion
from evenwater.engine.together_range import leaves

WEEK_DAYS = 7.0
# So many points of a course for each day.
_PER_DAY = 4


def solve(question: TogetherQuestion) -> TogetherAnswer | Refused:
    """Put everything together.

    Parameters
    ----------
    question : TogetherQuestion
        The tank and what runs in it.

    Returns
    -------
    TogetherAnswer or Refused
        The outlooks; or that two reckonings disagree, when nothing may be said.
    """
    q = question
    days = q.tank.days
    times = np.unique(np.concatenate([np.linspace(0.0, days, round(days * _PER_DAY) + 1), _edges(q, days)]))
    outlooks = _outlooks(q, times)
    answer = TogetherAnswer(q, tuple(map(float, times)), outlooks)
    objection = disagreement(answer)
    if objection is not None:
        return Refused((objection,))
    return replace(
        answer, dangers=tuple(together_dangers.dangers(answer)), remarks=tuple(together_dangers.remarks(answer))
    )


def disagreement(answer: TogetherAnswer) -> Reason | None:
    """Hold the second opinion against the courses.

    Parameters
    ----------
    answer : TogetherAnswer
        The answer.

    Returns
    -------
    Reason or None
        Why it must not be given out, or None when both agree, the books balance and every budget adds up to what the value does.
    """
    failed = tuple(each.moved.parameter.name for each in answer.outlooks if not _agrees(answer, each))
    return Reason("together_disagrees", {"what": failed}) if failed else None


def _agrees(answer: TogetherAnswer, each: Outlook) -> bool:
    q, moved = answer.question.running, each.moved
    books = exchange_check.ledger(q, moved)
    most = (books.before + books.came + books.went) / q.volume_l + abs(each.per_day)
    step = 1e-4
    slope = (exchange_check.value_at(q, moved, step) - moved.now) / step
    turns = any(0.0 < edge < step for s in answer.question.sources for edge in (s.spell.begins, s.spell.ends))
    # Over so short a step an exponential bends by half of loss times step.
    bend = (q.share_out + moved.loss) * step
    return (
        abs(books.off) <= AGREEMENT * most * q.volume_l
        and all(
            abs(exchange_check.value_at(q, moved, day) - point) <= AGREEMENT * most
            for day, point in zip(answer.times, each.points, strict=True)
        )
        and (turns or abs(slope - each.per_day) <= (AGREEMENT + bend) * most + 1e-9 * most / step)
    )


def _edges(q: TogetherQuestion, days: float) -> Floats:
    edges = {edge for s in q.sources for edge in (s.spell.begins, s.spell.ends) if 0.0 < edge < days}
    a_day_on = [dose.at_day + 1.0 for dose in q.lately if -1.0 < dose.at_day <= 0.0]
    return np.array([0.0, *sorted(edges), *a_day_on, min(WEEK_DAYS, days), days])


def _outlooks(q: TogetherQuestion, times: Floats) -> tuple[Outlook, ...]:
    running, days = q.running, q.tank.days
    start = np.array([moved.now for moved in running.values], dtype=np.float64)
    parts = stretches(running)
    spread = q.tank.uncertainty
    points = course(start, parts, times)
    band = np.array([course(start, stretches(q.at_volume(at)), times) for at in (1.0 - spread, 1.0 + spread)])
    low, high = np.minimum(points, band.min(axis=0)), np.maximum(points, band.max(axis=0))
    alone = course(start, stretches(q.alone), times)
    rises, falls = rise_in_a_day(start, parts, days), fall_in_a_day(start, parts, days)
    week = int(np.searchsorted(times, min(WEEK_DAYS, days)))
    out = []
    for row, moved in enumerate(running.values):
        p = moved.parameter
        known = p.name not in q.unknown
        usual, hard = (
            leaves(float(start[row]), row, parts, (p.canonical(ends[0]), p.canonical(ends[1])), q.looks_ahead)
            for ends in (p.range_kept, p.target_hard)
        )
        out.append(
            Outlook(
                moved=moved,
                known=known,
                points=tuple(map(float, points[row])),
                low=tuple(map(float, low[row])),
                high=tuple(map(float, high[row])),
                alone=tuple(map(float, alone[row])),
                week=float(points[row, week]),
                month=float(points[row, -1]),
                settles=_settles(parts[-1], row),
                usual=usual if known else None,
                hard=hard if known else None,
                rise=max(float(rises[row]), _with_lately(q, moved, points[row], times)),
                fall=float(falls[row]),
                budget=tuple(_budget(q, moved)),
            )
        )
    return tuple(out)


def _with_lately(q: TogetherQuestion, moved: Moved, points: Floats, times: Floats) -> float:
    """Return the greatest rise in 24 hours that doses by hand before now are a part of [canonical unit]."""
    mine = [dose for dose in q.lately if dose.parameter == moved.parameter and -1.0 < dose.at_day <= 0.0]
    most = 0.0
    for first in mine:
        # From just before one of them; of what comes all that is there a day later.
        given = math.fsum(dose.raises for dose in mine if dose.at_day >= first.at_day)
        within = points[times <= first.at_day + 1.0]
        most = max(most, given + float(np.max(within)) - moved.now)
    return most


def _settles(last: Stretch, row: int) -> float | None:
    gain, loss = float(last.gain[row]), float(last.loss[row])
    value = steady(gain, loss) if loss > 0.0 else None
    return value if value is not None and value >= 0.0 else None


def _budget(q: TogetherQuestion, moved: Moved) -> Iterator[Part]:
    """Yield what moves a value as it stands now; what is to begin later stands there with its day."""
    for source in q.sources:
        if source.spell.parameter == moved.parameter and source.spell.ends > 0.0:
            yield Part(source.sort, source.name, source.spell.per_day, max(source.spell.begins, 0.0), source.spell.ends)
    exchanged = q.tank.share_in * moved.new_water - q.tank.share_out * moved.now
    for sort, per_day in ((EXCHANGE, exchanged), (LOSS, -moved.loss * moved.now), (USE, -moved.use)):
        if per_day != 0.0:
            yield Part(sort, "", per_day)
