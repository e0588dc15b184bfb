"""All plans of a system together, reckoned once for every sheet that shows them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from evenwater.engine.catalogue import Catalogue
from evenwater.screens.local_zone import present
from evenwater.session import Document
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans

if TYPE_CHECKING:
    from evenwater.screens import correct, together
    from evenwater.screens.together_card import TogetherPage
    from evenwater.screens.together_views import TogetherView
    from evenwater.ui.together_records import TogetherRecords

# Nothing is reckoned while somebody types [ms].
QUIET_MS = 300
# Once a minute, so that dates and what was dosed until now stay true.
_REFRESH_MS = 60_000
_HOLDS = timedelta(seconds=50)


@dataclass(frozen=True)
class Put:
    """All plans of a system together, as they were at an instant."""

    found: together.Together
    view: TogetherView
    at: datetime


class Together(QObject):
    """Puts the plans of one system together when a sheet asks for it, and keeps that until something changes.

    ``stale`` says at once that what was shown may be old, ``changed`` that it may be asked for anew, once nobody types.
    """

    stale = Signal()
    changed = Signal()

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QObject
    ) -> None:
        """Watch the document, its log and its plans."""
        super().__init__(parent)
        self._document, self._catalogue, self._learning = document, catalogue, learning
        self._plans = plans
        self._read: TogetherRecords | None = None
        self._put: dict[tuple[str, bool], Put] = {}
        self._standing: tuple[str, correct.Plan | None] = ("", None)
        self._quiet = QTimer(self)
        self._quiet.setSingleShot(True)
        self._quiet.setInterval(QUIET_MS)
        self._quiet.timeout.connect(self.changed)
        self._minute = QTimer(self)
        self._minute.setInterval(_REFRESH_MS)
        self._minute.timeout.connect(self.changed)
        self._minute.start()
        for signal in (document.changed, document.recordsChanged, learning.learned):
            signal.connect(self._again)
        for signal in (document.log.logChanged, document.log.plansChanged, plans.changed):
            signal.connect(self._log_changed)

    @property
    def _records(self) -> TogetherRecords:
        """What reads the records; loaded, with all that reckons them, when a sheet first asks, after its own figures are painted."""
        if self._read is None:
            from evenwater.ui.together_records import TogetherRecords

            self._read = TogetherRecords(self._document, self._catalogue, self._learning, self._plans)
        return self._read

    def of(self, system: str, *, standing: bool = False) -> Put:
        """Return everything of a system together; with ``standing`` also the correction that stands on the Correct sheet."""
        from evenwater.screens import together, together_view

        now = present()
        plan = self._standing[1] if standing and self._standing[0] == system else None
        key = (system, plan is not None)
        known = self._put.get(key)
        if known is None or now - known.at > _HOLDS:
            found = together.evaluate(self._records.asked(system, plan, now), self._catalogue, now)
            known = self._put[key] = Put(found, together_view.view(found, now), now)
        if not standing:
            # Beside a correction the log is asked for its own use first; the other sheets ask for the rest.
            self._learn(system)
        return known

    def resting(self) -> bool:
        """Return whether nothing is to be put together yet, because the window is being opened."""
        return self._learning.resting

    def waiting(self) -> bool:
        """Return whether what was said last is old, because somebody types."""
        return self._quiet.isActive()

    def stand(self, system: str, plan: correct.Plan | None) -> None:
        """Take over the correction that stands on the Correct sheet; None where there is none that could be started."""
        if system != self._standing[0] or plan is not self._standing[1]:
            self._standing = (system, plan)
            self._put = {key: put for key, put in self._put.items() if not key[1]}
            self._begin()

    def objection(self, system: str, plan: correct.Plan) -> str:
        """Return why a new correction must not be begun beside everything that runs in its system; empty where it may."""
        from evenwater.screens import together_view

        self.stand(system, plan)
        return together_view.objection(self.of(system, standing=True).found, plan.parameter)

    def page(self, system: str) -> TogetherPage | None:
        """Return the card of what runs in a system; None where nothing does."""
        from evenwater.screens import together_card

        foods = self._records.foods(system)
        return together_card.page(
            self.of(system).found, self._catalogue, self._document.values(system), foods, present()
        )

    def _learn(self, system: str) -> None:
        """Let the log be asked for one use after the other; each answer comes back here."""
        for name in self._records.unlearned(system):
            if self._learning.ask(system, name) is None:
                return

    def _log_changed(self, *_: object) -> None:
        if self._read is not None:
            self._read.forget_log()
        self._again()

    def _again(self, *_: object) -> None:
        self._put.clear()
        self._begin()

    def _begin(self) -> None:
        self.stale.emit()
        self._quiet.start()


def shared(document: Document, catalogue: Catalogue, learning: Learning, plans: Plans) -> Together:
    """Return the one watcher of a room, made when the first sheet asks for it; it lives as long as the room's plans."""
    found = plans.findChild(Together)
    return found if isinstance(found, Together) else Together(document, catalogue, learning, plans, plans)
