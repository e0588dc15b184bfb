"""What can be done with a round: print its sheet, save it as PDF, look at it, and take it along as reminders."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime
from pathlib import Path
from time import perf_counter

from PySide6.QtCore import QIODevice, QLocale, QObject, QSaveFile, QSettings, QTimer, Signal
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.card.failures import CardFailed
from evenwater.card.output import print_card, write_pdf
from evenwater.card.paper import Paper
from evenwater.card.round_sheet import ROUND_PAPERS
from evenwater.engine.catalogue import Catalogue
from evenwater.screens import reminders, room_words, round_page
from evenwater.screens.round_page import RoundPage
from evenwater.screens.rounds import Duty, Room
from evenwater.ui.card_preview import CardPreview
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.theme import set_role

_PAPER = "round paper"
# How long [s] the window is held at a time while a file is made.
_SLICE_S = 0.012


class RoundActions(QObject):
    """Owns the four buttons and does what they say; ``told`` carries a sentence for the status line."""

    told = Signal(str)

    def __init__(self, catalogue: Catalogue, dialogs: Dialogs, owner: QWidget) -> None:
        """Make the buttons over ``owner``."""
        super().__init__(owner)
        self._catalogue, self._dialogs, self._owner = catalogue, dialogs, owner
        self._room: Room | None = None
        self._duties: tuple[Duty, ...] = ()
        self._now: datetime | None = None
        self._preview: CardPreview | None = None
        self._pieces: Iterator[bytes] = iter(())
        self._file, self._data, self._count = Path(), bytearray(), 0
        self._slice = QTimer(self)
        self._slice.setSingleShot(True)
        self._slice.setInterval(0)
        self._slice.timeout.connect(self._write_on)
        self.print = QPushButton("&Print round sheet", owner)
        self.save = QPushButton("Save round sheet as P&DF", owner)
        self.show = QPushButton("&Look at round sheet", owner)
        self.remind = QPushButton("Save &reminders", owner)
        self.remind.setToolTip("For any calendar program, as an iCalendar file. Save them again after a change.")
        self.buttons = (self.print, self.save, self.show, self.remind)
        for button in self.buttons:
            set_role(button, "large")
            button.setAutoDefault(False)
            button.setEnabled(False)
        self.print.clicked.connect(self._print)
        self.save.clicked.connect(self._save)
        self.show.clicked.connect(self._look)
        self.remind.clicked.connect(self._remind)

    def set_room(self, room: Room | None, duties: Sequence[Duty], now: datetime) -> None:
        """Take over the room as it was looked at, with its duties; None while not all of it was."""
        self._room, self._duties, self._now = room, tuple(duties), now
        for button in self.buttons:
            button.setEnabled(room is not None)
        if self._preview is not None and self._preview.isVisible() and room is not None:
            self._show_preview()

    def page(self) -> RoundPage | None:
        """Return the round sheet of what is shown, or None while not all of the room was looked at."""
        if self._room is None or self._now is None:
            return None
        return round_page.page(self._duties, self._catalogue, self._now)

    def paper(self) -> Paper:
        """Return the paper chosen last; at first what the country uses."""
        letter = QLocale().measurementSystem() == QLocale.MeasurementSystem.ImperialUSSystem
        usual = "Letter" if letter else "A4"
        return ROUND_PAPERS.get(str(QSettings().value(_PAPER, usual)), ROUND_PAPERS[usual])

    def set_paper(self, name: str) -> None:
        """Keep the paper for the next sheet."""
        QSettings().setValue(_PAPER, name)

    def write(self, path: Path) -> None:
        """Write the round sheet to a PDF file."""
        page = self.page()
        if page is not None:
            try:
                write_pdf(path, page, self.paper())
            except CardFailed as error:
                self.told.emit(room_words.sentence(error.reason))
                return
            self.told.emit(f"Round sheet saved as {path.name}.")

    def send(self, printer: QPrinter) -> None:
        """Print the round sheet."""
        page = self.page()
        if page is not None:
            try:
                print_card(printer, page, self.paper())
            except CardFailed as error:
                self.told.emit(room_words.sentence(error.reason))
                return
            self.told.emit("Round sheet sent to the printer.")

    def write_reminders(self, path: Path) -> None:
        """Write the reminders to a calendar file, whole or not at all, between the window's own work."""
        if self._room is None or self._now is None:
            return
        found = reminders.reminders(self._room, self._catalogue, self._now)
        self._file, self._data = path, bytearray()
        self._count = sum(not each.cancelled for each in found)
        self._pieces = reminders.pieces_of(found, self._now)
        self._write_on()

    def _write_on(self) -> None:
        ends = perf_counter() + _SLICE_S
        while perf_counter() < ends:
            piece = next(self._pieces, None)
            if piece is None:
                self._write_down()
                return
            self._data += piece
        self._slice.start()

    def _write_down(self) -> None:
        file = QSaveFile(str(self._file))
        data = bytes(self._data)
        if not file.open(QIODevice.OpenModeFlag.WriteOnly) or file.write(data) != len(data) or not file.commit():
            self.told.emit("The reminders could not be written there. Choose another folder.")
            return
        said = "1 reminder" if self._count == 1 else f"{self._count} reminders"
        self.told.emit(f"{said} saved as {self._file.name}. Open the file with your calendar.")

    def _print(self) -> None:
        if self._room is not None and not self._dialogs.printer(self.send):
            self.told.emit("No printer is set up on this computer. Save the round sheet as PDF instead.")

    def _save(self) -> None:
        if self._now is not None:
            self._dialogs.save_pdf(f"round sheet {self._now:%Y-%m-%d}.pdf", self.write, "Save round sheet as PDF")

    def _remind(self) -> None:
        if self._now is not None:
            self._dialogs.save_calendar(f"reminders {self._now:%Y-%m-%d}.ics", self.write_reminders)

    def _look(self) -> None:
        if self._preview is None:
            self._preview = CardPreview(self._owner, "Round sheet", ROUND_PAPERS)
            self._preview.paper_chosen.connect(self.set_paper)
        self._preview.show()
        self._preview.raise_()
        self._show_preview()

    def _show_preview(self) -> None:
        page = self.page()
        if self._preview is not None and page is not None:
            self._preview.show_card(page, self.paper().name)
