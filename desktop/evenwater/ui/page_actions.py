"""What can be done with a page that goes on paper: print it, save it as PDF, look at it."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, QObject, QSettings, Signal
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.card.failures import CardFailed
from evenwater.card.paper import ROUND_PAPERS, Paper
from evenwater.screens import room_words
from evenwater.screens.terms import capitalized
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.icons import put_sign
from evenwater.ui.plain_text import allow
from evenwater.ui.theme import set_role
from evenwater.wording import say

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

    from evenwater.card.output import Sheet
    from evenwater.ui.card_preview import CardPreview


class PageActions(QObject):
    """Owns the three buttons and does what they say; ``told`` carries a sentence for the status line.

    A subclass says what the page is by ``page``, what its file is called by ``file_name``, and gives the buttons' words.
    """

    told = Signal(str)

    def __init__(
        self,
        named: str,
        words: tuple[str, str, str],
        dialogs: Dialogs,
        owner: QWidget,
        papers: Mapping[str, Paper] = ROUND_PAPERS,
    ) -> None:
        """Make the buttons over ``owner``: ``named`` is the page in an English sentence, ``words`` are to print, to save and to look."""
        super().__init__(owner)
        self._papers = papers
        self._name, self._named = named, say(named)
        self._dialogs, self._owner = dialogs, owner
        self._preview: CardPreview | None = None
        self.print, self.save, self.show = (QPushButton(text, owner) for text in words)
        self.buttons: tuple[QPushButton, ...] = (self.print, self.save, self.show)
        for button in self.buttons:
            self._dress(button)
        put_sign(self.print, "print")
        put_sign(self.save, "page")
        self.print.clicked.connect(self._print)
        self.save.clicked.connect(self._save)
        self.show.clicked.connect(self._look)

    def _dress(self, button: QPushButton) -> None:
        set_role(button, "large")
        button.setAutoDefault(False)
        allow(button, False, say("There is no {page} yet: the sheet has no answer.", page=self._named))

    def page(self) -> Sheet | None:
        """Return the page of what is shown, or None while there is none."""
        raise NotImplementedError

    def file_name(self) -> str:
        """Return what its file is called at first."""
        raise NotImplementedError

    def changed(self, *, there: bool) -> None:
        """Take note that the page is another, or that there is none."""
        for button in self.buttons:
            allow(button, there, say("There is no {page} yet: the sheet has no answer.", page=self._named))
        if self._preview is not None and self._preview.isVisible():
            self._show_preview()

    def halt(self) -> None:
        """Let nothing be done until the page that is being worked out is there."""
        for button in self.buttons:
            allow(button, False, say("It is still being worked out."))

    def paper(self) -> Paper:
        """Return the paper chosen last; at first what the country uses."""
        letter = QLocale().measurementSystem() == QLocale.MeasurementSystem.ImperialUSSystem
        usual = say("Letter") if letter else "A4"
        return self._papers.get(str(QSettings().value(self._paper_key, usual)), self._papers[usual])

    def set_paper(self, name: str) -> None:
        """Keep the paper for the next page."""
        QSettings().setValue(self._paper_key, name)

    @property
    def _paper_key(self) -> str:
        return f"{self._name.split()[0]} paper"

    def write(self, path: Path) -> None:
        """Write the page to a PDF file."""
        page = self.page()
        if page is not None:
            from evenwater.card.output import write_pdf  # what paints pages is loaded with the first one

            try:
                write_pdf(path, page, self.paper())
            except CardFailed as error:
                self.told.emit(room_words.sentence(error.reason))
                return
            self.told.emit(say("{named} saved as {path}.", named=capitalized(self._named), path=path.name))

    def send(self, printer: QPrinter) -> None:
        """Print the page."""
        page = self.page()
        if page is not None:
            from evenwater.card.output import print_card

            try:
                print_card(printer, page, self.paper())
            except CardFailed as error:
                self.told.emit(room_words.sentence(error.reason))
                return
            self.told.emit(say("{named} sent to the printer.", named=capitalized(self._named)))

    def close(self) -> None:
        """Close the window of the page."""
        if self._preview is not None:
            self._preview.close()

    def _print(self) -> None:
        if self.page() is not None and not self._dialogs.printer(self.send):
            self.told.emit(
                say("No printer is set up on this computer. Save the {named} as PDF instead.", named=self._named)
            )

    def _save(self) -> None:
        if self.page() is not None:
            self._dialogs.save_pdf(self.file_name(), self.write, say("Save {named} as PDF", named=self._named))

    def _look(self) -> None:
        if self._preview is None:
            from evenwater.ui.card_preview import CardPreview

            self._preview = CardPreview(self._owner, capitalized(self._named), self._papers)
            self._preview.paper_chosen.connect(self.set_paper)
        self._preview.show()
        self._preview.raise_()
        self._show_preview()

    def _show_preview(self) -> None:
        page = self.page()
        if self._preview is None:
            return
        if page is None:
            self._preview.clear(say("There is no {named} now. Take down an older one.", named=self._named))
        else:
            self._preview.show_card(page, self.paper().name)
