"""Says which cards on the stand must not be followed any more, until the keeper has taken them down."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.screens import shelf
from evenwater.session import Card, Change, Document
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import say


def jug_of(document: Document, card: Card) -> str:
    """Return the jug a card takes from; of one from before there were batches, the jug its correction takes from now."""
    return card.batch_id.partition(":")[0] or document.value(f"{card.system_id}:{card.parameter}", "stock").text


def of_pump(document: Document, card: Card) -> str:
    """Return why a card must not be followed with what its pump gives now; empty when it may."""
    from evenwater.screens import pump_cards, pump_view  # there are seldom cards when the window opens

    pump = document.value(f"{card.system_id}:{card.parameter}", "pump").text
    flow = pump_view.flow_in_use(document.values(pump)) if pump in document.records("pump") else None
    why = "" if flow is None else pump_cards.other_flow(card.body, flow)
    return why and say("{why} Its pump now gives another flow.", why=why)


class VoidCards(QWidget):
    """A strip with the oldest such card of the system that is shown, and a button to tick it off.

    A card is void once another was issued, or the jug got a batch of another strength; one whose batch was corrected
    to another strength is out of date for as long as that stands (H12).
    """

    def __init__(self, document: Document, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Watch the cards and the batches of ``document``."""
        super().__init__(parent)
        self._document, self._catalogue = document, catalogue
        self._system = ""
        self._plan_id = ""
        self.words = QLabel(self)
        self.words.setTextFormat(Qt.TextFormat.PlainText)
        self.words.setWordWrap(True)
        set_role(self.words, "stop")
        self.done = QPushButton(self)
        self.done.setAutoDefault(False)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(GRID)
        layout.addWidget(self.words, 1)
        layout.addWidget(self.done, 0, Qt.AlignmentFlag.AlignTop)
        self.done.clicked.connect(self._taken_down)
        document.cardsChanged.connect(self._refresh)
        document.changed.connect(self._changed)
        document.recordsChanged.connect(self._refresh)
        self.hide()

    def show_system(self, system_id: str) -> None:
        """Show such cards of another system."""
        self._system = system_id
        self._refresh()

    def _changed(self, change: Change) -> None:
        # Only what is in a jug and what a pump gives decides; typing elsewhere need not ask the disk.
        if self._document.kind(change.record_id) in ("batch", "pump"):
            self._refresh()

    def _refresh(self, *_: object) -> None:
        cards = [c for c in self._document.cards() if c.system_id == self._system]
        void = [
            (c, say("▲ Card {plan_id} is void. {why}", plan_id=c.plan_id, why=self._outdated(c)))
            for c in cards
            if c.state == "void"
        ]
        live = [c for c in cards if c.state == "in use"]
        void += [
            (c, say("▲ Card {plan_id} must not be followed. {why}", plan_id=c.plan_id, why=why))
            for c in live
            if (why := self._outdated(c))
        ]
        self.setVisible(bool(void))
        if void:
            card, said = void[0]
            self._plan_id = card.plan_id
            more = say(" And {void} more.", void=len(void) - 1) if len(void) > 1 else ""
            said = said.strip()
            self.words.setText(f"{said}{'' if said.endswith('.') else '.'}{more}")
            self.done.setText(say("It is taken &down"))
            self.done.setAccessibleName(say("Card {plan_id} is taken down", plan_id=self._plan_id))

    def _outdated(self, card: Card) -> str:
        return self._of_jug(card) or of_pump(self._document, card)

    def _of_jug(self, card: Card) -> str:
        stock = jug_of(self._document, card)
        if not stock:
            return ""
        batch = self._document.batch_in_use(stock)
        if not batch:
            return say("Its jug is empty or gone.")
        return shelf.card_outdated(card.body, card.parameter, self._document.values(batch), self._catalogue)

    def _taken_down(self) -> None:
        self._document.set_card_state(self._plan_id, "removed")
        self._refresh()
