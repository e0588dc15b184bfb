"""Which cause explains the levels of a jug best: hypotheses with a small model each, compared by how likely they make the levels.

Every hypothesis says how much fell between two readings: what was expected, times the error of the calibration, plus an amplitude times
a shape. A worn head takes a share off that grows slowly; air stops nearly all from some moment on; crust takes a part off, suddenly or
more and more; a siphon adds to it, all the time, from some moment on, or once; a wrong factor multiplies all of it; a level misread
moves one reading, a refill not noted lifts all later ones; a wrong strength leaves the levels as expected and changes what the water's
test shows. Amplitudes are spread over cells of a grid, each a Gaussian of the cell's width, so that everything but the choice of the
cell is linear and Gaussian and is integrated without error (Rasmussen and Williams 2006, section 2.7). The prior weights and the ranges are
common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]

WELL, WORN, BLOCKED, CRUST, SIPHON = "well", "worn_head", "blocked", "crust", "siphon"
FACTOR, STRENGTH, MISREAD = "wrong_factor", "wrong_strength", "level_misread"
# How often each is met, before a level is read; common practice, no source.
PRIOR = {WELL: 0.6, WORN: 0.08, BLOCKED: 0.06, CRUST: 0.06, SIPHON: 0.05, FACTOR: 0.08, STRENGTH: 0.03, MISREAD: 0.04}
# A head lasts 600 to 700 running hours (common practice, no source): one of half of that is as likely worn as any.
_HALF_LIFE_H, _WEAR_LEAST, _WEAR_MOST = 330.0, 0.02, 5.0
# A delivery scatters by so much between two readings besides all else (roller pulsation), as a standard deviation; from memory.
REPEATS = 0.01
# An interval in which something begins is cut in so many parts; with many intervals these are fine enough.
_PARTS, _PARTS_UNTIL = 3, 20
# Standard deviation of an even spread over one.
_CELL = 1.0 / math.sqrt(12.0)


@dataclass(frozen=True)
class Evidence:
    """What is known of a jug between its readings, m intervals in order of time.

    ``drops``, ``expected`` [mL], shape (m,): by how much the level fell, refills added, and what the pumps should have taken.
    ``days`` [day], shape (m,); ``refilled`` says in which a refill was noted. ``reading_sd`` [mL] is that of one level, ``calibration_sd`` [1] that of the pump's flow.
    ``shares`` [1] are what each pump takes of it all, ``holds_ml`` [mL] the full jug. ``hours`` are the head's running hours [h],
    ``tested`` what arrived by a test of the water, with its standard deviation [mL]; each None if unknown.
    """

    drops: Floats
    expected: Floats
    days: Floats
    refilled: tuple[bool, ...]
    reading_sd: float
    calibration_sd: float
    shares: tuple[float, ...]
    holds_ml: float
    hours: float | None = None
    tested: tuple[float, float] | None = None

    @property
    def whole_ml(self) -> float:
        """What was expected from the first reading to the last [mL]."""
        return float(self.expected.sum())


@dataclass(frozen=True)
class Shape:
    """How one unit of amplitude shows: in the ``drops`` [mL per unit], shape (m,), and in the ``water`` [mL per unit].

    ``blur`` [mL per unit], shape (m,), is one standard deviation of the drops by not knowing when within an interval it began.
    """

    drops: Floats
    water: float
    prior: float = 1.0
    blur: Floats | None = None


@dataclass(frozen=True)
class Cells:
    """Amplitudes a hypothesis allows: centres, widths as standard deviations [unit of the shape] and prior shares [1]."""

    centres: Floats
    sds: Floats
    shares: Floats


@dataclass(frozen=True)
class Weighed:
    """How likely each cause is after the levels were read [1], and how far the best model of each misses them (chi squared) [1]."""

    weights: Mapping[str, float]
    misses: Mapping[str, float]


_Part = tuple[list[Shape], Cells]


def _even(
    low: float, high: float, count: int, shares: Callable[[Floats], npt.NDArray[np.floating[Any]]] = np.ones_like
) -> Cells:
    edges = np.linspace(low, high, count + 1)
    centres = (edges[1:] + edges[:-1]) / 2.0
    weights = np.asarray(shares(centres), dtype=np.float64)
    return Cells(centres, np.diff(edges) * _CELL, weights / weights.sum())


def _doubling(low: float, high: float) -> Cells:
    """Return cells of one ratio from low to high, each as likely as the next."""
    count = max(4, math.ceil(math.log(high / low) / 0.3))
    edges = np.geomspace(low, high, count + 1)
    return Cells((edges[1:] + edges[:-1]) / 2.0, np.diff(edges) * _CELL, np.full(count, 1.0 / count))


def _both(cells: Cells) -> Cells:
    """Return the cells and the same below zero."""
    return Cells(
        np.concatenate([cells.centres, -cells.centres]),
        np.concatenate([cells.sds, cells.sds]),
        np.concatenate([cells.shares, cells.shares]) / 2.0,
    )


def _after(parts: Floats) -> Iterator[tuple[Floats, Floats]]:
    """Yield what of each interval's part lies after a moment, and its blur: the very beginning first, then along the record."""
    cuts = _PARTS if len(parts) <= _PARTS_UNTIL else 1
    yield parts, np.zeros_like(parts)
    for index in range(len(parts)):
        for cut in range(cuts):
            left, blur = parts.copy(), np.zeros_like(parts)
            left[:index] = 0.0
            left[index] *= 1.0 - (cut + 0.5) / cuts
            blur[index] = parts[index] / cuts * _CELL
            yield left, blur


