"""The tables as peewee models, without a database of their own.

Every query names its database when it runs, so two logs can be open at once and no module holds
one. ``migrations.py`` makes the tables; a test compares the two. Entries have no model: they are
read in stretches and written in thousands, for which the statements stand beside the code that
runs them.
"""

from __future__ import annotations

from peewee import BooleanField, CompositeKey, IntegerField, Model, TextField


class Record(Model):
    """A system, stock, batch, pump or correction. Removed ones keep their row, so that undo finds them."""

    id = TextField(primary_key=True)
    kind = TextField()
    position = IntegerField()
    removed = BooleanField()

    class Meta:
        table_name = "record"


class Value(Model):
    """One field of a record as it was typed. A field without text, unit and shown has no row."""

    record_id = TextField()
    field = TextField()
    text = TextField()
    unit = TextField()
    shown = TextField()

    class Meta:
        table_name = "value"
        primary_key = CompositeKey("record_id", "field")


class Journal(Model):
    """One edit of one step. ``action`` is ``"set"``, ``"add"``, ``"remove"``, ``"entries"`` or ``"plan"``.

    A step on entries has one such row, with the series it touches as JSON in ``after_text``; the
    entries themselves are in the table ``journal_entry``.
    """

    id = IntegerField(primary_key=True)
    step = IntegerField()
    code = TextField()
    at_utc = TextField()
    action = TextField()
    record_id = TextField()
    field = TextField()
    before_text = TextField()
    before_unit = TextField()
    before_shown = TextField()
    after_text = TextField()
    after_unit = TextField()
    after_shown = TextField()
    undone = BooleanField()

    class Meta:
        table_name = "journal"


class CardRow(Model):
    """A card that was issued. ``body`` is the question as JSON text, so the plan can be proved again."""

    plan_id = TextField(primary_key=True)
    version = IntegerField()
    system_id = TextField()
    parameter = TextField()
    issued_utc = TextField()
    valid_until_utc = TextField()
    state = TextField()
    body = TextField()
    batch_id = TextField()

    class Meta:
        table_name = "card"


class PlanRow(Model):
    """A plan. ``body`` is the question as JSON text; one whose start was undone keeps its row."""

    plan_id = TextField(primary_key=True)
    system_id = TextField()
    parameter = TextField()
    started_utc = TextField()
    ended_utc = TextField(null=True)
    reason = TextField()
    body = TextField()
    undone = BooleanField()

    class Meta:
        table_name = "plan"
