"""The Log sheet in the real window: noted, shown, asked about twice, changed, taken back; learned and offered."""

from __future__ import annotations

import uuid
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from evenwater.engine.quantities import Typed
from evenwater.screens.local_zone import present
from evenwater.session import Entry
from evenwater.session import demo as session_demo
from evenwater.ui.log_sheet import LogSheet
from evenwater.ui.main_window import MainWindow
from tests.ui.stocks_making import click, to_sheet
from tests.ui.window_making import opened, room_of, sheet_of


@pytest.fixture
def demo(qtbot, monkeypatch) -> MainWindow:
    """The invented room with nothing in its log yet."""
    monkeypatch.setattr(session_demo, "demo_entries", lambda *_: iter(()))
    return opened(None, qtbot, demo=True)


@pytest.fixture
def log(demo: MainWindow) -> LogSheet:
    to_sheet("Log")
    return room_of(demo).log


def note(log: LogSheet, name: str, text: str) -> None:
    """Type into a field of the form, key by key."""
    log.form.fields[name].setFocus(Qt.FocusReason.TabFocusReason)
    line = QApplication.focusWidget()
    assert isinstance(line, QLineEdit)
    line.selectAll()
    QTest.keyClicks(line, text)
    QTest.keyClick(line, Qt.Key.Key_Tab)


def lines(log: LogSheet) -> list[tuple[str, str]]:
    return [(row.what, row.amount.replace("\u00a0", " ")) for row in log.list.lines.rows]


def test_a_reading_is_logged_as_typed_and_undo_takes_it_back(log: LogSheet, demo: MainWindow):
    note(log, "value", "7,9")
    note(log, "who", "K. L.")
    click(log.form.log)
    assert lines(log) == [("Alkalinity", "7,9 dKH")]
    entry = room_of(demo)._document.log.latest(log._system, "reading", "alkalinity")
    assert entry.fields["value"].text == "7,9"
    assert entry.value == pytest.approx(7.9 / 2.8039, rel=1e-4)
    assert log.chart.reading_words().endswith("7.90 dKH".replace(" ", " "))
    click(log.header.undo)
    assert lines(log) == []
    click(log.header.redo)
    assert lines(log) == [("Alkalinity", "7,9 dKH")]


@pytest.mark.parametrize(
    ("text", "said"), [("", "Fill"), ("140", "likely"), ("7.9 mg/L", "does not say as what"), ("7,,9", "")]
)
def test_a_reading_that_cannot_be_taken_is_kept_and_said(log: LogSheet, text: str, said: str):
    note(log, "value", text)
    click(log.form.log)
    assert lines(log) == []
    field = log.form.fields["value"]
    assert said in field.message
    assert field.message
    assert field.typed().text == text


def test_H14_H15_the_same_dose_within_minutes_is_asked_about(log: LogSheet, demo: MainWindow):
    document = room_of(demo)._document
    log.form.kind.chosen.emit("dose")
    log.form.kind.set_current("dose")
    log.form.fields["stock"].chosen.emit(document.records("stock")[0])
    note(log, "amount", "12.5")
    note(log, "who", "A.")
    click(log.form.log)
    assert lines(log) == [("Dose: Soda ash, white jug", "12.5 mL")]
    note(log, "amount", "12.5")
    click(log.form.log)
    assert len(lines(log)) == 1, "asked before it is noted twice"
    (row,) = [row for row in log.form.messages._rows if row.isVisibleTo(log.form.messages)]
    assert "12.5" in row.label.text()
    assert "by A." in row.label.text()
    click(row.buttons()[0])
    assert len(lines(log)) == 2


def test_a_dose_keeps_what_it_carried(log: LogSheet, demo: MainWindow):
    document = room_of(demo)._document
    ash = document.records("stock")[0]
    log.form.kind.set_current("dose")
    log.form._choose_kind("dose")
    log.form.fields["stock"].chosen.emit(ash)
    note(log, "amount", "10")
    click(log.form.log)
    before = document.log.entries(log._system, ("dose",))[0].fields["carries"].text
    assert before.startswith("alkalinity 2.000")
    document.edit(document.batch_in_use(ash), "dissolved", Typed("150", "g"))
    assert document.log.entries(log._system, ("dose",))[0].fields["carries"].text == before


def test_an_entry_is_changed_and_its_history_kept(log: LogSheet, demo: MainWindow):
    note(log, "value", "7.9")
    click(log.form.log)
    log.list.selectRow(0)
    click(log.change)
    note(log, "value", "8.1")
    click(log.form.log)
    assert lines(log) == [("Alkalinity", "8.1 dKH")]
    document = room_of(demo)._document
    (entry,) = document.log.entries(log._system, ("reading",))
    assert [v.entry.fields["value"].text for v in document.log.history(entry.id)] == ["7.9"]


def fill(demo: MainWindow, use: float) -> None:
    """Log half a year of readings of alkalinity that falls by a use [meq/L per day] and is dosed back at once."""
    document = room_of(demo)._document
    system, ash = document.records("system")[0], document.records("stock")[0]
    now = present()
    entries, value = [], 2.9
    for day in range(40, 0, -1):
        value -= use
        if day % 2 == 0:
            at = now - timedelta(days=day)
            off = 0.03 if day % 4 else -0.03
            fields = {"value": Typed(f"{(value + off) * 2.8039:.2f}", "dKH")}
            entries.append(Entry(uuid.uuid4().hex, system, "reading", "alkalinity", at, "", fields, value + off))
        ml = 340.0 * use / 2.0
        fields = {"amount": Typed(f"{ml:.1f}", "mL"), "carries": Typed("alkalinity 2.0 meq/mL")}
        at = now - timedelta(days=day) + timedelta(hours=1)
        entries.append(Entry(uuid.uuid4().hex, system, "dose", ash, at, "", fields, ml))
        value += use
    assert document.log.log(entries)


def test_the_use_is_learned_and_offered_but_never_over_what_was_typed(demo: MainWindow, qtbot):
    fill(demo, use=0.3)
    to_sheet("Log")
    room = room_of(demo)
    qtbot.waitUntil(lambda: "used now" in room.log.used.text(), timeout=20000)
    found = room.learning.ask(room.log._system, "alkalinity")
    assert float(found.use.text) == pytest.approx(0.3 * 2.8039, abs=0.05)
    to_sheet("Correct")
    sheet = sheet_of(demo)
    field = sheet.form.fields["change.daily_use"]
    assert field.typed().text == "0.9", "what the keeper typed stays"
    sheet.records.edit("change.daily_use", Typed(""), None)
    sheet.recompute()
    field.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.waitUntil(lambda: field.slip is not None and field.slip.isVisible(), timeout=5000)
    click(field.slip.row.buttons()[0])
    assert sheet.records.values("correction")["daily_use"] == Typed(found.use.text, "dKH per day")
