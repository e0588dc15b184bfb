"""Where the log lives on this machine, and where the demonstration does so instead."""

from __future__ import annotations

import shutil
import tempfile
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QStandardPaths

LOG_NAME = "evenwater.sqlite"


@dataclass(frozen=True)
class Paths:
    """The log's file; ``passing`` is True when it may be thrown away with its folder."""

    log: Path
    passing: bool = False

    @classmethod
    def of_keeper(cls) -> Paths:
        """Return the place for the keeper's own log.

        It depends on the application's name, which must be set before.
        """
        place = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppDataLocation)
        return cls(Path(place) / LOG_NAME)

    @staticmethod
    def of_server(key: str) -> Path:
        """Return the folder for what this computer keeps of a log on a server; ``key`` is that of its address."""
        place = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppDataLocation)
        return Path(place) / "servers" / key

    @classmethod
    def of_demo(cls) -> Paths:
        """Make a fresh folder among the machine's temporary files and return a place in it.

        Every demonstration starts anew, so that its readings are fresh, and none can come near the
        keeper's log.
        """
        place = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.TempLocation)
        return cls(Path(tempfile.mkdtemp(prefix="evenwater-demo-", dir=place)) / LOG_NAME, passing=True)

    def discard(self) -> None:
        """Throw a demonstration away with its folder; the keeper's log is never touched."""
        if self.passing:
            shutil.rmtree(self.log.parent, ignore_errors=True)
