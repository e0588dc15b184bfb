"""The open document: one object with signals, edits that can be undone, background work."""

from evenwater.session.changes import Change, RecordsChange, UndoState
from evenwater.session.document import Document, NewRecord
from evenwater.session.latest import Done, Failed, LatestOnly
from evenwater.session.paths import Paths

__all__ = [
    "Change",
    "Document",
    "Done",
    "Failed",
    "LatestOnly",
    "NewRecord",
    "Paths",
    "RecordsChange",
    "UndoState",
]
