"""The Jugs sheet: every jug of the room at one glance, one of them whole, and what to fill before going away."""

from __future__ import annotations

from dataclasses import replace
from time import perf_counter

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QScrollArea, QStackedWidget, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import absence_view, jug_delivery, jugs_sheet, rounds
from evenwater.screens.jug_delivery import CheckView
from evenwater.screens.jug_room import Jug
from evenwater.screens.local_zone import present
from evenwater.session import Document
from evenwater.ui.absence_page import AbsencePage
from evenwater.ui.jug_list import JugList
from evenwater.ui.jug_page import JugPage
from evenwater.ui.jug_records import JugRecords
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.round_watch import RoundWatch
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say

NO_JUG = marked("No jug yet")
_LIST_SHARE, _LIST_NARROW, _ROOMY = 0.44, 0.36, 800
_REFRESH_MS, _SOON_MS = 60_000, 30
# How long [s] the window is held at a time: a key pressed meanwhile is still answered at once.
_SLICE_S = 0.012
_AWAY, _BACK = marked("Plan an a&bsence"), marked("&Back to the jug")


class JugsSheet(QWidget):
    """Shows all jugs and one of them; ``jug_wanted`` carries the id of the jug the keeper went to in the list."""

    jug_wanted = Signal(str)

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QWidget | None = None
    ) -> None:
        """Make the sheet, still without a jug; nothing is looked at before it is shown."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue, self._plans = document, catalogue, plans
        self._stock = ""
        self._jugs: tuple[Jug, ...] = ()
        # What the levels of each jug say, with the jug they were looked at for; the rest waits for its turn.
        self._checks: dict[str, tuple[Jug, int, CheckView]] = {}
        self._log_changes = 0
        self._unchecked: dict[str, Jug] = {}
        self.watch = RoundWatch(document, catalogue, learning, plans, self)
        self.records = JugRecords(document, catalogue, self.watch)
        self.header = SheetHeader(document, self, say(NO_JUG))
        self.list = JugList(self)
        self.page = JugPage(catalogue, self.records, self)
        self.away = AbsencePage(self)
        self.turn = QPushButton(say(_AWAY), self)
        self.turn.setAutoDefault(False)
        set_role(self.turn, "large")
        self._title = QLabel(say("All jugs"), self)
        set_role(self._title, "title")
        self._title.setBuddy(self.list)
        self._shown = QStackedWidget(self)
        self._lay_out()
        self._minute = QTimer(self)
        self._minute.setInterval(_REFRESH_MS)
        self._minute.start()
        # Many changes that come together are shown once.
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_SOON_MS)
        self._turns = QTimer(self)
        self._turns.setSingleShot(True)
        self._turns.setInterval(0)
        self._connect(document, learning, plans)

    def _lay_out(self) -> None:
        for page in (self.page, self.away):
            area = QScrollArea(self)
            area.setWidgetResizable(True)
            area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
            area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
            area.setWidget(page)
            self._shown.addWidget(area)
        self._left = QWidget(self)
        left = QVBoxLayout(self._left)
        left.setContentsMargins(0, 0, 0, 0)
        left.setSpacing(GRID)
        left.addWidget(self._title)
        left.addWidget(self.list, 1)
        left.addWidget(self.turn)
        middle = QHBoxLayout()
        middle.setSpacing(2 * GRID)
        middle.addWidget(self._left)
        middle.addWidget(self._shown, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addLayout(middle, 1)

    def _connect(self, document: Document, learning: Learning, plans: Plans) -> None:
        self.list.chosen.connect(self._went)
        self.turn.clicked.connect(self._turn)
        self.page.told.connect(self.header.tell)
        self.away.edited.connect(self._until)
        for page in (self.page, self.away):
            page.committed.connect(document.commit_point)
        self._soon.timeout.connect(self._look)
        self._turns.timeout.connect(self._check_on)
        self.watch.looked.connect(self._show)
        document.log.logChanged.connect(self._log_changed)
        for signal in (
            self._minute.timeout, document.changed, document.recordsChanged, document.cardsChanged,
            document.log.plansChanged, learning.learned, plans.changed,
        ):  # fmt: skip
            signal.connect(self._again)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the width between the list and what it shows, which needs most of it in large letters."""
        super().resizeEvent(event)
        roomy = self.width() >= pixels(self.font(), _ROOMY)
        self._left.setFixedWidth(round((_LIST_SHARE if roomy else _LIST_NARROW) * self.width()))

    def showEvent(self, event: QShowEvent) -> None:
        """Look at the jugs as they are now."""
        super().showEvent(event)
        self.refresh()

    def waiting(self) -> bool:
        """Say whether what is shown may not be all yet."""
        return self._soon.isActive() or self._turns.isActive() or self.watch.waiting()

    # Showing

    def show_jug(self, stock_id: str) -> None:
        """Show another jug whole."""
        self._stock = stock_id
        self.header.show_system(stock_id)
        self.list.choose(stock_id)
        self._shown.setCurrentIndex(0)
        self.turn.setText(say(_AWAY))
        self._look()

    def show_absence(self) -> None:
        """Show what to do before going away."""
        self._shown.setCurrentIndex(1)
        self.turn.setText(say(_BACK))
        self._show()

    def refresh(self) -> None:
        """Look at what has changed, and show it."""
        self._look()

    def settle(self) -> None:
        """End what is being typed."""
        self._document.commit_point()

    def _log_changed(self, *_: object) -> None:
        self._log_changes += 1
        self._again()

    def _again(self, *_: object) -> None:
        if self.isVisible():
            self._soon.start()

    def _look(self) -> None:
        self._soon.stop()
        if not self.watch.look():
            self._show()

    def _show(self) -> None:
        """Show the jugs as far as the room was looked at."""
        now = present()
        self._jugs = self.records.jugs()
        self._unchecked = {jug.stock_id: jug for jug in self._jugs if len(jug.levels) > 1 and self._is_new(jug)}
        self._show_rows()
        if self._unchecked:
            self._turns.start()
        if self._shown.currentIndex() == 1:
            typed = self.records.until()
            room = replace(self.watch.room(), plans=self._followed())
            self.away.show_absence(absence_view.view(typed.text, self._jugs, room, self._catalogue, now), typed)
            return
        jug = next((each for each in self._jugs if each.stock_id == self._stock), None)
        self.page.show_jug(None if jug is None else self.records.whole(jug))

    def _is_new(self, jug: Jug) -> bool:
        """Return whether the levels of a jug were not looked at yet as it is; that time has passed changes nothing."""
        seen = self._checks.get(jug.stock_id)
        return seen is None or (replace(seen[0], contents=jug.contents), seen[1]) != (jug, self._log_changes)

    def _show_rows(self) -> None:
        now, rows = present(), []
        for jug in self._jugs:
            seen = self._checks.get(jug.stock_id) if len(jug.levels) > 1 else None
            rows.append(jugs_sheet.row(jug, self._catalogue, now, None if seen is None else seen[2]))
        self.list.show_rows(rows, self._stock)
        self._title.setText(self._headline(rows))

    def _check_on(self) -> None:
        """Look at the levels of jugs, for a moment now and then between the window's own work."""
        ends = perf_counter() + _SLICE_S
        while self._unchecked and perf_counter() < ends:
            stock, jug = next(iter(self._unchecked.items()))
            del self._unchecked[stock]
            self._checks[stock] = jug, self._log_changes, jug_delivery.view(self.records.whole(jug), present())
        if self._unchecked:
            self._turns.start()
        else:
            self._show_rows()

    def _headline(self, rows: list[jugs_sheet.JugRow]) -> str:
        counts = (
            (sum(row.stop for row in rows), say("to stop")),
            (sum(row.empty for row in rows), "empty"),
            (sum(row.low and not row.empty for row in rows), "low"),
            (sum(bool(row.check) and not row.stop for row in rows), say("with a pump off")),
        )
        said = [f"{count} {words}" for count, words in counts if count]
        return say("All jugs: {said}", said=", ".join(said)) if said else say("All jugs")

    def _followed(self) -> tuple[rounds.Followed, ...]:
        """Return the plans that are followed, with when they ask for a test and when their cards end."""
        found, now = [], present()
        for plan in self._plans.live():
            judged = self._plans.judged(plan, now)
            if judged is not None:
                found.append(
                    rounds.Followed(
                        plan.plan_id,
                        plan.system_id,
                        plan.parameter,
                        judged.state,
                        judged.said,
                        judged.retest_at,
                        plan.started,
                        judged.valid_until,
                    )
                )
        return tuple(found)

    # What is done

    def _went(self, stock_id: str) -> None:
        self._document.commit_point()
        self.jug_wanted.emit(stock_id)
        if self._stock != stock_id or self._shown.currentIndex() == 1:
            self.show_jug(stock_id)

    def _turn(self) -> None:
        self._document.commit_point()
        if self._shown.currentIndex() == 1:
            self.show_jug(self._stock)
        else:
            self.show_absence()
            self.away.until.setFocus()

    def _until(self, typed: Typed) -> None:
        self.records.edit_until(typed, self)
