"""What is looked at on every sheet, each look a function from (window, room, sheet) to what is wrong there, one line for each fault."""

from __future__ import annotations

import re
from itertools import pairwise

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QApplication, QComboBox, QLabel, QLineEdit, QWidget

from evenwater.screens.finder import SHEET_ACTIONS
from evenwater.screens.views import Message
from evenwater.ui.field_shell import FieldFrame, FieldShell
from evenwater.ui.find_actions import called as name_of
from evenwater.ui.form_column import Column
from evenwater.ui.form_parts import Step
from evenwater.ui.line_entry import LineEntry
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.reading_order import _region_of, in_reading_order
from evenwater.ui.room import Room
from evenwater.wording import say
from tests.access.rooms import called, controls, place, press
from tests.access.walk import faults, told

LEAST, MAIN = 32, 48
WRONG = "This is too much of it."
# What charts, bars and figures must at least have in their words, by the class of the widget.
FIGURES = {
    "RampChart": r"from [\d.,]+ to [\d.,]+ dKH, reached on .*\d\d:\d\d",
    "ExchangeChart": r"goes from [\d.,]+.*to [\d.,]+.*in \d+.*days",
    "WearChart": r"\d calibrations: at .*mL per min",
    "LogChart": r"\d+ readings|No readings yet",
    "TimetableStrip": r"\d+ doses",
    "FoodsChart": r"goes from [\d.,]+.*to [\d.,]+",
    "LimitBars": r"[\d.,]+.* of [\d.,]+",
    "Figure": r"\d",
}


def said(window: QWidget, _room: Room, _sheet: QWidget) -> list[str]:
    """Look at what a screen reader is told."""
    everything = told(window)
    found = faults(everything)
    for one in everything:
        wanted = FIGURES.get(type(one.widget).__name__)
        words = f"{one.description} {one.name}".replace("\xa0", " ")
        if wanted is not None and not re.search(wanted, words, re.DOTALL):
            found.append(f"no figures in the words of {one}")
    return found


def painted(window: QWidget) -> set[str]:
    """Return which of the painted things are to be seen."""
    return {type(one.widget).__name__ for one in told(window)} & set(FIGURES)


def fields(_window: QWidget, _room: Room, sheet: QWidget) -> list[str]:
    """Every field says its value, its unit and what is wrong with it."""
    return [fault for field in sheet.findChildren(FieldShell) if field.isVisible() for fault in _field_faults(field)]


def _field_faults(field: FieldShell) -> list[str]:
    spoken, found = field.spoken_for(), []
    interface = QAccessible.queryAccessibleInterface(spoken)
    assert interface is not None
    if isinstance(field, QuantityField):
        unit = field.units.currentText() if field.units.isVisible() else field._unit_label.text().strip()
        if unit and not interface.text(QAccessible.Text.Name).endswith(unit):
            found.append(f"the unit is not read: {called(spoken)}")
        if interface.text(QAccessible.Text.Value) != field.line.text():
            found.append(f"the value is not read: {called(spoken)}")
    own = field.message
    field.set_message(Message(WRONG))
    if interface.text(QAccessible.Text.Description) != (own or WRONG):
        found.append(f"what is wrong is not read: {called(spoken)}")
    field.set_message(None)
    return found


def answers(_window: QWidget, _room: Room, sheet: QWidget) -> list[str]:
    """The answer can be read as one text where the focus comes to it."""
    found = []
    for column in sheet.findChildren(Column):
        if column.isVisible() and column.focusPolicy() != Qt.FocusPolicy.NoFocus:
            column.setFocus()
            words = QAccessible.queryAccessibleInterface(column).text(QAccessible.Text.Description)
            if len(words) < 20:
                found.append(f"the answer says only {words!r}")
    return found


def tab(window: QWidget, room: Room, sheet: QWidget) -> list[str]:
    """Tab reaches everything that can be used exactly once, in the order it is read, and comes round; Shift and Tab goes back."""
    first = next((each for each in in_reading_order(sheet) if isinstance(each, LineEntry)), room.sheets)
    first.setFocus(Qt.FocusReason.TabFocusReason)
    forth: list[QWidget] = []
    while (held := QApplication.focusWidget()) is not None and held not in forth:
        forth.append(held)
        QTest.keyClick(held, Qt.Key.Key_Tab)
    found = []
    if QApplication.focusWidget() is not first:
        found.append(f"Tab comes back to {called(QApplication.focusWidget())}")
    for wanted in forth[:-4:-1]:
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backtab)
        if QApplication.focusWidget() is not wanted:
            found.append(f"Shift and Tab comes to {called(QApplication.focusWidget())}, not to {called(wanted)}")
    reached = set(forth)
    found += [
        f"Tab passes over {called(widget)}"
        for widget in controls(window)
        if widget.isEnabled() and widget not in reached and not (_by_its_line(widget) or _by_its_key(widget))
    ]
    found += [
        f"{called(one)} comes before {called(other)}, which is read first"
        for one, other in pairwise(forth)
        if one.parentWidget() is other.parentWidget() and _before(other, one) and other is not first
    ]
    return found


