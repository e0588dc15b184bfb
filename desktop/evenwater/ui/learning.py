"""What the log says of the use per day, learned beside the window and kept until the log changes."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QObject, Signal

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, logbook
from evenwater.screens.learned import LOOKS_BACK, Learned, Noted, learn
from evenwater.screens.local_zone import present
from evenwater.session import Document, LatestOnly, LogChange


class Learning(QObject):
    """Learns for one system and parameter at a time; ``learned`` says that what was asked for is there."""

    learned = Signal()

    def __init__(self, document: Document, catalogue: Catalogue, parent: QObject) -> None:
        """Watch the log of ``document``."""
        super().__init__(parent)
        self._document, self._catalogue = document, catalogue
        self._known: dict[tuple[str, str, str], Learned] = {}
        self._work = LatestOnly(self)
        self._work.done.connect(self._done)
        document.log.logChanged.connect(self._forget)

    def ask(self, system: str, parameter: str) -> Learned | None:
        """Return what is learned of a parameter of a system; None while it is being worked out."""
        key = (system, parameter, self._document.value(system, "net_volume").text)
        if key in self._known:
            return self._known[key]
        values = self._document.values(system)
        now = present()
        since = now - LOOKS_BACK
        log = self._document.log
        doses = []
        for dose in log.entries(system, ("dose",), since=since):
            carried = logbook.carried(dose.fields.get("carries", Typed("")).text).get(parameter, 0.0)
            if carried > 0.0 and dose.value is not None:
                doses.append((dose.at, dose.value, carried))
        noted = Noted(
            [(e.at, e.value) for e in log.entries(system, ("reading",), parameter, since=since) if e.value is not None],
            doses,
            [(e.at, e.value) for e in log.entries(system, ("exchange",), since=since) if e.value is not None],
        )
        task = partial(
            learn, self._catalogue.parameters[parameter], noted, correct.volume_l(values), correct.water(values), now
        )
        self._work.submit(task, key)
        return None

    def close(self) -> None:
        """Wait for the work that is under way."""
        self._work.close()

    def _done(self, done: object) -> None:
        self._known[done.key] = done.result  # type: ignore[attr-defined]
        self.learned.emit()

    def _forget(self, change: LogChange) -> None:
        for key in [k for k in self._known if not change.system_ids or k[0] in change.system_ids]:
            del self._known[key]
