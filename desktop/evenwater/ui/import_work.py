"""What a spreadsheet would bring into the log, found out beside the window; only the newest choice counts."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, tzinfo
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Water
from evenwater.screens.csv_choices import Guess, Refusal
from evenwater.screens.csv_entries import Sequel, sequels
from evenwater.screens.csv_guess import sniff
from evenwater.screens.csv_preview import Preview, preview
from evenwater.screens.csv_text import MOST_BYTES
from evenwater.screens.local_zone import LocalZone, present
from evenwater.session import LatestOnly
from evenwater.ui.progress import Ticket
from evenwater.wording import marked, say_all

# How often [ms] it is said how far the reading has come.
_TELL_MS = 100
_UNREADABLE = Refusal(
    "csv_unreadable", marked("The file cannot be opened. See whether it is still there, and may be read.")
)
_BROKEN_OFF = Refusal("csv_broken_off", marked("The file could not be read to its end. Choose it again."))


@dataclass(frozen=True)
class Looked:
    """What a file holds as far as it is settled how it is read.

    ``data`` are its bytes. Without a ``guess`` the ``refusal`` says why there is none. ``sequels`` are the readings by parameter.
    """

    data: bytes
    guess: Guess | None = None
    refusal: Refusal | None = None
    preview: Preview | None = None
    sequels: tuple[Sequel, ...] = ()


def look(
    source: Path | bytes,
    catalogue: Catalogue,
    rulings: Mapping[str, str],
    water: Water,
    zone: tzinfo,
    now: datetime,
    ticket: Ticket,
) -> Looked:
    """Return what a file holds; runs in another thread.

    ``source`` is the place of the file, or its bytes once they are known; the rest is as ``preview`` says.
    Raises ``DroppedError`` when ``ticket`` says that nobody wants to know.
    """
    if isinstance(source, Path):
        try:
            with source.open("rb") as file:
                data = file.read(MOST_BYTES + 1)
        except OSError:
            return Looked(b"", None, say_all(_UNREADABLE))
    else:
        data = source
    ticket.most = data.count(b"\n") + 1
    guess = sniff(data, catalogue, rulings)
    ticket.step(0)
    if isinstance(guess, Refusal):
        return Looked(data, None, guess)
    found = preview(data, guess.choices, catalogue, zone, now, ticket.step)
    return Looked(data, guess, None, found, sequels(found.taken, catalogue, water))


class ImportWork(QObject):
    """Looks at one file after the other; ``looked`` carries a ``Looked``, ``came`` the ``Ticket`` while it is under way."""

    looked = Signal(object)
    came = Signal(object)

    def __init__(self, catalogue: Catalogue, parent: QObject) -> None:
        """Begin with nothing to do."""
        super().__init__(parent)
        self._catalogue = catalogue
        self._ticket = Ticket(dropped=True)
        self._work = LatestOnly(self)
        self._work.done.connect(self._done)
        self._work.failed.connect(self._failed)
        self._timer = QTimer(self)
        self._timer.setInterval(_TELL_MS)
        self._timer.timeout.connect(self._tell)

    def look(self, source: Path | bytes, rulings: Mapping[str, str], water: Water) -> None:
        """Look at a file; what is still being looked at is dropped."""
        self.drop()
        self._ticket = Ticket()
        task = partial(look, source, self._catalogue, dict(rulings), water, LocalZone(), present(), self._ticket)
        self._work.submit(task, self._ticket)
        self._timer.start()

    def drop(self) -> None:
        """Want to know nothing any more."""
        self._ticket.dropped = True
        self._timer.stop()

    def busy(self) -> bool:
        """Return whether an answer is still to come."""
        return not self._ticket.dropped and self._work.busy()

    def _done(self, done: object) -> None:
        if done.key is self._ticket and not self._ticket.dropped:  # type: ignore[attr-defined]
            self._timer.stop()
            self.looked.emit(done.result)  # type: ignore[attr-defined]

    def _failed(self, failed: object) -> None:
        # What was dropped fails with ``DroppedError``; anything else is a fault of ours, which must not pass in silence.
        if failed.key is self._ticket and not self._ticket.dropped:  # type: ignore[attr-defined]
            self._timer.stop()
            self.looked.emit(Looked(b"", None, say_all(_BROKEN_OFF)))
            raise failed.error  # type: ignore[attr-defined]

    def _tell(self) -> None:
        self.came.emit(self._ticket)
