"""Decides what of a jug's label goes on which page. Nothing is shrunk, cut or left out to fit."""

from __future__ import annotations

from functools import partial

from evenwater.card.failures import CardFailed
from evenwater.card.flow import Flow, Group
from evenwater.card.fonts import load_fonts
from evenwater.card.items import Item, Stroke, Text
from evenwater.card.label_paper import LabelPaper
from evenwater.card.label_parts import again, entries, foot, head, quantities, safety, title_of
from evenwater.card.layout import Page
from evenwater.card.sections import FINE
from evenwater.screens.jug_label import JugLabel

_CUT = (4.0, 2.0)
"""Dashes and gaps of the line to cut along [mm]."""


class _Closely(Flow):
    """Cuts a part between its lines rather than leave the foot of a page blank."""

    @property
    def room_of_a_page(self) -> float:
        """Return nought [mm]: no part is moved whole to the next page."""
        return 0.0


def lay_out(label: JugLabel, paper: LabelPaper) -> tuple[Page, ...]:
    """Return the pages of ``label`` on ``paper``, at least one; every copy on a page says the same.

    Raises
    ------
    CardFailed
        When the typeface is missing, or a name so long that a page has no room below it.
    """
    load_fonts()
    low = paper.content_height - foot(label, paper, 1, 1).height
    pages = min(_ways(label, paper, low), key=partial(_rank, label))
    made = []
    for number, items in enumerate(pages, start=1):
        one = (*items, *foot(label, paper, number, len(pages)).moved(0.0, low))
        copies = [item.moved(left, top) for left, top in paper.places for item in one]
        made.append(Page((*copies, *_cuts(paper)), ""))
    return tuple(made)


def _ways(label: JugLabel, paper: LabelPaper, low: float) -> list[list[list[Item]]]:
    """Return the pages of every way of dealing out that works, the best of equals first."""
    found, failed = [], []
    for kind, dense in ((Flow, False), (Flow, True), (_Closely, False)):
        flow = kind(0.0, 0.0, low, again(label, paper))
        try:
            for group in _groups(label, paper, dense):
                flow.add(group)
        except CardFailed as failure:
            failed.append(failure)
        else:
            found.append(flow.pages)
    if not found:
        raise failed[0]
    return found


def _rank(label: JugLabel, pages: list[list[Item]]) -> tuple[bool, int]:
    """Return how good a way of dealing out is, the least the best; of equals the first one is taken.

    The signal word belongs on the first face. Every sentence on its own line is read best, but sentences run together
    are read better than a second piece of paper.
    """
    first = [item.words for item in pages[0] if isinstance(item, Text)]
    return title_of(label) not in first, len(pages)


def _groups(label: JugLabel, paper: LabelPaper, dense: bool) -> list[Group]:
    parts = (head(label, paper), safety(label, paper, dense), quantities(label, paper), *entries(label, paper))
    return [group for group in parts if group.blocks]


def _cuts(paper: LabelPaper) -> list[Item]:
    ends = [(left, left + paper.content_width) for left, _ in paper.places]
    return [Stroke(((ends[0][0], y), (ends[0][1], y)), FINE, _CUT) for y in paper.cuts]
