"""The chart of one value over the next 30 days with everything that runs: line, band by the net volume, usual range.

Painted by itself: some hundred points. The arrow keys and the mouse read it day by day.
"""

from __future__ import annotations

from datetime import tzinfo
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from evenwater.screens.shown import figure
from evenwater.screens.together_views import Course
from evenwater.screens.views import Floats
from evenwater.ui.announce import Announcer
from evenwater.ui.chart_axis import Widths, moment_text, time_ticks, value_ticks
from evenwater.ui.chart_export import ChartExport
from evenwater.ui.chart_items import Scale, polygon
from evenwater.ui.chart_paper import chart_paper, paint_ends
from evenwater.ui.theme import scaled, tokens_of
from evenwater.wording import marked, say

if TYPE_CHECKING:
    from evenwater.screens.chart_table import ChartTable

NOTHING = marked("Without a reading there is no course to draw.")
_DAY = 86400.0
_TOGETHER, _ALONE, _USUAL = marked("all together"), marked("without exchange"), marked("usually kept")
_LEAST = 230


class TogetherChart(QWidget):
    """Shows a ``Course``."""

    def __init__(self, parent: QWidget | None = None, zone: tzinfo | None = None) -> None:
        """Make the chart, still empty."""
        super().__init__(parent)
        self._course: Course | None = None
        self._zone = zone
        self._cursor = -1
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumHeight(_LEAST)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(say("Chart of all plans together"))
        self.saving = ChartExport(self, self, 560)
        self.render(None)

    def sizeHint(self) -> QSize:
        """Ask for a shelf laptop's width."""
        return QSize(520, _LEAST + 20)

    def render(self, course: Course | None) -> None:  # type: ignore[override]
        """Show a value, or that there is nothing to show."""
        self._course = course
        self._cursor = -1
        self.saving.offer(course is not None)
        self.setAccessibleDescription(
            say(NOTHING) if course is None else say("{spoken} The arrow keys read it day by day.", spoken=course.spoken)
        )
        self.update()

    @property
    def course(self) -> Course | None:
        """What is shown."""
        return self._course

    def reading_words(self) -> str:
        """Return what stands under the cursor: instant, value and band; nothing without a cursor."""
        course = self._course
        if course is None or self._cursor < 0:
            return ""
        low, value, high = (
            figure(float(series[self._cursor]), course.decimals) for series in (course.low, course.plan, course.high)
        )
        when = moment_text(float(course.times[self._cursor]), self._zone)
        band = "" if low == high else say(" ({low} to {high})", low=low, high=high)
        return f"{when}   {value}\u00a0{course.unit}{band}"

    # Keys and mouse

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Read day by day with the arrows."""
        course, key = self._course, event.key()
        if course is None or key not in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            event.ignore()
            return
        here = course.times[max(self._cursor, 0)]
        step = _DAY if key == Qt.Key.Key_Right else -_DAY
        self._cursor = 0 if self._cursor < 0 else int(np.argmin(np.abs(course.times - (here + step))))
        self.setAccessibleDescription(self.reading_words())
        Announcer.of(self).say(self.reading_words())
        self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Read what lies under the mouse."""
        if self._course is not None:
            at = self._scale(self._course).at(event.position().x())
            self._cursor = int(np.argmin(np.abs(self._course.times - at)))
            self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take the keys, and read what was pressed, which needs no mouse that hovers."""
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        self.mouseMoveEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        """Read nothing any more."""
        self._cursor = -1
        self.update()

    # Saving

    def table(self) -> ChartTable | None:
        """Return the figures that are shown."""
        from evenwater.screens.chart_table import of_together

        return None if self._course is None else of_together(self._course)

    def twin(self) -> TogetherChart:
        """Return another chart that shows the same."""
        made = TogetherChart(None, self._zone)
        made.render(self._course)
        made.saving.button.hide()
        return made

    # Painting

    def _scale(self, course: Course) -> Scale:
        metrics = QFontMetricsF(scaled(self.font(), 10))
        line = metrics.height()
        names = (say(_TOGETHER), say(_USUAL), *((say(_ALONE),) if course.exchanged else ()))
        right = max(metrics.horizontalAdvance(name) for name in names)
        plot = QRectF(6.2 * metrics.averageCharWidth() + 16.0, 2.0 * line, 0.0, self.height() - 3.6 * line - 8.0)
        plot.setRight(self.width() - right - 18.0)
        series = [course.low, course.high, *((course.alone,) if course.exchanged else ())]
        low, high = float(min(s.min() for s in series)), float(max(s.max() for s in series))
        # The edge of the usual range that is near enough to be of use is in sight.
        wide = max(high - low, 0.02 * max(abs(high), 1e-9))
        for edge in course.usual:
            if low - 1.5 * wide <= edge <= high + 1.5 * wide:
                low, high = min(low, edge), max(high, edge)
        pad = 0.06 * max(high - low, 0.02 * max(abs(high), 1e-9))
        return Scale(plot, float(course.times[0]), float(course.times[-1]), max(0.0, low - pad), high + pad)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint everything."""
        with chart_paper(self, say(NOTHING) if self._course is None else "") as painter:
            if self._course is not None:
                self._paint(painter, self._course)

    def _paint(self, painter: QPainter, course: Course) -> None:
        tokens, scale, metrics = tokens_of(self.palette()), self._scale(course), QFontMetricsF(painter.font())
        low, high = (scale.y(edge) for edge in course.usual)
        usual = QRectF(scale.rect.left(), high, scale.rect.width(), low - high).intersected(scale.rect)
        painter.fillRect(usual, QColor(tokens.wash))
        self._paint_axes(painter, scale, metrics)
        x = scale.xs(course.times)
        painter.setClipRect(scale.rect.adjusted(-2, -2, 2, 2))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        blue, ink = QColor(tokens.blue), QColor(tokens.ink)
        self._paint_band(painter, scale, x, course)
        if course.exchanged:
            painter.setPen(QPen(ink, 1.0))
            painter.drawPolyline(polygon(x, scale.ys(course.alone)))
        painter.setPen(QPen(blue, 2.0))
        painter.drawPolyline(polygon(x, scale.ys(course.plan)))
        if self._cursor >= 0:
            at = QPointF(float(x[self._cursor]), scale.y(float(course.plan[self._cursor])))
            painter.setBrush(blue)
            painter.drawEllipse(at, 3.5, 3.5)
        painter.setClipping(False)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        self._paint_names(painter, scale, course, metrics)

    def _paint_band(self, painter: QPainter, scale: Scale, x: Floats, course: Course) -> None:
        """Draw the band between dotted edges; it needs no colour to be told from the range usually kept."""
        blue = QColor(tokens_of(self.palette()).blue)
        pen = QPen(blue, 1.2)
        pen.setDashPattern([1.0, 3.0])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for series in (course.low, course.high):
            painter.drawPolyline(polygon(x, scale.ys(series)))

    def _paint_axes(self, painter: QPainter, scale: Scale, metrics: QFontMetricsF) -> None:
        tokens, rect = tokens_of(self.palette()), scale.rect
        marks = value_ticks(scale.low, scale.high, rect.height(), 1.8 * metrics.height())
        days = time_ticks(scale.start, scale.end, rect.width(), Widths(scaled(self.font(), 10)), self._zone)
        painter.setPen(QPen(QColor(tokens.faint), 1))
        painter.drawLines(
            [QLineF(rect.left(), round(scale.y(m.at)), rect.right(), round(scale.y(m.at))) for m in marks]
        )
        painter.drawLines(
            [QLineF(round(scale.x(t.at)), rect.top(), round(scale.x(t.at)), rect.bottom()) for t in days if t.text]
        )
        painter.setPen(QPen(QColor(tokens.rule), 1))
        painter.drawLine(QLineF(rect.left(), rect.top(), rect.left(), rect.bottom()))
        painter.drawLine(QLineF(rect.left(), rect.bottom(), rect.right(), rect.bottom()))
        painter.setPen(QColor(tokens.ink))
        for mark in marks:
            width = metrics.horizontalAdvance(mark.text)
            painter.drawText(QPointF(rect.left() - 8 - width, scale.y(mark.at) + 0.35 * metrics.ascent()), mark.text)
        edge = -1e9
        for tick in days:
            width = metrics.horizontalAdvance(tick.text)
            left = min(max(scale.x(tick.at) - width / 2, rect.left()), rect.right() - width)
            if tick.text and left > edge:
                painter.drawText(QPointF(left, rect.bottom() + 6 + metrics.ascent()), tick.text)
                edge = left + width + 12

    def _paint_names(self, painter: QPainter, scale: Scale, course: Course, metrics: QFontMetricsF) -> None:
        """Write the title, what is read, and each line's name at its end, none on another."""
        tokens = tokens_of(self.palette())
        painter.setPen(QColor(tokens.muted))
        painter.drawText(QPointF(12.0, 4.0 + metrics.ascent()), course.title)
        said = self.reading_words()
        painter.setPen(QColor(tokens.ink))
        painter.drawText(QPointF(self.width() - 12.0 - metrics.horizontalAdvance(said), 4.0 + metrics.ascent()), said)
        ends = [(scale.y(float(course.plan[-1])), say(_TOGETHER), tokens.blue)]
        if course.exchanged:
            ends.append((scale.y(float(course.alone[-1])), say(_ALONE), tokens.ink))
        shaded = [max(scale.low, course.usual[0]), min(scale.high, course.usual[1])]
        if shaded[0] < shaded[1]:
            ends.append((scale.y(sum(shaded) / 2.0), say(_USUAL), tokens.muted))
        paint_ends(painter, scale.rect, ends)
