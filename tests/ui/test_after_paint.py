"""An answer is reckoned after what was typed is painted: once, never later than asked for, and marked as old until then."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QPaintEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from evenwater.ui.after_paint import AfterPaint, OldMark


class Field(QWidget):
    """A line inside a field, as the product's are."""

    def __init__(self, parent: QWidget, told: list[str]) -> None:
        super().__init__(parent)
        self._told = told
        self.line = QLineEdit(self)
        self.line.installEventFilter(self)
        QVBoxLayout(self).addWidget(self.line)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Tell that the line is painted."""
        if isinstance(event, QPaintEvent):
            self._told.append(f"painted {self.line.text()}")
        return False


class Sheet(QWidget):
    """A field at the left and an answer at the right; everything that happens is told in order."""

    def __init__(self) -> None:
        super().__init__()
        self.told: list[str] = []
        self.field, self.button, self.answer = Field(self, self.told), QPushButton("Choose", self), QWidget(self)
        row = QHBoxLayout(self)
        row.setSpacing(16)
        for part in (self.field, self.button, self.answer):
            row.addWidget(part)
        self.mark = OldMark(self.answer, self)
        self.after = AfterPaint(self, self.mark)
        self.after.due.connect(self.reckon)
        self.field.line.textEdited.connect(self.edited)

    def edited(self) -> None:
        """Ask for the answer to what stands in the field."""
        self.after.ask(self.field)

    def reckon(self) -> None:
        """Give the answer."""
        self.told.append(f"reckoned {self.field.line.text()}")


@pytest.fixture
def sheet(qtbot) -> Sheet:
    made = Sheet()
    qtbot.addWidget(made)
    made.resize(600, 100)
    made.show()
    qtbot.waitExposed(made)
    made.activateWindow()
    made.field.line.setFocus()
    qtbot.waitUntil(made.field.line.hasFocus)
    QTest.qWait(20)
    made.told.clear()
    return made


def bar(sheet: Sheet) -> str:
    """Return the colour of the margin beside the answer."""
    left = sheet.answer.x() - 6
    return sheet.grab().toImage().pixelColor(left, sheet.answer.y() + sheet.answer.height() // 2).name()


def test_keys_that_come_together_are_painted_and_then_answered_once(sheet: Sheet, qtbot) -> None:
    QTest.keyClicks(sheet.field.line, "12")
    assert sheet.after.waiting()
    assert not sheet.told, "nothing is reckoned in the key"
    qtbot.waitUntil(lambda: not sheet.after.waiting())
    assert sheet.told.index("reckoned 12") > sheet.told.index("painted 12")
    assert [each for each in sheet.told if each.startswith("reckoned")] == ["reckoned 12"]
    QTest.qWait(80)
    assert sheet.told.count("reckoned 12") == 1, "nor once more at the latest moment"


def test_an_older_answer_is_marked_until_the_new_one_is_there(sheet: Sheet, qtbot) -> None:
    before = bar(sheet)
    QTest.keyClick(sheet.field.line, "1")
    assert sheet.mark.old
    assert bar(sheet) == sheet.palette().mid().color().name() != before
    sheet.after.finish()
    assert not sheet.mark.old
    assert bar(sheet) == before


def test_what_is_made_of_the_answer_has_it_reckoned_first(sheet: Sheet) -> None:
    sheet.after.finish()
    assert not sheet.told, "nothing was asked"
    QTest.keyClick(sheet.field.line, "1")
    sheet.after.finish()
    assert sheet.told == ["reckoned 1"]
    sheet.after.finish()
    assert sheet.told == ["reckoned 1"]


def test_an_answer_that_was_reckoned_for_another_reason_is_not_reckoned_again(sheet: Sheet) -> None:
    QTest.keyClick(sheet.field.line, "1")
    sheet.after.done()
    assert not sheet.after.waiting()
    QTest.qWait(100)
    assert not any(each.startswith("reckoned") for each in sheet.told)


def test_what_is_chosen_is_answered_at_once(sheet: Sheet) -> None:
    sheet.after.ask(sheet.button)
    assert sheet.told == ["reckoned "]
    sheet.button.setFocus()
    sheet.after.ask(sheet.field)
    assert sheet.told[-1] == "reckoned "
    assert not sheet.after.waiting()


def test_a_window_that_is_not_painted_is_answered_all_the_same(sheet: Sheet, qtbot) -> None:
    QTest.keyClick(sheet.field.line, "1")
    sheet.setUpdatesEnabled(False)
    qtbot.waitUntil(lambda: not sheet.after.waiting(), timeout=5000)
    assert "painted 1" not in sheet.told
    assert sheet.told[-1] == "reckoned 1"
