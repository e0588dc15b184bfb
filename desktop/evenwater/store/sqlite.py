"""A log in a file, or in memory: SQLite."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from typing import Any

import peewee

from evenwater.store.database import Database, Row
from evenwater.store.errors import refused, translated


class SqliteDatabase(Database):
    """One connection to one SQLite database.

    Only the thread that opened it may use it: peewee keeps the connection per thread, and opening
    another one on the quiet is switched off.
    """

    def __init__(self, location: str, name: str, busy_seconds: float) -> None:
        """Open ``location`` (a ``file:`` address or ``":memory:"``); ``name`` is used in errors.

        ``busy_seconds`` [s] is how long a write waits for another process before it is refused.
        """
        self.name = name
        # FULL: a commit that was acknowledged survives a power cut, not only a crash.
        # 8 MB [KiB, negative]: the pages that a window asks for again and again stay in memory.
        pragmas = (("foreign_keys", 1), ("synchronous", "FULL"), ("cache_size", -8000))
        self._peewee = peewee.SqliteDatabase(
            location, pragmas=pragmas, timeout=busy_seconds, uri=True, autoconnect=False
        )
        with translated(name):
            self._peewee.connect()

    @property
    def connection(self) -> sqlite3.Connection:
        """The driver's connection, for the backup interface; ``StoreError`` on a log that is closed."""
        if self._peewee.is_closed():
            # peewee would open another one on the quiet.
            raise refused("store.failed", file=self.name, detail="the log is closed")
        connection: sqlite3.Connection = self._peewee.connection()  # type: ignore[no-untyped-call]
        return connection

    def rows(self, query: peewee.BaseQuery) -> list[Row]:
        """Run a select and return its rows."""
        with translated(self.name):
            return [tuple(row) for row in query.tuples().execute(self._peewee)]

    def run(self, query: peewee.BaseQuery) -> None:
        """Run an insert, update or delete."""
        with translated(self.name):
            query.execute(self._peewee)

    def sql(self, statement: str, *values: object) -> list[Row]:
        """Run one literal statement; what was typed goes into ``values``, never into the statement."""
        with translated(self.name):
            rows: list[Row] = self._peewee.execute_sql(statement, values).fetchall()  # type: ignore[no-untyped-call]
            return rows

    def many(self, statement: str, rows: Iterable[Row]) -> None:
        """Run one literal statement once for each of the rows of values."""
        with translated(self.name):
            self.connection.executemany(statement, rows)

    def stream(self, statement: str, at_once: int) -> Iterator[Row]:
        """Yield the rows of a question, ``at_once`` of them in memory; only inside ``reading``."""
        with translated(self.name):
            cursor = self.connection.execute(statement)
            while rows := cursor.fetchmany(at_once):
                yield from rows

    def go_on_numbering(self) -> None:
        """Do nothing: SQLite takes the number after the highest."""

    def pragma(self, name: str) -> Any:
        """Return the single value of a pragma."""
        return self.sql(f"PRAGMA {name}")[0][0]

    def changes(self) -> int:
        """Return SQLite's own number for what other connections have changed."""
        return int(self.pragma("data_version"))

    @contextmanager
    def writing(self, token: str = "") -> Iterator[None]:  # noqa: ARG002  (what waits for a file is not kept beside it)
        """Open a transaction that takes the write lock at once and ends with a commit."""
        if self._in_transaction():
            raise refused("store.locked", file=self.name, detail="a transaction is open")
        with translated(self.name):
            self._peewee.begin("IMMEDIATE")
            try:
                yield
                self._peewee.commit()
            except BaseException:
                # On a full disk SQLite has rolled back by itself, be it in a statement or in the commit.
                if self._in_transaction():
                    self._peewee.rollback()
                raise

    def _in_transaction(self) -> bool:
        return self.connection.in_transaction

    @contextmanager
    def reading(self) -> Iterator[None]:
        """Open a transaction in which several reads see one and the same state."""
        with translated(self.name), self._peewee.transaction("DEFERRED"):
            yield

    def close(self) -> None:
        """Close the connection; closing twice does nothing."""
        with translated(self.name):
            self._peewee.close()
