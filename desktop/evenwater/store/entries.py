"""What is logged: readings, doses given, exchanges, notes, calibrations and batches, as frozen values."""

from __future__ import annotations

import json
import math
import uuid
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import MAXYEAR, MINYEAR, UTC, datetime, timedelta
from enum import Enum
from types import MappingProxyType
from typing import Literal, get_args

from evenwater.engine.quantities import Typed
from evenwater.store.database import Row
from evenwater.store.errors import of_row
from evenwater.store.steps import Scope, instant_text

EntryKind = Literal["reading", "dose", "exchange", "note", "calibration", "batch"]
ENTRY_KINDS: tuple[EntryKind, ...] = get_args(EntryKind)

# The same amount so soon before or after is likelier one dose noted twice than two doses. Common practice, no source.
NEAR = timedelta(minutes=10)

_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_MICROSECOND = timedelta(microseconds=1)
_JSON = json.JSONEncoder(ensure_ascii=False, separators=(",", ":"))
# Under which ids are worked out from contents; drawn once, and never to be changed.
_CONTENT = uuid.UUID("5d0c3c52-7d3f-4a43-9d0e-3f6c1b0f8a27")


class Logged(Enum):
    """What became of something that was to be logged; true when it is on the disk."""

    NEW = "new"
    """It was saved now."""
    ALREADY = "already"
    """It was on the disk before, and is there once."""
    WAITING = "waiting"
    """The disk refused; it is kept in memory and tried again."""
    REFUSED = "refused"
    """It can never be saved, and is dropped."""
    ASK = "ask"
    """It was not saved, since somebody logged a dose that nobody had seen when it was asked about: ask again."""

    def __bool__(self) -> bool:
        return self in (Logged.NEW, Logged.ALREADY)


@dataclass(frozen=True)
class Entry:
    """One entry of the log.

    ``id`` is made by the caller before saving (``uuid.uuid4().hex``), so that saving twice is saving
    once. ``subject`` is the parameter of a reading, the pump of a dose, or empty. ``at`` has a zone
    and is kept in UTC to the microsecond. ``fields`` holds what was typed, as typed: value, kit, ml,
    stock, batch, plan_id, litres, text. ``value`` is the number for charts and sums in the canonical
    unit of its kind ([mL] for a dose), worked out by the caller, and never shown as what was typed.
    ``logged_at`` is filled in by the store: when it was first saved.

    Raises
    ------
    ValueError
        Without an id or a zone, at the ends of the calendar, for an unknown kind, for a value that is no finite number, and for
        a dose without an amount or with one below zero: no sum could count it.
    """

    id: str
    system_id: str
    kind: EntryKind
    subject: str
    at: datetime
    who: str = ""
    fields: Mapping[str, Typed] = field(default_factory=dict, hash=False)
    value: float | None = None
    logged_at: datetime | None = field(default=None, compare=False)

    def __post_init__(self) -> None:
        if not self.id:
            raise ValueError("an entry needs an id before it is saved")
        if self.kind not in ENTRY_KINDS:
            raise ValueError(f"no kind of entry: {self.kind}")
        if self.value is not None and not math.isfinite(self.value):
            raise ValueError("the value of an entry must be a finite number")
        if self.kind == "dose" and (self.value is None or self.value < 0.0):
            raise ValueError("a dose needs the amount that was given")
        at = instant(micros(self.at))
        if not MINYEAR < at.year < MAXYEAR:
            raise ValueError("no instant before or after it could be reckoned")
        object.__setattr__(self, "at", at)
        object.__setattr__(self, "fields", MappingProxyType(dict(self.fields)))

    @property
    def scope(self) -> Scope:
        """The series it belongs to."""
        return Scope(self.system_id, self.kind, self.subject)


@dataclass(frozen=True)
class Looked:
    """The doses of a system from ``since`` on and before ``until`` that were seen before the keeper was asked about another.

    Where there is any other one by the time it is saved, the question was asked of an older log.
    """

    system_id: str
    since: datetime
    until: datetime
    seen: frozenset[str]


