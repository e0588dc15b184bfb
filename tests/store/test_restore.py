"""A copy is put back whole or not at all, nothing that is in the log is ever lost with it, and no card comes into use."""

from __future__ import annotations

import multiprocessing
import os
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import time
from collections import Counter
from contextlib import closing, suppress
from datetime import datetime
from multiprocessing.connection import Connection
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import (
    Card,
    Store,
    StoreError,
    copies,
    replace_damaged,
)
from evenwater.store import restore as restoring
from evenwater.store.backups import folder_of
from evenwater.store.migrations import MIGRATIONS
from tests.store.copied import newest_daily
from tests.store.logged import everything, later, note, reading
from tests.store.writing import Times, added, card_for

DAY = 24 * 3600.0


@pytest.fixture
def store(grown: Store) -> Store:
    return grown


def refusal(store: Store, copy: Path) -> str:
    """Restore, expect a refusal, and see that everything is as it was and stays usable."""
    assert store.file is not None
    before = everything(store, ["a"]), store.values("a"), {card.plan_id: card.state for card in store.cards()}
    there = sorted(folder_of(store.file).iterdir())
    with pytest.raises(StoreError) as refused:
        store.restore(copy)
    assert (everything(store, ["a"]), store.values("a"), {c.plan_id: c.state for c in store.cards()}) == before
    assert sorted(folder_of(store.file).iterdir()) == there
    return refused.value.reason.code


def states(store: Store) -> dict[str, str]:
    return {card.plan_id: card.state for card in store.cards()}


# Restoring


def test_the_log_holds_what_the_copy_held_and_the_log_as_it_was_is_a_copy(store: Store, file: Path) -> None:
    before = everything(store, ["a"]), store.values("a")
    kept = store.restore(newest_daily(file))
    assert list(everything(store, ["a"])) == ["kept"]
    assert store.values("a") == {"name": Typed("North frag bay")}
    assert store._database.pragma("journal_mode") == "wal"
    store.restore(kept)
    assert (everything(store, ["a"]), store.values("a")) == before


def test_restoring_twice_in_a_second_keeps_both_states(store: Store, file: Path) -> None:
    first = store.restore(newest_daily(file))
    store.log([reading("between", 7.7, later(50))])
    second = store.restore(newest_daily(file))
    assert first != second
    holds = {copy.file: copy.holds.entries for copy in copies(file) if copy.holds is not None}
    assert (holds[first], holds[second]) == (5, 2)


def test_everything_goes_on_after_it(store: Store, file: Path) -> None:
    store.restore(newest_daily(file))
    assert store.can_undo() is not None
    undone = store.undo()
    assert undone is not None
    assert undone.code == "log", "undo is that of the copy: the reading was logged last"
    assert everything(store, ["a"]) == {}
    assert store.redo() is not None
    assert store.log([reading("new", 7.0, later(60))])
    with pytest.raises(StoreError), store._database.writing():
        store._database.sql("DELETE FROM entry")  # the triggers are there again
    with closing(sqlite3.connect(file)) as plain:
        assert plain.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert plain.execute("PRAGMA foreign_key_check").fetchall() == []
        assert plain.execute("PRAGMA user_version").fetchone() == (len(MIGRATIONS),)


def test_H26_no_card_comes_into_use_with_a_copy(store: Store, file: Path) -> None:
    assert states(store) == {"HANGS": "in use", "GOES": "void", "NEW": "in use"}
    store.set_card_state("NEW", "removed")
    store.add_card(card_for("LAST", "", parameter="nitrate"))
    kept = store.restore(newest_daily(file))
    # In the copy GOES was in use; NEW and LAST had not been issued.
    assert states(store) == {"HANGS": "in use", "GOES": "void", "NEW": "removed", "LAST": "void"}
    store.restore(kept)
    assert states(store) == {"HANGS": "in use", "GOES": "void", "NEW": "removed", "LAST": "void"}


def test_a_card_for_a_system_that_the_copy_does_not_know_goes_with_it(store: Store, file: Path) -> None:
    store.apply(added("b"))
    store.add_card(card_for("THERE", "", system_id="b"))
    store.restore(newest_daily(file))
    assert "THERE" not in states(store)
    assert store.records("system") == ("a",)


def test_another_window_sees_it_and_goes_on(store: Store, file: Path, times: Times) -> None:
    with Store.open(file, times.clock()) as other:
        other.snapshot()
        store.restore(newest_daily(file))
        assert other.changed_elsewhere()
        assert list(everything(other, ["a"])) == ["kept"]
        assert other.log([reading("theirs", 7.0, later(70))])
    assert set(everything(store, ["a"])) == {"kept", "theirs"}


