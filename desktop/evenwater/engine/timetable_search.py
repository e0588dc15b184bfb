"""Finds the minutes: which pumps have to do with each other, how many doses each gets, and where they fit in the day.

First the doses wished for, evenly spaced; then the same in any order; then other numbers of doses, where the keeper allows them.
"""

from __future__ import annotations

import heapq
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import islice

from evenwater.engine.timetable_doses import exact, fits, split, takes_s
from evenwater.engine.timetable_even import Budget, Places, Starts, even
from evenwater.engine.timetable_order import crowded, levelled, ordered
from evenwater.engine.timetable_question import CLOSEST_SHARE, DAY_MIN, Quiet, TimedPump, TimetableQuestion

# Steps of the searches; together they end within some tenths of a second where nothing is found.
_EVEN, _LEVEL, _WISHED, _OTHER, _ALL = 1500, 1200, 20_000, 3000, 40_000
# Numbers of doses that are tried: the nearest to those wished for, and fewer of all pumps together.
_MOST_COMBINATIONS = 64
# Where only a wish is tried out, a shorter look is enough.
_QUICK = 8
# How many times as far apart as wished opposing doses are tried first.
_WIDER = (Fraction(2), Fraction(7, 4), Fraction(3, 2), Fraction(1))
# Where even spacing cannot be had: how near doses of one pump may come, as a share of it, for each of these widths.
_LEVELS = {Fraction(2): (0.85, 0.75), Fraction(3, 2): (0.85, 0.75), Fraction(1): (0.95, 0.9, 0.85, 0.75, 0.65)}


@dataclass(frozen=True)
class Found:
    """Minutes of each pump of a group, in the group's order, or None; ``proved`` when it is certain that there are none."""

    counts: tuple[int, ...] = ()
    starts: Starts | None = None
    proved: bool = False


def groups(question: TimetableQuestion) -> tuple[tuple[int, ...], ...]:
    """Return the pumps that have to do with each other, directly or through others, by their places.

    Parameters
    ----------
    question : TimetableQuestion
        The question.

    Returns
    -------
    tuple of tuple of int
        Each pump in one group.
    """
    left, found = set(range(len(question.pumps))), []
    while left:
        group, new = set[int](), {min(left)}
        while new:
            group |= new
            new = {other for other in left - group if any(question.gap(one, other) is not None for one in new)}
        left -= group
        found.append(tuple(sorted(group)))
    return tuple(found)


def counts_of(pump: TimedPump) -> list[int]:
    """Return how many doses a pump may have in a day, the wished number first, then the nearest to it.

    Parameters
    ----------
    pump : TimedPump
        The pump with its wishes.

    Returns
    -------
    list of int
        Empty where no number fits.
    """
    allowed = [count for count in range(pump.fewest, pump.most + 1) if not fits(pump, count)]
    return sorted(allowed, key=lambda count: (abs(count - pump.doses), -count))


def open_minutes(quiet: Sequence[Quiet], lasts_min: int) -> int:
    """Return the minutes (bits) at which a dose may begin that must be over when quiet hours begin.

    Parameters
    ----------
    quiet : sequence of Quiet
        Hours without doses.
    lasts_min : int
        How long a dose runs [min].

    Returns
    -------
    int
        Minutes of the day as bits.
    """
    closed = 0
    for hours in quiet:
        # A dose that begins some minutes before the quiet hours would still run in them.
        length = min(hours.lasts + lasts_min - 1, DAY_MIN)
        for minute in range(hours.end - length, hours.end):
            closed |= 1 << minute % DAY_MIN
    return ((1 << DAY_MIN) - 1) & ~closed


def places(
    question: TimetableQuestion, group: Sequence[int], counts: Sequence[int], wider: Fraction = _WIDER[-1]
) -> Places:
    """Return what must hold for a group of pumps with so many doses each.

    Parameters
    ----------
    question : TimetableQuestion
        The wishes.
    group : sequence of int
        Places of the pumps.
    counts : sequence of int
        Doses in a day of each of them.
    wider : Fraction
        How many times as far apart as wished opposing doses are to stay.

    Returns
    -------
    Places
        Minutes at which doses may begin, and how far they stay apart.
    """
    pumps = [question.pumps[place] for place in group]
    runs_s = [takes_s(pump, split(pump, count).largest) for pump, count in zip(pumps, counts, strict=True)]
    runs_min = [max(1, math.ceil(seconds / 60)) for seconds in runs_s]
    open_at = tuple(open_minutes(question.hours(place), runs) for place, runs in zip(group, runs_min, strict=True))
    need: list[tuple[int | None, ...]] = []
    for i, one in enumerate(group):
        row: list[int | None] = []
        for j, other in enumerate(group):
            gap = 0.0 if i == j else question.gap(one, other)
            if i == j:
                closest = pumps[i].closest_min
                if closest is None:
                    closest = int(CLOSEST_SHARE * open_at[i].bit_count() / counts[i])
                row.append(max(runs_min[i], closest))
            else:
                row.append(None if gap is None else max(1, math.ceil((runs_s[i] + wider * exact(gap) * 60) / 60)))
        need.append(tuple(row))
    return Places(tuple(counts), open_at, tuple(need), DAY_MIN)


