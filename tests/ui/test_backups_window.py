"""The window of backups in the real window: listed, asked twice, restored, carried away, and said when it fails."""

from __future__ import annotations

import os
import shutil
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QDesktopServices
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.session import Document
from evenwater.ui.backups_window import BackupsWindow
from evenwater.ui.main_window import MainWindow
from evenwater.ui.notice_page import NoticePage
from evenwater.ui.room import Room
from tests.ui.stocks_making import click
from tests.ui.window_making import left, opened, room_of


@pytest.fixture
def log(tmp_path: Path) -> Path:
    return tmp_path / "log.sqlite"


@pytest.fixture
def window(log: Path, qtbot) -> MainWindow:
    """A room with the demonstration's records, and a copy of it from yesterday."""
    window = opened(log, qtbot)
    window.centralWidget().demo.click()
    document = document_of(window)
    folder = document.backups.folder
    folder.mkdir(exist_ok=True)
    made = datetime.now(UTC) - timedelta(days=1)
    copy = folder / f"{made:%Y-%m-%d}.sqlite"
    assert document.backups.carry(log, log.with_name("yesterday.sqlite")) is None
    shutil.move(log.with_name("yesterday.sqlite"), copy)
    os.utime(copy, (made.timestamp(), made.timestamp()))
    document.edit(document.records("system")[0], "name", Typed("South"))
    return window


def document_of(window: MainWindow) -> Document:
    opening = window.opening()
    assert opening is not None
    document = opening.document()
    assert document is not None
    return document


@pytest.fixture
def backups(window: MainWindow, qtbot) -> BackupsWindow:
    return listing(window, qtbot)


def listing(window: MainWindow, qtbot) -> BackupsWindow:
    """Open it with the button at the foot of the lists, and wait until the copies are listed."""
    room = room_of(window)
    click(room.copies)
    assert room.backups is not None
    read(room.backups, qtbot)
    return room.backups


def read(backups: BackupsWindow, qtbot) -> None:
    qtbot.waitUntil(lambda: not backups._work.busy() and bool(backups.lines.rows), timeout=5000)


def choose(backups: BackupsWindow, kind: str) -> None:
    backups.list.selectRow([copy.kind for copy in backups.lines.copies].index(kind))


def yesterdays(backups: BackupsWindow) -> None:
    """Choose the copy of yesterday; that of today was made before the room was filled."""
    numbers = [n for n, copy in enumerate(backups.lines.copies) if copy.kind == "daily"]
    backups.list.selectRow(numbers[-1])


def test_the_copies_are_listed_with_what_they_hold(backups: BackupsWindow):
    rows = backups.lines.rows
    assert rows[0].what == "The log as it is now"
    assert "3\u00a0systems" in rows[0].holds
    assert "entries up to" in rows[-1].holds
    assert str(document_of(backups.parent().window()).backups.folder) in backups.where.text()
    assert not backups.fault.isVisible()
    assert not backups.restore.isEnabled(), "nothing is chosen"
    choose(backups, "present")
    assert not backups.restore.isEnabled(), "the log itself cannot be restored"
    assert backups.carry.isEnabled()


def test_it_takes_two_words_to_restore(backups: BackupsWindow, window: MainWindow, qtbot):
    document = document_of(window)
    system = document.records("system")[0]
    yesterdays(backups)
    click(backups.restore)
    assert backups.asking.isVisible()
    assert backups.lost.text().replace("\u00a0", " ") == (
        "From the log would go: 1 change of systems, jugs, pumps or corrections."
    )
    assert "Undo" in backups.kept.text()
    assert QApplication.focusWidget() is backups.leave, "a stray key leaves everything as it is"
    click(backups.leave)
    assert not backups.asking.isVisible()
    assert document.value(system, "name") == Typed("South")
    click(backups.restore)
    click(backups.sure)
    read(backups, qtbot)
    assert document.value(system, "name") == Typed("North frag bay")
    assert room_of(window).systems._model.stringList()[0] == "North frag bay"
    assert "before restoring" in backups.told.text()
    choose(backups, "before restoring")
    click(backups.restore)
    click(backups.sure)
    assert document.value(system, "name") == Typed("South")


def test_another_line_or_escape_takes_the_question_back(backups: BackupsWindow):
    yesterdays(backups)
    click(backups.restore)
    choose(backups, "present")
    assert not backups.asking.isVisible()
    yesterdays(backups)
    click(backups.restore)
    QTest.keyClick(backups, Qt.Key.Key_Escape)
    assert not backups.asking.isVisible()
    assert backups.isVisible()
    QTest.keyClick(backups, Qt.Key.Key_Escape)
    assert not backups.isVisible()


