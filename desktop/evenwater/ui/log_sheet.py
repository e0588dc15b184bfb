"""The Log sheet: what was measured, what was given, and what became of it over days and years."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

import numpy as np
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, learned, logbook
from evenwater.screens.local_zone import LocalZone, present
from evenwater.screens.logbook import Taken
from evenwater.screens.terms import capitalized
from evenwater.session import Document, Entry, LogChange
from evenwater.ui.choice import Choice
from evenwater.ui.flow import FlowRow
from evenwater.ui.form_parts import set_topic
from evenwater.ui.learning import Learning
from evenwater.ui.log_chart import SPANS, LogChart
from evenwater.ui.log_entering import Entering
from evenwater.ui.log_form import LogForm
from evenwater.ui.log_list import LogList
from evenwater.ui.log_transfer import LogTransfer
from evenwater.ui.plain_text import allow
from evenwater.ui.plans import Plans
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import say, say_all

FORM_WIDTH = 376
_FORM_SHARE, _LIST_LEAST = 0.4, 150
# As many lines as anybody scrolls through; older ones are found with the chart or exported.
LINES = 1000


class LogSheet(QWidget):
    """Shows the log of one system; ``plan_wanted`` carries the parameter whose plan is to be shown."""

    plan_wanted = Signal(str)

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QWidget | None = None
    ) -> None:
        """Make the sheet, still without a system."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue, self._learning = document, catalogue, learning
        self._plans = plans
        self._system = ""
        self._history: logbook.HistoryView | None = None
        self.header = SheetHeader(document, self)
        self.form = LogForm(catalogue, self)
        self.entering = Entering(document, catalogue, plans, self.form, self)
        self.shown = Choice(say("Show"), self)
        set_topic(self.shown, "parameter", "shown")
        self.shown.set_options(tuple((name, capitalized(name)) for name in catalogue.parameters))
        self.shown.set_current(next(iter(catalogue.parameters)))
        self.chart = LogChart(self, LocalZone())
        self.earlier, self.later = self._button(say("Earlier")), self._button(say("Later"))
        self.earlier.setAccessibleName(say("Move the chart to earlier readings"))
        self.later.setAccessibleName(say("Move the chart to later readings"))
        self.spans = [self._button(name) for name, _ in say_all(SPANS)]
        for button, (name, _) in zip(self.spans, say_all(SPANS), strict=True):
            button.setAccessibleName(say("Show on the chart: {span}", span=name))
        self.list = LogList(self)
        self.change, self.remove = self._button(say("&Change entry")), self._button(say("&Remove entry"))
        self.transfer = LogTransfer(document, catalogue, self)
        self._lay_out()
        self._connect()

    def _button(self, text: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        return button

    def _lay_out(self) -> None:
        self._area = self._scrolled(self.form)
        above = FlowRow(GRID)
        for part in (self.shown, self.earlier, self.later, *self.spans):
            above.addWidget(part)
        below = FlowRow(GRID)
        for part in (self.change, self.remove, *self.transfer.parts):
            below.addWidget(part)
        self.used = QLabel(self)
        self.used.setTextFormat(Qt.TextFormat.PlainText)
        self.used.setWordWrap(True)
        self.used.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.form.below.addWidget(self._titled(say("Use per day, learned from the log")))
        self.form.below.addWidget(self.used)
        side = QWidget(self)
        right = QVBoxLayout(side)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(GRID)
        right.addLayout(above)
        right.addWidget(self.chart, 3)
        self.list.setMinimumHeight(pixels(self.font(), _LIST_LEAST))
        right.addWidget(self.list, 2)
        right.addLayout(below)
        middle = QHBoxLayout()
        middle.setSpacing(2 * GRID)
        middle.addWidget(self._area)
        middle.addWidget(self._scrolled(side), 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addLayout(middle, 1)

    def _scrolled(self, page: QWidget) -> QScrollArea:
        """Return a page in a frame that scrolls it where it is too long, as in large letters on a small screen."""
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(page)
        set_role(page, "page")
        return area

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the form what it needs, but no more than its share."""
        super().resizeEvent(event)
        wanted, share = pixels(self.font(), FORM_WIDTH), round(_FORM_SHARE * self.width())
        self._area.setFixedWidth(max(min(wanted, share), self.form.minimumSizeHint().width() + 2 * GRID))

    def _titled(self, words: str) -> QLabel:
        label = QLabel(words, self)
        set_role(label, "title")
        return label

    def _connect(self) -> None:
        self.entering.saved.connect(self.refresh)
        self.entering.told.connect(self.header.tell)
        self.entering.plan_wanted.connect(self.plan_wanted)
        self.shown.chosen.connect(self._show_chart)
        for button in self.spans:
            button.clicked.connect(self._choose_span)
        self.earlier.clicked.connect(self._move_chart)
        self.later.clicked.connect(self._move_chart)
        self.change.clicked.connect(self._change)
        self.remove.clicked.connect(self._remove)
        self.list.selectionModel().selectionChanged.connect(self._selected)
        self._document.log.logChanged.connect(self._log_changed)
        self._learning.learned.connect(self._show_learned)
        self.transfer.told.connect(self.header.tell)
        self._selected()

    # Showing

    def show_system(self, system_id: str) -> None:
        """Show the log of another system."""
        self.entering.show_system(system_id)
        self._system = system_id
        self.header.show_system(system_id)
        self.transfer.show_system(system_id)
        for part in (self.form, self.chart, self.list):
            part.setEnabled(bool(system_id))
        self.refresh()

    def refresh(self) -> None:
        """Read the log again."""
        self.header.show_volume(correct.volume_words(self._document.values(self._system)) if self._system else "")
        self.form.set_jugs(tuple(self.entering.jugs().items()))
        self.entering.look_again()
        self._show_chart()
        self._show_list()

    def begin_reading(self, parameter: str) -> None:
        """Begin to note a reading of a parameter."""
        self.shown.set_current(parameter)
        self.entering.begin_reading(parameter)
        self._show_chart()

    def _show_list(self) -> None:
        entries = self._document.log.entries(self._system, newest_first=True, limit=LINES) if self._system else []
        jugs, zone = self.entering.jugs(), present().tzinfo
        self.list.show_rows(
            tuple(logbook.row(e.id, _taken(e, e.at.astimezone(zone)), self._catalogue, jugs) for e in entries)
        )
        # A list that is filled anew does not say that nothing is chosen any more.
        self._selected()

    def _show_chart(self, *_: object) -> None:
        if not self._system:
            self.chart.render(None)
            return
        log, name = self._document.log, self.shown.current()
        parameter = self._catalogue.parameters[name]
        times, values = log.columns(self._system, name)
        doses = [
            e for e in log.entries(self._system, ("dose",)) if logbook.carried(_text(e, "carries")).get(name, 0.0) > 0.0
        ]
        exchanges = log.entries(self._system, ("exchange",))
        given = (
            np.array([e.at.timestamp() for e in doses], dtype=np.float64),
            np.array([e.value or 0.0 for e in doses], dtype=np.float64),
        )
        at = np.array([e.at.timestamp() for e in exchanges], dtype=np.float64)
        projected = self._plans.projections(self._system, name)
        self._history = replace(logbook.history(parameter, times, values, given, at), projected=projected)
        self.chart.render(self._history)
        self._show_learned()

    def _show_learned(self) -> None:
        """Say what is used in a day, and ring the readings that are not believed."""
        if not self._system or not self.isVisible():
            return
        found = self._learning.ask(self._system, self.shown.current())
        self.used.setText(say("Being worked out.") if found is None else "\n".join((*found.lines, *self._ratio())))
        if found is not None and self._history is not None:
            odd = {at.timestamp() for at in found.odd_at}
            rings = tuple(n for n, at in enumerate(self._history.times.tolist()) if at in odd)
            self.chart.render(replace(self._history, odd=rings))

    def _ratio(self) -> tuple[str, ...]:
        """Return what calcium and alkalinity say of each other, below either of them."""
        pair = ("alkalinity", "calcium")
        if self.shown.current() not in pair:
            return ()
        one, other = (self._learning.known(self._system, name) for name in pair)
        return () if one is None or other is None else learned.ratio_lines(one, other)

    def _choose_span(self) -> None:
        button = self.sender()
        for shown, (_, days) in zip(self.spans, say_all(SPANS), strict=True):
            if shown is button:
                self.chart.show_span(days)

    def _move_chart(self) -> None:
        """Do with one click what dragging the chart does."""
        self.chart.pan(-0.5 if self.sender() is self.earlier else 0.5)

    # Changing

    def _selected(self, *_: object) -> None:
        for button in (self.change, self.remove):
            allow(button, bool(self.list.chosen()), say("Choose an entry of the list first."))

    def _change(self) -> None:
        entry = self._document.log.entry(self.list.chosen())
        if entry is not None and entry.kind in logbook.FIELDS:
            self.entering.begin_change(entry)

    def _remove(self) -> None:
        # No question is asked: the undo button brings it back.
        chosen = self.list.chosen()
        if not chosen:
            return
        if self._document.log.remove_entries((chosen,), self):
            self.header.tell(say("Removed. Undo brings it back."))
        # What waits for the disk is gone from here already.
        self.refresh()

    def _log_changed(self, change: LogChange) -> None:
        if (
            change.initiator not in (self, self.entering)
            and self.isVisible()
            and (not change.system_ids or self._system in change.system_ids)
        ):
            self.refresh()


def _taken(entry: Entry, at: datetime) -> Taken:
    return Taken(entry.kind, entry.subject, at, entry.who, entry.fields, entry.value)


def _text(entry: Entry, name: str) -> str:
    return entry.fields.get(name, Typed("")).text
