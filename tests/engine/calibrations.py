"""Invented pumps and their runs."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

from evenwater.engine.calibration import CalibrationAnswer, CalibrationQuestion, Earlier, solve
from evenwater.engine.calibration_runs import Means, Run
from evenwater.engine.correction import Refused
from evenwater.engine.pump_wear import LIFE_HOURS, Calibrated
from evenwater.engine.quantities import Water
from evenwater.engine.weighing import Conditions, HalfWidths

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
CONDITIONS = Conditions(Water(0.0, 22.0), 22.0, 1013.0, 50.0)
MEANS = Means(0.5, 0.0, "glass", 0.01, 0.02, 0.3, CONDITIONS, HalfWidths(0.5, 0.0, 1.0, 5.0, 10.0))


def read_off(*volumes: float, seconds: float = 60.0, doses: int = 1) -> tuple[Run, ...]:
    """Return runs into a cylinder [mL]."""
    return tuple(Run(seconds, volume_ml=volume, doses=doses) for volume in volumes)


def weighed(*masses: float, seconds: float = 60.0) -> tuple[Run, ...]:
    """Return runs onto a scale [g]."""
    return tuple(Run(seconds, mass_g=mass) for mass in masses)


def question(runs: tuple[Run, ...], means: Means = MEANS, **fields: Any) -> CalibrationQuestion:
    """Ask about runs; what is not said is not known."""
    plain = CalibrationQuestion(
        now=NOW, runs=runs, means=means, setting=None, dose=None, wanted=0.01, hours=None, life=LIFE_HOURS, per_day=None,
        earlier=(), line=None, record=None, assumed=(),
    )  # fmt: skip
    return replace(plain, **fields)


def answered(runs: tuple[Run, ...], means: Means = MEANS, **fields: Any) -> CalibrationAnswer:
    """Return the answer, which is no refusal."""
    found = solve(question(runs, means, **fields))
    assert isinstance(found, CalibrationAnswer), found
    return found


def refusal(runs: tuple[Run, ...], means: Means = MEANS, **fields: Any) -> list[tuple[str, str]]:
    """Return codes and places of a refusal."""
    found = solve(question(runs, means, **fields))
    assert isinstance(found, Refused), found
    return [(reason.code, reason.path) for reason in found.reasons]


def worn(*points: tuple[float, float], sd: float = 0.1) -> tuple[Calibrated, ...]:
    """Return calibrations at (running hours, flow), ten days for every hundred hours, the last of them today."""
    last = points[-1][0]
    return tuple(Calibrated(NOW - timedelta(days=(last - h) / 10.0), h, flow, sd) for h, flow in points)


def before(*points: tuple[float, float], hours: float, accuracy: float | None = 0.01) -> tuple[Earlier, ...]:
    """Return earlier calibrations at (running hours, flow) of a head that has run ``hours`` now, ten hours a day."""
    return tuple(Earlier(NOW - timedelta(days=(hours - h) / 10.0), h, flow, accuracy) for h, flow in points)
