"""Which readings to believe and where use changed: many explanations of one record, weighed against each other.

Every reading may be a bad test; before every reading the use may have changed at once, or something may have happened to the
water that is in no log. Each combination is a linear model with a Kalman filter of its own; of all of them the likeliest
few are carried along (a Gaussian sum filter: Sorenson and Alspach 1971, Automatica 7:465; Alspach and Sorenson 1972, IEEE
Trans. Automatic Control 17:439). Several records, or one record under several assumptions, run side by side in rows.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TypeVar

import numpy as np
import numpy.typing as npt

from evenwater.engine.consumption_steps import Steps

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
_Kind = TypeVar("_Kind", np.float64, np.int64)

# What can be the matter with a reading, in the order of the explanations below.
GOOD, BAD, CHANGED, UNLOGGED = range(4)

# Common practice, no source: of a hundred tests three are bad, by a dozen times what the kit scatters or so; use changes at
# once two or three times in two years; somebody forgets to write a dose or an exchange down a little less often.
BAD_SHARE = 0.03
BAD_BY = 12.0
CHANGE_DAYS = 240.0
UNLOGGED_DAYS = 300.0
UNLOGGED_BY = 12.0
# A change is by so much of the use before, and by so much of the kit's scatter in a day for a tank that used next to nothing.
CHANGE_SHARE = 0.6
CHANGE_FLOOR = 0.4
_LOOK_DAYS = 0.6
# Explanations carried along in each row, of how many likely ones they are chosen, and how many may tell of the same events.
KEPT = 10
_LOOKED_AT = 16
_ALIKE = 3
_LIKELIER = np.tri(_LOOKED_AT, k=-1, dtype=bool)
# How open value and use [per day] are before the first reading, in what the kit scatters and the readings span: so much that no record
# could tell it from not knowing anything.
_OPEN = 1e3
_NEVER = -1e30


@dataclass(frozen=True)
class Series:
    """Records in rows: ``values`` [canonical unit] and ``variances`` [canonical unit**2], shape (rows, n); the ways to each reading.

    ``unit`` [canonical unit] is what the kit commonly scatters. ``known`` is the value at the beginning of the way to the first reading
    [canonical unit] where that needs no test.
    """

    values: Floats
    variances: Floats
    ways: Steps
    unit: float
    known: float | None = None


@dataclass(frozen=True)
class Followed:
    """What the explanations say after the last reading, shape (rows, KEPT) unless said otherwise.

    ``weight`` is the logarithm of each one's share of its row; ``value`` [canonical unit] and ``use`` [canonical unit per day] with the
    covariance ``value_var``, ``both_var``, ``use_var``; ``change`` the reading before which use changed last, -1 for none.
    ``evidence`` is the log likelihood of each row, shape (rows,). ``parents``, ``verdicts`` and ``uses`` [canonical unit per day], shape (n,
    rows, KEPT), are the tree of explanations.
    """

    weight: Floats
    value: Floats
    use: Floats
    value_var: Floats
    both_var: Floats
    use_var: Floats
    change: Ints
    evidence: Floats
    parents: npt.NDArray[np.int8]
    verdicts: npt.NDArray[np.int8]
    uses: Floats

    def story(self, row: int, explanation: int) -> tuple[npt.NDArray[np.int8], Floats]:
        """Return how one explanation came about.

        Parameters
        ----------
        row : int
            Its row.
        explanation : int
            Its place in the row.

        Returns
        -------
        tuple of arrays, each of shape (n,)
            The verdict on each reading, and the use after each reading [canonical unit per day].
        """
        count = len(self.parents)
        verdicts, uses = np.empty(count, np.int8), np.empty(count)
        at = explanation
        for index in range(count - 1, -1, -1):
            verdicts[index], uses[index] = self.verdicts[index, row, at], self.uses[index, row, at]
            at = int(self.parents[index, row, at])
        return verdicts, uses


def wander_rate(share: float | Floats, use: float | Floats, unit: float) -> float | Floats:
    """Return the variance that use gains in a day.

    Parameters
    ----------
    share : float or array
        How much use wanders in a day, as a share of itself [1].
    use : float or array
        The use [canonical unit per day].
    unit : float
        What the kit commonly scatters, for a tank that uses next to nothing [canonical unit].

    Returns
    -------
    float or array
        The variance [(canonical unit per day)**2 per day].
    """
    return share * share * (use * use + unit * unit)


def change_variance(use: float | Floats, unit: float) -> float | Floats:
    """Return the variance of a change of use that comes at once.

    Parameters
    ----------
    use : float or array
        The use before [canonical unit per day].
    unit : float
        What the kit commonly scatters [canonical unit].

    Returns
    -------
    float or array
        The variance [(canonical unit per day)**2].
    """
    return (CHANGE_SHARE * use) ** 2 + (CHANGE_FLOOR * unit) ** 2


def follow(series: Series, wander: Floats, scatter: Floats) -> Followed:
    """Follow records through all their readings.

    Parameters
    ----------
    series : Series
        The records; one row serves any number of assumptions.
    wander : array, shape (rows,)
        How much use wanders in a day, as a share of itself [1].
    scatter : array, shape (rows,)
        By how much readings scatter more than the kit says [1].

    Returns
    -------
    Followed
        The explanations after the last reading.
    """
    rows, count = len(wander), series.values.shape[1]
    shape = (rows, KEPT)
    now, evidence = _beginning(series, rows), np.zeros(rows)
    parents, verdicts = np.empty((count, *shape), np.int8), np.empty((count, *shape), np.int8)
    uses = np.empty((count, *shape))
    prior = _priors(series.ways)
    trusted = series.variances * scatter[:, None] ** 2
    variance = np.empty((rows, 4, 1))
    for index in range(count):
        ahead, c00, c01, c11 = _ahead(now, series, index, wander[:, None])
        variance[:] = trusted[:, index, None, None]
        variance[:, BAD] += (BAD_BY * series.unit) ** 2
        total = c00 + variance
        off = series.values[:, index, None] - ahead
        likely = now.weight[:, None] + prior[index] - 0.5 * ((off * off)[:, None] / total + np.log(total))
        flat = likely.reshape(rows, -1)
        chosen, change, unlogged = _chosen(flat, now, index, count)
        verdict, parent = np.divmod(chosen, KEPT)
        weight = _picked(flat, chosen)
        best = weight.max(axis=1, keepdims=True)
        whole = best + np.log(np.exp(weight - best).sum(axis=1, keepdims=True))
        evidence += whole[:, 0]
        f, v = _picked(total, chosen), _picked(variance, verdict)
        k00, k01, k11 = (_picked(c, chosen) for c in (c00, c01, c11))
        missed, gain = _picked(off, parent), k01 / f
        now = _State(
            weight=weight - whole,
            value=_picked(ahead, parent) + k00 / f * missed,
            use=_picked(now.use, parent) + gain * missed,
            value_var=k00 * v / f,
            both_var=k01 * v / f,
            use_var=np.maximum(k11 - gain * k01, 0.0),
            change=change,
            unlogged=unlogged,
        )
        parents[index], verdicts[index], uses[index] = parent, verdict, now.use
    return Followed(
        now.weight, now.value, now.use, now.value_var, now.both_var, now.use_var, now.change, evidence, parents, verdicts,
        uses,
    )  # fmt: skip


@dataclass(frozen=True)
class _State:
    """The explanations after a reading, shape (rows, KEPT) each; ``unlogged`` as ``change`` in ``Followed``."""

    weight: Floats
    value: Floats
    use: Floats
    value_var: Floats
    both_var: Floats
    use_var: Floats
    change: Ints
    unlogged: Ints


def _beginning(series: Series, rows: int) -> _State:
    """Return the one explanation there is before the first reading."""
    shape = (rows, KEPT)
    weight, never = np.full(shape, _NEVER), np.full(shape, -1)
    weight[:, 0] = 0.0
    known = series.known
    unsure = np.full(shape, (_OPEN * (series.unit + np.ptp(series.values))) ** 2)
    return _State(
        weight=weight,
        value=np.full(shape, series.values[:, :1] if known is None else known),
        use=np.zeros(shape),
        value_var=unsure if known is None else np.zeros(shape),
        both_var=np.zeros(shape),
        use_var=unsure,
        change=never,
        unlogged=never,
    )


def _ahead(now: _State, series: Series, index: int, share: Floats) -> tuple[Floats, Floats, Floats, Floats]:
    """Return the value due at a reading, shape (rows, KEPT), and the covariance for each verdict, shape (rows, 4, KEPT)."""
    ways, unit = series.ways, series.unit
    kept, taken, days = ways.kept[:, index, None], ways.taken[:, index, None], ways.days[:, index, None]
    s00, s01, s11 = (s[:, index, None] for s in (ways.spread_value, ways.spread_both, ways.spread_use))
    rate, loss = wander_rate(share, now.use, unit), taken * now.use_var
    # What is left of large variances may be rounded to below nothing.
    c00 = np.maximum(kept * (kept * now.value_var - 2.0 * taken * now.both_var) + taken * loss, 0.0) + rate * s00
    c01 = kept * now.both_var - loss + rate * s01
    c11 = now.use_var + rate * s11
    every00, every01, every11 = (np.repeat(c[:, None], 4, axis=1) for c in (c00, c01, c11))
    # A change somewhere on the way is as if use had wandered that far in that time.
    leap = change_variance(now.use, unit) / np.maximum(days, 1e-9)
    every00[:, CHANGED] += leap * s00
    every01[:, CHANGED] += leap * s01
    every11[:, CHANGED] += leap * s11
    every00[:, UNLOGGED] += (UNLOGGED_BY * unit) ** 2
    return kept * now.value - taken * now.use + ways.gained[:, index, None], every00, every01, every11


def _picked(of: npt.NDArray[_Kind], which: Ints) -> npt.NDArray[_Kind]:
    """Return of each row the elements at some places; several times as fast as indexing with both."""
    offset = np.arange(len(of))[:, None] * (of.size // len(of))
    return of.ravel().take(which + offset)


def _chosen(likely: Floats, now: _State, index: int, count: int) -> tuple[Ints, Ints, Ints]:
    """Return which explanations are carried along, and the last change and unlogged event of each, shape (rows, KEPT)."""
    first = np.argsort(-likely, axis=1)[:, :_LOOKED_AT]
    verdict, parent = np.divmod(first, KEPT)
    change = np.where(verdict == CHANGED, index, _picked(now.change, parent))
    unlogged = np.where(verdict == UNLOGGED, index, _picked(now.unlogged, parent))
    carried = _carried(change * (count + 1) + unlogged)
    return _picked(first, carried), _picked(change, carried), _picked(unlogged, carried)


def _carried(events: Ints) -> Ints:
    """Return which explanations to carry along, shape (rows, KEPT), of those in order of likelihood, shape (rows, _LOOKED_AT).

    The likeliest, but of those that tell of the same events and differ in bad tests only, a few: or they would crowd out those
    that tell of a change just come, which is unlikely until more readings are in.
    """
    alike = np.count_nonzero((events[:, :, None] == events[:, None, :]) & _LIKELIER, axis=2)
    return np.argsort(alike >= _ALIKE, axis=1, kind="stable")[:, :KEPT]


def _priors(ways: Steps) -> Floats:
    """Return the log probability of each verdict before each reading, shape (n, rows, 4, 1).

    Until two readings are in there is no use that could have changed; and where tests are many, a change is looked for only once
    in a while, or the many moments at which it may have come would crowd each other out.
    """
    days = ways.days.T
    open_days = np.zeros_like(days)
    since = np.zeros(days.shape[1])
    for index in range(2, len(days)):
        since += days[index]
        due = since >= _LOOK_DAYS
        open_days[index, due] = since[due]
        since[due] = 0.0
    changed, unlogged = -np.expm1(-open_days / CHANGE_DAYS), -np.expm1(-days / UNLOGGED_DAYS)
    unlogged[:1] = 0.0
    # After half a year without a test nothing is certain, but an ordinary reading stays the likeliest.
    shrink = np.minimum(1.0, 0.5 / np.maximum(changed + unlogged, 1e-300))
    changed, unlogged = changed * shrink, unlogged * shrink
    bad = np.full_like(days, BAD_SHARE)
    share = np.stack([1.0 - bad - changed - unlogged, bad, changed, unlogged], axis=-1)
    return np.asarray(np.log(np.maximum(share, 1e-300))[..., None])
