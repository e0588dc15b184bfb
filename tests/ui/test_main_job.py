"""The main job in the real window, by keyboard: fill in, read the answer, save the card, come back tomorrow."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

from evenwater.engine.quantities import Typed
from evenwater.ui.main_window import MainWindow
from evenwater.ui.notice_page import NoticePage
from evenwater.ui.welcome_page import WelcomePage
from tests.ui.window_making import choose, example, focus_walk, left, opened, reckoned, room_of, sheet_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def log(tmp_path: Path) -> Path:
    return tmp_path / "room" / "evenwater.sqlite"


@pytest.fixture
def empty(log: Path, qtbot) -> MainWindow:
    """An empty room with one system, as the welcome page's main button makes it."""
    window = opened(log, qtbot)
    page = window.centralWidget()
    assert isinstance(page, WelcomePage)
    page.empty.setFocus()
    QTest.keyClick(page.empty, Qt.Key.Key_Space)
    return window


@pytest.fixture
def demo(qtbot) -> MainWindow:
    window = opened(None, qtbot, demo=True)
    reckoned(sheet_of(window), qtbot)
    return window


def test_the_worked_example_by_keyboard(empty: MainWindow, qtbot):
    sheet = sheet_of(empty)
    example(sheet, qtbot)
    view = sheet.answer.view
    # 4.7994 mL per hour by hand, rounded down to the tenth a pump is set to.
    assert (view.state, view.figure, view.figure_unit) == ("answered", "4.7", "mL per hour")
    assert "112.8\u00a0mL in 24 hours" in view.third
    assert sheet.buttons.cards.save.isEnabled()
    assert sheet.chart.view is not None


def test_what_was_typed_is_kept_as_typed(empty: MainWindow, qtbot):
    sheet = sheet_of(empty)
    example(sheet, qtbot)
    assert sheet.records.values("correction")["target"] == Typed("8,4", "dKH")


def test_the_card_is_saved_and_registered(empty: MainWindow, qtbot, tmp_path: Path):
    sheet = sheet_of(empty)
    example(sheet, qtbot)
    file = tmp_path / "card.pdf"
    sheet.buttons.cards.write(file)
    text = " ".join(" ".join(page.extract_text() for page in PdfReader(file).pages).split())
    assert "4.7 mL" in text
    assert "sodium CARBonate anhydrous" in text
    cards = empty.opening().document().cards("in use")
    assert [c.parameter for c in cards] == ["alkalinity"]
    assert cards[0].plan_id in text


