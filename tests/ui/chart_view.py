"""A ramp to draw: alkalinity from 6.8 to 8.4 dKH, reckoned here and not by the engine."""

from __future__ import annotations

from datetime import UTC, datetime

import numpy as np

from evenwater.screens.views import ChartView

START = datetime(2026, 11, 25, 9, tzinfo=UTC).timestamp()
FASTEST_H = 38.4


def ramp(
    hours: float = FASTEST_H, points: int = 200, use: float = 0.9, doses_per_day: int = 24, **changes: object
) -> ChartView:
    """Return a correction that takes ``hours`` [h], with upkeep after it."""
    low, high = 6.8, 8.4
    end = START + hours * 3600.0
    times = np.linspace(START, START + hours * 3600.0 * 1.36, points)
    days = (times - START) / 86400.0
    rise = (high - low) / (hours / 24.0)
    plan = np.minimum(low + rise * days, high)
    width = 0.1 + 0.22 * np.minimum(1.0, days * 24.0 / hours)
    at = np.arange(START, times[-1], 86400.0 / doses_per_day)
    given = {
        "times": times,
        "plan": plan,
        "low": plan - width,
        "high": plan + width,
        "uptake_stops": low + np.minimum(days, hours / 24.0) * rise + use * days,
        "nothing": np.maximum(low - use * days, 0.0),
        "target": high,
        "fastest": (np.array([START, START + FASTEST_H * 3600.0]), np.array([low, high])),
        "doses_at": at,
        "doses_ml": np.where(at < end, 4.8, 2.27),
        "ramp_end": end,
        "measured_at": START - 3600.0,
        "measured": low,
        "unit": "dKH",
        "title": "Alkalinity",
    }
    return ChartView(**{**given, **changes})  # type: ignore[arg-type]
