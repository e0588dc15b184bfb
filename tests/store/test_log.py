"""Records, values, undo and redo, in one process and across several."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import AddRecord, Label, RemoveRecord, SetField, Step, Store, StoreError
from evenwater.store.journal import LIMIT
from evenwater.store.log import MERGE_SECONDS
from tests.store.writing import Times, added, typed


def test_what_was_typed_comes_back_character_by_character(file: Path) -> None:
    text = " 6,80 \u00a0dKH\u2009"
    with Store.open(file) as store:
        store.apply(added("a"))
        store.apply(typed("a", "measured", text, "dKH", "meq/L"))
    with Store.open(file) as store:
        assert store.values("a") == {"measured": Typed(text, "dKH", "meq/L")}


def test_the_file_is_kept_in_the_safe_modes(file: Path) -> None:
    with Store.open(file) as store:
        pragma = store._database.pragma
        # 2 is FULL (https://www.sqlite.org/pragma.html#pragma_synchronous).
        assert (pragma("journal_mode"), pragma("synchronous"), pragma("foreign_keys")) == ("wal", 2, 1)


def test_records_keep_the_order_in_which_they_were_made() -> None:
    with Store.open_memory() as store:
        for name in ("c", "a", "b"):
            store.apply(added(name))
        store.apply(added("p", kind="pump"))
        assert store.records("system") == ("c", "a", "b")
        assert store.records("pump") == ("p",)
        assert store.records("stock") == ()


def test_a_removed_record_comes_back_in_its_place_with_its_values() -> None:
    with Store.open_memory() as store:
        for name in ("a", "b", "c"):
            store.apply(added(name, name=name.upper()))
        store.apply(Step("remove", (RemoveRecord("b"),)))
        assert store.records("system") == ("a", "c")
        assert "b" not in store.snapshot().values
        store.undo()
        assert store.records("system") == ("a", "b", "c")
        assert store.values("b") == {"name": Typed("B")}


def test_a_record_made_again_under_its_id_is_empty_and_undo_brings_the_old_values_back() -> None:
    with Store.open_memory() as store:
        store.apply(added("a", name="old", ph="8.1"))
        store.apply(Step("remove", (RemoveRecord("a"),)))
        store.apply(added("a", name="new"))
        assert store.values("a") == {"name": Typed("new")}
        store.undo()
        store.undo()
        assert store.values("a") == {"name": Typed("old"), "ph": Typed("8.1")}
        store.redo()
        store.redo()
        assert store.values("a") == {"name": Typed("new")}


def test_a_step_is_all_or_nothing() -> None:
    with Store.open_memory() as store:
        store.apply(added("a", name="old"))
        with pytest.raises(StoreError) as refusal:
            store.apply(Step("edit", (SetField("a", "name", Typed("new")), SetField("gone", "name", Typed("x")))))
        assert refusal.value.reason.code == "store.record_gone"
        assert store.values("a") == {"name": Typed("old")}
        assert store.can_undo() == Label("add", "system", "", "a")


@pytest.mark.parametrize("kind", ["system", "pump"])
def test_a_record_cannot_be_made_twice(kind: str) -> None:
    with Store.open_memory() as store:
        store.apply(added("a"))
        with pytest.raises(StoreError) as refusal:
            store.apply(added("a", kind=kind))
        assert refusal.value.reason.code == "store.record_exists"
        assert store.records("system") == ("a",)


def test_labels_name_the_step_and_its_field() -> None:
    with Store.open_memory() as store:
        assert (store.can_undo(), store.can_redo()) == (None, None)
        store.apply(added("a"))
        store.apply(typed("a", "net_volume", "340", "L"))
        assert store.can_undo() == Label("edit", "system", "net_volume", "a")
        store.undo()
        assert store.can_undo() == Label("add", "system", "", "a")
        assert store.can_redo() == Label("edit", "system", "net_volume", "a")


def test_undo_gives_back_the_step_with_what_was_before_and_after(times: Times) -> None:
    with Store.open_memory(times.clock()) as store:
        store.apply(added("a", ph="8"))
        store.apply(typed("a", "ph", "8.1"))
        step = store.undo()
        assert step is not None
        assert step.edits == (SetField("a", "ph", Typed("8.1"), Typed("8"), "system"),)
        assert (step.code, step.number, step.at) == ("edit", 2, times.instant)
        first = store.undo()
        assert first is not None
        assert first.edits[0] == AddRecord("a", "system")
        assert store.undo() is None


def test_a_new_edit_ends_what_could_be_redone() -> None:
    with Store.open_memory() as store:
        store.apply(added("a", ph="1"))
        store.apply(typed("a", "ph", "2"))
        store.undo()
        store.apply(typed("a", "ph", "3"))
        assert store.redo() is None
        store.undo()
        assert store.values("a")["ph"] == Typed("1")


def test_an_edit_that_changes_nothing_is_no_step_and_ends_no_redo() -> None:
    with Store.open_memory() as store:
        store.apply(added("a", ph="1"))
        store.apply(typed("a", "ph", "2"))
        store.undo()
        assert store.apply(typed("a", "ph", "1")) is None
        assert store.can_redo() == Label("edit", "system", "ph", "a")


def test_undo_and_redo_of_a_thousand_steps_across_a_restart(file: Path) -> None:
    with Store.open(file) as store:
        store.apply(added("a", ph="start"))
        for number in range(LIMIT + 5):
            store.apply(typed("a", "ph", str(number)))
    with Store.open(file) as store:
        undone = 0
        while store.undo():
            undone += 1
        # The oldest six, the making of the record among them, are forgotten; their outcome stays.
        assert undone == LIMIT
        assert store.values("a")["ph"] == Typed("4")
    with Store.open(file) as store:
        assert store.can_undo() is None
        for number in range(LIMIT):
            step = store.redo()
            assert step is not None
            assert step.edits[0].record_id == "a"
            if number % 250 == 0:
                assert store.values("a")["ph"] == Typed(str(number + 5))
        assert store.redo() is None
        assert store.values("a")["ph"] == Typed(str(LIMIT + 4))


# Merging


def _steps_back(store: Store) -> list[str]:
    """Undo everything and return what stood in the field after each undo."""
    seen = []
    while store.undo():
        seen.append(store.values("a").get("ph", Typed("")).text)
    return seen


def test_typing_in_one_field_is_one_step_and_saved_at_each_keystroke(file: Path, times: Times) -> None:
    with Store.open(file, times.clock()) as store, Store.open(file, times.clock()) as witness:
        store.apply(added("a"))
        for text in ("8", "8.", "8.1"):
            store.apply(typed("a", "ph", text), merge=True)
            times.pass_by(MERGE_SECONDS)
            assert witness.values("a")["ph"] == Typed(text)
        assert store.can_undo() == Label("edit", "system", "ph", "a")
        store.undo()
        assert store.values("a") == {}
        store.redo()
        assert store.values("a")["ph"] == Typed("8.1")


@pytest.mark.parametrize("between", ["commit point", "pause", "other field", "other record", "no merge", "undo"])
def test_what_ends_the_typing(times: Times, between: str) -> None:
    with Store.open_memory(times.clock()) as store:
        store.apply(added("a"))
        store.apply(added("b"))
        store.apply(typed("a", "ph", "8"), merge=True)
        if between == "commit point":
            store.commit_point()
        elif between == "pause":
            times.pass_by(MERGE_SECONDS + 0.01)
        elif between == "other field":
            store.apply(typed("a", "name", "x"), merge=True)
        elif between == "other record":
            store.apply(typed("b", "ph", "x"), merge=True)
        elif between == "undo":
            store.apply(typed("a", "name", "x"))
            store.undo()
        store.apply(typed("a", "ph", "8.1"), merge=between != "no merge")
        store.undo()
        assert store.values("a")["ph"] == Typed("8")


def test_typing_does_not_join_over_a_restart_or_another_window(file: Path, times: Times) -> None:
    with Store.open(file, times.clock()) as store:
        store.apply(added("a"))
        store.apply(typed("a", "ph", "7"), merge=True)
    with Store.open(file, times.clock()) as store, Store.open(file, times.clock()) as other:
        store.apply(typed("a", "ph", "8"), merge=True)
        other.apply(typed("a", "name", "x"))
        store.apply(typed("a", "ph", "9"), merge=True)
        assert _steps_back(store) == ["8", "8", "7", "", ""]


def test_typing_does_not_join_while_another_window_could_redo(file: Path, times: Times) -> None:
    with Store.open(file, times.clock()) as store, Store.open(file, times.clock()) as other:
        store.apply(added("a"))
        store.apply(typed("a", "ph", "7"), merge=True)
        other.apply(typed("a", "name", "x"))
        other.undo()
        store.apply(typed("a", "ph", "8"), merge=True)
        assert other.redo() is None
        assert _steps_back(store) == ["7", "", ""]


def test_typing_that_comes_back_to_where_it_began_is_no_step(times: Times) -> None:
    with Store.open_memory(times.clock()) as store:
        store.apply(added("a", ph="8"))
        for text in ("8.", "8.1", "8.", "8"):
            store.apply(typed("a", "ph", text), merge=True)
        assert store.can_undo() == Label("add", "system", "", "a")
        store.apply(typed("a", "ph", "9"), merge=True)
        assert _steps_back(store) == ["8", ""]


def test_a_record_that_is_born_by_typing_goes_with_it(times: Times) -> None:
    with Store.open_memory(times.clock()) as store:
        store.apply(Step("edit", (AddRecord("a", "system"), SetField("a", "ph", Typed("8")))), merge=True)
        for text in ("8.1", "8", "8.2"):
            store.apply(typed("a", "ph", text), merge=True)
        assert store.can_undo() == Label("edit", "system", "ph", "a")
        store.undo()
        assert store.records("system") == ()
        store.redo()
        assert store.values("a")["ph"] == Typed("8.2")


def test_typing_does_not_join_the_step_that_added_the_record(times: Times) -> None:
    with Store.open_memory(times.clock()) as store:
        store.apply(added("a", ph="8"))
        store.apply(typed("a", "ph", "8.1"), merge=True)
        store.undo()
        assert store.values("a")["ph"] == Typed("8")


# Several windows, and the beginning


def test_two_windows_on_one_file_see_and_undo_each_other(file: Path) -> None:
    with Store.open(file) as one, Store.open(file) as two:
        one.snapshot()
        two.snapshot()
        one.apply(added("a", ph="8"))
        assert two.changed_elsewhere()
        assert not one.changed_elsewhere()
        assert two.snapshot().values["a"]["ph"] == Typed("8")
        assert not two.changed_elsewhere()
        two.apply(typed("a", "ph", "9"))
        assert one.undo() is not None
        assert two.values("a")["ph"] == Typed("8")


def test_nobody_writes_between_what_a_step_reads_and_what_it_writes(file: Path) -> None:
    with Store.open(file) as one, Store.open(file, busy_seconds=0.01) as two:
        one.apply(added("a", ph="8"))
        with one._database.writing():
            before = one.values("a")
            with pytest.raises(StoreError) as refusal:
                two.apply(typed("a", "ph", "9"))
            assert refusal.value.reason.code == "store.locked"
            assert one.values("a") == before


def test_a_log_is_filled_only_at_its_beginning() -> None:
    with Store.open_memory() as store:
        store.fill(added("a", ph="8"))
        assert store.values("a") == {"ph": Typed("8")}
        assert store.can_undo() is None
        with pytest.raises(StoreError) as refusal:
            store.fill(added("b"))
        assert refusal.value.reason.code == "store.not_empty"


def test_the_models_have_the_columns_of_the_file(file: Path) -> None:
    from evenwater.store import tables

    Store.open(file).close()
    with closing(sqlite3.connect(file)) as plain:
        for model in (tables.Record, tables.Value, tables.Journal, tables.CardRow, tables.PlanRow):
            columns = {row[1] for row in plain.execute(f"PRAGMA table_info({model._meta.table_name})")}
            assert columns == {field.column_name for field in model._meta.sorted_fields}
