"""Asks what becomes of edits that the disk does not take, when the window is to be closed."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QMessageBox, QWidget

from evenwater.screens.room_words import edits_words
from evenwater.wording import say


class UnsavedQuestion(QMessageBox):
    """Stands over the window; ``given_up`` says that the edits may be lost. Every other way out of it leaves the window open."""

    given_up = Signal()

    def __init__(self, parent: QWidget) -> None:
        """Make the question, still without a number."""
        super().__init__(parent)
        self.setWindowTitle("Evenwater")
        self.setIcon(QMessageBox.Icon.Warning)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.stay = self.addButton(say("Go &back"), QMessageBox.ButtonRole.RejectRole)
        self.lose = self.addButton("", QMessageBox.ButtonRole.DestructiveRole)
        self.setDefaultButton(self.stay)
        self.setEscapeButton(self.stay)
        self.buttonClicked.connect(self._clicked)

    def ask(self, unsaved: int) -> None:
        """Ask about so many edits; nothing waits for the answer."""
        edits = edits_words(unsaved)
        self.setText(say("{edits} could not be saved.", edits=edits))
        self.setInformativeText(
            say(
                "Go back, make room on the disk or bring the folder back, and they are saved with the next edit. Closed now, they are lost."
            )
        )
        self.lose.setText(say("&Close and lose {edits}", edits=edits))
        self.open()

    def _clicked(self, button: QWidget) -> None:
        if button is self.lose:
            self.given_up.emit()
