"""The field that takes when something was measured."""

from __future__ import annotations

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from evenwater.engine.quantities import Typed
from evenwater.screens.local_zone import present
from evenwater.ui.time_field import TimeField

ZONE = ZoneInfo("Europe/Berlin")


class Clock:
    def __init__(self) -> None:
        self.time = datetime(2026, 11, 25, 9, 0, tzinfo=ZONE)

    def now(self) -> datetime:
        return self.time


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def field(qtbot, clock: Clock) -> TimeField:
    made = TimeField("When", now=clock.now)
    qtbot.addWidget(made)
    made.resize(320, 90)
    made.show()
    made.activateWindow()
    made.line.setFocus()
    qtbot.waitUntil(made.line.hasFocus)
    return made


@pytest.fixture
def heard(field: TimeField) -> list[Typed]:
    said: list[Typed] = []
    field.edited.connect(said.append)
    return said


def type_and_enter(field: TimeField, text: str) -> None:
    field.line.selectAll()
    QTest.keyClicks(field.line, text)
    QTest.keyClick(field.line, Qt.Key.Key_Return)


def test_words_become_one_instant_with_its_offset(field: TimeField, heard: list[Typed], qtbot) -> None:
    with qtbot.waitSignal(field.committed):
        type_and_enter(field, "yesterday 18:30")
    assert heard[-1] == field.typed() == Typed("2026-11-24T18:30:00+01:00")
    assert (field.line.text(), field.note.text, field.state) == ("yesterday 18:30", "14\u00a0h ago", "ok")


def test_now_is_one_press(field: TimeField, heard: list[Typed]) -> None:
    QTest.mouseClick(field.now_button, Qt.MouseButton.LeftButton)
    assert heard == [Typed("2026-11-25T09:00:00+01:00")]
    assert (field.line.text(), field.note.text) == ("today 09:00", "just now")


def test_H31_what_cannot_be_taken_is_kept_and_refused(field: TimeField) -> None:
    type_and_enter(field, "3/11 8:00")
    assert field.state == "error"
    assert field.typed() == Typed("3/11 8:00")
    assert field.line.text() == "3/11 8:00"
    assert "which is the day" in field.message
    assert field.line.accessibleDescription() == field.message


def test_H8_a_time_still_to_come_is_refused(field: TimeField) -> None:
    type_and_enter(field, "today 23:00")
    assert field.state == "error"
    assert field.instant() is None


def test_H8_near_midnight_the_day_is_asked_for(field: TimeField, clock: Clock, heard: list[Typed]) -> None:
    clock.time = clock.time.replace(hour=0, minute=10)
    type_and_enter(field, "00:05")
    assert field.state == "ask"
    buttons = field.slip.row.buttons()
    assert [b.text() for b in buttons] == ["yesterday 00:05", "today 00:05"]
    buttons[0].click()
    assert heard[-1] == Typed("2026-11-24T00:05:00+01:00")
    assert field.state == "ok"


def test_H7_the_age_follows_the_clock_and_today_becomes_yesterday(
    field: TimeField, clock: Clock, heard: list[Typed]
) -> None:
    field.set_typed(Typed("2026-11-25T08:00:00+01:00"))
    assert (field.line.text(), field.note.text) == ("today 08:00", "1\u00a0h ago")
    clock.time += timedelta(days=1)
    field.refresh()
    assert (field.line.text(), field.note.text) == ("yesterday 08:00", "25\u00a0h ago")
    assert heard == [], "time passing is no edit"


def test_the_clock_leaves_what_is_being_typed_alone(field: TimeField, clock: Clock) -> None:
    QTest.keyClicks(field.line, "yest")
    clock.time += timedelta(minutes=1)
    field.refresh()
    assert (field.line.text(), field.state) == ("yest", "typing")


def test_H28_focus_in_and_out_changes_nothing(field: TimeField, heard: list[Typed]) -> None:
    stored = Typed("2026-10-25T02:30:00+02:00")  # in the hour that comes twice
    field.set_typed(stored)
    for _ in range(200):
        field.now_button.setFocus()
        field.line.setFocus()
    assert field.typed() == stored
    assert heard == []


def test_escape_takes_back(field: TimeField, heard: list[Typed]) -> None:
    stored = Typed("2026-11-25T08:00:00+01:00")
    field.set_typed(stored)
    field.now_button.setFocus()
    field.line.setFocus()
    QTest.keyClicks(field.line, "x")
    QTest.keyClick(field.line, Qt.Key.Key_Escape)
    assert heard[-1] == stored
    assert field.line.text() == "today 08:00"


def test_the_present_has_a_zone() -> None:
    assert present().utcoffset() is not None
