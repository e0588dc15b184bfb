"""What a chart that paints itself stands on: its ground, its letters, what it says while it is empty, and the frame of the focus."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QWidget

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
