"""Going away: the date of return, what to fill before leaving, what runs out first, and what falls due meanwhile."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens.absence_view import AbsenceView
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import MessageList
from evenwater.ui.form_parts import set_topic
from evenwater.ui.jug_panels import show_words, words_label
from evenwater.ui.table import Table
from evenwater.ui.text_field import TextField
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say, say_all

_FIELD_WIDTH = 260
_HEADS = (marked("Jug"), marked("Before you leave"), marked("Why"))


class AbsencePage(QWidget):
    """Shows an ``AbsenceView``; ``edited`` carries the date as typed, ``committed`` ends an undo step."""

    edited = Signal(object)
    committed = Signal()

    def __init__(self, parent: QWidget) -> None:
        """Make the parts, still empty."""
        super().__init__(parent)
        set_role(self, "page")
        self.view = AbsenceView()
        self.until = TextField(say("Away until"), say("like 2026-12-20 18:00"), self)
        set_topic(self.until, "until", "absence")
        self.until.setFixedWidth(pixels(self.font(), _FIELD_WIDTH))
        self._title = QLabel(say("Going away"), self)
        set_role(self._title, "title")
        self._said, self._headline = words_label(self, "muted"), words_label(self, "second")
        self.rows = Table(self, say_all(_HEADS), (3, 3, 6), main=1)
        self.unknown = MessageList(self, sign="ink")
        self._overdue_title, self._due_title = (
            QLabel(text, self) for text in (say("Due already"), say("Falls into the time away"))
        )
        for title in (self._overdue_title, self._due_title):
            set_role(title, "title")
        self._overdue, self._due = words_label(self), words_label(self)
        self._rule = words_label(self, "muted")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, GRID, GRID)
        column.setSpacing(GRID)
        for part in (
            self._title, self.until, self._said, self._headline, self._rule, self.rows, self.unknown, self._overdue_title,
            self._overdue, self._due_title, self._due,
        ):  # fmt: skip
            column.addWidget(part)
        column.addStretch(1)
        self.until.edited.connect(self.edited)
        self.until.committed.connect(self.committed)
        self.show_absence(AbsenceView(), Typed(""))

    def show_absence(self, view: AbsenceView, typed: Typed) -> None:
        """Show what an absence asks for, beside the date as it was typed."""
        self.view = view
        self.until.set_typed(typed)
        self.until.set_message(view.message)
        show_words(self._said, say("Away {until}.", until=view.until) if view.until else "")
        show_words(self._headline, view.headline)
        show_words(self._rule, view.rule)
        self.rows.set_rows(
            tuple((f"\u25b2 {row.name}" if row.short else row.name, row.what, row.why) for row in view.rows)
        )
        self.unknown.set_messages(tuple(Message(text) for text in view.unknown))
        for title, label, lines in (
            (self._overdue_title, self._overdue, view.overdue),
            (self._due_title, self._due, view.due),
        ):
            show_words(label, "\n".join(f"{line[:1].upper()}{line[1:]}" for line in lines))
            title.setVisible(bool(lines))
