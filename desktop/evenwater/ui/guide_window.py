"""The window of the guide: the printed one without its pictures, its chapters beside it."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QModelIndex, QStringListModel, Qt
from PySide6.QtGui import QKeyEvent, QTextBlock, QTextCursor
from PySide6.QtWidgets import QAbstractItemView, QHBoxLayout, QListView, QTextBrowser, QWidget

from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import say

_LIST_WIDTH = 264
_CHAPTER = 2


class GuideWindow(QWidget):
    """Shows the guide to be read; choosing a chapter goes there."""

    def __init__(self, folder: Path, parent: QWidget | None = None) -> None:
        """Read the guide from the resources."""
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(say("Guide"))
        set_role(self, "page")
        self.text = QTextBrowser(self)
        self.text.setOpenLinks(False)
        self.text.setAccessibleName(say("Guide"))
        self.text.setMarkdown(_without_pictures((folder / "guide" / "guide.md").read_text(encoding="utf-8")))
        self._chapters = tuple(self._find_chapters())
        self._names = QStringListModel([block.text() for block in self._chapters], self)
        self.list = QListView(self)
        self.list.setModel(self._names)
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setWordWrap(True)
        self.list.setFixedWidth(pixels(self.font(), _LIST_WIDTH))
        self.list.setAccessibleName(say("Chapters"))
        set_role(self.list, "nav")
        self.list.selectionModel().currentChanged.connect(self._go_to)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        layout.setSpacing(2 * GRID)
        layout.addWidget(self.list)
        layout.addWidget(self.text, 1)
        self.resize(pixels(self.font(), 980), pixels(self.font(), 640))

    def open(self) -> None:
        """Come to the front."""
        self.show()
        self.raise_()
        self.activateWindow()
        self.list.setFocus()

    @property
    def chapters(self) -> tuple[str, ...]:
        """The names of the chapters."""
        return tuple(self._names.stringList())

    def _find_chapters(self) -> list[QTextBlock]:
        found = []
        block = self.text.document().begin()
        while block.isValid():
            if block.blockFormat().headingLevel() == _CHAPTER:
                found.append(block)
            block = block.next()
        return found

    def _go_to(self, index: QModelIndex) -> None:
        if index.isValid():
            # From the end upwards, so that the chapter stands at the top.
            self.text.moveCursor(QTextCursor.MoveOperation.End)
            self.text.setTextCursor(QTextCursor(self._chapters[index.row()]))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close with Escape."""
        if event.key() == Qt.Key.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)


def _without_pictures(markdown: str) -> str:
    """Return the text without the lines that are pictures, which only the printed guide has."""
    return "\n".join(line for line in markdown.splitlines() if not line.startswith("!["))
