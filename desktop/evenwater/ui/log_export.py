"""Writes the readings of a system as a spreadsheet: read in small bites, written beside the window, there whole or not at all."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime
from functools import partial
from itertools import takewhile
from operator import attrgetter
from pathlib import Path
from typing import NamedTuple

from PySide6.QtCore import QIODevice, QObject, QSaveFile, QTimer, Signal

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.screens.csv_choices import ReadRow
from evenwater.screens.csv_writing import Columns, row_of, write_csv
from evenwater.screens.local_zone import LocalZone
from evenwater.session import Document, Entry, LatestOnly
from evenwater.ui.progress import Ticket
from evenwater.wording import marked, say, say_many

# So many readings are read in one turn of the window.
_BITE = 1000
_TELL_MS = 100
_when = attrgetter("at", "parameter")
_NOT_WRITTEN = marked("The spreadsheet could not be written there. Choose another folder.")
_NOT_READ = marked("The log could not be read to its end. No spreadsheet was written.")
_NOTHING = marked("There are no readings to save.")


class _Reading(NamedTuple):
    """What is written of a reading. Of plain values only: the collector of rubbish does not look at each of 100,000."""

    at: datetime
    parameter: str
    text: str
    unit: str
    value: float | None
    kit: str
    who: str
    note: str

    @classmethod
    def of(cls, entry: Entry) -> _Reading:
        """Return what is written of an entry."""
        typed = entry.fields.get("value", Typed(""))
        kit, note = (entry.fields.get(name, Typed("")).text for name in ("kit", "text"))
        return cls(entry.at, entry.subject, typed.text, typed.unit, entry.value, kit, entry.who, note)

    def row(self, catalogue: Catalogue) -> ReadRow:
        """Return it as it is written."""
        typed = Typed(self.text, self.unit)
        return row_of(self.at, self.parameter, typed, catalogue, self.value, self.kit, self.who, self.note)


def write(readings: Sequence[_Reading], catalogue: Catalogue, path: Path, ticket: Ticket) -> str:
    """Write readings to a file in the order of time and return what was done; runs in another thread.

    Raises ``DroppedError``, with the file as it was before, when ``ticket`` says that nobody wants it.
    """
    data = write_csv(_rows(sorted(readings, key=_when), catalogue, ticket), Columns(zone=LocalZone()))
    file = QSaveFile(str(path))
    written = file.open(QIODevice.OpenModeFlag.WriteOnly) and file.write(data) == len(data)
    ticket.step(ticket.most)
    if not written or not file.commit():
        return say(_NOT_WRITTEN)
    return say(
        "Saved {readings} as {path}.", readings=say_many("{n} reading", "{n} readings", len(readings)), path=path.name
    )


def _rows(readings: Sequence[_Reading], catalogue: Catalogue, ticket: Ticket) -> Iterator[ReadRow]:
    for number, reading in enumerate(readings):
        if number % _BITE == 0:
            ticket.step(len(readings) + number)
        yield reading.row(catalogue)


class LogExport(QObject):
    """Writes one file at a time; ``came`` carries the ``Ticket`` under way, ``ended`` what was done, or nothing when stopped."""

    came = Signal(object)
    ended = Signal(str)

    def __init__(self, document: Document, catalogue: Catalogue, parent: QObject) -> None:
        """Begin with nothing to do."""
        super().__init__(parent)
        self._document, self._catalogue = document, catalogue
        self._system, self._path = "", Path()
        self._left: list[str] = []
        self._since: datetime | None = None
        self._same: set[str] = set()
        self._readings: list[_Reading] = []
        self._ticket = Ticket(dropped=True)
        self._work = LatestOnly(self)
        self._work.done.connect(self._done)
        self._work.failed.connect(self._failed)
        self._next = QTimer(self)
        self._next.setInterval(0)
        self._next.timeout.connect(self._read)
        self._tell = QTimer(self)
        self._tell.setInterval(_TELL_MS)
        self._tell.timeout.connect(self._say)
        document.saveFailed.connect(self._refused)

    @property
    def running(self) -> bool:
        """Whether a file is being written."""
        return not self._ticket.dropped

    def start(self, system: str, path: Path) -> None:
        """Write all readings of a system to a file."""
        if self.running:
            return
        number = self._document.log.count(system, "reading")
        if not number:
            self.ended.emit(say(_NOTHING))
            return
        self._system, self._path, self._readings = system, path, []
        self._left = sorted(self._document.log.latest_by_subject(system, "reading"))
        self._since, self._same = None, set()
        self._ticket = Ticket(2 * number)
        self._next.start()
        self._tell.start()

    def stop(self) -> None:
        """Stop; the file stays as it was before."""
        if self.running:
            self._end("")

    def _read(self) -> None:
        """Read the next bite of a parameter: what comes after its newest reading that is known, in the order of time."""
        if not self._left:
            self._next.stop()
            task = partial(write, tuple(self._readings), self._catalogue, self._path, self._ticket)
            self._work.submit(task, self._ticket)
            return
        most = _BITE + len(self._same)
        found = self._document.log.entries(self._system, ("reading",), self._left[0], since=self._since, limit=most)
        self._readings.extend(_Reading.of(entry) for entry in found if entry.id not in self._same)
        self._ticket.done = len(self._readings)
        if len(found) < most:
            self._left.pop(0)
            self._since, self._same = None, set()
        else:
            self._since = found[-1].at
            self._same = {entry.id for entry in takewhile(self._at_the_end, reversed(found))}

    def _at_the_end(self, entry: Entry) -> bool:
        return entry.at == self._since

    def _done(self, done: object) -> None:
        if done.key is self._ticket and self.running:  # type: ignore[attr-defined]
            self._end(done.result)  # type: ignore[attr-defined]

    def _failed(self, failed: object) -> None:
        if failed.key is self._ticket and self.running:  # type: ignore[attr-defined]
            self._end(say(_NOT_WRITTEN))
            raise failed.error  # type: ignore[attr-defined]

    def _refused(self, _reason: Reason) -> None:
        # What could not be read looks like the end of the log: half of it must not pass for the whole.
        if self._next.isActive():
            self._end(say(_NOT_READ))

    def _end(self, said: str) -> None:
        self._ticket.dropped = True
        self._readings = []
        self._next.stop()
        self._tell.stop()
        self.ended.emit(said)

    def _say(self) -> None:
        self.came.emit(self._ticket)
