"""What can be done with an emergency card: print it, save it as PDF, look at it."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from evenwater.card.paper import PAPERS
from evenwater.screens.emergency_card import EmergencyCard
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.page_actions import PageActions
from evenwater.wording import marked, say, say_all

_WORDS = (marked("&Print card"), marked("&Save card as PDF"), marked("&Look at card"))
_SPOKEN = (marked("Print emergency card"), marked("Save emergency card as PDF"), marked("Look at emergency card"))


class EmergencyActions(PageActions):
    """Owns the three buttons of an emergency card, which goes on a small paper as well."""

    def __init__(self, dialogs: Dialogs, owner: QWidget) -> None:
        """Make the buttons over ``owner``."""
        super().__init__(marked("emergency card"), say_all(_WORDS), dialogs, owner, PAPERS)
        self._card: EmergencyCard | None = None
        for button, spoken in zip(self.buttons, say_all(_SPOKEN), strict=True):
            button.setAccessibleName(spoken)

    def set_card(self, card: EmergencyCard | None) -> None:
        """Take over the card of what is shown; None where nothing is answered."""
        self._card = card
        self.changed(there=card is not None)

    def suspend(self) -> None:
        """Make no card until the next one is set; what is looked at stays for that moment."""
        self._card = None
        self.halt()

    def page(self) -> EmergencyCard | None:
        """Return the card of what is shown, or None."""
        return self._card

    def file_name(self) -> str:
        """Return what its file is called at first."""
        return say("emergency card.pdf")
