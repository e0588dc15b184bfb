"""What is done to the log of entries, as values that can wait for the disk, and how the log looks with them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import islice

from evenwater.engine.reasons import Reason
from evenwater.store import Entry, EntryKind, Logged, Looked, Scope, Store


@dataclass(frozen=True)
class LogEntries:
    """Entries are logged; ``looked`` is what was seen before the keeper was asked about a dose."""

    entries: tuple[Entry, ...]
    looked: Looked | None = None

    @property
    def scopes(self) -> frozenset[Scope]:
        """The series it touches."""
        return frozenset(entry.scope for entry in self.entries)

    def save(self, store: Store) -> Logged:
        """Carry it out; raises ``StoreError``."""
        return store.log(self.entries, self.looked)

    def beside(self, store: Store) -> Reason | None:
        """Return that a dose which nobody had seen lies beside these, for what has waited; raises ``StoreError``."""
        dose = None if self.looked is None else store.unseen(self.looked, self.entries)
        if dose is None:
            return None
        return Reason("store.dose_doubted", {"entry": dose.id, "who": dose.who, "at": dose.at})


@dataclass(frozen=True)
class ChangeEntry:
    """An entry says something else; ``before`` is what it said as far as is known here."""

    entry: Entry
    before: Entry | None
    by: str
    seen: Entry | None

    @property
    def scopes(self) -> frozenset[Scope]:
        """The series it touches."""
        return frozenset(entry.scope for entry in (self.entry, self.before) if entry is not None)

    def save(self, store: Store) -> Logged:
        """Carry it out; raises ``StoreError``."""
        return Logged.NEW if store.change_entry(self.entry, self.by, self.seen) else Logged.ALREADY


@dataclass(frozen=True)
class RemoveEntries:
    """Entries are taken out; ``before`` are those that are known here."""

    ids: tuple[str, ...]
    before: tuple[Entry, ...]
    by: str

    @property
    def scopes(self) -> frozenset[Scope]:
        """The series it touches."""
        return frozenset(entry.scope for entry in self.before)

    def save(self, store: Store) -> Logged:
        """Carry it out; raises ``StoreError``."""
        return Logged.NEW if store.remove_entries(self.ids, self.by) else Logged.ALREADY


Act = LogEntries | ChangeEntry | RemoveEntries


class Unsaved:
    """The acts that wait for the disk, laid over what is on it."""

    def __init__(self, acts: Iterable[Act]) -> None:
        self.scopes: set[Scope] = set()
        """The series that look different from the disk."""
        self._entries: dict[str, Entry | None] = {}
        for act in acts:
            self.scopes |= act.scopes
            if isinstance(act, RemoveEntries):
                self._entries.update(dict.fromkeys(act.ids))
            else:
                changed = act.entries if isinstance(act, LogEntries) else (act.entry,)
                self._entries.update((entry.id, entry) for entry in changed)

    def __len__(self) -> int:
        return len(self._entries)

    def ids(self) -> frozenset[str]:
        """Return the ids of the entries that look different from the disk, or are gone."""
        return frozenset(self._entries)

    def entry(self, entry_id: str, saved: Entry | None) -> Entry | None:
        """Return an entry as it looks now; ``saved`` is how it is on the disk."""
        return self._entries.get(entry_id, saved)

    def over(
        self,
        saved: Iterable[Entry],
        system_id: str,
        kinds: Sequence[EntryKind],
        subject: str,
        since: datetime | None,
        until: datetime | None,
        newest_first: bool,
        limit: int | None,
    ) -> list[Entry]:
        """Lay what waits over the entries that were read for a question, and answer it."""
        mine = (entry for entry in self._entries.values() if entry is not None and entry.system_id == system_id)
        wanted = [
            entry
            for entry in mine
            if entry.kind in kinds
            and subject in ("", entry.subject)
            and (since is None or entry.at >= since)
            and (until is None or entry.at < until)
        ]
        kept = (entry for entry in saved if entry.id not in self._entries)
        ordered = sorted([*kept, *wanted], key=_when, reverse=newest_first)
        return list(islice(ordered, limit))


def _when(entry: Entry) -> tuple[datetime, str]:
    return entry.at, entry.id
