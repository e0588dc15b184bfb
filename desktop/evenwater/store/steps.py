"""The steps in which a document changes: frozen values that say what was before and what is after."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime

from evenwater.engine.quantities import Typed

NOTHING = Typed("")


@dataclass(frozen=True)
class SetField:
    """Field ``field`` of a record becomes ``after``; ``NOTHING`` empties it.

    ``before`` and ``kind`` are filled in by the store, which reads them inside the transaction.
    """

    record_id: str
    field: str
    after: Typed
    before: Typed = NOTHING
    kind: str = ""


@dataclass(frozen=True)
class AddRecord:
    """A record of ``kind`` appears at the end of its list."""

    record_id: str
    kind: str


@dataclass(frozen=True)
class RemoveRecord:
    """A record leaves its list; its values stay in the file so that it can come back."""

    record_id: str
    kind: str = ""


Edit = SetField | AddRecord | RemoveRecord


@dataclass(frozen=True)
class Scope:
    """A series of the log: the entries of one kind and subject in one system."""

    system_id: str
    kind: str
    subject: str


@dataclass(frozen=True)
class PlanState:
    """How a plan stands: live while ``ended_utc`` is empty, and not there at all when its start was undone."""

    ended_utc: str = ""
    reason: str = ""
    undone: bool = False


@dataclass(frozen=True)
class PlanChange:
    """A plan started or ended."""

    plan_id: str
    system_id: str
    parameter: str
    before: PlanState
    after: PlanState


@dataclass(frozen=True)
class Step:
    """One step of editing, saved and undone as a whole.

    ``code`` is what the keeper did. On records it is ``"edit"``, ``"add"`` or ``"remove"``; on the
    log ``"log"``, ``"change_entry"``, ``"remove_entries"``, ``"import"``, ``"start_plan"`` or
    ``"end_plan"``, and then ``touched`` names the series with other entries than before, and
    ``plans`` what became of plans. ``number`` is 0 and ``at`` None until the store has recorded it.
    """

    code: str
    edits: tuple[Edit, ...]
    number: int = 0
    at: datetime | None = None
    touched: tuple[Scope, ...] = ()
    plans: tuple[PlanChange, ...] = ()


@dataclass(frozen=True)
class Label:
    """What an undo or redo would do, as codes; the words are made where they are shown."""

    code: str
    kind: str
    field: str
    record_id: str


def label_of(step: Step) -> Label:
    """Name ``step``: an edit by the field that was typed last, the others by what they touch first.

    A step on the log carries the kind of entry (or ``"plan"``), the subject (or parameter) as its
    field, and the system.
    """
    if step.plans:
        return Label(step.code, "plan", step.plans[0].parameter, step.plans[0].system_id)
    if step.touched:
        first = step.touched[0]
        return Label(step.code, first.kind, first.subject, first.system_id)
    edit = step.edits[-1] if step.code == "edit" else step.edits[0]
    field = edit.field if isinstance(edit, SetField) else ""
    return Label(step.code, edit.kind, field, edit.record_id)


def instant_text(instant: datetime) -> str:
    """Write an instant in UTC, always equally long, so that text order is time order.

    Raises
    ------
    ValueError
        When ``instant`` has no zone: a wall time names two instants on one night of the year and
        none on another.
    """
    if instant.utcoffset() is None:
        raise ValueError("an instant needs a time zone")
    return instant.astimezone(UTC).isoformat(timespec="microseconds")


def instant_from(text: str) -> datetime:
    """Read what ``instant_text`` wrote."""
    return datetime.fromisoformat(text)


def utc_now() -> datetime:
    """Return the present instant in UTC."""
    return datetime.now(UTC)
