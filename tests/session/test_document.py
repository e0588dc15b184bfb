"""What the document keeps, what it announces, and to whom."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QObject

from evenwater.engine.quantities import Typed
from evenwater.session import Change, Document, NewRecord, RecordsChange, UndoState
from evenwater.store import Label, Store
from tests.session.listening import Listener
from tests.store.writing import Times


def _system(document: Document, name: str = "North frag bay") -> str:
    return document.add_record("system", {"name": Typed(name), "ph": Typed("")})


def test_a_new_record_is_announced_before_its_fields(document: Document, heard: Listener) -> None:
    who = QObject()
    record = document.add_record("system", {"name": Typed("Rack"), "ph": Typed("")}, who)
    assert document.records("system") == (record,)
    assert document.kind(record) == "system"
    assert dict(document.values(record)) == {"name": Typed("Rack")}
    assert heard.all == [
        ("records", RecordsChange(frozenset({"system"}), who)),
        ("changed", Change(record, frozenset({"name"}), who)),
        ("undo", UndoState(Label("add", "system", "", record), None)),
    ]


def test_an_edit_says_which_field_and_who_did_it(document: Document, heard: Listener) -> None:
    record = _system(document)
    heard.take()
    who = QObject()
    document.edit(record, "net_volume", Typed("340", "L", "US gal"), who)
    (change,) = heard.take("changed")
    assert change == Change(record, frozenset({"net_volume"}), who)
    assert isinstance(change, Change)
    assert change.initiator is who
    assert document.value(record, "net_volume") == Typed("340", "L", "US gal")


def test_several_fields_are_one_step_and_those_that_stay_are_left_out(document: Document, heard: Listener) -> None:
    record = _system(document)
    heard.take()
    fields = {"name": Typed("North frag bay"), "ph": Typed("8.1"), "net_volume": Typed("340", "L")}
    document.edit_fields(record, fields, "button")
    assert heard.take("changed") == [Change(record, frozenset({"ph", "net_volume"}), "button")]
    document.edit_fields(record, fields)
    assert heard.all == []
    assert document.undo()
    assert dict(document.values(record)) == {"name": Typed("North frag bay")}


def test_what_nobody_typed_is_empty(document: Document) -> None:
    record = _system(document)
    assert document.value(record, "ph") == Typed("")
    assert document.value("nowhere", "ph") == Typed("")
    assert document.kind("nowhere") == ""
    assert dict(document.values("nowhere")) == {}


def test_a_field_that_is_entered_and_left_a_thousand_times_is_not_written(
    document: Document, heard: Listener, store: Store, file: Path, times: Times
) -> None:
    record = _system(document)
    document.edit(record, "net_volume", Typed("6,80", "dKH"))
    document.undo()
    document.redo()
    document.edit(record, "note", Typed("x"))
    document.undo()
    heard.take()
    with Store.open(file, times.clock()) as witness:
        witness.snapshot()
        written = store._database.connection.total_changes
        for _ in range(1000):
            document.edit(record, "net_volume", document.value(record, "net_volume"), merge=True)
            document.edit(record, "ph", document.value(record, "ph"))
            document.commit_point()
        assert not witness.changed_elsewhere()
        assert store._database.connection.total_changes == written
    assert heard.all == []
    assert document.redo_text() == Label("edit", "system", "note", record)
    assert store.values(record)["net_volume"] == Typed("6,80", "dKH")


def test_undo_and_redo_announce_what_is_different_now(document: Document, heard: Listener) -> None:
    record = _system(document)
    document.edit(record, "ph", Typed("8.1"))
    heard.take()
    assert document.undo("button")
    assert heard.all == [
        ("changed", Change(record, frozenset({"ph"}), "button")),
        ("undo", UndoState(Label("add", "system", "", record), Label("edit", "system", "ph", record))),
    ]
    assert document.value(record, "ph") == Typed("")
    heard.take()
    assert document.undo()
    assert heard.take("records") == [RecordsChange(frozenset({"system"}))]
    assert document.records("system") == ()
    assert not document.undo()
    assert document.redo()
    assert document.redo()
    assert not document.redo()
    assert document.value(record, "ph") == Typed("8.1")


def test_typing_is_one_undo_step_until_a_commit_point(document: Document, times: Times) -> None:
    record = _system(document)
    for text in ("8", "8.", "8.1"):
        document.edit(record, "ph", Typed(text), merge=True)
    document.commit_point()
    document.edit(record, "ph", Typed("8.15"), merge=True)
    document.undo()
    assert document.value(record, "ph") == Typed("8.1")
    document.undo()
    assert document.value(record, "ph") == Typed("")


def test_a_removed_system_takes_its_corrections_and_leaves_the_rest(document: Document, heard: Listener) -> None:
    first, second = _system(document, "one"), _system(document, "two")
    stock = document.add_record("stock", {"name": Typed("White jug")})
    for system in (first, second):
        document.edit(f"{system}:alkalinity", "stock", Typed(stock))
    heard.take()
    document.remove_record(first, "button")
    assert document.records("system") == (second,)
    assert document.records("correction") == (f"{second}:alkalinity",)
    assert document.records("stock") == (stock,)
    assert heard.take("records") == [RecordsChange(frozenset({"system", "correction"}), "button")]
    assert document.undo_text() == Label("remove", "system", "", first)
    document.undo()
    assert document.records("system") == (first, second)
    assert document.value(f"{first}:alkalinity", "stock") == Typed(stock)


def test_removing_what_is_not_there_is_nothing(document: Document, heard: Listener) -> None:
    document.remove_record("nowhere")
    assert heard.all == []
    assert document.undo_text() is None


@pytest.mark.parametrize("name", ["water", "recovery"])
def test_what_a_system_has_one_of_is_born_with_its_first_field_and_goes_with_the_system(
    document: Document, name: str
) -> None:
    system = document.add_record("system", {"name": Typed("Left")})
    document.edit(f"{system}:{name}", "temperature", Typed("25", "degC"))
    assert document.records(name) == (f"{system}:{name}",)
    assert document.records("correction") == ()
    document.undo()
    assert document.records(name) == ()
    document.redo()
    document.remove_record(system)
    assert document.records(name) == ()


def test_a_correction_is_born_with_its_first_field_and_undone_with_it(document: Document) -> None:
    system = _system(document)
    correction = f"{system}:calcium"
    for text in ("3", "39", "395"):
        document.edit(correction, "measured", Typed(text, "mg/L"), merge=True)
    assert document.records("correction") == (correction,)
    assert document.value(correction, "parameter") == Typed("calcium")
    assert document.undo_text() == Label("edit", "correction", "measured", correction)
    document.undo()
    assert document.records("correction") == ()
    document.redo()
    assert document.value(correction, "measured") == Typed("395", "mg/L")


def test_the_document_outlives_the_program(document: Document, file: Path, times: Times) -> None:
    record = _system(document)
    document.edit(record, "name", Typed("South bay"))
    assert document.close()
    reopened = Document(Store.open(file, times.clock()))
    assert reopened.value(record, "name") == Typed("South bay")
    assert reopened.undo_text() == Label("edit", "system", "name", record)
    assert reopened.undo()
    assert reopened.value(record, "name") == Typed("North frag bay")
    reopened.close()


# A second window


def test_another_window_is_seen_when_this_one_is_activated(
    document: Document, heard: Listener, file: Path, times: Times
) -> None:
    kept = _system(document)
    lost = _system(document, "lost")
    other = Document(Store.open(file, times.clock()))
    other.edit(kept, "ph", Typed("8.2"))
    other.remove_record(lost)
    heard.take()
    document.refresh()
    assert ("records", RecordsChange(frozenset({"system"}))) in heard.all
    assert ("changed", Change(kept, frozenset({"ph"}))) in heard.all
    assert document.records("system") == (kept,)
    assert document.undo_text() == Label("remove", "system", "", lost)
    heard.take()
    document.refresh()
    assert heard.all == []
    other.close()


def test_an_edit_shows_what_the_other_window_did_first(document: Document, file: Path, times: Times) -> None:
    record = _system(document)
    other = Document(Store.open(file, times.clock()))
    other.edit(record, "ph", Typed("8.2"))
    document.edit(record, "name", Typed("mine"))
    assert document.value(record, "ph") == Typed("8.2")
    document.undo()
    document.undo()
    other.refresh()
    assert other.value(record, "ph") == Typed("")
    assert other.value(record, "name") == Typed("North frag bay")
    other.close()


def test_signals_reach_only_this_document(document: Document, heard: Listener) -> None:
    other = Document(Store.open_memory())
    other.fill([NewRecord("system", {"name": Typed("x")}, "a")])
    other.edit("a", "name", Typed("y"))
    assert heard.all == []
    other.close()
