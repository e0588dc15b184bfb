"""Decides what of the card of all plans together goes on which page: cautions first, then pumps, water, food, tests, stop rules."""

from __future__ import annotations

from evenwater.card.flow import Group
from evenwater.card.fonts import load_fonts
from evenwater.card.items import Block, beside, rule, stack, warning_sign, warning_width
from evenwater.card.layout import Page, begun, finished
from evenwater.card.paper import Paper
from evenwater.card.sections import (
    HEAVY,
    TITLE,
    doses,
    ends,
    facts,
    handling,
    short_head,
    stop,
)
from evenwater.card.text import lines
from evenwater.screens.together_card import DRAFT, TogetherPage
from evenwater.wording import marked, say

NAMED = marked("All plans")
WATER, TEST, EXPECTED, PLAN, RULE, APART = (
    marked("Water exchange"),
    marked("Test"),
    marked("In a week"),
    marked("Plan"),
    marked("Rule"),
    marked("Keep apart"),
)
_DRAFT_SIZE = 16.0


def lay_out(sheet: TogetherPage, paper: Paper) -> tuple[Page, ...]:
    """Return the pages of ``sheet`` on ``paper``, at least one.

    Raises
    ------
    CardFailed
        When the typeface is missing, or a name so long that a page has no room below it.
    """
    load_fonts()
    width = paper.content_width
    named = f"{say(NAMED)} {sheet.code}"
    flag = _flag(paper) if sheet.draft else []
    flow = begun(named, stack([*flag, *short_head(sheet.system, named, paper)]), paper)
    flow.add(_head(sheet, paper, flag))
    if sheet.draft:
        flow.cut(stop([(text, True) for text in sheet.draft], paper))
    # On a small paper the cautions would leave the first page all but empty.
    flow.cut(handling(sheet.cautions, sheet.emergency, paper, width))
    said = [*((text, True) for text in sheet.maxima), *((text, False) for text in (*sheet.stop, sheet.rules[0]))]
    for group in (*doses((*sheet.rows, *sheet.foods), paper), stop(said, paper)):
        flow.add(group)
    for group in facts(_facts(sheet), paper, width):
        flow.add(group)
    return finished(flow, named, paper, say(DRAFT) if sheet.draft else "")


def _flag(paper: Paper) -> list[Block]:
    """Set the draft's words once in plain letters as well: outlines alone cannot be read aloud."""
    sign = 6.0
    indent = warning_width(sign) + 3.0
    said = stack(lines(f"{say(DRAFT)}.", paper.content_width - indent, _DRAFT_SIZE, True, indent))
    return [beside([(0.0, warning_sign(sign)), (0.0, said)]), Block(1.0)]


def _head(sheet: TogetherPage, paper: Paper, flag: list[Block]) -> Group:
    width, note = paper.content_width, paper.sizes.note
    blocks = [*flag, *ends(sheet.title, False, f"{say(NAMED)} {sheet.code}", True, width, TITLE)]
    blocks += lines(sheet.system, width, paper.sizes.system, True)
    blocks += [Block(1.0), *lines(sheet.volume, width, note)]
    blocks += ends(sheet.issued, False, sheet.valid_until, True, width, note)
    blocks += lines(f"{sheet.because} {sheet.replace}", width, note)
    return Group(width, (*blocks, Block(2.0), rule(width, HEAVY)))


def _facts(sheet: TogetherPage) -> list[tuple[str, str]]:
    labelled = (
        (say(WATER), sheet.water),
        (say(APART), sheet.separation),
        (say(TEST), sheet.tests),
        (say(EXPECTED), sheet.expected),
        (say(PLAN), sheet.plans),
        (say(RULE), sheet.rules[1:]),
    )
    return [(label if number == 0 else "", text) for label, texts in labelled for number, text in enumerate(texts)]
