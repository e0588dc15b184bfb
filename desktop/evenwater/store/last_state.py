"""The last state of a log on a server, kept in a file on this computer: what can still be read while the server is away."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from evenwater.store.entries import instant, micros
from evenwater.store.errors import StoreError, translated
from evenwater.store.migrations import MIGRATIONS
from evenwater.store.opening import open_file
from evenwater.store.steps import utc_now

if TYPE_CHECKING:
    from evenwater.store.postgres import PostgresDatabase

# What is older stays on the server alone; a chart of a year is whole.
KEPT = timedelta(days=400)
# So many entries are fetched at once by a laptop that has none.
_AT_ONCE = 5000
# How long [s] the file may say an earlier instant than that of the server's last word: a crash makes it seem older, never newer.
_NOTED_SECONDS = 20.0
_STATE = (
    "CREATE TABLE IF NOT EXISTS last_state (log_id TEXT NOT NULL, changes INTEGER NOT NULL, at_us INTEGER NOT NULL)"
)
# Tables that are the size of the room, with their columns; systems before what belongs to them.
_SMALL = {
    "record": "id, kind, position, removed",
    "value": "record_id, field, text, unit, shown",
    "card": "plan_id, version, system_id, parameter, issued_utc, valid_until_utc, state, body, batch_id",
    "plan": "plan_id, system_id, parameter, started_utc, ended_utc, reason, body, undone",
}
# One question says what there is to fetch: most often the one entry that was just logged.
_ALL = ("value_gone", *_SMALL, "entry")
_FRESH = ", ".join(f"EXISTS (SELECT 1 FROM {table} WHERE stamp > %s)" for table in _ALL)  # noqa: S608  (our own names)
_NEWS = f"SELECT log_id, changes, {_FRESH} FROM log_state"  # noqa: S608  (as above)
_ENTRY = "system_id, kind, subject, at_us, id, who, fields, value, logged_us, removed"


class LastState:
    """A log like any other, into which only the server's is written. Several windows of one computer share it."""

    def __init__(self, file: Path, clock: Callable[[], datetime] = utc_now) -> None:
        """Open the file, making it where there is none or none that can be used: it can always be fetched again.

        Raises
        ------
        StoreError
            When the disk refuses.
        """
        self._file, self._clock = file, clock
        try:
            self._open()
        except StoreError as error:
            if error.reason.code not in ("store.damaged", "store.foreign", "store.newer", "store.migration_failed"):
                raise
            self._throw_away()
            self._open()

    def _open(self) -> None:
        self.database = open_file(self._file, MIGRATIONS, self._clock(), 0.25)
        # What a power cut takes from it is fetched again; only the server has to wait for its disk.
        self.database.sql("PRAGMA synchronous = NORMAL")
        self.database.sql(_STATE)
        self._read()

    def _read(self) -> None:
        rows = self.database.sql("SELECT log_id, changes, at_us FROM last_state")
        self._log_id, self.changes, at_us = rows[0] if rows else ("", -1, 0)
        self.at: datetime | None = instant(at_us) if rows else None
        """When the server was last heard of; None while nothing was ever fetched."""
        self._noted = at_us

    def learn(self, server: PostgresDatabase) -> None:
        """Fetch what is new; the caller holds a transaction of the server's in which all is of one moment.

        Raises
        ------
        StoreError
            When the server or the disk refuses; the file is then as it was.
        """
        ((log_id, changes, *news),) = server.ask(_NEWS, *[self.changes] * len(_ALL))
        now = micros(self._clock())
        if (log_id, changes) == (self._log_id, self.changes):
            # Only what holds all that the server does may be called as new as its last word.
            self.at = instant(now)
            if now - self._noted < _NOTED_SECONDS * 1e6:
                return
        if (self._log_id and log_id != self._log_id) or changes < self.changes:
            # Another log stands there now, or the server was put back to an earlier state.
            self._begin_again()
            news = [True] * len(news)
        with self.database.writing():
            self._read()
            if changes > self.changes:
                self._fetch(server, self.changes, dict(zip(_ALL, news, strict=True)))
                self.changes = changes
            self.database.sql("DELETE FROM last_state")
            self.database.sql("INSERT INTO last_state VALUES (?, ?, ?)", log_id, self.changes, now)
        self._log_id, self._noted, self.at = log_id, now, instant(now)

    def _fetch(self, server: PostgresDatabase, since: int, news: Mapping[str, bool]) -> None:
        if news["value_gone"]:
            gone = server.ask("SELECT record_id, field FROM value_gone WHERE stamp > %s", since)
            self.database.many("DELETE FROM value WHERE record_id = ? AND field = ?", gone)
        for table, columns in _SMALL.items():
            if not news[table]:
                continue
            rows = server.ask(f"SELECT {columns} FROM {table} WHERE stamp > %s", since)  # noqa: S608  (our own names)
            self.database.many(_put(table, columns), rows)
        if not news["entry"]:
            return
        first = micros(self._clock() - KEPT)
        stamp, last = since, "\U0010ffff"
        question = f"""SELECT {_ENTRY}, stamp FROM entry
            WHERE (stamp, id) > (%s, %s) AND at_us >= %s ORDER BY stamp, id LIMIT {_AT_ONCE}"""  # noqa: S608  (as above)
        while rows := server.ask(question, stamp, last, first):
            self.database.many(_put("entry", _ENTRY), [row[:-1] for row in rows])
            stamp, last = rows[-1][-1], rows[-1][4]

    def close(self) -> None:
        """Close the file, with the instant of the server's last word in it."""
        try:
            if self.at is not None and micros(self.at) != self._noted:
                self.database.sql("UPDATE last_state SET at_us = max(at_us, ?)", micros(self.at))
        finally:
            self.database.close()

    def _begin_again(self) -> None:
        self.database.close()
        self._throw_away()
        self._open()

    def _throw_away(self) -> None:
        with translated(str(self._file)):
            for end in ("", "-wal", "-shm"):
                self._file.with_name(f"{self._file.name}{end}").unlink(missing_ok=True)


def _put(table: str, columns: str) -> str:
    """Return the statement that puts a row in the place of the one with its key."""
    marks = ", ".join("?" * len(columns.split(", ")))
    return f"INSERT OR REPLACE INTO {table} ({columns}) VALUES ({marks})"  # noqa: S608  (our own names)
