"""Two programs edit, log, change, take back and restore in one log at once; held against a reckoning of what each of them did.

Each program writes what it does into a file beside the log, inside the transaction and under its lock: the lines stand in the order
in which the log changed. A small model goes through them and must end with what the log holds, back to its beginning, and each word of
a program that something is saved must have its line, once.
"""

from __future__ import annotations

import argparse
import json
import multiprocessing
import sqlite3
import sys
import tempfile
from collections import Counter
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path
from typing import Any

from evenwater.store import Store
from evenwater.store.journal import LIMIT
from tests.bench.two_programs import COPY, FIELDS, LOG, ORDER, Line, work
from tests.store.logged import dose
from tests.store.writing import added


@dataclass
class Model:
    """What a log holds, and its way back: steps of (thing, before, after), those done first."""

    state: dict[str, Any] = field(default_factory=dict)
    done: list[tuple[str, Any, Any]] = field(default_factory=list)
    undone: list[tuple[str, Any, Any]] = field(default_factory=list)

    def copy(self) -> Model:
        """Return another one like it."""
        return Model(dict(self.state), list(self.done), list(self.undone))

    def do(self, line: Line) -> None:
        """Follow one line, but a restoring."""
        verb, thing, after = line
        if verb == "undo":
            if self.done:
                self.undone.append(self.done.pop())
                self.state[self.undone[-1][0]] = self.undone[-1][1]
        elif verb == "redo":
            if self.undone:
                self.done.append(self.undone.pop())
                self.state[self.done[-1][0]] = self.done[-1][2]
        elif self.state.get(thing) != after:  # what is taken out already is not taken out again
            self.done.append((thing, self.state.get(thing), after))
            self.undone.clear()
            del self.done[:-LIMIT]
            self.state[thing] = after


def seen(store: Store) -> dict[str, Any]:
    """Return what a log holds as the model does."""
    values = store.values("a")
    found = {entry.id: entry.value for entry in store.entries("a", ("dose",))}
    return found | {name: values[name].text for name in FIELDS if name in values}


@dataclass(frozen=True)
class Found:
    """What came of it; ``faults`` must be empty."""

    changes: int
    restored: int
    turns: int
    faults: tuple[str, ...]


def run(folder: Path, operations: int, seed: int) -> Found:
    """Let two programs work at once and hold the log against the model."""
    with Store.open(folder / LOG) as store:
        store.fill(added("a", ph="8"))
        store.log([dose("first 0", 1.0)])
    (folder / COPY).write_bytes((folder / LOG).read_bytes())
    server = multiprocessing.get_context("forkserver")
    server.set_forkserver_preload(["tests.bench.two_programs"])
    ends, programs = [], []
    for name in ("left", "right"):
        here, there = server.Pipe()
        programs.append(server.Process(target=work, args=(folder, name, operations, seed, there)))
        programs[-1].start()
        there.close()
        ends.append(here)
    said = [end.recv() for end in ends]
    for end in ends:
        end.send("both have ended")
    shown = [end.recv() for end in ends]
    for end, program in zip(ends, programs, strict=True):
        end.send("goodbye")
        program.join(60)
        end.close()
    faults = [f"a program ended with {program.exitcode}" for program in programs if program.exitcode != 0]
    lines = [json.loads(line) for line in (folder / ORDER).read_text().splitlines()]
    faults += _held(folder, lines, said, shown)
    who = [line[1].partition(" ")[0] for line in lines if line[0] == "log"]
    turns = sum(a != b for a, b in pairwise(who))
    return Found(len(lines), sum(line[0] == "restore" for line in lines), turns, tuple(faults))


def _held(folder: Path, lines: list[Line], said: list[list[Line]], shown: list[dict[str, Any]]) -> Iterator[str]:
    """Yield what is wrong with the log."""
    yield from _uncounted(lines, [line for each in said for line in each])
    with closing(sqlite3.connect(folder / LOG)) as plain:
        if plain.execute("PRAGMA integrity_check").fetchall() != [("ok",)]:
            yield "torn: the log does not pass the check"
        if plain.execute("PRAGMA foreign_key_check").fetchall():
            yield "torn: tables do not fit each other"
    model = Model({"ph": "8", "first 0": 1.0}, [("first 0", None, 1.0)])
    copied = model.copy()
    for line in lines:
        if line[0] == "restore":
            model = copied.copy()
        else:
            model.do(line)
    with Store.open(folder / LOG) as store:
        if any(_filled(each) != _filled(seen(store)) for each in shown):
            yield "a window shows something else than the log holds"
        yield from _unlike(store, model)


def _uncounted(lines: list[Line], said: list[Line]) -> Iterator[str]:
    """Yield what was said to be saved and has no line, or more than one."""
    written, words = Counter(map(json.dumps, lines)), Counter(map(json.dumps, said))
    for word, count in words.items():
        if written[word] < count:
            yield f"lost: {word} was said to be saved and is not"
        if json.loads(word)[0] in ("edit", "log", "change") and written[word] > count:
            yield f"doubled: {word} was saved {written[word]} times"


def _unlike(store: Store, model: Model) -> Iterator[str]:
    """Yield where the log is not as the model says, from now back to the beginning."""
    while (there := _filled(seen(store))) == (should := _filled(model.state)):
        if store.undo() is None:
            if model.done:
                yield f"{len(model.done)} steps cannot be taken back"
            return
        model.do(["undo", "", None])
    yield f"lost or doubled, {len(model.done)} steps from the beginning: {sorted(there.items() ^ should.items(), key=str)[:6]}"


def _filled(state: dict[str, Any]) -> dict[str, Any]:
    return {thing: value for thing, value in state.items() if value not in (None, "")}


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--operations", type=int, default=500, help="of each of the two")
    parser.add_argument("--seeds", type=int, default=10)
    chosen = parser.parse_args()
    wrong = 0
    for seed in range(chosen.seeds):
        with tempfile.TemporaryDirectory() as scratch:
            found = run(Path(scratch), chosen.operations, seed)
        print(
            f"seed {seed}: 2 x {chosen.operations} operations, {found.changes} changes, {found.restored} times restored, "
            f"{found.turns} turns, {len(found.faults)} faults",
            flush=True,
        )
        print(*found.faults[:20], sep="\n", end="\n" if found.faults else "", file=sys.stderr)
        wrong += len(found.faults)
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
