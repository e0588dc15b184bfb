"""A plan starts with its card and a note, or not at all; its start is undone, its card never comes back."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from evenwater.store import REPLACED, Label, Logged, Plan, RemoveRecord, Scope, Step, Store, StoreError
from evenwater.store.cards import Cards
from evenwater.store.entry_writing import EntryWriter
from evenwater.store.journal import StepJournal
from evenwater.store.plans import Plans
from tests.store.logged import NOON, everything, later, note, plan, two_systems
from tests.store.writing import Times, card_for, dump


@pytest.fixture
def store(file: Path, times: Times) -> Iterator[Store]:
    with two_systems(file, times) as made:
        yield made


def _start(store: Store, plan_id: str, at: datetime = NOON, parameter: str = "alkalinity") -> list[str]:
    card = card_for(plan_id, "jug:1", parameter=parameter)
    gone = store.start_plan(plan(plan_id, at, parameter=parameter), card, note(f"start {plan_id}", at=at))
    return [card.plan_id for card in gone]


def _end(store: Store, plan_id: str, reason: str = "reached") -> list[str]:
    gone = store.end_plan(plan_id, later(hours=5), reason, note(f"end {plan_id}", at=later(hours=5)))
    return [card.plan_id for card in gone]


def _live(store: Store) -> list[str]:
    return [plan.plan_id for plan in store.plans()]


def _cards(store: Store) -> dict[str, str]:
    return {card.plan_id: card.state for card in store.cards()}


def test_a_plan_starts_with_its_card_and_a_note(store: Store, file: Path, times: Times) -> None:
    assert _start(store, "P1") == []
    with Store.open(file, times.clock()) as fresh:
        assert fresh.plans("a") == [plan("P1")]
        assert fresh.plans("b") == []
        assert _cards(fresh) == {"P1": "in use"}
        assert everything(fresh) == {"start P1": note("start P1")}
        assert fresh.can_undo() == Label("start_plan", "plan", "alkalinity", "a")


def test_starting_it_twice_does_nothing_the_second_time(store: Store) -> None:
    _start(store, "P1")
    assert _start(store, "P1") == []
    assert (_live(store), len(everything(store))) == (["P1"], 1)
    store.undo()
    assert _live(store) == []
    assert store.can_undo() == Label("add", "system", "", "b")


def test_the_next_plan_for_the_purpose_ends_the_one_before_and_its_card(store: Store) -> None:
    _start(store, "P1")
    _start(store, "C1", parameter="calcium")
    assert _start(store, "P2", later(60)) == ["P1"]
    assert _live(store) == ["C1", "P2"]
    old = store.plans("a", live=False)[1]
    assert (old.plan_id, old.ended, old.reason) == ("P1", later(60), REPLACED)
    assert _cards(store) == {"P1": "void", "C1": "in use", "P2": "in use"}


def test_undo_of_a_start_brings_the_plan_before_back_but_no_card(store: Store) -> None:
    _start(store, "P1")
    _start(store, "P2", later(60))
    step = store.undo()
    assert step is not None
    assert step.touched == (Scope("a", "note", ""),)
    assert [change.plan_id for change in step.plans] == ["P2", "P1"]
    assert store.plans() == store.plans(live=False) == [plan("P1")]
    assert everything(store).keys() == {"start P1"}
    assert _cards(store) == {"P1": "void", "P2": "void"}
    store.redo()
    assert _live(store) == ["P2"]
    assert everything(store).keys() == {"start P1", "start P2"}
    # It is followed again, but what hangs on the stand is void until a new card is printed.
    assert _cards(store) == {"P1": "void", "P2": "void"}


def test_a_plan_whose_start_was_undone_needs_a_new_id(store: Store) -> None:
    _start(store, "P1")
    store.undo()
    with pytest.raises(StoreError) as refusal:
        _start(store, "P1")
    assert refusal.value.reason.code == "store.plan_id_taken"
    assert store.can_redo() == Label("start_plan", "plan", "alkalinity", "a")
    _start(store, "P2")
    assert _live(store) == ["P2"]


def test_ending_a_plan_voids_its_card_and_undo_only_brings_the_plan_back(
    store: Store, file: Path, times: Times
) -> None:
    _start(store, "P1")
    assert _end(store, "P1", "reached, 8 dKH") == ["P1"]
    assert _live(store) == []
    assert store.plans("a", live=False) == [replace(plan("P1"), ended=later(hours=5), reason="reached, 8 dKH")]
    assert _cards(store) == {"P1": "void"}
    with Store.open(file, times.clock()) as fresh:
        assert fresh.can_undo() == Label("end_plan", "plan", "alkalinity", "a")
        fresh.undo()
        assert fresh.plans() == [plan("P1")]
        assert (_cards(fresh), everything(fresh).keys()) == ({"P1": "void"}, {"start P1"})
        fresh.redo()
        assert _live(fresh) == []


def test_a_plan_that_has_ended_ends_once(store: Store) -> None:
    _start(store, "P1")
    _end(store, "P1")
    assert store.end_plan("P1", later(hours=9), "again", note("another note")) == []
    assert store.plans(live=False)[0].ended == later(hours=5)
    assert "another note" not in everything(store)
    assert store.can_undo() == Label("end_plan", "plan", "alkalinity", "a")


def test_a_card_that_was_taken_down_stays_down(store: Store) -> None:
    _start(store, "P1")
    store.set_card_state("P1", "removed")
    assert _end(store, "P1") == []
    store.undo()
    store.undo()
    assert _cards(store) == {"P1": "removed"}


def test_what_is_not_there_cannot_start_or_end(store: Store) -> None:
    for act, code in (
        (lambda: _end(store, "P9"), "store.plan_unknown"),
        (lambda: store.start_plan(plan("P1", system="x"), card_for("P1", "", "x"), note("n")), "store.record_gone"),
        (lambda: store.start_plan(plan("P1"), card_for("P1", ""), note("n", system="x")), "store.record_gone"),
    ):
        with pytest.raises(StoreError) as refusal:
            act()
        assert refusal.value.reason.code == code
    assert (store.plans(live=False), store.cards(), everything(store)) == ([], [], {})


def test_a_card_for_another_plan_is_refused(store: Store) -> None:
    for card in (card_for("P2", ""), card_for("P1", "", "b"), card_for("P1", "", parameter="calcium")):
        with pytest.raises(ValueError, match="another plan"):
            store.start_plan(plan("P1"), card, note("n"))
    with pytest.raises(ValueError, match="zone"):
        _start(store, "P1", datetime(2026, 11, 25, 12, 0))  # noqa: DTZ001


def test_instants_of_a_plan_are_the_same_in_every_zone(store: Store) -> None:
    there = datetime(2026, 10, 25, 2, 30, tzinfo=ZoneInfo("Europe/Berlin"), fold=1)
    _start(store, "P1", there)
    assert store.plans() == [plan("P1", there)]
    assert store.plans()[0].started.isoformat() == "2026-10-25T01:30:00+00:00"


def test_a_removed_system_has_no_plans_until_it_comes_back(store: Store) -> None:
    _start(store, "P1")
    store.apply(Step("remove", (RemoveRecord("a"),)))
    assert store.plans() == store.plans("a", live=False) == []
    store.undo()
    assert _live(store) == ["P1"]


@pytest.mark.parametrize("broken", [(Cards, "add"), (EntryWriter, "add"), (StepJournal, "append"), (Plans, "start")])
def test_a_failure_anywhere_starts_nothing(
    store: Store, monkeypatch: pytest.MonkeyPatch, broken: tuple[type, str]
) -> None:
    _start(store, "P1")
    owner, name = broken
    work: Callable[..., object] = getattr(owner, name)

    def fail_at_the_end(*given: object, **named: object) -> object:
        work(*given, **named)
        raise RuntimeError

    before = dump(store)
    monkeypatch.setattr(owner, name, fail_at_the_end)
    with pytest.raises(RuntimeError):
        _start(store, "P2", later(60))
    assert dump(store) == before


def test_a_plan_gives_itself_to_nobody_else(store: Store) -> None:
    _start(store, "P1")
    with pytest.raises(StoreError) as refusal:
        store.start_plan(Plan("P1", "a", "alkalinity", NOON, "another question"), card_for("P1", ""), note("n"))
    assert refusal.value.reason.code == "store.plan_id_taken"
    assert store.log([note("start P1")]) is Logged.ALREADY
