"""The copies of the open log: what lies there, what would be lost with one, and putting one back."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from evenwater.engine.reasons import Reason
from evenwater.store import Copy, Lost, Store, StoreError, carry, copies, lost_with, present_log, replace_damaged
from evenwater.store.backups import folder_of

if TYPE_CHECKING:
    from evenwater.session.document import Document


@dataclass(frozen=True)
class CopyList:
    """The log as it is and its copies, the newest first; ``fault`` says why they cannot be listed."""

    copies: tuple[Copy, ...]
    fault: Reason | None = None


def listed(file: Path) -> CopyList:
    """Return what lies beside the log ``file``. Only reads; may be called by any thread."""
    try:
        return CopyList((present_log(file), *copies(file)))
    except StoreError as error:
        return CopyList((), error.reason)


def usable_copy(file: Path) -> Copy | None:
    """Return the newest copy of a log that can be restored, or None."""
    try:
        return next((copy for copy in copies(file) if copy.fault is None), None)
    except StoreError:
        return None


def restore_damaged(file: Path, copy: Path) -> Path | Reason:
    """Put a copy in the place of a log that cannot be opened; return where the damaged one is kept."""
    try:
        return replace_damaged(file, copy, datetime.now(UTC))
    except StoreError as error:
        return error.reason


class Backups(QObject):
    """The copies of a ``Document``, which owns it. No method raises because of the disk: a ``Reason`` comes back instead."""

    def __init__(self, document: Document, store: Store) -> None:
        super().__init__(document)
        self._document, self._store = document, store

    @property
    def file(self) -> Path | None:
        """The log on the disk, or None for one in memory, which has no copies."""
        return self._store.file

    @property
    def folder(self) -> Path | None:
        """The folder with the copies, which may not be there yet."""
        return None if self._store.file is None else folder_of(self._store.file)

    def lost_with(self, copy: Path) -> Lost | Reason:
        """Return what would go from the log when a copy took its place."""
        if self._store.file is None:
            return Reason("store.no_copies")
        # What waits for the disk would go too.
        self._document.commit_point()
        if not self._document.save():
            return Reason("store.unsaved", {"count": self._document.unsaved()})
        try:
            return lost_with(self._store.file, copy)
        except StoreError as error:
            return error.reason

    def restore(self, copy: Path) -> Path | Reason:
        """Put a copy in the place of the log and show it; return the copy of the log as it was before.

        Every window that has the log open shows it once it comes to the front. Undo goes on from what the copy says
        of undo; putting back cannot be undone, but what was there before can be put back again.
        """
        if self._store.file is None:
            return Reason("store.no_copies")
        self._document.commit_point()
        if not self._document.save():
            return Reason("store.unsaved", {"count": self._document.unsaved()})
        try:
            kept = self._store.restore(copy)
        except StoreError as error:
            return error.reason
        self._document.show_again()
        self._document.announce_undo()
        return kept

    def carry(self, source: Path, target: Path) -> Reason | None:
        """Write a copy of the log, or of one of its copies, to any place; the reason when it cannot be."""
        if self._store.file is None:
            return Reason("store.no_copies")
        try:
            carry(self._store.file, source, target)
        except StoreError as error:
            return error.reason
        return None
