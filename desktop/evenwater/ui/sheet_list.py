"""The names of the sheets in their order, each with the key that chooses it."""

from __future__ import annotations

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QStringListModel, Qt, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QAbstractItemView, QListView, QWidget

from evenwater.ui.theme import set_role
from evenwater.wording import marked, say, say_all

SHEETS = (
    marked("Rounds"),
    marked("Correct"),
    marked("Upkeep"),
    marked("Exchange"),
    marked("Foods"),
    marked("Timetable"),
    marked("Pumps"),
    marked("Jugs"),
    marked("Stocks"),
    marked("Log"),
    marked("Recovery"),
)
ROUNDS, CORRECT, UPKEEP, EXCHANGE, FOODS, TIMETABLE, PUMPS, JUGS, STOCKS, LOG, RECOVERY = SHEETS


class SheetList(QListView):
    """Names the sheets; ``sheetChosen`` carries the number of the one to show. Ctrl and its number choose it too.

    The way out in an emergency stands last, where it is found without reading the list, and has a letter of its own.
    """

    sheetChosen = Signal(int)

    def __init__(self, parent: QWidget) -> None:
        """List the sheets."""
        super().__init__(parent)
        self._model = QStringListModel(list(say_all(SHEETS)), self)
        self.setModel(self._model)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(say("Sheets"))
        set_role(self, "nav")
        self.selectionModel().currentChanged.connect(self._current_changed)
        for number in range(len(SHEETS)):
            action = QAction(self)
            action.setData(number)
            action.setShortcut(QKeySequence(key_of(number)))
            action.setShortcutContext(Qt.ShortcutContext.WindowShortcut)
            action.triggered.connect(self._jump)
            parent.addAction(action)
        self.choose(SHEETS.index(CORRECT))

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


def key_of(number: int) -> str:
    """Return the key of a sheet: the digits in the order of the keyboard, then the letter of the way out in an emergency."""
    return f"Ctrl+{(number + 1) % 10}" if number < 10 else "Ctrl+R"