def test_what_another_window_saves_at_the_last_moment_is_in_the_copy(
    store: Store, file: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keep, heard = restoring._keep, []

    def while_it_is_kept(log: Path, now: datetime) -> Path:
        with closing(sqlite3.connect(log, timeout=0.01, isolation_level=None)) as other:
            try:
                other.execute("BEGIN IMMEDIATE")
            except sqlite3.OperationalError as error:
                heard.append(str(error))
        return keep(log, now)

    monkeypatch.setattr(restoring, "_keep", while_it_is_kept)
    store.restore(newest_daily(file))
    assert heard == ["database is locked"], "nobody can write between the copy and the change"


# Refusing


def test_a_copy_that_is_gone_is_refused(store: Store, file: Path) -> None:
    assert refusal(store, folder_of(file) / "2020-01-01.sqlite") == "store.copy_gone"


@pytest.mark.parametrize("kept", [0, 50, 0.4, 0.97])
def test_a_copy_that_was_cut_is_refused(store: Store, file: Path, kept: float) -> None:
    copy = newest_daily(file)
    whole = copy.read_bytes()
    copy.write_bytes(whole[: int(kept if kept > 1 else kept * len(whole))])
    assert refusal(store, copy) == "store.copy_damaged"


def test_a_copy_with_rubbish_in_it_is_refused(store: Store, file: Path) -> None:
    copy = newest_daily(file)
    content = bytearray(copy.read_bytes())
    for page in range(3, len(content) // 4096, 2):
        content[page * 4096 : page * 4096 + 512] = os.urandom(512)
    copy.write_bytes(bytes(content))
    assert refusal(store, copy) == "store.copy_damaged"


def test_another_applications_file_is_refused(store: Store, file: Path) -> None:
    copy = newest_daily(file)
    copy.unlink()
    with closing(sqlite3.connect(copy)) as plain:
        plain.execute("CREATE TABLE theirs (a)")
        plain.commit()
    assert refusal(store, copy) == "store.copy_foreign"


def test_a_copy_of_a_newer_program_is_refused(store: Store, file: Path) -> None:
    copy = newest_daily(file)
    with closing(sqlite3.connect(copy)) as plain:
        plain.execute(f"PRAGMA user_version = {len(MIGRATIONS) + 1}")
    assert refusal(store, copy) == "store.copy_newer"


def test_a_log_that_is_held_is_left_alone(store: Store, file: Path) -> None:
    with closing(sqlite3.connect(file, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        assert refusal(store, newest_daily(file)) == "store.locked"


@pytest.mark.parametrize("step", ["_keep", "_exchange", "_check"])
def test_a_full_disk_at_any_step_changes_nothing(
    store: Store, file: Path, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    done = getattr(restoring, step)

    def full(*arguments: object) -> None:
        done(*arguments)
        raise sqlite3.OperationalError("database or disk is full")

    monkeypatch.setattr(restoring, step, full)
    before = everything(store, ["a"]), states(store)
    with pytest.raises(StoreError):
        store.restore(newest_daily(file))
    assert (everything(store, ["a"]), states(store)) == before
    assert store.log([reading("after", 7.0, later(80))]), "the log is not held any longer"


def test_what_does_not_pass_its_check_is_taken_back(store: Store, file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    exchange = restoring._exchange

    def badly(log: sqlite3.Connection) -> None:
        exchange(log)
        log.execute("INSERT INTO main.value VALUES ('nobody', 'name', 'x', '', '')")

    monkeypatch.setattr(restoring, "_exchange", badly)
    before = everything(store, ["a"])
    with pytest.raises(StoreError) as refused:
        store.restore(newest_daily(file))
    assert refused.value.reason.code == "store.failed"
    assert everything(store, ["a"]) == before


def test_a_log_in_memory_has_no_copies() -> None:
    with Store.open_memory() as store, pytest.raises(ValueError, match="memory"):
        store.restore(Path("2026-11-25.sqlite"))


_RESTORER = """
import os, sys
from pathlib import Path
from evenwater.store import Store, StoreError, copies
file = Path(sys.argv[1])
if os.geteuid() == 0:
    os.setuid(65534)
with Store.open(file) as store:
    copy = next(c.file for c in copies(file) if c.kind == "daily")
    try:
        store.restore(copy)
    except StoreError as error:
        print(error.reason.code)
    print(store.values("a")["ph"].text)
"""


@pytest.mark.skipif(os.name != "posix", reason="permissions of another user are a matter of POSIX")
def test_a_folder_that_takes_no_copy_keeps_the_log_as_it_is() -> None:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        folder.chmod(0o777)
        file = folder / "evenwater.sqlite"
        with Store.open(file) as store:
            store.apply(added("a", ph="8"))
        for path in folder.iterdir():
            path.chmod(0o666 if path.is_file() else 0o555)
        told = subprocess.run(
            [sys.executable, "-c", _RESTORER, str(file)], capture_output=True, text=True, timeout=60, check=False
        )
        assert told.stdout.split() == ["store.cannot_open", "8"], told.stderr


# A log that cannot be opened


@pytest.fixture
def broken(store: Store, file: Path) -> Path:
    """A log with rubbish in its middle, closed."""
    store.close()
    content = bytearray(file.read_bytes())
    content[4096 : 3 * 4096] = os.urandom(2 * 4096)
    file.write_bytes(bytes(content))
    with pytest.raises(StoreError) as refused:
        Store.open(file)
    assert refused.value.reason.code == "store.damaged"
    return file


def test_a_copy_takes_the_place_of_a_damaged_log_and_that_is_kept(broken: Path, times: Times) -> None:
    damaged = broken.read_bytes()
    aside = replace_damaged(broken, newest_daily(broken), times.instant)
    assert aside.read_bytes() == damaged
    with Store.open(broken) as store:
        assert list(everything(store, ["a"])) == ["kept"]
    # It is no copy that could be restored.
    assert [copy.kind for copy in copies(broken)] == ["daily", "daily"]


def test_what_lies_beside_a_damaged_log_is_not_taken_for_part_of_the_other(broken: Path, times: Times) -> None:
    beside = broken.with_name(f"{broken.name}-wal")
    beside.write_bytes(b"left over")
    aside = replace_damaged(broken, newest_daily(broken), times.instant)
    assert aside.with_name(f"{aside.name}-wal").read_bytes() == b"left over"
    with Store.open(broken) as store:
        assert list(everything(store, ["a"])) == ["kept"]


def test_a_damaged_copy_does_not_take_the_place_of_a_damaged_log(broken: Path, times: Times) -> None:
    copy = newest_daily(broken)
    copy.write_bytes(copy.read_bytes()[:20000])
    damaged = broken.read_bytes()
    with pytest.raises(StoreError) as refused:
        replace_damaged(broken, copy, times.instant)
    assert refused.value.reason.code == "store.copy_damaged"
    assert broken.read_bytes() == damaged


# Killing

KILLS = 15


def _restore_until_killed(file: Path, source: Path, heard: Connection) -> None:
    """Log something, then put the copy back, again and again; say each entry once it is saved."""
    with Store.open(file) as store:
        number = 0
        while True:
            number += 1
            store.log([note(f"{os.getpid()} {number} {line}", "x" * 500, later(number)) for line in range(40)])
            heard.send(number)
            store.restore(source)


@pytest.mark.skipif(os.name != "posix", reason="the signal that cannot be caught is a matter of POSIX")
def test_a_kill_at_any_moment_leaves_the_log_or_the_copy_and_loses_nothing(
    store: Store, file: Path, tmp_path: Path
) -> None:
    source = tmp_path / "2026-11-26.sqlite"
    shutil.copyfile(newest_daily(file), source)
    store.restore(source)
    store.close()
    server = multiprocessing.get_context("forkserver")
    server.set_forkserver_preload(["tests.store.writing"])
    halves = 0
    for number in range(KILLS):
        hear, say = server.Pipe(duplex=False)
        writer = server.Process(target=_restore_until_killed, args=(file, source, say))
        writer.start()
        say.close()
        said = [hear.recv() for _ in range(1 + number % 2)]
        time.sleep(0.004 * number)
        writer.kill()
        writer.join(30)
        with suppress(EOFError, OSError):
            while True:
                said.append(hear.recv())
        hear.close()
        with closing(sqlite3.connect(file)) as plain:
            assert plain.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
            assert plain.execute("PRAGMA foreign_key_check").fetchall() == []
        with Store.open(file) as after:
            entries = set(everything(after, ["a"]))
        last = {f"{writer.pid} {said[-1]} {line}" for line in range(40)}
        assert "kept" in entries
        # Whatever is there besides is there whole: what was said last, what was saved and not said any more, or of an earlier life.
        rounds = Counter(entry.rpartition(" ")[0] for entry in entries - {"kept"})
        assert set(rounds.values()) <= {40}, rounds
        if not last <= entries:
            # The log was exchanged: what was in it is in the copy from before.
            kept = [copy.file for copy in copies(file) if copy.kind == "before restoring"]
            assert any(last <= _notes(copy) for copy in kept)
        halves += any(path.suffix == ".part" for path in folder_of(file).iterdir())
        for path in folder_of(file).iterdir():
            if "restoring" in path.name:
                path.unlink()
    assert halves > 2, "they must be killed in the middle"


def _notes(copy: Path) -> set[str]:
    with closing(sqlite3.connect(copy)) as plain:
        return {entry_id for (entry_id,) in plain.execute("SELECT id FROM entry")}


def test_a_card_is_the_same_after_it(store: Store, file: Path) -> None:
    (before,) = (card for card in store.cards("in use") if card.plan_id == "HANGS")
    store.restore(newest_daily(file))
    (after,) = store.cards("in use")
    assert isinstance(after, Card)
    assert after == before
