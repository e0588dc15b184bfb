"""The records behind the Exchange sheet: the water of a system, its flow, its readings and what doses and foods bring."""

from __future__ import annotations

from typing import Any

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import exchange_given, upkeep
from evenwater.screens.exchange_fields import EXCHANGED
from evenwater.screens.exchange_given import LOG, Given, Newest
from evenwater.screens.local_zone import present
from evenwater.screens.upkeep import Kept
from evenwater.session import Document
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.upkeep_records import UpkeepRecords


class ExchangeRecords:
    """Reads what is known of one system, and keeps what is typed on the sheet."""

    def __init__(self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans) -> None:
        """Start without a system."""
        self._document, self._catalogue, self._learning = document, catalogue, learning
        self._upkeep = UpkeepRecords(document, catalogue, learning, plans)
        self._readings: dict[str, Newest] = {}
        self._plan: tuple[dict[str, Any], Kept] | None = None

    @property
    def system(self) -> str:
        """Id of the system, or empty."""
        return self._upkeep.system

    @system.setter
    def system(self, system_id: str) -> None:
        self._upkeep.system = system_id
        self.read_log()

    def read_log(self) -> None:
        """Ask the log for the newest readings; it is asked when it has changed, not with every key."""
        newest = self._document.log.latest_by_subject(self.system, "reading") if self.system else {}
        self._readings = {
            name: Newest(entry.fields["value"], entry.at, LOG)
            for name, entry in newest.items()
            if "value" in entry.fields
        }

    def given(self) -> Given:
        """Return everything that is known of the system."""
        document, parameters = self._document, self._catalogue.parameters
        corrections = {name: document.values(f"{self.system}:{name}") for name in parameters}
        planned = self._planned()
        learned = {name: self._learning.known(self.system, name) for name in parameters}
        foods = (record for record in document.records("food") if record.partition(":")[0] == self.system)
        return Given(
            system=document.values(self.system),
            water=document.values(self._water),
            corrections=corrections,
            readings=self._readings,
            learned={name: found.use for name, found in learned.items() if found is not None and found.use is not None},
            batches={name: self._batch(values.get("stock", Typed("")).text) for name, values in corrections.items()},
            upkeep=None if planned is None else planned.answer,
            foods=tuple(document.values(record) for record in foods),
        )

    def _planned(self) -> Kept | None:
        """Return the plan of the Upkeep sheet; its doses are the same with any exchange, so it is reckoned when something else changed."""
        if not self._upkeep.kept():
            return None
        raw = {name: table for name, table in self._upkeep.raw().items() if name != "exchange"}
        if self._plan is None or self._plan[0] != raw:
            self._plan = raw, upkeep.evaluate(raw, self._catalogue, present())
        return self._plan[1]

    def unplanned(self, given: Given) -> bool:
        """Return whether values are kept on the Upkeep sheet and it has no plan for them."""
        return given.upkeep is None and bool(self._upkeep.kept())

    def raw(self, given: Given) -> dict[str, Any]:
        """Return the question that the records make, as a question file of the kind ``exchange`` has it."""
        return exchange_given.raw_question(given, self._catalogue)

    def values(self) -> dict[str, Typed]:
        """Return what stands in the fields of the sheet, by their names."""
        if not self.system:
            return {}
        return {**self._document.values(self._water), EXCHANGED: self._document.value(self.system, EXCHANGED)}

    def edit(self, name: str, typed: Typed, initiator: object) -> None:
        """Save one edit; the record of the water is made with its first field."""
        if self.system:
            record = self.system if name == EXCHANGED else self._water
            self._document.edit(record, name, typed, initiator, merge=True)

    @property
    def _water(self) -> str:
        return f"{self.system}:water"

    def _batch(self, stock: str) -> dict[str, Typed]:
        batch = self._document.batch_in_use(stock) if stock in self._document.records("stock") else ""
        return dict(self._document.values(batch)) if batch else {}
