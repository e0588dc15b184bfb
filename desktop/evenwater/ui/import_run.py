"""Brings readings of a spreadsheet into the log as one step, while the window goes on living and can stop it."""

from __future__ import annotations

import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import timedelta

import numpy as np
from PySide6.QtCore import QCoreApplication, QObject, Signal

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed, Water
from evenwater.engine.reasons import Reason
from evenwater.screens import csv_entries
from evenwater.screens.csv_choices import ReadRow
from evenwater.screens.csv_entries import Flags, Sequel
from evenwater.session import Document, Entry, content_id

# How long [s] the window may wait for its turn.
_BREATH_S = 0.03
_AFTER = timedelta(microseconds=1)


@dataclass(frozen=True)
class Known:
    """Which readings of a file the log has already, both of shape (n,) in the order of the file.

    ``there`` are those with the same instant and value; ``near`` those with whose instant another value is there.
    """

    there: Flags
    near: Flags

    @property
    def count(self) -> int:
        """How many are there."""
        return int(self.there.sum())


@dataclass(frozen=True)
class Outcome:
    """What became of an import: how many readings are new, None when nothing was imported; ``reason`` says why then.

    Without a reason it was stopped.
    """

    new: int | None
    reason: Reason | None = None


def known(document: Document, system: str, sequels: Sequence[Sequel], number: int) -> Known:
    """Return which of ``number`` readings the log of a system has already."""
    there, near = np.zeros(number, dtype=np.bool_), np.zeros(number, dtype=np.bool_)
    for sequel in sequels:
        log = document.log.columns(system, sequel.parameter, since=sequel.first, until=sequel.last + _AFTER)
        there[sequel.places], near[sequel.places] = csv_entries.in_log(sequel, *log)
    return Known(there, near)


class ImportRun(QObject):
    """Imports readings; ``came`` carries how many were looked at so far. The windows are given their turns meanwhile."""

    came = Signal(int)

    def __init__(self, document: Document, catalogue: Catalogue, parent: QObject) -> None:
        """Begin with nothing to do."""
        super().__init__(parent)
        self._document, self._catalogue = document, catalogue
        self.running = False
        self._stopped = False
        self._reason: Reason | None = None
        self._looked_at = 0
        self._breathed = 0.0

    def stop(self) -> None:
        """Stop; nothing is imported then."""
        self._stopped = True

    def run(self, system: str, rows: Sequence[ReadRow], water: Water) -> Outcome:
        """Import those readings that are not in the log of a system, all of them or, when it is stopped or refused, none."""
        self.running, self._stopped, self._reason, self._looked_at = True, False, None, 0
        self._breathed = time.monotonic()
        self._document.saveFailed.connect(self._refused)
        try:
            found = known(self._document, system, csv_entries.sequels(rows, self._catalogue, water), len(rows))
            new = self._document.log.import_entries(self._entries(system, rows, water, found), self._go_on, self)
        finally:
            self._document.saveFailed.disconnect(self._refused)
            self.running = False
        return Outcome(new, None if new is not None or self._stopped else self._reason)

    def _entries(self, system: str, rows: Sequence[ReadRow], water: Water, found: Known) -> Iterator[Entry]:
        for place, row in enumerate(rows):
            self._looked_at = place + 1
            if time.monotonic() - self._breathed > _BREATH_S:
                self._breathe()
            if found.there[place] or (found.near[place] and self._says(system, row)):
                continue
            taken = csv_entries.taken(row, self._catalogue, water)
            yield Entry(
                id=content_id(system, "reading", row.parameter, row.at, row.content, row.typed.unit),
                system_id=system,
                kind="reading",
                subject=taken.subject,
                at=taken.at,
                who=taken.who,
                fields=taken.fields,
                value=taken.value,
            )

    def _says(self, system: str, row: ReadRow) -> bool:
        """Return whether the log has a reading at the same instant, with the figure and unit of the file."""
        there = self._document.log.entries(system, ("reading",), row.parameter, row.at, row.at + _AFTER)
        noted = ((entry.at, entry.fields.get("value", Typed("")), entry.value) for entry in there)
        return csv_entries.says(row, noted, self._catalogue)

    def _go_on(self, _read: int) -> bool:
        self._breathe()
        return not self._stopped

    def _breathe(self) -> None:
        self.came.emit(self._looked_at)
        QCoreApplication.processEvents()
        self._breathed = time.monotonic()

    def _refused(self, reason: Reason) -> None:
        self._reason = reason
