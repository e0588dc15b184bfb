"""The log on disk: peewee models on SQLite, numbered migrations, backups. Knows only the engine."""

import evenwater.store.alone  # noqa: F401  (before anything else asks for peewee)
from evenwater.store.batches import BATCH, IN_USE_FROM, in_use
from evenwater.store.cards import Card, State
from evenwater.store.copies import Copy, CopyKind, Holds, Lost, carry, copies, lost_with, present_log
from evenwater.store.entries import (
    ENTRY_KINDS,
    Entry,
    EntryKind,
    Logged,
    Looked,
    Version,
    alike,
    around,
    content_id,
    near,
    total_ml,
)
from evenwater.store.entry_reading import Columns, columns_of
from evenwater.store.errors import StoreError
from evenwater.store.log import Store
from evenwater.store.logbook import Clock
from evenwater.store.plans import REPLACED, Plan
from evenwater.store.records import Snapshot
from evenwater.store.restore import replace_damaged
from evenwater.store.steps import (
    NOTHING,
    AddRecord,
    Edit,
    Label,
    PlanChange,
    RemoveRecord,
    Scope,
    SetField,
    Step,
    label_of,
)

__all__ = [
    "BATCH",
    "ENTRY_KINDS",
    "IN_USE_FROM",
    "NOTHING",
    "REPLACED",
    "AddRecord",
    "Card",
    "Clock",
    "Columns",
    "Copy",
    "CopyKind",
    "Edit",
    "Entry",
    "EntryKind",
    "Holds",
    "Label",
    "Logged",
    "Looked",
    "Lost",
    "Plan",
    "PlanChange",
    "RemoveRecord",
    "Scope",
    "SetField",
    "Snapshot",
    "State",
    "Step",
    "Store",
    "StoreError",
    "Version",
    "alike",
    "around",
    "carry",
    "columns_of",
    "content_id",
    "copies",
    "in_use",
    "label_of",
    "lost_with",
    "near",
    "present_log",
    "replace_damaged",
    "total_ml",
]
