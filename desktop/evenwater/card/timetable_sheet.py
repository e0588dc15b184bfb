"""Decides what of a timetable goes on which page: cautions, each pump's setting, then a line for every dose of the day."""

from __future__ import annotations

from dataclasses import replace

from evenwater.card.flow import Group
from evenwater.card.fonts import load_fonts
from evenwater.card.items import Block, Item, beside, rule, stack
from evenwater.card.layout import Page, begun, finished
from evenwater.card.paper import Paper
from evenwater.card.sections import FINE, GAP, HEAVY, MEDIUM, TITLE, doses, ends, facts, handling, short_head, stop
from evenwater.card.text import line, line_to, lines, width_of
from evenwater.screens.timetable_card import TimetablePage
from evenwater.screens.timetable_rows import TimetableRow
from evenwater.wording import marked, say

TIMETABLE, TIME, DOSE, RUNS, PUMP = (
    marked("Timetable"),
    marked("Time"),
    marked("Dose"),
    marked("Pump runs"),
    marked("Pump and additive"),
)
PLAN, CLOCKS, RULE, APART = marked("Plan"), marked("Clocks"), marked("Rule"), marked("Keep apart")

_TIME, _DOSE, _WHAT, _HEAD = 14.0, 14.0, 12.0, 10.5
"""Letter sizes of the list [pt]; each pump's dose stands above it in 36 and more."""
_PAD = 1.1
_AIR = 5.0
"""Blank between two columns [mm]."""


def lay_out(sheet: TimetablePage, paper: Paper) -> tuple[Page, ...]:
    """Return the pages of ``sheet`` on ``paper``, at least one.

    Raises
    ------
    CardFailed
        When the typeface is missing, or a name so long that a page has no room below it.
    """
    load_fonts()
    width = paper.content_width
    named = f"{say(TIMETABLE)} {sheet.code}"
    flow = begun(named, stack(short_head(sheet.system, named, paper)), paper)
    said = [*((text, True) for text in sheet.maxima), *((text, False) for text in (*sheet.stop, sheet.rules[0]))]
    flow.add(_head(sheet, paper))
    # On a small paper the cautions would leave the first page all but empty.
    flow.cut(_handling(sheet, paper))
    for group in (
        *doses(sheet.rows, paper),
        stop(said, paper),
        *facts(_facts(sheet), paper, width),
        _list(sheet, paper),
    ):
        if group.blocks:
            flow.add(group)
    return finished(flow, named, paper)


def _head(sheet: TimetablePage, paper: Paper) -> Group:
    width, note = paper.content_width, paper.sizes.note
    blocks = ends(sheet.title, False, f"{say(TIMETABLE)} {sheet.code}", True, width, TITLE)
    blocks += lines(sheet.system, width, paper.sizes.system, True)
    blocks += [Block(1.0), *lines(sheet.volume, width, note)]
    blocks += ends(sheet.issued, False, sheet.valid_until, True, width, note)
    blocks += lines(f"{sheet.because} {sheet.replace}", width, note)
    return Group(width, (*blocks, Block(2.0), rule(width, HEAVY)))


def _handling(sheet: TimetablePage, paper: Paper) -> Group:
    """Set the cautions so that they can be cut anywhere but within the first aid."""
    width = paper.content_width
    group = handling(sheet.cautions, sheet.emergency, paper, width)
    # A first aid of one short word would be the last block alone.
    before = len(handling(sheet.cautions, "x", paper, width).blocks) - 1
    return replace(group, blocks=(*group.blocks[:before], stack(group.blocks[before:])))


def _facts(sheet: TimetablePage) -> list[tuple[str, str]]:
    return [
        *((say(APART) if number == 0 else "", text) for number, text in enumerate(sheet.separation)),
        *((say(PLAN) if number == 0 else "", text) for number, text in enumerate(sheet.plans)),
        (say(RULE), sheet.rules[1]),
        (say(CLOCKS), sheet.clocks),
    ]


def _list(sheet: TimetablePage, paper: Paper) -> Group:
    """Set a line for each dose; the heads of the columns stand again on every page."""
    width = paper.content_width
    columns = _columns(sheet)
    names = beside(
        [
            (0.0, line(say(TIME), _HEAD)),
            (0.0, line_to(columns[1], say(DOSE), _HEAD)),
            (0.0, line_to(columns[2], say(RUNS), _HEAD)),
            (columns[2] + _AIR, line(say(PUMP), _HEAD)),
        ]
    )
    head = stack([*lines(sheet.count, width, _TIME, True), Block(1.0), names, Block(0.5), rule(width, MEDIUM)])
    more = stack([names, Block(0.5), rule(width, MEDIUM)])
    return Group(width, tuple(_row(row, columns, width) for row in sheet.every), GAP, GAP, head, more)


def _columns(sheet: TimetablePage) -> tuple[float, float, float]:
    """Return where times begin, and where doses and running times end [mm]."""
    time = max(width_of("00:00", _TIME, True), width_of(say(TIME), _HEAD))
    doses_wide = max([width_of(say(DOSE), _HEAD), *(width_of(row.dose, _DOSE, True) for row in sheet.every)])
    runs = max([width_of(say(RUNS), _HEAD), *(width_of(row.runs, _WHAT) for row in sheet.every)])
    return 0.0, time + _AIR + doses_wide, time + 2 * _AIR + doses_wide + runs


def _row(row: TimetableRow, columns: tuple[float, float, float], width: float) -> Block:
    left = columns[2] + _AIR
    figures = [
        (0.0, line(row.when, _TIME, True)),
        (0.0, line_to(columns[1], row.dose, _DOSE, True)),
        (0.0, line_to(columns[2], row.runs, _WHAT)),
    ]
    said = [*lines(row.pump, width - left, _WHAT, True), *lines(row.additive, width - left, _WHAT)]
    said += lines(row.more, width - left, _WHAT) if row.more else []
    one = f"{row.pump}: {row.additive}"
    if not row.more and width_of(one, _WHAT) <= width - left:
        said = lines(one, width - left, _WHAT)
    cells = beside([*figures, (left, stack(said))])
    items: list[Item] = [*cells.moved(0.0, _PAD)]
    height = cells.height + 2 * _PAD
    items += rule(width, FINE).moved(0.0, height - FINE)
    return Block(height, tuple(items))
