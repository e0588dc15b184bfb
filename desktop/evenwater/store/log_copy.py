"""Copying a whole log from a file to a server and back: every row of every table, counted and compared before it is kept."""

from __future__ import annotations

import hashlib
import os
import struct
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from functools import partial
from itertools import islice
from pathlib import Path

from evenwater.store.address import Address, is_address, password_of
from evenwater.store.database import Database, Row
from evenwater.store.errors import refused
from evenwater.store.migrations import MIGRATIONS
from evenwater.store.opening import being_made, open_file
from evenwater.store.steps import utc_now

_AT_ONCE = 5000
_BUSY_SECONDS = 2.0
# In the order in which they may be filled: what is pointed at comes first. Each with its columns and its key.
TABLES = {
    "record": ("id, kind, position, removed", "id"),
    "value": ("record_id, field, text, unit, shown", "record_id, field"),
    "card": (
        "plan_id, version, system_id, parameter, issued_utc, valid_until_utc, state, body, batch_id",
        "plan_id",
    ),
    "plan": ("plan_id, system_id, parameter, started_utc, ended_utc, reason, body, undone", "plan_id"),
    "entry": ("system_id, kind, subject, at_us, id, who, fields, value, logged_us, removed", "id"),
    "entry_history": (
        "number, until_us, by_whom, why, system_id, kind, subject, at_us, id, who, fields, value, logged_us, removed",
        "number",
    ),
    "journal": (
        "id, step, code, at_utc, action, record_id, field, before_text, before_unit, before_shown, after_text, "  # noqa: ISC004
        "after_unit, after_shown, undone",
        "id",
    ),
    "journal_entry": ("journal_id, entry_id, back, forth", "journal_id, entry_id"),
}
# Columns that are yes or no, which SQLite keeps as numbers.
_YES_OR_NO = {"record": ("removed",), "plan": ("undone",), "journal": ("undone",)}


@dataclass(frozen=True)
class Copied:
    """What a log holds: how many rows of each table, and one digest of all of them."""

    rows: tuple[tuple[str, int], ...]
    digest: str


def copy_log(source: str, target: str, folder: Path) -> Copied:
    """Copy a log, each of ``source`` and ``target`` a file or the address of a server, and return what was copied.

    ``folder`` is where this computer may keep what belongs to a server while it works. The source is read as it is at one
    moment. Nothing stands in the target unless all of it does.

    Raises
    ------
    StoreError
        ``"store.not_empty"`` when the target is there already, or has ever held anything; ``"store.copy_differs"`` when what
        stands in the target is not what was read; besides what the disk or the server says. The target is then as it was.
    """
    if not is_address(source) and not Path(source).exists():
        raise refused("store.copy_gone", file=source)
    with _reading(source, folder) as origin, _writing(target, folder) as written, origin.reading():
        before = _summed(origin)
        with written.writing():
            if any(written.sql(f"SELECT 1 FROM {table} LIMIT 1") for table in TABLES):  # noqa: S608  (our own names)
                raise refused("store.not_empty", file=target)
            for table in TABLES:
                _fill(origin, written, table)
            if _summed(written) != before:
                raise refused("store.copy_differs", file=target)
    return before


def contents(source: str, folder: Path) -> Copied:
    """Return what a log holds, to be compared with another."""
    with _reading(source, folder) as origin, origin.reading():
        return _summed(origin)


@contextmanager
def _reading(source: str, folder: Path) -> Iterator[Database]:
    database = (
        _server(source, folder) if is_address(source) else open_file(Path(source), MIGRATIONS, utc_now(), _BUSY_SECONDS)
    )
    with closing(database):
        yield database


@contextmanager
def _writing(target: str, folder: Path) -> Iterator[Database]:
    if is_address(target):
        with closing(_server(target, folder)) as database:
            yield database
        return
    if os.path.lexists(target):
        raise refused("store.not_empty", file=target)
    with being_made(Path(target), MIGRATIONS, _BUSY_SECONDS) as made:
        yield made


def _server(text: str, folder: Path) -> Database:
    # The driver of a server is an extra.
    from evenwater.store.facility import laptop_of, linked  # noqa: PLC0415
    from evenwater.store.link import Link  # noqa: PLC0415
    from evenwater.store.postgres import PostgresDatabase  # noqa: PLC0415

    address = Address.read(text)
    connecting = partial(linked, address, password_of(address), laptop_of(folder / address.key), True)
    return PostgresDatabase(address, Link(connecting, connecting()), None)


def _rows(database: Database, table: str) -> Iterator[Row]:
    columns, key = TABLES[table]
    return database.stream(f"SELECT {columns} FROM {table} ORDER BY {key}", _AT_ONCE)  # noqa: S608  (our own names)


def _fill(source: Database, target: Database, table: str) -> None:
    columns = TABLES[table][0]
    names = columns.split(", ")
    places = [names.index(name) for name in _YES_OR_NO.get(table, ())]
    rows = _rows(source, table)
    while chunk := list(islice(rows, _AT_ONCE)):
        target.load(table, columns, [tuple(bool(v) if n in places else v for n, v in enumerate(row)) for row in chunk])
    if table == "journal":
        target.go_on_numbering()


def _summed(database: Database) -> Copied:
    digest, counts = hashlib.sha256(), []
    for table in TABLES:
        count = 0
        digest.update(f"{table}\n".encode())
        for row in _rows(database, table):
            digest.update(b"\x1e".join(map(_plain, row)) + b"\n")
            count += 1
        counts.append((table, count))
    return Copied(tuple(counts), digest.hexdigest())


def _plain(value: object) -> bytes:
    """Write a value so that two engines which keep the same write the same; a number with a point to its last bit."""
    if isinstance(value, float):
        return b"f" + struct.pack(">d", value)
    if value is None:
        return b"n"
    if isinstance(value, str):
        # The length goes before a text, so that no text can look like the end of one.
        text = value.encode()
        return b"t" + f"{len(text)}:".encode() + text
    return b"i" + str(int(value)).encode() if isinstance(value, int) else b"?" + repr(value).encode()
