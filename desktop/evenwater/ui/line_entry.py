"""A line of text that keeps its keys to itself: Enter commits, Escape takes back, nothing steps."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPoint, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QFocusEvent, QKeyEvent, QKeySequence, QWheelEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from evenwater.ui.theme import set_role


def _is_undo(event: QKeyEvent) -> bool:
    return event.matches(QKeySequence.StandardKey.Undo) or event.matches(QKeySequence.StandardKey.Redo)


class LineEntry(QLineEdit):
    """The editable text inside the frame of a field.

    ``entered`` says that Enter was pressed, ``escaped`` Escape, ``arrived`` and ``left`` that the
    focus came and went, ``menuWanted`` (global position) that the menu is asked for, ``listWanted`` that Alt and Down were pressed.
    """

    entered = Signal()
    escaped = Signal()
    arrived = Signal()
    left = Signal()
    menuWanted = Signal(QPoint)
    listWanted = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        set_role(self, "bare")
        self.setMinimumWidth(44)

    def event(self, event: QEvent) -> bool:
        """Leave undo and redo to the document: the line's own would not be saved, nor survive the field."""
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent) and _is_undo(event):
            event.ignore()
            return False
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Keep Enter, Escape, Up and Down here: none may press a button, close a sheet or step a number."""
        key = event.key()
        if _is_undo(event):
            event.ignore()
            return
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.entered.emit()
        elif key == Qt.Key.Key_Escape:
            self.escaped.emit()
        elif key == Qt.Key.Key_Down and event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self.listWanted.emit()
        elif key not in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            super().keyPressEvent(event)
            return
        event.accept()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Let the wheel scroll the page; it never changes a field."""
        event.ignore()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Say that the focus came."""
        super().focusInEvent(event)
        if event.reason() != Qt.FocusReason.PopupFocusReason:
            self.arrived.emit()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Say that the focus went, except to a menu of this very field or to another program."""
        super().focusOutEvent(event)
        if event.reason() not in (Qt.FocusReason.PopupFocusReason, Qt.FocusReason.ActiveWindowFocusReason):
            self.left.emit()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Ask for the field's own menu."""
        self.menuWanted.emit(event.globalPos())
        event.accept()
