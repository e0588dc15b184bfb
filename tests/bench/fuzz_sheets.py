"""Spreadsheets for fuzzing: files of any kind that are read, and the log's own readings that are written and read again.

What is held against a file is read by the test itself: every figure that is taken stands in the line it is said to be from, a
cell of a written file never begins as a formula does, whatever separator a spreadsheet takes, and texts come back as they were.
"""

from __future__ import annotations

import random
import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from decimal import Decimal

from evenwater.engine.quantities import Typed
from evenwater.screens.csv_choices import ReadRow, Refusal
from evenwater.screens.csv_guess import sniff
from evenwater.screens.csv_preview import preview
from evenwater.screens.csv_reading import readings
from evenwater.screens.csv_writing import Columns, row_of, write_csv
from tests.bench import fuzz_numbers
from tests.engine.asking import known
from tests.hazards.test_csv import begin_as_formulas
from tests.property.test_csv import RULINGS, SHEETS, SPLICES
from tests.screens.csv_files import BERLIN, NOW

_LONGEST_SENTENCE = 500
_STARTS = ("=", "+", "-", "@", "\t=", "\r=", "\uff1d", "'", "''=", " =", ";=", ",+", '"=', "|@", "\n=")


@dataclass(frozen=True)
class Sheet:
    """A file to be read with what the keeper ruled; or, where there are rows, these to be written first."""

    data: bytes = b""
    rulings: tuple[tuple[str, str], ...] = ()
    rows: tuple[ReadRow, ...] = ()
    wide: bool = False


def made(draw: random.Random) -> Sheet:
    """Return a damaged spreadsheet, or readings to be written."""
    if draw.random() < 0.3:
        return Sheet(rows=tuple(_row(draw) for _ in range(draw.choice((1, 2, 8)))), wide=draw.random() < 0.5)
    data = draw.choice(SHEETS)
    for _ in range(draw.choice((1, 1, 2, 4, 12))):
        data = _damaged(draw, data)
    return Sheet(data[:100_000], tuple(draw.choice(RULINGS).items()))


def _row(draw: random.Random) -> ReadRow:
    typed = fuzz_numbers.made(draw)
    parameter = draw.choice(list(known().parameters))
    texts = (
        "".join(
            draw.choice((draw.choice(_STARTS), *"ab1", draw.choice(fuzz_numbers.ODD))) for _ in range(draw.randrange(6))
        )
        for _ in range(3)
    )
    at = datetime(2020, 1, 1, tzinfo=UTC) + timedelta(seconds=draw.randrange(200_000_000))
    figure = typed.text if draw.random() < 0.5 else f"{draw.uniform(0, 900):.{draw.choice((0, 1, 2, 3))}f}"
    return row_of(at, parameter, Typed(figure, typed.beside), known(), None, *texts)


def _damaged(draw: random.Random, data: bytes) -> bytes:
    at = draw.randrange(len(data) + 1)
    match draw.randrange(9):
        case 0:
            return data[:at] + draw.choice(SPLICES) + data[at:]
        case 1:
            return data[:at] + data[at + draw.randrange(1, 9) :]
        case 2:
            return data[:at] + draw.randbytes(draw.randrange(1, 5)) + data[at + draw.randrange(3) :]
        case 3:
            return data[:at]
        case 4:
            end = draw.randrange(at, len(data) + 1)
            return data[:at] + data[at:end] * 2 + data[end:]
        case 5:
            return data.replace(draw.choice(SPLICES), draw.choice(SPLICES), draw.choice((1, -1)))[:4000]
        case 6:
            text = data.decode("utf-8", "replace")
            return text.encode(
                draw.choice(("utf-8-sig", "utf-16", "utf-16-be", "utf-32", "cp1252", "shift_jis")), "replace"
            )
        case _:
            figures = list(re.finditer(rb"[0-9]+[.,]?[0-9]*", data))
            if not figures:
                return data
            found = draw.choice(figures)
            return (
                data[: found.start()]
                + fuzz_numbers.made(draw).text.encode("utf-8", "replace")[:60]
                + data[found.end() :]
            )


def fault(sheet: Sheet) -> str:
    """Return what is wrong with what becomes of a spreadsheet, or nothing."""
    return _written(sheet) if sheet.rows else _read(sheet.data, dict(sheet.rulings))


