"""What tests of the quantity field share: kinds of field, keys to press, and an ear for what is said."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Field
from evenwater.ui.quantity_field import QuantityField

Make = Callable[..., QuantityField]

ALKALINITY = Field("change.measured", "alkalinity", "dKH", 0.0, 150.0)
CALCIUM = Field("change.measured", "ion", "mg/L", 0.0, 6000.0)


class Heard:
    """Collects what a field says."""

    def __init__(self, field: QuantityField) -> None:
        self.edits: list[Typed] = []
        self.commits = 0
        field.edited.connect(self._edit)
        field.committed.connect(self._commit)

    def _edit(self, typed: Typed) -> None:
        self.edits.append(typed)

    def _commit(self) -> None:
        self.commits += 1


def type_in(field: QuantityField, text: str) -> None:
    QTest.keyClicks(field.line, text)


def enter(field: QuantityField) -> None:
    QTest.keyClick(field.line, Qt.Key.Key_Return)


def wheel_over(widget: QWidget) -> QWheelEvent:
    middle = QPointF(widget.rect().center())
    event = QWheelEvent(
        middle,
        widget.mapToGlobal(middle),
        QPoint(),
        QPoint(0, 120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(widget, event)
    return event


def enter_text(field: QuantityField, text: str, *, by_keys: bool) -> None:
    field.set_typed(Typed(""))
    if by_keys:
        type_in(field, text)
    else:
        field.line.setText(text)
        field.line.textEdited.emit(text)
    enter(field)
