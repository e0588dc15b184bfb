"""The question about one jug, and its answer: until when it lasts, what it would do if it ran in, and whether its pump is well."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta

from evenwater.engine.absence import Absence, AbsentJug, absence
from evenwater.engine.catalogue import Parameter
from evenwater.engine.correction import Refused
from evenwater.engine.jug_check import JugCheck, LevelRead, Levels, Refill, Retest, check
from evenwater.engine.jug_level import Draw, Filled, Forecast, doses_lost, drawn_ml, forecast
from evenwater.engine.jug_siphon import RunIn, Setting, Tank, dangers, largest_ml, run_in
from evenwater.engine.pump_line import dead_volume
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import Bottle
from evenwater.engine.stock import Dissolved

# A clock may run a little fast; further ahead the date or the hour was mistyped (H8).
AHEAD_ALLOWED = timedelta(minutes=5)
# A jug holds a little more than its mark; common practice, no source.
_ABOVE_MARK = 1.05


@dataclass(frozen=True)
class JugPump:
    """A pump on the jug: what it takes, half the 95 % interval of its calibration [1], running hours [h], its flow [mL/min]."""

    draw: Draw
    calibration: float
    hours: float | None = None
    flow_ml_per_min: float | None = None


@dataclass(frozen=True)
class Line:
    """The line from the jug to the outlet: inside diameter [mm] and length [mm]."""

    bore_mm: float
    length_mm: float

    @property
    def volume_ml(self) -> float:
        """What it holds [mL]."""
        return dead_volume(self.bore_mm, self.length_mm)


@dataclass(frozen=True)
class WaterTest:
    """A test of the water at the last level: ``off`` is measured less expected [canonical unit], ``sd`` its standard deviation."""

    parameter: Parameter
    off: float
    sd: float


@dataclass(frozen=True)
class JugQuestion:
    """One jug: ``holds_ml`` when full, ``unreachable_ml`` below the intake, ``accuracy_ml`` half the 95 % interval of a level [mL]."""

    now: datetime
    name: str
    holds_ml: float
    unreachable_ml: float
    accuracy_ml: float
    batch: Dissolved | Bottle
    parameters: tuple[Parameter, ...]
    tank: Tank
    pumps: tuple[JugPump, ...]
    levels: tuple[LevelRead, ...]
    refills: tuple[Refill, ...] = ()
    setting: Setting = field(default_factory=Setting)
    line: Line | None = None
    test: WaterTest | None = None
    away_until: datetime | None = None

    @property
    def draws(self) -> tuple[Draw, ...]:
        """What the pumps take."""
        return tuple(pump.draw for pump in self.pumps)


@dataclass(frozen=True)
class JugAnswer:
    """What is known of a jug; ``check`` is None with fewer than two levels, ``largest`` (safe, advised) [mL] of an unknown stock.

    ``earliest`` is the first dose that is missing if the level was read high and the pumps deliver as much more as their calibration
    leaves open; None when it lasts ten years. ``doses_lost`` are those that fill an empty line, when it is not primed after a refill.
    """

    question: JugQuestion
    forecast: Forecast
    earliest: datetime | None
    run_in: tuple[RunIn, ...]
    largest: tuple[float, float] | None
    check: JugCheck | None
    doses_lost: int
    absence: Absence | None
    remarks: tuple[Reason, ...]


def solve(question: JugQuestion) -> JugAnswer | Refused:
    """Answer a question about a jug.

    Parameters
    ----------
    question : JugQuestion
        The jug, its pumps and its levels.

    Returns
    -------
    JugAnswer or Refused
        What is known of it, or why nothing can be said.
    """
    q = question
    refused = tuple(_objections(q))
    if refused:
        return Refused(refused)
    seen = forecast(_filled(q), q.draws, q.now)
    found = run_in(q.batch, q.parameters, q.tank, q.holds_ml)
    checked = check(_record(q))
    smallest = min(draw.dose_ml for draw in q.draws)
    away = None
    if q.away_until is not None:
        filled = Filled(seen.now, seen.level_ml, q.unreachable_ml)
        most = max(pump.calibration for pump in q.pumps)
        jug = AbsentJug(q.name, filled, q.holds_ml, q.draws, most, q.accuracy_ml)
        away = absence((jug,), (), seen.now, q.away_until)
    return JugAnswer(
        question=q,
        forecast=seen,
        earliest=_earliest(q),
        run_in=found,
        largest=largest_ml(found),
        check=None if isinstance(checked, Reason) else checked,
        doses_lost=0 if q.line is None else doses_lost(q.line.volume_ml, smallest),
        absence=away,
        remarks=tuple(_remarks(q, seen, found, checked)),
    )


def _objections(q: JugQuestion) -> Iterator[Reason]:
    if not q.levels:
        yield Reason("no_level", {}, "level")
    if q.unreachable_ml >= q.holds_ml:
        yield Reason("nothing_reachable", {"holds_ml": q.holds_ml}, "jug.unreachable")
    for number, level in enumerate(q.levels, start=1):
        if level.ml > q.holds_ml * _ABOVE_MARK + q.accuracy_ml:
            yield Reason("level_above_full", {"given_ml": level.ml, "holds_ml": q.holds_ml}, f"level.{number}.level")
        if level.at > q.now + AHEAD_ALLOWED:
            yield Reason("level_in_the_future", {}, f"level.{number}.at")
    for number, refill in enumerate(q.refills, start=1):
        if refill.at > q.now + AHEAD_ALLOWED:
            yield Reason("refill_in_the_future", {}, f"refill.{number}.at")
        if refill.ml > q.holds_ml * _ABOVE_MARK:
            yield Reason("refill_above_full", {"given_ml": refill.ml, "holds_ml": q.holds_ml}, f"refill.{number}.added")
    if q.away_until is not None and q.away_until <= q.now:
        yield Reason("back_already", {}, "away_until")


def _latest(q: JugQuestion) -> LevelRead:
    return max(q.levels, key=_when)


def _when(level: LevelRead) -> datetime:
    return level.at


def _filled(q: JugQuestion) -> Filled:
    """Return the jug as last read, with what was added since."""
    latest = _latest(q)
    added = math.fsum(refill.ml for refill in q.refills if refill.at >= latest.at)
    return Filled(latest.at, latest.ml + added, q.unreachable_ml)


def _earliest(q: JugQuestion) -> datetime | None:
    filled = _filled(q)
    low = replace(filled, ml=max(0.0, filled.ml - q.accuracy_ml))
    more = [replace(pump.draw, dose_ml=pump.draw.dose_ml * (1.0 + pump.calibration)) for pump in q.pumps]
    return forecast(low, more, q.now).refill_before


def _record(q: JugQuestion) -> Levels:
    per_day = math.fsum(draw.per_day_ml for draw in q.draws)
    spread = math.hypot(*(pump.calibration * pump.draw.per_day_ml / per_day for pump in q.pumps))
    return Levels(
        readings=q.levels,
        draws=q.draws,
        holds_ml=q.holds_ml,
        unreachable_ml=q.unreachable_ml,
        # Both are half widths of 95 % intervals, taken as two standard deviations.
        reading_sd=q.accuracy_ml / 2.0,
        calibration_sd=spread / 2.0,
        refills=q.refills,
        hours=q.pumps[0].hours if len(q.pumps) == 1 else None,
        retest=_retest(q),
    )


def _retest(q: JugQuestion) -> Retest | None:
    """Return what arrived by a test of the water: what was expected, and what the test is off, in millilitres of the stock."""
    if q.test is None or len(q.levels) < 2:
        return None
    effects = run_in(q.batch, (q.test.parameter,), q.tank, 1.0)
    if not effects:
        return None
    per_ml = effects[0].per_ml
    first = min(q.levels, key=_when)
    expected = drawn_ml(q.draws, first.at, _latest(q).at)
    return Retest(expected + q.test.off / per_ml, q.test.sd / per_ml)


def _remarks(q: JugQuestion, seen: Forecast, found: tuple[RunIn, ...], checked: JugCheck | Reason) -> Iterator[Reason]:
    if isinstance(checked, JugCheck):
        if checked.stop:
            yield Reason("siphon_possible", {}, "level")
        yield from checked.remarks
    elif checked.code != "one_level_only":
        yield checked
    yield from dangers(q.setting)
    if seen.empty:
        yield Reason("jug_empty", {}, "level")
    elif seen.low:
        yield Reason("jug_low", {"days": seen.days_left}, "level")
    if seen.per_day_ml * 2.0 > q.holds_ml - q.unreachable_ml:
        yield Reason("jug_lasts_hours", {"per_day_ml": seen.per_day_ml}, "jug.holds")
    for each in found:
        if each.harms:
            params = {
                "parameter": each.parameter.name, "kind": each.parameter.kind, "unit": each.parameter.display_unit,
                "after": each.after, "most": each.most, "water": q.tank.water, "safe_ml": each.safe_ml,
            }  # fmt: skip
            yield Reason("jug_would_harm", params, "jug.holds")
