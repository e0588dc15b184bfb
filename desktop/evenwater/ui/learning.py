"""What the log says of the use per day, learned beside the window and kept until the log changes."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed, Water
from evenwater.screens import correct, logbook
from evenwater.screens.local_zone import present
from evenwater.session import Document, LatestOnly, LogChange, PlansChange
from evenwater.ui.plans import Plans

if TYPE_CHECKING:
    from evenwater.screens.learned import Learned

_Key = tuple[str, str, float | None, Water]


class Learning(QObject):
    """Learns for one system and parameter at a time; ``learned`` says that what was asked for is there."""

    learned = Signal()

    def __init__(self, document: Document, catalogue: Catalogue, plans: Plans, parent: QObject) -> None:
        """Watch the log of ``document``."""
        super().__init__(parent)
        self._document, self._catalogue, self._plans = document, catalogue, plans
        self._known: dict[_Key, Learned] = {}
        self._logged: dict[str, tuple[str, ...]] = {}
        # How often the log has changed: what was begun before is out of date when it comes.
        self._changes = 0
        self._work = LatestOnly(self)
        self._work.done.connect(self._done)
        self.resting = False
        """Whether nothing is begun now."""
        document.log.logChanged.connect(self._forget)
        document.log.plansChanged.connect(self._forget)

    def rest(self) -> None:
        """Begin nothing until ``wake``, while a window is opened: whatever works beside it would make it wait."""
        self.resting = True

    def wake(self) -> None:
        """Let everybody ask again."""
        self.resting = False
        self.learned.emit()

    def ask(self, system: str, parameter: str) -> Learned | None:
        """Return what is learned of a parameter of a system; None while it is being worked out."""
        key = self._key(system, parameter)
        if key in self._known:
            return self._known[key]
        if self.resting:
            return None
        from evenwater.screens.learned import LOOKS_BACK, Noted, learn  # with all that learns, after the first paint

        values = self._document.values(system)
        now = present()
        since = now - LOOKS_BACK
        log = self._document.log
        # What plans gave counts whether anybody noted it or not, and not twice.
        doses = self._plans.given(system, parameter, since, now)
        for dose in log.entries(system, ("dose",), since=since):
            carried = logbook.carried(dose.fields.get("carries", Typed("")).text).get(parameter, 0.0)
            if carried > 0.0 and dose.value is not None and not self._plans.counts(system, parameter, dose):
                doses.append((dose.at, dose.value, carried))
        noted = Noted(
            [(e.at, e.value) for e in log.entries(system, ("reading",), parameter, since=since) if e.value is not None],
            doses,
            [(e.at, e.value) for e in log.entries(system, ("exchange",), since=since) if e.value is not None],
        )
        task = partial(
            learn, self._catalogue.parameters[parameter], noted, correct.volume_l(values), correct.water(values), now
        )
        self._work.submit(task, (key, self._changes))
        return None

    def logged(self, system: str) -> tuple[str, ...]:
        """Return of which parameters the log has a reading, in the order of the data file; remembered until it changes."""
        if system not in self._logged:
            found = self._document.log.latest_by_subject(system, "reading")
            self._logged[system] = tuple(name for name in self._catalogue.parameters if name in found)
        return self._logged[system]

    def ask_each(self, system: str) -> None:
        """Ask for one parameter that the log knows after the other; ``learned`` says when to come for the next."""
        for name in self.logged(system):
            if self.ask(system, name) is None:
                return

    def known(self, system: str, parameter: str) -> Learned | None:
        """Return what is learned already, without asking for it."""
        return self._known.get(self._key(system, parameter))

    def _key(self, system: str, parameter: str) -> _Key:
        """Return what decides what is learned, besides the log."""
        values = self._document.values(system)
        return system, parameter, correct.volume_l(values), correct.water(values)

    def close(self) -> None:
        """Wait for the work that is under way."""
        self._work.close()

    def _done(self, done: object) -> None:
        key, changes = done.key  # type: ignore[attr-defined]
        if changes == self._changes:
            self._known[key] = done.result  # type: ignore[attr-defined]
        self.learned.emit()

    def _forget(self, change: LogChange | PlansChange) -> None:
        self._changes += 1
        self._logged.clear()
        for key in [k for k in self._known if not change.system_ids or k[0] in change.system_ids]:
            del self._known[key]
