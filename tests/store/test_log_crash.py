"""The plug is pulled while entries are written, and processes log at once.

`python -m tests.bench --only kills` pulls it more often.
"""

from __future__ import annotations

import multiprocessing
import os
import time
from multiprocessing.connection import Connection
from pathlib import Path

import pytest

from evenwater.store import Entry, Logged, Store, StoreError
from tests.store.killing import kill
from tests.store.logged import dose, everything, later
from tests.store.writing import added

KILLS = 50

WRITERS = 3
EACH = 40

posix = pytest.mark.skipif(os.name != "posix", reason="the signal that cannot be caught is a matter of POSIX")


@posix
def test_H15_nothing_said_to_be_logged_is_lost_or_doubled_when_the_writer_is_killed(file: Path) -> None:
    found = kill(file, KILLS, 20261127)
    assert found.kills == KILLS
    assert found.tried > KILLS
    assert len(found.moments) > 5, "the kills must come at different moments"


def _log_persistently(file: Path, name: str, heard: Connection) -> None:
    """Log doses of one's own and doses that the others log as well, each of them twice, until the log takes them."""
    with Store.open(file, busy_seconds=0.01) as store:
        refused = 0
        for number in range(EACH):
            for entry in (
                dose(f"{name} {number}", 1, later(number)),
                dose(f"shared {number}", 2, later(number), "right"),
            ):
                for _ in range(2):
                    while not _logged(store, entry):
                        refused += 1
                        time.sleep(0.001)
        heard.send(refused)


def _logged(store: Store, entry: Entry) -> bool:
    try:
        return store.log([entry]) in (Logged.NEW, Logged.ALREADY)
    except StoreError as error:
        if error.reason.code != "store.locked":
            raise
        return False


@posix
def test_H14_processes_that_log_at_once_lose_and_double_nothing(file: Path) -> None:
    with Store.open(file) as store:
        store.apply(added("a"))
    server = multiprocessing.get_context("forkserver")
    server.set_forkserver_preload(["tests.store.killing"])
    hear, say = server.Pipe(duplex=False)
    writers = [server.Process(target=_log_persistently, args=(file, f"w{number}", say)) for number in range(WRITERS)]
    for writer in writers:
        writer.start()
    say.close()
    refused = [hear.recv() for _ in writers]
    for writer in writers:
        writer.join(60)
        assert writer.exitcode == 0
    hear.close()
    assert sum(refused) > 0, "they must get in each other's way"
    with Store.open(file) as store:
        found = everything(store, ["a"])
        assert found.keys() == {f"{who} {n}" for who in ("w0", "w1", "w2", "shared") for n in range(EACH)}
        assert store.doses_within("a", "left", 24, later()) == WRITERS * EACH
        assert store.doses_within("a", "right", 24, later()) == 2 * EACH
        undone = 0
        while store.undo():
            undone += 1
        assert undone == WRITERS * EACH + EACH + 1
