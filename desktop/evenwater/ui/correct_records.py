"""Which record each field of the Correct sheet belongs to, and the edits that keep them right.

A jug is a record of its own; what is in it is the batch that was put in use last.
"""

from __future__ import annotations

import uuid
from collections.abc import Mapping
from typing import Any

from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.quantities import Typed
from evenwater.engine.units import KINDS
from evenwater.screens import correct, shelf
from evenwater.screens.local_zone import present
from evenwater.screens.names import shown_name
from evenwater.screens.when import instant_of
from evenwater.session import Document
from evenwater.ui.plans import Plans
from evenwater.wording import marked, say_all

_UNNAMED = {"stock": marked("Unnamed jug"), "pump": marked("Unnamed pump")}
_FIRST_NAMES = {"stock": marked("Jug"), "pump": marked("Pump")}
_RECORD_OF = {"system": "system", "change": "correction", "additive": "batch", "stock": "stock", "pump": "pump"}


class CorrectRecords:
    """The records behind the sheet: one system, one correction, the batch and the pump it uses."""

    def __init__(self, document: Document, catalogue: Catalogue, plans: Plans) -> None:
        """Start without a system, with the first parameter."""
        self._document, self._catalogue, self._plans = document, catalogue, plans
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
        if kind == "batch":
            return self._in_jug(self.id_of("stock"))
        chosen = self._document.value(self.correction, kind).text
        return chosen if chosen in self._document.records(kind) else ""

    def values(self, kind: str) -> Mapping[str, Typed]:
        """Return the fields of the record of a kind that is shown."""
        record = self.id_of(kind)
        return self._document.values(record) if record else {}

    def options(self, kind: str) -> tuple[tuple[str, str], ...]:
        """Return the ids and names of all jugs or pumps."""
        return tuple(
            (
                record,
                shown_name(
                    self._document.values(record),
                    say_all(_UNNAMED[kind]),
                ),
            )
            for record in self._document.records(kind)
        )

    def contents(self) -> str:
        """Return the choice of what is in the jug."""
        return shelf.contents_of(self.values("batch"))

    def mixed_on(self) -> str:
        """Return the date of mixing as written."""
        return self.values("batch").get("mixed_on", Typed("")).text

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
        parts = (self.values(kind) for kind in ("system", "correction", "batch", "pump"))
        raw = correct.raw_question(self.parameter, *parts)
        # The reading that is corrected from cannot have shown what was dosed after it.
        at = instant_of(self.values("correction").get("measured_at", Typed("")).text)
        found = self._plans.outstanding(self.system, self.parameter, at, present())
        raw["change"] |= found.fields(self.shown_parameter())
        return raw

    def by_path(self) -> dict[str, Typed]:
        """Return all values by the path of their field."""
        out = {"change.parameter": Typed(self.parameter)}
        for prefix, kind in (("system", "system"), ("change", "correction"), ("pump", "pump")):
            out.update({f"{prefix}.{name}": typed for name, typed in self.values(kind).items()})
        for name, typed in self.values("batch").items():
            out[f"additive.{_path_of(name)}"] = typed
        out["stock.name"] = self.values("stock").get("name", Typed(""))
        out["stock"], out["pump"] = Typed(self.id_of("stock")), Typed(self.id_of("pump"))
        out["additive.chemical"] = Typed(self.contents())
        return out

    def edit(self, path: str, typed: Typed, initiator: object) -> None:
        """Save one edit in the record that the path belongs to; makes a batch or pump on its first field."""
        if path in ("stock", "pump"):
            self._document.edit(self.correction, path, typed, initiator)
            return
        head, _, field = path.partition(".")
        kind = _RECORD_OF[head]
        record = self.id_of(kind) or self._new(kind)
        if path == "additive.chemical":
            self._document.edit_fields(record, shelf.contents_fields(typed.text), initiator)
            return
        self._document.edit(record, field.replace(".", "_"), typed, initiator, merge=True)

    def _new(self, kind: str) -> str:
        """Make the record of a kind on the first field that is typed into it."""
        if kind != "batch":
            return self.add(kind)
        stock = self.id_of("stock") or self.add("stock")
        return self._in_jug(stock) or self._first_batch(stock)

    def in_jug(self) -> bool:
        """Return whether what is shown is in the jug, and not a batch that is only being written."""
        stock = self.id_of("stock")
        return bool(stock) and self.id_of("batch") == self._document.batch_in_use(stock)

    def _in_jug(self, stock: str) -> str:
        """Return the batch in the jug; one that is only being written where the jug has held nothing else."""
        batches = self._document.batches(stock) if stock else ()
        return (self._document.batch_in_use(stock) or batches[-1]) if batches else ""

    def add(self, kind: str) -> str:
        """Add a jug or a pump and let the correction use it; returns its id."""
        taken = {name for _, name in self.options(kind)}
        first = say_all(_FIRST_NAMES[kind])
        name = next(f"{first} {n}" for n in range(1, len(taken) + 2) if f"{first} {n}" not in taken)
        record = self._document.add_record(kind, {"name": Typed(name)}, self)
        self._document.edit(self.correction, kind, Typed(record), self)
        return record

    def _first_batch(self, stock: str) -> str:
        """Put the first batch into a jug that has held nothing, so that no card can have been made for another."""
        fields = {"in_use_from": Typed(present().isoformat())}
        return self._document.add_record("batch", fields, self, f"{stock}:{uuid.uuid4().hex[:8]}")

    def remove(self, kind: str) -> None:
        """Take the shown jug or pump off the shelf; undo brings it back."""
        record = self.id_of(kind)
        if record:
            self._document.remove_record(record, self)


def _path_of(field: str) -> str:
    """Return the path of a batch's field below ``additive``: label_dose becomes label.dose."""
    head, _, tail = field.partition("_")
    return f"{head}.{tail}" if head in ("label", "also") and tail else field
