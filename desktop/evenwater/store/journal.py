"""The journal of edits: what makes undo work after the program, or the machine, was switched off."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from peewee import fn

from evenwater.engine.quantities import Typed
from evenwater.store.database import Database, Row
from evenwater.store.steps import (
    NOTHING,
    AddRecord,
    Edit,
    RemoveRecord,
    SetField,
    Step,
    instant_from,
    instant_text,
)
from evenwater.store.tables import Journal, Record

# Older steps are forgotten; the values they led to stay.
LIMIT = 1000


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

    def step(self, number: int) -> Step | None:
        """Return step ``number`` with its edits in the order in which they were made."""
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
        return Step(rows[0][10], tuple(_edit(row) for row in rows), number, instant_from(rows[-1][11]))

    def append(self, code: str, edits: Sequence[Edit], at: datetime) -> int:
        """Write a new step, drop what could have been redone, forget the oldest; return its number."""
        self._database.run(Journal.delete().where(Journal.undone == True))  # noqa: E712  (SQL, not Python)
        number = self.last_done() + 1
        for edit in edits:
            row = {"step": number, "code": code, "at_utc": instant_text(at), "undone": False, **_columns(edit)}
            self._database.run(Journal.insert(row))
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
    before, after, field = NOTHING, NOTHING, ""
    action = "add" if isinstance(edit, AddRecord) else "remove"
    if isinstance(edit, SetField):
        action, field, before, after = "set", edit.field, edit.before, edit.after
    return {
        "action": action,
        "record_id": edit.record_id,
        "field": field,
        "before_text": before.text,
        "before_unit": before.unit,
        "before_shown": before.shown,
        **_after(after),
    }


def _after(after: Typed) -> dict[str, str]:
    return {"after_text": after.text, "after_unit": after.unit, "after_shown": after.shown}
