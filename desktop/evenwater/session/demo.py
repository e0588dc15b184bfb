"""Fills an empty document with the invented fish room of the demonstration."""

from __future__ import annotations

import tomllib
import uuid
from collections.abc import Callable, Iterator, Mapping
from datetime import UTC, datetime, timedelta
from pathlib import Path

from evenwater.engine.quantities import Typed
from evenwater.session.demo_history import demo_entries
from evenwater.session.document import Document
from evenwater.session.edits import NewRecord

# What a history of the room is called beside its file.
HISTORY = "demo_history.toml"
# The tables with a short name.
_KEYED = ("system", "stock", "pump")


def fill_from(document: Document, file: Path, now: datetime | None = None) -> bool:
    """Fill ``document`` with the records of ``file`` (resources/demo.toml) and the log told of in ``HISTORY`` beside it.

    Ages in the file are counted back from ``now``, and days that are left ahead of it; it is an
    instant with a zone, by default the present one. Returns False, after ``saveFailed``, when the document is not empty or cannot be saved.
    """
    room, history = _read(file), _read(file.with_name(HISTORY))
    ids, present = fresh_ids(room), now or datetime.now(UTC)
    return document.fill(
        list(demo_records(room, present, ids)), entries=list(demo_entries(history, room, ids, present))
    )


def fresh_ids(room: Mapping[str, object]) -> dict[str, str]:
    """Return a new id for each short name in the tables of a demo file."""
    return {str(table["key"]): uuid.uuid4().hex for kind in _KEYED for table in _tables(room, kind)}


def demo_records(room: Mapping[str, object], now: datetime, ids: Mapping[str, str]) -> Iterator[NewRecord]:
    """Turn the tables of a demo file into records; its short names become ``ids``.

    Raises
    ------
    KeyError
        When a batch, level, calibration, water, food or correction names a system, stock or pump that the file does not have.
    """
    for kind in _KEYED:
        for table in _tables(room, kind):
            yield NewRecord(kind, _fields(table, now), ids[str(table["key"])])
    for table in _tables(room, "batch"):
        fields = _fields(table, now)
        yield NewRecord("batch", fields, f"{ids[fields.pop('stock').text]}:{uuid.uuid4().hex[:8]}")
    for table in _tables(room, "calibration"):
        fields = _fields(table, now)
        yield NewRecord("calibration", fields, f"{ids[fields.pop('pump').text]}:{uuid.uuid4().hex[:8]}")
    for table in _tables(room, "level"):
        fields = _fields(table, now)
        yield NewRecord("level", fields, f"{ids[fields.pop('stock').text]}:{uuid.uuid4().hex[:8]}")
    for table in _tables(room, "water"):
        fields = _fields(table, now)
        yield NewRecord("water", fields, f"{ids[fields.pop('system').text]}:water")
    for table in _tables(room, "food"):
        fields = _fields(table, now)
        yield NewRecord("food", fields, f"{ids[fields.pop('system').text]}:{uuid.uuid4().hex[:8]}")
    for table in _tables(room, "correction"):
        fields = _fields(table, now)
        system_id = ids[fields.pop("system").text]
        for name in ("stock", "pump"):
            fields[name] = Typed(ids[fields[name].text])
        yield NewRecord("correction", fields, f"{system_id}:{fields['parameter'].text}")


def _read(file: Path) -> dict[str, object]:
    with file.open("rb") as stream:
        return tomllib.load(stream)


def _tables(room: Mapping[str, object], kind: str) -> list[dict[str, object]]:
    tables = room[kind]
    if not isinstance(tables, list):
        raise TypeError(f"{kind} must be a list of tables")
    return tables


def _fields(table: Mapping[str, object], now: datetime) -> dict[str, Typed]:
    """Read one table: plain texts, ``{ text, unit, shown }``, and ages that become times."""
    fields: dict[str, Typed] = {}
    for name, given in table.items():
        if name == "key":
            continue
        if name in _AGES:
            field, moment = _AGES[name](now, float(str(given)))
            fields[field] = Typed(moment)
        elif isinstance(given, dict):
            fields[name] = Typed(**given)
        else:
            fields[name] = Typed(str(given))
    return fields


def _instant(moment: datetime) -> str:
    return moment.astimezone(UTC).isoformat(timespec="seconds")


# A jug carries dates of the wall calendar, in the zone of whoever mixed it; what is reckoned with is an instant.
_AGES: dict[str, Callable[[datetime, float], tuple[str, str]]] = {
    "measured_hours_ago": lambda now, hours: ("measured_at", _instant(now - timedelta(hours=hours))),
    "mixed_days_ago": lambda now, days: ("mixed_on", (now - timedelta(days=days)).date().isoformat()),
    "in_use_days_ago": lambda now, days: ("in_use_from", _instant(now - timedelta(days=days))),
    "opened_days_ago": lambda now, days: ("opened_on", (now - timedelta(days=days)).date().isoformat()),
    "fitted_days_ago": lambda now, days: ("head_fitted", (now - timedelta(days=days)).date().isoformat()),
    "read_days_ago": lambda now, days: ("at", _instant(now - timedelta(days=days))),
    "calibrated_days_ago": lambda now, days: ("at", _instant(now - timedelta(days=days))),
    "use_by_days": lambda now, days: ("use_by", (now + timedelta(days=days)).date().isoformat()),
}
