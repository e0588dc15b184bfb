"""``--card``: a PDF beside the answer, with the same plan, whole or not at all."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.headless.asking import ask, example, on_label, put

GOOD = example()


def content(card: Path) -> str:
    return " ".join(" ".join(page.extract_text() for page in PdfReader(card).pages).split()).replace("\u00a0", " ")


@pytest.mark.parametrize("option", ["--card {}", "--card={}"])
def test_card_says_what_the_answer_says(tmp_path: Path, qapp: object, option: str) -> None:
    card = tmp_path / "card.pdf"
    said = ask(tmp_path, GOOD, *option.format(card).split())
    assert said.status == 0
    assert said.err == ""
    body, printed = said.body, content(card)
    assert body["plan_id"] in printed
    assert f"{body['single_dose_rounded']['value']} mL" in printed
    assert f"{body['doses_rounded']['total']['value']} mL in all" in printed
    assert "North frag bay" in printed
    assert "sodium CARBonate anhydrous" in printed


def test_card_is_the_same_as_without_it(tmp_path: Path, qapp: object) -> None:
    assert ask(tmp_path, GOOD, "--card", str(tmp_path / "c.pdf")).out == ask(tmp_path, GOOD).out


def test_card_of_a_bottle_and_text(tmp_path: Path, qapp: object) -> None:
    card = tmp_path / "card.pdf"
    said = ask(tmp_path, on_label(GOOD), "--text", "--card", str(card))
    assert said.status == 0
    assert "mL per hour" in said.out
    assert "5 mL raise 100 L by 1 dKH" in content(card)


def test_a_place_that_cannot_be_written_is_said_and_not_hidden(tmp_path: Path, qapp: object) -> None:
    place = tmp_path / "no" / "such" / "card.pdf"
    said = ask(tmp_path, GOOD, "--card", str(place))
    assert said.status == 2
    assert said.body["status"] == "answered"
    assert str(place) in said.err


@pytest.mark.parametrize(
    ("text", "status"), [(put(GOOD, target='"6 dKH"'), 3), ("kind = ", 2), (example("convert"), 0)]
)
def test_no_plan_leaves_the_file_alone_and_says_so(tmp_path: Path, text: str, status: int) -> None:
    card = tmp_path / "card.pdf"
    card.write_bytes(b"the card of last week")
    said = ask(tmp_path, text, "--card", str(card))
    assert said.status == status
    assert card.read_bytes() == b"the card of last week"
    assert f"there is no plan, so {card} was not written" in said.err


def test_card_needs_no_display_and_no_platform(tmp_path: Path) -> None:
    question, card = tmp_path / "question.toml", tmp_path / "card.pdf"
    question.write_text(GOOD, encoding="utf-8")
    environment = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}
    done = subprocess.run(
        [sys.executable, "-m", "evenwater", "answer", str(question), "--card", str(card)],
        capture_output=True, timeout=60, check=False,
        env={**environment, "PYTHONPATH": os.pathsep.join(p for p in sys.path if p), "TZ": "Asia/Kathmandu"},
    )  # fmt: skip
    assert done.returncode == 0, done.stderr.decode()
    assert done.stderr == b""
    # 09:00 UTC is 14:45 in Kathmandu: the card has the clock of the room it hangs in.
    assert "Issued Wed 25 Nov 2026 14:45" in content(card)
