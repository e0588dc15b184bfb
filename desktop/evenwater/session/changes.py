"""What the document's signals carry: frozen values that say what changed and who did it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from evenwater.store import Label, Scope


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
class LogChange:
    """Entries of the log appeared, changed or left, in these systems, of these kinds and subjects.

    Where a set is empty it may be any: another window saved something, or much was imported.
    """

    system_ids: frozenset[str] = frozenset()
    kinds: frozenset[str] = frozenset()
    subjects: frozenset[str] = frozenset()
    initiator: object = None

    @classmethod
    def of(cls, scopes: Iterable[Scope], initiator: object) -> LogChange:
        """Return the change of these series."""
        each = list(scopes)
        return cls(
            frozenset(scope.system_id for scope in each),
            frozenset(scope.kind for scope in each),
            frozenset(scope.subject for scope in each),
            initiator,
        )

    def touches(self, system_id: str, kind: str, subject: str | None = None) -> bool:
        """Say whether a series, or with None any of a kind in a system, may be different now."""
        return (
            (not self.system_ids or system_id in self.system_ids)
            and (not self.kinds or kind in self.kinds)
            and (not self.subjects or subject is None or subject in self.subjects)
        )


@dataclass(frozen=True)
class PlansChange:
    """Plans of these systems started or ended; of any system when there are none."""

    system_ids: frozenset[str] = frozenset()
    initiator: object = None


@dataclass(frozen=True)
class UndoState:
    """What undo and redo would do now; None when there is nothing to do."""

    undo: Label | None
    redo: Label | None
