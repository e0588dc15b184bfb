"""The button that leads from a correction of something that is too high to the Recovery sheet."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens.views import Message
from evenwater.ui.correct_records import CorrectRecords
from evenwater.ui.theme import set_role
from evenwater.wording import marked, say

WORDS = marked("It is too high: see &Recovery")


class TooHigh(QPushButton):
    """Stands below a refusal only while the reading is above its target; ``recovery_wanted`` carries the parameter."""

    recovery_wanted = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        """Make the button, hidden."""
        super().__init__(say(WORDS), parent)
        self.setAutoDefault(False)
        self.setToolTip(say("What to do first, and how it comes down without harm"))
        set_role(self, "large")
        self._parameter = ""
        self.hide()
        self.clicked.connect(self._want)

    def judge(self, messages: Sequence[Message], records: CorrectRecords) -> None:
        """Show or hide it by what a correction was refused for."""
        self._parameter = records.parameter
        measured = records.values("correction").get("measured", Typed(""))
        codes = {message.code for message in messages}
        self.setVisible(bool(codes) and _too_high(codes, measured, records))

    def _want(self) -> None:
        self.recovery_wanted.emit(self._parameter)


def _too_high(codes: Collection[str], measured: Typed, records: CorrectRecords) -> bool:
    """Say whether the reading is too high; what knows it is loaded with the first objection."""
    from evenwater.screens import recovery_sheet

    return recovery_sheet.too_high(codes, measured, records.shown_parameter(), records.values("system"))
