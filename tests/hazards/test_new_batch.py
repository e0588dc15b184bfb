"""H12: the strength of a jug changes and the plan does not. A card follows its batch, or must not be followed."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt

from evenwater.assets import resources
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, plan_id
from evenwater.session import Card, Document
from evenwater.session.demo import fill_from
from evenwater.store import Store
from evenwater.ui.main_window import MainWindow
from evenwater.ui.stock_records import StockRecords
from tests.screens.asked import catalogue
from tests.ui.stocks_making import (
    ASH,
    CONTROL,
    click,
    document_of,
    new_batch,
    press,
    settled,
    show_jug,
    stocks_of,
    to_sheet,
)
from tests.ui.window_making import choose, left, opened, reckoned, room_of, sheet_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)


# Without a window


@dataclass
class Shelf:
    """The invented room on a disk, with a card in force for the soda ash and one for the calcium."""

    document: Document
    file: Path
    records: StockRecords

    def written(self, grams: str) -> str:
        """Begin a new batch of the jug, of another mass, and show it."""
        self.records.again(NOW)
        self.document.edit(self.records.batch, "dissolved", Typed(grams, "g"))
        return self.records.batch

    def void(self) -> list[str]:
        """Return the cards that would become void with the batch that is shown."""
        return [card.plan_id for card, _ in self.records.outdated()]

    def put(self, batch: str) -> bool:
        return self.document.put_in_use(batch, NOW, self.void())

    def states(self) -> dict[str, str]:
        return {card.plan_id: card.state for card in self.document.cards()}

    def on_disk(self) -> tuple[dict[str, str], str]:
        """Return the states of the cards and what is in the jug, read by somebody else."""
        with closing(sqlite3.connect(self.file)) as base:
            cards = dict(base.execute("SELECT plan_id, state FROM card").fetchall())
            rows = base.execute(
                "SELECT record_id, text FROM value WHERE field = 'in_use_from' AND text != '' AND record_id LIKE ?",
                (f"{self.records.stock}:%",),
            ).fetchall()
        return cards, max(rows, key=lambda row: datetime.fromisoformat(row[1]))[0]


def card_of(document: Document, plan: str, system: str, parameter: str, batch_id: str | None = None) -> Card:
    """Return the card of a correction as it stands in the document."""
    correction = document.values(f"{system}:{parameter}")
    batch = document.batch_in_use(correction["stock"].text)
    raw = correct.raw_question(
        parameter, document.values(system), correction, document.values(batch), document.values(correction["pump"].text)
    )
    assert correct.evaluate(raw, catalogue(), NOW).plan is not None
    body = json.dumps(correct.question_text(raw))
    known = batch if batch_id is None else batch_id
    return Card(plan, 1, system, parameter, NOW, NOW + timedelta(days=3), body, batch_id=known)


@pytest.fixture
def shelf(qapp: object, tmp_path: Path) -> Iterator[Shelf]:
    file = tmp_path / "evenwater.sqlite"
    with Store.open(file, busy_seconds=0.01) as store:
        document = Document(store)
        assert fill_from(document, resources() / "demo.toml", NOW)
        north = document.records("system")[0]
        assert document.add_card(card_of(document, "ASH", north, "alkalinity"))
        assert document.add_card(card_of(document, "CALC", north, "calcium"))
        records = StockRecords(document, catalogue())
        records.stock = document.value(f"{north}:alkalinity", "stock").text
        yield Shelf(document, file, records)


def test_H12_a_batch_that_is_only_written_changes_nothing(shelf: Shelf) -> None:
    before = shelf.records.in_use()
    shelf.written("150")
    assert shelf.records.in_use() == before
    assert shelf.states() == {"ASH": "in use", "CALC": "in use"}
    assert shelf.void() == ["ASH"], "but it is known which card it would make void"


def test_H12_batch_and_void_cards_are_on_the_disk_together(shelf: Shelf) -> None:
    batch = shelf.written("150")
    assert shelf.put(batch)
    assert shelf.on_disk() == ({"ASH": "void", "CALC": "in use"}, batch)
    assert shelf.states() == {"ASH": "void", "CALC": "in use"}


def test_H12_while_the_disk_refuses_neither_happens(shelf: Shelf) -> None:
    before = shelf.records.in_use()
    batch = shelf.written("150")
    void = shelf.void()
    with closing(sqlite3.connect(shelf.file, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        assert not shelf.document.put_in_use(batch, NOW, void)
        assert shelf.document.batch_in_use(shelf.records.stock) == before
        other.execute("ROLLBACK")
    assert shelf.on_disk() == ({"ASH": "in use", "CALC": "in use"}, before)
    assert shelf.put(batch)
    assert shelf.on_disk() == ({"ASH": "void", "CALC": "in use"}, batch)


@pytest.mark.parametrize(
    ("grams", "void"), [("106", []), ("106,9", []), ("105.2", []), ("107.5", ["ASH"]), ("104.5", ["ASH"])]
)
def test_H12_the_same_strength_within_a_hundredth_voids_nothing(shelf: Shelf, grams: str, void: list[str]) -> None:
    batch = shelf.written(grams)
    assert shelf.void() == void
    assert shelf.put(batch)
    assert shelf.on_disk() == ({"ASH": "void" if void else "in use", "CALC": "in use"}, batch)


def test_H12_undo_takes_the_batch_out_and_brings_no_card_back(shelf: Shelf) -> None:
    before = shelf.records.in_use()
    assert shelf.put(shelf.written("150"))
    assert shelf.document.undo()
    assert shelf.records.in_use() == before
    assert shelf.states()["ASH"] == "void", "somebody may have taken it down already"
    assert shelf.document.redo()
    assert shelf.states()["ASH"] == "void"


def test_H12_every_card_of_the_jug_is_meant_whatever_it_is_for(shelf: Shelf) -> None:
    """A second system on the same jug, and a card that was issued before cards knew their batch."""
    document = shelf.document
    north, anemones, quarantine = document.records("system")
    for system in (anemones, quarantine):
        document.edit(f"{system}:alkalinity", "stock", Typed(shelf.records.stock))
    assert document.add_card(card_of(document, "OTHER", anemones, "alkalinity"))
    assert document.add_card(card_of(document, "OLD", quarantine, "alkalinity", batch_id=""))
    assert document.add_card(card_of(document, "OLDCALC", north, "calcium", batch_id=""))
    batch = shelf.written("150")
    assert sorted(shelf.void()) == ["ASH", "OLD", "OTHER"]
    assert shelf.put(batch)
    assert {plan for plan, state in shelf.states().items() if state == "in use"} == {"OLDCALC"}


def test_H12_a_card_that_cannot_be_compared_is_void_with_the_next_batch(shelf: Shelf) -> None:
    document = shelf.document
    broken = card_of(document, "BROKEN", document.records("system")[1], "alkalinity", shelf.records.in_use())
    assert document.add_card(Card(**{**broken.__dict__, "body": "{}"}))
    assert "BROKEN" in shelf.void()
    assert shelf.put(shelf.written("106"))
    assert shelf.states()["BROKEN"] == "void"


# In the window


@pytest.fixture
def log(tmp_path: Path) -> Path:
    return tmp_path / "room" / "evenwater.sqlite"


@pytest.fixture
def window(log: Path, qtbot) -> MainWindow:
    """The invented room, kept in a log, with a card saved for North frag bay."""
    made = opened(log, qtbot)
    made.centralWidget().demo.click()
    reckoned(sheet_of(made), qtbot)
    sheet_of(made).buttons.cards.write(log.parent / "first.pdf")
    assert [card.state for card in document_of(made).cards()] == ["in use"]
    return made


def words_of(file: Path) -> str:
    return " ".join(" ".join(page.extract_text() for page in PdfReader(file).pages).replace("\u00a0", " ").split())


def test_H12_from_the_new_batch_to_the_new_card(window: MainWindow, log: Path, qtbot) -> None:
    sheet, document = sheet_of(window), document_of(window)
    (card,) = document.cards()
    figure, dose = sheet.answer.view.figure, sheet.buttons.cards.plan.answer.single_dose_ml

    # A batch of 150 g is written, and the program is closed over it.
    stocks = new_batch(window, ASH, qtbot)
    type_into(stocks, "batch.dissolved", "150")
    settled(stocks, qtbot)
    batch = stocks.records.batch
    assert batch != card.batch_id
    said = " ".join(stocks.answer.view.remarks).replace("\u00a0", " ")
    assert f"With this batch in the jug, card {card.plan_id} becomes void." in said
    assert "The jug now" not in said, "the jug still holds the batch before"
    left(window)

    again = opened(log, qtbot)
    sheet, document = sheet_of(again), document_of(again)
    reckoned(sheet, qtbot)
    assert sheet.answer.view.figure == figure, "nothing has changed yet"
    assert not sheet.void.isVisible()
    assert document.cards("in use") == [card]
    assert "106\u00a0g" in sheet.buttons.cards.card().strength

    # It goes into the jug.
    stocks = show_jug(again, ASH, qtbot)
    stocks.show_batch(batch)
    settled(stocks, qtbot)
    click(stocks.put)
    settled(stocks, qtbot)
    assert [c.state for c in document.cards()] == ["void"]
    assert f"Take down card {card.plan_id}" in stocks.header.told.text()
    label = stocks.label_actions.label
    label_file, card_file = log.parent / "label.pdf", log.parent / "second.pdf"
    stocks.label_actions.write(label_file)
    left(again)

    # The next day: the strip, the plan, the card.
    third = opened(log, qtbot)
    sheet, document = sheet_of(third), document_of(third)
    reckoned(sheet, qtbot)
    assert sheet.void.isVisible()
    assert f"Card {card.plan_id} is void" in sheet.void.words.text()
    assert sheet.buttons.cards.plan.answer.single_dose_ml == pytest.approx(dose * 106.0 / 150.0, rel=1e-6)
    assert float(sheet.answer.view.figure) == pytest.approx(float(figure) * 106.0 / 150.0, abs=0.1)
    sheet.buttons.cards.write(card_file)
    (new,) = document.cards("in use")
    assert new.batch_id == batch
    code = plan_id.batch_code(batch)
    assert label.batch == code != plan_id.batch_code(card.batch_id)
    for file in (label_file, card_file):
        assert "dissolved 150 g per 1 L" in words_of(file)
        assert code in words_of(file)
    assert code not in words_of(log.parent / "first.pdf")
    sheet.void.done.click()
    assert not sheet.void.isVisible()


def test_H12_the_same_strength_keeps_the_card(window: MainWindow, qtbot) -> None:
    sheet, document = sheet_of(window), document_of(window)
    stocks = new_batch(window, ASH, qtbot)
    type_into(stocks, "batch.dissolved", "106.5")
    settled(stocks, qtbot)
    assert stocks.answer.view.remarks == ()
    click(stocks.put)
    assert [card.state for card in document.cards()] == ["in use"]
    assert "void" not in stocks.header.told.text()
    to_sheet("Correct")
    reckoned(sheet, qtbot)
    assert not sheet.void.isVisible()


def test_H12_a_slip_in_the_batch_in_the_jug_is_said_for_as_long_as_it_stands(window: MainWindow, qtbot) -> None:
    sheet, document = sheet_of(window), document_of(window)
    (card,) = document.cards()
    type_into(sheet, "additive.dissolved", "107.5")
    reckoned(sheet, qtbot)
    assert sheet.void.isVisible()
    text = sheet.void.words.text().replace("\u00a0", " ")
    assert f"Card {card.plan_id} must not be followed." in text
    assert "dissolved 106 g per 1 L" in text
    assert "The jug now: dissolved 107.5 g per 1 L" in text
    assert [c.state for c in document.cards()] == ["in use"], "a slip voids nothing"
    stocks = show_jug(window, ASH, qtbot)
    assert any("must not be followed" in remark for remark in stocks.answer.view.remarks)
    type_into(stocks, "batch.dissolved", "106")
    settled(stocks, qtbot)
    assert stocks.answer.view.remarks == ()
    to_sheet("Correct")
    reckoned(sheet, qtbot)
    assert not sheet.void.isVisible()
    # And it comes and goes with every key on the Correct sheet itself, and with undo.
    type_into(sheet, "additive.dissolved", "150")
    assert sheet.void.isVisible()
    press(Qt.Key.Key_Z, CONTROL)
    reckoned(sheet, qtbot)
    assert not sheet.void.isVisible()


def test_H12_taking_the_batch_out_again_leaves_no_card_for_the_wrong_strength(window: MainWindow, qtbot) -> None:
    sheet, document = sheet_of(window), document_of(window)
    stocks = new_batch(window, ASH, qtbot)
    type_into(stocks, "batch.dissolved", "150")
    settled(stocks, qtbot)
    click(stocks.put)
    to_sheet("Correct")
    reckoned(sheet, qtbot)
    sheet.void.done.click()
    sheet.buttons.cards.write(document_path(window) / "second.pdf")
    (new,) = document.cards("in use")
    assert sheet.header.undo.toolTip() == "Undo: change of what is in the jug"
    press(Qt.Key.Key_Z, CONTROL)
    reckoned(sheet, qtbot)
    assert "106\u00a0g" in sheet.buttons.cards.card().strength
    assert sheet.void.isVisible()
    assert f"Card {new.plan_id} must not be followed" in sheet.void.words.text()
    press(Qt.Key.Key_Z, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    reckoned(sheet, qtbot)
    assert not sheet.void.isVisible()


def document_path(window: MainWindow) -> Path:
    return Path(window._log).parent


def test_H12_a_removed_jug_or_batch_leaves_its_card_marked(window: MainWindow, qtbot) -> None:
    sheet = sheet_of(window)
    stocks = show_jug(window, ASH, qtbot)
    click(stocks.form.remove)
    to_sheet("Correct")
    reckoned(sheet, qtbot)
    assert "must not be followed" in sheet.void.words.text()
    assert sheet.void.isVisible(), "the batch before it is in the jug now, of 100 g"
    press(Qt.Key.Key_Z, CONTROL)
    reckoned(sheet, qtbot)
    assert not sheet.void.isVisible()
    stocks_of(window, qtbot)
    click(room_of(window).jugs.remove)
    to_sheet("Correct")
    reckoned(sheet, qtbot)
    assert sheet.void.isVisible()
    assert not sheet.buttons.cards.save.isEnabled()


def test_H12_no_card_is_made_for_a_batch_that_is_not_in_the_jug(window: MainWindow, log: Path, qtbot) -> None:
    sheet, document, room = sheet_of(window), document_of(window), room_of(window)
    stocks = stocks_of(window, qtbot)
    click(room.jugs.add)
    settled(stocks, qtbot)
    choose(stocks, "batch.contents", "sodium CARBonate anhydrous")
    type_into(stocks, "batch.dissolved", "150")
    type_into(stocks, "batch.made_up_to", "1")
    to_sheet("Correct")
    choose(sheet, "stock", "Jug 1")
    reckoned(sheet, qtbot)
    never = log.parent / "never.pdf"
    assert not sheet.buttons.cards.save.isEnabled()
    sheet.buttons.cards.write(never)
    assert not never.exists()
    assert len(document.cards()) == 1
    stocks_of(window, qtbot)
    click(stocks.put)
    to_sheet("Correct")
    reckoned(sheet, qtbot)
    assert sheet.buttons.cards.save.isEnabled()
    sheet.buttons.cards.write(never)
    assert document.cards("in use")[0].batch_id == document.batch_in_use(stocks.records.stock)
    assert "must not be followed" not in sheet.void.words.text()
