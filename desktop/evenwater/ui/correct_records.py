"""Which record each field of the Correct sheet belongs to, and the edits that keep them right."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.quantities import Typed
from evenwater.engine.units import KINDS
from evenwater.screens import correct
from evenwater.session import Document

_FIRST_NAMES = {"stock": "Batch", "pump": "Pump"}
_RECORD_OF = {"system": "system", "change": "correction", "additive": "stock", "stock": "stock", "pump": "pump"}


class CorrectRecords:
    """The records behind the sheet: one system, one correction, the batch and the pump it uses."""

    def __init__(self, document: Document, catalogue: Catalogue) -> None:
        """Start without a system, with the first parameter."""
        self._document, self._catalogue = document, catalogue
        self.system = ""
        self.parameter = next(iter(catalogue.parameters))

    @property
    def correction(self) -> str:
        """Id of the correction."""
        return f"{self.system}:{self.parameter}"

    def id_of(self, kind: str) -> str:
        """Return the id of the record of a kind that is shown, or an empty text."""
        if kind in ("system", "correction"):
            return self.system if kind == "system" else self.correction
        chosen = self._document.value(self.correction, kind).text
        return chosen if chosen in self._document.records(kind) else ""

    def values(self, kind: str) -> Mapping[str, Typed]:
        """Return the fields of the record of a kind that is shown."""
        record = self.id_of(kind)
        return self._document.values(record) if record else {}

    def options(self, kind: str) -> tuple[tuple[str, str], ...]:
        """Return the ids and names of all batches or pumps."""
        return tuple(
            (record, self._document.value(record, "name").text.strip() or f"Unnamed {_FIRST_NAMES[kind].lower()}")
            for record in self._document.records(kind)
        )

    def is_bottle(self) -> bool:
        """Return whether the batch is a bottle known only by its label."""
        return correct.is_bottle(self.values("stock"))

    def mixed_on(self) -> str:
        """Return the date of mixing as written."""
        return self.values("stock").get("mixed_on", Typed("")).text

    def shown_parameter(self) -> Parameter:
        """Return the parameter that is shown."""
        return self._catalogue.parameters[self.parameter]

    def reading_unit(self) -> str:
        """Return the unit that the reading is shown in."""
        parameter = self.shown_parameter()
        typed = self.values("correction").get("measured", Typed(""))
        unit = typed.shown or typed.unit or parameter.display_unit
        return unit if any(u.id == unit for u in KINDS[parameter.kind].units) else parameter.display_unit

    def raw(self) -> dict[str, Any]:
        """Return the question that the records make, as a question file has it."""
        parts = (self.values(kind) for kind in ("system", "correction", "stock", "pump"))
        return correct.raw_question(self.parameter, *parts)

    def by_path(self) -> dict[str, Typed]:
        """Return all values by the path of their field."""
        out = {"change.parameter": Typed(self.parameter)}
        for prefix, kind in (("system", "system"), ("change", "correction"), ("pump", "pump")):
            out.update({f"{prefix}.{name}": typed for name, typed in self.values(kind).items()})
        for name, typed in self.values("stock").items():
            head, _, tail = name.partition("_")
            path = f"additive.label.{tail}" if head == "label" else f"additive.{name}"
            out["stock.name" if name == "name" else path] = typed
        out["stock"], out["pump"] = Typed(self.id_of("stock")), Typed(self.id_of("pump"))
        if self.is_bottle():
            out["additive.chemical"] = Typed(correct.BOTTLE)
        return out

    def edit(self, path: str, typed: Typed, initiator: object) -> None:
        """Save one edit in the record that the path belongs to; makes a batch or pump on its first field."""
        if path in ("stock", "pump"):
            self._document.edit(self.correction, path, typed, initiator)
            return
        head, _, field = path.partition(".")
        kind = _RECORD_OF[head]
        if field.startswith("label."):
            field = field.replace(".", "_")
        record = self.id_of(kind) or self.add(kind)
        self._document.edit(record, field, typed, initiator, merge=True)

    def add(self, kind: str) -> str:
        """Add a batch or a pump and let the correction use it; returns its id."""
        taken = {name for _, name in self.options(kind)}
        first = _FIRST_NAMES[kind]
        name = next(f"{first} {n}" for n in range(1, len(taken) + 2) if f"{first} {n}" not in taken)
        record = self._document.add_record(kind, {"name": Typed(name)}, self)
        self._document.edit(self.correction, kind, Typed(record), self)
        return record

    def remove(self, kind: str) -> None:
        """Take the shown batch or pump off the shelf; undo brings it back."""
        record = self.id_of(kind)
        if record:
            self._document.remove_record(record, self)
