"""Simulated jugs and pumps with a known fault, dose by dose, read by an imperfect keeper; shares nothing with the engine's models.

Everything is invented. A pump that is well delivers within 4 % of what it is set to, a single dose scatters by 3 %, a level is read with
an error of 0.2 to 0.6 % of the jug. A case is clear when what was dosed stands well above the error of the reading and the fault shows
within the record as written at each fault below. Where even the right model must leave two causes open, as one level in two readings does, a
case is not clear, and nothing should be named.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

import numpy as np

from evenwater.engine.jug_check import LevelRead, Levels, Refill, Retest
from evenwater.engine.jug_level import Draw

BEGIN = datetime(2026, 3, 1, 8, tzinfo=UTC)
CLEAR = ("well", "worn_head", "blocked", "crust", "siphon", "wrong_factor", "wrong_strength", "level_misread")
UNCLEAR = ("low_once", "high_once", "noisy")
HEALTHY = ("well", "two_days", "noisy")


@dataclass(frozen=True)
class Case:
    """A record and the truth behind it."""

    truth: str
    record: Levels
    delivered_ml: float


def case(truth: str, seed: int) -> Case:
    """Return the case of a seed."""
    r = np.random.default_rng([seed, *truth.encode()])
    readings = int(r.integers(5, 9))
    gaps = r.uniform(0.8, 3.0, readings - 1)
    hours_to = np.concatenate([[0.0], np.cumsum(gaps)]) * 24.0
    per_day = int(r.choice([6, 12, 24, 48]))
    daily = float(r.uniform(40.0, 300.0))
    if truth in ("low_once", "high_once", "two_days"):
        hours_to = np.array([0.0, 24.0 * (2.0 if truth == "two_days" else float(r.uniform(4.0, 8.0)))])
    dose = round(daily / per_day, 1)
    span = float(hours_to[-1])
    expected = dose * np.floor(span * per_day / 24.0)
    holds = float(np.ceil(expected * r.uniform(1.3, 2.5) / 500.0) * 500.0)
    sd = holds * float(r.uniform(0.002, 0.006))
    sd = min(sd, expected / 80.0)
    if truth == "noisy":
        sd = expected * float(r.uniform(0.05, 0.12))
    own = 1.0 + float(np.clip(r.normal(0.0, 0.015), -0.04, 0.04))
    moments = (np.arange(int(span * per_day / 24.0)) + 1.0) * 24.0 / per_day
    flow = own * _flow(truth, moments / span, r)
    arrived = np.clip(dose * flow * (1.0 + r.normal(0.0, 0.03, len(moments))), 0.0, None)
    taken = np.array([arrived[moments <= hour].sum() for hour in hours_to])
    # A siphon is clear when two levels were read before it began and two after, and no refill falls into the same interval.
    began = int(r.integers(1, max(2, len(hours_to) - 2)))
    if truth in ("siphon", "high_once"):
        taken = taken + _ran_in(truth, hours_to, expected, began, r)
    start = max(0.95 * holds, float(taken[-1]) + 0.05 * holds)
    levels = start - taken
    levels = levels + r.normal(0.0, sd, len(levels))
    if truth == "level_misread":
        levels = _misread(levels, expected, holds, r)
    refills: tuple[Refill, ...] = ()
    at = int(r.integers(1, max(2, len(hours_to) - 1)))
    if r.random() < 0.3 and len(hours_to) > 2 and not (truth == "siphon" and at == began):
        more = float(r.uniform(0.1, 0.4)) * holds
        levels[at + 1 :] += more
        refills = (Refill(BEGIN + timedelta(hours=float(hours_to[at]) + 0.01), more),)
    record = Levels(
        readings=tuple(
            LevelRead(BEGIN + timedelta(hours=float(h) + 0.001), float(ml))
            for h, ml in zip(hours_to, levels, strict=True)
        ),
        draws=(Draw("", dose, per_day, BEGIN + timedelta(hours=24.0 / per_day)),),
        holds_ml=max(holds, float(levels.max())),
        unreachable_ml=0.0,
        reading_sd=sd,
        calibration_sd=0.025,
        refills=refills,
        hours=_hours(truth, r),
        retest=_retest(truth, float(taken[-1] - taken[0]), expected, r),
    )
    return Case(truth, record, float(taken[-1] - taken[0]))


def _flow(truth: str, when: np.ndarray, r: np.random.Generator) -> np.ndarray:
    """Return real over set flow along the record."""
    if truth == "worn_head":
        end, start = float(r.uniform(0.12, 0.25)), float(r.uniform(0.5, 0.9))
        return 1.0 - end * (start + (1.0 - start) * when)
    if truth == "low_once":
        return np.full(len(when), float(r.uniform(0.8, 0.9)))
    if truth == "blocked":
        return np.where(when < float(r.uniform(0.0, 0.6)), 1.0, float(r.uniform(0.0, 0.1)))
    if truth == "crust":
        begin, left = float(r.uniform(0.25, 0.5)), float(r.uniform(0.3, 0.65))
        if r.random() < 0.5:
            return np.where(when < begin, 1.0, left)
        return 1.0 - (1.0 - left) * np.clip((when - begin) / (0.9 - begin), 0.0, 1.0)
    if truth == "wrong_factor":
        return np.full(len(when), float(r.choice([r.uniform(0.7, 0.86), r.uniform(1.15, 1.35)])))
    return np.ones(len(when))


def _ran_in(truth: str, hours_to: np.ndarray, expected: float, began: int, r: np.random.Generator) -> np.ndarray:
    """Return what ran in by itself until each reading: all at once, or from some moment on."""
    span = hours_to[-1]
    if truth == "high_once":
        return expected * float(r.uniform(0.15, 0.3)) * hours_to / span
    begin, amount = float(r.uniform(*hours_to[began : began + 2])), expected * float(r.uniform(0.5, 2.0))
    if r.random() < 0.5:
        return np.where(hours_to > begin, amount, 0.0)
    return amount * np.clip((hours_to - begin) / (span - begin), 0.0, None)


def _misread(levels: np.ndarray, expected: float, holds: float, r: np.random.Generator) -> np.ndarray:
    """Return levels with one misread in their midst, or from one on after a refill that nobody wrote down."""
    at = int(r.integers(1, len(levels) - 1))
    if r.random() < 0.5:
        levels[at] += float(r.choice([-1.0, 1.0])) * float(r.uniform(0.4, 0.8)) * expected
        return levels
    # So much that the level rises.
    fell = float((levels[:-1] - levels[1:]).max())
    levels[at:] += fell + float(r.uniform(0.15, 0.5)) * holds
    return levels


def _hours(truth: str, r: np.random.Generator) -> float | None:
    if truth == "worn_head":
        return float(r.uniform(500.0, 900.0))
    if truth == "wrong_factor":
        return float(r.uniform(0.0, 30.0))
    return float(r.uniform(50.0, 400.0)) if truth in CLEAR and r.random() < 0.5 else None


def _retest(truth: str, delivered: float, expected: float, r: np.random.Generator) -> Retest | None:
    """Return a test of the water: always where the strength is wrong, otherwise of one record in three."""
    if truth not in CLEAR or (truth != "wrong_strength" and r.random() > 0.33):
        return None
    sd = expected * float(r.uniform(0.05, 0.1))
    strength = float(r.choice([r.uniform(0.3, 0.6), r.uniform(1.5, 2.2)])) if truth == "wrong_strength" else 1.0
    return Retest(delivered * strength + float(r.normal(0.0, sd)), sd)
