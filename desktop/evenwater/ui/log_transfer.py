"""The two buttons of the Log sheet that read a spreadsheet into the log and write one of it."""

from __future__ import annotations

import re
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.screens.terms import term
from evenwater.session import Document
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.import_page import ImportPage
from evenwater.ui.log_export import LogExport
from evenwater.ui.progress import ProgressRow, Ticket
from evenwater.ui.records_pane import SYSTEMS, name_of
from evenwater.wording import say, say_all

# What no name of a file may have in it somewhere, or nobody would see; and what is left of a long one [letters].
_NO_NAME = re.compile(r'[\0-\x1f\x7f-\x9f<>:"/\\|?*\u200b-\u200f\u2028-\u202e\u2066-\u2069\ufeff\ud800-\udfff]')
_LONGEST_NAME = 60


class LogTransfer(QObject):
    """Owns the buttons (``parts``) and the window of the import; ``told`` carries what was done."""

    told = Signal(str)

    def __init__(self, document: Document, catalogue: Catalogue, sheet: QWidget) -> None:
        """Make the buttons on ``sheet``, still without a system."""
        super().__init__(sheet)
        self._document, self._catalogue, self._sheet = document, catalogue, sheet
        self._system = ""
        self.page: ImportPage | None = None
        self.dialogs = Dialogs(sheet)
        self.export = LogExport(document, catalogue, self)
        self.reading = QPushButton(say("&Import from a spreadsheet"), sheet)
        self.saving = QPushButton(say("Save as &spreadsheet"), sheet)
        self.progress = ProgressRow(sheet)
        self.parts: tuple[QWidget, ...] = (self.reading, self.saving, self.progress)
        for button in (self.reading, self.saving):
            button.setAutoDefault(False)
        self.reading.clicked.connect(self._ask_what)
        self.saving.clicked.connect(self._ask_where)
        self.progress.stopped.connect(self.export.stop)
        self.progress.appeared.connect(self._give_way)
        self.export.came.connect(self._came)
        self.export.ended.connect(self._ended)
        self.show_system("")

    def show_system(self, system: str) -> None:
        """Read and write the log of another system from now on; what is under way keeps to its own."""
        self._system = system
        self.reading.setEnabled(bool(system))
        self.saving.setEnabled(bool(system) and not self.export.running)

    def busy(self) -> bool:
        """Return whether a spreadsheet is being written, or lies open to be read."""
        return self.export.running or (self.page is not None and self.page.isVisible())

    def _ask_what(self) -> None:
        self.dialogs.open_csv(self._import)

    def _import(self, file: Path) -> None:
        if self.page is None:
            self.page = ImportPage(self._document, self._catalogue, self._sheet)
            self.page.told.connect(self.told)
        self.page.begin(self._system, file)

    def _ask_where(self) -> None:
        name = _NO_NAME.sub("", name_of(self._document, self._system, say_all(SYSTEMS)))[:_LONGEST_NAME].strip(" .")
        self.dialogs.save_csv(say("{name} readings.csv", name=term(name)).strip(), self._save)

    def _save(self, path: Path) -> None:
        self.saving.setEnabled(False)
        self.progress.begin(say("The readings are being read."))
        self.export.start(self._system, path)

    def _give_way(self) -> None:
        """Leave the buttons' place to the progress, so that nothing else has to move."""
        self.reading.hide()
        self.saving.hide()

    def _came(self, ticket: Ticket) -> None:
        self.progress.say("The spreadsheet is being written.", ticket.done, ticket.most)

    def _ended(self, said: str) -> None:
        self.progress.end()
        self.reading.show()
        self.saving.show()
        self.saving.setEnabled(bool(self._system))
        self.told.emit(said or say("Stopped. No spreadsheet was written."))
