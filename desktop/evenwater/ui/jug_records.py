"""The records behind the Jugs sheet: jugs with their batches, levels, pumps and takers, and what is noted of them."""

from __future__ import annotations

import uuid
from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import datetime

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import jug_levels, pump_cards, pump_view, rounds
from evenwater.screens.jug_delivery import FlowOffer
from evenwater.screens.jug_room import Drawer, Jug, head_hours
from evenwater.session import Card, Document
from evenwater.ui.records_pane import SYSTEMS, name_of
from evenwater.ui.round_watch import RoundWatch
from evenwater.wording import say_all

_ABSENCE = "absence"


class JugRecords:
    """Reads the jugs of a room as ``watch`` has looked at it, and saves what the keeper does to them."""

    def __init__(self, document: Document, catalogue: Catalogue, watch: RoundWatch) -> None:
        """Read nothing yet."""
        self._document, self._catalogue, self._watch = document, catalogue, watch

    # Reading

    def jugs(self) -> tuple[Jug, ...]:
        """Return all jugs as far as the list and an absence need them: without what was tested and logged."""
        used: dict[str, dict[str, list[str]]] = {}
        for record in self._document.records("correction"):
            system, _, parameter = record.partition(":")
            stock = self._document.value(record, "stock").text
            if stock:
                used.setdefault(stock, {}).setdefault(system, []).append(parameter)
        return tuple(self._jug(contents, used.get(contents.stock_id, {})) for contents in self._watch.room().jugs)

    def whole(self, jug: Jug) -> Jug:
        """Return a jug with what was tested in its systems, and with what was logged of it since the first of its levels."""
        since = min((level.at for level in jug.levels), default=None)
        drawers = None if jug.drawers is None else tuple(self._whole(each, jug.stock_id, since) for each in jug.drawers)
        return replace(jug, drawers=drawers, head_hours=self._head_hours(jug))

    def _jug(self, contents: rounds.Contents, used: Mapping[str, list[str]]) -> Jug:
        document, stock = self._document, contents.stock_id
        batch, takes = document.batch_in_use(stock), self._watch.takes(stock)
        return Jug(
            contents,
            document.values(stock),
            batch,
            document.values(batch) if batch else {},
            self._watch.levels(stock),
            None if takes is None else tuple(self._drawers(used, dict(takes))),
        )

    def _drawers(self, used: Mapping[str, list[str]], takes: Mapping[str, float]) -> Iterator[Drawer]:
        """Yield the systems a jug is used for, whether or not something is known to be taken."""
        document = self._document
        for system in document.records("system") if used or takes else ():
            if system in used or system in takes:
                # In the order of the data file, as everywhere.
                names = tuple(name for name in self._catalogue.parameters if name in used.get(system, ()))
                chosen = dict.fromkeys(document.value(f"{system}:{name}", "pump").text for name in names)
                pumps = {pump: document.values(pump) for pump in chosen if document.kind(pump) == "pump"}
                name = name_of(document, system, say_all(SYSTEMS))
                yield Drawer(system, name, document.values(system), takes.get(system, 0.0), names, pumps)

    def _head_hours(self, jug: Jug) -> float | None:
        """Return the running hours of the head of the one pump that draws from a jug."""
        if len(jug.pumps) != 1:
            return None
        ((pump_id, pump),) = jug.pumps.items()
        document = self._document
        return head_hours(pump, map(document.values, document.owned("calibration", pump_id)))

    def _whole(self, drawer: Drawer, stock: str, since: datetime | None) -> Drawer:
        log = self._document.log
        newest = log.latest_by_subject(drawer.system_id, "reading")
        logged: tuple[tuple[float, float], ...] = ()
        if since is not None:
            at, ml = log.columns(drawer.system_id, stock, "dose", since)
            logged = tuple(zip((float(each) for each in at), (float(each) for each in ml), strict=True))
        tested = {name: entry.value for name, entry in newest.items() if entry.value is not None}
        return replace(drawer, tested=tested, logged=logged)

    # Levels

    def note(self, jug: Jug, fields: Mapping[str, Typed], primed: bool, initiator: object) -> str:
        """Note a level or a refill and return its id; what is taken in a day by now is kept with it."""
        kept = dict(fields)
        if primed:
            kept["primed"] = Typed(jug_levels.YES)
        if jug.drawers is not None:
            kept["per_day"] = jug_levels.rate_field(jug.per_day_ml)
        return self._document.add_record("level", kept, initiator, f"{jug.stock_id}:{uuid.uuid4().hex[:8]}")

    def primed(self, level_id: str, initiator: object) -> None:
        """Note that the line was primed after a refill."""
        self._document.edit(level_id, "primed", Typed(jug_levels.YES), initiator)

    def remove_level(self, level_id: str, initiator: object) -> None:
        """Take a level off the list; undo brings it back."""
        self._document.remove_record(level_id, initiator)

    # The jug and its pump

    def holds_ml(self, stock: str) -> float | None:
        """Return the full volume of a jug [mL] as it was typed, None when it was not."""
        return jug_levels.typed_holds_ml(self._document.values(stock))

    def edit(self, stock: str, field: str, typed: Typed, initiator: object) -> None:
        """Save a field of a jug."""
        self._document.edit(stock, field, typed, initiator, merge=True)

    def use_flow(self, offer: FlowOffer, initiator: object) -> tuple[str, ...]:
        """Set the flow of a pump, as one step, and return the plan ids of the cards that were made for another."""
        self._document.edit(offer.pump_id, "flow", offer.typed, initiator)
        return tuple(card.plan_id for card in self._document.cards("in use") if self._outdated(card, offer.pump_id))

    def _outdated(self, card: Card, pump: str) -> bool:
        """Return whether a card sets a pump by another flow than it has now."""
        flow = pump_view.flow_in_use(self._document.values(pump))
        used = self._document.value(f"{card.system_id}:{card.parameter}", "pump").text == pump
        return used and flow is not None and bool(pump_cards.other_flow(card.body, flow))

    # Going away

    def until(self) -> Typed:
        """Return when the keeper is back, as typed."""
        kept = self._document.records(_ABSENCE)
        return self._document.value(kept[0], "until") if kept else Typed("")

    def edit_until(self, typed: Typed, initiator: object) -> None:
        """Save when the keeper is back."""
        kept = self._document.records(_ABSENCE)
        if kept:
            self._document.edit(kept[0], "until", typed, initiator, merge=True)
        elif typed.text:
            self._document.add_record(_ABSENCE, {"until": typed}, initiator)