def _by_its_line(widget: QWidget) -> bool:
    """Say whether a list of units is opened from its number, by Alt and Down, and needs no stop of its own."""
    frame = widget.parentWidget()
    alone = isinstance(widget, QComboBox) and widget.focusPolicy() == Qt.FocusPolicy.ClickFocus
    return alone and isinstance(frame, FieldFrame) and frame.findChild(LineEntry) is not None


def _by_its_key(widget: QWidget) -> bool:
    """Say whether something takes no focus, since its name says the key that does the same."""
    return widget.focusPolicy() == Qt.FocusPolicy.NoFocus and "(F1)" in widget.accessibleName()


def _before(one: QWidget, other: QWidget) -> bool:
    """Say whether something is read before its neighbour: wholly above it, or beside it at the left."""
    a, b = (QRect(place(w), w.size()) for w in (one, other))
    if a.bottom() < b.top() or b.bottom() < a.top():
        return a.bottom() < b.top() and a.left() <= b.right()
    return a.right() < b.left()


def regions(_window: QWidget, room: Room, sheet: QWidget) -> list[str]:
    """F6 goes from the list of sheets through the records, the form and the answer and comes round; with Shift it goes back."""
    room.sheets.setFocus()
    ways: list[list[QWidget | None]] = []
    inside = False
    for modifier in (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier):
        way: list[QWidget | None] = []
        while len(way) < 12 and (not way or QApplication.focusWidget() is not room.sheets):
            press(Qt.Key.Key_F6, modifier)
            held = QApplication.focusWidget()
            way.append(_region_of(held, room))
            inside = inside or sheet.isAncestorOf(held)
        ways.append(way)
    forth, back = ways
    found = []
    if forth[-1] is not room.sheets or forth[0] is not room.of_what().list or forth[:-1] != back[-2::-1]:
        found.append(f"F6 goes {[called(w) for w in forth]}, Shift and F6 {[called(w) for w in back]}")
    if not inside:
        found.append("F6 never comes to the sheet")
    return found


def letters(window: QWidget, _room: Room, sheet: QWidget) -> list[str]:
    """No letter is underlined twice in what is seen at once; main buttons have one, and steps their number."""
    owners: dict[str, str] = {}
    found = []
    for widget in window.findChildren(QWidget):
        if not widget.isVisible() or not isinstance(widget, QAbstractButton | QLabel):
            continue
        if isinstance(widget, QLabel) and widget.buddy() is None:
            continue
        underlined = re.search("&([^&])", widget.text().replace("&&", ""))
        if underlined is not None:
            owner = owners.setdefault(underlined[1].casefold(), called(widget))
            if owner != called(widget):
                found.append(f"{owner} and {called(widget)} have the same letter")
        elif widget.property("role") in ("main", "large"):
            found.append(f"no letter of {called(widget)} is underlined")
    steps = (step for step in sheet.findChildren(Step) if step.isVisible() and step._heading.buddy() is None)
    return [*found, *(f"no key leads to step {step._heading.text()}" for step in steps)]


def targets(window: QWidget, _room: Room, _sheet: QWidget) -> list[str]:
    """What is pressed is large enough."""
    found = []
    for widget in controls(window):
        # A press on the frame of a field is a press on the field.
        framed = isinstance(widget, QLineEdit) and isinstance(widget.parentWidget(), FieldFrame)
        hit = widget.parentWidget() if framed else widget
        least = MAIN if widget.property("role") in ("main", "large") else LEAST
        if hit.height() < least or hit.width() < LEAST:
            found.append(f"{called(widget)} is {hit.width()} by {hit.height()}")
        if isinstance(widget, QAbstractItemView) and widget.currentIndex().isValid():
            row = widget.visualRect(widget.currentIndex()).height()
            if row < LEAST:
                found.append(f"a row of {called(widget)} is {row} high")
    return found


def named(window: QWidget, room: Room, _sheet: QWidget) -> list[str]:
    """What the finder names of other sheets stands on them."""
    there = {name_of(button) for button in controls(window) if isinstance(button, QAbstractButton)}
    return [
        f"the finder names {action!r}" for action in SHEET_ACTIONS.get(room.shown(), ()) if say(action) not in there
    ]
