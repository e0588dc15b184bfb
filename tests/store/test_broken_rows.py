"""What fuzzing has found in damaged logs: a refused one stays as it was with all that lies beside it, and rubbish is said."""

from __future__ import annotations

import os
import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from evenwater.store import Store, StoreError
from tests.store.logged import dose, everything, later, note, plan, reading
from tests.store.writing import Times, added, card_for, hasty, typed


@pytest.fixture
def ended(file: Path, times: Times, tmp_path: Path) -> Path:
    """A log whose program was ended: what was saved last lies in the file beside it."""
    with Store.open(file, times.clock()) as store:
        store.apply(added("a", name="North frag bay"))
    copy = tmp_path / "ended" / "log.sqlite"
    copy.parent.mkdir()
    with Store.open(file, times.clock()) as store:
        hasty(store)
        store.log([reading(str(number), at=later(minutes=20.0 * number)) for number in range(20)])
        for end in ("", "-wal"):
            copy.with_name(f"log.sqlite{end}").write_bytes(file.with_name(f"{file.name}{end}").read_bytes())
    return copy


def _parts(file: Path) -> tuple[bytes, bytes]:
    return file.read_bytes(), file.with_name(f"{file.name}-wal").read_bytes()


def _cut(content: bytearray) -> None:
    del content[len(content) // 2 :]


def _last_page(content: bytearray) -> None:
    content[-4096:] = b"\x5a" * 4096


def _schema(content: bytearray) -> None:
    at = content.index(b"CREATE TABLE record")
    content[at : at + 12] = b"CREATE T\xc5BLE"


@pytest.mark.parametrize("damage", [_cut, _last_page, _schema])
def test_a_refused_log_keeps_what_lies_beside_it(
    ended: Path, damage: Callable[[bytearray], None], times: Times
) -> None:
    content = bytearray(ended.read_bytes())
    damage(content)
    ended.write_bytes(content)
    before = _parts(ended)
    with pytest.raises(StoreError) as refusal:
        Store.open(ended, times.clock())
    assert refusal.value.reason.code == "store.damaged"
    assert _parts(ended) == before


def test_a_newer_log_keeps_what_lies_beside_it(ended: Path, times: Times) -> None:
    with (
        closing(sqlite3.connect(ended, isolation_level=None)) as held,
        closing(sqlite3.connect(ended, isolation_level=None)) as newer,
    ):
        held.execute("BEGIN")
        held.execute("SELECT count(*) FROM record").fetchone()
        newer.execute("PRAGMA user_version = 9999")
        before = _parts(ended)
    # Both have closed; what they moved into the log is put back beside it.
    for part, content in zip((ended, ended.with_name("log.sqlite-wal")), before, strict=True):
        part.write_bytes(content)
    with pytest.raises(StoreError) as refusal:
        Store.open(ended, times.clock())
    assert refusal.value.reason.code == "store.newer"
    assert _parts(ended) == before


def test_what_lies_beside_a_whole_log_is_read(ended: Path, times: Times) -> None:
    with Store.open(ended, times.clock()) as store:
        assert len(everything(store, ("a",))) == 20


@pytest.mark.parametrize("version", [-1, 0])
def test_a_version_that_no_log_has_is_damage_and_not_brought_up_to_date(file: Path, version: int) -> None:
    Store.open(file).close()
    with closing(sqlite3.connect(file)) as plain:
        plain.execute(f"PRAGMA user_version = {version}")
    before = file.read_bytes()
    with pytest.raises(StoreError) as refusal:
        Store.open(file)
    assert refusal.value.reason.code == "store.damaged"
    assert file.read_bytes() == before


RUBBISH = (
    ("UPDATE entry SET fields = '{\"value\": \"6' WHERE id = 'r'", lambda store: store.entry("r")),
    ("UPDATE entry SET fields = '5' WHERE id = 'r'", lambda store: store.entries("a")),
    ("UPDATE entry SET kind = 'rubbish' WHERE id = 'r'", lambda store: store.entry("r")),
    ("UPDATE entry SET at_us = 9223372036854775807 WHERE id = 'r'", lambda store: store.entry("r")),
    ("UPDATE entry SET value = -1 WHERE id = 'd'", lambda store: store.entries("a", ("dose",))),
    ("UPDATE entry SET who = x'ff' WHERE id = 'r'", lambda store: store.latest("a", "reading")),
    ("UPDATE entry_history SET until_us = 9223372036854775807", lambda store: store.history("r")),
    ("UPDATE card SET issued_utc = 'yesterday'", lambda store: store.cards()),
    ("UPDATE plan SET started_utc = ''", lambda store: store.plans("a")),
    ("UPDATE journal SET at_utc = 'x'", lambda store: store.can_undo()),
    ("UPDATE journal SET after_text = '[' WHERE action = 'entries'", lambda store: store.undo()),
    ("UPDATE value SET text = x'ff'", lambda store: store.snapshot()),
)  # fmt: skip


@pytest.mark.parametrize(("rubbish", "question"), RUBBISH, ids=[f"{n}" for n in range(len(RUBBISH))])
def test_rubbish_in_a_row_is_said_by_whatever_reads_it(
    file: Path, times: Times, rubbish: str, question: Callable[[Store], object]
) -> None:
    with Store.open(file, times.clock()) as store:
        hasty(store)
        store.apply(added("a", name="North frag bay"))
        store.start_plan(plan("P1"), card_for("P1", ""), note("n"))
        store.log([reading("r"), dose("d")])
        store.change_entry(reading("r", 6.9))
    with closing(sqlite3.connect(file)) as plain:
        # The log's own triggers would refuse it.
        for (name,) in plain.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            plain.execute(f"DROP TRIGGER {name}")
        plain.execute(rubbish)
        plain.commit()
    with Store.open(file, times.clock()) as store:
        with pytest.raises(StoreError) as refusal:
            question(store)
        assert refusal.value.reason.code in ("store.unreadable", "store.damaged")
        # The rest is used.
        assert store.apply(typed("a", "note", "still here")) is not None


def _renamed(file: Path) -> None:
    file.parent.rename(file.parent.with_name("elsewhere"))


def _removed(file: Path) -> None:
    shutil.rmtree(file.parent)


def _replaced(file: Path) -> None:
    file.with_name("other").write_bytes(b"another file")
    file.with_name("other").replace(file)


@pytest.mark.skipif(os.name != "posix", reason="elsewhere an open file cannot be moved")
@pytest.mark.parametrize("away", [_renamed, _removed, _replaced])
def test_nothing_is_said_to_be_saved_in_a_log_that_is_no_longer_there(
    file: Path, times: Times, away: Callable[[Path], None]
) -> None:
    with Store.open(file, times.clock()) as store:
        store.apply(added("a", name="North frag bay"))
        away(file)
        for act in (lambda: store.apply(typed("a", "ph", "8")), lambda: store.log([dose("d")]), store.undo):
            with pytest.raises(StoreError) as refusal:
                act()
            assert refusal.value.reason.code == "store.moved"
            assert refusal.value.reason.params["file"] == str(file)
        assert set(store.values("a")) == {"name"}
        if away is _renamed:
            file.parent.with_name("elsewhere").rename(file.parent)
            store.apply(typed("a", "ph", "8"))
    if away is _renamed:
        with Store.open(file, times.clock()) as store:
            assert set(store.values("a")) == {"name", "ph"}


def test_a_clock_that_is_set_back_loses_nothing_and_stops_nothing(file: Path, times: Times) -> None:
    with Store.open(file, times.clock()) as store:
        store.apply(added("a", name="North frag bay"))
        store.log([reading("before")])
        times.instant -= timedelta(days=400)
        store.log([reading("after", 7.0)])
        store.apply(typed("a", "ph", "8"))
        assert store.backup_fault is None
        assert store.undo() is not None
    with Store.open(file, times.clock()) as store:
        assert set(everything(store, ("a",))) == {"before", "after"}
        assert store.redo() is not None
        assert store.values("a")["ph"].text == "8"
