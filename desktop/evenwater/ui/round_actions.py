"""What can be done with a round: print its sheet, save it as PDF, look at it, and take it along as reminders."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime
from pathlib import Path
from time import perf_counter

from PySide6.QtCore import QIODevice, QSaveFile, QTimer
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.screens import reminders, round_page
from evenwater.screens.round_page import RoundPage
from evenwater.screens.rounds import Duty, Room
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.page_actions import PageActions
from evenwater.wording import marked, say, say_all, say_many

_WORDS = (marked("&Print round sheet"), marked("Save round sheet as P&DF"), marked("&Look at round sheet"))
# How long [s] the window is held at a time while a file is made.
_SLICE_S = 0.012


class RoundActions(PageActions):
    """Owns the buttons of the round sheet and the one for reminders, and does what they say."""

    def __init__(self, catalogue: Catalogue, dialogs: Dialogs, owner: QWidget) -> None:
        """Make the buttons over ``owner``."""
        super().__init__(marked("round sheet"), say_all(_WORDS), dialogs, owner)
        self._catalogue = catalogue
        self._room: Room | None = None
        self._duties: tuple[Duty, ...] = ()
        self._now: datetime | None = None
        self._pieces: Iterator[bytes] = iter(())
        self._file, self._data, self._count = Path(), bytearray(), 0
        self._slice = QTimer(self)
        self._slice.setSingleShot(True)
        self._slice.setInterval(0)
        self._slice.timeout.connect(self._write_on)
        self.remind = QPushButton(say("Save &reminders"), owner)
        self.remind.setToolTip(say("For any calendar program, as an iCalendar file. Save them again after a change."))
        self._dress(self.remind)
        self.buttons = (*self.buttons, self.remind)
        self.remind.clicked.connect(self._remind)

    def set_room(self, room: Room | None, duties: Sequence[Duty], now: datetime) -> None:
        """Take over the room as it was looked at, with its duties; None while not all of it was."""
        self._room, self._duties, self._now = room, tuple(duties), now
        if room is not None:
            self.changed(there=True)
            return
        # What is looked at stays while the room is gone through again.
        self.halt()

    def page(self) -> RoundPage | None:
        """Return the round sheet of what is shown, or None while not all of the room was looked at."""
        if self._room is None or self._now is None:
            return None
        return round_page.page(self._duties, self._catalogue, self._now)

    def file_name(self) -> str:
        """Return what the file of the round sheet is called at first."""
        return (
            say("round sheet.pdf") if self._now is None else say("round sheet {date}.pdf", date=f"{self._now:%Y-%m-%d}")
        )

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
            self.told.emit(say("The reminders could not be written there. Choose another folder."))
            return
        said = say_many("1 reminder", "{n} reminders", self._count)
        self.told.emit(
            say("{said} saved as {file}. Open the file with your calendar.", said=said, file=self._file.name)
        )

    def _remind(self) -> None:
        if self._now is not None:
            self._dialogs.save_calendar(say("reminders {date}.ics", date=f"{self._now:%Y-%m-%d}"), self.write_reminders)
