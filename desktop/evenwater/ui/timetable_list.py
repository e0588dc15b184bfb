"""The doses of the day in order of time, equal ones at equal distances as one line."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from evenwater.screens.timetable_rows import TimetableRow
from evenwater.ui.plain_text import plain_tip
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say, say_all

COLUMNS = (marked("When"), marked("Doses"), marked("Each dose"), marked("Pump runs"), marked("Pump and additive"))
_FIGURES = (1, 2, 3)
# Two lines of words in each.
_LINE = 6 * GRID
Index = QModelIndex | QPersistentModelIndex


def _cells(row: TimetableRow) -> tuple[str, ...]:
    # When they go on stands below when they begin.
    return row.when.replace(", ", ",\n", 1), str(row.count), row.amount, row.runs, f"{row.pump}\n{row.additive}"


class TimetableModel(QAbstractTableModel):
    """The lines that are shown."""

    def __init__(self, parent: QWidget) -> None:
        """Begin without lines."""
        super().__init__(parent)
        self.rows: tuple[TimetableRow, ...] = ()

    def set_rows(self, rows: tuple[TimetableRow, ...]) -> None:
        """Show these lines."""
        if rows != self.rows:
            self.beginResetModel()
            self.rows = rows
            self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's signature)
        """Return the number of lines."""
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's signature)
        """Return the number of columns."""
        return 0 if parent.isValid() else len(COLUMNS)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the words of a cell; the tip has all of the line."""
        if not index.isValid():
            return None
        row = self.rows[index.row()]
        cells = _cells(row)
        if role == Qt.ItemDataRole.DisplayRole:
            return cells[index.column()]
        if role == Qt.ItemDataRole.ToolTipRole:
            return plain_tip(" · ".join((row.when, *cells[1:-1], row.pump, row.additive)))
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() in _FIGURES:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the name of a column, above its figures."""
        if role == Qt.ItemDataRole.DisplayRole and orientation == Qt.Orientation.Horizontal:
            return say_all(COLUMNS[section])
        if role == Qt.ItemDataRole.TextAlignmentRole and section in _FIGURES:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return None


class TimetableList(QTableView):
    """Shows the lines, as high as they are: the page scrolls."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make the list, still empty."""
        super().__init__(parent)
        self.lines = TimetableModel(self)
        self.setModel(self.lines)
        set_role(self, "plain")
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(pixels(self.font(), _LINE))
        header = self.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        header.setStretchLastSection(True)
        header.setHighlightSections(False)
        self.setAccessibleName(say("Doses in order of time"))

    def show_rows(self, rows: tuple[TimetableRow, ...]) -> None:
        """Show these lines."""
        self.lines.set_rows(rows)
        line = self.verticalHeader().defaultSectionSize()
        self.setFixedHeight(self.horizontalHeader().sizeHint().height() + len(rows) * line + 2 * self.frameWidth() + 2)
        self._share_out()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the width out again."""
        super().resizeEvent(event)
        self._share_out()

    def _share_out(self) -> None:
        """Give time, dose and running time what their words need; pump and additive have the rest."""
        metrics = self.fontMetrics()
        wanted = [metrics.horizontalAdvance(words) for words in say_all(COLUMNS)]
        for row in self.lines.rows:
            wanted = [
                max(w, *map(metrics.horizontalAdvance, cell.splitlines()))
                for w, cell in zip(wanted, _cells(row), strict=True)
            ]
        for column, width in enumerate(wanted[:-1]):
            self.horizontalHeader().resizeSection(column, width + pixels(self.font(), 3 * GRID))
