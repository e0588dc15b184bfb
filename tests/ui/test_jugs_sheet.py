"""The Jugs sheet in the real window: all jugs at one glance, levels, refills, the jug check, going away."""

from __future__ import annotations

import json
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from evenwater.engine.quantities import Typed
from evenwater.screens.local_zone import present
from evenwater.session import Card
from evenwater.ui.main_window import MainWindow
from tests.ui.jugs_making import (
    ASH,
    CALCIUM,
    NITRATE,
    jugs_of,
    levels,
    line_of,
    looked,
    put,
    row_of,
    said_beside,
)
from tests.ui.log_making import furnished
from tests.ui.stocks_making import ALT, CONTROL, click, click_row, document_of, jug_named, press, tab_to, to_sheet
from tests.ui.window_making import left, opened, room_of

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def demo(qtbot) -> MainWindow:
    return opened(None, qtbot, demo=True)


# All jugs


def test_every_jug_stands_in_the_list_with_its_level_and_how_long_it_lasts(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot)
    document = document_of(demo)
    assert [row.stock_id for row in sheet.list.jugs.rows] == list(document.records("stock"))
    calcium = sheet.list.jugs.rows[row_of(sheet, CALCIUM)]
    assert calcium.contents.startswith("calcium CHLORide dihydrate, batch ")
    # 702 mL were read 0.3 days ago, and 81.6 mL go in a day.
    assert calcium.level.replace("\u00a0", " ") == "678 mL of 1 L"
    assert calcium.lasts.replace("\u00a0", " ") == "8 days"
    index = sheet.list.jugs.index(row_of(sheet, NITRATE))
    spoken = index.data(Qt.ItemDataRole.AccessibleTextRole)
    assert spoken.startswith("Nitrate, brown bottle. sodium NITRate, batch ")
    assert "too little delivered" in spoken


def test_a_click_in_the_list_shows_the_jug_and_the_shelf_goes_along(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot)
    click_row(sheet.list, row_of(sheet, NITRATE))
    looked(sheet, qtbot)
    assert room_of(demo).jugs.current() == jug_named(demo, NITRATE)
    assert sheet.header.name.text() == NITRATE
    assert sheet.page.view is not None
    assert sheet.page.view.contents.startswith("sodium NITRate")


def test_arrows_go_from_jug_to_jug(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, ASH)
    sheet.list.setFocus()
    press(Qt.Key.Key_Down)
    looked(sheet, qtbot)
    assert sheet.header.name.text() == "Labelled alkalinity bottle"
    assert QApplication.focusWidget() is sheet.list


def test_the_rounds_reckon_from_the_level_as_the_jugs_do(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, CALCIUM)
    put(sheet, "level", "200")
    click(sheet.page.form.note)
    looked(sheet, qtbot)
    to_sheet("Rounds")
    rounds = room_of(demo).rounds
    qtbot.waitUntil(lambda: not rounds.waiting(), timeout=8000)
    assert any(duty.place == CALCIUM and duty.urgency == "soon" for duty in rounds.duties)


# Levels


