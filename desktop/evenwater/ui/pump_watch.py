"""Looks at the pumps of the fish room for the Rounds sheet, one at a time, and keeps what it saw until that changes."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QObject, QTimer, Signal

from evenwater.engine.catalogue import Catalogue
from evenwater.screens import pump_duties, pump_use
from evenwater.screens.local_zone import present
from evenwater.screens.pump_duties import Installed
from evenwater.screens.rounds import Duty
from evenwater.session import Change, Document
from evenwater.ui.pump_records import PumpRecords
from evenwater.ui.records_pane import PUMPS, name_of
from evenwater.wording import say_all

# What decides how a pump wears: itself, its calibrations, and what it is asked to give.
_DECIDES = ("pump", "calibration", "correction", "batch", "system")


class PumpWatch(QObject):
    """Owns what is due at the pumps; ``looked`` says that all of them were looked at again."""

    looked = Signal()

    def __init__(self, document: Document, catalogue: Catalogue, parent: QObject) -> None:
        """Watch ``document``; nothing is looked at before ``look``."""
        super().__init__(parent)
        self._document = document
        self._records = PumpRecords(document, catalogue)
        self._found: dict[str, tuple[Duty, ...]] = {}
        self._day: date | None = None
        self._next = QTimer(self)
        self._next.setSingleShot(True)
        self._next.setInterval(0)
        self._next.timeout.connect(self._one)
        document.changed.connect(self._changed)
        document.recordsChanged.connect(self._forget)

    def look(self) -> None:
        """Begin to look at the pumps that were not looked at since the last change, or today."""
        if self._day != present().date():
            self._found.clear()
            self._day = present().date()
        if self._left():
            self._next.start()

    def waiting(self) -> bool:
        """Say whether there is still something to look at."""
        return self._next.isActive()

    def duties(self) -> tuple[Duty, ...]:
        """Return what is due at the pumps as far as they were looked at."""
        present_ = self._document.records("pump")
        return tuple(duty for pump in present_ for duty in self._found.get(pump, ()))

    def _left(self) -> list[str]:
        return [pump for pump in self._document.records("pump") if pump not in self._found]

    def _one(self) -> None:
        """Look at one pump; the window lives in between."""
        left = self._left()
        if not left:
            return
        now, records = present(), self._records
        records.pump = pump = left[0]
        calibrations = {record: self._document.values(record) for record in records.calibrations()}
        # Without a calibration and a head's hours nothing wears that anybody knows of.
        hours = pump_use.hours_per_day(records.uses(now)) if calibrations else 0.0
        installed = Installed(
            pump, name_of(self._document, pump, say_all(PUMPS)), records.values(), calibrations, hours
        )
        self._found[pump] = pump_duties.duties((installed,), now)
        if len(left) > 1:
            self._next.start()
        else:
            self.looked.emit()

    def _changed(self, change: Change) -> None:
        if self._document.kind(change.record_id) in _DECIDES:
            self._forget()

    def _forget(self, *_: object) -> None:
        self._found.clear()
