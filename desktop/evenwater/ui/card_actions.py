"""What can be done with a plan: save its card as PDF, print it, look at it."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.card.failures import CardFailed
from evenwater.card.paper import Paper
from evenwater.screens import correct, room_words
from evenwater.screens.local_zone import present
from evenwater.screens.views import CardView
from evenwater.session import Card, Document
from evenwater.ui.card_paper import card_paper, keep_card_paper
from evenwater.ui.contingency_actions import ContingencyActions
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.plain_text import allow
from evenwater.ui.theme import set_role
from evenwater.wording import marked, say

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

NOT_A_PLAN = marked("NOT A PLAN")


def nothing_against() -> str:
    """Return no objection."""
    return ""


class CardActions(QObject):
    """Owns the buttons of the card, and of the contingency cards beside it, and does what they say.

    ``buttons`` are all of them in their order. ``told`` carries a sentence for the status line; ``look`` says that the card is to be shown.
    """

    told = Signal(str)
    look = Signal()

    def __init__(
        self, document: Document, dialogs: Dialogs, owner: QWidget, against: Callable[[], str] = nothing_against
    ) -> None:
        """Make the buttons over ``owner``; ``against`` says why the plan that is shown must not be followed."""
        super().__init__(owner)
        self._document, self._dialogs, self._against = document, dialogs, against
        self._plan: correct.Plan | None = None
        self._last: correct.Plan | None = None
        self._system = ""
        self._mixed_on = self._batch = ""
        self._now = present()
        self._raw: Mapping[str, Any] = {}
        self.save = QPushButton(say("&Save card"), owner)
        self.save.setAccessibleName(say("Save card as PDF"))
        self.save.setToolTip(say("Save the dose card as a PDF file"))
        self.print = QPushButton(say("&Print card"), owner)
        self.show = QPushButton(say("&Look at card"), owner)
        self.contingency = ContingencyActions(owner)
        self.buttons = (self.save, self.print, self.show, self.contingency.show)
        set_role(self.save, "main")
        for button in (self.print, self.show):
            set_role(button, "large")
        for button in (self.save, self.print, self.show):
            button.setAutoDefault(False)
            allow(button, False, say("There is no plan yet: the sheet has no answer."))
        self.save.clicked.connect(self._save)
        self.print.clicked.connect(self._print)
        self.show.clicked.connect(self.look)
        self.contingency.told.connect(self.told)

    def set_plan(self, plan: correct.Plan | None, system_id: str, raw: Mapping[str, Any], now: datetime) -> None:
        """Take over the plan that is shown, with its question; None when none may be followed."""
        self._plan, self._system, self._raw, self._now = plan, system_id, raw, now
        for button in (self.save, self.print):
            allow(button, plan is not None, say("There is no plan yet: the sheet has no answer."))
        self.contingency.set_plan(plan, now, self._batch, self._mixed_on)
        if plan is not None:
            self._last = plan
            allow(self.show, True, "")

    def set_batch(self, batch_id: str, mixed_on: str) -> None:
        """Take over which batch the plan is reckoned for, and when it was mixed."""
        self._batch, self._mixed_on = batch_id, mixed_on

    @property
    def plan(self) -> correct.Plan | None:
        """The plan that may be followed now, or None."""
        return self._plan

    def suspend(self) -> None:
        """Make no card until the next plan is set; the buttons stay as they are for that moment."""
        self._plan = None
        self.contingency.suspend()

    def forget(self) -> None:
        """Let go of the last plan: another question is shown."""
        self._last = self._plan = None
        self.contingency.forget()
        for button in (self.save, self.print, self.show):
            allow(button, False, say("There is no plan yet: the sheet has no answer."))

    def card(self) -> CardView | None:
        """Return the card of the plan that is shown; the last one, stamped, when there is none now."""
        if self._last is None:
            return None
        stamp = "" if self._plan is not None else say(NOT_A_PLAN)
        return self._last.card(self._now, self._mixed_on, stamp, self._batch)

    def paper(self) -> Paper:
        """Return the paper chosen last; at first what the country uses."""
        return card_paper()

    def set_paper(self, name: str) -> None:
        """Keep the paper for the next card."""
        keep_card_paper(name)

    def close(self) -> None:
        """Close the window of the contingency cards."""
        self.contingency.close()

    def _save(self) -> None:
        if self._plan is not None and self._allowed():
            self._dialogs.save_pdf(say("dose card {plan_id}.pdf", plan_id=self._plan.plan_id), self.write)

    def write(self, path: Path) -> None:
        """Register the card and write it to a PDF file."""
        card = self.card()
        if card is None or card.draft or not self._register():
            return
        from evenwater.card.output import write_pdf  # what paints cards is loaded with the first one

        try:
            write_pdf(path, card, self.paper())
        except CardFailed as error:
            self.told.emit(room_words.sentence(error.reason))
            return
        self.told.emit(
            say("Card {plan_id} saved as {path}. Take down the older one.", plan_id=card.plan_id, path=path.name)
        )

    def _print(self) -> None:
        if self._plan is not None and self._allowed() and not self._dialogs.printer(self.send):
            self.told.emit(say("No printer is set up on this computer. Save the card as PDF instead."))

    def send(self, printer: QPrinter) -> None:
        """Register the card and print it."""
        card = self.card()
        if card is None or card.draft or not self._register():
            return
        from evenwater.card.output import print_card

        try:
            print_card(printer, card, self.paper())
        except CardFailed as error:
            self.told.emit(room_words.sentence(error.reason))
            return
        self.told.emit(say("Card {plan_id} sent to the printer. Take down the older one.", plan_id=card.plan_id))

    def _allowed(self) -> bool:
        """Say whether the card may hang on the stand beside everything else that runs."""
        why = self._against()
        if why:
            self.told.emit(say("No card is made. {why}", why=why))
        return not why

    def _register(self) -> bool:
        """Note the card as hanging on the stand before it can; older ones become void."""
        if self._plan is None:
            return False
        return self._document.add_card(
            card_record(self._document, self._plan, self._system, self._raw, self._now, self._batch)
        )


def card_record(
    document: Document, plan: correct.Plan, system: str, raw: Mapping[str, Any], issued: datetime, batch: str
) -> Card:
    """Return what is registered of a plan's card; the very same where it is registered already."""
    cards = [card for card in document.cards() if card.system_id == system]
    known = next((card for card in cards if card.plan_id == plan.plan_id), None)
    if known is not None:
        return known
    return Card(
        plan_id=plan.plan_id,
        version=1 + max((card.version for card in cards), default=0),
        system_id=system,
        parameter=plan.parameter,
        issued=issued,
        valid_until=plan.valid_until,
        body=json.dumps(correct.question_text(raw)),
        batch_id=batch,
    )
