"""Decides what of the contingency cards goes on which page; each card begins a page and counts its own.

The situation comes first, in the largest letters, because the right card of four must be found by somebody in a hurry.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from evenwater.card import words
from evenwater.card.flow import Group, gathered
from evenwater.card.fonts import load_fonts
from evenwater.card.items import Block, beside, rule, stack
from evenwater.card.label_parts import open_lines
from evenwater.card.layout import Page, begun, finished
from evenwater.card.paper import Paper
from evenwater.card.sections import (
    GAP,
    HEAVY,
    TITLE,
    doses,
    ends,
    facts,
    handling,
    short_head,
    stop,
    write_in,
)
from evenwater.card.text import line, lines, width_of
from evenwater.screens.contingency_views import ContingencyCard, ContingencySet, Step
from evenwater.wording import say

_STEP_GAP = 2.0
"""Blank between two steps [mm]."""
_WHEN_SHARE = 0.3
"""Most of the width that the column of times may take."""
_BESIDE_FROM = 110.0
"""Narrower than this [mm], a step's time stands above it."""


def lay_out(cards: ContingencySet, paper: Paper) -> tuple[Page, ...]:
    """Return the pages of all cards on ``paper``, one card after the other.

    Raises
    ------
    CardFailed
        When the typeface is missing, or a name so long that a page has no room below it.
    """
    load_fonts()
    return tuple(page for card in cards.cards for page in _pages(card, paper))


def _pages(card: ContingencyCard, paper: Paper) -> tuple[Page, ...]:
    width = paper.content_width
    named = f"{say(words.PLAN)} {card.identity.plan_id}, {card.title}"
    flow = begun(named, stack(short_head(card.title, card.identity.system, paper)), paper)
    careful = [handling(card.cautions, card.emergency, paper, width)] if card.cautions else []
    limits = [(limit, not number) for number, limit in enumerate(card.limits)]
    boxes = write_in(card.write_in.title, card.write_in.columns, card.write_in.rows, paper, width)
    steps = _steps(card.steps, paper)
    given = _on_one_face([*doses(card.rows, paper), stop(limits, paper)], flow.room_of_a_page)
    order = [*given, *steps] if card.first else [*steps, *given]
    known = facts(card.facts, paper, width)
    known[:1] = [replace(fact, before=GAP) for fact in known[:1]]
    for group in (_head(card, paper), *careful, *order, *known, _late(card, paper), boxes):
        flow.add(group)
    return finished(flow, named, paper)


def _on_one_face(groups: list[Group], room: float) -> list[Group]:
    """Return rows and stop rule as one part, so that none is missed overleaf; as they are where a page is too short."""
    whole = gathered(groups)
    return [Group(groups[-1].width, (whole,), GAP, GAP)] if whole.height <= room else groups


def _head(card: ContingencyCard, paper: Paper) -> Group:
    """Set what has happened, when this card is the right one, and which plan and tank it belongs to."""
    width, note, who = paper.content_width, paper.sizes.note, card.identity
    blocks = ends(who.system, True, f"{say(words.PLAN)} {who.plan_id}", True, width, TITLE)
    blocks += lines(card.title, width, paper.sizes.system, True)
    blocks += lines(card.use_when, width, note if paper.small else TITLE, True)
    issued = [] if paper.small else [Block(1.0), *ends(who.issued, False, who.valid_until, True, width, note)]
    blocks += issued or lines(who.valid_until, width, note, True)
    blocks += [open_lines(card.phone, width, note)]
    return Group(width, (*blocks, Block(2.0), rule(width, HEAVY)), after=GAP)


def _late(card: ContingencyCard, paper: Paper) -> Group:
    """Set what of the identity the head has no room for: the steps begin on its page."""
    width, note, who = paper.content_width, paper.sizes.note, card.identity
    blocks = [*(lines(who.issued, width, note) if paper.small else []), *lines(who.belongs, width, note)]
    return Group(width, tuple(blocks), GAP, GAP)


def _steps(steps: Sequence[Step], paper: Paper) -> list[Group]:
    """Set the steps numbered, one under the other, each in one piece: when in bold, then what."""
    size = paper.sizes.note if paper.small else TITLE
    numbers = [f"{number}" for number in range(1, len(steps) + 1)]
    column = max(width_of(number, size, True) for number in numbers) + 3.0
    wide = paper.content_width >= _BESIDE_FROM
    times = max(width_of(step.when, size, True) for step in steps) + 5.0
    when = min(times, _WHEN_SHARE * paper.content_width)
    groups = []
    for number, step in zip(numbers, steps, strict=True):
        room = paper.content_width - column
        told = lines(step.when, when - 5.0 if wide else room, size, True, column)
        if wide:
            what = stack(lines(step.what, room - when, size, False, column + when))
            block = beside([(0.0, line(number, size, True)), (0.0, stack(told)), (0.0, what)])
        else:
            below = stack([*told, *lines(step.what, room, size, False, column)])
            block = beside([(0.0, line(number, size, True)), (0.0, below)])
        groups.append(Group(paper.content_width, (block,), _STEP_GAP, _STEP_GAP))
    return groups
