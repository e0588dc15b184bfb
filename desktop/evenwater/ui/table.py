"""Lines of words in columns, for whatever a sheet says in rows."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QWidget

from evenwater.ui.plain_text import WordsLabel
from evenwater.ui.still_grid import StillGrid
from evenwater.ui.theme import GRID, set_role


class Table(QWidget):
    """Lines of words in columns; its labels are made once and used again."""

    def __init__(self, parent: QWidget, heads: tuple[str, ...], shares: tuple[int, ...], main: int = -1) -> None:
        """Make an empty table under these heads, its columns so wide to each other, the ``main`` one in larger letters.

        Rows with a ``main`` column are of several lines, and stand further apart than the lines in them.
        """
        super().__init__(parent)
        self._grid = StillGrid(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(2 * GRID)
        self._grid.setVerticalSpacing(GRID // 2 if main < 0 else GRID + GRID // 2)
        self._heads, self._main = heads, main
        self._cells: list[list[QLabel]] = []
        for column, (head, share) in enumerate(zip(heads, shares, strict=True)):
            self._grid.setColumnStretch(column, share)
            label = self._label(head)
            set_role(label, "caption")
            self._grid.addWidget(label, 0, column)

    def set_rows(self, rows: tuple[tuple[str, ...], ...]) -> None:
        """Show these lines."""
        while len(self._cells) < len(rows):
            line = [self._label("") for _ in self._heads]
            for column, label in enumerate(line):
                self._grid.addWidget(label, len(self._cells) + 1, column)
                if column == self._main:
                    set_role(label, "second")
            self._cells.append(line)
        self._grid.set_words(
            (label, text)
            for line, row in zip(self._cells, rows, strict=False)
            for label, text in zip(line, row, strict=True)
        )
        for line in self._cells[len(rows) :]:
            for label in line:
                label.hide()
                label.setText("")
        self.setVisible(bool(rows))

    def _label(self, text: str) -> QLabel:
        label = WordsLabel(text, self)
        label.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        return label
