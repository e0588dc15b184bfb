"""The papers a card can be printed on, and how large its letters are on each."""

from __future__ import annotations

from dataclasses import dataclass

TAPE = 15.0
"""Blank strip at the top of every card [mm]: tape, a clip or a lamination edge may cover it."""


@dataclass(frozen=True)
class Sizes:
    """Letter sizes in points; the smallest allowed are 36, 24, 18, 12 and 10 for the last two."""

    dose: float
    additive: float
    when: float
    system: float
    note: float = 12.0
    small: float = 10.5


@dataclass(frozen=True)
class Paper:
    """One paper, upright. Lengths in mm from the paper's top left corner."""

    name: str
    width: float
    height: float
    left: float
    top: float
    content_width: float
    content_height: float
    sizes: Sizes

    @property
    def small(self) -> bool:
        """Return whether the dose would be pushed off the first page by a full head."""
        return self.content_width < 100

    @property
    def bottom(self) -> float:
        """Return where the content ends [mm]."""
        return self.top + self.content_height


_LARGE = Sizes(dose=50, additive=24, when=19, system=28)

# A4 and Letter carry the very same 186 mm by 252 mm, so that a card looks alike on both: what fits
# between margins of 12 mm on the narrower and on the shorter of the two, less what the tape's strip
# takes off the shorter beyond its margin. Spare paper is shared by both sides or lies above and below.
A4 = Paper("A4", 210.0, 297.0, 12.0, 27.0, 186.0, 252.0, _LARGE)
LETTER = Paper("Letter", 215.9, 279.4, 14.95, TAPE, 186.0, 252.0, _LARGE)
A5 = Paper("A5", 148.0, 210.0, 9.0, TAPE + 2.0, 130.0, 210.0 - TAPE - 2.0 - 9.0, Sizes(48, 24, 18, 22))
A6 = Paper("A6", 105.0, 148.0, 7.0, TAPE, 91.0, 148.0 - TAPE - 7.0, Sizes(44, 24, 18, 18))

PAPERS = {paper.name: paper for paper in (A4, LETTER, A5, A6)}
ROUND_PAPERS = {paper.name: paper for paper in (A4, LETTER, A5)}
"""Every paper by its name."""
