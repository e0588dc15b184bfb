"""Decides what of a round sheet goes on which page: a line for each duty, with boxes to tick and to write in."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.card import words
from evenwater.card.flow import Flow, Group
from evenwater.card.fonts import load_fonts
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
from evenwater.card.label_parts import ruler
from evenwater.card.layout import Page
from evenwater.card.paper import Paper
from evenwater.card.sections import FINE, HEAVY, MEDIUM
from evenwater.card.text import baseline, line, line_height, line_to, lines, width_of
from evenwater.screens.round_page import RoundLine, RoundPage, RoundPlace
from evenwater.wording import marked, say

DONE, READ, TIME, INITIALS = marked("Done"), marked("Figure read"), marked("Time"), marked("Initials")
GOES_ON = marked("goes on")

_TITLE, _PLACE, _WHAT, _WHY, _HEAD = 20.0, 14.0, 12.0, 10.5, 10.5
"""Letter sizes [pt]; nothing on paper is below 10."""
_TICK = 6.0
"""Side of the box to tick [mm]."""
_ROW = 11.0
"""Least height of a line: what is written by hand needs it [mm]."""
_PAD = 1.6
_GAP = 5.0


@dataclass(frozen=True)
class _Columns:
    """Left edges of what to do, the figure read, the time and the initials, and the right edge of all [mm]."""

    what: float
    read: float
    time: float
    initials: float
    end: float

    @classmethod
    def of(cls, paper: Paper) -> _Columns:
        """Return the columns of a paper."""
        end = paper.content_width
        read, time, initials = (40.0, 22.0, 22.0) if end > 150.0 else (30.0, 17.0, 18.0)
        first = width_of(say(DONE), _HEAD) + 3.0
        return cls(first, end - initials - time - read, end - initials - time, end - initials, end)


class _Closely(Flow):
    """Cuts a place between its lines rather than leave half a page blank; no line is cut."""

    @property
    def room_of_a_page(self) -> float:
        """Return nought [mm]: no place is moved whole to the next page."""
        return 0.0


def lay_out(sheet: RoundPage, paper: Paper) -> tuple[Page, ...]:
    """Return the pages of ``sheet`` on ``paper``, at least one.

    Raises
    ------
    CardFailed
        When the typeface is missing, or a name so long that a page has no room below it.
    """
    load_fonts()
    columns = _Columns.of(paper)
    low = _foot(paper, 1, 1).height
    flow = _Closely(paper.left, paper.top, paper.bottom - low, _again(sheet, columns))
    flow.add(_head(sheet, columns))
    for place in sheet.places:
        flow.add(_place(place, columns))
    flow.add(Group(columns.end, (_rules(sheet, columns),), _GAP))
    made = []
    for number, items in enumerate(flow.pages, start=1):
        foot = _foot(paper, number, len(flow.pages)).moved(paper.left, paper.bottom - low)
        made.append(Page((*items, *foot), ""))
    return tuple(made)


def _head(sheet: RoundPage, columns: _Columns) -> Group:
    blocks = [
        *lines(sheet.title, columns.end, _TITLE, True),
        *lines(sheet.issued, columns.end, _WHAT),
        *lines(sheet.count, columns.end, _WHAT),
    ]
    if sheet.places:
        blocks += [Block(2.0), _heads(columns)]
    return Group(columns.end, tuple(blocks))


def _again(sheet: RoundPage, columns: _Columns) -> Block:
    """Set the short head of every further page: a page found alone must still say what it is."""
    named = beside([(0.0, line(sheet.title, _WHAT, True)), (0.0, line_to(columns.end, sheet.issued, _WHAT))])
    return stack([named, Block(1.0), _heads(columns), Block(2.0)])


def _heads(columns: _Columns) -> Block:
    names = (
        (0.0, say(DONE)), (columns.read + _PAD, say(READ)), (columns.time + _PAD, say(TIME)), (columns.initials + _PAD, say(INITIALS)),
    )  # fmt: skip
    return stack([beside([(x, line(name, _HEAD)) for x, name in names]), Block(0.5), rule(columns.end, MEDIUM)])


def _place(place: RoundPlace, columns: _Columns) -> Group:
    """Set a place and its lines, each kept whole; where they go on over the page, the place is named again."""
    head = stack([*lines(place.name, columns.end, _PLACE, True), Block(1.0), rule(columns.end, FINE)])
    named = f"{place.name}, {say(GOES_ON)}"
    more = stack([*lines(named, columns.end, _PLACE, True), Block(1.0), rule(columns.end, FINE)])
    return Group(columns.end, tuple(_row(each, columns) for each in place.lines), _GAP, _GAP, head, more)


def _row(each: RoundLine, columns: _Columns) -> Block:
    """Set one line: the box, what to do and why, a line for the figure with its unit, boxes for time and initials."""
    # Where no figure is read, the words have its column too.
    room = (columns.read if each.reads else columns.time) - columns.what - 2.0
    said = [
        *lines(each.what, room, _WHAT, True),
        *_when(each, room),
        *(lines(each.why, room, _WHY) if each.why else ()),
    ]
    text = stack(said)
    height = max(_ROW, text.height) + 2 * _PAD
    items: list[Item] = [
        *Block(0.0, (frame(_TICK, _TICK, FINE),)).moved(0.0, _PAD),
        *text.moved(columns.what, _PAD),
    ]
    level = _PAD + line_height(_WHAT) - 0.6
    if each.reads:
        end = columns.time - 2.0 - (width_of(each.unit, _WHY) + 1.0 if each.unit else 0.0)
        items.append(Stroke(((columns.read + _PAD, level), (end, level)), FINE))
        items += line(each.unit, _WHY, x=end + 1.0).moved(0.0, level - baseline(_WHY)) if each.unit else ()
    items += [
        Stroke(((left + _PAD, level), (right - 1.0, level)), FINE)
        for left, right in ((columns.time, columns.initials), (columns.initials, columns.end))
    ]
    items += rule(columns.end, FINE).moved(0.0, height - FINE)
    return Block(height, tuple(items))


def _when(each: RoundLine, room: float) -> list[Block]:
    """Set by when; what is wrong has a sign and a heavy word, so that it is seen without any colour."""
    if not each.wrong:
        return lines(each.when, room, _WHY)
    sign = _WHAT * MM_PER_POINT
    begin = warning_width(sign) + 1.2
    drop = baseline(_WHAT) - sign
    first, *rest = lines(each.when, room - begin, _WHAT, True, begin)
    return [Block(first.height, (*warning_sign(sign).moved(0.0, drop), *first.items)), *rest]


def _rules(sheet: RoundPage, columns: _Columns) -> Block:
    said = [block for text in sheet.rules for block in lines(text, columns.end, _WHAT, True)]
    return stack([rule(columns.end, HEAVY), Block(1.5), *said])


def _foot(paper: Paper, page: int, pages: int) -> Block:
    """Set the ruler that shows whether the print is at full size, and the page."""
    number = line_to(paper.content_width, words.page_of(page, pages), paper.sizes.small + 1, True)
    return stack([Block(3.0), beside([(0.0, ruler(paper.sizes.small)), (0.0, number)])])
