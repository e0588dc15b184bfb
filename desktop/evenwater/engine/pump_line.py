"""The line between jug and tank: what it holds, and how long the pump runs until the liquid comes out at its end."""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Priming:
    """What the line holds [mL], how long the pump fills it at its flow, and at the low end of that flow [s]."""

    dead_volume_ml: float
    seconds: float
    at_most_seconds: float


def dead_volume(bore_mm: float, length_mm: float) -> float:
    """Return what a line holds: a quarter of pi times bore squared times length.

    Parameters
    ----------
    bore_mm : float
        Inside diameter of the tubing [mm].
    length_mm : float
        Its whole length, both sides of the pump [mm].

    Returns
    -------
    float
        Volume [mL].
    """
    return math.pi / 4.0 * bore_mm**2 * length_mm / 1000.0


def priming(bore_mm: float, length_mm: float, flow: float, low: float) -> Priming:
    """Return how long a pump runs to fill its line after a refill.

    Parameters
    ----------
    bore_mm : float
        Inside diameter of the tubing [mm].
    length_mm : float
        Its whole length [mm].
    flow : float
        The pump's flow, above zero [mL/min].
    low : float
        The low end of what the flow may be; where that is nothing, the flow itself counts [mL/min].

    Returns
    -------
    Priming
        Volume and running times.
    """
    held = dead_volume(bore_mm, length_mm)
    return Priming(held, 60.0 * held / flow, 60.0 * held / (low if low > 0.0 else flow))
