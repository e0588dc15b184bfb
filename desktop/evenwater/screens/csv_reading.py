"""The readings of a spreadsheet, row by row, once it is settled how it is read; nothing is repaired."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime, tzinfo
from typing import NamedTuple

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.reasons import Reason
from evenwater.screens.csv_cells import CellReader
from evenwater.screens.csv_choices import Choices, ReadRow
from evenwater.screens.csv_layout import index_of, stripped
from evenwater.screens.csv_text import UnreadableError, decoded, rows
from evenwater.screens.csv_times import Instants, read_stamp
from evenwater.screens.csv_words import csv_sentence

# After so many rows the progress is told.
_STEP = 2000
# Rows that were read, as far as they were.
Progress = Callable[[int], object]


class CellResult(NamedTuple):
    """What became of one cell.

    ``state`` is "taken", "unlikely" (taken all the same), "duplicate", "refused" or "empty"; ``row`` is the reading, and
    ``reason`` why it is not taken or worth a look.
    """

    state: str
    row: ReadRow | None = None
    reason: Reason | None = None


class RowResult(NamedTuple):
    """One row of the file: the line in which it begins, when it was measured or why that is not known, and its readings.

    ``texts`` are all cells, without spaces around them; ``name`` is the parameter where a row is one reading.
    """

    line: int
    at: datetime | Reason
    cells: tuple[CellResult, ...]
    texts: list[str]
    name: str = ""


_EMPTY = CellResult("empty")


def readings(
    data: bytes,
    choices: Choices,
    catalogue: Catalogue,
    zone: tzinfo,
    now: datetime,
    progress: Progress | None = None,
) -> Iterator[ReadRow]:
    """Yield the readings of a file one by one, each content once.

    Parameters
    ----------
    data : bytes
        The whole file.
    choices : Choices
        How it is read; nothing is left to be chosen.
    catalogue : Catalogue
        The parameters.
    zone : tzinfo
        Where the clock hung that has no offset in the file.
    now : datetime
        The present, with its zone: nothing was measured later.
    progress : callable or None
        Told after each some thousand rows how many were read; what it raises ends the reading.

    Yields
    ------
    ReadRow
        The readings in the order of the file. Cells that are refused, empty or a repetition are passed over;
        ``csv_preview.preview`` counts and shows them.

    Raises
    ------
    ValueError
        At once, when something is still to be chosen, or the file cannot be read to its end: nothing is taken by halves.
    """
    if choices.open or choices.nothing:
        raise ValueError("something is still to be chosen")
    try:
        text = decoded(data, choices.encoding)
        for _ in rows(text, choices.separator):
            pass
    except UnreadableError as error:
        raise ValueError(csv_sentence(error.reason)) from error
    return _taken(row_results(text, choices, catalogue, zone, now, progress))


def _taken(results: Iterator[RowResult]) -> Iterator[ReadRow]:
    for result in results:
        for found in result.cells:
            if found.row is not None and found.state != "duplicate":
                yield found.row


def row_results(
    text: str,
    choices: Choices,
    catalogue: Catalogue,
    zone: tzinfo,
    now: datetime,
    progress: Progress | None = None,
) -> Iterator[RowResult]:
    """Yield what becomes of every row below the headings; the arguments are those of ``readings``.

    Raises
    ------
    UnreadableError
        Where the rows cannot be read any further.
    """
    sheet = _Sheet(choices, catalogue, zone, now)
    for number, (line, cells) in enumerate(rows(text, choices.separator), 1):
        if number > choices.heading:
            yield sheet.row(line, cells)
        if progress is not None and number % _STEP == 0:
            progress(number)


class _Sheet:
    """Reads rows one after the other and remembers what it has seen."""

    def __init__(self, choices: Choices, catalogue: Catalogue, zone: tzinfo, now: datetime) -> None:
        self._choices = choices
        self._width = len(choices.columns)
        self._instants = Instants(zone, now, choices.twice)
        self._seen: dict[tuple[str, datetime, str, str], int] = {}
        self._when = index_of(choices.columns, "date"), index_of(choices.columns, "time")
        self._beside = tuple(index_of(choices.columns, role) for role in ("kit", "who", "note"))
        self._where = tuple(index_of(choices.columns, role) for role in ("parameter", "unit", "value"))

        def reader(parameter: str, unit: str) -> CellReader | None:
            known = catalogue.parameters.get(parameter)
            return CellReader(known, unit, choices.decimal) if known and unit else None

        self._columns = tuple(
            (at, reader(column.parameter, column.unit))
            for at, column in enumerate(choices.columns)
            if column.role == "reading"
        )
        self._series = {(s.name, s.said): (s.parameter, reader(s.parameter, s.unit)) for s in choices.series}
        self.row = self._long if choices.long_form else self._wide

    def _wide(self, line: int, raw: list[str]) -> RowResult:
        cells = stripped(raw, self._width)
        at = self._at(cells)
        beside = self._texts(raw, cells)
        found = tuple([self._cell(line, at, cells[index], reader, beside) for index, reader in self._columns])
        return RowResult(line, at, found, cells)

    def _long(self, line: int, raw: list[str]) -> RowResult:
        cells = stripped(raw, self._width)
        at = self._at(cells)
        name, said, value = (cells[index] for index in self._where)
        parameter, reader = self._series.get((name, said), ("", None))
        if value and not parameter:
            left_out = Reason("csv_which_parameter", {"text": name or value})
            return RowResult(line, at, (CellResult("refused", None, left_out),), cells, name)
        beside = self._texts(raw, cells)
        return RowResult(line, at, (self._cell(line, at, value, reader, beside),), cells, parameter)

    def _texts(self, raw: list[str], cells: list[str]) -> list[str]:
        if self._choices.own:
            return [raw[index] if 0 <= index < len(raw) else "" for index in self._beside]
        return [cells[index] for index in self._beside]

    def _at(self, cells: list[str]) -> datetime | Reason:
        if len(cells) > self._width + 1:
            # A decimal comma that is not quoted moves all that follow.
            return Reason("csv_extra_cells", {"cells": len(cells), "columns": self._width})
        choices = self._choices
        date, time = self._when
        stamp = read_stamp(cells[date], cells[time], choices.order, choices.clock, choices.hour)
        return stamp if isinstance(stamp, Reason) else self._instants.of(stamp)

    def _cell(
        self, line: int, at: datetime | Reason, text: str, reader: CellReader | None, beside: list[str]
    ) -> CellResult:
        if not text:
            return _EMPTY
        if reader is None:
            return CellResult("refused", None, Reason("csv_no_unit"))
        taken = reader.take(text)
        if isinstance(at, Reason):
            return CellResult("refused", None, at)
        if isinstance(taken, Reason):
            return CellResult("refused", None, taken)
        row = ReadRow(at, reader.name, taken.typed, taken.value, line, *beside)
        key = reader.name, at, taken.content, taken.typed.unit
        if key in self._seen:
            return CellResult("duplicate", row, Reason("csv_duplicate", {"line": self._seen[key]}))
        self._seen[key] = line
        if not taken.likely:
            return CellResult("unlikely", row, Reason("csv_unlikely", {"parameter": row.parameter}))
        return CellResult("taken", row)
