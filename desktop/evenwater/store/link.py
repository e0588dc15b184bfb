"""The connection to a server: how it is opened, what its refusals mean, and how it comes back by itself after it was lost."""

from __future__ import annotations

import logging
import threading
import time
from collections.abc import Callable, Generator
from typing import TYPE_CHECKING, Any

from evenwater.store.address import Address
from evenwater.store.collector import CollectorRest
from evenwater.store.errors import StoreError, refused
from evenwater.store.postgres_schema import SCHEMA

if TYPE_CHECKING:
    from psycopg import Connection

# How long [s] a first answer is waited for, and how long a lost server is left alone between two tries.
_ANSWER_SECONDS, _PAUSE_SECONDS = 4, 1.0
# A server whose cable was pulled says nothing: after so long [ms] without a word the connection counts as lost.
_SILENCE_MS = 4000
# How long [ms] a write waits for other laptops, and a question for its answer; a laptop that falls asleep in the midst of a
# write keeps the others from theirs no longer than the third.
_LOCK_MS, _STATEMENT_MS, _ASLEEP_MS = 2000, 60_000, 15_000

# An answer that has not come after so long [s] is not waited for; how often [s] the clock is looked at.
_HUNG_SECONDS, _LOOK_SECONDS = 10.0, 0.1

# PostgreSQL's error codes (https://www.postgresql.org/docs/current/errcodes-appendix.html), whole or by their class.
_BY_STATE = {
    "08": "store.away",
    "57P": "store.away",
    "53300": "store.away",
    "25P03": "store.away",
    "55P03": "store.locked",
    "57014": "store.locked",
    "40": "store.locked",
    "53100": "store.full",
    "58": "store.io",
    "XX001": "store.damaged",
    "XX002": "store.damaged",
    "42501": "store.no_right",
    # Tables that are there and not for this name are not found.
    "42P01": "store.no_right",
    "25006": "store.read_only",
    "28": "store.password",
    "3D": "store.no_database",
    "22021": "store.text_refused",
    "22P05": "store.text_refused",
}
# What a refused connection says comes as a text only, in English unless the server was told otherwise.
_BY_TEXT = (
    ("password", "store.password"),
    ("no pg_hba.conf entry", "store.password"),
    ("role ", "store.password"),
    ("database ", "store.no_database"),
)


def connect(address: Address, password: str, laptop: str, patient: bool = False) -> Connection:
    """Open a connection for the log at ``address``.

    ``laptop`` is the name under which the journal keeps what is done here. Unless it is ``patient``, an answer that takes
    longer than ``_HUNG_SECONDS`` is none: a server that hangs must not let a window hang.

    Raises
    ------
    StoreError
        ``"store.no_driver"``, ``"store.away"``, ``"store.password"``, ``"store.no_database"``, or what else it says.
    """
    try:
        import psycopg  # noqa: PLC0415  (only for a log on a server: the driver is an extra, and slow to load)
    except ImportError as error:
        raise refused("store.no_driver", file=address.shown) from error
    # What it would say of a connection that is lost is said in the window, in words for a keeper.
    logging.getLogger("psycopg").setLevel(logging.CRITICAL)

    class Impatient(psycopg.Connection[tuple[Any, ...]]):
        """Gives up on an answer that does not come; whoever asked then closes it."""

        def wait(self, gen: Any, interval: float = _LOOK_SECONDS, timeout: float | None = None) -> Any:
            """Wait for an answer, with an eye on the clock."""
            hurried = _hurried(gen, time.monotonic() + _HUNG_SECONDS, psycopg.OperationalError)
            return super().wait(hurried, interval, timeout)

    kind = psycopg.Connection if patient else Impatient
    settings = {
        "search_path": SCHEMA,
        "lock_timeout": _LOCK_MS,
        "statement_timeout": _STATEMENT_MS,
        "idle_in_transaction_session_timeout": _ASLEEP_MS,
        "evenwater.laptop": laptop,
    }
    given: dict[str, Any] = {"user": address.user, "password": password}
    given = {name: value for name, value in given.items() if value} | dict(address.options)
    try:
        return kind.connect(
            host=address.host,
            port=address.port,
            dbname=address.database,
            **given,
            application_name="evenwater",
            client_encoding="UTF8",
            connect_timeout=_ANSWER_SECONDS,
            keepalives_idle=5,
            keepalives_interval=2,
            keepalives_count=3,
            tcp_user_timeout=_SILENCE_MS,
            options=" ".join(f"-c {name}={value}" for name, value in settings.items()),
            autocommit=True,
        )
    except psycopg.Error as error:
        raise _no_connection(error, address) from error


