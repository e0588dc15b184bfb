"""One log for a facility: the same log on a server, opened from several laptops."""

from __future__ import annotations

import uuid
from collections.abc import Callable
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from evenwater.store.address import Address, password_of
from evenwater.store.errors import StoreError, translated
from evenwater.store.last_state import LastState
from evenwater.store.link import Link, connect, refusal
from evenwater.store.postgres import PostgresDatabase
from evenwater.store.postgres_schema import bring_up
from evenwater.store.steps import utc_now

if TYPE_CHECKING:
    from psycopg import Connection

_LAST, _LAPTOP = "last state.sqlite", "laptop"


def open_on_server(
    address: Address, folder: Path, now: Callable[[], datetime] = utc_now, password: str = "", wait: bool = True
) -> PostgresDatabase:
    """Open the log at ``address``, making its tables where there are none.

    Parameters
    ----------
    address : Address
        Where it is.
    folder : Path
        Where this computer keeps what belongs to it: the last state that was seen, and what waits for the server.
    now : callable
        Returns the present instant with a zone.
    password : str
        Empty to take it from the environment or the system's keyring.
    wait : bool
        Whether the server is waited for; else the last state is opened at once and the server looked for beside the work.

    Raises
    ------
    StoreError
        What the server, or the disk, says. ``"store.away"`` only where this computer has never seen the log.
    """
    connecting = partial(linked, address, password or password_of(address), laptop_of(folder))
    first = None
    if wait or not (folder / _LAST).exists():
        try:
            first = connecting()
        except StoreError as error:
            if error.reason.code != "store.away" or not (folder / _LAST).exists():
                raise
    try:
        last = LastState(folder / _LAST, now)
    except BaseException:
        if first is not None:
            first.close()
        raise
    return PostgresDatabase(address, Link(connecting, first), last)


def linked(address: Address, password: str, laptop: str, patient: bool = False) -> Connection:
    """Return a connection to a log that is at the newest version, making its tables where there are none.

    ``patient`` is for what no window waits for (``link.connect``).

    Raises
    ------
    StoreError
        As ``link.connect`` and ``postgres_schema.bring_up`` say.
    """
    connection = connect(address, password, laptop, patient)

    def ask(statement: str, *values: object) -> list[tuple[object, ...]]:
        cursor = connection.execute(statement, values or None)
        return cursor.fetchall() if cursor.description else []

    try:
        with connection.transaction():
            bring_up(ask, address.shown)
    except StoreError:
        connection.close()
        raise
    except Exception as error:
        connection.close()
        raise refusal(error, address.shown) from error
    return connection


def laptop_of(folder: Path) -> str:
    """Return the name of this computer for the journal of a log, drawn when it is first opened.

    Raises
    ------
    StoreError
        When the disk refuses.
    """
    file = folder / _LAPTOP
    with translated(str(file)):
        folder.mkdir(parents=True, exist_ok=True)
        if not file.exists():
            half = folder / f".{uuid.uuid4().hex}.part"
            half.write_text(uuid.uuid4().hex, encoding="ascii")
            half.replace(file)
        return file.read_text(encoding="ascii")
