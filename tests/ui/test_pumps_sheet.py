"""The Pumps sheet in the real window: a calibration by keyboard and by mouse, a flow taken over, undo, restart, bad input."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QWidget

from evenwater.engine.quantities import Typed
from evenwater.ui.main_window import MainWindow
from evenwater.ui.sheet_list import SHEETS
from tests.ui.pumps_making import (
    EXCHANGE,
    RACK,
    SECOND,
    SHELF,
    add_card,
    pump_named,
    pumps_of,
    rows_of,
    run_three,
    settled,
    show_pump,
    typed_in,
)
from tests.ui.stocks_making import (
    ALT,
    CONTROL,
    click,
    click_into,
    click_row,
    document_of,
    press,
    tab_to,
    to_sheet,
    write,
)
from tests.ui.window_making import choose, left, opened, room_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")

RUN_1 = "calibration.run_1_seconds"


@pytest.fixture
def demo(qtbot) -> MainWindow:
    return opened(None, qtbot, demo=True)


# A calibration


def test_a_pump_from_nothing_is_calibrated_by_keyboard_alone(demo: MainWindow, qtbot):
    room, document = room_of(demo), document_of(demo)
    sheet = pumps_of(demo)
    before = document.records("pump")
    tab_to(room.pumps_pane.add)
    press(Qt.Key.Key_Space)
    settled(sheet, qtbot)
    (pump,) = set(document.records("pump")) - set(before)
    assert (sheet.header.name.text(), sheet.answer.view.state) == ("Pump 1", "empty")
    assert not sheet.use.isEnabled()
    tab_to(sheet.form.fields["pump.name"].focusProxy())
    write("Left head, kalk")
    assert room.pumps_pane.list.currentIndex().data() == "Left head, kalk"
    tab_to(sheet.form.fields["pump.flow"].focusProxy())
    write("25")
    tab_to(sheet.form.fields["calibration.graduation"].focusProxy())
    write("0.5")
    assert len(sheet.records.calibrations()) == 1, "the first field makes it"
    run_three(sheet, "75", ("30.1", "29.9", "30"))
    assert QApplication.focusWidget() is sheet.form.fields["calibration.run_3_reads"].focusProxy(), "the last field"
    view = sheet.answer.view
    assert (view.state, view.figure, view.second) == ("answered", "24", "Good enough to dose by")
    assert document.value(pump, "flow") == Typed("25", "mL/min"), "nothing is taken over by itself"
    press(Qt.Key.Key_U, ALT)
    qtbot.waitUntil(lambda: document.value(pump, "flow") == Typed("24", "mL/min"))
    assert typed_in(sheet, "calibration.flow_used").text == "yes"
    assert rows_of(sheet)[0].endswith("24\u00a0mL per min · good · flow used")
    assert not sheet.use.isEnabled(), "the pump has it already"
    press(Qt.Key.Key_Z, CONTROL)
    settled(sheet, qtbot)
    assert document.value(pump, "flow") == Typed("25", "mL/min")
    assert typed_in(sheet, "calibration.flow_used").text == "", "one step"
    assert sheet.use.isEnabled()


def test_a_calibration_by_mouse(demo: MainWindow, qtbot):
    document = document_of(demo)
    room = room_of(demo)
    click_row(room.sheets, SHEETS.index("Pumps"))
    sheet = room.pumps
    assert sheet.isVisible()
    click_row(room.pumps_pane.list, room.pumps_pane.list.model().stringList().index(SECOND))
    click(sheet.form.calibration.again)
    settled(sheet, qtbot)
    fields = sheet.form.fields
    slip = fields[RUN_1].slip
    assert slip is not None
    assert slip.isVisible()
    (offer,) = slip.row.buttons()
    assert offer.text() == "Run it 150\u00a0s"
    click(offer)
    assert typed_in(sheet, RUN_1) == Typed("150", "s")
    for number, text in enumerate(("58.5", "58.4", "58.7"), start=1):
        click_into(fields[f"calibration.run_{number}_reads"])
        write(text)
    settled(sheet, qtbot)
    assert sheet.answer.view.state == "answered"
    click(sheet.use)
    assert document.value(sheet.records.pump, "flow") == Typed("23.41", "mL/min")
    assert "Doses are reckoned with 23.41\u00a0mL per min" in sheet.header.told.text()
    click(sheet.form.calibration.remove)
    assert rows_of(sheet) == ["None yet. Press New calibration, or fill in the runs."]
    click(sheet.header.undo)
    settled(sheet, qtbot)
    assert len(sheet.records.calibrations()) == 1
    assert sheet.answer.view.figure == "23.4"


def test_tab_goes_from_figure_to_figure(demo: MainWindow, qtbot):
    sheet = show_pump(demo, SHELF, qtbot)
    sheet.form.fields[RUN_1].setFocus(Qt.FocusReason.TabFocusReason)
    seen = []
    for _ in range(6):
        seen.append(QApplication.focusWidget().accessibleName().partition(",")[0])
        press(Qt.Key.Key_Tab)
    assert seen == [f"Run {n} {did}" for n in (1, 2, 3) for did in ("lasted", "gave")]


def test_the_answer_follows_every_key(demo: MainWindow, qtbot):
    sheet = show_pump(demo, SHELF, qtbot)
    click(sheet.form.calibration.again)
    states = []
    for path, text in ((RUN_1, "75"), ("calibration.run_1_reads", "30"), ("calibration.run_2_reads", "29.8")):
        click_into(sheet.form.fields[path])
        for key in text:
            QTest.keyClicks(QApplication.focusWidget(), key)
            settled(sheet, qtbot)
            states.append((sheet.answer.view.state, sheet.answer.view.figure))
    assert states[:2] == [("empty", "")] * 2
    assert states[3] == ("stop", "24"), "one run tells a flow, and that it is too little"
    assert sheet.answer.view.second == "Repeat the calibration"
    assert not sheet.use.isEnabled()


def test_a_fourth_run_is_asked_for_while_they_are_to_be_repeated(demo: MainWindow, qtbot):
    sheet = show_pump(demo, SHELF, qtbot)
    fourth = sheet.form.fields["calibration.run_4_reads"]
    assert not fourth.isVisible()
    type_into(sheet, "calibration.run_3_reads", "40")
    assert fourth.isVisible()
    assert "scatter" in sheet.answer.view.messages[0].text


def test_a_scale_has_other_fields_than_a_cylinder(demo: MainWindow, qtbot):
    sheet = show_pump(demo, SHELF, qtbot)
    fields = sheet.form.fields
    shown = ("graduation", "readability", "water_temperature")
    assert [fields[f"calibration.{name}"].isVisible() for name in shown] == [True, False, False]
    choose(sheet, "calibration.method", "A scale")
    settled(sheet, qtbot)
    assert [fields[f"calibration.{name}"].isVisible() for name in shown] == [False, True, True]
    units = fields["calibration.run_1_reads"].units
    assert "g" in {units.itemText(n) for n in range(units.count())}
    assert "on the scale" in sheet.form.calibration.guide.text()


# Taking over, and cards


def test_H22_the_expected_flow_is_offered_and_never_taken_by_itself(demo: MainWindow, qtbot):
    document = document_of(demo)
    sheet = show_pump(demo, EXCHANGE, qtbot)
    pump = sheet.records.pump
    assert sheet.use_expected.isVisible()
    offered = sheet.use_expected.text().rpartition(" ")[2]
    assert 32.0 < float(offered) < 33.1, "less than at the newest calibration"
    assert document.value(pump, "flow") == Typed("34", "mL/min")
    press(Qt.Key.Key_E, ALT)
    qtbot.waitUntil(lambda: document.value(pump, "flow") == Typed(offered, "mL/min"))
    assert not any("flow used" in row for row in rows_of(sheet)[:1]), "no calibration gave it"
    assert not sheet.use_expected.isVisible()
    show_pump(demo, SHELF, qtbot)
    assert not sheet.use_expected.isVisible(), "no drift can be told there"


def test_cards_of_the_other_flow_are_named_before_and_after(demo: MainWindow, qtbot):
    document = document_of(demo)
    add_card(demo, "ASH7", "alkalinity")
    add_card(demo, "CAL7", "calcium")
    sheet = show_pump(demo, SHELF, qtbot)
    assert not any("ASH7" in said for said in sheet.answer.view.remarks)
    for number, text in enumerate(("27.5", "27.6", "27.4"), start=1):
        type_into(sheet, f"calibration.run_{number}_reads", text)
    assert any("With this flow, card ASH7 is no longer right." in said for said in sheet.answer.view.remarks)
    click(sheet.use)
    settled(sheet, qtbot)
    assert "Card ASH7 is out of date: print new ones." in sheet.header.told.text()
    assert any("Card ASH7 must not be followed." in said for said in sheet.answer.view.remarks)
    assert not any("CAL7" in said for said in sheet.answer.view.remarks), "that is another pump's"
    click(sheet.header.undo)
    settled(sheet, qtbot)
    assert document.value(sheet.records.pump, "flow") == Typed("24", "mL/min")
    assert not any("must not be followed" in said for said in sheet.answer.view.remarks)


def test_only_the_newest_calibration_can_be_taken_over(demo: MainWindow, qtbot):
    sheet = show_pump(demo, EXCHANGE, qtbot)
    assert sheet.use.isEnabled()
    click_row(sheet.list, 2)
    settled(sheet, qtbot)
    assert sheet.answer.view.figure == "34.3"
    assert typed_in(sheet, "calibration.hours").text == "166"
    assert not sheet.use.isEnabled()
    assert sheet.use.toolTip() == "Only the newest calibration counts"


# What was typed stays


def test_what_cannot_be_read_is_kept_as_typed_and_said_at_its_field(demo: MainWindow, qtbot):
    sheet = show_pump(demo, SHELF, qtbot)
    for path, text in (
        ("pump.flow", "fast"),
        ("calibration.hours", "a lot"),
        ("calibration.run_2_reads", "3o"),
        ("pump.head_fitted", "25.11.2026"),
        ("pump.line_bore", "-1"),
    ):
        before = typed_in(sheet, path)
        type_into(sheet, path, text)
        settled(sheet, qtbot)
        assert typed_in(sheet, path).text == text
        assert sheet.form.fields[path].message, path
        assert not sheet.use.isEnabled() or path == "pump.head_fitted", path
        type_into(sheet, path, before.text)
        assert sheet.form.fields[path].message == "", path
        assert sheet.answer.view.state in ("answered", "empty")


def test_H25_an_outlet_in_the_water_is_marked(demo: MainWindow, qtbot):
    sheet = show_pump(demo, SHELF, qtbot)
    assert sheet.checks[0].label.text() == "The outlet ends 6\u00a0cm above the highest water line."
    type_into(sheet, "pump.outlet_height", "0")
    assert sheet.checks[0].sign._kind == "stop"
    assert "air gap" in sheet.checks[0].label.text()
    cautions = sheet.form.cautions
    assert "Unplug before reaching in." in cautions.label.text()
    first = sheet.form.fields["pump.name"]
    assert cautions.mapTo(sheet, cautions.rect().bottomLeft()).y() <= first.mapTo(sheet, first.rect().topLeft()).y()


def test_a_pump_comes_back_with_its_calibrations(demo: MainWindow, qtbot):
    room = room_of(demo)
    sheet = show_pump(demo, RACK, qtbot)
    before = rows_of(sheet)
    click(room.pumps_pane.remove)
    settled(sheet, qtbot)
    assert RACK not in room.pumps_pane.list.model().stringList()
    click(sheet.header.undo)
    settled(sheet, qtbot)
    show_pump(demo, RACK, qtbot)
    assert rows_of(sheet) == before


def test_undo_shows_the_pump_that_it_changed(demo: MainWindow, qtbot):
    sheet = show_pump(demo, RACK, qtbot)
    type_into(sheet, "pump.flow", "9.5")
    show_pump(demo, EXCHANGE, qtbot)
    press(Qt.Key.Key_Z, CONTROL)
    settled(sheet, qtbot)
    assert sheet.records.pump == pump_named(demo, RACK)
    assert sheet.form.fields["pump.flow"].focusProxy().text() == "9"


def test_undo_shows_the_calibration_that_it_changed(demo: MainWindow, qtbot):
    sheet = show_pump(demo, EXCHANGE, qtbot)
    click_row(sheet.list, 3)
    type_into(sheet, "calibration.who", "A. B.")
    show_pump(demo, RACK, qtbot)
    to_sheet("Stocks")
    click(room_of(demo).stocks.header.undo)
    settled(sheet, qtbot)
    assert sheet.isVisible()
    assert (sheet.header.name.text(), typed_in(sheet, "calibration.hours").text) == (EXCHANGE, "4")
    assert typed_in(sheet, "calibration.who").text == "M. T."


def test_a_saved_room_has_its_calibrations_again(tmp_path: Path, qtbot):
    log = tmp_path / "log.sqlite"
    first = opened(log, qtbot)
    first.centralWidget().empty.click()
    sheet = pumps_of(first)
    assert sheet.header.name.text() == "No pump yet"
    click(room_of(first).pumps_pane.add)
    type_into(sheet, "pump.flow", "24")
    type_into(sheet, RUN_1, "75")
    click_into(sheet.form.fields["calibration.run_1_reads"])
    write("3")  # in the middle of a number
    left(first)
    again = opened(log, qtbot)
    sheet = pumps_of(again)
    assert typed_in(sheet, "calibration.run_1_reads") == Typed("3", "mL")
    assert typed_in(sheet, RUN_1) == Typed("75", "s")
    assert len(rows_of(sheet)) == 1


# The chart


def test_the_chart_is_read_by_keys_and_chooses_a_calibration(demo: MainWindow, qtbot):
    sheet = show_pump(demo, EXCHANGE, qtbot)
    chart = sheet.chart
    assert chart.view is not None
    assert chart.view.hours.tolist() == [4.0, 166.0, 338.0, 512.0]
    assert chart.view.slope is not None
    assert chart.view.slope < 0.0
    assert "4 calibrations" in chart.accessibleDescription()
    tab_to(chart)
    press(Qt.Key.Key_Left)
    press(Qt.Key.Key_Left)
    assert chart.reading_words().startswith("at 166\u00a0h: 34.3\u00a0mL per min")
    assert chart.accessibleDescription() == chart.reading_words()
    press(Qt.Key.Key_Return)
    settled(sheet, qtbot)
    assert typed_in(sheet, "calibration.hours").text == "166"
    x = round(chart._scale(chart.view).xs(chart.view.hours)[3])
    QTest.mouseClick(chart, Qt.MouseButton.LeftButton, pos=chart.rect().center().__class__(x, chart.height() // 2))
    assert typed_in(sheet, "calibration.hours").text == "512"


def test_a_pump_without_calibrations_has_no_chart(demo: MainWindow, qtbot):
    sheet = show_pump(demo, SECOND, qtbot)
    assert not sheet.chart.isVisible()
    assert not sheet.form.calibration.remove.isEnabled()


def test_a_pump_chosen_for_two_waters_is_said_on_every_sheet_that_shows_it(demo: MainWindow, qtbot):
    room, document = room_of(demo), document_of(demo)
    said = "Rack pump is chosen for nitrate in North frag bay (Nitrate, brown bottle) and alkalinity in Anemone table"
    north, table = document.records("system")[:2]
    show_pump(demo, RACK, qtbot)
    assert said not in _words_on(room.pumps)
    document.edit(f"{table}:alkalinity", "pump", document.value(f"{north}:nitrate", "pump"))
    qtbot.waitUntil(lambda: said in _words_on(room.pumps))
    room.sheets.choose(SHEETS.index("Correct"))
    room.sheet.show_parameter("nitrate")
    qtbot.waitUntil(lambda: said in _words_on(room.sheet))
    room.sheets.choose(SHEETS.index("Timetable"))
    qtbot.waitUntil(lambda: not room.timetable.waiting())
    assert said in _words_on(room.timetable)


def _words_on(sheet: QWidget) -> str:
    return " ".join(label.text() for label in sheet.findChildren(QLabel) if label.isVisible())
