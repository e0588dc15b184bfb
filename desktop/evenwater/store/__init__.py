"""The log on disk: peewee models on SQLite, numbered migrations, backups. Knows only the engine."""

from evenwater.store.batches import BATCH, IN_USE_FROM, belongs, in_use
from evenwater.store.cards import Card, State
from evenwater.store.errors import StoreError
from evenwater.store.log import Clock, Store
from evenwater.store.records import Snapshot
from evenwater.store.steps import (
    NOTHING,
    AddRecord,
    Edit,
    Label,
    RemoveRecord,
    SetField,
    Step,
    label_of,
)

__all__ = [
    "BATCH",
    "IN_USE_FROM",
    "NOTHING",
    "AddRecord",
    "Card",
    "Clock",
    "Edit",
    "Label",
    "RemoveRecord",
    "SetField",
    "Snapshot",
    "State",
    "Step",
    "Store",
    "StoreError",
    "belongs",
    "in_use",
    "label_of",
]
