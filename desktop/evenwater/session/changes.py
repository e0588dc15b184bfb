"""What the document's signals carry: frozen values that say what changed and who did it."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.store import Label


@dataclass(frozen=True)
class Change:
    """Fields of one record have new values.

    ``initiator`` is what the caller of the edit gave, so that a widget can skip its own echo; None
    for undo by keyboard, another window, or another program.
    """

    record_id: str
    fields: frozenset[str]
    initiator: object = None


@dataclass(frozen=True)
class RecordsChange:
    """Records of these kinds appeared or left."""

    kinds: frozenset[str]
    initiator: object = None


@dataclass(frozen=True)
class UndoState:
    """What undo and redo would do now; None when there is nothing to do."""

    undo: Label | None
    redo: Label | None
