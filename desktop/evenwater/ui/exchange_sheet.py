"""The Exchange sheet: a pair of pumps that takes old water out and puts new water in all day, and what that does."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, exchange_given, exchange_sheet
from evenwater.screens.exchange_fields import ALIKE, WAY
from evenwater.screens.exchange_fields import BUCKET as MIXING
from evenwater.screens.exchange_sheet import ExchangeView
from evenwater.screens.local_zone import present
from evenwater.screens.shown import figure
from evenwater.screens.terms import capitalized
from evenwater.screens.views import AnswerView, Message
from evenwater.session import Change, Document, RecordsChange
from evenwater.ui.after_paint import AfterPaint, OldMark
from evenwater.ui.answer_panel import AnswerPanel, WorkTable
from evenwater.ui.answer_parts import MessageList, Sentence
from evenwater.ui.choice import Choice
from evenwater.ui.exchange_chart import ExchangeChart
from evenwater.ui.exchange_form import ExchangeForm
from evenwater.ui.exchange_records import ExchangeRecords
from evenwater.ui.form_column import Column, FormColumn
from evenwater.ui.form_parts import FormEdit, set_topic
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.table import Table
from evenwater.ui.theme import GRID, set_role
from evenwater.ui.together_panel import TogetherPanel
from evenwater.wording import marked, say, say_all

NO_SYSTEM = marked("No system yet. Add one in the list at the left.")
NOT_YET = marked("Enter what the two pumps move in a day.")
UNPLANNED = marked("The Upkeep sheet has no plan for what is used, so no dosing is reckoned with.")
FOODS = marked("No figures of {names} yet: nothing is reckoned of it. See the Foods sheet.")
VALUES, PAIR, DOSING, BUCKET, NOTES = (
    marked("Every value"),
    marked("The pair and its jugs"),
    marked("What the dosing plan becomes"),
    marked("The mixing bucket"),
    marked("To be known"),
)
_HEADS = ("", marked("Now"), marked("New water"), marked("At the end"), marked("Settles at"), marked("In a day"))
_DOSE_HEADS = (marked("To keep it where it is"), marked("without exchange"), marked("with it"), marked("a day"))
# Where nothing of these is filled in, one sentence says it all.
_FLOW = ("exchanged", "as_much_as", "out", "in")
_ANSWER_HEIGHT = 120
# Once a minute, so that the ages of readings stay true.
_REFRESH_MS = 60_000


class ExchangeSheet(QWidget):
    """Shows the exchange of one system; ``opened`` carries the name of the parameter to open on the Correct sheet."""

    opened = Signal(str)

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QWidget | None = None
    ) -> None:
        """Make the sheet, still without a system."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue, self._learning = document, catalogue, learning
        self.records = ExchangeRecords(document, catalogue, learning, plans)
        self._view = ExchangeView("empty")
        self.header = SheetHeader(document, self)
        self.form = ExchangeForm(catalogue, self)
        self.dangers = MessageList(self, sign="stop")
        self.answer = AnswerPanel(self, usual_height=_ANSWER_HEIGHT)
        self.answer.how.hide()
        self.shown = Choice(say("Show"), self)
        set_topic(self.shown, "parameter", "shown")
        self.open = QPushButton(say("Open it on the &Correct sheet"), self)
        self.open.setAutoDefault(False)
        set_role(self.open, "quiet")
        self.chart = ExchangeChart(self)
        self.values = Table(self, say_all(_HEADS), (7, 3, 3, 4, 4, 3))
        self.pair = WorkTable(self)
        self.pair.setAccessibleName(say(PAIR))
        self._stock_cautions = Sentence(self, sign="stop")
        self.doses = Table(self, say_all(_DOSE_HEADS), (4, 3, 3, 3), main=2)
        self.bucket = WorkTable(self)
        self.bucket.setAccessibleName(say(BUCKET))
        self.remarks = MessageList(self, sign="ink")
        self._mixing = Sentence(self, sign="stop")
        self._mixing.set_text(" ".join(say_all(MIXING)))
        self.plans_together = TogetherPanel(document, catalogue, learning, plans, self)
        self._titles: dict[str, QLabel] = {}
        self._soon, self._minute = QTimer(self), QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._minute.setInterval(_REFRESH_MS)
        self._minute.start()
        self._lay_out()
        self._after = AfterPaint(self, OldMark(self._side, self))
        self._connect(plans)

    def _lay_out(self) -> None:
        side = QWidget()
        set_role(side, "page")
        self._right = right = QVBoxLayout(side)
        right.setContentsMargins(0, 0, 0, GRID)
        right.setSpacing(GRID)
        for first in (self.plans_together.stops, self.dangers, self.answer):
            right.addWidget(first)
        choosing = QHBoxLayout()
        choosing.setSpacing(GRID)
        choosing.addWidget(self.shown)
        choosing.addWidget(self.open)
        choosing.addStretch(1)
        right.addLayout(choosing)
        right.addWidget(self.chart)
        for title, parts in (
            (say(VALUES), (self.values,)),
            (say(NOTES), (self.remarks,)),
            (say(PAIR), (self.pair,)),
            (say(DOSING), (self._stock_cautions, self.doses)),
            (say(BUCKET), (self._mixing, self.bucket)),
        ):
            label = QLabel(title, self)
            set_role(label, "title")
            self._titles[title] = label
            right.addWidget(label)
            for part in parts:
                right.addWidget(part)
        right.addWidget(self.plans_together)
        right.addStretch(1)
        self._scroll, self._side = FormColumn(self.form, self), Column(side, self)
        middle = QHBoxLayout()
        middle.setSpacing(2 * GRID)
        middle.addWidget(self._scroll)
        middle.addWidget(self._side, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addLayout(middle, 1)

    def _connect(self, plans: Plans) -> None:
        self.plans_together.told.connect(self.header.tell)
        self.form.edited.connect(self._edited)
        self.form.committed.connect(self._committed)
        self._after.due.connect(self.recompute)
        self.shown.chosen.connect(self._choose)
        self.open.clicked.connect(self._open)
        self._soon.timeout.connect(self.recompute)
        self._minute.timeout.connect(self._again)
        self._document.changed.connect(self._changed)
        self._document.recordsChanged.connect(self._records_changed)
        self._document.log.logChanged.connect(self._log_changed)
        for signal in (self._learning.learned, plans.changed):
            signal.connect(self._again)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the form three columns where there is room for them beside the answer, else two."""
        super().resizeEvent(event)
        self._scroll.share(self.width())

    # Showing

    def show_system(self, system_id: str) -> None:
        """Show the exchange of another system."""
        if system_id != self.records.system:
            for area in (self._scroll, self._side):
                area.verticalScrollBar().setValue(0)
        self.records.system = system_id
        self.header.show_system(system_id)
        self.plans_together.show_system(system_id)
        for part in (self._scroll, self._side):
            part.setEnabled(bool(system_id))
        self._fill()

    @property
    def view(self) -> ExchangeView:
        """What is shown; an answer that is still waited for is reckoned first."""
        self._after.finish()
        return self._view

    def waiting(self) -> bool:
        """Return whether what is shown is the answer to what stood in the fields before."""
        return self._soon.isActive() or self._after.waiting()

    def settle(self) -> None:
        """End what is being typed, and close the window of the card."""
        self._committed()
        self.plans_together.settle()

    def _fill(self) -> None:
        """Show what the records hold, without touching what is already there."""
        self.form.set_values(self.records.values())
        self.recompute()

    def recompute(self) -> None:
        """Reckon the exchange and show everything that follows from it."""
        self._soon.stop()
        self._after.done()
        self.form.fit(self.records.values())
        system = self._document.values(self.records.system) if self.records.system else {}
        self.header.show_volume(correct.volume_words(system) if system else "")
        notes: list[str] = []
        self._view = ExchangeView("empty")
        if self.records.system:
            water = correct.water(system)
            self.form.set_water(water, figure(water.salinity, 1))
            given = self.records.given()
            self._view = exchange_sheet.evaluate(self.records.raw(given), self._catalogue, present()).view
            unread = tuple(exchange_given.unread_foods(given, self._catalogue))
            notes += [say(UNPLANNED)] if self.records.unplanned(given) else []
            notes += [say(FOODS).format(names=", ".join(unread))] if unread else []
        self._show(self._view, notes)
        self._learn()

    def _show(self, view: ExchangeView, notes: list[str]) -> None:
        beside = {m.path: m for m in reversed(view.messages) if m.path in self.form.fields and m.code != "missing"}
        self.form.set_messages(beside)
        self.dangers.set_messages(tuple(Message(text) for text in view.dangers))
        missing = () if self.records.system else (Message(say(NO_SYSTEM)),)
        rest = tuple(m for m in view.messages if m.path not in beside)
        only_flow = view.state == "empty" and bool(rest) and all(m.path in _FLOW for m in rest)
        self.answer.render(
            AnswerView(
                view.state, view.figure, view.figure_unit, view.second, view.third, bars=view.bars,
                messages=missing or ((Message(say(NOT_YET)),) if only_flow else rest or tuple(beside.values())),
                spoken=view.spoken,
            )
        )  # fmt: skip
        self.answer.how.hide()
        self._show_chart()
        self.values.set_rows(
            tuple(
                ("\n".join(filter(None, (row.name, row.unit, row.moved_by))), f"{row.now}\n{row.age}", row.new_water, row.ends,
                 row.settles, row.pace)
                for row in view.values
            )
        )  # fmt: skip
        self.pair.set_lines(view.pair)
        self._stock_cautions.set_text(" ".join(view.cautions))
        self._stock_cautions.setVisible(bool(view.cautions) and bool(view.dosing))
        self.doses.set_rows(tuple((row.name, row.without, row.with_exchange, row.change) for row in view.dosing))
        self._mixing.setVisible(bool(view.bucket))
        self.bucket.set_lines(view.bucket)
        answered = view.state == "answered"
        said = (*view.remarks, *notes) if answered else ()
        self.remarks.set_messages(tuple(Message(text) for text in said))
        for title, shown in (
            (say(VALUES), view.values), (say(PAIR), view.pair), (say(DOSING), view.dosing), (say(BUCKET), view.bucket), (say(NOTES), said),
        ):  # fmt: skip
            self._titles[title].setVisible(bool(shown))
        self._scroll.widen()
        self._side.settle()

    def _show_chart(self) -> None:
        charts, before = self._view.charts, self.shown.current()
        for part in (self.shown, self.open, self.chart):
            part.setVisible(bool(charts))
        if charts:
            self.shown.set_options(tuple((name, capitalized(name)) for name in charts))
            self.shown.set_current(before if before in charts else next(iter(charts)))
        self.chart.render(charts.get(self.shown.current()))

    def _learn(self) -> None:
        """Let the log be asked for one use after the other; each answer comes back here."""
        if self.records.system and self.isVisible():
            self._learning.ask_each(self.records.system)

    # Editing

    def _edited(self, edit: FormEdit) -> None:
        alike = edit.path == WAY and edit.typed.text == ALIKE
        self.records.edit(edit.path, Typed("") if alike else edit.typed, self.form)
        if edit.path == WAY:
            self._document.commit_point()
            self._fill()
        else:
            self._after.ask(self.form.fields[edit.path])

    def _committed(self) -> None:
        self._document.commit_point()
        self._after.finish()

    def _choose(self, _name: str) -> None:
        self._after.finish()
        self._show_chart()

    def _open(self) -> None:
        self._after.finish()
        if self.shown.current():
            self.opened.emit(self.shown.current())

    def _again(self, *_: object) -> None:
        if self.isVisible():
            self._soon.start()

    def _changed(self, change: Change) -> None:
        if change.initiator is not self.form and self.isVisible():
            self._fill()

    def _records_changed(self, _change: RecordsChange) -> None:
        if self.isVisible():
            self._fill()

    def _log_changed(self, *_: object) -> None:
        self.records.read_log()
        self._again()
