"""The contract of the two commands: exit statuses, one JSON object for each file, words for people."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from evenwater.headless import ANSWERED, REFUSED, UNREADABLE
from evenwater.question_file import KINDS
from tests.headless.asking import ask, example, put, run, strict


def files(folder: Path, *texts: str) -> list[str]:
    made = []
    for number, text in enumerate(texts):
        file = folder / f"{number}.toml"
        file.write_text(text, encoding="utf-8")
        made.append(str(file))
    return made


GOOD = example()
HIGH = put(GOOD, target='"6.0 dKH"')
BROKEN = "kind = "


def test_statuses_are_0_3_and_2() -> None:
    assert (ANSWERED, REFUSED, UNREADABLE) == (0, 3, 2)


@pytest.mark.parametrize(
    ("texts", "status"),
    [
        ((GOOD,), 0),
        ((HIGH,), 3),
        ((BROKEN,), 2),
        ((GOOD, GOOD), 0),
        ((GOOD, HIGH), 3),
        ((HIGH, GOOD), 3),
        ((HIGH, BROKEN, GOOD), 2),
        ((BROKEN, HIGH), 2),
    ],
)
def test_several_files_give_a_line_each_and_the_worst_status(
    tmp_path: Path, texts: tuple[str, ...], status: int
) -> None:
    said = run("answer", *files(tmp_path, *texts))
    assert said.status == status
    expected = {GOOD: "answered", HIGH: "refused", BROKEN: "unreadable"}
    assert [o["status"] for o in said.objects] == [expected[t] for t in texts]


def test_a_file_is_answered_alike_alone_and_among_others(tmp_path: Path) -> None:
    alone = ask(tmp_path, GOOD).out
    among = run("answer", *files(tmp_path, HIGH, GOOD, BROKEN)).out.splitlines(keepends=True)[1]
    assert alone == among


@pytest.mark.parametrize("kind", KINDS)
def test_the_example_of_every_kind_is_answered(tmp_path: Path, kind: str) -> None:
    printed = run("question", kind)
    assert printed.status == 0
    assert f'kind = "{kind}"' in printed.out
    assert "# optional" in printed.out, "an example says what may be left out"
    said = ask(tmp_path, printed.out)
    assert said.status == 0
    assert said.body["status"] == "answered"


@pytest.mark.parametrize("words", [("question",), ("question", "soup"), ("question", "convert", "correction")])
def test_question_without_a_known_kind_names_the_kinds(words: tuple[str, ...]) -> None:
    said = run(*words)
    assert said.status == 2
    assert said.out == ""
    assert all(kind in said.err for kind in KINDS)


@pytest.mark.parametrize(
    "options",
    [
        (),
        ("--text",),
        ("--pdf", "q.toml"),
        ("q.toml", "--card"),
        ("q.toml", "--card", "--text"),
        ("a", "b", "--card=c"),
    ],
)
def test_wrong_words_on_the_command_line_show_the_usage(options: tuple[str, ...]) -> None:
    said = run("answer", *options)
    assert said.status == 2
    assert said.out == ""
    assert "usage: evenwater answer" in said.err


def test_text_has_the_cautions_before_any_number_and_then_the_rate(tmp_path: Path) -> None:
    said = ask(tmp_path, GOOD, "--text")
    assert said.status == 0
    lines = said.out.splitlines()
    rate = next(n for n, line in enumerate(lines) if "mL per hour" in line)
    assert lines[0].startswith("Caution: ")
    assert all(line.startswith("Caution: ") or not line for line in lines[:rate])
    assert lines[rate].startswith("4.7 mL per hour for 1 day 15 h")
    assert not said.out.startswith("{")


def test_text_of_a_refusal_names_the_field_and_says_why(tmp_path: Path) -> None:
    said = ask(tmp_path, put(GOOD, measured='"140 dKH"'), "--text")
    assert said.status == 3
    assert said.out.startswith("Refused: change.measured: 140")
    assert "140\u00a0ppm as CaCO3" in said.out


def test_text_of_an_unreadable_file_is_on_standard_error(tmp_path: Path) -> None:
    said = ask(tmp_path, put(GOOD, flow="24"), "--text")
    assert said.status == 2
    assert "pump.flow" in said.err
    assert "pump.flow" not in said.out


def test_text_of_several_files_names_each(tmp_path: Path) -> None:
    made = files(tmp_path, GOOD, HIGH)
    said = run("answer", *made, "--text")
    assert [line for line in said.out.splitlines() if line.endswith(".toml:")] == [f"{name}:" for name in made]


@pytest.mark.parametrize(("zone", "until"), [("UTC", "Friday 00:00"), ("Pacific/Auckland", "Friday 13:00")])
def test_text_has_dates_in_the_zone_of_this_machine(tmp_path: Path, zone: str, until: str) -> None:
    done = process(tmp_path, GOOD, "--text", TZ=zone)
    assert done.returncode == 0, done.stderr.decode()
    assert f"until {until}" in done.stdout.decode()


def process(folder: Path, text: str, *options: str, **environment: str) -> subprocess.CompletedProcess[bytes]:
    """Answer a question in a process of its own."""
    file = folder / "question.toml"
    file.write_text(text, encoding="utf-8")
    code = (
        "import sys; from evenwater.__main__ import main; s = main(sys.argv[1:]);"
        "print(sorted({m.split('.')[0] for m in sys.modules} & {'PySide6', 'shiboken6', 'pyqtgraph'}), file=sys.stderr);"
        "sys.exit(s)"
    )
    return subprocess.run(
        [sys.executable, "-c", code, "answer", str(file), *options],
        capture_output=True, timeout=60, check=False,
        env={**os.environ, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p), **environment},
    )  # fmt: skip


@pytest.mark.parametrize(
    ("text", "status"),
    [(GOOD, 0), (HIGH, 3), (BROKEN, 2), (example("convert"), 0)],
    ids=["good", "high", "broken", "convert"],
)
def test_no_answer_loads_qt(tmp_path: Path, text: str, status: int) -> None:
    done = process(tmp_path, text)
    assert done.returncode == status
    assert done.stderr.decode().splitlines()[-1] == "[]"
    assert strict(done.stdout.decode())["status"] in ("answered", "refused", "unreadable")


def test_output_is_utf_8_on_a_terminal_that_knows_only_ascii(tmp_path: Path) -> None:
    done = process(tmp_path, put(GOOD, net_volume='"三百 L"'), PYTHONIOENCODING="ascii", PYTHONUTF8="0")
    assert done.returncode == 3
    assert "三百" in json.loads(done.stdout.decode("utf-8"))["reasons"][0]["text"]
