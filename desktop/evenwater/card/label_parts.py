"""The parts of a jug's label: whose it is, its hazards and handling in one frame, then strength, dates and the foot.

Safety comes first and in one piece, because a jug is picked up before anybody asks how strong it is.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from evenwater.card import words
from evenwater.card.flow import Group
from evenwater.card.items import (
    MM_PER_POINT,
    Block,
    Item,
    Stroke,
    beside,
    frame,
    rule,
    stack,
    warning_sign,
    warning_width,
)
from evenwater.card.label_paper import LabelPaper
from evenwater.card.sections import FINE, HEAVY, MEDIUM
from evenwater.card.text import baseline, broken, line, line_height, line_to, lines, width_of
from evenwater.screens.jug_label import Contents, Entry, JugLabel
from evenwater.wording import marked, say

JUG = marked("Jug")
BATCH = marked("Batch")

_GAP = 3.2
"""Blank between two parts [mm]."""
_BELOW_TITLE = 2.4
_SENTENCE = 0.6
"""Blank between two sentences in the frame [mm]."""
_BETWEEN = 4.0
"""Blank between two pieces on one line [mm]."""
_PAD = 2.2
"""Blank inside a frame [mm]."""
_HANDWRITING = 7.0
"""Height of a line to write on by hand [mm]."""
_ROOM = 34.0
"""Least length of one, for a telephone number or a name [mm]."""
_IN_BOX, _ABOVE = 1.6, 0.6
"""Blank inside a box, at its sides and above and below [mm]."""
_LONG = 3
"""A text of more lines than this leaves its box, so that it can be cut between two pages."""


def head(label: JugLabel, paper: LabelPaper) -> Group:
    """Set the jug's name and what is in it, the formulas smaller."""
    width, sizes = paper.content_width, paper.sizes
    blocks = lines(label.name, width, sizes.name, True) or [
        _open_row(say(JUG), width, sizes.note, line_height(sizes.name))
    ]
    for contents in label.contents:
        blocks += _contents(contents, width, sizes.contents, sizes.strength)
    return Group(width, tuple(blocks), after=_GAP)


def _contents(contents: Contents, width: float, points: float, small: float) -> list[Block]:
    *before, last = lines(contents.name, width, points, True)
    begin = width_of(broken(contents.name, width, points, True)[-1], points, True) + _BETWEEN
    if begin + width_of(contents.formula, small) > width:
        return [*before, last, *lines(contents.formula, width, small)]
    formula = Block(0.0, line(contents.formula, small, x=begin).moved(0.0, baseline(points) - baseline(small)))
    return [*before, beside([(0.0, last), (0.0, formula)]) if contents.formula else last]


def again(label: JugLabel, paper: LabelPaper) -> Block:
    """Set the short head of every further page, with the signal word: a piece found alone must still warn."""
    width, note = paper.content_width, paper.sizes.note
    box, wide = _small_warning(label, paper)
    room = width - wide - _BETWEEN
    said = lines(label.name, room, note, True)
    for contents in label.contents:
        said += lines(contents.name, room, note)
    return stack([beside([(0.0, stack(said)), (width - wide, box)]), Block(1.5), rule(width, MEDIUM), Block(_GAP)])


def _small_warning(label: JugLabel, paper: LabelPaper) -> tuple[Block, float]:
    """Set the signal word with its sign in a frame of its own, and return it with its width [mm]."""
    if not label.signal_word:
        return Block(0.0), 0.0
    title, wide = _signal(label.signal_word, paper.sizes.again)
    pad = HEAVY + 1.0
    high = title.height + 2 * pad + 0.8
    return Block(high, (frame(wide + 2 * pad, high, HEAVY), *title.moved(pad, pad))), wide + 2 * pad


def _signal(word: str, points: float) -> tuple[Block, float]:
    """Set a word after a warning sign, its baseline on the sign's foot, and return it with its width [mm]."""
    sign = points * MM_PER_POINT * 1.15
    begin = warning_width(sign) + 0.25 * sign
    drop = sign - baseline(points)
    return (
        Block(sign, (*warning_sign(sign).items, *line(word, points, True, begin).moved(0.0, drop))),
        begin + width_of(word, points, True),
    )


def safety(label: JugLabel, paper: LabelPaper, dense: bool) -> Group:
    """Set the hazards, the handling, what it must never meet and the first aid in one frame.

    ``dense`` sets the sentences one after the other; else each begins on a line of its own. Where the frame is cut by
    the end of a page, no sentence is torn.
    """
    width, note = paper.content_width, paper.sizes.note
    border = HEAVY if label.signal_word else MEDIUM
    pad = border + _PAD
    room = width - 2 * pad
    blocks = [_title(label, paper, room), Block(_BELOW_TITLE)]
    for sentences, bold in ((label.handling, False), ((label.separation, label.keep_away), True)):
        said = [text for text in sentences if text]
        for text in [" ".join(said)] if dense else said:
            blocks += [Block(_SENTENCE), stack(lines(text, room, note, bold))]
    blocks += [Block(_SENTENCE), open_lines(label.first_aid, room, note)]
    more = stack([*lines(say(words.HANDLING), room, note, True), Block(_SENTENCE)])
    return Group(width, tuple(blocks), _GAP, _GAP, more=more, border=border, pad=pad)


