"""Opening the log: a new file appears whole or not at all, a strange file is refused untouched."""

from __future__ import annotations

import os
import sqlite3
import struct
import uuid
from collections.abc import Iterator, Sequence
from contextlib import closing, contextmanager, suppress
from datetime import datetime
from pathlib import Path

from evenwater.engine.reasons import Reason
from evenwater.store.backups import copy_before_migration, is_small, newest_copy
from evenwater.store.errors import StoreError, refused, translated
from evenwater.store.migrations import Migration, migrate, version_of
from evenwater.store.sqlite import SqliteDatabase

# Marks a file as a log of this program in its header (https://www.sqlite.org/fileformat.html,
# "Application ID"): the letters EvWt.
APPLICATION_ID = 0x45765774
_MAGIC = b"SQLite format 3\x00"
_HEADER_BYTES = 100
_PAGE_BYTES_AT = 16
_CHANGES_AT = 24
_APPLICATION_ID_AT = 68
_PAGES_VALID_FOR_AT = 92
# The tables whose size is that of the room, not that of its history.
_SMALL_TABLES = ("record", "value", "journal", "card", "plan")


def open_file(file: Path, migrations: Sequence[Migration], now: datetime, busy_seconds: float) -> SqliteDatabase:
    """Open the log ``file``, making it when it does not exist, at the newest version.

    Raises
    ------
    StoreError
        ``"store.foreign"`` for a file of another application, ``"store.newer"`` for one of a newer
        version, ``"store.damaged"`` for one that is cut short or fails SQLite's own check; besides
        what the disk may say. The file is then as it was.
    """
    if not os.path.lexists(file):
        _make(file, migrations, busy_seconds)
    recognise(file)
    with _kept_beside(file, busy_seconds):
        database, version = _sound(file, busy_seconds, len(migrations))
    try:
        if version < len(migrations):
            copy_before_migration(database, file, version, now)
            migrate(database, migrations)
        # A copy that was put back as the log is in the other mode; a folder that cannot be written
        # to leaves it there, and reading still works.
        if database.pragma("journal_mode") != "wal":
            _use_wal(database)
    except BaseException:
        database.close()
        raise
    return database


def open_in_memory(migrations: Sequence[Migration]) -> SqliteDatabase:
    """Open a log that ends with the program."""
    database = SqliteDatabase(":memory:", ":memory:", 0.0)
    migrate(database, migrations)
    return database


def _make(file: Path, migrations: Sequence[Migration], busy_seconds: float) -> None:
    with being_made(file, migrations, busy_seconds):
        pass


@contextmanager
def being_made(file: Path, migrations: Sequence[Migration], busy_seconds: float) -> Iterator[SqliteDatabase]:
    """Make the log under another name, let it be filled, and move it into place, never over anything.

    So an empty file under the log's name is never one that we were about to fill.
    """
    half = file.with_name(f".{file.name}.{uuid.uuid4().hex}.part")
    with translated(str(file)):
        file.parent.mkdir(parents=True, exist_ok=True)
        try:
            database = SqliteDatabase(f"{half.absolute().as_uri()}?mode=rwc", str(file), busy_seconds)
            try:
                database.sql(f"PRAGMA application_id = {APPLICATION_ID}")
                migrate(database, migrations)
                yield database
                database.pragma("journal_mode = WAL")
            finally:
                database.close()
            _move_into_place(half, file)
        finally:
            half.unlink(missing_ok=True)


def _move_into_place(half: Path, file: Path) -> None:
    """Give ``half`` its name; when somebody else was quicker, theirs is the log."""
    try:
        os.link(half, file)
    except FileExistsError:
        return
    except OSError:
        # A disk without hard links, such as a memory card.
        if not file.exists():
            half.rename(file)
    flush_folder(file.parent)


def flush_folder(folder: Path) -> None:
    """Let the disk know the names in a folder for good; only POSIX can be asked to."""
    if os.name == "posix":
        opened = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(opened)
        finally:
            os.close(opened)


