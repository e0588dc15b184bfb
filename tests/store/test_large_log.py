"""A log of many years: opened, copied and asked without being read through."""

from __future__ import annotations

import os
import shutil
import sqlite3
import threading
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import Store, StoreError, backups
from evenwater.store.backups import daily_copies, folder_of
from evenwater.store.entry_reading import LATEST_OF_ALL
from tests.store.logged import NOON, dose, everything, later, note, reading, two_systems
from tests.store.writing import Times, hasty, typed

DAY = 24 * 3600


@pytest.fixture
def large(file: Path, times: Times, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A log that is large as soon as it has something in it, with the entries at its end."""
    with two_systems(file, times) as store:
        store.log([note(f"n{number}", f"{number} " * 100, later(number)) for number in range(400)])
    monkeypatch.setattr(backups, "SMALL_BYTES", 50_000)
    return file


def _code(file: Path) -> str:
    before = file.read_bytes()
    with pytest.raises(StoreError) as refusal:
        Store.open(file)
    assert file.read_bytes() == before
    return refusal.value.reason.code


# Opening


def test_it_is_opened_without_reading_its_entries(large: Path, times: Times, monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[str] = []
    from evenwater.store.sqlite import SqliteDatabase

    pragma = SqliteDatabase.pragma

    def noted(self: SqliteDatabase, name: str) -> object:
        asked.append(name)
        return pragma(self, name)

    monkeypatch.setattr(SqliteDatabase, "pragma", noted)
    Store.open(large, times.clock()).close()
    checks = {name for name in asked if "check" in name}
    assert checks == {f"integrity_check({table})" for table in ("record", "value", "journal", "card", "plan")}
    asked.clear()
    monkeypatch.setattr(backups, "SMALL_BYTES", 2**30)
    Store.open(large, times.clock()).close()
    assert [name for name in asked if "check" in name] == ["integrity_check(1)"]


@pytest.mark.parametrize("kept", [0.3, 0.9, 0.999])
def test_a_large_log_that_was_cut_is_damaged(large: Path, kept: float) -> None:
    whole = large.read_bytes()
    large.write_bytes(whole[: int(len(whole) * kept)])
    assert _code(large) == "store.damaged"


def test_a_large_log_with_rubbish_in_its_records_is_damaged(large: Path) -> None:
    content = bytearray(large.read_bytes())
    page = int.from_bytes(content[16:18], "big")
    with closing(sqlite3.connect(large)) as plain:
        (root,) = plain.execute("SELECT rootpage FROM sqlite_master WHERE name = 'value'").fetchone()
    content[(root - 1) * page : root * page] = os.urandom(page)
    large.write_bytes(bytes(content))
    assert _code(large) == "store.damaged"


def test_rubbish_in_its_entries_is_said_when_they_are_read_and_by_the_copy(large: Path, times: Times) -> None:
    content = bytearray(large.read_bytes())
    page = int.from_bytes(content[16:18], "big")
    content[-3 * page :] = os.urandom(3 * page)
    large.write_bytes(bytes(content))
    times.pass_by(DAY)
    store = Store.open(large, times.clock())
    assert store.values("a") == {"name": Typed("North frag bay")}
    with pytest.raises(StoreError) as refusal:
        everything(store)
    assert refusal.value.reason.code == "store.damaged"
    store.close()
    assert store.backup_fault is not None
    assert store.backup_fault.code == "store.damaged"
    # A damaged log never takes the place of a sound copy.
    assert [copy.stem for copy in daily_copies(large)] == ["2026-11-25"]
    assert not list(folder_of(large).glob(".*"))


def test_what_a_crash_left_beside_it_is_not_taken_for_a_cut(large: Path, times: Times, tmp_path: Path) -> None:
    """The copy of a log in use: its newest pages are still in the file beside it."""
    crashed = tmp_path / "crashed" / large.name
    crashed.parent.mkdir()
    with Store.open(large, times.clock()) as store:
        store.log([note("new", "x" * 100_000)])
        for name in (large.name, f"{large.name}-wal"):
            shutil.copyfile(large.with_name(name), crashed.with_name(name))
    with Store.open(crashed, times.clock()) as store:
        assert store.entry("new") is not None


# The daily copy


@pytest.fixture
def held(monkeypatch: pytest.MonkeyPatch) -> Iterator[threading.Event]:
    """Hold every copy back until it is let go."""
    go, copy = threading.Event(), backups.write_copy

    def when_let_go(*given: object) -> None:
        assert go.wait(30)
        copy(*given)  # type: ignore[arg-type]

    monkeypatch.setattr(backups, "write_copy", when_let_go)
    yield go
    go.set()


def test_nobody_waits_for_the_copy_and_it_shows_the_log_before_the_first_edit(
    large: Path, times: Times, held: threading.Event
) -> None:
    times.pass_by(DAY)
    with Store.open(large, times.clock()) as store:
        assert [copy.stem for copy in daily_copies(large)] == ["2026-11-25"]
        store.log([dose("d")])
        store.apply(typed("a", "ph", "8"))
        held.set()
    # Closing waits for it.
    copied = daily_copies(large)[-1]
    assert copied.stem == "2026-11-26"
    with closing(sqlite3.connect(copied)) as plain:
        assert plain.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert plain.execute("SELECT count(*) FROM entry").fetchall() == [(400,)]
        assert plain.execute("SELECT count(*) FROM value WHERE field = 'ph'").fetchall() == [(0,)]


def test_a_program_that_runs_for_weeks_copies_a_large_log_every_day(large: Path, times: Times) -> None:
    with hasty(Store.open(large, times.clock())) as store:
        for number in range(3):
            times.pass_by(DAY)
            store.log([dose(f"d{number}")])
    assert [copy.stem for copy in daily_copies(large)] == [f"2026-11-{day}" for day in (25, 26, 27, 28)]


def test_what_a_killed_copy_left_is_thrown_away_a_day_later(large: Path, times: Times) -> None:
    folder = folder_of(large)
    old, fresh = folder / ".2026-11-24.sqlite.1.part", folder / ".2026-11-26.sqlite.2.part"
    for left in (old, fresh):
        left.write_bytes(b"half")
    os.utime(old, (0, 0))
    times.pass_by(DAY)
    Store.open(large, times.clock()).close()
    assert not old.exists()
    assert fresh.exists()


def test_a_copy_that_fails_beside_the_work_is_said(large: Path, times: Times, held: threading.Event) -> None:
    times.pass_by(DAY)
    with Store.open(large, times.clock()) as store:
        shutil.rmtree(folder_of(large))
        folder_of(large).write_text("in the way")
        held.set()
    assert store.backup_fault is not None
    assert store.backup_fault.code == "store.cannot_open"


# Questions


def test_the_newest_of_all_is_found_by_steps_into_the_tree_and_no_scan(file: Path, times: Times) -> None:
    with two_systems(file, times) as store:
        plan = store._database.sql(f"EXPLAIN QUERY PLAN {LATEST_OF_ALL}", *["reading"] * LATEST_OF_ALL.count("?"))
    lines = [row[3] for row in plan]
    of_entries = [line for line in lines if line.split()[1:2] in (["e"], ["n"])]
    assert len(of_entries) == 4
    assert all(line.startswith(("SEARCH e USING PRIMARY KEY", "SEARCH n USING PRIMARY KEY")) for line in of_entries)
    # What is gone through is the list of series found on the way.
    assert {line for line in lines if line.startswith("SCAN")} == {"SCAN s"}


def _steps(store: Store, question: object) -> int:
    """Return how often SQLite's machine carries out 20 instructions for a question; no clock is asked."""
    count = 0

    def one_more() -> int:
        nonlocal count
        count += 1
        return 0

    connection = store._database.connection
    connection.set_progress_handler(one_more, 20)
    question()  # type: ignore[operator]
    connection.set_progress_handler(None, 0)
    return count


@pytest.mark.parametrize(
    "question", ["latest_of_all", "latest_by_subject", "newest entries", "near", "doses", "columns"]
)
def test_a_question_costs_what_it_answers_and_not_what_the_log_holds(file: Path, times: Times, question: str) -> None:
    with hasty(two_systems(file, times)) as store:
        questions = {
            "latest_of_all": lambda: store.latest_of_all("reading"),
            "latest_by_subject": lambda: store.latest_by_subject("a", "reading"),
            "newest entries": lambda: store.entries("a", newest_first=True, limit=5),
            "near": lambda: store.near_duplicates(dose("new", 1, NOON)),
            "doses": lambda: store.doses_within("a", "left", 24, NOON),
            "columns": lambda: store.columns("a", "alkalinity", since=later(hours=-100)),
        }
        few = [reading(f"f{n}", n, later(hours=-n)) for n in range(20)] + [
            dose(f"g{n}", 1, later(-n)) for n in range(5)
        ]
        store.log([*few, reading("c", 1, NOON, "calcium"), reading("b", 1, NOON, "calcium", "b")])
        before, answer = _steps(store, questions[question]), questions[question]()
        old = [reading(f"o{n}", n, later(hours=-200 - n)) for n in range(2000)]
        old += [reading(f"p{n}", n, later(hours=-200 - n), "calcium", "b") for n in range(2000)]
        old += [dose(f"q{n}", n, later(hours=-200 - n)) for n in range(2000)]
        store.import_entries(old, lambda _: True)
        assert _steps(store, questions[question]) <= before * 1.1 + 2
        after = questions[question]()
        assert repr(after) == repr(answer)
