"""Which record each field of the Stocks sheet belongs to: the jug, and the one of its batches that is shown."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import datetime

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import shelf, stock_sheet
from evenwater.screens.terms import term
from evenwater.session import Card, Document
from evenwater.ui.records_pane import JUGS, name_of
from evenwater.ui.void_cards import jug_of
from evenwater.wording import say, say_all

_COPIED = (
    "chemical", "dissolved", "made_up_to", "purity", "also_chemical", "also_dissolved", "also_purity", "saturated",
    "temperature", "label_parameter", "label_dose", "label_water", "label_raises", "mixed_by",
)  # fmt: skip


class StockRecords:
    """The records behind the sheet: one jug, one of its batches."""

    def __init__(self, document: Document, catalogue: Catalogue) -> None:
        """Start without a jug."""
        self._document, self._catalogue = document, catalogue
        self.stock = ""
        self._batch = ""

    @property
    def batch(self) -> str:
        """Id of the batch that is shown: the chosen one, else what is in the jug, else the newest."""
        if not self.stock:
            return ""
        batches = self._document.batches(self.stock)
        if self._batch in batches:
            return self._batch
        return self._document.batch_in_use(self.stock) or (batches[-1] if batches else "")

    def choose(self, batch_id: str) -> None:
        """Show another batch."""
        self._batch = batch_id

    def in_use(self) -> str:
        """Return the id of the batch that is in the jug, or an empty text."""
        return self._document.batch_in_use(self.stock) if self.stock else ""

    def values(self) -> Mapping[str, Typed]:
        """Return the fields of the batch that is shown."""
        return self._document.values(self.batch) if self.batch else {}

    def name(self) -> str:
        """Return the name of the jug."""
        return name_of(self._document, self.stock, say_all(JUGS))

    def partner(self) -> Mapping[str, Typed]:
        """Return the batch in the jug that this one is to match."""
        chosen = self.values().get("partner", Typed("")).text
        batch = self._document.batch_in_use(chosen) if chosen in self._document.records("stock") else ""
        return self._document.values(batch) if batch else {}

    def partners(self) -> tuple[tuple[str, str], ...]:
        """Return the ids and names of the other jugs."""
        return tuple(
            (stock, name_of(self._document, stock, say_all(JUGS)))
            for stock in self._document.records("stock")
            if stock != self.stock
        )

    def by_path(self) -> dict[str, Typed]:
        """Return all values by the path of their field."""
        batch = self.values()
        out = {f"batch.{name}": typed for name, typed in batch.items()}
        out["stock.name"] = self._document.value(self.stock, "name") if self.stock else Typed("")
        out["batch.contents"] = Typed(shelf.contents_of(batch))
        out["batch.recipe"] = Typed(stock_sheet.recipe_of(batch))
        return out

    def rows(self, now: datetime) -> tuple[shelf.BatchRow, ...]:
        """Return the batches of the jug as they stand in the list, the newest first."""
        in_use = self.in_use()
        return tuple(
            shelf.batch_row(batch, self._document.values(batch), batch == in_use, now, self._catalogue)
            for batch in reversed(self._document.batches(self.stock) if self.stock else ())
        )

    def edit(self, path: str, typed: Typed, initiator: object) -> None:
        """Save one edit; makes the first batch on its first field."""
        head, _, field = path.partition(".")
        if head == "stock":
            self._document.edit(self.stock, field, typed, initiator, merge=True)
            return
        batch = self.batch
        if not batch:
            # With the field in it: a batch that began empty would empty the field under the keeper's hand.
            self.add(shelf.contents_fields(typed.text) if field == "contents" else {field: typed})
        elif field == "contents":
            self._document.edit_fields(batch, shelf.contents_fields(typed.text), initiator)
        else:
            self._document.edit(batch, field, typed, initiator, merge=True)

    def take(self, masses: tuple[tuple[str, Typed], ...], initiator: object) -> None:
        """Enter what a recipe asks for as weighed."""
        fields = {**dict(masses), "recipe": Typed(shelf.WEIGHED)}
        self._document.edit_fields(self.batch, fields, initiator)

    def again(self, now: datetime) -> None:
        """Begin a new batch like the one that is shown, mixed today."""
        before = self.values()
        fields = {name: before[name] for name in _COPIED if name in before}
        self.add({**fields, "mixed_on": Typed(now.date().isoformat())})

    def add(self, fields: Mapping[str, Typed]) -> str:
        """Add a batch to the jug, show it, and return its id."""
        self._batch = self._document.add_batch(self.stock, fields, self)
        return self._batch

    def remove(self) -> None:
        """Take the batch that is shown off the list; undo brings it back."""
        if self.batch:
            self._document.remove_record(self.batch, self)

    def outdated(self) -> Iterator[tuple[Card, str]]:
        """Yield the cards in force for this jug that were made for another strength than the shown batch has (H12)."""
        for card in self._document.cards("in use"):
            if jug_of(self._document, card) == self.stock:
                held_by = say("The jug now") if self.batch == self.in_use() else say("This batch")
                why = shelf.card_outdated(card.body, card.parameter, self.values(), self._catalogue, held_by)
                if why:
                    yield card, why

    def used_for(self) -> tuple[str, ...]:
        """Return the corrections that take from this jug, in words."""
        return tuple(
            f"{self._document.value(correction.partition(':')[0], 'name').text.strip()}, "
            f"{term(self._document.value(correction, 'parameter').text)}"
            for correction in self._document.records("correction")
            if self._document.value(correction, "stock").text == self.stock
        )
