"""The records behind the Upkeep sheet: what is used, from which jug and by which pump, for every value of a system."""

from __future__ import annotations

from typing import Any

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct
from evenwater.session import Document


class UpkeepRecords:
    """Reads the corrections of one system as an upkeep: the same use, jug and pump keep a value and raise it."""

    def __init__(self, document: Document, catalogue: Catalogue) -> None:
        """Start without a system."""
        self._document, self._catalogue = document, catalogue
        self.system = ""

    def kept(self) -> tuple[str, ...]:
        """Return the parameters for which a use, a jug or a pump was chosen, in the order of the data file."""
        return tuple(name for name in self._catalogue.parameters if self._is_kept(name))

    def _is_kept(self, parameter: str) -> bool:
        values = self._document.values(f"{self.system}:{parameter}")
        return bool(values.get("daily_use", Typed("")).text.strip())

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
            items.append(item)
        table = correct.raw_question("", system, {}, {}, {})["system"]
        raw: dict[str, Any] = {"kind": "upkeep", "system": table, "item": items}
        exchanged = system.get("exchanged", Typed(""))
        if exchanged.text.strip():
            raw["exchange"] = {"per_day": exchanged}
        return raw

    def exchanged(self) -> Typed:
        """Return how much water is exchanged in a day, as typed."""
        return self._document.value(self.system, "exchanged") if self.system else Typed("")

    def edit_exchanged(self, typed: Typed, initiator: object) -> None:
        """Save how much water is exchanged in a day."""
        if self.system:
            self._document.edit(self.system, "exchanged", typed, initiator, merge=True)
