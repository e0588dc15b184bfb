"""How far the water may end from the plan: a band from 5 to 95 %, and each source's share.

Half widths of 95 % intervals are taken as two standard deviations (JCGM 100:2008, 6.2 and G.6.6).
The band comes from 512 low-discrepancy points, the shares from first-order propagation
(JCGM 100:2008, 5.1.2).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from statistics import NormalDist

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]

SOURCES = ("volume", "reading", "strength", "pump", "use")
SAMPLES = 512


@dataclass(frozen=True)
class Spread:
    """Standard deviations: ``reading`` [canonical unit], the others over their own value [1]."""

    volume: float
    reading: float
    strength: float
    pump: float
    use: float


@lru_cache(maxsize=1)
def _points() -> Floats:
    """Return standard normal points, shape (SAMPLES, 5), from a Kronecker sequence.

    The generators are the powers of the root of x**6 = x + 1, the five-dimensional analogue of
    the golden ratio; no randomness, so the same question always has the same band.
    """
    root = 1.1673039782614187
    index = np.arange(1, SAMPLES + 1, dtype=np.float64)
    inverse = NormalDist().inv_cdf
    columns = []
    for power in range(1, len(SOURCES) + 1):
        uniform = (0.5 + index * root**-power) % 1.0
        columns.append([inverse(min(max(u, 1e-9), 1.0 - 1e-9)) for u in uniform])
    points = np.asarray(columns).T
    # Column means and spreads made exact, so that a straight line has exactly its own band.
    return np.asarray((points - points.mean(axis=0)) / points.std(axis=0))


def band(start: float, dosed: Floats, used: Floats, spread: Spread) -> tuple[Floats, Floats]:
    """Return the 5th and 95th percentile of the value along a plan.

    Parameters
    ----------
    start : float
        The reading [canonical unit].
    dosed : array, shape (n,)
        Rise by dosing until each instant, as planned [canonical unit].
    used : array, shape (n,)
        Fall by use until each instant, as planned [canonical unit].
    spread : Spread
        Standard deviations of the five sources.

    Returns
    -------
    tuple of arrays, each of shape (n,)
        The 5th and the 95th percentile [canonical unit].
    """
    z = _points()
    # Factors stay positive: a volume, a strength or a flow below a twentieth is a wrong entry.
    factor = np.maximum(1.0 + spread.strength * z[:, 2], 0.05) * np.maximum(1.0 + spread.pump * z[:, 3], 0.05)
    factor = factor / np.maximum(1.0 + spread.volume * z[:, 0], 0.05)
    first = start + spread.reading * z[:, 1]
    # One row per instant: the samples of a row lie together in memory, which halves the time.
    values = first[None, :] + np.outer(dosed, factor)
    values -= np.outer(used, 1.0 + spread.use * z[:, 4])
    low = round(0.05 * (SAMPLES - 1))
    values.partition((low, SAMPLES - 1 - low), axis=1)
    return values[:, low], values[:, SAMPLES - 1 - low]


def shares(dosed: float, used: float, spread: Spread) -> dict[str, float]:
    """Return each source's share of the variance at one instant.

    Parameters
    ----------
    dosed : float
        Rise by dosing until then [canonical unit].
    used : float
        Fall by use until then [canonical unit].
    spread : Spread
        Standard deviations of the five sources.

    Returns
    -------
    dict of str to float
        Share of the variance by source [1]; they add to one, or are all zero without spread.
    """
    parts = {
        "volume": (dosed * spread.volume) ** 2,
        "reading": spread.reading**2,
        "strength": (dosed * spread.strength) ** 2,
        "pump": (dosed * spread.pump) ** 2,
        "use": (used * spread.use) ** 2,
    }
    total = math.fsum(parts.values())
    return {name: part / total if total > 0.0 else 0.0 for name, part in parts.items()}
