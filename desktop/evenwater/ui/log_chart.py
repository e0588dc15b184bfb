"""The chart of the log: readings over days or years, the range usually kept, doses and exchanges on the same axis.

Zoomed with the buttons, the keys, or Ctrl and the wheel; panned with the arrow keys or the hand. Painted by itself:
a few thousand points need no library, and every point stays a reading that was taken.
"""

from __future__ import annotations

import math
from datetime import datetime, tzinfo
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from evenwater.screens.logbook import HistoryView
from evenwater.screens.shown import decimal
from evenwater.ui.announce import Announcer
from evenwater.ui.chart_axis import Widths, long_ticks, moment_text, value_ticks
from evenwater.ui.chart_export import ChartExport
from evenwater.ui.chart_items import Scale, cut_to_width, polygon
from evenwater.ui.paper_style import draw_frame
from evenwater.ui.theme import scaled, tokens_of
from evenwater.wording import marked, say

if TYPE_CHECKING:
    from evenwater.screens.chart_table import ChartTable

DAY = 86400.0
SPANS = ((marked("Month"), 30.0), (marked("Quarter"), 91.0), (marked("Year"), 365.0), (marked("All"), math.inf))
_LEAST_SPAN = DAY
# Radius of a reading, and of one among so many that they would lie on each other [px].
_DOT, _SMALL_DOT = 2.6, 1.2
_EXCHANGE = 9.0
_GIVEN, _NEW_WATER = marked("mL given"), marked("new water")
_NOTHING = marked("No readings yet. What is noted at the left appears here.")


