"""What is noted on the Log sheet, by the mouse and by the keys alone; what cannot be taken stays and is said beside its field."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtGui import QTextDocument
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel

from evenwater.engine.quantities import Typed
from evenwater.screens.local_zone import present
from evenwater.ui.log_sheet import LogSheet
from evenwater.ui.main_window import MainWindow
from tests.ui.log_making import (
    Wall,
    begin,
    begin_dose,
    furnished,
    hung,
    kept,
    line_of,
    lines,
    living_in,
    log_by_key,
    log_of,
    pick,
    put,
    said_below,
    said_beside,
    when_field,
    whens,
)
from tests.ui.stocks_making import ASH, click, document_of, jug_named, press, tab_to
from tests.ui.window_making import opened, room_of

# Half past ten in the morning where the tests live.
MORNING = datetime(2026, 11, 25, 10, 30, tzinfo=UTC)


@pytest.fixture
def window(qtbot, tmp_path: Path) -> MainWindow:
    QSettings().remove("who")
    return opened(furnished(tmp_path / "evenwater.sqlite"), qtbot)


@pytest.fixture
def wall(monkeypatch: pytest.MonkeyPatch):
    with living_in("UTC"):
        yield hung(monkeypatch, MORNING)


@pytest.fixture
def log(wall: Wall, window: MainWindow) -> LogSheet:
    return log_of(window)


# By the mouse and by the keys


def test_the_four_kinds_are_noted_as_typed(log: LogSheet, window: MainWindow, wall: Wall):
    put(log, "value", "7,9")
    put(log, "kit", "drops, blue box")
    put(log, "who", "Ada")
    click(log.form.log)
    wall.on(minutes=1)
    begin_dose(log, jug_named(window, ASH), "12,50")
    click(log.form.log)
    wall.on(minutes=1)
    begin(log, "exchange")
    put(log, "litres", "34,5")
    click(log.form.log)
    wall.on(minutes=1)
    begin(log, "note")
    put(log, "text", "The heater was off.")
    click(log.form.log)
    assert lines(log) == [
        ("Note", ""),
        ("Water exchange", "34.5 L"),
        (f"Dose: {ASH}", "12.5 mL"),
        ("Alkalinity", "7,9 dKH"),
    ]
    assert whens(log)[-1] == "Wed 25 Nov 2026 10:30"
    reading, dose, exchange, note = kept(log)
    assert (reading.fields["value"], reading.fields["kit"]) == (Typed("7,9", "dKH"), Typed("drops, blue box"))
    assert dose.fields["amount"] == Typed("12,50", "mL")
    assert (dose.value, exchange.value, note.value) == (12.5, 34.5, None)
    assert note.fields["text"] == Typed("The heater was off.")
    assert {entry.who for entry in kept(log)} == {"Ada"}, "who noted it is said once, for all that follow"
    assert [entry.at for entry in kept(log)] == [MORNING + timedelta(minutes=n) for n in range(4)]


def test_a_reading_is_noted_by_the_keys_alone(log: LogSheet, wall: Wall):
    line_of(log.form, "value").setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClicks(QApplication.focusWidget(), "8.1")
    tab_to(line_of(log.form, "who"))
    QTest.keyClicks(QApplication.focusWidget(), "Bo")
    tab_to(log.form.log)
    press(Qt.Key.Key_Space)
    assert lines(log) == [("Alkalinity", "8.1 dKH")]
    assert QApplication.focusWidget() is line_of(log.form, "value"), "ready for the next one"
    wall.on(minutes=1)
    QTest.keyClicks(QApplication.focusWidget(), "7.9")
    log_by_key(log)
    assert [amount for _, amount in lines(log)] == ["7.9 dKH", "8.1 dKH"]


def test_every_field_and_button_is_reached_with_tab(log: LogSheet, window: MainWindow):
    for kind, first in (("reading", "value"), ("dose", "amount"), ("exchange", "litres"), ("note", "text")):
        begin(log, kind)
        line_of(log.form, first).setFocus(Qt.FocusReason.TabFocusReason)
        for target in (line_of(log.form, "at"), line_of(log.form, "who"), log.form.log, log.chart, log.list):
            tab_to(target)


def test_enter_logs_nothing_and_the_wheel_changes_nothing(log: LogSheet):
    put(log, "value", "8.1")
    for name in ("value", "at", "kit", "who"):
        QTest.keyClick(line_of(log.form, name), Qt.Key.Key_Return)
    assert lines(log) == [], "Enter commits a field and presses no button (H29)"
    QTest.keyClick(line_of(log.form, "value"), Qt.Key.Key_Up)
    assert log.form.said()["value"] == Typed("8.1", "dKH")


def test_another_parameter_empties_the_number_and_brings_its_units(log: LogSheet):
    put(log, "value", "8.1")
    pick(log.form.fields["parameter"], "calcium")
    assert line_of(log.form, "value").text() == "", "a number of another parameter is another reading"
    put(log, "value", "420")
    click(log.form.log)
    assert lines(log) == [("Calcium", "420 mg per L")]
    assert kept(log)[0].subject == "calcium"


@pytest.mark.parametrize(
    ("parameter", "typed", "row", "canonical"),
    [
        ("alkalinity", "2.9 meq/L", "2.9 meq per L", 2.9),
        ("alkalinity", "145 mg/L as CaCO3", "145 ppm as CaCO3", 145 / 50.04345),
        ("alkalinity", "8.1 °dKH", "8.1 dKH", 8.1 / 2.8039),
        ("calcium", "1049 mg/L as CaCO3", "", None),
        ("nitrate", "0.9 mg/L as N", "0.9 mg per L as N", None),
    ],
)
def test_a_unit_that_was_typed_stays_beside_its_number(
    log: LogSheet, parameter: str, typed: str, row: str, canonical: float | None
):
    pick(log.form.fields["parameter"], parameter)
    put(log, "value", typed)
    click(log.form.log)
    if not row:
        assert lines(log) == []
        assert said_beside(log, "value")
        return
    ((_, amount),) = lines(log)
    assert amount == row
    if canonical is not None:
        assert kept(log)[0].value == pytest.approx(canonical, rel=1e-4)


# What cannot be taken


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ("", ("Fill",)),
        ("140", ("not a likely reading", "4 dKH to 15 dKH")),
        ("3", ("not a likely reading", "4 dKH to 15 dKH")),
        ("-8", ()),
        ("1e1", ()),
        ("8,,1", ()),
        ("8.1.2", ()),
        ("8 1", ()),
        ("nan", ()),
        ("٨", ()),
        ("8.1 L", ()),
        ("140 mg/L", ("does not say as what",)),
        ("1,250 mg/L as CaCO3", ()),
    ],
)
def test_a_bad_reading_stays_as_typed_and_is_said_beside_its_field(log: LogSheet, typed: str, words: tuple[str, ...]):
    put(log, "value", typed)
    put(log, "who", "Ada")
    click(log.form.log)
    assert kept(log) == []
    assert said_beside(log, "value")
    for word in words:
        assert word in said_beside(log, "value")
    assert log.form.fields["value"].typed().text == typed
    assert line_of(log.form, "value").text() == typed
    assert log.form.said().get("who") == Typed("Ada"), "what else was filled in stays too"
    assert said_below(log) == []
    put(log, "value", "8.1")
    click(log.form.log)
    assert lines(log) == [("Alkalinity", "8.1 dKH")]
    assert said_beside(log, "value") == ""


@pytest.mark.parametrize("typed", ["", "0", "-3", "12,,5", "10 g", "10 000 001 mL", "1,250"])
def test_a_bad_amount_stays_as_typed_and_is_said_beside_its_field(log: LogSheet, window: MainWindow, typed: str):
    begin_dose(log, jug_named(window, ASH))
    put(log, "amount", typed)
    click(log.form.log)
    assert kept(log) == []
    assert said_beside(log, "amount")
    assert line_of(log.form, "amount").text() == typed


def test_a_dose_needs_a_jug_that_can_be_reckoned(log: LogSheet, window: MainWindow):
    begin(log, "dose")
    put(log, "amount", "10")
    click(log.form.log)
    assert kept(log) == []
    assert "Choose the jug" in said_beside(log, "stock")
    ash = jug_named(window, ASH)
    document_of(window).edit(document_of(window).batch_in_use(ash), "dissolved", Typed(""))
    begin_dose(log, ash, "10")
    click(log.form.log)
    assert kept(log) == [], "nobody could say what it carried"
    assert said_beside(log, "stock")


def test_an_empty_note_is_said_and_blanks_are_no_note(log: LogSheet):
    begin(log, "note")
    for text in ("", "   "):
        put(log, "text", text)
        click(log.form.log)
        assert kept(log) == []
        assert said_beside(log, "text")


def test_markup_is_shown_as_it_was_typed(log: LogSheet, window: MainWindow):
    name = "<b>North</b> &amp; <img src=x>"
    document_of(window).edit(log._system, "name", Typed(name))
    begin(log, "note")
    put(log, "text", "<i>red</i><br>line & more")
    put(log, "who", "<u>Bo</u>")
    click(log.form.log)
    (row,) = log.list.lines.rows
    assert row.note == "<i>red</i><br>line & more · <u>Bo</u>"
    model = log.list.model()
    assert model.data(model.index(0, 3), Qt.ItemDataRole.DisplayRole) == row.note
    # A tool tip takes for rich what looks rich, so that everything in it is escaped.
    tip = QTextDocument()
    tip.setHtml(model.data(model.index(0, 3), Qt.ItemDataRole.ToolTipRole))
    assert "<i>red</i><br>line & more" in tip.toPlainText()
    assert log.header.name.text() == name
    begin(log, "note")
    put(log, "text", "<i>red</i><br>line & more")
    click(log.form.log)
    rich = [label for label in log.findChildren(QLabel) if label.textFormat() != Qt.TextFormat.PlainText]
    # "&1" is the key of a step's title, and the only sign that is ours.
    shown = [label.text().replace("&1\u2002", "") for label in rich]
    assert not [text for text in shown if "<" in text or "&" in text]


# When it was


@pytest.mark.parametrize(
    ("typed", "at"),
    [
        ("", MORNING),
        ("now", MORNING),
        ("today 08:00", datetime(2026, 11, 25, 8, 0, tzinfo=UTC)),
        ("8:05", datetime(2026, 11, 25, 8, 5, tzinfo=UTC)),
        ("yesterday 23:50", datetime(2026, 11, 24, 23, 50, tzinfo=UTC)),
        ("2024-02-29 07:10", datetime(2024, 2, 29, 7, 10, tzinfo=UTC)),
    ],
)
def test_when_it_was(log: LogSheet, typed: str, at: datetime):
    put(log, "value", "8.1")
    put(log, "at", typed)
    click(log.form.log)
    (entry,) = kept(log)
    assert entry.at == at
    assert whens(log) == [f"{at:%a} {at.day} {at:%b %Y %H:%M}"]


@pytest.mark.parametrize(
    "typed",
    [
        "today 10:36",
        "10:36",
        "2026-11-26 09:00",
        "8 am",
        "8:05 pm",
        "25/11/2026 08:00",
        "2026-11-25",
        "2026-02-30 08:00",
        "25:00",
        "soon",
    ],
)
def test_H8_a_time_that_cannot_be_is_said_beside_it_and_nothing_is_logged(log: LogSheet, typed: str):
    put(log, "value", "8.1")
    put(log, "at", typed)
    click(log.form.log)
    assert kept(log) == []
    assert said_beside(log, "at")
    assert line_of(log.form, "at").text() == typed
    assert line_of(log.form, "value").text() == "8.1"
    put(log, "at", "10:20")
    click(log.form.log)
    assert [entry.at for entry in kept(log)] == [datetime(2026, 11, 25, 10, 20, tzinfo=UTC)]


def test_H8_a_clock_may_run_five_minutes_fast(log: LogSheet):
    put(log, "value", "8.1")
    put(log, "at", "10:34")
    assert said_beside(log, "at") == "", "the field takes it"
    click(log.form.log)
    assert said_beside(log, "at") == ""
    assert len(kept(log)) == 1


def test_H8_near_midnight_the_day_is_asked_before_anything_is_logged(log: LogSheet, wall: Wall):
    wall.at = datetime(2026, 11, 26, 0, 10, tzinfo=UTC)
    put(log, "value", "8.1")
    put(log, "at", "23:50")
    click(log.form.log)
    assert kept(log) == []
    assert "today or yesterday" in said_beside(log, "at")
    line_of(log.form, "at").setFocus(Qt.FocusReason.TabFocusReason)
    slip = when_field(log).slip
    assert slip is not None
    (yesterday,) = slip.row.buttons()
    click(yesterday)
    click(log.form.log)
    assert [entry.at for entry in kept(log)] == [datetime(2026, 11, 25, 23, 50, tzinfo=UTC)]
    assert whens(log) == ["Wed 25 Nov 2026 23:50"]


def test_what_is_noted_without_a_time_is_noted_at_the_press_and_not_when_it_was_typed(log: LogSheet, wall: Wall):
    put(log, "value", "8.1")
    wall.on(hours=3)
    click(log.form.log)
    assert [entry.at for entry in kept(log)] == [MORNING + timedelta(hours=3)]


# Which system


def test_what_is_noted_goes_to_the_system_that_is_named(log: LogSheet, window: MainWindow):
    room, document = room_of(window), document_of(window)
    first, second = document.records("system")[:2]
    room.systems.choose(second)
    put(log, "value", "8.1")
    click(log.form.log)
    assert log.header.name.text() == document.value(second, "name").text
    assert [e.system_id for e in document.log.entries(second)] == [second]
    assert document.log.entries(first) == []


def test_what_was_typed_for_one_system_never_goes_to_another_and_is_there_again(log: LogSheet, window: MainWindow):
    room, document = room_of(window), document_of(window)
    first, second = document.records("system")[:2]
    put(log, "value", "8.1")
    put(log, "at", "yesterday 18:30")
    room.systems.choose(second)
    assert "value" not in log.form.said() or not log.form.said()["value"].text
    assert line_of(log.form, "value").text() == ""
    click(log.form.log)
    assert document.log.entries(second) == []
    room.systems.choose(first)
    assert line_of(log.form, "value").text() == "8.1"
    click(log.form.log)
    assert [e.at for e in document.log.entries(first)] == [datetime(2026, 11, 24, 18, 30, tzinfo=UTC)]


def test_what_is_half_typed_waits_while_another_sheet_is_looked_at(log: LogSheet, window: MainWindow):
    put(log, "value", "8.1")
    press(Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    assert not log.isVisible()
    assert log_of(window) is log
    assert line_of(log.form, "value").text() == "8.1"


def test_the_jugs_offered_are_those_on_the_shelf(log: LogSheet, window: MainWindow):
    document = document_of(window)
    begin(log, "dose")
    stocks = log.form.fields["stock"]
    new = document.add_record("stock", {"name": Typed("Fresh jug")})
    log_of(window)
    press(Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    log_of(window)
    assert new in dict(stocks.combo.options())
    document.remove_record(new)
    press(Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    log_of(window)
    assert new not in dict(stocks.combo.options())
    assert present() == MORNING
