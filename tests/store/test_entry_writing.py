"""Logging once, changing, removing, and undo: nothing is lost, doubled or silently changed."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import Label, Logged, RemoveRecord, Scope, Step, Store, StoreError
from evenwater.store.journal import LIMIT
from tests.store.logged import dose, everything, later, note, reading, two_systems
from tests.store.writing import Times, added, dump, hasty, typed


@pytest.fixture
def store(file: Path, times: Times) -> Iterator[Store]:
    with two_systems(file, times) as made:
        yield made


def _refusal(question: object) -> str:
    with pytest.raises(StoreError) as refusal:
        question()  # type: ignore[operator]
    return refusal.value.reason.code


# Logging


def test_saving_twice_is_saving_once_and_says_so(store: Store, file: Path, times: Times) -> None:
    assert store.log([dose("d")]) is Logged.NEW
    assert store.log([dose("d")]) is Logged.ALREADY
    with Store.open(file, times.clock()) as other:
        assert other.log([dose("d"), dose("d")]) is Logged.ALREADY
        assert other.log([dose("d"), dose("e")]) is Logged.NEW
    assert everything(store).keys() == {"d", "e"}


def test_only_what_is_on_the_disk_is_true() -> None:
    assert [outcome for outcome in Logged if outcome] == [Logged.NEW, Logged.ALREADY]


def test_logging_again_is_no_step_and_ends_no_redo(store: Store) -> None:
    store.log([dose("d")])
    store.log([dose("e")])
    store.undo()
    assert store.log([dose("d")]) is Logged.ALREADY
    assert store.can_redo() == Label("log", "dose", "left", "a")
    assert store.log([]) is Logged.ALREADY


def test_an_id_is_not_taken_for_another_entry(store: Store) -> None:
    store.log([dose("d", 12.5)])
    assert _refusal(lambda: store.log([dose("new"), dose("d", 10)])) == "store.entry_taken"
    assert _refusal(lambda: store.log([dose("e", 1), dose("e", 2)])) == "store.entry_taken"
    assert everything(store) == {"d": dose("d", 12.5)}


def test_an_entry_that_was_changed_in_the_meantime_is_still_the_one_that_was_logged(store: Store) -> None:
    store.log([dose("d", 12.5)])
    store.change_entry(dose("d", 10))
    assert store.log([dose("d", 12.5)]) is Logged.ALREADY
    assert everything(store) == {"d": dose("d", 10)}


def test_what_was_removed_and_is_logged_again_is_there_again(store: Store) -> None:
    store.log([dose("d", 12.5)])
    store.remove_entries(["d"])
    assert store.log([dose("d", 10, later(5), "right")]) is Logged.NEW
    assert everything(store) == {"d": dose("d", 10, later(5), "right")}
    assert [(v.why, v.removed, v.entry.value) for v in store.history("d")] == [
        ("remove", False, 12.5),
        ("again", True, 12.5),
    ]
    store.undo()
    assert everything(store) == {}
    store.undo()
    assert everything(store) == {"d": dose("d", 12.5)}
    store.redo()
    store.redo()
    assert everything(store) == {"d": dose("d", 10, later(5), "right")}


@pytest.mark.parametrize("system", ["nowhere", "b", "jug"])
def test_a_system_that_is_not_there_takes_no_entry(store: Store, system: str) -> None:
    store.apply(Step("remove", (RemoveRecord("b"),)))
    store.apply(added("jug", "stock"))
    assert _refusal(lambda: store.log([dose("d"), dose("e", system=system)])) == "store.record_gone"
    assert everything(store) == {}


def test_many_entries_are_one_step(store: Store) -> None:
    store.log([reading("r", 6.8), reading("s", 420, subject="calcium"), note("n", system="b")])
    step = store.undo()
    assert step is not None
    assert step.touched == (
        Scope("a", "reading", "alkalinity"),
        Scope("a", "reading", "calcium"),
        Scope("b", "note", ""),
    )
    assert everything(store) == {}
    store.redo()
    assert everything(store).keys() == {"r", "s", "n"}


# Changing


def test_a_change_keeps_what_was_there_and_who_changed_it_when(store: Store, times: Times) -> None:
    store.log([reading("r", 6.8)])
    logged_at = times.instant
    times.pass_by(60)
    first = replace(reading("r", 8.6), fields={"value": Typed("8,6", "dKH")})
    assert store.change_entry(first, by="Bo")
    times.pass_by(60)
    assert store.change_entry(reading("r", 8.6, later(-30), "calcium", "b"), by="Cy")
    assert everything(store) == {"r": reading("r", 8.6, later(-30), "calcium", "b")}
    assert store.entries("a") == []
    one, two = store.history("r")
    assert (one.entry, one.by, one.why, one.removed) == (reading("r", 6.8), "Bo", "change", False)
    assert (two.entry, two.by, two.why, two.removed) == (first, "Cy", "change", False)
    assert (two.until - one.until).total_seconds() == 60
    changed = store.entry("r")
    assert changed is not None
    assert changed.logged_at == one.entry.logged_at == logged_at


def test_a_change_that_changes_nothing_is_no_step_and_no_history(store: Store) -> None:
    store.log([reading("r")])
    assert not store.change_entry(reading("r"))
    assert store.history("r") == []
    assert store.can_undo() == Label("log", "reading", "alkalinity", "a")


def test_the_change_of_another_window_is_not_written_over(store: Store, file: Path, times: Times) -> None:
    store.log([reading("r", 6.8)])
    seen = store.entry("r")
    with Store.open(file, times.clock()) as other:
        other.change_entry(reading("r", 7.0), seen=seen)
    assert _refusal(lambda: store.change_entry(reading("r", 7.1), seen=seen)) == "store.entry_changed"
    # Both wanted the same: nothing is lost.
    assert not store.change_entry(reading("r", 7.0), seen=seen)
    assert everything(store) == {"r": reading("r", 7.0)}


def test_what_is_not_in_force_cannot_be_changed(store: Store) -> None:
    store.log([dose("d")])
    store.remove_entries(["d"])
    for entry_id in ("d", "never"):
        assert _refusal(lambda e=entry_id: store.change_entry(dose(e, 1))) == "store.entry_gone"
    store.undo()
    assert _refusal(lambda: store.change_entry(dose("d", 1, system="nowhere"))) == "store.record_gone"


# Removing


def test_removing_is_one_step_that_keeps_everything(store: Store, times: Times) -> None:
    store.log([dose("d"), dose("e"), note("n")])
    assert store.remove_entries(["d", "n"], by="Bo")
    assert everything(store) == {"e": dose("e")}
    (version,) = store.history("n")
    assert (version.entry, version.by, version.why, version.until) == (note("n"), "Bo", "remove", times.instant)
    assert not store.remove_entries(["n", "d"])
    assert not store.remove_entries([])
    assert _refusal(lambda: store.remove_entries(["e", "never"])) == "store.entry_gone"
    store.undo()
    assert everything(store) == {"d": dose("d"), "e": dose("e"), "n": note("n")}


def test_the_tables_themselves_refuse_to_lose_an_entry_or_its_history(store: Store) -> None:
    store.log([dose("d", 1)])
    store.change_entry(dose("d", 2))
    for statement in ("DELETE FROM entry", "DELETE FROM entry_history", "UPDATE entry_history SET value = 3"):
        before = dump(store)
        with pytest.raises(StoreError) as refusal, store._database.writing():
            store._database.sql(statement)
        assert "never" in str(refusal.value.reason.params["detail"])
        assert dump(store) == before


# Undo


def test_entries_and_records_are_undone_in_the_order_in_which_they_were_done(
    store: Store, file: Path, times: Times
) -> None:
    store.apply(typed("a", "ph", "8.1"))
    store.log([dose("d", 1)])
    store.apply(typed("a", "ph", "8.2"))
    store.change_entry(dose("d", 2))
    store.remove_entries(["d"])
    labels = [
        Label("remove_entries", "dose", "left", "a"),
        Label("change_entry", "dose", "left", "a"),
        Label("edit", "system", "ph", "a"),
        Label("log", "dose", "left", "a"),
        Label("edit", "system", "ph", "a"),
        Label("add", "system", "", "b"),
    ]
    states = [("8.2", None), ("8.2", 2.0), ("8.2", 1.0), ("8.1", 1.0), ("8.1", None), (None, None)]
    for label, state in zip(labels, states, strict=True):
        # Each step in a log that was opened for it alone.
        with Store.open(file, times.clock()) as opened:
            assert _state(opened) == state
            assert opened.can_undo() == label
            opened.undo()
            assert opened.can_redo() == label
    for state in states[::-1]:
        with Store.open(file, times.clock()) as opened:
            opened.redo()
            assert _state(opened) == state


def _state(store: Store) -> tuple[str | None, float | None]:
    ph = store.values("a").get("ph")
    there = store.entry("d")
    return ph.text if ph else None, there.value if there else None


def test_a_new_entry_ends_what_could_be_redone_and_loses_nothing(store: Store) -> None:
    store.log([dose("d", 1)])
    store.change_entry(dose("d", 2))
    store.undo()
    store.log([dose("e")])
    assert store.redo() is None
    # What was undone is gone from the log, but not from the history.
    assert [version.entry.value for version in store.history("d")] == [1, 2]
    assert everything(store) == {"d": dose("d", 1), "e": dose("e")}


def test_undo_and_redo_are_in_the_history(store: Store, times: Times) -> None:
    store.log([dose("d", 1)])
    store.change_entry(dose("d", 2))
    times.pass_by(60)
    store.undo()
    store.redo()
    assert [(v.why, v.entry.value, v.until) for v in store.history("d")[1:]] == [
        ("undo", 2, times.instant),
        ("redo", 1, times.instant),
    ]


def test_a_thousand_steps_are_remembered_and_all_entries(store: Store) -> None:
    hasty(store)
    for number in range(LIMIT + 3):
        store.log([dose(f"{number}", number, later(number))])
    undone = 0
    while store.undo():
        undone += 1
    assert undone == LIMIT
    assert list(everything(store)) == ["0", "1", "2"]
    rows = store._database.sql("SELECT count(*) FROM journal_entry UNION ALL SELECT count(*) FROM entry")
    # The steps that were forgotten left no pointers behind.
    assert rows == [(LIMIT,), (LIMIT + 3,)]


def test_an_undone_step_leaves_no_pointers_once_it_cannot_be_redone(store: Store) -> None:
    store.log([dose("d"), dose("e")])
    store.undo()
    store.apply(typed("a", "ph", "8"))
    assert store._database.sql("SELECT count(*) FROM journal_entry") == [(0,)]
    assert store._database.sql("PRAGMA foreign_key_check") == []


def test_typing_does_not_join_over_an_entry(store: Store) -> None:
    store.apply(typed("a", "ph", "8"), merge=True)
    store.log([dose("d")])
    store.apply(typed("a", "ph", "8.1"), merge=True)
    store.undo()
    assert store.values("a")["ph"] == Typed("8")


# The beginning, and a disk that refuses


def test_a_log_can_begin_with_entries_that_are_not_undone(file: Path, times: Times) -> None:
    with Store.open(file, times.clock()) as store:
        store.fill(added("a"), [dose("d"), reading("r")])
        assert everything(store).keys() == {"d", "r"}
        assert store.can_undo() is None


def test_a_full_disk_refuses_all_of_it_and_the_log_goes_on(store: Store) -> None:
    store.log([dose("d")])
    pages = store._database.pragma("page_count")
    store._database.pragma(f"max_page_count = {pages}")
    many = [note(f"n{number}", "x" * 1000) for number in range(50)]
    assert _refusal(lambda: store.log(many)) == "store.full"
    assert _refusal(lambda: store.change_entry(note("d", "x" * 100_000))) == "store.full"
    assert everything(store) == {"d": dose("d")}
    assert store.can_undo() == Label("log", "dose", "left", "a")
    store._database.pragma(f"max_page_count = {pages + 1000}")
    assert store.log(many) is Logged.NEW
    assert len(everything(store)) == 51


def test_a_failure_after_the_last_statement_leaves_no_trace(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    store.log([dose("d", 1)])
    before = dump(store)

    def fail(*_: object) -> int:
        raise RuntimeError

    monkeypatch.setattr(store._journal, "append", fail)
    for act in (
        lambda: store.log([dose("e")]),
        lambda: store.change_entry(dose("d", 2)),
        lambda: store.remove_entries(["d"]),
    ):
        with pytest.raises(RuntimeError):
            act()
    assert dump(store) == before
