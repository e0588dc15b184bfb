"""The copies of the log that lie beside it: what each holds, what would be lost with it, and how it is carried away."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path
from typing import Any, Literal

from evenwater.engine.reasons import Reason
from evenwater.store.backups import bytes_of, folder_of, write_copy
from evenwater.store.entries import EntryKind, instant
from evenwater.store.errors import StoreError, refused, translated
from evenwater.store.migrations import MIGRATIONS
from evenwater.store.opening import cut_short, recognise

CopyKind = Literal["present", "daily", "before update", "before restoring"]

# How the files are called: by the day, or by the second and what came then.
_NAMES: tuple[tuple[CopyKind, re.Pattern[str]], ...] = (
    ("daily", re.compile(r"(\d{4}-\d\d-\d\d)")),
    ("before update", re.compile(r"(\d{4}-\d\d-\d\d \d{6}) version \d+")),
    ("before restoring", re.compile(r"(\d{4}-\d\d-\d\d \d{6}) before restoring(?: \d+)?")),
)
_STAMP, _DAY = "%Y-%m-%d %H%M%S", "%Y-%m-%d"
_TABLES = "SELECT name FROM sqlite_master WHERE type = 'table'"
_ENTRIES = "SELECT count(*), max(at_us) FROM entry WHERE removed = 0"
_SYSTEMS = "SELECT count(*) FROM record WHERE kind = 'system' AND removed = 0"
_LOST_ENTRIES = """SELECT kind, count(*) FROM main.entry
    WHERE removed = 0 AND id NOT IN (SELECT id FROM copy.entry WHERE removed = 0) GROUP BY kind"""
_ALL_ENTRIES = "SELECT kind, count(*) FROM main.entry WHERE removed = 0 GROUP BY kind"
_LOST_STEPS = """SELECT count(DISTINCT step) FROM main.journal
    WHERE undone = 0 AND code IN ('edit', 'add', 'remove') AND at_utc > coalesce((SELECT max(at_utc) FROM copy.journal), '')"""
_LOST_CARDS = """SELECT count(*) FROM main.card
    WHERE state = 'in use' AND plan_id NOT IN (SELECT plan_id FROM copy.card WHERE state = 'in use')"""
_OF_COPY = {
    "store.damaged": "store.copy_damaged",
    "store.foreign": "store.copy_foreign",
    "store.newer": "store.copy_newer",
}
_NOT_WRITTEN = {
    "store.full": "store.copy_full",
    "store.cannot_open": "store.copy_not_written",
    "store.read_only": "store.copy_not_written",
    "store.io": "store.copy_not_written",
}


@dataclass(frozen=True)
class Holds:
    """What a log holds: systems in the room, entries in force, and the instant of the newest of them."""

    systems: int
    entries: int
    newest: datetime | None


@dataclass(frozen=True)
class Copy:
    """A copy of the log, or the log itself (``"present"``).

    ``made`` is when it was written. ``holds`` is None where ``fault`` says why it cannot be used.
    """

    file: Path
    kind: CopyKind
    made: datetime
    size_bytes: int
    holds: Holds | None
    fault: Reason | None = None


@dataclass(frozen=True)
class Lost:
    """What the log holds and a copy does not: entries by kind, edits of records, and cards in use."""

    entries: tuple[tuple[EntryKind, int], ...]
    edits: int
    cards: int


def copies(file: Path) -> list[Copy]:
    """Return the copies of the log ``file``, the newest first; those that cannot be used say why.

    Only reads; may be called by any thread.

    Raises
    ------
    StoreError
        When their folder cannot be read.
    """
    folder = folder_of(file)
    with translated(str(folder)):
        found = sorted(folder.glob(f"*{file.suffix}")) if folder.exists() else []
        named = [(path, _kind_of(path)) for path in found]
        known = [_seen(path, kind) for path, kind in named if kind is not None]
    return sorted(known, key=_made, reverse=True)


def present_log(file: Path) -> Copy:
    """Return the log ``file`` itself as it is now; raises ``StoreError`` when it is not there."""
    with translated(str(file)):
        # Part of an open log lies in a file beside it.
        return replace(_seen(file, "present"), size_bytes=bytes_of(file))


def lost_with(file: Path, copy: Path) -> Lost:
    """Return what would go from the log ``file`` when ``copy`` took its place.

    Raises
    ------
    StoreError
        When one of them cannot be read.
    """
    check_header(copy)
    with translated(str(copy)), reading(file) as log:
        log.execute("ATTACH ? AS copy", (f"{copy.absolute().as_uri()}?mode=ro",))
        tables = {name for (name,) in log.execute(_TABLES.replace("sqlite_master", "copy.sqlite_master"))}
        entries = log.execute(_LOST_ENTRIES if "entry" in tables else _ALL_ENTRIES).fetchall()
        (edits,) = log.execute(_LOST_STEPS).fetchone()
        (cards,) = log.execute(_LOST_CARDS).fetchone()
    return Lost(tuple(sorted(entries)), edits, cards)


def carry(file: Path, source: Path, target: Path) -> None:
    """Write a copy of ``source`` (the log ``file`` or one of its copies) to ``target``, as one whole file that was checked.

    Raises
    ------
    StoreError
        ``"store.copy_target"`` for a place where the log or its copies lie, ``"store.copy_full"`` and
        ``"store.copy_not_written"`` for one that does not take it, ``"store.copy_damaged"`` and its like for a source
        that is no whole log. What was at ``target`` stays until the new copy is whole.
    """
    check_header(source)
    try:
        with translated(str(target)):
            place, log = target.resolve(), file.resolve()
            beside = place.parent == log.parent and place.name.startswith(log.name)
        if beside or place.parent == folder_of(log):
            raise refused("store.copy_target", file=str(target))
        with translated(str(source)), reading(source) as opened:
            write_copy(opened, str(source), place, "quick_check")
    except StoreError as error:
        code = _NOT_WRITTEN.get(error.reason.code)
        raise (refused(code, file=str(target)) if code else of_copy(error, source)) from error


def check_header(copy: Path) -> None:
    """Refuse a file that is no whole log of this program before SQLite touches it.

    Raises
    ------
    StoreError
        ``"store.copy_gone"``, ``"store.copy_foreign"``, ``"store.copy_damaged"``, or what the disk says.
    """
    if not copy.exists():
        raise refused("store.copy_gone", file=str(copy))
    try:
        recognise(copy)
        if cut_short(copy):
            raise refused("store.copy_damaged", file=str(copy))
    except StoreError as error:
        raise of_copy(error, copy) from error


def of_copy(error: StoreError, copy: Path) -> StoreError:
    """Return the refusal of a log as that of a copy of it; others stay."""
    code = _OF_COPY.get(error.reason.code)
    return refused(code, file=str(copy)) if code else error


@contextmanager
def reading(file: Path) -> Iterator[sqlite3.Connection]:
    """Open a file for reading, with its values as SQLite gives them."""
    with closing(sqlite3.connect(f"{file.absolute().as_uri()}?mode=ro", uri=True, isolation_level=None)) as opened:
        yield opened


def _kind_of(path: Path) -> CopyKind | None:
    return next((kind for kind, name in _NAMES if name.fullmatch(path.stem)), None)


def _seen(path: Path, kind: CopyKind) -> Copy:
    found = path.stat()
    made = datetime.fromtimestamp(found.st_mtime, UTC)
    stamp = next((m[1] for _, name in _NAMES if (m := name.fullmatch(path.stem))), "")
    # Whoever carries a copy about may give it another date, but hardly another name.
    if not f"{made:{_STAMP}}".startswith(stamp):
        with suppress(ValueError):
            made = datetime.strptime(stamp, _STAMP if " " in stamp else _DAY).replace(tzinfo=UTC)
    try:
        return Copy(path, kind, made, found.st_size, _holds(path))
    except StoreError as error:
        return Copy(path, kind, made, found.st_size, None, error.reason)


def _holds(path: Path) -> Holds:
    check_header(path)
    try:
        with translated(str(path)), reading(path) as opened:
            return _counted(path, opened)
    except StoreError as error:
        raise of_copy(error, path) from error


def _counted(path: Path, opened: sqlite3.Connection) -> Holds:
    version = _one(opened, "PRAGMA user_version")
    if version > len(MIGRATIONS):
        raise refused("store.copy_newer", file=str(path))
    tables = {name for (name,) in opened.execute(_TABLES)}
    if not {"record", "journal", "card"} <= tables:
        raise refused("store.copy_damaged", file=str(path))
    entries, newest = opened.execute(_ENTRIES).fetchone() if "entry" in tables else (0, None)
    return Holds(_one(opened, _SYSTEMS), entries, None if newest is None else instant(newest))


def _one(opened: sqlite3.Connection, question: str) -> Any:
    return opened.execute(question).fetchone()[0]


def _made(copy: Copy) -> datetime:
    return copy.made
