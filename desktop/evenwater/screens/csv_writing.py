"""The readings of the log as CSV, for a spreadsheet and for being read again.

UTF-8 with the mark at its beginning, without which some spreadsheets take accents for something else. RFC 4180: commas,
CRLF, quotation marks where they are needed. Instants are ISO 8601 with their offset, numbers have a point, units stand
in a column or in the heading, by the names they have in question files. Whatever a spreadsheet would calculate
is guarded by an apostrophe (``csv_text.guarded``), which reading it again takes away.
"""

from __future__ import annotations

import codecs
import csv
import io
import math
import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, tzinfo

from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed, to_canonical
from evenwater.engine.reader import Ask, Ok, read
from evenwater.screens.csv_cells import settled
from evenwater.screens.csv_choices import ReadRow
from evenwater.screens.csv_headings import OWN_DATE
from evenwater.screens.csv_text import guarded
from evenwater.screens.entry import number_part
from evenwater.screens.terms import capitalized
from evenwater.wording import say

_TEXTS = ("kit", "who", "note")
# What no text file can hold.
_NO_TEXT = re.compile("[\0\ud800-\udfff]")

Line = list[str]


@dataclass(frozen=True)
class Columns:
    """What is written besides date and reading, and how.

    A row for each reading, with its parameter and unit in columns; or, when ``wide``, a column for each parameter and
    unit, and readings of one instant in one row where nothing else tells them apart. Instants are written in ``zone``.
    """

    wide: bool = False
    kit: bool = True
    who: bool = True
    note: bool = True
    zone: tzinfo = UTC


def row_of(
    at: datetime,
    parameter: str,
    typed: Typed,
    catalogue: Catalogue,
    value: float | None = None,
    kit: str = "",
    who: str = "",
    note: str = "",
) -> ReadRow:
    """Return a reading of the log as a row to be written: the figure as it was typed, and its unit beside it.

    Parameters
    ----------
    at : datetime
        When it was measured, with a zone.
    parameter : str
        Name of the parameter.
    typed : Typed
        What was typed, perhaps with a unit of its own.
    catalogue : Catalogue
        The parameters.
    value : float or None
        What it was taken for [canonical unit of its kind]; settles a figure that can be read in two ways.
    kit, who, note : str
        What was noted besides.

    Returns
    -------
    ReadRow
        What the strict reader does not take is kept as it is; its value is not a number then.
    """
    instant = at.astimezone(UTC)
    known = catalogue.parameters.get(parameter)
    if known is not None:
        field = fields.concentration("", known)
        result = read(typed.text, field, typed.unit or known.display_unit)
        readings = (result.entered,) if isinstance(result, Ok) else result.readings if isinstance(result, Ask) else ()
        for entered in readings:
            canonical = to_canonical(float(entered.number), known.kind, entered.unit)
            if isinstance(result, Ok) or (value is not None and math.isclose(canonical, value, rel_tol=1e-9)):
                clear = isinstance(result, Ok)
                figure = number_part(" ".join(typed.text.split())) if clear else settled(entered, field)
                return ReadRow(instant, parameter, Typed(figure, entered.unit), canonical, 0, kit, who, note)
    return ReadRow(instant, parameter, Typed(typed.text, typed.unit), math.nan, 0, kit, who, note)


def write_csv(rows: Iterable[ReadRow], columns: Columns | None = None) -> bytes:
    """Write readings as CSV, in the order in which they come.

    Parameters
    ----------
    rows : iterable of ReadRow
        The readings, from ``row_of`` or from a file.
    columns : Columns or None
        What is written and how; a row for each reading with everything when not given.

    Returns
    -------
    bytes
        The file. A sign that no text file can hold (a zero, half of a pair) becomes a replacement character.
    """
    columns = columns or Columns()
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    lines = _wide(list(rows), columns) if columns.wide else _long(rows, columns)
    writer.writerows([guarded(_NO_TEXT.sub("\ufffd", text)) for text in line] for line in lines)
    return codecs.BOM_UTF8 + out.getvalue().encode("utf-8")


def _long(rows: Iterable[ReadRow], columns: Columns) -> Iterator[Line]:
    names = _names(columns)
    yield [OWN_DATE, say("Parameter"), say("Value"), say("Unit"), *(capitalized(name) for name in names)]
    for row in rows:
        yield [_at(row, columns), row.parameter, _figure(row), row.typed.unit, *_beside(row, names)]


def _wide(rows: Sequence[ReadRow], columns: Columns) -> Iterator[Line]:
    names = _names(columns)
    series = list(dict.fromkeys((row.parameter, row.typed.unit) for row in rows))
    yield [
        OWN_DATE,
        *(f"{capitalized(parameter)} ({unit})" for parameter, unit in series),
        *(capitalized(n) for n in names),
    ]
    lines: list[tuple[tuple[str, ...], dict[tuple[str, str], str]]] = []
    last: dict[tuple[str, ...], dict[tuple[str, str], str]] = {}
    for row in rows:
        shared, one = (_at(row, columns), *_beside(row, names)), (row.parameter, row.typed.unit)
        if one in last.setdefault(shared, {one: ""}):
            last[shared] = {}
            lines.append((shared, last[shared]))
        last[shared][one] = _figure(row)
    for shared, figures in lines:
        yield [shared[0], *(figures.get(one, "") for one in series), *shared[1:]]


def _names(columns: Columns) -> tuple[str, ...]:
    return tuple(name for name in _TEXTS if getattr(columns, name))


def _beside(row: ReadRow, names: Iterable[str]) -> Iterator[str]:
    return (getattr(row, name) for name in names)


def _at(row: ReadRow, columns: Columns) -> str:
    return row.at.astimezone(columns.zone).isoformat()


def _figure(row: ReadRow) -> str:
    """Return the figure as it was typed, with a point; what is no figure of one meaning as it is."""
    return row.typed.text if math.isnan(row.value) else row.typed.text.replace(",", ".")
