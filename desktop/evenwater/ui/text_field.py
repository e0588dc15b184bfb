"""A field for plain words: a name, a reason."""

# ruff: noqa: N802, N815  (Qt's spelling)

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLabel, QLineEdit, QVBoxLayout, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens.views import Message
from evenwater.ui.theme import set_role

_LONGEST = 200


class TextField(QWidget):
    """Label above, one line of words, help or error in the space kept below.

    ``edited`` carries a ``Typed`` on each change by the keyboard, ``committed`` says that Enter was
    pressed or the focus left.
    """

    edited = Signal(object)
    committed = Signal()

    def __init__(self, label: str, help_text: str = "", parent: QWidget | None = None) -> None:
        """Make an empty field called ``label``."""
        super().__init__(parent)
        self._help = help_text
        self._label = QLabel(label, self)
        set_role(self._label, "caption")
        self.line = QLineEdit(self)
        self.line.setMaxLength(_LONGEST)
        self.line.setAccessibleName(label)
        self._label.setBuddy(self.line)
        self._below = QLabel(help_text, self)
        self._below.setTextFormat(Qt.TextFormat.PlainText)
        set_role(self._below, "caption")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        for part in (self._label, self.line, self._below):
            layout.addWidget(part)
        self.setFocusProxy(self.line)
        self.line.textEdited.connect(self._typed)
        self.line.editingFinished.connect(self.committed)
        self.line.installEventFilter(self)

    def set_typed(self, typed: Typed) -> None:
        """Show a value; the cursor stays where it is when the text is the same."""
        if typed.text != self.line.text():
            self.line.setText(typed.text)

    def typed(self) -> Typed:
        """Return what stands in the field."""
        return Typed(self.line.text())

    def set_message(self, message: Message | None) -> None:
        """Show an error below, or the help again."""
        self._below.setText(f"\u25b2 {message.text}" if message else self._help)
        set_role(self._below, "stop" if message else "caption")
        self.line.setAccessibleDescription(message.text if message else self._help)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Keep Enter in the field, so that it never presses a button elsewhere."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.committed.emit()
                return True
        return super().eventFilter(watched, event)

    def _typed(self, text: str) -> None:
        self.edited.emit(Typed(text))
