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

from evenwater.store import Store, in_use
from tests.store.writing import added, swap_until_killed, write_until_killed

KILLS = 25
SWAPS_KILLED = 12


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
        # Some words and a moment: on a busy disk the same time holds fewer of them.
        numbers = [hear.recv() for _ in range(moments.randint(1, 6))]
        time.sleep(moments.uniform(0.0, 0.05))
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


@pytest.mark.skipif(os.name != "posix", reason="the signal that cannot be caught is a matter of POSIX")
def test_H12_a_jug_never_has_new_contents_and_an_old_card_in_force(file: Path) -> None:
    with Store.open(file) as store:
        for record, kind in (("a", "system"), ("jug", "stock"), ("jug:0", "batch"), ("jug:1", "batch")):
            store.apply(added(record, kind))
    server = multiprocessing.get_context("forkserver")
    server.set_forkserver_preload(["tests.store.writing"])
    moments = random.Random(20261126)
    number, heard, in_force = 0, set(), 0
    for _ in range(SWAPS_KILLED):
        hear, say = server.Pipe(duplex=False)
        writer = server.Process(target=swap_until_killed, args=(file, number, say))
        writer.start()
        say.close()
        first = number = hear.recv()
        for _ in range(moments.randrange(6)):
            number = hear.recv()
        time.sleep(moments.uniform(0.0, 0.05))
        writer.kill()
        writer.join(30)
        try:
            while True:
                number = hear.recv()
        except (EOFError, OSError):
            hear.close()
        heard.add(number - first)
        with Store.open(file) as store:
            jug = in_use([(batch, store.values(batch)["in_use_from"].text) for batch in store.records("batch")])
            assert jug in (f"jug:{number % 2}", f"jug:{(number + 1) % 2}")
            assert {card.batch_id for card in store.cards("in use")} <= {jug}
            in_force += len(store.cards("in use"))
            # One more swap may be on the disk than was heard; plan ids must not be used twice.
            number = max(number, *(int(card.plan_id[1:]) for card in store.cards())) + 1
    assert len(heard) > 3, "the kills must come at different moments"
    assert in_force, "some kills must leave a card in force"
