"""The cards that were issued, and which of them may still hang on a stand."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from typing import Literal

from evenwater.store.database import Database, Row
from evenwater.store.errors import refused
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
    question as JSON text.
    """

    plan_id: str
    version: int
    system_id: str
    parameter: str
    issued: datetime
    valid_until: datetime
    body: str
    state: State = "in use"


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
        older = [c for c in before if c.state == "in use" and (c.system_id, c.parameter) == purpose]
        for known in older:
            self._write_state(known.plan_id, "void")
        self._database.run(CardRow.insert(_row(wanted)))
        return [replace(known, state="void") for known in older]

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
)


def _card(row: Row) -> Card:
    plan_id, version, system_id, parameter, issued, valid_until, body, state = row
    return Card(plan_id, version, system_id, parameter, instant_from(issued), instant_from(valid_until), body, state)


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
    }
