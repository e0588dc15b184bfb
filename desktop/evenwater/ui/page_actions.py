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
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.theme import set_role

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
        """Make the buttons over ``owner``: ``named`` is the page in a sentence, ``words`` are to print, to save and to look."""
        super().__init__(owner)
        self._papers = papers
        self._named, self._dialogs, self._owner = named, dialogs, owner
        self._preview: CardPreview | None = None
        self.print, self.save, self.show = (QPushButton(text, owner) for text in words)
        self.buttons: tuple[QPushButton, ...] = (self.print, self.save, self.show)
        for button in self.buttons:
            self._dress(button)
        self.print.clicked.connect(self._print)
        self.save.clicked.connect(self._save)
        self.show.clicked.connect(self._look)

    @staticmethod
    def _dress(button: QPushButton) -> None:
        set_role(button, "large")
        button.setAutoDefault(False)
        button.setEnabled(False)

    def page(self) -> Sheet | None:
        """Return the page of what is shown, or None while there is none."""
        raise NotImplementedError

    def file_name(self) -> str:
        """Return what its file is called at first."""
        raise NotImplementedError

    def changed(self, *, there: bool) -> None:
        """Take note that the page is another, or that there is none."""
        for button in self.buttons:
            button.setEnabled(there)
        if self._preview is not None and self._preview.isVisible():
            self._show_preview()

    def paper(self) -> Paper:
        """Return the paper chosen last; at first what the country uses."""
        letter = QLocale().measurementSystem() == QLocale.MeasurementSystem.ImperialUSSystem
        usual = "Letter" if letter else "A4"
        return self._papers.get(str(QSettings().value(self._paper_key, usual)), self._papers[usual])

    def set_paper(self, name: str) -> None:
        """Keep the paper for the next page."""
        QSettings().setValue(self._paper_key, name)

    @property
    def _paper_key(self) -> str:
        return f"{self._named.split()[0]} paper"

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
            self.told.emit(f"{self._named.capitalize()} saved as {path.name}.")

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
            self.told.emit(f"{self._named.capitalize()} sent to the printer.")

    def close(self) -> None:
        """Close the window of the page."""
        if self._preview is not None:
            self._preview.close()

    def _print(self) -> None:
        if self.page() is not None and not self._dialogs.printer(self.send):
            self.told.emit(f"No printer is set up on this computer. Save the {self._named} as PDF instead.")

    def _save(self) -> None:
        if self.page() is not None:
            self._dialogs.save_pdf(self.file_name(), self.write, f"Save {self._named} as PDF")

    def _look(self) -> None:
        if self._preview is None:
            from evenwater.ui.card_preview import CardPreview

            self._preview = CardPreview(self._owner, self._named.capitalize(), self._papers)
            self._preview.paper_chosen.connect(self.set_paper)
        self._preview.show()
        self._preview.raise_()
        self._show_preview()

    def _show_preview(self) -> None:
        page = self.page()
        if self._preview is None:
            return
        if page is None:
            self._preview.clear(f"There is no {self._named} now. Take down an older one.")
        else:
            self._preview.show_card(page, self.paper().name)
