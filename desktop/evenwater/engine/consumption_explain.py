"""The explanation of a record: how far use wanders and the kit scatters, learned from the record itself, and what follows for now.

A small grid of assumptions is followed side by side and weighed by its likelihood (multiple models: Magill 1965, IEEE Trans. Automatic
Control 10:434), so that an interval knows that neither is known. A long record is learned from by its end; the rest of it is then followed
in pieces that overlap, side by side.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, fields

import numpy as np
import numpy.typing as npt

from evenwater.engine.consumption_filter import KEPT, Followed, Series, follow, wander_rate
from evenwater.engine.consumption_steps import Steps

Floats = npt.NDArray[np.float64]

# How much use wanders in a day, as a share of itself, and how likely that is beforehand; 5 % a day is as good as no memory. By how
# much readings scatter more than the kit says, and how likely that is. Common practice, no source; with these, intervals cover
# what they should over simulated tanks of many courses (tests/engine/test_consumption_coverage.py).
_WANDER = ((0.0, 0.80), (0.003, 0.08), (0.008, 0.06), (0.02, 0.04), (0.05, 0.02))
_SCATTER = ((0.6, 0.25), (1.0, 0.45), (1.6, 0.22), (3.0, 0.08))
# A record is learned from by its last readings, and pieces of the rest overlap by as many as settle what the first of them mean.
_LEARNED_FROM = 300
_PIECE = 300
_OVERLAP = 50


@dataclass(frozen=True)
class Mixture:
    """Value and use at one instant, as a sum of normal distributions, shape (k,) each.

    ``weight`` [1]; ``value`` [canonical unit] and ``use`` [canonical unit per day] with ``value_var``, ``both_var`` and ``use_var``;
    ``rate`` the variance that use gains in a day; ``change`` the reading before which use changed last, -1 for none.
    """

    weight: Floats
    value: Floats
    use: Floats
    value_var: Floats
    both_var: Floats
    use_var: Floats
    rate: Floats
    change: npt.NDArray[np.int64]

    def later(self, way: Steps) -> Mixture:
        """Return the same at the end of a way on which nothing was read.

        Parameters
        ----------
        way : Steps
            The way, each field of shape (1,).

        Returns
        -------
        Mixture
            Value and use there.
        """
        kept, taken = way.kept[0], way.taken[0]
        return Mixture(
            weight=self.weight,
            value=kept * self.value - taken * self.use + way.gained[0],
            use=self.use,
            value_var=kept * kept * self.value_var
            - 2.0 * kept * taken * self.both_var
            + taken * taken * self.use_var
            + self.rate * way.spread_value[0],
            both_var=kept * self.both_var - taken * self.use_var + self.rate * way.spread_both[0],
            use_var=self.use_var + self.rate * way.spread_use[0],
            rate=self.rate,
            change=self.change,
        )


@dataclass(frozen=True)
class Explained:
    """The likeliest explanation of a record, and all that are left of the present.

    ``verdicts`` on each reading and the ``uses`` after it [canonical unit per day], shape (n,); ``wander`` as a share of the use in a
    day [1]; ``scatter`` over what the kit says [1]; ``now`` right after the last reading, which knows of the last ``learned_from``
    readings.
    """

    verdicts: npt.NDArray[np.int8]
    uses: Floats
    wander: float
    scatter: float
    now: Mixture
    learned_from: int


def explain(series: Series) -> Explained:
    """Explain a record.

    Parameters
    ----------
    series : Series
        One row of at least two readings.

    Returns
    -------
    Explained
        The likeliest explanation, and the present.
    """
    count = series.values.shape[1]
    wander, wander_prior = (np.array(column) for column in zip(*_WANDER, strict=True))
    scatter, scatter_prior = (np.array(column) for column in zip(*_SCATTER, strict=True))
    wanders, scatters = np.repeat(wander, len(scatter)), np.tile(scatter, len(wander))
    last = series if count <= _LEARNED_FROM else _pieces(series, np.array([count - _LEARNED_FROM]), _LEARNED_FROM)
    followed = follow(last, wanders, scatters)
    rows = followed.evidence + np.log(np.outer(wander_prior, scatter_prior)).ravel()
    joint = np.exp(rows[:, None] - rows.max() + followed.weight)
    joint /= joint.sum()
    by_row = joint.sum(axis=1)
    likeliest = int(joint.argmax())
    verdicts, uses = followed.story(*divmod(likeliest, KEPT))
    wandered = math.sqrt(float(by_row @ wanders**2))
    scattered = math.exp(float(by_row @ np.log(scatters)))
    if count > _LEARNED_FROM:
        verdicts, uses = _rest(series, verdicts, uses, wandered, scattered)
    present = _mixture(followed, joint, wanders, series.unit)
    return Explained(verdicts, uses, wandered, scattered, present, min(count, _LEARNED_FROM))


def _mixture(followed: Followed, joint: Floats, wanders: Floats, unit: float) -> Mixture:
    """Return what is left of the present; explanations of less than one in ten thousand are nobody's business."""
    few = joint > 1e-4
    rate = np.broadcast_to(np.asarray(wander_rate(wanders[:, None], followed.use, unit)), joint.shape)
    return Mixture(
        weight=joint[few] / joint[few].sum(),
        value=followed.value[few],
        use=followed.use[few],
        value_var=followed.value_var[few],
        both_var=followed.both_var[few],
        use_var=followed.use_var[few],
        rate=rate[few],
        change=followed.change[few],
    )


