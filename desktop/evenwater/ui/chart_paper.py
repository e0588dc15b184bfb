"""What a chart that paints itself stands on: its ground, its letters, what it says while it is empty, and the frame of the focus."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter
from PySide6.QtWidgets import QWidget

from evenwater.ui.chart_labels import spread
from evenwater.ui.paper_style import draw_frame
from evenwater.ui.theme import scaled, tokens_of


@contextmanager
def chart_paper(chart: QWidget, nothing: str) -> Iterator[QPainter]:
    """Yield the painter of a chart, from within its ``paintEvent``; ``nothing`` is what it says while it is empty, else an empty text."""
    tokens = tokens_of(chart.palette())
    with QPainter(chart) as painter:
        painter.fillRect(chart.rect(), QColor(tokens.leaf))
        painter.setFont(scaled(chart.font(), 10))
        if nothing:
            painter.setPen(QColor(tokens.muted))
            flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
            painter.drawText(chart.rect().adjusted(24, 8, -24, -8), flags, nothing)
        yield painter
        if chart.hasFocus():
            draw_frame(painter, chart.rect(), QColor(tokens.blue), Qt.BrushStyle.NoBrush, 2)


def paint_ends(painter: QPainter, plot: QRectF, ends: Sequence[tuple[float, str, str]], gap: float = 8.0) -> None:
    """Write the names of lines right of the plot: each at its end (height [px], name, colour), pushed apart so that none lies on another."""
    metrics = QFontMetricsF(painter.font())
    half = metrics.height() / 2.0
    tops = spread([y - half for y, *_ in ends], metrics.height(), plot.top() - half, plot.bottom() - half)
    for top, (_, name, colour) in zip(tops, ends, strict=True):
        painter.setPen(QColor(colour))
        painter.drawText(QPointF(plot.right() + gap, top + metrics.ascent()), name)
