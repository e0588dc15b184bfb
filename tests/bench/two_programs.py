"""A program that works in a log at random while another one does, and notes the order in which the log changed."""

from __future__ import annotations

import json
import os
import random
import sqlite3
import time
from collections.abc import Callable, Collection, Iterator, Sequence
from contextlib import contextmanager
from multiprocessing.connection import Connection
from pathlib import Path
from typing import Any

from PySide6.QtCore import QCoreApplication

from evenwater.engine.quantities import Typed
from evenwater.session import Document
from evenwater.store import Entry, Logged, Looked, SetField, Step, Store, restore
from tests.store.logged import dose, later

LOG, COPY, ORDER = "evenwater.sqlite", "2026-11-20.sqlite", "order.jsonl"
FIELDS = ("ph", "name", "salinity")
WEIGHTS = {"edit": 40, "log": 30, "change": 9, "remove": 4, "undo": 9, "redo": 6, "restore": 2}
_AGAIN_S = 0.002

Line = list[Any]
"""What was done, to what, and what it is after."""


class Order:
    """The order in which the log changed, as lines of a file that several programs append to."""

    def __init__(self, file: Path) -> None:
        """Append to a file."""
        self._opened = os.open(file, os.O_WRONLY | os.O_APPEND | os.O_CREAT)

    def add(self, line: Line) -> None:
        """Add a line at once."""
        os.write(self._opened, (json.dumps(line) + "\n").encode())


class Noted(Store):
    """A log that notes each of its changes under the lock of it."""

    order: Order
    what: Line

    def _noting(self, what: Line, work: Callable[[], Any]) -> Any:
        self.what = what
        return work()

    @contextmanager
    def _writing(self) -> Iterator[None]:  # type: ignore[override]
        with super()._writing():
            yield
            self.order.add(self.what)

    def apply(self, step: Step, merge: bool = False) -> Step | None:
        (edit,) = (edit for edit in step.edits if isinstance(edit, SetField))
        return self._noting(["edit", edit.field, edit.after.text], lambda: super(Noted, self).apply(step, merge))

    def log(self, entries: Sequence[Entry], looked: Looked | None = None) -> Logged:
        return self._noting(["log", entries[0].id, entries[0].value], lambda: super(Noted, self).log(entries, looked))

    def change_entry(self, entry: Entry, by: str = "", seen: Entry | None = None) -> bool:
        return self._noting(["change", entry.id, entry.value], lambda: super(Noted, self).change_entry(entry, by, seen))

    def remove_entries(self, ids: Collection[str], by: str = "") -> bool:
        return self._noting(["remove", *ids, None], lambda: super(Noted, self).remove_entries(ids, by))

    def undo(self) -> Step | None:
        return self._noting(["undo", "", None], super().undo)

    def redo(self) -> Step | None:
        return self._noting(["redo", "", None], super().redo)


def work(folder: Path, name: str, operations: int, seed: int, heard: Connection) -> None:
    """Do so many things at random, say what was saved, and then what this window shows once both have ended."""
    QCoreApplication([])
    chance, order = random.Random(f"{seed} {name}"), Order(folder / ORDER)
    exchange = restore._exchange

    def exchanging(log: sqlite3.Connection) -> None:
        exchange(log)
        order.add(["restore", "", None])

    restore._exchange = exchanging
    with Noted.open(folder / LOG) as store:
        store.order = order
        document, said, mine = Document(store), [], [f"{name} 0"]
        for number in range(1, operations + 1):
            verb = chance.choices(list(WEIGHTS), list(WEIGHTS.values()))[0]
            said += _one(document, verb, f"{name} {number}", chance, mine, folder)
        while not document.save():
            time.sleep(_AGAIN_S)
        heard.send(said)
        heard.recv()
        document.refresh()
        shown = {name: document.value("a", name).text for name in FIELDS}
        heard.send(shown | {entry.id: entry.value for entry in document.log.entries("a", ("dose",))})
        heard.recv()


def _one(document: Document, verb: str, name: str, chance: random.Random, mine: list[str], folder: Path) -> list[Line]:
    """Do one thing; return the line it must have left, if it was said to be saved or is to be."""
    if verb == "edit":
        which = chance.choice(FIELDS)
        document.edit("a", which, Typed(name))
        return [["edit", which, name]]
    if verb == "log":
        mine.append(name)
        who, _, number = name.partition(" ")
        document.log.log([dose(name, 1.0, later(int(number)), who)])
        return [["log", name, 1.0]]
    old = chance.choice(mine[-5:])
    if verb == "change":
        value = 1 + int(name.rpartition(" ")[2]) / 10_000
        there = document.log.entry(old)
        changed = document.log.change_entry(dose(old, value, there.at, there.subject)) if there else Logged.REFUSED
        return [["change", old, value]] if changed is Logged.NEW else []
    if verb == "remove":
        return [["remove", old, None]] if document.log.remove_entries([old]) is Logged.NEW else []
    if verb == "restore":
        return [["restore", "", None]] if isinstance(document.backups.restore(folder / COPY), Path) else []
    return [[verb, "", None]] if (document.undo if verb == "undo" else document.redo)() else []
