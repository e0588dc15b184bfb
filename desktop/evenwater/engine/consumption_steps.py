"""What happens to a value between instants: doses raise it, exchanges thin it, use takes from it.

From one instant to the next the value follows ``kept * value - taken * use + gained`` exactly, since doses and exchanges
are pulses and use is steady in between; use that wanders adds a spread that grows with time (an integrated random walk:
Harvey 1989, Forecasting, structural time series models and the Kalman filter, chapter 4). At one instant a reading comes first, then
an exchange, then a dose.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Log:
    """What was done to the water, in order of time, as days since the same origin as the readings.

    ``dose_days`` [day] with ``rises`` [canonical unit], shape (d,); ``exchange_days`` [day] with the ``shares`` of the
    volume [1] and ``new_values`` of the new water [canonical unit], shape (e,).
    """

    dose_days: Floats
    rises: Floats
    exchange_days: Floats
    shares: Floats
    new_values: Floats


@dataclass(frozen=True)
class Steps:
    """The way from the instant before to each instant, every field of shape (n,) or (rows, n).

    ``days`` [day] long; ``kept`` [1], ``taken`` [day] and ``gained`` [canonical unit] as in the module's words;
    ``spread_value`` [day**3], ``spread_both`` [day**2] and ``spread_use`` [day] are the covariance of value and use for
    each unit of the variance that use gains in a day. The way to the first instant is none.
    """

    days: Floats
    kept: Floats
    taken: Floats
    gained: Floats
    spread_value: Floats
    spread_both: Floats
    spread_use: Floats


def steps(times: Floats, log: Log) -> Steps:
    """Return the ways between instants.

    Parameters
    ----------
    times : array, shape (n,)
        Instants in order; equal ones may stand side by side [day].
    log : Log
        Doses and exchanges.

    Returns
    -------
    Steps
        Each field of shape (n,).
    """
    days = np.diff(times, prepend=times[0])
    dosed = np.concatenate([[0.0], np.cumsum(log.rises)])
    until = np.searchsorted(log.dose_days, times, side="left")
    found = Steps(
        days=days,
        kept=np.ones_like(days),
        taken=days.copy(),
        gained=np.diff(dosed[until], prepend=dosed[until[0]]),
        spread_value=days**3 / 3.0,
        spread_both=-(days**2) / 2.0,
        spread_use=days.copy(),
    )
    # Where water was exchanged on the way, the way is put together piece by piece.
    into = np.searchsorted(times, log.exchange_days, side="right")
    for index in np.unique(into[(into > 0) & (into < len(times))]):
        _with_exchanges(found, int(index), times, log, np.flatnonzero(into == index), dosed)
    return found


def _with_exchanges(
    found: Steps, index: int, times: Floats, log: Log, which: npt.NDArray[np.intp], dosed: Floats
) -> None:
    kept, taken, gained, value, both, use = 1.0, 0.0, 0.0, 0.0, 0.0, 0.0
    here = float(times[index - 1])
    given = int(np.searchsorted(log.dose_days, here, side="left"))
    ends = [*((float(log.exchange_days[w]), float(log.shares[w]), float(log.new_values[w])) for w in which)]
    for end, share, new in [*ends, (float(times[index]), 0.0, 0.0)]:
        days = end - here
        until = int(np.searchsorted(log.dose_days, end, side="left"))
        gained += float(dosed[until] - dosed[given])
        taken += days
        value += -2.0 * days * both + days * days * use + days**3 / 3.0
        both -= days * use + days * days / 2.0
        use += days
        left = 1.0 - share
        kept, taken, gained = left * kept, left * taken, left * gained + share * new
        value, both = left * left * value, left * both
        here, given = end, until
    found.kept[index], found.taken[index], found.gained[index] = kept, taken, gained
    found.spread_value[index], found.spread_both[index], found.spread_use[index] = value, both, use


def begin(times: Floats, log: Log) -> tuple[float, float | None]:
    """Return where a record begins.

    Parameters
    ----------
    times : array, shape (n,)
        Instants of the readings, in order [day].
    log : Log
        Doses and exchanges.

    Returns
    -------
    tuple of (float, float or None)
        The instant [day], and the value then when it is known without a test [canonical unit]: after all of the water was
        new; else the first reading's instant and None.
    """
    whole = np.flatnonzero((log.shares >= 1.0) & (log.exchange_days < times[0]))
    if len(whole) == 0:
        return float(times[0]), None
    return float(log.exchange_days[whole[-1]]), float(log.new_values[whole[-1]])
