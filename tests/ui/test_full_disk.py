"""A disk that is full: whatever is done ends in a sentence, nothing that was said to be saved is lost, and all goes on with space."""

from __future__ import annotations

import os
import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pypdf
import pytest
from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from evenwater.engine.quantities import Typed, Water
from evenwater.engine.reasons import Reason
from evenwater.screens import correct, room_words
from evenwater.session import Document, open_log
from evenwater.store import Logged, Store, copies
from evenwater.store.migrations import MIGRATIONS
from evenwater.ui.card_actions import CardActions
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.import_run import ImportRun
from tests.bench.kill_programs import READINGS, spreadsheet
from tests.engine.asking import known, worked
from tests.screens.csv_files import taken
from tests.store.logged import dose, later
from tests.store.writing import Times, added
from tests.ui.small_disk import SmallDisk, small_disk

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
# The disk's own word, that of a file that must not grow, and both in the words of copies.
FULL = {"store.full", "store.io", "store.copy_full", "store.copy_not_written", "store.cannot_open"}

pytestmark = pytest.mark.skipif(os.name != "posix", reason="disks are made and limited as POSIX does")


@pytest.fixture
def disk(tmp_path: Path) -> Iterator[SmallDisk]:
    (tmp_path / "small").mkdir()
    with small_disk(tmp_path / "small") as made:
        yield made


@pytest.fixture
def document(qapp: object, disk: SmallDisk) -> Iterator[Document]:
    with Store.open(disk.folder / "log.sqlite", Times().clock(), busy_seconds=0.01) as store:
        store.fill(added("a", name="North frag bay"))
        store.log([dose(f"before {n}", 1.0, later(n)) for n in range(20)])
        yield Document(store)


@pytest.fixture
def refusals(document: Document) -> list[str]:
    """The sentences that are said."""
    said: list[str] = []
    document.saveFailed.connect(lambda reason: said.append(_sentence(reason)))
    return said


def _sentence(reason: Reason) -> str:
    assert reason.code in FULL
    words = room_words.sentence(reason)
    assert words.endswith(".")
    return words


def kept(file: Path) -> list[str]:
    """Return the entries in a log by another program's eyes, after its check."""
    with closing(sqlite3.connect(f"{file.as_uri()}?mode=ro", uri=True)) as plain:
        assert plain.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        return [entry_id for (entry_id,) in plain.execute("SELECT id FROM entry WHERE removed = 0 ORDER BY at_us, id")]


BEFORE = [f"before {n}" for n in range(20)]


def test_logging_and_typing_wait_in_memory_and_are_saved_once_there_is_room(
    document: Document, disk: SmallDisk, refusals: list[str]
) -> None:
    file = disk.folder / "log.sqlite"
    done, waiting = [], []
    with disk.full(left=40_000 if disk.mounted else 0):
        for n in range(12):
            outcome = document.log.log([dose(f"full {n:02}", 1.0, later(100 + n))])
            (done if outcome is Logged.NEW else waiting).append(f"full {n:02}")
            assert set(kept(file)) >= {*BEFORE, *done}, "what was said to be saved is"
        document.edit("a", "ph", Typed("8.1"))
        assert waiting
        assert document.unsaved() == len(waiting) + 1
        assert refusals
        assert {entry.id for entry in document.log.entries("a", ("dose",))} == {*BEFORE, *done, *waiting}
        assert not document.undo(), "nothing is taken back behind what waits"
    assert document.save()
    assert kept(file) == BEFORE + sorted(done + waiting)
    with Store.open(file) as again:
        assert again.values("a")["ph"] == Typed("8.1")
        assert again.undo() is not None


def test_an_import_is_refused_whole_and_taken_whole_afterwards(
    document: Document, disk: SmallDisk, refusals: list[str]
) -> None:
    owner, rows = QObject(), taken(spreadsheet("file 0-1"))
    run = ImportRun(document, known(), owner)
    with disk.full(left=20_000 if disk.mounted else 0):
        outcome = run.run("a", rows, Water())
        assert outcome.new is None
        assert outcome.reason is not None
        assert _sentence(outcome.reason) in refusals
        assert kept(disk.folder / "log.sqlite") == BEFORE
    assert run.run("a", rows, Water()).new == READINGS
    assert len(kept(disk.folder / "log.sqlite")) == READINGS + len(BEFORE)


