"""Small charts of nitrate and phosphate over the next weeks, beside each other; the table below them has the figures."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, QSize
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from evenwater.screens.foods_chart import BARE, FED, USUAL, Panel
from evenwater.ui.chart_axis import value_ticks
from evenwater.ui.chart_items import Scale, polygon
from evenwater.ui.theme import GRID, scaled, tokens_of

_LINES, _LEAST = 9.0, 180
_DASHES = {BARE: [1.5, 3.0], USUAL: [6.0, 4.0]}


class FoodsChart(QWidget):
    """Shows one panel for each value; hidden where there is none."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make the chart, still empty."""
        super().__init__(parent)
        self._panels: tuple[Panel, ...] = ()
        self.setMinimumHeight(max(_LEAST, round(_LINES * self._metrics().height())))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName("Chart of nitrate and phosphate")

    def sizeHint(self) -> QSize:
        """Ask for a shelf laptop's width."""
        return QSize(400, self.minimumHeight())

    def set_panels(self, panels: tuple[Panel, ...]) -> None:
        """Show these values."""
        self.setVisible(bool(panels))
        if panels != self._panels:
            self._panels = panels
            self.setAccessibleDescription(" ".join(panel.spoken for panel in panels))
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint all panels."""
        wide = (self.width() - (len(self._panels) - 1) * 2.0 * GRID) / max(len(self._panels), 1)
        with QPainter(self) as painter:
            painter.setFont(scaled(self.font(), 10))
            for number, panel in enumerate(self._panels):
                box = QRectF(number * (wide + 2.0 * GRID), 0.0, wide, self.height())
                painter.fillRect(box, QColor(tokens_of(self.palette()).leaf))
                self._paint(painter, panel, box)

    def _metrics(self) -> QFontMetricsF:
        return QFontMetricsF(scaled(self.font(), 10))

    def _scale(self, panel: Panel, box: QRectF) -> Scale:
        metrics = self._metrics()
        line = metrics.height()
        names = max(metrics.horizontalAdvance(name) for name in (FED, BARE, USUAL))
        plot = box.adjusted(4.2 * metrics.averageCharWidth() + 16.0, 1.9 * line, -names - 14.0, -1.2 * line - 10.0)
        plot.setRight(max(plot.right(), plot.left() + 1.0))
        high = max(*panel.fed, *panel.bare, panel.usual)
        return Scale(plot, 0.0, panel.days[-1], 0.0, 1.08 * high)

    def _paint(self, painter: QPainter, panel: Panel, box: QRectF) -> None:
        tokens, metrics, scale = tokens_of(self.palette()), self._metrics(), self._scale(panel, box)
        rect = scale.rect
        painter.setPen(QColor(tokens.ink))
        painter.drawText(QPointF(box.left() + 10.0, 4.0 + metrics.ascent()), panel.title)
        for mark in value_ticks(scale.low, scale.high, rect.height(), 1.8 * metrics.height()):
            y = round(scale.y(mark.at))
            painter.setPen(QPen(QColor(tokens.faint), 1))
            painter.drawLine(QLineF(rect.left(), y, rect.right(), y))
            painter.setPen(QColor(tokens.ink))
            left = rect.left() - 8.0 - metrics.horizontalAdvance(mark.text)
            painter.drawText(QPointF(left, scale.y(mark.at) + 0.35 * metrics.ascent()), mark.text)
        base = rect.bottom() + 6.0 + metrics.ascent()
        for week in (0, 4, 8):
            text = "now" if not week else f"{week}\u00a0weeks"
            middle = scale.x(7.0 * week) - metrics.horizontalAdvance(text) / 2.0
            painter.drawText(QPointF(middle, base), text)
        painter.setPen(QPen(QColor(tokens.rule), 1))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        self._paint_lines(painter, panel, scale, metrics)

    def _paint_lines(self, painter: QPainter, panel: Panel, scale: Scale, metrics: QFontMetricsF) -> None:
        """Draw each line with its name at its end; two names never lie on each other."""
        tokens, days = tokens_of(self.palette()), np.array(panel.days)
        level = (panel.usual,) * len(panel.days)
        taken: list[float] = []
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for name, values in ((FED, panel.fed), (BARE, panel.bare), (USUAL, level)):
            colour = QColor(tokens.blue if name == FED else tokens.ink)
            pen = QPen(colour, 2.0 if name == FED else 1.2)
            if name in _DASHES:
                pen.setDashPattern(_DASHES[name])
            painter.setPen(pen)
            painter.drawPolyline(polygon(scale.xs(days), scale.ys(np.array(values))))
            at = scale.y(values[-1])
            step = -metrics.height() if taken and at < taken[0] else metrics.height()
            while any(abs(at - other) < metrics.height() - 1.0 for other in taken):
                at += step
            taken.append(at)
            painter.setPen(colour)
            painter.drawText(QPointF(scale.rect.right() + 6.0, at + 0.35 * metrics.ascent()), name)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
