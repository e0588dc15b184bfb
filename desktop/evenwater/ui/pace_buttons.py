"""Two buttons that move the end of a ramp, for whoever neither drags it nor finds the keys."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from evenwater.ui.plain_text import allow
from evenwater.ui.theme import set_role
from evenwater.wording import say

# A press does what a Page key does.
_STEPS = 6


class PaceButtons(QWidget):
    """``pressed`` carries by how many steps the end is to move, later or (below zero) earlier."""

    pressed = Signal(int)

    def __init__(self, parent: QWidget) -> None:
        """Make the buttons."""
        super().__init__(parent)
        self.slower, self.faster = QPushButton(say("Slower"), self), QPushButton(say("Faster"), self)
        self.slower.setAccessibleName(say("Choose a slower pace"))
        self.faster.setAccessibleName(say("Choose a faster pace"))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        for button in (self.slower, self.faster):
            button.setAutoDefault(False)
            set_role(button, "quiet")
            button.clicked.connect(self._pressed)
            row.addWidget(button)

    def offer(self, *, stale: bool, fastest: bool) -> None:
        """Let the pace be changed, unless the question is another by now; no faster than the ``fastest`` allowed."""
        changed = say("The question has changed")
        allow(self.slower, not stale, changed)
        allow(self.faster, not (stale or fastest), changed if stale else say("This is the fastest pace allowed."))

    def _pressed(self) -> None:
        self.pressed.emit(_STEPS if self.sender() is self.slower else -_STEPS)
