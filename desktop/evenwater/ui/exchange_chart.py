"""The chart of an exchange: one value against days, with its band, the new water and where it settles.

Painted by itself: a curve and two lines need no library. The arrow keys and the mouse read it point by point.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from evenwater.screens.exchange_chart import CourseChart
from evenwater.ui.announce import Announcer
from evenwater.ui.chart_axis import value_ticks
from evenwater.ui.chart_export import ChartExport
from evenwater.ui.chart_items import Scale, polygon
from evenwater.ui.chart_paper import chart_paper, paint_ends
from evenwater.ui.theme import scaled, tokens_of
from evenwater.wording import marked, say

if TYPE_CHECKING:
    from evenwater.screens.chart_table import ChartTable

NOTHING = marked("Nothing to show yet. What is exchanged is entered at the left.")
_NEW, _SETTLES = marked("new water"), marked("settles")


class ExchangeChart(QWidget):
    """Shows a ``CourseChart``."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make the chart, still empty."""
        super().__init__(parent)
        self._view: CourseChart | None = None
        self._cursor = -1
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumHeight(self._least())
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(say("Chart of the exchange"))
        self.saving = ChartExport(self, self, 560)
        self.render(None)

    def _least(self) -> int:
        """Return the height that fourteen lines of words need, never less than a chart can be read at [px]."""
        return max(280, round(14.0 * QFontMetricsF(scaled(self.font(), 10)).height()))

    def sizeHint(self) -> QSize:
        """Ask for a shelf laptop's width."""
        return QSize(600, self._least())

    def render(self, view: CourseChart | None) -> None:  # type: ignore[override]
        """Show a value's course, or that there is nothing to show."""
        if view is None or self._view is None or view.parameter != self._view.parameter:
            self._cursor = -1
        self._view = view
        self.saving.offer(view is not None)
        self._cursor = min(self._cursor, -1 if view is None else view.days.size - 1)
        self.setAccessibleDescription(
            say(NOTHING) if view is None else say("{spoken} The arrow keys read it day by day.", spoken=view.spoken)
        )
        self.update()

    @property
    def view(self) -> CourseChart | None:
        """What is shown."""
        return self._view

    def reading_words(self) -> str:
        """Return what the chart says at the cursor, or on the last day."""
        return "" if self._view is None else self._view.words_at(self._cursor)

    # Keys and mouse

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Read the course with the arrows, a twentieth of it at a time; Home and End go to its ends."""
        view, key = self._view, event.key()
        keys = (Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Home, Qt.Key.Key_End)
        if view is None or key not in keys:
            event.ignore()
            return
        last = view.days.size - 1
        here = self._cursor if self._cursor >= 0 else last
        step = max(1, last // 20)
        ends = {Qt.Key.Key_Home: 0, Qt.Key.Key_End: last}
        wanted = ends.get(Qt.Key(key), here + (step if key == Qt.Key.Key_Right else -step))
        self._cursor = min(max(wanted, 0), last)
        self.setAccessibleDescription(view.words_at(self._cursor))
        Announcer.of(self).say(view.words_at(self._cursor))
        self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Read what lies below the mouse."""
        if self._view is not None:
            day = self._scale(self._view).at(event.position().x())
            self._cursor = int(np.argmin(np.abs(self._view.days - day)))
            self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take the keys, and read what was pressed, which needs no mouse that hovers."""
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        self.mouseMoveEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        """Read the last day again."""
        self._cursor = -1
        self.update()

    # Saving

    def table(self) -> ChartTable | None:
        """Return the figures that are shown."""
        from evenwater.screens.chart_table import of_exchange

        return None if self._view is None else of_exchange(self._view)

    def twin(self) -> ExchangeChart:
        """Return another chart that shows the same."""
        made = ExchangeChart()
        made.render(self._view)
        made.saving.button.hide()
        return made

    # Painting

    def _scale(self, view: CourseChart) -> Scale:
        metrics = QFontMetricsF(scaled(self.font(), 10))
        line = metrics.height()
        right = max(metrics.horizontalAdvance(name) for name, _ in self._named(view))
        plot = QRectF(4.2 * metrics.averageCharWidth() + 20.0, 2.6 * line, 0.0, self.height() - 4.9 * line - 12.0)
        plot.setRight(max(self.width() - right - 18.0, plot.left() + 1.0))
        shown = [view.low.min(), view.high.max(), view.new_water, *([] if view.settles is None else [view.settles])]
        low, high = float(min(shown)), float(max(shown))
        # A value that hardly moves is no cliff.
        pad = max(0.08 * (high - low), 0.01 * abs(high), 1e-9)
        return Scale(plot, 0.0, float(view.days[-1]), max(0.0, low - pad), high + pad)

    @staticmethod
    def _named(view: CourseChart) -> list[tuple[str, float]]:
        """Return the lines that have their name at the right: new water first, then where it settles."""
        named = [(say(_NEW), view.new_water)]
        return named if view.settles is None else [*named, (say(_SETTLES), view.settles)]

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint everything."""
        with chart_paper(self, say(NOTHING) if self._view is None else "") as painter:
            if self._view is not None:
                self._paint(painter, self._view)

    def _paint(self, painter: QPainter, view: CourseChart) -> None:
        scale, metrics = self._scale(view), QFontMetricsF(painter.font())
        self._paint_axes(painter, scale, metrics)
        self._paint_band(painter, view, scale)
        self._paint_levels(painter, view, scale)
        self._paint_course(painter, view, scale)
        self._paint_words(painter, view, scale, metrics)

    def _paint_axes(self, painter: QPainter, scale: Scale, metrics: QFontMetricsF) -> None:
        tokens, rect = tokens_of(self.palette()), scale.rect
        marks = value_ticks(scale.low, scale.high, rect.height(), 1.8 * metrics.height())
        days = value_ticks(scale.start, scale.end, rect.width(), 9.0 * metrics.averageCharWidth())
        painter.setPen(QPen(QColor(tokens.faint), 1))
        for mark in marks:
            y = round(scale.y(mark.at))
            painter.drawLine(QLineF(rect.left(), y, rect.right(), y))
        painter.setPen(QPen(QColor(tokens.rule), 1))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        for day in days:
            painter.drawLine(QLineF(scale.x(day.at), rect.bottom(), scale.x(day.at), rect.bottom() + 4.0))
        painter.setPen(QColor(tokens.ink))
        for mark in marks:
            width = metrics.horizontalAdvance(mark.text)
            painter.drawText(QPointF(rect.left() - 8.0 - width, scale.y(mark.at) + 0.35 * metrics.ascent()), mark.text)
        base = rect.bottom() + 6.0 + metrics.ascent()
        for day in days:
            painter.drawText(QPointF(scale.x(day.at) - metrics.horizontalAdvance(day.text) / 2.0, base), day.text)
        painter.setPen(QColor(tokens.muted))
        name = say("days")
        painter.drawText(
            QPointF(rect.center().x() - metrics.horizontalAdvance(name) / 2.0, base + metrics.height()), name
        )

    def _paint_band(self, painter: QPainter, view: CourseChart, scale: Scale) -> None:
        """Fill between the courses at either end of the volume's interval."""
        xs = scale.xs(view.days)
        outline = np.concatenate([xs, xs[::-1]]), np.concatenate([scale.ys(view.low), scale.ys(view.high)[::-1]])
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(tokens_of(self.palette()).wash))
        painter.drawPolygon(polygon(*outline))
        painter.setBrush(Qt.BrushStyle.NoBrush)

    def _paint_levels(self, painter: QPainter, view: CourseChart, scale: Scale) -> None:
        """Draw the new water dotted and where it settles dashed, each with its name at the right."""
        ink = tokens_of(self.palette()).ink
        ends: list[tuple[float, str, str]] = []
        for name, value in self._named(view):
            y = round(scale.y(value)) + 0.5
            pen = QPen(QColor(ink), 1.2)
            pen.setDashPattern([1.5, 3.0] if name == say(_NEW) else [6.0, 4.0])
            painter.setPen(pen)
            painter.drawLine(QLineF(scale.rect.left(), y, scale.rect.right(), y))
            ends.append((y, name, ink))
        paint_ends(painter, scale.rect, ends)

    def _paint_course(self, painter: QPainter, view: CourseChart, scale: Scale) -> None:
        tokens = tokens_of(self.palette())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(tokens.blue), 2.0))
        painter.drawPolyline(polygon(scale.xs(view.days), scale.ys(view.values)))
        if self._cursor >= 0:
            here = QPointF(scale.x(float(view.days[self._cursor])), scale.y(float(view.values[self._cursor])))
            painter.setBrush(QColor(tokens.blue))
            painter.drawEllipse(here, 4.0, 4.0)
            painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)

    def _paint_words(self, painter: QPainter, view: CourseChart, scale: Scale, metrics: QFontMetricsF) -> None:
        """Write the title and what is read at the left and right of the head, one below the other where it is narrow."""
        tokens = tokens_of(self.palette())
        painter.setPen(QColor(tokens.muted))
        painter.drawText(QPointF(12.0, 4.0 + metrics.ascent()), view.title)
        said = self.reading_words()
        painter.setPen(QColor(tokens.ink))
        left = self.width() - 12.0 - metrics.horizontalAdvance(said)
        below = left < 24.0 + metrics.horizontalAdvance(view.title)
        painter.drawText(QPointF(left, 4.0 + metrics.ascent() + (metrics.height() if below else 0.0)), said)
