"""What can be asked of the log of entries: stretches of a series, the newest of each, sums, history."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from datetime import datetime
from heapq import merge
from itertools import chain, islice
from operator import attrgetter

import numpy as np
from numpy.typing import NDArray

from evenwater.store.database import Database, Row
from evenwater.store.entries import (
    ENTRY_KINDS,
    Entry,
    EntryKind,
    Version,
    alike,
    around,
    entry_of,
    instant,
    micros,
    near,
    total_ml,
)
from evenwater.store.errors import of_row
from evenwater.store.steps import Scope

_OLDEST_FIRST = """SELECT system_id, kind, subject, at_us, id, who, fields, value, logged_us FROM entry
    WHERE system_id = ? AND kind = ? AND subject = ? AND at_us >= ? AND at_us < ? AND removed = 0
    ORDER BY at_us, id LIMIT ?"""
_NEWEST_FIRST = """SELECT system_id, kind, subject, at_us, id, who, fields, value, logged_us FROM entry
    WHERE system_id = ? AND kind = ? AND subject = ? AND at_us >= ? AND at_us < ? AND removed = 0
    ORDER BY at_us DESC, id DESC LIMIT ?"""
_BY_ID = """SELECT system_id, kind, subject, at_us, id, who, fields, value, logged_us FROM entry
    WHERE id = ? AND removed = 0"""
_COLUMNS = """SELECT at_us, value FROM entry
    WHERE system_id = ? AND kind = ? AND subject = ? AND at_us >= ? AND at_us < ? AND removed = 0
    AND value IS NOT NULL ORDER BY at_us, id"""
_COUNT = "SELECT count(*) FROM entry WHERE system_id = ? AND kind = ? AND removed = 0"
_HISTORY = """SELECT system_id, kind, subject, at_us, id, who, fields, value, logged_us, until_us, by_whom, why, removed
    FROM entry_history WHERE id = ? ORDER BY number"""
# From one subject to the next by one step into the tree each, however many entries lie between.
_SUBJECTS = """WITH RECURSIVE known (subject) AS (
        SELECT min(subject) FROM entry WHERE system_id = ? AND kind = ?
        UNION ALL
        SELECT (SELECT min(subject) FROM entry WHERE system_id = ? AND kind = ? AND subject > known.subject)
        FROM known WHERE known.subject IS NOT NULL)
    SELECT subject FROM known WHERE subject IS NOT NULL"""
# The same through all systems, and in each series one step to its newest entry.
LATEST_OF_ALL = """WITH RECURSIVE series (position, system_id, subject) AS (
        SELECT r.position, r.id, (SELECT min(e.subject) FROM entry AS e WHERE e.system_id = r.id AND e.kind = ?)
        FROM record AS r WHERE r.kind = 'system' AND NOT r.removed
        UNION ALL
        SELECT s.position, s.system_id,
            (SELECT min(e.subject) FROM entry AS e
             WHERE e.system_id = s.system_id AND e.kind = ? AND e.subject > s.subject)
        FROM series AS s WHERE s.subject IS NOT NULL)
    SELECT n.system_id, n.kind, n.subject, n.at_us, n.id, n.who, n.fields, n.value, n.logged_us
    FROM series AS s CROSS JOIN entry AS n
        ON n.system_id = s.system_id AND n.kind = ? AND n.subject = s.subject AND n.removed = 0 AND n.at_us =
            (SELECT e.at_us FROM entry AS e
             WHERE e.system_id = s.system_id AND e.kind = ? AND e.subject = s.subject AND e.removed = 0
             ORDER BY e.at_us DESC LIMIT 1)
    WHERE s.subject IS NOT NULL
    ORDER BY s.position, s.system_id, s.subject, n.id"""

# SQLite's widest integers.
_FIRST, _LAST = -(2**63), 2**63 - 1
_when = attrgetter("at", "id")
Columns = tuple[NDArray[np.float64], NDArray[np.float64]]


def columns_of(entries: Iterable[Entry]) -> Columns:
    """Return the instants [s] since the start of 1970 and the values of entries; those without are left out."""
    each = [(micros(entry.at), entry.value) for entry in entries if entry.value is not None]
    return _columns(each)


def _columns(rows: Sequence[tuple[int, float]]) -> Columns:
    table = np.fromiter(chain.from_iterable(rows), np.float64, 2 * len(rows)).reshape(-1, 2)
    return table[:, 0] / 1e6, table[:, 1].copy()


@of_row
def _version(row: Row) -> Version:
    return Version(entry_of(row[:9]), instant(row[9]), row[10], row[11], bool(row[12]))


class LogReader:
    """Answers from the table of entries; each answer is one look at the disk, nothing is kept in memory."""

    def __init__(self, database: Database) -> None:
        self._database = database

    def entry(self, entry_id: str) -> Entry | None:
        """Return the entry with this id, or None when it is not in force."""
        rows = self._database.sql(_BY_ID, entry_id)
        return entry_of(rows[0]) if rows else None

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

        ``since`` and ``until`` have a zone. An empty ``subject`` means every subject, ``limit`` None
        all of them. What is read is what is returned, and no more than ``limit`` of each series.

        Raises
        ------
        ValueError
            When ``since`` or ``until`` has no zone.
        """
        first = _FIRST if since is None else micros(since)
        last = _LAST if until is None else micros(until)
        most = _LAST if limit is None else limit
        statement = _NEWEST_FIRST if newest_first else _OLDEST_FIRST
        series = [
            map(entry_of, self._database.sql(statement, scope.system_id, scope.kind, scope.subject, first, last, most))
            for scope in self._series(system_id, kinds, subject)
        ]
        return list(islice(merge(*series, key=_when, reverse=newest_first), most))

    def latest(self, system_id: str, kind: EntryKind, subject: str = "") -> Entry | None:
        """Return the newest entry of a series, or None; of any subject when that is empty."""
        return next(iter(self.entries(system_id, (kind,), subject, newest_first=True, limit=1)), None)

    def latest_by_subject(self, system_id: str, kind: EntryKind) -> dict[str, Entry]:
        """Return the newest entry of each subject of a system, by subject."""
        found = (self.latest(system_id, kind, subject) for subject in self._subjects(system_id, kind))
        return {entry.subject: entry for entry in found if entry is not None}

    def latest_of_all(self, kind: EntryKind) -> list[Entry]:
        """Return the newest entry of each subject of each present system, in the order of the systems."""
        rows = self._database.sql(LATEST_OF_ALL, kind, kind, kind, kind)
        # Of several at one instant the last by id, as everywhere.
        newest = {row[:3]: row for row in rows}
        return [entry_of(row) for row in newest.values()]

    def count(self, system_id: str, kind: EntryKind) -> int:
        """Return how many entries of a kind a system has."""
        return int(self._database.sql(_COUNT, system_id, kind)[0][0])

    def columns(
        self,
        system_id: str,
        subject: str,
        kind: EntryKind = "reading",
        since: datetime | None = None,
        until: datetime | None = None,
    ) -> Columns:
        """Return a series for a chart, oldest first; entries without a value are left out.

        Returns
        -------
        tuple
            The instants [s] since the start of 1970 in UTC and the values in the canonical unit of
            their kind, both of shape (n,).

        Raises
        ------
        ValueError
            When ``since`` or ``until`` has no zone.
        """
        first = _FIRST if since is None else micros(since)
        last = _LAST if until is None else micros(until)
        return _columns(self._database.sql(_COLUMNS, system_id, kind, subject, first, last))

    def last_doses(self, system_id: str, subject: str, n: int) -> list[Entry]:
        """Return the ``n`` doses given last, the newest first; fewer when there are fewer."""
        return self.entries(system_id, ("dose",), subject, newest_first=True, limit=n)

    def doses_within(self, system_id: str, subject: str, hours: float, now: datetime) -> float:
        """Return what was given [mL] less than ``hours`` [h] before or after ``now``, which has a zone.

        It is what a limit for any so many hours in a row is held against: no shorter span around
        ``now`` has more, whatever the calendar says. Doses dated ahead of ``now`` count, or a clock that was set back
        would hide them. Only what was given counts; what was planned and missed never does.
        """
        since, until = around(now, hours)
        return total_ml(self.entries(system_id, ("dose",), subject, since=since, until=until))

    def near_duplicates(self, entry: Entry) -> list[Entry]:
        """Return the entries in the same series that say the same amount within ten minutes, oldest first."""
        since, until = near(entry)
        return alike(entry, self.entries(entry.system_id, (entry.kind,), entry.subject, since, until))

    def history(self, entry_id: str) -> list[Version]:
        """Return what an entry said before, oldest first; empty when it was never changed."""
        return [_version(row) for row in self._database.sql(_HISTORY, entry_id)]

    def _series(self, system_id: str, kinds: Sequence[EntryKind], subject: str) -> Iterator[Scope]:
        for kind in kinds:
            subjects = [subject] if subject else self._subjects(system_id, kind)
            yield from (Scope(system_id, kind, each) for each in subjects)

    def _subjects(self, system_id: str, kind: EntryKind) -> list[str]:
        return [row[0] for row in self._database.sql(_SUBJECTS, *(2 * (system_id, kind)))]
