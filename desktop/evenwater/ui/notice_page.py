"""A page that says why the log cannot be opened, and tries again."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.ui.theme import GRID, set_role
from evenwater.wording import say


class NoticePage(QWidget):
    """One sentence, the file it is about, one button; ``again`` says that it was pressed.

    Where a copy can be restored there is another one; ``restore_wanted`` says that it was pressed, and then pressed to be sure.
    """

    again = Signal()
    restore_wanted = Signal()

    def __init__(
        self, sentence: str, place: str, parent: QWidget | None = None, offer: str = "", what_then: str = ""
    ) -> None:
        """Show ``sentence`` about the file at ``place``.

        ``offer`` are the words of the button for a copy, if there is one, and ``what_then`` says what it would do.
        """
        super().__init__(parent)
        set_role(self, "page")
        self.sentence = QLabel(sentence, self)
        set_role(self.sentence, "heading")
        file = QLabel(place, self)
        set_role(file, "muted")
        for label in (self.sentence, file):
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
        button = QPushButton(say("&Try again"), self)
        set_role(button, "main")
        button.clicked.connect(self.again)
        self.restore, self.sure = QPushButton(offer, self), QPushButton(say("&Yes, restore it"), self)
        self.what_then = QLabel(what_then, self)
        self.what_then.setTextFormat(Qt.TextFormat.PlainText)
        self.what_then.setWordWrap(True)
        self.restore.setVisible(bool(offer))
        self.restore.clicked.connect(self._ask)
        self.sure.clicked.connect(self.restore_wanted)
        for hidden in (self.sure, self.what_then):
            hidden.hide()
        for each in (button, self.restore, self.sure):
            each.setAutoDefault(False)
        row = QHBoxLayout()
        row.addWidget(button)
        row.addWidget(self.restore)
        row.addStretch(1)
        second = QHBoxLayout()
        second.addWidget(self.sure)
        second.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8 * GRID, 8 * GRID, 8 * GRID, 8 * GRID)
        layout.setSpacing(2 * GRID)
        layout.addWidget(self.sentence)
        layout.addWidget(file)
        layout.addLayout(row)
        layout.addWidget(self.what_then)
        layout.addLayout(second)
        layout.addStretch(1)

    def _ask(self) -> None:
        """Say what would be lost, and wait for a second word."""
        self.what_then.show()
        self.sure.show()
