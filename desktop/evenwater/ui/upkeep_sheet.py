"""The Upkeep sheet: what every pump of a system gives to keep its values where they are, and what that does in time."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, learned, upkeep, words
from evenwater.screens.local_zone import present
from evenwater.screens.terms import capitalized, term
from evenwater.screens.upkeep import EXCHANGED, UpkeepRow, UpkeepView
from evenwater.screens.views import Message
from evenwater.session import Change, Document, RecordsChange
from evenwater.ui.after_paint import AfterPaint, OldMark
from evenwater.ui.answer_parts import MessageList, Sentence
from evenwater.ui.form_column import Column
from evenwater.ui.form_parts import set_topic
from evenwater.ui.learning import Learning
from evenwater.ui.limit_bars import LimitBars, near_and_far
from evenwater.ui.plans import Plans
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.table import Table
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.ui.together_panel import TogetherPanel
from evenwater.ui.upkeep_records import UpkeepRecords
from evenwater.wording import marked, say, say_all

NOTHING = marked("Nothing is kept yet. Enter on the Correct sheet what the tank uses in a day, its jug and its pump.")
AT_WHICH_MINUTE = marked("At which minute each pump doses, and in how many doses, stands on the Timetable sheet.")
_FIELD_WIDTH = 260
# Once a minute, so that the dates on which jugs are empty stay true.
_REFRESH_MS = 60_000
_HEADS = ("", marked("mL per hour"), marked("Set on the pump"), marked("In the jug"), marked("The jug is empty"))
_SPAN_HEADS = (marked("In time"), "", marked("a week"), marked("a month"), marked("a year"), marked("settles at"))


class UpkeepSheet(QWidget):
    """Shows the upkeep of one system; ``opened`` carries the name of the parameter to open on the Correct sheet."""

    opened = Signal(str)

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QWidget | None = None
    ) -> None:
        """Make the sheet, still without a system."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue, self._learning = document, catalogue, learning
        self.records = UpkeepRecords(document, catalogue, learning, plans)
        self._view = UpkeepView("empty")
        self.header = SheetHeader(document, self)
        self.exchanged = QuantityField(say("Water exchanged"), EXCHANGED, words.sentence, self)
        set_topic(self.exchanged, "exchanged", "water")
        self.exchanged.set_help(say("continuously; leave it empty for none"))
        self.exchanged.setFixedWidth(pixels(self.font(), _FIELD_WIDTH))
        # Stands in place of the field where one figure for both pumps is not all.
        self.elsewhere = QLabel(self)
        self.elsewhere.setWordWrap(True)
        self.elsewhere.hide()
        self.buttons = [self._button(name) for name in catalogue.parameters]
        self._cautions = Sentence(self, sign="stop")
        self._nothing = QLabel(say(NOTHING), self)
        set_role(self._nothing, "muted")
        self.messages = MessageList(self, sign="stop")
        self.doses = Table(self, say_all(_HEADS), (4, 3, 3, 4, 3), main=1)
        self.bars = LimitBars(self)
        self._far = QLabel(self)
        self._far.setWordWrap(True)
        set_role(self._far, "caption")
        self.spans = Table(self, say_all(_SPAN_HEADS), (3, 3, 2, 2, 2, 2))
        self.lines = Table(self, (say("What else it does"), "", ""), (3, 6, 3))
        self.remarks = MessageList(self, sign="ink")
        self.plans_together = TogetherPanel(document, catalogue, learning, plans, self)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._minute = QTimer(self)
        self._minute.setInterval(_REFRESH_MS)
        self._minute.timeout.connect(self._again)
        self._minute.start()
        self._lay_out()
        self._after = AfterPaint(self, OldMark(self._area, self))
        self._after.due.connect(self.recompute)
        self.exchanged.edited.connect(self._edited)
        self.exchanged.committed.connect(self._committed)
        self.plans_together.told.connect(self.header.tell)
        self._soon.timeout.connect(self.recompute)
        document.changed.connect(self._changed)
        document.recordsChanged.connect(self._records_changed)
        for signal in (learning.learned, plans.changed, document.log.logChanged):
            signal.connect(self._again)

    def _button(self, parameter: str) -> QPushButton:
        button = QPushButton(capitalized(parameter), self)
        button.setAutoDefault(False)
        button.setProperty("parameter", parameter)
        button.setToolTip(say("Open it on the Correct sheet"))
        button.setAccessibleName(say("Open {parameter} on the Correct sheet", parameter=term(parameter)))
        set_role(button, "quiet")
        button.clicked.connect(self._open)
        return button

    def _lay_out(self) -> None:
        page = QWidget()
        set_role(page, "page")
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, GRID, GRID)
        column.setSpacing(2 * GRID)
        top = QHBoxLayout()
        top.setSpacing(2 * GRID)
        top.addWidget(self.exchanged)
        top.addWidget(self.elsewhere, 2)
        self._kept = QHBoxLayout()
        self._kept.setSpacing(GRID)
        for button in self.buttons:
            self._kept.addWidget(button)
        top.addLayout(self._kept)
        top.addStretch(1)
        column.addLayout(top)
        for part in (
            self._cautions,
            self.plans_together.stops,
            self._nothing,
            self.messages,
            self.doses,
            self.remarks,
            self.bars,
            self._far,
            self.spans,
            self.lines,
            self.plans_together,
        ):
            column.addWidget(part)
        column.addStretch(1)
        self._area = Column(page, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addWidget(self._area, 1)

    def show_system(self, system_id: str) -> None:
        """Show the upkeep of another system."""
        self.records.system = system_id
        self.header.show_system(system_id)
        self.plans_together.show_system(system_id)
        self.exchanged.set_typed(self.records.exchanged())
        self.exchanged.setEnabled(bool(system_id))
        self.recompute()

    @property
    def view(self) -> UpkeepView:
        """What is shown; an answer that is still waited for is reckoned first."""
        self._after.finish()
        return self._view

    def waiting(self) -> bool:
        """Return whether what is shown is the answer to what stood in the fields before."""
        return self._soon.isActive() or self._after.waiting()

    def settle(self) -> None:
        """Reckon what is waited for, and close the window of the card."""
        self._after.finish()
        self.plans_together.settle()

    def recompute(self) -> None:
        """Reckon the upkeep and show everything that follows from it."""
        self._soon.stop()
        self._after.done()
        system = self.records.system
        self.header.show_volume(correct.volume_words(self._document.values(system)) if system else "")
        elsewhere = self.records.said_elsewhere()
        self.elsewhere.setText(elsewhere)
        self.elsewhere.setVisible(bool(elsewhere))
        self.exchanged.setVisible(not elsewhere)
        kept = self.records.kept() if system else ()
        for button in self.buttons:
            button.setVisible(button.property("parameter") in kept)
        self._nothing.setVisible(not kept)
        self._view = (
            upkeep.evaluate(self.records.raw(), self._catalogue, present()).view if kept else UpkeepView("empty")
        )
        self._show(self._view)
        self._area.settle()
        self._learn()

    def _again(self, *_: object) -> None:
        if self.isVisible():
            self._soon.start()

    def _learn(self) -> None:
        """Let the log be asked for one use after the other; each answer comes back here."""
        if self.records.system and self.isVisible():
            self._learning.ask_each(self.records.system)

    def _log_says(self, parameter: str) -> str:
        """Return what the log says of a use, with its interval and its age."""
        found = self._learning.known(self.records.system, parameter)
        return "" if found is None else found.offer

    def _ratio(self) -> tuple[str, ...]:
        """Return what the log says of calcium against alkalinity."""
        found = [self._learning.known(self.records.system, name) for name in ("alkalinity", "calcium")]
        return () if found[0] is None or found[1] is None else learned.ratio_lines(found[0], found[1])

    def _show(self, view: UpkeepView) -> None:
        said = (*view.hazards, *view.cautions)
        self._cautions.set_text(" ".join(said))
        self._cautions.setVisible(bool(said))
        by_field = {m.path: m for m in view.messages if m.path == EXCHANGED.path}
        self.exchanged.set_message(by_field.get(EXCHANGED.path))
        self.messages.set_messages(
            tuple(self._placed(m) for m in view.messages), "stop" if view.state == "refused" else ""
        )
        self.doses.set_rows(tuple(self._row(row) for row in view.rows))
        near, far = near_and_far(view.bars)
        self.bars.set_bars(near)
        self.bars.setVisible(bool(near))
        self._far.setText(far)
        self._far.setVisible(bool(far))
        rules = (*view.rules, say(AT_WHICH_MINUTE)) if view.rows else view.rules
        self.remarks.set_messages(tuple(Message(text) for text in (*view.remarks, *self._ratio(), *rules)))
        self.spans.set_rows(tuple((s.what, s.how, s.week, s.month, s.year, s.settles) for s in view.spans))
        self.lines.set_rows(tuple((line.what, line.how, line.gives) for line in view.lines))

    def _placed(self, message: Message) -> Message:
        """Say of which value a message speaks: its field stands on another sheet."""
        table, _, rest = message.path.partition(".")
        number = rest.partition(".")[0]
        kept = self.records.kept()
        if table == "exchange" and (rest != "per_day" or self.records.said_elsewhere()):
            what = say("Exchange") if rest == "per_day" else say("New water, {rest}", rest=rest)
            return Message(
                say("{what}: {message} It stands on the Exchange sheet.", what=what, message=message.text),
                "",
                message.code,
            )
        if table == "item" and number.isdigit() and int(number) <= len(kept):
            return Message(f"{capitalized(kept[int(number) - 1])}: {message.text}", "", message.code)
        return message

    def _used(self, row: UpkeepRow) -> str:
        """Return the use with where it comes from, and beside a typed one what the log says."""
        from_log = self._log_says(row.name)
        if not self.records.typed(row.name):
            return from_log
        return "\n".join(filter(None, (say("used: {use}", use=row.use), from_log)))

    def _row(self, row: UpkeepRow) -> tuple[str, ...]:
        return (
            "\n".join(filter(None, (row.parameter, self._used(row), row.share))),
            row.per_hour or say("nothing is dosed"),
            "\n".join(
                filter(
                    None,
                    (
                        row.dose,
                        row.run_time,
                        say("{in_24_hours} in 24 hours", in_24_hours=row.in_24_hours) if row.in_24_hours else "",
                    ),
                )
            ),
            row.additive,
            " · ".join(filter(None, (row.jug_empty, say("after {jug}", jug=row.jug) if row.jug else ""))),
        )

    def _open(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            self.opened.emit(str(button.property("parameter")))

    def _edited(self, typed: Typed) -> None:
        self.records.edit_exchanged(typed, self)
        self._after.ask(self.exchanged)

    def _committed(self) -> None:
        self._document.commit_point()
        self._after.finish()

    def _changed(self, change: Change) -> None:
        if change.initiator is not self and self.isVisible():
            self.exchanged.set_typed(self.records.exchanged())
            self._soon.start()

    def _records_changed(self, _change: RecordsChange) -> None:
        if self.isVisible():
            self._soon.start()
