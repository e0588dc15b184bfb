"""The key that is pressed on each sheet, and where: one digit more in the field that is typed in most there, and away again."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit, QListView, QScrollArea, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens.timetable_wishes import DOSES_WANTED
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.room import Room
from evenwater.ui.sheet_list import (
    CORRECT,
    EXCHANGE,
    FOODS,
    JUGS,
    LOG,
    PUMPS,
    RECOVERY,
    ROUNDS,
    SHEETS,
    STOCKS,
    TIMETABLE,
    UPKEEP,
)

DIGIT = (Qt.Key.Key_5, Qt.Key.Key_Backspace)
# The rounds have nothing to type in: the next line, and the one before.
LINES = (Qt.Key.Key_Down, Qt.Key.Key_Up)
FIELDS = {
    CORRECT: "change.measured",
    EXCHANGE: "out",
    FOODS: "food.per_day",
    PUMPS: "calibration.run_1_reads",
    STOCKS: "batch.dissolved",
    LOG: "value",
    RECOVERY: "change.measured",
}
# What is typed before, so that there is an answer with the digit and without it.
BEFORE = {
    UPKEEP: "4.0",
    EXCHANGE: ".0",
    FOODS: ".0",
    STOCKS: ".0",
    TIMETABLE: "1",
    JUGS: "2",
    LOG: "7.0",
    RECOVERY: "12.0",
}


def open_sheet(room: Room, name: str) -> tuple[QWidget, tuple[Qt.Key, Qt.Key]]:
    """Show a sheet and what is typed in there, and return that with the two keys that take turns."""
    if name == UPKEEP:
        # The demo says both pumps one by one, which stands on another sheet; here one figure is all.
        document, system = room.learning._document, room.systems.current()
        document.edit(f"{system}:water", "way", Typed(""))
    room.sheets.choose(SHEETS.index(name))
    sheet = room.by_name(name)
    typed_in: QWidget
    if name == ROUNDS:
        assert isinstance(sheet.list, QListView)
        typed_in = sheet.list
    elif name == UPKEEP:
        typed_in = sheet.exchanged
    elif name == TIMETABLE:
        enabled = (
            field for path, field in sheet.form.fields.items() if path.endswith(DOSES_WANTED) and field.isEnabled()
        )
        typed_in = next(field for field in enabled if isinstance(field, QuantityField) and field.isVisible())
    elif name == RECOVERY:
        sheet.show_parameter("alkalinity")
        typed_in = sheet.form.fields[FIELDS[name]]
    elif name == JUGS:
        typed_in = sheet.page.fields["holds"]
    else:
        typed_in = sheet.form.fields[FIELDS[name]]
    if name != ROUNDS:
        typed_in = typed_in if isinstance(typed_in, QLineEdit) else typed_in.findChild(QLineEdit)
    typed_in.setFocus()
    if isinstance(typed_in, QLineEdit):
        typed_in.end(False)
        QTest.keyClicks(typed_in, BEFORE.get(name, ""))
    return typed_in, LINES if name == ROUNDS else DIGIT


def bring_into_sight(widget: QWidget) -> None:
    """Scroll so far that a widget is seen; its sheet was laid out before."""
    above = widget.parentWidget()
    while above is not None:
        if isinstance(above, QScrollArea):
            above.ensureWidgetVisible(widget)
        above = above.parentWidget()
