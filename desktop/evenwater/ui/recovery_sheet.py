"""The Recovery sheet: something is too high, or ran in. What comes first stands first, then the choices side by side."""

from __future__ import annotations

from PySide6.QtCore import QTimer
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, emergency_card, recovery_sheet
from evenwater.screens.local_zone import present
from evenwater.screens.recovery_sheet import Recovered, RecoveryView
from evenwater.screens.terms import inside
from evenwater.screens.views import Message
from evenwater.session import Change, Document, RecordsChange
from evenwater.ui.answer_parts import MessageList, Sentence
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.emergency_actions import EmergencyActions
from evenwater.ui.flow import FlowRow
from evenwater.ui.form_column import Column, FormColumn
from evenwater.ui.form_parts import FormEdit
from evenwater.ui.learning import Learning
from evenwater.ui.plain_text import allow
from evenwater.ui.plans import Plans
from evenwater.ui.recovery_form import RecoveryForm
from evenwater.ui.recovery_panels import Choices, StopList
from evenwater.ui.recovery_records import RecoveryRecords
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say

NOTHING = marked("Say at the left what ran in, or what is too high. The list above holds before any figure is known.")
CHOOSE = marked("Choose a way: then it stands here day by day, and on the emergency card.")
# The choices take a tenth of a second: they are reckoned when the keeper pauses.
_PAUSE_MS = 120
_NOTE = marked("&Note it in the log")
_MORE_FOR_CHOICES = 240


