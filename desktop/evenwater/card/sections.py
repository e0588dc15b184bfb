"""The parts of a card: head, doses, stop rule, facts, handling, boxes to write in.

The identity in the head comes first, then the dose and its time, then what stops it, because a card
is read at arm's length with the pump already running. Every string of the CardView is set whole;
the labels in the margin only help the eye to find it.
"""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import replace

from evenwater.card import words
from evenwater.card.flow import Group
from evenwater.card.items import (
    CAPITAL,
    MM_PER_POINT,
    Block,
    Stroke,
    beside,
    frame,
    rule,
    stack,
    warning_sign,
    warning_width,
)
from evenwater.card.paper import Paper
from evenwater.card.text import baseline, broken, line, line_height, line_to, lines, width_of
from evenwater.screens.views import CardView, DoseRow
from evenwater.wording import say

DOSE_BLANK = 6.0
"""Blank above and below a dose [mm]; it must be 5 at the least."""
GAP = 6.0
"""Blank between two parts [mm]."""
HEAVY, MEDIUM, FINE = 1.2, 0.6, 0.3
"""Thickness of lines [mm]: the finest still survives a photocopy."""
TITLE, _STOP_SIZE = 14.0, 14.0
_TWO_TABLES_FROM, _BETWEEN_TABLES = 160.0, 8.0
_NUMBER_LENGTH = 34.0
"""Room for a telephone number in handwriting [mm]."""
_NUMBER = re.compile(r"\d+")


def head(card: CardView, paper: Paper) -> Group:
    """Set whose card this is, which plan, and until when it holds; on larger papers all of the identity."""
    width = paper.content_width
    blocks = draft_flag(card, paper) if card.draft else []
    blocks += ends(card.title, False, f"{say(words.PLAN)} {card.plan_id}", True, width, TITLE)
    blocks += lines(card.system, width, paper.sizes.system, True)
    if paper.small:
        blocks += lines(card.valid_until, width, paper.sizes.note, True)
    else:
        blocks += [Block(1.0), *_identity(card, paper)]
    return Group(width, (*blocks, Block(2.0), rule(width, HEAVY)))


def identity(card: CardView, paper: Paper) -> Group:
    """Set what the head of a small paper has no room for, so that the dose is on its first page."""
    return Group(paper.content_width, tuple(_identity(card, paper)) if paper.small else (), GAP, GAP)


def _identity(card: CardView, paper: Paper) -> list[Block]:
    width, note = paper.content_width, paper.sizes.note
    blocks = lines(card.volume, width, note)
    if paper.small:
        blocks += lines(card.issued, width, note)
    else:
        blocks += ends(card.issued, False, card.valid_until, True, width, note)
    return [*blocks, *lines(card.replace, width, note)]


def again(card: CardView, paper: Paper) -> Block:
    """Set the short head of every further page: a page found alone must still say whose it is."""
    blocks = draft_flag(card, paper) if card.draft else []
    return stack([*blocks, *short_head(card.system, card.title, paper)])


def short_head(bold: str, title: str, paper: Paper) -> list[Block]:
    """Set what every further page begins with, above a line of its own."""
    blocks = ends(bold, True, title, False, paper.content_width, paper.sizes.note)
    return [*blocks, Block(1.0), rule(paper.content_width, MEDIUM), Block(DOSE_BLANK)]


def ends(one: str, one_bold: bool, other: str, other_bold: bool, width: float, points: float) -> list[Block]:
    """Set two pieces at both ends of one line, or under each other where they do not fit."""
    if width_of(one, points, one_bold) + width_of(other, points, other_bold) + 6.0 <= width:
        return [beside([(0.0, line(one, points, one_bold)), (0.0, line_to(width, other, points, other_bold))])]
    return lines(one, width, points, one_bold) + lines(other, width, points, other_bold)


def draft_flag(card: CardView, paper: Paper) -> list[Block]:
    """Set the draft's words once in plain letters as well: outlines alone cannot be read aloud."""
    sign = 6.0
    indent = warning_width(sign) + 3.0
    said = stack(lines(card.draft, paper.content_width - indent, 16, True, indent))
    return [beside([(0.0, warning_sign(sign)), (0.0, said)]), Block(1.0)]


def doses(rows: Sequence[DoseRow], paper: Paper) -> list[Group]:
    """Set the dose rows in the order given, figures lined up at their decimal mark."""
    sizes, width = paper.sizes, paper.content_width
    wholes = [_whole_part(row.dose, sizes.dose) for row in rows]
    indents = [max(wholes) - whole for whole in wholes]
    edges = [indent + width_of(row.dose, sizes.dose, True) for row, indent in zip(rows, indents, strict=True)]
    column = max(edges, default=0.0) + 7.0
    groups = []
    for row, indent in zip(rows, indents, strict=True):
        blocks: list[Block] = []
        if width - column >= 80:
            wide = _row_wide(row, paper, column, indent)
            blocks = [wide] if wide.height <= paper.content_height / 2 else []
        # A row cut by the end of a page says its dose again: no additive may stand there without it.
        more = stack([*lines(say(words.GOES_ON), width, sizes.note), *lines(row.dose, width, sizes.dose, True)])
        groups.append(Group(width, tuple(blocks or _row_narrow(row, paper)), DOSE_BLANK, DOSE_BLANK, more=more))
    return groups