def test_a_damaged_copy_is_listed_and_cannot_be_chosen_for_anything(window: MainWindow, qtbot):
    folder = document_of(window).backups.folder
    (folder / "2026-01-02.sqlite").write_text("a shopping list\n" * 400)
    backups = listing(window, qtbot)
    backups.list.selectRow(len(backups.lines.rows) - 1)
    assert "not a log" in backups.lines.rows[-1].holds
    assert not backups.restore.isEnabled()
    assert not backups.carry.isEnabled()


def test_a_copy_that_went_in_the_meantime_says_so(backups: BackupsWindow, window: MainWindow):
    document = document_of(window)
    yesterdays(backups)
    backups.chosen().file.unlink()
    click(backups.restore)
    assert "no longer" in backups.told.text()
    assert not backups.asking.isVisible()
    assert document.value(document.records("system")[0], "name") == Typed("South")


def test_a_copy_is_carried_away(backups: BackupsWindow, tmp_path: Path, qtbot):
    choose(backups, "present")
    click(backups.carry)
    assert backups._dialog is not None
    qtbot.waitUntil(backups._dialog.isVisible)
    backups._dialog.close()
    stick = tmp_path / "stick"
    stick.mkdir()
    backups._dialog.fileSelected.emit(str(stick / "log.sqlite"))
    assert (stick / "log.sqlite").stat().st_size > 50_000
    assert str(stick) in backups.told.text()
    backups.carry_to(tmp_path / "pulled out" / "log.sqlite")
    assert "could not be written" in backups.told.text()
    backups.carry_to(tmp_path / "log.sqlite")
    assert "lie there already" in backups.told.text()


def test_the_folder_is_opened(backups: BackupsWindow, window: MainWindow, monkeypatch):
    asked = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: asked.append(url.toLocalFile()) or True)
    click(backups.open)
    assert [Path(place) for place in asked] == [document_of(window).backups.folder]


def test_that_there_is_no_copy_of_the_day_is_said_in_the_strip_and_here(backups: BackupsWindow, window: MainWindow):
    document, header = document_of(window), room_of(window).sheet.header
    document._store._copies.fault = Reason("store.full")
    document.refresh()
    for label in (header.told, backups.fault):
        assert "No copy of the log could be made today: the disk is full." in label.text()
    assert backups.fault.isVisible()
    header.tell("Logged.")
    header._quiet.timeout.emit()
    assert "disk is full" in header.told.text(), "it stands there until there is a copy"
    document._store._copies.fault = None
    document.refresh()
    assert header.told.text() == ""
    assert not backups.fault.isVisible()


def test_every_button_is_large_and_none_is_pressed_by_enter(backups: BackupsWindow):
    yesterdays(backups)
    click(backups.restore)
    buttons = [button for button in backups.findChildren(QPushButton) if button.isVisible()]
    assert len(buttons) == 6
    for button in buttons:
        assert button.height() >= 32, button.text()
        assert not button.autoDefault()


def test_the_window_goes_with_the_room(backups: BackupsWindow, window: MainWindow):
    window.close()
    assert not backups.isVisible()


def damage(log: Path) -> None:
    content = bytearray(log.read_bytes())
    content[4096 : 3 * 4096] = os.urandom(2 * 4096)
    log.write_bytes(bytes(content))


def test_a_damaged_log_is_replaced_by_its_copy_on_the_second_word(window: MainWindow, log: Path, qtbot):
    folder = document_of(window).backups.folder
    for copy in sorted(folder.iterdir())[1:]:
        copy.unlink()  # that of today, from before the room was filled
    left(window)
    damage(log)
    again = opened(log, qtbot)
    page = again.centralWidget()
    assert isinstance(page, NoticePage)
    assert page.restore.isVisible()
    assert not page.sure.isVisible()
    click(page.restore)
    assert "3\u00a0systems" in page.what_then.text()
    assert "lost" in page.what_then.text()
    click(page.sure)
    assert isinstance(again.centralWidget(), Room)
    assert document_of(again).value(document_of(again).records("system")[0], "name") == Typed("North frag bay")
    assert any("damaged" in path.name for path in folder.iterdir())


def test_a_damaged_log_without_a_copy_offers_none(window: MainWindow, log: Path, qtbot):
    folder = document_of(window).backups.folder
    left(window)
    shutil.rmtree(folder)
    damage(log)
    page = opened(log, qtbot).centralWidget()
    assert isinstance(page, NoticePage)
    assert not page.restore.isVisible()


def test_a_copy_that_goes_before_the_second_word_says_so(window: MainWindow, log: Path, qtbot):
    folder = document_of(window).backups.folder
    left(window)
    damage(log)
    again = opened(log, qtbot)
    click(again.centralWidget().restore)
    shutil.rmtree(folder)
    click(again.centralWidget().sure)
    page = again.centralWidget()
    assert isinstance(page, NoticePage)
    assert "no longer" in page.sentence.text()
