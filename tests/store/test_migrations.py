"""The mechanism of migrations, tried with steps made up for the purpose, and the dated copies."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import Store, StoreError
from evenwater.store.backups import KEEP, daily_copies, folder_of
from evenwater.store.migrations import MIGRATIONS
from evenwater.store.sqlite import SqliteDatabase
from tests.store.writing import Times, added, typed

NEWEST = len(MIGRATIONS)


def _add_colour(database: SqliteDatabase) -> None:
    database.sql("ALTER TABLE record ADD COLUMN colour TEXT NOT NULL DEFAULT 'none'")


def _number_colours(database: SqliteDatabase) -> None:
    database.sql("UPDATE record SET colour = colour || ' 3'")


def _fail_late(database: SqliteDatabase) -> None:
    database.sql("DELETE FROM value")
    database.sql("SELECT * FROM no_such_table")


@pytest.fixture
def log(file: Path, times: Times) -> Path:
    with Store.open(file, times.clock()) as store:
        store.apply(added("a", ph="8"))
    return file


def _look(file: Path) -> tuple[int, list[tuple[str, ...]], list[tuple[str, ...]]]:
    with closing(sqlite3.connect(file)) as plain:
        version = plain.execute("PRAGMA user_version").fetchone()[0]
        columns = [row[1] for row in plain.execute("PRAGMA table_info(record)")]
        colours = plain.execute("SELECT colour FROM record").fetchall() if "colour" in columns else []
        return version, colours, plain.execute("SELECT text FROM value").fetchall()


def test_a_log_is_brought_up_step_by_step_after_a_copy(log: Path, times: Times) -> None:
    steps = (*MIGRATIONS, _add_colour, _number_colours)
    with Store.open(log, times.clock(), steps) as store:
        assert store.values("a") == {"ph": Typed("8")}
    assert _look(log) == (NEWEST + 2, [("none 3",)], [("8",)])
    copy = folder_of(log) / f"2026-11-25 090000 version {NEWEST}.sqlite"
    assert _look(copy) == (NEWEST, [], [("8",)])


def test_a_new_log_takes_all_steps_and_needs_no_copy(file: Path, times: Times) -> None:
    with Store.open(file, times.clock(), (*MIGRATIONS, _add_colour)):
        pass
    assert _look(file)[0] == NEWEST + 1
    assert not list(folder_of(file).glob("*version*"))


def test_a_failing_step_leaves_the_log_as_it_was(log: Path, times: Times) -> None:
    with pytest.raises(StoreError) as refusal:
        Store.open(log, times.clock(), (*MIGRATIONS, _add_colour, _fail_late))
    assert refusal.value.reason.code == "store.migration_failed"
    assert refusal.value.reason.params["version"] == NEWEST + 2
    assert _look(log) == (NEWEST, [], [("8",)])
    with Store.open(log, times.clock()) as store:
        assert store.values("a") == {"ph": Typed("8")}


def test_without_a_copy_nothing_is_migrated(file: Path, times: Times) -> None:
    with Store.open(file, times.clock()):
        folder = folder_of(file)
    for copy in folder.iterdir():
        copy.unlink()
    folder.rmdir()
    folder.write_text("in the way")
    with pytest.raises(StoreError):
        Store.open(file, times.clock(), (*MIGRATIONS, _add_colour))
    assert _look(file)[0] == NEWEST


def test_a_migrated_log_is_refused_by_the_program_before(log: Path, times: Times) -> None:
    Store.open(log, times.clock(), (*MIGRATIONS, _add_colour)).close()
    with pytest.raises(StoreError) as refusal:
        Store.open(log, times.clock())
    assert refusal.value.reason.code == "store.newer"


# Dated copies


def test_one_copy_a_day_and_the_last_ten(file: Path, times: Times) -> None:
    for _ in range(KEEP + 4):
        for _ in range(2):
            with Store.open(file, times.clock()):
                pass
        times.pass_by(24 * 3600)
    assert [copy.stem for copy in daily_copies(file)] == [f"2026-{d}" for d in _days()]


def _days() -> list[str]:
    """The fourteen days from 25 November on, without the first four."""
    return ["11-29", "11-30", *(f"12-{day:02}" for day in range(1, 9))]


def test_a_program_that_runs_for_weeks_makes_its_copies_too(file: Path, times: Times) -> None:
    with Store.open(file, times.clock()) as store:
        store.apply(added("a", ph="8"))
        times.pass_by(24 * 3600)
        store.apply(typed("a", "ph", "9"))
        store.apply(typed("a", "ph", "10"))
    first, second = daily_copies(file)
    assert (first.stem, second.stem) == ("2026-11-25", "2026-11-26")
    # Each holds the log as it was before the day's first edit.
    assert [_look(copy)[2] for copy in (first, second)] == [[], [("8",)]]


def test_a_copy_is_one_whole_file_that_opens_as_a_log(file: Path, times: Times) -> None:
    with Store.open(file, times.clock()) as store:
        store.apply(added("a", ph="8"))
        times.pass_by(24 * 3600)
        store.apply(typed("a", "ph", "9"))
        assert {path.name for path in folder_of(file).iterdir()} == {"2026-11-25.sqlite", "2026-11-26.sqlite"}
    with Store.open(daily_copies(file)[1], times.clock()) as copy:
        assert copy.values("a") == {"ph": Typed("8")}


def test_the_day_of_a_copy_is_counted_in_utc(file: Path, times: Times) -> None:
    times.instant = datetime.fromisoformat("2026-11-25T23:30:00-05:00")
    Store.open(file, times.clock()).close()
    assert [copy.stem for copy in daily_copies(file)] == ["2026-11-26"]
    assert times.instant.astimezone(UTC).day == 26


def test_a_copy_that_fails_keeps_nobody_from_the_log(file: Path, times: Times) -> None:
    file.parent.mkdir(parents=True)
    folder_of(file).write_text("in the way")
    with Store.open(file, times.clock()) as store:
        assert store.backup_fault is not None
        store.apply(added("a", ph="8"))
        assert store.values("a") == {"ph": Typed("8")}
        folder_of(file).unlink()
        times.pass_by(24 * 3600)
        store.apply(typed("a", "ph", "9"))
        assert store.backup_fault is None
