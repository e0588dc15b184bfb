"""The open fish room: the sheets and what they are about at the left, the sheet that is shown beside it."""

from __future__ import annotations

from typing import cast

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QStringListModel, Qt, Signal, Slot
from PySide6.QtGui import QAction, QKeySequence, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QListView,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from evenwater.engine.catalogue import Catalogue
from evenwater.screens.rounds import Duty
from evenwater.session import Document
from evenwater.ui.backups_window import BackupsWindow
from evenwater.ui.correct_sheet import CorrectSheet
from evenwater.ui.jugs_sheet import JugsSheet
from evenwater.ui.learning import Learning
from evenwater.ui.log_sheet import LogSheet
from evenwater.ui.plans import Plans
from evenwater.ui.pumps_sheet import PumpsSheet
from evenwater.ui.records_pane import JUGS, PUMPS, SYSTEMS, RecordsPane
from evenwater.ui.rounds_sheet import RoundsSheet
from evenwater.ui.stocks_sheet import StocksSheet
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.ui.timetable_sheet import TimetableSheet
from evenwater.ui.upkeep_sheet import UpkeepSheet

_PANE_WIDTH = 18 * GRID
_ROOMY_WIDTH = 1180
SHEETS = ("Rounds", "Correct", "Upkeep", "Timetable", "Pumps", "Jugs", "Stocks", "Log")
_ROUNDS, _CORRECT, _UPKEEP, _TIMETABLE, _PUMPS, _JUGS, _STOCKS, _LOG = SHEETS
_Sheet = RoundsSheet | CorrectSheet | UpkeepSheet | TimetableSheet | PumpsSheet | JugsSheet | StocksSheet | LogSheet