def _growing(expected: Floats) -> Iterator[Floats]:
    """Yield what a deficit takes that grows evenly from a moment to the end, one unit at the end."""
    edges = np.concatenate([[0.0], np.cumsum(expected)])
    whole = edges[-1]
    for begin in edges[:-1]:
        if begin >= whole:
            # Nothing was expected any more, so nothing can have been missing.
            return
        grown = np.clip(edges - begin, 0.0, None) ** 2 / (2.0 * (whole - begin))
        yield np.diff(grown)


def _less(shape: Floats, ev: Evidence, prior: float = 1.0, blur: Floats | None = None) -> Iterator[Shape]:
    """Yield what each of the pumps lacks, if it is that one."""
    for share in ev.shares:
        yield Shape(
            -share * shape, -share * float(shape.sum()), prior / len(ev.shares), None if blur is None else share * blur
        )


def _worn(ev: Evidence) -> list[_Part]:
    edges = np.concatenate([[0.0], np.cumsum(ev.expected)])
    whole = edges[-1]
    starts = (0.2, 0.4, 0.6, 0.8, 1.0)
    slopes = [np.diff(start * edges + (1.0 - start) * edges**2 / (2.0 * whole)) for start in starts]
    shapes = [shape for slope in slopes for shape in _less(slope, ev)]
    return [(shapes, _even(0.04, 0.28, 8, lambda x: np.exp(-0.5 * (x / 0.15) ** 2)))]


def _blocked(ev: Evidence) -> list[_Part]:
    (first, _), *later = _after(ev.expected)
    # As likely before the first reading as after it: nobody looks at once.
    shapes = list(_less(first, ev, 0.5))
    shapes += [shape for left, blur in later for shape in _less(left, ev, 0.5 / len(later), blur)]
    return [(shapes, _even(0.75, 1.0, 6, lambda x: 1.0 + 3.0 * (x > 0.95)))]


def _crust(ev: Evidence) -> list[_Part]:
    moments, grown = list(_after(ev.expected)), list(_growing(ev.expected))
    shapes = [shape for left, blur in moments for shape in _less(left, ev, 0.5 / len(moments), blur)]
    shapes += [shape for left in grown for shape in _less(left, ev, 0.5 / len(grown))]
    return [(shapes, _even(0.2, 0.75, 10, lambda x: np.minimum(1.0, (x - 0.15) / 0.25)))]


def _siphon(ev: Evidence) -> list[_Part]:
    passed, whole = ev.days / ev.days.sum(), ev.whole_ml
    moments = list(_after(passed))
    shapes = [Shape(left / left.sum(), 1.0, 0.5 / len(moments), blur / left.sum()) for left, blur in moments]
    shapes += [Shape(row, 1.0, 0.5 / len(passed)) for row in np.eye(len(passed))]
    return [(shapes, _doubling(0.12 * whole, 2.0 * max(ev.holds_ml, whole)))]


def _factor(ev: Evidence) -> list[_Part]:
    sizes = _even(0.05, 0.6, 12, lambda x: np.exp(-0.5 * (x / 0.25) ** 2))
    return [(list(_less(ev.expected, ev)), _both(sizes))]


def _strength(ev: Evidence) -> list[_Part]:
    cells = _both(_even(0.1, 0.9, 8))
    strong = _even(0.9, 3.0, 8)
    return [
        ([Shape(np.zeros_like(ev.drops), ev.whole_ml, 0.8)], cells),
        ([Shape(np.zeros_like(ev.drops), ev.whole_ml, 0.2)], strong),
    ]


def _misread(ev: Evidence) -> list[_Part]:
    count = len(ev.drops)
    rows = np.eye(count)
    # A reading too high by one: the level falls by one less before it and by one more after it.
    single = [
        Shape(np.eye(count + 1)[k, :count] - np.eye(count + 1)[k, 1:], 0.0, 1.0 / (count + 1)) for k in range(count + 1)
    ]
    # A refill that nobody noted lifts the level for good; one noted twice, or with too much, does the reverse.
    refilled = [Shape(-row, 0.0, 1.0 / count) for row in rows]
    noted = [shape for shape, known in zip(refilled, ev.refilled, strict=True) if known]
    least = max(0.15 * ev.whole_ml, 5.0 * ev.reading_sd)
    sizes = _doubling(least, max(2.0 * least, ev.holds_ml))
    parts = [(single, _both(sizes)), (refilled, sizes)]
    return parts + ([(noted, Cells(-sizes.centres, sizes.sds, sizes.shares))] if noted else [])


