"""The open fish room: the sheets and what they are about at the left, the sheet that is shown beside it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QPalette, QResizeEvent
from PySide6.QtWidgets import QApplication, QHBoxLayout, QPushButton, QStackedWidget, QToolButton, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.session import Document
from evenwater.ui.flow import FlowRow
from evenwater.ui.help_button import HelpButton
from evenwater.ui.icons import put_sign
from evenwater.ui.painted import Painted
from evenwater.ui.reading_order import step
from evenwater.ui.records_pane import JUGS as JUG_RECORDS
from evenwater.ui.records_pane import PUMPS as PUMP_RECORDS
from evenwater.ui.records_pane import SYSTEMS, RecordsPane
from evenwater.ui.room_keys import RoomKeys
from evenwater.ui.sheet_list import (
    CORRECT,
    EXCHANGE,
    FOODS,
    JUGS,
    LOG,
    PUMPS,
    RECOVERY,
    ROUNDS,
    SHEETS,
    STOCKS,
    SheetList,
)
from evenwater.ui.sheet_maker import OF_SYSTEM, SheetMaker
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import say, say_all

if TYPE_CHECKING:
    from evenwater.screens.rounds import Duty
    from evenwater.ui.backups_window import BackupsWindow
    from evenwater.ui.sheet_maker import OfSystem, Sheet

_PANE_WIDTH = 19 * GRID
_ROOMY_WIDTH = 1180


@dataclass(frozen=True)
class Place:
    """Where somebody works in the room: the sheet's number, what is chosen in the lists, the value on the Correct sheet, the field."""

    sheet: int
    system: str
    jug: str
    pump: str
    parameter: str
    field: tuple[str, str] = ("", "")


