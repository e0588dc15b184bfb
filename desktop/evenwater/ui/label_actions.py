"""What can be done with a batch that can be made: save its jug's label as PDF, print it, look at it."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, QSettings, Signal
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.card.failures import CardFailed
from evenwater.card.label_paper import LABEL_PAPERS, LabelPaper
from evenwater.card.output import print_card, write_pdf
from evenwater.screens import room_words
from evenwater.screens.jug_label import JugLabel
from evenwater.ui.card_preview import CardPreview
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.plain_text import allow
from evenwater.ui.theme import set_role
from evenwater.wording import say

_FIRST_PAPER = next(iter(LABEL_PAPERS))


class LabelActions(QObject):
    """Owns the three buttons and does what they say; ``told`` carries a sentence for the status line."""

    told = Signal(str)

    def __init__(self, dialogs: Dialogs, owner: QWidget) -> None:
        """Make the buttons over ``owner``."""
        super().__init__(owner)
        self._dialogs, self._owner = dialogs, owner
        self._label: JugLabel | None = None
        self._preview: CardPreview | None = None
        self.save = QPushButton(say("&Save label as PDF"), owner)
        self.print = QPushButton(say("&Print label"), owner)
        self.show = QPushButton(say("&Look at label"), owner)
        self.buttons = (self.save, self.print, self.show)
        for button in self.buttons:
            set_role(button, "large")
            button.setAutoDefault(False)
            allow(button, False, say("There is no label yet: the batch is not complete."))
        self.save.clicked.connect(self._save)
        self.print.clicked.connect(self._print)
        self.show.clicked.connect(self._look)

    @property
    def label(self) -> JugLabel | None:
        """The label of the batch that is shown, or None while it cannot be made."""
        return self._label

    def set_label(self, label: JugLabel | None) -> None:
        """Take over the label of the batch that is shown; None when it has none yet."""
        self._label = label
        for button in self.buttons:
            allow(button, label is not None, say("There is no label yet: the batch is not complete."))
        self._show_preview()

    def paper(self) -> LabelPaper:
        """Return the paper chosen last."""
        return LABEL_PAPERS.get(str(QSettings().value("label paper", _FIRST_PAPER)), LABEL_PAPERS[_FIRST_PAPER])

    def set_paper(self, name: str) -> None:
        """Keep the paper for the next label."""
        QSettings().setValue("label paper", name)

    def write(self, path: Path) -> None:
        """Write the label to a PDF file."""
        if self._label is not None:
            try:
                write_pdf(path, self._label, self.paper())
            except CardFailed as error:
                self.told.emit(room_words.sentence(error.reason))
                return
            self.told.emit(say("Label saved as {path}.", path=path.name))

    def send(self, printer: QPrinter) -> None:
        """Print the label."""
        if self._label is not None:
            try:
                print_card(printer, self._label, self.paper())
            except CardFailed as error:
                self.told.emit(room_words.sentence(error.reason))
                return
            self.told.emit(say("Label sent to the printer."))

    def close(self) -> None:
        """Close the label's window."""
        if self._preview is not None:
            self._preview.close()

    def _save(self) -> None:
        if self._label is not None:
            self._dialogs.save_pdf(
                say("jug label {batch}.pdf", batch=self._label.batch), self.write, say("Save label as PDF")
            )

    def _print(self) -> None:
        if self._label is not None and not self._dialogs.printer(self.send):
            self.told.emit(say("No printer is set up on this computer. Save the label as PDF instead."))

    def _look(self) -> None:
        if self._preview is None:
            self._preview = CardPreview(self._owner, say("Jug label"), LABEL_PAPERS)
            self._preview.paper_chosen.connect(self.set_paper)
        self._preview.show()
        self._preview.raise_()
        self._show_preview()

    def _show_preview(self) -> None:
        if self._preview is None or not self._preview.isVisible():
            return
        if self._label is None:
            self._preview.clear(say("This batch has no label yet."))
        else:
            self._preview.show_card(self._label, self.paper().name)
