"""The Foods sheet on the demo's document: a food from nothing by keyboard, mistakes beside their fields, undo, and what is told elsewhere."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QLineEdit, QListView
from pytestqt.exceptions import TimeoutError as NotInTimeError

from evenwater.assets import resources
from evenwater.engine.catalogue import Catalogue, load
from evenwater.engine.quantities import Typed
from evenwater.screens import rounds
from evenwater.screens.local_zone import present
from evenwater.session import Document
from evenwater.session.demo import fill_from
from evenwater.store import Store
from evenwater.ui.foods_sheet import NONE_YET, FoodsSheet
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.round_watch import RoundWatch
from evenwater.ui.theme import apply_theme
from tests.ui.clipping import clipped
from tests.ui.stocks_making import click, click_row, press, write

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture(scope="module")
def catalogue() -> Catalogue:
    return load(resources())


@pytest.fixture
def document(qtbot) -> Iterator[Document]:
    document = Document(Store.open_memory())
    assert fill_from(document, resources() / "demo.toml")
    yield document
    document.close()


@pytest.fixture
def sheet(document: Document, catalogue: Catalogue, qtbot) -> FoodsSheet:
    """Return the sheet with the north bay, which has two foods."""
    dress(11.0)
    sheet = made(document, catalogue)
    qtbot.addWidget(sheet)
    sheet.resize(1222, 768)
    sheet.show()
    sheet.activateWindow()
    sheet.show_system(north(document))
    return sheet


def made(document: Document, catalogue: Catalogue) -> FoodsSheet:
    """Make the sheet with what all sheets of a room share."""
    plans = Plans(document, catalogue, document)
    return FoodsSheet(document, catalogue, Learning(document, catalogue, plans, document), plans)


def dress(points: float) -> None:
    """Give the application its own look, with letters so large, where it does not have it."""
    application = QApplication.instance()
    assert isinstance(application, QApplication)
    if not application.styleSheet() or application.font().pointSizeF() != points:
        apply_theme(application, application.font().family(), base_points=points)


def north(document: Document) -> str:
    return next(s for s in document.records("system") if document.value(s, "name").text == "North frag bay")


def laid_out(sheet: FoodsSheet, qtbot) -> list[str]:
    """Return what is still cut off when the layouts have had time to settle."""
    try:
        qtbot.waitUntil(lambda: not clipped(sheet), timeout=8000)
    except NotInTimeError:
        return clipped(sheet)
    return []


def type_into(sheet: FoodsSheet, name: str, text: str) -> None:
    """Replace what stands in a field, key by key, and go on with Tab."""
    sheet.form.fields[f"food.{name}"].setFocus(Qt.FocusReason.TabFocusReason)
    write(text)
    press(Qt.Key.Key_Tab)


def pick(sheet: FoodsSheet, name: str, words: str) -> None:
    """Choose an entry of a list as the keeper does."""
    combo = sheet.form.fields[f"food.{name}"].combo  # type: ignore[attr-defined]
    place = combo.findText(words)
    assert place >= 0, f"{words} is not offered"
    combo.setCurrentIndex(place)
    combo.activated.emit(place)


def shown(sheet: FoodsSheet) -> set[str]:
    return {path.removeprefix("food.") for path, field in sheet.form.fields.items() if not field.isHidden()}


def test_a_food_from_nothing_by_keyboard(sheet: FoodsSheet, document: Document):
    before = sheet.records.foods()
    sheet.add.setFocus(Qt.FocusReason.TabFocusReason)
    press(Qt.Key.Key_Space)
    (new,) = set(sheet.records.foods()) - set(before)
    assert sheet.records.food == new
    assert sheet.view.answer.state == "empty"
    assert QApplication.focusWidget() is sheet.form.fields["food.name"].focusProxy()
    write("Copepods, blue bottle")
    for name, text in (
        ("nitrogen", "7"),
        ("phosphorus", "0.2 g/L"),
        ("per_day", "1.5 mL per day"),
        ("jug_volume", "80"),
    ):
        type_into(sheet, name, text)
    assert document.value(new, "name") == Typed("Copepods, blue bottle")
    assert document.value(new, "phosphorus").text.startswith("0.2")
    assert sheet.answer.view.figure == "1.5"
    assert [each[0] for each in sheet.view.rows][2:] == ["Copepods, blue bottle", "All together"]
    assert sheet.list.names.stringList()[2].startswith("Copepods, blue bottle\n1.5")
    # One undo step for each field, the newest first; the food itself is the last.
    click(sheet.header.undo)
    assert not document.value(new, "jug_volume").text
    for _ in range(4):
        click(sheet.header.undo)
    assert sheet.records.foods()[-1] == new
    click(sheet.header.undo)
    assert sheet.records.foods() == before


def test_fields_follow_what_the_label_says(sheet: FoodsSheet, document: Document):
    amounts = {"protein", "nitrogen_share", "phosphorus_share", "density"}
    label = {"label_parameter", "label_dose", "label_water", "label_raises"}
    assert shown(sheet) & (amounts | label | {"nitrogen"}) == amounts
    pick(sheet, "says", "So many mL raise so much water")
    assert shown(sheet) & (amounts | label | {"nitrogen"}) == label
    assert sheet.answer.view.state == "empty"
    pick(sheet, "label_parameter", "Phosphate")
    for name, text in (("label_dose", "5"), ("label_water", "100"), ("label_raises", "0.01 mg/L as PO4")):
        type_into(sheet, name, text)
    assert "0.00118" in sheet.answer.view.second
    # What was typed for the other way is kept.
    pick(sheet, "says", "Percent by mass")
    assert document.value(sheet.records.food, "protein") == Typed("4", "%")


def test_mistakes_stand_beside_their_fields(sheet: FoodsSheet):
    type_into(sheet, "protein", "four")
    assert "not a number" in sheet.form.fields["food.protein"].message  # type: ignore[attr-defined]
    assert sheet.answer.view.state == "refused"
    type_into(sheet, "protein", "4")
    type_into(sheet, "opened_on", "25.11.26")
    assert "Write it like" in sheet.form.fields["food.opened_on"].message  # type: ignore[attr-defined]
    type_into(sheet, "opened_on", (present().date() - timedelta(days=15)).isoformat())
    assert not sheet.form.fields["food.opened_on"].message  # type: ignore[attr-defined]
    assert sheet.answer.view.state == "stop"
    assert "STOP" in sheet.list.names.stringList()[0]
    type_into(sheet, "opened_on", present().date().isoformat())
    type_into(sheet, "per_day", "20")
    assert sheet.answer.view.state == "refused"
    assert sheet.answer.view.second.startswith("At most")
    assert sheet.brings.isVisible()
    assert not sheet.chart.isVisible()
    type_into(sheet, "per_day", "2")
    assert sheet.chart.isVisible()
    assert "with these foods" in sheet.chart.accessibleDescription()


def test_a_food_is_removed_and_comes_back(sheet: FoodsSheet, document: Document):
    first, second = sheet.records.foods()
    click(sheet.remove)
    assert sheet.records.foods() == (second,)
    assert sheet.form.fields["food.name"].typed().text == "Amino acids, small bottle"  # type: ignore[attr-defined]
    click(sheet.remove)
    assert sheet.records.foods() == ()
    assert sheet.list.names.stringList() == [NONE_YET]
    assert not sheet.form.isEnabled()
    assert not sheet.remove.isEnabled()
    click(sheet.header.undo)
    click(sheet.header.undo)
    assert set(sheet.records.foods()) == {first, second}
    # What comes back is shown.
    assert sheet.records.food == first
    assert sheet.form.isEnabled()


def test_arrows_go_through_the_list_and_undo_goes_to_what_it_changes(sheet: FoodsSheet):
    first, second = sheet.records.foods()
    type_into(sheet, "per_day", "1")
    sheet.list.setFocus(Qt.FocusReason.TabFocusReason)
    press(Qt.Key.Key_Down)
    assert sheet.records.food == second
    assert sheet.answer.view.figure == "1"
    click(sheet.header.undo)
    assert sheet.records.food == first
    assert sheet.answer.view.figure == "2"
    click_row(sheet.list, 1)
    assert sheet.records.food == second


def test_another_system_and_none(sheet: FoodsSheet, document: Document):
    other = next(s for s in document.records("system") if s != north(document))
    sheet.show_system(other)
    assert sheet.list.names.stringList() == [NONE_YET]
    assert sheet.add.isEnabled()
    assert not sheet.form.isEnabled()
    sheet.show_system("")
    assert not sheet.add.isEnabled()
    assert sheet.view.answer.state == "empty"


def test_what_is_typed_is_never_taken_for_markup_and_everything_can_be_hit(sheet: FoodsSheet, qtbot):
    type_into(sheet, "name", "<b>Mash</b> & more")
    labels = [label for label in sheet.findChildren(QLabel) if "Mash" in label.text()]
    assert labels
    assert all(label.textFormat() == Qt.TextFormat.PlainText for label in labels)
    for field in sheet.form.fields.values():
        if isinstance(field, QuantityField) and not field.isHidden():
            name = field.line.accessibleName()
            unit = field._unit_label.text().strip() or field.units.currentText()
            assert name
            assert not unit or name.endswith(unit)
    assert all(button.height() >= 32 for button in sheet.findChildren(QAbstractButton) if button.isVisible())
    assert all(line.parentWidget().height() >= 32 for line in sheet.findChildren(QLineEdit) if line.isVisible())
    assert all(view.accessibleName() for view in sheet.findChildren(QListView) if view.isVisible())
    assert laid_out(sheet, qtbot) == []
    # Enter in a field presses no button.
    before = sheet.records.foods()
    sheet.form.fields["food.per_day"].setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    assert sheet.records.foods() == before


def test_nothing_is_cut_off_in_large_letters(document: Document, catalogue: Catalogue, qtbot):
    dress(16.5)
    try:
        sheet = made(document, catalogue)
        qtbot.addWidget(sheet)
        sheet.resize(1360, 768)
        sheet.show()
        sheet.show_system(north(document))
        assert laid_out(sheet, qtbot) == []
        sheet.close()
    finally:
        dress(11.0)


def test_the_rounds_tell_of_a_food_past_its_last_day(
    document: Document, catalogue: Catalogue, sheet: FoodsSheet, qtbot
):
    plans = Plans(document, catalogue, sheet)
    watch = RoundWatch(document, catalogue, Learning(document, catalogue, plans, sheet), plans, sheet)
    watch.look()
    qtbot.waitUntil(lambda: not watch.waiting(), timeout=5000)
    assert [food.name for food in watch.room().foods] == ["Rotifer mash, cold box", "Amino acids, small bottle"]
    found = [duty for duty in rounds.duties(watch.room(), catalogue, present()) if duty.kind == rounds.FOOD]
    assert found == []
    opened = (present().date() - timedelta(days=15)).isoformat()
    document.edit(sheet.records.food, "opened_on", Typed(opened))
    watch.look()
    qtbot.waitUntil(lambda: not watch.waiting(), timeout=5000)
    (duty,) = [each for each in rounds.duties(watch.room(), catalogue, present()) if each.kind == rounds.FOOD]
    assert duty.urgency == rounds.WRONG
    assert duty.what == "Stop Rotifer mash, cold box and throw it away"
