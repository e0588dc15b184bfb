"""Paints a laid-out page with any QPainter: preview, PDF, printer and tests all come through here."""

from __future__ import annotations

import textwrap
import unicodedata

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF, QTransform

from evenwater.card.items import Fill, Item, Stroke, Text
from evenwater.card.label_paper import LabelPaper
from evenwater.card.layout import Page
from evenwater.card.paper import Paper
from evenwater.card.text import GRAIN, face

_INK = QColor(0, 0, 0)
_STAMP_LINE = 0.35
_STAMP_HEIGHT = 34.0
_STAMPS = (0.33, 0.7)
"""Where the draft's words stand, as shares of the page's height: over the doses, and over the rest."""


def paint_page(painter: QPainter, per_mm: float, page: Page, paper: Paper | LabelPaper) -> None:
    """Paint a page that is laid out.

    Parameters
    ----------
    painter
        Active painter whose origin is the paper's top left corner.
    per_mm
        Units of the painter per mm: resolution / 25.4.
    page, paper
        What is painted, on what.
    """
    painter.save()
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
    # Everything is painted in the unit the typeface is sized in, so that letters and lines scale alike.
    painter.scale(per_mm / GRAIN, per_mm / GRAIN)
    for item in page.items:
        _paint(painter, item)
    if page.draft:
        for share in _STAMPS:
            _stamp(painter, page.draft, paper, share * paper.height)
    painter.restore()


def _paint(painter: QPainter, item: Item) -> None:
    if isinstance(item, Text):
        _write(painter, item)
        return
    shape = QPolygonF([QPointF(x * GRAIN, y * GRAIN) for x, y in item.points])
    if isinstance(item, Fill):
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(_INK))
        painter.drawPolygon(shape)
        return
    painter.setPen(_pen(item))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if item.closed:
        painter.drawPolygon(shape)
    else:
        painter.drawPolyline(shape)


def _write(painter: QPainter, text: Text) -> None:
    """Draw the words one by one, without the spaces between them.

    This typeface has one glyph for space and tab, and Qt's PDF names it a tab: a search for two words
    would find nothing. Readers of a PDF put a space where they see a gap.
    """
    font = face(text.points, text.bold)
    painter.setPen(_INK)
    painter.setFont(font)
    # Words that run from right to left are not where their number in the line says; they stay together.
    together = any(unicodedata.bidirectional(letter) in {"R", "AL"} for letter in text.words)
    measure = QFontMetricsF(font)
    start = 0
    for word in [text.words] if together else text.words.split(" "):
        before = measure.horizontalAdvance(text.words[:start])
        painter.drawText(QPointF(text.x * GRAIN + before, text.baseline * GRAIN), word)
        start += len(word) + 1


def _pen(stroke: Stroke) -> QPen:
    pen = QPen(_INK, stroke.width * GRAIN)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    if stroke.dash:
        # Qt counts dashes in widths of the pen. Dots are the round ends of dashes of hardly any length.
        pen.setDashPattern([length / stroke.width for length in stroke.dash])
        if stroke.dash[0] < stroke.width:
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    return pen


def _stamp(painter: QPainter, words: str, paper: Paper | LabelPaper, middle: float) -> None:
    """Draw the words across the page in outline: seen at once, and the text under them stays readable."""
    path = QPainterPath()
    font = face(100, True)
    for index, part in enumerate(textwrap.wrap(words, 14, break_long_words=False)):
        row = QPainterPath()
        row.addText(QPointF(0.0, 0.0), font, part)
        row.translate(-row.boundingRect().center().x(), index * font.pixelSize() * 1.05)
        path.addPath(row)
    bounds = path.boundingRect()
    width, height = paper.content_width * GRAIN, _STAMP_HEIGHT * GRAIN
    scale = min(width / bounds.width(), height / bounds.height())
    place = QTransform()
    place.translate(paper.width / 2 * GRAIN, middle * GRAIN)
    place.scale(scale, scale)
    place.translate(-bounds.center().x(), -bounds.center().y())
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(_INK, _STAMP_LINE * GRAIN))
    painter.drawPath(place.map(path))