def test_a_level_by_keyboard_alone_with_undo_and_redo(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, ASH)
    tab_to(line_of(sheet, "level"))
    QTest.keyClicks(QApplication.focusWidget(), "0.65 L")
    press(Qt.Key.Key_Return)
    assert levels(demo, ASH) == [], "Enter ends the field and notes nothing"
    tab_to(line_of(sheet, "who"))
    QTest.keyClicks(QApplication.focusWidget(), "K. L.")
    press(Qt.Key.Key_N, ALT)
    qtbot.waitUntil(lambda: len(levels(demo, ASH)) == 1)
    looked(sheet, qtbot)
    (kept,) = levels(demo, ASH)
    assert kept["level"].text == "0.65 L"
    assert kept["who"] == Typed("K. L.")
    assert sheet.page.view.second.startswith("650\u00a0mL of 1\u00a0L in the jug.")
    assert line_of(sheet, "level").text() == ""
    press(Qt.Key.Key_Z, CONTROL)
    assert levels(demo, ASH) == []
    press(Qt.Key.Key_Z, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    assert levels(demo, ASH) == [kept]


def test_pressing_twice_notes_once(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, ASH)
    put(sheet, "level", "650")
    click(sheet.page.form.note)
    click(sheet.page.form.note)
    assert len(levels(demo, ASH)) == 1
    assert said_beside(sheet, "level") == "Read the level first, at eye height."


@pytest.mark.parametrize("text", ["full", "1,250", "-5", "5 gal"])
def test_what_cannot_be_taken_is_kept_and_said_and_nothing_is_noted(demo: MainWindow, qtbot, text: str):
    sheet = jugs_of(demo, qtbot, ASH)
    put(sheet, "level", text)
    click(sheet.page.form.note)
    assert levels(demo, ASH) == []
    assert line_of(sheet, "level").text() == text
    assert said_beside(sheet, "level")


def test_what_was_typed_for_one_jug_waits_there_and_goes_to_no_other(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, ASH)
    put(sheet, "level", "650")
    room_of(demo).jugs.choose(jug_named(demo, NITRATE))
    assert line_of(sheet, "level").text() == ""
    room_of(demo).jugs.choose(jug_named(demo, ASH))
    assert line_of(sheet, "level").text() == "650"


def test_a_level_more_than_the_jug_holds_is_refused_where_that_was_typed(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, ASH)
    holds = sheet.page.fields["holds"]
    holds.setFocus()
    QTest.keyClicks(holds.line, "2")
    press(Qt.Key.Key_Tab)
    assert document_of(demo).value(jug_named(demo, ASH), "holds") == Typed("2", "L")
    put(sheet, "level", "2500")
    click(sheet.page.form.note)
    assert levels(demo, ASH) == []
    assert "more than the jug holds" in said_beside(sheet, "level")


def test_a_level_is_taken_off_and_brought_back(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, NITRATE)
    before = levels(demo, NITRATE)
    assert not sheet.page.remove.isEnabled()
    click_row(sheet.page.levels, 0)
    click(sheet.page.remove)
    assert len(levels(demo, NITRATE)) == len(before) - 1
    click(sheet.header.undo)
    assert levels(demo, NITRATE) == before


def test_a_jug_takes_its_levels_along_and_brings_them_back(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, NITRATE)
    before = levels(demo, NITRATE)
    gone = jug_named(demo, NITRATE)
    click(room_of(demo).jugs.remove)
    assert not [each for each in document_of(demo).records("level") if each.startswith(gone)]
    click(sheet.header.undo)
    assert levels(demo, NITRATE) == before


def test_levels_and_the_date_of_return_survive_a_restart(tmp_path: Path, qtbot):
    log = furnished(tmp_path / "room.evenwater")
    window = opened(log, qtbot)
    sheet = jugs_of(window, qtbot, ASH)
    put(sheet, "level", "650")
    click(sheet.page.form.note)
    click(sheet.turn)
    QTest.keyClicks(sheet.away.until.line, "2999-01-01")
    kept = levels(window, ASH)
    left(window)
    window = opened(log, qtbot)
    sheet = jugs_of(window, qtbot, ASH)
    assert levels(window, ASH) == kept
    assert sheet.list.jugs.rows[row_of(sheet, ASH)].basis.startswith("read today")
    click(sheet.turn)
    assert sheet.away.until.line.text() == "2999-01-01"
    assert "more than a year away" in sheet.away.until.message


# Refills


def test_H23_a_refill_is_noted_only_after_the_question_about_the_line(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, ASH)
    form = sheet.page.form
    click(form.refill)
    assert form.asked.isVisible()
    assert form.asked.text() == "Is the line primed? Run the pump until liquid stands at the outlet."
    assert "holds 12.7" in form._takes.text().replace("\u00a0", " ")
    assert "Put the new batch in the jug on the Stocks sheet" in form._takes.text()
    assert not form.note.isVisible()
    put(sheet, "before", "120")
    put(sheet, "level", "1000")
    assert levels(demo, ASH) == []
    click(form.back)
    assert levels(demo, ASH) == []
    assert form.note.isVisible()
    click(form.refill)
    click(form.primed)
    (kept,) = levels(demo, ASH)
    assert (kept["refilled"], kept["primed"], kept["before"].text) == (Typed("yes"), Typed("yes"), "120")
    assert not sheet.page.primed.isVisible()
    assert not form.asked.isVisible()


def test_H23_a_refill_without_priming_asks_until_it_is_primed(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, ASH)
    press(Qt.Key.Key_R, ALT)
    qtbot.waitUntil(sheet.page.form.asked.isVisible)
    put(sheet, "level", "1000")
    press(Qt.Key.Key_Y, ALT)
    qtbot.waitUntil(lambda: len(levels(demo, ASH)) == 1)
    looked(sheet, qtbot)
    assert "primed" not in levels(demo, ASH)[0]
    assert any("not primed" in note for note in sheet.page.view.notes)
    click(sheet.page.primed)
    looked(sheet, qtbot)
    assert levels(demo, ASH)[0]["primed"] == Typed("yes")
    assert not sheet.page.primed.isVisible()


# The check


def test_H25_a_siphon_says_stop_in_big_letters_and_in_the_list(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, CALCIUM)
    assert not sheet.page.alarm.isVisible()
    put(sheet, "level", "150")
    click(sheet.page.form.note)
    looked(sheet, qtbot)
    assert sheet.page.alarm.isVisible()
    assert sheet.page.alarm.text == "STOP"
    assert (
        sheet.page.alarm.mapTo(sheet, sheet.page.alarm.rect().topLeft()).y()
        < sheet.page._cautions.mapTo(sheet, sheet.page._cautions.rect().topLeft()).y()
    )
    assert sheet.list.jugs.rows[row_of(sheet, CALCIUM)].stop
    assert sheet._title.text().startswith("All jugs: 1 to stop")
    assert not sheet.page.check.use.isVisible()


def test_H22_the_flow_is_written_by_its_button_only_and_taken_back_as_one_step(demo: MainWindow, qtbot):
    document = document_of(demo)
    (pump,) = [each for each in document.records("pump") if document.value(each, "name").text == "Rack pump"]
    before = document.value(pump, "flow")
    sheet = jugs_of(demo, qtbot, NITRATE)
    proposed = sheet.page.view.check.flow
    assert proposed is not None
    assert document.value(pump, "flow") == before
    click(sheet.page.check.use)
    assert document.value(pump, "flow") == proposed.typed
    assert float(proposed.typed.text) == pytest.approx(9.0 * 0.884, rel=0.02)
    click(sheet.header.undo)
    assert document.value(pump, "flow") == before


def test_the_new_flow_names_the_cards_made_for_the_flow_before(demo: MainWindow, qtbot):
    document = document_of(demo)
    north = document.records("system")[0]
    body = json.dumps({"pump": {"flow": "9 mL/min"}})
    now = present()
    assert document.add_card(Card("7QKX-42", 1, north, "nitrate", now, now + timedelta(days=5), body))
    sheet = jugs_of(demo, qtbot, NITRATE)
    click(sheet.page.check.use)
    assert "Card 7QKX-42 is out of date: print again before the pump is set." in sheet.header.told.text()


def test_the_checklist_is_kept_with_the_jug(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, NITRATE)
    line = next(each for each in sheet.page.checklist.lines if each.label.text().startswith("The jug stands below"))
    combo = line.combo
    combo.setFocus()
    QTest.keyClick(combo, Qt.Key.Key_Space)
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Return):
        QTest.keyClick(combo.view(), key)
    looked(sheet, qtbot)
    assert document_of(demo).value(jug_named(demo, NITRATE), "jug_below_outlet") == Typed("no")
    assert "stands above its outlet" in sheet.page.view.warnings[0]
    click(sheet.header.undo)
    looked(sheet, qtbot)
    assert document_of(demo).value(jug_named(demo, NITRATE), "jug_below_outlet") == Typed("")


