"""The window of one question file: its answer in words, and the card where there is a plan. The keeper's log is not opened."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QHBoxLayout, QPlainTextEdit, QPushButton, QVBoxLayout, QWidget

from evenwater.card.failures import CardFailed
from evenwater.card.fonts import load_fonts
from evenwater.screens import room_words
from evenwater.screens.views import CardView
from evenwater.ui import start
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.plain_text import ElidedLabel, WordsLabel, allow
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import say

_WIDTH, _HEIGHT = 860, 640


class Told(Protocol):
    """What is said about a question file."""

    @property
    def text(self) -> str:
        """The answer, or what is wrong with the file."""

    @property
    def card(self) -> CardView | None:
        """The card of its plan."""


class QuestionWindow(QWidget):
    """Shows one answer; nothing in it can be edited."""

    def __init__(self, file: Path, told: Told, parent: QWidget | None = None) -> None:
        """Show what was ``told`` about ``file``."""
        super().__init__(parent)
        self.setWindowTitle(say("{file} – Evenwater", file=file.name))
        set_role(self, "page")
        self._told, self._stem = told, file.stem
        self._dialogs = Dialogs(self)
        self.heading = ElidedLabel(self)
        self.heading.setText(file.name)
        set_role(self.heading, "heading")
        self.alone = WordsLabel(
            say("Answered from this file alone. Your log was not asked, so nothing counts that was dosed before."), self
        )
        self.text = QPlainTextEdit(told.text, self)
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(say("Answer"))
        self.status = WordsLabel("", self)
        self.save = QPushButton(say("&Save card"), self)
        self.shut = QPushButton(say("&Close"), self)
        set_role(self.save, "main")
        set_role(self.shut, "large")
        for button in (self.save, self.shut):
            button.setAutoDefault(False)
        allow(self.save, told.card is not None, say("There is no plan, so there is no card."))
        self._lay_out()
        self.save.clicked.connect(self._save)
        self.shut.clicked.connect(self.close)
        self.resize(pixels(self.font(), _WIDTH), pixels(self.font(), _HEIGHT))
        self.text.setFocus()

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.setSpacing(GRID)
        buttons.addWidget(self.status, 1)
        buttons.addWidget(self.save)
        buttons.addWidget(self.shut)
        page = QVBoxLayout(self)
        page.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        page.setSpacing(GRID)
        page.addWidget(self.heading)
        page.addWidget(self.alone)
        page.addWidget(self.text, 1)
        page.addLayout(buttons)

    def _save(self) -> None:
        self._dialogs.save_pdf(f"{self._stem}.pdf", self.write_card)

    def write_card(self, path: Path) -> None:
        """Write the card as a PDF on A4 and say how that went."""
        from evenwater.card.output import write_pdf
        from evenwater.card.paper import A4

        if self._told.card is None:
            return
        try:
            write_pdf(path, self._told.card, A4)
        except CardFailed as failure:
            self.status.setText(room_words.sentence(failure.reason))
        else:
            self.status.setText(say("Saved: {file}", file=path))


def run(file: Path, tell: Callable[[Path], Told], arguments: Sequence[str]) -> int:
    """Show the answer to a question file and stay until its window is closed.

    Parameters
    ----------
    file : Path
        The question.
    tell : callable
        From the file to what is said about it; called once the language is known.
    arguments : sequence of str
        The options after the file.

    Returns
    -------
    int
        Exit status; 2 for an option that is not known.
    """
    options = start.asked(arguments)
    if isinstance(options, int):
        return options
    app, look = start.application(options)
    look.dress(load_fonts())
    window = QuestionWindow(file, tell(file))
    window.show()
    if options.close_after is not None:
        QTimer.singleShot(round(1000 * options.close_after), window.close)
    return app.exec()
