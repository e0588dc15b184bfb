"""The chart of a pump's wear: calibrations against running hours, their line, and the flow in use with its bounds.

Painted by itself: a head sees a few dozen calibrations at most. The arrow keys and the mouse read one after the other.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from evenwater.screens.pump_drift import WearView, point_words
from evenwater.ui.announce import Announcer
from evenwater.ui.chart_axis import value_ticks
from evenwater.ui.chart_export import ChartExport
from evenwater.ui.chart_items import Scale
from evenwater.ui.chart_paper import chart_paper, paint_ends
from evenwater.ui.theme import scaled, tokens_of
from evenwater.wording import marked, say, say_all

if TYPE_CHECKING:
    from evenwater.screens.chart_table import ChartTable

NOTHING = marked("No calibration with running hours yet. With two or more, the wear of the head shows here.")
TITLE = marked("mL per min against running hours of the head")
_DOT, _RING = 3.2, 7.5
# Bounds on both sides of the flow in use, as shares of it, with their names.
_BOUNDS = (
    (-0.05, marked("5\u00a0% less")),
    (-0.10, marked("10\u00a0% less")),
    (0.05, marked("5\u00a0% more")),
    (0.10, marked("10\u00a0% more")),
)
_IN_USE, _TODAY = marked("flow in use"), marked("today")


class WearChart(QWidget):
    """Shows a ``WearView``; ``picked`` carries the place of the calibration that was read with Enter or the mouse."""

    picked = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make the chart, still empty."""
        super().__init__(parent)
        self._view: WearView | None = None
        self._cursor = -1
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumHeight(self._least())
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(say("Chart of the pump's wear"))
        self.saving = ChartExport(self, self, 560)
        self.render(None)

    def _least(self) -> int:
        """Return the height that ten lines of words need, never less than a chart can be read at [px]."""
        return max(230, round(12.0 * QFontMetricsF(scaled(self.font(), 10)).height()))

    def sizeHint(self) -> QSize:
        """Ask for a shelf laptop's width."""
        return QSize(600, self._least() + 40)

    def render(self, view: WearView | None) -> None:  # type: ignore[override]
        """Show the wear of a pump, or that there is nothing to show."""
        self._view = view
        self._cursor = -1
        self.saving.offer(view is not None)
        self.setAccessibleDescription(
            say(NOTHING) if view is None else say("{spoken} The arrow keys read them one by one.", spoken=view.spoken)
        )
        self.update()

    @property
    def view(self) -> WearView | None:
        """What is shown."""
        return self._view

    def reading_words(self) -> str:
        """Return what the calibration under the cursor says, or the one that is shown."""
        view = self._view
        at = -1 if view is None else self._cursor if self._cursor >= 0 else view.chosen
        return "" if view is None or at < 0 else point_words(view, at)

    # Keys and mouse

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Read the calibrations one after the other with the arrows; Enter shows the one that is read."""
        view, key = self._view, event.key()
        if view is None or key not in (Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            event.ignore()
            return
        here = self._cursor if self._cursor >= 0 else view.chosen
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if here >= 0:
                self.picked.emit(here)
            return
        step = 1 if key == Qt.Key.Key_Right else -1
        self._cursor = min(max(here + step, 0), view.hours.size - 1)
        self.setAccessibleDescription(point_words(view, self._cursor))
        Announcer.of(self).say(point_words(view, self._cursor))
        self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Read what lies nearest to the mouse."""
        self._cursor = self._nearest(event.position().x())
        self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Show the calibration that lies nearest to the mouse."""
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        # Read at once what was pressed, which needs no mouse that hovers.
        self.mouseMoveEvent(event)
        if event.button() == Qt.MouseButton.LeftButton and self._view is not None:
            self.picked.emit(self._nearest(event.position().x()))

    def leaveEvent(self, event: QEvent) -> None:
        """Read the one that is shown again."""
        self._cursor = -1
        self.update()

    def _nearest(self, x: float) -> int:
        if self._view is None:
            return -1
        return int(np.argmin(np.abs(self._scale(self._view).xs(self._view.hours) - x)))

    # Saving

    def table(self) -> ChartTable | None:
        """Return the figures that are shown."""
        from evenwater.screens.chart_table import of_wear

        return None if self._view is None else of_wear(self._view, say(TITLE))

    def twin(self) -> WearChart:
        """Return another chart that shows the same."""
        made = WearChart()
        made.render(self._view)
        made.saving.button.hide()
        return made

    # Painting

    def _scale(self, view: WearView) -> Scale:
        metrics = QFontMetricsF(scaled(self.font(), 10))
        line = metrics.height()
        right = max(metrics.horizontalAdvance(name) for name in (say(_IN_USE), *(name for _, name in say_all(_BOUNDS))))
        plot = QRectF(
            4.2 * metrics.averageCharWidth() + 16.0,
            2.6 * line,
            0.0,
            self.height() - 2.6 * line - line - 16.0,
        )
        plot.setRight(self.width() - right - 18.0)
        # What is to be repeated may be off by anything; its interval must not press all others flat.
        counts = np.array(view.counts)
        values = [view.flows, view.lows[counts], view.highs[counts]]
        if view.setting is not None:
            values.append(view.setting * np.array([0.89, 1.06]))
        if view.expected is not None and view.half_width is not None:
            values.append(view.expected + view.half_width * np.array([-1.0, 1.0]))
        every = np.concatenate(values)
        low, high = float(every.min()), float(every.max())
        pad = 0.04 * max(high - low, 0.02 * high)
        first, last = float(view.hours.min()), max(float(view.hours.max()), view.now or 0.0)
        wide = max(last - first, 1.0)
        return Scale(plot, max(0.0, first - 0.06 * wide), last + 0.16 * wide, max(0.0, low - pad), high + pad)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint everything."""
        with chart_paper(self, say(NOTHING) if self._view is None else "") as painter:
            if self._view is not None:
                self._paint(painter, self._view)

    def _paint(self, painter: QPainter, view: WearView) -> None:
        scale, metrics = self._scale(view), QFontMetricsF(painter.font())
        self._paint_axes(painter, scale, metrics)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_bounds(painter, view, scale)
        painter.setClipRect(scale.rect)
        self._paint_line(painter, view, scale)
        painter.setClipping(False)
        self._paint_dots(painter, view, scale)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        self._paint_head(painter, scale, metrics)

    def _paint_axes(self, painter: QPainter, scale: Scale, metrics: QFontMetricsF) -> None:
        tokens, rect = tokens_of(self.palette()), scale.rect
        marks = value_ticks(scale.low, scale.high, rect.height(), 1.8 * metrics.height())
        hours = value_ticks(scale.start, scale.end, rect.width(), 11.0 * metrics.averageCharWidth())
        painter.setPen(QPen(QColor(tokens.faint), 1))
        for mark in marks:
            y = round(scale.y(mark.at))
            painter.drawLine(QLineF(rect.left(), y, rect.right(), y))
        painter.setPen(QPen(QColor(tokens.rule), 1))
        painter.drawLine(QLineF(rect.left(), rect.top(), rect.left(), rect.bottom()))
        painter.drawLine(QLineF(rect.left(), rect.bottom(), rect.right(), rect.bottom()))
        painter.setPen(QColor(tokens.ink))
        for mark in marks:
            width = metrics.horizontalAdvance(mark.text)
            painter.drawText(QPointF(rect.left() - 8 - width, scale.y(mark.at) + 0.35 * metrics.ascent()), mark.text)
        for tick in hours:
            text = f"{tick.text}\u00a0h"
            left = scale.x(tick.at) - metrics.horizontalAdvance(text) / 2.0
            painter.drawText(QPointF(left, rect.bottom() + 6.0 + metrics.ascent()), text)

    def _paint_bounds(self, painter: QPainter, view: WearView, scale: Scale) -> None:
        """Draw the flow in use, and where it is 5 % and 10 % off: dotted and dashed, each with its name at its end."""
        if view.setting is None:
            return
        tokens, rect = tokens_of(self.palette()), scale.rect
        lines = [(1.0, say(_IN_USE), None), *((1.0 + off, name, off) for off, name in say_all(_BOUNDS))]
        ends: list[tuple[float, str, str]] = []
        for factor, name, off in lines:
            value = view.setting * factor
            if not scale.low <= value <= scale.high:
                continue
            pen = QPen(QColor(tokens.rule if off is None else tokens.ink), 1.0 if off is None else 1.2)
            if off is not None:
                pen.setDashPattern([1.0, 3.0] if abs(off) < 0.07 else [7.0, 4.0])
            painter.setPen(pen)
            y = round(scale.y(value)) + 0.5
            painter.drawLine(QLineF(rect.left(), y, rect.right(), y))
            ends.append((y, name, tokens.muted if off is None else tokens.ink))
        paint_ends(painter, rect, ends)

    def _paint_line(self, painter: QPainter, view: WearView, scale: Scale) -> None:
        """Draw the line through the calibrations, dashed where it looks ahead, and what is expected today."""
        if view.slope is None or view.expected is None or view.now is None or view.half_width is None:
            return
        blue = QColor(tokens_of(self.palette()).blue)
        first = float(view.hours.min())

        def at(hours: float) -> QPointF:
            assert view.slope is not None
            assert view.expected is not None
            assert view.now is not None
            return QPointF(scale.x(hours), scale.y(view.expected + view.slope * (hours - view.now)))

        painter.setPen(QPen(blue, 2.0))
        painter.drawLine(at(first), at(view.now))
        ahead = QPen(blue, 1.4)
        ahead.setDashPattern([4.0, 4.0])
        painter.setPen(ahead)
        painter.drawLine(at(view.now), at(scale.end))
        here = at(view.now)
        painter.setPen(QPen(blue, 1.6))
        ends = (scale.y(view.expected + view.half_width), scale.y(view.expected - view.half_width))
        painter.drawLine(QLineF(here.x(), ends[0], here.x(), ends[1]))
        painter.setBrush(blue)
        painter.drawPolygon(QPolygonF([here + QPointF(*d) for d in ((0, -6), (6, 0), (0, 6), (-6, 0))]))

    def _paint_dots(self, painter: QPainter, view: WearView, scale: Scale) -> None:
        """Draw the calibrations with their 95 % intervals; those that do not count are hollow, the one shown has a ring."""
        tokens = tokens_of(self.palette())
        ink, leaf = QColor(tokens.ink), QColor(tokens.leaf)
        places = zip(
            scale.xs(view.hours).tolist(),
            scale.ys(view.flows).tolist(),
            scale.ys(view.lows).tolist(),
            scale.ys(view.highs).tolist(),
            view.counts,
            strict=True,
        )
        read = self._cursor if self._cursor >= 0 else view.chosen
        painter.setClipRect(scale.rect.adjusted(-_RING - 2.0, -2.0, _RING + 2.0, 2.0))
        for number, (x, y, low, high, counts) in enumerate(places):
            painter.setPen(QPen(ink, 1.2))
            painter.drawLines(
                [QLineF(x, low, x, high), QLineF(x - 4, low, x + 4, low), QLineF(x - 4, high, x + 4, high)]
            )
            painter.setBrush(ink if counts else leaf)
            painter.drawEllipse(QPointF(x, y), _DOT, _DOT)
            if number == read:
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(QColor(tokens.blue), 1.6))
                painter.drawEllipse(QPointF(x, y), _RING, _RING)
        painter.setClipping(False)

    def _paint_head(self, painter: QPainter, scale: Scale, metrics: QFontMetricsF) -> None:
        tokens, view = tokens_of(self.palette()), self._view
        assert view is not None
        painter.setPen(QColor(tokens.muted))
        painter.drawText(QPointF(12.0, 4.0 + metrics.ascent()), say(TITLE))
        said = self.reading_words()
        painter.setPen(QColor(tokens.ink))
        left = self.width() - 12.0 - metrics.horizontalAdvance(said)
        # In a narrow window it goes below the title.
        below = left < 24.0 + metrics.horizontalAdvance(say(TITLE))
        painter.drawText(QPointF(left, 4.0 + metrics.ascent() + (metrics.height() if below else 0.0)), said)
        if view.now is not None and view.expected is not None:
            painter.setPen(QColor(tokens.blue))
            x = scale.x(view.now) - metrics.horizontalAdvance(say(_TODAY)) / 2.0
            y = scale.y(view.expected + (view.half_width or 0.0)) - 10.0
            painter.drawText(QPointF(x, max(y, scale.rect.top() + metrics.ascent())), say(_TODAY))
