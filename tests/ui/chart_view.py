"""A ramp to draw: alkalinity from 6.8 to 8.4 dKH, reckoned here and not by the engine; and a hand that leads its end."""

from __future__ import annotations

from datetime import UTC, datetime

import numpy as np
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

from evenwater.screens.views import ChartView, WaterRow
from evenwater.ui.chart import RampChart

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


def water(hours: float = FASTEST_H, points: int = 11, **changes: object) -> WaterRow:
    """Return pH and aragonite saturation that climb in straight lines over ``hours`` [h] and stay for ten more."""
    times = START + np.append(np.linspace(0.0, hours, points), hours + 10.0) * 3600.0
    climb = np.append(np.linspace(0.0, 1.0, points), 1.0)
    given = {
        "times": times,
        "ph": 8.1 + 0.1 * climb,
        "ph_after": 8.14 + 0.1 * climb,
        "saturation": 2.9 + 0.8 * climb,
        "ph_name": "pH 8.2",
        "saturation_name": "aragonite 3.7",
    }
    return WaterRow(**{**given, **changes})  # type: ignore[arg-type]


def mouse(chart: RampChart, kind: QMouseEvent.Type, place: QPointF) -> None:
    """Send an event of the left button to the picture."""
    viewport = chart.picture.view.viewport()
    held = Qt.MouseButton.LeftButton
    button = Qt.MouseButton.NoButton if kind == QMouseEvent.Type.MouseMove else held
    event = QMouseEvent(kind, place, viewport.mapToGlobal(place), button, held, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(viewport, event)


def handle(chart: RampChart) -> QPointF:
    """Return where the end of the ramp can be taken."""
    place = chart.picture.marks.handle
    assert place is not None
    return place


def drag(chart: RampChart, by_px: float, *, release: bool = True) -> None:
    """Take the end of the ramp and lead it so many pixels to the right."""
    start = handle(chart) + QPointF(5, 3)
    mouse(chart, QMouseEvent.Type.MouseButtonPress, start)
    for part in (0.3, 0.7, 1.0):
        mouse(chart, QMouseEvent.Type.MouseMove, start + QPointF(by_px * part, 0))
    if release:
        mouse(chart, QMouseEvent.Type.MouseButtonRelease, start + QPointF(by_px, 0))
