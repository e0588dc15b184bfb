"""What can be done with a timetable: print its sheet, save it as PDF, look at it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime

from PySide6.QtWidgets import QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens import timetable_card
from evenwater.screens.timetable_card import TimetablePage
from evenwater.screens.timetable_sheet import Timetabled
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.page_actions import PageActions
from evenwater.wording import marked, say, say_all

_WORDS = (marked("&Print timetable"), marked("&Save timetable as PDF"), marked("&Look at timetable"))


class TimetableActions(PageActions):
    """Owns the three buttons of a timetable."""

    def __init__(self, dialogs: Dialogs, owner: QWidget) -> None:
        """Make the buttons over ``owner``."""
        super().__init__(marked("timetable"), say_all(_WORDS), dialogs, owner)
        self._page: TimetablePage | None = None

    def set_timetable(self, found: Timetabled, system: Mapping[str, Typed], now: datetime) -> None:
        """Take over the timetable that is shown, with its system; one that is refused has no page."""
        self._page = None if found.answer is None else timetable_card.page(found.answer, found.given, system, now)
        self.changed(there=self._page is not None)

    def suspend(self) -> None:
        """Make no page until the next timetable is set; what is looked at stays for that moment."""
        self._page = None
        self.halt()

    def page(self) -> TimetablePage | None:
        """Return the page of the timetable that is shown, or None."""
        return self._page

    def file_name(self) -> str:
        """Return what its file is called at first."""
        return "timetable.pdf" if self._page is None else say("timetable {code}.pdf", code=self._page.code)