def _hurried(gen: Any, deadline: float, late: type[Exception]) -> Generator[Any, Any, Any]:
    """Carry out the driver's generator, which is woken every ``_LOOK_SECONDS``, until it ends or the time is over."""
    try:
        found = next(gen)
        while True:
            ready = yield found
            if time.monotonic() > deadline:
                raise late("no answer")
            found = gen.send(ready)
    except StopIteration as ended:
        return ended.value


def refusal(error: BaseException, name: str) -> StoreError:
    """Return what an exception of the driver, which peewee may have wrapped, means for a keeper."""
    for each in (error, *error.args, error.__cause__, error.__context__):
        state = getattr(each, "sqlstate", None)
        if isinstance(state, str):
            code = next((_BY_STATE[state[:n]] for n in (5, 3, 2) if state[:n] in _BY_STATE), "store.failed")
            return refused(code, file=name, detail=str(error))
    if "NUL" in str(error) or isinstance(error, UnicodeEncodeError):
        return refused("store.text_refused", file=name, detail=str(error))
    # The driver names what went wrong between it and the server so, without a code of the server's.
    lost = any(type(each).__name__ in ("OperationalError", "InterfaceError") for each in (error, error.__cause__))
    return refused("store.away" if lost else "store.failed", file=name, detail=str(error))


def _no_connection(error: BaseException, address: Address) -> StoreError:
    state = getattr(error, "sqlstate", None)
    if isinstance(state, str):
        return refusal(error, address.shown)
    # libpq says which try it is about, with the address in it, before the server's own words.
    words = str(error).rpartition("FATAL:")[2] if "FATAL:" in str(error) else str(error)
    fatal = "FATAL:" in str(error) or "fe_sendauth" in str(error)
    code = next((code for text, code in _BY_TEXT if fatal and text in words), "store.away")
    return refused(code, file=address.shown, detail=str(error))


class Link:
    """A connection that may be gone. A thread of its own opens the next one, so that nobody waits for a server that is away."""

    def __init__(self, connecting: Callable[[], Connection], first: Connection | None) -> None:
        """Hold ``first``, or begin without any; ``connecting`` opens another one or raises ``StoreError``."""
        self._connecting = connecting
        self._held = first
        self._found: Connection | None = None
        self._thread: threading.Thread | None = None
        self._tried = time.monotonic() if first is None else float("-inf")
        self._closed = False

    def current(self) -> Connection | None:
        """Return the connection, a new one where one was opened meanwhile, or None; then another try begins by and by."""
        if self._held is None and not self._closed:
            if self._thread is not None and not self._thread.is_alive():
                self._ended()
                self._held, self._found = self._found, None
                self._tried = time.monotonic()
            elif self._thread is None and time.monotonic() - self._tried >= _PAUSE_SECONDS:
                self._thread = threading.Thread(target=self._try, daemon=True)
                CollectorRest.begin(self)
                self._thread.start()
        return self._held

    def lose(self) -> None:
        """Let go of a connection that does not answer."""
        if self._held is not None:
            _close(self._held)
            self._held, self._tried = None, float("-inf")

    def close(self) -> None:
        """End, and wait for a try that is under way."""
        self._closed = True
        if self._thread is not None:
            self._thread.join()
            self._ended()
        for each in (self._held, self._found):
            if each is not None:
                _close(each)
        self._held = self._found = None

    def _ended(self) -> None:
        self._thread = None
        CollectorRest.end(self)

    def _try(self) -> None:
        try:
            self._found = self._connecting()
        except StoreError:
            self._found = None


def _close(connection: Connection) -> None:
    try:
        connection.close()
    except Exception:  # noqa: BLE001  (it is given up in any case)
        return
