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


# Generator of the lattice below: among the odd numbers, the one whose 90 % bands stay nearest to those of
# very many random draws over ordinary spreads (width within 7 %, on average 0.1 %).
_GENERATOR = 441


@lru_cache(maxsize=1)
def _points() -> Floats:
    """Return standard normal points, shape (SAMPLES, 5), from a rank-1 lattice (Korobov 1959).

    No randomness, so the same question always has the same band.
    """
    inverse = NormalDist().inv_cdf
    columns = []
    for power in range(len(SOURCES)):
        factor = pow(_GENERATOR, power, SAMPLES)
        columns.append([inverse((number * factor % SAMPLES + 0.5) / SAMPLES) for number in range(SAMPLES)])
    points = np.asarray(columns).T
    # Column spreads made exact, so that a straight line has exactly its own band.
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
