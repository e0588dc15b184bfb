"""Tables of words: what changes without moving anything, and words that can be marked."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QObject, QPointF, Qt
from PySide6.QtGui import QEnterEvent
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from evenwater.screens.views import WorkLine
from evenwater.ui.answer_panel import WorkTable
from evenwater.ui.plain_text import WordsLabel
from evenwater.ui.table import Table


class Requests(QObject):
    """Counts how often a widget is asked to lay out anew."""

    count = 0

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        self.count += event.type() == QEvent.Type.LayoutRequest
        return False


@pytest.fixture
def page(qtbot: QtBot) -> QWidget:
    page = QWidget()
    qtbot.addWidget(page)
    page.resize(400, 300)
    QVBoxLayout(page)
    return page


def said(table: QWidget) -> list[str]:
    return [label.text() for label in table.findChildren(WordsLabel) if label.isVisible()]


def test_other_words_of_the_same_height_move_nothing(page: QWidget) -> None:
    table = Table(page, ("Value", "Now"), (1, 1))
    page.layout().addWidget(table)
    table.set_rows((("Alkalinity", "8.10"), ("Calcium", "420")))
    page.show()
    QApplication.processEvents()
    requests = Requests(table)
    table.installEventFilter(requests)
    table.set_rows((("Alkalinity", "8.25"), ("Calcium", "421")))
    QApplication.processEvents()
    assert said(table) == ["Value", "Now", "Alkalinity", "8.25", "Calcium", "421"]
    assert requests.count == 0
    # Words that need another line get it.
    needed, long = (
        table.heightForWidth(table.width()),
        "421 and falling since the last test, by what the animals use in a day",
    )
    table.set_rows((("Alkalinity", "8.25"), ("Calcium", long)))
    QApplication.processEvents()
    label = next(label for label in table.findChildren(WordsLabel) if label.text() == long)
    assert requests.count > 0
    assert label.height() >= label.heightForWidth(label.width())
    assert table.heightForWidth(table.width()) > needed
    # A row less is taken away, and comes back with other words.
    table.set_rows((("Magnesium", "1300"),))
    assert said(table) == ["Value", "Now", "Magnesium", "1300"]
    table.set_rows((("Magnesium", "1300"), ("Nitrate", "2")))
    assert said(table)[-2:] == ["Nitrate", "2"]


def test_working_lines_are_used_again(page: QWidget) -> None:
    table = WorkTable(page)
    page.layout().addWidget(table)
    page.show()
    table.set_lines((WorkLine("a", "1 + 1", "2"), WorkLine("b", "2 + 2", "4")))
    table.set_lines((WorkLine("c", "3 + 3", "6"),))
    assert said(table) == ["c", "3 + 3", "6"]


def test_words_can_be_marked_once_the_mouse_is_over_them(page: QWidget) -> None:
    label = WordsLabel("4.7 mL every hour", page)
    page.layout().addWidget(label)
    page.show()
    marks = Qt.TextInteractionFlag.TextSelectableByMouse
    assert not label.textInteractionFlags() & marks
    size = label.sizeHint()
    QApplication.sendEvent(label, QEnterEvent(QPointF(1, 1), QPointF(1, 1), QPointF(1, 1)))
    assert label.textInteractionFlags() & marks
    assert label.sizeHint() == size
    label.setSelection(0, 3)
    QApplication.sendEvent(label, QEvent(QEvent.Type.Leave))
    assert label.selectedText() == "4.7"
    label.setSelection(0, 0)
    QApplication.sendEvent(label, QEvent(QEvent.Type.Leave))
    assert not label.textInteractionFlags() & marks
