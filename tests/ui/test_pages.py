"""The pages around the sheet: welcome, notice, the folded list, the card's window, the command line."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtPrintSupport import QPrinterInfo
from PySide6.QtWidgets import QLabel, QPushButton

from evenwater.card.layout import lay_out
from evenwater.card.paper import PAPERS
from evenwater.ui.notice_page import NoticePage
from evenwater.ui.room import Room
from evenwater.ui.start import Options, options_of
from evenwater.ui.welcome_page import WelcomePage
from tests.ui.window_making import choose, left, opened, reckoned, room_of, sheet_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def own_settings(tmp_path: Path):
    QSettings.setDefaultFormat(QSettings.Format.IniFormat)
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path))
    yield
    QSettings.setDefaultFormat(QSettings.Format.NativeFormat)


def test_the_invented_room_can_be_had_from_the_welcome(tmp_path: Path, qtbot):
    window = opened(tmp_path / "log.sqlite", qtbot)
    page = window.centralWidget()
    assert isinstance(page, WelcomePage)
    page.demo.click()
    assert len(room_of(window).systems.list.model().stringList()) == 3
    reckoned(sheet_of(window), qtbot)
    assert sheet_of(window).answer.view.state == "answered"


def test_a_room_that_was_filled_opens_without_a_welcome(tmp_path: Path, qtbot):
    log = tmp_path / "log.sqlite"
    first = opened(log, qtbot)
    first.centralWidget().empty.click()
    left(first)
    again = opened(log, qtbot)
    assert isinstance(again.centralWidget(), Room)


def test_try_again_opens_the_log_once_it_can_be_opened(tmp_path: Path, qtbot):
    log = tmp_path / "log.sqlite"
    left(opened(log, qtbot))

    def version(number: int | None = None) -> int:
        base = sqlite3.connect(log)
        if number is not None:
            base.execute(f"PRAGMA user_version = {number}")
        found = base.execute("PRAGMA user_version").fetchone()[0]
        base.close()
        return found

    right = version()
    version(9999)
    window = opened(log, qtbot)
    page = window.centralWidget()
    assert isinstance(page, NoticePage)
    version(right)
    page.findChild(QPushButton).click()
    assert isinstance(window.centralWidget(), WelcomePage)


def test_a_file_that_is_no_log_is_left_alone(tmp_path: Path, qtbot):
    log = tmp_path / "letter.sqlite"
    log.write_text("Dear keeper, this is not a log. " * 200)
    window = opened(log, qtbot)
    assert isinstance(window.centralWidget(), NoticePage)
    assert "not a log of Evenwater" in window.centralWidget().sentence.text()
    assert log.read_text().startswith("Dear keeper")


def test_the_list_folds_away_in_a_narrow_window_and_comes_back(qtbot):
    window = opened(None, qtbot, demo=True)
    room = room_of(window)
    assert room.systems.isVisible()
    window.resize(1000, 700)
    qtbot.waitUntil(lambda: not room.systems.isVisible())
    assert room.sheet.header.systems.isVisible()
    room.sheet.header.systems.click()
    assert room.systems.isVisible()
    window.resize(1366, 768)
    qtbot.waitUntil(lambda: not room.sheet.header.systems.isVisible())
    assert room.systems.isVisible()


def test_the_cards_window_shows_every_page_on_every_paper(qtbot, own_settings):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    sheet.buttons.cards.show.click()
    preview = sheet.buttons.preview
    assert preview is not None
    for name, paper in PAPERS.items():
        preview.papers.chosen.emit(name)
        pages = [label for label in preview.findChildren(QLabel) if label.isVisibleTo(preview) and label.pixmap()]
        assert len([p for p in pages if not p.pixmap().isNull()]) == len(lay_out(sheet.buttons.cards.card(), paper))
    assert sheet.buttons.cards.paper().name == name, "the paper is kept for the next card"
    preview.mono.setChecked(True)
    image = next(p for p in preview.findChildren(QLabel) if not p.pixmap().isNull()).pixmap().toImage()
    colours = {image.pixel(x, y) for x in range(0, image.width(), 3) for y in range(0, image.height(), 3)}
    assert len(colours) == 2
    window.close()
    assert not preview.isVisible()


def test_the_cards_window_follows_the_question_and_stamps_what_is_no_plan(qtbot, own_settings):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    sheet.buttons.cards.show.click()
    first = sheet.buttons.preview.card
    type_into(sheet, "change.target", "8.2")
    reckoned(sheet, qtbot)
    assert sheet.buttons.preview.card.title != first.title
    type_into(sheet, "change.target", "99")
    reckoned(sheet, qtbot)
    assert sheet.buttons.preview.card.draft == "NOT A PLAN"
    window.close()


def test_without_a_printer_the_keeper_is_sent_to_the_pdf(qtbot, monkeypatch):
    monkeypatch.setattr(QPrinterInfo, "availablePrinterNames", staticmethod(list))
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    sheet.buttons.cards.print.click()
    assert "PDF" in sheet.header.told.text()
    assert window.opening().document().cards() == [], "a card that was not printed hangs nowhere"


def test_a_card_that_cannot_be_written_says_so(qtbot, tmp_path: Path):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    sheet.buttons.cards.write(tmp_path / "no such folder" / "card.pdf")
    assert "could not be written" in sheet.header.told.text()


def test_a_new_batch_and_pump_are_named_chosen_and_can_go_again(qtbot):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    sheet.form.new_stock.click()
    reckoned(sheet, qtbot)
    assert sheet.records.values("stock") == {"name": sheet.form.fields["stock.name"].typed()}
    assert sheet.answer.view.state == "empty"
    choose(sheet, "additive.chemical", "A bottle, by its label")
    assert sheet.form.fields["additive.label.dose"].isVisible()
    assert not sheet.form.fields["additive.dissolved"].isVisible()
    sheet.form.remove_stock.click()
    assert sheet.records.id_of("stock") == ""


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ([], Options()),
        (["--demo", "--font", "150"], Options(demo=True, font=150.0)),
        (["--log", "a.sqlite", "--close-after", "1.5"], Options(log=Path("a.sqlite"), close_after=1.5)),
    ],
)
def test_options(words: list[str], found: Options):
    assert options_of(words) == found


@pytest.mark.parametrize("words", [["--bogus"], ["anser", "q.toml"], ["--font", "big"], ["--font", "20"], ["--log"]])
def test_wrong_options_are_said(words: list[str]):
    with pytest.raises(ValueError, match=r"\w"):
        options_of(words)
