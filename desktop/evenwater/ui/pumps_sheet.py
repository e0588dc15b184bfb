"""The Pumps sheet: one pump, its calibrations, how it wears, and what to look at before it runs by itself."""

from __future__ import annotations

from collections.abc import Iterator

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
from evenwater.screens import pump_drift, pump_sheet, pump_use, pump_view
from evenwater.screens.local_zone import present
from evenwater.screens.pump_sheet import Measured
from evenwater.screens.shown import decimal
from evenwater.screens.views import AnswerView, Message
from evenwater.session import Change, Document, RecordsChange
from evenwater.ui.after_paint import AfterPaint, OldMark
from evenwater.ui.answer_panel import AnswerPanel, WorkTable
from evenwater.ui.answer_parts import MessageRow
from evenwater.ui.form_column import Column, FormColumn
from evenwater.ui.form_parts import FormEdit
from evenwater.ui.plain_text import allow
from evenwater.ui.pump_form import PumpForm
from evenwater.ui.pump_records import PumpRecords
from evenwater.ui.shared_pump import shared
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.ui.wear_chart import WearChart
from evenwater.wording import marked, say, say_many

_ANSWER_HEIGHT = 150
# With these of its fields the doses that a pump gives change.
_DOSED_BY = ("pump.flow", "pump.doses_per_day", "pump.smallest_dose", "pump.step", "pump.largest_share")
NO_PUMP = marked("No pump yet")
FACTS, CHECKS = marked("What follows"), marked("Before it runs by itself")


