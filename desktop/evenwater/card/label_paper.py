"""The papers a jug's label can be printed on, where it stands on them, and how large its letters are."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.wording import marked


@dataclass(frozen=True)
class LabelSizes:
    """Letter sizes in points; the smallest allowed are 24, 18, 18, 18 and 10 for the rest.

    ``again`` is for the signal word on every further page.
    """

    name: float
    contents: float
    word: float
    again: float
    strength: float
    entry: float
    note: float
    small: float


@dataclass(frozen=True)
class LabelPaper:
    """One paper. Lengths in mm; ``places`` are the top left corners of the label, once for each copy on the sheet.

    ``boxes`` is how many entries stand side by side.
    """

    name: str
    width: float
    height: float
    content_width: float
    content_height: float
    places: tuple[tuple[float, float], ...]
    boxes: int
    sizes: LabelSizes

    @property
    def cuts(self) -> tuple[float, ...]:
        """Return the heights at which the sheet is cut between two copies [mm]."""
        ends = [top + self.content_height for _, top in self.places[:-1]]
        return tuple((end + top) / 2 for end, (_, top) in zip(ends, self.places[1:], strict=True))


_SMALL = LabelSizes(name=24, contents=18, word=22, again=18, strength=12, entry=12, note=10, small=10)
_MIDDLE = LabelSizes(name=30, contents=20, word=28, again=20, strength=14, entry=12, note=12, small=10.5)
_WIDE = LabelSizes(name=28, contents=20, word=26, again=20, strength=14, entry=11.5, note=10.5, small=10.5)

A6_LANDSCAPE = LabelPaper(marked("A6 landscape"), 148.0, 105.0, 136.0, 93.0, ((6.0, 6.0),), 3, _SMALL)
A5 = LabelPaper("A5", 148.0, 210.0, 130.0, 192.0, ((9.0, 9.0),), 3, _MIDDLE)

# Twice on a sheet, once for the jug and once for its lid or the log. A4 and Letter carry the very same 186 mm by 127 mm
# in each half, so that a label looks alike on both; what is over lies around it, less towards the cut, where no printer
# needs a margin.
A4_TWICE = LabelPaper(marked("A4 with two labels"), 210.0, 297.0, 186.0, 127.0, ((12.0, 13.0), (12.0, 157.0)), 5, _WIDE)
LETTER_TWICE = LabelPaper(
    marked("Letter with two labels"), 215.9, 279.4, 186.0, 127.0, ((14.95, 8.7), (14.95, 143.7)), 5, _WIDE
)

LABEL_PAPERS = {paper.name: paper for paper in (A6_LANDSCAPE, A5, A4_TWICE, LETTER_TWICE)}
"""Every paper for labels by its name."""
