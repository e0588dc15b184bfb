"""Which record each field of the Pumps sheet belongs to: the pump, and the one of its calibrations that is shown."""

from __future__ import annotations

import uuid
from collections.abc import Iterator, Mapping
from datetime import datetime

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import pump_cards, pump_sheet, pump_view
from evenwater.screens.local_zone import present
from evenwater.screens.names import shown_name
from evenwater.screens.pump_use import Corrected, Use, uses
from evenwater.screens.when import instant_of
from evenwater.session import Card, Document
from evenwater.wording import say

# What stays from one calibration to the next.
_COPIED = ("method", "graduation", "readability", "doses", "timed", "who")


class PumpRecords:
    """The records behind the sheet: one pump, one of its calibrations."""

    def __init__(self, document: Document, catalogue: Catalogue) -> None:
        """Start without a pump."""
        self._document, self._catalogue = document, catalogue
        self.pump = ""
        self._chosen = ""
        self._cards: list[Card] | None = None
        # What was reckoned of each calibration, with what it was reckoned from: a key changes one of them only.
        self._known: dict[str, tuple[object, pump_sheet.Measured]] = {}

    def calibrations(self) -> tuple[str, ...]:
        """Return the ids of the pump's calibrations in the order in which they were written."""
        return self._document.owned("calibration", self.pump) if self.pump else ()

    @property
    def calibration(self) -> str:
        """Id of the calibration that is shown: the chosen one, else the newest."""
        found = self.calibrations()
        if self._chosen in found:
            return self._chosen
        return max(found, key=self._when, default="")

    def _when(self, record: str) -> float:
        at = instant_of(self._document.value(record, "at").text)
        return float("inf") if at is None else at.timestamp()

    def choose(self, record: str) -> None:
        """Show another calibration."""
        self._chosen = record

    def values(self) -> Mapping[str, Typed]:
        """Return the fields of the pump."""
        return self._document.values(self.pump) if self.pump else {}

    def calibrated(self) -> Mapping[str, Typed]:
        """Return the fields of the calibration that is shown."""
        return self._document.values(self.calibration) if self.calibration else {}

    def by_path(self) -> dict[str, Typed]:
        """Return all values by the path of their field."""
        out = {f"pump.{name}": typed for name, typed in self.values().items()}
        out |= {f"calibration.{name}": typed for name, typed in self.calibrated().items()}
        out["calibration.method"] = Typed(pump_sheet.method_of(self.calibrated()))
        return out

    def measured(self, dose_ml: float | None, now: datetime) -> tuple[pump_sheet.Measured, ...]:
        """Return all calibrations of the pump, read, the newest first; ``dose_ml`` is the dose in use [mL]."""
        pump = dict(self.values())
        known: dict[str, tuple[object, pump_sheet.Measured]] = {}
        for record in self.calibrations():
            values = dict(self._document.values(record))
            asked = (pump, values, dose_ml)
            before = self._known.get(record)
            found = before[1] if before is not None and before[0] == asked else None
            known[record] = (asked, found or pump_sheet.measured(record, pump, values, dose_ml, now))
        self._known = known
        return pump_sheet.in_order(found for _, found in known.values())

    def uses(self, now: datetime) -> tuple[Use, ...]:
        """Return the doses that corrections make the pump give."""
        return uses(self._corrected(), self._catalogue, now)

    def _corrected(self) -> Iterator[Corrected]:
        document = self._document
        for record in document.records("correction"):
            values = document.values(record)
            if values.get("pump", Typed("")).text != self.pump:
                continue
            system, _, parameter = record.partition(":")
            stock = values.get("stock", Typed("")).text
            batch = document.batch_in_use(stock) if stock in document.records("stock") else ""
            name = shown_name(document.values(system), say("Unnamed system"))
            held = document.values(batch) if batch else {}
            yield Corrected(name, parameter, document.values(system), values, held, self.values())

    # Editing

    def edit(self, path: str, typed: Typed, initiator: object) -> None:
        """Save one edit; makes the first calibration on its first field."""
        head, _, field = path.partition(".")
        record = self.pump if head == "pump" else self.calibration
        if record:
            self._document.edit(record, field, typed, initiator, merge=True)
        else:
            # Made with the field in it: else the sheet would show the new record, still empty, over what is being typed.
            self.add({field: typed}, present())

    def again(self, now: datetime) -> None:
        """Begin a new calibration with what the one that is shown was measured with."""
        before = self.calibrated()
        self.add({name: before[name] for name in _COPIED if name in before}, now)

    def add(self, fields: Mapping[str, Typed], now: datetime) -> None:
        """Add a calibration to the pump and show it."""
        at = now.replace(second=0, microsecond=0)
        record = f"{self.pump}:{uuid.uuid4().hex[:8]}"
        self._chosen = record
        self._document.add_record("calibration", {"at": Typed(at.isoformat()), **fields}, self, record)

    def remove(self) -> None:
        """Take the calibration that is shown off the list; undo brings it back."""
        if self.calibration:
            self._document.remove_record(self.calibration, self)

    def use_flow(self, flow: str, calibrated: bool, initiator: object) -> None:
        """Enter a flow [mL per min] as the pump's, as one step; the calibration it comes from is marked."""
        records: dict[str, Mapping[str, Typed]] = {}
        if calibrated:
            records[self.calibration] = {"flow_used": Typed("yes")}
        records[self.pump] = {"flow": pump_view.typed_flow(flow)}
        self._document.commit_point()
        self._document.edit_records(records, initiator)

    def forget_cards(self) -> None:
        """Ask the disk for the cards anew when they are wanted next."""
        self._cards = None

    def outdated(self, flow: float) -> Iterator[tuple[Card, str]]:
        """Yield the cards in force of this pump that were made for another flow than this one [mL/min]."""
        if self._cards is None:
            self._cards = self._document.cards("in use")
        for card in self._cards:
            if self._document.value(f"{card.system_id}:{card.parameter}", "pump").text == self.pump:
                why = pump_cards.other_flow(card.body, flow)
                if why:
                    yield card, why
