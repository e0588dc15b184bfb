"""How a pump's flow changes with its running hours, what it gives now, and when it has left its tolerance.

Peristaltic tubing gives less as it wears. A line through the calibrations against running hours, each weighted by how well it
is known. Limits of 5 % (look at it) and 10 % (do not dose on with it): the flow accuracy and the alarms of the Generic Infusion Pump
requirements (FDA and University of Pennsylvania, 2009). Life of a head: common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise

from evenwater.engine.reasons import Reason
from evenwater.engine.straight_line import Fitted, fit

AMBER, RED = 0.05, 0.10
LIFE_HOURS = 650.0
PER_HOURS = 100.0
# The normal factor of a 95 % interval; each calibration comes with its own uncertainty.
COVER = 1.96
# Calibrations are dated to the hour at best.
_CLOCK_SLACK_H = 24.0
# No date is said beyond this.
_FARTHEST_DAYS = 3650.0


@dataclass(frozen=True)
class Calibrated:
    """A calibration: when, at how many running hours of the head [h], the flow and its standard uncertainty [mL/min]."""

    at: datetime
    hours: float
    flow: float
    sd: float


@dataclass(frozen=True)
class Leaves:
    """When a tolerance is left: running hours from now as the line has it, and at the earliest [h]; days at the usual use."""

    limit: float
    hours: float
    earliest_hours: float
    at: datetime | None
    earliest_at: datetime | None


@dataclass(frozen=True)
class Head:
    """A pump head: running hours [h], life [h], what is left [h], and when that is used up."""

    hours: float
    life: float
    left: float
    at: datetime | None


@dataclass(frozen=True)
class Wear:
    """What the calibrations say of a pump.

    ``drift`` per 100 running hours over ``reference`` with ``drift_half_width`` [1]; ``expected`` the flow at ``hours`` now
    with ``expected_half_width`` [mL/min]; ``leaves`` the tolerances that it will leave, empty where no drift can be told.
    """

    reference: float
    drift: float
    drift_half_width: float
    expected: float
    expected_half_width: float
    leaves: tuple[Leaves, ...]
    remarks: tuple[Reason, ...]

    @property
    def run_longer(self) -> float:
        """By which factor doses must run longer than at the reference flow to give the same volume [1]."""
        return self.reference / self.expected


def objections(earlier: Sequence[Calibrated], today: Calibrated, now: datetime) -> tuple[Reason, ...]:
    """Return why calibrations cannot be held against running hours.

    Parameters
    ----------
    earlier : sequence of Calibrated
        The calibrations before today's, in any order; reasons name them by their place, counted from one, as ``earlier.1.hours``.
    today : Calibrated
        Today's, with the running hours of today (``pump.hours``).
    now : datetime
        The present.

    Returns
    -------
    tuple of Reason
        Empty when there is nothing against it.
    """
    found = [
        Reason("calibrated_in_the_future", {"at": p.at}, f"earlier.{n}.at")
        for n, p in enumerate(earlier, start=1)
        if p.at > now
    ]
    if found:
        # With a wrong date the order of the others says nothing.
        return tuple(found)
    named = [*((p, f"earlier.{n}.hours") for n, p in enumerate(earlier, start=1)), (today, "pump.hours")]
    named.sort(key=lambda each: each[0].at)
    for (before, _), (after, path) in pairwise(named):
        ran, passed = after.hours - before.hours, (after.at - before.at) / timedelta(hours=1)
        params = {"before": before.hours, "after": after.hours, "passed": passed}
        if ran < 0.0:
            found.append(Reason("hours_run_back", params, path))
        elif ran > passed + _CLOCK_SLACK_H:
            found.append(Reason("hours_beyond_clock", params, path))
    return tuple(found)


def hours_per_day(points: Sequence[Calibrated]) -> float | None:
    """Return how long a pump has run in a day between its first and its last calibration.

    Parameters
    ----------
    points : sequence of Calibrated
        Calibrations in any order.

    Returns
    -------
    float or None
        Running hours per day [h/d]; None where less than a day lies between them, or it has not run.
    """
    first, last = min(points, key=_when), max(points, key=_when)
    days = (last.at - first.at) / timedelta(days=1)
    ran = last.hours - first.hours
    return ran / days if days >= 1.0 and ran > 0.0 else None


def head(hours: float, life: float, per_day: float | None, now: datetime) -> Head:
    """Return how much of a pump head's life is left.

    Parameters
    ----------
    hours : float
        Running hours of the head so far [h].
    life : float
        Running hours that a head lasts [h].
    per_day : float or None
        Running hours per day [h/d].
    now : datetime
        The present.

    Returns
    -------
    Head
        Hours left, none below zero, and the date where one can be said.
    """
    left = max(0.0, life - hours)
    return Head(hours, life, left, _date(now, left, per_day))


def wear(
    points: Sequence[Calibrated], hours: float, reference: float | None, per_day: float | None, now: datetime
) -> Wear | Reason:
    """Return what calibrations over time say of a pump.

    Parameters
    ----------
    points : sequence of Calibrated
        The calibrations, today's among them, in any order.
    hours : float
        Running hours of the head now [h].
    reference : float or None
        The flow that doses are reckoned with; the line's own at the first calibration where there is none [mL/min].
    per_day : float or None
        Running hours per day; as between the calibrations where it is not said [h/d].
    now : datetime
        The present.

    Returns
    -------
    Wear or Reason
        Drift, the flow expected now and when tolerances are left; or why no line can be drawn.
    """
    if len(points) < 2:
        return Reason("drift_needs_two", {"count": len(points)})
    try:
        line = fit([p.hours for p in points], [p.flow for p in points], [p.sd for p in points])
    except ValueError:
        return Reason("drift_same_hours", {"hours": points[0].hours})
    first = line.at(min(p.hours for p in points))
    against = first if reference is None else reference
    expected = line.at(hours)
    if against <= 0.0 or expected <= 0.0:
        return Reason("drift_unusable", {"flow": expected})
    drift, half = (PER_HOURS * each / against for each in (line.slope, COVER * line.slope_sd * line.inflation))
    remarks = []
    if abs(drift) <= half:
        remarks.append(Reason("drift_unclear", {"low": drift - half, "high": drift + half, "count": len(points)}))
        leaves: tuple[Leaves, ...] = ()
    else:
        usual = hours_per_day(points) if per_day is None else per_day
        leaves = tuple(_leaves(line, hours, against, limit, usual, now) for limit in (AMBER, RED))
    if line.inflation > 2.0:
        remarks.append(Reason("calibrations_scatter", {"factor": line.inflation}))
    width = COVER * line.sd_at(hours) * line.inflation
    return Wear(against, drift, half, expected, width, leaves, tuple(remarks))


def _leaves(line: Fitted, hours: float, reference: float, limit: float, per_day: float | None, now: datetime) -> Leaves:
    """Return when the line comes to a limit, and when the edge of its 95 % band does."""
    sign = math.copysign(1.0, line.slope)
    bound = reference * (1.0 + sign * limit)

    def beyond(more: float, edge: float) -> bool:
        there = hours + more
        return sign * (line.at(there) + sign * edge * COVER * line.sd_at(there) * line.inflation - bound) >= 0.0

    outside = abs(line.at(hours) / reference - 1.0) >= limit
    left = 0.0 if outside or beyond(0.0, 0.0) else (bound - line.at(hours)) / line.slope
    low, high = 0.0, left
    if left > 0.0 and not beyond(0.0, 1.0):
        for _ in range(60):
            middle = (low + high) / 2.0
            low, high = (low, middle) if beyond(middle, 1.0) else (middle, high)
    else:
        high = 0.0
    return Leaves(limit, left, high, _date(now, left, per_day), _date(now, high, per_day))


def _date(now: datetime, hours: float, per_day: float | None) -> datetime | None:
    """Return the day on which so many more hours have run; None where it is not known or years away."""
    if not per_day or hours > per_day * _FARTHEST_DAYS:
        return now if hours <= 0.0 else None
    return now + timedelta(days=hours / per_day)


def _when(point: Calibrated) -> datetime:
    return point.at
