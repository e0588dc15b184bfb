"""The Exchange sheet in the real window: keys, mouse, undo, the chart, and what other sheets share with it."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.exceptions import TimeoutError as NotInTimeError

from evenwater.engine.quantities import Typed
from evenwater.screens.local_zone import present
from evenwater.store import Entry
from evenwater.ui.exchange_sheet import NOT_YET, UNPLANNED, ExchangeSheet
from evenwater.ui.main_window import MainWindow
from evenwater.ui.theme import apply_theme, tokens_of
from tests.ui.clipping import clipped
from tests.ui.stocks_making import CONTROL, click, document_of, press, to_sheet
from tests.ui.window_making import focus_walk, opened, room_of

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def demo(qtbot) -> MainWindow:
    return opened(None, qtbot, demo=True)


@pytest.fixture
def sheet(demo: MainWindow) -> ExchangeSheet:
    to_sheet("Exchange")
    found = room_of(demo).exchange
    assert found.isVisible()
    return found


def type_over(sheet: ExchangeSheet, name: str, text: str) -> None:
    """Replace what stands in a field, key by key, and go on with Tab."""
    line = sheet.form.fields[name].line
    assert line is not None
    line.setFocus(Qt.FocusReason.TabFocusReason)
    line.selectAll()
    QTest.keyClicks(line, text) if text else QTest.keyClick(line, Qt.Key.Key_Delete)
    QTest.keyClick(line, Qt.Key.Key_Tab)


def choose(sheet: ExchangeSheet, words: str) -> None:
    """Choose with the keys how the flow is said."""
    combo = sheet.form.way.combo
    combo.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(combo, Qt.Key.Key_Space)
    view, target = combo.view(), combo.findText(words)
    while view.currentIndex().row() != target:
        down = view.currentIndex().row() < target
        QTest.keyClick(view, Qt.Key.Key_Down if down else Qt.Key.Key_Up)
    QTest.keyClick(view, Qt.Key.Key_Return)
    combo.window().activateWindow()


def kept(sheet: ExchangeSheet, name: str) -> Typed:
    return sheet.records.values().get(name, Typed(""))


def texts(sheet: ExchangeSheet) -> list[str]:
    """Return every sentence that can be seen, with ordinary spaces."""
    return [one.text().replace("\u00a0", " ") for one in sheet.findChildren(QLabel) if one.isVisible() and one.text()]


def test_the_demo_s_pair_is_answered_cautions_first(sheet: ExchangeSheet) -> None:
    """By hand: exp(-300/340) is 41.4 %; 35 * 9.9/10 is 34.65; 80 L at 38 g per litre take 3.04 kg."""
    assert (sheet.view.state, sheet.view.figure) == ("answered", "41.4")
    said = texts(sheet)
    for wanted in ("34.65", "3.04 kg", "99 %", "70 L (litres)", "assumed"):
        assert any(wanted in text for text in said), wanted
    assert sheet.form.cautions.y() < sheet.form.steps[0].y(), "before any field"
    assert sheet.form.mixing.y() < sheet.form.steps[2].y(), "before the bucket"
    assert sheet._stock_cautions.y() < sheet.doses.y()
    assert sheet._mixing.y() < sheet.bucket.y()
    assert UNPLANNED not in said
    assert sheet.header.volume.text()


def test_a_flow_is_typed_kept_refused_and_undone(sheet: ExchangeSheet, demo: MainWindow, qtbot) -> None:
    document = document_of(demo)
    type_over(sheet, "in", "9,7")
    assert kept(sheet, "in") == Typed("9,7", "L per day")
    assert any("not matched" in text for text in sheet.view.remarks)
    type_over(sheet, "in", "20")
    assert sheet.view.state == "refused"
    field = sheet.form.fields["in"]
    assert "more comes in" in field.message.casefold()
    assert field.spoken_for().accessibleDescription() == field.message
    assert not sheet.chart.isVisible()
    assert "41.4" not in texts(sheet), "no figure of another question is left"
    press(Qt.Key.Key_Z, CONTROL)
    assert kept(sheet, "in") == Typed("9,7", "L per day"), "one step for each field that was typed"
    assert sheet.isVisible()
    assert field.line.text() == "9,7"
    assert "new water in a day" in sheet.header.undo.toolTip()
    press(Qt.Key.Key_Z, CONTROL)
    assert kept(sheet, "in") == Typed("9.9", "L per day")
    assert sheet.view.state == "answered"
    type_over(sheet, "out", "much")
    assert field.message == ""
    assert sheet.form.fields["out"].message
    assert document.value(f"{sheet.records.system}:water", "out").text == "much", "kept as typed"


def test_each_way_to_say_the_flow_has_its_own_fields(sheet: ExchangeSheet, demo: MainWindow, qtbot) -> None:
    fields = sheet.form.fields

    def shown() -> set[str]:
        return {name for name in ("exchanged", "as_much_as", "every_days", "out", "in") if fields[name].isVisible()}

    assert shown() == {"out", "in"}
    choose(sheet, "As a batch change")
    qtbot.waitUntil(lambda: shown() == {"as_much_as", "every_days"})
    assert sheet.view.state == "empty"
    assert NOT_YET in texts(sheet)
    type_over(sheet, "as_much_as", "20")
    assert sheet.view.state == "answered"
    assert any("20 % every week" in text for text in texts(sheet))
    choose(sheet, "Both pumps alike")
    qtbot.waitUntil(lambda: shown() == {"exchanged"})
    assert kept(sheet, "way") == Typed("")
    type_over(sheet, "exchanged", "10")
    to_sheet("Upkeep")
    upkeep = room_of(demo).upkeep
    assert upkeep.exchanged.isVisible()
    assert upkeep.exchanged.line.text() == "10", "one record for both sheets"
    to_sheet("Exchange")
    press(Qt.Key.Key_Z, CONTROL)
    press(Qt.Key.Key_Z, CONTROL)
    qtbot.waitUntil(lambda: shown() == {"as_much_as", "every_days"})


def test_chart_of_the_value_that_was_chosen_is_read_with_the_keys(sheet: ExchangeSheet, demo: MainWindow) -> None:
    sheet.shown.chosen.emit("calcium")
    sheet.shown.set_current("calcium")
    sheet._show_chart()
    chart = sheet.chart
    assert chart.view is not None
    assert chart.view.parameter == "calcium"
    chart.setFocus(Qt.FocusReason.TabFocusReason)
    assert "arrow keys" in chart.accessibleDescription()
    assert chart.reading_words().startswith("after 30\u00a0days")
    press(Qt.Key.Key_Home)
    assert chart.accessibleDescription() == "now: 395\u00a0mg per L"
    press(Qt.Key.Key_Right)
    assert chart.reading_words().startswith("after 1\u00a0day 12\u00a0h")
    type_over(sheet, "calcium", "450")
    assert chart.view.parameter == "calcium", "it stays at the value that was chosen"
    QTest.mouseMove(chart, QPoint(chart.width() // 2, chart.height() // 2))
    assert chart.reading_words().startswith("after 1")
    image = chart.grab().toImage()
    seen = {image.pixelColor(x, y).name().upper() for x in range(0, image.width(), 2) for y in range(image.height())}
    tokens = tokens_of(sheet.palette())
    for token in (tokens.blue, tokens.wash, tokens.ink):
        assert QColor(token).name().upper() in seen, "course, band and lines are painted"
    click(sheet.open)
    assert room_of(demo).sheet.isVisible()
    assert room_of(demo).sheet.records.parameter == "calcium"


def test_what_the_log_and_other_sheets_say_arrives(sheet: ExchangeSheet, demo: MainWindow, qtbot) -> None:
    document, system = document_of(demo), sheet.records.system
    at = present() - timedelta(days=9)
    reading = Entry("a" * 32, system, "reading", "potassium", at, fields={"value": Typed("390", "mg/L")}, value=390.0)
    assert document.log.log([reading])
    qtbot.waitUntil(lambda: "potassium" in sheet.view.charts)
    row = next(row for row in sheet.view.values if row.parameter == "potassium")
    assert (row.now, row.age) == ("390", "9\u00a0days ago")
    document.edit(f"{system}:alkalinity", "stock", Typed(""))
    qtbot.waitUntil(lambda: any(text == UNPLANNED for text in texts(sheet)))
    assert not any(row.name == "Alkalinity" for row in sheet.view.dosing)
    document.edit(system, "net_volume", Typed(""))
    qtbot.waitUntil(lambda: sheet.view.state == "empty")
    assert any("net volume" in text for text in texts(sheet))


def test_other_systems_and_none_at_all(sheet: ExchangeSheet, demo: MainWindow, qtbot) -> None:
    room = room_of(demo)
    first, second, third = document_of(demo).records("system")
    room.systems.choose(second)
    assert (sheet.view.state, kept(sheet, "as_much_as")) == ("answered", Typed("20", "%"))
    assert sheet.form.fields["every_days"].line.text() == "7"
    room.systems.choose(third)
    assert sheet.view.state == "empty"
    assert NOT_YET in texts(sheet)
    assert not sheet.chart.isVisible()
    type_over(sheet, "old_jug", "45")
    assert kept(sheet, "old_jug") == Typed("45", "L"), "the first key makes the record and is not lost"
    type_over(sheet, "exchanged", "1")
    assert kept(sheet, "exchanged").text == "1", "nothing but the system's own figure is needed"
    assert sheet.view.state == "answered"
    for system in (first, second, third):
        document_of(demo).remove_record(system)
    qtbot.waitUntil(lambda: sheet.records.system == "")
    assert not sheet._scroll.isEnabled()
    assert any("No system yet" in text for text in texts(sheet))


def test_tab_goes_through_the_fields_in_order_and_every_one_says_its_unit(sheet: ExchangeSheet) -> None:
    sheet.form.way.combo.setFocus(Qt.FocusReason.TabFocusReason)
    walked = [widget.accessibleName() for widget in focus_walk(sheet.window())]
    names = ["How it is said", "Old water out, L per day", "Unit of Old water out", "New water in, L per day"]
    assert walked[: len(names)] == names
    for wanted in (
        "Salinity, ppt",
        "Temperature, °C",
        "Alkalinity, dKH",
        "By the label: salt mix, g",
        "Nitrate, per day, %",
    ):
        assert wanted in walked, wanted
    assert walked.index("Salinity, ppt") < walked.index("New water in it, L")


@pytest.fixture(
    params=[(11.0, 1000, 700), (16.5, 1366, 768), (11.0, 1366, 768)], ids=["narrow", "large letters", "usual"]
)
def window(request: pytest.FixtureRequest, qapp: QApplication, qtbot) -> Iterator[MainWindow]:
    points, width, height = request.param
    font = qapp.font()
    font.setPointSizeF(points)
    qapp.setFont(font)
    made = opened(None, qtbot, demo=True)
    made.resize(width, height)
    yield made
    made.close()
    font.setPointSizeF(11.0)
    qapp.setFont(font)
    apply_theme(qapp, font.family(), base_points=11.0)


def test_nothing_is_cut_off(window: MainWindow, qtbot) -> None:
    to_sheet("Exchange")
    sheet = room_of(window).exchange
    for step in sheet.form.steps:
        step.open(True)
    try:
        qtbot.waitUntil(lambda: not clipped(sheet), timeout=3000)
    except NotInTimeError:
        assert clipped(sheet) == []
