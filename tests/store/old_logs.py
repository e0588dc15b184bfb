"""Logs as version 1 wrote them, when a stock itself said what was in it, and what they look like now."""

from __future__ import annotations

import random
import sqlite3
from contextlib import closing
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from evenwater.engine.quantities import Typed
from evenwater.store import AddRecord, RemoveRecord, SetField, Snapshot, Step, Store
from evenwater.store.migrations import MIGRATIONS
from tests.store.writing import Times, hasty, typed

FIRST = MIGRATIONS[:1]
MOVED = ("chemical", "dissolved", "made_up_to", "purity", "mixed_on", "label_dose", "label_water", "label_raises")
_DATES = (
    "2026-11-21",
    "2024-02-29",
    "2026-02-29",
    "2026-13-01",
    "21.11.2026",
    " 2026-11-20 ",
    "20261121",
    "0000-01-01",
)

Values = dict[str, dict[str, Typed]]


@dataclass(frozen=True)
class State:
    """What a log holds at one point of its history."""

    order: dict[str, tuple[str, ...]]
    values: Values


def state(snapshot: Snapshot) -> State:
    """Return a snapshot as plain values; a list with nothing in it is no list."""
    order = {kind: ids for kind, ids in snapshot.order.items() if ids}
    return State(order, {record: dict(fields) for record, fields in snapshot.values.items()})


def as_it_is_now(old: State, in_use_from: dict[str, str]) -> State:
    """Return what a state of version 1 must have become; ``in_use_from`` is by stock."""
    order, values = dict(old.order), dict(old.values)
    if "stock" in order:
        order["batch"] = tuple(f"{stock}:1" for stock in order["stock"])
    for stock in order.get("stock", ()):
        fields = values[stock]
        values[stock] = {name: value for name, value in fields.items() if name not in MOVED}
        values[f"{stock}:1"] = {name: value for name, value in fields.items() if name in MOVED}
        values[f"{stock}:1"]["in_use_from"] = Typed(in_use_from[stock])
    return State(order, values)


def in_use_from(mixed_on: str) -> str:
    """Return since when the batch of a stock that was mixed on some date is in use, by another calendar."""
    text = mixed_on.strip(" ")
    try:
        known = len(text) == 10 and date.fromisoformat(text).isoformat() == text
    except ValueError:
        known = False
    return f"{text if known else '1970-01-01'}T00:00:00+00:00"


def mixed_dates(file: Path) -> dict[str, str]:
    """Return the text in ``mixed_on`` of every stock of a version 1 log, present or removed."""
    question = """SELECT id, coalesce(text, '') FROM record
        LEFT JOIN value ON record_id = id AND field = 'mixed_on' WHERE kind = 'stock'"""
    with closing(sqlite3.connect(file)) as plain:
        return dict(plain.execute(question).fetchall())


def write_history(file: Path, history: int, steps: int = 60) -> None:
    """Edit a version 1 log at random: other kinds too, removals and the same id again, undo and redo, typing."""
    chance, times = random.Random(history), Times()
    store = hasty(Store.open(file, times.clock(), FIRST))
    made, known = 0, set[str]()
    for number in range(steps):
        stocks = store.records("stock")
        action = chance.choice(("add", "type", "type", "type", "remove", "undo", "undo", "redo", "other"))
        if action == "add" or not stocks:
            made += 1
            gone = [f"s{n}" for n in range(made) if f"s{n}" in known and f"s{n}" not in stocks]
            stock = chance.choice(gone) if gone and chance.random() < 0.3 else f"s{made}"
            known.add(stock)
            store.apply(Step("add", (AddRecord(stock, "stock"), *_filled(stock, chance, number))))
        elif action == "type":
            field = chance.choice(("name", *MOVED))
            text = chance.choice(_DATES) if field == "mixed_on" else chance.choice(("", f"{number}", "1"))
            store.apply(typed(chance.choice(stocks), field, text, "g"), merge=chance.random() < 0.5)
        elif action == "remove":
            store.apply(Step("remove", (RemoveRecord(chance.choice(stocks)),)))
        elif action == "undo":
            store.undo()
        elif action == "redo":
            store.redo()
        else:
            made += 1
            kind = chance.choice(("system", "pump"))
            store.apply(Step("add", (AddRecord(f"o{made}", kind), SetField(f"o{made}", "purity", Typed("7")))))
        times.pass_by(chance.choice((1.0, 10.0)))
    for _ in range(chance.randrange(6)):
        store.undo()
    store.close()


def _filled(stock: str, chance: random.Random, number: int) -> list[SetField]:
    fields = {"name": "jug", "chemical": "sodium chloride", "dissolved": f"{number}", "mixed_on": chance.choice(_DATES)}
    return [SetField(stock, field, Typed(text)) for field, text in fields.items() if chance.random() < 0.7]


def all_states(store: Store) -> tuple[list[State], int]:
    """Undo to the beginning, then redo to the end; return every state of the second way and where it started.

    Both ways must lead through the same states.
    """
    back = [state(hasty(store).snapshot())]
    while store.undo():
        back.append(state(store.snapshot()))
    forth = [back[-1]]
    while store.redo():
        forth.append(state(store.snapshot()))
    assert forth[: len(back)] == back[::-1]
    return forth, len(back) - 1
