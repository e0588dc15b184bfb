"""Spreadsheets of readings as bytes, and what the product makes of them."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from zoneinfo import ZoneInfo

from evenwater.screens.csv_choices import Guess, Point, ReadRow, Refusal
from evenwater.screens.csv_guess import sniff
from evenwater.screens.csv_preview import Preview, preview
from evenwater.screens.csv_reading import readings
from tests.engine.asking import known

BERLIN = ZoneInfo("Europe/Berlin")
NOW = datetime(2026, 11, 25, 9, 0, tzinfo=BERLIN)
Rulings = Mapping[str, str]


def sheet(*lines: str, encoding: str = "utf-8", end: str = "\r\n") -> bytes:
    """Return a file with these lines."""
    return "".join(f"{line}{end}" for line in lines).encode(encoding)


def guessed(data: bytes, rulings: Rulings | None = None) -> Guess:
    """Return what a file is taken for; the test fails when it cannot be read at all."""
    found = sniff(data, known(), rulings or {})
    assert isinstance(found, Guess), found
    return found


def refused(data: bytes, rulings: Rulings | None = None) -> Refusal:
    """Return why a file cannot be read; the test fails when it can."""
    found = sniff(data, known(), rulings or {})
    assert isinstance(found, Refusal), found
    return found


def point(data: bytes, what: str, rulings: Rulings | None = None) -> Point:
    """Return one point of the guess about a file."""
    return next(point for point in guessed(data, rulings).points if point.what == what)


def asked(data: bytes, rulings: Rulings | None = None) -> set[str]:
    """Return what only the keeper can say about a file."""
    return {point.what for point in guessed(data, rulings).asked}


def shown(data: bytes, rulings: Rulings | None = None, zone: ZoneInfo = BERLIN) -> Preview:
    """Return the preview of a file."""
    return preview(data, guessed(data, rulings).choices, known(), zone, NOW)


def taken(data: bytes, rulings: Rulings | None = None, zone: ZoneInfo = BERLIN) -> list[ReadRow]:
    """Return the readings of a file; the test fails when the preview would not let them through."""
    guess = guessed(data, rulings)
    assert not guess.asked, [(point.what, point.words) for point in guess.asked]
    looked = preview(data, guess.choices, known(), zone, NOW)
    assert looked.ready, looked.messages
    found = list(readings(data, guess.choices, known(), zone, NOW))
    assert len(found) == looked.counts.readings
    return found


def figures(rows: list[ReadRow]) -> list[str]:
    """Return parameter, figure and unit of each reading as one text."""
    return [f"{row.parameter} {row.typed.text} {row.typed.unit}" for row in rows]
