"""Logging, changing and removing entries, and what each of them said before; nothing is ever overwritten."""

from __future__ import annotations

import json
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field

from evenwater.store.database import Database, Row
from evenwater.store.entries import Entry, entry_of, row_of
from evenwater.store.errors import refused
from evenwater.store.journal import Move
from evenwater.store.steps import PlanChange, Scope

_INSERT = """INSERT INTO entry (system_id, kind, subject, at_us, id, who, fields, value, logged_us, removed)
    VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, 0)"""
_REPLACE = """UPDATE entry
    SET system_id = ?, kind = ?, subject = ?, at_us = ?, who = ?, fields = ?, value = ?, logged_us = ?, removed = 0
    WHERE id = ?"""
_REMOVE = "UPDATE entry SET removed = 1 WHERE id = ?"
_KEEP = """INSERT INTO entry_history
    (number, until_us, by_whom, why, system_id, kind, subject, at_us, id, who, fields, value, logged_us, removed)
    SELECT ?, ?, ?, ?, system_id, kind, subject, at_us, id, who, fields, value, logged_us, removed
    FROM entry WHERE id = ?"""
_KNOWN = """SELECT system_id, kind, subject, at_us, id, who, fields, value, logged_us, removed
    FROM entry WHERE id IN (SELECT value FROM json_each(?))"""
_SAID = "SELECT system_id, kind, subject, at_us, id, who, fields, value, logged_us FROM entry_history WHERE id = ?"
_SYSTEMS = """SELECT id FROM record
    WHERE kind = 'system' AND NOT removed AND id IN (SELECT value FROM json_each(?))"""
_LAST_VERSION = "SELECT coalesce(max(number), 0) FROM entry_history"
# Of a step as a whole, for an import has a hundred thousand entries.
_KEEP_STEP = """INSERT INTO entry_history
    (number, until_us, by_whom, why, system_id, kind, subject, at_us, id, who, fields, value, logged_us, removed)
    SELECT (SELECT coalesce(max(number), 0) FROM entry_history) + row_number() OVER (ORDER BY e.id),
        ?, '', ?, e.system_id, e.kind, e.subject, e.at_us, e.id, e.who, e.fields, e.value, e.logged_us, e.removed
    FROM journal AS j JOIN journal_entry AS p ON p.journal_id = j.id JOIN entry AS e ON e.id = p.entry_id
    WHERE j.step = ?"""
_POINT_FORTH = """UPDATE journal_entry
    SET forth = (SELECT max(h.number) FROM entry_history AS h WHERE h.id = journal_entry.entry_id)
    WHERE back IS NOT NULL AND journal_id IN (SELECT id FROM journal WHERE step = ?)"""
_REMOVE_STEP = """UPDATE entry SET removed = 1 WHERE id IN
    (SELECT p.entry_id FROM journal AS j JOIN journal_entry AS p ON p.journal_id = j.id
     WHERE j.step = ? AND p.back IS NULL)"""
# What was taken back and is done again is as it was: whatever changed it had made an end of the redo.
_RESTORE_STEP = """UPDATE entry SET removed = 0 WHERE id IN
    (SELECT p.entry_id FROM journal AS j JOIN journal_entry AS p ON p.journal_id = j.id
     WHERE j.step = ? AND p.back IS NULL)"""
_BRING_BACK = """UPDATE entry
    SET (system_id, kind, subject, at_us, who, fields, value, logged_us, removed) =
        (SELECT h.system_id, h.kind, h.subject, h.at_us, h.who, h.fields, h.value, h.logged_us, h.removed
         FROM journal AS j JOIN journal_entry AS p ON p.journal_id = j.id JOIN entry_history AS h ON h.number = p.back
         WHERE j.step = ? AND p.entry_id = entry.id)
    WHERE id IN
        (SELECT p.entry_id FROM journal AS j JOIN journal_entry AS p ON p.journal_id = j.id
         WHERE j.step = ? AND p.back IS NOT NULL)"""
_BRING_FORTH = """UPDATE entry
    SET (system_id, kind, subject, at_us, who, fields, value, logged_us, removed) =
        (SELECT h.system_id, h.kind, h.subject, h.at_us, h.who, h.fields, h.value, h.logged_us, h.removed
         FROM journal AS j JOIN journal_entry AS p ON p.journal_id = j.id JOIN entry_history AS h ON h.number = p.forth
         WHERE j.step = ? AND p.entry_id = entry.id)
    WHERE id IN
        (SELECT p.entry_id FROM journal AS j JOIN journal_entry AS p ON p.journal_id = j.id
         WHERE j.step = ? AND p.back IS NOT NULL)"""


@dataclass
class Moves:
    """What a step does: the entries it moves, in which series, and what becomes of plans; false when it does nothing."""

    ids: list[Move] = field(default_factory=list)
    scopes: dict[Scope, None] = field(default_factory=dict)
    plans: list[PlanChange] = field(default_factory=list)

    def __bool__(self) -> bool:
        return bool(self.ids or self.plans)

    def note(self, entry_id: str, back: int | None, *scopes: Scope) -> None:
        """Note that an entry has changed in these series; ``back`` is the version in the history before."""
        self.ids.append((entry_id, back))
        self.scopes.update(dict.fromkeys(scopes))


