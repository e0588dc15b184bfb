"""The finder: opened by key and by button, worked without leaving its line, closed by Escape; it does what is chosen."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from evenwater.screens import finder
from evenwater.ui.finder_panel import FinderPanel
from evenwater.ui.room import Room
from tests.access.rooms import demo, press, settled

pytestmark = pytest.mark.usefixtures("young_demo")


def open_by_key(room: Room) -> FinderPanel:
    press(Qt.Key.Key_K, Qt.KeyboardModifier.ControlModifier)
    panel = room.keys.finding.panel
    assert panel.isVisible()
    assert QApplication.focusWidget() is panel.line
    return panel


def found(panel: FinderPanel, typed: str) -> list[str]:
    """Type into the finder, and return what it lists."""
    panel.line.selectAll()
    QTest.keyClicks(panel.line, typed)
    return [doing.words for doing in panel.found()]


def take(room: Room, typed: str) -> None:
    """Do the first of what has these words."""
    assert found(open_by_key(room), typed), typed
    press(Qt.Key.Key_Return)
    settled()


def test_the_finder_is_worked_from_its_line_or_with_one_click(qtbot):
    _, room = demo(qtbot)
    line = room.sheet.form.fields["change.measured"].line
    line.setFocus()
    panel = open_by_key(room)
    assert len(panel.found()) == finder.MOST, "at first everything is listed"
    press(Qt.Key.Key_Escape)
    assert not panel.isVisible()
    assert QApplication.focusWidget() is line, "Escape gives the focus back"
    _by_arrows(room)
    _by_mouse(room)
    _what_cannot_be_done(room)


def _by_arrows(room: Room) -> None:
    panel = open_by_key(room)
    assert len(found(panel, "jug")) > 2
    rows = []
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Up):
        press(key)
        rows.append(panel.list.currentIndex().row())
    assert rows == [1, 2, 1]
    assert QApplication.focusWidget() is panel.line, "typing goes on"
    assert found(panel, "zzz") == []
    press(Qt.Key.Key_Return)
    assert panel.isVisible(), "where nothing was found, Enter does nothing"
    room.sheets.setFocus()
    assert not panel.isVisible(), "when somebody goes on elsewhere, the slip goes"


def _by_mouse(room: Room) -> None:
    QTest.mouseClick(room.sheet.header.finder, Qt.MouseButton.LeftButton)
    panel = room.keys.finding.panel
    assert found(panel, "kalk") == ["Stocks", "Limewater"]
    place = panel.list.visualRect(panel.list.model().index(0, 0)).center()
    QTest.mouseClick(panel.list.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert room.shown() == "Stocks"
    settled()


def _what_cannot_be_done(room: Room) -> None:
    panel = open_by_key(room)
    assert found(panel, "put in the jug") == ["Put it in the jug"]
    assert panel.found()[0].why_not == "It is in the jug already"
    before = room._document.undo_text()
    press(Qt.Key.Key_Return)
    assert panel.isVisible()
    assert room._document.undo_text() == before
    press(Qt.Key.Key_Escape)


def test_the_finder_leads_to_records_values_sheets_and_actions(qtbot):
    _, room = demo(qtbot)
    take(room, "anemone table")
    assert (room.shown(), dict(room.systems.named())[room.systems.current()]) == ("Correct", "Anemone table")
    take(room, "correct calcium")
    assert (room.shown(), room.sheet.records.parameter) == ("Correct", "calcium")
    take(room, "rack pump")
    assert (room.shown(), dict(room.pumps_pane.named())[room.pumps_pane.current()]) == ("Pumps", "Rack pump")
    take(room, "stocks sheet")
    assert room.shown() == "Stocks"
    take(room, "white jug")
    assert room.shown() == "Stocks", "a jug is chosen on the sheet that is about jugs already"
    assert "white jug" in dict(room.jugs.named())[room.jugs.current()]

    batches = len(room._document.records("batch"))
    assert next(d.shortcut for d in open_by_key(room).found() if d.words == "New batch") == "Alt+B"
    press(Qt.Key.Key_Escape)
    take(room, "batch new")
    assert len(room._document.records("batch")) == batches + 1, "an action of the sheet that is shown is done"
    take(room, "new pump")
    assert room.shown() == "Correct"
    assert QApplication.focusWidget() is room.sheet.form.new_pump, "on another sheet, what is pressed is seen first"
