"""The copies of the log: what each holds, what would be lost with it, and that it is carried away whole."""

from __future__ import annotations

import os
import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import Holds, Lost, Store, StoreError, carry, copies, lost_with, present_log
from evenwater.store.backups import folder_of
from tests.store.copied import newest_daily
from tests.store.logged import everything, later, reading
from tests.store.old_logs import FIRST
from tests.store.writing import Times, added, typed


@pytest.fixture
def store(grown: Store) -> Store:
    return grown


# Listing


def test_every_copy_says_what_it_holds(store: Store, file: Path, times: Times) -> None:
    store.restore(newest_daily(file))
    for day in ("25", "26"):
        os.utime(folder_of(file) / f"2026-11-{day}.sqlite", (0, 0))  # as after a walk on a stick
    found = copies(file)
    assert [(copy.kind, copy.holds) for copy in found] == [
        ("before restoring", Holds(1, 5, later(40))),
        ("daily", Holds(1, 1, later(0))),
        ("daily", Holds(0, 0, None)),
    ]
    assert found[0].made == times.instant
    assert found[2].made == datetime(2026, 11, 25, tzinfo=UTC)
    assert all(copy.fault is None and copy.size_bytes == copy.file.stat().st_size for copy in found)
    assert present_log(file).holds == Holds(1, 1, later(0))


def test_a_copy_from_before_an_update_is_listed_and_can_be_restored(file: Path, times: Times) -> None:
    with Store.open(file, times.clock(), FIRST) as old:
        old.apply(added("a", name="North frag bay"))
        old.apply(added("jug", "stock", chemical="sodium carbonate anhydrous", mixed_on="2026-11-20"))
    with Store.open(file, times.clock()) as store:
        (copy,) = (copy for copy in copies(file) if copy.kind == "before update")
        assert copy.holds == Holds(1, 0, None)
        assert copy.file.name.endswith("version 1.sqlite")
        times.pass_by(60)
        store.apply(typed("a", "name", "Another name"))
        store.log([reading("r")])
        # A log of version 1 has no entries.
        assert lost_with(file, copy.file) == Lost((("reading", 1),), 1, 0)
        store.restore(copy.file)
        assert store.values("a")["name"] == Typed("North frag bay")
        assert store.records("batch") == ("jug:1",), "it was brought up to date"
        assert store.log([reading("r")])
    with Store.open(file) as again:
        assert list(everything(again, ["a"])) == ["r"]


def test_strange_names_in_the_folder_are_passed_over(store: Store, file: Path) -> None:
    for name in ("notes.txt", "mine.sqlite", ".2026-11-25.sqlite.abc.part", "2026-11-25 x.sqlite"):
        (folder_of(file) / name).write_text("something")
    assert [copy.kind for copy in copies(file)] == ["daily", "daily"]


def test_a_copy_that_cannot_be_used_says_why(store: Store, file: Path) -> None:
    whole = newest_daily(file).read_bytes()
    (folder_of(file) / "2026-11-01.sqlite").write_bytes(whole[:100])
    (folder_of(file) / "2026-11-02.sqlite").write_text("a letter to somebody " * 200)
    newer = folder_of(file) / "2026-11-03.sqlite"
    newer.write_bytes(whole)
    with closing(sqlite3.connect(newer)) as plain:
        plain.execute("PRAGMA user_version = 99")
    faults = {copy.file.stem: copy.fault.code for copy in copies(file) if copy.fault is not None}
    assert faults == {
        "2026-11-01": "store.copy_damaged",
        "2026-11-02": "store.copy_foreign",
        "2026-11-03": "store.copy_newer",
    }


def test_without_a_copy_the_list_is_empty(tmp_path: Path) -> None:
    assert copies(tmp_path / "evenwater.sqlite") == []


def test_what_would_be_lost_is_counted(store: Store, file: Path) -> None:
    lost = lost_with(file, newest_daily(file))
    assert lost == Lost((("dose", 2), ("note", 1), ("reading", 1)), 1, 1)
    store.restore(newest_daily(file))
    assert lost_with(file, newest_daily(file)) == Lost((), 0, 0)


# Carrying away


def test_a_copy_and_the_log_itself_are_carried_away_whole(store: Store, file: Path, tmp_path: Path) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    (stick / ".somebody else's.part").write_text("not ours")
    os.utime(stick / ".somebody else's.part", (0, 0))
    carry(file, file, stick / "now.sqlite")
    carry(file, newest_daily(file), stick / "then.sqlite")
    assert sorted(path.name for path in stick.iterdir()) == [".somebody else's.part", "now.sqlite", "then.sqlite"]
    with Store.open(stick / "now.sqlite") as carried:
        assert everything(carried, ["a"]) == everything(store, ["a"])
    with Store.open(stick / "then.sqlite") as carried:
        assert list(everything(carried, ["a"])) == ["kept"]


@pytest.mark.parametrize("name", ["evenwater.sqlite", "evenwater.sqlite-wal", "evenwater backups/2026-11-25.sqlite"])
def test_nothing_is_carried_over_the_log_or_its_copies(store: Store, file: Path, name: str) -> None:
    target = file.parent / name
    before = target.read_bytes()
    with pytest.raises(StoreError) as refused:
        carry(file, newest_daily(file), target)
    assert refused.value.reason.code == "store.copy_target"
    assert target.read_bytes() == before


def test_a_place_that_is_not_there_is_refused(store: Store, file: Path, tmp_path: Path) -> None:
    with pytest.raises(StoreError) as refused:
        carry(file, file, tmp_path / "pulled out" / "log.sqlite")
    assert refused.value.reason.code == "store.copy_not_written"
    assert not (tmp_path / "pulled out").exists(), "no folder is made where a stick was"


def test_a_damaged_copy_is_not_carried_over_a_whole_one(store: Store, file: Path, tmp_path: Path) -> None:
    target = tmp_path / "copy.sqlite"
    carry(file, file, target)
    whole = target.read_bytes()
    copy = newest_daily(file)
    copy.write_bytes(copy.read_bytes()[:20000])
    with pytest.raises(StoreError) as refused:
        carry(file, copy, target)
    assert refused.value.reason.code == "store.copy_damaged"
    assert target.read_bytes() == whole
