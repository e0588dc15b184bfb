"""The sentences about a spreadsheet: why a file, a row or a cell is not taken, and what is to be chosen."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Any

from evenwater.engine.reasons import Reason
from evenwater.engine.visible import visible
from evenwater.screens.shown import date_words, with_unit
from evenwater.screens.words import sentence

Params = Mapping[str, Any]

# So much of a cell is repeated in a sentence.
_LONGEST_QUOTE = 40


def cut(text: str) -> str:
    """Return a text in one line, and short enough to stand in a sentence."""
    line = visible(" ".join(text.split()))
    return line if len(line) <= _LONGEST_QUOTE else f"{line[: _LONGEST_QUOTE - 1]}…"


def at_words(local: datetime) -> str:
    """Write an instant of a file with its day in words: Wed 25 Nov 2026 08:00."""
    return f"{date_words(local)} {local:%H:%M}"


_FILE: dict[str, Callable[[Params], str]] = {
    "csv_empty": lambda p: "The file is empty.",
    "csv_too_large": lambda p: f"The file is larger than {with_unit(str(p['megabytes']), 'MB')}. Split it by years.",
    "csv_no_text": lambda p: "This is no text file. Save the sheet as CSV, in UTF-8.",
    "csv_not_so_written": lambda p: "The file is not written in this encoding. Choose another one.",
    "csv_unclosed": lambda p: "A quotation mark is opened here and never closed.",
    "csv_quote": lambda p: (
        "Text stands behind a closing quotation mark. Put a separator between them, or double the mark."
    ),
    "csv_long_cell": lambda p: "A cell is longer than any note. Look for a quotation mark that is not closed.",
    "csv_long_line": lambda p: "The line is longer than any row of readings.",
    "csv_many_lines": lambda p: (
        f"The file has more than {p['most']} lines, more than a sheet has rows. Split it by years."
    ),
    "csv_many_columns": lambda p: (
        f"A row has more than {p['most']} cells. Delete what is no reading, and save the sheet again."
    ),
    "csv_one_column": lambda p: (
        "No columns were found. Save the sheet as CSV with a semicolon, a comma, a tab or a bar between the cells."
    ),
    "csv_no_rows": lambda p: "There is nothing below the headings.",
}

_ROW: dict[str, Callable[[Params], str]] = {
    "csv_extra_cells": lambda p: (
        f"The row has {p['cells']} cells, more than the {p['columns']} of the headings. "
        "A comma inside a number needs quotation marks around it."
    ),
    "csv_no_date": lambda p: "The row has no date.",
    "csv_not_a_date": lambda p: f"“{p['text']}” is not a date. Write it like 2026-11-25 08:00.",
    "csv_other_order": lambda p: f"“{p['text']}” is no date in the order chosen for day, month and year.",
    "csv_no_such_day": lambda p: f"“{p['text']}” is not in the calendar.",
    "csv_no_hour": lambda p: f"“{p['text']}” has no time of day.",
    "csv_not_an_hour": lambda p: f"“{p['text']}” is not a time of day. Write it like 18:30.",
    "csv_half_day": lambda p: f"“{p['text']}”: morning or evening? Write am or pm after it.",
    "csv_two_hours": lambda p: f"“{p['text']}” has a time of day, and the row has another one.",
    "csv_too_old": lambda p: f"{at_words(p['at'])} is too long ago. Correct the year.",
    "csv_future": lambda p: f"{at_words(p['at'])} is still to come. Correct the date.",
    "csv_clock_skipped": lambda p: f"{at_words(p['at'])} never was: the clocks went forward over it.",
    "csv_clock_twice": lambda p: f"{at_words(p['at'])} came twice, when the clocks went back.",
    "csv_which_parameter": lambda p: f"“{p['text']}” is left out: no parameter is chosen for it.",
    "csv_no_unit": lambda p: "The unit is still to be chosen.",
    "csv_other_mark": lambda p: f"“{p['text']}” has another decimal mark than this file.",
    "csv_duplicate": lambda p: f"The same reading stands in line {p['line']}.",
    "csv_unlikely": lambda p: f"Taken as it stands, but not a likely reading of {p['parameter']}. Look at it again.",
}

FILE_CODES, ROW_CODES = frozenset(_FILE), frozenset(_ROW)


def csv_sentence(reason: Reason) -> str:
    """Return the sentence for a reason about a file, or of the strict reader; what it repeats is cut short."""
    params: dict[str, Any] = dict(reason.params)
    params |= {name: cut(text) for name in ("text", "unit") if isinstance(text := params.get(name), str)}
    for table in (_FILE, _ROW):
        if reason.code in table:
            return table[reason.code](params)
    return sentence(Reason(reason.code, params, reason.path))


def counted(number: int, one: str, many: str) -> str:
    """Return a number with its noun."""
    return f"{number} {one if number == 1 else many}"
