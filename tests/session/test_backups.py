"""The copies of the open document: put back, shown, said when they fail, and never over what is not saved."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.session import Document, Lost, listed, restore_damaged, usable_copy
from evenwater.store import Store
from evenwater.store.backups import folder_of
from tests.session.listening import Listener
from tests.store.logged import reading
from tests.store.writing import Times, card_for

DAY = 24 * 3600.0


@pytest.fixture
def copy(document: Document, times: Times) -> Path:
    """A copy from before the day's first edit; after it a name, a reading and a card."""
    system = document.add_record("system", {"name": Typed("North")}, record_id="a")
    times.pass_by(DAY)
    document.edit(system, "name", Typed("South"))
    assert document.log.log([reading("r")])
    assert document.add_card(card_for("HANGS", ""))
    assert document.backups.file is not None
    return next(c.file for c in listed(document.backups.file).copies if c.kind == "daily")


def test_a_copy_is_restored_and_announced(document: Document, copy: Path) -> None:
    heard, said = Listener(document), []
    document.log.logChanged.connect(said.append)
    assert document.backups.lost_with(copy) == Lost((("reading", 1),), 1, 1)
    kept = document.backups.restore(copy)
    assert isinstance(kept, Path)
    assert document.value("a", "name") == Typed("North")
    assert document.log.latest("a", "reading") is None
    assert document.cards("in use") == []
    assert heard.take("changed")
    assert said
    undone = document.undo_text()
    assert undone is not None
    assert undone.code == "add", "undo is that of the copy"
    assert isinstance(document.backups.restore(kept), Path)
    assert document.value("a", "name") == Typed("South")


def test_the_log_stands_first_in_the_list(document: Document, copy: Path) -> None:
    assert document.backups.file is not None
    kinds = [c.kind for c in listed(document.backups.file).copies]
    assert kinds == ["present", "daily", "daily"]


def test_a_refusal_comes_back_and_nothing_is_announced(document: Document, copy: Path) -> None:
    copy.write_bytes(b"x" * 5000)
    heard = Listener(document)
    reason = document.backups.restore(copy)
    assert isinstance(reason, Reason)
    assert reason.code == "store.copy_foreign"
    assert document.value("a", "name") == Typed("South")
    assert heard.take("changed") == []
    gone = document.backups.lost_with(copy)
    assert isinstance(gone, Reason)
    assert gone.code == "store.copy_foreign"


def test_what_is_not_saved_is_never_thrown_away(document: Document, copy: Path, file: Path) -> None:
    with closing(sqlite3.connect(file, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        document.edit("a", "ph", Typed("8.1"))
        assert document.backups.restore(copy) == Reason("store.unsaved", {"count": 1})
        assert document.backups.lost_with(copy) == Reason("store.unsaved", {"count": 1})
    assert document.save()
    assert document.value("a", "ph") == Typed("8.1")
    assert document.value("a", "name") == Typed("South")


def test_typing_that_waits_is_saved_before_and_is_in_the_copy(store: Store, times: Times, qapp: object) -> None:
    document = Document(store, None, 10_000)
    document.add_record("system", {"name": Typed("North")}, record_id="a")
    times.pass_by(DAY)
    document.edit("a", "name", Typed("South"))
    assert store.file is not None
    copy = next(c.file for c in listed(store.file).copies if c.kind == "daily")
    document.edit("a", "ph", Typed("8.4"), merge=True)
    assert document.unsaved() == 1
    kept = document.backups.restore(copy)
    assert isinstance(kept, Path)
    assert document.value("a", "ph") == Typed("")
    document.backups.restore(kept)
    assert document.value("a", "ph") == Typed("8.4")


def test_that_there_is_no_copy_of_the_day_is_said_once_and_taken_back(
    document: Document, times: Times, file: Path
) -> None:
    said: list[object] = []
    document.backupFaultChanged.connect(said.append)
    document.add_record("system", {}, record_id="a")
    folder_of(file).rename(file.with_name("elsewhere"))
    folder_of(file).write_text("in the way")
    times.pass_by(DAY)
    document.edit("a", "ph", Typed("8.1"))
    document.edit("a", "ph", Typed("8.2"))
    assert [getattr(reason, "code", None) for reason in said] == ["store.cannot_open"]
    folder_of(file).unlink()
    times.pass_by(DAY)
    document.edit("a", "ph", Typed("8.3"))
    assert said[1:] == [None]


def test_a_log_in_memory_has_no_copies(qapp: object, tmp_path: Path) -> None:
    document = Document(Store.open_memory())
    assert document.backups.file is None
    assert document.backups.folder is None
    assert document.backups.lost_with(tmp_path) == Reason("store.no_copies")
    assert document.backups.restore(tmp_path) == Reason("store.no_copies")
    assert document.backups.carry(tmp_path, tmp_path) == Reason("store.no_copies")
    document.close()


def test_a_list_that_cannot_be_read_says_why(tmp_path: Path) -> None:
    found = listed(tmp_path / "nowhere" / "log.sqlite")
    assert found.copies == ()
    assert found.fault is not None
    assert found.fault.code == "store.cannot_open"


def test_the_newest_copy_that_is_whole_replaces_a_damaged_log(document: Document, copy: Path, file: Path) -> None:
    document.close()
    copy.write_bytes(b"x" * 5000)
    file.write_bytes(file.read_bytes()[:9000])
    whole = usable_copy(file)
    assert whole is not None
    assert whole.file != copy
    assert isinstance(restore_damaged(file, whole.file), Path)
    with Store.open(file) as store:
        assert store.records("system") == ()
    gone = restore_damaged(file, copy)
    assert isinstance(gone, Reason)
    assert gone.code == "store.copy_foreign"
    assert usable_copy(file.with_name("other.sqlite")) is None