def test_copies_are_refused_whole_and_the_log_is_as_it_was(document: Document, disk: SmallDisk, tmp_path: Path) -> None:
    file, out = disk.folder / "log.sqlite", disk.folder / "carried.sqlite"
    elsewhere = tmp_path / "elsewhere.sqlite"
    assert document.backups.carry(file, elsewhere) is None
    with disk.full():
        there = sorted(disk.folder.rglob("*.sqlite"))
        carried, restored = document.backups.carry(file, out), document.backups.restore(elsewhere)
        for refused in (carried, restored):
            assert isinstance(refused, Reason)
            _sentence(refused)
        assert sorted(disk.folder.rglob("*.sqlite")) == there, "nothing half-made stands under a name"
        assert not list(disk.folder.rglob("*.part"))
        assert kept(file) == BEFORE
    assert document.backups.carry(file, out) is None
    assert kept(out) == BEFORE
    assert isinstance(document.backups.restore(out), Path)
    assert kept(file) == BEFORE


def test_the_copy_of_the_day_that_has_no_room_is_said_and_keeps_nobody_from_the_log(
    qapp: object, disk: SmallDisk
) -> None:
    file, times = disk.folder / "log.sqlite", Times()
    with Store.open(file, times.clock()) as store:
        store.fill(added("a"))
        document = Document(store)
        with disk.full(left=30_000 if disk.mounted else 0):
            times.pass_by(24 * 3600.0)
            document.log.log([dose("d")])
            fault = document.backup_fault()
            assert fault is not None
            _sentence(fault)
        assert document.save()
        times.pass_by(24 * 3600.0)
        assert document.log.log([dose("e", at=later(1))]) is Logged.NEW
        assert document.backup_fault() is None
    assert [copy.fault for copy in copies(file)] == [None, None]


def test_a_card_without_room_is_registered_or_not_and_never_half_written(
    document: Document, disk: SmallDisk, tmp_path: Path, refusals: list[str]
) -> None:
    owner = QWidget()
    actions, told = CardActions(document, Dialogs(owner), owner), []
    actions.told.connect(told.append)
    raw = worked(change__measured_at=NOW.isoformat())
    plan = correct.evaluate(raw, known(), NOW).plan
    assert plan is not None
    actions.set_plan(plan, "a", raw, NOW)
    with disk.full():
        actions.write(tmp_path / "card.pdf")
        assert refusals, "it is not in the log, so it is not on paper"
        assert not (tmp_path / "card.pdf").exists()
        assert document.cards() == []
    with disk.full(left=24_000 if disk.mounted else 0):
        if disk.mounted:
            assert document.add_card(_registered(actions, document, raw))
            actions.write(disk.folder / "card.pdf")
            assert told == ["The card could not be written there. Choose another folder."]
        assert not (disk.folder / "card.pdf").exists()
        assert [path.name for path in disk.folder.iterdir() if "card" in path.name] == []
    actions.write(disk.folder / "card.pdf")
    assert plan.plan_id in str(pypdf.PdfReader(disk.folder / "card.pdf").metadata)
    assert [(card.plan_id, card.state) for card in document.cards()] == [(plan.plan_id, "in use")]
    owner.deleteLater()


def _registered(actions: CardActions, document: Document, raw: dict[str, object]) -> object:
    from evenwater.ui.card_actions import card_record

    assert actions.plan is not None
    return card_record(document, actions.plan, "a", raw, NOW, "")


def test_a_log_that_cannot_be_opened_made_or_migrated_says_so_and_is_as_it_was(qapp: object, disk: SmallDisk) -> None:
    file, new = disk.folder / "old.sqlite", disk.folder / "new.sqlite"
    with Store.open(file, Times().clock(), MIGRATIONS[:2]) as store:
        store.apply(added("a", name="North frag bay"))
    content = file.read_bytes()
    with disk.full():
        for place in (file, new):
            refused = open_log(place)
            assert isinstance(refused, Reason)
            _sentence(refused)
        assert file.read_bytes() == content
        assert not new.exists()
    shutil.rmtree(disk.folder / "old backups", ignore_errors=True)
    for place in (file, new):
        opened = open_log(place)
        assert isinstance(opened, Document)
        assert opened.close()
