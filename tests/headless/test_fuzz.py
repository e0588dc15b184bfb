"""A small sample of `python -m tests.bench --only fuzz`, the same each time: H4, H5, H17, H30, H31.

Common practice, no source: what nobody should type or hand over is refused in words or read as it stands, and never breaks
anything. The oracles share no code with the product; that they notice what they are there for is tested here too.
"""

from __future__ import annotations

import random
from collections import Counter
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from evenwater.engine import fields
from tests.bench import fuzz, fuzz_logs, fuzz_numbers, fuzz_questions
from tests.bench.fuzz_numbers import Meant, TypedNumber, meant

SAMPLES = {"numbers": 4000, "questions": 200, "sheets": 300, "logs": 30}


@pytest.mark.parametrize("name", SAMPLES)
def test_broken_input_breaks_nothing(name: str, tmp_path: Path) -> None:
    found = next(fuzz.search(name, "suite", range(SAMPLES[name]), tmp_path), None)
    assert found is None


def test_the_samples_are_of_every_sort(tmp_path: Path) -> None:
    typed = Counter(meant(fuzz_numbers.made(random.Random(n))).verdict for n in range(1000))
    assert min(typed[verdict] for verdict in ("empty", "refused", "read", "asked")) >= 1
    assert typed["read"] > 120
    asked = Counter(fuzz_questions.ask(fuzz_questions.made(random.Random(n)), tmp_path).status for n in range(60))
    assert min(asked[status] for status in (0, 2, 3)) >= 3
    became = Counter(fuzz_logs.tried(fuzz_logs.made(random.Random(n)), tmp_path / "log").became for n in range(24))
    assert min(became[one] for one in ("refused", "read")) >= 5


@pytest.mark.parametrize(
    ("text", "beside", "expected"),
    [
        ("340 L", "", Meant("read", (Decimal("340.0"),), "L")),
        ("1,5 US gal", "", Meant("read", (Decimal("1.5"),), "US gal")),
        ("1.250", "L", Meant("asked", (Decimal("1.250"), Decimal(1250)), "L")),
        ("\u221212 L", "", Meant("refused", unit="L")),
        ("12", "", Meant("refused")),
        ("12 ML", "", Meant("refused")),
        ("1 2 L", "", Meant("refused")),
        ("1.2.3 L", "", Meant("refused")),
        ("12. L", "", Meant("refused")),
        ("+12 L", "", Meant("refused")),
        ("\u0661\u0662 L", "", Meant("refused")),
        ("12 gal", "", Meant("refused")),
        ("\u00a0 ", "L", Meant("empty")),
    ],
)
def test_the_tests_own_reader_knows_the_grammar(text: str, beside: str, expected: Meant) -> None:
    assert meant(TypedNumber(text, fields.NET_VOLUME, beside)) == expected


def test_the_oracle_of_answers_notices_what_it_is_there_for(tmp_path: Path) -> None:
    asked = fuzz_questions.AskedFile(fuzz_questions.examples()["correction"].encode())
    said = fuzz_questions.ask(asked, tmp_path)
    assert said.status == 0
    assert fuzz_questions.wrong_with(said, asked) == ""
    broken = {
        "exit status": replace(said, status=1),
        "a traceback": replace(said, err="Traceback (most recent call last):"),
        "prints U+001B": replace(said, out=said.out.replace("answered", "\x1b[2J")),
        "status 0 with": replace(said, err="something"),
        "is not one line of JSON": replace(said, out=said.out.replace('"value": 4.7', '"value": NaN')),
        "status 0 says": replace(said, out=said.out.replace('"answered"', '"refused"')),
        "single_dose_rounded.value is below zero": replace(
            said, out=said.out.replace('"value": 4.7,', '"value": -4.7,')
        ),
    }
    for words, wrong in broken.items():
        assert words in fuzz_questions.wrong_with(wrong, asked), words
    passed_over = fuzz_questions.AskedFile(asked.content.replace(b"[pump]", b"[pump]\nflaw = 1"))
    assert "pump.flaw was passed over" in fuzz_questions.wrong_with(said, passed_over)
    repaired = fuzz_questions.AskedFile(asked.content.replace(b'"24 mL/min"', b'"about 24 mL/min"'))
    assert "pump.flow = 'about 24 mL/min' was taken" in fuzz_questions.wrong_with(said, repaired)


def test_what_breaks_something_is_made_smaller(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    def fault(typed: TypedNumber, _: Path) -> str:
        return "has a seven" if "7" in typed.text else ""

    monkeypatch.setitem(fuzz.TARGETS, "numbers", replace(fuzz.TARGETS["numbers"], fault=fault))
    found = next(fuzz.search("numbers", "suite", range(200), tmp_path))
    assert isinstance(found.item, TypedNumber)
    assert (found.item.text, found.fault) == ("7", "has a seven")


def test_an_exception_is_a_fault_and_says_where(tmp_path: Path) -> None:
    def fault(_: object, __: Path) -> str:
        raise ZeroDivisionError("by nothing")

    said = fuzz.judged(replace(fuzz.TARGETS["numbers"], fault=fault), None, tmp_path)
    assert said.startswith("ZeroDivisionError in fault:")
    assert said.endswith("by nothing")
