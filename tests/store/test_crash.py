"""The plug is pulled: a writing process is killed at random moments, again and again."""

from __future__ import annotations

import multiprocessing
import os
import random
import sqlite3
import time
from contextlib import closing
from pathlib import Path

import pytest

from evenwater.store import Store
from tests.store.writing import added, write_until_killed

KILLS = 25


@pytest.mark.skipif(os.name != "posix", reason="the signal that cannot be caught is a matter of POSIX")
def test_nothing_acknowledged_is_lost_when_the_writer_is_killed(file: Path) -> None:
    with Store.open(file) as store:
        store.apply(added("a", number="0"))
        store.apply(added("b"))
    # A server that has loaded the store already starts each writer in a moment.
    server = multiprocessing.get_context("forkserver")
    server.set_forkserver_preload(["tests.store.writing"])
    moments = random.Random(20261125)
    acknowledged, counts = 0, set()
    for _ in range(KILLS):
        hear, say = server.Pipe(duplex=False)
        writer = server.Process(target=write_until_killed, args=(file, acknowledged, say))
        writer.start()
        say.close()
        numbers = [hear.recv()]
        time.sleep(moments.uniform(0.0, 0.1))
        writer.kill()
        writer.join(30)
        try:
            while True:
                numbers.append(hear.recv())
        except (EOFError, OSError):
            # The end, or a number cut off by the kill: not heard, so not acknowledged.
            hear.close()
        counts.add(len(numbers))
        with Store.open(file) as store:
            found = int(store.values("a")["number"].text)
        # One more may be on the disk that could not be said any more; never one less.
        assert found in (numbers[-1], numbers[-1] + 1)
        acknowledged = found
        with closing(sqlite3.connect(file)) as plain:
            assert plain.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
            assert plain.execute("PRAGMA foreign_key_check").fetchall() == []
    assert len(counts) > 3, "the kills must come at different moments"
