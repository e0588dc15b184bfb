"""Value and use along a record, exactly, once it is settled which readings are believed and where use changed.

Two unknowns, the value and the use at the beginning, and steps of known spread: the augmented (diffuse) Kalman filter and
its fixed-interval smoother (de Jong 1991, The diffuse Kalman filter, Annals of Statistics 19:1073; de Jong 1989,
Smoothing and interpolation with the state-space model, JASA 84:1085). Nothing is assumed of the two unknowns. With use
that does not wander it is the weighted least squares line, to the last digits: nothing is then ever subtracted from a
covariance.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from evenwater.engine.consumption_steps import Steps

Floats = npt.NDArray[np.float64]

# The variance of a value that may be anything [canonical unit**2].
_ANYTHING = 1e12


@dataclass(frozen=True)
class Line:
    """Value and use at each instant, given all readings, shape (n,) each.

    ``value`` [canonical unit], ``use`` [canonical unit per day], their standard deviations ``value_sd`` and ``use_sd`` in the same
    units, for readings that scatter as their standard deviations say. ``scatter`` [1] is by how much they scatter more
    than that (the residual standard deviation where these are one); None without a reading to spare.
    """

    value: Floats
    use: Floats
    value_sd: Floats
    use_sd: Floats
    scatter: float | None


@dataclass(frozen=True)
class _Forward:
    """What the filter hands to the smoother: lists of rows, one for each instant."""

    states: list[tuple[float, ...]]
    covariances: list[tuple[float, float, float]]
    gains: list[tuple[float, float]]
    offs: Floats
    slopes: Floats
    variances: Floats


def line(
    values: Floats, variances: Floats, ways: Steps, wander: Floats, leaps: Floats, known: float | None = None
) -> Line:
    """Return value and use along a record.

    Parameters
    ----------
    values : array, shape (n,)
        Readings; anything where the variance is infinite [canonical unit].
    variances : array, shape (n,)
        Their variances; infinite where nothing was read, or it is not believed [canonical unit**2].
    ways : Steps
        From each instant to the next, shape (n,) each.
    wander : array, shape (n,)
        Variance that use gains in a day on the way to each instant [(canonical unit per day)**2 per day].
    leaps : array, shape (n,)
        Variance of what happened to the value on the way and is in no log [canonical unit**2].
    known : float or None
        The value at the first instant where no test is needed to know it [canonical unit].

    Returns
    -------
    Line
        Value and use.

    Raises
    ------
    ValueError
        When the readings do not tell the use: fewer than two of them at different instants.
    """
    read = np.isfinite(variances)
    first = known if known is not None else float(values[np.argmax(read)]) if read.any() else 0.0
    forward = _filter(values, variances, ways, wander, leaps, first, known is not None)
    begun, cov = _beginning(forward, read)
    residuals = forward.offs - forward.slopes @ begun
    spare = int(read.sum()) - (1 if known is not None else 2)
    scatter = math.sqrt(math.fsum(residuals[read] ** 2 / forward.variances[read]) / spare) if spare > 0 else None
    return _smooth(forward, ways, read, residuals, begun, cov, scatter)


def _filter(
    values: Floats, variances: Floats, ways: Steps, wander: Floats, leaps: Floats, first: float, known: bool
) -> _Forward:
    """Run through the record with the beginning left open: state = m + A (value, use at the beginning)."""
    count = len(values)
    offs, slopes, inflated = np.zeros(count), np.zeros((count, 2)), np.full(count, np.inf)
    states: list[tuple[float, ...]] = []
    covariances: list[tuple[float, float, float]] = []
    gains: list[tuple[float, float]] = []
    m0, m1 = first, 0.0
    a00, a01, a10, a11 = (0.0 if known else 1.0), 0.0, 0.0, 1.0
    p00, p01, p11 = 0.0, 0.0, 0.0
    rows = zip(
        values.tolist(), variances.tolist(), ways.kept.tolist(), ways.taken.tolist(), ways.gained.tolist(),
        (wander * ways.spread_value + leaps).tolist(), (wander * ways.spread_both).tolist(),
        (wander * ways.spread_use).tolist(), strict=True,
    )  # fmt: skip
    for index, (value, variance, kept, taken, gained, q00, q01, q11) in enumerate(rows):
        m0 = kept * m0 - taken * m1 + gained
        a00, a01 = kept * a00 - taken * a10, kept * a01 - taken * a11
        p00 = kept * kept * p00 - 2.0 * kept * taken * p01 + taken * taken * p11 + q00
        p01 = kept * p01 - taken * p11 + q01
        p11 += q11
        states.append((m0, m1, a00, a01, a10, a11))
        covariances.append((p00, p01, p11))
        if variance == math.inf:
            gains.append((0.0, 0.0))
            continue
        inflated[index] = f = p00 + variance
        offs[index] = off = value - m0
        slopes[index] = a00, a01
        g0, g1 = p00 / f, p01 / f
        gains.append((g0, g1))
        m0, m1 = m0 + g0 * off, m1 + g1 * off
        a10, a11 = a10 - g1 * a00, a11 - g1 * a01
        a00, a01 = a00 - g0 * a00, a01 - g0 * a01
        p11 -= g1 * p01
        p00, p01 = p00 * variance / f, p01 * variance / f
    return _Forward(states, covariances, gains, offs, slopes, inflated)


def _beginning(forward: _Forward, read: npt.NDArray[np.bool_]) -> tuple[Floats, Floats]:
    """Return value (as off the first guess) and use at the beginning, and their covariance."""
    weights = 1.0 / forward.variances[read]
    slopes, offs = forward.slopes[read], forward.offs[read]
    square = slopes.T @ (slopes * weights[:, None])
    if square[0, 0] == 0.0:
        # Known without a test, or forgotten since all of the water was new: no reading tells the value at the beginning.
        square[0, 0] = 1.0 / _ANYTHING
    determinant = square[0, 0] * square[1, 1] - square[0, 1] * square[1, 0]
    if not determinant > 1e-12 * square[0, 0] * square[1, 1]:
        raise ValueError("the readings do not tell the use")
    cov = np.array([[square[1, 1], -square[0, 1]], [-square[1, 0], square[0, 0]]]) / determinant
    begun = cov @ (slopes.T @ (weights * offs))
    # Once more for what is left over: full precision also where the values are large against their residuals.
    begun += cov @ (slopes.T @ (weights * (offs - slopes @ begun)))
    return begun, cov


def _smooth(
    forward: _Forward, ways: Steps, read: npt.NDArray[np.bool_], residuals: Floats, begun: Floats, cov: Floats,
    scatter: float | None,
) -> Line:  # fmt: skip
    """Run back through the record, so that every instant knows of all readings."""
    count = len(read)
    out = np.empty((4, count))
    d0, d1 = float(begun[0]), float(begun[1])
    c00, c01, c11 = float(cov[0, 0]), float(cov[0, 1]), float(cov[1, 1])
    kept, taken = ways.kept.tolist(), ways.taken.tolist()
    left, variances, believed = residuals.tolist(), forward.variances.tolist(), read.tolist()
    # r is what later readings say of the state, b the same of the two unknowns, n how much they say.
    r0 = r1 = b00 = b01 = b10 = b11 = n00 = n01 = n11 = 0.0
    for index in range(count - 1, -1, -1):
        m0, m1, a00, a01, a10, a11 = forward.states[index]
        p00, p01, p11 = forward.covariances[index]
        if believed[index]:
            f = variances[index]
            g0, g1 = forward.gains[index]
            off = left[index] / f
            n00, n01 = (
                1.0 / f + n00 * (1.0 - g0) ** 2 - 2.0 * (1.0 - g0) * g1 * n01 + g1 * g1 * n11,
                (1.0 - g0) * n01 - g1 * n11,
            )
            r0 = off + (1.0 - g0) * r0 - g1 * r1
            b00 = -a00 / f + (1.0 - g0) * b00 - g1 * b10
            b01 = -a01 / f + (1.0 - g0) * b01 - g1 * b11
        # The state as it was before the reading, corrected by what came at and after it.
        out[0, index] = m0 + a00 * d0 + a01 * d1 + p00 * r0 + p01 * r1
        out[1, index] = m1 + a10 * d0 + a11 * d1 + p01 * r0 + p11 * r1
        v0, v1 = a00 + p00 * b00 + p01 * b10, a01 + p00 * b01 + p01 * b11
        u0, u1 = a10 + p01 * b00 + p11 * b10, a11 + p01 * b01 + p11 * b11
        known0 = p00 * (p00 * n00 + 2.0 * p01 * n01) + p01 * p01 * n11
        known1 = p01 * (p01 * n00 + 2.0 * p11 * n01) + p11 * p11 * n11
        out[2, index] = p00 - known0 + c00 * v0 * v0 + 2.0 * c01 * v0 * v1 + c11 * v1 * v1
        out[3, index] = p11 - known1 + c00 * u0 * u0 + 2.0 * c01 * u0 * u1 + c11 * u1 * u1
        k, t = kept[index], taken[index]
        r0, r1 = k * r0, r1 - t * r0
        b00, b01, b10, b11 = k * b00, k * b01, b10 - t * b00, b11 - t * b01
        n00, n01, n11 = k * k * n00, k * (n01 - t * n00), n11 - 2.0 * t * n01 + t * t * n00
    return Line(out[0], out[1], np.sqrt(np.maximum(out[2], 0.0)), np.sqrt(np.maximum(out[3], 0.0)), scatter)
