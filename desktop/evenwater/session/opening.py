"""Opens the log as a document, or says why it cannot be opened."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject

from evenwater.engine.reasons import Reason
from evenwater.session.document import Document
from evenwater.store import Store, StoreError

# How long typing may wait for the disk [ms]: longer than a repaint, shorter than a keeper notices.
TYPING_MS = 60


def open_log(file: Path, parent: QObject | None = None) -> Document | Reason:
    """Open the log at a place, making it when there is none; the reason when it cannot be opened."""
    try:
        return Document(Store.open(file), parent, TYPING_MS)
    except StoreError as error:
        return error.reason
