"""A page that says why the log cannot be opened, and tries again."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.ui.theme import GRID, set_role


class NoticePage(QWidget):
    """One sentence, the file it is about, one button; ``again`` says that it was pressed."""

    again = Signal()

    def __init__(self, sentence: str, place: str, parent: QWidget | None = None) -> None:
        """Show ``sentence`` about the file at ``place``."""
        super().__init__(parent)
        set_role(self, "page")
        self.sentence = QLabel(sentence, self)
        set_role(self.sentence, "heading")
        file = QLabel(place, self)
        set_role(file, "muted")
        for label in (self.sentence, file):
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
        button = QPushButton("&Try again", self)
        set_role(button, "main")
        button.clicked.connect(self.again)
        row = QHBoxLayout()
        row.addWidget(button)
        row.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8 * GRID, 8 * GRID, 8 * GRID, 8 * GRID)
        layout.setSpacing(2 * GRID)
        layout.addWidget(self.sentence)
        layout.addWidget(file)
        layout.addLayout(row)
        layout.addStretch(1)