class PumpsSheet(QWidget):
    """Shows one pump; ``pump_wanted`` carries the id of a pump that undo or redo has changed while another is shown."""

    pump_wanted = Signal(str)

    def __init__(self, document: Document, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the sheet, still without a pump."""
        super().__init__(parent)
        set_role(self, "page")
        self._document = document
        self.records = PumpRecords(document, catalogue)
        self._used: tuple[pump_use.Use, ...] = ()
        self._uses_old = False
        self._found: tuple[Measured, ...] = ()
        self._wears: pump_drift.Drift | None = None
        self._chart_ids: tuple[str, ...] = ()
        self._rows: tuple[str, ...] = ()
        self.header = SheetHeader(document, self, say(NO_PUMP))
        self.form = PumpForm(self)
        self.answer = AnswerPanel(self, usual_height=_ANSWER_HEIGHT)
        self.use = self._button(say("&Use this flow"), "main")
        self.use_expected = self._button(say("Use the flow &expected today"), "large")
        self.chart = WearChart(self)
        self._list = QStringListModel(self)
        self.list = QListView(self)
        self.facts = WorkTable(self)
        self.facts.setAccessibleName(say(FACTS))
        self.checks: list[MessageRow] = []
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._lay_out()
        self._after = AfterPaint(self, OldMark(self._side, self))
        self._connect()

    def _button(self, text: str, role: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        set_role(button, role)
        return button

    def _title(self, text: str, buddy: QWidget | None = None) -> QLabel:
        title = QLabel(text, self)
        set_role(title, "title")
        if buddy is not None:
            title.setBuddy(buddy)
        return title

    def _lay_out(self) -> None:
        for button in (self.use, self.use_expected):
            self.answer.add_action(button)
        self.list.setModel(self._list)
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setAccessibleName(say("Calibrations of this pump"))
        set_role(self.list, "rows")
        side = QWidget()
        set_role(side, "page")
        self._right = right = QVBoxLayout(side)
        right.setContentsMargins(0, 0, 0, GRID)
        right.setSpacing(GRID)
        right.addWidget(self.answer)
        right.addWidget(self.chart)
        right.addWidget(self._title(say("Calibrations of this pump"), self.list))
        right.addWidget(self.list)
        right.addWidget(self._title(say(FACTS)))
        right.addWidget(self.facts)
        right.addWidget(self._title(say(CHECKS)))
        self._checks = QVBoxLayout()
        self._checks.setSpacing(GRID // 2)
        right.addLayout(self._checks)
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

    def _connect(self) -> None:
        self.form.edited.connect(self._edited)
        self.form.committed.connect(self._committed)
        self._after.due.connect(self.recompute)
        self.form.calibration.again.clicked.connect(self._again)
        self.form.calibration.remove.clicked.connect(self._remove)
        self.use.clicked.connect(self._use_found)
        self.use_expected.clicked.connect(self._use_expected)
        self.list.selectionModel().currentChanged.connect(self._chosen)
        self.chart.picked.connect(self._picked)
        self._soon.timeout.connect(self.recompute)
        self._document.changed.connect(self._changed)
        self._document.recordsChanged.connect(self._records_changed)
        self._document.cardsChanged.connect(self._cards_changed)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the form three columns where there is room for them beside the answer, else two."""
        super().resizeEvent(event)
        self._scroll.share(self.width())
        self._fit_list()

    def _fit_list(self) -> None:
        """Give the list the height of its rows, so that it never hides one behind a bar of its own for want of a little room."""
        height = sum(max(0, self.list.sizeHintForRow(row)) for row in range(self._list.rowCount()))
        self.list.setFixedHeight(max(height, pixels(self.font(), 4 * GRID)) + 4)

    # Showing

    def show_pump(self, pump_id: str) -> None:
        """Show another pump, with its newest calibration."""
        if pump_id != self.records.pump:
            self.records.pump = pump_id
            self.records.choose("")
            self.records.forget_cards()
            for area in (self._scroll, self._side):
                area.verticalScrollBar().setValue(0)
        # Undo stays at hand: it brings a removed pump back.
        for part in (self._scroll, self._side):
            part.setEnabled(bool(pump_id))
        self.header.show_system(pump_id)
        self._fill()

    def show_calibration(self, record: str) -> None:
        """Show another calibration of the pump."""
        if record in self._rows:
            self.records.choose(record)
            self._fill()

    def _fill(self) -> None:
        """Show what the records hold, without touching what is already there."""
        self._uses_old = True
        self.form.set_values(self.records.by_path())
        self.recompute()

    def waiting(self) -> bool:
        """Return whether what is shown is the answer to what stood in the fields before."""
        return self._soon.isActive() or self._after.waiting()

    def settle(self) -> None:
        """End what is being typed."""
        self._committed()

    # Reckoning

    def recompute(self) -> None:
        """Reckon what stands in the form and show everything that follows from it."""
        self._soon.stop()
        self._after.done()
        if self._uses_old:
            self._used, self._uses_old = self.records.uses(present()) if self.records.pump else (), False
        self.form.fit(self.records.by_path())
        allow(self.form.calibration.remove, bool(self.records.calibration), say("The pump has no calibration yet."))
        now, pump = present(), self.records.values()
        small = pump_use.smallest(self._used)
        dose_ml = None if small is None else small.dose_ml
        self._found = self.records.measured(dose_ml, now) if self.records.pump else ()
        self._wears = wears = pump_drift.drift(pump, self._found, pump_use.hours_per_day(self._used), now)
        shown = self._shown(dose_ml)
        newest = pump_sheet.newest(self._found)
        is_newest = newest is not None and newest.record_id == shown.record_id
        self._offer(shown, is_newest)
        view = AnswerView("empty")
        if self.records.pump:
            view = pump_view.answer(shown, wears, is_newest, tuple(self._notes(shown)))
        self.answer.render(view)
        self._show_messages((*shown.messages, *pump_sheet.date_messages(pump)))
        step = self.form.calibration
        step.runs.show_count(pump_sheet.runs_shown(shown))
        step.set_guide(pump_view.guide(shown))
        step.runs.propose(pump_sheet.proposed(shown), pump_view.proposal(shown))
        step.propose_hours(pump_drift.hours_hint(wears), wears.hours)
        dots = pump_drift.dots(self._found)
        self._chart_ids = tuple(each.record_id for each in dots)
        self.chart.setVisible(bool(dots))
        self.chart.render(pump_drift.view(wears, pump, dots, shown.record_id))
        self.facts.set_lines(pump_view.facts(shown, pump, wears, self._used, now) if self.records.pump else ())
        self._show_checks(pump_view.installation(pump))
        self._list_calibrations()
        self._scroll.widen()
        self._side.settle()

    def _shown(self, dose_ml: float | None) -> Measured:
        """Return the calibration that is shown; one without anything in it where the pump has none."""
        record = self.records.calibration
        found = next((each for each in self._found if each.record_id == record), None)
        return found or pump_sheet.measured("", self.records.values(), {}, dose_ml, present())

    def _offer(self, shown: Measured, newest: bool) -> None:
        """Let a flow be taken over where there is one that is good enough; nothing is ever taken over by itself (H22)."""
        pump, wears = self.records.values(), self._wears
        assert wears is not None
        found, expected = pump_view.found_flow(shown), pump_view.expected_flow(wears)
        same = pump_view.same_flow(found, pump)
        self.use.setEnabled(bool(found) and newest and not same)
        self.use.setToolTip(
            say("The pump has this flow already")
            if same
            else ""
            if newest
            else say("Only the newest calibration counts")
        )
        # What is expected counts as long as nothing newer was measured.
        self.use_expected.setVisible(bool(expected) and not pump_view.same_flow(expected, pump))
        self.use_expected.setText(
            say("Use the flow &expected today, {expected}", expected=expected) if expected else ""
        )

    def _notes(self, shown: Measured) -> Iterator[str]:
        """Yield what else is to be known: cards that the flow in use has passed by, and those a new one would."""
        pump = self.records.values()
        twice = shared(self._document, self.records.pump)
        if twice:
            yield twice
        in_use = pump_view.flow_in_use(pump)
        late = {card.plan_id: why for card, why in self.records.outdated(in_use)} if in_use else {}
        for plan_id, why in late.items():
            yield say("Card {plan_id} must not be followed. {why} Print a new card.", plan_id=plan_id, why=why)
        found = pump_view.found_flow(shown)
        if found and self.use.isEnabled():
            cards = [card.plan_id for card, _ in self.records.outdated(float(found)) if card.plan_id not in late]
            if cards:
                yield say_many(
                    "With this flow, card {cards} is no longer right. Print new ones after using it.",
                    "With this flow, cards {cards} are no longer right. Print new ones after using it.",
                    len(cards),
                    cards=", ".join(cards),
                )
        said = pump_view.motor(pump)
        if said:
            yield said

    def _show_messages(self, messages: tuple[Message, ...]) -> None:
        self.form.set_messages({m.path: m for m in reversed(messages) if m.code != "missing"})

    def _show_checks(self, checks: tuple[pump_view.Check, ...]) -> None:
        while len(self.checks) < len(checks):
            line = MessageRow(self, "")
            self._checks.addWidget(line)
            self.checks.append(line)
        for line, check in zip(self.checks, checks, strict=True):
            line.set_message(Message(check.words), "stop" if check.wrong else "")

    def _list_calibrations(self) -> None:
        now = present()
        self._rows = ()
        rows = [pump_sheet.row(each, now) for each in self._found]
        words = [row.words for row in rows] or [say("None yet. Press New calibration, or fill in the runs.")]
        if words != self._list.stringList():
            self._list.setStringList(words)
            self._fit_list()
        self._rows = tuple(row.record_id for row in rows)
        if self.records.calibration in self._rows:
            index = self._list.index(self._rows.index(self.records.calibration))
            flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
            self.list.selectionModel().setCurrentIndex(index, flag)

    # Editing

    def _edited(self, edit: FormEdit) -> None:
        if not self.records.pump:
            return
        self.records.edit(edit.path, edit.typed, self.form)
        self._uses_old |= edit.path in _DOSED_BY
        if edit.path == "calibration.method":
            self._fill()
            return
        self._after.ask(self.form.fields[edit.path])

    def _committed(self) -> None:
        self._document.commit_point()
        self._after.finish()

    def _changed(self, change: Change) -> None:
        owner = change.record_id.partition(":")[0]
        if change.initiator is self.form or not self.isVisible():
            return
        if change.initiator is self.header and owner != self.records.pump and owner in self._document.records("pump"):
            self.pump_wanted.emit(owner)
            return
        self._fill()

    def _records_changed(self, change: RecordsChange) -> None:
        if change.kinds & {"pump", "calibration", "correction", "batch"} and self.isVisible():
            self._fill()

    def _cards_changed(self, _initiator: object) -> None:
        self.records.forget_cards()
        if self.isVisible():
            self._soon.start()

    def _chosen(self, current: QModelIndex, _before: QModelIndex) -> None:
        if not 0 <= current.row() < len(self._rows) or self._rows[current.row()] == self.records.calibration:
            return
        self._document.commit_point()
        self.records.choose(self._rows[current.row()])
        self._fill()

    def _picked(self, place: int) -> None:
        if 0 <= place < len(self._chart_ids):
            self._document.commit_point()
            self.show_calibration(self._chart_ids[place])

    def _again(self) -> None:
        self._document.commit_point()
        self.records.again(present())
        self._fill()
        self.form.fields["calibration.run_1_seconds"].setFocus()

    def _remove(self) -> None:
        self.records.remove()
        self._fill()

    def _use_found(self) -> None:
        self._document.commit_point()
        self.recompute()
        shown = next((each for each in self._found if each.record_id == self.records.calibration), None)
        if shown is not None and self.use.isEnabled():
            self._take_over(pump_view.found_flow(shown), calibrated=True)

    def _use_expected(self) -> None:
        self._document.commit_point()
        self.recompute()
        if self._wears is not None and not self.use_expected.isHidden():
            self._take_over(pump_view.expected_flow(self._wears), calibrated=False)

    def _take_over(self, flow: str, *, calibrated: bool) -> None:
        """Write a flow into the pump and say which cards are out of date by it."""
        cards = [card.plan_id for card, _ in self.records.outdated(float(flow))]
        self.records.use_flow(flow, calibrated, self)
        self._fill()
        said = say("Doses are reckoned with {flow}\u00a0mL per min from now on.", flow=decimal(flow))
        self.header.tell(" ".join(filter(None, (said, _down(cards)))))


def _down(plan_ids: list[str]) -> str:
    """Return which cards another flow has made wrong; empty for none."""
    if not plan_ids:
        return ""
    return say_many(
        "Card {cards} is out of date: print new ones.",
        "Cards {cards} are out of date: print new ones.",
        len(plan_ids),
        cards=", ".join(plan_ids),
    )
