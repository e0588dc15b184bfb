"""The first start: a fish room to look around in, or an empty one to fill."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.ui.theme import GRID, set_role

_PROMISE = (
    "Evenwater reckons how many mL per hour raise a value slowly and safely, draws what the water will do, and prints "
    "the card that hangs on the stand. Everything you type is kept on this computer and nowhere else."
)
_CARE = (
    "A wrong dose kills animals, and the stocks can hurt people. Read each bag's safety sheet, follow local rules, "
    "and when unsure dose less and test again."
)


class WelcomePage(QWidget):
    """Two buttons: ``demo_wanted`` and ``empty_wanted`` say which was pressed."""

    demo_wanted = Signal()
    empty_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        """Show the welcome."""
        super().__init__(parent)
        set_role(self, "page")
        heading = QLabel("Your fish room is empty", self)
        set_role(heading, "heading")
        self.empty = QPushButton("Start with an &empty room", self)
        set_role(self.empty, "main")
        self.demo = QPushButton("Look round an &invented room of three systems", self)
        set_role(self.demo, "large")
        self.empty.clicked.connect(self.empty_wanted)
        self.demo.clicked.connect(self.demo_wanted)
        row = QHBoxLayout()
        row.setSpacing(2 * GRID)
        row.addWidget(self.empty)
        row.addWidget(self.demo)
        row.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8 * GRID, 8 * GRID, 8 * GRID, 8 * GRID)
        layout.setSpacing(2 * GRID)
        layout.addWidget(heading)
        for text in (_PROMISE, _CARE):
            label = QLabel(text, self)
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
            label.setMaximumWidth(90 * GRID)
            layout.addWidget(label)
        layout.addSpacing(GRID)
        layout.addLayout(row)
        layout.addStretch(1)
        self.empty.setFocus()
