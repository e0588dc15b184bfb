"""Measures and breaks words for the page, in mm: nothing is elided, squeezed or hyphenated."""

from __future__ import annotations

import math

from PySide6.QtGui import QFont, QFontMetricsF, QTextLayout, QTextOption

from evenwater.card.fonts import FAMILY
from evenwater.card.items import ASCENT, DESCENT, LEADING, MM_PER_POINT, Block, Text

GRAIN = 100
"""Font units per mm. Qt sets fonts in whole units, so a hundredth of a mm is the finest step."""


def face(points: float, bold: bool) -> QFont:
    """Return the typeface at ``points`` [pt], sized in hundredths of a mm.

    The size is rounded up, so that no letter is smaller than asked for. A size in units of its own
    instead of points keeps Qt from scaling it by a device's idea of its resolution.
    """
    font = QFont(FAMILY)
    font.setPixelSize(math.ceil(points * MM_PER_POINT * GRAIN))
    font.setWeight(QFont.Weight.Bold if bold else QFont.Weight.Normal)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font


def width_of(words: str, points: float, bold: bool = False) -> float:
    """Return how wide ``words`` are on one line [mm]."""
    return QFontMetricsF(face(points, bold)).horizontalAdvance(words) / GRAIN


def broken(words: str, width: float, points: float, bold: bool = False) -> list[str]:
    """Break ``words`` into lines of at most ``width`` mm.

    Breaks at spaces, never at a no-break space; only a single word wider than the line is broken
    inside. Joined again, the lines are the whole text.
    """
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    found: list[str] = []
    for part in words.splitlines() or [""]:
        layout = QTextLayout(part, face(points, bold))
        layout.setTextOption(option)
        units = part.encode("utf-16-le")  # Qt counts in these, two bytes each
        layout.beginLayout()
        while (piece := layout.createLine()).isValid():
            piece.setLineWidth(width * GRAIN)
            start, length = piece.textStart(), piece.textLength()
            found.append(units[2 * start : 2 * (start + length)].decode("utf-16-le").strip(" "))
        layout.endLayout()
    return [piece for piece in found if piece]


def line_height(points: float) -> float:
    """Return the distance of two lines [mm]."""
    return points * MM_PER_POINT * LEADING


def baseline(points: float) -> float:
    """Return how far below a line's top its baseline lies [mm]."""
    return points * MM_PER_POINT * (ASCENT + (LEADING - ASCENT - DESCENT) / 2)


def line(words: str, points: float, bold: bool = False, x: float = 0.0) -> Block:
    """Set ``words`` on one line, their left edge at ``x`` mm."""
    text = Text(x, baseline(points), words, points, bold, width_of(words, points, bold))
    return Block(line_height(points), (text,))


def line_to(right: float, words: str, points: float, bold: bool = False) -> Block:
    """Set ``words`` on one line that ends at ``right`` mm."""
    return line(words, points, bold, right - width_of(words, points, bold))


def lines(words: str, width: float, points: float, bold: bool = False, x: float = 0.0) -> list[Block]:
    """Set ``words`` in lines of at most ``width`` mm, one block per line, left edges at ``x`` mm."""
    return [line(part, points, bold, x) for part in broken(words, width, points, bold)]