@dataclass(frozen=True)
class Version:
    """What an entry said until it was changed, removed, or came or went with undo and redo.

    ``why`` is ``"change"``, ``"remove"``, ``"again"`` (logged again after it was removed), ``"undo"``
    or ``"redo"``; ``by`` is who did it, empty for undo and redo; ``removed`` says that it was not in
    force at that time.
    """

    entry: Entry
    until: datetime
    by: str
    why: str
    removed: bool


def content_id(system_id: str, kind: EntryKind, subject: str, at: datetime, text: str, unit: str) -> str:
    """Return the id of an entry that has none of its own, the same for the same content.

    So what is imported a second time is known again. ``at`` has a zone, ``text`` and ``unit`` are
    the value as it stands in the file.

    Raises
    ------
    ValueError
        When ``at`` has no zone.
    """
    content = [system_id, kind, subject, instant_text(at), text, unit]
    return uuid.uuid5(_CONTENT, json.dumps(content, ensure_ascii=True, separators=(",", ":"))).hex


def micros(moment: datetime) -> int:
    """Return an instant in microseconds since the start of 1970 in UTC.

    Raises
    ------
    ValueError
        When ``moment`` has no zone.
    """
    if moment.utcoffset() is None:
        raise ValueError("an instant needs a time zone")
    return (moment - _EPOCH) // _MICROSECOND


def instant(microseconds: int) -> datetime:
    """Return the instant, in UTC, that ``micros`` gave."""
    return _EPOCH + microseconds * _MICROSECOND


def around(now: datetime, hours: float) -> tuple[datetime, datetime]:
    """Return the first instant less than ``hours`` [h] before ``now``, and the first not less than so much after it.

    Counted in UTC: on a wall clock a day has 23 or 25 hours twice a year.
    """
    utc, length = instant(micros(now)), timedelta(hours=hours)
    return utc - length + _MICROSECOND, utc + length


def near(entry: Entry) -> tuple[datetime, datetime]:
    """Return the first instant that is near an entry, and the first after it that is not."""
    return entry.at - NEAR, entry.at + NEAR + _MICROSECOND


def total_ml(doses: Iterable[Entry]) -> float:
    """Return what doses come to [mL]: those that were given, and nothing for any that was not."""
    return math.fsum(dose.value or 0.0 for dose in doses)


def alike(entry: Entry, others: Iterable[Entry]) -> list[Entry]:
    """Return those of ``others`` that say the same amount as ``entry`` under another id.

    The amount is the value, whatever it was typed as; without one it is everything that was typed.
    """
    return [other for other in others if other.id != entry.id and _same_amount(entry, other)]


def _same_amount(one: Entry, other: Entry) -> bool:
    if one.value is None or other.value is None:
        return one.value == other.value and one.fields == other.fields
    return math.isclose(one.value, other.value, rel_tol=1e-9)


def text_of(fields: Mapping[str, Typed]) -> str:
    """Write what was typed as compact JSON: a text alone as it is, a text with units as a list."""
    return _JSON.encode({name: _short(typed) for name, typed in fields.items()})


def _short(typed: Typed) -> str | list[str]:
    if typed.shown:
        return [typed.text, typed.unit, typed.shown]
    return [typed.text, typed.unit] if typed.unit else typed.text


def fields_of(text: str) -> dict[str, Typed]:
    """Read what ``text_of`` wrote."""
    return {n: Typed(given) if isinstance(given, str) else Typed(*given) for n, given in json.loads(text).items()}


@of_row
def entry_of(row: Row) -> Entry:
    """Read a row: system_id, kind, subject, at_us, id, who, fields, value, logged_us."""
    system_id, kind, subject, at_us, entry_id, who, fields, value, logged_us = row
    typed = fields_of(fields)
    if not isinstance(subject, str) or not isinstance(who, str):
        raise TypeError("a text of an entry is none")
    return Entry(entry_id, system_id, kind, subject, instant(at_us), who, typed, value, instant(logged_us))


def row_of(entry: Entry) -> Row:
    """Write a row but for its last column: system_id, kind, subject, at_us, id, who, fields, value."""
    text = text_of(entry.fields)
    return (
        entry.system_id, entry.kind, entry.subject, micros(entry.at), entry.id, entry.who, text, entry.value,
    )  # fmt: skip
