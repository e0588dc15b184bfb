"""Fills an empty document with the invented fish room of the demonstration."""

from __future__ import annotations

import tomllib
import uuid
from collections.abc import Iterator, Mapping
from datetime import UTC, datetime, timedelta
from pathlib import Path

from evenwater.engine.quantities import Typed
from evenwater.session.document import Document, NewRecord


def fill_from(document: Document, file: Path, now: datetime | None = None) -> bool:
    """Fill ``document`` with the records of ``file`` (resources/demo.toml).

    Ages in the file are counted back from ``now``, an instant with a zone, by default the present
    one. Returns False, after ``saveFailed``, when the document is not empty or cannot be saved.
    """
    with file.open("rb") as stream:
        room = tomllib.load(stream)
    return document.fill(list(demo_records(room, now or datetime.now(UTC))))


def demo_records(room: Mapping[str, object], now: datetime) -> Iterator[NewRecord]:
    """Turn the tables of a demo file into records; its short names become fresh ids.

    Raises
    ------
    KeyError
        When a correction names a system, stock or pump that the file does not have.
    """
    ids: dict[str, str] = {}
    for kind in ("system", "stock", "pump"):
        for table in _tables(room, kind):
            ids[str(table["key"])] = record_id = uuid.uuid4().hex
            yield NewRecord(kind, _fields(table, now), record_id)
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
        if name == "measured_hours_ago":
            measured = now.astimezone(UTC) - timedelta(hours=float(str(given)))
            fields["measured_at"] = Typed(measured.isoformat(timespec="seconds"))
        elif name == "mixed_days_ago":
            # A jug carries the date of the wall calendar, in the zone of whoever mixed it.
            fields["mixed_on"] = Typed((now - timedelta(days=float(str(given)))).date().isoformat())
        elif isinstance(given, dict):
            fields[name] = Typed(**given)
        else:
            fields[name] = Typed(str(given))
    return fields
