"""The open document: one object with signals, edits that can be undone, background work."""

from evenwater.session.backups import Backups, CopyList, listed, restore_damaged, usable_copy
from evenwater.session.changes import Change, LogChange, PlansChange, RecordsChange, UndoState
from evenwater.session.document import Document
from evenwater.session.edits import NewRecord
from evenwater.session.entry_log import EntryLog
from evenwater.session.latest import Done, Failed, LatestOnly
from evenwater.session.opening import Reached, choose_server, chosen_server, open_log, open_reached, reach
from evenwater.session.paths import Paths
from evenwater.store import (
    ENTRY_KINDS,
    REPLACED,
    Card,
    Copy,
    Entry,
    EntryKind,
    Holds,
    Label,
    Logged,
    Looked,
    Lost,
    Plan,
    Version,
    content_id,
)

__all__ = [
    "ENTRY_KINDS",
    "REPLACED",
    "Backups",
    "Card",
    "Change",
    "Copy",
    "CopyList",
    "Document",
    "Done",
    "Entry",
    "EntryKind",
    "EntryLog",
    "Failed",
    "Holds",
    "Label",
    "LatestOnly",
    "LogChange",
    "Logged",
    "Looked",
    "Lost",
    "NewRecord",
    "Paths",
    "Plan",
    "PlansChange",
    "Reached",
    "RecordsChange",
    "UndoState",
    "Version",
    "choose_server",
    "chosen_server",
    "content_id",
    "listed",
    "open_log",
    "open_reached",
    "reach",
    "restore_damaged",
    "usable_copy",
]
