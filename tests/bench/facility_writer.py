"""One keeper at a laptop of a facility: logs doses and types, while the server goes away and the laptop itself is ended."""

from __future__ import annotations

import os
import time
from contextlib import suppress
from datetime import UTC, datetime, timedelta
from pathlib import Path

from evenwater.session.acts import LogEntries
from evenwater.session.waiting import WaitingLine
from evenwater.store import Looked, Store, StoreError
from evenwater.store.address import Address
from tests.store.logged import dose
from tests.store.writing import typed

BEGAN = datetime(2026, 11, 1, tzinfo=UTC)
# One in so many doses is the same planned one for everybody.
CONTESTED = 4
_AGAIN_S = 0.2
_MOST = 4


class Told:
    """What the keeper was told, line by line, in a file that outlives the program."""

    def __init__(self, file: Path) -> None:
        self._opened = os.open(file, os.O_WRONLY | os.O_CREAT | os.O_APPEND)

    def say(self, *words: object) -> None:
        """Add a line at once."""
        os.write(self._opened, (" ".join(map(str, words)) + "\n").encode())


def slot(number: int) -> datetime:
    """Return when a planned dose is due."""
    return BEGAN + timedelta(hours=number)


def write(address: Address, folder: Path, number: int, entries: int) -> None:
    """Log ``entries`` doses of one's own, and each planned one unless somebody has; go on where an earlier program was ended."""
    file = folder / "told"
    folder.mkdir(exist_ok=True)
    begun = file.read_text().count("begun") if file.exists() else 0
    told = Told(file)
    store = _opened(address, folder)
    line = WaitingLine(store.spool)
    for count in range(begun, entries):
        # A server is back before a keeper has written down more than a few things.
        while len(line) > _MOST:
            _send(line, store, told)
        told.say("begun", count)
        own = dose(f"{number}-{count}", 1.0 + count, BEGAN + timedelta(seconds=20 * count), f"pump {number}")
        ticket = line.put_act(LogEntries((own,)))
        _send(line, store, told)
        told.say("told", own.id, ticket.outcome.value)
        line.put(typed("a", f"typed {number}", str(count)), merge=False)
        _send(line, store, told)
        told.say("typed", count)
        if count % CONTESTED == 0:
            _planned(line, store, told, number, count // CONTESTED)
    while len(line):
        _send(line, store, told)
    told.say("ended")
    store.close()


def _opened(address: Address, folder: Path) -> Store:
    while True:
        try:
            return Store.open_server(address, folder)
        except StoreError:
            time.sleep(_AGAIN_S)


def _send(line: WaitingLine, store: Store, told: Told) -> None:
    _, remarks = line.save_to(store)
    for remark in remarks:
        told.say("remark", remark.code)
    if len(line):
        time.sleep(_AGAIN_S)


def _planned(line: WaitingLine, store: Store, told: Told, number: int, due: int) -> None:
    """Log the dose that is due unless it is in the log, as whoever is asked whether it is another one and says no."""
    since, until = slot(due), slot(due) + timedelta(minutes=30)
    there = None
    while there is None:
        with suppress(StoreError):
            there = store.entries("b", ("dose",), since=since, until=until)
    if there:
        told.say("seen", due)
        return
    planned = dose(f"planned {due} {number}", 5.0, since + timedelta(seconds=number), "jug", "b")
    ticket = line.put_act(LogEntries((planned,), Looked("b", since, until, frozenset())))
    _send(line, store, told)
    told.say("planned", due, number, ticket.outcome.value)
