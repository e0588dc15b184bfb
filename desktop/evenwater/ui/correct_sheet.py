"""The Correct sheet: form at the left, answer and ramp at the right, kept in step with the document."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.quantities import Typed
from evenwater.screens import correct
from evenwater.screens.local_zone import LocalZone, present
from evenwater.screens.shown import unit_words, with_unit
from evenwater.screens.views import AnswerView, Message, Offer
from evenwater.session import Change, Document, RecordsChange
from evenwater.ui.answer_panel import AnswerPanel
from evenwater.ui.chart import RampChart
from evenwater.ui.correct_form import CorrectForm
from evenwater.ui.correct_records import CorrectRecords
from evenwater.ui.follow_page import FollowPage
from evenwater.ui.form_column import Column, FormColumn
from evenwater.ui.form_parts import FormEdit
from evenwater.ui.learning import Learning
from evenwater.ui.plain_text import allow
from evenwater.ui.plan_buttons import PlanButtons
from evenwater.ui.plans import Plans
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.shared_pump import shared
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.ui.together import QUIET_MS
from evenwater.ui.together_panel import TogetherPanel
from evenwater.ui.too_high import TooHigh
from evenwater.ui.void_cards import VoidCards
from evenwater.wording import marked, say

CHART_HEIGHT = 288
# The plan starts now: once a minute it is reckoned again, so that its dates stay true.
_REFRESH_MS = 60_000
NOT_IN_JUG = marked("This batch is not in the jug yet. Put it in on the Stocks sheet before a card is made.")
NOTHING_YET = marked("The ramp appears here as soon as the question is complete.")


class CorrectSheet(QWidget):
    """Shows one system's correction of one parameter.

    ``system_wanted`` carries the id of a system that undo or redo has changed, ``reading_wanted`` a parameter to test,
    ``recovery_wanted`` one that is too high.
    """

    system_wanted = Signal(str)
    reading_wanted = Signal(str)
    recovery_wanted = Signal(str)

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QWidget | None = None
    ) -> None:
        """Make the sheet, still without a system."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue, self._learning = document, catalogue, learning
        self.records = CorrectRecords(document, catalogue, plans)
        self._plan: correct.Plan | None = None
        self._surroundings: object = None
        self._saving = self._outdated = False
        self._messages: Mapping[str, Message] = {}
        self._scroll, self._side = FormColumn(None, self), Column(None, self)
        # Every part is made where it stands, since one that is moved is dressed all over again.
        self.form = CorrectForm(catalogue, self._scroll.viewport())
        self._page = side = QWidget(self._side.viewport())
        self.answer = AnswerPanel(side)
        self.too_high = TooHigh(self.answer)
        self.answer.add_action(self.too_high)
        self.chart = RampChart(side, zone=LocalZone())
        self.header = SheetHeader(document, self)
        self.void = VoidCards(document, catalogue, side)
        self.followed = FollowPage(document, catalogue, plans, side)
        self.plans_together = TogetherPanel(document, catalogue, learning, plans, side, brief=True)
        self.buttons = PlanButtons(document, catalogue, self.followed, self.plans_together.together, side)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        # What another sheet changes is reckoned when nobody types: a key there must not wait for what nobody sees.
        self._unseen = QTimer(self)
        self._unseen.setSingleShot(True)
        self._unseen.setInterval(QUIET_MS)
        self._minute = QTimer(self)
        self._minute.setInterval(_REFRESH_MS)
        self._lay_out()
        self._connect()
        self._minute.start()

    def _lay_out(self) -> None:
        self._scroll.setWidget(self.form)
        self.chart.setMinimumHeight(pixels(self.font(), CHART_HEIGHT))
        set_role(self._page, "page")
        self._right = right = QVBoxLayout(self._page)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(GRID)
        for part in (self.void, self.followed.strip, self.plans_together.stops, self.answer, self.buttons):
            right.addWidget(part)
        right.addWidget(self.chart, 1)
        right.addWidget(self.followed, 1)
        right.addWidget(self.plans_together)
        self._side.setWidget(self._page)
        middle = QHBoxLayout()
        middle.setSpacing(2 * GRID)
        middle.addWidget(self._scroll)
        middle.addWidget(self._side, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addLayout(middle, 1)

    def _connect(self) -> None:
        self.form.edited.connect(self._edited)
        self.form.committed.connect(self._document.commit_point)
        self.form.new_stock.clicked.connect(self._new_stock)
        self.form.new_pump.clicked.connect(self._new_pump)
        self.form.remove_stock.clicked.connect(self._remove_stock)
        self.form.remove_pump.clicked.connect(self._remove_pump)
        self.answer.offerChosen.connect(self._take_offer)
        self.chart.paceDragged.connect(self._drag_pace)
        self.chart.paceCommitted.connect(self._commit_pace)
        for part in (self.buttons, self.followed, self.plans_together):
            part.told.connect(self.header.tell)
        self.followed.turned.connect(self._turned)
        self.followed.reading_wanted.connect(self.reading_wanted)
        for source in (self.too_high, self.followed):
            source.recovery_wanted.connect(self.recovery_wanted)
        self.header.travelled.connect(self._travelled)
        self._soon.timeout.connect(self.recompute)
        self._unseen.timeout.connect(self._fill)
        for slot in (self.recompute, self.followed.refresh):
            self._minute.timeout.connect(slot)
        self._learning.learned.connect(self._offer_use)
        self._document.changed.connect(self._changed)
        self._document.recordsChanged.connect(self._records_changed)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the form three columns where there is room for them beside the answer, else two."""
        super().resizeEvent(event)
        self._scroll.share(self.width())

    # Showing

    def show_system(self, system_id: str) -> None:
        """Show another system, with the parameter that is shown now."""
        self.records.system = system_id
        # Undo stays at hand: it brings a removed system back.
        for part in (self._scroll, self._side):
            part.setEnabled(bool(system_id))
        self.header.show_system(system_id)
        self.void.show_system(system_id)
        self.plans_together.show_system(system_id)
        self._show_parameter(self.records.parameter)

    def show_parameter(self, name: str) -> None:
        """Show the correction of a parameter."""
        if name in self._catalogue.parameters:
            self._show_parameter(name)

    def refresh(self) -> None:
        """Show what other sheets have changed."""
        if self.records.system:
            self._fill()
            self.followed.refresh()

    def _turned(self, followed: bool) -> None:
        """Show the plan that is followed in place of the new correction, or the other way round."""
        for part in (self.answer, self.chart):
            part.setVisible(not followed)
        self.buttons.set_followed(followed)
        if followed:
            self.followed.hold(self.buttons)
        else:
            self._right.insertWidget(self._right.indexOf(self.answer) + 1, self.buttons)
        self._question_changed()

    def _show_parameter(self, name: str) -> None:
        self.records.parameter = name
        # The ramp and the card of another question have nothing to do with this one.
        self.chart.clear_view(say(NOTHING_YET))
        self.buttons.forget()
        self.form.set_parameter(self._catalogue.parameters[name])
        self._fill()
        self.followed.show_question(self.records.system, name)

    def _fill(self) -> None:
        """Show what the records hold, without touching what is already there."""
        self._unseen.stop()
        records = self.records
        self.form.fields["stock"].set_options(records.options("stock"))  # type: ignore[attr-defined]
        self.form.fields["pump"].set_options(records.options("pump"))  # type: ignore[attr-defined]
        self.form.set_values(records.by_path(), records.contents())
        allow(self.form.remove_stock, bool(records.id_of("stock")), say("No jug is chosen."))
        allow(self.form.remove_pump, bool(records.id_of("pump")), say("No pump is chosen."))
        self._question_changed()

    def _question_changed(self) -> None:
        """Let no card be made of what is shown until the new question is reckoned, at once (H34)."""
        self.buttons.suspend()
        self._soon.start()

    def focus_first(self) -> None:
        """Put the cursor where the work begins."""
        first = "change.measured" if self.records.system else "change.parameter"
        self.form.fields[first].setFocus()

    def waiting(self) -> bool:
        """Return whether what is shown still belongs to an earlier question."""
        return self._soon.isActive() or self._unseen.isActive()

    def settle(self) -> None:
        """End what is being typed and close the card's window."""
        self._document.commit_point()
        self.buttons.settle()
        self.plans_together.settle()

    # Reckoning

    def recompute(self) -> None:
        """Reckon the question that stands in the form and show everything that follows from it."""
        self._soon.stop()
        if not self.records.system:
            self.chart.clear_view(say("Add a system to begin."))
            self.answer.render(AnswerView("empty"))
            return
        now = present()
        raw = self.records.raw()
        found = correct.evaluate(raw, self._catalogue, now)
        self._plan = found.plan
        view = found.view
        if found.plan is not None and not self.records.in_jug():
            # A card must not be made for what is not in the jug (H12).
            self._plan = None
            view = replace(view, remarks=(say(NOT_IN_JUG), *view.remarks))
        twice = shared(self._document, self.records.id_of("pump"))
        if twice:
            view = replace(view, remarks=(twice, *view.remarks))
        # The cautions stand in the form, between the chemical and its numbers.
        self.answer.render(replace(view, cautions=()))
        self._show_messages(found.view.messages)
        self.too_high.judge(found.view.messages, self.records)
        # Settle the heights now: else every level of the layout asks for a pass, and the ramp is drawn for each.
        self._right.activate()
        if found.chart is not None:
            self.chart.render(found.chart)
        elif not found.unread:
            self.chart.clear_view(say("No plan, so no ramp."))
        elif self.chart.view is None:
            self.chart.clear_view(say(NOTHING_YET))
        else:
            # In the middle of a number the last ramp stays, greyed, and says that it is not of this question.
            self.chart.set_stale(True)
        self.buttons.offer(self._plan, self.records.system, raw, now, self.records.id_of("batch"))
        self.plans_together.together.stand(self.records.system, self._plan if self.followed.isHidden() else None)
        parameter, system = self.records.shown_parameter(), self.records.values("system")
        self._show_surroundings(parameter, system)

    def _show_surroundings(self, parameter: Parameter, system: Mapping[str, Typed]) -> None:
        """Show what goes with the system, the parameter and the batch; typing elsewhere leaves it alone."""
        stock, unit = self.records.values("batch"), self.records.reading_unit()
        surroundings = (parameter.name, dict(system), dict(stock), unit)
        if surroundings == self._surroundings:
            return
        self._surroundings = surroundings
        self.form.set_hints(correct.hints(parameter, system, unit))
        self.form.set_assumed(correct.assumed(parameter, system))
        self._offer_use()
        self.form.set_water(correct.water(system))
        self.header.show_volume(correct.volume_words(system))
        if not system.get("net_volume", Typed("")).text:
            # The volume is said once and then stands in the head; until then its field is in sight.
            self.form.steps[0].open(True)
            self._scroll.settle()
        self.form.set_cautions(correct.cautions(stock, self._catalogue))
        for part in (self.header, self.form):
            layout = part.layout()
            if layout is not None:
                # Cautions and volume are then never painted in the room of other words.
                layout.activate()
        self._scroll.widen()

    def _offer_use(self) -> None:
        """Offer the use that the log shows, below its field; what the keeper typed is never replaced."""
        system, parameter = self.records.system, self.records.parameter
        field = self.form.fields["change.daily_use"]
        assert isinstance(field, QuantityField)
        if not system or not self._document.log.latest(system, "reading", parameter):
            field.set_suggestion(None)
            return
        found = self._learning.ask(system, parameter)
        if found is not None and found.use is not None:
            offer = Offer(
                say("Use {use}", use=with_unit(found.use.text, unit_words(found.use.unit))),
                found.use.text,
                found.use.unit,
            )
            field.set_suggestion(Message(found.offer, "change.daily_use", "learned_use", (offer,)))
        else:
            field.set_suggestion(None)

    def _show_messages(self, messages: tuple[Message, ...]) -> None:
        self.form.set_missing(frozenset(m.path for m in messages if m.code == "missing"))
        # What is merely still empty needs no red mark beside it; the answer's place says it.
        by_path: Mapping[str, Message] = {m.path: m for m in reversed(messages) if m.code != "missing"}
        if by_path != self._messages:
            self._messages = by_path
            self.form.set_messages(by_path)

    # Editing

    def _edited(self, edit: FormEdit) -> None:
        if edit.path == "change.parameter":
            self._show_parameter(edit.typed.text)
            return
        self.followed.show_new()
        self._saving, self._outdated = True, edit.path in ("stock", "pump", "additive.chemical")
        self.records.edit(edit.path, edit.typed, self.form)
        self._saving = False
        if self._outdated:
            self._fill()
        # At once: it takes milliseconds, and key and answer are then painted in one pass.
        self.recompute()

    def _changed(self, change: Change) -> None:
        if change.initiator is not self.form:
            self._fill_soon()

    def _fill_soon(self) -> None:
        """Show what has changed elsewhere: at once where it is seen, and no card is made of the old question meanwhile."""
        if self._saving:
            # The first key in an empty jug or pump makes the record; shown before the key is in it, it would take the key away (H5).
            self._outdated = True
        elif self.isVisible():
            self._fill()
        else:
            self.buttons.suspend()
            self._unseen.start()

    def _travelled(self, record_id: str) -> None:
        """Open what undo or redo has changed, so that nothing changes unseen."""
        system, _, parameter = record_id.partition(":")
        if system not in self._document.records("system"):
            return
        if system != self.records.system:
            self.system_wanted.emit(system)
        if parameter and parameter != self.records.parameter:
            self._show_parameter(parameter)

    def _records_changed(self, change: RecordsChange) -> None:
        if change.kinds & {"stock", "batch", "pump", "correction"}:
            self._fill_soon()

    def _new_stock(self) -> None:
        self.records.add("stock")
        self._fill()
        self.form.steps[2].open(True)
        self.form.fields["stock.name"].setFocus()

    def _new_pump(self) -> None:
        self.records.add("pump")
        self._fill()
        self.form.steps[3].open(True)
        self.form.fields["pump.name"].setFocus()

    def _remove_stock(self) -> None:
        self.records.remove("stock")
        self._fill()

    def _remove_pump(self) -> None:
        self.records.remove("pump")
        self._fill()

    def _take_offer(self, chosen: tuple[str, Offer]) -> None:
        path, offer = chosen
        self.records.edit(path, Typed(offer.text, offer.unit), self)
        self._document.commit_point()

    def _drag_pace(self, ends_at: float) -> None:
        if self._plan is not None:
            self.records.edit("change.fastest_rise", self._plan.slower(ends_at), self)

    def _commit_pace(self, _ends_at: float) -> None:
        # The last step of the hand has been entered; entering it again from the newer plan would round anew.
        self._document.commit_point()
