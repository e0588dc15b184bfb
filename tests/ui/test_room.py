"""The room around the sheets: choosing them, folding the lists away, where the focus goes."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton

from evenwater.engine.quantities import Typed
from evenwater.ui.main_window import MainWindow
from evenwater.ui.room import Room
from evenwater.ui.sheet_list import SHEETS
from tests.ui.stocks_making import click, click_row, press, settled, stocks_of, tab_to, to_sheet
from tests.ui.window_making import opened, room_of

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def demo(qtbot) -> MainWindow:
    return opened(None, qtbot, demo=True)


def test_a_sheet_is_chosen_by_mouse_by_its_number_and_with_the_arrows(demo: MainWindow, qtbot):
    room = room_of(demo)
    assert tuple(room.sheets.model().stringList()) == SHEETS

    def shown() -> tuple[bool, bool, bool, bool]:
        return room.sheet.isVisible(), room.systems.isVisible(), room.stocks.isVisible(), room.jugs.isVisible()

    correct, stocks = (True, True, False, False), (False, False, True, True)
    assert shown() == correct, "the room opens where the main job is done"
    to_sheet("Stocks")
    assert shown() == stocks
    to_sheet("Correct")
    assert shown() == correct
    click_row(room.sheets, SHEETS.index("Stocks"))
    assert shown() == stocks
    tab_to(room.sheets)
    for _ in range(SHEETS.index("Stocks") - SHEETS.index("Correct")):
        press(Qt.Key.Key_Up)
    assert shown() == correct
    assert room.sheets.height() >= len(SHEETS) * room.sheets.sizeHintForRow(0), "no name of a sheet is hidden"


def test_a_key_for_the_other_sheet_leaves_the_focus_where_no_stray_key_does_harm(demo: MainWindow, qtbot):
    room = room_of(demo)
    batches = room._document.records("batch")
    stocks = stocks_of(demo, qtbot)
    assert not isinstance(QApplication.focusWidget(), QPushButton)
    press(Qt.Key.Key_Space)
    press(Qt.Key.Key_Return)
    settled(stocks, qtbot)
    assert room._document.records("batch") == batches


def test_the_lists_fold_away_for_both_sheets_together(demo: MainWindow, qtbot):
    room = room_of(demo)
    demo.resize(1000, 700)
    qtbot.waitUntil(lambda: not room.side.isVisible())
    stocks = stocks_of(demo, qtbot)
    click(stocks.header.systems)
    assert room.side.isVisible()
    assert room.jugs.isVisible()
    to_sheet("Correct")
    assert room.side.isVisible()
    click(room.sheet.header.systems)
    assert not room.side.isVisible(), "one press folds them away again"


def test_every_sheet_has_its_key_no_two_buttons_of_one_letter_and_room_for_its_name(demo: MainWindow, qtbot):
    room = room_of(demo)
    demo.resize(1366, 768)
    for name in SHEETS:
        to_sheet(name)
        QApplication.processEvents()
        sheet = room._shown.currentWidget()
        assert sheet is room.by_name(name), f"the key of {name} shows it"
        assert sheet.isVisible()
        letters = [b.shortcut().toString() for b in _pressed(room) if not b.shortcut().isEmpty()]
        assert len(letters) == len(set(letters)), (name, sorted(letters))
    rows = room.sheets.model().rowCount()
    last = room.sheets.visualRect(room.sheets.model().index(rows - 1, 0))
    assert last.height() >= 32, "as tall as a finger"
    assert last.bottom() < room.sheets.viewport().height()
    assert room.systems.isVisible()
    assert room.copies.visibleRegion().boundingRect().height() == room.copies.height()


def test_undo_shows_the_sheet_of_what_it_takes_back(demo: MainWindow, qtbot):
    room = room_of(demo)
    document, system = room._document, room.systems.current()
    food = next(record for record in document.records("food") if record.startswith(f"{system}:"))
    for record, field, sheet in (
        (f"{system}:water", "days", "Exchange"),
        (food, "name", "Foods"),
        (f"{system}:recovery", "target", "Recovery"),
        (f"{system}:alkalinity", "target", "Correct"),
        (f"{system}:0a1b2c3d", "", "Foods"),
    ):
        to_sheet("Stocks")
        if field:
            document.edit(record, field, Typed("12"))
        else:
            document.add_record("food", {"name": Typed("Algae")}, record_id=record)
        click(room.stocks.header.undo)
        QApplication.processEvents()
        assert room._shown.currentWidget() is room.by_name(sheet), record
        assert room.systems.current() == system


def _pressed(room: Room) -> list[QPushButton]:
    """Return the buttons that a letter could press while one sheet is shown, with those of its list folded away or not."""
    buttons = [b for b in room.findChildren(QPushButton) if b.isVisible() or room.side.isAncestorOf(b)]
    return [b for b in buttons if not room.side.isAncestorOf(b) or room._panes.currentWidget().isAncestorOf(b)]


@pytest.mark.parametrize("sheet", ["sheet", "stocks"])
def test_no_two_buttons_of_a_sheet_have_one_letter(demo: MainWindow, qtbot, sheet: str):
    room = room_of(demo)
    if sheet == "stocks":
        stocks_of(demo, qtbot)
        room.stocks.take.show()
    demo.resize(1000, 700)
    qtbot.waitUntil(lambda: not room.side.isVisible())
    letters = [b.shortcut().toString() for b in _pressed(room) if not b.shortcut().isEmpty()]
    assert len(letters) >= 6
    assert len(letters) == len(set(letters)), sorted(letters)
