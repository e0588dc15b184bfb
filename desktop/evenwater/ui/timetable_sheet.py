"""The Timetable sheet: all pumps of a system on one day, and the wishes about when."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.screens import correct, timetable_sheet
from evenwater.screens.local_zone import present
from evenwater.screens.timetable_sheet import Asked, Timetabled, TimetableView
from evenwater.screens.views import Message
from evenwater.session import Change, Document, Done, LatestOnly, RecordsChange
from evenwater.ui.after_paint import AfterPaint, OldMark
from evenwater.ui.answer_parts import MessageList, Sentence
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.flow import FlowRow
from evenwater.ui.form_column import Column
from evenwater.ui.form_parts import FormEdit
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.table import Table
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.ui.timetable_actions import TimetableActions
from evenwater.ui.timetable_form import TimetableForm
from evenwater.ui.timetable_list import TimetableList
from evenwater.ui.timetable_records import TimetableRecords
from evenwater.ui.timetable_strip import TimetableStrip
from evenwater.ui.together_panel import TogetherPanel
from evenwater.wording import marked, say, say_all

NOTHING = marked(
    "No pump gives anything yet. Enter on the Correct sheet what the tank uses in a day, its jug and its pump."
)
WORKING = marked("Being worked out.")
_FORM_WIDTH = 340
_HEADS = ("", marked("Doses"), marked("Each dose"), marked("In 24 hours"), marked("Pump runs"), marked("Pump"))
_REFRESH_MS = 60_000
# So long [ms] the window waits before it says that it waits.
_PATIENCE_MS = 120


@dataclass(frozen=True)
class _Work:
    """One timetable to be planned, beside the window: it holds all that it needs."""

    asked: Asked
    catalogue: Catalogue
    now: datetime

    def __call__(self) -> Timetabled:
        return timetable_sheet.evaluate(self.asked, self.catalogue, self.now)


class TimetableSheet(QWidget):
    """Shows the timetable of one system; ``opened`` carries the name of the parameter to open on the Correct sheet."""

    opened = Signal(str)

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QWidget | None = None
    ) -> None:
        """Make the sheet, still without a system."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue, self._learning = document, catalogue, learning
        self.records = TimetableRecords(document, catalogue, learning, plans)
        self.view = TimetableView("empty")
        self._ends: tuple[datetime, ...] = ()
        self._shown_on = present().date()
        self.header = SheetHeader(document, self)
        self.form = TimetableForm(self)
        self.page_actions = TimetableActions(Dialogs(self), self)
        self._cautions = Sentence(self, sign="stop")
        self._nothing = QLabel(say(NOTHING), self)
        self._nothing.setWordWrap(True)
        set_role(self._nothing, "muted")
        self.progress = QLabel(say(WORKING), self)
        set_role(self.progress, "second")
        self.progress.hide()
        self.messages = MessageList(self, sign="stop")
        self.strip = TimetableStrip(self)
        self._legend = QLabel(self)
        self._legend.setWordWrap(True)
        set_role(self._legend, "caption")
        self.pumps = Table(self, say_all(_HEADS), (6, 5, 3, 3, 3, 5), main=2)
        self.remarks = MessageList(self, sign="ink")
        self._order = QLabel(self)
        set_role(self._order, "title")
        self.list = TimetableList(self)
        self.plans_together = TogetherPanel(document, catalogue, learning, plans, self)
        self._work = LatestOnly(self)
        self._soon, self._patience, self._minute = QTimer(self), QTimer(self), QTimer(self)
        for timer, interval in ((self._soon, 0), (self._patience, _PATIENCE_MS)):
            timer.setSingleShot(True)
            timer.setInterval(interval)
        self._minute.setInterval(_REFRESH_MS)
        self._minute.start()
        self._lay_out()
        self._old, self._after = OldMark(self._area, self), AfterPaint(self)
        self._after.due.connect(self.recompute)
        self._soon.timeout.connect(self.recompute)
        self._patience.timeout.connect(self._long)
        self._minute.timeout.connect(self._tick)
        self._work.done.connect(self._done)
        self._work.failed.connect(self._failed)
        self.form.edited.connect(self._edited)
        self.form.committed.connect(self._committed)
        self.form.opened.connect(self.opened)
        for part in (self.page_actions, self.plans_together):
            part.told.connect(self.header.tell)
        document.changed.connect(self._changed)
        document.recordsChanged.connect(self._records_changed)
        for signal in (learning.learned, plans.changed, document.log.logChanged):
            signal.connect(self._again)

    def _lay_out(self) -> None:
        page = QWidget()
        set_role(page, "page")
        column = QVBoxLayout(page)
        column.setContentsMargins(GRID, 0, GRID, GRID)
        column.setSpacing(2 * GRID)
        parts = (
            self._cautions, self.plans_together.stops, self._nothing, self.progress, self.messages, self.strip, self._legend, self._order, self.list,
            self.pumps, self.remarks, self.plans_together,
        )  # fmt: skip
        for part in parts:
            column.addWidget(part)
        column.addStretch(1)
        self._wishes = Column(self.form, self)
        self._wishes.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._wishes.setFixedWidth(pixels(self.font(), _FORM_WIDTH))
        buttons = FlowRow(GRID)
        for button in self.page_actions.buttons:
            buttons.addWidget(button)
        right = QVBoxLayout()
        right.setSpacing(GRID)
        self._area = Column(page, self)
        right.addWidget(self._area, 1)
        foot = QHBoxLayout()
        foot.setContentsMargins(GRID, 0, 0, 0)
        foot.addLayout(buttons, 1)
        right.addLayout(foot)
        row = QHBoxLayout()
        row.setSpacing(2 * GRID)
        row.addWidget(self._wishes)
        row.addLayout(right, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addLayout(row, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the wishes at a third of a narrow window."""
        super().resizeEvent(event)
        self._wishes.setFixedWidth(min(pixels(self.font(), _FORM_WIDTH), self.width() * 2 // 5))

    def show_system(self, system_id: str) -> None:
        """Show the timetable of another system."""
        other = system_id != self.records.system
        self.records.system = system_id
        self.header.show_system(system_id)
        self.plans_together.show_system(system_id)
        self.form.setEnabled(bool(system_id))
        if other:
            # Nothing of another system may stand there while this one's is worked out.
            self._show(Timetabled(TimetableView("empty")))
            self._nothing.hide()
        self.recompute()

    def waiting(self) -> bool:
        """Return whether what is shown belongs to other wishes than those that stand in the fields."""
        return self._soon.isActive() or self._after.waiting() or self._work.busy()

    def settle(self) -> None:
        """Wait for the work that is under way, before the window closes."""
        self._after.done()
        self._work.close()
        self.page_actions.close()
        self.plans_together.settle()

    def recompute(self) -> None:
        """Let the timetable be planned anew; until then nothing can be done with the old one."""
        self._soon.stop()
        self._after.done()
        system = self.records.system
        self.header.show_volume(correct.volume_words(self._document.values(system)) if system else "")
        self.form.show_pumps(self.records.dosed() if system else ())
        self._show_wishes()
        self._tick_now()
        if not system:
            self._show(Timetabled(TimetableView("empty")))
            return
        self._stale(True)
        self._patience.start()
        self._work.submit(_Work(self.records.asked(), self._catalogue, present()), system)
        self._learn()

    def _show_wishes(self) -> None:
        for path in self.form.paths():
            self.form.set_wish(path, self.records.wish(path))

    def _done(self, done: Done) -> None:
        if done.key == self.records.system and isinstance(done.result, Timetabled) and not self._after.waiting():
            self._show(done.result)

    def _failed(self, _failed: object) -> None:
        said = say("The timetable could not be worked out. Please keep this log and report it.")
        self._show(Timetabled(TimetableView("refused", messages=(Message(said),))))

    def _stale(self, stale: bool) -> None:
        """Let nobody take what is shown for the answer to what stands in the fields."""
        self._old.mark(stale)
        self.list.setEnabled(not stale)
        if stale:
            self.page_actions.suspend()
            return
        for part in (self.strip, self.pumps, self.remarks):
            part.setEnabled(True)

    def _long(self) -> None:
        """Say that it takes a while; what is painted in grey, and in ink again, with every key takes longer than the key itself."""
        self.progress.show()
        for part in (self.strip, self.pumps, self.remarks):
            part.setEnabled(False)

    def _show(self, found: Timetabled) -> None:
        self._patience.stop()
        self.progress.hide()
        self._stale(False)
        self.view = view = found.view
        self._ends = tuple(one.valid_until for one in found.given if one.valid_until is not None)
        self._shown_on = present().date()
        answered = view.state == "answered"
        said = (*view.hazards, *view.cautions)
        self._cautions.set_text(" ".join(said))
        self._cautions.setVisible(bool(said))
        self._nothing.setVisible(view.state == "empty" and not view.messages)
        self.form.set_usual(view.usual)
        self.form.set_messages(view.beside)
        self.messages.set_messages(view.messages, "stop" if view.state == "refused" else "")
        self.strip.show_day(view.lanes, view.quiet)
        self._legend.setText(self.strip.legend())
        for part in (self.strip, self._legend, self._order, self.list):
            part.setVisible(answered)
        self.pumps.set_rows(
            tuple(
                (
                    "\n".join(filter(None, (one.parameter, one.additive, one.plan))),
                    one.doses,
                    one.each,
                    one.in_24_hours,
                    one.runs,
                    f"{one.pump}\n{one.carried}",
                )
                for one in view.pumps
            )
        )
        self.remarks.set_messages(tuple(Message(text) for text in (*self.records.shared(), *view.remarks, *view.rules)))
        self._order.setText(say("In order of time\u2002·\u2002timetable {code}", code=view.code))
        self.list.show_rows(view.rows)
        system = self._document.values(self.records.system) if self.records.system else {}
        self.page_actions.set_timetable(found, system, present())

    def _tick(self) -> None:
        if not self.isVisible():
            return
        self._tick_now()
        # A plan may have ended, and the sheet says until when it holds.
        if present().date() != self._shown_on or any(end <= present() for end in self._ends):
            self.recompute()

    def _tick_now(self) -> None:
        now = present()
        self.strip.set_now(60 * now.hour + now.minute)

    def _learn(self) -> None:
        """Let the log be asked for one use after the other; each answer comes back here."""
        if self.records.system and self.isVisible():
            self._learning.ask_each(self.records.system)

    def _edited(self, edit: FormEdit) -> None:
        self.records.edit(edit.path, edit.typed, self)
        self._stale(True)
        self._after.ask(self.form.fields.get(edit.path, self.form.alone))

    def _committed(self) -> None:
        self._document.commit_point()
        self._after.finish()

    def _again(self, *_: object) -> None:
        if self.isVisible():
            self._soon.start()

    def _changed(self, change: Change) -> None:
        if change.initiator is not self:
            self._again()

    def _records_changed(self, _change: RecordsChange) -> None:
        self._again()
