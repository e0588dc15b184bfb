"""Every reason about a spreadsheet has a sentence, and no sentence is without a reason."""

from __future__ import annotations

import ast
from datetime import datetime
from pathlib import Path

import evenwater.screens
from evenwater.engine.reasons import Reason
from evenwater.screens import csv_words
from evenwater.screens.csv_words import csv_sentence, cut
from tests.screens.lint import faults

PARAMS = {
    "text": "a" * 100, "unit": "x", "megabytes": 64, "most": 200, "cells": 5, "columns": 3, "line": 4, "parameter": "calcium",
    "at": datetime(2025, 10, 26, 2, 30),  # noqa: DTZ001  (a clock on a wall)
}  # fmt: skip


def codes() -> set[str]:
    """Return every code in the sources but those of the table itself."""
    files = [file for file in Path(evenwater.screens.__file__).parent.glob("csv_*.py") if file.name != "csv_words.py"]
    return {
        node.value
        for file in files
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value.startswith("csv_")
    }


def test_codes_and_sentences_are_the_same() -> None:
    assert len(codes()) > 20
    assert codes() == csv_words.FILE_CODES | csv_words.ROW_CODES


def test_a_sentence_is_short_and_safe() -> None:
    for code in codes():
        sentence = csv_sentence(Reason(code, PARAMS))
        assert not faults(sentence)
        assert sentence[-1] in ".?"
        assert sentence[0].isupper() or sentence[0] in "“0123456789"
        assert len(sentence) < 180


def test_what_is_repeated_is_cut_and_stands_in_one_line() -> None:
    assert cut("short  text\r\nwith lines") == "short text with lines"
    assert len(cut("x" * 1000)) == 40
    assert cut("x" * 1000).endswith("…")
    assert "x" * 41 not in csv_sentence(Reason("not_a_number", {"text": "x" * 1000, "example": "6.8"}))
