"""A log of version 1, in which a stock had no batches, goes on as it was: every value, undo and redo."""

from __future__ import annotations

import multiprocessing
import os
import shutil
import sqlite3
from contextlib import closing
from multiprocessing.connection import Connection
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import AddRecord, Label, RemoveRecord, SetField, Step, Store, StoreError, in_use
from evenwater.store.backups import folder_of
from evenwater.store.migrations import MIGRATIONS
from evenwater.store.sqlite import SqliteDatabase
from tests.store.old_logs import FIRST, all_states, as_it_is_now, in_use_from, mixed_dates, state, write_history
from tests.store.writing import Times, added, typed

BATCHES = MIGRATIONS[:2]


def _whole(file: Path) -> tuple[int, list[str]]:
    """Return the version of a file and everything in it as text, after SQLite has checked it."""
    with closing(sqlite3.connect(file)) as plain:
        assert plain.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert plain.execute("PRAGMA foreign_key_check").fetchall() == []
        return plain.execute("PRAGMA user_version").fetchone()[0], list(plain.iterdump())


@pytest.fixture
def old(file: Path, times: Times) -> Path:
    """A jug that was edited, one that was removed, one whose making was undone, and a card."""
    with Store.open(file, times.clock(), FIRST) as store:
        store.apply(added("a", name="North frag bay"))
        store.apply(added("jug", kind="stock", name="White jug"))
        store.apply(typed("jug", "chemical", "sodium carbonate anhydrous"))
        store.apply(typed("jug", "dissolved", "100", "g", "oz"))
        store.apply(typed("jug", "dissolved", "106", "g", "oz"))
        store.apply(typed("jug", "mixed_on", "2026-11-21"))
        store.apply(added("gone", kind="stock", name="Blue jug", purity="99", mixed_on="last week"))
        store.apply(Step("remove", (RemoveRecord("gone"),)))
        store.apply(added("never", kind="stock", name="Third jug", label_dose="5"))
        store.undo()
    with closing(sqlite3.connect(file)) as plain:
        plain.execute(
            "INSERT INTO card VALUES ('A1', 1, 'a', 'alkalinity', '2026-11-25T09:00:00.000000+00:00',"
            " '2026-11-27T09:00:00.000000+00:00', 'in use', '{}')"
        )
        plain.commit()
    return file


def test_what_a_stock_said_is_said_by_its_batch(old: Path, times: Times) -> None:
    with Store.open(old, times.clock()) as store:
        assert store.records("stock") == ("jug",)
        assert store.records("batch") == ("jug:1",)
        assert store.values("jug") == {"name": Typed("White jug")}
        assert store.values("jug:1") == {
            "chemical": Typed("sodium carbonate anhydrous"),
            "dissolved": Typed("106", "g", "oz"),
            "mixed_on": Typed("2026-11-21"),
            "in_use_from": Typed("2026-11-21T00:00:00+00:00"),
        }
        assert in_use([(b, store.values(b)["in_use_from"].text) for b in store.records("batch")]) == "jug:1"


def test_a_removed_stock_has_its_batch_and_comes_back_with_it(old: Path, times: Times) -> None:
    with Store.open(old, times.clock()) as store:
        assert store.can_undo() == Label("remove", "stock", "", "gone")
        step = store.undo()
        assert step is not None
        assert step.edits == (RemoveRecord("gone", "stock"), RemoveRecord("gone:1", "batch"))
        assert store.records("batch") == ("jug:1", "gone:1")
        assert store.values("gone") == {"name": Typed("Blue jug")}
        assert store.values("gone:1") == {
            "purity": Typed("99"),
            "mixed_on": Typed("last week"),
            "in_use_from": Typed("1970-01-01T00:00:00+00:00"),
        }


def test_what_was_undone_before_can_be_redone_after(old: Path, times: Times) -> None:
    with Store.open(old, times.clock()) as store:
        assert store.can_redo() == Label("add", "stock", "", "never")
        step = store.redo()
        assert step is not None
        assert step.edits == (
            AddRecord("never", "stock"),
            AddRecord("never:1", "batch"),
            SetField("never", "name", Typed("Third jug"), kind="stock"),
            SetField("never:1", "label_dose", Typed("5"), kind="batch"),
        )
        assert store.values("never:1") == {
            "label_dose": Typed("5"),
            "in_use_from": Typed("1970-01-01T00:00:00+00:00"),
        }
        assert store.redo() is None


def test_an_old_edit_of_the_contents_is_undone_on_the_batch(old: Path, times: Times) -> None:
    with Store.open(old, times.clock()) as store:
        for _ in range(3):
            store.undo()
        assert store.can_undo() == Label("edit", "batch", "dissolved", "jug:1")
        store.undo()
        assert store.values("jug:1")["dissolved"] == Typed("100", "g", "oz")


