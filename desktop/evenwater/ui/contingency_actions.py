"""The contingency cards of the plan that is shown: looked at in a window of their own, and saved or printed from there."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.card.failures import CardFailed
from evenwater.screens import correct, room_words
from evenwater.ui.card_paper import card_paper, keep_card_paper
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.plain_text import allow
from evenwater.ui.theme import set_role
from evenwater.wording import marked, say

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

    from evenwater.screens.contingency_views import ContingencySet
    from evenwater.ui.card_preview import CardPreview

# Eight pages take a fifth of a second: they are painted when the keeper stops typing.
_PAINT_AFTER_MS = 250
NO_PLAN = marked("There is no plan to follow now, so there are no contingency cards. Take down those of an older plan.")


class ContingencyActions(QObject):
    """Owns the button that opens the cards, and the two in their window; ``told`` carries a sentence for the status line.

    The cards carry the id of the plan, so none is registered: the dose card beside them is.
    """

    told = Signal(str)

    def __init__(self, owner: QWidget) -> None:
        """Make the button over ``owner``."""
        super().__init__(owner)
        self._owner = owner
        self._plan: correct.Plan | None = None
        self._now: datetime | None = None
        self._batch = self._mixed_on = ""
        self._preview: CardPreview | None = None
        self._dialogs: Dialogs | None = None
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_PAINT_AFTER_MS)
        self._soon.timeout.connect(self._show_preview)
        self.show = QPushButton(say("&Contingency cards"), owner)
        self.show.setToolTip(
            say("Four cards for whoever looks after the tank: high test, missed days, failed pump, new batch.")
        )
        self.save = QPushButton(say("&Save all as PDF"), owner)
        self.print = QPushButton(say("&Print all"), owner)
        for button in (self.show, self.save, self.print):
            set_role(button, "large")
            button.setAutoDefault(False)
            allow(button, False, say("There is no plan yet: the sheet has no answer."))
        for button in (self.save, self.print):
            # They stand in the cards' own window once it is opened.
            button.hide()
        self.show.clicked.connect(self._look)
        self.save.clicked.connect(self._save)
        self.print.clicked.connect(self._print)

    def set_plan(self, plan: correct.Plan | None, now: datetime, batch_id: str, mixed_on: str) -> None:
        """Take over the plan that may be followed, and the batch it is reckoned for; None when there is no such plan."""
        self._plan, self._now, self._batch, self._mixed_on = plan, now, batch_id, mixed_on
        for button in (self.show, self.save, self.print):
            allow(button, plan is not None, say("There is no plan yet: the sheet has no answer."))
        if plan is None:
            # At once: nobody may go on reading cards that hold no longer.
            self._show_preview()
        else:
            self._soon.start()

    def suspend(self) -> None:
        """Make no cards until the next plan is set; what is shown stays for that moment."""
        self._plan = None

    def forget(self) -> None:
        """Let go of the plan: another question is shown."""
        self._plan = None
        for button in (self.show, self.save, self.print):
            allow(button, False, say("There is no plan yet: the sheet has no answer."))
        self._show_preview()

    def cards(self) -> ContingencySet | None:
        """Return the cards of the plan that may be followed now, or None."""
        if self._plan is None or self._now is None:
            return None
        from evenwater.screens.contingency import contingencies  # loaded with the first cards
        from evenwater.screens.contingency_views import ContingencySet

        return ContingencySet(contingencies(self._plan.answer, self._now, self._batch, self._mixed_on))

    def write(self, path: Path) -> None:
        """Write all cards to one PDF file."""
        cards = self.cards()
        if cards is None:
            return
        from evenwater.card.output import write_pdf

        try:
            write_pdf(path, cards, card_paper())
        except CardFailed as error:
            self._tell(room_words.sentence(error.reason))
            return
        self._tell(
            say(
                "Contingency cards of plan {plan_id} saved as {path}. Hang them beside its dose card.",
                plan_id=cards.plan_id,
                path=path.name,
            )
        )

    def send(self, printer: QPrinter) -> None:
        """Print all cards."""
        cards = self.cards()
        if cards is None:
            return
        from evenwater.card.output import print_card

        try:
            print_card(printer, cards, card_paper())
        except CardFailed as error:
            self._tell(room_words.sentence(error.reason))
            return
        self._tell(
            say(
                "Contingency cards of plan {plan_id} sent to the printer. Hang them beside its dose card.",
                plan_id=cards.plan_id,
            )
        )

    def set_paper(self, name: str) -> None:
        """Keep the paper for the next cards."""
        keep_card_paper(name)

    def close(self) -> None:
        """Close the cards' window."""
        if self._preview is not None:
            self._preview.close()

    def _tell(self, words: str) -> None:
        self.told.emit(words)
        if self._preview is not None:
            # The status line lies behind the cards' window.
            self._preview.say(words)

    def _save(self) -> None:
        if self._plan is not None and self._dialogs is not None:
            self._dialogs.save_pdf(
                say("contingency cards {plan_id}.pdf", plan_id=self._plan.plan_id),
                self.write,
                say("Save contingency cards as PDF"),
            )

    def _print(self) -> None:
        if self._plan is not None and self._dialogs is not None and not self._dialogs.printer(self.send):
            self._tell(say("No printer is set up on this computer. Save the cards as PDF instead."))

    def _look(self) -> None:
        if self._preview is None:
            from evenwater.ui.card_preview import CardPreview

            self._preview = CardPreview(self._owner, say("Contingency cards"))
            self._preview.paper_chosen.connect(self.set_paper)
            for button in (self.save, self.print):
                self._preview.add_action(button)
            self._dialogs = Dialogs(self._preview)
        self._preview.say("")
        self._preview.show()
        self._preview.raise_()
        self._show_preview()

    def _show_preview(self) -> None:
        self._soon.stop()
        if self._preview is None or not self._preview.isVisible():
            return
        cards = self.cards()
        if cards is None:
            self._preview.clear(say(NO_PLAN))
        else:
            self._preview.show_card(cards, card_paper().name)
