"""Works in the Log sheet of the real window as a keeper does, at an hour and in a zone of the test's choosing."""

from __future__ import annotations

import sqlite3
import time
import tomllib
import uuid
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from evenwater.assets import resources
from evenwater.engine.quantities import Typed
from evenwater.screens import local_zone
from evenwater.screens.local_zone import present
from evenwater.session import Document, Entry
from evenwater.session.demo import demo_records, fresh_ids
from evenwater.store import Store
from evenwater.ui.choice import Choice, Combo
from evenwater.ui.log_form import LogForm
from evenwater.ui.log_sheet import LogSheet
from evenwater.ui.main_window import MainWindow
from evenwater.ui.time_field import TimeField
from tests.ui.stocks_making import press, to_sheet
from tests.ui.window_making import room_of


@dataclass
class Wall:
    """The clock on the wall: what ``present`` says until it is set anew."""

    at: datetime

    def on(self, **passed: float) -> None:
        """Let time pass."""
        self.at += timedelta(**passed)


def hung(monkeypatch: pytest.MonkeyPatch, at: datetime) -> Wall:
    """Hang a clock that shows an instant; everything that asks for the present asks it."""
    wall = Wall(at)

    class Stopped(datetime):
        @classmethod
        def now(cls, tz: tzinfo | None = None) -> datetime:  # type: ignore[override]
            return wall.at.astimezone(tz)

    monkeypatch.setattr(local_zone, "datetime", Stopped)
    return wall


@contextmanager
def living_in(zone: str) -> Iterator[None]:
    """Let this machine stand in a zone."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("TZ", zone)
        time.tzset()
        try:
            yield
        finally:
            patch.undo()
            time.tzset()


def furnished(file: Path, now: datetime | None = None) -> Path:
    """Write the records of the demonstration, without what is exchanged, into a new log that holds no entries; return its file."""
    tables = tomllib.loads((resources() / "demo.toml").read_text()) | {"water": []}
    with Store.open(file) as store:
        document = Document(store)
        assert document.fill(list(demo_records(tables, now or present(), fresh_ids(tables))))
    return file


@contextmanager
def held(file: Path) -> Iterator[None]:
    """Hold the file as another program might: nothing can be saved."""
    other = sqlite3.connect(file, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    try:
        yield
    finally:
        other.execute("ROLLBACK")
        other.close()


def log_of(window: MainWindow) -> LogSheet:
    """Go to the Log sheet by its key."""
    to_sheet("Log")
    log = room_of(window).log
    assert log.isVisible()
    return log


def line_of(form: LogForm, name: str) -> QLineEdit:
    """Return the line of a field that can be seen."""
    field = form.fields[name]
    assert field.isVisible(), f"{name} is not shown"
    line = field.focusProxy()
    assert isinstance(line, QLineEdit)
    return line


def put(log: LogSheet, name: str, text: str) -> None:
    """Type over what stands in a field, key by key, and go on with Tab."""
    line = line_of(log.form, name)
    line.setFocus(Qt.FocusReason.TabFocusReason)
    line.selectAll()
    type_keys(line, text) if text else QTest.keyClick(line, Qt.Key.Key_Delete)
    QTest.keyClick(line, Qt.Key.Key_Tab)


def type_keys(line: QLineEdit, text: str) -> None:
    """Type a text key by key; Qt's own helper knows the keys of ASCII only."""
    for letter in text:
        if letter.isascii():
            QTest.keyClicks(line, letter)
        else:
            for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
                QApplication.sendEvent(line, QKeyEvent(kind, 0, Qt.KeyboardModifier.NoModifier, letter))


def pick(choice: Choice, name: str) -> None:
    """Choose an entry of a list by its id with the keys alone: open, move, Enter."""
    combo: Combo = choice.combo
    target = combo.findData(name)
    assert target >= 0, f"{name} is not offered: {combo.options()}"
    combo.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(combo, Qt.Key.Key_Space)
    view = combo.view()
    while view.currentIndex().row() < target:
        QTest.keyClick(view, Qt.Key.Key_Down)
    while view.currentIndex().row() > target:
        QTest.keyClick(view, Qt.Key.Key_Up)
    QTest.keyClick(view, Qt.Key.Key_Return)
    # Without a screen nobody gives the focus back from the list that has closed.
    combo.window().activateWindow()
    QCoreApplication.processEvents()


def begin(log: LogSheet, kind: str) -> None:
    """Choose what is noted."""
    pick(log.form.kind, kind)
    assert log.form.kind.current() == kind


def begin_dose(log: LogSheet, stock: str, amount: str = "") -> None:
    """Begin to note a dose from a jug."""
    begin(log, "dose")
    stocks = log.form.fields["stock"]
    assert isinstance(stocks, Choice)
    pick(stocks, stock)
    if amount:
        put(log, "amount", amount)


def log_by_key(log: LogSheet) -> None:
    """Press "Log it" by its key; Qt lets go of a button that was pressed so a moment later."""
    press(Qt.Key.Key_L, Qt.KeyboardModifier.AltModifier)
    assert log.form.log.isDown()
    for _ in range(200):
        if not log.form.log.isDown():
            return
        QTest.qWait(10)
    pytest.fail("the button stays down")


def lines(log: LogSheet) -> list[tuple[str, str]]:
    """Return what the list says of each entry, the newest first, with ordinary spaces."""
    return [(row.what, row.amount.replace("\u00a0", " ")) for row in log.list.lines.rows]


def whens(log: LogSheet) -> list[str]:
    """Return the times in the list, the newest first."""
    return [row.when for row in log.list.lines.rows]


def said_beside(log: LogSheet, name: str) -> str:
    """Return the sentence beside a field that can be seen."""
    field = log.form.fields[name]
    assert field.isVisible(), f"{name} is not shown"
    message: str = field.message  # type: ignore[attr-defined]
    return message.replace("\u00a0", " ")


def said_below(log: LogSheet) -> list[str]:
    """Return the sentences below the form that belong to no field."""
    rows = log.form.messages._rows
    return [row.label.text().replace("\u00a0", " ") for row in rows if row.isVisibleTo(log)]


def kept(log: LogSheet) -> list[Entry]:
    """Return all entries of the system that is shown, as the document has them."""
    return log._document.log.entries(log._system)


def when_field(log: LogSheet) -> TimeField:
    field = log.form.fields["at"]
    assert isinstance(field, TimeField)
    return field


def reading(
    document: Document,
    text: str,
    value: float,
    at: datetime | None = None,
    parameter: str = "alkalinity",
    number: int = 0,
) -> Entry:
    """Return a reading of a system, as the form would note it [canonical unit]."""
    system = document.records("system")[number]
    fields = {"value": Typed(text, "dKH" if parameter == "alkalinity" else "mg/L")}
    return Entry(uuid.uuid4().hex, system, "reading", parameter, at or present(), "", fields, value)