class EntryWriter:
    """Writes the tables of entries and their history; the caller holds the transaction."""

    def __init__(self, database: Database) -> None:
        self._database = database

    def add(self, entries: Sequence[Entry], now_us: int, moves: Moves, known_is_enough: bool = False) -> None:
        """Save the entries that are not there, and note them in ``moves``.

        One that was removed is there again, as it is given now. With ``known_is_enough`` an id that
        is in force is passed over whatever the entry says; it was worked out from its contents.

        Raises
        ------
        StoreError
            ``"store.record_gone"`` when a system is not there; ``"store.entry_taken"`` when an id is
            in force for another entry, which never said what this one says.
        """
        known = self._known([entry.id for entry in entries])
        new: dict[str, Entry] = {}
        for entry in entries:
            row = known.get(entry.id)
            if entry.id in new:
                another = entry != new[entry.id]
            elif row is None or row[9]:
                new[entry.id] = entry
                continue
            else:
                another = not known_is_enough and not self._says(entry, row)
            if another and not known_is_enough:
                raise refused("store.entry_taken", entry=entry.id)
        self._refuse_strangers({entry.system_id for entry in new.values()})
        self._database.many(_INSERT, [(*row_of(e), now_us) for e in new.values() if e.id not in known])
        versions = self._keep([i for i in new if i in known], now_us, "", "again")
        self._database.many(_REPLACE, [(*_replacement(new[i]), now_us, i) for i in versions])
        for entry in new.values():
            before = [_scope(known[entry.id])] if entry.id in known else []
            moves.note(entry.id, versions.get(entry.id), entry.scope, *before)

    def change(self, entry: Entry, now_us: int, by: str, seen: Entry | None) -> Moves:
        """Let an entry say something else; nothing moves when it says that already.

        Raises
        ------
        StoreError
            ``"store.entry_gone"`` when it is not in force, ``"store.entry_changed"`` when it is not
            what was ``seen`` any more, ``"store.record_gone"`` when it would move to a system that
            is not there.
        """
        row = self._known([entry.id]).get(entry.id)
        if row is None or row[9]:
            raise refused("store.entry_gone", entry=entry.id)
        before, moves = entry_of(row[:9]), Moves()
        if entry == before:
            return moves
        if seen is not None and seen != before:
            raise refused("store.entry_changed", entry=entry.id)
        if entry.system_id != before.system_id:
            self._refuse_strangers({entry.system_id})
        versions = self._keep([entry.id], now_us, by, "change")
        self._database.sql(_REPLACE, *_replacement(entry), row[8], entry.id)
        moves.note(entry.id, versions[entry.id], entry.scope, before.scope)
        return moves

    def remove(self, ids: Collection[str], now_us: int, by: str) -> Moves:
        """Take entries out; those that are out already stay out.

        Raises
        ------
        StoreError
            ``"store.entry_gone"`` when there never was one of them.
        """
        known, moves = self._known(ids), Moves()
        for unknown in sorted(set(ids) - known.keys()):
            raise refused("store.entry_gone", entry=unknown)
        present = [entry_id for entry_id, row in known.items() if not row[9]]
        versions = self._keep(present, now_us, by, "remove")
        self._database.many(_REMOVE, [(entry_id,) for entry_id in present])
        for entry_id in present:
            moves.note(entry_id, versions[entry_id], _scope(known[entry_id]))
        return moves

    def undo(self, step: int, now_us: int) -> None:
        """Take back what a step did, keeping in the history what it had led to."""
        self._database.sql(_KEEP_STEP, now_us, "undo", step)
        self._database.sql(_POINT_FORTH, step)
        self._database.sql(_REMOVE_STEP, step)
        self._database.sql(_BRING_BACK, step, step)

    def redo(self, step: int, now_us: int) -> None:
        """Do again what a step did, keeping in the history what there was without it."""
        self._database.sql(_KEEP_STEP, now_us, "redo", step)
        self._database.sql(_RESTORE_STEP, step)
        self._database.sql(_BRING_FORTH, step, step)

    def _known(self, ids: Iterable[str]) -> dict[str, Row]:
        return {row[4]: row for row in self._database.sql(_KNOWN, json.dumps(list(ids)))}

    def _keep(self, ids: Sequence[str], now_us: int, by: str, why: str) -> dict[str, int]:
        """Copy entries into the history and return the numbers of their versions there."""
        last = int(self._database.sql(_LAST_VERSION)[0][0])
        versions = {entry_id: last + place for place, entry_id in enumerate(ids, start=1)}
        self._database.many(_KEEP, [(number, now_us, by, why, entry_id) for entry_id, number in versions.items()])
        return versions

    def _refuse_strangers(self, systems: set[str]) -> None:
        present = {row[0] for row in self._database.sql(_SYSTEMS, json.dumps(sorted(systems)))}
        for stranger in sorted(systems - present):
            raise refused("store.record_gone", record=stranger)

    def _says(self, entry: Entry, row: Row) -> bool:
        """Say whether what is in force under an id is this entry, or was before it was changed."""
        return entry == entry_of(row[:9]) or entry in map(entry_of, self._database.sql(_SAID, entry.id))


def _scope(row: Row) -> Scope:
    return Scope(*row[:3])


def _replacement(entry: Entry) -> Row:
    """Return an entry's row without its id, which stays."""
    row = row_of(entry)
    return (*row[:4], *row[5:])
