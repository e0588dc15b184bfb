"""The sentences about a spreadsheet: why a file, a row or a cell is not taken, and what is to be chosen."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Any

from evenwater.engine.reasons import Reason
from evenwater.engine.visible import visible
from evenwater.screens.shown import date_words, with_unit
from evenwater.screens.terms import term
from evenwater.screens.words import sentence
from evenwater.wording import say

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
    "csv_empty": lambda p: say("The file is empty."),
    "csv_too_large": lambda p: say(
        "The file is larger than {megabytes}. Split it by years.", megabytes=with_unit(str(p["megabytes"]), "MB")
    ),
    "csv_no_text": lambda p: say("This is no text file. Save the sheet as CSV, in UTF-8."),
    "csv_not_so_written": lambda p: say("The file is not written in this encoding. Choose another one."),
    "csv_unclosed": lambda p: say("A quotation mark is opened here and never closed."),
    "csv_quote": lambda p: say(
        "Text stands behind a closing quotation mark. Put a separator between them, or double the mark."
    ),
    "csv_long_cell": lambda p: say("A cell is longer than any note. Look for a quotation mark that is not closed."),
    "csv_long_line": lambda p: say("The line is longer than any row of readings."),
    "csv_many_lines": lambda p: say(
        "The file has more than {most} lines, more than a sheet has rows. Split it by years.", most=p["most"]
    ),
    "csv_many_columns": lambda p: say(
        "A row has more than {most} cells. Delete what is no reading, and save the sheet again.", most=p["most"]
    ),
    "csv_one_column": lambda p: say(
        "No columns were found. Save the sheet as CSV with a semicolon, a comma, a tab or a bar between the cells."
    ),
    "csv_no_rows": lambda p: say("There is nothing below the headings."),
}

_ROW: dict[str, Callable[[Params], str]] = {
    "csv_extra_cells": lambda p: say(
        "The row has {cells} cells, more than the {columns} of the headings. A comma inside a number needs quotation marks around it.",
        cells=p["cells"],
        columns=p["columns"],
    ),
    "csv_no_date": lambda p: say("The row has no date."),
    "csv_not_a_date": lambda p: say("“{text}” is not a date. Write it like 2026-11-25 08:00.", text=p["text"]),
    "csv_other_order": lambda p: say(
        "“{text}” is no date in the order chosen for day, month and year.", text=p["text"]
    ),
    "csv_no_such_day": lambda p: say("“{text}” is not in the calendar.", text=p["text"]),
    "csv_no_hour": lambda p: say("“{text}” has no time of day.", text=p["text"]),
    "csv_not_an_hour": lambda p: say("“{text}” is not a time of day. Write it like 18:30.", text=p["text"]),
    "csv_half_day": lambda p: say("“{text}”: morning or evening? Write am or pm after it.", text=p["text"]),
    "csv_two_hours": lambda p: say("“{text}” has a time of day, and the row has another one.", text=p["text"]),
    "csv_too_old": lambda p: say("{at} is too long ago. Correct the year.", at=at_words(p["at"])),
    "csv_future": lambda p: say("{at} is still to come. Correct the date.", at=at_words(p["at"])),
    "csv_clock_skipped": lambda p: say("{at} never was: the clocks went forward over it.", at=at_words(p["at"])),
    "csv_clock_twice": lambda p: say("{at} came twice, when the clocks went back.", at=at_words(p["at"])),
    "csv_which_parameter": lambda p: say("“{text}” is left out: no parameter is chosen for it.", text=p["text"]),
    "csv_no_unit": lambda p: say("The unit is still to be chosen."),
    "csv_other_mark": lambda p: say("“{text}” has another decimal mark than this file.", text=p["text"]),
    "csv_duplicate": lambda p: say("The same reading stands in line {line}.", line=p["line"]),
    "csv_unlikely": lambda p: say(
        "Taken as it stands, but not a likely reading of {parameter}. Look at it again.", parameter=term(p["parameter"])
    ),
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
