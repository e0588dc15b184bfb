"""Dated copies of the log beside it: one a day, the last ten, and one before every migration."""

from __future__ import annotations

import sqlite3
import threading
import time
import uuid
from datetime import UTC, datetime
from pathlib import Path

from evenwater.engine.reasons import Reason
from evenwater.store.database import Database
from evenwater.store.errors import StoreError, refused, translated
from evenwater.store.sqlite import SqliteDatabase

KEEP = 10
# A log larger than this [bytes] is not read through while a keeper waits for it; smaller ones take
# some hundredths of a second.
SMALL_BYTES = 4 * 2**20
# What is left of a copy that was killed is thrown away after so long [s].
_ABANDONED_SECONDS = 24 * 3600.0
_DAILY = "[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]"


def folder_of(file: Path) -> Path:
    """Return the folder that holds the copies of ``file``."""
    return file.with_name(f"{file.stem} backups")


def day_of(now: datetime) -> str:
    """Return the UTC day that names a copy."""
    return f"{now.astimezone(UTC):%Y-%m-%d}"


def daily_copies(file: Path) -> list[Path]:
    """Return the dated copies of ``file``, oldest first."""
    return sorted(folder_of(file).glob(f"{_DAILY}{file.suffix}"))


def newest_copy(file: Path) -> str:
    """Return the path of the newest dated copy, or an empty text when there is none."""
    copies = daily_copies(file)
    return str(copies[-1]) if copies else ""


def is_small(file: Path) -> bool:
    """Say whether a log, with what has not been moved into it from the file beside it, is read through in no time."""
    return bytes_of(file) <= SMALL_BYTES


def bytes_of(file: Path) -> int:
    """Return the size [bytes] of a log with what has not been moved into it from the file beside it."""
    with translated(str(file)):
        beside = file.with_name(f"{file.name}-wal")
        return file.stat().st_size + (beside.stat().st_size if beside.exists() else 0)


class DailyCopies:
    """Keeps one copy a day of an open log, as it was before the day's first edit, and drops all but the last ten.

    A large log is copied by a thread of its own, which sees the log as it was when it began.
    """

    def __init__(self, database: Database, file: Path | None) -> None:
        """Look after the log ``file``; None, for one in memory or on a server, has no copies."""
        self._database = database
        self._file = file if isinstance(database, SqliteDatabase) else None
        self._day = ""
        self._thread: threading.Thread | None = None
        self.fault: Reason | None = None
        """Why the newest copy could not be made, or None. That it fails must not keep anybody from the log."""

    def keep_up(self, now: datetime) -> None:
        """Make the copy of the day unless there is one, or see to it that it is made."""
        day = day_of(now)
        if self._file is None or day == self._day:
            return
        self.close()
        self._day = day
        target = folder_of(self._file) / f"{day}{self._file.suffix}"
        try:
            if target.exists():
                self.fault = None
            elif is_small(self._file) and isinstance(self._database, SqliteDatabase):
                self._make(self._database.connection, self._file, target, "integrity_check")
            else:
                self._make_beside(self._file, target)
        except StoreError as error:
            self.fault = error.reason

    def close(self) -> None:
        """Wait for a copy that is being made."""
        if self._thread is not None:
            self._thread.join()
            self._thread = None

    def _make_beside(self, file: Path, target: Path) -> None:
        with translated(str(file)):
            source = sqlite3.connect(f"{file.absolute().as_uri()}?mode=ro", uri=True, check_same_thread=False)
            source.isolation_level = None
            source.execute("BEGIN")
            # The first read fixes what this connection sees until its end.
            source.execute("SELECT count(*) FROM sqlite_master").fetchone()
        self._thread = threading.Thread(target=self._make_and_close, args=(source, file, target))
        self._thread.start()

    def _make_and_close(self, source: sqlite3.Connection, file: Path, target: Path) -> None:
        try:
            # Whether each index agrees with its table takes a minute here, and the rest a second or two.
            self._make(source, file, target, "quick_check")
        finally:
            source.close()

    def _make(self, source: sqlite3.Connection, file: Path, target: Path, check: str) -> None:
        try:
            made_folder(file)
            write_copy(source, str(file), target, check)
            with translated(str(target)):
                for old in daily_copies(file)[:-KEEP]:
                    old.unlink(missing_ok=True)
        except StoreError as error:
            self.fault = error.reason
        else:
            self.fault = None


def copy_before_migration(database: SqliteDatabase, file: Path, version: int, now: datetime) -> Path:
    """Copy the log as it is at ``version``; such copies are few and are never dropped.

    Raises
    ------
    StoreError
        When the copy cannot be written, and then nothing may be migrated.
    """
    stamp = f"{now.astimezone(UTC):%Y-%m-%d %H%M%S}"
    target = made_folder(file) / f"{stamp} version {version}{file.suffix}"
    write_copy(database.connection, database.name, target, "integrity_check")
    return target


def made_folder(file: Path) -> Path:
    """Return the folder for the copies of ``file``, made where there was none, and without what killed copies left in it."""
    folder = folder_of(file)
    with translated(str(folder)):
        folder.mkdir(parents=True, exist_ok=True)
        for left in folder.glob(".*.part*"):
            if left.stat().st_mtime < time.time() - _ABANDONED_SECONDS:
                left.unlink(missing_ok=True)
    return folder


def write_copy(source: sqlite3.Connection, name: str, target: Path, check: str) -> None:
    """Write a consistent copy under another name, let SQLite check it, and then give it its own.

    Raises
    ------
    StoreError
        What the disk says, or ``"store.damaged"``; nothing stands under the name of ``target`` then that was not there before.
    """
    with translated(str(target)):
        half = target.with_name(f".{target.name}.{uuid.uuid4().hex}.part")
        try:
            copy = sqlite3.connect(half)
            try:
                source.backup(copy)
                # A single file that can be carried away, without the side files of WAL.
                copy.execute("PRAGMA journal_mode = DELETE")
                sound = copy.execute(f"PRAGMA {check}(1)").fetchone() == ("ok",)
            finally:
                copy.close()
            if not sound:
                raise refused("store.damaged", file=name, backup="")
            half.replace(target)
        finally:
            half.unlink(missing_ok=True)
