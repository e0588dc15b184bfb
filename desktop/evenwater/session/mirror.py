"""The document as it stands in memory: what is on the disk plus what could not be saved yet."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from evenwater.engine.quantities import Typed
from evenwater.store import NOTHING, AddRecord, Edit, RemoveRecord, SetField, Snapshot

Difference = tuple[frozenset[str], dict[str, frozenset[str]]]


class Mirror:
    """Records by kind in their order, and their fields."""

    def __init__(self, snapshot: Snapshot) -> None:
        self._order = {kind: dict.fromkeys(ids) for kind, ids in snapshot.order.items()}
        self._kinds = {record_id: kind for kind, ids in self._order.items() for record_id in ids}
        self._values = {record_id: dict(fields) for record_id, fields in snapshot.values.items()}
        # By kind and owner; made when first asked for, gone with the next change of that kind's list.
        self._owned: dict[str, dict[str, tuple[str, ...]]] = {}

    def ids(self, kind: str) -> tuple[str, ...]:
        """Return the ids of ``kind`` in their order."""
        return tuple(self._order.get(kind, ()))

    def owned(self, kind: str, owner: str) -> tuple[str, ...]:
        """Return the ids of ``kind`` that belong to the record ``owner``, its id and a colon before their own, in their order."""
        if kind not in self._owned:
            found: dict[str, list[str]] = {}
            for record_id in self._order.get(kind, ()):
                head, colon, _ = record_id.partition(":")
                if colon:
                    found.setdefault(head, []).append(record_id)
            self._owned[kind] = {head: tuple(ids) for head, ids in found.items()}
        return self._owned[kind].get(owner, ())

    def all_ids(self) -> tuple[str, ...]:
        """Return the ids of all records."""
        return tuple(self._values)

    def kind(self, record_id: str) -> str:
        """Return the kind of a record, or an empty text when it is not there."""
        return self._kinds.get(record_id, "")

    def value(self, record_id: str, field: str) -> Typed:
        """Return a field as typed; ``Typed("")`` when it, or the record, is not there."""
        return self._values.get(record_id, {}).get(field, NOTHING)

    def values(self, record_id: str) -> Mapping[str, Typed]:
        """Return the filled-in fields of a record, as a copy that later edits leave alone."""
        return MappingProxyType(dict(self._values.get(record_id, {})))

    def apply(self, edits: Iterable[Edit]) -> None:
        """Carry out edits; those on records that are not there are passed over."""
        for edit in edits:
            if isinstance(edit, AddRecord):
                if edit.record_id not in self._values:
                    self._values[edit.record_id] = {}
                    self._order.setdefault(edit.kind, {})[edit.record_id] = None
                    self._kinds[edit.record_id] = edit.kind
                    self._owned.pop(edit.kind, None)
            elif isinstance(edit, RemoveRecord):
                if edit.record_id in self._values:
                    kind = self._kinds.pop(edit.record_id)
                    del self._order[kind][edit.record_id], self._values[edit.record_id]
                    self._owned.pop(kind, None)
            elif isinstance(edit, SetField) and edit.record_id in self._values:
                self._set(edit.record_id, edit.field, edit.after)

    def difference(self, other: Mirror) -> Difference:
        """Return the kinds whose lists differ, and by record the fields that do, for records in ``other``."""
        kinds = {k for k in self._order.keys() | other._order.keys() if self.ids(k) != other.ids(k)}
        fields: dict[str, frozenset[str]] = {}
        for record_id, theirs in other._values.items():
            ours = self._values.get(record_id, {})
            names = {f for f in ours.keys() | theirs.keys() if ours.get(f, NOTHING) != theirs.get(f, NOTHING)}
            if names:
                fields[record_id] = frozenset(names)
        return frozenset(kinds), fields

    def _set(self, record_id: str, field: str, typed: Typed) -> None:
        if typed == NOTHING:
            self._values[record_id].pop(field, None)
        else:
            self._values[record_id][field] = typed