def jug(card: CardView, paper: Paper) -> Group:
    """Set what is in the jug that the doses are taken from: the whole name, its formula, its strength."""
    width, note = paper.content_width, paper.sizes.note
    column = _label_column(note)
    room = width - column
    blocks: list[Block] = []
    if card.additive:
        formula = line(card.formula, note, False, column + width_of(card.additive, note, True) + 4.0)
        if card.formula and width_of(card.additive, note, True) + width_of(card.formula, note) + 4.0 <= room:
            blocks.append(beside([(0.0, line(card.additive, note, True, column)), (0.0, formula)]))
        else:
            blocks += lines(card.additive, room, note, True, column) + lines(card.formula, room, note, False, column)
    blocks += lines(card.strength, room, note, False, column)
    if blocks:
        blocks[0] = beside([(0.0, line(say(words.STRENGTH), note, True)), (0.0, blocks[0])])
    return Group(width, tuple(blocks), DOSE_BLANK, DOSE_BLANK)


def _whole_part(dose: str, points: float) -> float:
    """Return how wide the digits before the decimal mark are [mm], to line the marks up."""
    found = _NUMBER.match(dose)
    return width_of(found.group(), points, True) if found else 0.0


def _row_wide(row: DoseRow, paper: Paper, column: float, indent: float) -> Block:
    """Set a dose with its rule beside it, tops of the capitals level."""
    sizes = paper.sizes
    room = paper.content_width - column
    told = stack(
        [
            *lines(row.when, room, sizes.when, True),
            *lines(row.additive, room, sizes.additive, True),
            *lines(row.setting, room, sizes.note),
        ]
    )
    amount = _trimmed(line(row.dose, sizes.dose, True, indent), sizes.dose)
    return beside([(0.0, amount), (column, _trimmed(told, sizes.when))])


def _trimmed(block: Block, points: float) -> Block:
    """Take away what a first line of ``points`` [pt] leaves blank above its capitals.

    A large line would otherwise bring a blank of its own, added to the one that is asked for.
    """
    above = baseline(points) - CAPITAL * points * MM_PER_POINT
    return Block(block.height - above, block.moved(0.0, -above))


def _row_narrow(row: DoseRow, paper: Paper) -> list[Block]:
    """Set a dose above its rule, line by line."""
    sizes, width = paper.sizes, paper.content_width
    first, *more = lines(row.dose, width, sizes.dose, True)
    return [
        _trimmed(first, sizes.dose),
        *more,
        # A reading is never torn from the number of doses it allows, nor a chemical from its hydrate.
        *(stack(lines(part, width, sizes.when, True)) for part in row.when.splitlines()),
        stack(lines(row.additive, width, sizes.additive, True)),
        *lines(row.setting, width, sizes.note),
    ]


def stop(said: Sequence[tuple[str, bool]], paper: Paper) -> Group:
    """Set what ends the dosing, as sentences and whether they are bold, in the heaviest frame."""
    return _warning(words.STOP, said, paper.content_width, _STOP_SIZE, HEAVY)


def remarks(card: CardView, paper: Paper) -> Group:
    """Set what the keeper was warned of and went on with."""
    said = [(remark, False) for remark in card.remarks]
    return _warning(say(words.NOTE), said, paper.content_width, paper.sizes.note, MEDIUM)


def handling(cautions: Sequence[str], emergency: str, paper: Paper, width: float) -> Group:
    """Set the handling lines whole, then the first aid with a line to write the poison centre's number on."""
    note = paper.sizes.note
    said = [*((caution, False) for caution in cautions), (emergency, True)]
    group = _warning(say(words.HANDLING), said, width, note, MEDIUM, beside_text=False)
    room = width - 2 * group.pad
    last = broken(emergency, room, note, True)[-1:]
    begin = width_of(last[0], note, True) + 2.0 if last else 0.0
    if room - begin < _NUMBER_LENGTH:
        begin = 0.0
    level = Stroke(((begin, baseline(note) + 1.0), (room, baseline(note) + 1.0)), FINE)
    if begin:
        ending = beside([(0.0, group.blocks[-1]), (0.0, Block(0.0, (level,)))])
        return replace(group, blocks=(*group.blocks[:-1], ending))
    return replace(group, blocks=(*group.blocks, Block(line_height(note) + 2.0, (level.moved(0.0, 2.0),))))


