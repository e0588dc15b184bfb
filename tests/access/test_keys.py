"""What single keys do: Enter commits, Escape takes back, Alt and Down opens a list, a number leads to a step."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox

from evenwater.ui.line_entry import LineEntry
from evenwater.ui.sheet_list import SHEETS
from tests.access.rooms import demo, press

pytestmark = pytest.mark.usefixtures("young_demo")

ALT = Qt.KeyboardModifier.AltModifier


def test_keys_of_a_field_and_of_a_step(qtbot):
    window, room = demo(qtbot)
    field = room.sheet.form.fields["change.measured"]
    pressed: list[object] = []
    for button in window.findChildren(QAbstractButton):
        button.clicked.connect(pressed.append)
    field.line.setFocus(Qt.FocusReason.TabFocusReason)
    before = field.line.text()
    QTest.keyClicks(field.line, "1")
    press(Qt.Key.Key_Escape)
    assert field.line.text() == before
    press(Qt.Key.Key_Return)
    assert QApplication.focusWidget() is field.line
    assert not pressed, "Enter commits the field and nothing else"
    press(Qt.Key.Key_Down, ALT)
    assert field.units.view().isVisible(), "what stands beside a number is chosen without leaving it"
    QTest.keyClick(field.units.view(), Qt.Key.Key_Escape)
    assert not field.units.view().isVisible()
    window.activateWindow()
    press(Qt.Key.Key_4, ALT)
    assert QApplication.focusWidget() is room.sheet.form.fields["pump"].combo, "Alt and its number lead to a step"
    room.sheets.choose(SHEETS.index("Pumps"))
    lines = room.pumps.form.calibration.findChildren(LineEntry)
    line = next(line for line in lines if line.isVisible() and line.accessibleName().startswith("Run 1 lasted"))
    line.setFocus()
    press(Qt.Key.Key_Down, ALT)
    units = line.parentWidget().findChild(QComboBox)
    assert units.view().isVisible(), "also where Tab passes over the units"
    QTest.keyClick(units.view(), Qt.Key.Key_Escape)
