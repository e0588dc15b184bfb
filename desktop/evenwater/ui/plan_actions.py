"""Starts a correction: from then on it is followed, its card is in use, and the log says so."""

from __future__ import annotations

import json
import uuid
from collections.abc import Callable, Mapping
from datetime import datetime, timedelta
from typing import Any

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct
from evenwater.screens.local_zone import present
from evenwater.session import Document, Entry, Plan
from evenwater.ui.card_actions import card_record, nothing_against
from evenwater.ui.plain_text import allow
from evenwater.ui.theme import set_role
from evenwater.wording import say

# A card printed so short a time ago is the card of the plan that is started now.
_FRESH = timedelta(hours=1)


class PlanActions(QObject):
    """Owns the button that starts the plan that is shown; ``told`` carries a sentence for the status line."""

    told = Signal(str)

    def __init__(
        self, document: Document, catalogue: Catalogue, owner: QWidget, against: Callable[[], str] = nothing_against
    ) -> None:
        """Make the button over ``owner``; ``against`` says why the plan that is shown must not be followed."""
        super().__init__(owner)
        self._document, self._catalogue, self._against = document, catalogue, against
        self._plan: correct.Plan | None = None
        self._system = self._batch = ""
        self._raw: Mapping[str, Any] = {}
        self._now = present()
        self.start = QPushButton(say("S&tart"), owner)
        self.start.setAccessibleName(say("Start this correction"))
        self.start.setToolTip(say("Follow this correction from now on, and note it in the log"))
        self.start.setAutoDefault(False)
        allow(self.start, False, say("There is no plan yet: the sheet has no answer."))
        set_role(self.start, "large")
        self.start.clicked.connect(self._start)

    def set_plan(
        self, plan: correct.Plan | None, system: str, raw: Mapping[str, Any], now: datetime, batch: str
    ) -> None:
        """Take over the plan that is shown, with its question; None when none may be followed."""
        self._plan, self._system, self._raw, self._now, self._batch = plan, system, raw, now, batch
        allow(self.start, plan is not None, say("There is no plan yet: the sheet has no answer."))

    def suspend(self) -> None:
        """Start nothing until the next plan is set; the button stays as it is for that moment."""
        self._plan = None

    def forget(self) -> None:
        """Let go of the last plan: another question is shown."""
        self._plan = None
        allow(self.start, False, say("There is no plan yet: the sheet has no answer."))

    def _start(self) -> None:
        if self._plan is None:
            return
        why = self._against()
        if why:
            self.told.emit(say("Not started. {why}", why=why))
            return
        plan, issued = self._printed() or (self._plan, self._now)
        card = card_record(self._document, plan, self._system, self._raw, issued, self._batch)
        if card.state != "in use":
            self.told.emit(
                say("The card of this very plan is out of use. Change the question, or wait a minute, then start.")
            )
            return
        started = Plan(
            plan_id=plan.plan_id,
            system_id=self._system,
            parameter=plan.parameter,
            started=issued,
            body=plan.kept(correct.question_text(self._raw), self._batch),
        )
        note = Entry(
            id=uuid.uuid4().hex,
            system_id=self._system,
            kind="note",
            subject="",
            at=present(),
            fields={"text": Typed(f"Started plan {plan.plan_id}: {plan.in_words()}.")},
        )
        if self._document.log.start_plan(started, card, note, self):
            self.told.emit(
                say(
                    "Plan {plan_id} is started. Hang its card on the stand and take down the older one.",
                    plan_id=plan.plan_id,
                )
            )

    def _printed(self) -> tuple[correct.Plan, datetime] | None:
        """Return the plan whose card was saved or printed for this very question a short while ago, and when."""
        text = json.dumps(correct.question_text(self._raw))
        for card in reversed(self._document.cards("in use")):
            mine = (card.system_id, card.batch_id, card.body) == (self._system, self._batch, text)
            issued = card.issued.astimezone(self._now.tzinfo)
            if mine and timedelta(0) <= self._now - issued <= _FRESH:
                plan = correct.evaluate(self._raw, self._catalogue, issued).plan
                if plan is not None and plan.plan_id == card.plan_id:
                    return plan, issued
        return None
