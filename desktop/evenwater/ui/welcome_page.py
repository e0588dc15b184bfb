"""The first start: a fish room to look around in, or an empty one to fill."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.ui.flow import FlowRow
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import marked, say

_PROMISE = marked(
    "Evenwater reckons how many mL per hour raise a value slowly and safely, draws what the water will do, and prints the card that hangs on the stand. Everything you type is kept on this computer and nowhere else, unless you open a log on a server of your own."
)
_CARE = marked(
    "A wrong dose kills animals, and the stocks can hurt people. Read each bag's safety sheet, follow local rules, and when unsure dose less and test again."
)


class WayIn(QPushButton):
    """A button that Enter presses too: nothing has been typed here that Enter could be meant for."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Press on Enter."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
            event.accept()
        else:
            super().keyPressEvent(event)


class WelcomePage(QWidget):
    """Buttons: ``empty_wanted``, ``walk_wanted``, ``demo_wanted`` and ``server_wanted`` say which was pressed."""

    demo_wanted = Signal()
    empty_wanted = Signal()
    walk_wanted = Signal()
    server_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        """Show the welcome."""
        super().__init__(parent)
        set_role(self, "page")
        heading = QLabel(say("Your fish room is empty"), self)
        set_role(heading, "heading")
        self.empty = WayIn(say("Start with &my own tank"), self)
        set_role(self.empty, "main")
        self.walk = WayIn(say("Be &led through it on an invented tank"), self)
        self.demo = WayIn(say("Look round an &invented room of three systems"), self)
        for button in (self.walk, self.demo):
            set_role(button, "large")
        self.server = WayIn(say("Open the log of a &facility, on its server"), self)
        set_role(self.server, "quiet")
        self.server.clicked.connect(self.server_wanted)
        self.empty.clicked.connect(self.empty_wanted)
        self.walk.clicked.connect(self.walk_wanted)
        self.demo.clicked.connect(self.demo_wanted)
        row = FlowRow(2 * GRID)
        for button in (self.empty, self.walk, self.demo):
            row.addWidget(button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8 * GRID, 8 * GRID, 8 * GRID, 8 * GRID)
        layout.setSpacing(2 * GRID)
        layout.addWidget(heading)
        for text in (say(_PROMISE), say(_CARE)):
            label = QLabel(text, self)
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
            label.setMaximumWidth(90 * GRID)
            layout.addWidget(label)
        layout.addSpacing(GRID)
        layout.addLayout(row)
        layout.addWidget(self.server, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addStretch(1)

    def showEvent(self, event: QShowEvent) -> None:
        """Begin at the first button: only what is visible can take the focus."""
        super().showEvent(event)
        self.empty.setFocus()
