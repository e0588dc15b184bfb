"""Cards in use, void and taken down; instants that mean the same on every night of the year."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from evenwater.store import Card, State, Store, StoreError
from evenwater.store.steps import instant_from, instant_text
from tests.store.writing import added

ISSUED = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)


def _card(plan_id: str, parameter: str = "alkalinity", system: str = "a", version: int = 1, batch_id: str = "") -> Card:
    issued = ISSUED + timedelta(hours=version)
    until, body = issued + timedelta(days=3), '{"kind": "correction"}'
    return Card(plan_id, version, system, parameter, issued, until, body, batch_id=batch_id)


@pytest.fixture
def store() -> Iterator[Store]:
    made = Store.open_memory()
    made.apply(added("a"))
    made.apply(added("b"))
    yield made
    made.close()


def _states(store: Store) -> dict[str, str]:
    return {card.plan_id: card.state for card in store.cards()}


def test_a_new_card_makes_the_older_ones_for_its_purpose_void(store: Store) -> None:
    store.add_card(_card("A1"))
    store.add_card(_card("calcium", parameter="calcium"))
    store.add_card(_card("other", system="b"))
    void = store.add_card(_card("A2", version=2))
    assert [card.plan_id for card in void] == ["A1"]
    assert _states(store) == {"A1": "void", "calcium": "in use", "other": "in use", "A2": "in use"}
    assert [card.plan_id for card in store.cards("void")] == ["A1"]


def test_a_void_card_stays_void_until_it_is_taken_down(store: Store) -> None:
    store.add_card(_card("A1"))
    store.add_card(_card("A2", version=2))
    store.add_card(_card("A3", version=3))
    assert [card.plan_id for card in store.cards("void")] == ["A1", "A2"]
    store.set_card_state("A1", "removed")
    assert [card.plan_id for card in store.cards("void")] == ["A2"]
    assert _states(store)["A1"] == "removed"


@pytest.mark.parametrize("state", ["void", "removed"])
def test_nothing_comes_back_into_use(store: Store, state: State) -> None:
    store.add_card(_card("A1"))
    store.set_card_state("A1", state)
    for again in (lambda: store.set_card_state("A1", "in use"), lambda: store.add_card(_card("A1"))):
        with pytest.raises(StoreError) as refusal:
            again()
        assert refusal.value.reason.code in ("store.card_state", "store.plan_id_taken")
    assert _states(store) == {"A1": state}


def test_a_tick_set_by_mistake_can_be_taken_back(store: Store) -> None:
    store.add_card(_card("A1"))
    store.set_card_state("A1", "removed")
    store.set_card_state("A1", "void")
    assert _states(store) == {"A1": "void"}


def test_registering_the_same_card_twice_is_registering_it_once(store: Store) -> None:
    store.add_card(_card("A1"))
    assert store.add_card(_card("A1")) == []
    assert _states(store) == {"A1": "in use"}


def test_a_plan_id_belongs_to_one_plan(store: Store) -> None:
    store.add_card(_card("A1"))
    with pytest.raises(StoreError) as refusal:
        store.add_card(_card("A1", parameter="calcium"))
    assert refusal.value.reason.code == "store.plan_id_taken"
    assert store.cards() == [_card("A1")]


def test_an_unknown_card_has_no_state(store: Store) -> None:
    with pytest.raises(StoreError) as refusal:
        store.set_card_state("A1", "void")
    assert refusal.value.reason.code == "store.card_unknown"


def test_a_card_needs_its_system(store: Store) -> None:
    with pytest.raises(StoreError):
        store.add_card(_card("A1", system="nowhere"))
    assert store.cards() == []


def test_cards_survive_a_restart_whole(file: Path) -> None:
    with Store.open(file) as store:
        store.apply(added("a"))
        store.add_card(_card("A1", batch_id="jug:0a1b2c3d"))
    with Store.open(file) as store:
        assert store.cards() == [_card("A1", batch_id="jug:0a1b2c3d")]


def test_the_cards_of_a_stock_become_void_together_but_for_those_to_keep(store: Store) -> None:
    for plan_id, parameter, system, batch_id in (
        ("A1", "alkalinity", "a", "jug:1"),
        ("A2", "calcium", "a", "jug:0a1b2c3d"),
        ("A3", "alkalinity", "b", "jug:0a1b2c3d"),
        ("A4", "calcium", "b", "jug2:0a1b2c3d"),
        ("A5", "nitrate", "a", ""),
        ("A6", "nitrate", "b", "jug"),
    ):
        store.add_card(_card(plan_id, parameter, system, batch_id=batch_id))
    store.set_card_state("A1", "removed")
    assert [card.plan_id for card in store.void_cards_of("jug", ["A3", "no such plan"])] == ["A2"]
    assert [card.plan_id for card in store.cards("in use")] == ["A3", "A4", "A5", "A6"]
    (void,) = store.void_cards_of("jug", [])
    assert void == replace(_card("A3", system="b", batch_id="jug:0a1b2c3d"), state="void")
    assert store.void_cards_of("jug", []) == []
    assert _states(store)["A1"] == "removed"


# Clock changes of 2026 from the tz database: in the night to 25 October Berlin, and on 1 November
# New York, went through one wall-clock hour twice; Lord Howe Island through half an hour.
@pytest.mark.parametrize(
    ("zone", "wall"),
    [
        ("Europe/Berlin", datetime(2026, 10, 25, 2, 30)),  # noqa: DTZ001
        ("America/New_York", datetime(2026, 11, 1, 1, 30)),  # noqa: DTZ001
        ("Australia/Lord_Howe", datetime(2026, 4, 5, 1, 45)),  # noqa: DTZ001
    ],
)
def test_the_hour_that_comes_twice_is_two_instants_in_order(zone: str, wall: datetime) -> None:
    first = wall.replace(tzinfo=ZoneInfo(zone), fold=0)
    second = wall.replace(tzinfo=ZoneInfo(zone), fold=1)
    texts = [instant_text(first), instant_text(second)]
    assert texts == sorted(texts)
    assert texts[0] != texts[1]
    assert [instant_from(text).timestamp() for text in texts] == [first.timestamp(), second.timestamp()]


def test_a_card_across_the_clock_change_lasts_as_long_as_it_says(store: Store) -> None:
    berlin = ZoneInfo("Europe/Berlin")
    issued = datetime(2026, 10, 24, 12, 0, tzinfo=berlin)
    card = Card("A1", 1, "a", "alkalinity", issued, datetime(2026, 10, 25, 12, 0, tzinfo=berlin), "{}")
    store.add_card(card)
    kept = store.cards()[0]
    assert kept.valid_until - kept.issued == timedelta(hours=25)


def test_a_wall_time_is_not_an_instant() -> None:
    with pytest.raises(ValueError, match="zone"):
        instant_text(datetime(2026, 10, 25, 2, 30))  # noqa: DTZ001


def test_text_order_is_time_order_with_and_without_fractions() -> None:
    early = datetime(2026, 1, 1, 0, 0, 0, tzinfo=UTC)
    assert (
        instant_text(early)
        < instant_text(early + timedelta(microseconds=1))
        < instant_text(early + timedelta(seconds=1))
    )
