"""The log as the windows see it: what is on the disk with what waits for it, and every change announced."""

# ruff: noqa: N815  (signals have Qt's spelling)

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from datetime import datetime
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QObject, Signal

from evenwater.session.acts import ChangeEntry, LogEntries, RemoveEntries, Unsaved
from evenwater.session.changes import LogChange, PlansChange
from evenwater.session.waiting import WaitingLine
from evenwater.store import (
    ENTRY_KINDS,
    Card,
    Columns,
    Entry,
    EntryKind,
    Logged,
    Looked,
    Plan,
    Scope,
    Step,
    Store,
    StoreError,
    Version,
    alike,
    around,
    columns_of,
    near,
    total_ml,
)

if TYPE_CHECKING:
    from evenwater.session.document import Document

_T = TypeVar("_T")


class EntryLog(QObject):
    """The entries and plans of a ``Document``, which owns it: they share one undo stack and one waiting line.

    An entry is saved before it is announced. When the disk refuses, it is kept in memory, shown all
    the same and tried again with the next edit, as a record's edit is; ``saveFailed`` and
    ``saveRestored`` of the document tell of it. A plan is saved or refused at once: its card hangs
    on it. No method raises because of the disk, and no entry is kept in memory once it is on it.
    """

    logChanged = Signal(object)
    """Carries a ``LogChange``."""
    plansChanged = Signal(object)
    """Carries a ``PlansChange``."""

    def __init__(self, document: Document, store: Store, waiting: WaitingLine) -> None:
        super().__init__(document)
        self._document = document
        self._store = store
        self._waiting = waiting

    # Writing

    def log(self, entries: Sequence[Entry], initiator: object = None, looked: Looked | None = None) -> Logged:
        """Log entries as one step; true when they are on the disk, each of them once.

        Their ids were made before the keeper's first attempt, so that the same entries may be given
        again whenever that looked as if it had failed. ``looked`` is what ``look`` returned before the keeper
        was asked about a dose; with it the answer is ``ASK`` when somebody has logged another one since.
        """
        return self._do(LogEntries(tuple(entries), looked), initiator)

    def look(self, dose: Entry) -> Looked | None:
        """Return which doses there are within a day of one that is to be logged.

        None, after ``saveFailed``, when the log cannot be read.
        """
        since, until = around(dose.at, 24.0)
        there = self._read(None, lambda: self._found(dose.system_id, ("dose",), "", since, until, False, None))
        return None if there is None else Looked(dose.system_id, since, until, frozenset(e.id for e in there))

    def change_entry(self, entry: Entry, initiator: object = None, by: str = "", seen: Entry | None = None) -> Logged:
        """Let the entry with this id say this; ``ALREADY`` when it does so.

        ``by`` is who changes it, and ``seen`` what it said when they began: when another window has
        changed it since, the change is refused (``"store.entry_changed"``).
        """
        return self._do(ChangeEntry(entry, self.entry(entry.id), by, seen), initiator)

    def remove_entries(self, ids: Collection[str], initiator: object = None, by: str = "") -> Logged:
        """Take entries out as one step; ``ALREADY`` when all are out. Their history keeps them."""
        before = tuple(entry for entry in map(self.entry, ids) if entry is not None)
        return self._do(RemoveEntries(tuple(ids), before, by), initiator)

    def import_entries(
        self, entries: Iterable[Entry], progress: Callable[[int], bool], initiator: object = None
    ) -> int | None:
        """Log many entries as one step and return how many are new; those that are there stay as they are.

        ``progress`` is told after each some thousand how many were read so far; once it returns
        False, or when the disk refuses, nothing is saved and the answer is None.
        """
        added = self._document.at_once(lambda: self._store.import_entries(entries, progress))
        if added:
            self.logChanged.emit(LogChange(initiator=initiator))
        # What was done while the file was held, from a progress bar that let the windows live, waits for this.
        self._document.save()
        self._document.announce_undo()
        return added

    def start_plan(self, plan: Plan, card: Card, note: Entry, initiator: object = None) -> bool:
        """Start a plan, register its card and log a note of it, all or nothing; False, after ``saveFailed``.

        Then it must not be followed, nor its card printed. The plan before for the same purpose
        ends and its card is void. Undo takes the start back, but brings no card back into use.
        """
        return self._plan(lambda: self._store.start_plan(plan, card, note), plan.system_id, note, initiator)

    def end_plan(self, plan_id: str, ended: datetime, reason: str, note: Entry, initiator: object = None) -> bool:
        """End a plan, declare its card void and log a note of it, all or nothing; False, after ``saveFailed``."""
        return self._plan(lambda: self._store.end_plan(plan_id, ended, reason, note), note.system_id, note, initiator)

    # Reading

    def entry(self, entry_id: str) -> Entry | None:
        """Return the entry with this id, or None when it is not in force."""
        return self._unsaved().entry(entry_id, self._read(None, lambda: self._store.entry(entry_id)))

    def entries(
        self,
        system_id: str,
        kinds: Sequence[EntryKind] = ENTRY_KINDS,
        subject: str = "",
        since: datetime | None = None,
        until: datetime | None = None,
        newest_first: bool = False,
        limit: int | None = None,
    ) -> list[Entry]:
        """Return entries of a system in the order of time, from ``since`` on and before ``until``.

        An empty ``subject`` means every subject. Nothing, after ``saveFailed``, when the log cannot
        be read.
        """
        found = self._read(None, lambda: self._found(system_id, kinds, subject, since, until, newest_first, limit))
        return found or []

    def latest(self, system_id: str, kind: EntryKind, subject: str = "") -> Entry | None:
        """Return the newest entry of a series, or None; of any subject when that is empty."""
        return next(iter(self.entries(system_id, (kind,), subject, newest_first=True, limit=1)), None)

    def latest_by_subject(self, system_id: str, kind: EntryKind) -> dict[str, Entry]:
        """Return the newest entry of each subject of a system, by subject."""
        nothing: dict[str, Entry] = {}
        found = self._read(nothing, lambda: self._store.latest_by_subject(system_id, kind))
        for scope in sorted(self._unsaved().scopes, key=_subject):
            if (scope.system_id, scope.kind) == (system_id, kind):
                found.pop(scope.subject, None)
                newest = self.latest(system_id, kind, scope.subject)
                if newest is not None:
                    found[newest.subject] = newest
        return found

    def latest_of_all(self, kind: EntryKind) -> list[Entry]:
        """Return the newest entry of each subject of each system, by system in their order, then by subject."""
        nothing: list[Entry] = []
        found = self._read(nothing, lambda: self._store.latest_of_all(kind))
        touched = {scope.system_id for scope in self._unsaved().scopes if scope.kind == kind}
        if not touched:
            return found
        by_system = {system: [e for e in found if e.system_id == system] for system in self._document.records("system")}
        for system in touched & by_system.keys():
            newest = self.latest_by_subject(system, kind)
            by_system[system] = [newest[subject] for subject in sorted(newest)]
        return [entry for entries in by_system.values() for entry in entries]

    def count(self, system_id: str, kind: EntryKind) -> int:
        """Return how many entries of a kind a system has."""
        if any((scope.system_id, scope.kind) == (system_id, kind) for scope in self._unsaved().scopes):
            return len(self.entries(system_id, (kind,)))
        return self._read(0, lambda: self._store.count(system_id, kind))

    def columns(
        self,
        system_id: str,
        subject: str,
        kind: EntryKind = "reading",
        since: datetime | None = None,
        until: datetime | None = None,
    ) -> Columns:
        """Return a series for a chart: instants [s] since the start of 1970 in UTC and values, both of shape (n,)."""
        if Scope(system_id, kind, subject) in self._unsaved().scopes:
            return columns_of(self.entries(system_id, (kind,), subject, since, until))
        return self._read(columns_of(()), lambda: self._store.columns(system_id, subject, kind, since, until))

    def last_doses(self, system_id: str, subject: str, n: int) -> list[Entry]:
        """Return the ``n`` doses given last, the newest first; fewer when there are fewer."""
        return self.entries(system_id, ("dose",), subject, newest_first=True, limit=n)

    def doses_within(self, system_id: str, subject: str, hours: float, now: datetime) -> float | None:
        """Return what was given [mL] less than ``hours`` [h] before or after ``now``.

        As ``Store.doses_within``, with the doses that wait for the disk. None, after ``saveFailed``,
        when the log cannot be read: nobody may take that for nothing given.
        """
        since, until = around(now, hours)
        doses = self._read(None, lambda: self._found(system_id, ("dose",), subject, since, until, False, None))
        return None if doses is None else total_ml(doses)

    def near_duplicates(self, entry: Entry) -> list[Entry] | None:
        """Return the entries in the same series that say the same amount within ten minutes, oldest first.

        None, after ``saveFailed``, when the log cannot be read: nobody may take that for none.
        """
        since, until = near(entry)
        there = self._read(
            None,
            lambda: self._found(entry.system_id, (entry.kind,), entry.subject, since, until, False, None),
        )
        return None if there is None else alike(entry, there)

    def history(self, entry_id: str) -> list[Version]:
        """Return what an entry said before, oldest first."""
        return self._read([], lambda: self._store.history(entry_id))

    def plans(self, system_id: str = "", live: bool = True) -> list[Plan]:
        """Return the plans of a system, or of all, oldest first; with ``live`` those that have not ended."""
        return self._read([], lambda: self._store.plans(system_id, live))

    def unsaved(self) -> frozenset[str]:
        """Return the ids of the entries that do not look on the disk as they do here."""
        return self._unsaved().ids()

    # For the document

    def announce(self, step: Step, initiator: object) -> None:
        """Announce a step that was taken back or done again."""
        if step.touched:
            self.logChanged.emit(LogChange.of(step.touched, initiator))
        if step.plans:
            self.plansChanged.emit(PlansChange(frozenset(change.system_id for change in step.plans), initiator))

    def announce_any(self) -> None:
        """Announce that anything may be different, as when another window has saved."""
        self.logChanged.emit(LogChange())
        self.plansChanged.emit(PlansChange())

    # Inside

    def _do(self, act: LogEntries | ChangeEntry | RemoveEntries, initiator: object) -> Logged:
        outcome = self._document.in_turn(act)
        if outcome in (Logged.NEW, Logged.WAITING):
            self.logChanged.emit(LogChange.of(act.scopes, initiator))
        self._document.announce_undo()
        return outcome

    def _plan(self, work: Callable[[], list[Card]], system_id: str, note: Entry, initiator: object) -> bool:
        if self._document.at_once(work) is None:
            return False
        self.logChanged.emit(LogChange.of([note.scope], initiator))
        self.plansChanged.emit(PlansChange(frozenset([system_id]), initiator))
        self._document.announce_undo()
        self._document.cardsChanged.emit(initiator)
        return True

    def _unsaved(self) -> Unsaved:
        return Unsaved(self._waiting.acts())

    def _found(
        self,
        system_id: str,
        kinds: Sequence[EntryKind],
        subject: str,
        since: datetime | None,
        until: datetime | None,
        newest_first: bool,
        limit: int | None,
    ) -> list[Entry]:
        """Read entries and lay what waits over them; raises ``StoreError``."""
        unsaved = self._unsaved()
        # So many more are read as may turn out to be gone.
        most = None if limit is None else limit + len(unsaved)
        saved = self._store.entries(system_id, kinds, subject, since, until, newest_first, most)
        if not unsaved:
            return saved
        return unsaved.over(saved, system_id, kinds, subject, since, until, newest_first, limit)

    def _read(self, otherwise: _T, question: Callable[[], _T]) -> _T:
        try:
            return question()
        except StoreError as error:
            self._document.saveFailed.emit(error.reason)
            return otherwise


def _subject(scope: Scope) -> str:
    return scope.subject
