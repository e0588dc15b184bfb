"""The records and their values: reading them, and carrying out edits forwards and backwards."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from peewee import fn

from evenwater.engine.quantities import Typed
from evenwater.store.database import Database
from evenwater.store.errors import refused
from evenwater.store.steps import NOTHING, AddRecord, Edit, RemoveRecord, SetField
from evenwater.store.tables import Record, Value

# SQLite takes so many figures in one statement on every machine.
_AT_ONCE = 100


@dataclass(frozen=True)
class Snapshot:
    """All records at one moment: ids by kind in their order, kinds and values by id."""

    order: Mapping[str, tuple[str, ...]]
    values: Mapping[str, Mapping[str, Typed]]


class Records:
    """Reads and writes the tables of records and values; the caller holds the transaction."""

    def __init__(self, database: Database) -> None:
        self._database = database

    def ids(self, kind: str) -> tuple[str, ...]:
        """Return the ids of all present records of ``kind`` in their order."""
        present = (Record.kind == kind) & (Record.removed == False)  # noqa: E712  (SQL, not Python)
        query = Record.select(Record.id).where(present).order_by(Record.position, Record.id)
        return tuple(row[0] for row in self._database.rows(query))

    def values(self, record_id: str) -> dict[str, Typed]:
        """Return what is filled in on a record, present or removed."""
        query = Value.select(Value.field, Value.text, Value.unit, Value.shown)
        rows = self._database.rows(query.where(Value.record_id == record_id).order_by(Value.field))
        return {row[0]: Typed(*row[1:]) for row in rows}

    def snapshot(self) -> Snapshot:
        """Return all present records with their values."""
        present = Record.removed == False  # noqa: E712  (SQL, not Python)
        query = Record.select(Record.id, Record.kind).where(present).order_by(Record.position, Record.id)
        order: dict[str, tuple[str, ...]] = {}
        values: dict[str, dict[str, Typed]] = {}
        for record_id, kind in self._database.rows(query):
            order[kind] = (*order.get(kind, ()), record_id)
            values[record_id] = {}
        fields = Value.select(Value.record_id, Value.field, Value.text, Value.unit, Value.shown)
        for record_id, field, *typed in self._database.rows(fields.order_by(Value.record_id, Value.field)):
            if record_id in values:
                values[record_id][field] = Typed(*typed)
        frozen = {record_id: MappingProxyType(fields) for record_id, fields in values.items()}
        return Snapshot(MappingProxyType(order), MappingProxyType(frozen))

    def untouched(self) -> bool:
        """Say whether there has never been a record."""
        return not self._database.rows(Record.select(Record.id).limit(1))

    def complete(self, edits: tuple[Edit, ...]) -> list[Edit]:
        """Carry out ``edits`` and return them with what was before, without those that change nothing.

        A record that comes back under its old id comes back empty: the values it had are cleared by
        edits of their own, so that undo brings them back.

        Raises
        ------
        StoreError
            ``"store.record_gone"`` or ``"store.record_exists"``; the caller rolls back.
        """
        done: list[Edit] = []
        for edit in edits:
            if isinstance(edit, AddRecord):
                cleared = self._add(edit)
                done += [edit, *cleared]
                continue
            kind = self._kind(edit.record_id)
            if isinstance(edit, RemoveRecord):
                self._set_removed(edit.record_id, True)
                done.append(RemoveRecord(edit.record_id, kind))
                continue
            before = self._value(edit.record_id, edit.field)
            if before != edit.after:
                self._set(edit.record_id, edit.field, edit.after)
                done.append(SetField(edit.record_id, edit.field, edit.after, before, kind))
        return done

    def begin(self, edits: tuple[Edit, ...]) -> None:
        """Carry out the edits that an untouched log begins with: nothing is there that would have to be looked up.

        Raises
        ------
        StoreError
            ``"store.record_gone"`` or ``"store.record_exists"``, as ``complete``; the caller rolls back.
        """
        kinds: dict[str, str] = {}
        values: dict[tuple[str, str], Typed] = {}
        for edit in edits:
            if isinstance(edit, AddRecord):
                if edit.record_id in kinds:
                    raise refused("store.record_exists", record=edit.record_id)
                kinds[edit.record_id] = edit.kind
            elif edit.record_id not in kinds or isinstance(edit, RemoveRecord):
                raise refused("store.record_gone", record=edit.record_id)
            else:
                values[(edit.record_id, edit.field)] = edit.after
        places: dict[str, int] = {}
        records = []
        for record_id, kind in kinds.items():
            places[kind] = places.get(kind, -1) + 1
            records.append({"id": record_id, "kind": kind, "position": places[kind], "removed": False})
        rows = [
            {"record_id": record, "field": field, "text": typed.text, "unit": typed.unit, "shown": typed.shown}
            for (record, field), typed in values.items()
            if typed != NOTHING
        ]
        for table, every in ((Record, records), (Value, rows)):
            for first in range(0, len(every), _AT_ONCE):
                self._database.run(table.insert_many(every[first : first + _AT_ONCE]))

    def redo(self, edit: Edit) -> None:
        """Carry out an edit of the journal again."""
        if isinstance(edit, SetField):
            self._set(edit.record_id, edit.field, edit.after)
        else:
            self._set_removed(edit.record_id, isinstance(edit, RemoveRecord))

    def undo(self, edit: Edit) -> None:
        """Take an edit of the journal back."""
        if isinstance(edit, SetField):
            self._set(edit.record_id, edit.field, edit.before)
        else:
            self._set_removed(edit.record_id, isinstance(edit, AddRecord))

    def _add(self, edit: AddRecord) -> list[SetField]:
        query = Record.select(Record.kind, Record.removed).where(Record.id == edit.record_id)
        found = self._database.rows(query)
        if found and (found[0][0] != edit.kind or not found[0][1]):
            raise refused("store.record_exists", record=edit.record_id)
        last = self._database.rows(Record.select(fn.MAX(Record.position)).where(Record.kind == edit.kind))[0][0]
        position = 0 if last is None else int(last) + 1
        if not found:
            row = {"id": edit.record_id, "kind": edit.kind, "position": position, "removed": False}
            self._database.run(Record.insert(row))
            return []
        again = Record.update({"removed": False, "position": position}).where(Record.id == edit.record_id)
        self._database.run(again)
        left = self.values(edit.record_id)
        for field in left:
            self._set(edit.record_id, field, NOTHING)
        return [SetField(edit.record_id, field, NOTHING, typed, edit.kind) for field, typed in left.items()]

    def _kind(self, record_id: str) -> str:
        present = (Record.id == record_id) & (Record.removed == False)  # noqa: E712  (SQL, not Python)
        rows = self._database.rows(Record.select(Record.kind).where(present))
        if not rows:
            raise refused("store.record_gone", record=record_id)
        return str(rows[0][0])

    def _value(self, record_id: str, field: str) -> Typed:
        here = (Value.record_id == record_id) & (Value.field == field)
        rows = self._database.rows(Value.select(Value.text, Value.unit, Value.shown).where(here))
        return Typed(*rows[0]) if rows else NOTHING

    def _set(self, record_id: str, field: str, typed: Typed) -> None:
        if typed == NOTHING:
            here = (Value.record_id == record_id) & (Value.field == field)
            self._database.run(Value.delete().where(here))
            return
        row = {"record_id": record_id, "field": field, "text": typed.text, "unit": typed.unit, "shown": typed.shown}
        said = {"text": typed.text, "unit": typed.unit, "shown": typed.shown}
        here_already = [Value.record_id, Value.field]
        self._database.run(Value.insert(row).on_conflict(conflict_target=here_already, update=said))

    def _set_removed(self, record_id: str, removed: bool) -> None:
        self._database.run(Record.update({"removed": removed}).where(Record.id == record_id))
