"""A field for plain words: a name, a reason."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from evenwater.engine.quantities import Typed
from evenwater.ui.field_shell import FieldShell
from evenwater.ui.line_entry import LineEntry

_LONGEST = 200


class TextField(FieldShell):
    """Takes one line of words.

    ``edited`` carries a ``Typed`` on each change by the keyboard, ``committed`` says that Enter was
    pressed or the focus left.
    """

    edited = Signal(object)
    committed = Signal()

    def __init__(self, label: str, help_text: str = "", parent: QWidget | None = None) -> None:
        self.line: LineEntry | None = None
        super().__init__(label, parent)
        self._before = ""
        self.line = LineEntry(self.frame)
        self.line.setMaxLength(_LONGEST)
        self.line.setAccessibleName(label)
        self.frame.row.addWidget(self.line, 1)
        self.label.setBuddy(self.line)
        self.setFocusProxy(self.line)
        self.set_help(help_text)
        self.line.textEdited.connect(self._text_edited)
        self.line.entered.connect(self.committed)
        self.line.left.connect(self.committed)
        self.line.arrived.connect(self._arrive)
        self.line.escaped.connect(self._take_back)

    def set_typed(self, typed: Typed) -> None:
        """Show a value; the cursor stays where it is when the text is the same."""
        if self.line is not None and typed.text != self.line.text():
            self.line.setText(typed.text)

    def typed(self) -> Typed:
        """Return what stands in the field."""
        return Typed(self.line.text() if self.line is not None else "")

    def spoken_for(self) -> QWidget:
        """Return the line of text: it carries name and description."""
        return self.line or self

    def _text_edited(self, text: str) -> None:
        self.edited.emit(Typed(text))

    def _arrive(self) -> None:
        self._before = self.typed().text

    def _take_back(self) -> None:
        if self.typed().text != self._before:
            self.set_typed(Typed(self._before))
            self.edited.emit(Typed(self._before))
