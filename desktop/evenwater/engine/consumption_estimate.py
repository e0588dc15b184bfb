"""What the animals use in a day, learned from readings, doses and exchanges of one value of one system.

Two steps. ``explain`` settles which readings are bad tests, where use changed at once and where something happened that is in no log, and says
what use is now; ``line`` then runs through the whole record, exactly, for what it was before. Intervals are 90 %: from the 5th to
the 95th percentile.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from evenwater.engine.consumption_explain import Explained, Mixture, explain, quantiles
from evenwater.engine.consumption_filter import (
    BAD,
    CHANGED,
    GOOD,
    UNLOGGED,
    UNLOGGED_BY,
    Series,
    change_variance,
    wander_rate,
)
from evenwater.engine.consumption_line import Line, line
from evenwater.engine.consumption_log import SHORTEST, Record, days_since, log_of
from evenwater.engine.consumption_steps import Floats, Log, Steps, begin, steps

# From the median to the 95th percentile of a normal distribution, in standard deviations.
NORMAL_90 = 1.6448536269514722
_SHARES = (0.05, 0.5, 0.95)
# No test is better than one part in so many, whatever is said of it; common practice, no source.
BEST_KIT = 1e-5
# A change of use is spoken of when it is this sure; it may have come a reading or two before or after the likeliest.
SURE_OF_CHANGE = 0.8
_WITHIN_READINGS = 2
_WEEK_DAYS = 7.0
# A trend looks back as far as this, and not over a change; common practice, no source.
_TREND_DAYS = 28.0


@dataclass(frozen=True)
class Span:
    """A figure with its 90 % interval, all three [unit of the figure that it is about]."""

    value: float
    low: float
    high: float


@dataclass(frozen=True)
class Period:
    """The use in a stretch of time, as it was in the middle of it [canonical unit per day]."""

    start: datetime
    end: datetime
    use: Span


@dataclass(frozen=True)
class Odd:
    """A reading that is not believed: its place in the record, and by how much it is above what the others say [canonical unit]."""

    index: int
    off: float


@dataclass(frozen=True)
class Jump:
    """By how much the value jumped on the way to a reading [canonical unit], with nothing in the log that explains it."""

    index: int
    by: float


@dataclass(frozen=True)
class Change:
    """A change of use at once: about when, and from what to what [canonical unit per day]."""

    at: datetime
    before: float
    after: float


@dataclass(frozen=True)
class Estimate:
    """What a record says.

    ``use`` as it is now [canonical unit per day] and ``value`` as it should be now [canonical unit], with intervals; ``since_days`` [day] is the
    age of the last reading and ``readings`` how many are believed. ``by_period`` is about weekly, broken at changes; ``changed`` the last
    change that is sure, or None; ``trend_per_week`` how much use gains in a week [canonical unit per day per week], None
    before there is a week to see it in. ``wander`` is how much use wanders in a day as a share of itself [1], ``scatter`` by how much readings scatter
    more than the kit says [1].
    """

    use: Span
    value: Span
    since_days: float
    readings: int
    by_period: tuple[Period, ...]
    odd: tuple[Odd, ...]
    jumps: tuple[Jump, ...]
    changed: Change | None
    trend_per_week: float | None
    wander: float
    scatter: float


@dataclass(frozen=True)
class _Sorted:
    """A record in order of time: where each reading stood, its day [day], value and variance."""

    places: npt.NDArray[np.intp]
    days: Floats
    values: Floats
    variances: Floats
    log: Log
    origin: datetime
    now: float


def estimate(record: Record, now: datetime) -> Estimate:
    """Learn the use from a record.

    Parameters
    ----------
    record : Record
        Readings, doses and exchanges against which ``consumption_log.objections`` has none.
    now : datetime
        The present, with zone.

    Returns
    -------
    Estimate
        The use now and before, with what is odd about the record.
    """
    s = _sorted(record, now)
    start, known = begin(s.days, s.log)
    ways = steps(np.concatenate([[start], s.days]), s.log)
    unit = float(np.median(np.sqrt(s.variances)))
    series = Series(s.values[None, :], s.variances[None, :], _from_second(ways), unit, known)
    found = _spanning(s, explain(series))
    last = float(s.days[-1])
    present = found.now.later(_from_second(steps(np.array([last, s.now]), s.log), flat=True))
    use = quantiles(present.weight, present.use, present.use_var, _SHARES)
    value = quantiles(present.weight, present.value, present.value_var, _SHARES)
    edges = _edges(s.days, found)
    middles = (edges[:-1] + edges[1:]) / 2.0
    back = max(last - _TREND_DAYS, float(s.days[max((0, *_changes(found).tolist()))]))
    nodes, at = _nodes(s.days, np.array([*middles, back, last]), start)
    drawn = _drawn(s, found, unit, nodes, at, known)
    of_reading, of_middle, of_back = at[: len(s.days)], at[len(s.days) : -2], at[-2:]
    return Estimate(
        use=Span(use[1], use[0], use[2]),
        value=Span(value[1], value[0], value[2]),
        since_days=s.now - last,
        readings=int(np.sum(found.verdicts != BAD)),
        by_period=tuple(
            Period(s.origin + timedelta(days=a), s.origin + timedelta(days=b), _span(drawn, node))
            for a, b, node in zip(edges[:-1].tolist(), edges[1:].tolist(), of_middle.tolist(), strict=True)
        ),
        odd=tuple(
            Odd(int(s.places[i]), float(s.values[i] - drawn.value[of_reading[i]]))
            for i in np.flatnonzero(found.verdicts == BAD)
        ),
        jumps=_jumps(s, found, drawn, steps(nodes, s.log), of_reading),
        changed=_changed(s, found, present, drawn, of_reading, use[1]),
        trend_per_week=_trend(drawn, of_back, last - back),
        wander=found.wander,
        scatter=found.scatter,
    )


def _sorted(record: Record, now: datetime) -> _Sorted:
    readings = record.readings
    origin = min(reading.at for reading in readings).astimezone(UTC)
    days = days_since([reading.at for reading in readings], origin)
    places = np.argsort(days, kind="stable")
    present = float(days_since([now], origin)[0])
    values = np.array([reading.value for reading in readings])
    spreads = np.maximum([reading.sd for reading in readings], BEST_KIT * np.abs(values))
    return _Sorted(
        places=places,
        days=days[places],
        values=values[places],
        variances=spreads[places] ** 2,
        log=log_of(record, origin),
        origin=origin,
        # A clock that runs a little ahead: the present is never before the last reading.
        now=max(present, float(days.max())),
    )


def _spanning(s: _Sorted, found: Explained) -> Explained:
    """Return an explanation whose believed readings tell a use; where they are all of one hour, nobody knows which are bad."""
    believed = s.days[found.verdicts != BAD]
    if len(believed) and believed[-1] - believed[0] >= SHORTEST / timedelta(days=1):
        return found
    return replace(found, verdicts=np.full_like(found.verdicts, GOOD))


def _from_second(ways: Steps, flat: bool = False) -> Steps:
    """Return the ways without the one that leads nowhere, as a row or flat."""

    def cut(column: Floats) -> Floats:
        return column[1:] if flat else column[None, 1:]

    return Steps(
        cut(ways.days), cut(ways.kept), cut(ways.taken), cut(ways.gained), cut(ways.spread_value), cut(ways.spread_both),
        cut(ways.spread_use),
    )  # fmt: skip


def _changes(found: Explained) -> npt.NDArray[np.intp]:
    return np.flatnonzero(found.verdicts == CHANGED)


def _between(days: Floats, index: int) -> float:
    """Return the middle of the way to a reading, where what happened on it is taken to have happened."""
    return float(days[index - 1] + days[index]) / 2.0


def _edges(days: Floats, found: Explained) -> Floats:
    """Return where periods begin and end: at changes, and about every week in between."""
    stretches = [float(days[0]), *(_between(days, int(i)) for i in _changes(found)), float(days[-1])]
    edges = [stretches[0]]
    for begin_, end in pairwise(stretches):
        parts = max(1, round((end - begin_) / _WEEK_DAYS))
        edges += np.linspace(begin_, end, parts + 1)[1:].tolist()
    return np.array(edges)


def _nodes(days: Floats, others: Floats, start: float) -> tuple[Floats, npt.NDArray[np.intp]]:
    """Return all instants in order, after the start, and where each of readings and others came to stand."""
    every = np.concatenate([days, others])
    order = np.argsort(every, kind="stable")
    at = np.empty_like(order)
    at[order] = np.arange(1, len(order) + 1)
    return np.concatenate([[start], every[order]]), at


def _drawn(
    s: _Sorted, found: Explained, unit: float, nodes: Floats, at: npt.NDArray[np.intp], known: float | None
) -> Line:
    """Return the line through all believed readings, with use free to wander and to change where it did."""
    count = len(s.days)
    changes = _changes(found)
    # The last figure of each stretch knows most of its use.
    ends = np.concatenate([changes - 1, [count - 1]])
    stretch = np.searchsorted(changes, np.arange(count), side="right")
    used = found.uses[ends]
    rate = np.asarray(wander_rate(found.wander, used[stretch], unit)).copy()
    if len(changes):
        took = s.days[changes] - s.days[changes - 1]
        rate[changes] += np.asarray(change_variance(used[:-1], unit)) / np.maximum(took, 1e-9)
    values, variances = np.zeros(len(nodes)), np.full(len(nodes), np.inf)
    leaps = np.zeros(len(nodes))
    of_reading = at[:count]
    values[of_reading] = s.values
    variances[of_reading] = np.where(found.verdicts == BAD, np.inf, s.variances * found.scatter**2)
    leaps[of_reading] = np.where(found.verdicts == UNLOGGED, (UNLOGGED_BY * unit) ** 2, 0.0)
    into = np.minimum(np.searchsorted(s.days, nodes, side="left"), count - 1)
    return line(values, variances, steps(nodes, s.log), rate[into], leaps, known)


def _span(drawn: Line, node: int) -> Span:
    use, half = float(drawn.use[node]), NORMAL_90 * float(drawn.use_sd[node])
    return Span(use, use - half, use + half)


def _jumps(
    s: _Sorted, found: Explained, drawn: Line, ways: Steps, of_reading: npt.NDArray[np.intp]
) -> tuple[Jump, ...]:
    jumps = []
    for i in np.flatnonzero(found.verdicts == UNLOGGED):
        node = of_reading[i]
        due = ways.kept[node] * drawn.value[node - 1] - ways.taken[node] * drawn.use[node - 1] + ways.gained[node]
        jumps.append(Jump(int(s.places[i]), float(drawn.value[node] - due)))
    return tuple(jumps)


def _changed(
    s: _Sorted, found: Explained, present: Mixture, drawn: Line, of_reading: npt.NDArray[np.intp], use: float
) -> Change | None:
    """Return the last change of use, when most explanations hold it."""
    changes = _changes(found)
    if len(changes) == 0:
        return None
    last = int(changes[-1])
    # In a long record, what is left of the present counts readings from where it was learned.
    offset = len(s.days) - found.learned_from
    sure = float(present.weight[present.change + offset >= last - _WITHIN_READINGS].sum())
    settled = last < offset
    if not settled and sure < SURE_OF_CHANGE:
        return None
    at = s.origin + timedelta(days=_between(s.days, last))
    return Change(at, float(drawn.use[of_reading[last - 1]]), use)


def _trend(drawn: Line, of_back: npt.NDArray[np.intp], days: float) -> float | None:
    if days < _WEEK_DAYS:
        return None
    then, now = (float(drawn.use[node]) for node in of_back)
    return (now - then) / (days / _WEEK_DAYS)
