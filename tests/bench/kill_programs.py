"""Programs that are made to be killed: each says what it is about to do, and says it again once that is saved.

A word is ``("will", thing, before, after, at)`` or ``("did", thing, before, after, at)``: a thing is in one state before and in
another after, "" where it is not there, and ``at`` is when it is said [s, a clock that is never set]. What no program has said it will do must not be found, what one has said it did must be.
"""

from __future__ import annotations

import sqlite3
import time
from collections import Counter
from collections.abc import Callable, Sequence
from contextlib import closing
from datetime import UTC, datetime, timedelta
from multiprocessing.connection import Connection
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QApplication, QWidget

from evenwater.engine.quantities import Typed, Water
from evenwater.screens import correct
from evenwater.session import Document
from evenwater.store import Store, carry, logbook, replace_damaged
from evenwater.store.migrations import MIGRATIONS
from evenwater.ui.card_actions import CardActions
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.import_run import ImportRun
from tests.engine.asking import known, worked
from tests.screens.csv_files import sheet, taken
from tests.store.logged import dose, note, plan
from tests.store.writing import Times, card_for

Word = tuple[str, str, str, str, float]
Say = Callable[[Word], None]

BEGAN = datetime(2026, 11, 1, tzinfo=UTC)
DAY = 24 * 3600.0
LOG, CARRIED, SOURCE = "evenwater.sqlite", "carried away.sqlite", "2026-11-20.sqlite"
READINGS = 120
# So many notes are one step, so that half of one would be seen.
NOTES = 5
# A program that has come to its end waits so long [s] for its own.
_LONG = 300.0


def doing(say: Say, thing: str, before: str, after: str, work: Callable[[], object]) -> None:
    """Say it, do it, and say that it is done; what is not done ends the program."""
    say(("will", thing, before, after, time.monotonic()))
    if not work():
        raise AssertionError(f"{thing} was not done: {before} to {after}")
    say(("did", thing, before, after, time.monotonic()))


# Logging


def log_entries(folder: Path, number: int, heard: Connection) -> None:
    """Log, change, take back and do again, type into a field, follow one plan after the other."""
    QCoreApplication([])
    with Store.open(folder / LOG) as store:
        document, turn = Document(store), 0
        acts = (_log, _type, _follow)
        while True:
            turn += 1
            for place in range(len(acts)):  # so that each of them comes first at times
                act = acts[(number + turn + place) % len(acts)]
                act(heard.send, document, f"{number}-{turn}", BEGAN + timedelta(minutes=100_000 * number + 15 * turn))


def _log(say: Say, document: Document, name: str, at: datetime) -> None:
    first, changed = dose(f"dose {name}", 1.0, at), dose(f"dose {name}", 1.5, at)
    doing(say, first.id, "", "1", lambda: document.log.log([first]))
    doing(say, first.id, "1", "1.5", lambda: document.log.change_entry(changed))
    doing(say, first.id, "1.5", "1", document.undo)
    doing(say, first.id, "1", "1.5", document.redo)


def _type(say: Say, document: Document, name: str, _at: datetime) -> None:
    def typed() -> bool:
        document.edit("a", "number", Typed(name))
        return document.unsaved() == 0

    doing(say, "field", document.value("a", "number").text, name, typed)


def _follow(say: Say, document: Document, name: str, at: datetime) -> None:
    live = next((each.plan_id for each in document.log.plans("a")), "")
    started, begun = plan(f"P{name}", at), note(f"start P{name}", at=at)
    card = card_for(started.plan_id, "")
    doing(say, "live plan", live, started.plan_id, lambda: document.log.start_plan(started, card, begun))


# Import


def import_sheets(folder: Path, number: int, heard: Connection) -> None:
    """Import the last file of the life before once more, then others; take every second back and do it again."""
    QCoreApplication([])
    logbook.IMPORT_CHUNK = READINGS // 3
    with Store.open(folder / LOG) as store:
        document, owner = Document(store), QObject()
        run, turn = ImportRun(document, known(), owner), 0

        def bring(thing: str) -> None:
            rows = taken(spreadsheet(thing))
            there = "whole" if count_of(document, thing) else ""
            doing(heard.send, thing, there, "whole", lambda: run.run("a", rows, Water()).new is not None)

        if number:
            bring(f"file {number - 1}-1")
        while True:
            turn += 1
            thing = f"file {number}-{turn}"
            bring(thing)
            if turn % 2 == 0:
                doing(heard.send, thing, "whole", "", document.undo)
                doing(heard.send, thing, "", "whole", document.redo)


