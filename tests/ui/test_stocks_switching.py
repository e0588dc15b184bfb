"""Nothing typed on the Stocks sheet is lost or goes elsewhere: other sheets, jugs, batches, undo, an empty shelf."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from evenwater.engine.quantities import Typed
from evenwater.ui.main_window import MainWindow
from tests.ui.stocks_making import (  # fmt: skip
    ALT,
    ASH,
    CALCIUM_JUG,
    CONTROL,
    click,
    click_into,
    click_row,
    document_of,
    jug_named,
    label_can_be_made,
    new_batch,
    press,
    settled,
    show_jug,
    stocks_of,
    tab_to,
    to_sheet,
    typed_in,
    write,
)
from tests.ui.window_making import opened, reckoned, room_of, sheet_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def demo(qtbot) -> MainWindow:
    return opened(None, qtbot, demo=True)


def test_in_the_middle_of_a_number_one_can_go_anywhere(demo: MainWindow, qtbot):
    room, document = room_of(demo), document_of(demo)
    stocks = show_jug(demo, ASH, qtbot)
    first = stocks.records.batch

    click_into(stocks.form.fields["batch.dissolved"])
    write("10")
    to_sheet("Correct")
    assert room.sheet.isVisible()
    assert document.value(first, "dissolved") == Typed("10", "g")
    stocks_of(demo, qtbot)
    assert stocks.form.fields["batch.dissolved"].focusProxy().text() == "10"

    click_into(stocks.form.fields["batch.dissolved"])
    write("111")
    click_row(room.jugs.list, room.jugs.list.model().stringList().index(CALCIUM_JUG))
    settled(stocks, qtbot)
    assert document.value(first, "dissolved") == Typed("111", "g")
    assert typed_in(stocks, "dissolved") == Typed("147", "g"), "the other jug has its own number"
    assert stocks.form.fields["batch.dissolved"].focusProxy().text() == "147"

    show_jug(demo, ASH, qtbot)
    click_into(stocks.form.fields["batch.mixed_by"])
    write("N.")
    click_row(stocks.batches, 1)
    settled(stocks, qtbot)
    second = stocks.records.batch
    assert second != first
    assert document.value(first, "mixed_by") == Typed("N.")
    assert typed_in(stocks, "dissolved") == Typed("100", "g")
    assert document.value(second, "mixed_by") == Typed("M. T.")


def test_a_unit_typed_with_the_number_follows_to_the_right_batch(demo: MainWindow, qtbot):
    document = document_of(demo)
    stocks = show_jug(demo, ASH, qtbot)
    first = stocks.records.batch
    click_into(stocks.form.fields["batch.dissolved"])
    write("4 oz")
    click_row(stocks.batches, 1)
    settled(stocks, qtbot)
    assert document.value(first, "dissolved") == Typed("4 oz", "g", "oz")
    assert typed_in(stocks, "dissolved") == Typed("100", "g")


def test_the_batch_being_written_is_still_there_on_coming_back(demo: MainWindow, qtbot):
    stocks = new_batch(demo, ASH, qtbot)
    written = stocks.records.batch
    assert written != stocks.records.in_use()
    type_into(stocks, "batch.dissolved", "150")
    to_sheet("Correct")
    stocks_of(demo, qtbot)
    assert stocks.records.batch == written
    assert stocks.batches.currentIndex().row() == 0
    type_into(stocks, "batch.dissolved", "151")
    assert document_of(demo).value(written, "dissolved") == Typed("151", "g")
    show_jug(demo, CALCIUM_JUG, qtbot)
    show_jug(demo, ASH, qtbot)
    assert stocks.records.batch == stocks.records.in_use(), "a jug that is taken up anew shows what is in it"


def test_a_new_batch_is_like_the_one_shown_but_for_its_dates(demo: MainWindow, qtbot):
    document = document_of(demo)
    stocks = show_jug(demo, "Magnesium, tall jug", qtbot)
    before = dict(stocks.records.values())
    press(Qt.Key.Key_B, ALT)
    qtbot.waitUntil(lambda: len(document.batches(stocks.records.stock)) == 2)
    settled(stocks, qtbot)
    after = dict(stocks.records.values())
    assert QApplication.focusWidget() is stocks.form.fields["batch.dissolved"].focusProxy()
    assert before.pop("in_use_from").text
    assert before.pop("use_by").text
    assert "use_by" not in after
    assert before.pop("mixed_on") != after.pop("mixed_on")
    assert after == before
    stocks.header.undo.click()
    settled(stocks, qtbot)
    assert len(document.batches(stocks.records.stock)) == 1, "one step"


def test_a_removed_batch_comes_back(demo: MainWindow, qtbot):
    document = document_of(demo)
    stocks = show_jug(demo, ASH, qtbot)
    first, values = stocks.records.batch, dict(stocks.records.values())
    click(stocks.form.remove)
    settled(stocks, qtbot)
    assert document.batch_in_use(stocks.records.stock) != first
    assert stocks.batches.model().rowCount() == 1
    press(Qt.Key.Key_Z, CONTROL)
    settled(stocks, qtbot)
    assert dict(document.values(first)) == values
    assert document.batch_in_use(stocks.records.stock) == first


def test_undo_shows_the_batch_that_it_changes(demo: MainWindow, qtbot):
    stocks = show_jug(demo, ASH, qtbot)
    click_row(stocks.batches, 1)
    settled(stocks, qtbot)
    changed = stocks.records.batch
    type_into(stocks, "batch.mixed_by", "X. Y.")
    click_row(stocks.batches, 0)
    settled(stocks, qtbot)
    assert stocks.records.batch != changed
    press(Qt.Key.Key_Z, CONTROL)
    settled(stocks, qtbot)
    assert stocks.records.batch == changed
    assert typed_in(stocks, "mixed_by") == Typed("M. T.")


def test_undo_goes_to_the_sheet_where_something_changes(demo: MainWindow, qtbot):
    room, sheet = room_of(demo), sheet_of(demo)
    stocks = show_jug(demo, "Nitrate, brown bottle", qtbot)
    type_into(stocks, "batch.mixed_by", "X. Y.")
    to_sheet("Correct")
    reckoned(sheet, qtbot)
    press(Qt.Key.Key_Z, CONTROL)
    settled(stocks, qtbot)
    assert stocks.isVisible(), "the correction that was shown does not use that jug"
    assert stocks.header.name.text() == "Nitrate, brown bottle"
    assert room.sheets.currentIndex().data() == "Stocks"
    to_sheet("Correct")
    type_into(sheet, "additive.dissolved", "107")
    press(Qt.Key.Key_Z, CONTROL)
    assert sheet.isVisible(), "it is to be seen there as well"
    assert sheet.form.fields["additive.dissolved"].typed() == Typed("106", "g")


def test_an_edit_on_one_sheet_stands_on_the_other(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    reckoned(sheet, qtbot)
    before = float(sheet.answer.view.figure)
    stocks = show_jug(demo, ASH, qtbot)
    type_into(stocks, "batch.dissolved", "53")
    to_sheet("Correct")
    reckoned(sheet, qtbot)
    assert sheet.form.fields["additive.dissolved"].typed() == Typed("53", "g")
    assert float(sheet.answer.view.figure) == pytest.approx(2.0 * before, abs=0.2)


def test_an_empty_shelf_can_be_undone_and_shows_nothing_of_what_was(demo: MainWindow, qtbot):
    room, document = room_of(demo), document_of(demo)
    stocks = stocks_of(demo, qtbot)
    before = room.jugs.list.model().stringList()
    for _ in before:
        click(room.jugs.remove)
    settled(stocks, qtbot)
    assert (document.records("stock"), document.records("batch")) == ((), ())
    assert not room.jugs.remove.isEnabled()
    assert stocks.header.name.text() == "No jug yet"
    assert stocks.answer.view.state == "empty"
    assert stocks.batches.model().rowCount() == 0
    assert not label_can_be_made(stocks)
    assert not stocks.form.fields["stock.name"].isEnabled()
    press(Qt.Key.Key_Z, CONTROL)
    settled(stocks, qtbot)
    assert room.jugs.list.model().stringList() == [before[-1]]
    assert stocks.form.fields["stock.name"].isEnabled()
    assert stocks.answer.view.state == "answered"


def test_without_a_system_undo_is_still_at_hand(demo: MainWindow, qtbot):
    room = room_of(demo)
    for _ in range(3):
        click(room.systems.remove)
    assert room.sheet.header.undo.isEnabled()
    press(Qt.Key.Key_Z, CONTROL)
    assert len(document_of(demo).records("system")) == 1


def test_a_renamed_jug_is_renamed_everywhere(demo: MainWindow, qtbot):
    stocks = show_jug(demo, ASH, qtbot)
    tab_to(stocks.form.fields["stock.name"].focusProxy())
    write("Ash, by the window")
    assert stocks.header.name.text() == "Ash, by the window"
    assert jug_named(demo, "Ash, by the window") == stocks.records.stock
    assert stocks.label_actions.label.name == "Ash, by the window"
    to_sheet("Correct")
    sheet = sheet_of(demo)
    assert sheet.form.fields["stock"].combo.currentText() == "Ash, by the window"
