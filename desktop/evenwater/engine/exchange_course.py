"""Several values at once under exchange, dosing, use and loss: exact from one change of conditions to the next.

With the level held, old water taken out at Q_out and new water of value C_new coming in at Q_in::

    V*dC/dt = Q_in*C_new - Q_out*C + V*(a - u - k*C)

so that gain = Q_in*C_new/V + a - u and loss = Q_out/V + k, and each stretch is ``balance.after``.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from evenwater.engine.balance import Floats, after
from evenwater.engine.exchange_question import ExchangeQuestion


@dataclass(frozen=True)
class Stretch:
    """A stretch of constant conditions for n values.

    It lasts from ``begin`` [day] to the beginning of the next one. ``gain`` [canonical units per day], ``loss`` [1/day] and ``jump``
    [canonical units], the additions at its very beginning, are arrays of shape (n,).
    """

    begin: float
    gain: Floats
    loss: Floats
    jump: Floats


def gains(q: ExchangeQuestion) -> Floats:
    """Return what comes less what is used of every value.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.

    Returns
    -------
    array, shape (n,)
        Gains [canonical units per day].
    """
    return np.array([q.share_in * v.new_water + v.added - v.use for v in q.values], dtype=np.float64)


def losses(q: ExchangeQuestion) -> Floats:
    """Return the share of every value that leaves per day, by the pump and by first-order loss.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.

    Returns
    -------
    array, shape (n,)
        Losses [1/day].
    """
    return np.array([q.share_out + v.loss for v in q.values], dtype=np.float64)


def stretches(q: ExchangeQuestion) -> tuple[Stretch, ...]:
    """Cut the time asked about at every single dose, and where a spell begins or ends.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.

    Returns
    -------
    tuple of Stretch
        From the start on; doses at one instant are one jump.
    """
    names = [v.parameter.name for v in q.values]
    jumps = {0.0: np.zeros(len(names))}
    for dose in q.doses:
        if dose.at_day <= q.days and dose.parameter.name in names:
            jumps.setdefault(dose.at_day, np.zeros(len(names)))[names.index(dose.parameter.name)] += dose.raises
    for spell in q.spells:
        for edge in (spell.begins, spell.ends):
            if 0.0 < edge < math.inf:
                jumps.setdefault(edge, np.zeros(len(names)))
    gain, loss = gains(q), losses(q)
    return tuple(Stretch(begin, gain + _running(q, names, begin), loss, jumps[begin]) for begin in sorted(jumps))


def _running(q: ExchangeQuestion, names: Sequence[str], day: float) -> Floats:
    """Return what the spells add from a day on, up to the next edge [canonical units per day]."""
    added = np.zeros(len(names))
    for spell in q.spells:
        if spell.begins <= day < spell.ends and spell.parameter.name in names:
            added[names.index(spell.parameter.name)] += spell.per_day
    return added


def course(start: Floats, parts: Sequence[Stretch], times: Floats) -> Floats:
    """Return every value at given times through a row of stretches; the last one goes on for ever.

    Parameters
    ----------
    start : array, shape (n,)
        Values at the start, before any addition [canonical units].
    parts : sequence of Stretch
        The conditions in order, the first one from time zero.
    times : array, shape (m,)
        Times since the start [day], not negative.

    Returns
    -------
    array, shape (n, m)
        The values [canonical units]; at the instant of an addition the value right after it.
    """
    values = np.empty((len(start), len(times)), dtype=np.float64)
    for row, begin_value in enumerate(start):
        value = float(begin_value)
        for part, end in _with_ends(parts, math.inf):
            value += float(part.jump[row])
            gain, loss = float(part.gain[row]), float(part.loss[row])
            inside = (times >= part.begin) & (times < end)
            values[row, inside] = after(value, times[inside] - part.begin, gain, loss)
            if end < math.inf:
                value = float(after(value, end - part.begin, gain, loss))
    return values


def _with_ends(parts: Sequence[Stretch], last: float) -> Iterator[tuple[Stretch, float]]:
    """Yield each stretch with its end [day], the very figure at which the next one begins."""
    yield from zip(parts, (*(part.begin for part in parts[1:]), last), strict=True)


def runs_out(start: Floats, parts: Sequence[Stretch], until: float) -> tuple[float | None, ...]:
    """Return when each value would fall below nothing, where use goes on although nothing is left.

    Parameters
    ----------
    start : array, shape (n,)
        Values at the start [canonical units].
    parts : sequence of Stretch
        The conditions in order.
    until : float
        How far to look [day].

    Returns
    -------
    tuple of float or None
        Times since the start [day]; None where a value stays above nothing throughout.
    """
    return tuple(_runs_out(float(value), row, parts, until) for row, value in enumerate(start))


def _runs_out(value: float, row: int, parts: Sequence[Stretch], until: float) -> float | None:
    for part, ends in _with_ends(parts, until):
        value += float(part.jump[row])
        gain, loss = float(part.gain[row]), float(part.loss[row])
        end = float(after(value, ends - part.begin, gain, loss))
        if end < 0.0:
            # C(t) = 0 solved for t; log1p holds where the loss is tiny beside the use.
            return part.begin + (math.log1p(-value * loss / gain) / loss if loss > 0.0 else -value / gain)
        value = end
    return None


def rise_in_a_day(start: Floats, parts: Sequence[Stretch], days: float) -> Floats:
    """Return the greatest rise of each value between two instants a day apart.

    Parameters
    ----------
    start : array, shape (n,)
        Values at the start, from which the first day counts [canonical units].
    parts : sequence of Stretch
        The conditions in order.
    days : float
        How far to look [day].

    Returns
    -------
    array, shape (n,)
        Rises [canonical units]; below zero for what only falls.

    Notes
    -----
    While neither instant passes an addition the difference only grows or only shrinks, so it is greatest from the start, up to the
    end, from just before an addition or up to right after one.
    """
    began, ends = _a_day_apart(parts, days)
    low = _before(start, parts, began)
    return np.asarray(np.max(course(start, parts, ends) - low, axis=1), dtype=np.float64)


def fall_in_a_day(start: Floats, parts: Sequence[Stretch], days: float) -> Floats:
    """Return the greatest fall of each value between two instants a day apart.

    Parameters
    ----------
    start : array, shape (n,)
        Values at the start [canonical units]; an addition at that instant counts as there already.
    parts : sequence of Stretch
        The conditions in order.
    days : float
        How far to look [day].

    Returns
    -------
    array, shape (n,)
        Falls [canonical units], a fall being above zero; below zero for what only rises.

    Notes
    -----
    As in ``rise_in_a_day``, with the ends changed over: from right after an addition, or down to just before one.
    """
    began, ends = _a_day_apart(parts, days)
    low = _before(start, parts, ends)
    return np.asarray(np.max(course(start, parts, began) - low, axis=1), dtype=np.float64)


def _a_day_apart(parts: Sequence[Stretch], days: float) -> tuple[Floats, Floats]:
    """Return the pairs of instants [day] between which a change in a day can be greatest."""
    edges = np.array([part.begin for part in parts])
    span = min(1.0, days)
    # Neither from the other: (edge + 1) - 1 may lie a hair before the addition at the edge.
    began = np.concatenate([np.minimum(edges, days - span), np.maximum(edges - span, 0.0), [days - span]])
    ends = np.concatenate([np.minimum(edges + span, days), np.maximum(edges, span), [days]])
    return began, ends


def _before(start: Floats, parts: Sequence[Stretch], times: Floats) -> Floats:
    """Return every value just before any addition at given times, shape (n, m) [canonical units]."""
    # What stood before an addition is the value an instant earlier.
    values = course(start, parts, np.maximum(times - 1e-9, 0.0))
    values[:, times <= 0.0] = start[:, np.newaxis]
    return values
