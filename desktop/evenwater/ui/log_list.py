"""The list of the log: one line an entry, the newest first."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from evenwater.screens.logbook import LogRow
from evenwater.ui.plain_text import plain_tip
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say, say_all

COLUMNS = (marked("When"), marked("What"), marked("Amount"), marked("Besides"))
# So many lines are asked how wide they are.
_MEASURED = 200
# The heading and as many lines stay in sight, however large the letters.
_LEAST_LINES = 5
# What is said besides, such as a kit and a name, has so much room [px at usual letters] before anything else is cut.
_NOTE_WIDTH = 150
# And what was noted has so much at least; else there is no room for both.
_WHAT_WIDTH = 110
Index = QModelIndex | QPersistentModelIndex


class LogModel(QAbstractTableModel):
    """The lines that are shown."""

    def __init__(self, parent: QWidget) -> None:
        """Begin without lines."""
        super().__init__(parent)
        self.rows: tuple[LogRow, ...] = ()
        self._narrow = False

    def set_narrow(self, narrow: bool) -> None:
        """Let a note stand in its own cell where nothing is said besides."""
        if narrow != self._narrow:
            self._narrow = narrow
            self.dataChanged.emit(self.index(0, 1), self.index(len(self.rows) - 1, 1))

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
            if role == Qt.ItemDataRole.ToolTipRole:
                # A tip is taken for rich text when it looks like it; what a keeper wrote never is.
                return plain_tip(" · ".join(filter(None, (row.when, row.what, row.amount, row.note))))
            what = f"{row.what}: {row.note}" if self._narrow and row.note and not row.amount else row.what
            return (row.when, what, row.amount, row.note)[index.column()]
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() == 2:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the name of a column, above its figures."""
        if role == Qt.ItemDataRole.DisplayRole and orientation == Qt.Orientation.Horizontal:
            return say_all(COLUMNS[section])
        if role == Qt.ItemDataRole.TextAlignmentRole and section == 2:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
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
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        header.setStretchLastSection(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        header.setHighlightSections(False)
        self.setAccessibleName(say("Entries of the log"))
        self.setMinimumHeight(pixels(self.font(), _LEAST_LINES * 4 * GRID))

    def show_rows(self, rows: tuple[LogRow, ...]) -> None:
        """Show these lines; the chosen one stays chosen while it is there."""
        chosen = self.chosen()
        self.lines.set_rows(rows)
        self._share_out()
        ids = [row.entry_id for row in rows]
        if chosen in ids:
            self.selectRow(ids.index(chosen))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the width out again."""
        super().resizeEvent(event)
        self._share_out()

    def _share_out(self) -> None:
        """Give each column what its words need; when that is too much, what was noted is cut, never when and how much.

        Where there is no room for what was said besides, only notes are left of it. All of it stands in the tip of the line.
        """
        metrics, header = self.fontMetrics(), self.horizontalHeader()
        wanted = [metrics.horizontalAdvance(words) for words in say_all(COLUMNS)]
        for row in self.lines.rows[:_MEASURED]:
            cells = (row.when, row.what, row.amount, row.note)
            wanted = [max(w, metrics.horizontalAdvance(cell)) for w, cell in zip(wanted, cells, strict=True)]
        when, what, amount, note = (width + pixels(self.font(), 3 * GRID) for width in wanted)
        left, least = self.viewport().width() - when - amount, min(note, pixels(self.font(), _NOTE_WIDTH))
        narrow = left < pixels(self.font(), _NOTE_WIDTH + _WHAT_WIDTH)
        self.lines.set_narrow(narrow)
        self.setColumnHidden(len(COLUMNS) - 1, narrow)
        what = left if narrow else min(what, left - least)
        for column, width in enumerate((when, what, amount)):
            header.resizeSection(column, width)

    def chosen(self) -> str:
        """Return the id of the chosen entry, or an empty text."""
        row = self.currentIndex().row()
        return self.lines.rows[row].entry_id if 0 <= row < len(self.lines.rows) and self.selectedIndexes() else ""
