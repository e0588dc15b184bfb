"""A time of day, typed like 22:00 and kept as typed; judged when the keeper goes on, not while they type."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens.timetable_wishes import clock_minute
from evenwater.screens.views import Message
from evenwater.ui.field_shell import FieldShell
from evenwater.ui.line_entry import LineEntry
from evenwater.wording import say

# Hours, a colon, minutes, and what somebody types besides.
_LONGEST = 20


class ClockField(FieldShell):
    """Takes a time of day.

    ``edited`` carries a ``Typed`` on each change by the keyboard, ``committed`` says that Enter was pressed or the focus left.
    """

    edited = Signal(object)
    committed = Signal()

    def __init__(self, label: str, hint: str, help_text: str = "", parent: QWidget | None = None) -> None:
        """Make the field, with ``hint`` in it while it is empty."""
        self.line: LineEntry | None = None
        super().__init__(label, parent)
        self._before = ""
        self.line = LineEntry(self.frame)
        self.line.setMaxLength(_LONGEST)
        self.line.setPlaceholderText(hint)
        self.set_spoken_name(label)
        self.frame.row.addWidget(self.line, 1)
        self.label.setBuddy(self.line)
        self.setFocusProxy(self.line)
        self.set_help(help_text)
        self.line.textEdited.connect(self._text_edited)
        self.line.entered.connect(self._commit)
        self.line.left.connect(self._commit)
        self.line.arrived.connect(self._arrive)
        self.line.escaped.connect(self._take_back)

    def set_typed(self, typed: Typed) -> None:
        """Show a time; the one that is already there changes nothing."""
        if self.line is not None and typed.text != self.line.text():
            self.line.setText(typed.text)
            self._judge()

    def typed(self) -> Typed:
        """Return what stands in the field."""
        return Typed(self.line.text() if self.line is not None else "")

    def set_spoken_name(self, name: str) -> None:
        """Be read by another name than the label's, where several fields on a sheet have the same label."""
        assert self.line is not None
        self.line.setAccessibleName(say("{quantity}, time of day", quantity=name))

    def spoken_for(self) -> QWidget:
        """Return the line of text: it carries name and description."""
        return self.line or self

    def _text_edited(self, text: str) -> None:
        self._say("typing", None)
        self.edited.emit(Typed(text))

    def _commit(self) -> None:
        self._judge()
        self.committed.emit()

    def _judge(self) -> None:
        found = clock_minute(self.typed().text)
        state = "empty" if found is None else "error" if isinstance(found, Message) else "ok"
        self._say(state, found if isinstance(found, Message) else None)

    def _arrive(self) -> None:
        self._before = self.typed().text

    def _take_back(self) -> None:
        if self.typed().text != self._before:
            self.set_typed(Typed(self._before))
            self.edited.emit(Typed(self._before))
