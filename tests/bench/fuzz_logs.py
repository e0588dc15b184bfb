"""Damaged log files, and what must hold of each: it opens, or it is refused in words and stays as it was, byte for byte.

SQLite keeps no check sums of what is in its pages, so that a flipped bit inside of a text that still fits its column is seen
by nobody; how often that happens is counted (``Outcome.changed``) and is no fault here.
"""

from __future__ import annotations

import random
import shutil
import sqlite3
import struct
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from evenwater.screens.room_words import sentence
from evenwater.store import Entry, Store, StoreError
from tests.store.logged import NOON, dose, everything, later, note, plan, reading
from tests.store.writing import Times, added, card_for, hasty, typed

_ENTRIES = 60
_DAMAGES = (
    "flip", "flip", "flip", "bytes", "page of zeros", "page of rubbish", "cut", "cut at a page", "longer", "header", "version", "application",
    "pages swapped", "beside", "beside cut", "beside only", "empty", "random", "another application's", "text", "json",
)  # fmt: skip


@dataclass(frozen=True)
class DamagedLog:
    """The bytes of a log, and of what lies beside it (empty: nothing does), and what was done to them."""

    content: bytes
    beside: bytes
    damage: str


@cache
def whole() -> tuple[tuple[bytes, bytes], frozenset[str]]:
    """Return the bytes of a log of the test's own and of what lies beside it, and the ids of all acknowledged entries.

    The second half of the entries is still in the file beside it, as when the plug was pulled.
    """
    with tempfile.TemporaryDirectory() as name:
        file, times = Path(name) / "log.sqlite", Times()
        with Store.open(file, times.clock()) as store:
            hasty(store)
            store.fill(added("a", name="North frag bay"))
            store.apply(added("b", name="South frag bay"))
            store.apply(added("jug", "stock", name="Soda ash"))
            for number in range(30):
                store.apply(typed("a", f"field {number}", "words " * number))
            store.start_plan(plan("P1"), card_for("P1", ""), note("n1"))
            store.log([_entry(number) for number in range(_ENTRIES // 2)])
            store.undo()
            store.redo()
        with Store.open(file, times.clock()) as store:
            hasty(store)
            for number in range(_ENTRIES // 2, _ENTRIES):
                store.log([_entry(number)])
            acknowledged = frozenset(everything(store))
            return (file.read_bytes(), file.with_name("log.sqlite-wal").read_bytes()), acknowledged


def _entry(number: int) -> Entry:
    make: Callable[..., Entry] = (reading, dose, note)[number % 3]
    return make(f"entry {number}", at=later(minutes=7.0 * number), system="ab"[number % 2])


@cache
def _closed() -> bytes:
    """Return the bytes of the same log after it was closed: nothing lies beside it."""
    (content, beside), _ = whole()
    with tempfile.TemporaryDirectory() as name:
        file = Path(name) / "log.sqlite"
        file.write_bytes(content)
        file.with_name("log.sqlite-wal").write_bytes(beside)
        Store.open(file, Times().clock()).close()
        return file.read_bytes()


@cache
def _of_another() -> bytes:
    with tempfile.TemporaryDirectory() as name:
        file = Path(name) / "other.sqlite"
        with closing(sqlite3.connect(file)) as other:
            other.execute("CREATE TABLE record (id, kind)")
            other.execute("INSERT INTO record VALUES ('a', 'system')")
            other.commit()
        return file.read_bytes()


def made(draw: random.Random) -> DamagedLog:  # noqa: PLR0912  (a way to damage for each)
    """Return a log with some damage."""
    damage = draw.choice(_DAMAGES)
    content, beside = bytearray(_closed()), bytearray()
    if damage.startswith("beside") or draw.random() < 0.2:
        content, beside = (bytearray(part) for part in whole()[0])
    page = struct.unpack_from(">H", content, 16)[0]
    pages = len(content) // page
    at = draw.randrange(len(content))
    begin = page * draw.randrange(pages)
    match damage:
        case "flip":
            for _ in range(draw.choice((1, 1, 2, 8, 100))):
                content[draw.randrange(len(content))] ^= 1 << draw.randrange(8)
        case "bytes":
            stretch = slice(at, at + draw.choice((1, 2, 4, 16, 400)))
            content[stretch] = draw.randbytes(len(content[stretch]))
        case "page of zeros":
            content[begin : begin + page] = bytes(page)
        case "page of rubbish":
            content[begin : begin + page] = draw.randbytes(page)
        case "pages swapped":
            other = page * draw.randrange(pages)
            content[begin : begin + page], content[other : other + page] = (
                content[other : other + page],
                content[begin : begin + page],
            )
        case "cut":
            del content[at:]
        case "cut at a page":
            del content[begin:]
        case "longer":
            content += draw.choice((b"\0", b"x" * page, bytes(content)))
        case "header":
            content[draw.randrange(100)] = draw.randrange(256)
        case "version":
            struct.pack_into(">i", content, 60, draw.choice((-1, 0, 1, 2, 3, 7, 99, 2**31 - 1)))
        case "application":
            struct.pack_into(">I", content, 68, draw.choice((0, 1, 0x0F055112)))
        case "beside":
            beside[draw.randrange(len(beside))] ^= 1 << draw.randrange(8)
        case "beside cut":
            del beside[draw.randrange(len(beside)) :]
        case "beside only":
            content = bytearray(draw.choice((b"", bytes(content[:page]), _closed(), draw.randbytes(page))))
        case "empty":
            content = bytearray(draw.choice((b"", b"\0", b"SQLite format 3\0")))
        case "random":
            content = bytearray(draw.randbytes(draw.choice((1, 16, 99, 100, 4096, 9999))))
        case "another application's":
            content = bytearray(_of_another())
        case _:
            _scribble(draw, content, damage)
    return DamagedLog(bytes(content), bytes(beside), damage)


def _scribble(draw: random.Random, content: bytearray, damage: str) -> None:
    """Write over letters of a text in the file with others, of one length, so that only its meaning is another."""
    marks = [b'{"', b'":', b'["'] if damage == "json" else [b"dKH", b"reading", b"dose", b"2026-", b"North", b"system"]
    mark = draw.choice(marks)
    places = [n for n in range(len(content)) if content.startswith(mark, n)]
    if places:
        at = draw.choice(places)
        content[at : at + len(mark)] = draw.choice((b"\xff" * 9, b"9" * 9, b'"' * 9, b"\0" * 9, b"}" * 9))[: len(mark)]


@dataclass(frozen=True)
class Outcome:
    """What became of a damaged log: "refused", "read" or "read in part"; what is wrong with that; what nobody could see."""

    became: str
    fault: str = ""
    changed: bool = False


def tried(log: DamagedLog, folder: Path) -> Outcome:
    """Open a damaged log, read everything in it, write to it and undo that."""
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir()
    file, beside = folder / "log.sqlite", folder / "log.sqlite-wal"
    file.write_bytes(log.content)
    if log.beside:
        beside.write_bytes(log.beside)
    try:
        store = Store.open(file, Times().clock())
    except StoreError as error:
        if file.read_bytes() != log.content or (beside.read_bytes() if beside.exists() else b"") != log.beside:
            return Outcome("refused", f"the refused file is another ({error.reason.code})")
        return Outcome("refused", _unsaid(error))
    with store:
        hasty(store)
        wrong, refusals, present = _read(store)
        wrong = wrong or _write(store)
    lost = not refusals and present != whole()[1]
    return Outcome("read in part" if refusals else "read", wrong, lost)


def _read(store: Store) -> tuple[str, int, frozenset[str]]:
    """Read everything; return what is wrong, how much was refused, and the ids of the entries that were read."""
    found: dict[str, object] = {}
    questions: tuple[tuple[str, Callable[[], object]], ...] = (
        ("snapshot", store.snapshot), ("entries", lambda: everything(store)), ("cards", store.cards), ("plans", lambda: store.plans(live=False)),
        ("undo", store.can_undo), ("redo", store.can_redo), ("history", lambda: store.history("entry 3")),
        ("latest", lambda: store.latest_of_all("reading")), ("columns", lambda: store.columns("a", "alkalinity")),
        ("doses", lambda: store.doses_within("a", "left", 24.0, NOON)),
    )  # fmt: skip
    refusals = 0
    for name, question in questions:
        try:
            found[name] = question()
        except StoreError as error:
            refusals += 1
            if unsaid := _unsaid(error):
                return unsaid, refusals, frozenset()
        except Exception as error:  # noqa: BLE001  (anything else is what is looked for)
            return f"{name}: {type(error).__name__}: {error}", refusals, frozenset()
    entries = found.get("entries", {})
    assert isinstance(entries, dict)
    return "", refusals, frozenset(entries)


def _write(store: Store) -> str:
    """Write, take it back, bring it again; return what is wrong."""
    try:
        store.apply(typed("a", "name", "West"))
        store.log([reading("one more", at=later(hours=9))])
        store.undo()
        store.redo()
        store.undo()
        store.undo()
        store.undo()
    except StoreError as error:
        return _unsaid(error)
    except Exception as error:  # noqa: BLE001  (anything else is what is looked for)
        return f"writing: {type(error).__name__}: {error}"
    return ""


def _unsaid(error: StoreError) -> str:
    said = sentence(error.reason)
    return "" if said.strip() and "(store." not in said else f"{error.reason.code} is not said in words: {said}"


def fault(log: DamagedLog, folder: Path) -> str:
    """Return what is wrong with what becomes of a damaged log, or nothing."""
    return tried(log, folder / "log").fault


def smaller(log: DamagedLog) -> Iterator[DamagedLog]:
    """Yield the same with less damage: one stretch after the other as it was."""
    base = _closed() if not log.beside else whole()[0][0]
    if len(base) != len(log.content):
        return
    wrong = [at for at in range(len(base)) if base[at] != log.content[at]]
    for size in (len(wrong) // 2, 1):
        for first in range(0, len(wrong), size) if size else ():
            content = bytearray(log.content)
            for at in wrong[first : first + size]:
                content[at] = base[at]
            yield DamagedLog(bytes(content), log.beside, log.damage)
