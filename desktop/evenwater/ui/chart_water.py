"""The chart's lowest row: pH before and after the doses, and aragonite saturation, on one time axis with the ramp."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from evenwater.screens.views import Floats, WaterRow
from evenwater.ui.chart_axis import Tick, value_ticks
from evenwater.ui.chart_items import Scale, SceneItem, polygon
from evenwater.ui.chart_labels import Label, end_labels

# A change of pH smaller than this is no more than the width of the line.
_LEAST_PH = 0.1
_BETWEEN = 8.0
_LEAST_SATURATION = 0.5


@dataclass(frozen=True)
class WaterScales:
    """Where the row stands: pH in its upper half, saturation in the lower one [px]."""

    ph: Scale
    saturation: Scale


def scales(row: WaterRow, rect: QRectF, start: float, end: float) -> WaterScales:
    """Return the scales of both lines in a rectangle [px] that shows ``start`` to ``end`` [s]."""
    half = (rect.height() - _BETWEEN) / 2.0
    upper = QRectF(rect.left(), rect.top(), rect.width(), half)
    lower = QRectF(rect.left(), rect.bottom() - half, rect.width(), half)
    ph = Scale(upper, start, end, *_range(np.concatenate((row.ph, row.ph_after)), _LEAST_PH))
    return WaterScales(ph, Scale(lower, start, end, *_range(row.saturation, _LEAST_SATURATION)))


def marks(scale: Scale, space: float) -> list[tuple[float, Tick]]:
    """Return the ticks of a half with their heights [px], at least ``space`` [px] apart."""
    found = value_ticks(scale.low, scale.high, scale.rect.height(), space)
    return [(scale.y(tick.at), tick) for tick in found]


def names(row: WaterRow, at: WaterScales, metrics: QFontMetricsF, width: float) -> list[Label]:
    """Place the names of both lines at their ends, right of the row."""
    ends = [
        (row.ph_name, at.ph.y(float(row.ph[-1])), False),
        (row.saturation_name, at.saturation.y(float(row.saturation[-1])), False),
    ]
    low, high = at.ph.rect.top() - 2, at.saturation.rect.bottom() + metrics.height()
    return end_labels(ends, at.ph.rect, low, high, metrics, width)


def _range(values: Floats, least: float) -> tuple[float, float]:
    low, high = float(values.min()), float(values.max())
    middle, half = (low + high) / 2.0, max(high - low, least) / 2.0
    return middle - 1.25 * half, middle + 1.25 * half


class WaterLines(SceneItem):
    """pH as a solid line with a wash up to its value right after a dose; saturation dashed."""

    def __init__(self) -> None:
        super().__init__(-4.0)
        self._ph = self._wash = self._saturation = QPolygonF()
        self._levels: list[QLineF] = []

    def set_data(self, row: WaterRow, at: WaterScales, levels: list[float]) -> None:
        """Set both lines, and the heights of the grid's lines [px]."""
        x = at.ph.xs(row.times)
        before, after = at.ph.ys(row.ph), at.ph.ys(row.ph_after)
        self._ph = polygon(x, before)
        self._wash = polygon(np.concatenate((x, x[::-1])), np.concatenate((before, after[::-1])))
        self._saturation = polygon(x, at.saturation.ys(row.saturation))
        left, right = at.ph.rect.left(), at.ph.rect.right()
        self._levels = [QLineF(left, round(y), right, round(y)) for y in levels]
        self.set_area(at.ph.rect.united(at.saturation.rect).adjusted(-1, -1, 1, 1))

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Paint grid, wash and lines."""
        if self._tokens is None:
            return
        tokens = self._tokens
        painter.setPen(QPen(QColor(tokens.faint), 1))
        painter.drawLines(self._levels)
        # While the end of the ramp is in hand the ground stays, and the lines may run out of it.
        painter.setClipRect(self._area)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(tokens.wash))
        painter.drawPolygon(self._wash)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(tokens.ink), 1))
        painter.drawPolyline(self._ph)
        dashed = QPen(QColor(tokens.ink), 1)
        dashed.setDashPattern([4.0, 4.0])
        painter.setPen(dashed)
        painter.drawPolyline(self._saturation)
