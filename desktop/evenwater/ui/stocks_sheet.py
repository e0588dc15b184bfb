"""The Stocks sheet: one jug of the shelf, its batches, what goes into the next one, and its label."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QStringListModel, Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QLabel,
    QListView,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from evenwater.engine.catalogue import Catalogue
from evenwater.screens import correct, shelf, stock_sheet
from evenwater.screens.local_zone import present
from evenwater.screens.views import AnswerView, Message
from evenwater.session import Change, Document, RecordsChange
from evenwater.ui.answer_panel import AnswerPanel
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.form_column import Column, FormColumn
from evenwater.ui.form_parts import FormEdit
from evenwater.ui.label_actions import LabelActions
from evenwater.ui.plain_text import allow
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.stock_form import StockForm, form_path
from evenwater.ui.stock_records import StockRecords
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say

_BATCH_ROWS, _ANSWER_HEIGHT = 4, 176
NO_JUG = marked("No jug yet")


class StocksSheet(QWidget):
    """Shows one jug; ``jug_wanted`` carries the id of a jug that undo or redo has changed."""

    jug_wanted = Signal(str)

    def __init__(self, document: Document, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the sheet, still without a jug."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue = document, catalogue
        self.records = StockRecords(document, catalogue)
        self._stocked: stock_sheet.Stocked | None = None
        self._rows: tuple[str, ...] = ()
        self.header = SheetHeader(document, self, say(NO_JUG))
        self.form = StockForm(catalogue, self)
        self.answer = AnswerPanel(self, how=say("What it carries"), usual_height=_ANSWER_HEIGHT)
        self.put = self._button(say("Put it in the &jug"), "main")
        self.take = self._button(say("Enter as &weighed"), "large")
        self.label_actions = LabelActions(Dialogs(self), self)
        self._batches = QStringListModel(self)
        self.batches = QListView(self)
        self.used = QLabel(self)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._lay_out()
        self._connect()

    def _button(self, text: str, role: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        set_role(button, role)
        return button

    def _lay_out(self) -> None:
        for button in (self.take, self.put, *self.label_actions.buttons):
            self.answer.add_action(button)
        self.batches.setModel(self._batches)
        self.batches.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.batches.setWordWrap(True)
        self.batches.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.batches.setResizeMode(QListView.ResizeMode.Adjust)
        self.batches.setAccessibleName(say("Batches of this jug"))
        set_role(self.batches, "rows")
        title = QLabel(say("Batches of this jug"), self)
        title.setBuddy(self.batches)
        set_role(title, "title")
        set_role(self.used, "muted")
        self.used.setWordWrap(True)
        self.used.setTextFormat(Qt.TextFormat.PlainText)
        side = QWidget()
        set_role(side, "page")
        self._right = right = QVBoxLayout(side)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(GRID)
        right.addWidget(self.answer)
        right.addWidget(self.used)
        right.addSpacing(GRID)
        right.addWidget(title)
        right.addWidget(self.batches, 1)
        self._scroll = FormColumn(self.form, self)
        middle = QHBoxLayout()
        middle.setSpacing(2 * GRID)
        middle.addWidget(self._scroll)
        middle.addWidget(Column(side, self), 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addLayout(middle, 1)

    def _connect(self) -> None:
        self.form.edited.connect(self._edited)
        self.form.committed.connect(self._document.commit_point)
        self.form.again.clicked.connect(self._again)
        self.form.remove.clicked.connect(self._remove)
        self.put.clicked.connect(self._put_in_use)
        self.take.clicked.connect(self._take)
        self.label_actions.told.connect(self.header.tell)
        self.batches.selectionModel().currentChanged.connect(self._chosen)
        self._soon.timeout.connect(self.recompute)
        self._document.changed.connect(self._changed)
        self._document.recordsChanged.connect(self._records_changed)
        self._document.cardsChanged.connect(self._cards_changed)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the form three columns where there is room for them beside the answer, else two."""
        super().resizeEvent(event)
        self._scroll.share(self.width())
        self.batches.setMinimumHeight(_BATCH_ROWS * pixels(self.font(), 4 * GRID))

    # Showing

    def show_jug(self, stock_id: str) -> None:
        """Show another jug, with what is in it."""
        if stock_id != self.records.stock:
            self.records.stock = stock_id
            self.records.choose("")
        # Undo stays at hand: it brings a removed jug back.
        for part in (self._scroll, self.batches, self.answer):
            part.setEnabled(bool(stock_id))
        self.header.show_system(stock_id)
        self._fill()

    def show_batch(self, batch_id: str) -> None:
        """Show another batch of the jug."""
        if batch_id in self._rows:
            self.records.choose(batch_id)
            self._fill()

    def _fill(self) -> None:
        """Show what the records hold, without touching what is already there."""
        self.form.set_values(self.records.by_path(), self.records.partners())
        allow(self.form.remove, bool(self.records.batch), say("The jug has no batch."))
        self._list_batches()
        self._soon.start()

    def _list_batches(self) -> None:
        rows = self.records.rows(present())
        self._rows = ()
        words = [row.words for row in rows]
        if words != self._batches.stringList():
            self._batches.setStringList(words)
        self._rows = tuple(row.batch_id for row in rows)
        if self.records.batch in self._rows:
            index = self._batches.index(self._rows.index(self.records.batch))
            flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
            self.batches.selectionModel().setCurrentIndex(index, flag)

    def settle(self) -> None:
        """End what is being typed and close the label's window."""
        self._document.commit_point()
        self.label_actions.close()

    # Reckoning

    def recompute(self) -> None:
        """Reckon the batch that stands in the form and show everything that follows from it."""
        self._soon.stop()
        if not self.records.stock:
            self._stocked = None
            self.answer.render(AnswerView("empty"))
            self.form.set_cautions(())
            self.label_actions.set_label(None)
            self.put.setEnabled(False)
            self.used.clear()
            return
        batch, in_use = self.records.values(), self.records.batch == self.records.in_use()
        outdated = tuple(self.records.outdated())
        notes = [self._note(card.plan_id, why, in_use) for card, why in outdated]
        if shelf.past(batch, present()):
            notes.append(say("This batch is past the date it was to be used by. Mix a new one."))
        found = self._stocked = stock_sheet.evaluate(batch, self.records.partner(), self._catalogue, notes)
        # The cautions stand in the form, between the contents and their numbers.
        self.answer.render(replace(found.view, cautions=()))
        self._show_messages((*found.view.messages, *stock_sheet.date_messages(batch)))
        cautions = correct.cautions(batch, self._catalogue)
        hazards = shelf.hazards(batch, self._catalogue)
        # The signal word first, then what may happen and who says so, then what to do.
        self.form.set_cautions((*cautions[:1], *hazards, *cautions[1:]) if hazards else cautions)
        weighed = stock_sheet.recipe_of(batch) == shelf.WEIGHED
        self.take.setVisible(not weighed)
        allow(self.take, bool(found.masses), say("The recipe is not complete."))
        self.put.setVisible(weighed)
        why_not = say("It is in the jug already") if in_use else say("The batch is not complete.")
        allow(self.put, found.answer is not None and not in_use, why_not)
        self.put.setToolTip(say("It is in the jug already") if in_use else "")
        self.label_actions.set_label(found.label(self.records.name(), self.records.batch, batch))
        used = self.records.used_for()
        self.used.setText(
            say("Used for: {used}.", used="; ".join(used)) if used else say("No correction uses this jug.")
        )
        self._list_batches()
        self._right.activate()
        self._scroll.widen()

    def _note(self, plan_id: str, why: str, in_use: bool) -> str:
        if in_use:
            return say("Card {plan_id} must not be followed. {why} Print a new card.", plan_id=plan_id, why=why)
        return say("With this batch in the jug, card {plan_id} becomes void. {why}", plan_id=plan_id, why=why)

    def _show_messages(self, messages: tuple[Message, ...]) -> None:
        by_path = {form_path(m.path): m for m in reversed(messages) if m.code != "missing"}
        if stock_sheet.recipe_of(self.records.values()) == shelf.PAIR and "batch.wanted_raises" in by_path:
            # What is wanted is said by the other jug then.
            by_path["batch.partner"] = by_path.pop("batch.wanted_raises")
        self.form.set_messages(by_path)

    # Editing

    def _edited(self, edit: FormEdit) -> None:
        if not self.records.stock:
            return
        self.records.edit(edit.path, edit.typed, self.form)
        if edit.path in ("batch.contents", "batch.recipe", "batch.partner", "batch.label_parameter"):
            self._fill()
        self.recompute()

    def _changed(self, change: Change) -> None:
        if change.initiator is not self.form and self.isVisible():
            self._fill()

    def _records_changed(self, change: RecordsChange) -> None:
        if change.kinds & {"stock", "batch", "correction"} and self.isVisible():
            self._fill()

    def _cards_changed(self, _initiator: object) -> None:
        if self.isVisible():
            self._soon.start()

    def _chosen(self, current: QModelIndex, _before: QModelIndex) -> None:
        if not 0 <= current.row() < len(self._rows) or self._rows[current.row()] == self.records.batch:
            return
        self._document.commit_point()
        self.records.choose(self._rows[current.row()])
        self._fill()

    def _again(self) -> None:
        self.records.again(present())
        self._fill()
        self.form.fields["batch.dissolved"].setFocus()

    def _remove(self) -> None:
        self.records.remove()
        self._fill()

    def _take(self) -> None:
        if self._stocked is not None and self._stocked.masses:
            self.records.take(self._stocked.masses, self)
            self._fill()

    def _put_in_use(self) -> None:
        """Put the batch in the jug; cards made for another strength become void in the same moment (H12)."""
        self._document.commit_point()
        self.recompute()
        if self._stocked is None or self._stocked.answer is None:
            return
        void = tuple(card.plan_id for card, _ in self.records.outdated())
        if not self._document.put_in_use(self.records.batch, present(), void, self):
            return
        self._fill()
        down = say(" Take down card {void}: void.", void=", ".join(void)) if void else ""
        self.header.tell(
            say(
                "This batch is in the jug now.{down} Put its label on, and prime the line before the next dose.",
                down=down,
            )
        )
