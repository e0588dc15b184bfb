"""The records behind the Upkeep sheet: what is used, from which jug and by which pump, for every value of a system."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, following, water_given
from evenwater.screens.local_zone import present
from evenwater.session import Document
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans


class UpkeepRecords:
    """Reads the corrections of one system as an upkeep: the same use, jug and pump keep a value and raise it."""

    def __init__(self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans) -> None:
        """Start without a system."""
        self._document, self._catalogue, self._learning, self._plans = document, catalogue, learning, plans
        self.system = ""

    def kept(self) -> tuple[str, ...]:
        """Return the parameters whose use is known, in the order of the data file.

        It was typed; or it was learned from the log, where a jug and a pump are chosen to keep the value.
        """
        return tuple(name for name in self._catalogue.parameters if self._is_kept(name))

    def _is_kept(self, parameter: str) -> bool:
        values = self._document.values(f"{self.system}:{parameter}")
        if values.get("daily_use", Typed("")).text.strip():
            return True
        chosen = all(values.get(kind, Typed("")).text in self._document.records(kind) for kind in ("stock", "pump"))
        return chosen and self._learned(parameter) is not None

    def typed(self, parameter: str) -> bool:
        """Return whether the keeper typed the use: then it is never replaced."""
        return bool(self._document.value(f"{self.system}:{parameter}", "daily_use").text.strip())

    def _learned(self, parameter: str) -> Typed | None:
        found = self._learning.known(self.system, parameter)
        return None if found is None else found.use

    def raw(self) -> dict[str, Any]:
        """Return the question that the records make, as a question file of the kind ``upkeep`` has it."""
        document, system = self._document, self._document.values(self.system)
        items = []
        for name in self.kept():
            correction = document.values(f"{self.system}:{name}")
            stock, pump = (correction.get(kind, Typed("")).text for kind in ("stock", "pump"))
            batch = document.batch_in_use(stock) if stock in document.records("stock") else ""
            question = correct.raw_question(
                name,
                system,
                correction,
                document.values(batch) if batch else {},
                document.values(pump) if pump in document.records("pump") else {},
            )
            item = {"parameter": name, "additive": question["additive"], "pump": question["pump"]}
            for field in ("measured", "daily_use"):
                if field in question["change"]:
                    item[field] = question["change"][field]
            if not self.typed(name):
                item["daily_use"] = self._learned(name)
            items.append(item)
        table = correct.raw_question("", system, {}, {}, {})["system"]
        raw: dict[str, Any] = {"kind": "upkeep", "system": table, "item": items}
        kept = [self._plans.kept(plan) for plan in self._plans.live() if plan.system_id == self.system]
        left = [following.planned(plan, present()) for plan in kept if plan is not None]
        if any(left):
            raw["planned"] = [table for table in left if table is not None]
        exchange = water_given.for_upkeep(system, self._water(), correct.volume_l(system), self._catalogue)
        if exchange:
            raw["exchange"] = exchange
        return raw

    def _water(self) -> Mapping[str, Typed]:
        return self._document.values(f"{self.system}:water")

    def exchanged(self) -> Typed:
        """Return how much water is exchanged in a day, as typed."""
        return self._document.value(self.system, "exchanged") if self.system else Typed("")

    def said_elsewhere(self) -> str:
        """Return what the Exchange sheet says of the flow where one figure is not all; the field here holds no longer then."""
        system = self._document.values(self.system)
        return water_given.said_elsewhere(system, self._water(), correct.volume_l(system)) if self.system else ""

    def edit_exchanged(self, typed: Typed, initiator: object) -> None:
        """Save how much water is exchanged in a day; nothing where the Exchange sheet says it."""
        if self.system and not self.said_elsewhere():
            self._document.edit(self.system, "exchanged", typed, initiator, merge=True)
