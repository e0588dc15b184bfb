"""What the water will do: the series of the ramp, from the doses that are really given."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from evenwater.engine import uncertainty, water_limits
from evenwater.engine.balance import segment, trajectory
from evenwater.engine.caps import allowed_rise
from evenwater.engine.correction import Answer, spread

Floats = npt.NDArray[np.float64]

# All lines but the edges of the band are straight between their bends, which are instants of their own; the edges bend so
# gently that straight lines between so many instants are within a hundredth of the chart's height.
INSTANTS = 24
# How much of the upkeep is drawn after the ramp: half as long again, at least half a day, at most a
# week, so that the bend stays easy to see.
_TAIL_SHARE, _TAIL_LEAST, _TAIL_MOST = 0.55, 0.5, 7.0


# pH bends so gently that straight lines between so many instants look the same.
WATER_POINTS = 9


@dataclass(frozen=True)
class WaterAlong:
    """The carbonate side along the ramp, all of shape (k,), against ``days`` [day].

    ``ph`` (NBS) is before each dose with gas exchange caught up, ``ph_after`` at once after one; ``saturation`` is that
    with aragonite after a dose [-].
    """

    days: Floats
    ph: Floats
    ph_after: Floats
    saturation: Floats


@dataclass(frozen=True)
class Projection:
    """Series against time since the start.

    ``days`` [day] and the values [canonical unit] have shape (n,); ``doses_at`` [day] and
    ``doses_ml`` [mL] have shape (m,). ``fastest_days`` and ``fastest`` are the two ends of the
    steepest allowed line.
    """

    days: Floats
    plan: Floats
    low: Floats
    high: Floats
    uptake_stops: Floats
    nothing: Floats
    doses_at: Floats
    doses_ml: Floats
    fastest_days: Floats
    fastest: Floats
    ramp_days: float
    water: WaterAlong | None


def project(answer: Answer) -> Projection:
    """Project a plan through its ramp and the first stretch of upkeep.

    Parameters
    ----------
    answer : Answer
        The plan.

    Returns
    -------
    Projection
        Steady lines through the doses; the value right after each dose lies on the plan's line.
    """
    q, doses = answer.question, answer.doses
    ramp = doses.lasts_days
    tail = min(max(_TAIL_SHARE * ramp, _TAIL_LEAST), _TAIL_MOST)
    ends = q.start / q.use if q.use > 0.0 else np.inf
    bends = [ramp, ends] if ends < ramp + tail else [ramp]
    # Not numpy's unique: its first call loads all of the masked arrays.
    days = np.array(sorted({*np.linspace(0.0, ramp + tail, INSTANTS).tolist(), *bends}))
    per_day = doses.per_day * answer.per_ml
    rising, keeping = doses.dose_ml * per_day, doses.upkeep_ml * per_day
    plan = trajectory(q.start, (segment(ramp, rising, q.use), segment(tail, keeping, q.use)), days)
    dosed, used = np.where(days <= ramp, rising * days, rising * ramp + keeping * (days - ramp)), q.use * days
    low, high = uncertainty.band(q.measured, q.untested + dosed, used, spread(q))
    count = doses.count + int(tail * doses.per_day) if doses.upkeep_ml > 0.0 else doses.count
    at = np.arange(1, count + 1, dtype=np.float64) * doses.interval_days
    given = np.where(np.arange(count) < doses.count, doses.dose_ml, doses.upkeep_ml)
    climb_days = (q.target - q.start) / allowed_rise(q)
    return Projection(
        days=days,
        plan=plan,
        low=np.maximum(low, 0.0),
        high=high,
        uptake_stops=q.start + dosed,
        nothing=np.maximum(q.start - used, 0.0),
        doses_at=at,
        doses_ml=given,
        fastest_days=np.array([0.0, climb_days]),
        fastest=np.array([q.start, q.target]),
        ramp_days=ramp,
        water=water_along(answer, tail),
    )


def water_along(answer: Answer, tail_days: float) -> WaterAlong | None:
    """Return what pH and saturation do along the ramp and in the stretch of upkeep after it.

    Parameters
    ----------
    answer : Answer
        The plan.
    tail_days : float
        Length of the stretch of upkeep [day].

    Returns
    -------
    WaterAlong or None
        None when the additive takes no part in it.
    """
    tank, doses = answer.tank, answer.doses
    if tank is None:
        return None
    at_once = water_limits.doses_in_an_hour(doses.per_day) * answer.per_ml
    climb = answer.question.target - doses.shortfall - answer.question.start
    steps = np.linspace(0.0, 1.0, WATER_POINTS)
    befores = [tank.at(climb * float(step)) for step in steps]
    afters = [tank.after(base, doses.dose_ml * at_once) for base in befores]
    # At the target the smaller doses of upkeep keep it there.
    befores += [befores[-1]] * 2
    afters += [tank.after(befores[-1], doses.upkeep_ml * at_once)] * 2
    ramp = doses.lasts_days
    return WaterAlong(
        days=np.concatenate((steps * ramp, (ramp, ramp + tail_days))),
        ph=np.array([base.ph_nbs for base in befores]),
        ph_after=np.array([after.ph_nbs for after in afters]),
        saturation=np.array([after.saturation for after in afters]),
    )