def spreadsheet(thing: str) -> bytes:
    """Return the file of a thing: readings of alkalinity, a minute apart, of hours that no other file has."""
    number, turn = map(int, thing.removeprefix("file ").split("-"))
    begins = datetime(2020, 1, 1, tzinfo=UTC) + timedelta(minutes=READINGS * (10 * number + turn))
    lines = (f"{begins + timedelta(minutes=n):%Y-%m-%d %H:%M},{7 + n / 1000:.3f},{thing}" for n in range(READINGS))
    return sheet("Date,KH (dKH),Note", *lines)


def count_of(document: Document, thing: str) -> int:
    """Return how many readings of a file the log has."""
    return sum(entry.fields["text"].text == thing for entry in document.log.entries("a", ("reading",)))


# Migration


def migrate(folder: Path, version: int, heard: Connection) -> None:
    """Open a log of an older version, once."""
    newest = f"{len(MIGRATIONS)}"
    doing(heard.send, "version", f"{version}", newest, lambda: Store.open(folder / LOG, Times().clock()))
    time.sleep(_LONG)


# Copies


def back_up(folder: Path, number: int, heard: Connection) -> None:
    """Log notes, carry the log away, put a copy back; a day passes each time, so that the copy of the day is made too."""
    times, turn = Times(), 0
    times.pass_by(number * 1000 * DAY)
    with Store.open(folder / LOG, times.clock()) as store:
        while True:
            turn += 1
            name = f"{number}-{turn}"
            before = named([entry.id for entry in store.entries("a", ("note",))])
            after = ", ".join(sorted([*before.split(", "), name]))
            many = [note(f"{name} {line}", "x" * 500, BEGAN) for line in range(NOTES)]
            doing(heard.send, "log", before, after, lambda: store.log(many))  # noqa: B023
            out = held(folder / CARRIED)
            doing(
                heard.send, "carried", out, after, lambda: carry(folder / LOG, folder / LOG, folder / CARRIED) is None
            )
            if (number + turn) % 2:
                doing(heard.send, "log", after, "kept", lambda: store.restore(folder / SOURCE).exists())
            times.pass_by(DAY)


def put_back_damaged(folder: Path, number: int, heard: Connection) -> None:
    """Put a copy in the place of a log that cannot be opened, once."""
    at = BEGAN + timedelta(days=number)
    doing(heard.send, "log", "damaged", "kept", lambda: replace_damaged(folder / LOG, folder / SOURCE, at).exists())
    time.sleep(_LONG)


def held(file: Path) -> str:
    """Return the groups of notes that a log or a copy holds, which is only read; "" where there is none."""
    if not file.exists():
        return ""
    with closing(sqlite3.connect(f"{file.absolute().as_uri()}?mode=ro", uri=True)) as plain:
        return named([entry_id for (entry_id,) in plain.execute("SELECT id FROM entry WHERE removed = 0")])


def named(ids: Sequence[str]) -> str:
    """Return the groups that these notes are; "torn" where one is not whole."""
    counts = Counter(entry_id.rpartition(" ")[0] for entry_id in ids)
    return ", ".join(sorted(counts)) if set(counts.values()) <= {NOTES} else "torn"


# Printing


def print_cards(folder: Path, number: int, heard: Connection) -> None:
    """Save the card of one plan after the other as a PDF, or print it to one, by what the buttons do."""
    application = QApplication([])
    with Store.open(folder / LOG) as store:
        document, owner = Document(store), QWidget()
        actions, turn = CardActions(document, Dialogs(owner), owner), 0
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
        while True:
            turn += 1
            now = BEGAN + timedelta(days=number, minutes=turn)
            raw = worked(change__measured=f"{6 + turn / 1000:.3f} dKH", change__measured_at=now.isoformat())
            found = correct.evaluate(raw, known(), now).plan
            assert found is not None
            actions.set_plan(found, "a", raw, now)
            path = folder / f"{found.plan_id}.pdf"
            printer.setOutputFileName(str(path))
            write = (lambda: actions.write(path)) if (number + turn) % 2 else (lambda: actions.send(printer))  # noqa: B023
            doing(heard.send, path.name, "", "whole", lambda: write() is None and path.exists())  # noqa: B023
            application.processEvents()
