"""From a computed pace to doses a pump can be set to: one rounding, downwards, remainder reported."""

from __future__ import annotations

import math
from dataclasses import dataclass

from evenwater.engine.quantities import round_down

# A pump's step when the keeper gave none: a tenth of a millilitre, finer for doses below one, so
# that a strong stock in small doses is not rounded away. Common practice, no source.
COARSEST_STEP_ML = 0.1


@dataclass(frozen=True)
class Schedule:
    """What is set on the pump.

    ``dose_ml`` [mL] every ``interval_days`` [day], ``count`` times, the first one interval after
    the start; then ``upkeep_ml`` [mL] at the same interval. ``shortfall`` is what rounding leaves
    to the target [canonical unit].
    """

    dose_ml: float
    count: int
    interval_days: float
    per_day: int
    step_ml: float
    run_time_s: float
    upkeep_ml: float
    upkeep_run_time_s: float
    shortfall: float

    @property
    def lasts_days(self) -> float:
        """Time until the last dose of the correction [day]."""
        return self.count * self.interval_days

    @property
    def total_ml(self) -> float:
        """All doses of the correction, the sum of the rounded ones [mL]."""
        return round(self.count * self.dose_ml, 9)

    @property
    def in_24_hours_ml(self) -> float:
        """The doses of 24 hours, the sum of the rounded ones [mL]."""
        return round(self.per_day * self.dose_ml, 9)


def default_step(dose_ml: float) -> float:
    """Return the step to round to when the pump's own is not known.

    Parameters
    ----------
    dose_ml : float
        The dose before rounding [mL], above zero.

    Returns
    -------
    float
        A power of ten [mL], a tenth at most, that keeps two significant digits.
    """
    exponent = math.floor(math.log10(dose_ml)) - 1
    return min(COARSEST_STEP_ML, float(f"1e{exponent}"))


@dataclass(frozen=True)
class Terms:
    """What the schedule is made from: the climb [canonical unit], use per day, rise per mL."""

    climb: float
    use: float
    per_ml: float
    per_day: int
    flow_ml_per_min: float
    step_ml: float
    smallest_ml: float = 0.0


def make(dose_ml: float, terms: Terms) -> Schedule | None:
    """Round a dose down to the pump's step and count how many of it reach the target.

    Parameters
    ----------
    dose_ml : float
        Computed single dose [mL].
    terms : Terms
        Climb, use, rise per millilitre, doses per day, flow, step and smallest accurate dose.

    Returns
    -------
    Schedule or None
        None when the rounded dose is nothing, or does not even make good what is used.
    """
    interval = 1.0 / terms.per_day
    fall = terms.use * interval
    dose = round_down(dose_ml, terms.step_ml)
    net = dose * terms.per_ml - fall
    # A thousandth of a millionth of a dose is binary noise, not a missing dose.
    count = math.floor(terms.climb / net + 1e-9) if net > 0.0 else 0
    if count == 0:
        if net <= 0.0:
            return None
        # The whole climb is less than one dose: give one dose that just fits.
        dose = round_down((terms.climb + fall) / terms.per_ml, terms.step_ml)
        net = dose * terms.per_ml - fall
        count = 1
        if net <= 0.0:
            return None
    upkeep = round_down(fall / terms.per_ml, terms.step_ml)
    if upkeep < terms.smallest_ml:
        # A dose the pump cannot give accurately is not ordered at all.
        upkeep = 0.0
    per_second = terms.flow_ml_per_min / 60.0
    return Schedule(
        dose_ml=dose,
        count=count,
        interval_days=interval,
        per_day=terms.per_day,
        step_ml=terms.step_ml,
        run_time_s=dose / per_second,
        upkeep_ml=upkeep,
        upkeep_run_time_s=upkeep / per_second,
        shortfall=max(0.0, terms.climb - count * net),
    )
