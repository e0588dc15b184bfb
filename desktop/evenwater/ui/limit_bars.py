"""How near each limit is: one row for each, numbers under each other at the decimal mark, words beside colours."""

from __future__ import annotations

import re
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from evenwater.screens.views import Bar
from evenwater.ui.paper_style import draw_sign
from evenwater.ui.theme import scaled, tokens_of

SETS_THE_PACE = "sets the pace"
OVER = "over the limit"
_PAIR = re.compile(r"(-?\d[\d,]*)(\.\d+)? of (-?\d[\d,]*)(\.\d+)?(.*)", re.ASCII | re.DOTALL)
_GAP = 12.0
_BAR_WIDTHS = (64.0, 200.0)


@dataclass(frozen=True)
class _Columns:
    """Widths [px] of the columns: label, value before and after its mark, bound before and after its mark."""

    label: float
    value: tuple[float, float]
    bound: tuple[float, float]
    text: float
    word: float


class LimitBars(QWidget):
    """The rows; ``set_bars`` shows them."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._bars: tuple[Bar, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName("How near each limit is")

    def set_bars(self, bars: tuple[Bar, ...]) -> None:
        """Show these limits, in this order."""
        if bars == self._bars:
            return
        longer = len(bars) != len(self._bars)
        self._bars = bars
        self.setAccessibleDescription("; ".join(in_words(bar) for bar in bars))
        if longer:
            self.updateGeometry()
        self.update()

    @property
    def bars(self) -> tuple[Bar, ...]:
        """What is shown."""
        return self._bars

    def row_height(self) -> int:
        """Return the height of one row [px]."""
        return round(QFontMetricsF(self.font()).height()) + 4

    def sizeHint(self) -> QSize:
        """Return the width of all columns with a bar of middling length, and the height of the rows."""
        columns = self._columns()
        width = columns.label + columns.text + columns.word + 3 * _GAP + 140
        return QSize(round(width), len(self._bars) * self.row_height())

    def minimumSizeHint(self) -> QSize:
        """Return the least size: short bars, but every word whole."""
        columns = self._columns()
        width = columns.label + columns.text + columns.word + 3 * _GAP + _BAR_WIDTHS[0]
        return QSize(round(width), len(self._bars) * self.row_height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the rows."""
        columns, height = self._columns(), self.row_height()
        room = self.width() - columns.label - columns.text - columns.word - 3 * _GAP
        bar_width = min(max(room, _BAR_WIDTHS[0]), _BAR_WIDTHS[1])
        with QPainter(self) as painter:
            for n, bar in enumerate(self._bars):
                self._paint_row(painter, bar, QRectF(0, n * height, self.width(), height), columns, bar_width)

    def _paint_row(self, painter: QPainter, bar: Bar, row: QRectF, columns: _Columns, bar_width: float) -> None:
        tokens = tokens_of(self.palette())
        colour = QColor(tokens.stop if bar.over else tokens.blue if bar.binds else tokens.ink)
        fill = QColor(tokens.stop if bar.over else tokens.blue if bar.binds else tokens.rule)
        if not self.isEnabled():
            colour = fill = QColor(tokens.rule)
        bold = scaled(self.font(), 11, bold=True)
        marked = bar.binds or bar.over
        painter.setFont(bold if marked else self.font())
        painter.setPen(colour)
        base = row.top() + (row.height() - QFontMetricsF(bold).height()) / 2 + QFontMetricsF(bold).ascent()
        painter.drawText(QPointF(0, base), bar.label)
        frame = QRectF(round(columns.label + _GAP) + 0.5, round(row.center().y()) - 4.5, round(bar_width), 9)
        painter.fillRect(QRectF(frame.left(), frame.top(), frame.width() * min(max(bar.share, 0.0), 1.0), 9), fill)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(fill if marked else QColor(tokens.rule))
        painter.drawRect(frame)
        painter.setPen(colour)
        left = frame.right() + _GAP
        self._paint_figures(painter, bar.text, left, base, columns)
        word = OVER if bar.over else SETS_THE_PACE if bar.binds else ""
        left += columns.text + _GAP
        if bar.over:
            size = QFontMetricsF(bold).ascent()
            draw_sign(painter, QRectF(left, base - size + 1, size, size), colour)
            left += size + 4
        painter.drawText(QPointF(left, base), word)

    def _paint_figures(self, painter: QPainter, text: str, left: float, base: float, columns: _Columns) -> None:
        pair = _PAIR.fullmatch(text)
        if pair is None:
            painter.drawText(QPointF(left, base), text)
            return
        metrics = QFontMetricsF(painter.font())
        whole, part, bound_whole, bound_part, unit = (piece or "" for piece in pair.groups())
        mark = left + columns.value[0]
        painter.drawText(QPointF(mark - metrics.horizontalAdvance(whole), base), whole + part)
        of = mark + columns.value[1] + metrics.horizontalAdvance(" ")
        painter.drawText(QPointF(of, base), "of")
        mark = of + metrics.horizontalAdvance("of ") + columns.bound[0]
        painter.drawText(QPointF(mark - metrics.horizontalAdvance(bound_whole), base), bound_whole + bound_part + unit)

    def _columns(self) -> _Columns:
        metrics = QFontMetricsF(scaled(self.font(), 11, bold=True))

        def widest(texts: list[str]) -> float:
            return max(map(metrics.horizontalAdvance, texts), default=0.0)

        pairs = [match.groups(default="") for bar in self._bars if (match := _PAIR.fullmatch(bar.text))]
        value = widest([p[0] for p in pairs]), widest([p[1] for p in pairs])
        bound = widest([p[2] for p in pairs]), widest([p[3] + p[4] for p in pairs])
        aligned = sum(value) + sum(bound) + metrics.horizontalAdvance(" of ") if pairs else 0.0
        others = widest([bar.text for bar in self._bars if not _PAIR.fullmatch(bar.text)])
        words = [OVER] if any(b.over for b in self._bars) else []
        words += [SETS_THE_PACE] if any(b.binds for b in self._bars) else []
        sign = metrics.ascent() + 4 if OVER in words else 0.0
        return _Columns(widest([b.label for b in self._bars]), value, bound, max(aligned, others), widest(words) + sign)


def in_words(bar: Bar) -> str:
    """Return one limit as a phrase for those who do not see the bar."""
    word = f", {OVER}" if bar.over else f", {SETS_THE_PACE}" if bar.binds else ""
    return f"{bar.label} {bar.text}{word}"
