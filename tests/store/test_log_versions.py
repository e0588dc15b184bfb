"""Logs of versions 1 and 2, which knew no entries, go on: every value, card, undo and redo, and then entries."""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from evenwater.store import Logged, Store, StoreError
from evenwater.store.backups import folder_of
from evenwater.store.migrations import MIGRATIONS
from evenwater.store.sqlite import SqliteDatabase
from tests.store.logged import dose, everything, note, plan, reading
from tests.store.old_logs import all_states, as_it_is_now, in_use_from, mixed_dates, state, write_history
from tests.store.writing import Times, added, card_for, hasty, typed

BATCHES = MIGRATIONS[:2]
NEWEST = len(MIGRATIONS)


def _whole(file: Path) -> tuple[int, list[str]]:
    """Return the version of a file and everything in it as text, after SQLite has checked it."""
    with closing(sqlite3.connect(file)) as plain:
        assert plain.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert plain.execute("PRAGMA foreign_key_check").fetchall() == []
        return plain.execute("PRAGMA user_version").fetchone()[0], list(plain.iterdump())


@pytest.mark.parametrize("history", range(8))
@pytest.mark.parametrize("version", [1, 2])
def test_any_history_goes_on_as_it_was(file: Path, times: Times, history: int, version: int) -> None:
    write_history(file, history)
    since = {stock: in_use_from(text) for stock, text in mixed_dates(file).items()}
    before = file.with_name("as it was.sqlite")
    shutil.copyfile(file, before)
    with Store.open(before, times.clock(), MIGRATIONS[:1]) as store:
        old, here = all_states(store)
    if version == 2:
        Store.open(file, times.clock(), BATCHES).close()
    Store.open(file, times.clock()).close()
    found, content = _whole(file)
    assert found == NEWEST
    with Store.open(file, times.clock()) as store:
        assert _whole(file)[1] == content, "opening it again must do nothing"
        assert state(store.snapshot()) == as_it_is_now(old[here], since)
        new, there = all_states(store)
    assert there == here
    assert new == [as_it_is_now(each, since) for each in old]


@pytest.fixture
def old(file: Path, times: Times) -> Path:
    """A log of version 2 with a card in force, an edit, and one more that was undone."""
    with Store.open(file, times.clock(), BATCHES) as store:
        store.apply(added("a", name="North frag bay"))
        store.apply(added("b", name="South frag bay"))
        store.add_card(card_for("A1", "jug:1"))
        store.apply(typed("a", "ph", "8.1"))
        store.apply(typed("a", "ph", "8.2"))
        store.undo()
    return file


def test_what_could_be_redone_still_can_and_entries_go_behind_the_edits(old: Path, times: Times) -> None:
    with Store.open(old, times.clock()) as store:
        assert [(card.plan_id, card.state) for card in store.cards()] == [("A1", "in use")]
        assert (everything(store), store.plans(live=False), store.latest_of_all("reading")) == ({}, [], [])
        store.redo()
        assert store.log([reading("r"), dose("d")]) is Logged.NEW
        store.start_plan(plan("P1"), card_for("P1", "jug:1"), note("n"))
        assert [(card.plan_id, card.state) for card in store.cards()] == [("A1", "void"), ("P1", "in use")]
    with Store.open(old, times.clock()) as store:
        labels = []
        while (label := store.can_undo()) is not None:
            labels.append(label.code)
            store.undo()
        assert labels == ["start_plan", "log", "edit", "edit", "add", "add"]
        assert everything(store) == {}


def test_it_is_copied_before_it_is_changed(old: Path, times: Times) -> None:
    before = _whole(old)
    Store.open(old, times.clock()).close()
    copy = folder_of(old) / "2026-11-25 090000 version 2.sqlite"
    assert _whole(copy) == before
    with Store.open(copy, times.clock()) as again:
        assert again.log([dose("d")]) is Logged.NEW


@pytest.mark.parametrize("last", [3, 4])
def test_a_failure_after_any_step_leaves_it_as_it_was(old: Path, times: Times, last: int) -> None:
    def fail(database: SqliteDatabase) -> None:
        MIGRATIONS[last - 1](database)
        database.sql("SELECT * FROM no_such_table")

    before = _whole(old)
    with pytest.raises(StoreError) as refusal:
        Store.open(old, times.clock(), (*MIGRATIONS[: last - 1], fail))
    assert (refusal.value.reason.code, refusal.value.reason.params["version"]) == ("store.migration_failed", last)
    assert _whole(old) == before
    with Store.open(old, times.clock()) as store:
        assert store.log([dose("d")]) is Logged.NEW


def test_a_thousand_old_steps_are_all_there(file: Path, times: Times) -> None:
    with Store.open(file, times.clock(), BATCHES) as store:
        hasty(store).apply(added("a"))
        for number in range(998):
            store.apply(typed("a", "ph", f"{number}"))
    with Store.open(file, times.clock()) as store:
        hasty(store).log([dose("d")])
        undone = 0
        while store.undo():
            undone += 1
        assert undone == 1000
        assert store.records("system") == ()
