"""An import that takes its time: the windows live on, Stop and closing leave nothing behind."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from evenwater.ui.import_page import ImportPage
from evenwater.ui.progress import DroppedError, Ticket
from tests.ui.import_making import CLEAR, Desk, desk
from tests.ui.stocks_making import click

MANY = 20_000


@pytest.fixture
def at(qtbot, tmp_path: Path) -> Iterator[Desk]:
    yield from desk(qtbot, tmp_path)


def lines(number: int) -> list[str]:
    start = datetime(2010, 1, 1)  # noqa: DTZ001  (a clock on a wall)
    rows = [
        f"{start + timedelta(hours=5 * at):%Y-%m-%d %H:%M},{7 + at % 200 / 100:.2f},dKH kit" for at in range(number)
    ]
    return ["Date,KH (dKH),Kit", *rows]


class During(QObject):
    """Does something once while an import runs, and counts how often the window had its turn."""

    def __init__(self, page: ImportPage, act) -> None:
        super().__init__(page)
        self._act = act
        self.turns = 0
        self.seen: list[int] = []
        self.words: set[str] = set()
        self._page = page
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._turn)
        self._timer.start()
        page.run.came.connect(self.seen.append)

    def _turn(self) -> None:
        if self._page.run.running:
            self.turns += 1
            self.words.add(self._page.progress.words.text())
            if self.turns == 3:
                self._act()


def test_a_large_file_is_read_and_imported_while_the_window_lives(at: Desk, qtbot) -> None:
    at.sheet.transfer._import(at.file(*lines(MANY)))
    page = at.sheet.transfer.page
    assert page is not None
    page.progress._later.setInterval(0)
    told: list[Ticket] = []
    page.work.came.connect(told.append)
    assert page.work.busy(), "the window was given back before the file was read"
    assert not page.importing.isEnabled()
    at.looked(page)
    assert told, "nothing was said while the file was read"
    assert page.counts.text() == f"{MANY} readings in {MANY} rows."
    alive = []

    def look() -> None:
        alive.append(
            (at.window.isEnabled(), page.isEnabled(), page.progress.stop.isEnabled(), page.importing.isEnabled())
        )

    during = During(page, look)
    click(page.importing)
    assert during.turns > 5
    assert during.seen == sorted(during.seen)
    assert during.seen[-1] == MANY
    # The room behind cannot be changed, or asked, while the log is half written; the way out is open.
    assert alive == [(False, True, True, False)]
    assert f"{during.seen[0]} of {MANY} readings are imported." in during.words
    assert "The readings are being written to the disk." in during.words
    assert at.window.isEnabled()
    assert not page.progress.isVisible()
    assert page.counts.text() == f"Imported {MANY} readings. Undo takes them out again."
    assert at.document.log.count(at.system, "reading") == MANY
    click(at.sheet.header.undo)
    assert at.document.log.count(at.system, "reading") == 0


def test_stop_leaves_nothing(at: Desk) -> None:
    page = at.opened(*lines(6000))
    page.progress._later.setInterval(0)
    at.document.log.logChanged.connect(pytest.fail)

    def stop() -> None:
        assert page.progress.stop.isVisible()
        click(page.progress.stop)

    During(page, stop)
    click(page.importing)
    assert page.counts.text() == "Stopped. Nothing was imported."
    assert at.document.log.count(at.system, "reading") == 0
    assert at.document.undo_text().code == "add", "there is nothing of it to be undone"
    assert at.window.isEnabled()
    assert at.sheet.header.told.text() == ""
    # It can be begun again.
    at.document.log.logChanged.disconnect(pytest.fail)
    assert page.importing.isEnabled()
    click(page.importing)
    assert at.document.log.count(at.system, "reading") == 6000


def test_closing_the_window_of_the_import_stops_it(at: Desk, qtbot) -> None:
    page = at.opened(*lines(6000))
    During(page, page.close)
    click(page.importing)
    qtbot.waitUntil(lambda: not page.isVisible())
    assert at.document.log.count(at.system, "reading") == 0
    assert at.window.isVisible()
    assert at.window.isEnabled()


def test_closing_the_room_stops_it_and_then_closes(at: Desk, qtbot) -> None:
    page = at.opened(*lines(6000))
    closed = []
    During(page, lambda: closed.append(at.window.close()))
    click(page.importing)
    assert closed == [False], "the log was closed under the import"
    qtbot.waitUntil(lambda: not at.window.isVisible())
    assert not page.isVisible()


def test_closing_the_room_closes_the_import(at: Desk) -> None:
    page = at.opened(*CLEAR)
    assert at.window.close()
    assert not page.isVisible()


def test_closing_while_a_file_is_read_drops_it(at: Desk, qtbot) -> None:
    at.sheet.transfer._import(at.file(*lines(MANY)))
    page = at.sheet.transfer.page
    assert page is not None
    ticket = page.work._ticket
    page.close()
    assert ticket.dropped
    assert not page.work.busy()
    qtbot.waitUntil(lambda: not page.work._work.busy(), timeout=20_000)
    assert not page.isVisible()
    assert page._looked is None


def test_work_that_nobody_wants_ends_at_its_next_step() -> None:
    ticket = Ticket(100)
    ticket.step(10)
    assert ticket.done == 10
    ticket.dropped = True
    with pytest.raises(DroppedError):
        ticket.step(20)


def test_what_is_over_soon_shows_no_bar(at: Desk, qtbot) -> None:
    page = at.opened(*CLEAR)
    click(page.importing)
    assert not page.progress.isVisible()
    assert not page.progress._later.isActive()


def test_a_second_press_does_nothing_while_it_runs(at: Desk) -> None:
    page = at.opened(*lines(6000))
    outcomes = []

    def again() -> None:
        page._import()
        page.begin(at.system, at.file(*CLEAR, name="other.csv"))
        outcomes.append(page.file.text())
        assert not page.points.isEnabled()
        QTest.keyClick(page, Qt.Key.Key_I, Qt.KeyboardModifier.AltModifier)

    During(page, again)
    click(page.importing)
    assert outcomes == ["readings.csv"]
    assert at.document.log.count(at.system, "reading") == 6000
    assert QApplication.focusWidget() is page.leave
