"""The cards that were issued, and which of them may still hang on a stand."""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Literal

from evenwater.store.batches import belongs
from evenwater.store.database import Database, Row
from evenwater.store.errors import of_row, refused
from evenwater.store.steps import instant_from, instant_text
from evenwater.store.tables import CardRow

State = Literal["in use", "void", "removed"]

# A void card hangs on a stand until somebody says it was taken down, and one ticked by mistake can
# be ticked back; but what was void or taken down is never in use again: it gets a new card.
_ALLOWED: dict[State, tuple[State, ...]] = {
    "in use": ("void", "removed"),
    "void": ("removed",),
    "removed": ("void",),
}


@dataclass(frozen=True)
class Card:
    """One issued card.

    ``issued`` and ``valid_until`` are instants with a zone and come back in UTC; ``body`` is the
    question as JSON text; ``batch_id`` is the batch it was reckoned for, empty on cards that were
    issued when a stock had no batches yet.
    """

    plan_id: str
    version: int
    system_id: str
    parameter: str
    issued: datetime
    valid_until: datetime
    body: str
    state: State = "in use"
    batch_id: str = ""


class Cards:
    """Reads and writes the table of cards; the caller holds the transaction."""

    def __init__(self, database: Database) -> None:
        self._database = database

    def all(self) -> list[Card]:
        """Return all cards in the order in which they were issued."""
        query = CardRow.select(*_COLUMNS).order_by(CardRow.issued_utc, CardRow.version, CardRow.plan_id)
        return [_card(row) for row in self._database.rows(query)]

    def add(self, card: Card) -> list[Card]:
        """Register ``card`` as in use, and declare the older ones for the same purpose void.

        Returns the cards that became void. Registering the very same card twice does nothing the
        second time, so a save that looked as if it had failed can be repeated.

        Raises
        ------
        StoreError
            ``"store.plan_id_taken"`` when the plan ID belongs to another card, or to this one after
            it went out of use.
        """
        wanted = replace(card, state="in use")
        before = self.all()
        for known in before:
            if known.plan_id == card.plan_id:
                if known != wanted:
                    raise refused("store.plan_id_taken", plan_id=card.plan_id, state=known.state)
                return []
        purpose = (card.system_id, card.parameter)
        older = self._void_where(before, lambda known: (known.system_id, known.parameter) == purpose)
        self._database.run(CardRow.insert(_row(wanted)))
        return older

    def void(self, plan_ids: Collection[str]) -> list[Card]:
        """Declare cards void and return those that were in use; the others are out of use as they are.

        Raises
        ------
        StoreError
            ``"store.card_unknown"`` when there is no such card; the caller rolls back.
        """
        cards = self.all()
        for unknown in sorted(set(plan_ids) - {card.plan_id for card in cards}):
            raise refused("store.card_unknown", plan_id=unknown)
        return self._void_where(cards, lambda known: known.plan_id in plan_ids)

    def void_known(self, plan_ids: Collection[str]) -> list[Card]:
        """Declare those of these cards void that are there and in use, and return them."""
        return self._void_where(self.all(), lambda known: known.plan_id in plan_ids) if plan_ids else []

    def void_of(self, stock_id: str, keep: Collection[str]) -> list[Card]:
        """Declare void what is in use for any batch of a stock, but for the plans to keep; return them."""
        return self._void_where(
            self.all(), lambda known: belongs(known.batch_id, stock_id) and known.plan_id not in keep
        )

    def set_state(self, plan_id: str, state: State) -> None:
        """Change the state of a card; the state it already has is no change.

        Raises
        ------
        StoreError
            ``"store.card_unknown"``, or ``"store.card_state"`` for a change that would bring a card
            back into use.
        """
        for known in self.all():
            if known.plan_id == plan_id:
                if state == known.state:
                    return
                if state not in _ALLOWED[known.state]:
                    raise refused("store.card_state", plan_id=plan_id, state=known.state, wanted=state)
                self._write_state(plan_id, state)
                return
        raise refused("store.card_unknown", plan_id=plan_id)

    def _void_where(self, cards: list[Card], meant: Callable[[Card], bool]) -> list[Card]:
        gone = [card for card in cards if card.state == "in use" and meant(card)]
        for card in gone:
            self._write_state(card.plan_id, "void")
        return [replace(card, state="void") for card in gone]

    def _write_state(self, plan_id: str, state: State) -> None:
        self._database.run(CardRow.update({"state": state}).where(CardRow.plan_id == plan_id))


_COLUMNS = (
    CardRow.plan_id,
    CardRow.version,
    CardRow.system_id,
    CardRow.parameter,
    CardRow.issued_utc,
    CardRow.valid_until_utc,
    CardRow.body,
    CardRow.state,
    CardRow.batch_id,
)


@of_row
def _card(row: Row) -> Card:
    plan_id, version, system_id, parameter, issued, valid_until, body, state, batch_id = row
    times = instant_from(issued), instant_from(valid_until)
    return Card(plan_id, version, system_id, parameter, *times, body, state, batch_id)


def _row(card: Card) -> dict[str, object]:
    return {
        "plan_id": card.plan_id,
        "version": card.version,
        "system_id": card.system_id,
        "parameter": card.parameter,
        "issued_utc": instant_text(card.issued),
        "valid_until_utc": instant_text(card.valid_until),
        "body": card.body,
        "state": card.state,
        "batch_id": card.batch_id,
    }
