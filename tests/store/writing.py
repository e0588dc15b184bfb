"""A clock that is set by hand, short ways to write steps, and a writer that is made to be killed."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from multiprocessing.connection import Connection
from pathlib import Path

from evenwater.engine.quantities import Typed
from evenwater.store import AddRecord, Card, Clock, SetField, Step, Store
from evenwater.store.log_copy import TABLES
from evenwater.store.spool import Spool
from evenwater.store.sqlite import SqliteDatabase


@dataclass
class Times:
    """A clock that stands still until it is told to go on."""

    instant: datetime = field(default=datetime(2026, 11, 25, 9, 0, tzinfo=UTC))
    interval: float = 0.0

    def pass_by(self, seconds: float) -> None:
        self.instant += timedelta(seconds=seconds)
        self.interval += seconds

    def clock(self) -> Clock:
        return Clock(lambda: self.instant, lambda: self.interval)


def hasty(store: Store) -> Store:
    """Let a log not wait for the disk: what a power cut would lose is not asked here."""
    if isinstance(store._database, SqliteDatabase):
        store._database.connection.execute("PRAGMA synchronous = OFF")
    return store


def dump(store: Store) -> list[object]:
    """Return all that a log holds, whatever keeps it."""
    database = store._database
    if isinstance(database, SqliteDatabase):
        return list(database.connection.iterdump())
    return [row for table in TABLES for row in sorted(database.sql(f"SELECT * FROM {table}"), key=repr)]  # noqa: S608  (our own names)


def added(record_id: str, kind: str = "system", **fields: str) -> Step:
    """Return a step that makes a record; fields are texts without a unit."""
    edits = (SetField(record_id, name, Typed(text)) for name, text in fields.items())
    return Step("add", (AddRecord(record_id, kind), *edits))


def typed(record_id: str, name: str, text: str, unit: str = "", shown: str = "") -> Step:
    """Return a step that sets one field."""
    return Step("edit", (SetField(record_id, name, Typed(text, unit, shown)),))


def write_until_killed(file: Path, number: int, heard: Connection) -> None:
    """Say a number only after the step with it is saved.

    It edits, types on and undoes, so that every kind of transaction is hit.
    """
    with Store.open(file) as store:
        while True:
            number += 1
            store.apply(typed("a", "number", str(number)), merge=number % 3 == 0)
            heard.send(number)
            store.apply(typed("b", "note", "x" * (number % 7000)))
            store.undo()


def card_for(plan_id: str, batch_id: str, system_id: str = "a", parameter: str = "alkalinity") -> Card:
    """Return a card that was reckoned for a batch."""
    issued = Times().instant
    until = issued + timedelta(days=3)
    return Card(plan_id, 1, system_id, parameter, issued, until, "{}", batch_id=batch_id)


def swap_until_killed(file: Path, number: int, heard: Connection) -> None:
    """Put the two batches of a jug into it in turn, each time with the card of the other void and one of its own."""
    with Store.open(file) as store:
        while True:
            number += 1
            batch = f"jug:{number % 2}"
            store.put_in_use(batch, datetime.now(UTC), [card.plan_id for card in store.cards("in use")])
            heard.send(number)
            store.add_card(card_for(f"P{number}", batch))


def keep_until_killed(folder: Path, heard: Connection) -> None:
    """Let more and more wait for a server, and say how much only after it is on the disk."""
    spool = Spool(folder)
    count = 0
    while True:
        spool.keep([(f"token {number}", "x" * number) for number in range(count)])
        heard.send(count)
        count += 1