def test_everything_is_there_after_a_restart_and_undo_goes_on(empty: MainWindow, log: Path, qtbot):
    example(sheet_of(empty), qtbot)
    left(empty)
    again = opened(log, qtbot)
    sheet = sheet_of(again)
    reckoned(sheet, qtbot)
    assert sheet.answer.view.figure == "4.7"
    assert QApplication.focusWidget() is not None, "the room opens with the cursor where the work begins"
    QTest.keyClick(again, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert sheet.records.values("pump").get("doses_per_day", Typed("")).text == ""
    assert sheet.header.redo.isEnabled()
    QTest.keyClick(again, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier)
    assert sheet.records.values("pump")["doses_per_day"].text == "24"


def test_undo_from_inside_a_field_is_the_documents(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    type_into(sheet, "change.target", "8.1")
    type_into(sheet, "change.daily_use", "0.7")
    sheet.form.fields["change.target"].setFocus()
    for _ in range(2):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert sheet.records.values("correction")["target"].text == "8.4"
    assert sheet.records.values("correction")["daily_use"].text == "0.9"


def test_undo_opens_the_sheet_it_changes(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    type_into(sheet, "change.target", "8.1")
    choose(sheet, "change.parameter", "Calcium")
    assert sheet.records.parameter == "calcium"
    sheet.header.undo.click()
    assert sheet.records.parameter == "alkalinity"
    assert sheet.form.fields["change.target"].typed().text == "8.4"


def test_every_demo_system_is_answered(demo: MainWindow, qtbot):
    room = room_of(demo)
    for row in range(3):
        room.systems.list.setCurrentIndex(room.systems.list.model().index(row, 0))
        reckoned(room.sheet, qtbot)
        assert room.sheet.answer.view.state == "answered", room.sheet.answer.view.messages


def test_the_demo_never_touches_the_keepers_data(demo: MainWindow, own_home: Path):
    demo.close()
    assert not list(own_home.rglob("*.sqlite"))


def test_H1_a_reading_in_the_wrong_unit_is_offered_the_right_one(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    type_into(sheet, "change.measured", "140")
    reckoned(sheet, qtbot)
    assert sheet.answer.view.state == "refused"
    assert not sheet.buttons.cards.save.isEnabled()
    button = next(b for b in sheet.answer.findChildren(QPushButton) if b.text() == "It was 140\u00a0ppm as CaCO3")
    button.click()
    reckoned(sheet, qtbot)
    assert sheet.records.values("correction")["measured"] == Typed("140", "ppm as CaCO3")
    assert sheet.answer.view.state == "answered"


def test_H29_the_wheel_changes_nothing_anywhere(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    before = sheet.records.raw()
    for field in sheet.form.fields.values():
        for widget in (field, field.focusProxy() or field):
            place = QPointF(widget.rect().center())
            turn = QWheelEvent(
                place, widget.mapToGlobal(place), QPoint(), QPoint(0, 120), Qt.MouseButton.NoButton,
                Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
            )  # fmt: skip
            QApplication.sendEvent(widget, turn)
    assert sheet.records.raw() == before


def test_H29_enter_presses_nothing(demo: MainWindow, qtbot, monkeypatch):
    sheet = sheet_of(demo)
    pressed = []
    for button in demo.findChildren(QPushButton):
        button.clicked.connect(pressed.append)
    for field in sheet.form.fields.values():
        target = field.focusProxy() or field
        if target.isVisible() and not hasattr(target, "showPopup"):
            target.setFocus()
            QTest.keyClick(target, Qt.Key.Key_Return)
    assert pressed == []


def test_H34_a_half_typed_plan_cannot_be_printed(demo: MainWindow, qtbot, tmp_path: Path):
    sheet = sheet_of(demo)
    line = sheet.form.fields["change.target"].focusProxy()
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, "8.")
    assert sheet.buttons.cards.plan is None, "between the key and the reckoning there is no plan"
    sheet.buttons.cards.write(tmp_path / "never.pdf")
    reckoned(sheet, qtbot)
    assert sheet.answer.view.figure == "", "a stale figure is shown as --"
    assert "question has changed" in sheet.chart.readout
    assert not sheet.buttons.cards.save.isEnabled()
    assert not sheet.buttons.cards.print.isEnabled()
    sheet.buttons.cards.write(tmp_path / "never.pdf")
    assert not (tmp_path / "never.pdf").exists()
    card = sheet.buttons.cards.card()
    assert card is not None
    assert card.draft == "NOT A PLAN"


def test_H26_the_older_card_stays_void_until_it_is_taken_down(demo: MainWindow, qtbot, tmp_path: Path):
    sheet = sheet_of(demo)
    sheet.buttons.cards.write(tmp_path / "one.pdf")
    assert not sheet.void.isVisible()
    type_into(sheet, "change.target", "8.2")
    reckoned(sheet, qtbot)
    sheet.buttons.cards.write(tmp_path / "two.pdf")
    document = demo.opening().document()
    void = document.cards("void")
    assert len(void) == 1
    assert sheet.void.isVisible()
    assert void[0].plan_id in sheet.void.words.text()
    sheet.void.done.click()
    assert document.cards("void") == []
    assert not sheet.void.isVisible()


def test_H27_the_figure_is_never_above_the_dose(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    for doses in ("7", "10", "24", "48", "96"):
        type_into(sheet, "pump.doses_per_day", doses)
        reckoned(sheet, qtbot)
        plan = sheet.buttons.cards.plan
        assert plan is not None
        schedule = plan.answer.doses
        assert float(sheet.answer.view.figure) <= schedule.dose_ml * schedule.per_day / 24.0 + 1e-12
        assert schedule.dose_ml <= plan.answer.single_dose_ml


def test_a_slower_pace_by_keyboard_on_the_chart(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    before = float(sheet.records.values("correction")["fastest_rise"].text)
    sheet.chart.setFocus()
    QTest.keyClick(sheet.chart, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    reckoned(sheet, qtbot)
    after = float(sheet.records.values("correction")["fastest_rise"].text)
    assert 0.0 < after < before
    assert sheet.answer.view.state == "answered"
    sheet.header.undo.click()
    assert float(sheet.records.values("correction")["fastest_rise"].text) == before


def test_the_other_parameter_has_its_own_question(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    choose(sheet, "change.parameter", "Calcium")
    reckoned(sheet, qtbot)
    assert sheet.form.fields["change.measured"].typed() == Typed("395", "mg/L")
    assert sheet.answer.view.state == "answered"
    choose(sheet, "change.parameter", "Alkalinity")
    reckoned(sheet, qtbot)
    assert sheet.form.fields["change.measured"].typed() == Typed("6.8", "dKH")


def test_a_removed_system_comes_back_whole(demo: MainWindow, qtbot):
    room = room_of(demo)
    before = room.sheet.records.raw()
    room.systems.remove.click()
    assert len(room.systems.list.model().stringList()) == 2
    room.sheet.header.undo.click()
    room.systems.list.setCurrentIndex(room.systems.list.model().index(0, 0))
    assert room.sheet.records.raw() == before


def test_every_control_is_reached_by_tab_and_has_a_name(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    sheet.focus_first()
    reached = focus_walk(demo)
    nameless = [w for w in reached if not (w.accessibleName() or getattr(w, "text", str)())]
    assert nameless == []
    for path, field in sheet.form.fields.items():
        if field.isVisible():
            assert (field.focusProxy() or field) in reached, f"Tab does not reach {path}"
    for button in (sheet.buttons.cards.save, sheet.buttons.cards.print, sheet.buttons.cards.show, sheet.chart):
        assert button in reached


def test_a_log_of_a_newer_version_is_refused_with_a_sentence(log: Path, qtbot):
    import sqlite3

    left(opened(log, qtbot))
    with sqlite3.connect(log) as base:
        base.execute("PRAGMA user_version = 9999")
    base.close()
    window = opened(log, qtbot)
    page = window.centralWidget()
    assert isinstance(page, NoticePage)
    assert "newer Evenwater" in page.sentence.text()
