"""What is in a jug at any instant, and until when it lasts: doses are counted one by one, never by a mean rate."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

# Common practice, no source: below so many days a jug is low and a batch is mixed (H24).
LOW_DAYS = 5.0
# Further ahead nobody needs a date.
LONGEST = timedelta(days=3650)
_DAY_US = 86_400_000_000
_MICROSECOND = timedelta(microseconds=1)
# Sums of decimal doses miss their decimal sum by binary noise; what is left of a jug is compared a little above it.
_NOISE = 1e-9


@dataclass(frozen=True)
class Draw:
    """What one pump takes: ``dose_ml`` [mL] at ``first`` and so many times a day after it, evenly spread."""

    name: str
    dose_ml: float
    per_day: int
    first: datetime

    @property
    def per_day_ml(self) -> float:
        """What is taken in a day [mL]."""
        return self.dose_ml * self.per_day

    def doses(self, since: datetime, until: datetime) -> int:
        """Return how many doses fall after one instant and not after another.

        Parameters
        ----------
        since, until : datetime
            Instants with zone; a dose right at ``since`` is not counted, one right at ``until`` is.

        Returns
        -------
        int
            Number of doses; zero when ``until`` is the earlier of the two.
        """
        return max(0, self._given(until) - self._given(since))

    def last(self, until: datetime) -> datetime | None:
        """Return the instant of the last dose that is not after another instant, or None before the first.

        Parameters
        ----------
        until : datetime
            An instant with its zone.

        Returns
        -------
        datetime or None
            In UTC.
        """
        count = self._given(until)
        if count == 0:
            return None
        return self.first.astimezone(UTC) + timedelta(microseconds=-(-(count - 1) * _DAY_US // self.per_day))

    def _given(self, until: datetime) -> int:
        # Whole microseconds, so that the hundredth of a day's doses falls as exactly as the first; in UTC, since the
        # difference of two datetimes of one zone is one of wall clocks.
        passed = (until.astimezone(UTC) - self.first.astimezone(UTC)) // _MICROSECOND
        return 0 if passed < 0 else passed * self.per_day // _DAY_US + 1


@dataclass(frozen=True)
class Filled:
    """A jug as it was read: ``ml`` [mL] in it at an instant, of which ``unreachable_ml`` [mL] lie below the pump's intake."""

    at: datetime
    ml: float
    unreachable_ml: float = 0.0

    @property
    def usable_ml(self) -> float:
        """What pumps can reach [mL]."""
        return max(0.0, self.ml - self.unreachable_ml)


@dataclass(frozen=True)
class Forecast:
    """A jug as it is now and until when it lasts.

    ``level_ml`` [mL] is in it now, ``per_day_ml`` [mL] is taken in a day. ``last_full`` is the instant of the last dose that is whole,
    ``refill_before`` that of the first that is not; both None when the jug lasts ten years or nothing is taken.
    """

    now: datetime
    level_ml: float
    per_day_ml: float
    last_full: datetime | None
    refill_before: datetime | None

    @property
    def days_left(self) -> float | None:
        """Days from now until the last whole dose [day]; zero when that was given."""
        if self.last_full is None:
            return None
        return max(0.0, (self.last_full - self.now) / timedelta(days=1))

    @property
    def empty(self) -> bool:
        """Whether the next dose is not whole, or was not."""
        return self.last_full is not None and self.last_full <= self.now

    @property
    def low(self) -> bool:
        """Whether the jug lasts less than five days (H24)."""
        return self.days_left is not None and self.days_left < LOW_DAYS


def drawn_ml(draws: Sequence[Draw], since: datetime, until: datetime) -> float:
    """Return what pumps take between two instants.

    Parameters
    ----------
    draws : sequence of Draw
        The pumps of one jug.
    since, until : datetime
        Instants with zone; a dose right at ``since`` is not counted, one right at ``until`` is.

    Returns
    -------
    float
        Volume [mL].
    """
    return math.fsum(draw.dose_ml * draw.doses(since, until) for draw in draws)


def forecast(filled: Filled, draws: Sequence[Draw], now: datetime) -> Forecast:
    """Return what is in a jug now and until when it lasts.

    Parameters
    ----------
    filled : Filled
        The level as read; a reading that is ahead of ``now`` counts as one of now.
    draws : sequence of Draw
        The pumps that draw from it.
    now : datetime
        The present, with zone.

    Returns
    -------
    Forecast
        Level, last whole dose and first one that is missing. From the first dose that does not find enough, nothing more is
        taken: what a pump draws then is air.
    """
    moment = max(now, filled.at).astimezone(UTC)
    missing = _first_missing(filled, draws)
    until = moment if missing is None else min(moment, missing - _MICROSECOND)
    given = [last for draw in draws if missing is not None and (last := draw.last(missing - _MICROSECOND)) is not None]
    return Forecast(
        now=moment,
        level_ml=max(0.0, filled.ml - drawn_ml(draws, filled.at, until)),
        per_day_ml=math.fsum(draw.per_day_ml for draw in draws),
        last_full=None if missing is None else max([filled.at.astimezone(UTC), *given]),
        refill_before=missing,
    )


def _first_missing(filled: Filled, draws: Sequence[Draw]) -> datetime | None:
    """Return the instant of the first dose that does not find its whole volume in the jug."""
    begin = filled.at.astimezone(UTC)
    most = filled.usable_ml * (1.0 + _NOISE) + _NOISE
    low, high = 0, LONGEST // _MICROSECOND
    if drawn_ml(draws, begin, begin + LONGEST) <= most:
        return None
    while high - low > 1:
        middle = (low + high) // 2
        if drawn_ml(draws, begin, begin + timedelta(microseconds=middle)) > most:
            high = middle
        else:
            low = middle
    return begin + timedelta(microseconds=high)


def doses_lost(line: float, dose_ml: float) -> int:
    """Return how many doses do not arrive whole when an empty line is not primed.

    Parameters
    ----------
    line : float
        What the line holds [mL], as ``pump_line.dead_volume`` has it.
    dose_ml : float
        One dose [mL], more than nothing.

    Returns
    -------
    int
        Number of doses; they are in the line and not in the water, and are not made up for.
    """
    return math.ceil(line / dose_ml - _NOISE)
