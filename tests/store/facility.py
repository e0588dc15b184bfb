"""A fish room with several laptops and a server, for tests."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from evenwater.store import Clock, Store, StoreError, link
from evenwater.store.address import Address
from evenwater.store.entries import micros
from evenwater.store.last_state import LastState
from tests.postgres import Server
from tests.store.logged import dose
from tests.store.writing import Times, added


class FishRoom:
    """One log on a server; each laptop has a folder of its own."""

    def __init__(self, server: Server, database: str, folder: Path, times: Times) -> None:
        self.server, self.database, self.folder, self.times = server, database, folder, times
        self._opened: list[Store] = []

    @property
    def address(self) -> Address:
        """Where the log is."""
        return self.server.address(self.database)

    def laptop(self, name: str, wait: bool = True) -> Store:
        """Open the log on a laptop."""
        times = self.times
        clock = Clock(lambda: times.instant, lambda: times.interval)
        self._opened.append(Store.open_server(self.address, self.folder / name, clock, wait=wait))
        return self._opened[-1]

    @staticmethod
    def answers(store: Store) -> bool:
        """Say whether the server is there again for a laptop."""
        store.changed_elsewhere()
        return store.backup_fault is None

    def close(self) -> None:
        """Close what is open; the server must run again for the next test."""
        for store in self._opened:
            store.close()

    @contextmanager
    def away(self) -> Iterator[None]:
        """Let the server be killed, and come back afterwards."""
        self.server.kill()
        try:
            yield
        finally:
            self.server.start()


@contextmanager
def fish_room(server: Server, folder: Path, times: Times, monkeypatch: pytest.MonkeyPatch) -> Iterator[FishRoom]:
    """Yield a room with the systems a and b; a lost server is looked for at once."""
    monkeypatch.setattr(link, "_PAUSE_SECONDS", 0.0)
    with server.empty() as take:
        room = FishRoom(server, take(), folder, times)
        first = room.laptop("first")
        first.fill(added("a", name="North frag bay"))
        first.apply(added("b", name="South frag bay"))
        first.close()
        yield room
        room.close()


def until(true: Callable[[], bool]) -> None:
    """Wait until something is so; a server that comes back is looked for by a thread."""
    deadline = time.monotonic() + 20.0
    while not true():
        assert time.monotonic() < deadline, "it never came"
        time.sleep(0.01)


def code(work: Callable[[], object]) -> str:
    """Return why something is refused."""
    with pytest.raises(StoreError) as refusal:
        work()
    return refusal.value.reason.code


def stranded(folder: Path, times: Times) -> Store:
    """Open a log whose server nobody can reach, on a laptop that saw it once: systems a and b, and the dose d in it."""
    place = folder / "last state.sqlite"
    if not place.exists():
        with Store.open(place, times.clock()) as store:
            store.fill(added("a", name="North frag bay"))
            store.apply(added("b", name="South frag bay"))
            store.log([dose("d")])
        seen = LastState(place, lambda: times.instant)
        seen.database.sql("INSERT INTO last_state VALUES ('log', 3, ?)", micros(times.instant))
        seen.close()
    return Store.open_server(Address(str(folder / "nowhere"), 5432, "log"), folder, times.clock(), wait=False)
