"""The jug check: what pumps really took, by the levels of their jug, against what they should have taken; and the likely cause (H22)."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from itertools import pairwise

import numpy as np

from evenwater.engine.jug_causes import (
    BLOCKED,
    CRUST,
    FACTOR,
    MISREAD,
    SIPHON,
    STRENGTH,
    WELL,
    WORN,
    Evidence,
    weigh,
)
from evenwater.engine.jug_level import Draw, drawn_ml
from evenwater.engine.pump_wear import AMBER, RED
from evenwater.engine.reasons import Reason

# A cause is named when it is this likely, and spoken of when it is this likely; common practice, no source.
LIKELY, POSSIBLE = 0.7, 0.1
# Ninety-nine of a hundred pumps that are well lie within so many standard deviations, of the levels and of the calibration.
_SURE = 2.576
MOST_READINGS = 60
_FINEST = 1e-4
WITHIN_MARK, AMBER_MARK, RED_MARK, COARSE_MARK = "within", "amber", "red", "too_coarse"
CANNOT_TELL = "cannot_tell"
# What to look at first, and of which causes it speaks; the safest first, and what opens a line or changes a setting last.
STEPS: Mapping[str, tuple[str, ...]] = {
    "lift_outlet": (SIPHON,),
    "read_again": (MISREAD,),
    "refill_noted": (MISREAD,),
    "watch_outlet": (BLOCKED, CRUST, WORN, SIPHON, FACTOR),
    "look_for_air": (BLOCKED,),
    "clean_outlet": (CRUST, BLOCKED),
    "check_label": (STRENGTH,),
    "test_again": (STRENGTH,),
    "calibrate": (FACTOR, WORN, CRUST),
    "replace_head": (WORN,),
}


@dataclass(frozen=True)
class LevelRead:
    """A level as it was read: ``ml`` [mL] in the jug at an instant, before any refill of the same instant."""

    at: datetime
    ml: float


@dataclass(frozen=True)
class Refill:
    """What was added: ``ml`` [mL] at an instant, right after a level read at that instant."""

    at: datetime
    ml: float


@dataclass(frozen=True)
class Retest:
    """What a test of the water says arrived between the first and the last level [mL], and its standard deviation [mL]."""

    arrived_ml: float
    sd_ml: float


@dataclass(frozen=True)
class Levels:
    """The record of one jug.

    ``reading_sd`` [mL] is the standard deviation of one level, ``calibration_sd`` [1] that of the pumps' flow over the flow, ``hours`` [h]
    what the head has run since it was new.
    """

    readings: tuple[LevelRead, ...]
    draws: tuple[Draw, ...]
    holds_ml: float
    unreachable_ml: float
    reading_sd: float
    calibration_sd: float
    refills: tuple[Refill, ...] = ()
    hours: float | None = None
    retest: Retest | None = None


@dataclass(frozen=True)
class Factor:
    """A factor for the pump's flow, real over set [1], with the ends of its 95 % interval. Proposed, never applied."""

    value: float
    low: float
    high: float


@dataclass(frozen=True)
class JugCheck:
    """What the levels say.

    ``real_ml`` and ``expected_ml`` [mL] from the first reading to the last, each with the half width of its 95 % interval. ``mark`` is
    within (5 %), amber or red (beyond 10 %), or too coarse where the readings cannot tell 5 %; ``clear_from_ml`` [mL] is then what must be taken between two
    readings. ``cause`` is the likely one or ``cannot_tell``; ``candidates`` are all that are possible, likeliest first, with their weights
    [1]. ``stop`` says that a siphon is possible: stop at once. ``steps`` say what to look at, the safest first.
    """

    since: datetime
    until: datetime
    real_ml: float
    real_half_ml: float
    expected_ml: float
    expected_half_ml: float
    mark: str
    clear_from_ml: float
    cause: str
    candidates: tuple[tuple[str, float], ...]
    stop: bool
    steps: tuple[str, ...]
    factor: Factor | None
    remarks: tuple[Reason, ...]

    @property
    def ratio(self) -> float:
        """Real delivery over the expected one [1]."""
        return self.real_ml / self.expected_ml

    @property
    def ratio_half(self) -> float:
        """Half width of the ratio's 95 % interval by the reading of the levels alone [1]."""
        return self.real_half_ml / self.expected_ml


