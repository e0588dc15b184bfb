"""Works in the Jugs sheet of the real window as a keeper does: keys that go where the focus is, and the mouse."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from evenwater.engine.quantities import Typed
from evenwater.ui.jugs_sheet import JugsSheet
from evenwater.ui.main_window import MainWindow
from tests.ui.stocks_making import document_of, jug_named, to_sheet
from tests.ui.window_making import room_of

CALCIUM, NITRATE, ASH = "Calcium, clear jug", "Nitrate, brown bottle", "Soda ash, white jug"


def jugs_of(window: MainWindow, qtbot, name: str = "") -> JugsSheet:
    """Go to the Jugs sheet by key, to one of its jugs, and wait until everything is reckoned."""
    to_sheet("Jugs")
    sheet = room_of(window).levels
    assert sheet.isVisible()
    if name:
        room_of(window).jugs.choose(jug_named(window, name))
    looked(sheet, qtbot)
    return sheet


def looked(sheet: JugsSheet, qtbot) -> None:
    """Wait until what the sheet shows is all."""
    qtbot.waitUntil(lambda: not sheet.waiting(), timeout=8000)


def line_of(sheet: JugsSheet, name: str) -> QLineEdit:
    """Return the line of a field of the level that is being noted."""
    field = sheet.page.form.fields[name]
    assert field.isVisible(), f"{name} is not shown"
    line = field.focusProxy()
    assert isinstance(line, QLineEdit)
    return line


def put(sheet: JugsSheet, name: str, text: str) -> None:
    """Type over what stands in a field, key by key, and go on with Tab."""
    line = line_of(sheet, name)
    line.setFocus(Qt.FocusReason.TabFocusReason)
    line.selectAll()
    QTest.keyClicks(line, text)
    QTest.keyClick(QApplication.focusWidget() or line, Qt.Key.Key_Tab)


def levels(window: MainWindow, name: str) -> list[dict[str, Typed]]:
    """Return what is kept of the levels of a jug, in the order in which they were noted."""
    document, stock = document_of(window), jug_named(window, name)
    return [dict(document.values(each)) for each in document.records("level") if each.startswith(f"{stock}:")]


def row_of(sheet: JugsSheet, name: str) -> int:
    """Return the row of a jug in the list."""
    return [row.name for row in sheet.list.jugs.rows].index(name)


def said_beside(sheet: JugsSheet, name: str) -> str:
    """Return the sentence beside a field of the level."""
    return sheet.page.form.fields[name].message.replace("\u00a0", " ")
