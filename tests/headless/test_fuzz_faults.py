"""What fuzzing has found once and must not come back: H30, H31."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from datetime import UTC, datetime
from pathlib import Path

import pytest

from evenwater.engine import fields
from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Wrong, read
from evenwater.screens.csv_guess import sniff
from evenwater.screens.csv_text import guarded, unguarded
from evenwater.screens.csv_writing import row_of, write_csv
from evenwater.screens.words import sentence
from tests.engine.asking import known
from tests.headless.asking import ask, example, put
from tests.screens.csv_files import shown, taken

TURNED, ESCAPE = "\u202e", "\x1b[2J"


@pytest.mark.parametrize("typed", [f"12 {TURNED}L", "12 L\0", "12 \x1b[31m", "8 L\u2066", "x\ud800"])
def test_what_is_not_taken_is_quoted_without_signs_that_nobody_sees(typed: str) -> None:
    result = read(typed, fields.NET_VOLUME)
    assert isinstance(result, Wrong)
    assert result.reason.params.get("text", typed) == typed, "the text itself stays"
    said = sentence(result.reason)
    assert not any(sign in said for sign in (TURNED, "\0", "\x1b", "\u2066", "\ud800"))
    assert "[U+" in said


@pytest.mark.parametrize("typed", ["9" * 5000 + "x y", "x" * 5000, "1 " * 5000, "8 " + "L" * 5000])
def test_a_long_text_is_quoted_in_short(typed: str) -> None:
    result = read(typed, fields.NET_VOLUME)
    assert isinstance(result, Wrong)
    assert len(sentence(result.reason)) < 250


@pytest.mark.parametrize("options", [(), ("--text",)])
def test_a_terminal_obeys_nothing_that_stands_in_a_question_file(tmp_path: Path, options: tuple[str, ...]) -> None:
    odd = '"\\u001b[2J\\u202eNorth\\u0007"'
    for text in (
        put(example(), name=odd),
        put(example(), parameter=odd),
        put(example(), flow=odd),
        put(example(), kind=odd),
        example() + f"\n{odd} = 1\n",
        example("timetable").replace('"Magnesium pump"', odd),
    ):
        said = ask(tmp_path, text, *options)
        assert said.status in (0, 2, 3)
        assert not any(sign in said.out + said.err for sign in ("\x1b", "\x07", TURNED))


def test_the_json_of_odd_signs_says_the_same(tmp_path: Path) -> None:
    said = ask(tmp_path, f'"{TURNED}flow" = 1\nkind = "convert"\nvalue = "8 dKH"\nto = "{TURNED}dKH"\n')
    assert said.status == 2
    assert said.out.isascii()
    assert f"{TURNED}flow" in [field for _, field in said.problems]
    assert "[U+202E]flow: is not known" in said.err


def test_a_kind_of_any_length_is_refused_in_a_sentence(tmp_path: Path) -> None:
    said = ask(tmp_path, f'kind = "{"x" * 100_000}"\n')
    assert said.status == 2
    assert len(said.err) < 500


def _evenwater(*words: str | bytes, **streams: object) -> subprocess.CompletedProcess[bytes]:
    command = [sys.executable, "-m", "evenwater", *words]
    return subprocess.run(command, stderr=subprocess.PIPE, timeout=60, check=False, **streams)  # type: ignore[call-overload]


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="only Linux has a disk that is always full")
@pytest.mark.parametrize("place", ["/dev/full", "a reader that has gone"])
def test_an_answer_that_cannot_be_written_is_said_and_is_no_answer(place: str, tmp_path: Path) -> None:
    question = tmp_path / "question.toml"
    question.write_text(example("convert"), encoding="utf-8")
    if place == "/dev/full":
        target = os.open(place, os.O_WRONLY)
    else:
        end, target = os.pipe()
        os.close(end)
    try:
        said = _evenwater("answer", str(question), stdout=target)
    finally:
        os.close(target)
    assert said.returncode == 2
    assert said.stderr.startswith(b"evenwater: the answer could not be written: ")
    assert said.stderr.count(b"\n") == 1


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere the name of a file is text")
def test_the_name_of_a_file_need_not_be_text() -> None:
    said = _evenwater("answer", b"\xff\x1b[2J.toml", stdout=subprocess.DEVNULL)
    assert said.returncode == 2
    assert said.stderr == b"[U+DCFF][U+001B][2J.toml: cannot be read: No such file or directory\n"


BLANKS = [
    "\x0b",
    "\x0c",
    "\x1c",
    "\x85",
    "\u2009",
    "\u2028",
    "\u2029",
    "\u3000",
    "\u200b",
    "\u200e",
    "\ufeff",
    "\u00ad",
    "\u00a0\u3000 ",
]


@pytest.mark.parametrize("blank", BLANKS, ids=ascii)
def test_a_formula_behind_any_blank_is_guarded_and_comes_back(blank: str) -> None:
    for text in (
        f"{blank}=1+1",
        f"a{blank}b",
        f"a;{blank}-1",
        f"{blank}'=1",
        f"{blank}{blank}@x",
        f"a{blank}+1",
        f"{blank}''",
    ):
        written = guarded(text)
        assert unguarded(written) == text
        first = written.lstrip("".join(BLANKS))
        assert not first.startswith(("=", "+", "-", "@")), ascii(written)


def test_a_cell_is_quoted_without_signs_that_nobody_sees() -> None:
    data = f"Date;KH (dKH)\n2025-11-25 08:00;{TURNED}8\n2025-11-{TURNED};8\n2025-11-26 08:00;8\n".encode()
    assert sniff(data, known(), {})
    found = shown(data)
    said = [
        *found.messages,
        *(
            words
            for row in found.rows
            for words in (row.when, row.sentence, *(c.words + c.sentence for c in row.cells))
        ),
    ]
    assert any("[U+202E]" in words for words in said)
    assert not any(TURNED in words for words in said)


def test_a_zero_with_a_minus_keeps_the_unit_that_the_file_says() -> None:
    at = datetime(2025, 11, 25, 7, 0, tzinfo=UTC)
    row = row_of(at, "calcium", Typed("\u22120", "mg/kg"), known())
    (again,) = taken(write_csv([row]))
    assert again.typed == row.typed


def test_thousands_of_faults_are_said_as_the_first_of_them_and_their_number(tmp_path: Path) -> None:
    text = example("timetable") + "".join(f"[[pump]]\nx{n} = 1\n" for n in range(2000))
    began = time.process_time()
    said = ask(tmp_path, text)
    assert said.status == 2
    assert len(said.problems) == 51
    assert "has 7950 more faults. Mend these first." in said.err
    # Each fault was looked for in the whole file: minutes.
    assert time.process_time() - began < 5.0
