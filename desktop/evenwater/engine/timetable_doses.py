"""How a day's total becomes doses a pump can be set to: whole steps, and what is left carried into the next day.

All of it in fractions: a figure is taken to twelve significant digits, which undoes binary noise and nothing else.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from decimal import ROUND_HALF_EVEN, Context, Decimal
from fractions import Fraction
from functools import lru_cache
from itertools import pairwise

from evenwater.engine.timetable_question import TimedPump

_MINUTE_S = 60


@lru_cache(maxsize=1024)
def exact(value: float) -> Fraction:
    """Return a figure as the fraction that was meant.

    Parameters
    ----------
    value : float
        Any finite figure [any unit].

    Returns
    -------
    Fraction
        The same to twelve significant digits.
    """
    return Fraction(Decimal(value).normalize(Context(prec=12, rounding=ROUND_HALF_EVEN)))


@dataclass(frozen=True)
class Split:
    """A day's total in doses, counted in steps of the pump.

    ``wanted`` steps a day, perhaps not whole, in ``count`` doses; each of ``least`` steps or one more.
    """

    wanted: Fraction
    count: int

    @property
    def least(self) -> int:
        """Steps in the smaller doses; zero when some dose would be none."""
        return math.floor(self.wanted) // self.count

    @property
    def largest(self) -> int:
        """Steps in the largest dose of any day."""
        return math.ceil(self.wanted / self.count)

    @property
    def ordinary(self) -> tuple[int, ...]:
        """Steps of each dose of an ordinary day, the larger ones spread evenly."""
        whole = math.floor(self.wanted)
        sums = [whole * k // self.count for k in range(self.count + 1)]
        return tuple(after - before for before, after in pairwise(sums))

    @property
    def carries(self) -> bool:
        """Whether some days have one step more; it is in their first dose, which is always one of the smaller."""
        return self.wanted.denominator > 1

    @property
    def repeats_after(self) -> int:
        """Days after which the sum is exact [day]."""
        return self.wanted.denominator

    def has_extra(self, day: int) -> bool:
        """Return whether a day, counted from zero, has the extra step: what is owed by its end makes a whole one.

        Parameters
        ----------
        day : int
            A day of the round.

        Returns
        -------
        bool
            Whether a dose of it is a step larger.
        """
        owed = math.floor(self.wanted * (day + 1)) - math.floor(self.wanted * day)
        return owed > math.floor(self.wanted)

    def extra_days(self, most: int) -> tuple[int, ...]:
        """Return the days of the round, counted from one, that have the extra step; the first ``most`` of a long round.

        Parameters
        ----------
        most : int
            So many are named at the most.

        Returns
        -------
        tuple of int
            Days, from 1.
        """
        owed = self.wanted - math.floor(self.wanted)
        if not owed:
            return ()
        # The n-th extra step is due on the day by whose end n whole steps are owed.
        return tuple(math.ceil(n / owed) for n in range(1, min(owed.numerator, most) + 1))


def split(pump: TimedPump, count: int) -> Split:
    """Return a pump's day in so many doses.

    Parameters
    ----------
    pump : TimedPump
        The pump.
    count : int
        Doses in a day.

    Returns
    -------
    Split
        Steps of each dose.
    """
    return Split(exact(pump.per_day_ml) / exact(pump.step_ml), count)


def takes_s(pump: TimedPump, steps: int) -> Fraction:
    """Return how long a dose of so many steps runs, in seconds.

    Parameters
    ----------
    pump : TimedPump
        The pump.
    steps : int
        Steps of the pump in a dose.

    Returns
    -------
    Fraction
        Running time [s], exact.
    """
    return steps * exact(pump.step_ml) * _MINUTE_S / exact(pump.flow_ml_per_min)


def fits(pump: TimedPump, count: int) -> str:
    """Return what a number of doses goes against: ``"smallest"``, ``"largest"``, or nothing.

    Parameters
    ----------
    pump : TimedPump
        The pump.
    count : int
        Doses in a day.

    Returns
    -------
    str
        Which bound of the pump it passes.
    """
    doses = split(pump, count)
    step = exact(pump.step_ml)
    if doses.least < 1 or doses.least * step < exact(pump.smallest_ml):
        return "smallest"
    if pump.largest_ml is not None and doses.largest * step > exact(pump.largest_ml):
        return "largest"
    return ""
