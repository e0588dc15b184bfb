"""Short ways to write entries, a log with two systems in it, and what a log holds as plain values."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from pathlib import Path

from evenwater.engine.quantities import Typed
from evenwater.store import ENTRY_KINDS, Entry, Plan, Store
from tests.store.writing import Times, added

NOON = datetime.fromisoformat("2026-11-25T12:00:00+00:00")


def reading(
    entry_id: str, value: float | None = 6.8, at: datetime = NOON, subject: str = "alkalinity", system: str = "a"
) -> Entry:
    """Return a reading as a keeper with a decimal comma types it."""
    typed = {"value": Typed(str(value).replace(".", ","), "dKH", "meq/L"), "kit": Typed("drops, blue box")}
    return Entry(entry_id, system, "reading", subject, at, "Ada", typed, value)


def dose(entry_id: str, ml: float = 12.5, at: datetime = NOON, pump: str = "left", system: str = "a") -> Entry:
    """Return a dose that was given."""
    return Entry(entry_id, system, "dose", pump, at, "Ada", {"ml": Typed(f"{ml:g}", "mL")}, ml)


def note(entry_id: str, text: str = "the heater was off", at: datetime = NOON, system: str = "a") -> Entry:
    """Return a note."""
    return Entry(entry_id, system, "note", "", at, "Bo", {"text": Typed(text)})


def plan(plan_id: str, started: datetime = NOON, system: str = "a", parameter: str = "alkalinity") -> Plan:
    """Return a plan that goes with ``writing.card_for``."""
    return Plan(plan_id, system, parameter, started, '{"kind":"correction"}')


def later(minutes: float = 0.0, hours: float = 0.0) -> datetime:
    """Return an instant after noon, or before it."""
    return NOON + timedelta(minutes=minutes, hours=hours)


def two_systems(file: Path, times: Times, busy_seconds: float = 0.01) -> Store:
    """Open a log that has the systems a and b, the names of which cannot be undone."""
    store = Store.open(file, times.clock(), busy_seconds=busy_seconds)
    store.fill(added("a", name="North frag bay"))
    store.apply(added("b", name="South frag bay"))
    return store


def everything(store: Store, systems: Sequence[str] = ("a", "b")) -> dict[str, Entry]:
    """Return all entries that are in force, by id."""
    return {entry.id: entry for system in systems for entry in store.entries(system, ENTRY_KINDS)}
