"""What can be done with the card of all plans together: print it, save it as PDF, look at it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from evenwater.ui.dialogs import Dialogs
from evenwater.ui.page_actions import PageActions
from evenwater.ui.plain_text import allow
from evenwater.wording import marked, say, say_all

if TYPE_CHECKING:
    from evenwater.screens.together_card import TogetherPage

_WORDS = (
    marked("Print card of all plans"),
    marked("Save card of all plans as PDF"),
    marked("Look at card of all plans"),
)


class TogetherActions(PageActions):
    """Owns the three buttons; a draft can be looked at, which says why, and neither printed nor saved."""

    def __init__(self, dialogs: Dialogs, owner: QWidget) -> None:
        """Make the buttons over ``owner``."""
        super().__init__(marked("together card"), say_all(_WORDS), dialogs, owner)
        self._page: TogetherPage | None = None

    def set_page(self, page: TogetherPage | None) -> None:
        """Take over the card of what is shown."""
        self._page = page
        self.changed(there=page is not None)
        for button in (self.print, self.save):
            why_not = (
                say("There is no card yet.") if page is None else say("Not while something must stop: see the card.")
            )
            allow(button, page is not None and not page.draft, why_not)

    def suspend(self) -> None:
        """Make no card until the next one is set; what is looked at stays for that moment."""
        self._page = None
        self.halt()

    def page(self) -> TogetherPage | None:
        """Return the card of what is shown, or None."""
        return self._page

    def file_name(self) -> str:
        """Return what its file is called at first."""
        return say("all plans.pdf") if self._page is None else say("all plans {code}.pdf", code=self._page.code)
