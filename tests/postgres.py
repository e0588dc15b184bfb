"""A PostgreSQL server of our own for tests: in a folder that is thrown away, on a local socket, reached by no network."""

from __future__ import annotations

import os
import shutil
import signal
import subprocess
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from itertools import count
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

if TYPE_CHECKING:
    from evenwater.store import Store
    from evenwater.store.address import Address

# Where Debian puts what belongs to no path of a user.
_PLACES = sorted(Path("/usr/lib/postgresql").glob("*/bin"), reverse=True)
_UNPRIVILEGED = "nobody"
_EMPTY = """SET search_path = evenwater;
    TRUNCATE record, value, value_gone, journal, card, plan, entry, entry_history, journal_entry, delivered RESTART IDENTITY;
    UPDATE log_state SET changes = 0, log_id = md5(random()::text)"""


def program(name: str) -> str:
    """Return where a program of PostgreSQL lies, or an empty text."""
    return next((str(place / name) for place in _PLACES if (place / name).exists()), shutil.which(name) or "")


def why_not() -> str:
    """Return why no server can be started here, or an empty text."""
    try:
        import psycopg  # noqa: F401
    except ImportError:
        return "psycopg is not installed"
    return "" if program("initdb") and program("postgres") else "no PostgreSQL server is installed"


class Server:
    """One server, which can be stopped, killed and started again."""

    def __init__(self, durable: bool = False) -> None:
        """Make its folder; ``durable`` lets it wait for the disk as one in a fish room does."""
        self.folder = Path(tempfile.mkdtemp(prefix="ew-pg-"))
        # The server refuses to be run by root.
        self._user: dict[str, Any] = {}
        if hasattr(os, "geteuid") and os.geteuid() == 0:
            import pwd

            nobody = pwd.getpwnam(_UNPRIVILEGED)
            self._user = {"user": nobody.pw_uid, "group": nobody.pw_gid, "extra_groups": []}
            shutil.chown(self.folder, _UNPRIVILEGED)
        self._settings = ["-c", "shared_buffers=32MB", "-c", "max_connections=60", "-c", "autovacuum=off"]
        if not durable:
            self._settings += ["-c", "fsync=off", "-c", "full_page_writes=off"]
        self._numbers = count()
        self._free: list[str] = []
        self._process: subprocess.Popen[bytes] | None = None
        words = [
            program("initdb"),
            "-D",
            self.folder / "data",
            "-A",
            "trust",
            "-U",
            "keeper",
            "--no-sync",
            "--no-locale",
        ]
        subprocess.run([*words, "-E", "UTF8"], check=True, capture_output=True, cwd=self.folder, **self._user)
        # One who must say a password.
        rules = self.folder / "data" / "pg_hba.conf"
        rules.write_text("local all guarded scram-sha-256\nlocal all all trust\n", encoding="ascii")
        self.start()

    def start(self) -> None:
        """Start it, and wait until it answers."""
        import psycopg

        deadline = time.monotonic() + 60.0
        while True:
            if self._process is None or self._process.poll() is not None:
                words = [program("postgres"), "-D", self.folder / "data", "-k", self.folder, "-c", "listen_addresses="]
                with (self.folder / "said").open("ab") as said:
                    self._process = subprocess.Popen(
                        [*words, *self._settings], cwd=self.folder, stdout=said, stderr=said, **self._user
                    )
            try:
                psycopg.connect(host=str(self.folder), user="keeper", dbname="postgres").close()
            except psycopg.OperationalError:
                # Right after a kill the other processes of the server still have to notice it.
                if time.monotonic() > deadline:
                    raise
                time.sleep(0.02)
            else:
                return

    def kill(self) -> None:
        """End it as a power cut does, or nearly: whatever it had in hand is not finished."""
        assert self._process is not None
        self._process.kill()
        self._process.wait(30)

    def stop(self) -> None:
        """Shut it down at once; who is connected is thrown out."""
        assert self._process is not None
        self._process.send_signal(signal.SIGINT)
        self._process.wait(30)

    def remove(self) -> None:
        """End it for good."""
        if self._process is not None and self._process.poll() is None:
            self.kill()
        shutil.rmtree(self.folder, ignore_errors=True)

    def ask(self, database: str, statement: str) -> list[tuple[Any, ...]]:
        """Run one statement as whoever looks after the server."""
        import psycopg

        with psycopg.connect(host=str(self.folder), user="keeper", dbname=database, autocommit=True) as connection:
            cursor = connection.execute(statement)
            return cursor.fetchall() if cursor.description else []

    def address(self, database: str, user: str = "keeper") -> Address:
        """Return where a database of it is."""
        from evenwater.store.address import Address

        return Address(str(self.folder), 5432, database, user)

    @contextmanager
    def empty(self) -> Iterator[Callable[[], str]]:
        """Yield what returns the name of another empty database; they are used again afterwards."""
        used: list[str] = []

        def take() -> str:
            name = self._free.pop() if self._free else f"log{next(self._numbers)}"
            if (name,) in self.ask("postgres", "SELECT datname FROM pg_database"):
                if self.ask(name, "SELECT 1 FROM pg_tables WHERE schemaname = 'evenwater'"):
                    self.ask(name, _EMPTY)
            else:
                self.ask("postgres", f"CREATE DATABASE {name}")
            used.append(name)
            return name

        yield take
        self._free += used


def on_server(server: Server, folder: Path, monkeypatch: pytest.MonkeyPatch, take: Callable[[], str]) -> None:
    """Let ``Store.open`` and ``Store.open_memory`` open logs on a server, each file a database of its own."""
    from evenwater.store import Store, link

    monkeypatch.setattr(link, "_LOCK_MS", 50)
    known: dict[Path | None, str] = {}
    laptops = count()

    def opened(file: Path | None, clock: Any = None, *_: Any, **__: Any) -> Store:
        name = known.setdefault(file, take()) if file is not None and file not in known else known.get(file) or take()
        # Whoever opens a file again sits at the same computer; two that have it open at once are two windows of it.
        place = folder / (f"laptop {next(laptops)}" if file is None else name)
        return Store.open_server(server.address(name), place, clock)

    monkeypatch.setattr(Store, "open", opened)
    monkeypatch.setattr(Store, "open_memory", lambda clock=None: opened(None, clock))


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    """One server for all tests of a process."""
    lacking = why_not()
    if lacking:
        pytest.skip(lacking)
    running = Server()
    yield running
    running.remove()
