"""A question file that a desktop opens is answered in a window of its own."""

from __future__ import annotations

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

import evenwater
from evenwater import headless
from evenwater.__main__ import main
from evenwater.ui import question_window
from tests.arch.tree import ROOT

QUESTIONS = ROOT / "resources" / "questions"


def test_answer_is_shown_and_its_card_written(qtbot: QtBot, tmp_path: Path) -> None:
    file = tmp_path / "frag bay.ewq"
    file.write_bytes((QUESTIONS / "correction.toml").read_bytes())
    window = question_window.QuestionWindow(file, headless.told(file))
    qtbot.addWidget(window)
    assert "frag bay.ewq" in window.windowTitle()
    assert "4.7 mL per hour" in window.text.toPlainText()  # Qt hands out spaces that break
    assert "log was not asked" in window.alone.text()
    assert window.text.isReadOnly()
    assert window.save.isEnabled()
    window.write_card(tmp_path / "card.pdf")
    assert (tmp_path / "card.pdf").read_bytes().startswith(b"%PDF")
    assert "card.pdf" in window.status.text()
    window.write_card(tmp_path / "nowhere" / "card.pdf")
    assert "Saved" not in window.status.text()


def test_faults_are_shown_and_there_is_no_card(qtbot: QtBot, tmp_path: Path) -> None:
    file = tmp_path / "bad.ewq"
    file.write_text('kind = "correction"\nnow = 3\n', encoding="utf-8")
    window = question_window.QuestionWindow(file, headless.told(file))
    qtbot.addWidget(window)
    assert "bad.ewq:2: now: must be a date" in window.text.toPlainText()
    assert not window.save.isEnabled()
    assert window.save.accessibleDescription()


def test_told_is_what_the_terminal_is_told(capsys: pytest.CaptureFixture[str]) -> None:
    for kind in ("correction", "jug", "convert"):
        file = QUESTIONS / f"{kind}.toml"
        assert headless.run(["answer", str(file), "--text"]) == 0
        assert capsys.readouterr().out == headless.told(file).text + "\n"
        assert (headless.told(file).card is not None) == (kind == "correction")


def test_a_file_given_as_argument_is_opened(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    file = tmp_path / "frag bay.ewq"
    file.write_bytes((QUESTIONS / "correction.toml").read_bytes())
    opened: list[object] = []

    def run(*given: object) -> int:
        opened.extend(given)
        return 7

    monkeypatch.setattr(question_window, "run", run)
    assert main([str(file), "--close-after", "1"]) == 7
    assert opened == [file, headless.told, ["--close-after", "1"]]


def test_version_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--version"]) == 0
    assert capsys.readouterr().out == f"evenwater {evenwater.__version__}\n"