def _read(data: bytes, rulings: dict[str, str]) -> str:
    guess = sniff(data, known(), rulings)
    if isinstance(guess, Refusal):
        return _unsaid(guess.words)
    found = preview(data, guess.choices, known(), BERLIN, NOW)
    said = [
        *found.messages,
        *(cell.sentence for row in found.rows for cell in row.cells),
        *(p.words for p in guess.points),
    ]
    if wrong := next(filter(None, (_unsaid(words) for words in said if words)), "" if any(said) else "nothing is said"):
        return wrong
    if not found.ready:
        return ""
    lines = re.split(
        r"\r\n|\r|\n", data.decode("utf-8-sig" if guess.choices.encoding == "utf-8" else guess.choices.encoding)
    )
    taken = list(readings(data, guess.choices, known(), BERLIN, NOW))
    if len(taken) != found.counts.readings:
        return f"{len(taken)} readings are taken where {found.counts.readings} were shown"
    for row in taken:
        # A cell with line ends in it goes on in the next ones.
        if Decimal(row.content) not in set(_figures(" ".join(lines[row.line - 1 : row.line + 11]))):
            return (
                f"{row.content} is taken from line {row.line}, where it does not stand: {lines[row.line - 1][:200]!r}"
            )
        if not row.value >= 0:
            return f"{row.value} is taken from line {row.line}"
    return ""


def _figures(text: str) -> Iterator[Decimal]:
    """Yield the numbers that stand in a text, by either mark and without it."""
    tokens = re.findall(r"[0-9]+", text) + re.findall(r"(?<![0-9])(?=([0-9]*[.,][0-9]+))", text)
    for token in tokens:
        yield Decimal(f"0{token}".replace(",", "."))
        yield Decimal(re.sub("[.,]", "", token))


def _unsaid(words: str) -> str:
    if not words.strip() or len(words) > _LONGEST_SENTENCE:
        return f"{len(words)} letters say what becomes of it: {words[:200]!r}"
    unseen = [sign for sign in words if sign in "\0\x1b\u202e\u202d\u2066\u2067" or "\ud800" <= sign <= "\udfff"]
    return f"signs that nobody can see in {words!r}" if unseen else ""


def _written(sheet: Sheet) -> str:
    data = write_csv(sheet.rows, Columns(wide=sheet.wide, zone=BERLIN))
    if formulas := begin_as_formulas(data):
        return f"a spreadsheet would calculate {formulas[0]!r}"
    guess = sniff(data, known(), {})
    if isinstance(guess, Refusal):
        return f"what was written is refused: {guess.words}"
    # What was kept although it says no number is not judged.
    if guess.asked or any(row.value != row.value for row in sheet.rows):
        return ""
    again = (
        list(readings(data, guess.choices, known(), BERLIN, NOW))
        if preview(data, guess.choices, known(), BERLIN, NOW).ready
        else []
    )
    there = {(row.at, row.parameter, row.value, row.typed.unit): row for row in sheet.rows}
    for row in again:
        before = there.get((row.at, row.parameter, row.value, row.typed.unit))
        if before is None:
            return f"{row.content} {row.typed.unit} of {row.parameter} was never written"
        if len(sheet.rows) == 1 and (row.kit, row.who, row.note) != tuple(
            map(_held, (before.kit, before.who, before.note))
        ):
            return f"{(before.kit, before.who, before.note)} came back as {(row.kit, row.who, row.note)}"
    return ""


def _held(text: str) -> str:
    """Return a text as a file holds it."""
    return re.sub("[\0\ud800-\udfff]", "\ufffd", text)


def smaller(sheet: Sheet) -> Iterator[Sheet]:
    """Yield the same with less in it."""
    for at in range(len(sheet.rows) if len(sheet.rows) > 1 else 0):
        yield Sheet(rows=sheet.rows[:at] + sheet.rows[at + 1 :], wide=sheet.wide)
    for size in (len(sheet.data) // 2, len(sheet.data) // 8, 16, 1):
        for at in range(0, len(sheet.data), size) if size else ():
            yield Sheet(sheet.data[:at] + sheet.data[at + size :], sheet.rulings)