def test_new_edits_go_on_behind_the_old_ones(old: Path, times: Times) -> None:
    with Store.open(old, times.clock()) as store:
        store.apply(typed("jug:1", "dissolved", "107", "g"))
        assert store.redo() is None
        store.undo()
        assert store.values("jug:1")["dissolved"] == Typed("106", "g", "oz")
        assert store.can_undo() == Label("remove", "stock", "", "gone")


def test_an_old_card_stays_in_use_and_names_no_batch(old: Path, times: Times) -> None:
    with Store.open(old, times.clock()) as store:
        (card,) = store.cards("in use")
        assert (card.plan_id, card.batch_id) == ("A1", "")
        assert store.void_cards_of("jug", ()) == []


@pytest.mark.parametrize("history", range(25))
def test_any_history_goes_on_as_it_was(file: Path, times: Times, history: int) -> None:
    write_history(file, history)
    before = file.with_name("as it was.sqlite")
    shutil.copyfile(file, before)
    since = {stock: in_use_from(text) for stock, text in mixed_dates(file).items()}
    assert since, "a history without a stock proves nothing"
    with Store.open(before, times.clock(), FIRST) as store:
        old, here = all_states(store)
    with Store.open(file, times.clock(), BATCHES) as store:
        assert state(store.snapshot()) == as_it_is_now(old[here], since)
    version, content = _whole(file)
    assert version == 2
    with Store.open(file, times.clock(), BATCHES) as store:
        assert _whole(file)[1] == content, "opening it again must do nothing"
        new, there = all_states(store)
    assert there == here
    assert new == [as_it_is_now(each, since) for each in old]
    assert _whole(file)[0] == 2


def test_histories_of_the_test_hold_what_they_are_there_for(tmp_path: Path) -> None:
    """Count what the 25 histories have in them, so that they cannot lose it unnoticed."""
    seen = dict.fromkeys(("removed stock", "undone step", "removal in the journal", "typed date"), 0)
    for history in range(25):
        file = tmp_path / str(history) / "log.sqlite"
        write_history(file, history)
        with closing(sqlite3.connect(file)) as plain:
            for what, question in (
                ("removed stock", "SELECT 1 FROM record WHERE kind = 'stock' AND removed = 1"),
                ("undone step", "SELECT 1 FROM journal WHERE undone = 1"),
                ("removal in the journal", "SELECT 1 FROM journal WHERE action = 'remove' AND record_id LIKE 's%'"),
                ("typed date", "SELECT 1 FROM value WHERE field = 'mixed_on' AND text = '2026-11-21'"),
            ):
                seen[what] += plain.execute(question).fetchone() is not None
    assert min(seen.values()) >= 5, seen


def test_it_is_copied_before_it_is_changed(old: Path, times: Times) -> None:
    before = _whole(old)
    for copy in folder_of(old).iterdir():
        copy.unlink()
    with Store.open(old, times.clock()):
        pass
    copy = folder_of(old) / "2026-11-25 090000 version 1.sqlite"
    assert _whole(copy) == before
    with Store.open(copy, times.clock()) as again:
        assert again.values("jug:1")["dissolved"] == Typed("106", "g", "oz")


def test_without_the_copy_it_is_not_changed(old: Path, times: Times) -> None:
    before = _whole(old)
    shutil.rmtree(folder_of(old))
    folder_of(old).write_text("in the way")
    with pytest.raises(StoreError):
        Store.open(old, times.clock())
    assert _whole(old) == before


def test_a_failure_after_the_last_statement_leaves_it_as_it_was(old: Path, times: Times) -> None:
    def fail(database: SqliteDatabase) -> None:
        BATCHES[1](database)
        database.sql("SELECT * FROM no_such_table")

    before = _whole(old)
    with pytest.raises(StoreError) as refusal:
        Store.open(old, times.clock(), (*FIRST, fail))
    assert refusal.value.reason.code == "store.migration_failed"
    assert _whole(old) == before
    with Store.open(old, times.clock()) as store:
        assert store.values("jug:1")["mixed_on"] == Typed("2026-11-21")


def _migrate_and_stand_still(file: Path, say: Connection) -> None:
    def stand_still(database: SqliteDatabase) -> None:
        BATCHES[1](database)
        say.send(database.sql("SELECT count(*) FROM record WHERE kind = 'batch'")[0][0])
        say.poll(60)

    Store.open(file, None, (*FIRST, stand_still))


@pytest.mark.skipif(os.name != "posix", reason="the signal that cannot be caught is a matter of POSIX")
def test_the_plug_pulled_in_the_middle_leaves_it_as_it_was(old: Path, times: Times) -> None:
    before = _whole(old)
    server = multiprocessing.get_context("forkserver")
    here, there = server.Pipe()
    process = server.Process(target=_migrate_and_stand_still, args=(old, there))
    process.start()
    there.close()
    assert here.recv() == 3
    process.kill()
    process.join(30)
    here.close()
    assert _whole(old) == before
    with Store.open(old, times.clock()) as store:
        assert store.values("jug:1")["mixed_on"] == Typed("2026-11-21")
