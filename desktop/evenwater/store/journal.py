"""The journal of steps: what makes undo work after the program, or the machine, was switched off."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import astuple
from datetime import datetime
from typing import Any

from peewee import fn

from evenwater.engine.quantities import Typed
from evenwater.store.database import Database, Row
from evenwater.store.errors import of_row
from evenwater.store.steps import (
    NOTHING,
    AddRecord,
    Edit,
    PlanChange,
    PlanState,
    RemoveRecord,
    Scope,
    SetField,
    Step,
    instant_from,
    instant_text,
)
from evenwater.store.tables import Journal, PlanRow, Record

# Older steps are forgotten; the values they led to stay.
LIMIT = 1000

# An entry, and the number of the version of it in the history that undo brings back; None where there was none.
Move = tuple[str, int | None]

_POINT = "INSERT INTO journal_entry (journal_id, entry_id, back) VALUES (?, ?, ?)"


class StepJournal:
    """Reads and writes the rows of the journal; the caller holds the transaction."""

    def __init__(self, database: Database) -> None:
        self._database = database

    def last_done(self) -> int:
        """Return the number of the step that undo would take back, or 0."""
        return self._number(fn.MAX(Journal.step), undone=False)

    def first_undone(self) -> int:
        """Return the number of the step that redo would bring back, or 0."""
        return self._number(fn.MIN(Journal.step), undone=True)

    @of_row
    def step(self, number: int) -> Step | None:
        """Return step ``number`` with what it did in the order in which it was done."""
        columns = (
            Journal.action, Journal.record_id, Record.kind, Journal.field,
            Journal.before_text, Journal.before_unit, Journal.before_shown,
            Journal.after_text, Journal.after_unit, Journal.after_shown,
            Journal.code, Journal.at_utc,
        )  # fmt: skip
        query = Journal.select(*columns).join(Record, on=(Journal.record_id == Record.id))
        rows = self._database.rows(query.where(Journal.step == number).order_by(Journal.id))
        if not rows:
            return None
        edits = tuple(_edit(row) for row in rows if row[0] not in ("entries", "plan"))
        touched = tuple(Scope(*each) for row in rows if row[0] == "entries" for each in json.loads(row[7]))
        plans = tuple(self._plan(row) for row in rows if row[0] == "plan")
        return Step(rows[0][10], edits, number, instant_from(rows[-1][11]), touched, plans)

    def append(self, step: Step, at: datetime, moves: Sequence[Move] = ()) -> int:
        """Write a new step, drop what could have been redone, forget the oldest; return its number.

        ``moves`` are the entries that changed, in the series that ``step`` touches.
        """
        self._database.run(Journal.delete().where(Journal.undone == True))  # noqa: E712  (SQL, not Python)
        number = self.last_done() + 1
        written = {"step": number, "code": step.code, "at_utc": instant_text(at), "undone": False}
        for columns in (*map(_columns, step.edits), *map(_plan_columns, step.plans)):
            self._database.run(Journal.insert({**written, **columns}))
        if step.touched:
            self._database.run(Journal.insert({**written, **_touched_columns(step.touched)}))
            ((row,),) = self._database.sql("SELECT max(id) FROM journal")
            self._database.many(_POINT, [(row, *move) for move in moves])
        self._database.run(Journal.delete().where(Journal.step <= number - LIMIT))
        return number

    def lengthen(self, number: int, after: Typed, at: datetime) -> None:
        """Let the last edit of step ``number``, the typing in a field, end at ``after`` instead.

        A step that has come back to where it began is nothing to undo and is dropped.
        """
        columns = (Journal.id, Journal.before_text, Journal.before_unit, Journal.before_shown)
        rows = self._database.rows(Journal.select(*columns).where(Journal.step == number).order_by(Journal.id))
        last, *before = rows[-1]
        if len(rows) == 1 and Typed(*before) == after:
            self._database.run(Journal.delete().where(Journal.id == last))
            return
        change = {**_after(after), "at_utc": instant_text(at)}
        self._database.run(Journal.update(change).where(Journal.id == last))

    def mark(self, number: int, undone: bool) -> None:
        """Note that step ``number`` is undone, or done again."""
        self._database.run(Journal.update({"undone": undone}).where(Journal.step == number))

    def _plan(self, row: Row) -> PlanChange:
        (parameter,) = self._database.rows(PlanRow.select(PlanRow.parameter).where(PlanRow.plan_id == row[3]))[0]
        return PlanChange(row[3], row[1], parameter, _plan_state(row[4:7]), _plan_state(row[7:10]))

    def _number(self, which: Any, undone: bool) -> int:
        rows = self._database.rows(Journal.select(which).where(Journal.undone == undone))
        return int(rows[0][0] or 0)


def _edit(row: Row) -> Edit:
    action, record_id, kind, field = row[:4]
    if action == "add":
        return AddRecord(record_id, kind)
    if action == "remove":
        return RemoveRecord(record_id, kind)
    return SetField(record_id, field, before=Typed(*row[4:7]), after=Typed(*row[7:10]), kind=kind)


def _columns(edit: Edit) -> dict[str, str]:
    if isinstance(edit, AddRecord):
        return _line("add", edit.record_id)
    if isinstance(edit, RemoveRecord):
        return _line("remove", edit.record_id)
    return _line("set", edit.record_id, edit.field, edit.before, edit.after)


def _plan_columns(change: PlanChange) -> dict[str, str]:
    """Put the state of a plan where a field has its value: when it ended, why, and whether it is undone."""
    before, after = (Typed(s.ended_utc, s.reason, "undone" if s.undone else "") for s in (change.before, change.after))
    return _line("plan", change.system_id, change.plan_id, before, after)


def _plan_state(columns: Row) -> PlanState:
    ended_utc, reason, undone = columns
    return PlanState(ended_utc, reason, undone == "undone")


def _touched_columns(touched: Sequence[Scope]) -> dict[str, str]:
    scopes = json.dumps([astuple(scope) for scope in touched], separators=(",", ":"))
    return _line("entries", touched[0].system_id, after=Typed(scopes))


def _line(
    action: str, record_id: str, field: str = "", before: Typed = NOTHING, after: Typed = NOTHING
) -> dict[str, str]:
    return {
        "action": action,
        "record_id": record_id,
        "field": field,
        "before_text": before.text,
        "before_unit": before.unit,
        "before_shown": before.shown,
        **_after(after),
    }


def _after(after: Typed) -> dict[str, str]:
    return {"after_text": after.text, "after_unit": after.unit, "after_shown": after.shown}
