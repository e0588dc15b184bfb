"""Whether the log still lies where it was opened."""

from __future__ import annotations

import os
from pathlib import Path

from evenwater.store.errors import StoreError, refused, translated


class Place:
    """Knows which file lay in its place when a log was opened.

    POSIX lets a file be moved or removed while it is open, and what is saved in it then ends with the program although it was
    said to be saved. SQLite looks for that only where it keeps no file beside the log.
    """

    def __init__(self, file: Path | None) -> None:
        """Remember the file that lies there now; None, for a log in memory, never moves."""
        self._file = file if os.name == "posix" else None
        self._known = self._identity()

    def check(self) -> None:
        """Refuse to go on when another file, or none, lies there.

        Raises
        ------
        StoreError
            ``"store.moved"``, or what the disk says.
        """
        if self._file is not None and self._identity() != self._known:
            raise refused("store.moved", file=str(self._file))

    def _identity(self) -> tuple[int, int]:
        if self._file is None:
            return 0, 0
        try:
            with translated(str(self._file)):
                found = self._file.stat()
        except StoreError as error:
            if isinstance(error.__cause__, FileNotFoundError | NotADirectoryError):
                return 0, 0
            raise
        return found.st_dev, found.st_ino
