"""Student's t distribution, for the mean of a few runs: what a 95 % interval needs beyond the normal distribution.

Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.1 (the distribution as an incomplete beta function) and
26.5.8 (its continued fraction); JCGM 100:2008, table G.2, has the quantiles to two places.
"""

from __future__ import annotations

import math
from functools import lru_cache
from statistics import NormalDist

# From here on the normal distribution is the same to four digits.
_NORMAL_FROM = 20_000
_TINY = 1e-300


@lru_cache(maxsize=256)
def quantile(confidence: float, freedom: int) -> float:
    """Return how many standard deviations of the mean a two-sided interval reaches to each side.

    Parameters
    ----------
    confidence : float
        Confidence of the interval, above 0 and below 1 [1].
    freedom : int
        Degrees of freedom, one or more: the runs less one.

    Returns
    -------
    float
        Coverage factor [1].
    """
    normal = NormalDist().inv_cdf((1.0 + confidence) / 2.0)
    if freedom >= _NORMAL_FROM:
        return normal
    low, high = 0.0, normal
    while _inside(high, freedom) < confidence:
        low, high = high, 2.0 * high
    for _ in range(80):
        middle = (low + high) / 2.0
        if _inside(middle, freedom) < confidence:
            low = middle
        else:
            high = middle
    return (low + high) / 2.0


def _inside(t: float, freedom: int) -> float:
    """Return the probability between -t and t."""
    return 1.0 - _beta(freedom / (freedom + t * t), freedom / 2.0, 0.5)


def _beta(x: float, a: float, b: float) -> float:
    """Return the regularised incomplete beta function, with x above 0 and below 1."""
    if x > (a + 1.0) / (a + b + 2.0):
        return 1.0 - _beta(1.0 - x, b, a)
    log = math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b) + a * math.log(x) + b * math.log1p(-x)
    return math.exp(log) / (a * _fraction(x, a, b))


def _fraction(x: float, a: float, b: float) -> float:
    """Return the continued fraction's denominator, by Lentz's method."""
    value, c, d = 1.0, 1.0, 0.0
    for step in range(1, 400):
        half = step // 2
        if step % 2:
            term = -(a + half) * (a + b + half) * x / ((a + 2 * half) * (a + 2 * half + 1))
        else:
            term = half * (b - half) * x / ((a + 2 * half - 1) * (a + 2 * half))
        d = 1.0 / (1.0 + term * d or _TINY)
        c = 1.0 + term / c or _TINY
        value *= c * d
        if abs(c * d - 1.0) < 1e-15:
            break
    return value
