"""What waits for a server that is away, on this computer's disk: a crash of the laptop loses nothing of it."""

from __future__ import annotations

import sqlite3
import uuid
from collections.abc import Sequence
from contextlib import closing, suppress
from pathlib import Path

from evenwater.store.errors import translated

_TABLE = (
    "CREATE TABLE IF NOT EXISTS waiting (place INTEGER PRIMARY KEY, token TEXT NOT NULL UNIQUE, body TEXT NOT NULL)"
)
_PATTERN = "waiting *.sqlite"


class Spool:
    """A file of one window, which holds it for itself as long as it lives.

    What a window left that has ended, however it ended, is taken over by the next one. Each thing that waits has a token
    which the server keeps once it was delivered, so that it is delivered once even where nobody heard the answer.
    """

    def __init__(self, folder: Path) -> None:
        """Make a file in ``folder`` and take over what others left there.

        Raises
        ------
        StoreError
            When the disk refuses.
        """
        self._file = folder / f"waiting {uuid.uuid4().hex}.sqlite"
        self._kept: list[tuple[str, str]] = []
        with translated(str(self._file)):
            folder.mkdir(parents=True, exist_ok=True)
            left = sorted(folder.glob(_PATTERN), key=_age)
            self._opened = _held(self._file)
            found: dict[str, str] = {}
            done = []
            for file in left:
                try:
                    other = _held(file)
                except sqlite3.OperationalError:
                    # Another window holds it.
                    continue
                with closing(other):
                    found |= dict(other.execute("SELECT token, body FROM waiting ORDER BY place"))
                done.append(file)
            self.keep(list(found.items()))
            # Only now, when all of it lies in ours: twice on the disk is once on the server.
            for file in done:
                file.unlink(missing_ok=True)

    def waiting(self) -> list[tuple[str, str]]:
        """Return what waits, as token and text, oldest first."""
        return list(self._kept)

    def keep(self, waiting: Sequence[tuple[str, str]]) -> None:
        """Let the file hold this and nothing else; it is on the disk when this returns.

        Raises
        ------
        StoreError
            When the disk refuses; the file then holds what it held.
        """
        wanted = list(waiting)
        if wanted == self._kept:
            return
        with translated(str(self._file)):
            self._opened.execute("BEGIN")
            try:
                same = 0
                while same < min(len(wanted), len(self._kept)) and wanted[same] == self._kept[same]:
                    same += 1
                self._opened.execute("DELETE FROM waiting WHERE place >= ?", (same,))
                rows = [(place, *wanted[place]) for place in range(same, len(wanted))]
                self._opened.executemany("INSERT INTO waiting VALUES (?, ?, ?)", rows)
                self._opened.execute("COMMIT")
            except BaseException:
                with suppress(sqlite3.Error):
                    self._opened.execute("ROLLBACK")
                raise
        self._kept = wanted

    def close(self) -> None:
        """Let go of the file, and of the file itself where nothing waits in it."""
        with translated(str(self._file)):
            self._opened.close()
            if not self._kept:
                self._file.unlink(missing_ok=True)


def _held(file: Path) -> sqlite3.Connection:
    """Open a file so that nobody else can until this process has ended or closed it."""
    opened = sqlite3.connect(file, timeout=0.0, isolation_level=None)
    try:
        opened.execute("PRAGMA locking_mode = EXCLUSIVE")
        opened.execute("PRAGMA synchronous = FULL")
        opened.execute("BEGIN EXCLUSIVE")
        opened.execute(_TABLE)
        # In this mode the lock stays after the commit.
        opened.execute("COMMIT")
    except BaseException:
        opened.close()
        raise
    return opened


def _age(file: Path) -> tuple[float, str]:
    return file.stat().st_mtime, file.name
