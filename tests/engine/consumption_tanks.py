"""Simulated tanks with a known use: kept by an hourly balance that shares nothing with the engine, and tested by an imperfect keeper.

Figures are common practice, no source: alkalinity in dKH with a kit of 0.15 (one standard deviation), calcium in mg per L with 5,
nitrate in mg per L with 0.5; each tank's kit really scatters somewhat more or less than it says, shows steps, and three tests in a
hundred are bad.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

import numpy as np
import numpy.typing as npt

from evenwater.engine.consumption_estimate import Estimate, estimate
from evenwater.engine.consumption_log import Dose, Exchange, Reading, Record

Floats = npt.NDArray[np.float64]

BEGIN = datetime(2026, 3, 1, tzinfo=UTC)
HOUR = 1.0 / 24.0
COURSES = ("steady", "ramp", "halved", "step", "walk")
COURSE_SHARES = (0.3, 0.2, 0.3, 0.1, 0.1)
BAD_SHARE = 0.03


def at(day: float) -> datetime:
    return BEGIN + timedelta(days=float(day))


@dataclass(frozen=True)
class Tank:
    """A tank: the whole log, and the truth that the keeper does not know."""

    course: str
    parameter: str
    days: Floats
    record: Record
    use: Floats
    use_before: float
    changed_day: float
    gap: float
    bad: npt.NDArray[np.bool_]

    def until(self, count: int) -> tuple[Record, datetime]:
        """Return what was in the log right after so many readings, and when that was."""
        now = self.record.readings[count - 1].at
        return (
            Record(
                self.record.readings[:count],
                tuple(d for d in self.record.doses if d.at <= now),
                tuple(e for e in self.record.exchanges if e.at <= now),
            ),
            now,
        )


def tank(seed: int) -> Tank:
    """Return the tank of a seed."""
    r = np.random.default_rng(seed)
    parameter = str(r.choice(["alkalinity", "calcium", "nitrate"], p=[0.6, 0.25, 0.15]))
    if parameter == "alkalinity":
        sd, start, step, use = 0.15, 8.0, 0.1, float(np.exp(r.uniform(np.log(0.3), np.log(2.5))))
        gap = float(r.choice([1, 1, 2, 3]))
    elif parameter == "calcium":
        sd, start, step, use = 5.0, 420.0, 5.0, float(np.exp(r.uniform(np.log(3.0), np.log(18.0))))
        gap = float(r.choice([2, 3, 4, 7]))
    else:
        # Nitrate is made in most tanks and used up in few.
        sd, start, step, use = 0.5, 10.0, 0.5, float(r.uniform(-0.3, 0.5))
        gap = float(r.choice([3, 4, 7]))
    course = str(r.choice(COURSES, p=COURSE_SHARES))
    course = "steady" if course == "halved" and parameter == "nitrate" else course
    span = float(r.uniform(25.0, 45.0)) * gap
    hours = np.arange(0.0, span, HOUR)
    changed = float(r.uniform(0.35, 0.8)) * span
    uses = _uses(course, use, hours, changed, r)
    values, doses, exchanges = _kept(parameter, start, sd, use, uses, hours, r)
    tested = _tested(span, gap, r)
    bad = r.random(len(tested)) < BAD_SHARE
    shown = values[tested] + r.normal(0.0, sd * float(np.exp(r.normal(0.0, 0.2))), len(tested))
    shown[bad] += r.choice([-1.0, 1.0], bad.sum()) * r.uniform(5.0, 20.0, bad.sum()) * sd
    shown = np.round(shown / step) * step
    readings = tuple(Reading(at(hours[i]), float(v), sd) for i, v in zip(tested, shown, strict=True))
    record = Record(readings, tuple(doses), tuple(exchanges))
    return Tank(course, parameter, hours[tested], record, uses[tested], use, changed, gap, bad)


def _uses(course: str, use: float, hours: Floats, changed: float, r: np.random.Generator) -> Floats:
    if course == "ramp":
        return use * (1.0 + float(r.uniform(-0.6, 0.6)) * hours / hours[-1])
    if course == "halved":
        return np.where(hours < changed, use, use / 2.0)
    if course == "step":
        return np.where(hours < changed, use, use * float(r.choice([0.0, 0.3, 1.5, 2.0])))
    if course == "walk":
        return use + np.cumsum(r.normal(0.0, 0.02 * abs(use) * np.sqrt(HOUR), len(hours)))
    return np.full(len(hours), use)


def _kept(
    parameter: str, start: float, sd: float, use: float, uses: Floats, hours: Floats, r: np.random.Generator
) -> tuple[Floats, list[Dose], list[Exchange]]:
    """Keep the tank hour by hour: daily or hourly doses for about the first use, or corrections when it has fallen."""
    values = np.empty(len(hours))
    exchanged = np.sort(r.uniform(1.0, hours[-1] - 1.0, int(r.integers(0, 5))))
    style = str(r.choice(["daily", "hourly", "corrections"], p=[0.5, 0.25, 0.25]))
    upkeep = max(use, 0.0) * float(r.uniform(0.85, 1.1))
    doses: list[Dose] = []
    exchanges: list[Exchange] = []
    value, corrected = start, -9.0
    for index, day in enumerate(hours):
        values[index] = value
        if len(exchanges) < len(exchanged) and day >= exchanged[len(exchanges)]:
            share, new = float(r.uniform(0.1, 0.25)), start * float(r.uniform(0.95, 1.05))
            exchanges.append(Exchange(at(day), share, new))
            value = (1.0 - share) * value + share * new
        rise = 0.0
        if style == "daily" and index % 24 == 9:
            rise = upkeep
        elif style == "hourly":
            rise = upkeep / 24.0
        low = start - (8.0 if style == "corrections" else 20.0) * sd
        if parameter != "nitrate" and value < low and day - corrected > 1.0:
            rise, corrected = rise + 10.0 * sd, float(day)
        if rise > 0.0:
            doses.append(Dose(at(day), rise))
            value += rise
        value -= float(uses[index]) * HOUR
    return values, doses, exchanges


def _tested(span: float, gap: float, r: np.random.Generator) -> npt.NDArray[np.intp]:
    """Return the hours of the tests: every so many days, at no fixed hour, and one in eight forgotten."""
    planned = np.arange(0.0, span, gap)
    planned = planned[r.random(len(planned)) > 0.12]
    day = np.clip(planned + r.normal(0.4, 0.1, len(planned)), 0.0, span - HOUR)
    return np.unique(np.floor(day / HOUR + 0.5).astype(np.intp))


def holds(found: Estimate, of: Tank) -> bool:
    """Return whether the interval right after the last reading holds the true use of that hour."""
    return found.use.low <= float(of.use[-1]) <= found.use.high


def noticed_after(of: Tank, most: int) -> int | None:
    """Return after how many readings a change is noticed, or None when not within so many.

    Noticed: the 90 % interval of the present use leaves the old use out, or a change is named that lies within two test
    gaps of the true one or after it.
    """
    first = int(np.searchsorted(of.days, of.changed_day))
    for count in range(1, min(most, len(of.days) - first) + 1):
        found = estimate(*of.until(first + count))
        if not found.use.low <= of.use_before <= found.use.high or named(found, of):
            return count
    return None


def named(found: Estimate, of: Tank) -> bool:
    """Return whether the change is named about where it was."""
    return found.changed is not None and found.changed.at >= at(of.changed_day - 2.0 * of.gap)
