"""The open document: one object with signals, edits that can be undone, background work."""

from evenwater.session.changes import Change, RecordsChange, UndoState
from evenwater.session.document import Document
from evenwater.session.edits import NewRecord
from evenwater.session.latest import Done, Failed, LatestOnly
from evenwater.session.opening import open_log
from evenwater.session.paths import Paths
from evenwater.store import Card, Label

__all__ = [
    "Card",
    "Change",
    "Document",
    "Done",
    "Failed",
    "Label",
    "LatestOnly",
    "NewRecord",
    "Paths",
    "RecordsChange",
    "UndoState",
    "open_log",
]
