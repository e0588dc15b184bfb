"""A log on a server: PostgreSQL, with the last state that was seen to read from while the server is away."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from functools import lru_cache
from typing import TYPE_CHECKING, Any

import peewee

from evenwater.engine.reasons import Reason
from evenwater.store.address import Address
from evenwater.store.database import Database, Row
from evenwater.store.errors import StoreError, refused
from evenwater.store.errors import translated as of_disk
from evenwater.store.link import Link, refusal

if TYPE_CHECKING:
    from psycopg import Connection

    from evenwater.store.last_state import LastState

# Where our statements are SQLite's: what it says, and what PostgreSQL does.
_PHRASES = (
    ("json_each(?)", "json_array_elements_text(?::json) AS each (value)"),
    ("CROSS JOIN entry", "JOIN entry"),
    ("?", "%s"),
)
# Raising the number takes its row, which everybody who writes must have: whoever comes second waits, and then sees it all.
_TAKE_TURN = "UPDATE log_state SET changes = changes + 1"
_HAND_IN = "INSERT INTO delivered (token) VALUES (%s) ON CONFLICT DO NOTHING RETURNING token"
_MINE = "SELECT count(*) > 0 AND bool_and(laptop = current_setting('evenwater.laptop')) FROM journal WHERE step = %s"


class _Peewee(peewee.PostgresqlDatabase):
    """peewee's own, for which we open the connection."""

    opened: Connection | None = None
    server_version = 0

    def _connect(self) -> Connection | None:
        return self.opened

    def take(self, connection: Connection) -> None:
        """Use another connection from now on."""
        self.dispose()
        self.opened = connection
        self.connect()


@lru_cache(maxsize=256)
def translated(statement: str) -> str:
    """Write a statement for PostgreSQL."""
    for ours, theirs in _PHRASES:
        statement = statement.replace(ours, theirs)
    return statement


