"""A disk that refuses entries: they are shown, counted and asked about all the same, and saved when it takes them."""

from __future__ import annotations

import random
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.session import ENTRY_KINDS, Document, Label, LogChange, Logged
from evenwater.store import Entry, RemoveRecord, Step, Store
from tests.session.listening import Listener
from tests.store.logged import NOON, dose, later, note, plan, reading
from tests.store.writing import Times, card_for


@contextmanager
def _locked(file: Path) -> Iterator[None]:
    """Hold the file as another program might."""
    other = sqlite3.connect(file, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    try:
        yield
    finally:
        other.execute("ROLLBACK")
        other.close()


def _codes(reasons: list[object]) -> list[str]:
    return [reason.code for reason in reasons if isinstance(reason, Reason)]


@pytest.fixture(autouse=True)
def _systems(document: Document, heard: Listener) -> None:
    for name in ("a", "b"):
        document.add_record("system", {"name": Typed(name)}, record_id=name)
    document.log.log([dose("d1", 1), dose("d2", 2, later(20)), reading("r", 6.8), reading("c", 420, NOON, "calcium")])
    heard.take()


def test_a_dose_that_cannot_be_saved_is_not_said_to_be_and_is_shown_counted_and_kept(
    document: Document, heard: Listener, file: Path, store: Store
) -> None:
    with _locked(file):
        assert document.log.log([dose("d3", 4, later(30))], "button") is Logged.WAITING
        assert [signal for signal, _ in heard.all] == ["failed", "log"]
        assert document.log.unsaved() == {"d3"}
        assert store.entry("d3") is None
        assert [entry.id for entry in document.log.last_doses("a", "left", 2)] == ["d3", "d2"]
        assert document.log.doses_within("a", "left", 24, later(60)) == 7
        assert document.log.near_duplicates(dose("again", 4, later(35))) == [dose("d3", 4, later(30))]
        assert document.log.count("a", "dose") == 3
        # The same dose once more, as somebody does who was told that it failed.
        assert document.log.log([dose("d3", 4, later(30))]) is Logged.WAITING
        assert document.log.doses_within("a", "left", 24, later(60)) == 7
    heard.take()
    document.edit("a", "ph", Typed("8"))
    assert heard.take("restored", "failed") == [3]
    assert document.log.unsaved() == frozenset()
    assert store.doses_within("a", "left", 24, later(60)) == 7
    assert document.undo()
    assert document.undo_text() == Label("log", "dose", "left", "a")


def test_changes_and_removals_wait_in_their_turn(document: Document, heard: Listener, file: Path, store: Store) -> None:
    with _locked(file):
        assert document.log.change_entry(dose("d1", 1.5), "form") is Logged.WAITING
        assert document.log.remove_entries(["d2"], "form") is Logged.WAITING
        assert document.log.change_entry(dose("d1", 1.25, later(5), "right")) is Logged.WAITING
        document.edit("a", "ph", Typed("8"))
        assert document.unsaved() == 4
        assert document.log.entries("a", ("dose",)) == [dose("d1", 1.25, later(5), "right")]
        assert document.log.entry("d2") is None
        assert document.log.latest("a", "dose", "left") is None
        assert store.entry("d2") is not None
        changes = [change for change in heard.take("log") if isinstance(change, LogChange)]
        assert changes[-1].subjects == {"left", "right"}
    assert document.save()
    assert store.entries("a", ("dose",)) == [dose("d1", 1.25, later(5), "right")]
    assert [version.entry.value for version in store.history("d1")] == [1, 1.5]


def test_an_entry_of_a_system_that_waits_itself_goes_to_the_disk_behind_it(
    document: Document, file: Path, store: Store
) -> None:
    with _locked(file):
        system = document.add_record("system", {"name": Typed("new")})
        assert document.log.log([reading("new", 7.0, system=system)]) is Logged.WAITING
        assert [(e.system_id, e.id) for e in document.log.latest_of_all("reading")][-1] == (system, "new")
    assert document.save()
    assert store.latest(system, "reading") == reading("new", 7.0, system=system)


def test_what_can_never_be_saved_is_dropped_and_not_shown_any_longer(
    document: Document, heard: Listener, file: Path, store: Store
) -> None:
    with _locked(file):
        document.log.log([dose("lost", 3, system="b")])
        document.log.log([dose("kept", 3)])
    with Store.open(file) as other:
        other.apply(Step("remove", (RemoveRecord("b"),)))
    heard.take()
    assert document.save()
    assert _codes(heard.take("failed", "log")) == ["store.record_gone"]
    assert document.log.entry("lost") is None
    assert store.entry("kept") is not None
    assert document.log.unsaved() == frozenset()


@pytest.mark.parametrize(
    ("act", "code"),
    [
        (lambda log: log.log([dose("x", system="nowhere")]), "store.record_gone"),
        (lambda log: log.log([dose("d1", 99)]), "store.entry_taken"),
        (lambda log: log.change_entry(dose("never")), "store.entry_gone"),
        (lambda log: log.change_entry(dose("d1", 9), seen=dose("d1", 8)), "store.entry_changed"),
        (lambda log: log.remove_entries(["never"]), "store.entry_gone"),
    ],
)
def test_what_does_not_fit_is_refused_once_and_does_not_wait(
    document: Document, heard: Listener, act, code: str
) -> None:
    before = document.log.entries("a")
    assert act(document.log) is Logged.REFUSED
    assert _codes(heard.take("failed")) == [code]
    assert document.unsaved() == 0
    assert document.log.entries("a") == before


def test_a_plan_does_not_wait(document: Document, heard: Listener, file: Path) -> None:
    document.log.start_plan(plan("P1"), card_for("P1", ""), note("start"))
    heard.take()
    with _locked(file):
        assert not document.log.start_plan(plan("P2"), card_for("P2", ""), note("other"))
        assert not document.log.end_plan("P1", later(5), "", note("end"))
        assert document.log.import_entries([note("n")], lambda read: True) is None
        assert _codes(heard.take("failed")) == ["store.locked"] * 3
    assert document.unsaved() == 0
    assert document.log.plans() == [plan("P1")]
    assert document.log.start_plan(plan("P2"), card_for("P2", ""), note("other"))


def test_no_answer_is_not_taken_for_nothing_given(document: Document, heard: Listener, store: Store) -> None:
    store.close()
    log = document.log
    assert log.doses_within("a", "left", 24, later(60)) is None
    assert log.near_duplicates(dose("new", 1)) is None
    assert (log.entries("a"), log.latest("a", "dose"), log.latest_of_all("dose"), log.count("a", "dose")) == (
        [],
        None,
        [],
        0,
    )
    assert (log.entry("d1"), log.latest_by_subject("a", "dose"), log.history("d1"), log.plans()) == (None, {}, [], [])
    assert [column.tolist() for column in log.columns("a", "left", "dose")] == [[], []]
    assert len(heard.take("failed")) == 11
    assert log.log([dose("x")]) is Logged.WAITING
    assert log.change_entry(dose("d1", 9)) is Logged.WAITING
    assert log.remove_entries(["d1"]) is Logged.WAITING
    assert not log.start_plan(plan("P1"), card_for("P1", ""), note("n"))
    assert not log.end_plan("P1", later(5), "", note("n"))
    assert log.import_entries([note("n")], lambda read: True) is None
    # What waits is shown even now, where it needs nothing from the disk.
    assert log.entry("x") == dose("x")


# What waits, laid over what is saved, answers every question as the disk will.


def _answers(document: Document) -> dict[str, object]:
    log = document.log
    answers: dict[str, object] = {"all": log.latest_of_all("reading"), "doses": log.latest_of_all("dose")}
    for system in ("a", "b"):
        answers[f"entries {system}"] = log.entries(system)
        answers[f"newest {system}"] = log.entries(system, newest_first=True, limit=3)
        answers[f"span {system}"] = log.entries(system, ("dose", "note"), since=later(-10), until=later(11))
        for kind in ENTRY_KINDS:
            answers[f"count {system} {kind}"] = log.count(system, kind)
            answers[f"latest {system} {kind}"] = log.latest(system, kind)
            answers[f"subjects {system} {kind}"] = sorted(log.latest_by_subject(system, kind).items())
        for subject in ("left", "right"):
            answers[f"last {system} {subject}"] = log.last_doses(system, subject, 2)
            answers[f"within {system} {subject}"] = log.doses_within(system, subject, 0.3, later(3))
            answers[f"near {system} {subject}"] = log.near_duplicates(dose("?", 1, NOON, subject, system))
            answers[f"columns {system} {subject}"] = [c.tolist() for c in log.columns(system, subject, "dose")]
    return answers


def _any_entry(chance: random.Random, entry_id: str) -> Entry:
    at, system = later(chance.randint(-20, 20)), chance.choice("ab")
    maker = chance.randrange(3)
    if maker == 0:
        return dose(entry_id, chance.randint(1, 3), at, chance.choice(("left", "right")), system)
    if maker == 1:
        return reading(entry_id, chance.randint(1, 3), at, chance.choice(("alkalinity", "calcium")), system)
    return note(entry_id, "x", at, system)


@pytest.mark.parametrize("seed", range(12))
def test_what_waits_looks_as_it_will_when_it_is_saved(document: Document, file: Path, times: Times, seed: int) -> None:
    chance = random.Random(seed)
    document.log.log([_any_entry(chance, f"s{number}") for number in range(12)])
    with _locked(file):
        for number in range(8):
            there = [entry.id for system in "ab" for entry in document.log.entries(system)]
            act = chance.randrange(3)
            if act == 0:
                document.log.log([_any_entry(chance, f"w{number}"), _any_entry(chance, f"v{number}")])
            elif act == 1:
                document.log.change_entry(_any_entry(chance, chance.choice(there)))
            else:
                document.log.remove_entries(chance.sample(there, 2))
        waiting = _answers(document)
        assert document.unsaved() == 8
    assert document.save()
    assert _answers(document) == waiting
    fresh = Document(Store.open(file, times.clock()))
    assert _answers(fresh) == waiting
    fresh.close()
