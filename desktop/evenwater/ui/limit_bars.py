"""How near each limit is: one row for each, words beside colours."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from evenwater.screens.terms import headed, inside
from evenwater.screens.views import Bar
from evenwater.ui.paper_style import draw_sign
from evenwater.ui.theme import Tokens, scaled, tokens_of
from evenwater.wording import marked, say

SETS_THE_PACE = marked("sets the pace")
OVER = marked("over the limit")
# Limits used to less than this are only named.
_NEAR = 0.25
_FAR = marked("Far from their limits")
_GAP = 10.0
_BAR_WIDTHS = (20.0, 200.0)


@dataclass(frozen=True)
class _Columns:
    """Widths [px] of the columns: label, both figures, and the word behind them."""

    label: float
    text: float
    word: float


@dataclass(frozen=True)
class _Look:
    """Colours and fonts of one painting, fetched once for all rows."""

    tokens: Tokens
    plain: QFont
    bold: QFont


class LimitBars(QWidget):
    """The rows; ``set_bars`` shows them."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._bars: tuple[Bar, ...] = ()
        self._columns = self._measure()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say("How near each limit is"))

    def set_bars(self, bars: tuple[Bar, ...]) -> None:
        """Show these limits, in this order."""
        if bars == self._bars:
            return
        before, columns = self._bars, self._columns
        self._bars = bars
        self._columns = self._measure()
        self.setAccessibleDescription("; ".join(in_words(bar) for bar in bars))
        if len(bars) != len(before):
            self.updateGeometry()
        if columns != self._columns or len(bars) != len(before):
            self.update()
            return
        # Most keys change one figure: only its row is painted again.
        height = self.row_height()
        for n, (old, new) in enumerate(zip(before, bars, strict=True)):
            if old != new:
                self.update(0, n * height, self.width(), height)

    @property
    def bars(self) -> tuple[Bar, ...]:
        """What is shown."""
        return self._bars

    def row_height(self) -> int:
        """Return the height of one row [px]."""
        return round(QFontMetricsF(self.font()).height()) + 4

    def sizeHint(self) -> QSize:
        """Return the width of all columns with a bar of middling length, and the height of the rows."""
        columns = self._columns
        width = columns.label + columns.text + columns.word + 3 * _GAP + 140
        return QSize(round(width), len(self._bars) * self.row_height())

    def minimumSizeHint(self) -> QSize:
        """Return the least size: short bars, but every word whole."""
        columns = self._columns
        width = columns.label + columns.text + columns.word + 3 * _GAP + _BAR_WIDTHS[0]
        return QSize(round(width), len(self._bars) * self.row_height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the rows."""
        columns, height = self._columns, self.row_height()
        room = self.width() - columns.label - columns.text - columns.word - 3 * _GAP
        bar_width = min(max(room, _BAR_WIDTHS[0]), _BAR_WIDTHS[1])
        with QPainter(self) as painter:
            look = _Look(tokens_of(self.palette()), self.font(), scaled(self.font(), 11, bold=True))
            for n, bar in enumerate(self._bars):
                row = QRectF(0, n * height, self.width(), height)
                if row.intersects(QRectF(event.rect())):
                    self._paint_row(painter, bar, row, bar_width, look)

    def changeEvent(self, event: QEvent) -> None:
        """Measure again with another font."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._columns = self._measure()
            self.updateGeometry()

    def _paint_row(self, painter: QPainter, bar: Bar, row: QRectF, bar_width: float, look: _Look) -> None:
        tokens, columns, bold = look.tokens, self._columns, look.bold
        colour = QColor(tokens.stop if bar.over else tokens.blue if bar.binds else tokens.ink)
        fill = QColor(tokens.stop if bar.over else tokens.blue if bar.binds else tokens.rule)
        if not self.isEnabled():
            colour = fill = QColor(tokens.rule)
        marked = bar.binds or bar.over
        painter.setFont(bold if marked else look.plain)
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
        painter.drawText(QPointF(left, base), bar.text)
        word = say(OVER) if bar.over else say(SETS_THE_PACE) if bar.binds else ""
        left += columns.text + _GAP
        if bar.over:
            size = QFontMetricsF(bold).ascent()
            draw_sign(painter, QRectF(left, base - size + 1, size, size), colour)
            left += size + 4
        painter.drawText(QPointF(left, base), word)

    def _measure(self) -> _Columns:
        metrics = QFontMetricsF(scaled(self.font(), 11, bold=True))

        def widest(texts: list[str]) -> float:
            return max(map(metrics.horizontalAdvance, texts), default=0.0)

        words = [say(OVER)] if any(b.over for b in self._bars) else []
        words += [say(SETS_THE_PACE)] if any(b.binds for b in self._bars) else []
        sign = metrics.ascent() + 4 if say(OVER) in words else 0.0
        return _Columns(
            widest([b.label for b in self._bars]), widest([b.text for b in self._bars]), widest(words) + sign
        )


def near_and_far(bars: tuple[Bar, ...], whole: bool = False) -> tuple[tuple[Bar, ...], str]:
    """Return the limits to show in rows, and a line that names the others; all in rows where the ``whole`` is wanted."""
    near = tuple(bar for bar in bars if whole or bar.share >= _NEAR or bar.binds or bar.over)
    far = [inside(bar.label) for bar in bars if bar not in near]
    return near, headed(say(_FAR), ", ".join(far)) if far else ""


def in_words(bar: Bar) -> str:
    """Return one limit as a phrase for those who do not see the bar."""
    word = f", {say(OVER)}" if bar.over else f", {say(SETS_THE_PACE)}" if bar.binds else ""
    return f"{bar.label} {bar.text}{word}"