class PostgresDatabase(Database):
    """One connection to the log on a server, which may be away.

    While it is, what is read comes from the last state that was seen, where there is one, and ``fault`` says so; what is
    written is refused with ``"store.away"``. Only the thread that made it may use it.
    """

    def __init__(self, address: Address, link: Link, last: LastState | None) -> None:
        """Use the connections of ``link``; ``last`` is where the last state is kept, and is closed with this."""
        self.name = address.shown
        self._address = address
        self._link, self._last = link, last
        self._peewee = _Peewee(address.database, autoconnect=False, thread_safe=False)
        # The connection of the transaction that is open, which no other may go on with.
        self._bound: Connection | None = None
        self._writing = self._one_state = False
        self._own = 0
        self._known = -1 if last is None else last.changes
        self._fault: Reason | None = None
        self._live()

    @property
    def address(self) -> str:
        """The address of the server, as it is shown."""
        return self.name

    def fault(self) -> Reason | None:
        """Return ``"store.from_copy"`` with the instant of the last state while the server is away, or None."""
        return self._fault

    # One statement

    def rows(self, query: peewee.BaseQuery) -> list[Row]:
        """Run a select and return its rows, of the last state while the server is away."""
        if self._live():
            try:
                with self._asked():
                    return [tuple(row) for row in query.tuples().execute(self._peewee)]
            except StoreError as error:
                self._only_if_away(error)
        return self._of_last_state().rows(query)

    def run(self, query: peewee.BaseQuery) -> None:
        """Run an insert, update or delete."""
        self._present()
        with self._asked():
            query.execute(self._peewee)

    def sql(self, statement: str, *values: object) -> list[Row]:
        """Run one literal statement; a question is answered from the last state while the server is away."""
        if self._live():
            try:
                return self.ask(translated(statement), *values)
            except StoreError as error:
                self._only_if_away(error)
        return self._of_last_state().sql(statement, *values)

    def ask(self, statement: str, *values: object) -> list[Row]:
        """Run one statement of PostgreSQL's own on the server."""
        connection = self._present()
        with self._asked():
            cursor = connection.execute(statement, values or None)
            return cursor.fetchall() if cursor.description else []

    def many(self, statement: str, rows: Iterable[Row]) -> None:
        """Run one literal statement once for each of the rows of values."""
        each = list(rows)
        connection = self._present()
        if each:
            with self._asked(), connection.cursor() as cursor:
                cursor.executemany(translated(statement), each)

    def load(self, table: str, columns: str, rows: Iterable[Row]) -> None:
        """Put many rows into a table of ours, in the quickest way there is."""
        statement = f"COPY {table} ({columns}) FROM STDIN"
        with self._asked(), self._present().cursor() as cursor, cursor.copy(statement) as copy:
            for row in rows:
                copy.write_row(row)

    def stream(self, statement: str, at_once: int) -> Iterator[Row]:
        """Yield the rows of a question, ``at_once`` of them in memory; only inside ``reading``."""
        with self._asked(), self._present().cursor(name="stream") as cursor:
            cursor.itersize = at_once
            yield from cursor.execute(translated(statement))

    # Transactions

    @contextmanager
    def writing(self, token: str = "") -> Iterator[None]:
        """Open a transaction that is alone in writing from its beginning and ends with a commit.

        Whether a commit was carried out whose answer never came is not known; with a ``token`` it may be tried again.
        """
        if self._writing:
            raise refused("store.locked", file=self.name, detail="a transaction is open")
        self._present()
        # What a caller reads from the disk inside may fail as the disk does.
        with of_disk(self.name), self._transaction("BEGIN"):
            self._writing = True
            try:
                self.ask(_TAKE_TURN)
                if token and not self.ask(_HAND_IN, token):
                    raise refused("store.delivered", file=self.name)
                yield
            finally:
                self._writing = False
        self._own += 1
        self._keep_up()

    @contextmanager
    def reading(self) -> Iterator[None]:
        """Open a transaction in which several reads see one and the same state, be it the last one."""
        if self._writing or self._one_state:
            yield
        elif self._live():
            with self._transaction("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY"):
                self._one_state = True
                try:
                    yield
                finally:
                    self._one_state = False
        else:
            with self._of_last_state().reading():
                yield

    @contextmanager
    def _transaction(self, begin: str) -> Iterator[None]:
        connection = self._present()
        self.ask(begin)
        self._bound = connection
        try:
            yield
            self.ask("COMMIT")
        except BaseException:
            if not connection.closed:
                with self._asked():
                    connection.execute("ROLLBACK")
            raise
        finally:
            self._bound = None

    # News

    def changes(self) -> int:
        """Return a number that is another one once another laptop has saved something, or may have."""
        if self._live():
            try:
                self._known = int(self.ask("SELECT changes FROM log_state")[0][0])
            except StoreError as error:
                self._only_if_away(error)
            else:
                self._keep_up()
        return self._known - self._own

    def mine(self, step: int) -> bool:
        """Say whether a step was done on this laptop: nobody takes back what somebody else has noted at the next tank."""
        return step > 0 and self._live() and bool(self.ask(_MINE, step)[0][0])

    def go_on_numbering(self) -> None:
        """Let the rows of the journal be numbered on from those that were put into it with their numbers."""
        self.ask("SELECT setval(pg_get_serial_sequence('journal', 'id'), coalesce(max(id), 0) + 1, false) FROM journal")

    def close(self) -> None:
        """Close the connection; closing twice does nothing."""
        self._link.close()
        self._peewee.dispose()
        if self._last is not None:
            self._last.close()

    # Inside

    def _keep_up(self) -> None:
        """Let the last state on this computer learn what is new; that this fails must keep nobody from the log."""
        if self._last is not None:
            try:
                with self.reading():
                    self._last.learn(self)
            except StoreError as error:
                if error.reason.code == "store.foreign":
                    raise

    def _live(self) -> bool:
        """Say whether the server answers, as far as is known, taking up a connection that was opened meanwhile."""
        connection = self._link.current() if self._bound is None else self._bound
        if connection is None or connection.closed:
            self._fault = Reason("store.from_copy", {"at": None if self._last is None else self._last.at})
            return False
        if connection is not self._peewee.opened:
            self._peewee.take(connection)
        self._fault = None
        return True

    def _present(self) -> Any:
        """Return the connection; raises ``"store.away"`` where there is none."""
        if not self._live():
            raise self._away()
        return self._peewee.opened

    @contextmanager
    def _asked(self) -> Iterator[None]:
        """Turn what the driver says inside the block into ``StoreError``, and let go of a connection that is lost."""
        try:
            yield
        except StoreError:
            raise
        except Exception as error:
            # Only the driver's own, which cannot be named without loading it.
            if not isinstance(error, peewee.PeeweeException | UnicodeError) and not _of_driver(error):
                raise
            found = refusal(error, self.name)
            opened = self._peewee.opened
            if found.reason.code == "store.away" or opened is None or opened.closed:
                self._link.lose()
                self._live()
                raise self._away() from error
            raise found from error

    def _away(self) -> StoreError:
        return refused("store.away", file=self.name, at=None if self._last is None else self._last.at)

    def _only_if_away(self, error: StoreError) -> None:
        """Raise it again unless the question may be asked of the last state instead: never in the midst of a transaction."""
        if error.reason.code != "store.away" or self._writing or self._one_state or self._last is None:
            raise error

    def _of_last_state(self) -> Database:
        if self._last is None or self._writing or self._one_state:
            raise self._away()
        return self._last.database


def _of_driver(error: BaseException) -> bool:
    return type(error).__module__.partition(".")[0] == "psycopg"