def recognise(file: Path) -> None:
    """Read the header as bytes, so that a file which is not ours is not even opened by SQLite.

    Opening it would already write: SQLite rolls back what another program left half done.

    Raises
    ------
    StoreError
        ``"store.foreign"`` or ``"store.damaged"``.
    """
    with translated(str(file)), file.open("rb") as stream:
        header = stream.read(_HEADER_BYTES)
    if _MAGIC.startswith(header[: len(_MAGIC)]) and len(header) < _HEADER_BYTES:
        raise _damaged(file)
    if not header.startswith(_MAGIC):
        raise refused("store.foreign", file=str(file))
    (application,) = struct.unpack_from(">I", header, _APPLICATION_ID_AT)
    if application != APPLICATION_ID:
        raise refused("store.foreign", file=str(file))


def _sound(file: Path, busy_seconds: float, newest: int) -> tuple[SqliteDatabase, int]:
    """Open the file and let SQLite check it: every page of a small log, the records of a large one; return its version too.

    The entries of a large log are checked with its daily copy, beside the work; what is damaged in
    them is refused as damaged when it is read.
    """
    try:
        if cut_short(file):
            raise _damaged(file)
        database = SqliteDatabase(f"{file.absolute().as_uri()}?mode=rw", str(file), busy_seconds)
        try:
            version = _checked(database, file, newest)
        except BaseException:
            database.close()
            raise
    except StoreError as error:
        if error.reason.code in ("store.damaged", "store.foreign", "store.failed"):
            raise _damaged(file) from error
        raise
    return database, version


def _checked(database: SqliteDatabase, file: Path, newest: int) -> int:
    checks = ["integrity_check(1)"]
    if not is_small(file):
        tables = database.sql("SELECT name FROM sqlite_master WHERE type = 'table'")
        checks = [f"integrity_check({name})" for (name,) in tables if name in _SMALL_TABLES]
    if {database.pragma(check) for check in checks} != {"ok"}:
        raise _damaged(file)
    version = version_of(database, newest)
    if version < min(1, newest):
        # A log has its version before it has its name.
        raise _damaged(file)
    return version


def _left_beside(file: Path) -> bool:
    """Say whether a program that was ended has left saved work beside the log."""
    beside = file.with_name(f"{file.name}-wal")
    with translated(str(file)):
        return beside.exists() and beside.stat().st_size > 0


@contextmanager
def _kept_beside(file: Path, busy_seconds: float) -> Iterator[None]:
    """Let what a program left beside the log stay there, whatever comes of the log inside the block.

    The last to close a log moves that into it, even into a damaged one, unless it may only read. So a reader closes last.
    """
    if not _left_beside(file):
        yield
        return
    # Not by ``SqliteDatabase``: what it sets reads the tables' descriptions, and those may be what is damaged.
    address = f"{file.absolute().as_uri()}?mode=ro"
    with translated(str(file)), closing(sqlite3.connect(address, uri=True, timeout=busy_seconds)) as reader:
        # In a folder that cannot be written to, opening the log says more.
        with suppress(sqlite3.Error):
            reader.execute("PRAGMA schema_version").fetchone()
        yield


def cut_short(file: Path) -> bool:
    """Say whether the file is shorter than its header says.

    With something in the file beside it that is no sign: a checkpoint may have been cut off, and is
    done again.
    """
    with translated(str(file)):
        if _left_beside(file):
            return False
        with file.open("rb") as stream:
            header = stream.read(_HEADER_BYTES)
        (page,) = struct.unpack_from(">H", header, _PAGE_BYTES_AT)
        counter, pages = struct.unpack_from(">II", header, _CHANGES_AT)
        if struct.unpack_from(">I", header, _PAGES_VALID_FOR_AT) != (counter,):
            return False
        whole: int = pages * (page if page > 1 else 2**16)
        return file.stat().st_size < whole


def _use_wal(database: SqliteDatabase) -> None:
    try:
        database.pragma("journal_mode = WAL")
    except StoreError as error:
        if error.reason.code not in ("store.read_only", "store.locked", "store.cannot_open"):
            raise


def _damaged(file: Path) -> StoreError:
    """Say that the file is damaged, and which copy of it is the newest."""
    return StoreError(Reason("store.damaged", {"file": str(file), "backup": newest_copy(file)}))