def search(question: TimetableQuestion, group: Sequence[int], first: float = 0.0, quick: bool = False) -> Found:
    """Look for a timetable of a group of pumps.

    Parameters
    ----------
    question : TimetableQuestion
        The wishes.
    group : sequence of int
        Places of pumps that have to do with each other.
    first : float
        Where the group's first dose would best be, as a part of its shortest interval [-].
    quick : bool
        Whether a shorter look is enough.

    Returns
    -------
    Found
        The minutes, or that there are none.
    """
    choices = [counts_of(question.pumps[place]) for place in group]
    if not all(choices):
        return Found(proved=True)
    wished = tuple(choice[0] for choice in choices)
    starts = _even(question, group, wished, first, _WIDER[-1:] if quick else _WIDER)
    if starts is None and not quick:
        starts = _uneven(question, group, wished)
    if starts is not None:
        return Found(wished, starts)
    share = _QUICK if quick else 1
    nearest = islice(_nearest_first(choices), _MOST_COMBINATIONS // share)
    combinations = list(dict.fromkeys((*nearest, *islice(_fewer_of_all(choices), 0, None, share))))
    for counts in combinations[1:]:
        starts = _even(question, group, counts, first, _WIDER[-1:])
        if starts is not None:
            return Found(counts, starts)
    proved = len(combinations) == math.prod(len(choice) for choice in choices)
    left = Budget(_ALL // share)
    for counts in combinations:
        asked = places(question, group, counts)
        # Half of the steps in each way; one that comes to its end has seen all there is.
        for packed in (False, True):
            budget = Budget(min((_WISHED if counts == wished else _OTHER) // share // 2, max(left.steps, 0)))
            before = budget.steps
            starts = ordered(asked, budget, packed)
            left.steps -= before - budget.steps
            if starts is not None:
                return Found(counts, levelled(asked, starts))
            if not budget.spent:
                break
        else:
            proved = False
        if left.steps <= 0:
            return Found()
    return Found(proved=proved)


def _even(
    question: TimetableQuestion, group: Sequence[int], counts: Sequence[int], first: float, widths: Sequence[Fraction]
) -> Starts | None:
    """Return evenly spaced doses, as much further from opposing ones than wished as can be had."""
    for wider in widths if any(pair.first in group for pair in question.apart) else _WIDER[-1:]:
        asked = places(question, group, counts, wider)
        starts = None if crowded(asked) else even(asked, Budget(_EVEN), first)
        if starts is not None:
            return starts
    return None


def _uneven(question: TimetableQuestion, group: Sequence[int], counts: Sequence[int]) -> Starts | None:
    """Return doses in any order, none of a pump nearer to its next than a share of what even spacing gives."""
    pairs = any(pair.first in group for pair in question.apart)
    for wider, levels in _LEVELS.items() if pairs else [(_WIDER[-1], _LEVELS[_WIDER[-1]])]:
        asked = places(question, group, counts, wider)
        for level in levels:
            starts = ordered(_spaced(asked, level), Budget(_LEVEL))
            if starts is not None:
                return levelled(asked, starts)
    return None


def _spaced(asked: Places, level: float) -> Places:
    """Return the same with the doses of each pump apart by a share of what even spacing in its open hours gives."""
    need = [
        tuple(
            each if i != j else max(each or 0, int(level * asked.open_at[i].bit_count() / asked.counts[i]))
            for j, each in enumerate(row)
        )
        for i, row in enumerate(asked.need)
    ]
    return Places(asked.counts, asked.open_at, tuple(need), asked.size)


def _nearest_first(choices: Sequence[Sequence[int]]) -> Iterator[tuple[int, ...]]:
    """Yield a number of doses for each pump, the combinations nearest to the wished one first."""
    begin = (0,) * len(choices)
    waiting, seen = [(0, begin)], {begin}
    while waiting:
        far, at = heapq.heappop(waiting)
        yield tuple(choice[k] for choice, k in zip(choices, at, strict=True))
        for place, k in enumerate(at):
            after = (*at[:place], k + 1, *at[place + 1 :])
            if k + 1 < len(choices[place]) and after not in seen:
                seen.add(after)
                heapq.heappush(waiting, (far + 1, after))


def _fewer_of_all(choices: Sequence[Sequence[int]]) -> Iterator[tuple[int, ...]]:
    """Yield fewer and fewer doses of all pumps together, as far as each may have fewer."""
    for most in range(max(choice[0] for choice in choices), 0, -1):
        yield tuple(
            min(choice, key=lambda count: (count > max(most, min(choice)), -count if count <= choice[0] else count))
            for choice in choices
        )
