"""Decides what of an emergency card goes on which page: what to do at once fills the first one, in letters that are read from 2 m.

At 2 m a capital is to be 9 mm or more (1/200 to 1/220 of the distance, US Department of Transportation, Human Factors Design Guide for
displays): 40 pt of this typeface have 9.4 mm.
"""

from __future__ import annotations

from dataclasses import replace

from evenwater.card.flow import Group
from evenwater.card.fonts import load_fonts
from evenwater.card.items import Block, beside, rule, stack, warning_sign, warning_width
from evenwater.card.label_parts import open_lines
from evenwater.card.layout import Page, begun, finished
from evenwater.card.paper import Paper
from evenwater.card.sections import (
    GAP,
    HEAVY,
    MEDIUM,
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
from evenwater.screens.emergency_card import BANNER, EmergencyCard
from evenwater.wording import marked, say

EMERGENCY, WAY, ELECTRICITY, DANGER = (
    marked("Emergency card"),
    marked("The way down"),
    marked("Electricity"),
    marked("Danger"),
)
IN_FULL = marked("The same in full")
STOP_POINTS, SMALL_STOP_POINTS = 40.0, 36.0
"""Letters of the stop list [pt]; no other letters of the card are larger."""
SHORT_BELOW = 150.0
"""On a paper narrower than this [mm] the list is told in two words each, so that all of it stands on one page."""
_STEP_GAP = 2.0
_WHEN_SHARE = 0.34
_BESIDE_FROM = 110.0


def lay_out(card: EmergencyCard, paper: Paper) -> tuple[Page, ...]:
    """Return the pages of ``card`` on ``paper``, at least one.

    Raises
    ------
    CardFailed
        When the typeface is missing, or a name so long that a page has no room below it.
    """
    load_fonts()
    width = paper.content_width
    named = say(EMERGENCY) if paper.small else f"{say(EMERGENCY)}, {card.issued}"
    flow = begun(named, stack(short_head(card.title, card.system, paper)), paper)
    flow.add(_head(card, paper))
    # Even below a name that takes half of a small page it begins on this one.
    flow.cut(_stop_list(card, paper))
    flow.add(_call(card, paper))
    careful = [handling(card.cautions, card.emergency, paper, width)] if card.cautions else []
    said = [(text, number == 0) for number, text in enumerate(card.never)]
    titled = [(say(DANGER) if number == 0 else "", text) for number, text in enumerate(card.dangers)]
    boxes = write_in(card.write_in.title, card.write_in.columns, card.write_in.rows, paper, width)
    for group in (
        _in_full(card, paper),
        *careful,
        _electricity(card, paper),
        *facts(titled, paper, width),
        _way(card, paper),
        *doses(card.rows, replace(paper, sizes=replace(paper.sizes, dose=SMALL_STOP_POINTS))),
        *_steps(card, paper),
        stop(said, paper),
        *facts(card.facts, paper, width),
        _late(card, paper),
        boxes,
    ):
        if group.blocks:
            flow.add(group)
    return finished(flow, named, paper)


def _head(card: EmergencyCard, paper: Paper) -> Group:
    """Set whose tank this is and what has happened; on a small paper no more than fits above the stop list."""
    width, note = paper.content_width, paper.sizes.note
    if paper.small:
        return Group(width, (*ends(BANNER, True, card.system, True, width, note), rule(width, MEDIUM)), after=0.5)
    sign = paper.sizes.when * 0.5
    indent = warning_width(sign) + 3.0
    title = stack(lines(card.title, width - indent, paper.sizes.when, True, indent))
    blocks = [beside([(0.0, warning_sign(sign)), (0.0, title)])]
    blocks += ends(card.system, True, card.valid_until, False, width, TITLE)
    blocks += lines(card.happened, width, note, True)
    return Group(width, (*blocks, Block(1.0), rule(width, HEAVY)), after=_STEP_GAP)


def _stop_list(card: EmergencyCard, paper: Paper) -> Group:
    """Set what is done at once, numbered, the largest words of the card, in the heaviest frame; never torn within a line."""
    points = SMALL_STOP_POINTS if paper.small else STOP_POINTS
    width, pad = paper.content_width, HEAVY + (1.0 if paper.small else 2.0)
    column = width_of("0", points, True) + 4.0
    blocks = []
    for number, text in enumerate(card.shortest if width < SHORT_BELOW else card.stop, start=1):
        told = stack(lines(text, width - 2 * pad - column, points, True, column))
        blocks.append(beside([(0.0, line(f"{number}", points, True)), (0.0, told)]))
    return Group(width, tuple(blocks), 0.0, GAP, border=HEAVY, pad=pad)


def _in_full(card: EmergencyCard, paper: Paper) -> Group:
    width, note = paper.content_width, paper.sizes.note
    column = width_of("0", note, True) + 3.0
    blocks = [stack(lines(say(IN_FULL), width, note, True))]
    for number, text in enumerate(card.in_full, start=1):
        told = stack(lines(text, width - column, note, False, column))
        blocks.append(beside([(0.0, line(f"{number}", note, True)), (0.0, told)]))
    return Group(width, tuple(blocks), GAP, GAP, gap=0.8)


def _call(card: EmergencyCard, paper: Paper) -> Group:
    return Group(paper.content_width, (open_lines(card.phone, paper.content_width, TITLE),), GAP, GAP)


def _electricity(card: EmergencyCard, paper: Paper) -> Group:
    width, pad, note = paper.content_width, MEDIUM + 2.2, paper.sizes.note
    blocks = [*lines(say(ELECTRICITY), width - 2 * pad, note + 1, True)]
    for text in card.electricity:
        blocks += [Block(0.8), stack(lines(text, width - 2 * pad, note))]
    return Group(width, tuple(blocks), GAP, GAP, border=MEDIUM, pad=pad)


def _way(card: EmergencyCard, paper: Paper) -> Group:
    width = paper.content_width
    blocks = [*lines(say(WAY), width, paper.sizes.note), *lines(card.way, width, paper.sizes.when, True)]
    blocks += lines(card.happened, width, paper.sizes.note, True) if paper.small else []
    return Group(width, (stack(blocks),), GAP, _STEP_GAP)


def _steps(card: EmergencyCard, paper: Paper) -> list[Group]:
    """Set the steps one under the other, each in one piece: when in bold, then what."""
    size, width = (paper.sizes.note if paper.small else TITLE), paper.content_width
    wide = width >= _BESIDE_FROM
    when = min(max(width_of(step.when, size, True) for step in card.steps) + 5.0, _WHEN_SHARE * width)
    groups = []
    for step in card.steps:
        told = lines(step.when, when - 5.0 if wide else width, size, True)
        what = lines(step.what, width - when if wide else width, size, False, when if wide else 0.0)
        block = beside([(0.0, stack(told)), (0.0, stack(what))]) if wide else stack([*told, *what])
        groups.append(Group(width, (block,), _STEP_GAP, _STEP_GAP))
    return groups


def _late(card: EmergencyCard, paper: Paper) -> Group:
    """Set what of the identity the head has no room for."""
    width, note = paper.content_width, paper.sizes.note
    said = [card.title, card.volume, card.issued, card.valid_until, card.replace]
    return Group(width, tuple(block for text in said for block in lines(text, width, note)), GAP, GAP)