def title_of(label: JugLabel) -> str:
    """Return the word at the top of the frame: the signal word, or that care is needed where there is none."""
    return label.signal_word or say(words.HANDLING)


def _title(label: JugLabel, paper: LabelPaper, room: float) -> Block:
    """Set the signal word, large, with the hazard statements beside it or, where they would tower over it, below it."""
    size, note = (paper.sizes.word if label.signal_word else paper.sizes.strength), paper.sizes.note
    title, wide = _signal(title_of(label), size)
    column = wide + 2 * _BETWEEN
    rows = [lines(text, room - column, note, True, column) for text in label.statements]
    said = stack([piece for row in rows for piece in row])
    if said.height > title.height and any(len(row) > 1 for row in rows):
        below = [piece for text in label.statements for piece in lines(text, room, note, True)]
        return stack([title, Block(_BELOW_TITLE), *below])
    # The last statement stands on the signal word's own line, unless there are too many.
    drop = max(0.0, title.height - said.height + line_height(note) - baseline(note))
    return Block(max(title.height, said.height), (*title.items, *said.moved(0.0, drop)))


def quantities(label: JugLabel, paper: LabelPaper) -> Group:
    """Set how strong it is, and what a millilitre carries and does."""
    width, sizes = paper.content_width, paper.sizes
    blocks = lines(label.strength, width, sizes.strength, True)
    for text in label.does:
        blocks += lines(text, width, sizes.note)
    return Group(width, tuple(blocks), _GAP, _GAP)


def entries(label: JugLabel, paper: LabelPaper) -> list[Group]:
    """Set what is known of the mixing in boxes; a box without a text is there to be written in."""
    width, sizes = paper.content_width, paper.sizes
    inner = width / paper.boxes - 2 * _IN_BOX
    boxed = [entry for entry in label.entries if len(broken(entry.text, inner, sizes.entry, True)) <= _LONG]
    rows, first = [], 0
    for left in range(math.ceil(len(boxed) / paper.boxes), 0, -1):
        count = math.ceil((len(boxed) - first) / left)
        rows.append(_row(boxed[first : first + count], paper))
        first += count
    groups = [Group(width, tuple(rows), _GAP, _GAP, gap=-FINE)]
    for entry in label.entries:
        if entry not in boxed:
            said = [*lines(entry.label, width, sizes.note), *lines(entry.text, width, sizes.entry, True)]
            groups.append(Group(width, tuple(said), _GAP, _GAP))
    return groups


def _row(boxed: Sequence[Entry], paper: LabelPaper) -> Block:
    """Set boxes of one height side by side, each with its label at the top."""
    width, sizes = paper.content_width, paper.sizes
    each = width / len(boxed)
    room = each - 2 * _IN_BOX
    inside = [
        stack([*lines(e.label, room, sizes.note, x=_IN_BOX), *lines(e.text, room, sizes.entry, True, _IN_BOX)])
        for e in boxed
    ]
    empty = line_height(sizes.note) + _HANDWRITING
    height = max([empty, *(block.height for block in inside)]) + 2 * _ABOVE
    items: list[Item] = [frame(width, height, FINE)]
    for number, block in enumerate(inside):
        items += block.moved(number * each, _ABOVE)
        if number:
            items.append(Stroke(((number * each, 0.0), (number * each, height)), FINE))
    return Block(height, tuple(items))


def foot(label: JugLabel, paper: LabelPaper, page: int, pages: int) -> Block:
    """Set the ruler that shows whether the print is at full size, the batch and the page, on one line."""
    width, small = paper.content_width, paper.sizes.small
    # A piece of paper of its own must say which batch it belongs to; on a single one a box does.
    named = [f"{say(BATCH)} {label.batch}"] if label.batch and pages > 1 else []
    right, said = width, []
    for text in (words.page_of(page, pages), *named):
        said.append((0.0, line_to(right, text, small, True)))
        right -= width_of(text, small, True) + _BETWEEN
    return stack([Block(2.0), beside([(0.0, ruler(small)), *said])])


def ruler(points: float) -> Block:
    """Set a ruler of 50 mm with what it is."""
    high = line_height(points)
    level, tick = high / 2, 1.5
    marks = [Stroke(((x, level - tick), (x, level + tick)), FINE) for x in (0.0, 50.0)]
    marks += [Stroke(((x, level - tick / 2), (x, level + tick / 2)), FINE) for x in (10.0, 20.0, 30.0, 40.0)]
    return Block(
        high, (Stroke(((0.0, level), (50.0, level)), FINE), *marks, *line(say(words.RULER), points, x=52.0).items)
    )


def _open_row(said: str, width: float, points: float, high: float = _HANDWRITING) -> Block:
    """Set bold words and after them a line to write on, in a row ``high`` mm high."""
    drop = high - line_height(points)
    level = drop + baseline(points) + 1.0
    begin = width_of(said, points, True) + 2.0 if said else 0.0
    items = line(said, points, True).moved(0.0, drop) if said else ()
    return Block(high, (*items, Stroke(((begin, level), (width, level)), FINE)))


def open_lines(said: str, width: float, points: float) -> Block:
    """Set bold words that end in a line to write on, behind their own last words or below them."""
    pieces = broken(said, width, points, True)
    if width - width_of(pieces[-1], points, True) - 2.0 < _ROOM:
        pieces.append("")
    return stack([*(line(piece, points, True) for piece in pieces[:-1]), _open_row(pieces[-1], width, points)])
