"""The mass balance of a tank, solved exactly, segment by segment.

With constant volume V (doses replace top-off), a steady dose rate q of a stock with strength s,
use u per day, first-order loss k and an exchange of Q per day with new water of value C_new::

    dC/dt = q*s/V - u - k*C - (Q/V)*(C - C_new)

which is linear with constant coefficients inside a segment; a pulse is a jump s*v/V.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]

# Below this [1/day] a loss would change nothing in the age of the universe, and gain over loss overflows.
NO_LOSS = 1e-290


@dataclass(frozen=True)
class Segment:
    """A stretch of time with constant conditions.

    ``days`` [day] long; ``gain`` is what dosing and new water add and use takes away
    [canonical unit per day], ``loss`` the first-order share lost per day [1/day].
    """

    days: float
    gain: float
    loss: float = 0.0


def segment(
    days: float,
    dosed: float,
    use: float,
    loss: float = 0.0,
    exchange: float = 0.0,
    new_water: float = 0.0,
) -> Segment:
    """Return the segment for a set of conditions.

    Parameters
    ----------
    days : float
        Length [day].
    dosed : float
        What dosing adds, q*s/V [canonical unit per day].
    use : float
        What the animals use [canonical unit per day].
    loss : float
        First-order loss [1/day].
    exchange : float
        Share of the volume exchanged per day, Q/V [1/day].
    new_water : float
        Value of the new water [canonical unit].

    Returns
    -------
    Segment
        The same as gain and loss.
    """
    return Segment(days, dosed - use + exchange * new_water, loss + exchange)


def after(start: float, days: float | Floats, gain: float, loss: float = 0.0) -> float | Floats:
    """Return the value after some time of constant conditions.

    Parameters
    ----------
    start : float
        Value at the beginning [canonical unit].
    days : float or array
        Time since then [day], any shape.
    gain : float
        Constant gain [canonical unit per day].
    loss : float
        First-order loss [1/day].

    Returns
    -------
    float or array
        The value [canonical unit], in the shape of ``days``.
    """
    if abs(loss) < NO_LOSS:
        return start + gain * days
    # expm1 keeps full precision where loss times time is tiny.
    gone = -np.expm1(-loss * np.asarray(days, dtype=np.float64))
    value = start + (gain / loss - start) * gone
    return float(value) if value.ndim == 0 else value


def steady(gain: float, loss: float) -> float:
    """Return the value at which a system with loss settles.

    Parameters
    ----------
    gain : float
        Constant gain [canonical unit per day].
    loss : float
        First-order loss [1/day], above zero.

    Returns
    -------
    float
        Steady value [canonical unit].

    Raises
    ------
    ValueError
        When there is no loss: the value then never settles.
    """
    if loss <= 0.0:
        raise ValueError("a system without loss or exchange does not settle")
    return gain / loss


def trajectory(start: float, segments: Sequence[Segment], times: Floats) -> Floats:
    """Return the value at given times through a row of segments; the last one goes on for ever.

    Parameters
    ----------
    start : float
        Value at time zero [canonical unit].
    segments : sequence of Segment
        The conditions in order, at least one.
    times : array, shape (n,)
        Times since the start [day], not negative.

    Returns
    -------
    array, shape (n,)
        The values [canonical unit].
    """
    values = np.empty_like(times, dtype=np.float64)
    begin, value = 0.0, start
    for index, part in enumerate(segments):
        last = index == len(segments) - 1
        inside = times >= begin if last else (times >= begin) & (times < begin + part.days)
        values[inside] = after(value, times[inside] - begin, part.gain, part.loss)
        value = float(after(value, part.days, part.gain, part.loss))
        begin += part.days
    return values


def pulse(dose_ml: float, per_ml: float, volume_l: float) -> float:
    """Return the jump that one dose makes.

    Parameters
    ----------
    dose_ml : float
        Dose [mL].
    per_ml : float
        Strength of the stock [amount per mL].
    volume_l : float
        Net volume [L].

    Returns
    -------
    float
        Rise [canonical unit].
    """
    return dose_ml * per_ml / volume_l
