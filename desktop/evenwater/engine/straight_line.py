"""A straight line through points of known uncertainty by weighted least squares, with the uncertainty of what it says.

Source: JCGM 100:2008, H.3 (the line, its covariance, and what it says at another place), with a weight of one over the variance for
each point; the factor for points that scatter more than they should is that of Birge 1932 (Physical Review 40:207).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True)
class Fitted:
    """A line ``y = height + slope (x - middle)``; height and slope about the middle are uncorrelated.

    ``height_sd`` and ``slope_sd`` hold for points that scatter as their standard deviations say. ``scatter`` [1] is by how
    much they scatter more than that; None without a point to spare.
    """

    middle: float
    height: float
    slope: float
    height_sd: float
    slope_sd: float
    scatter: float | None

    def at(self, x: float) -> float:
        """Return the line's height at a place.

        Parameters
        ----------
        x : float
            The place [unit of x].

        Returns
        -------
        float
            Height [unit of y].
        """
        return self.height + self.slope * (x - self.middle)

    def sd_at(self, x: float) -> float:
        """Return the standard deviation of the height at a place, for points that scatter as they should.

        Parameters
        ----------
        x : float
            The place [unit of x].

        Returns
        -------
        float
            Standard deviation [unit of y].
        """
        return math.hypot(self.height_sd, self.slope_sd * (x - self.middle))

    @property
    def inflation(self) -> float:
        """By how much uncertainties are to be widened: where points scatter more than they should, never less than one [1]."""
        return max(1.0, self.scatter or 0.0)


def fit(x: Sequence[float], y: Sequence[float], sd: Sequence[float]) -> Fitted:
    """Draw the line.

    Parameters
    ----------
    x : sequence of float
        Places [unit of x].
    y : sequence of float
        Heights, as many [unit of y].
    sd : sequence of float
        Their standard deviations, above zero [unit of y].

    Returns
    -------
    Fitted
        The line.

    Raises
    ------
    ValueError
        When all points stand at one place, so that any slope fits.
    """
    weights = [1.0 / s**2 for s in sd]
    total = math.fsum(weights)
    middle = math.fsum(w * each for w, each in zip(weights, x, strict=True)) / total
    first = math.fsum(w * each for w, each in zip(weights, y, strict=True)) / total
    off = [each - middle for each in x]
    width = math.fsum(w * d * d for w, d in zip(weights, off, strict=True))
    if not width > 1e-24 * total * max(abs(each) for each in x) ** 2:
        raise ValueError("all points stand at one place")
    slope = math.fsum(w * d * (each - first) for w, d, each in zip(weights, off, y, strict=True)) / width
    left = [each - first - slope * d for d, each in zip(off, y, strict=True)]
    # Once more for what is left over: full precision also where heights are large against their scatter.
    rest = math.fsum(w * each for w, each in zip(weights, left, strict=True)) / total
    more = math.fsum(w * d * each for w, d, each in zip(weights, off, left, strict=True)) / width
    left = [each - rest - more * d for d, each in zip(off, left, strict=True)]
    spare = len(left) - 2
    squares = math.fsum(w * each * each for w, each in zip(weights, left, strict=True))
    return Fitted(
        middle=middle,
        height=first + rest,
        slope=slope + more,
        height_sd=1.0 / math.sqrt(total),
        slope_sd=1.0 / math.sqrt(width),
        scatter=math.sqrt(squares / spare) if spare > 0 else None,
    )
