"""One jug whole: how to handle it, how long it lasts, its levels and refills, its pump, and what it could do."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import QModelIndex, QStringListModel, Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QHBoxLayout, QLabel, QListView, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import jug_levels, jugs_sheet, words
from evenwater.screens.jug_room import Jug, volume
from evenwater.screens.jugs_sheet import JugView
from evenwater.screens.local_zone import present
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import Figure, MessageList, Sentence
from evenwater.ui.form_parts import Cells, FieldPort, FormEdit
from evenwater.ui.jug_panels import ChecklistPanel, CheckPanel, RunInPanel, show_words, words_label
from evenwater.ui.jug_records import JugRecords
from evenwater.ui.level_form import Draft, LevelForm
from evenwater.ui.plain_text import allow
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import marked, say, say_many

_LEVEL_ROWS = 6
_COLUMNS = 3
_NO_JUG = marked("No jug is on the shelf yet. Add one at the left.")


class JugPage(QWidget):
    """Shows a jug and saves what the keeper does to it; ``told`` carries a sentence for the status line, ``committed`` ends an undo step."""

    told = Signal(str)
    committed = Signal()

    def __init__(self, catalogue: Catalogue, records: JugRecords, parent: QWidget) -> None:
        """Make the parts, still without a jug."""
        super().__init__(parent)
        set_role(self, "page")
        self._catalogue, self._records = catalogue, records
        self._jug: Jug | None = None
        self._stock = ""
        self._drafts: dict[str, Draft] = {}
        self.view: JugView | None = None
        self._contents = words_label(self, "muted")
        self._cautions = Sentence(self, sign="stop")
        self.figure = Figure(self)
        # What must be done at once stands before everything.
        self.alarm, self._stop = Figure(self), words_label(self, "stop")
        self.alarm.set_figure("STOP", "", True)
        self.alarm.set_alarm(True)
        self._second, self._third = words_label(self, "second"), words_label(self, "caption")
        self.notes = MessageList(self, sign="ink")
        self.primed = QPushButton(say("Primed no&w: liquid at the outlet"), self)
        self.primed.setAutoDefault(False)
        self.form = LevelForm(self)
        self.check = CheckPanel(self)
        self.runs_in = RunInPanel(self)
        self.checklist = ChecklistPanel(self)
        self.levels, self._levels = QListView(self), QStringListModel(self)
        self.remove = QPushButton(say("Remove this level"), self)
        self.remove.setAutoDefault(False)
        self._level_ids: tuple[str, ...] = ()
        self.fields = {
            "holds": QuantityField(say("It holds, when full"), jug_levels.HOLDS, words.sentence, self),
            "unreachable": QuantityField(say("Below the intake"), jug_levels.UNREACHABLE, words.sentence, self),
            "level_accuracy": QuantityField(say("A level is read to"), jug_levels.ACCURACY, words.sentence, self),
        }
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, GRID, GRID)
        column.setSpacing(GRID)
        self.levels.setModel(self._levels)
        self.levels.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.levels.setWordWrap(True)
        self.levels.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.levels.setResizeMode(QListView.ResizeMode.Adjust)
        self.levels.setAccessibleName(say("Levels and refills of this jug"))
        set_role(self.levels, "rows")
        cells = Cells()
        for name, field in self.fields.items():
            cells.put(field)
            port = FieldPort(name, field, "stock")
            port.edited.connect(self._edited)
            field.committed.connect(self.committed)
        cells.arrange(_COLUMNS)
        primed, remove = QHBoxLayout(), QHBoxLayout()
        for row, button in ((primed, self.primed), (remove, self.remove)):
            row.addWidget(button)
            row.addStretch(1)
        read, itself = self._title(say("Read the level")), self._title(say("The jug itself"))
        self._noted_title = noted = self._title(say("Levels and refills"))
        head: tuple[QWidget, ...] = (
            self.alarm,
            self._stop,
            self._contents,
            self._cautions,
            self.figure,
            self._second,
            self._third,
        )
        for part in (*head, self.notes):
            column.addWidget(part)
        column.addLayout(primed)
        parts: tuple[QWidget, ...] = (read, self.form, self.check, self.runs_in, self.checklist, noted, self.levels)
        for part in parts:
            if part not in (self.form, self.levels):
                column.addSpacing(GRID)
            column.addWidget(part)
        column.addLayout(remove)
        column.addSpacing(GRID)
        column.addWidget(itself)
        column.addLayout(cells)
        column.addStretch(1)

    def _title(self, text: str) -> QLabel:
        title = QLabel(text, self)
        set_role(title, "title")
        return title

    def _connect(self) -> None:
        self.form.level_wanted.connect(self._note)
        self.form.refill_wanted.connect(self._refill)
        self.primed.clicked.connect(self._primed_now)
        self.remove.clicked.connect(self._remove)
        self.levels.selectionModel().currentChanged.connect(self._chosen)
        self.checklist.answered.connect(self._answered)
        self.check.use.clicked.connect(self._use_flow)

    # Showing

    def show_jug(self, jug: Jug | None) -> None:
        """Show a jug, or that there is none; what was typed for another one waits until that is shown again."""
        stock = "" if jug is None else jug.stock_id
        if stock != self._stock:
            if self._stock:
                self._drafts[self._stock] = self.form.draft()
            self._stock = stock
            self.form.show_draft(self._drafts.pop(stock, Draft()))
        self._jug = jug
        self.setEnabled(jug is not None)
        if jug is None:
            self.view = None
            self._contents.setText(say(_NO_JUG))
            for part in (
                self.alarm, self._cautions, self.figure, self._stop, self._second, self._third, self.notes, self.primed, self.check,
                self.runs_in, self.checklist,
            ):  # fmt: skip
                part.hide()
            self._levels.setStringList([])
            self._level_ids = ()
            return
        self._render(jug, present())

    def _render(self, jug: Jug, now: datetime) -> None:
        view = self.view = jugs_sheet.page(jug, self._catalogue, now)
        self._contents.setText(f"{view.contents[:1].upper()}{view.contents[1:]}")
        self._cautions.set_text(" ".join(view.cautions))
        self._cautions.setVisible(bool(view.cautions))
        self.figure.set_figure(view.figure, view.figure_unit, True)
        self.figure.set_alarm(view.alarm)
        self.figure.setVisible(bool(view.figure))
        self.alarm.setVisible(bool(view.stop))
        for label, text in ((self._stop, view.stop), (self._second, view.second), (self._third, view.third)):
            show_words(label, text)
        self.notes.set_messages(tuple(Message(note) for note in view.notes))
        self.primed.setVisible(bool(view.unprimed))
        self.form.set_priming(view.priming)
        for panel in (self.check, self.runs_in, self.checklist):
            panel.show()
        self.check.show_check(view.check)
        self.runs_in.show_rows(view.runs_in, view.no_runs_in, view.advice)
        self.checklist.show_lines(view)
        self._show_levels(view)
        for name, field in self.fields.items():
            field.set_typed(jug.stock.get(name, Typed("")))
        holds = jug.holds_ml
        self.fields["holds"].set_derived("" if holds is None else volume(holds), say("else as its batch says"))
        usual = "" if holds is None else volume(jug_levels.accuracy_ml({}, holds))
        self.fields["level_accuracy"].set_derived(usual, say("give or take; usually 1\u00a0% of it"))
        self.fields["unreachable"].set_help(say("what the pump cannot reach"))

    def _show_levels(self, view: JugView) -> None:
        words_of = [row.words for row in view.levels]
        self._level_ids = tuple(row.record_id for row in view.levels)
        if words_of != self._levels.stringList():
            self._levels.setStringList(words_of)
            # As high as its rows, up to a few: what is below them is reached without scrolling through nothing.
            rows = min(len(words_of), _LEVEL_ROWS)
            self.levels.setFixedHeight(rows * max(self.levels.sizeHintForRow(0), 1) + 2 * self.levels.frameWidth())
        for part in (self._noted_title, self.levels, self.remove):
            part.setVisible(bool(words_of))
        self._chosen()

    def _chosen(self, *_: QModelIndex) -> None:
        chosen = 0 <= self.levels.currentIndex().row() < len(self._level_ids)
        allow(self.remove, chosen, say("Choose a level of the list first."))

    # What is done

    def _note(self) -> None:
        self._noted(refill=False, primed=False)

    def _refill(self, primed: bool) -> None:
        self._noted(refill=True, primed=primed)

    def _noted(self, *, refill: bool, primed: bool) -> None:
        jug = self._jug
        if jug is None:
            return
        fields, messages = jug_levels.take(self.form.said(), refill, self._records.holds_ml(self._stock), present())
        self.form.set_messages(messages)
        if messages:
            name = messages[0].path.partition(".")[2]
            self.form.fields[name].setFocus()
            return
        self.form.clear()
        self._records.note(jug, fields, primed, self)
        if not refill:
            self.told.emit(say("The level is noted."))
        elif primed:
            self.told.emit(say("The refill is noted. Go on with the next dose; nothing is made up."))
        else:
            self.told.emit(say("The refill is noted. Prime the line before the next dose."))

    def _primed_now(self) -> None:
        if self.view is not None and self.view.unprimed:
            self._records.primed(self.view.unprimed, self)
            self.told.emit(say("The line is primed. Go on with the next dose; nothing is made up."))

    def _remove(self) -> None:
        row = self.levels.currentIndex().row()
        if 0 <= row < len(self._level_ids):
            self._records.remove_level(self._level_ids[row], self)
            self.told.emit(say("The level is off the list. Undo brings it back."))

    def _answered(self, code: str, answer: str) -> None:
        if self._stock:
            self.committed.emit()
            self._records.edit(self._stock, code, Typed(answer), self)
            self.committed.emit()

    def _edited(self, edit: FormEdit) -> None:
        if self._stock:
            self._records.edit(self._stock, edit.path, edit.typed, self)

    def _use_flow(self) -> None:
        """Write the proposed flow into the pump, as one step; undo takes it back."""
        flow = None if self.view is None else self.view.check.flow
        if flow is None:
            return
        self.committed.emit()
        cards = self._records.use_flow(flow, self)
        said = say("{pump} is set by the new flow.", pump=flow.pump)
        if cards:
            said += " " + say_many(
                "Card {cards} is out of date: print again before the pump is set.",
                "Cards {cards} are out of date: print again before the pump is set.",
                len(cards),
                cards=", ".join(cards),
            )
        self.told.emit(said)
