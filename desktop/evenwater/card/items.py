"""What a page is made of: words, strokes and filled shapes at places in mm, and blocks of them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

MM_PER_POINT = 25.4 / 72.0
ASCENT = 0.95
DESCENT = 0.29
"""Ascent and descent of Atkinson Hyperlegible as shares of its size (its ``hhea`` table)."""
CAPITAL = 0.668
"""Height of its capitals and figures as a share of its size (its ``OS/2`` table)."""
LEADING = 1.3
"""Distance of two lines as a share of the size; a medicine label asks for 1.25 at the least."""

Point = tuple[float, float]


@dataclass(frozen=True)
class Text:
    """Words on one line: ``x`` and ``baseline`` [mm], ``points`` [pt], ``width`` [mm]."""

    x: float
    baseline: float
    words: str
    points: float
    bold: bool
    width: float

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Return left, top, right and bottom of the letters, from capitals' top to descenders [mm]."""
        size = self.points * MM_PER_POINT
        return self.x, self.baseline - CAPITAL * size, self.x + self.width, self.baseline + DESCENT * size

    def moved(self, dx: float, dy: float) -> Text:
        """Return the same words ``dx`` to the right and ``dy`` down [mm]."""
        return replace(self, x=self.x + dx, baseline=self.baseline + dy)


@dataclass(frozen=True)
class Stroke:
    """A black line through ``points`` [mm], ``width`` [mm] wide; ``dash`` are on and off lengths [mm]."""

    points: tuple[Point, ...]
    width: float
    dash: tuple[float, ...] = ()
    closed: bool = False

    def moved(self, dx: float, dy: float) -> Stroke:
        """Return the same line ``dx`` to the right and ``dy`` down [mm]."""
        return replace(self, points=tuple((x + dx, y + dy) for x, y in self.points))


@dataclass(frozen=True)
class Fill:
    """A black shape inside ``points`` [mm]."""

    points: tuple[Point, ...]

    def moved(self, dx: float, dy: float) -> Fill:
        """Return the same shape ``dx`` to the right and ``dy`` down [mm]."""
        return replace(self, points=tuple((x + dx, y + dy) for x, y in self.points))


Item = Text | Stroke | Fill


@dataclass(frozen=True)
class Block:
    """Items that stay together, placed from the block's own top left corner; ``height`` in mm."""

    height: float
    items: tuple[Item, ...] = ()

    def moved(self, dx: float, dy: float) -> tuple[Item, ...]:
        """Return the items ``dx`` to the right and ``dy`` down [mm]."""
        return tuple(item.moved(dx, dy) for item in self.items)


def stack(blocks: Iterable[Block], gap: float = 0.0) -> Block:
    """Put blocks under each other, ``gap`` mm apart."""
    items: list[Item] = []
    y = 0.0
    for index, block in enumerate(blocks):
        y += gap if index else 0.0
        items += block.moved(0.0, y)
        y += block.height
    return Block(y, tuple(items))


def beside(blocks: Sequence[tuple[float, Block]]) -> Block:
    """Put blocks side by side, tops level, each at its own x [mm]."""
    items = [item for x, block in blocks for item in block.moved(x, 0.0)]
    return Block(max((block.height for _, block in blocks), default=0.0), tuple(items))


def frame(width: float, height: float, line: float) -> Stroke:
    """Return a rectangle whose outer edge is ``width`` by ``height`` mm, drawn ``line`` mm wide."""
    half = line / 2
    right, bottom = width - half, height - half
    return Stroke(((half, half), (right, half), (right, bottom), (half, bottom)), line, closed=True)


def rule(width: float, line: float) -> Block:
    """Return a level line ``width`` mm long and ``line`` mm thick."""
    return Block(line, (Stroke(((0.0, line / 2), (width, line / 2)), line),))


def warning_sign(height: float) -> Block:
    """Return a triangle with an exclamation mark, ``height`` mm high, drawn rather than set.

    No typeface is asked for a symbol, so it cannot turn into an empty box on another machine.
    """
    width = warning_width(height)
    line = height * 0.09
    # A thick line sticks out of a sharp corner: by its own width at the top, half of it at the foot.
    top, foot, side = line, height - line / 2, line * 0.87
    middle = width / 2
    triangle = Stroke(((middle, top), (width - side, foot), (side, foot)), line, closed=True)
    half, thin = height * 0.06, height * 0.035
    bar = Fill(
        (
            (middle - half, height * 0.36),
            (middle + half, height * 0.36),
            (middle + thin, height * 0.68),
            (middle - thin, height * 0.68),
        )
    )
    y0, y1 = height * 0.75, height * 0.85
    dot = Fill(((middle - half, y0), (middle + half, y0), (middle + half, y1), (middle - half, y1)))
    return Block(height, (triangle, bar, dot))


def warning_width(height: float) -> float:
    """Return how wide the warning sign of that height is [mm]."""
    return height * 1.15
