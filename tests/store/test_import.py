"""Many entries at once: one transaction, one step, the same file twice adds nothing, and it can be stopped."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import Entry, Label, Logged, Store, StoreError, content_id
from evenwater.store.logbook import IMPORT_CHUNK
from tests.store.logged import NOON, dose, everything, reading, two_systems
from tests.store.writing import Times, dump, hasty

MANY = 2 * IMPORT_CHUNK + 500


@pytest.fixture
def store(file: Path, times: Times) -> Iterator[Store]:
    with two_systems(file, times) as made:
        yield hasty(made)


def _rows(number: int = MANY) -> Iterator[Entry]:
    """Yield what a table of readings says, line by line."""
    for line in range(number):
        at, text = NOON - timedelta(hours=line), f"{line % 90 / 10}".replace(".", ",")
        subject, system = ("alkalinity", "calcium")[line % 2], "ab"[line % 3 == 0]
        entry_id = content_id(system, "reading", subject, at, text, "dKH")
        yield Entry(entry_id, system, "reading", subject, at, "", {"value": Typed(text, "dKH")}, line % 90 / 10)


def _all(_: int) -> bool:
    return True


def test_a_file_is_one_step_and_twice_is_once(store: Store, file: Path, times: Times) -> None:
    store.log([dose("d")])
    assert store.import_entries(_rows(), _all) == MANY
    assert len(everything(store)) == MANY + 1
    assert store.import_entries(_rows(), _all) == 0
    assert store.import_entries([*_rows(10), dose("e")], _all) == 1
    assert store.can_undo() == Label("import", "dose", "left", "a")
    store.undo()
    with Store.open(file, times.clock()) as again:
        assert again.can_undo() == Label("import", "reading", "alkalinity", "b")
        step = again.undo()
        assert step is not None
        assert len(step.touched) == 4
        assert everything(again) == {"d": dose("d")}
        again.redo()
        assert len(everything(again)) == MANY + 1


def test_a_longer_edition_of_the_file_adds_what_is_new(store: Store) -> None:
    assert store.import_entries(_rows(100), _all) == 100
    assert store.import_entries(_rows(130), _all) == 30
    assert store.import_entries([*_rows(5), *_rows(5)], _all) == 0
    assert everything(store) == {entry.id: entry for entry in _rows(130)}


def test_progress_is_told_what_was_read_and_stopping_saves_nothing(store: Store) -> None:
    told: list[int] = []

    def twice(read: int) -> bool:
        told.append(read)
        return len(told) < 2

    before = dump(store)
    assert store.import_entries(_rows(), twice) is None
    assert told == [IMPORT_CHUNK, 2 * IMPORT_CHUNK]
    assert dump(store) == before
    told.clear()
    assert store.import_entries(_rows(), lambda read: not told.append(read)) == MANY
    assert told == [IMPORT_CHUNK, 2 * IMPORT_CHUNK, MANY]


def test_stopping_at_the_last_line_still_saves_nothing(store: Store) -> None:
    assert store.import_entries(_rows(10), lambda read: False) is None
    assert everything(store) == {}


def test_a_line_that_cannot_be_saved_lets_none_of_them_in(store: Store) -> None:
    with pytest.raises(StoreError) as refusal:
        store.import_entries([*_rows(), reading("r", system="nowhere")], _all)
    assert refusal.value.reason.code == "store.record_gone"
    assert everything(store) == {}
    assert store.can_undo() == Label("add", "system", "", "b")


def test_a_source_that_breaks_off_lets_none_of_it_in(store: Store) -> None:
    def broken() -> Iterator[Entry]:
        yield from _rows(IMPORT_CHUNK + 1)
        raise OSError("the stick was pulled out")

    with pytest.raises(StoreError) as refusal:
        store.import_entries(broken(), _all)
    assert refusal.value.reason.code == "store.cannot_open"
    assert everything(store) == {}


def test_what_was_changed_by_hand_is_not_put_back_by_importing_again(store: Store) -> None:
    store.import_entries(_rows(10), _all)
    first = next(_rows(1))
    changed = Entry(first.id, "a", "reading", "calcium", NOON, "Ada", {"value": Typed("430", "mg/L")}, 430)
    store.change_entry(changed)
    assert store.import_entries(_rows(10), _all) == 0
    assert store.entry(first.id) == changed


def test_what_was_removed_or_undone_comes_back_by_importing_again(store: Store) -> None:
    store.import_entries(_rows(10), _all)
    store.undo()
    assert store.import_entries(_rows(10), _all) == 10
    store.remove_entries([entry.id for entry in _rows(4)])
    assert store.import_entries(_rows(10), _all) == 4
    assert everything(store) == {entry.id: entry for entry in _rows(10)}


def test_nothing_else_is_said_to_be_saved_while_an_import_could_still_be_stopped(store: Store) -> None:
    refused: list[str] = []

    def log_meanwhile(read: int) -> bool:
        for act in (lambda: store.log([dose("d")]), store.undo, lambda: store.remove_entries(["d"])):
            with pytest.raises(StoreError) as refusal:
                act()
            refused.append(refusal.value.reason.code)
        return False

    assert store.import_entries(_rows(10), log_meanwhile) is None
    assert refused == ["store.locked"] * 3
    assert store.log([dose("d")]) is Logged.NEW
    assert everything(store) == {"d": dose("d")}


def test_another_window_reads_on_and_waits_with_writing(store: Store, file: Path, times: Times) -> None:
    with Store.open(file, times.clock(), busy_seconds=0.01) as other:

        def look(read: int) -> bool:
            assert everything(other) == {}
            with pytest.raises(StoreError) as refusal:
                other.log([dose("d")])
            assert refusal.value.reason.code == "store.locked"
            return True

        assert store.import_entries(_rows(10), look) == 10
        assert other.log([dose("d")]) is Logged.NEW
        assert len(everything(other)) == 11
