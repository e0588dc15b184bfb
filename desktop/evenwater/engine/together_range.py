"""When a value leaves a range, exactly, through stretches of constant conditions."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from evenwater.engine.balance import after
from evenwater.engine.exchange_course import Stretch

BELOW, ABOVE = "below", "above"


@dataclass(frozen=True)
class Leaving:
    """A value leaves a range on its ``side``, ``BELOW`` or ``ABOVE``, after ``day`` [day]; at once when it is outside already."""

    day: float
    side: str


def leaves(start: float, row: int, parts: Sequence[Stretch], ends: tuple[float, float], until: float) -> Leaving | None:
    """Return when a value leaves a range for the first time.

    Parameters
    ----------
    start : float
        The value now [canonical unit].
    row : int
        Its place among the values of the stretches.
    parts : sequence of Stretch
        The conditions in order.
    ends : tuple of float
        Lower and upper end of the range [canonical unit], both inside.
    until : float
        How far to look [day].

    Returns
    -------
    Leaving or None
        None where it stays inside.
    """
    value = start
    for part, next_begins in zip(parts, (*(p.begin for p in parts[1:]), until), strict=True):
        value += float(part.jump[row])
        gain, loss = float(part.gain[row]), float(part.loss[row])
        if part.begin >= until:
            return None
        outside = _side(value, ends)
        if outside:
            return Leaving(part.begin, outside)
        over = min(next_begins, until)
        last = float(after(value, over - part.begin, gain, loss))
        outside = _side(last, ends)
        if outside:
            bound = ends[0] if outside == BELOW else ends[1]
            return Leaving(part.begin + _reaches(value, bound, gain, loss), outside)
        value = last
    return None


def _side(value: float, ends: tuple[float, float]) -> str:
    low, high = ends
    # What lies on the end within binary noise is inside.
    noise = 1e-9 * max(abs(low), abs(high))
    return BELOW if value < low - noise else ABOVE if value > high + noise else ""


def _reaches(value: float, bound: float, gain: float, loss: float) -> float:
    """Return after how long a value reaches a bound that it passes [day]."""
    if value == bound:
        return 0.0
    # C(t) = bound solved for t; log1p holds where the loss is tiny beside the gain.
    slope = gain - loss * bound
    if loss > 0.0 and slope != 0.0:
        share = loss * (bound - value) / slope
        if share > -1.0:
            return math.log1p(share) / loss
    return (bound - value) / gain
