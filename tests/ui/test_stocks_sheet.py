"""The Stocks sheet in the real window: a jug from nothing, recipes, contents of every kind, refusals, dates."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from evenwater.engine.quantities import Typed
from evenwater.engine.recipe import StockQuestion, Strength, Unweighed, solve
from evenwater.screens import shelf
from evenwater.ui.main_window import MainWindow
from evenwater.ui.sheet_list import SHEETS
from tests.engine.reckoning import DEGREE, SALTS
from tests.screens.asked import catalogue
from tests.screens.batches import CHLORIDE, MG_PER_MEQ, SEA_MAGNESIUM, SEA_SULFATE, SODA, SULFATE, carries
from tests.ui.stocks_making import (
    ALT,
    ASH,
    CALCIUM_JUG,
    CONTROL,
    carried,
    click,
    click_into,
    click_row,
    document_of,
    jug_named,
    label_can_be_made,
    message_at,
    new_batch,
    press,
    settled,
    show_jug,
    shown_fields,
    stocks_of,
    tab_to,
    typed_in,
    write,
)  # fmt: skip
from tests.ui.window_making import choose, left, opened, room_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")

ATOMIC = 2e-5
SODA_WORDS = "sodium CARBonate anhydrous"
SAID = {"mixed_on", "mixed_by", "use_by", "stock.name", "contents"}


@pytest.fixture
def demo(qtbot) -> MainWindow:
    return opened(None, qtbot, demo=True)


# A jug from nothing


def test_a_jug_from_nothing_by_keyboard_alone(demo: MainWindow, qtbot):
    room, document = room_of(demo), document_of(demo)
    stocks = stocks_of(demo, qtbot)
    before = document.records("stock")
    tab_to(room.jugs.add)
    press(Qt.Key.Key_Space)
    settled(stocks, qtbot)
    (stock,) = set(document.records("stock")) - set(before)
    assert stocks.records.stock == stock
    assert (stocks.header.name.text(), stocks.answer.view.state) == ("Jug 1", "empty")
    assert not label_can_be_made(stocks)
    tab_to(stocks.form.fields["stock.name"].focusProxy())
    write("Soda, high shelf")
    assert room.jugs.list.currentIndex().data() == "Soda, high shelf", "the list follows the keys"
    tab_to(stocks.form.fields["batch.contents"].combo)
    choose(stocks, "batch.contents", SODA_WORDS)
    for path, text in (("batch.dissolved", "150"), ("batch.made_up_to", "1")):
        tab_to(stocks.form.fields[path].focusProxy())
        write(text)
    settled(stocks, qtbot)
    assert carried(stocks, "alkalinity") == pytest.approx(carries(SODA, "alkalinity", 150), rel=ATOMIC)
    view = stocks.answer.view
    assert (view.state, view.figure, view.figure_unit) == ("answered", "2.831", "meq per mL")
    assert document.batch_in_use(stock) == ""
    assert stocks.batches.model().stringList() == ["Not in the jug yet · dissolved 150\u00a0g per 1\u00a0L"]
    tab_to(stocks.put)
    press(Qt.Key.Key_Space)
    settled(stocks, qtbot)
    assert document.batch_in_use(stock) == stocks.records.batch != ""
    assert not stocks.put.isEnabled()
    assert label_can_be_made(stocks)


def test_a_jug_from_nothing_by_mouse(demo: MainWindow, qtbot):
    room, document = room_of(demo), document_of(demo)
    click_row(room.sheets, SHEETS.index("Stocks"))
    stocks = room.stocks
    assert stocks.isVisible()
    assert not room.sheet.isVisible()
    click(room.jugs.add)
    settled(stocks, qtbot)
    click_into(stocks.form.fields["stock.name"])
    write("Chalk, low shelf")
    combo = stocks.form.fields["batch.contents"].combo
    QTest.mouseClick(combo, Qt.MouseButton.LeftButton)
    assert combo.view().isVisible()
    row = combo.findText("calcium CHLORide dihydrate")
    # The list shrugs off the very click that opened it.
    qtbot.wait(QApplication.doubleClickInterval() + 10)
    click_row(combo.view(), row)
    demo.activateWindow()
    for path, text in (("batch.dissolved", "147"), ("batch.made_up_to", "1")):
        click_into(stocks.form.fields[path])
        write(text)
    settled(stocks, qtbot)
    assert carried(stocks, "calcium") == pytest.approx(40.078, rel=1e-3)
    click(stocks.put)
    assert document.batch_in_use(jug_named(demo, "Chalk, low shelf")) == stocks.records.batch
    assert "Put its label on" in stocks.header.told.text()
    click(room.jugs.remove)
    assert "Chalk, low shelf" not in room.jugs.list.model().stringList()
    click(stocks.header.undo)
    settled(stocks, qtbot)
    assert room.jugs.list.model().stringList()[-1] == "Chalk, low shelf"
    assert document.batch_in_use(jug_named(demo, "Chalk, low shelf")) != "", "a jug comes back with what is in it"


def test_the_shelf_shows_what_each_jug_holds(demo: MainWindow, qtbot):
    stocks = stocks_of(demo, qtbot)
    room = room_of(demo)
    for row, name in enumerate(room.jugs.list.model().stringList()):
        click_row(room.jugs.list, row)
        settled(stocks, qtbot)
        assert stocks.header.name.text() == name
        assert stocks.answer.view.state == "answered", stocks.answer.view.messages
        assert label_can_be_made(stocks)
        assert not stocks.put.isEnabled(), "it is in the jug already"
        assert stocks.batches.model().stringList()[0].startswith("In the jug · ")
    show_jug(demo, ASH, qtbot)
    assert stocks.used.text() == "Used for: North frag bay, alkalinity."
    assert [row.split(" · ")[0] for row in stocks.batches.model().stringList()] == ["In the jug", "Used before"]


# A recipe


def test_a_wanted_strength_is_weighed_out_and_entered_in_one_step(demo: MainWindow, qtbot):
    stocks = new_batch(demo, ASH, qtbot)
    choose(stocks, "batch.recipe", "I want a strength")
    assert {"wanted_dose", "wanted_water", "wanted_raises", "made_up_to", "purity"} <= shown_fields(stocks)
    assert "dissolved" not in shown_fields(stocks)
    for field, text in (("dose", "1"), ("water", "100"), ("raises", "0.1")):
        type_into(stocks, f"batch.wanted_{field}", text)
    settled(stocks, qtbot)
    known = catalogue()
    alkalinity = known.parameters["alkalinity"]
    asked = Unweighed(known.chemicals[SODA], 1.0, 1.0, Strength(alkalinity, alkalinity.canonical(0.1) * 100.0))
    expected = solve(StockQuestion(asked, tuple(known.parameters.values())))
    grams = stocks._stocked.answer.batch.grams
    assert grams == pytest.approx(expected.batch.grams, rel=1e-9)
    assert grams == pytest.approx(0.1 * float(DEGREE) * 100.0 / 2.0 * float(SALTS[SODA].molar), rel=ATOMIC)
    assert (stocks.answer.view.figure, stocks.answer.view.figure_unit) == ("189", "g to weigh out")
    assert not label_can_be_made(stocks), "nobody has weighed it yet"
    assert not stocks.put.isVisible()
    assert stocks.batches.model().stringList()[0].endswith("to be weighed")

    press(Qt.Key.Key_W, ALT)
    qtbot.waitUntil(lambda: typed_in(stocks, "recipe").text == shelf.WEIGHED)
    settled(stocks, qtbot)
    assert typed_in(stocks, "dissolved") == Typed("189", "g")
    assert stocks.form.fields["batch.dissolved"].focusProxy().text() == "189"
    assert carried(stocks, "alkalinity") == pytest.approx(0.1 * float(DEGREE) * 100.0, rel=5e-4)
    assert label_can_be_made(stocks)
    assert stocks.put.isEnabled()
    assert not stocks.take.isVisible()

    press(Qt.Key.Key_Z, CONTROL)
    settled(stocks, qtbot)
    assert (typed_in(stocks, "recipe").text, typed_in(stocks, "dissolved").text) == (shelf.WANTED, "106")
    assert stocks.answer.view.figure == "189"
    assert typed_in(stocks, "wanted_raises") == Typed("0.1", "dKH"), "undo takes back the step and nothing else"


def test_a_matched_pair_carries_what_skeleton_takes(demo: MainWindow, qtbot):
    partner = show_jug(demo, CALCIUM_JUG, qtbot)
    mg_per_ml = carried(partner, "calcium")
    stocks = new_batch(demo, ASH, qtbot)
    choose(stocks, "batch.recipe", "To match another jug")
    assert stocks.answer.view.messages[0].text == "Choose the jug to match."
    names = [stocks.form.fields["batch.partner"].combo.itemText(n) for n in range(6)]
    assert ASH not in names, "no jug matches itself"
    choose(stocks, "batch.partner", CALCIUM_JUG)
    settled(stocks, qtbot)
    assert mg_per_ml / carried(stocks, "alkalinity") == pytest.approx(MG_PER_MEQ, rel=1e-9)
    click(stocks.take)
    settled(stocks, qtbot)
    assert typed_in(stocks, "dissolved") == Typed("106", "g")
    assert mg_per_ml / carried(stocks, "alkalinity") == pytest.approx(MG_PER_MEQ, rel=5e-4)
    choose(stocks, "batch.recipe", "To match another jug")
    choose(stocks, "batch.partner", "Bicarbonate, blue jug")
    assert "no pair" in message_at(stocks, "partner")
    choose(stocks, "batch.partner", CALCIUM_JUG)
    type_into(stocks, "batch.temperature", "2")
    type_into(stocks, "batch.made_up_to", "1")
    assert message_at(stocks, "partner") == "" or "cannot dissolve" in message_at(stocks, "partner")


# What is in it


def test_every_kind_of_contents_shows_its_own_fields(demo: MainWindow, qtbot):
    stocks = new_batch(demo, ASH, qtbot)
    weighed = {"recipe", "temperature", "dissolved", "made_up_to", "purity"}
    kinds = {
        "magnesium CHLORide and SULFate, as in seawater": weighed | {"also_dissolved", "also_purity"},
        "limewater, saturated calcium HYDROXide": {"temperature", "made_up_to"},
        "A bottle, by its label": {"label_parameter", "label_dose", "label_water", "label_raises"},
        "calcium HYDROXide": weighed,
    }
    for words, fields in kinds.items():
        choose(stocks, "batch.contents", words)
        settled(stocks, qtbot)
        assert shown_fields(stocks) == fields | SAID, words
    assert typed_in(stocks, "dissolved") == Typed("106", "g"), "what was typed is still there"


def test_a_wanted_mix_keeps_the_balance_of_seawater(demo: MainWindow, qtbot):
    stocks = new_batch(demo, "Magnesium, tall jug", qtbot)
    choose(stocks, "batch.recipe", "I want a strength")
    for field, text in (("wanted_dose", "1"), ("wanted_water", "100"), ("wanted_raises", "0.4"), ("also_purity", "95")):
        type_into(stocks, f"batch.{field}", text)
    assert typed_in(stocks, "wanted_raises").unit == "mg/L"
    click(stocks.take)
    settled(stocks, qtbot)
    chloride = float(typed_in(stocks, "dissolved").text) / float(SALTS[CHLORIDE].molar)
    sulfate = 0.95 * float(typed_in(stocks, "also_dissolved").text) / float(SALTS[SULFATE].molar)
    assert sulfate / (chloride + sulfate) == pytest.approx(SEA_SULFATE / SEA_MAGNESIUM, rel=5e-4)
    assert carried(stocks, "magnesium") == pytest.approx(40.0, rel=5e-4)


def test_limewater_is_as_strong_as_its_coolest_hour(demo: MainWindow, qtbot):
    stocks = show_jug(demo, "Limewater, grey barrel", qtbot)
    type_into(stocks, "batch.temperature", "10")
    settled(stocks, qtbot)
    held = catalogue().chemicals["calcium hydroxide"].most_per_litre(10.0)
    assert carried(stocks, "alkalinity") == pytest.approx(carries("calcium hydroxide", "alkalinity", held), rel=ATOMIC)
    assert "clear water only" in " ".join(stocks.answer.view.remarks)


def test_a_bottle_needs_to_say_what_it_raises_where_its_unit_does_not(demo: MainWindow, qtbot):
    stocks = show_jug(demo, "Labelled alkalinity bottle", qtbot)
    assert label_can_be_made(stocks)
    type_into(stocks, "batch.label_raises", "10 mg/L")
    settled(stocks, qtbot)
    assert not label_can_be_made(stocks)
    assert [m.path for m in stocks.answer.view.messages] == ["additive.label.parameter"]
    choose(stocks, "batch.label_parameter", "Calcium")
    settled(stocks, qtbot)
    assert carried(stocks, "calcium") == pytest.approx(10.0 * 100.0 / 5.0, rel=1e-12)
    units = stocks.form.fields["batch.label_raises"].units
    assert {"mg per L"} <= {units.itemText(n) for n in range(units.count())}
    assert label_can_be_made(stocks)
    assert (
        stocks.label_actions.label.strength == "Strength by its label: 5\u00a0mL raise 100\u00a0L by 10\u00a0mg per L."
    )


# Refusals


def test_H13_what_cannot_stay_dissolved_is_refused_beside_its_number(demo: MainWindow, qtbot):
    stocks = new_batch(demo, ASH, qtbot)
    type_into(stocks, "batch.dissolved", "150")
    assert message_at(stocks, "dissolved") == ""
    type_into(stocks, "batch.temperature", "10")
    settled(stocks, qtbot)
    assert "at 10\u00a0°C the most is" in message_at(stocks, "dissolved")
    assert stocks.answer.view.state == "refused"
    assert not label_can_be_made(stocks)
    assert not stocks.put.isEnabled()
    type_into(stocks, "batch.temperature", "")
    type_into(stocks, "batch.dissolved", "195")
    settled(stocks, qtbot)
    assert message_at(stocks, "dissolved") == ""
    assert any("near its limit" in remark for remark in stocks.answer.view.remarks)
    assert label_can_be_made(stocks), "near the limit is allowed"
    type_into(stocks, "batch.dissolved", "1e3")
    assert message_at(stocks, "dissolved") != ""
    assert not label_can_be_made(stocks)


def test_what_is_no_date_is_kept_as_typed_and_said(demo: MainWindow, qtbot):
    stocks = show_jug(demo, ASH, qtbot)
    for field in ("mixed_on", "use_by"):
        type_into(stocks, f"batch.{field}", "25.11.2026")
        settled(stocks, qtbot)
        assert message_at(stocks, field) == "“25.11.2026” is not a date. Write it like 2026-11-25."
        assert typed_in(stocks, field) == Typed("25.11.2026")
        type_into(stocks, f"batch.{field}", "2026-11-25")
        settled(stocks, qtbot)
        assert message_at(stocks, field) == ""


def test_a_batch_past_its_date_says_so(demo: MainWindow, qtbot):
    stocks = show_jug(demo, ASH, qtbot)
    assert not any("past the date" in remark for remark in stocks.answer.view.remarks)
    type_into(stocks, "batch.use_by", "2026-01-31")
    settled(stocks, qtbot)
    assert any("past the date" in remark for remark in stocks.answer.view.remarks)
    assert "use by Sat 31 Jan 2026" in stocks.batches.model().stringList()[0]


def test_H33_hazard_word_and_handling_stand_before_the_numbers(demo: MainWindow, qtbot):
    stocks = show_jug(demo, CALCIUM_JUG, qtbot)
    cautions = stocks.form._cautions
    chemical = catalogue().chemicals["calcium chloride dihydrate"]
    text = cautions.label.text()
    assert text.startswith(f"{chemical.signal_word}. ")
    assert all(line in text for line in (*chemical.statements, *chemical.cautions))
    assert (
        cautions.mapTo(stocks, cautions.rect().bottomLeft()).y()
        <= stocks.form.fields["batch.dissolved"]
        .mapTo(stocks, stocks.form.fields["batch.dissolved"].rect().topLeft())
        .y()
    )


def test_a_saved_room_has_its_shelf_again(tmp_path: Path, qtbot):
    log = tmp_path / "log.sqlite"
    first = opened(log, qtbot)
    first.centralWidget().empty.click()
    stocks = stocks_of(first, qtbot)
    assert stocks.header.name.text() == "No jug yet"
    click(room_of(first).jugs.add)
    settled(stocks, qtbot)
    choose(stocks, "batch.contents", SODA_WORDS)
    click_into(stocks.form.fields["batch.dissolved"])
    write("15")  # in the middle of a number
    left(first)
    again = opened(log, qtbot)
    stocks = stocks_of(again, qtbot)
    assert typed_in(stocks, "dissolved") == Typed("15", "g")
    assert stocks.form.fields["batch.contents"].current() == SODA
