"""Several values at once under exchange, dosing, use and loss: exact from one change of conditions to the next.

With the level held, old water taken out at Q_out and new water of value C_new coming in at Q_in::

    V*dC/dt = Q_in*C_new - Q_out*C + V*(a - u - k*C)

so that gain = Q_in*C_new/V + a - u and loss = Q_out/V + k, and each stretch is ``balance.after``.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import overload

import numpy as np
import numpy.typing as npt

from evenwater.engine.balance import NO_LOSS, Floats
from evenwater.engine.exchange_question import ExchangeQuestion

Indices = npt.NDArray[np.intp] | slice

# As long as so much of the first value is left, sums of what came later are taken in its measure [1].
_LEAST_LEFT = 1e-12


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


@dataclass(frozen=True)
class Stretches(Sequence[Stretch]):
    """Stretches in order, in arrays: ``begins`` [day] of shape (p,), the others as those of a ``Stretch``, of shape (n, p).

    A gain or a loss that stays the same all the time is of shape (n, 1).
    """

    begins: Floats
    gain: Floats
    loss: Floats
    jump: Floats

    @classmethod
    def of(cls, parts: Sequence[Stretch]) -> Stretches:
        """Put single stretches into arrays; those that are in arrays already are given back.

        Parameters
        ----------
        parts : sequence of Stretch
            The conditions in order.

        Returns
        -------
        Stretches
            The same.
        """
        if isinstance(parts, Stretches):
            return parts
        begins = np.array([part.begin for part in parts])
        gain, loss, jump = (np.array([getattr(part, name) for part in parts]).T for name in ("gain", "loss", "jump"))
        return cls(begins, gain, loss, jump)

    def during(self, at: Indices) -> tuple[Floats, Floats]:
        """Return gain and loss in some of them.

        Parameters
        ----------
        at : array of int, shape (m,), or slice
            Which.

        Returns
        -------
        tuple of array
            Gains [canonical units per day] and losses [1/day], of shape (n, m), or (n, 1) where they stay the same.
        """
        gain, loss = (each if each.shape[1] == 1 else each[:, at] for each in (self.gain, self.loss))
        return gain, loss

    def __len__(self) -> int:
        """Return how many there are."""
        return len(self.begins)

    @overload
    def __getitem__(self, at: int) -> Stretch: ...

    @overload
    def __getitem__(self, at: slice) -> Stretches: ...

    def __getitem__(self, at: int | slice) -> Stretch | Stretches:
        """Return one of them, or some."""
        if isinstance(at, slice):
            return Stretches(self.begins[at], *self.during(at), self.jump[:, at])
        gain, loss = (each[:, 0 if each.shape[1] == 1 else at] for each in (self.gain, self.loss))
        return Stretch(float(self.begins[at]), gain, loss, self.jump[:, at])


def stretches(q: ExchangeQuestion) -> Stretches:
    """Cut the time asked about at every single dose, and where a spell begins or ends.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.

    Returns
    -------
    Stretches
        From the start on; doses at one instant are one jump.
    """
    rows = {v.parameter.name: row for row, v in enumerate(q.values)}
    doses = [dose for dose in q.doses if dose.at_day <= q.days and dose.parameter.name in rows]
    at = [dose.at_day for dose in doses]
    edges = [edge for spell in q.spells for edge in (spell.begins, spell.ends) if 0.0 < edge < math.inf]
    begins = np.unique(np.array([0.0, *at, *edges]))
    jump = np.zeros((len(rows), len(begins)))
    if doses:
        # ``add.at`` adds one after the other: several doses at one instant are all there.
        which = np.array([rows[dose.parameter.name] for dose in doses]) * len(begins) + np.searchsorted(begins, at)
        np.add.at(jump.reshape(-1), which, [dose.raises for dose in doses])
    gain = gains(q)[:, np.newaxis]
    if q.spells:
        gain = np.repeat(gain, len(begins), axis=1)
    for spell in q.spells:
        if spell.parameter.name in rows:
            runs = (spell.begins <= begins) & (begins < spell.ends)
            gain[rows[spell.parameter.name], runs] += spell.per_day
    return Stretches(begins, gain, losses(q)[:, np.newaxis], jump)


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
    of = Stretches.of(parts)
    at = np.searchsorted(of.begins, times, side="right") - 1
    values, since = _beginnings(start, of)[:, at], times - of.begins[at]
    if since.any():
        gone, comes = _moved(*of.during(at), since)
        values += comes - gone * values
    return values


def _moved(gain: Floats, loss: Floats, days: Floats) -> tuple[Floats, Floats]:
    """Return what share of a value is gone after some days of constant conditions [1], and what has come instead [canonical units]."""
    # expm1 keeps full precision where loss times time is tiny.
    gone = -np.expm1(-loss * days)
    none = np.abs(loss) < NO_LOSS
    if not none.any():
        return gone, gain / loss * gone
    return np.where(none, 0.0, gone), np.where(none, gain * days, gain / np.where(none, 1.0, loss) * gone)


def _beginnings(start: Floats, of: Stretches) -> Floats:
    """Return every value at the beginning of each stretch, right after what is added there, shape (n, p) [canonical units].

    Each is a share of the one before and something on top, ``value = kept*before + more``. With ``left`` of the first one, the product of
    all that was kept, they are ``left * (first + sum of more/left)``; as long as enough is left, then begun anew.
    """
    gone, comes = _moved(*of.during(slice(-1)), np.diff(of.begins))
    kept, values = 1.0 - gone, of.jump.copy()
    values[:, 0] += start
    values[:, 1:] += comes
    first, count = 0, len(of)
    while first < count:
        if first:
            values[:, first] += kept[:, first - 1] * values[:, first - 1]
        left = np.ones((len(values), count - first))
        np.cumprod(kept[:, first:], axis=1, out=left[:, 1:])
        end = count
        if left[:, -1].min(initial=1.0) < _LEAST_LEFT:
            end = first + max(1, int(np.searchsorted(-left.min(axis=0), -_LEAST_LEFT, side="right")))
        block, left = values[:, first:end], left[:, : end - first]
        block /= left
        np.cumsum(block, axis=1, out=block)
        block *= left
        first = end
    return values


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
    of = Stretches.of(parts)
    began = _beginnings(start, of)
    gone, comes = _moved(*of.during(slice(None)), np.append(of.begins[1:], until) - of.begins)
    short = began - gone * began + comes < 0.0
    return tuple(_runs_out(of, row, began[row], short[row]) for row in range(len(start)))


def _runs_out(of: Stretches, row: int, began: Floats, short: npt.NDArray[np.bool_]) -> float | None:
    """Return when a value reaches nothing, in the first stretch at whose end it would be below."""
    if not short.any():
        return None
    at = int(np.argmax(short))
    part, value = of[at], float(began[at])
    gain, loss = float(part.gain[row]), float(part.loss[row])
    # C(t) = 0 solved for t; log1p holds where the loss is tiny beside the use.
    return part.begin + (math.log1p(-value * loss / gain) / loss if loss > 0.0 else -value / gain)


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
    edges = Stretches.of(parts).begins
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
