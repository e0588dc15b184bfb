"""What waits for a server lies on the disk of the laptop, in its order, for one window at a time."""

from __future__ import annotations

import multiprocessing
import sqlite3
from contextlib import suppress
from pathlib import Path

import pytest

from evenwater.store import StoreError
from evenwater.store.spool import Spool
from tests.store.writing import keep_until_killed

THINGS = [("one", "the first"), ("two", "the second"), ("three", "the third")]


def test_what_waits_is_there_again_in_its_order(tmp_path: Path) -> None:
    spool = Spool(tmp_path)
    for count in range(1, 4):
        spool.keep(THINGS[:count])
    spool.keep([("one", "the first, longer"), *THINGS[1:]])
    spool.close()
    again = Spool(tmp_path)
    assert again.waiting() == [("one", "the first, longer"), *THINGS[1:]]
    again.keep(THINGS[2:])
    again.close()
    last = Spool(tmp_path)
    assert last.waiting() == THINGS[2:]
    last.keep([])
    last.close()
    assert not list(tmp_path.iterdir()), "where nothing waits no file stays"


def test_another_window_that_lives_keeps_its_own(tmp_path: Path) -> None:
    one, other = Spool(tmp_path), None
    one.keep(THINGS)
    other = Spool(tmp_path)
    assert other.waiting() == []
    other.close()
    one.close()
    assert Spool(tmp_path).waiting() == THINGS


@pytest.mark.parametrize("after", [3, 40])
def test_H68_what_was_kept_outlives_a_program_that_is_killed(tmp_path: Path, after: int) -> None:
    """Whatever a window was told is on the disk, whole, once it has ended in any way."""
    server = multiprocessing.get_context("forkserver")
    server.set_forkserver_preload(["tests.store.writing"])
    hear, say = server.Pipe(duplex=False)
    writer = server.Process(target=keep_until_killed, args=(tmp_path, say))
    writer.start()
    say.close()
    while (kept := hear.recv()) < after:
        pass
    writer.kill()
    writer.join(30)
    with suppress(EOFError, OSError):  # the end, or a word cut off by the kill
        while True:
            kept = hear.recv()
    spool = Spool(tmp_path)
    waiting = spool.waiting()
    assert len(waiting) >= kept
    assert waiting == [(f"token {number}", "x" * number) for number in range(len(waiting))]
    spool.keep([])
    spool.close()


def test_a_file_that_is_none_is_said_and_not_thrown_away(tmp_path: Path) -> None:
    strange = tmp_path / "waiting 1.sqlite"
    strange.write_bytes(b"no database at all" * 100)
    with pytest.raises(StoreError) as refusal:
        Spool(tmp_path)
    assert refusal.value.reason.code == "store.foreign"
    assert strange.exists()


def test_a_disk_that_refuses_leaves_what_was_kept(tmp_path: Path) -> None:
    spool = Spool(tmp_path)
    spool.keep(THINGS[:1])
    (pages,) = spool._opened.execute("PRAGMA page_count").fetchone()
    spool._opened.execute(f"PRAGMA max_page_count = {pages}")
    with pytest.raises(StoreError) as refusal:
        spool.keep([*THINGS[:1], ("huge", "x" * 100_000)])
    assert refusal.value.reason.code == "store.full"
    assert spool.waiting() == THINGS[:1]
    spool.close()
    with pytest.raises(sqlite3.ProgrammingError):
        spool._opened.execute("SELECT 1")
    assert Spool(tmp_path).waiting() == THINGS[:1]