def check(record: Levels) -> JugCheck | Reason:
    """Hold the levels of a jug against what its pumps should have taken.

    Parameters
    ----------
    record : Levels
        Two levels or more, in any order.

    Returns
    -------
    JugCheck or Reason
        Real delivery, mark and likely cause; or why nothing can be said.

    Notes
    -----
    Nothing evaporates: a jug is closed. The likely cause is that of ``jug_causes``; it is named when its weight is seven tenths
    or more and its best model comes near enough to the levels, otherwise nothing is named. That all is well is only said where the levels
    can tell 5 %.
    """
    readings = sorted(record.readings, key=_when)
    if len(readings) < 2:
        return Reason("one_level_only", {}, "level")
    if len(readings) > MOST_READINGS:
        return Reason("too_many_levels", {"count": len(readings), "most": MOST_READINGS}, "level")
    if len({reading.at for reading in readings}) < len(readings):
        return Reason("levels_at_one_time", {}, "level")
    pairs = list(pairwise(readings))
    added = [math.fsum(r.ml for r in record.refills if a.at <= r.at < b.at) for a, b in pairs]
    drops = [a.ml + more - b.ml for (a, b), more in zip(pairs, added, strict=True)]
    expected = [_expected(record, a, b, drop) for (a, b), drop in zip(pairs, drops, strict=True)]
    whole, real = math.fsum(expected), math.fsum(drops)
    refilled = sum(readings[0].at <= r.at < readings[-1].at for r in record.refills)
    # Nobody reads a level better than this, and the comparison must not split hairs that the doses do not have.
    finest = _FINEST * max(record.holds_ml, whole)
    one = max(record.reading_sd, finest)
    sd = one * math.sqrt(2.0 + refilled)
    if whole <= 0.0:
        return Reason("fell_without_doses" if real > 3.0 * sd else "no_dose_between", {}, "level")
    weighed = weigh(
        Evidence(
            drops=np.array(drops),
            expected=np.array(expected),
            days=np.array([(b.at - a.at) / timedelta(days=1) for a, b in pairs]),
            refilled=tuple(any(a.at <= r.at < b.at for r in record.refills) for a, b in pairs),
            # An intermediate refill is as uncertain as a level; spread over all of them it keeps the model simple.
            reading_sd=one * math.sqrt(1.0 + refilled / len(readings)),
            calibration_sd=record.calibration_sd,
            shares=_shares(record.draws),
            holds_ml=record.holds_ml,
            hours=record.hours,
            tested=None if record.retest is None else (record.retest.arrived_ml, max(record.retest.sd_ml, finest)),
        )
    )
    weights = dict(sorted(weighed.weights.items(), key=_heavy, reverse=True))
    best = next(iter(weights))
    near = _near(weighed.misses[best], len(drops) + (record.retest is not None))
    candidates = tuple((name, weight) for name, weight in weights.items() if weight >= POSSIBLE)
    bias, sure = real / whole - 1.0, _SURE * math.hypot(sd / whole, record.calibration_sd)
    stop = (bias > RED and bias > sure) or (bias > 0.0 and weights[SIPHON] >= POSSIBLE)
    mark = _mark(bias, 2.0 * sd / whole, sure)
    # Levels too coarse for 5 % cannot say that all is well, however rare the faults are; and of a pump within 5 % no slow fault
    # is said, which may be no more than a level read worse than was stated. A pump that stops or a siphon is never held back.
    within = mark == WITHIN_MARK
    held_back = (best == WELL and not within) or (best in (WORN, CRUST, FACTOR) and within)
    told = weights[best] >= LIKELY and near and not held_back
    named = {name for name, _ in candidates} | ({SIPHON} if stop else set())
    return JugCheck(
        since=readings[0].at,
        until=readings[-1].at,
        real_ml=real,
        real_half_ml=2.0 * sd,
        expected_ml=whole,
        expected_half_ml=2.0 * record.calibration_sd * whole,
        mark=mark,
        clear_from_ml=2.0 * math.sqrt(2.0) * one / AMBER,
        cause=best if told else CANNOT_TELL,
        candidates=candidates,
        stop=stop,
        steps=tuple(step for step, causes in STEPS.items() if named & set(causes)),
        factor=_factor(record, real / whole, sd / whole, sure, weights),
        remarks=tuple(_remarks(record, near, pairs)),
    )


def _when(reading: LevelRead) -> datetime:
    return reading.at.astimezone(UTC)


def _heavy(item: tuple[str, float]) -> float:
    return item[1]


def _expected(record: Levels, a: LevelRead, b: LevelRead, drop: float) -> float:
    """Return what should have been taken between two readings; of a jug found dry no more than what was in it."""
    wanted = drawn_ml(record.draws, a.at, b.at)
    return min(wanted, max(drop, 0.0)) if _dry(record, b) else wanted


def _dry(record: Levels, reading: LevelRead) -> bool:
    least = max((draw.dose_ml for draw in record.draws), default=0.0)
    return reading.ml <= record.unreachable_ml + least


def _shares(draws: Sequence[Draw]) -> tuple[float, ...]:
    per_day = [draw.per_day_ml for draw in draws]
    return tuple(each / math.fsum(per_day) for each in per_day)


def _near(miss: float, rows: int) -> bool:
    """Return whether the best model comes near the levels: chi squared within five of its standard deviations."""
    return miss <= rows + 5.0 * math.sqrt(2.0 * rows)


def _mark(bias: float, half: float, sure: float) -> str:
    if abs(bias) > AMBER and abs(bias) > sure:
        return RED_MARK if abs(bias) > RED else AMBER_MARK
    return WITHIN_MARK if abs(bias) <= AMBER and half <= AMBER else COARSE_MARK


def _factor(record: Levels, ratio: float, sd: float, sure: float, weights: Mapping[str, float]) -> Factor | None:
    """Return a new factor where the bias is sure, of one pump, and of a kind that a factor makes good."""
    steady = weights[FACTOR] + weights[WORN]
    if len(record.draws) > 1 or abs(ratio - 1.0) <= max(AMBER, sure) or steady < LIKELY:
        return None
    return Factor(ratio, ratio - 2.0 * sd, ratio + 2.0 * sd)


def _remarks(record: Levels, near: bool, pairs: Sequence[tuple[LevelRead, LevelRead]]) -> Iterator[Reason]:
    if not near:
        yield Reason("nothing_fits", {})
    if len(record.draws) > 1:
        yield Reason("several_pumps", {"count": len(record.draws)}, "pump")
    if any(_dry(record, b) for _, b in pairs):
        yield Reason("jug_ran_dry", {}, "level")
    rises = [(a, b) for a, b in pairs if b.ml - a.ml > 3.0 * math.sqrt(2.0) * record.reading_sd]
    unnoted = [b for a, b in rises if not any(a.at <= refill.at < b.at for refill in record.refills)]
    if unnoted:
        yield Reason("level_rose", {"at": unnoted[0].at}, "level")
