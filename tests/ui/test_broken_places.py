"""The window on broken files and in broken places: always a sentence and a window that goes on, and nothing is lost.

H15, H30. Common practice, no source: what a disk, another program or a stray hand can do to a log.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QPushButton

from evenwater.engine.quantities import Typed
from evenwater.session import Document
from evenwater.store import Store
from evenwater.ui.notice_page import NoticePage
from evenwater.ui.room import Room
from evenwater.ui.sheet_list import SHEETS
from evenwater.ui.welcome_page import WelcomePage
from tests.store.logged import reading
from tests.ui.stocks_making import click
from tests.ui.test_backups_window import document_of
from tests.ui.window_making import left, opened, room_of

pytestmark = pytest.mark.usefixtures("young_demo")


def _another(file: Path) -> None:
    with closing(sqlite3.connect(file)) as other:
        other.execute("CREATE TABLE record (id)")
        other.commit()


def _newer(file: Path) -> None:
    Store.open(file).close()
    with closing(sqlite3.connect(file)) as plain:
        plain.execute("PRAGMA user_version = 9999")


def _cut(file: Path) -> None:
    Store.open(file).close()
    file.write_bytes(file.read_bytes()[:9000])


BROKEN = {
    "random bytes": (lambda file: file.write_bytes(bytes(range(7, 250)) * 50), "not a log of Evenwater"),
    "nothing in it": (lambda file: file.write_bytes(b""), "damaged"),
    "truncated": (_cut, "damaged"),
    "another application's": (_another, "not a log of Evenwater"),
    "a newer version": (_newer, "newer Evenwater"),
    "a folder": (lambda file: file.mkdir(), "cannot be opened"),
    "a link to nowhere": (lambda file: file.symlink_to("none/none"), "cannot be opened"),
}


def _taken_away(file: Path) -> None:
    for part in file.parent.glob(f"{file.name}*"):
        part.rmdir() if part.is_dir() and not part.is_symlink() else part.unlink()


def test_on_every_broken_file_there_is_a_sentence_and_another_try(tmp_path: Path, qtbot):
    log = tmp_path / "log.sqlite"
    log.write_bytes(b"a shopping list")
    window = opened(log, qtbot)
    for name, (broken, sentence) in BROKEN.items():
        _taken_away(log)
        broken(log)
        before = log.read_bytes() if log.is_file() else b""
        page = window.centralWidget()
        assert isinstance(page, NoticePage), name
        again = page.findChild(QPushButton)
        assert again.isEnabled()
        click(again)
        page = window.centralWidget()
        assert isinstance(page, NoticePage), name
        assert sentence in page.sentence.text(), name
        assert "store." not in page.sentence.text()
        assert (log.read_bytes() if log.is_file() else b"") == before, name
    _taken_away(log)
    click(window.centralWidget().findChild(QPushButton))
    assert isinstance(window.centralWidget(), WelcomePage)
    left(window)


@contextmanager
def _locked(document: Document, log: Path) -> Iterator[None]:
    with closing(sqlite3.connect(log, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        yield


@contextmanager
def _full(document: Document, log: Path) -> Iterator[None]:
    database = document._store._database
    pages = database.pragma("page_count")
    database.pragma(f"max_page_count = {pages}")
    yield
    database.pragma("max_page_count = 1000000")


@contextmanager
def _read_only(document: Document, log: Path) -> Iterator[None]:
    # What SQLite says then is what it says of a folder that cannot be written to, which an administrator does not have.
    connection = document._store._database.connection
    connection.execute("PRAGMA query_only = 1")
    yield
    connection.execute("PRAGMA query_only = 0")


@contextmanager
def _folder_gone(document: Document, log: Path) -> Iterator[None]:
    log.parent.rename(log.parent.with_name("elsewhere"))
    yield
    log.parent.with_name("elsewhere").rename(log.parent)


@contextmanager
def _replaced(document: Document, log: Path) -> Iterator[None]:
    aside = log.rename(log.with_name("aside"))
    log.write_bytes(b"another file")
    yield
    aside.replace(log)


PLACES = (
    (_locked, "busy"),
    (_full, "full"),
    (_read_only, "read-only"),
    (_folder_gone, "no longer at its place"),
    (_replaced, "no longer at its place"),
)


def test_what_is_typed_in_a_broken_place_is_kept_and_saved_when_it_is_whole(tmp_path: Path, qtbot):
    log = tmp_path / "room" / "log.sqlite"
    window = opened(log, qtbot)
    window.centralWidget().demo.click()
    document, room = document_of(window), room_of(window)
    system = document.records("system")[0]
    for number, (broken, sentence) in enumerate(PLACES):
        long = f"{number} " + "x" * 30_000
        with broken(document, log):
            document.edit(system, "note", Typed(long))
            assert document.unsaved() == 1
            assert sentence in room.sheet.header.told.text().replace("\u00a0", " "), sentence
            assert document.value(system, "note") == Typed(long)
            assert not window.close(), "what is not saved would be lost"
            assert window.isVisible()
        assert document.save()
        assert document.unsaved() == 0
        with Store.open(log) as other:
            assert other.values(system)["note"] == Typed(long)
    left(window)


def test_a_window_that_cannot_save_is_closed_only_by_a_choice_that_says_what_is_lost(tmp_path: Path, qtbot):
    log = tmp_path / "room" / "log.sqlite"
    window = opened(log, qtbot)
    window.centralWidget().demo.click()
    document = document_of(window)
    system = document.records("system")[0]
    with _folder_gone(document, log):
        document.edit(system, "note", Typed("lost or not"))
        assert not window.close()
        question = window.question
        assert question.isVisible()
        assert question.text().replace("\u00a0", " ") == "1 edit could not be saved."
        QTest.keyClick(question, Qt.Key.Key_Escape)
        assert not question.isVisible()
        assert window.isVisible(), "the way out without a choice loses nothing"
        assert document.unsaved() == 1
        assert not window.close()
        assert question.lose.text().replace("\u00a0", " ") == "&Close and lose 1 edit"
        QTest.mouseClick(question.lose, Qt.MouseButton.LeftButton)
        assert not window.isVisible()
    with Store.open(log) as other:
        assert "note" not in other.values(system)
    left(window)


def test_a_log_with_rubbish_in_its_rows_opens_and_says_so(tmp_path: Path, qtbot):
    log = tmp_path / "log.sqlite"
    window = opened(log, qtbot)
    window.centralWidget().demo.click()
    document = document_of(window)
    system = document.records("system")[0]
    assert document.log.log([reading("r", system=system)])
    left(window)
    with closing(sqlite3.connect(log)) as plain:
        for (name,) in plain.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            plain.execute(f"DROP TRIGGER {name}")
        plain.execute("UPDATE entry SET fields = 'rubbish' WHERE id = 'r'")
        plain.execute("UPDATE journal SET at_utc = 'rubbish'")
        plain.commit()
    window = opened(log, qtbot)
    room = window.centralWidget()
    assert isinstance(room, Room)
    told = []
    document_of(window).saveFailed.connect(told.append)
    for name in ("Rounds", "Log", "Correct"):
        room.sheets.choose(SHEETS.index(name))
    assert {reason.code for reason in told} == {"store.unreadable"}
    assert any("damaged and cannot be read" in sheet.header.told.text() for sheet in room.made)
    left(window)