class LogChart(QWidget):
    """Shows a ``HistoryView``; ``show_span`` and the keys choose the stretch of time."""

    def __init__(self, parent: QWidget | None = None, zone: tzinfo | None = None) -> None:
        """Make the chart, still empty."""
        super().__init__(parent)
        self._zone = zone
        self._view: HistoryView | None = None
        self._start, self._end = 0.0, 1.0
        self._grip: tuple[float, float] | None = None
        self._cursor: float | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumHeight(240)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(say("Chart of the log"))
        self.saving = ChartExport(self, self, 560)

    def sizeHint(self) -> QSize:
        """Ask for a shelf laptop's width."""
        return QSize(800, 320)

    def render(self, view: HistoryView | None) -> None:  # type: ignore[override]
        """Show a parameter's readings; the stretch of time stays when it holds some of them."""
        first = self._view is None
        self._view = view if view is not None and view.times.size else None
        if self._view is not None:
            inside = (self._view.times >= self._start) & (self._view.times <= self._end)
            if first or not inside.any():
                self.show_span(math.inf)
        self.setAccessibleDescription(self._in_words())
        self.saving.offer(self._view is not None)
        self.update()

    def show_span(self, days: float) -> None:
        """Show the last so many days, or everything."""
        if self._view is None:
            return
        times = self._view.times
        last = self._last()
        span = (last - float(times[0])) if math.isinf(days) else days * DAY
        span = max(span, _LEAST_SPAN)
        self._set_range(last - span - 0.02 * span, last + 0.03 * span)

    @property
    def span(self) -> tuple[float, float]:
        """The stretch of time that is shown [s since the epoch]."""
        return self._start, self._end

    def _last(self) -> float:
        """Return the last instant there is something at: a reading, or the end of what a plan expects."""
        view = self._view
        assert view is not None
        return max([float(view.times[-1]), *(float(one.times[-1]) for one in view.projected)])

    def zoom(self, factor: float, at: float | None = None) -> None:
        """Show a shorter or longer stretch of time around an instant [s]."""
        middle = (self._start + self._end) / 2.0 if at is None else at
        left, right = (middle - self._start) * factor, (self._end - middle) * factor
        if left + right >= _LEAST_SPAN:
            self._set_range(middle - left, middle + right)

    def pan(self, share: float) -> None:
        """Move along the axis by a share of what is shown."""
        step = (self._end - self._start) * share
        self._set_range(self._start + step, self._end + step)

    def _set_range(self, start: float, end: float) -> None:
        if self._view is None:
            return
        # Never so far away that nothing of the log is left in sight.
        first, last = float(self._view.times[0]), self._last()
        width = min(end - start, 3.0 * max(last - first, 30.0 * DAY))
        start = min(max(start, first - 0.9 * width), last - 0.1 * width)
        self._start, self._end = start, start + width
        self.update()

    # Keys and mouse

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Zoom with plus and minus, pan with the arrows, show all with Home; Shift and an arrow read one reading after the other."""
        key = event.key()
        away = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(key), 0)
        if key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom(0.7)
        elif key == Qt.Key.Key_Minus:
            self.zoom(1.4)
        elif away and event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self._read_on(away)
        elif away:
            self.pan(0.2 * away)
        elif key == Qt.Key.Key_Home:
            self.show_span(math.inf)
        else:
            event.ignore()

    def _read_on(self, away: int) -> None:
        """Read the next reading or the one before, and bring it into sight."""
        view = self._view
        if view is None or not view.times.size:
            return
        last = view.times.size - 1
        at = last + 1 if self._cursor is None else int(np.argmin(np.abs(view.times - self._cursor)))
        self._cursor = float(view.times[min(max(at + away, 0), last)])
        if not self._start <= self._cursor <= self._end:
            half = (self._end - self._start) / 2.0
            self._set_range(self._cursor - half, self._cursor + half)
        self.setAccessibleDescription(self.reading_words())
        Announcer.of(self).say(self.reading_words())
        self.update()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom with Ctrl and the wheel; without it the page scrolls."""
        if not event.modifiers() & Qt.KeyboardModifier.ControlModifier or self._view is None:
            event.ignore()
            return
        self.zoom(0.85 ** (event.angleDelta().y() / 120.0), self._scales()[0].at(event.position().x()))
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take the axis in hand."""
        if event.button() == Qt.MouseButton.LeftButton:
            self.setFocus(Qt.FocusReason.MouseFocusReason)
            if self._view is not None:
                # Read at once what was pressed, which needs no mouse that hovers.
                self._cursor = self._scales()[0].at(event.position().x())
                self.update()
            self._grip = (event.position().x(), self._start)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Pan while it is in hand; else read what lies under the mouse."""
        if self._view is None:
            return
        plot = self._scales()[0]
        if self._grip is not None:
            x, start = self._grip
            away = (x - event.position().x()) / max(plot.rect.width(), 1.0) * (self._end - self._start)
            self._set_range(start + away, start + away + self._end - self._start)
        else:
            self._cursor = plot.at(event.position().x())
            self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        self._grip = None

    def leaveEvent(self, event: QEvent) -> None:
        """Read nothing any more."""
        self._cursor = None
        self.update()

    # Saving

    def table(self) -> ChartTable | None:
        """Return the figures that are shown."""
        from evenwater.screens.chart_table import of_history

        return None if self._view is None else of_history(self._view, self._start, self._end)

    def twin(self) -> LogChart:
        """Return another chart that shows the same."""
        made = LogChart(None, self._zone)
        made.render(self._view)
        made._set_range(self._start, self._end)
        made.saving.button.hide()
        return made

    # Painting

    def _scales(self) -> tuple[Scale, Scale]:
        """Return the scales of the values and of the doses below them."""
        view = self._view
        assert view is not None
        metrics = QFontMetricsF(scaled(self.font(), 10))
        line = metrics.height()
        words = max(metrics.horizontalAdvance(say(_GIVEN)), metrics.horizontalAdvance(say(_NEW_WATER)))
        left, right, bottom = words + 18.0, self.width() - 14.0, self.height() - line - 14.0
        row = 44.0 if view.doses_at.size else 0.0
        doses = QRectF(left, bottom - row, right - left, row)
        top = (3.4 if view.exchanges_at.size else 2.2) * line
        plot = QRectF(left, top, right - left, doses.top() - top - (12.0 if row else 0.0))
        shown = view.values[(view.times >= self._start) & (view.times <= self._end)]
        ahead = [one.high for one in view.projected if one.times[-1] >= self._start and one.times[0] <= self._end]
        values = np.concatenate((shown, np.asarray(view.kept), *ahead))
        low, high = float(values.min()), float(values.max())
        pad = 0.08 * max(high - low, 10.0**-view.decimals)
        most = float(view.doses_ml.max()) * 1.1 if view.doses_ml.size else 1.0
        return (
            Scale(plot, self._start, self._end, low - pad, high + pad),
            Scale(doses, self._start, self._end, 0.0, max(most, 1e-9)),
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint everything."""
        tokens = tokens_of(self.palette())
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), QColor(tokens.leaf))
            painter.setFont(scaled(self.font(), 10))
            if self._view is None:
                painter.setPen(QColor(tokens.muted))
                painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, say(_NOTHING))
            else:
                self._paint(painter, self._view)
            if self.hasFocus():
                draw_frame(painter, self.rect(), QColor(tokens.blue), Qt.BrushStyle.NoBrush, 2)

    def _paint(self, painter: QPainter, view: HistoryView) -> None:
        tokens = tokens_of(self.palette())
        plot, doses = self._scales()
        metrics = QFontMetricsF(painter.font())
        band = QRectF(
            plot.rect.left(), plot.y(view.kept[1]), plot.rect.width(), plot.y(view.kept[0]) - plot.y(view.kept[1])
        )
        painter.fillRect(band.intersected(plot.rect), QColor(tokens.wash))
        self._paint_axes(painter, view, plot, doses, metrics)
        painter.setClipRect(plot.rect.adjusted(-3, -3, 3, 3))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        near = np.flatnonzero((view.times >= self._start - 30 * DAY) & (view.times <= self._end + 30 * DAY))
        x, y = plot.xs(view.times[near]), plot.ys(view.values[near])
        if x.size > 1:
            line_x, line_y = cut_to_width(x, y, int(plot.rect.width()))
            painter.setPen(QPen(QColor(tokens.blue), 1.4))
            painter.drawPolyline(polygon(line_x, line_y))
        if x.size <= plot.rect.width():
            roomy = x.size * 1.6 * _DOT <= plot.rect.width()
            dot = _DOT if roomy else _SMALL_DOT
            painter.setPen(QPen(QColor(tokens.leaf), 1) if roomy else Qt.PenStyle.NoPen)
            painter.setBrush(QColor(tokens.ink))
            for a, b in zip(x.tolist(), y.tolist(), strict=True):
                painter.drawEllipse(QPointF(a, b), dot, dot)
        self._paint_projected(painter, view, plot)
        self._paint_odd(painter, view, plot)
        painter.setClipping(False)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        self._paint_doses(painter, view, plot, doses)
        self._paint_head(painter, view, plot, metrics)

    def _paint_axes(
        self, painter: QPainter, view: HistoryView, plot: Scale, doses: Scale, metrics: QFontMetricsF
    ) -> None:
        tokens = tokens_of(self.palette())
        bottom = doses.rect.bottom()
        widths = Widths(scaled(self.font(), 10, bold=True))
        times = long_ticks(self._start, self._end, plot.rect.width(), widths, self._zone)
        marks = value_ticks(plot.low, plot.high, plot.rect.height(), 1.6 * metrics.height())
        painter.setPen(QPen(QColor(tokens.faint), 1))
        painter.drawLines(
            [QLineF(plot.rect.left(), round(plot.y(m.at)), plot.rect.right(), round(plot.y(m.at))) for m in marks]
        )
        painter.drawLines(
            [QLineF(round(plot.x(t.at)), plot.rect.top(), round(plot.x(t.at)), bottom) for t in times if t.text]
        )
        painter.setPen(QPen(QColor(tokens.rule), 1))
        painter.drawLine(QLineF(plot.rect.left(), plot.rect.top(), plot.rect.left(), bottom))
        painter.drawLine(QLineF(plot.rect.left(), bottom, plot.rect.right(), bottom))
        painter.setPen(QColor(tokens.ink))
        for mark in marks:
            width = metrics.horizontalAdvance(mark.text)
            painter.drawText(
                QPointF(plot.rect.left() - 8 - width, plot.y(mark.at) + 0.35 * metrics.ascent()), mark.text
            )
        # The last stretch of the line of dates is the button's that saves the chart.
        edge, free = -1e9, self.width() - self.saving.side - 4.0
        for tick in times:
            width = metrics.horizontalAdvance(tick.text)
            left = min(max(plot.x(tick.at) - width / 2, plot.rect.left()), plot.rect.right() - width)
            if tick.text and left > edge and left + width < free:
                painter.drawText(QPointF(left, bottom + 6 + metrics.ascent()), tick.text)
                edge = left + width + 12

    def _paint_projected(self, painter: QPainter, view: HistoryView, plot: Scale) -> None:
        """Draw what plans expected: a dashed line between the dotted edges of its band."""
        ink = QColor(tokens_of(self.palette()).ink)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for one in view.projected:
            if one.times[-1] < self._start or one.times[0] > self._end:
                continue
            x = plot.xs(one.times)
            for series, pattern in ((one.plan, [6.0, 4.0]), (one.low, [1.0, 3.0]), (one.high, [1.0, 3.0])):
                pen = QPen(ink, 1.2)
                pen.setDashPattern(pattern)
                painter.setPen(pen)
                painter.drawPolyline(polygon(x, plot.ys(series)))

    def _paint_odd(self, painter: QPainter, view: HistoryView, plot: Scale) -> None:
        """Ring the readings that are not believed; the list says why."""
        painter.setPen(QPen(QColor(tokens_of(self.palette()).stop), 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for index in view.odd:
            painter.drawEllipse(QPointF(plot.x(float(view.times[index])), plot.y(float(view.values[index]))), 7, 7)

    def _paint_doses(self, painter: QPainter, view: HistoryView, plot: Scale, doses: Scale) -> None:
        tokens = tokens_of(self.palette())
        painter.setPen(QPen(QColor(tokens.rule), 2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
        inside = (view.doses_at >= self._start) & (view.doses_at <= self._end)
        tops = np.round(doses.ys(view.doses_ml[inside]))
        lines = zip(np.round(doses.xs(view.doses_at[inside])).tolist(), tops.tolist(), strict=True)
        painter.drawLines([QLineF(x, doses.rect.bottom(), x, top) for x, top in lines])
        if view.doses_at.size:
            painter.setPen(QColor(tokens.muted))
            painter.drawText(QPointF(8, doses.rect.center().y() + 4), say(_GIVEN))
        # A water exchange is a short stroke above the readings.
        inside = (view.exchanges_at >= self._start) & (view.exchanges_at <= self._end)
        foot = plot.rect.top() - 0.5 * QFontMetricsF(painter.font()).height()
        painter.setPen(QPen(QColor(tokens.ink), 1))
        painter.drawLines(
            [QLineF(round(x), foot - _EXCHANGE, round(x), foot) for x in plot.xs(view.exchanges_at[inside]).tolist()]
        )
        if view.exchanges_at.size:
            painter.setPen(QColor(tokens.muted))
            painter.drawText(QPointF(8, foot), say(_NEW_WATER))

    def _paint_head(self, painter: QPainter, view: HistoryView, plot: Scale, metrics: QFontMetricsF) -> None:
        tokens = tokens_of(self.palette())
        painter.setPen(QColor(tokens.muted))
        painter.drawText(QPointF(12, 4 + metrics.ascent()), view.title)
        said = self.reading_words()
        painter.setPen(QColor(tokens.ink))
        painter.drawText(QPointF(plot.rect.right() - metrics.horizontalAdvance(said), 4 + metrics.ascent()), said)

    def reading_words(self) -> str:
        """Return what the nearest reading to the cursor says, or the last one."""
        view = self._view
        if view is None:
            return ""
        at = view.times[-1] if self._cursor is None else view.times[int(np.argmin(np.abs(view.times - self._cursor)))]
        value = view.values[int(np.searchsorted(view.times, at))]
        when, last = (datetime.fromtimestamp(float(t), self._zone) for t in (at, view.times[-1]))
        year = "" if when.year == last.year else f" {when.year}"
        return f"{moment_text(float(at), self._zone)}{year}   {decimal(f'{value:.{view.decimals}f}')} {view.unit}"

    def _in_words(self) -> str:
        view = self._view
        if view is None:
            return say(_NOTHING)
        exchanges = say(", {size} water exchanges", size=view.exchanges_at.size) if view.exchanges_at.size else ""
        plans = (
            say(", {projected} plans drawn as dashed lines", projected=len(view.projected)) if view.projected else ""
        )
        return say(
            "{title}: {size} readings, {size_2} doses{exchanges}{plans}. The last: {reading_words}. Plus and minus zoom, the arrow keys move, with Shift they read one reading after the other.",
            title=view.title,
            size=view.times.size,
            size_2=view.doses_at.size,
            exchanges=exchanges,
            plans=plans,
            reading_words=self.reading_words(),
        )
