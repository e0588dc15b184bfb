"""The numbered migrations: each function takes the file from the version before it to its own.

A migration is never changed once a release has carried it; a new need gets a new function at the
end of ``MIGRATIONS``. They are written in SQL and not with the models, because the models move on
and an old migration must not.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from evenwater.store.errors import StoreError, refused
from evenwater.store.sqlite import SqliteDatabase

Migration = Callable[[SqliteDatabase], None]

# The step is well then; there is more to do about the disk than to say that the step failed.
_OF_THE_DISK = ("store.full", "store.io", "store.read_only")


def _first_tables(database: SqliteDatabase) -> None:
    """Version 1: records with values, the journal of edits, and the cards that were issued."""
    for statement in (
        """CREATE TABLE record (
            id TEXT NOT NULL PRIMARY KEY,
            kind TEXT NOT NULL,
            position INTEGER NOT NULL,
            removed INTEGER NOT NULL CHECK (removed IN (0, 1)))""",
        "CREATE INDEX record_by_kind ON record (kind, position)",
        """CREATE TABLE value (
            record_id TEXT NOT NULL REFERENCES record (id),
            field TEXT NOT NULL,
            text TEXT NOT NULL,
            unit TEXT NOT NULL,
            shown TEXT NOT NULL,
            PRIMARY KEY (record_id, field)) WITHOUT ROWID""",
        """CREATE TABLE journal (
            id INTEGER NOT NULL PRIMARY KEY,
            step INTEGER NOT NULL,
            code TEXT NOT NULL,
            at_utc TEXT NOT NULL,
            action TEXT NOT NULL CHECK (action IN ('set', 'add', 'remove')),
            record_id TEXT NOT NULL REFERENCES record (id),
            field TEXT NOT NULL,
            before_text TEXT NOT NULL,
            before_unit TEXT NOT NULL,
            before_shown TEXT NOT NULL,
            after_text TEXT NOT NULL,
            after_unit TEXT NOT NULL,
            after_shown TEXT NOT NULL,
            undone INTEGER NOT NULL CHECK (undone IN (0, 1)))""",
        "CREATE INDEX journal_by_step ON journal (step)",
        "CREATE INDEX journal_by_state ON journal (undone, step)",
        """CREATE TABLE card (
            plan_id TEXT NOT NULL PRIMARY KEY,
            version INTEGER NOT NULL,
            system_id TEXT NOT NULL REFERENCES record (id),
            parameter TEXT NOT NULL,
            issued_utc TEXT NOT NULL,
            valid_until_utc TEXT NOT NULL,
            state TEXT NOT NULL CHECK (state IN ('in use', 'void', 'removed')),
            body TEXT NOT NULL)""",
        "CREATE INDEX card_by_system ON card (system_id, parameter)",
    ):
        database.sql(statement)


def _batches(database: SqliteDatabase) -> None:
    """Version 2: what is in a jug is a batch of its own, and a card knows the batch it was made for.

    Every stock gets one batch with what the stock said until now. It leaves and comes back with its
    stock in every step of the journal, so undo and redo go on over the change.
    """
    for statement in (
        """INSERT INTO record (id, kind, position, removed)
            SELECT id || ':1', 'batch', position, removed FROM record WHERE kind = 'stock'""",
        """UPDATE value SET record_id = record_id || ':1'
            WHERE record_id IN (SELECT id FROM record WHERE kind = 'stock') AND field IN (
                'chemical', 'dissolved', 'made_up_to', 'purity', 'mixed_on',
                'label_dose', 'label_water', 'label_raises')""",
        # Reckoning with a day that its month does not have moves it into the next month and so gives it away; the
        # year before the first and the last of the calendar are no dates for the program.
        """INSERT INTO value (record_id, field, text, unit, shown)
            SELECT batch.id, 'in_use_from',
                CASE WHEN trim(mixed.text) GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'
                        AND date(trim(mixed.text), '+0 days') = trim(mixed.text)
                        AND trim(mixed.text) BETWEEN '0001-01-01' AND '9998-12-31'
                    THEN trim(mixed.text) ELSE '1970-01-01' END || 'T00:00:00+00:00',
                '', ''
            FROM record AS batch LEFT JOIN value AS mixed ON mixed.record_id = batch.id AND mixed.field = 'mixed_on'
            WHERE batch.kind = 'batch'""",
        """UPDATE journal SET record_id = record_id || ':1'
            WHERE action = 'set' AND record_id IN (SELECT id FROM record WHERE kind = 'stock') AND field IN (
                'chemical', 'dissolved', 'made_up_to', 'purity', 'mixed_on',
                'label_dose', 'label_water', 'label_raises')""",
        # Room after every row; by way of negative numbers, since no two rows may have one number even for a moment.
        "UPDATE journal SET id = -2 * id",
        "UPDATE journal SET id = -id",
        """INSERT INTO journal
            SELECT id + 1, step, code, at_utc, action, record_id || ':1', field,
                before_text, before_unit, before_shown, after_text, after_unit, after_shown, undone
            FROM journal
            WHERE action IN ('add', 'remove') AND record_id IN (SELECT id FROM record WHERE kind = 'stock')""",
        "ALTER TABLE card ADD COLUMN batch_id TEXT NOT NULL DEFAULT ''",
    ):
        database.sql(statement)


def _entries(database: SqliteDatabase) -> None:
    """Version 3: the entries of the log, what each said before, and steps of the journal that touch entries.

    A series (system, kind, subject) lies together in the order of time, so that a chart reads one
    stretch of the file. No entry is ever deleted, and nothing in the history is ever written again.
    """
    for statement in (
        """CREATE TABLE entry (
            system_id TEXT NOT NULL REFERENCES record (id),
            kind TEXT NOT NULL,
            subject TEXT NOT NULL,
            at_us INTEGER NOT NULL,
            id TEXT NOT NULL,
            who TEXT NOT NULL,
            fields TEXT NOT NULL,
            value REAL,
            logged_us INTEGER NOT NULL,
            removed INTEGER NOT NULL CHECK (removed IN (0, 1)),
            PRIMARY KEY (system_id, kind, subject, at_us, id)) WITHOUT ROWID""",
        "CREATE UNIQUE INDEX entry_by_id ON entry (id)",
        """CREATE TABLE entry_history (
            number INTEGER NOT NULL PRIMARY KEY,
            until_us INTEGER NOT NULL,
            by_whom TEXT NOT NULL,
            why TEXT NOT NULL,
            system_id TEXT NOT NULL,
            kind TEXT NOT NULL,
            subject TEXT NOT NULL,
            at_us INTEGER NOT NULL,
            id TEXT NOT NULL REFERENCES entry (id),
            who TEXT NOT NULL,
            fields TEXT NOT NULL,
            value REAL,
            logged_us INTEGER NOT NULL,
            removed INTEGER NOT NULL)""",
        "CREATE INDEX entry_history_by_id ON entry_history (id, number)",
        """CREATE TRIGGER entry_is_kept BEFORE DELETE ON entry
            BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END""",
        """CREATE TRIGGER entry_history_is_kept BEFORE DELETE ON entry_history
            BEGIN SELECT RAISE(ABORT, 'the history is never deleted'); END""",
        """CREATE TRIGGER entry_history_is_final BEFORE UPDATE ON entry_history
            BEGIN SELECT RAISE(ABORT, 'the history is never changed'); END""",
        # The journal as it was, with two more actions; SQLite cannot change a CHECK in place.
        """CREATE TABLE wider_journal (
            id INTEGER NOT NULL PRIMARY KEY,
            step INTEGER NOT NULL,
            code TEXT NOT NULL,
            at_utc TEXT NOT NULL,
            action TEXT NOT NULL CHECK (action IN ('set', 'add', 'remove', 'entries', 'plan')),
            record_id TEXT NOT NULL REFERENCES record (id),
            field TEXT NOT NULL,
            before_text TEXT NOT NULL,
            before_unit TEXT NOT NULL,
            before_shown TEXT NOT NULL,
            after_text TEXT NOT NULL,
            after_unit TEXT NOT NULL,
            after_shown TEXT NOT NULL,
            undone INTEGER NOT NULL CHECK (undone IN (0, 1)))""",
        "INSERT INTO wider_journal SELECT * FROM journal",
        "DROP TABLE journal",
        "ALTER TABLE wider_journal RENAME TO journal",
        "CREATE INDEX journal_by_step ON journal (step)",
        "CREATE INDEX journal_by_state ON journal (undone, step)",
        # Which entries a step touches, and the versions in the history that undo and redo bring back.
        """CREATE TABLE journal_entry (
            journal_id INTEGER NOT NULL REFERENCES journal (id) ON DELETE CASCADE,
            entry_id TEXT NOT NULL REFERENCES entry (id),
            back INTEGER REFERENCES entry_history (number),
            forth INTEGER REFERENCES entry_history (number),
            PRIMARY KEY (journal_id, entry_id)) WITHOUT ROWID""",
    ):
        database.sql(statement)


def _plans(database: SqliteDatabase) -> None:
    """Version 4: the plans that are followed, each with its question as JSON text."""
    database.sql(
        """CREATE TABLE plan (
            plan_id TEXT NOT NULL PRIMARY KEY,
            system_id TEXT NOT NULL REFERENCES record (id),
            parameter TEXT NOT NULL,
            started_utc TEXT NOT NULL,
            ended_utc TEXT,
            reason TEXT NOT NULL,
            body TEXT NOT NULL,
            undone INTEGER NOT NULL CHECK (undone IN (0, 1)))"""
    )
    database.sql("CREATE INDEX plan_by_system ON plan (system_id, parameter)")


MIGRATIONS: tuple[Migration, ...] = (_first_tables, _batches, _entries, _plans)


def version_of(database: SqliteDatabase, newest: int) -> int:
    """Return the version of the file.

    Raises
    ------
    StoreError
        ``"store.newer"`` when it is above ``newest``, the last one this program knows.
    """
    version = int(database.pragma("user_version"))
    if version > newest:
        raise refused("store.newer", file=database.name, version=version, newest=newest)
    return version


def migrate(database: SqliteDatabase, migrations: Sequence[Migration]) -> None:
    """Bring ``database`` to version ``len(migrations)``; all steps or none.

    Raises
    ------
    StoreError
        ``"store.newer"`` when the file has a version this program does not know;
        ``"store.migration_failed"`` when a step fails, or what the disk says; the file is then as it was.
    """
    newest = len(migrations)
    with database.writing():
        # Read inside the lock: another window may have migrated the file a moment ago.
        version = version_of(database, newest)
        for number, step in enumerate(migrations[version:], start=version + 1):
            try:
                step(database)
            except StoreError as error:
                if error.reason.code in _OF_THE_DISK:
                    raise
                raise refused(
                    "store.migration_failed", file=database.name, version=number, detail=error.reason.code
                ) from error
            database.sql(f"PRAGMA user_version = {number}")
