"""Fills an empty document with the invented fish room of the demonstration."""

from __future__ import annotations

import tomllib
import uuid
from collections.abc import Callable, Iterator, Mapping
from datetime import UTC, datetime, timedelta
from pathlib import Path

from evenwater.engine.quantities import Typed
from evenwater.session.document import Document
from evenwater.session.edits import NewRecord


def fill_from(document: Document, file: Path, now: datetime | None = None) -> bool:
    """Fill ``document`` with the records of ``file`` (resources/demo.toml).

    Ages in the file are counted back from ``now``, and days that are left ahead of it; it is an
    instant with a zone, by default the present one. Returns False, after ``saveFailed``, when the document is not empty or cannot be saved.
    """
    with file.open("rb") as stream:
        room = tomllib.load(stream)
    return document.fill(list(demo_records(room, now or datetime.now(UTC))))


def demo_records(room: Mapping[str, object], now: datetime) -> Iterator[NewRecord]:
    """Turn the tables of a demo file into records; its short names become fresh ids.

    Raises
    ------
    KeyError
        When a batch or correction names a system, stock or pump that the file does not have.
    """
    ids: dict[str, str] = {}
    for kind in ("system", "stock", "pump"):
        for table in _tables(room, kind):
            ids[str(table["key"])] = record_id = uuid.uuid4().hex
            yield NewRecord(kind, _fields(table, now), record_id)
    for table in _tables(room, "batch"):
        fields = _fields(table, now)
        yield NewRecord("batch", fields, f"{ids[fields.pop('stock').text]}:{uuid.uuid4().hex[:8]}")
    for table in _tables(room, "correction"):
        fields = _fields(table, now)
        system_id = ids[fields.pop("system").text]
        for name in ("stock", "pump"):
            fields[name] = Typed(ids[fields[name].text])
        yield NewRecord("correction", fields, f"{system_id}:{fields['parameter'].text}")


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
    "use_by_days": lambda now, days: ("use_by", (now + timedelta(days=days)).date().isoformat()),
}