_HYPOTHESES: Mapping[str, Callable[[Evidence], list[_Part]]] = {
    WORN: _worn, BLOCKED: _blocked, CRUST: _crust, SIPHON: _siphon, FACTOR: _factor, STRENGTH: _strength, MISREAD: _misread,
}  # fmt: skip


class _Likelihood:
    """The likelihood of the readings under what was expected plus a shape, the calibration's error integrated out."""

    def __init__(self, ev: Evidence) -> None:
        """Weigh the readings of ``ev``: neighbours share a level, so that their errors are bound together."""
        count, tested = len(ev.drops), ev.tested
        rows = count + (tested is not None)
        covariance = np.zeros((rows, rows))
        covariance[:count, :count] = ev.reading_sd**2 * (2.0 * np.eye(count) - np.eye(count, k=1) - np.eye(count, k=-1))
        covariance[np.arange(count), np.arange(count)] += (REPEATS * ev.expected) ** 2
        if tested is not None:
            covariance[count, count] = tested[1] ** 2
        self._inverse = np.linalg.inv(covariance)
        self._tested = tested is not None
        self._ones = self._row(ev.expected, ev.whole_ml)
        self._misses = self._row(ev.drops, 0.0 if tested is None else tested[0]) - self._ones
        self._sd = ev.calibration_sd

    def _row(self, drops: Floats, water: float) -> Floats:
        return np.append(drops, water) if self._tested else drops

    def of(self, shapes: Sequence[Shape], cells: Cells, sd: float | None = None) -> tuple[Floats, Floats]:
        """Return log likelihood, up to one constant for all, and chi squared of every shape and cell, shape (s, c)."""
        h = np.array([self._row(shape.drops, shape.water) for shape in shapes])
        nothing = np.zeros(len(self._ones) - self._tested)
        g = np.array([self._row(nothing if shape.blur is None else shape.blur, 0.0) for shape in shapes])
        sigma = self._sd if sd is None else sd
        centres, widths = cells.centres, cells.sds
        # Along these the readings may depart besides: the calibration, the width of the cell, the moment within an interval.
        along = np.stack([np.broadcast_to(self._ones, h.shape), h, g], axis=1)
        scales = np.stack([np.full(len(centres), sigma), widths, np.abs(centres)], axis=1)
        weighted = along @ self._inverse
        gram = weighted @ along.swapaxes(1, 2)
        onto = weighted @ self._misses
        towards = onto[:, None, :] - centres[None, :, None] * gram[:, 1, :][:, None, :]
        mean = scales[None] * towards
        spread = np.eye(3) + scales[None, :, :, None] * gram[:, None, :, :] * scales[None, :, None, :]
        apart = float(self._misses @ self._inverse @ self._misses)
        far = apart - 2.0 * centres * onto[:, 1, None] + centres**2 * gram[:, 1, 1, None]
        chi = far - np.einsum("sci,sci->sc", mean, np.linalg.solve(spread, mean[..., None])[..., 0])
        return -0.5 * (chi + np.linalg.slogdet(spread)[1]), chi


def weigh(ev: Evidence) -> Weighed:
    """Return how likely every cause is.

    Parameters
    ----------
    ev : Evidence
        Levels and what was expected; something was expected in every record.

    Returns
    -------
    Weighed
        Weights that add up to one. A wrong strength is among them only where the water was tested.
    """
    likelihood = _Likelihood(ev)
    nothing = Cells(np.zeros(1), np.zeros(1), np.ones(1))
    flat, chi = likelihood.of([Shape(np.zeros_like(ev.drops), 0.0)], nothing)
    logs, misses = {WELL: math.log(PRIOR[WELL]) + float(flat[0, 0])}, {WELL: float(chi[0, 0])}
    for cause, model in _HYPOTHESES.items():
        if cause == STRENGTH and ev.tested is None:
            continue
        parts = model(ev)
        known = math.fsum(shape.prior for shapes, _ in parts for shape in shapes)
        # A factor that is wrong has no calibration to be wrong besides.
        sd = 0.0 if cause == FACTOR else None
        logged, chis = [], []
        for shapes, cells in parts:
            found, chi = likelihood.of(shapes, cells, sd)
            priors = np.array([shape.prior for shape in shapes]) / known
            logged.append((found + np.log(cells.shares) + np.log(priors)[:, None]).ravel())
            chis.append(float(chi.min()))
        each = np.concatenate(logged)
        most = float(each.max())
        total = most + math.log(float(np.exp(each - most).sum()))
        logs[cause] = math.log(PRIOR[cause] * _leaning(cause, ev.hours)) + total
        misses[cause] = min(chis)
    most = max(logs.values())
    raw = {cause: math.exp(log - most) for cause, log in logs.items()}
    whole = math.fsum(raw.values())
    return Weighed({cause: value / whole for cause, value in raw.items()}, misses)


def _leaning(cause: str, hours: float | None) -> float:
    """Return how much more or less often a cause is met for what is known of the head's hours."""
    if cause != WORN or hours is None:
        return 1.0
    return min(_WEAR_MOST, max(_WEAR_LEAST, (hours / _HALF_LIFE_H) ** 2))