class SheetList(QListView):
    """Names the sheets; ``sheetChosen`` carries the number of the one to show. Ctrl and its number choose it too."""

    sheetChosen = Signal(int)

    def __init__(self, parent: QWidget) -> None:
        """List the sheets."""
        super().__init__(parent)
        self._model = QStringListModel(list(SHEETS), self)
        self.setModel(self._model)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName("Sheets")
        set_role(self, "nav")
        self.selectionModel().currentChanged.connect(self._current_changed)
        for number in range(len(SHEETS)):
            action = QAction(self)
            action.setData(number)
            action.setShortcut(QKeySequence(f"Ctrl+{number + 1}"))
            action.setShortcutContext(Qt.ShortcutContext.WindowShortcut)
            action.triggered.connect(self._jump)
            parent.addAction(action)
        self.choose(SHEETS.index(_CORRECT))

    def choose(self, number: int) -> None:
        """Choose a sheet."""
        self.selectionModel().setCurrentIndex(
            self._model.index(number), QItemSelectionModel.SelectionFlag.ClearAndSelect
        )

    def fit(self) -> None:
        """Take the height of the rows."""
        self.setFixedHeight(len(SHEETS) * max(self.sizeHintForRow(0), 1) + 2 * self.frameWidth())

    def _jump(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self.choose(int(action.data()))

    def _current_changed(self, current: QModelIndex, _before: QModelIndex) -> None:
        self.sheetChosen.emit(current.row())


class Room(QWidget):
    """Puts the parts beside each other; a sheet shows the record that is chosen in the list below the sheets' names.

    A sheet is made when it is first wanted: most of an evening is spent on two or three of them.
    """

    def __init__(self, document: Document, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the lists and the first sheet."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue = document, catalogue
        self._narrow = False
        self.sheets = SheetList(self)
        self.systems = RecordsPane(document, SYSTEMS, self)
        self.jugs = RecordsPane(document, JUGS, self)
        self.pumps_pane = RecordsPane(document, PUMPS, self)
        self.plans = Plans(document, catalogue, self)
        self.learning = Learning(document, catalogue, self.plans, self)
        self._panes, self._shown = QStackedWidget(self), QStackedWidget(self)
        for pane in (self.systems, self.jugs, self.pumps_pane):
            self._panes.addWidget(pane)
        self._made: dict[str, _Sheet] = {}
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
        self.sheets.sheetChosen.connect(self.show_sheet)
        self.systems.chosen.connect(self._choose_system)
        self.jugs.chosen.connect(self._choose_jug)
        self.pumps_pane.chosen.connect(self._choose_pump)

    # The sheets

    @property
    def rounds(self) -> RoundsSheet:
        """What is due in the whole room."""
        if _ROUNDS not in self._made:
            sheet = RoundsSheet(self._document, self._catalogue, self.learning, self.plans, self)
            sheet.opened.connect(self._open_duty)
            self._take_in(_ROUNDS, sheet)
        return cast(RoundsSheet, self._made[_ROUNDS])

    @property
    def sheet(self) -> CorrectSheet:
        """A correction."""
        if _CORRECT not in self._made:
            sheet = CorrectSheet(self._document, self._catalogue, self.learning, self.plans, self)
            sheet.system_wanted.connect(self.systems.choose)
            sheet.reading_wanted.connect(self._note_reading)
            self._take_in(_CORRECT, sheet)
        return cast(CorrectSheet, self._made[_CORRECT])

    @property
    def upkeep(self) -> UpkeepSheet:
        """What keeps the values where they are."""
        if _UPKEEP not in self._made:
            sheet = UpkeepSheet(self._document, self._catalogue, self.learning, self.plans, self)
            sheet.opened.connect(self._open_parameter)
            self._take_in(_UPKEEP, sheet)
        return cast(UpkeepSheet, self._made[_UPKEEP])

    @property
    def timetable(self) -> TimetableSheet:
        """When every pump of a system doses."""
        if _TIMETABLE not in self._made:
            sheet = TimetableSheet(self._document, self._catalogue, self.learning, self.plans, self)
            sheet.opened.connect(self._open_parameter)
            self._take_in(_TIMETABLE, sheet)
        return cast(TimetableSheet, self._made[_TIMETABLE])

    @property
    def pumps(self) -> PumpsSheet:
        """What a pump gives, and how it wears."""
        if _PUMPS not in self._made:
            sheet = PumpsSheet(self._document, self._catalogue, self)
            sheet.pump_wanted.connect(self.pumps_pane.choose)
            self._take_in(_PUMPS, sheet)
        return cast(PumpsSheet, self._made[_PUMPS])

    @property
    def levels(self) -> JugsSheet:
        """What is left in every jug, and whether that is right."""
        if _JUGS not in self._made:
            sheet = JugsSheet(self._document, self._catalogue, self.learning, self.plans, self)
            sheet.jug_wanted.connect(self.jugs.choose)
            self._take_in(_JUGS, sheet)
        return cast(JugsSheet, self._made[_JUGS])

    @property
    def stocks(self) -> StocksSheet:
        """What goes into the jugs."""
        if _STOCKS not in self._made:
            sheet = StocksSheet(self._document, self._catalogue, self)
            sheet.jug_wanted.connect(self.jugs.choose)
            self._take_in(_STOCKS, sheet)
        return cast(StocksSheet, self._made[_STOCKS])

    @property
    def log(self) -> LogSheet:
        """What was measured and given."""
        if _LOG not in self._made:
            sheet = LogSheet(self._document, self._catalogue, self.learning, self.plans, self)
            sheet.plan_wanted.connect(self._open_parameter)
            self._take_in(_LOG, sheet)
        return cast(LogSheet, self._made[_LOG])

    def _take_in(self, name: str, sheet: _Sheet) -> None:
        self._made[name] = sheet
        self._shown.addWidget(sheet)
        header = sheet.header
        header.systems.setVisible(self._narrow)
        header.systems.setChecked(self._narrow and not self.side.isHidden())
        header.systems.toggled.connect(self._fold)
        header.travelled.connect(self._travelled)
        header.logTravelled.connect(self._log_travelled)

    def _sheet(self, name: str) -> _Sheet:
        """Return a sheet by its name, made now where it is not there yet."""
        return cast(_Sheet, getattr(self, {_CORRECT: "sheet", _JUGS: "levels"}.get(name, name.lower())))

    def _pane(self, name: str) -> RecordsPane:
        """Return the list of what a sheet is about."""
        return {_STOCKS: self.jugs, _JUGS: self.jugs, _PUMPS: self.pumps_pane}.get(name, self.systems)

    def _foot(self) -> QHBoxLayout:
        self.copies = QPushButton("Bac&kups", self.side)
        set_role(self.copies, "quiet")
        self.copies.setAutoDefault(False)
        self.copies.clicked.connect(self.show_backups)
        foot = QHBoxLayout()
        foot.setContentsMargins(GRID, 0, GRID, GRID)
        foot.addWidget(self.copies)
        return foot

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fold the lists away where the sheet needs their width; a button brings them back."""
        super().resizeEvent(event)
        self.sheets.fit()
        narrow = self.width() < pixels(self.font(), _ROOMY_WIDTH)
        if narrow == self._narrow:
            return
        self._narrow = narrow
        for sheet in self._made.values():
            sheet.header.systems.setVisible(narrow)
            sheet.header.systems.setChecked(False)
        self.side.setVisible(not narrow)

    def start(self) -> None:
        """Show the first system."""
        self.show_sheet(SHEETS.index(_CORRECT))
        self.sheet.show_system(self.systems.current())
        self.sheet.focus_first()

    def settle(self) -> None:
        """End what is being typed, before the window closes."""
        for sheet in self._made.values():
            if isinstance(sheet, CorrectSheet | TimetableSheet | PumpsSheet | JugsSheet | StocksSheet):
                sheet.settle()
        self.learning.close()
        if self.backups is not None:
            self.backups.settle()
            self.backups.deleteLater()
            self.backups = None

    @Slot()
    def show_backups(self) -> None:
        """Show the copies of the log in a window of their own."""
        if self.backups is None:
            self.backups = BackupsWindow(self._document, self)
        self.backups.show()
        self.backups.raise_()
        self.backups.activateWindow()

    def _fold(self, shown: bool) -> None:
        """Show the lists, or fold them away; the buttons of all sheets say so."""
        self.side.setVisible(shown)
        for sheet in self._made.values():
            sheet.header.systems.setChecked(shown)

    @Slot(int)
    def show_sheet(self, number: int) -> None:
        """Show a sheet by its number."""
        self._document.commit_point()
        name = SHEETS[number]
        pane = self._pane(name)
        self._panes.setCurrentWidget(pane)
        sheet = self._sheet(name)
        self._shown.setCurrentWidget(sheet)
        # Else the focus lands on whatever button comes next, and a stray key presses it.
        at_list = self.sheets.hasFocus()
        if not at_list:
            pane.list.setFocus()
        if isinstance(sheet, RoundsSheet):
            sheet.refresh()
            if not at_list:
                sheet.list.setFocus()
        elif isinstance(sheet, CorrectSheet):
            sheet.refresh()
        elif isinstance(sheet, StocksSheet | JugsSheet):
            sheet.show_jug(self.jugs.current())
        elif isinstance(sheet, PumpsSheet):
            sheet.show_pump(self.pumps_pane.current())
        else:
            sheet.show_system(self.systems.current())

    def _open(self, name: str) -> None:
        self.sheets.choose(SHEETS.index(name))

    def _open_parameter(self, parameter: str) -> None:
        """Open the correction of a value that is kept."""
        self._open(_CORRECT)
        self.sheet.show_parameter(parameter)

    def _note_reading(self, parameter: str) -> None:
        """Begin to note a reading of a plan that is followed."""
        self._open(_LOG)
        self.log.begin_reading(parameter)

    def _open_duty(self, duty: Duty) -> None:
        """Open what a line of the rounds is about."""
        self._open(duty.sheet)
        if duty.sheet in (_STOCKS, _JUGS, _PUMPS):
            self._pane(duty.sheet).choose(duty.record)
            return
        self.systems.choose(duty.record)
        if duty.sheet == _LOG:
            self.log.begin_reading(duty.subject)
        else:
            self.sheet.show_parameter(duty.subject)

    @Slot(str)
    def _choose_system(self, system_id: str) -> None:
        self.sheet.show_system(system_id)
        shown = self._shown.currentWidget()
        if isinstance(shown, LogSheet | UpkeepSheet | TimetableSheet):
            shown.show_system(system_id)

    @Slot(str)
    def _choose_jug(self, stock_id: str) -> None:
        shown = self._shown.currentWidget()
        if isinstance(shown, StocksSheet | JugsSheet):
            shown.show_jug(stock_id)

    @Slot(str)
    def _choose_pump(self, pump_id: str) -> None:
        shown = self._shown.currentWidget()
        if isinstance(shown, PumpsSheet):
            shown.show_pump(pump_id)

    def _log_travelled(self, system_id: str) -> None:
        """Open the log in which undo or redo has changed something."""
        self._open(_LOG)
        self.systems.choose(system_id)

    def _travelled(self, record_id: str) -> None:
        """Open the sheet of what undo or redo has changed, so that nothing changes unseen."""
        owner, kind = record_id.partition(":")[0], self._document.kind(record_id)
        shown = self._shown.currentWidget()
        if owner in self._document.records("system"):
            # What is wished and exchanged stands on the sheet that is shown.
            if not isinstance(shown, TimetableSheet | UpkeepSheet) or owner != self.systems.current():
                self._open(_CORRECT)
        elif owner in self._document.records("pump"):
            if shown is not self.sheet or owner != self.sheet.records.id_of("pump"):
                self._open(_PUMPS)
                self.pumps_pane.choose(owner)
                if kind == "calibration":
                    self.pumps.show_calibration(record_id)
        elif kind == "absence":
            self._open(_JUGS)
            self.levels.show_absence()
        elif owner in self._document.records("stock"):
            self._show_jug_of(record_id, kind, shown)

    def _show_jug_of(self, record_id: str, kind: str, shown: QWidget | None) -> None:
        """Show the jug that a record belongs to: its level, its batch, or the jug itself."""
        owner = record_id.partition(":")[0]
        if kind == "level" or isinstance(shown, JugsSheet):
            self._open(_JUGS)
            self.jugs.choose(owner)
        elif shown is not self.sheet or owner != self.sheet.records.id_of("stock"):
            self._open(_STOCKS)
            self.jugs.choose(owner)
            self.stocks.show_batch(record_id)
