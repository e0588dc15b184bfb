"""Words and signs that the product never puts on a screen or on paper.

Source: ISMP, List of Error-Prone Abbreviations, Symbols and Dose Designations: write mL and mcg, never ml, cc or a
micro sign, and no slash that can be read as a one.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.arch.tree import ROOT, parsed, python_files, shown, texts

ERROR_PRONE = re.compile(r"(?<![A-Za-z0-9_.])(?:ml|ML|cc|[µμ]g|ug|[µμ]L|ltr|q\.d\.|o\.d\.)(?![A-Za-z0-9_])")
SLASHED_DOSE = re.compile(r"\b(?:mL|L|g|mg)/(?:h|hr|hour|d|day|min|dose|week)\b")

# The answer for programs names its units as question files do.
MACHINE_READ = {"screens/answer_json.py"}


def strings(value: Any) -> Iterator[str]:
    """Yield every string inside a TOML value."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for inner in value.values():
            yield from strings(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from strings(inner)


@pytest.mark.parametrize("text", ["5 ml", "5 cc per day", "{dose} µg", "ML", "5\N{NO-BREAK SPACE}ug", "0.5 ltr"])
def test_error_prone_unit_is_seen(text: str) -> None:
    assert ERROR_PRONE.search(text)


@pytest.mark.parametrize("text", ["5 mL per day", "html", "accept", "mcg", "5 mg per L", "bug", ".ml", "ml_per_hour"])
def test_good_words_pass(text: str) -> None:
    assert not ERROR_PRONE.search(text)


def test_slashed_dose_is_seen() -> None:
    assert SLASHED_DOSE.search("4.8 mL/h")
    assert SLASHED_DOSE.search("mL/day")
    assert not SLASHED_DOSE.search("mL per day or meq/L")


@pytest.mark.parametrize("file", python_files("screens", "card", "ui"), ids=shown)
def test_words_of_the_product(file: Path) -> None:
    bad = [f"line {line}: {text!r}" for text, line in texts(parsed(file)) if ERROR_PRONE.search(text)]
    assert not bad
    if shown(file) in MACHINE_READ:
        return
    slashed = [f"line {line}: {text!r}" for text, line in texts(parsed(file)) if SLASHED_DOSE.search(text)]
    assert not slashed


@pytest.mark.parametrize("file", sorted((ROOT / "resources").glob("*.toml")), ids=lambda file: file.name)
def test_words_of_the_data(file: Path) -> None:
    bad = [text for text in strings(tomllib.loads(file.read_text(encoding="utf-8"))) if ERROR_PRONE.search(text)]
    assert not bad
