"""The open document: one object with signals, edits that can be undone, background work."""

from evenwater.session.changes import Change, LogChange, PlansChange, RecordsChange, UndoState
from evenwater.session.document import Document
from evenwater.session.edits import NewRecord
from evenwater.session.entry_log import EntryLog
from evenwater.session.latest import Done, Failed, LatestOnly
from evenwater.session.opening import open_log
from evenwater.session.paths import Paths
from evenwater.store import ENTRY_KINDS, REPLACED, Card, Entry, EntryKind, Label, Logged, Plan, Version, content_id

__all__ = [
    "ENTRY_KINDS",
    "REPLACED",
    "Card",
    "Change",
    "Document",
    "Done",
    "Entry",
    "EntryKind",
    "EntryLog",
    "Failed",
    "Label",
    "LatestOnly",
    "LogChange",
    "Logged",
    "NewRecord",
    "Paths",
    "Plan",
    "PlansChange",
    "RecordsChange",
    "UndoState",
    "Version",
    "content_id",
    "open_log",
]
