"""What must not go on when everything runs together, although each sheet allows its own plan."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Any

import numpy as np

from evenwater.engine.exchange_course import rise_in_a_day, stretches
from evenwater.engine.reasons import Reason
from evenwater.engine.together_answer import EXCHANGE, Outlook, TogetherAnswer
from evenwater.engine.together_question import CORRECTION, UPKEEP, Source
from evenwater.engine.together_range import ABOVE, BELOW, Leaving

# Common practice, no source: a value that leaves its hard range within the week is a danger, later there is time for a test.
SOON_DAYS = 7.0
# Common practice, no source: what raises a value by less than this share of its usual pace does not count as raising it.
_RAISES = 0.1
# A limit that is reached exactly is kept.
_NOISE = 1e-6


def dangers(answer: TogetherAnswer) -> Iterator[Reason]:
    """Yield what must not go on.

    Parameters
    ----------
    answer : TogetherAnswer
        The outlooks.

    Yields
    ------
    Reason
        A rise or fall in 24 hours above the hard limit, a value that leaves its hard range within a week, a correction that does not end
        where it should because something else raises the same value.
    """
    for each in answer.outlooks:
        yield from _too_fast(answer, each)
        hard = each.hard
        if hard is not None and hard.day <= SOON_DAYS and not _used_up(each, hard) and not _comes_back(each):
            yield _leaving("together_leaves_hard", answer, each, hard)
        yield from _overshoots(answer, each)


def remarks(answer: TogetherAnswer) -> Iterator[Reason]:
    """Yield what a keeper should know all the same.

    Parameters
    ----------
    answer : TogetherAnswer
        The outlooks.

    Yields
    ------
    Reason
        Values that leave their usual range within the days looked at, and what is raised by more than one plan.
    """
    for each in answer.outlooks:
        usual, hard, last = each.usual, each.hard, answer.times[-1]
        if hard is not None and _used_up(each, hard):
            if hard.day <= last:
                yield _leaving("together_used_up", answer, each, hard)
        elif hard is not None and SOON_DAYS < hard.day <= last:
            yield _leaving("together_leaves_hard_later", answer, each, hard)
        elif usual is not None and usual.day <= last and (hard is None or hard.day > last):
            yield _leaving("together_leaves_usual", answer, each, usual)
        raising = _raising(answer, each)
        if len({source.plan for source in raising}) > 1:
            plans = tuple(dict.fromkeys(source.plan for source in raising))
            total = sum(source.spell.per_day for source in raising)
            yield Reason("together_raised_by_both", {**_base(answer, each), "plans": plans, "rise": total})


def _leaving(code: str, answer: TogetherAnswer, each: Outlook, leaving: Leaving) -> Reason:
    p = each.moved.parameter
    low, high = p.range_kept if code == "together_leaves_usual" else p.target_hard
    ends = {"low": p.canonical(low), "high": p.canonical(high)}
    return Reason(code, {**_base(answer, each), "day": leaving.day, "side": leaving.side, **ends})


def _used_up(each: Outlook, leaving: Leaving) -> bool:
    """Return whether a value is not out of its range, but gone: nothing is left of it to use."""
    return leaving.side == BELOW and each.moved.parameter.target_hard[0] <= 0.0


def _base(answer: TogetherAnswer, each: Outlook) -> dict[str, Any]:
    p = each.moved.parameter
    return {"parameter": p.name, "kind": p.kind, "unit": each.moved.unit, "water": answer.question.tank.water}


def _too_fast(answer: TogetherAnswer, each: Outlook) -> Iterator[Reason]:
    p = each.moved.parameter
    most = p.canonical(p.rise_hard)
    base = {**_base(answer, each), "most": most}
    if each.rise > most * (1.0 + _NOISE):
        plans = _raised_by(each)
        alone = tuple(plan for plan in plans if _rise_of(answer, plan, each) > most * (1.0 + _NOISE))
        code = "together_rises_too_fast" if len(plans) > 1 and not alone else "together_one_rises_too_fast"
        yield Reason(code, {**base, "rise": each.rise, "plans": alone or plans})
    if each.fall > most * (1.0 + _NOISE):
        yield Reason("together_falls_too_fast", {**base, "fall": each.fall})


def _raising(answer: TogetherAnswer, each: Outlook, *, later: bool = False) -> list[Source]:
    """Return the plans that raise a value by more than a trace now, or at any time; the largest first."""
    p = each.moved.parameter
    least = _RAISES * p.canonical(p.rise_recommended)
    found = [
        source
        for source in answer.question.sources
        if source.spell.parameter == p
        and source.sort in (UPKEEP, CORRECTION)
        and source.spell.per_day > least
        and source.spell.ends > 0.0
        and (later or source.spell.begins <= 0.0)
    ]
    return sorted(found, key=lambda source: -source.spell.per_day)


def _raised_by(each: Outlook) -> tuple[tuple[str, str], ...]:
    """Return everything that raises a value by more than a trace at any time, new water and foods as well; the largest first."""
    p = each.moved.parameter
    least = _RAISES * p.canonical(p.rise_recommended)
    parts = sorted((part for part in each.budget if part.per_day > least), key=lambda part: -part.per_day)
    return tuple(dict.fromkeys((part.sort, part.name) for part in parts))


def _rise_of(answer: TogetherAnswer, plan: tuple[str, str], each: Outlook) -> float:
    """Return the greatest rise in 24 hours that one thing makes by itself, a plan as its own sheet reckons it [canonical unit]."""
    if plan[0] == EXCHANGE:
        return math.fsum(part.per_day for part in each.budget if part.sort == EXCHANGE)
    alone = answer.question.only((plan,))
    start = np.array([moved.now for moved in alone.values])
    names = [moved.parameter.name for moved in alone.values]
    return float(rise_in_a_day(start, stretches(alone), alone.days)[names.index(each.moved.parameter.name)])


def _comes_back(each: Outlook) -> bool:
    """Return whether a value that is outside already is on its way back."""
    hard = each.hard
    if hard is None or hard.day > 0.0:
        return False
    return each.per_day < 0.0 if hard.side == ABOVE else each.per_day > 0.0


def _overshoots(answer: TogetherAnswer, each: Outlook) -> Iterator[Reason]:
    """Yield a correction whose value ends above its target by more than a test tells, since something else raises it as well."""
    p = each.moved.parameter
    for source in answer.question.sources:
        if source.aims_at is None or source.spell.parameter != p or not 0.0 < source.spell.ends <= answer.times[-1]:
            continue
        end = float(np.interp(source.spell.ends, answer.times, each.points))
        others = [other for other in _raising(answer, each, later=True) if other.plan != source.plan]
        if each.known and others and end > source.aims_at + p.canonical(p.kit_accuracy):
            plans = tuple(dict.fromkeys(other.plan for other in others))
            params = {**_base(answer, each), "comes_to": end, "target": source.aims_at, "plans": plans}
            yield Reason("together_overshoots", {**params, "day": source.spell.ends})
