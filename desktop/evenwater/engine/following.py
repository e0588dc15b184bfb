"""A plan that is followed: the course it set out on, and whether the water keeps to it.

The course is kept as figures, not as a question to be planned anew: a plan stays what it was when it was started.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from evenwater.engine import uncertainty
from evenwater.engine.correction import Answer, Refused, spread
from evenwater.engine.uncertainty import Spread

if TYPE_CHECKING:
    from evenwater.engine.consumption_estimate import Span

Floats = npt.NDArray[np.float64]

INSIDE, ABOVE, BELOW = "inside", "above", "below"
WAITING, STOP, ENDED = "waiting", "stop", "ended"
# Common practice, no source: one reading above the band may be a bad test, two in a row are not.
STOP_AFTER = 2
# The band goes from the 5th to the 95th percentile.
_NORMAL_90 = 1.6448536269514722
_TAIL_SHARE, _TAIL_LEAST = 0.55, 0.5
# The lines bend at the knee only, the band but gently.
_POINTS = 60


@dataclass(frozen=True)
class Course:
    """What a plan said the water would do. Values [canonical unit], the use [canonical unit per day].

    ``started`` and the other instants have a zone. ``untested`` was in the water already, unseen by the reading.
    ``per_ml`` is the rise by one millilitre, ``kit`` the half width of a reading's 95 % interval.
    """

    started: datetime
    measured: float
    untested: float
    target: float
    use: float
    per_ml: float
    dose_ml: float
    count: int
    per_day: int
    interval_days: float
    upkeep_ml: float
    spread: Spread
    kit: float
    stop_above: float
    never_more_ml: float
    retest_at: datetime
    ends_at: datetime
    valid_until: datetime

    @property
    def lasts_days(self) -> float:
        """Length of the ramp [day]."""
        return self.count * self.interval_days


@dataclass(frozen=True)
class Expected:
    """The plan and its band, from the 5th to the 95th percentile, at instants; arrays of shape (n,) [canonical unit]."""

    plan: Floats
    low: Floats
    high: Floats


@dataclass(frozen=True)
class Retest:
    """A reading held against the band; ``low`` and ``high`` [canonical unit] allow for the test's own error as well."""

    at: datetime
    value: float
    plan: float
    low: float
    high: float
    place: str


@dataclass(frozen=True)
class Following:
    """Whether the water follows a plan.

    ``state`` is ``"waiting"`` (no reading since the start), ``"inside"``, ``"above"``, ``"below"`` (the last reading),
    ``"stop"`` (two in a row above the band, or one above what the card says to stop at) or ``"ended"`` (its time is over).
    ``in_a_row`` counts the last readings on that side. ``given_ml`` and ``doses_given`` are what is due by now, ``expected`` with ``low``
    and ``high`` what the water should hold now [canonical unit].
    """

    state: str
    retests: tuple[Retest, ...]
    in_a_row: int
    above_stop: bool
    doses_given: int
    given_ml: float
    expected: float
    low: float
    high: float
    retest_due: bool


def course(answer: Answer) -> Course:
    """Return the course of a plan that starts at the instant it was reckoned for.

    Parameters
    ----------
    answer : Answer
        The plan.

    Returns
    -------
    Course
        All that is needed to hold readings against it.
    """
    q, doses = answer.question, answer.doses
    return Course(
        started=q.now,
        measured=q.measured,
        untested=q.untested,
        target=q.target,
        use=q.use,
        per_ml=answer.per_ml,
        dose_ml=doses.dose_ml,
        count=doses.count,
        per_day=doses.per_day,
        interval_days=doses.interval_days,
        upkeep_ml=doses.upkeep_ml,
        spread=spread(q),
        kit=q.parameter.canonical(q.parameter.kit_accuracy),
        stop_above=answer.stop_above,
        never_more_ml=answer.never_more_ml,
        retest_at=answer.retest_at,
        ends_at=answer.ends_at,
        valid_until=answer.valid_until,
    )


def doses_until(plan: Course, now: datetime) -> tuple[int, float]:
    """Return how many doses were due by an instant, upkeep after the ramp included.

    Parameters
    ----------
    plan : Course
        The plan.
    now : datetime
        The instant, with zone.

    Returns
    -------
    tuple of (int, float)
        Their number [1] and their sum [mL].
    """
    # A dose is due at its instant, not a rounding error later.
    number = max(0, math.floor((now - plan.started) / timedelta(days=plan.interval_days) + 1e-9))
    ramp = min(number, plan.count)
    after = number - ramp if plan.upkeep_ml > 0.0 else 0
    return ramp + after, math.fsum((ramp * plan.dose_ml, after * plan.upkeep_ml))


def expected(plan: Course, days: Floats) -> Expected:
    """Return what the plan expects at instants after its start.

    Parameters
    ----------
    plan : Course
        The plan.
    days : array, shape (n,)
        Instants after the start [day].

    Returns
    -------
    Expected
        Steady lines through the doses, as in the projection of the plan.
    """
    per_day = plan.per_day * plan.per_ml
    rising, keeping, ramp = plan.dose_ml * per_day, plan.upkeep_ml * per_day, plan.lasts_days
    dosed = np.where(days <= ramp, rising * days, rising * ramp + keeping * (days - ramp)) + plan.untested
    used = plan.use * days
    low, high = uncertainty.band(plan.measured, dosed, used, plan.spread)
    # An animal takes nothing out of empty water.
    return Expected(np.maximum(plan.measured + dosed - used, 0.0), np.maximum(low, 0.0), np.maximum(high, 0.0))


