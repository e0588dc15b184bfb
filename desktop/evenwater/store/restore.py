"""Putting a copy back in the place of the log, in one transaction, after a copy of the log as it was.

SQLite's backup interface would write the pages faster, but it cannot hold the log between its copy and its change: what
another window saves in that moment would be in neither.
"""

from __future__ import annotations

import shutil
import sqlite3
import uuid
from collections.abc import Iterator
from contextlib import closing, contextmanager
from datetime import UTC, datetime
from pathlib import Path

from evenwater.store.backups import folder_of, is_small, made_folder, write_copy
from evenwater.store.copies import check_header, of_copy, reading
from evenwater.store.errors import StoreError, refused, translated
from evenwater.store.migrations import MIGRATIONS, migrate, version_of
from evenwater.store.opening import flush_folder
from evenwater.store.sqlite import SqliteDatabase

# Indexes with their tables, since rows then move without being read; triggers after the rows.
_PARTS = """SELECT sql FROM copy.sqlite_master WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%'
    ORDER BY CASE type WHEN 'table' THEN 1 WHEN 'index' THEN 2 ELSE 3 END, rowid"""
_TABLES = "SELECT name FROM {}.sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY rowid"
_CARDS = "SELECT plan_id, state FROM main.card WHERE state <> 'in use'"
_SET_CARD = "UPDATE main.card SET state = ? WHERE plan_id = ? AND state = 'in use'"
_LATER_CARDS = "CREATE TEMP TABLE later AS SELECT * FROM main.card WHERE plan_id NOT IN (SELECT plan_id FROM copy.card)"
_ADD_LATER = "INSERT INTO main.card SELECT * FROM temp.later WHERE system_id IN (SELECT id FROM main.record)"
_VOID_LATER = "UPDATE temp.later SET state = 'void' WHERE state = 'in use'"


def put_back(file: Path, copy: Path, now: datetime, busy_seconds: float) -> Path:
    """Let the log ``file`` hold what ``copy`` holds, all of it or nothing; return the copy of the log as it was.

    The copy is checked and brought to the newest version apart from the log first. No card comes into use with it: one that
    was taken down or became void since then stays so, and one that was issued since then is void.

    Parameters
    ----------
    file, copy : Path
        The log, which may be open here and elsewhere, and one of its copies.
    now : datetime
        The present with a zone, for the name of the copy of the log as it was.
    busy_seconds : float
        How long another window is waited for [s].

    Raises
    ------
    StoreError
        ``"store.copy_gone"``, ``"store.copy_foreign"``, ``"store.copy_newer"`` or ``"store.copy_damaged"`` for what cannot
        be put back; else what the disk says. The log is then as it was.
    """
    check_header(copy)
    with _prepared(file, copy) as ready, translated(str(file)):
        # A connection of its own: the checks between tables are switched off while they are exchanged.
        address = f"{file.absolute().as_uri()}?mode=rw"
        with closing(sqlite3.connect(address, uri=True, timeout=busy_seconds, isolation_level=None)) as log:
            log.execute("PRAGMA synchronous = FULL")
            log.execute("ATTACH ? AS copy", (str(ready),))
            log.execute("BEGIN IMMEDIATE")
            try:
                # Nobody can write now, so this is the log to its last entry.
                kept = _keep(file, now)
                _exchange(log)
                _check(log, file)
            except BaseException:
                log.rollback()
                raise
            log.execute("COMMIT")
    return kept


def replace_damaged(file: Path, copy: Path, now: datetime) -> Path:
    """Let what ``copy`` holds stand in the place of a log that cannot be opened; return where that lies now.

    ``now`` has a zone and names it. A kill at any moment leaves either the damaged log or the whole one under its name.

    Raises
    ------
    StoreError
        As ``put_back`` says; the log is then as it was.
    """
    check_header(copy)
    with _prepared(file, copy) as ready, translated(str(file)):
        aside = _unused(file, f"{now.astimezone(UTC):%Y-%m-%d %H%M%S} damaged")
        beside = [file.with_name(f"{file.name}{end}") for end in ("-wal", "-shm")]
        for part in (file, *(path for path in beside if path.exists())):
            shutil.copy2(part, aside.with_name(f"{aside.name}{part.name.removeprefix(file.name)}"))
        # What lies beside it belongs to the damaged log; it must not be taken for part of the other one.
        for path in beside:
            path.unlink(missing_ok=True)
        ready.replace(file)
        flush_folder(file.parent)
    return aside


@contextmanager
def _prepared(file: Path, copy: Path) -> Iterator[Path]:
    """Yield a file that holds what ``copy`` does at the newest version, and was checked."""
    ready = made_folder(file) / f".restoring.{uuid.uuid4().hex}.part"
    try:
        try:
            with translated(str(copy)), reading(copy) as source:
                write_copy(source, str(copy), ready, "integrity_check")
            database = SqliteDatabase(ready.absolute().as_uri(), str(copy), 0.0)
            with closing(database):
                if version_of(database, len(MIGRATIONS)) < len(MIGRATIONS):
                    migrate(database, MIGRATIONS)
                if database.sql("PRAGMA foreign_key_check"):
                    raise refused("store.copy_damaged", file=str(copy))
        except StoreError as error:
            raise of_copy(error, copy) from error
        yield ready
    finally:
        ready.unlink(missing_ok=True)


def _keep(file: Path, now: datetime) -> Path:
    """Copy the log as it is under a name that no copy has."""
    target = _unused(file, f"{now.astimezone(UTC):%Y-%m-%d %H%M%S} before restoring")
    with reading(file) as source:
        write_copy(source, str(file), target, "quick_check")
    return target


def _unused(file: Path, name: str) -> Path:
    """Return a place among the copies where nothing lies yet."""
    target, number = folder_of(file) / f"{name}{file.suffix}", 1
    while target.exists():
        number += 1
        target = target.with_name(f"{name} {number}{file.suffix}")
    return target


def _exchange(log: sqlite3.Connection) -> None:
    """Take every table of the log away and put those of the copy in their place; nothing is for good before the commit."""
    gone = log.execute(_CARDS).fetchall()
    log.execute(_LATER_CARDS)
    for (name,) in log.execute(_TABLES.format("main")).fetchall():
        log.execute(f'DROP TABLE main."{name}"')
    parts = [sql for (sql,) in log.execute(_PARTS)]
    triggers = [sql for sql in parts if sql.startswith("CREATE TRIGGER")]
    for sql in parts:
        if sql not in triggers:
            log.execute(sql)
    for (name,) in log.execute(_TABLES.format("copy")).fetchall():
        log.execute(f'INSERT INTO main."{name}" SELECT * FROM copy."{name}"')  # noqa: S608  (names of our own tables)
    for sql in triggers:
        log.execute(sql)
    log.execute(f"PRAGMA main.user_version = {len(MIGRATIONS)}")
    log.executemany(_SET_CARD, [(state, plan_id) for plan_id, state in gone])
    log.execute(_VOID_LATER)
    log.execute(_ADD_LATER)


def _check(log: sqlite3.Connection, file: Path) -> None:
    """Refuse to keep what does not pass SQLite's own checks."""
    check = "integrity_check" if is_small(file) else "quick_check"
    sound = log.execute(f"PRAGMA main.{check}(1)").fetchone() == ("ok",)
    if not sound or log.execute("PRAGMA main.foreign_key_check").fetchone() is not None:
        raise refused("store.failed", file=str(file), detail="what was put back does not pass the check")
