"""How far off a pump can be over a while: the worst error in any window, against the length of the window.

Source: IEC 60601-2-24, the trumpet curve of infusion pumps, as far as users' manuals give it: equal sample intervals, windows of
1, 2, 5, 11, 19 and 31 min, errors of the mean flow in a window over the flow that is set. A short window holds few turns of the
rollers, so a short dose is less accurate than the mean.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import accumulate

WINDOWS_MIN = (1.0, 2.0, 5.0, 11.0, 19.0, 31.0)


@dataclass(frozen=True)
class Mouth:
    """The worst errors over all windows of one length [min]: the lowest and the highest, over the flow that is set [1]."""

    window_min: float
    low: float
    high: float


def trumpet(
    amounts: Sequence[float], every_min: float, flow: float, windows: Sequence[float] = WINDOWS_MIN
) -> tuple[Mouth, ...]:
    """Return the worst errors for each length of window that the record holds.

    Parameters
    ----------
    amounts : sequence of float
        What was delivered in each sample interval [mL].
    every_min : float
        The sample interval, above zero [min].
    flow : float
        The flow that is set, above zero [mL/min].
    windows : sequence of float
        Lengths of windows [min]; those that are no whole number of intervals, or longer than the record, are left out.

    Returns
    -------
    tuple of Mouth
        Worst errors, in the order of the windows.
    """
    sums = [0.0, *accumulate(amounts)]
    found = []
    for window in windows:
        count = round(window / every_min)
        if not 1 <= count <= len(amounts) or not math.isclose(count * every_min, window, rel_tol=1e-9):
            continue
        errors = [(sums[n + count] - sums[n]) / (window * flow) - 1.0 for n in range(len(amounts) - count + 1)]
        found.append(Mouth(window, min(errors), max(errors)))
    return tuple(found)
