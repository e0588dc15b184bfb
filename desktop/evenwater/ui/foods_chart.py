"""Small charts of nitrate and phosphate over the next weeks, beside each other; the table below them has the figures."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, QSize
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from evenwater.screens.foods_chart import BARE, FED, USUAL, Panel
from evenwater.ui.chart_axis import value_ticks
from evenwater.ui.chart_export import ChartExport
from evenwater.ui.chart_items import Scale, polygon
from evenwater.ui.chart_paper import paint_ends
from evenwater.ui.theme import GRID, scaled, tokens_of
from evenwater.wording import say

if TYPE_CHECKING:
    from evenwater.screens.chart_table import ChartTable

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
        self.setAccessibleName(say("Chart of nitrate and phosphate"))
        self.saving = ChartExport(self, self, 380)

    def sizeHint(self) -> QSize:
        """Ask for a shelf laptop's width."""
        return QSize(400, self.minimumHeight())

    def set_panels(self, panels: tuple[Panel, ...]) -> None:
        """Show these values."""
        self.setVisible(bool(panels))
        if panels != self._panels:
            self._panels = panels
            self.saving.offer(bool(panels))
            self.setAccessibleDescription(" ".join(panel.spoken for panel in panels))
            self.update()

    # Saving

    def table(self) -> ChartTable | None:
        """Return the figures that are shown."""
        from evenwater.screens.chart_table import of_foods

        return of_foods(self._panels) if self._panels else None

    def twin(self) -> FoodsChart:
        """Return another chart that shows the same."""
        made = FoodsChart()
        made.set_panels(self._panels)
        made.saving.button.hide()
        return made

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
        names = max(metrics.horizontalAdvance(name) for name in (say(FED), say(BARE), say(USUAL)))
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
            text = say("now") if not week else say("{week}\u00a0weeks", week=week)
            middle = scale.x(7.0 * week) - metrics.horizontalAdvance(text) / 2.0
            painter.drawText(QPointF(middle, base), text)
        painter.setPen(QPen(QColor(tokens.rule), 1))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        self._paint_lines(painter, panel, scale)

    def _paint_lines(self, painter: QPainter, panel: Panel, scale: Scale) -> None:
        """Draw each line with its name at its end; two names never lie on each other."""
        tokens, days = tokens_of(self.palette()), np.array(panel.days)
        level = (panel.usual,) * len(panel.days)
        ends: list[tuple[float, str, str]] = []
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for line, values in ((FED, panel.fed), (BARE, panel.bare), (USUAL, level)):
            colour = tokens.blue if line == FED else tokens.ink
            pen = QPen(QColor(colour), 2.0 if line == FED else 1.2)
            if line in _DASHES:
                pen.setDashPattern(_DASHES[line])
            painter.setPen(pen)
            painter.drawPolyline(polygon(scale.xs(days), scale.ys(np.array(values))))
            ends.append((scale.y(values[-1]), say(line), colour))
        paint_ends(painter, scale.rect, ends, 6.0)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
