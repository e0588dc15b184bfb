"""A Log sheet on a log of its own, with spreadsheets to read into it and to write from it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from evenwater.engine.quantities import Typed
from evenwater.session import Document, Entry, open_log
from evenwater.ui.import_page import ImportPage
from evenwater.ui.log_sheet import LogSheet
from evenwater.ui.main_window import MainWindow
from tests.ui.stocks_making import document_of, to_sheet
from tests.ui.window_making import left, opened, room_of

NAME = "Reef & <b>bold</b>"
CLEAR = (
    "Date,KH (dKH),Ca (mg/L),Kit,Who,Note",
    "2025-11-20 08:00,8.3,420,drop kit,A. B.,bright",
    "2025-11-21 08:00,8.2,,drop kit,A. B.,",
    "2025-11-22 08:00,8.05,418,photometer,K.,",
)
# Day and month, decimal mark and the unit of nitrate can each be read in two ways.
UNCLEAR = (
    "Datum;KH (dKH);NO3 (mg/l);Sr (mg/l)",
    "03/04/2025 08:10;8;4;8,1",
    "04/04/2025 08:05;8.05;5;8,25",
)


@dataclass
class Desk:
    """The sheet in its window, the log below it, and a folder for spreadsheets."""

    window: MainWindow
    sheet: LogSheet
    document: Document
    system: str
    folder: Path
    qtbot: object
    size: tuple[int, int] = (1240, 720)

    def file(self, *lines: str, name: str = "readings.csv", data: bytes | None = None) -> Path:
        """Write a spreadsheet."""
        path = self.folder / name
        path.write_bytes("".join(f"{line}\r\n" for line in lines).encode() if data is None else data)
        return path

    def begin(self, file: Path) -> ImportPage:
        """Choose a file to be imported, and wait until it was looked at."""
        self.sheet.transfer._import(file)
        page = self.sheet.transfer.page
        assert page is not None
        self.looked(page)
        return page

    def opened(self, *lines: str) -> ImportPage:
        """Write a spreadsheet, and choose it to be imported."""
        return self.begin(self.file(*lines))

    def looked(self, page: ImportPage) -> None:
        """Wait until the page shows what was chosen."""
        self.qtbot.waitUntil(lambda: not page.work.busy(), timeout=20_000)  # type: ignore[attr-defined]

    def readings(self, parameter: str = "") -> list[Entry]:
        """Return the readings of the log."""
        return self.document.log.entries(self.system, ("reading",), parameter)

    def typed(self, parameter: str = "") -> list[str]:
        """Return the readings of the log as they were typed."""
        return [f"{e.fields['value'].text} {e.fields['value'].unit}" for e in self.readings(parameter)]


def desk(qtbot, folder: Path, name: str = NAME) -> Iterator[Desk]:
    """Open the window on a log with one system in it, at the Log sheet."""
    log = folder / "log.evenwater"
    document = open_log(log)
    assert isinstance(document, Document)
    system = document.add_record("system", {"name": Typed(name), "net_volume": Typed("340", "L")})
    document.close()
    window = opened(log, qtbot)
    to_sheet("Log")
    yield Desk(window, room_of(window).log, document_of(window), system, folder, qtbot)
    left(window)


def choose_by_key(combo: QWidget, words: str) -> None:
    """Choose an entry of a list with the keys: open, move, Enter."""
    assert QApplication.focusWidget() is combo
    QTest.keyClick(combo, Qt.Key.Key_Space)
    view = combo.view()  # type: ignore[attr-defined]
    target = combo.findText(words)  # type: ignore[attr-defined]
    assert target >= 0, words
    while view.currentIndex().row() < target:
        QTest.keyClick(view, Qt.Key.Key_Down)
    QTest.keyClick(view, Qt.Key.Key_Return)
    combo.window().activateWindow()


def rule(page: ImportPage, what: str, value: str) -> None:
    """Choose an option of a point."""
    combo = page.points.rows[what].choice.combo
    index = combo.findData(f"={value}")
    assert index >= 0, (what, value, combo.options())
    combo.setCurrentIndex(index)
    combo.activated.emit(index)
