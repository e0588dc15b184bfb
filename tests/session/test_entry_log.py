"""The log of a document: what it saves, announces, undoes, and shares with another window."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QObject

from evenwater.engine.quantities import Typed
from evenwater.session import Document, Label, LogChange, Logged, NewRecord, PlansChange, UndoState
from evenwater.store import Store
from tests.session.listening import Listener
from tests.store.logged import NOON, dose, later, note, plan, reading
from tests.store.writing import card_for


@pytest.fixture(autouse=True)
def _systems(document: Document, heard: Listener) -> None:
    for name in ("a", "b"):
        document.add_record("system", {"name": Typed(name)}, record_id=name)
    heard.take()


def _change(*parts: str, initiator: object = None) -> LogChange:
    system, kind, subject = parts
    return LogChange(frozenset([system]), frozenset([kind]), frozenset([subject]), initiator)


def test_an_entry_is_on_the_disk_before_it_is_announced(document: Document, heard: Listener, file: Path) -> None:
    seen: list[int] = []

    class Witness(QObject):
        def look(self, _: LogChange) -> None:
            with Store.open(file) as other:
                seen.append(other.count("a", "dose"))

    witness = Witness()
    document.log.logChanged.connect(witness.look)
    assert document.log.log([dose("d")], "button") is Logged.NEW
    assert seen == [1]
    assert heard.all == [
        ("log", _change("a", "dose", "left", initiator="button")),
        ("undo", UndoState(Label("log", "dose", "left", "a"), None)),
    ]
    assert document.log.unsaved() == frozenset()


def test_a_double_click_logs_one_dose_and_says_so(document: Document, heard: Listener) -> None:
    assert document.log.log([dose("d")]) is Logged.NEW
    heard.take()
    assert document.log.log([dose("d")]) is Logged.ALREADY
    assert heard.all == []
    assert document.log.last_doses("a", "left", 3) == [dose("d")]


def test_a_change_names_the_series_before_and_after(document: Document, heard: Listener) -> None:
    document.log.log([reading("r")])
    heard.take()
    moved = reading("r", 420, later(5), "calcium", "b")
    assert document.log.change_entry(moved, "form", by="Bo", seen=document.log.entry("r"))
    (change,) = heard.take("log")
    assert change == LogChange(
        frozenset(["a", "b"]), frozenset(["reading"]), frozenset(["alkalinity", "calcium"]), "form"
    )
    assert document.log.entry("r") == moved
    assert document.log.change_entry(moved) is Logged.ALREADY
    assert heard.all == []
    assert [version.by for version in document.log.history("r")] == ["Bo"]


def test_a_removal_is_announced_undone_and_done_again(document: Document, heard: Listener) -> None:
    document.log.log([dose("d"), dose("e", pump="right")])
    heard.take()
    assert document.log.remove_entries(["d", "e"], "button", by="Bo")
    both = LogChange(frozenset("a"), frozenset(["dose"]), frozenset(["left", "right"]), "button")
    assert heard.take("log") == [both]
    assert document.log.remove_entries(["d"]) is Logged.ALREADY
    assert document.undo("key")
    assert heard.take("log") == [replace(both, initiator="key")]
    assert document.log.count("a", "dose") == 2
    assert document.redo()
    assert heard.take("log") == [replace(both, initiator=None)]
    assert document.log.entries("a") == []


def test_undo_goes_through_entries_and_records_in_their_order(document: Document, heard: Listener) -> None:
    document.edit("a", "ph", Typed("8.1"), merge=True)
    document.log.log([dose("d")])
    document.edit("a", "ph", Typed("8.2"), merge=True)
    heard.take()
    document.undo()
    assert heard.take("log", "changed")[-1].fields == {"ph"}  # type: ignore[attr-defined]
    document.undo()
    assert heard.take("log") == [_change("a", "dose", "left")]
    assert document.value("a", "ph") == Typed("8.1")
    assert document.undo_text() == Label("edit", "system", "ph", "a")


def test_typing_that_waits_is_saved_before_the_entry(file: Path, times, qtbot) -> None:
    document = Document(Store.open(file, times.clock()), typing_ms=60_000)
    document.edit("a", "ph", Typed("8"), merge=True)
    assert document.unsaved() == 1
    assert document.log.log([dose("d")])
    assert document.unsaved() == 0
    document.undo()
    assert document.value("a", "ph") == Typed("8")
    document.close()


def test_an_import_is_announced_once_and_stopped_without_a_trace(document: Document, heard: Listener) -> None:
    many = [reading(f"r{number}", number, later(number)) for number in range(30)]
    assert document.log.import_entries(many, lambda read: False) is None
    assert heard.all == []
    assert document.log.import_entries(many, lambda read: True, "sheet") == 30
    assert heard.take("log") == [LogChange(initiator="sheet")]
    assert document.undo_text() == Label("import", "reading", "alkalinity", "a")
    assert document.log.import_entries(many, lambda read: True) == 0
    assert heard.all == []


def test_what_is_done_while_an_import_runs_waits_for_its_end(document: Document, heard: Listener) -> None:
    outcomes: list[Logged] = []

    def press_a_button(read: int) -> bool:
        outcomes.append(document.log.log([dose("d")]))
        assert not document.undo()
        return True

    assert document.log.import_entries([reading("r")], press_a_button) == 1
    assert outcomes == [Logged.WAITING]
    assert document.unsaved() == 0
    assert len(heard.take("restored")) == 1
    assert document.undo_text() == Label("log", "dose", "left", "a")


def test_a_plan_is_announced_with_its_card_and_its_note(document: Document, heard: Listener) -> None:
    assert document.log.start_plan(plan("P1"), card_for("P1", ""), note("start"), "button")
    assert heard.all == [
        ("log", _change("a", "note", "", initiator="button")),
        ("plans", PlansChange(frozenset("a"), "button")),
        ("undo", UndoState(Label("start_plan", "plan", "alkalinity", "a"), None)),
        ("cards", "button"),
    ]
    assert document.log.plans("a") == [plan("P1")]
    heard.take()
    assert document.log.end_plan("P1", later(60), "reached", note("end"), "button")
    assert [signal for signal, _ in heard.all] == ["log", "plans", "undo", "cards"]
    assert document.log.plans() == []
    assert document.log.plans(live=False)[0].reason == "reached"
    heard.take()
    assert document.undo()
    assert {signal for signal, _ in heard.all} == {"undo", "log", "plans", "cards"}
    assert document.log.plans() == [plan("P1")]
    assert [card.state for card in document.cards()] == ["void"]


def test_the_other_windows_entries_come_with_the_next_look(document: Document, heard: Listener, file: Path) -> None:
    other = Document(Store.open(file))
    other.log.log([dose("d")])
    assert document.log.count("a", "dose") == 1
    document.refresh()
    assert heard.take("log") == [LogChange()]
    document.refresh()
    assert heard.all == []
    document.undo()
    other.refresh()
    assert other.log.entries("a") == []
    other.close()


def test_a_listener_knows_what_concerns_it() -> None:
    change = _change("a", "dose", "left")
    assert change.touches("a", "dose", "left")
    assert change.touches("a", "dose")
    assert not change.touches("b", "dose")
    assert not change.touches("a", "reading")
    assert not change.touches("a", "dose", "right")
    assert LogChange().touches("b", "reading", "calcium")


def test_a_log_can_be_filled_with_entries(qapp: object, heard: Listener) -> None:
    fresh = Document(Store.open_memory())
    told = Listener(fresh)
    assert fresh.fill([NewRecord("system", {}, "s")], entries=[dose("d", system="s")])
    assert told.take("log") == [LogChange()]
    assert fresh.log.entries("s") == [dose("d", system="s")]
    assert fresh.undo_text() is None
    fresh.close()


def test_questions_go_through_to_the_disk(document: Document) -> None:
    log = document.log
    log.log([reading("r", 6.8), reading("s", 7.0, later(1)), dose("d"), reading("c", 420, NOON, "calcium", "b")])
    assert [entry.id for entry in log.entries("a", ("reading",), since=later(1))] == ["s"]
    assert log.latest("a", "reading", "alkalinity") == reading("s", 7.0, later(1))
    assert list(log.latest_by_subject("b", "reading")) == ["calcium"]
    assert [entry.id for entry in log.latest_of_all("reading")] == ["s", "c"]
    assert log.columns("a", "alkalinity")[1].tolist() == [6.8, 7.0]
    assert log.doses_within("a", "left", 24, later(60)) == 12.5
    assert log.near_duplicates(dose("new", at=later(9))) == [dose("d")]