def _warning(
    word: str, said: Sequence[tuple[str, bool]], width: float, points: float, border: float, beside_text: bool = True
) -> Group:
    """Set sentences in a frame under a word and a sign: three signs that none of them is decoration."""
    pad = (3.0 if border == HEAVY else 2.2) + border
    sign = points * MM_PER_POINT * 1.5
    size = points + 5 if border == HEAVY else points + 1
    name = warning_width(sign) + 2.5
    indent = name + width_of(word, size, True) + 6.0
    if not beside_text or width - indent < 100:
        indent = 0.0
    # Beside the text, the word stands on the first line's own baseline; above it, on its own.
    drop = baseline(points) - baseline(size) if indent else 0.0
    foot_of_sign = baseline(size) + 0.12 * sign
    title = Block(
        line_height(size) + 0.8,
        (*line(word, size, True, name).moved(0.0, drop), *warning_sign(sign).moved(0.0, drop + foot_of_sign - sign)),
    )
    blocks: list[Block] = []
    for sentence, bold in said:
        if sentence:
            blocks += [Block(1.0)] if blocks else []
            blocks += lines(sentence, width - 2 * pad - indent, points, bold, indent)
    if indent:
        return Group(width, tuple(blocks), GAP, GAP, side=title, border=border, pad=pad)
    return Group(width, tuple(blocks), GAP, GAP, title, border=border, pad=pad)


def facts(labelled: Sequence[tuple[str, str]], paper: Paper, width: float) -> list[Group]:
    """Set labelled facts under each other, the labels in a column of their own."""
    note = paper.sizes.note
    column = max([_label_column(note), *(width_of(label, note, True) + 4.0 for label, value in labelled if value)])
    groups = []
    for label, value in labelled:
        if value:
            groups.append(Group(width, tuple(_fact(label, value, width, note, column)), 2.2, 2.2))
    return groups


def _fact(label: str, value: str, width: float, points: float, column: float) -> list[Block]:
    name = line(label, points, True)
    first, *more = lines(value, width - column, points, False, column)
    return [beside([(0.0, name), (0.0, first)]), *more]


def _label_column(points: float) -> float:
    labels = (say(words.SEPARATION), say(words.RETEST), say(words.WHOLE_JUG), say(words.STRENGTH))
    return max(width_of(label, points, True) for label in labels) + 4.0


def write_in(heading: str, columns: Sequence[str], count: int, paper: Paper, width: float) -> Group:
    """Set ``count`` rows of empty boxes for what was really done: a second dose by a second person then shows.

    Where two tables find room side by side, the right one goes on from the left one.
    """
    tables = 2 if width >= _TWO_TABLES_FROM else 1
    each = (width - (tables - 1) * _BETWEEN_TABLES) / tables
    starts = [table * (each + _BETWEEN_TABLES) for table in range(tables)]
    edges = [0.0]
    for share in (0.24, 0.18, 0.34, 0.24):
        edges.append(edges[-1] + share * each)
    names = [(left + 1.5, line(name, paper.sizes.small)) for left, name in zip(edges[:-1], columns, strict=True)]
    title = stack(
        [
            *lines(heading, width, paper.sizes.note, True),
            beside([(start, beside(names)) for start in starts]),
        ]
    )
    height = 7.5 if paper.small else 8.5
    inner = [Stroke(((x, 0.0), (x, height)), FINE) for x in edges[1:-1]]
    row = Block(height, (frame(each, height, FINE), *inner))
    rows = [beside([(start, row) for start in starts])] * math.ceil(count / tables)
    if count % tables:
        rows[-1] = row
    # Neighbouring boxes share their line instead of doubling it.
    return Group(width, tuple(rows), GAP, GAP, title, gap=-FINE)


def foot(named: str, paper: Paper, page: int, pages: int) -> Block:
    """Set what the page belongs to, its number and the ruler that shows whether the print is at full size."""
    width, small = paper.content_width, paper.sizes.small
    number = words.page_of(page, pages)
    room = width - width_of(number, small + 1, True) - 5.0
    left = stack(lines(named, room, small + 1, True))
    top = beside([(0.0, left), (0.0, line_to(width, number, small + 1, True))])
    tick = 1.5
    marks = [Stroke(((x, 0.0), (x, 2 * tick)), FINE) for x in (0.0, 50.0)]
    marks += [Stroke(((x, tick / 2), (x, tick * 1.5)), FINE) for x in (10.0, 20.0, 30.0, 40.0)]
    ruler = Block(2 * tick, (Stroke(((0.0, tick), (50.0, tick)), FINE), *marks))
    label = line(say(words.RULER), small)
    level = Block(label.height, (*ruler.moved(0.0, (label.height - 2 * tick) / 2), *label.moved(53.0, 0.0)))
    return stack([Block(3.0), rule(width, FINE), Block(1.0), top, level])
