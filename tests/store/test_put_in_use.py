"""A batch goes into its jug and the cards for the one before become void: both, or neither."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import Label, RemoveRecord, SetField, Step, Store, StoreError, in_use
from evenwater.store.cards import Cards
from evenwater.store.steps import instant_text
from tests.store.writing import Times, added, card_for, typed

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


@pytest.fixture
def store(file: Path, times: Times) -> Iterator[Store]:
    with Store.open(file, times.clock(), busy_seconds=0.01) as made:
        made.apply(added("a"))
        made.apply(added("jug", "stock", name="White jug"))
        made.apply(added("jug:1", "batch", dissolved="100", in_use_from="2026-11-01T00:00:00+00:00"))
        made.apply(added("jug:2", "batch", dissolved="106"))
        made.add_card(card_for("A1", "jug:1"))
        made.add_card(card_for("A2", "jug:1", parameter="calcium"))
        yield made


def _in_jug(store: Store) -> str:
    return in_use((b, store.values(b).get("in_use_from", Typed("")).text) for b in store.records("batch"))


def _states(store: Store) -> dict[str, str]:
    return {card.plan_id: card.state for card in store.cards()}


def test_the_batch_is_in_the_jug_and_the_cards_are_void(store: Store, file: Path, times: Times) -> None:
    step, gone = store.put_in_use("jug:2", NOON, ["A1"])
    assert step == Step(
        "edit",
        (SetField("jug:2", "in_use_from", Typed("2026-11-25T12:00:00.000000+00:00"), kind="batch"),),
        number=5,
        at=times.instant,
    )
    assert [(card.plan_id, card.state) for card in gone] == [("A1", "void")]
    with Store.open(file, times.clock()) as fresh:
        assert _in_jug(fresh) == "jug:2"
        assert _states(fresh) == {"A1": "void", "A2": "in use"}
        assert fresh.can_undo() == Label("edit", "batch", "in_use_from", "jug:2")


def test_undo_takes_the_batch_out_and_brings_no_card_back(store: Store) -> None:
    store.put_in_use("jug:2", NOON, ["A1", "A2"])
    assert store.undo() is not None
    assert _in_jug(store) == "jug:1"
    assert store.redo() is not None
    assert _in_jug(store) == "jug:2"
    assert _states(store) == {"A1": "void", "A2": "void"}


def test_it_is_a_step_of_its_own_between_typing(store: Store) -> None:
    store.apply(typed("jug:2", "in_use_from", "x"), merge=True)
    store.put_in_use("jug:2", NOON, [])
    store.apply(typed("jug:2", "in_use_from", "y"), merge=True)
    seen = []
    while len(seen) < 3 and store.undo():
        seen.append(store.values("jug:2").get("in_use_from", Typed("")).text)
    assert seen == [instant_text(NOON), "x", ""]


def test_the_same_instant_again_is_no_step_but_voids_the_cards(store: Store) -> None:
    store.put_in_use("jug:2", NOON, [])
    step, gone = store.put_in_use("jug:2", NOON, ["A1"])
    assert step is None
    assert [card.plan_id for card in gone] == ["A1"]
    store.undo()
    assert _in_jug(store) == "jug:1"


def test_cards_out_of_use_stay_as_they_are(store: Store) -> None:
    store.set_card_state("A1", "removed")
    store.set_card_state("A2", "void")
    assert store.put_in_use("jug:2", NOON, ["A1", "A2"])[1] == []
    assert _states(store) == {"A1": "removed", "A2": "void"}


@pytest.mark.parametrize(
    ("batch", "void", "code"),
    [
        ("jug:2", ["A1", "B9"], "store.card_unknown"),
        ("jug:3", ["A1"], "store.record_gone"),
        ("jug", ["A1"], "store.record_gone"),
    ],
)
def test_what_is_not_there_refuses_all_of_it(store: Store, batch: str, void: list[str], code: str) -> None:
    before = store.snapshot()
    with pytest.raises(StoreError) as refusal:
        store.put_in_use(batch, NOON, void)
    assert refusal.value.reason.code == code
    assert store.snapshot() == before
    assert _states(store) == {"A1": "in use", "A2": "in use"}
    assert store.can_undo() == Label("add", "batch", "", "jug:2")


def test_a_removed_batch_cannot_be_put_in_use(store: Store) -> None:
    store.apply(Step("remove", (RemoveRecord("jug:2"),)))
    with pytest.raises(StoreError) as refusal:
        store.put_in_use("jug:2", NOON, ["A1"])
    assert refusal.value.reason.code == "store.record_gone"
    assert _states(store)["A1"] == "in use"


def test_H12_a_failure_at_the_last_card_undoes_the_batch_and_the_first_card(
    store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    written: list[str] = []
    write: Callable[[Cards, str, str], None] = Cards._write_state

    def fail_at_the_second(cards: Cards, plan_id: str, state: str) -> None:
        write(cards, plan_id, state)
        written.append(plan_id)
        if len(written) == 2:
            cards._database.sql("SELECT * FROM no_such_table")

    monkeypatch.setattr(Cards, "_write_state", fail_at_the_second)
    with pytest.raises(StoreError):
        store.put_in_use("jug:2", NOON, ["A1", "A2"])
    assert written == ["A1", "A2"]
    assert _in_jug(store) == "jug:1"
    assert _states(store) == {"A1": "in use", "A2": "in use"}
    assert store.can_undo() == Label("add", "batch", "", "jug:2")


@pytest.mark.parametrize("claimed", ["2062-11-25T00:00:00+00:00", instant_text(NOON), "2026-11-25T23:30:00+11:00"])
def test_a_clock_that_was_wrong_leaves_no_old_batch_in_the_jug(store: Store, claimed: str) -> None:
    store.apply(typed("jug:1", "in_use_from", claimed))
    store.put_in_use("jug:2", NOON, [])
    assert _in_jug(store) == "jug:2"
    noted = datetime.fromisoformat(store.values("jug:2")["in_use_from"].text)
    assert noted == datetime.fromisoformat(claimed) + timedelta(microseconds=1)
    store.put_in_use("jug:1", NOON, [])
    assert _in_jug(store) == "jug:1"


@pytest.mark.parametrize("claimed", ["", "tomorrow", "2062-11-25T00:00:00", "9999-12-31T23:59:59-05:00", "9999-06-01"])
def test_what_is_no_instant_is_not_in_the_way(store: Store, claimed: str) -> None:
    store.apply(typed("jug:1", "in_use_from", claimed))
    assert _in_jug(store) == ""
    store.put_in_use("jug:2", NOON, [])
    assert store.values("jug:2")["in_use_from"] == Typed(instant_text(NOON))
    assert _in_jug(store) == "jug:2"


def test_another_jug_has_its_own_order(store: Store) -> None:
    store.apply(added("jug2", "stock"))
    store.apply(added("jug2:1", "batch", in_use_from="2030-01-01T00:00:00+00:00"))
    store.put_in_use("jug:2", NOON, [])
    assert store.values("jug:2")["in_use_from"] == Typed(instant_text(NOON))


def test_an_instant_of_any_zone_is_kept_in_utc(store: Store) -> None:
    store.put_in_use("jug:2", datetime(2026, 11, 25, 7, 0, tzinfo=timezone(timedelta(hours=-5))), [])
    assert store.values("jug:2")["in_use_from"] == Typed(instant_text(NOON))


def test_a_wall_time_is_refused(store: Store) -> None:
    with pytest.raises(ValueError, match="zone"):
        store.put_in_use("jug:2", datetime(2026, 11, 25, 12, 0), ["A1"])  # noqa: DTZ001
    assert _states(store)["A1"] == "in use"


@pytest.mark.parametrize(
    ("since", "expected"),
    [
        ([], ""),
        ([("x", "2026-11-25T12:00:00+00:00"), ("y", "2026-11-25T13:00:00+02:00")], "x"),
        ([("x", "2026-11-25T12:00:00+00:00"), ("y", "2026-11-25T14:00:00+02:00")], "y"),
        ([("x", "1970-01-01T00:00:00+00:00"), ("y", "")], "x"),
        ([("x", "9999"), ("y", "0001-01-01T00:00:00+00:00")], "y"),
    ],
)
def test_the_latest_instant_wins_and_of_equals_the_later_in_the_order(
    since: list[tuple[str, str]], expected: str
) -> None:
    assert in_use(since) == expected
