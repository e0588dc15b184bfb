"""Whatever is done with stocks and batches in any order, the log on the disk is what the window shows."""

from __future__ import annotations

import tempfile
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from evenwater.engine.quantities import Typed
from evenwater.session import Document
from evenwater.store import Store
from tests.store.writing import Times, card_for, hasty

START = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
Picks = st.integers(0, 5)
Fields = st.sampled_from(["dissolved", "in_use_from", "name"])
Texts = st.sampled_from(["", "106", "2026-11-25T12:00:00+00:00", "2062-01-01T00:00:00+00:00", "9999-12-31T23:00-05:00"])


def _memory(document: Document) -> dict[str, object]:
    """Return everything the document says of its records."""
    stocks = document.records("stock")
    batches = document.records("batch")
    return {
        "stocks": {stock: (dict(document.values(stock)), document.batches(stock)) for stock in stocks},
        "batches": {batch: dict(document.values(batch)) for batch in batches},
        "in use": {stock: document.batch_in_use(stock) for stock in stocks},
        "order": (stocks, batches),
        "undo": (document.undo_text(), document.redo_text()),
        "cards": document.cards(),
    }


class Shelf(RuleBasedStateMachine):
    """One window that works, and after each action a second one that opens the same log."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.times = Times()
        self.document = self._open()
        self.document.add_record("system", {"name": Typed("North frag bay")}, record_id="a")
        self.number = 0
        self.out_of_use: set[str] = set()

    def teardown(self) -> None:
        assert self.document.close()
        self.folder.cleanup()

    def _open(self) -> Document:
        return Document(hasty(Store.open(Path(self.folder.name) / "log.sqlite", self.times.clock())))

    def _pick(self, kind: str, pick: int) -> str:
        records = self.document.records(kind)
        return records[pick % len(records)]

    def _next(self) -> int:
        self.number += 1
        self.times.pass_by(60)
        return self.number

    @rule()
    def add_stock(self) -> None:
        self.document.add_record("stock", {"name": Typed(f"Jug {self._next()}")})

    @precondition(lambda self: self.document.records("stock"))
    @rule(pick=Picks)
    def add_batch(self, pick: int) -> None:
        stock = self._pick("stock", pick)
        copied = self.document.values(self.document.batch_in_use(stock))
        batch = self.document.add_batch(stock, {**copied, "dissolved": Typed(f"{self._next()}", "g")})
        assert self.document.batches(stock)[-1] == batch
        assert self.document.batch_in_use(stock) != batch

    @precondition(lambda self: self.document.records("batch"))
    @rule(pick=Picks, field=Fields, text=Texts, merge=st.booleans())
    def edit(self, pick: int, field: str, text: str, merge: bool) -> None:
        self.document.edit(self._pick("batch", pick), field, Typed(text), merge=merge)

    @precondition(lambda self: self.document.records("batch"))
    @rule(pick=Picks, minutes=st.integers(-5, 5))
    def put_in_use(self, pick: int, minutes: int) -> None:
        batch = self._pick("batch", pick)
        stock = batch.partition(":")[0]
        void = [card.plan_id for card in self.document.cards("in use") if card.batch_id in self.document.batches(stock)]
        assert self.document.put_in_use(batch, START + timedelta(minutes=minutes), void)
        assert self.document.batch_in_use(stock) == batch
        assert {card.plan_id: card.state for card in self.document.cards() if card.plan_id in void} == dict.fromkeys(
            void, "void"
        )

    @precondition(lambda self: self.document.records("batch"))
    @rule(pick=Picks, parameter=st.sampled_from(["alkalinity", "calcium"]))
    def issue_card(self, pick: int, parameter: str) -> None:
        card = card_for(f"P{self._next()}", self._pick("batch", pick), parameter=parameter)
        assert self.document.add_card(card)

    @precondition(lambda self: self.document.records("stock"))
    @rule(pick=Picks)
    def void_cards(self, pick: int) -> None:
        stock = self._pick("stock", pick)
        gone = self.document.void_cards_of(stock, [])
        assert all(card.batch_id.startswith(f"{stock}:") for card in gone)
        assert not [c for c in self.document.cards("in use") if c.batch_id.startswith(f"{stock}:")]

    @precondition(lambda self: self.document.records("stock"))
    @rule(pick=Picks)
    def remove_stock(self, pick: int) -> None:
        stock = self._pick("stock", pick)
        self.document.remove_record(stock)
        assert self.document.batches(stock) == ()

    @precondition(lambda self: self.document.records("batch"))
    @rule(pick=Picks)
    def remove_batch(self, pick: int) -> None:
        batch = self._pick("batch", pick)
        self.document.remove_record(batch)
        assert self.document.kind(batch) == ""
        assert self.document.kind(batch.partition(":")[0]) == "stock"

    @rule()
    def undo(self) -> None:
        possible = self.document.undo_text() is not None
        assert self.document.undo() == possible

    @rule()
    def redo(self) -> None:
        possible = self.document.redo_text() is not None
        assert self.document.redo() == possible

    @invariant()
    def the_log_opened_again_is_what_is_shown(self) -> None:
        again = self._open()
        assert _memory(again) == _memory(self.document)
        assert again.close()

    @invariant()
    def every_batch_is_on_the_shelf(self) -> None:
        document = self.document
        listed = {batch for stock in document.records("stock") for batch in document.batches(stock)}
        assert listed == set(document.records("batch"))

    @invariant()
    def no_card_comes_back_into_use(self) -> None:
        in_use = {card.plan_id for card in self.document.cards("in use")}
        assert not in_use & self.out_of_use
        self.out_of_use = {card.plan_id for card in self.document.cards()} - in_use


@pytest.fixture(autouse=True)
def _application(qapp: object) -> None:
    """Timers of a document need an application."""


TestShelf = Shelf.TestCase
TestShelf.settings = settings(
    max_examples=20,
    stateful_step_count=25,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
)
