"""What is done to a document, as edits of its records; pure functions on what is in memory."""

from __future__ import annotations

import uuid
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from evenwater.engine.quantities import Typed
from evenwater.session.mirror import Difference, Mirror
from evenwater.store import BATCH, IN_USE_FROM, NOTHING, AddRecord, Edit, RemoveRecord, SetField, in_use

# Records of which a system has one each: what is exchanged, with its new water, and a recovery.
OF_A_SYSTEM = ("water", "recovery")


@dataclass(frozen=True)
class NewRecord:
    """A record to be made: its kind, its fields, and its id when that is not to be invented."""

    kind: str
    fields: Mapping[str, Typed]
    record_id: str = ""


def making(new: NewRecord) -> tuple[Edit, ...]:
    """Return the edits that make a record; fields without anything in them are left out."""
    record_id = new.record_id or uuid.uuid4().hex
    filled = {field: typed for field, typed in new.fields.items() if typed != NOTHING}
    return (AddRecord(record_id, new.kind), *(SetField(record_id, f, typed) for f, typed in filled.items()))


def new_batch(stock_id: str, fields: Mapping[str, Typed]) -> NewRecord:
    """Return a batch of a stock that is only being written: it is not in the jug, whatever ``fields`` say."""
    written = {field: typed for field, typed in fields.items() if field != IN_USE_FROM}
    return NewRecord(BATCH, written, f"{stock_id}:{uuid.uuid4().hex[:8]}")


def birth(mirror: Mirror, record_id: str) -> tuple[Edit, ...]:
    """Return the edits that make a record of a system which is edited before it exists; nothing for any other id.

    What stands behind the colon is the name of one of ``OF_A_SYSTEM``, of which a system has one each, or the parameter of a correction.
    """
    system_id, colon, name = record_id.partition(":")
    if not colon or mirror.kind(record_id) or mirror.kind(system_id) != "system":
        return ()
    if name in OF_A_SYSTEM:
        return making(NewRecord(name, {}, record_id))
    return making(NewRecord("correction", {"parameter": Typed(name)}, record_id))


def removal(mirror: Mirror, record_id: str) -> tuple[Edit, ...]:
    """Return the edits that take a record out with what belongs to it: corrections of a system, batches of a stock.

    The record itself comes first: it gives the undo its name.
    """
    gone = [r for r in mirror.all_ids() if r == record_id or r.startswith(f"{record_id}:")]
    gone.sort(key=lambda r: r != record_id)
    return tuple(RemoveRecord(r, mirror.kind(r)) for r in gone)


def touched(mirror: Mirror, edits: Iterable[Edit]) -> Difference:
    """Return the kinds whose lists the edits change, and by record the fields of those that are there."""
    kinds: set[str] = set()
    fields: dict[str, frozenset[str]] = {}
    for edit in edits:
        if not isinstance(edit, SetField):
            kinds.add(edit.kind)
        elif mirror.kind(edit.record_id):
            fields[edit.record_id] = fields.get(edit.record_id, frozenset()) | {edit.field}
    return frozenset(kinds), fields


def batches(mirror: Mirror, stock_id: str) -> tuple[str, ...]:
    """Return the ids of the batches of a stock in their order."""
    return mirror.owned(BATCH, stock_id)


def batch_in_use(mirror: Mirror, stock_id: str) -> str:
    """Return the batch that is in the jug, or an empty text."""
    return in_use((batch, mirror.value(batch, IN_USE_FROM).text) for batch in batches(mirror, stock_id))
