"""What an import of a spreadsheet would take, shown before anything is taken."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, tzinfo

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.reasons import Reason
from evenwater.screens.csv_choices import Choices, Point, ReadRow
from evenwater.screens.csv_guess import twice_point
from evenwater.screens.csv_layout import index_of
from evenwater.screens.csv_reading import CellResult, Progress, RowResult, row_results
from evenwater.screens.csv_text import UnreadableError, decoded
from evenwater.screens.csv_words import at_words, csv_sentence, cut
from evenwater.screens.shown import unit_words, with_unit
from evenwater.screens.terms import capitalized
from evenwater.wording import say, say_many

FIRST_ROWS = 50
FAULTY_ROWS = 200


@dataclass(frozen=True)
class PreviewCell:
    """One cell as it will be taken, or as it stands and why it is not.

    ``state`` is "taken", "unlikely" (taken, but worth a look), "duplicate", "refused", "open" (what it means is still to be
    chosen) or "empty".
    """

    words: str
    state: str
    sentence: str = ""


@dataclass(frozen=True)
class PreviewRow:
    """One row of the file: its line, its day in words, its cells, and why the whole row is not taken."""

    line: int
    when: str
    cells: tuple[PreviewCell, ...]
    sentence: str = ""

    @property
    def faulty(self) -> bool:
        """Whether something in it is not taken, or worth a look."""
        return any(shown.state not in ("taken", "open", "empty") for shown in self.cells)


@dataclass(frozen=True)
class Counts:
    """How many rows have cells, and what becomes of these.

    ``readings`` are taken, ``unlikely`` of them worth a look; ``refused``, ``duplicates`` and ``empty`` are not.
    """

    rows: int = 0
    readings: int = 0
    unlikely: int = 0
    refused: int = 0
    duplicates: int = 0
    empty: int = 0


@dataclass(frozen=True)
class Preview:
    """What an import would do.

    ``headings`` are those of the cells. ``rows`` are the first ones and every one with a fault, up to a limit, by line.
    ``ready`` says that the import may begin. ``messages`` are sentences about the whole file, the first about what
    hinders it; ``points`` are questions that come up only now. ``taken`` are the readings in the order of the file, each
    content once: what is imported is what was shown.
    """

    headings: tuple[str, ...]
    rows: tuple[PreviewRow, ...]
    counts: Counts
    ready: bool
    messages: tuple[str, ...]
    points: tuple[Point, ...] = ()
    taken: tuple[ReadRow, ...] = ()


def preview(
    data: bytes,
    choices: Choices,
    catalogue: Catalogue,
    zone: tzinfo,
    now: datetime,
    progress: Progress | None = None,
) -> Preview:
    """Return what an import would take and what not.

    Parameters
    ----------
    data : bytes
        The whole file.
    choices : Choices
        How it is read.
    catalogue : Catalogue
        The parameters.
    zone : tzinfo
        Where the clock hung that has no offset in the file; also for the words.
    now : datetime
        The present, with its zone.
    progress : callable or None
        Told after each some thousand rows how many were read; what it raises ends the preview.

    Returns
    -------
    Preview
        Not ready when something is still to be chosen, the file cannot be read to its end, or nothing would be taken.
    """
    headings = _headings(choices)
    shown: list[PreviewRow] = []
    states: Counter[str] = Counter()
    taken: list[ReadRow] = []
    number = faulty = 0
    twice = False
    try:
        for result in row_results(decoded(data, choices.encoding), choices, catalogue, zone, now, progress):
            number += 1
            states.update(found.state for found in result.cells)
            taken.extend(found.row for found in result.cells if found.row is not None and found.state != "duplicate")
            reasons = [found.reason for found in result.cells if found.reason is not None]
            twice = twice or any(reason.code == "csv_clock_twice" for reason in reasons)
            fault = bool(reasons)
            faulty += fault
            if number <= FIRST_ROWS or (fault and faulty <= FAULTY_ROWS):
                shown.append(_row(result, choices, zone))
    except UnreadableError as error:
        where = say("Line {line}: ", line=error.line) if error.line else ""
        return Preview(headings, (), Counts(), False, (f"{where}{csv_sentence(error.reason)}",))
    counts = Counts(
        number,
        states["taken"] + states["unlikely"],
        states["unlikely"],
        states["refused"],
        states["duplicate"],
        states["empty"],
    )
    points = (twice_point(choices.twice),) if twice or choices.twice else ()
    hinders = tuple(_hinders(choices, counts, twice))
    # Before all is chosen no number means anything.
    said = (*hinders, *(() if choices.open or choices.nothing else _said(counts, faulty)))
    return Preview(headings, tuple(shown), counts, not hinders, said, points, () if hinders else tuple(taken))


def _headings(choices: Choices) -> tuple[str, ...]:
    if choices.long_form:
        return (say("Reading"),)
    return tuple(
        f"{capitalized(column.parameter)}, {(unit_words(column.unit) if column.unit else say('unit not chosen'))}"
        for column in choices.columns
        if column.role == "reading"
    )


def _hinders(choices: Choices, counts: Counts, twice: bool) -> Iterator[str]:
    if choices.nothing:
        yield say("Choose which column holds the date, and which hold readings.")
    elif choices.open:
        yield say("Choose what is still asked. Nothing is imported before.")
    elif twice and not choices.twice:
        yield say("Choose which is meant of the hour that came twice.")
    elif not counts.readings:
        yield say("Not one reading can be taken.")


def _said(counts: Counts, faulty: int) -> Iterator[str]:
    yield say(
        "{readings} in {rows}.",
        readings=say_many("{n} reading", "{n} readings", counts.readings),
        rows=say_many("{n} row", "{n} rows", counts.rows),
    )
    if counts.refused:
        yield say("{refused} not taken.", refused=say_many("{n} cell is", "{n} cells are", counts.refused))
    if counts.duplicates:
        stand = say_many("{n} reading stands", "{n} readings stand", counts.duplicates)
        yield say_many(
            "{stand} in the file twice, and is taken once.",
            "{stand} in the file twice, and are taken once.",
            counts.duplicates,
            stand=stand,
        )
    if counts.unlikely:
        are = say_many("{n} reading is", "{n} readings are", counts.unlikely)
        yield say_many(
            "{are} not likely, and taken as it stands.",
            "{are} not likely, and taken as they stand.",
            counts.unlikely,
            are=are,
        )
    if faulty > FAULTY_ROWS:
        yield say(
            "Of {faulty} rows with a fault the first {faulty_rows} are shown.", faulty=faulty, faulty_rows=FAULTY_ROWS
        )


def _row(result: RowResult, choices: Choices, zone: tzinfo) -> PreviewRow:
    if choices.long_form:
        at = [index_of(choices.columns, "value")]
    else:
        at = [index for index, column in enumerate(choices.columns) if column.role == "reading"]
    texts = [result.texts[index] for index in at]
    open_words = next(_open(choices), "")
    raw = cut(result.texts[index_of(choices.columns, "date")])
    if not (choices.order and choices.clock):
        when, sentence = f"“{raw}”" if raw else "", ""
    elif isinstance(result.at, Reason):
        when, sentence = raw, csv_sentence(result.at)
    else:
        when, sentence = at_words(result.at.astimezone(zone)), ""
    shown = tuple(_cell(found, text, result.name, open_words) for found, text in zip(result.cells, texts, strict=True))
    return PreviewRow(result.line, when, shown, sentence)


def _open(choices: Choices) -> Iterator[str]:
    """Yield what is still to be chosen before any cell of the file means something."""
    if not choices.order:
        yield say("The order of the date is still to be chosen.")
    if not choices.clock:
        yield say("The clock is still to be chosen.")
    if not choices.decimal:
        yield say("The decimal mark is still to be chosen.")


def _cell(found: CellResult, text: str, name: str, open_words: str) -> PreviewCell:
    sentence = csv_sentence(found.reason) if found.reason else ""
    if text and open_words:
        return PreviewCell(_named(name, cut(text)), "open", open_words)
    if found.reason is not None and found.reason.code == "csv_no_unit":
        return PreviewCell(_named(name, cut(text)), "open", sentence)
    if found.row is None:
        return PreviewCell(_named(name, cut(text)), found.state, sentence)
    words = with_unit(found.row.content, unit_words(found.row.typed.unit))
    return PreviewCell(_named(name, words), found.state, sentence)


def _named(name: str, words: str) -> str:
    return f"{cut(name[:1].upper() + name[1:])} {words}" if name and words else words
