"""What can be done with the plan that is shown: start it, save, print and look at its card."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.screens import correct
from evenwater.session import Document
from evenwater.ui.card_actions import CardActions
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.flow import FlowRow
from evenwater.ui.follow_page import FollowPage
from evenwater.ui.plan_actions import PlanActions
from evenwater.ui.theme import GRID, set_role
from evenwater.ui.together import Together

if TYPE_CHECKING:
    from evenwater.ui.card_preview import CardPreview


class PlanButtons(QWidget):
    """A row of buttons below the answer of whatever is shown: a new correction, or the plan that is followed.

    ``told`` carries a sentence for the status line.
    """

    told = Signal(str)

    def __init__(
        self, document: Document, catalogue: Catalogue, followed: FollowPage, together: Together, parent: QWidget
    ) -> None:
        """Make the buttons; ``together`` says what a new correction does beside everything else that runs."""
        super().__init__(parent)
        self._document, self._followed, self._together = document, followed, together
        self._new: tuple[str, correct.Plan | None] = ("", None)
        self.cards = CardActions(document, Dialogs(self), self, self._against)
        self.plans = PlanActions(document, catalogue, self, self._against)
        self.preview: CardPreview | None = None
        row = FlowRow(GRID, self)
        for button in (self.plans.start, *self.cards.buttons):
            row.addWidget(button)
        self.cards.look.connect(self._look)
        for part in (self.cards, self.plans):
            part.told.connect(self.told)

    def offer(self, plan: correct.Plan | None, system: str, raw: Mapping[str, Any], now: datetime, batch: str) -> None:
        """Let be done what can be done with the new plan, or with the one that is followed, as it was started."""
        self._new = (system, plan)
        self.plans.set_plan(plan, system, raw, now, batch)
        if not self._followed.isHidden():
            plan, raw, now, batch = self._followed.as_started()
        self.cards.set_batch(batch, self._document.value(batch, "mixed_on").text if batch else "")
        self.cards.set_plan(plan, system, raw, now)
        self._show_preview()

    def set_followed(self, followed: bool) -> None:
        """Leave the main place to the plan's own buttons while it is followed; it is not started twice."""
        self.plans.start.setVisible(not followed)
        set_role(self.cards.save, "large" if followed else "main")

    def suspend(self) -> None:
        """Do nothing until the next plan is offered; the buttons stay as they are for that moment."""
        self.cards.suspend()
        self.plans.suspend()

    def forget(self) -> None:
        """Let go of the last plan: another question is shown."""
        self.cards.forget()
        self.plans.forget()

    def settle(self) -> None:
        """Close the windows of the cards."""
        self.cards.close()
        if self.preview is not None:
            self.preview.close()

    def _against(self) -> str:
        """Return why what is shown must not be begun; what is followed already has its own stops."""
        system, plan = self._new
        return "" if plan is None or not self._followed.isHidden() else self._together.objection(system, plan)

    def _look(self) -> None:
        if self.preview is None:
            from evenwater.ui.card_preview import CardPreview

            self.preview = CardPreview(self)
            self.preview.paper_chosen.connect(self.cards.set_paper)
        self.preview.show()
        self.preview.raise_()
        self._show_preview()

    def _show_preview(self) -> None:
        if self.preview is not None and self.preview.isVisible():
            card = self.cards.card()
            if card is not None:
                self.preview.show_card(card, self.cards.paper().name)
