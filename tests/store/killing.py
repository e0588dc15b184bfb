"""Writers of entries that are made to be killed, and what must be true of the log after every kill."""

from __future__ import annotations

import multiprocessing
import random
import sqlite3
import time
import uuid
from contextlib import closing, suppress
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from multiprocessing.connection import Connection
from pathlib import Path

from evenwater.store import ENTRY_KINDS, Logged, Store
from tests.store.logged import dose, note, plan
from tests.store.writing import added, card_for

BEGAN = datetime(2026, 11, 1, tzinfo=UTC)
# So many entries an import has while it is being killed: long enough to be hit in the middle.
IMPORTED = 60


def prepare(file: Path) -> None:
    """Make the log that is written in."""
    with Store.open(file) as store:
        store.apply(added("a"))


def log_until_killed(file: Path, round_number: int, heard: Connection) -> None:
    """Say what was saved only after it was; every kind of transaction is hit.

    A dose is saved twice each time, as by somebody who does not trust the first answer.
    """
    with Store.open(file) as store:
        number = 0
        while True:
            number += 1
            turn = round_number + number  # so that each kind of transaction is the first after the first word at times
            name = f"{round_number}-{number}"
            at = BEGAN + timedelta(minutes=100_000 * round_number + 15 * number)
            first = dose(f"kept {name}", number, at)
            heard.send(("trying", first.id))
            if store.log([first]) is not Logged.NEW or store.log([first]) is not Logged.ALREADY:
                raise AssertionError("a new dose is new once")
            heard.send(("saved", first.id))
            changed = dose(first.id, number + 0.5, at)
            store.change_entry(changed)
            heard.send(("changed", first.id))
            lot = uuid.uuid4().hex
            many = [note(f"lot {lot} {line}", "x" * line, at) for line in range(IMPORTED if turn % 2 else 3)]
            store.import_entries(many, lambda _: True)
            heard.send(("brought in", first.id))
            if turn % 3 == 0:
                store.undo()
                store.redo()
            if turn % 5 == 0:
                store.remove_entries([entry.id for entry in many])
            if turn % 2 == 0:
                started = plan(f"P{name}", at)
                card = card_for(started.plan_id, "")
                store.start_plan(started, card, note(f"start {name}", at=at))


@dataclass
class Found:
    """What the kills came upon, so that a harness that kills nothing is seen."""

    kills: int = 0
    saved: int = 0
    tried: int = 0
    moments: set[int] = field(default_factory=set)


def kill(file: Path, kills: int, seed: int) -> Found:
    """Kill a writer again and again, some moments after one of its words.

    Raises AssertionError when anything said to be saved is not there.
    """
    prepare(file)
    # A server that has loaded the store already starts each writer in a moment.
    server = multiprocessing.get_context("forkserver")
    server.set_forkserver_preload(["tests.store.killing"])
    moments = random.Random(seed)
    found = Found()
    saved: dict[str, bool] = {}
    for number in range(kills):
        hear, say = server.Pipe(duplex=False)
        writer = server.Process(target=log_until_killed, args=(file, number, say))
        writer.start()
        say.close()
        heard = [hear.recv() for _ in range(moments.randint(1, 7))]
        time.sleep(moments.uniform(0.0, 0.02))
        writer.kill()
        writer.join(30)
        with suppress(EOFError, OSError):  # the end, or a word cut off by the kill
            while True:
                heard.append(hear.recv())
        hear.close()
        for word, entry_id in heard:
            if word != "trying":
                saved[entry_id] = word != "saved"
        found.moments.add(len(heard))
        found.tried += sum(word == "trying" for word, _ in heard)
        # One that was saved but not said any more stays.
        saved |= dict.fromkeys(look(file, saved, heard[-1][1]) - saved.keys(), False)
    found.kills, found.saved = kills, len(saved)
    return found


def look(file: Path, saved: dict[str, bool], last: str) -> set[str]:
    """Hold a log against what its writers said, and return the doses in it.

    ``saved`` tells of each dose that was said to be saved whether its change was too.
    """
    with closing(sqlite3.connect(file)) as plain:
        assert plain.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert plain.execute("PRAGMA foreign_key_check").fetchall() == []
    with Store.open(file) as store:
        entries = {entry.id: entry for entry in store.entries("a", ENTRY_KINDS)}
        doses = {entry_id: entry for entry_id, entry in entries.items() if entry.kind == "dose"}
        # One more may be there that could not be said any more; never one less, and none twice.
        assert saved.keys() <= doses.keys() <= saved.keys() | {last}
        assert len(doses) == len({entry.at for entry in doses.values()})
        for entry_id, entry in doses.items():
            number = int(entry_id.split("-")[1])
            assert entry.value in ((number + 0.5,) if saved.get(entry_id) else (number, number + 0.5))
            # What it said before its change is kept with it; undo and redo below add to that, and never anything else.
            before = [version.entry.value for version in store.history(entry_id)]
            assert before[:1] == [number] or (entry.value == number and not before)
        lots: dict[str, int] = {}
        for entry_id in entries:
            if entry_id.startswith("lot "):
                lots[entry_id.split()[1]] = lots.get(entry_id.split()[1], 0) + 1
        # An import is there as a whole or not at all.
        assert set(lots.values()) <= {3, IMPORTED}
        # A plan is live with its card and its note, or none of them is there.
        live = [each.plan_id for each in store.plans("a")]
        assert len(live) <= 1
        assert {card.plan_id for card in store.cards("in use")} <= set(live)
        started = {each.plan_id.removeprefix("P") for each in store.plans("a", live=False)}
        assert started <= {card.plan_id.removeprefix("P") for card in store.cards()}
        assert {entry_id.removeprefix("start ") for entry_id in entries if entry_id.startswith("start ")} == started
        _undo_and_redo(store)
    return set(doses)


def _undo_and_redo(store: Store) -> None:
    """Go some steps back and forth again: what can be undone was written with what was done."""
    before = store.entries("a", ENTRY_KINDS)
    back = sum(store.undo() is not None for _ in range(3))
    for _ in range(back):
        assert store.redo() is not None
    assert store.entries("a", ENTRY_KINDS) == before
