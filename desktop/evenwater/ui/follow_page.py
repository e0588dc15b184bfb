"""A plan that is followed, in place of a new correction: the verdict, the ramp with its retests, and what can be done."""

from __future__ import annotations

import uuid
from collections.abc import Mapping
from datetime import datetime
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, following
from evenwater.screens.following_view import FollowView
from evenwater.screens.local_zone import LocalZone, present
from evenwater.screens.terms import term
from evenwater.screens.views import AnswerView, Message
from evenwater.session import Document, Entry, Plan
from evenwater.ui.answer_panel import AnswerPanel
from evenwater.ui.chart import RampChart
from evenwater.ui.plain_text import allow
from evenwater.ui.plans import Plans
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say

_CHART_HEIGHT = 288
# What must not be followed on.
_OVER = ("stop", "ended")
_UNREADABLE = marked(
    "This plan was kept by another version and cannot be read, so it must not be followed. End it, then plan again from a fresh reading."
)
_SHOW_PLAN, _SHOW_NEW = marked("Show the &plan"), marked("Show a new &correction")


class FollowPage(QWidget):
    """Shows the followed plan of one system and parameter, where there is one; ``strip`` stands above either page.

    ``turned`` carries whether the plan is shown, and not a new correction; ``reading_wanted`` the parameter to test,
    ``recovery_wanted`` the one that is too high; ``told`` a sentence for the status line.
    """

    turned = Signal(bool)
    reading_wanted = Signal(str)
    recovery_wanted = Signal(str)
    told = Signal(str)

    def __init__(self, document: Document, catalogue: Catalogue, plans: Plans, parent: QWidget) -> None:
        """Make the page, still without a plan."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue, self._plans = document, catalogue, plans
        self._system = self._parameter = ""
        self._plan: Plan | None = None
        self._view: FollowView | None = None
        self.strip = QWidget(parent)
        self._said = QLabel(self.strip)
        self._said.setTextFormat(Qt.TextFormat.PlainText)
        self._said.setWordWrap(True)
        self.turn = self._button(say(_SHOW_PLAN), self.strip)
        self.answer = AnswerPanel(
            self, how=say("Readings since the start"), usual_height=180, hide=say("Hide the readings")
        )
        self.chart = RampChart(self, zone=LocalZone())
        self.chart.setAccessibleName(say("Chart of the plan that is followed"))
        self.test, self.again, self.end = (
            self._button(words, self)
            for words in (say("&Note a reading"), say("Plan a&gain from the reading"), say("&End this plan"))
        )
        self.recover = self._button(say("It is too high: see &Recovery"), self)
        set_role(self.recover, "large")
        self._lay_out()
        self.recover.clicked.connect(self._recover)
        self.turn.clicked.connect(self._turn)
        self.test.clicked.connect(self._test)
        self.again.clicked.connect(self._plan_again)
        self.end.clicked.connect(self._end)
        plans.changed.connect(self._changed)
        self.strip.hide()
        self.hide()

    def _button(self, words: str, parent: QWidget) -> QPushButton:
        button = QPushButton(words, parent)
        button.setAutoDefault(False)
        return button

    def _lay_out(self) -> None:
        row = QHBoxLayout(self.strip)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GRID)
        row.addWidget(self._said, 1)
        row.addWidget(self.turn, 0, Qt.AlignmentFlag.AlignTop)
        for button in (self.test, self.again, self.end, self.recover):
            self.answer.add_action(button)
        self.chart.setMinimumHeight(pixels(self.font(), _CHART_HEIGHT))
        self._column = column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GRID)
        column.addWidget(self.answer)
        column.addWidget(self.chart, 1)

    @property
    def plan(self) -> Plan | None:
        """The plan that is followed here, or None."""
        return self._plan

    def show_question(self, system: str, parameter: str) -> None:
        """Show the plan that is followed for a parameter of a system; a new correction where there is none."""
        self._system, self._parameter = system, parameter
        self._plan = self._plans.of(system, parameter) if system else None
        self._show(self._plan is not None)

    def refresh(self) -> None:
        """Show how the plan stands now."""
        if self._plan is None:
            return
        self._view = self._plans.view(self._plan)
        self._say()
        if not self.isHidden():
            self._render()

    def show_new(self) -> None:
        """Show the new correction; the plan goes on."""
        if self._plan is not None and not self.isHidden():
            self._show(False)

    def hold(self, actions: QWidget) -> None:
        """Take the buttons of the card in, below the plan's own."""
        self._column.insertWidget(1, actions)

    def as_started(self) -> tuple[correct.Plan | None, Mapping[str, Any], datetime, str]:
        """Return the plan as it was started, to print its card again, with its question, instant and batch.

        None in its place where it cannot be reckoned as it was, or must be stopped: then its card must not be made anew.
        """
        plan = self._plan
        kept = self._plans.kept(plan) if plan is not None else None
        if plan is None or kept is None:
            return None, {}, present(), ""
        started = plan.started.astimezone(present().tzinfo)
        found = correct.evaluate(kept.question, self._catalogue, started).plan
        over = self._view is None or self._view.state in _OVER
        same = found is not None and found.plan_id == plan.plan_id and not over
        return found if same else None, kept.question, started, kept.batch_id

    def _show(self, plan: bool) -> None:
        self.strip.setVisible(self._plan is not None)
        self.setVisible(plan)
        self.turn.setText(say(_SHOW_NEW) if plan else say(_SHOW_PLAN))
        self.refresh()
        self.turned.emit(plan)

    def _turn(self) -> None:
        self._show(self.isHidden())

    def _say(self) -> None:
        assert self._plan is not None
        stop = self._view is None or self._view.stop
        shown = not self.isHidden()
        words = (
            say("Plan {plan_id} cannot be read.", plan_id=self._plan.plan_id)
            if self._view is None
            else self._view.strip
        )
        # The page itself gives the verdict.
        self._said.setText(words.partition(". ")[0] + "." if shown else words)
        set_role(self._said, "stop" if stop and not shown else "")

    def _render(self) -> None:
        view = self._view
        allow(self.again, view is not None and view.last is not None, say("There is no reading to go on from yet."))
        over = view is None or view.state in _OVER
        self.recover.setVisible(view is not None and view.state == "stop")
        for button, main in ((self.test, not over), (self.end, over), (self.again, False)):
            set_role(button, "main" if main else "large")
        if view is None:
            self.answer.render(AnswerView("refused", messages=(Message(say(_UNREADABLE), "", "unreadable"),)))
            self.chart.clear_view(say("No ramp can be drawn of it."))
            return
        self.answer.render(view.answer)
        self.chart.render(view.chart)

    def _changed(self) -> None:
        before = None if self._plan is None else self._plan.plan_id
        self._plan = self._plans.of(self._system, self._parameter) if self._system else None
        after = None if self._plan is None else self._plan.plan_id
        if before != after:
            self._show(self._plan is not None)
        elif self.isVisible():
            self.refresh()

    # What can be done

    def _test(self) -> None:
        self.reading_wanted.emit(self._parameter)

    def _recover(self) -> None:
        self.recovery_wanted.emit(self._parameter)

    def _plan_again(self) -> None:
        """Put the last reading into the correction, as one step, and show what follows from it."""
        plan, view = self._plan, self._view
        kept = self._plans.kept(plan) if plan is not None else None
        if plan is None or kept is None or view is None or view.last is None:
            return
        local = view.last.at.astimezone(present().tzinfo)
        fields = following.reading_fields(kept, view.last.value, local)
        self._document.edit_fields(f"{plan.system_id}:{plan.parameter}", fields, self)
        self._show(False)
        self.told.emit(say("The reading stands in the form. The plan goes on until another is started."))

    def _end(self) -> None:
        """End the plan: no question is asked, since undo takes it back; only its card stays void."""
        plan, view = self._plan, self._view
        if plan is None:
            return
        now = present()
        reason = say("stop rule") if view is not None and view.stop else say("ended by hand")
        text = say(
            "Ended plan {plan_id} for {parameter}: {reason}.",
            plan_id=plan.plan_id,
            parameter=term(plan.parameter),
            reason=reason,
        )
        note = Entry(
            id=uuid.uuid4().hex, system_id=plan.system_id, kind="note", subject="", at=now, fields={"text": Typed(text)}
        )
        if self._document.log.end_plan(plan.plan_id, now, reason, note, self):
            self.told.emit(say("Plan {plan_id} has ended. Take its card down and stop the pump.", plan_id=plan.plan_id))