def _pieces(series: Series, starts: npt.NDArray[np.int64], length: int) -> Series:
    """Return pieces of a row of readings as rows; the way to the first of each is cut off."""
    where = starts[:, None] + np.arange(length)
    ways = {field.name: getattr(series.ways, field.name)[0][where] for field in fields(Steps)}
    for name, column in ways.items():
        column[:, 0] = 1.0 if name == "kept" else 0.0
    return Series(series.values[0][where], series.variances[0][where], Steps(**ways), series.unit)


def _rest(
    series: Series, verdicts: npt.NDArray[np.int8], uses: Floats, wander: float, scatter: float
) -> tuple[npt.NDArray[np.int8], Floats]:
    """Return verdicts and uses of a whole record, whose last readings are settled."""
    count = series.values.shape[1]
    settled_from = count - _LEARNED_FROM
    reach = settled_from + _OVERLAP
    length = min(_PIECE, reach)
    number = math.ceil((reach - _OVERLAP) / max(length - _OVERLAP, 1))
    starts = np.linspace(0, reach - length, number).round().astype(np.int64)
    followed = follow(_pieces(series, starts, length), np.full(number, wander), np.full(number, scatter))
    whole, all_uses = np.empty(count, np.int8), np.empty(count)
    for row, start in enumerate(starts):
        of_row, uses_of_row = followed.story(row, int(followed.weight[row].argmax()))
        # The first readings of a piece are better judged by the piece before, which is written over from there on only.
        own = 0 if row == 0 else _OVERLAP // 2
        whole[start + own : start + length], all_uses[start + own : start + length] = of_row[own:], uses_of_row[own:]
    own = _OVERLAP // 2
    whole[settled_from + own :], all_uses[settled_from + own :] = verdicts[own:], uses[own:]
    return whole, all_uses


def quantiles(weight: Floats, mean: Floats, variance: Floats, shares: tuple[float, ...]) -> tuple[float, ...]:
    """Return quantiles of a sum of normal distributions.

    Parameters
    ----------
    weight : array, shape (k,)
        Weights that add to one [1].
    mean : array, shape (k,)
        Means [any unit].
    variance : array, shape (k,)
        Variances, in the square of that unit [any unit**2].
    shares : tuple of float
        Which quantiles [1].

    Returns
    -------
    tuple of float
        The quantiles, to a hundred-thousandth of the widest part's standard deviation [any unit].
    """
    spread = np.sqrt(np.maximum(variance, 1e-300))
    parts = list(zip(weight.tolist(), mean.tolist(), (spread * math.sqrt(2.0)).tolist(), strict=True))
    ends = float((mean - 8.0 * spread).min()), float((mean + 8.0 * spread).max())
    fine = 1e-5 * float(spread.max())
    found = []
    for share in shares:
        low, high = ends
        while high - low > fine:
            middle = (low + high) / 2.0
            if middle in (low, high):
                break
            below = math.fsum(w * math.erfc((m - middle) / s) for w, m, s in parts) / 2.0
            low, high = (middle, high) if below < share else (low, middle)
        found.append((low + high) / 2.0)
    return tuple(found)