def instants(plan: Course, until: datetime) -> Floats:
    """Return the instants to draw.

    Parameters
    ----------
    plan : Course
        The plan.
    until : datetime
        The instant to reach at least.

    Returns
    -------
    array, shape (n,)
        Instants after the start [day], past the ramp, the knee among them.
    """
    ramp = plan.lasts_days
    last = max(ramp + max(_TAIL_SHARE * ramp, _TAIL_LEAST), (until - plan.started) / timedelta(days=1))
    return np.union1d(np.linspace(0.0, last, _POINTS), np.array([ramp]))


def follow(plan: Course, readings: Sequence[tuple[datetime, float]], now: datetime) -> Following:
    """Hold the readings since the start against the plan.

    Parameters
    ----------
    plan : Course
        The plan.
    readings : sequence of tuple (datetime, float)
        Instants with a zone, and values [canonical unit], in any order; those before the start are left out.
    now : datetime
        The present.

    Returns
    -------
    Following
        Where each reading lies and what follows from that.

    Notes
    -----
    The band is widened by the reading's own error: both are independent, so their variances add (JCGM 100:2008, 5.1.2).
    """
    since = sorted(r for r in readings if plan.started < r[0] <= now and math.isfinite(r[1]))
    days = np.array(
        [*((at - plan.started) / timedelta(days=1) for at, _ in since), (now - plan.started) / timedelta(days=1)]
    )
    lines = expected(plan, np.maximum(days, 0.0))
    retests = tuple(
        _retest(plan, at, value, *(float(line[n]) for line in (lines.plan, lines.low, lines.high)))
        for n, (at, value) in enumerate(since)
    )
    number, given = doses_until(plan, now)
    last = retests[-1].at if retests else plan.started
    state, in_a_row, above_stop = _state(plan, retests, now)
    return Following(
        state=state,
        retests=retests,
        in_a_row=in_a_row,
        above_stop=above_stop,
        doses_given=number,
        given_ml=given,
        expected=float(lines.plan[-1]),
        low=float(lines.low[-1]),
        high=float(lines.high[-1]),
        retest_due=_due(plan, last, bool(retests), now),
    )


def volume(plan: Course, retest: Retest, volume_l: float) -> Span | Refused:
    """Find the net volume from the rise that a plan's own doses made: a correction is a tracer, too.

    Parameters
    ----------
    plan : Course
        The plan.
    retest : Retest
        A reading since its start.
    volume_l : float
        The net volume that the plan was reckoned with [L].

    Returns
    -------
    Span or Refused
        The volume with its 90 % interval [L]; refused where the rise is lost in the scatter of the two tests.
    """
    days = (retest.at - plan.started) / timedelta(days=1)
    _, given = doses_until(plan, retest.at)
    sd = plan.use * plan.spread.use * _NORMAL_90
    # With the whole of what learns a use; most plans that are looked at have no reading yet.
    from evenwater.engine.consumption_estimate import Span  # noqa: PLC0415
    from evenwater.engine.consumption_ratio import Measured, effective_volume  # noqa: PLC0415

    return effective_volume(
        (given,),
        plan.per_ml * volume_l,
        Measured(plan.measured + plan.untested, plan.spread.reading),
        Measured(retest.value, plan.kit / 2.0),
        days,
        Span(plan.use, plan.use - sd, plan.use + sd),
        2.0 * math.hypot(plan.spread.strength, plan.spread.pump),
    )


def _retest(plan: Course, at: datetime, value: float, line: float, low: float, high: float) -> Retest:
    own = plan.kit / 2.0 * _NORMAL_90
    lowest = max(0.0, line - math.hypot(line - low, own))
    highest = line + math.hypot(high - line, own)
    place = ABOVE if value > highest else BELOW if value < lowest else INSIDE
    return Retest(at, value, line, lowest, highest, place)


def _state(plan: Course, retests: Sequence[Retest], now: datetime) -> tuple[str, int, bool]:
    if not retests:
        return (ENDED if now > plan.valid_until else WAITING), 0, False
    place = retests[-1].place
    in_a_row = 0
    for retest in reversed(retests):
        if retest.place != place:
            break
        in_a_row += 1
    above_stop = retests[-1].value > plan.stop_above
    if above_stop or (place == ABOVE and in_a_row >= STOP_AFTER):
        return STOP, in_a_row, above_stop
    return (ENDED if now > plan.valid_until else place), in_a_row, False


def _due(plan: Course, last: datetime, tested: bool, now: datetime) -> bool:
    """Say whether the plan waits for a test: in the middle, and once more at its end."""
    if not tested or last < plan.retest_at:
        return now >= plan.retest_at
    return last < plan.ends_at <= now