class Room(SheetMaker):
    """Puts the parts beside each other; a sheet shows the record that is chosen in the list below the sheets' names.

    A sheet is made when it is first wanted: most of an evening is spent on two or three of them. ``settingsWanted`` asks for the settings,
    ``helpWanted`` for "glossary" or "guide", ``serverWanted`` for a log on a server.
    """

    settingsWanted = Signal()
    helpWanted = Signal(str)
    serverWanted = Signal()

    def __init__(self, document: Document, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the lists and the first sheet."""
        super().__init__(document, catalogue, parent)
        set_role(self, "page")
        self._narrow = False
        self.sheets = SheetList(self)
        self._panes = QStackedWidget(self)
        self.systems = RecordsPane(document, say_all(SYSTEMS), self._panes)
        self.jugs = RecordsPane(document, say_all(JUG_RECORDS), self._panes)
        self.pumps_pane = RecordsPane(document, say_all(PUMP_RECORDS), self._panes)
        for pane in (self.systems, self.jugs, self.pumps_pane):
            self._panes.addWidget(pane)
        self.backups: BackupsWindow | None = None
        self.side = QWidget(self)
        self.side.setFixedWidth(pixels(self.font(), _PANE_WIDTH))
        side = QVBoxLayout(self.side)
        side.setContentsMargins(0, GRID, 0, 0)
        side.setSpacing(GRID)
        side.addWidget(self.sheets)
        side.addWidget(self._panes, 1)
        side.addLayout(self._foot())
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.side)
        layout.addWidget(self._shown, 1)
        self.keys = RoomKeys(self)
        self.sheets.sheetChosen.connect(self.show_sheet)
        self.systems.chosen.connect(self._choose_system)
        self.jugs.chosen.connect(self._choose_jug)
        self.pumps_pane.chosen.connect(self._choose_pump)
        self.sheetMade.connect(self._take_sheet)
        self.dutyWanted.connect(self._open_duty)
        self.parameterWanted.connect(self._open_parameter)
        self.readingWanted.connect(self._note_reading)
        self.recoveryWanted.connect(self._recover)
        self.systemWanted.connect(self.systems.choose)
        self.jugWanted.connect(self.jugs.choose)
        self.pumpWanted.connect(self.pumps_pane.choose)

    @Slot(object)
    def _take_sheet(self, sheet: Sheet) -> None:
        """Put a new sheet beside the others."""
        self._shown.addWidget(sheet)
        header = sheet.header
        header.systems.setVisible(self._narrow)
        header.systems.setChecked(self._narrow and not self.side.isHidden())
        header.systems.toggled.connect(self._fold)
        header.travelled.connect(self._travelled)
        header.logTravelled.connect(self._log_travelled)

    def _pane(self, name: str) -> RecordsPane:
        """Return the list of what a sheet is about."""
        return {STOCKS: self.jugs, JUGS: self.jugs, PUMPS: self.pumps_pane}.get(name, self.systems)

    def focusNextPrevChild(self, next: bool) -> bool:  # noqa: A002  (Qt's own name)
        """Go with Tab through what is shown as it is read."""
        return step(self, forward=next)

    def of_what(self) -> RecordsPane:
        """Return the list of what the sheet that is shown is about."""
        return self._pane(self.shown())

    def _foot(self) -> QVBoxLayout:
        self.copies, self.settings = QPushButton(say("Bac&kups"), self.side), QToolButton(self.side)
        self.copies.setAccessibleName(say("Show the backups"))
        set_role(self.copies, "quiet")
        self.copies.setAutoDefault(False)
        set_role(self.settings, "bare")
        put_sign(self.settings, "settings", QPalette.ColorRole.Highlight)
        self.settings.setAccessibleName(say("Show the settings"))
        self.settings.setToolTip(say("Settings: colours and letters (Ctrl and comma)"))
        self.settings.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.help = HelpButton(self.side)
        row = FlowRow(0)
        for button in (self.copies, self.settings, self.help):
            row.addWidget(button)
        self.help.wanted.connect(self.helpWanted)
        self.copies.clicked.connect(self.show_backups)
        self.settings.clicked.connect(self.settingsWanted)
        foot = QVBoxLayout()
        foot.setContentsMargins(GRID, 0, 0, GRID)
        foot.addLayout(row)
        return foot

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fold the lists away where the sheet needs their width; a button brings them back."""
        super().resizeEvent(event)
        self.sheets.fit()
        narrow = self.width() < pixels(self.font(), _ROOMY_WIDTH)
        if narrow == self._narrow:
            return
        self._narrow = narrow
        for sheet in self.made:
            sheet.header.systems.setVisible(narrow)
            sheet.header.systems.setChecked(False)
        self.side.setVisible(not narrow)

    def place(self) -> Place:
        """Return where somebody works, so that a room that is made anew can begin there."""
        held = QApplication.focusWidget()
        inside = held is not None and self.isAncestorOf(held)
        field = (type(held).__name__, held.accessibleName()) if inside and held is not None else ("", "")
        number = SHEETS.index(self.shown() or CORRECT)
        system, jug, pump = (pane.current() for pane in (self.systems, self.jugs, self.pumps_pane))
        return Place(number, system, jug, pump, self.sheet.records.parameter, field)

    def busy(self) -> bool:
        """Return whether a spreadsheet is being read or written, which must not be taken away under somebody's hands."""
        return LOG in self._made and self.log.transfer.busy()

    def start(self, place: Place | None = None) -> None:
        """Show the first system, or go where somebody worked; what is not on its sheet at once waits until that is painted."""
        self.learning.rest()
        if place is not None:
            for pane, chosen in ((self.systems, place.system), (self.jugs, place.jug), (self.pumps_pane, place.pump)):
                pane.choose(chosen)
        self.show_sheet(SHEETS.index(CORRECT))
        self.sheet.show_system(self.systems.current())
        self.sheet.focus_first()
        # Now, and not with the next turn of the event loop, which would first paint a sheet without its answer.
        self.sheet.recompute()
        picture = self.sheet.chart.picture
        # The ramp is painted last.
        last = self.sheet if picture is None or self.sheet.chart.isHidden() else picture.view.viewport()
        Painted(last, self).once.connect(self.learning.wake)
        if place is not None:
            self._go_to(place)

    def _go_to(self, place: Place) -> None:
        """Show the sheet where somebody worked, with the focus where it was."""
        self.sheet.show_parameter(place.parameter)
        self.sheets.choose(place.sheet)
        kind, name = place.field
        for widget in self.findChildren(QWidget):
            if name and type(widget).__name__ == kind and widget.accessibleName() == name and widget.isVisible():
                widget.setFocus()
                return

    def settle(self) -> None:
        """End what is being typed, before the window closes."""
        for name, sheet in self._made.items():
            if name not in (ROUNDS, LOG):
                sheet.settle()  # type: ignore[union-attr]
        self.learning.close()
        if self.backups is not None:
            self.backups.settle()
            self.backups.deleteLater()
            self.backups = None

    @Slot()
    def show_backups(self) -> None:
        """Show the copies of the log in a window of their own."""
        if self.backups is None:
            from evenwater.ui.backups_window import BackupsWindow

            self.backups = BackupsWindow(self._document, self)
            self.backups.serverWanted.connect(self.serverWanted)
        self.backups.show()
        self.backups.raise_()
        self.backups.activateWindow()

    def _fold(self, shown: bool) -> None:
        """Show the lists, or fold them away; the buttons of all sheets say so."""
        self.side.setVisible(shown)
        for sheet in self.made:
            sheet.header.systems.setChecked(shown)

    @Slot(int)
    def show_sheet(self, number: int) -> None:
        """Show a sheet by its number."""
        self._document.commit_point()
        name = SHEETS[number]
        pane = self._pane(name)
        self._panes.setCurrentWidget(pane)
        sheet = self.by_name(name)
        self._shown.setCurrentWidget(sheet)
        # Else the focus lands on whatever button comes next, and a stray key presses it.
        at_list = self.sheets.hasFocus()
        if not at_list:
            pane.list.setFocus()
        if name == ROUNDS:
            self.rounds.refresh()
            if not at_list:
                self.rounds.list.setFocus()
        elif name == CORRECT:
            self.sheet.refresh()
        elif name == STOCKS:
            self.stocks.show_jug(self.jugs.current())
        elif name == JUGS:
            self.levels.show_jug(self.jugs.current())
        elif name == PUMPS:
            self.pumps.show_pump(self.pumps_pane.current())
        else:
            self._of_system(name).show_system(self.systems.current())

    def _of_system(self, name: str) -> OfSystem:
        """Return a sheet of one system by its name."""
        return cast("OfSystem", self.by_name(name))

    def _open(self, name: str) -> None:
        self.sheets.choose(SHEETS.index(name))

    def _open_parameter(self, parameter: str) -> None:
        """Open the correction of a value that is kept."""
        self._open(CORRECT)
        self.sheet.show_parameter(parameter)

    def _note_reading(self, parameter: str) -> None:
        """Begin to note a reading of a plan that is followed."""
        self._open(LOG)
        self.log.begin_reading(parameter)

    def _recover(self, parameter: str) -> None:
        """Show what to do about a value that is too high."""
        self._open(RECOVERY)
        self.recovery.show_parameter(parameter)

    def _open_duty(self, duty: Duty) -> None:
        """Open what a line of the rounds is about."""
        self._open(duty.sheet)
        if duty.sheet in (STOCKS, JUGS, PUMPS):
            self._pane(duty.sheet).choose(duty.record)
            return
        self.systems.choose(duty.record)
        if duty.sheet == LOG:
            self.log.begin_reading(duty.subject)
        elif duty.sheet == FOODS:
            self.foods.show_food(duty.about)
        else:
            self.sheet.show_parameter(duty.subject)

    @Slot(str)
    def _choose_system(self, system_id: str) -> None:
        self.sheet.show_system(system_id)
        name = self.shown()
        if name in OF_SYSTEM:
            self._of_system(name).show_system(system_id)

    @Slot(str)
    def _choose_jug(self, stock_id: str) -> None:
        name = self.shown()
        if name == STOCKS:
            self.stocks.show_jug(stock_id)
        elif name == JUGS:
            self.levels.show_jug(stock_id)

    @Slot(str)
    def _choose_pump(self, pump_id: str) -> None:
        if self.shown() == PUMPS:
            self.pumps.show_pump(pump_id)

    def _log_travelled(self, system_id: str) -> None:
        """Open the log in which undo or redo has changed something."""
        self._open(LOG)
        self.systems.choose(system_id)

    def _travelled(self, record_id: str) -> None:
        """Open the sheet of what undo or redo has changed, so that nothing changes unseen."""
        owner, kind = record_id.partition(":")[0], self._document.kind(record_id)
        shown = self.shown()
        if owner in self._document.records("system"):
            self._show_of_system(record_id, kind, shown)
        elif owner in self._document.records("pump"):
            if shown != CORRECT or owner != self.sheet.records.id_of("pump"):
                self._open(PUMPS)
                self.pumps_pane.choose(owner)
                if kind == "calibration":
                    self.pumps.show_calibration(record_id)
        elif kind == "absence":
            self._open(JUGS)
            self.levels.show_absence()
        elif owner in self._document.records("stock"):
            self._show_jug_of(record_id, kind, shown)

    def _show_of_system(self, record_id: str, kind: str, shown: str) -> None:
        """Show what of a system has changed; what is wished, exchanged or fed stands on several sheets, so one of them may stay."""
        system, _, name = record_id.partition(":")
        if shown in OF_SYSTEM and shown != LOG and system == self.systems.current():
            return
        # A food whose adding was undone is no record any more; what is named like no parameter was one.
        correction = not name or name in self._catalogue.parameters
        sheet = {"water": EXCHANGE, "recovery": RECOVERY}.get(name, CORRECT if correction else FOODS)
        self._open(sheet)
        if sheet != CORRECT:
            # The Correct sheet asks for its system itself, with the parameter.
            self.systems.choose(system)
        if kind == "food":
            self.foods.show_food(record_id)

    def _show_jug_of(self, record_id: str, kind: str, shown: str) -> None:
        """Show the jug that a record belongs to: its level, its batch, or the jug itself."""
        owner = record_id.partition(":")[0]
        if kind == "level" or shown == JUGS:
            self._open(JUGS)
            self.jugs.choose(owner)
        elif shown != CORRECT or owner != self.sheet.records.id_of("stock"):
            self._open(STOCKS)
            self.jugs.choose(owner)
            self.stocks.show_batch(record_id)
