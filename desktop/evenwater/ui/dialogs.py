"""The system's own dialogs behind one small object, so that nothing waits inside a call for them."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QStandardPaths
from PySide6.QtWidgets import QDialog, QFileDialog, QWidget

from evenwater.wording import marked, say

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrintDialog, QPrinter

_SHEETS = marked("Spreadsheet as CSV (*.csv *.CSV *.tsv *.txt);;Every file (*)")


class Dialogs(QObject):
    """Asks what to open, where to save and where to print; answers come later, by a call."""

    def __init__(self, owner: QWidget) -> None:
        """Open dialogs over ``owner``."""
        super().__init__(owner)
        self._owner = owner
        self._file: QFileDialog | None = None
        self._sheets: dict[QFileDialog.AcceptMode, QFileDialog] = {}
        self._calendar: QFileDialog | None = None
        self._print: QPrintDialog | None = None
        self._printer: QPrinter | None = None
        self._on_file: Callable[[Path], None] | None = None
        self._on_printer: Callable[[QPrinter], None] | None = None

    def save_pdf(self, suggestion: str, then: Callable[[Path], None], title: str = "") -> None:
        """Ask for the name of a PDF file and hand it to ``then``; nothing happens on Cancel."""
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        self._on_file = then
        if self._file is None:
            self._file = QFileDialog(self._owner, say("Save card as PDF"))
            self._file.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
            self._file.setNameFilter(say("PDF (*.pdf)"))
            self._file.setDefaultSuffix("pdf")
            self._file.setDirectory(folder)
            self._file.fileSelected.connect(self._file_chosen)
        self._file.setWindowTitle(title or say("Save card as PDF"))
        self._file.selectFile(suggestion)
        self._file.open()

    def open_csv(self, then: Callable[[Path], None]) -> None:
        """Ask for a spreadsheet and hand it to ``then``; nothing happens on Cancel."""
        dialog = self._sheet(QFileDialog.AcceptMode.AcceptOpen, say("Choose a spreadsheet"), then)
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.open()

    def save_csv(self, suggestion: str, then: Callable[[Path], None]) -> None:
        """Ask for the name of a spreadsheet and hand it to ``then``; nothing happens on Cancel."""
        dialog = self._sheet(QFileDialog.AcceptMode.AcceptSave, say("Save as spreadsheet"), then)
        dialog.selectFile(suggestion)
        dialog.open()

    def save_calendar(self, suggestion: str, then: Callable[[Path], None]) -> None:
        """Ask for the name of a calendar file and hand it to ``then``; nothing happens on Cancel."""
        self._on_file = then
        if self._calendar is None:
            self._calendar = QFileDialog(self._owner, say("Save reminders"))
            self._calendar.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
            self._calendar.setNameFilter(say("Calendar (*.ics)"))
            self._calendar.setDefaultSuffix("ics")
            self._calendar.setDirectory(
                QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
            )
            self._calendar.fileSelected.connect(self._file_chosen)
        self._calendar.selectFile(suggestion)
        self._calendar.open()

    def _sheet(self, mode: QFileDialog.AcceptMode, title: str, then: Callable[[Path], None]) -> QFileDialog:
        """Return the dialog for spreadsheets, which keeps the folder that was chosen last."""
        self._on_file = then
        if mode not in self._sheets:
            dialog = self._sheets[mode] = QFileDialog(self._owner, title)
            dialog.setAcceptMode(mode)
            dialog.setNameFilter(say(_SHEETS))
            dialog.setDefaultSuffix("csv")
            dialog.setDirectory(QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation))
            dialog.fileSelected.connect(self._file_chosen)
        return self._sheets[mode]

    def printer(self, then: Callable[[QPrinter], None]) -> bool:
        """Ask for a printer and hand it to ``then``; False when this computer has none."""
        from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo

        if not QPrinterInfo.availablePrinterNames():
            return False
        self._on_printer = then
        if self._print is None:
            self._printer = QPrinter(QPrinter.PrinterMode.HighResolution)
            self._print = QPrintDialog(self._printer, self._owner)
            self._print.accepted.connect(self._printer_chosen)
        # The printer's own open() wants a slot by name; the plain one shows it and returns at once.
        QDialog.open(self._print)
        return True

    def _file_chosen(self, name: str) -> None:
        if self._on_file is not None:
            self._on_file(Path(name))

    def _printer_chosen(self) -> None:
        if self._on_printer is not None and self._printer is not None:
            self._on_printer(self._printer)
