"""What an import would take, as a table: the first rows and every faulty one, with words for what becomes of each cell."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QColor, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from evenwater.screens.csv_preview import Preview, PreviewCell, PreviewRow
from evenwater.ui.theme import GRID, pixels, tokens_of
from evenwater.wording import marked, say, say_all

_BEFORE = (marked("Line"), marked("When"))
_REMARK = marked("What is wrong with it")
# A word says what becomes of a cell; what is not simply taken has the sign of a caution as well.
_STATES = {
    "unlikely": marked("▲ Not likely: "),
    "duplicate": marked("There twice: "),
    "refused": marked("▲ Not taken: "),
    "open": "? ",
}
_WIDEST = 260
Index = QModelIndex | QPersistentModelIndex


class PreviewModel(QAbstractTableModel):
    """The rows that are shown: all of them, or the faulty ones alone."""

    def __init__(self, parent: QWidget) -> None:
        """Begin without rows."""
        super().__init__(parent)
        self._owner = parent
        self._headings: tuple[str, ...] = ()
        self._all: tuple[PreviewRow, ...] = ()
        self.rows: tuple[PreviewRow, ...] = ()

    def show_rows(self, headings: tuple[str, ...], rows: tuple[PreviewRow, ...], *, only_faulty: bool) -> None:
        """Show these rows."""
        self.beginResetModel()
        self._headings, self._all = headings, rows
        self.rows = tuple(row for row in rows if row.faulty) if only_faulty else rows
        self.endResetModel()

    def only_faulty(self, chosen: bool) -> None:
        """Show the faulty rows alone, or all again."""
        self.show_rows(self._headings, self._all, only_faulty=chosen)

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's signature)
        """Return the number of rows."""
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's signature)
        """Return the number of columns."""
        return 0 if parent.isValid() or not self._headings else len(_BEFORE) + len(self._headings) + 1

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the words of a cell, what is read aloud of it, or its colour."""
        if not index.isValid():
            return None
        row, at = self.rows[index.row()], index.column()
        if role == Qt.ItemDataRole.DisplayRole:
            return self._words(row, at)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return " ".join(filter(None, (self._words(row, at) or say("Empty"), self.sentence(index))))
        if role == Qt.ItemDataRole.ForegroundRole and "\u25b2" in self._words(row, at):
            return QColor(tokens_of(self._owner.palette()).stop)
        if role == Qt.ItemDataRole.TextAlignmentRole and at == 0:
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the name of a column."""
        if role == Qt.ItemDataRole.DisplayRole and orientation == Qt.Orientation.Horizontal:
            return (*say_all(_BEFORE), *self._headings, say(_REMARK))[section]
        return None

    def sentence(self, index: Index) -> str:
        """Return why a cell is not simply taken, or nothing."""
        row = self.rows[index.row()]
        cell = self._cell(row, index.column())
        if index.column() == 1:
            return row.sentence
        return _remarks(row) if cell is None else cell.sentence

    def first_faulty(self) -> QModelIndex | None:
        """Return the first cell that is not simply taken."""
        for number, row in enumerate(self.rows):
            if row.faulty:
                at = next(n for n, cell in enumerate(row.cells) if cell.sentence)
                return self.index(number, 1 if row.sentence else len(_BEFORE) + at)
        return None

    def _cell(self, row: PreviewRow, at: int) -> PreviewCell | None:
        place = at - len(_BEFORE)
        return row.cells[place] if 0 <= place < len(row.cells) else None

    def _words(self, row: PreviewRow, at: int) -> str:
        cell = self._cell(row, at)
        if cell is not None:
            return f"{say_all(_STATES.get(cell.state, ''))}{cell.words}"
        if at == 0:
            return str(row.line)
        if at == 1:
            return f"{(say_all(_STATES['refused']) if row.sentence else '')}{row.when}"
        return _remarks(row)


def _remarks(row: PreviewRow) -> str:
    """Return everything that is said about a row, each sentence once."""
    return " ".join(dict.fromkeys(filter(None, (row.sentence, *(cell.sentence for cell in row.cells)))))


class PreviewTable(QTableView):
    """Shows the rows; ``told`` carries the whole sentence about the cell that is chosen."""

    told = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        """Make the table, still empty."""
        super().__init__(parent)
        self.lines = PreviewModel(self)
        self.setModel(self.lines)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(pixels(self.font(), 4 * GRID))
        header = self.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setHighlightSections(False)
        self.setAccessibleName(say("What the import would take"))
        self.selectionModel().currentChanged.connect(self._chosen)

    def show_preview(self, found: Preview, *, only_faulty: bool) -> None:
        """Show the rows of a preview."""
        self.lines.show_rows(found.headings, found.rows, only_faulty=only_faulty)
        self._fit()
        first = self.lines.first_faulty()
        if first is not None:
            # Its sentence shows where the sentences stand; the table itself begins with its beginning.
            self.setCurrentIndex(first)
            self.scrollToTop()
            self.horizontalScrollBar().setValue(0)

    def clear(self) -> None:
        """Show nothing."""
        self.lines.show_rows((), (), only_faulty=False)

    def only_faulty(self, chosen: bool) -> None:
        """Show the faulty rows alone, or all again."""
        self.lines.only_faulty(chosen)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave the last column what the others do not need."""
        super().resizeEvent(event)
        self._stretch()

    def _fit(self) -> None:
        """Give each column the width of its words, as far as that leaves something for the others."""
        self.horizontalHeader().resizeSections(QHeaderView.ResizeMode.ResizeToContents)
        widest = pixels(self.font(), _WIDEST)
        for column in range(self.lines.columnCount() - 1):
            self.setColumnWidth(column, min(widest, self.columnWidth(column)))
        self._stretch()
        self.told.emit("")

    def _stretch(self) -> None:
        last = self.lines.columnCount() - 1
        if last >= 0:
            others = sum(self.columnWidth(column) for column in range(last))
            needed = max(self.sizeHintForColumn(last), self.horizontalHeader().sectionSizeHint(last))
            self.setColumnWidth(last, max(needed, self.viewport().width() - others))

    def _chosen(self, current: QModelIndex, _before: QModelIndex) -> None:
        if current.isValid():
            row = self.lines.rows[current.row()]
            self.told.emit(
                say(
                    "Line {line}: {current}",
                    line=row.line,
                    current=self.lines.sentence(current) or say("Taken as it is shown."),
                )
            )
