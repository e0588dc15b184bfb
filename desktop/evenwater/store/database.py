"""A typed doorway to peewee: queries in, plain tuples out, errors as ``StoreError``; one small class for each engine behind it."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Iterable, Iterator
from contextlib import AbstractContextManager
from typing import Any

import peewee

from evenwater.engine.reasons import Reason

Row = tuple[Any, ...]


class Database(ABC):
    """One connection to one log. Statements are written as SQLite reads them; each engine knows how its own differ."""

    name: str
    """What the log is called in errors."""

    @property
    def address(self) -> str:
        """The address of the server that has the log, or an empty text for a file or a log in memory."""
        return ""

    def fault(self) -> Reason | None:
        """Return why what is read may not be the present, or None."""
        return None

    def mine(self, step: int) -> bool:
        """Say whether a step of the journal was done where this log is open, so that it may be taken back here."""
        return step > 0

    @abstractmethod
    def go_on_numbering(self) -> None:
        """Let the rows of the journal be numbered on from those that were put into it with their numbers."""

    @abstractmethod
    def rows(self, query: peewee.BaseQuery) -> list[Row]:
        """Run a select and return its rows."""

    @abstractmethod
    def run(self, query: peewee.BaseQuery) -> None:
        """Run an insert, update or delete."""

    @abstractmethod
    def sql(self, statement: str, *values: object) -> list[Row]:
        """Run one literal statement; what was typed goes into ``values``, never into the statement."""

    @abstractmethod
    def many(self, statement: str, rows: Iterable[Row]) -> None:
        """Run one literal statement once for each of the rows of values."""

    def load(self, table: str, columns: str, rows: Iterable[Row]) -> None:
        """Put many rows into a table of ours, in the quickest way there is."""
        marks = ", ".join("?" * len(columns.split(", ")))
        self.many(f"INSERT INTO {table} ({columns}) VALUES ({marks})", rows)  # noqa: S608  (our own names)

    @abstractmethod
    def stream(self, statement: str, at_once: int) -> Iterator[Row]:
        """Yield the rows of a question, ``at_once`` of them in memory; only inside ``reading``."""

    @abstractmethod
    def changes(self) -> int:
        """Return a number that is another one once another connection has saved something."""

    @abstractmethod
    def writing(self, token: str = "") -> AbstractContextManager[None]:
        """Open a transaction that is alone in writing from its beginning and ends with a commit.

        So what is read inside is what is written over. Whoever comes back here from inside such a transaction is
        refused with ``"store.locked"``, as another window would be: what is done there could be rolled back with the
        rest although it was said to be saved. Where a server keeps them, a ``token`` that was written with an earlier
        transaction refuses this one with ``"store.delivered"``.
        """

    @abstractmethod
    def reading(self) -> AbstractContextManager[None]:
        """Open a transaction in which several reads see one and the same state."""

    @abstractmethod
    def close(self) -> None:
        """Close the connection; closing twice does nothing."""