class RecoverySheet(QWidget):
    """Shows the recovery of one system."""

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QWidget | None = None
    ) -> None:
        """Make the sheet, still without a system."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue = document, catalogue
        self.records = RecoveryRecords(document, catalogue, learning)
        self.found = Recovered(RecoveryView("empty"))
        self.header = SheetHeader(document, self)
        self.form = RecoveryForm(catalogue, self)
        self.stop = StopList(self)
        self.page_actions = EmergencyActions(Dialogs(self), self)
        self.note = QPushButton(say(_NOTE), self)
        self.note.setAutoDefault(False)
        set_role(self.note, "main")
        self._handling = Sentence(self, sign="stop")
        self.headline, self._held, self._days = (self._line(role) for role in ("second", "muted", ""))
        self.messages = MessageList(self, sign="stop")
        self.dangers = MessageList(self, sign="stop")
        self.choices = Choices(self)
        self.notes = MessageList(self, sign="ink")
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_PAUSE_MS)
        self._lay_out()
        self._soon.timeout.connect(self.recompute)
        self.form.edited.connect(self._edited)
        self.form.committed.connect(document.commit_point)
        self.form.whole.clicked.connect(self._whole_jug)
        self.choices.chosen.connect(self._chosen)
        self.note.clicked.connect(self._note)
        self.page_actions.told.connect(self.header.tell)
        document.changed.connect(self._changed)
        document.recordsChanged.connect(self._records_changed)
        for signal in (learning.learned, plans.changed, document.log.logChanged):
            signal.connect(self._again)

    def _line(self, role: str) -> QLabel:
        label = QLabel(self)
        label.setWordWrap(True)
        label.setMinimumHeight(1)
        set_role(label, role)
        return label

    def _lay_out(self) -> None:
        side = QWidget()
        set_role(side, "page")
        column = QVBoxLayout(side)
        column.setContentsMargins(GRID, 0, GRID, GRID)
        column.setSpacing(GRID + GRID // 2)
        parts = (
            self.headline, self.messages, self.dangers, self._handling, self._held, self.choices, self._days, self.notes,
        )  # fmt: skip
        for part in parts:
            column.addWidget(part)
        column.addStretch(1)
        self._scroll, self._side = FormColumn(self.form, self), Column(side, self)
        buttons = FlowRow(GRID)
        for button in (self.note, *self.page_actions.buttons):
            buttons.addWidget(button)
        right = QVBoxLayout()
        right.setSpacing(GRID)
        right.addWidget(self._side, 1)
        right.addLayout(buttons)
        middle = QHBoxLayout()
        middle.setSpacing(2 * GRID)
        middle.addWidget(self._scroll)
        middle.addLayout(right, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addWidget(self.stop)
        layout.addLayout(middle, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the form two columns, three where the choices have room enough beside it."""
        super().resizeEvent(event)
        self.stop.share(self.height())
        self._scroll.share(self.width() - pixels(self.font(), _MORE_FOR_CHOICES))
        self.choices.share(self.width() - self._scroll.width() - 8 * GRID)

    def showEvent(self, event: QShowEvent) -> None:
        """Say aloud what comes first."""
        super().showEvent(event)
        self.stop.announce()

    # Showing

    def show_system(self, system_id: str) -> None:
        """Show the recovery of another system."""
        if system_id != self.records.system:
            for area in (self._scroll, self._side):
                area.verticalScrollBar().setValue(0)
            self.form.basis.setText("")
        self.records.system = system_id
        self.header.show_system(system_id)
        self._scroll.setEnabled(bool(system_id))
        self._fill()
        self.recompute()

    def show_parameter(self, name: str) -> None:
        """Say of the system that is shown that this parameter is too high."""
        if name in self._catalogue.parameters and self.records.system:
            self.records.begin(name, self)
            self._document.commit_point()
            self._fill()
            self.recompute()
            self.form.fields["change.measured"].setFocus()

    def waiting(self) -> bool:
        """Return whether what is shown belongs to other fields than those that stand there."""
        return self._soon.isActive()

    def settle(self) -> None:
        """End what is being typed and close the card's window."""
        self._document.commit_point()
        self.page_actions.close()

    def _fill(self) -> None:
        """Show what the records hold, without touching what is already there."""
        self.form.set_jugs(self.records.jugs() if self.records.system else ())
        found = self.found.answer
        named = self.records.text("parameter") or ("" if found is None else found.question.parameter.name)
        self.form.set_values(self.records.by_path(), named)

    def recompute(self) -> None:
        """Reckon the choices and show everything that follows from them."""
        self._soon.stop()
        system = self.records.system
        values = self._document.values(system) if system else {}
        self.header.show_volume(correct.volume_words(values) if system else "")
        self.found = (
            recovery_sheet.evaluate(self.records.read(), self._catalogue, present())
            if system
            else Recovered(RecoveryView("empty"))
        )
        self._show()

    def _show(self) -> None:
        view, answer = self.found.view, self.found.answer
        chosen = self.records.text("chosen")
        self._stale(False)
        beside = {m.path: m for m in reversed(view.messages) if m.path in self.form.fields and m.code != "missing"}
        self.form.set_messages(beside)
        empty = view.state == "empty" and not view.messages
        self.headline.setText(say(NOTHING) if empty else view.headline)
        self.headline.setVisible(empty or bool(view.headline))
        self.messages.set_messages(view.messages, "stop" if view.state == "refused" else "")
        self.dangers.set_messages(tuple(Message(text) for text in view.dangers))
        self._handling.set_text(" ".join(view.handling))
        self._handling.setVisible(bool(view.handling))
        self._held.setText(view.held)
        self._held.setVisible(bool(view.held))
        self.choices.show_choices(view.choices, chosen)
        way = next((each for each in view.choices if each.name == chosen and each.proposed), None)
        self._days.setText(say(CHOOSE) if way is None else "\n".join((way.takes, *way.lines)))
        self._days.setVisible(answer is not None)
        self.notes.set_messages(tuple(Message(text) for text in view.notes))
        named = self.records.text("parameter") or ("" if answer is None else answer.question.parameter.name)
        self.form.set_values(self.records.by_path(), named)
        now = present()
        values = self._document.values(self.records.system) if self.records.system else {}
        self.page_actions.set_card(None if answer is None else emergency_card.card(answer, chosen, values, now))
        self._show_noted()

    def _stale(self, stale: bool) -> None:
        """Let nobody take what is shown for the answer to what stands in the fields."""
        for part in (self.headline, self.choices, self._days, self.dangers, self.notes):
            part.setEnabled(not stale)
        if stale:
            self.page_actions.suspend()
            self.note.setEnabled(False)

    # Editing

    def _edited(self, edit: FormEdit) -> None:
        typed = Typed("") if edit == FormEdit("additive", Typed("none")) else edit.typed
        if edit.path == "change.parameter":
            self.records.edit("chosen", Typed(""), self)
        self.records.edit(edit.path, typed, self)
        if edit.path == "additive":
            self._document.commit_point()
            self.form.basis.setText("")
        self._stale(True)
        self._soon.start()

    def _whole_jug(self) -> None:
        """Fill in what is left in the jug, as one step."""
        typed, said = self.records.whole_jug()
        self.form.basis.setText(said)
        if typed is not None:
            self.records.edit("overdose.volume", typed, self)
            self._document.commit_point()
            self._fill()
            self.recompute()

    def _chosen(self, name: str) -> None:
        self.records.edit("chosen", Typed(name), self)
        self._document.commit_point()
        self.recompute()

    # The note in the log

    def _said(self) -> str:
        """Return what is noted of the emergency besides what ran in."""
        view = self.found.view
        way = next((v for v in view.choices if v.name == self.records.text("chosen") and v.proposed), None)
        chosen = (
            say("No way down was chosen yet.")
            if way is None
            else say("Chosen: {title}. {takes}", title=inside(way.title), takes=way.takes)
        )
        return f"{view.headline} {chosen}"

    def _show_noted(self) -> None:
        there = self.found.answer is not None
        noted = there and self._document.log.entry(self.records.note(self._said(), present()).id) is not None
        why_not = say("It is in the log already.") if noted else say("There is no answer yet.")
        allow(self.note, there and not noted, why_not)
        self.note.setText(say("Noted in the log") if noted else say(_NOTE))

    def _note(self) -> None:
        if self.found.answer is None or self.waiting():
            return
        entry = self.records.note(self._said(), present())
        self.note.setEnabled(False)
        if self._document.log.log([entry], self):
            self.header.tell(say("The emergency is noted in the log. Undo takes it out again."))
        self._show_noted()

    # What others changed

    def _again(self, *_: object) -> None:
        if self.isVisible():
            self._stale(True)
            self._soon.start()

    def _changed(self, change: Change) -> None:
        if change.initiator is not self and self.isVisible():
            self._fill()
            self._again()

    def _records_changed(self, _change: RecordsChange) -> None:
        if self.isVisible():
            self._fill()
            self._again()
