"""The Rounds sheet: one line for everything that is wrong or due in the fish room; a line opens what it is about."""

from __future__ import annotations

from datetime import datetime, time

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.screens import rounds, shelf
from evenwater.screens.local_zone import present
from evenwater.screens.rounds import Duty
from evenwater.session import Document
from evenwater.ui.answer_parts import Sign
from evenwater.ui.records_pane import JUGS, SYSTEMS, name_of
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.ui.void_cards import jug_of

_REFRESH_MS = 60_000
_GROUPS = {rounds.WRONG: "Wrong", rounds.DUE: "Due", rounds.SOON: "Due within two days"}
_PLACE_WIDTH = 200


class DutyRow(QWidget):
    """One line; ``opened`` carries its ``Duty``."""

    opened = Signal(object)

    def __init__(self, parent: QWidget) -> None:
        """Make an empty line."""
        super().__init__(parent)
        self._duty: Duty | None = None
        self._sign = Sign(self, "")
        self._place, self._why = QLabel(self), QLabel(self)
        self._place.setFixedWidth(pixels(self.font(), _PLACE_WIDTH))
        self._place.setWordWrap(True)
        self._why.setWordWrap(True)
        set_role(self._why, "muted")
        self.what = QPushButton(self)
        self.what.setAutoDefault(False)
        self.what.setMinimumWidth(pixels(self.font(), _PLACE_WIDTH))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(2 * GRID)
        row.addWidget(self._sign)
        row.addWidget(self._place)
        row.addWidget(self.what)
        row.addWidget(self._why, 1)
        self.what.clicked.connect(self._open)

    def show_duty(self, duty: Duty) -> None:
        """Show another duty."""
        self._duty = duty
        self._sign.set_kind("stop" if duty.urgency == rounds.WRONG else "")
        self._place.setText(duty.place)
        self.what.setText(duty.what)
        self.what.setAccessibleName(f"{duty.place}: {duty.what}. {duty.why}")
        self._why.setText(duty.why)

    def _open(self) -> None:
        if self._duty is not None:
            self.opened.emit(self._duty)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Enter open the line as Space does."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.what.hasFocus():
            self._open()
            event.accept()
        else:
            super().keyPressEvent(event)


class RoundsSheet(QWidget):
    """Shows the duties of the whole room; ``opened`` carries the ``Duty`` that was chosen."""

    opened = Signal(object)

    def __init__(self, document: Document, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the sheet."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue = document, catalogue
        self.header = SheetHeader(document, self, "The fish room")
        self._said = QLabel(self)
        set_role(self._said, "second")
        self._groups: dict[str, QLabel] = {}
        self._rows: list[DutyRow] = []
        self.duties: tuple[Duty, ...] = ()
        page = QWidget()
        set_role(page, "page")
        self._column = QVBoxLayout(page)
        self._column.setContentsMargins(0, 0, GRID, GRID)
        self._column.setSpacing(GRID)
        for urgency, words in _GROUPS.items():
            label = QLabel(words, page)
            set_role(label, "title")
            self._groups[urgency] = label
            self._column.addWidget(label)
        self._column.addStretch(1)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setWidget(page)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addWidget(self._said)
        layout.addWidget(area, 1)
        self._minute = QTimer(self)
        self._minute.setInterval(_REFRESH_MS)
        self._minute.timeout.connect(self._again)
        self._minute.start()
        for signal in (document.cardsChanged, document.recordsChanged, document.log.logChanged):
            signal.connect(self._again)

    def _again(self, *_: object) -> None:
        if self.isVisible():
            self.refresh()

    def refresh(self) -> None:
        """Look at the whole room again."""
        self.header.show_system("")
        self.duties = rounds.duties(self._room(), self._catalogue, present())
        self._said.setText(rounds.headline(self.duties))
        while len(self._rows) < len(self.duties):
            row = DutyRow(self)
            row.opened.connect(self.opened)
            self._rows.append(row)
        for row in self._rows:
            self._column.removeWidget(row)
            row.setVisible(False)
        place = 0
        for urgency, label in self._groups.items():
            here = [duty for duty in self.duties if duty.urgency == urgency]
            label.setVisible(bool(here))
            place = self._column.indexOf(label) + 1
            for duty in here:
                row = self._rows[self.duties.index(duty)]
                row.show_duty(duty)
                self._column.insertWidget(place, row)
                row.setVisible(True)
                place += 1

    def focus_first(self) -> None:
        """Put the focus on the first line."""
        if self.duties:
            self._rows[0].what.setFocus()

    def _room(self) -> rounds.Room:
        document = self._document
        systems = {s: name_of(document, s, SYSTEMS) for s in document.records("system")}
        readings = tuple(
            rounds.LastReading(entry.system_id, entry.subject, entry.at)
            for entry in document.log.latest_of_all("reading")
        )
        corrected = tuple(
            (c.partition(":")[0], document.value(c, "parameter").text)
            for c in document.records("correction")
            if document.value(c, "measured").text
        )
        # A reading that stands in a correction is a reading, whether it was logged or not.
        typed = tuple(
            rounds.LastReading(system, parameter, at)
            for system, parameter in corrected
            if (at := _instant(document.value(f"{system}:{parameter}", "measured_at").text)) is not None
        )
        return rounds.Room(systems, _newest((*readings, *typed)), corrected, tuple(self._cards()), tuple(self._jugs()))

    def _cards(self) -> list[rounds.Hanging]:
        found = []
        for card in self._document.cards():
            if card.state == "removed":
                continue
            batch = self._document.batch_in_use(jug_of(self._document, card))
            values = self._document.values(batch) if batch else {}
            why = shelf.card_outdated(card.body, card.parameter, values, self._catalogue) if values else ""
            void = card.state == "void" or bool(why)
            found.append(rounds.Hanging(card.plan_id, card.system_id, card.parameter, card.valid_until, void, why))
        return found

    def _jugs(self) -> list[rounds.Contents]:
        found = []
        for stock in self._document.records("stock"):
            batch = self._document.batch_in_use(stock)
            use_by = _instant(self._document.value(batch, "use_by").text) if batch else None
            found.append(rounds.Contents(stock, name_of(self._document, stock, JUGS), use_by))
        return found


def _newest(readings: tuple[rounds.LastReading, ...]) -> tuple[rounds.LastReading, ...]:
    newest: dict[tuple[str, str], rounds.LastReading] = {}
    for reading in readings:
        key = (reading.system_id, reading.parameter)
        if key not in newest or newest[key].at < reading.at:
            newest[key] = reading
    return tuple(newest.values())


def _instant(text: str) -> datetime | None:
    """Return an instant from ISO text; a bare date ends with its day."""
    try:
        when = datetime.fromisoformat(text)
    except ValueError:
        return None
    if when.tzinfo is None:
        when = datetime.combine(when.date(), time(23, 59), present().tzinfo)
    return when
