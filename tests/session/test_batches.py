"""The batches of a stock: which one is in the jug, how one is added, put in use, taken out with its stock."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.session import Change, Document, RecordsChange, UndoState
from evenwater.store import Label, RemoveRecord, Step, Store
from tests.session.listening import Listener
from tests.store.writing import Times, card_for

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
WEAK = {"chemical": Typed("sodium carbonate anhydrous"), "dissolved": Typed("100", "g")}
NOON_TEXT = Typed("2026-11-25T12:00:00.000000+00:00")


@pytest.fixture
def jug(document: Document) -> str:
    """A jug with one batch in it, and a card for that batch in force."""
    document.add_record("system", {"name": Typed("North frag bay")}, record_id="a")
    stock = document.add_record("stock", {"name": Typed("White jug")})
    batch = document.add_batch(stock, WEAK)
    assert document.put_in_use(batch, NOON - timedelta(days=30), [])
    assert document.add_card(card_for("A1", batch))
    return stock


@contextmanager
def _second_window(file: Path) -> Iterator[Document]:
    other = Document(Store.open(file))
    yield other
    assert other.close()


def _states(document: Document) -> dict[str, str]:
    return {card.plan_id: card.state for card in document.cards()}


# Reading and adding


def test_a_batch_belongs_to_its_stock_and_is_only_written_at_first(
    document: Document, jug: str, heard: Listener
) -> None:
    other = document.add_record("stock", {"name": Typed("Blue jug")})
    heard.take()
    batch = document.add_batch(jug, {**WEAK, "mixed_by": Typed("")}, "button")
    stock_id, colon, own = batch.partition(":")
    assert (stock_id, colon, len(own)) == (jug, ":", 8)
    assert int(own, 16) >= 0
    assert document.kind(batch) == "batch"
    assert dict(document.values(batch)) == WEAK
    assert document.batches(jug)[1:] == (batch,)
    assert document.batches(other) == ()
    assert document.batch_in_use(jug) == document.batches(jug)[0]
    assert document.batch_in_use(other) == ""
    assert heard.all == [
        ("records", RecordsChange(frozenset({"batch"}), "button")),
        ("changed", Change(batch, frozenset(WEAK), "button")),
        ("undo", UndoState(Label("add", "batch", "", batch), None)),
    ]


def test_a_copy_of_the_batch_in_the_jug_is_not_in_the_jug(document: Document, jug: str) -> None:
    first = document.batch_in_use(jug)
    again = document.add_batch(jug, document.values(first))
    assert document.batch_in_use(jug) == first
    assert document.value(again, "in_use_from") == Typed("")
    assert document.value(again, "dissolved") == Typed("100", "g")


def test_a_stock_that_the_other_window_removed_takes_no_batch(
    document: Document, jug: str, heard: Listener, file: Path
) -> None:
    with Store.open(file) as other:
        other.apply(Step("remove", (RemoveRecord(jug),)))
    heard.take()
    assert document.add_batch(jug, WEAK) == ""
    assert heard.take("failed") == [Reason("store.record_gone", {"record": jug})]
    assert document.unsaved() == 0


@pytest.mark.parametrize("not_a_stock", ["a", "nowhere", ""])
def test_only_a_stock_has_batches(document: Document, jug: str, heard: Listener, not_a_stock: str) -> None:
    before = document.records("batch")
    heard.take()
    assert document.add_batch(not_a_stock, WEAK) == ""
    assert len(heard.take("failed")) == 1
    assert document.records("batch") == before
    assert document.batches(not_a_stock) == ()


def test_editing_a_batch_that_is_gone_makes_nothing(document: Document, jug: str, heard: Listener) -> None:
    heard.take()
    document.edit(f"{jug}:0a1b2c3d", "dissolved", Typed("106", "g"))
    assert heard.take("failed", "records") == [Reason("store.record_gone", {"record": f"{jug}:0a1b2c3d"})]
    assert document.records("correction") == ()
    assert len(document.records("batch")) == 1


def test_a_correction_is_still_born_by_its_first_field(document: Document, jug: str) -> None:
    document.edit("a:alkalinity", "stock", Typed(jug))
    assert document.records("correction") == ("a:alkalinity",)
    assert document.batches("a") == ()


# Removing


def test_a_removed_stock_takes_its_batches_and_brings_them_back_in_order(
    document: Document, jug: str, heard: Listener
) -> None:
    other = document.add_record("stock", {"name": Typed("Blue jug")})
    kept = document.add_batch(other, WEAK)
    for _ in range(6):
        document.add_batch(jug, WEAK)
    batches, everything, first = document.batches(jug), document.records("batch"), document.batch_in_use(jug)
    heard.take()
    document.remove_record(jug, "button")
    assert document.records("stock") == (other,)
    assert document.records("batch") == (kept,)
    assert document.batch_in_use(jug) == ""
    assert heard.take("records") == [RecordsChange(frozenset({"stock", "batch"}), "button")]
    assert document.undo_text() == Label("remove", "stock", "", jug)
    assert document.undo()
    assert document.batches(jug) == batches
    assert document.records("batch") == everything
    assert document.batch_in_use(jug) == first
    assert document.value(batches[3], "dissolved") == Typed("100", "g")
    assert document.redo()
    assert document.records("batch") == (kept,)


def test_a_removed_batch_goes_alone_and_leaves_the_one_before_in_the_jug(document: Document, jug: str) -> None:
    first = document.batch_in_use(jug)
    second = document.add_batch(jug, WEAK)
    document.put_in_use(second, NOON, [])
    document.remove_record(second)
    assert document.batches(jug) == (first,)
    assert document.batch_in_use(jug) == first
    assert document.undo_text() == Label("remove", "batch", "", second)
    document.undo()
    assert document.batch_in_use(jug) == second


# Putting in use


def test_a_batch_put_in_use_is_announced_with_the_cards(document: Document, jug: str, heard: Listener) -> None:
    second = document.add_batch(jug, WEAK)
    heard.take()
    assert document.put_in_use(second, NOON, ["A1"], "button")
    assert document.batch_in_use(jug) == second
    assert document.value(second, "in_use_from") == NOON_TEXT
    assert _states(document) == {"A1": "void"}
    assert heard.all == [
        ("changed", Change(second, frozenset({"in_use_from"}), "button")),
        ("undo", UndoState(Label("edit", "batch", "in_use_from", second), None)),
        ("cards", "button"),
    ]
    assert document.put_in_use(second, NOON, ["A1"])
    assert heard.all[3:] == [], "nothing was different the second time"


def test_undo_of_putting_in_use_brings_no_card_back(document: Document, jug: str, heard: Listener) -> None:
    first, second = document.batch_in_use(jug), document.add_batch(jug, WEAK)
    document.put_in_use(second, NOON, ["A1"])
    heard.take()
    assert document.undo()
    assert document.batch_in_use(jug) == first
    assert heard.take("changed") == [Change(second, frozenset({"in_use_from"}))]
    assert _states(document) == {"A1": "void"}
    assert document.redo()
    assert document.batch_in_use(jug) == second
    assert _states(document) == {"A1": "void"}


def test_H12_what_is_refused_leaves_batch_and_card_as_they_were(document: Document, jug: str, heard: Listener) -> None:
    first, second = document.batch_in_use(jug), document.add_batch(jug, WEAK)
    heard.take()
    assert not document.put_in_use(second, NOON, ["A1", "B9"])
    assert [signal for signal, _ in heard.all] == ["failed"]
    assert heard.take("failed") == [Reason("store.card_unknown", {"plan_id": "B9"})]
    assert document.batch_in_use(jug) == first
    assert _states(document) == {"A1": "in use"}
    assert document.undo_text() == Label("add", "batch", "", second)


def test_H12_with_the_log_locked_neither_is_done(document: Document, jug: str, heard: Listener, file: Path) -> None:
    first, second = document.batch_in_use(jug), document.add_batch(jug, WEAK)
    heard.take()
    with closing(sqlite3.connect(file, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        assert not document.put_in_use(second, NOON, ["A1"])
        assert [reason.code for reason in heard.take("failed") if isinstance(reason, Reason)] == ["store.locked"]
        assert document.batch_in_use(jug) == first
        other.execute("ROLLBACK")
    assert document.unsaved() == 0, "it is not tried again by itself"
    assert _states(document) == {"A1": "in use"}


def test_H12_edits_that_wait_for_the_disk_are_saved_first_or_it_is_refused(
    document: Document, jug: str, heard: Listener, file: Path
) -> None:
    first = document.batch_in_use(jug)
    with closing(sqlite3.connect(file, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        second = document.add_batch(jug, WEAK)
        document.edit(second, "dissolved", Typed("106", "g"))
        heard.take()
        assert not document.put_in_use(second, NOON, ["A1"])
        assert [reason.code for reason in heard.take("failed") if isinstance(reason, Reason)] == ["store.locked"]
        assert (document.unsaved(), document.batch_in_use(jug)) == (2, first)
        other.execute("ROLLBACK")
    assert document.put_in_use(second, NOON, ["A1"])
    assert heard.take("restored") == [2]
    assert document.unsaved() == 0
    assert document.batch_in_use(jug) == second
    with Store.open(file) as fresh:
        assert fresh.values(second) == {**WEAK, "dissolved": Typed("106", "g"), "in_use_from": NOON_TEXT}


def test_typing_on_its_way_to_the_disk_is_saved_before(file: Path, qtbot: QtBot) -> None:
    document = Document(Store.open(file), typing_ms=60_000)
    stock = document.add_record("stock", {})
    batch = document.add_batch(stock, {})
    document.edit(batch, "dissolved", Typed("10", "g"), merge=True)
    document.edit(batch, "dissolved", Typed("106", "g"), merge=True)
    assert document.unsaved() == 1
    assert document.put_in_use(batch, NOON, [])
    assert document.unsaved() == 0
    document.undo()
    assert dict(document.values(batch)) == {"dissolved": Typed("106", "g")}
    document.undo()
    assert dict(document.values(batch)) == {}
    document.close()


def test_what_the_other_window_did_is_seen_before(document: Document, jug: str, heard: Listener, file: Path) -> None:
    second = document.add_batch(jug, WEAK)
    with _second_window(file) as other:
        third = other.add_batch(jug, WEAK)
        assert other.put_in_use(third, NOON + timedelta(hours=1), ["A1"])
    assert document.put_in_use(second, NOON, ["A1"])
    assert document.batch_in_use(jug) == second
    assert document.value(second, "in_use_from") == Typed("2026-11-25T13:00:00.000001+00:00")
    with _second_window(file) as other:
        assert other.batch_in_use(jug) == second
        other.remove_record(second)
        heard.take()
        assert not document.put_in_use(second, NOON, [])
        assert heard.take("failed") == [Reason("store.record_gone", {"record": second})]
        assert document.batch_in_use(jug) == third


def test_the_other_window_hears_of_batch_and_cards(document: Document, jug: str, file: Path) -> None:
    second = document.add_batch(jug, WEAK)
    with _second_window(file) as other:
        heard = Listener(other)
        assert document.put_in_use(second, NOON, ["A1"])
        other.refresh()
        assert other.batch_in_use(jug) == second
        assert ("changed", Change(second, frozenset({"in_use_from"}))) in heard.all
        assert ("cards", None) in heard.all


# Cards of a stock


def test_the_cards_of_a_stock_become_void_at_once(
    document: Document, jug: str, heard: Listener, file: Path, times: Times
) -> None:
    second = document.add_batch(jug, WEAK)
    assert document.add_card(card_for("A2", second, parameter="calcium"))
    assert document.add_card(card_for("A3", second, parameter="nitrate"))
    assert document.add_card(card_for("A4", "other:0a1b2c3d", parameter="magnesium"))
    heard.take()
    assert [card.plan_id for card in document.void_cards_of(jug, ["A3"], "button")] == ["A1", "A2"]
    assert heard.all == [("cards", "button")]
    assert document.void_cards_of(jug, ["A3"]) == []
    assert heard.all == [("cards", "button")]
    with Store.open(file, times.clock()) as fresh:
        assert [card.plan_id for card in fresh.cards("in use")] == ["A3", "A4"]
    assert document.undo_text() == Label("add", "batch", "", second)


def test_with_the_log_locked_no_card_becomes_void(document: Document, jug: str, heard: Listener, file: Path) -> None:
    heard.take()
    with closing(sqlite3.connect(file, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        assert document.void_cards_of(jug, []) == []
        other.execute("ROLLBACK")
    assert [signal for signal, _ in heard.all] == ["failed"]
    assert _states(document) == {"A1": "in use"}
