"""Makes the sheets of a room, each when it is first wanted, and says what they ask for.

A sheet is loaded when it is made: all of them together would make the first chart a fifth slower.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QStackedWidget, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.session import Document
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.sheet_list import (
    CORRECT,
    EXCHANGE,
    FOODS,
    JUGS,
    LOG,
    PUMPS,
    RECOVERY,
    ROUNDS,
    STOCKS,
    TIMETABLE,
    UPKEEP,
)

if TYPE_CHECKING:
    from evenwater.ui.correct_sheet import CorrectSheet
    from evenwater.ui.exchange_sheet import ExchangeSheet
    from evenwater.ui.foods_sheet import FoodsSheet
    from evenwater.ui.jugs_sheet import JugsSheet
    from evenwater.ui.log_sheet import LogSheet
    from evenwater.ui.pumps_sheet import PumpsSheet
    from evenwater.ui.recovery_sheet import RecoverySheet
    from evenwater.ui.rounds_sheet import RoundsSheet
    from evenwater.ui.stocks_sheet import StocksSheet
    from evenwater.ui.timetable_sheet import TimetableSheet
    from evenwater.ui.upkeep_sheet import UpkeepSheet

    OfSystem = UpkeepSheet | ExchangeSheet | FoodsSheet | TimetableSheet | LogSheet | RecoverySheet
    Sheet = RoundsSheet | CorrectSheet | OfSystem | PumpsSheet | JugsSheet | StocksSheet

# Those of one system, which are shown again when another system is chosen.
OF_SYSTEM = (UPKEEP, EXCHANGE, FOODS, TIMETABLE, LOG, RECOVERY)


class SheetMaker(QWidget):
    """Holds the sheets that were wanted so far: most of an evening is spent on two or three of them.

    ``sheetMade`` carries a sheet that is there for the first time. The others carry what a sheet asks for: a duty to open, a parameter
    to correct, to test or to bring down, a system, jug or pump to choose.
    """

    sheetMade = Signal(object)
    dutyWanted = Signal(object)
    parameterWanted = Signal(str)
    readingWanted = Signal(str)
    recoveryWanted = Signal(str)
    systemWanted = Signal(str)
    jugWanted = Signal(str)
    pumpWanted = Signal(str)

    def __init__(self, document: Document, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make what all sheets share."""
        super().__init__(parent)
        self._document, self._catalogue = document, catalogue
        self.plans = Plans(document, catalogue, self)
        self.learning = Learning(document, catalogue, self.plans, self)
        self._made: dict[str, Sheet] = {}
        # Sheets are made where they stay: one that is moved is dressed all over again.
        self._shown = QStackedWidget(self)

    @property
    def catalogue(self) -> Catalogue:
        """What the room can reckon with."""
        return self._catalogue

    @property
    def made(self) -> tuple[Sheet, ...]:
        """The sheets that are there."""
        return tuple(self._made.values())

    @property
    def rounds(self) -> RoundsSheet:
        """What is due in the whole room."""
        if ROUNDS not in self._made:
            from evenwater.ui.rounds_sheet import RoundsSheet

            sheet = RoundsSheet(self._document, self._catalogue, self.learning, self.plans, self._shown)
            sheet.opened.connect(self.dutyWanted)
            self._take_in(ROUNDS, sheet)
        return cast("RoundsSheet", self._made[ROUNDS])

    @property
    def sheet(self) -> CorrectSheet:
        """A correction."""
        if CORRECT not in self._made:
            from evenwater.ui.correct_sheet import CorrectSheet

            sheet = CorrectSheet(self._document, self._catalogue, self.learning, self.plans, self._shown)
            sheet.system_wanted.connect(self.systemWanted)
            sheet.reading_wanted.connect(self.readingWanted)
            sheet.recovery_wanted.connect(self.recoveryWanted)
            self._take_in(CORRECT, sheet)
        return cast("CorrectSheet", self._made[CORRECT])

    @property
    def upkeep(self) -> UpkeepSheet:
        """What keeps the values where they are."""
        if UPKEEP not in self._made:
            from evenwater.ui.upkeep_sheet import UpkeepSheet

            sheet = UpkeepSheet(self._document, self._catalogue, self.learning, self.plans, self._shown)
            sheet.opened.connect(self.parameterWanted)
            self._take_in(UPKEEP, sheet)
        return cast("UpkeepSheet", self._made[UPKEEP])

    @property
    def exchange(self) -> ExchangeSheet:
        """What a continuous exchange of water does."""
        if EXCHANGE not in self._made:
            from evenwater.ui.exchange_sheet import ExchangeSheet

            sheet = ExchangeSheet(self._document, self._catalogue, self.learning, self.plans, self._shown)
            sheet.opened.connect(self.parameterWanted)
            self._take_in(EXCHANGE, sheet)
        return cast("ExchangeSheet", self._made[EXCHANGE])

    @property
    def foods(self) -> FoodsSheet:
        """What is fed, and what it leaves in the water."""
        if FOODS not in self._made:
            from evenwater.ui.foods_sheet import FoodsSheet

            sheet = FoodsSheet(self._document, self._catalogue, self.learning, self.plans, self._shown)
            self._take_in(FOODS, sheet)
        return cast("FoodsSheet", self._made[FOODS])

    @property
    def timetable(self) -> TimetableSheet:
        """When every pump of a system doses."""
        if TIMETABLE not in self._made:
            from evenwater.ui.timetable_sheet import TimetableSheet

            sheet = TimetableSheet(self._document, self._catalogue, self.learning, self.plans, self._shown)
            sheet.opened.connect(self.parameterWanted)
            self._take_in(TIMETABLE, sheet)
        return cast("TimetableSheet", self._made[TIMETABLE])

    @property
    def pumps(self) -> PumpsSheet:
        """What a pump gives, and how it wears."""
        if PUMPS not in self._made:
            from evenwater.ui.pumps_sheet import PumpsSheet

            sheet = PumpsSheet(self._document, self._catalogue, self._shown)
            sheet.pump_wanted.connect(self.pumpWanted)
            self._take_in(PUMPS, sheet)
        return cast("PumpsSheet", self._made[PUMPS])

    @property
    def levels(self) -> JugsSheet:
        """What is left in every jug, and whether that is right."""
        if JUGS not in self._made:
            from evenwater.ui.jugs_sheet import JugsSheet

            sheet = JugsSheet(self._document, self._catalogue, self.learning, self.plans, self._shown)
            sheet.jug_wanted.connect(self.jugWanted)
            self._take_in(JUGS, sheet)
        return cast("JugsSheet", self._made[JUGS])

    @property
    def stocks(self) -> StocksSheet:
        """What goes into the jugs."""
        if STOCKS not in self._made:
            from evenwater.ui.stocks_sheet import StocksSheet

            sheet = StocksSheet(self._document, self._catalogue, self._shown)
            sheet.jug_wanted.connect(self.jugWanted)
            self._take_in(STOCKS, sheet)
        return cast("StocksSheet", self._made[STOCKS])

    @property
    def log(self) -> LogSheet:
        """What was measured and given."""
        if LOG not in self._made:
            from evenwater.ui.log_sheet import LogSheet

            sheet = LogSheet(self._document, self._catalogue, self.learning, self.plans, self._shown)
            sheet.plan_wanted.connect(self.parameterWanted)
            self._take_in(LOG, sheet)
        return cast("LogSheet", self._made[LOG])

    @property
    def recovery(self) -> RecoverySheet:
        """What to do about a value that is too high."""
        if RECOVERY not in self._made:
            from evenwater.ui.recovery_sheet import RecoverySheet

            sheet = RecoverySheet(self._document, self._catalogue, self.learning, self.plans, self._shown)
            self._take_in(RECOVERY, sheet)
        return cast("RecoverySheet", self._made[RECOVERY])

    def by_name(self, name: str) -> Sheet:
        """Return a sheet by its name, made now where it is not there yet."""
        return cast("Sheet", getattr(self, {CORRECT: "sheet", JUGS: "levels"}.get(name, name.lower())))

    def shown(self) -> str:
        """Return the name of the sheet that is shown; empty before the first is."""
        current = self._shown.currentWidget()
        return next((name for name, sheet in self._made.items() if sheet is current), "")

    def _take_in(self, name: str, sheet: Sheet) -> None:
        self._made[name] = sheet
        self.sheetMade.emit(sheet)
