"""From the bytes of a file to rows of cells, by RFC 4180, and the guard against cells that a spreadsheet would calculate."""

from __future__ import annotations

import codecs
import csv
import io
import re
from collections.abc import Iterator

from evenwater.engine.reasons import Reason

# Twenty years of ten readings a day are some 5 MB.
MOST_BYTES = 64_000_000
MOST_COLUMNS = 200
_MOST_CHARACTERS_IN_A_LINE = 1_000_000
# As many as a sheet has.
_MOST_LINES = 1_048_576

_MARKS = (
    (codecs.BOM_UTF32_LE, ""), (codecs.BOM_UTF32_BE, ""),
    (codecs.BOM_UTF8, "utf-8"), (codecs.BOM_UTF16_LE, "utf-16"), (codecs.BOM_UTF16_BE, "utf-16"),
)  # fmt: skip

# A spreadsheet calculates a cell that begins so. A file opened with another separator than ours has its cells begin after
# that one, so every place where a cell may begin is guarded: with an apostrophe, which spreadsheets take for "this is text".
_STARTS = "=+\\-@\t\r\n\uff1d\uff0b\uff0d\uff20"
# Blanks and signs of no width before a formula may be lost on the way, and some programs break lines where we do not.
_LINE_ENDS = "\r\n\v\f\x1c-\x1e\x85\u2028\u2029"
_BREAKS = f';,\t|"{_LINE_ENDS}'
_BEGINNING = f"(?:^|(?<=[{_BREAKS}]))((?:[^\\S\t{_LINE_ENDS}]|[\u00ad\u200b-\u200f\u2060\ufeff])*)"
_GUARD = re.compile(f"{_BEGINNING}(?=[{_STARTS}'])")
_GUARDED = re.compile(f"{_BEGINNING}'(?=[{_STARTS}'])")
# Most cells are dates, names and numbers, in which nothing can begin; this is found out in a tenth of the time.
_HARMLESS = re.compile(f"[A-Za-z0-9][^{_BREAKS}]*|")


class UnreadableError(Exception):
    """The file has no rows of cells; carries why, and the line."""

    def __init__(self, reason: Reason, line: int = 0) -> None:
        super().__init__(reason.code)
        self.reason = reason
        self.line = line


def guarded(text: str) -> str:
    """Return a text that no spreadsheet takes for a formula; ``unguarded`` gives it back as it was."""
    return text if _HARMLESS.fullmatch(text) else _GUARD.sub(r"\1'", text)


def unguarded(text: str) -> str:
    """Return what ``guarded`` was given."""
    return _GUARDED.sub(r"\1", text) if "'" in text else text


def encoding_of(data: bytes) -> str:
    """Return in which encoding a file is written: "utf-8", "utf-16", or "cp1252" when it is neither.

    Raises
    ------
    UnreadableError
        When it is empty, too large, or no text.
    """
    if len(data) > MOST_BYTES:
        raise UnreadableError(Reason("csv_too_large", {"megabytes": MOST_BYTES // 1_000_000}))
    found = next((encoding for mark, encoding in _MARKS if data.startswith(mark)), None)
    if found == "" or (found != "utf-16" and b"\0" in data):
        raise UnreadableError(Reason("csv_no_text"))
    if found:
        return found
    try:
        data.decode("utf-8")
    except UnicodeDecodeError:
        return "cp1252"
    return "utf-8"


def decoded(data: bytes, encoding: str) -> str:
    """Return the text of a file, without the mark at its beginning.

    Raises
    ------
    UnreadableError
        When there is no text, or it is not written in this encoding.
    """
    encoding_of(data)
    marked = data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE))
    if (encoding == "utf-16") != marked:
        raise UnreadableError(Reason("csv_not_so_written"))
    try:
        text = data.decode("utf-8-sig" if encoding == "utf-8" else encoding)
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise UnreadableError(Reason("csv_not_so_written"), line) from error
    if "\0" in text:
        raise UnreadableError(Reason("csv_no_text"))
    if not text.strip():
        raise UnreadableError(Reason("csv_empty"))
    return text


def rows(text: str, separator: str) -> Iterator[tuple[int, list[str]]]:
    """Yield the rows that are not blank: the line in which each begins, and its cells as they were before ``guarded``.

    Line ends may be mixed; those inside of quotation marks are part of a cell.

    Raises
    ------
    UnreadableError
        At a quotation mark that is never closed or closed in the middle of a cell, and at lines, cells and
        numbers of cells that no sheet of readings has.
    """
    reader = csv.reader(_lines(text), delimiter=separator, strict=True)
    line = 1
    plain = "'" not in text
    try:
        for cells in reader:
            if len(cells) > MOST_COLUMNS:
                raise UnreadableError(Reason("csv_many_columns", {"most": MOST_COLUMNS}), line)
            if any(cells):
                yield line, cells if plain else [unguarded(cell) for cell in cells]
            line = reader.line_num + 1
    except csv.Error as error:
        said = str(error)
        code = "csv_long_cell" if "limit" in said else "csv_unclosed" if "end of data" in said else "csv_quote"
        raise UnreadableError(Reason(code), line) from error


def _lines(text: str) -> Iterator[str]:
    for number, line in enumerate(io.StringIO(text, newline=""), 1):
        if len(line) > _MOST_CHARACTERS_IN_A_LINE:
            raise UnreadableError(Reason("csv_long_line"), number)
        if number > _MOST_LINES:
            raise UnreadableError(Reason("csv_many_lines", {"most": _MOST_LINES}), number)
        yield line
