"""The list of the log: one line an entry, the newest first."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from evenwater.screens.logbook import LogRow
from evenwater.ui.theme import GRID, pixels, set_role

COLUMNS = ("When", "What", "Amount", "Besides")
Index = QModelIndex | QPersistentModelIndex


class LogModel(QAbstractTableModel):
    """The lines that are shown."""

    def __init__(self, parent: QWidget) -> None:
        """Begin without lines."""
        super().__init__(parent)
        self.rows: tuple[LogRow, ...] = ()

    def set_rows(self, rows: tuple[LogRow, ...]) -> None:
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
        """Return the words of a cell."""
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole) and index.isValid():
            row = self.rows[index.row()]
            return (row.when, row.what, row.amount, row.note)[index.column()]
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() == 2:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the name of a column."""
        if role == Qt.ItemDataRole.DisplayRole and orientation == Qt.Orientation.Horizontal:
            return COLUMNS[section]
        return None


class LogList(QTableView):
    """Shows the lines; one is chosen at a time."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make the list, still empty."""
        super().__init__(parent)
        self.lines = LogModel(self)
        self.setModel(self.lines)
        set_role(self, "plain")
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(pixels(self.font(), 4 * GRID))
        header = self.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        for column in range(len(COLUMNS) - 1):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        header.setStretchLastSection(True)
        header.setHighlightSections(False)
        self.setAccessibleName("Entries of the log")

    def show_rows(self, rows: tuple[LogRow, ...]) -> None:
        """Show these lines; the chosen one stays chosen while it is there."""
        chosen = self.chosen()
        self.lines.set_rows(rows)
        ids = [row.entry_id for row in rows]
        if chosen in ids:
            self.selectRow(ids.index(chosen))

    def chosen(self) -> str:
        """Return the id of the chosen entry, or an empty text."""
        row = self.currentIndex().row()
        return self.lines.rows[row].entry_id if 0 <= row < len(self.lines.rows) and self.selectedIndexes() else ""
