"""A list changes only by an explicit choice."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from evenwater.screens.views import Message
from evenwater.ui.choice import Choice

OPTIONS = (
    ("", "Raises alkalinity"),
    ("carbonate", "sodium CARBonate anhydrous"),
    ("bicarbonate", "sodium BICARBonate"),
    ("", "Raises calcium"),
    ("chloride", "calcium CHLORide dihydrate"),
)


@pytest.fixture
def choice(qtbot) -> Choice:
    made = Choice("What is in it")
    qtbot.addWidget(made)
    made.set_options(OPTIONS)
    made.set_current("carbonate")
    made.show()
    made.activateWindow()
    made.combo.setFocus()
    qtbot.waitUntil(made.combo.hasFocus)
    return made


@pytest.fixture
def heard(choice: Choice) -> list[str]:
    said: list[str] = []
    choice.chosen.connect(said.append)
    return said


def test_showing_a_value_is_not_choosing_it(choice: Choice, heard: list[str]) -> None:
    choice.set_current("chloride")
    assert (choice.current(), heard) == ("chloride", [])


def test_H29_the_wheel_chooses_nothing(choice: Choice, heard: list[str]) -> None:
    middle = QPointF(choice.combo.rect().center())
    event = QWheelEvent(
        middle,
        choice.combo.mapToGlobal(middle),
        QPoint(),
        QPoint(0, -120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(choice.combo, event)
    assert not event.isAccepted(), "the page may scroll"
    assert (choice.current(), heard) == ("carbonate", [])


@pytest.mark.parametrize("key", [Qt.Key.Key_S, Qt.Key.Key_C, Qt.Key.Key_Home, Qt.Key.Key_End, Qt.Key.Key_Return])
def test_H10_no_key_chooses_on_a_closed_list(choice: Choice, heard: list[str], key: Qt.Key) -> None:
    QTest.keyClick(choice.combo, key)
    assert (choice.current(), heard) == ("carbonate", [])


@pytest.mark.parametrize("key", [Qt.Key.Key_Down, Qt.Key.Key_Up, Qt.Key.Key_Space, Qt.Key.Key_F4])
def test_keys_open_the_list_and_enter_chooses(choice: Choice, heard: list[str], key: Qt.Key, qtbot) -> None:
    QTest.keyClick(choice.combo, key)
    view = choice.combo.view()
    qtbot.waitUntil(view.isVisible)
    assert heard == []
    QTest.keyClick(view, Qt.Key.Key_Down)
    assert heard == [], "moving through the open list is not choosing"
    QTest.keyClick(view, Qt.Key.Key_Return)
    assert (choice.current(), heard) == ("bicarbonate", ["bicarbonate"])


def test_H10_typing_ahead_in_the_open_list_chooses_nothing(choice: Choice, heard: list[str], qtbot) -> None:
    choice.combo.showPopup()
    view = choice.combo.view()
    qtbot.waitUntil(view.isVisible)
    QTest.keyClick(view, Qt.Key.Key_C)
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert (choice.current(), heard) == ("carbonate", [])


def test_headings_cannot_be_chosen(choice: Choice) -> None:
    model = choice.combo.model()
    for row, (name, _) in enumerate(OPTIONS):
        selectable = bool(model.flags(model.index(row, 0)) & Qt.ItemFlag.ItemIsSelectable)
        assert selectable == bool(name)


def test_new_options_keep_what_is_chosen(choice: Choice, heard: list[str]) -> None:
    choice.set_options((("carbonate", "sodium CARBonate anhydrous"), ("other", "another")))
    assert choice.current() == "carbonate"
    choice.set_options((("other", "another"),))
    assert (choice.current(), heard) == ("", [])


def test_L10_every_entry_can_be_read_whole(choice: Choice) -> None:
    metrics = choice.combo.fontMetrics()
    longest = max(metrics.horizontalAdvance(words) for _, words in OPTIONS)
    assert choice.combo.view().minimumWidth() >= longest + 16
    shown = metrics.horizontalAdvance(choice.combo.currentText())
    assert choice.minimumSizeHint().width() > shown


def test_a_refusal_stands_below_and_is_spoken(choice: Choice) -> None:
    choice.set_message(Message("This does not raise alkalinity."))
    assert choice.note.text == "This does not raise alkalinity."
    assert choice.combo.accessibleDescription() == "This does not raise alkalinity."
    assert choice.combo.accessibleName() == "What is in it"
    choice.set_message(None)
    assert choice.note.text == ""