# Going away


def test_an_absence_by_keyboard_alone(demo: MainWindow, qtbot):
    sheet = jugs_of(demo, qtbot, ASH)
    press(Qt.Key.Key_B, ALT)
    qtbot.waitUntil(sheet.away.isVisible)
    assert QApplication.focusWidget() is sheet.away.until.line
    back = (present() + timedelta(days=20)).date().isoformat()
    QTest.keyClicks(QApplication.focusWidget(), back)
    press(Qt.Key.Key_Tab)
    looked(sheet, qtbot)
    view = sheet.away.view
    assert view.headline.startswith("Calcium, clear jug runs out first")
    assert view.rows[0].name == CALCIUM
    assert view.rows[0].short
    assert any("alkalinity" in line for line in view.due)
    assert view.rule.startswith("Missed doses are never made up")
    press(Qt.Key.Key_B, ALT)
    qtbot.waitUntil(sheet.page.isVisible)


@pytest.mark.parametrize("text", ["20/12/2026", "soon", "2020-01-01"])
def test_a_date_that_cannot_be_read_is_kept_and_said(demo: MainWindow, qtbot, text: str):
    sheet = jugs_of(demo, qtbot, ASH)
    click(sheet.turn)
    QTest.keyClicks(sheet.away.until.line, text)
    looked(sheet, qtbot)
    assert sheet.away.until.line.text() == text
    assert sheet.away.until.message
    assert sheet.away.view.rows == ()


def test_a_shelf_without_jugs_says_so(tmp_path: Path, qtbot):
    window = opened(furnished(tmp_path / "room.evenwater"), qtbot)
    sheet = jugs_of(window, qtbot)
    for _ in document_of(window).records("stock"):
        click(room_of(window).jugs.remove)
    looked(sheet, qtbot)
    assert sheet.header.name.text() == "No jug yet"
    assert sheet.page.view is None
    assert sheet.list.jugs.rows == ()
    click(sheet.header.undo)
    looked(sheet, qtbot)
    assert sheet.page.view is not None
