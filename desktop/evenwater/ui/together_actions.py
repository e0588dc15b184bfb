"""What can be done with the card of all plans together: print it, save it as PDF, look at it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from evenwater.ui.dialogs import Dialogs
from evenwater.ui.page_actions import PageActions

if TYPE_CHECKING:
    from evenwater.screens.together_card import TogetherPage

_WORDS = ("Print card of all plans", "Save card of all plans as PDF", "Look at card of all plans")


class TogetherActions(PageActions):
    """Owns the three buttons; a draft can be looked at, which says why, and neither printed nor saved."""

    def __init__(self, dialogs: Dialogs, owner: QWidget) -> None:
        """Make the buttons over ``owner``."""
        super().__init__("together card", _WORDS, dialogs, owner)
        self._page: TogetherPage | None = None

    def set_page(self, page: TogetherPage | None) -> None:
        """Take over the card of what is shown."""
        self._page = page
        self.changed(there=page is not None)
        for button in (self.print, self.save):
            button.setEnabled(page is not None and not page.draft)

    def suspend(self) -> None:
        """Make no card until the next one is set; what is looked at stays for that moment."""
        self._page = None
        for button in self.buttons:
            button.setEnabled(False)

    def page(self) -> TogetherPage | None:
        """Return the card of what is shown, or None."""
        return self._page

    def file_name(self) -> str:
        """Return what its file is called at first."""
        return "all plans.pdf" if self._page is None else f"all plans {self._page.code}.pdf"
