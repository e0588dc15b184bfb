"""Dated copies of the log beside it: one a day, the last ten, and one before every migration."""

from __future__ import annotations

import os
import sqlite3
from datetime import UTC, datetime
from pathlib import Path

from evenwater.store.database import Database
from evenwater.store.errors import refused, translated

KEEP = 10
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


def copy_daily(database: Database, file: Path, day: str) -> None:
    """Copy the log unless ``day`` has its copy, then drop all but the last ten.

    Raises
    ------
    StoreError
        When the copy cannot be written; the log itself is not touched.
    """
    target = folder_of(file) / f"{day}{file.suffix}"
    if target.exists():
        return
    _copy(database, target)
    with translated(str(target)):
        for old in daily_copies(file)[:-KEEP]:
            old.unlink(missing_ok=True)


def copy_before_migration(database: Database, file: Path, version: int, now: datetime) -> Path:
    """Copy the log as it is at ``version``; such copies are few and are never dropped.

    Raises
    ------
    StoreError
        When the copy cannot be written, and then nothing may be migrated.
    """
    stamp = f"{now.astimezone(UTC):%Y-%m-%d %H%M%S}"
    target = folder_of(file) / f"{stamp} version {version}{file.suffix}"
    _copy(database, target)
    return target


def _copy(database: Database, target: Path) -> None:
    """Write a consistent, checked copy under another name and then give it its own."""
    name = str(target)
    with translated(name):
        target.parent.mkdir(parents=True, exist_ok=True)
        half = target.with_name(f".{target.name}.{os.getpid()}.part")
        try:
            copy = sqlite3.connect(half)
            try:
                database.connection.backup(copy)
                # A single file that can be carried away, without the side files of WAL.
                copy.execute("PRAGMA journal_mode = DELETE")
                sound = copy.execute("PRAGMA integrity_check(1)").fetchone() == ("ok",)
            finally:
                copy.close()
            if not sound:
                raise refused("store.damaged", file=database.name, backup="")
            half.replace(target)
        finally:
            half.unlink(missing_ok=True)
