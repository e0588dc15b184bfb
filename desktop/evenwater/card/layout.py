"""Decides what of a card goes on which page. Nothing is shrunk, cut or left out to fit."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.card import words
from evenwater.card.chart import ramp
from evenwater.card.flow import Flow, Group, gathered
from evenwater.card.fonts import load_fonts
from evenwater.card.items import Block, Item, beside
from evenwater.card.paper import Paper
from evenwater.card.sections import (
    GAP,
    again,
    doses,
    facts,
    foot,
    handling,
    head,
    identity,
    jug,
    remarks,
    stop,
    write_in,
)
from evenwater.screens.views import CardView
from evenwater.wording import say, say_all

_GUTTER = 8.0
_LEFT_SHARE = 0.55
_TWO_COLUMNS_FROM = 180.0
"""Narrower than this [mm], two columns of 12 pt would be cramped."""


@dataclass(frozen=True)
class Page:
    """One page: ``items`` at their places in mm from the paper's corner; ``draft`` is stamped over them."""

    items: tuple[Item, ...]
    draft: str


def lay_out(card: CardView, paper: Paper) -> tuple[Page, ...]:
    """Return the pages of ``card`` on ``paper``, at least one.

    Raises
    ------
    CardFailed
        When the typeface is missing, or a name so long that a page has no room below it.
    """
    load_fonts()
    named = f"{say(words.PLAN)} {card.plan_id}"
    flow = begun(named, again(card, paper), paper)
    end = stop([(card.maximum, True), (card.stop, False)], paper)
    for group in (head(card, paper), *doses(card.rows, paper), jug(card, paper), end, remarks(card, paper)):
        if group.blocks:
            flow.add(group)
    flow.add_best(_what_to_know(card, paper, flow.room_of_a_page))
    flow.add_best(_record(card, paper, flow.room_of_a_page))
    return finished(flow, named, paper, card.draft.strip())


def begun(named: str, head_of_further_pages: Block, paper: Paper) -> Flow:
    """Return empty pages that keep room for a foot with ``named`` in it."""
    bottom = paper.bottom - foot(named, paper, 1, 1).height
    return Flow(paper.left, paper.top, bottom, head_of_further_pages)


def finished(flow: Flow, named: str, paper: Paper, draft: str = "") -> tuple[Page, ...]:
    """Return the pages with their feet, numbered, and stamped with ``draft`` where it is not empty."""
    made = []
    for number, items in enumerate(flow.pages, start=1):
        low = foot(named, paper, number, len(flow.pages)).moved(paper.left, flow.bottom)
        made.append(Page((*items, *low), draft))
    return tuple(made)


def pages(card: CardView, paper: Paper) -> int:
    """Return how many pages ``card`` takes on ``paper``."""
    return len(lay_out(card, paper))


def _what_to_know(card: CardView, paper: Paper, room: float) -> list[list[Group]]:
    """Return arrangements of the facts and the cautions, the best first.

    Best is all of it in two columns below the doses. Where that would have to go to another page, the
    facts stay with the doses, over the whole width, and only the cautions are moved.
    """
    labelled = [
        (say(words.SEPARATION), card.separation),
        (say(words.RETEST), card.retest),
        (say(words.REFILL), card.refill),
        (say(words.TOTALS), card.totals),
        (say(words.WHOLE_JUG), card.whole_jug),
    ]
    left, right = _two_columns(paper)
    width = paper.content_width
    careful = (card.cautions, card.emergency, paper)
    narrow = _side_by_side(facts(labelled, paper, left), [handling(*careful, right)], paper, room)
    wide = [identity(card, paper), *facts(labelled, paper, width), handling(*careful, width)]
    return [narrow, wide] if narrow else [wide]


def _record(card: CardView, paper: Paper, room: float) -> list[list[Group]]:
    """Return arrangements of what is expected and what was really given, the best first."""
    width = paper.content_width
    left, right = _two_columns(paper)
    given = (say(words.GIVEN_TITLE), say_all(words.GIVEN), card.write_in, paper)
    wide = [*_chart(card, paper, width), write_in(*given, width)]
    narrow = _side_by_side(_chart(card, paper, left), [write_in(*given, right)], paper, room)
    return [wide, narrow, wide] if narrow else [wide]


def _two_columns(paper: Paper) -> tuple[float, float]:
    left = (paper.content_width - _GUTTER) * _LEFT_SHARE
    return left, paper.content_width - _GUTTER - left


def _side_by_side(one: list[Group], other: list[Group], paper: Paper, room: float) -> list[Group]:
    """Return both as one part, or nothing where the paper is too narrow or a page too short for it."""
    if paper.content_width < _TWO_COLUMNS_FROM:
        return []
    left, _ = _two_columns(paper)
    block = beside([(0.0, gathered(one)), (left + _GUTTER, gathered(other))])
    return [Group(paper.content_width, (block,), GAP, GAP)] if block.height <= room else []


def _chart(card: CardView, paper: Paper, width: float) -> list[Group]:
    if card.ramp is None:
        return []
    return [Group(width, (ramp(card.ramp, paper, width),), GAP, GAP)]
