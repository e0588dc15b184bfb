"""The Log sheet: what was measured, what was given, and what became of it over days and years."""

from __future__ import annotations

import uuid
from dataclasses import replace
from datetime import datetime

import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, logbook, shelf
from evenwater.screens.local_zone import LocalZone, present
from evenwater.screens.logbook import Taken
from evenwater.screens.views import Message, Offer
from evenwater.session import Document, Entry, LogChange
from evenwater.ui.choice import Choice
from evenwater.ui.learning import Learning
from evenwater.ui.log_chart import SPANS, LogChart
from evenwater.ui.log_form import LogForm
from evenwater.ui.log_list import LogList
from evenwater.ui.records_pane import JUGS, name_of
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.theme import GRID, pixels, set_role

FORM_WIDTH = 376
# As many lines as anybody scrolls through; older ones are found with the chart or exported.
LINES = 1000
_AGAIN = "again"


class LogSheet(QWidget):
    """Shows the log of one system."""

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, parent: QWidget | None = None
    ) -> None:
        """Make the sheet, still without a system."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue, self._learning = document, catalogue, learning
        self._system = ""
        # Made before the first attempt, so that logging twice is logging once (H15).
        self._next_id = uuid.uuid4().hex
        self._changing: Entry | None = None
        self._sure = False
        self._history: logbook.HistoryView | None = None
        self.header = SheetHeader(document, self)
        self.form = LogForm(catalogue, self)
        self.shown = Choice("Show", self)
        self.shown.set_options(tuple((name, name.capitalize()) for name in catalogue.parameters))
        self.shown.set_current(next(iter(catalogue.parameters)))
        self.chart = LogChart(self, LocalZone())
        self.spans = [self._button(name) for name, _ in SPANS]
        self.list = LogList(self)
        self.change, self.remove = self._button("&Change entry"), self._button("&Remove entry")
        self._lay_out()
        self._connect()

    def _button(self, text: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        return button

    def _lay_out(self) -> None:
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(self.form)
        set_role(self.form, "page")
        area.setFixedWidth(pixels(self.font(), FORM_WIDTH))
        above = QHBoxLayout()
        above.setSpacing(GRID)
        above.addWidget(self.shown)
        above.addStretch(1)
        for button in self.spans:
            above.addWidget(button, 0, Qt.AlignmentFlag.AlignVCenter)
        below = QHBoxLayout()
        below.setSpacing(GRID)
        below.addWidget(self.change)
        below.addWidget(self.remove)
        below.addStretch(1)
        self.used = QLabel(self)
        self.used.setTextFormat(Qt.TextFormat.PlainText)
        self.used.setWordWrap(True)
        self.used.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.form.below.addWidget(self._titled("Use per day, learned from the log"))
        self.form.below.addWidget(self.used)
        right = QVBoxLayout()
        right.setSpacing(GRID)
        right.addLayout(above)
        right.addWidget(self.chart, 3)
        right.addWidget(self.list, 2)
        right.addLayout(below)
        middle = QHBoxLayout()
        middle.setSpacing(2 * GRID)
        middle.addWidget(area)
        middle.addLayout(right, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addLayout(middle, 1)

    def _titled(self, words: str) -> QLabel:
        label = QLabel(words, self)
        set_role(label, "title")
        return label

    def _connect(self) -> None:
        self.form.wanted.connect(self._log)
        self.form.dropped.connect(self._give_up)
        self.form.messages.offerChosen.connect(self._log_again)
        self.shown.chosen.connect(self._show_chart)
        for button in self.spans:
            button.clicked.connect(self._choose_span)
        self.change.clicked.connect(self._change)
        self.remove.clicked.connect(self._remove)
        self.list.selectionModel().selectionChanged.connect(self._selected)
        self._document.log.logChanged.connect(self._log_changed)
        self._learning.learned.connect(self._show_learned)
        self._selected()

    # Showing

    def show_system(self, system_id: str) -> None:
        """Show the log of another system."""
        if system_id != self._system:
            self._give_up()
        self._system = system_id
        self.header.show_system(system_id)
        for part in (self.form, self.chart, self.list):
            part.setEnabled(bool(system_id))
        self.refresh()

    def refresh(self) -> None:
        """Read the log again."""
        self.header.show_volume(correct.volume_words(self._document.values(self._system)) if self._system else "")
        self.form.set_jugs(self._jugs())
        self._show_chart()
        self._show_list()

    def begin_reading(self, parameter: str) -> None:
        """Begin to note a reading of a parameter."""
        self._give_up()
        self.shown.set_current(parameter)
        self.form.begin_reading(parameter)
        self._show_chart()

    def _jugs(self) -> tuple[tuple[str, str], ...]:
        return tuple((stock, name_of(self._document, stock, JUGS)) for stock in self._document.records("stock"))

    def _show_list(self) -> None:
        entries = self._document.log.entries(self._system, newest_first=True, limit=LINES) if self._system else []
        jugs, zone = dict(self._jugs()), present().tzinfo
        self.list.show_rows(
            tuple(logbook.row(e.id, _taken(e, e.at.astimezone(zone)), self._catalogue, jugs) for e in entries)
        )

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
        self._history = logbook.history(parameter, times, values, given, at)
        self.chart.render(self._history)
        self._show_learned()

    def _show_learned(self) -> None:
        """Say what is used in a day, and ring the readings that are not believed."""
        if not self._system or not self.isVisible():
            return
        found = self._learning.ask(self._system, self.shown.current())
        self.used.setText("Being worked out." if found is None else "\n".join(found.lines))
        if found is not None and self._history is not None:
            odd = {at.timestamp() for at in found.odd_at}
            rings = tuple(n for n, at in enumerate(self._history.times.tolist()) if at in odd)
            self.chart.render(replace(self._history, odd=rings))

    def _choose_span(self) -> None:
        button = self.sender()
        for shown, (_, days) in zip(self.spans, SPANS, strict=True):
            if shown is button:
                self.chart.show_span(days)

    # Logging

    def _log(self) -> None:
        """Log what stands in the form, or say beside the fields why it cannot be."""
        if not self._system:
            return
        now = present()
        said = self.form.said()
        stock = said.get("stock", Typed("")).text
        batch = self._document.batch_in_use(stock) if stock in self._document.records("stock") else ""
        jug = shelf.answer_of(self._document.values(batch), self._catalogue) if batch else None
        water = correct.water(self._document.values(self._system))
        taken = logbook.take(self.form.kind.current(), said, self._catalogue, now, water, jug)
        if not isinstance(taken, Taken):
            self.form.set_messages(taken)
            return
        entry = self._entry(taken)
        if self._changing is None and not self._sure:
            alike = self._document.log.near_duplicates(entry)
            if alike:
                self._ask(alike[-1])
                return
        if self._changing is not None:
            saved = self._document.log.change_entry(entry, self, entry.who, self._changing)
        else:
            saved = self._document.log.log((entry,), self)
        if saved:
            self.header.tell("Saved." if self._changing is not None else "Logged.")
            self._begin_next()
            self.form.clear()
            self.form.focus_first()
            self.refresh()

    def _entry(self, taken: Taken) -> Entry:
        return Entry(
            id=self._next_id if self._changing is None else self._changing.id,
            system_id=self._system,
            kind=taken.kind,  # type: ignore[arg-type]
            subject=taken.subject,
            at=taken.at,
            who=taken.who,
            fields=taken.fields,
            value=taken.value,
        )

    def _ask(self, before: Entry) -> None:
        """Ask before the same amount is noted twice within minutes (H14, H15)."""
        said = logbook.row(
            before.id, _taken(before, before.at.astimezone(present().tzinfo)), self._catalogue, dict(self._jugs())
        )
        by = f" by {before.who}" if before.who else ""
        text = f"{said.what}, {said.amount}, was noted at {before.at.astimezone(present().tzinfo):%H:%M}{by}. Is this another one?"
        self.form.set_messages((Message(text, "", _AGAIN, (Offer("Yes, log it too", "", ""),)),))

    def _log_again(self, _offer: object) -> None:
        self._sure = True
        self._log()

    def _begin_next(self) -> None:
        self._next_id, self._changing, self._sure = uuid.uuid4().hex, None, False

    # Changing

    def _selected(self, *_: object) -> None:
        for button in (self.change, self.remove):
            button.setEnabled(bool(self.list.chosen()))

    def _change(self) -> None:
        entry = self._document.log.entry(self.list.chosen())
        if entry is None or entry.kind not in logbook.FIELDS:
            return
        self._begin_next()
        self._changing = entry
        said = {**entry.fields, "at": Typed(entry.at.isoformat()), "who": Typed(entry.who)}
        if entry.kind == logbook.READING:
            said["parameter"] = Typed(entry.subject)
        if entry.kind == logbook.DOSE:
            said["stock"] = Typed(entry.subject)
        self.form.show_entry(entry.kind, said, changing=True)
        self.form.focus_first()

    def _give_up(self) -> None:
        self._begin_next()
        self.form.clear()

    def _remove(self) -> None:
        # No question is asked: the undo button brings it back.
        chosen = self.list.chosen()
        if chosen and self._document.log.remove_entries((chosen,), self):
            self.header.tell("Removed. Undo brings it back.")
            self.refresh()

    def _log_changed(self, change: LogChange) -> None:
        if (
            change.initiator is not self
            and self.isVisible()
            and (not change.system_ids or self._system in change.system_ids)
        ):
            self.refresh()


def _taken(entry: Entry, at: datetime) -> Taken:
    return Taken(entry.kind, entry.subject, at, entry.who, entry.fields, entry.value)


def _text(entry: Entry, name: str) -> str:
    return entry.fields.get(name, Typed("")).text
