"""The Rounds sheet: one line for everything that is wrong or due in the fish room; a line opens what it is about."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.screens import rounds
from evenwater.screens.local_zone import present
from evenwater.screens.rounds import Duty
from evenwater.session import Document
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.duty_list import DutyList
from evenwater.ui.flow import FlowRow
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.pump_watch import PumpWatch
from evenwater.ui.round_actions import RoundActions
from evenwater.ui.round_watch import RoundWatch
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import say

_REFRESH_MS = 60_000
_SOON_MS = 30
# A plan whose test or end is due has lines of its own for that.
_STATES = {"waiting": "inside", "ended": "inside"}


class RoundsSheet(QWidget):
    """Shows the duties of the whole room; ``opened`` carries the ``Duty`` that was chosen."""

    opened = Signal(object)

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QWidget | None = None
    ) -> None:
        """Make the sheet."""
        super().__init__(parent)
        set_role(self, "page")
        self._catalogue, self._followed = catalogue, plans
        self.watch = RoundWatch(document, catalogue, learning, plans, self)
        self.pumps = PumpWatch(document, catalogue, self)
        self.duties: tuple[Duty, ...] = ()
        self.header = SheetHeader(document, self, say("The fish room"))
        self._said = QLabel(self)
        set_role(self._said, "second")
        self.list = DutyList(self)
        self.actions_row = RoundActions(catalogue, Dialogs(self), self)
        feet = FlowRow(GRID)
        for button in self.actions_row.buttons:
            feet.addWidget(button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addWidget(self._said)
        layout.addWidget(self.list, 1)
        layout.addLayout(feet)
        self._minute = QTimer(self)
        self._minute.setInterval(_REFRESH_MS)
        self._minute.timeout.connect(self._again)
        self._minute.start()
        # Many changes that come together are shown once, and the sheet is painted before the room is looked at.
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_SOON_MS)
        self._soon.timeout.connect(self._look)
        self.list.opened.connect(self.opened)
        for watch in (self.watch, self.pumps):
            watch.looked.connect(self._show)
        self.actions_row.told.connect(self.header.tell)
        for signal in (
            document.cardsChanged,
            document.recordsChanged,
            document.changed,
            document.log.logChanged,
            document.log.plansChanged,
        ):
            signal.connect(self._again)

    def showEvent(self, event: QShowEvent) -> None:
        """Look at the room as it is now."""
        super().showEvent(event)
        self.refresh()

    def waiting(self) -> bool:
        """Say whether what is shown may not be all yet."""
        return self._soon.isActive() or self.watch.waiting() or self.pumps.waiting()

    def refresh(self) -> None:
        """Look at what has changed in the room, and show it; what was shown before is there until then."""
        if self.duties:
            self._soon.start()
        else:
            self._look()

    def _look(self) -> None:
        self._soon.stop()
        self.header.show_system("")
        self.pumps.look()
        if not self.watch.look():
            self._show()

    def focus_first(self) -> None:
        """Put the focus on the first line."""
        self.list.choose_first()
        self.list.setFocus()

    def _again(self, *_: object) -> None:
        if self.isVisible():
            self._soon.start()

    def _show(self) -> None:
        unread, unplanned = self.watch.left()
        if unread:
            self._say(say("Looking at the log of {unread} more systems.", unread=unread), self.duties)
            return
        now = present()
        room = replace(self.watch.room(), plans=self._plans(), at_pumps=self.pumps.duties())
        self.duties = rounds.duties(room, self._catalogue, now)
        more = (
            say(" Reckoning what {unplanned} more systems take from the jugs.", unplanned=unplanned)
            if unplanned
            else ""
        )
        self._say(f"{rounds.headline(self.duties)}{more}", self.duties)
        self.actions_row.set_room(None if unplanned else room, self.duties, now)

    def _say(self, words: str, duties: tuple[Duty, ...]) -> None:
        self._said.setText(words)
        self.list.show_duties(duties)

    def _plans(self) -> tuple[rounds.Followed, ...]:
        """Return the live plans, each judged by the readings since its start."""
        found, now = [], present()
        for plan in self._followed.live():
            judged = self._followed.judged(plan, now)
            if judged is None:
                why = say("It was kept by another version. End it, then plan again from a fresh reading.")
                about = rounds.Followed(
                    plan.plan_id, plan.system_id, plan.parameter, "unreadable", why, None, plan.started, None
                )
            else:
                about = rounds.Followed(
                    plan.plan_id, plan.system_id, plan.parameter, _STATES.get(judged.state, judged.state), judged.said,
                    judged.retest_at, plan.started, judged.valid_until,
                )  # fmt: skip
            found.append(about)
        return tuple(found)
