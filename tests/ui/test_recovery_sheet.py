"""The Recovery sheet on the demo's document: the stop list first, a jug that ran in, a way chosen, a card, a note once, and undo."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QLineEdit, QWidget

from evenwater.assets import resources
from evenwater.engine.catalogue import Catalogue, load
from evenwater.engine.quantities import Typed
from evenwater.session import Document
from evenwater.session.demo import fill_from
from evenwater.store import Store
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.recovery_sheet import NOTHING, RecoverySheet
from evenwater.ui.theme import apply_theme
from tests.ui.clipping import clipped
from tests.ui.stocks_making import click, press, write
from tests.ui.window_making import focus_walk

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
def sheet(document: Document, catalogue: Catalogue, qtbot) -> Iterator[RecoverySheet]:
    """Return the sheet with the north bay, of which nothing was said yet."""
    application = QApplication.instance()
    assert isinstance(application, QApplication)
    if not application.styleSheet() or application.font().pointSizeF() != 11.0:
        apply_theme(application, application.font().family(), base_points=11.0)
    room = QWidget()
    qtbot.addWidget(room)
    plans = Plans(document, catalogue, room)
    learning = Learning(document, catalogue, plans, room)
    sheet = RecoverySheet(document, catalogue, learning, plans)
    qtbot.addWidget(sheet)
    sheet.resize(1136, 768)
    sheet.show()
    sheet.activateWindow()
    sheet.show_system(next(s for s in document.records("system") if document.value(s, "name").text == "North frag bay"))
    yield sheet
    learning.close()


def reckoned(sheet: RecoverySheet, qtbot) -> None:
    qtbot.waitUntil(lambda: not sheet.waiting(), timeout=5000)


def pick(sheet: RecoverySheet, path: str, words: str) -> None:
    """Choose an entry of a list as the keeper does."""
    combo = sheet.form.fields[path].combo  # type: ignore[union-attr]
    place = combo.findText(words)
    assert place >= 0, f"{words} is not offered: {[combo.itemText(n) for n in range(combo.count())]}"
    combo.setCurrentIndex(place)
    combo.activated.emit(place)


def type_into(sheet: RecoverySheet, path: str, text: str) -> None:
    sheet.form.fields[path].setFocus(Qt.FocusReason.TabFocusReason)
    write(text)
    press(Qt.Key.Key_Tab)


def ran_in(sheet: RecoverySheet, qtbot) -> None:
    """Say that the whole white jug ran in."""
    pick(sheet, "additive", "Soda ash, white jug")
    click(sheet.form.whole)
    reckoned(sheet, qtbot)


def said(sheet: RecoverySheet) -> str:
    return " ".join(label.text() for label in sheet.findChildren(QLabel) if label.isVisibleTo(sheet)).replace(
        "\u00a0", " "
    )


def test_H25_stop_list_stands_there_before_any_figure(sheet: RecoverySheet):
    assert NOTHING in said(sheet)
    assert [label.text()[2:] for label in sheet.stop.short] == [
        "Pump off. Pull its plug.", "Line out of the jug.", "Dose nothing against it.", "Add no acid.", "Test the water now.", "Call the keeper.",
    ]  # fmt: skip
    size = min(label.font().pointSizeF() for label in sheet.stop.short)
    others = [
        label for label in sheet.findChildren(QLabel) if label.isVisibleTo(sheet) and label not in sheet.stop.short
    ]
    assert size > max(label.font().pointSizeF() for label in others)
    assert sheet.stop.accessibleName().startswith("First, in this order: 1. Switch the dosing pump off")
    assert not any(button.isEnabled() for button in (sheet.note, *sheet.page_actions.buttons))


def test_whole_jug_ran_in(sheet: RecoverySheet, document: Document, qtbot):
    """The jug was made up to a litre; what the demo logged since is taken off, and nothing else."""
    ran_in(sheet, qtbot)
    left = float(document.value(sheet.records.record, "ran_in").text)
    stock = sheet.records.stock
    _, ml = document.log.columns(sheet.records.system, stock, "dose")
    assert 0.0 < left <= 1000.0
    assert left >= 1000.0 - float(ml.sum()) - 1e-6
    assert "Doses nobody logged are not taken off." in sheet.form.basis.text()
    view = sheet.found.view
    assert view.state == "answered"
    assert view.headline.startswith("Alkalinity")
    assert "perhaps" in view.headline, "the volume is known within 3 % only"
    assert "goggles" in said(sheet)
    # Three ways side by side, at one height.
    panels = list(sheet.choices.panels.values())
    assert len({panel.mapTo(sheet, panel.rect().topLeft()).y() for panel in panels}) == 1
    assert "Calcium" in said(sheet)
    document.undo()
    assert document.value(sheet.records.record, "ran_in").text == ""


def test_jug_is_asked_for_first(sheet: RecoverySheet, document: Document):
    click(sheet.form.whole)
    assert sheet.form.basis.text() == "Choose the jug that ran in first."
    assert document.value(sheet.records.record, "ran_in").text == ""


def test_chosen_way_stands_day_by_day_and_on_the_card(sheet: RecoverySheet, document: Document, qtbot, tmp_path: Path):
    ran_in(sheet, qtbot)
    card = sheet.page_actions.page()
    assert card is not None
    assert card.way.startswith("No way down was chosen")
    both = sheet.choices.panels["both"]
    click(both.choose)
    assert document.value(sheet.records.record, "chosen").text == "both"
    assert both.choose.text().endswith("chosen")
    assert "Day 1:" in said(sheet)
    card = sheet.page_actions.page()
    assert card is not None
    assert card.way == both.title.text()
    sheet.page_actions.write(tmp_path / "card.pdf")
    assert (tmp_path / "card.pdf").read_bytes().startswith(b"%PDF")
    # A jug that changes makes no card of before, not even for a moment (H34).
    type_into(sheet, "overdose.volume", "800")
    if sheet.waiting():
        assert sheet.page_actions.page() is None
        assert not sheet.page_actions.print.isEnabled()
    reckoned(sheet, qtbot)
    assert both.choose.isChecked()
    click(both.choose)
    assert document.value(sheet.records.record, "chosen").text == ""


def test_emergency_is_noted_once_with_undo(sheet: RecoverySheet, document: Document, qtbot):
    ran_in(sheet, qtbot)
    before = document.log.count(sheet.records.system, "note")
    click(sheet.note)
    assert document.log.count(sheet.records.system, "note") == before + 1
    assert not sheet.note.isEnabled()
    sheet._note()
    assert document.log.count(sheet.records.system, "note") == before + 1
    text = document.log.latest(sheet.records.system, "note").fields["text"].text  # type: ignore[union-attr]
    assert text.startswith("Emergency, found ")
    assert "ran in from Soda ash, white jug (sodium carbonate anhydrous)" in text
    assert "No way down was chosen yet." in text
    document.undo()
    reckoned(sheet, qtbot)
    assert document.log.count(sheet.records.system, "note") == before
    assert sheet.note.isEnabled()


def test_mistakes_stand_beside_their_fields(sheet: RecoverySheet, qtbot):
    ran_in(sheet, qtbot)
    type_into(sheet, "change.measured", "9")
    reckoned(sheet, qtbot)
    field = sheet.form.fields["change.measured"]
    assert "not above its target" in field.message
    assert sheet.found.view.state == "refused"
    assert not sheet.note.isEnabled()
    assert not sheet.choices.isVisibleTo(sheet)


def test_parameter_comes_from_another_sheet(sheet: RecoverySheet, document: Document, qtbot):
    record = f"{sheet.records.system}:alkalinity"
    document.edit_fields(record, {"measured": Typed("13.2", "dKH"), "measured_at": Typed("")})
    sheet.show_parameter("alkalinity")
    assert document.value(sheet.records.record, "parameter").text == "alkalinity"
    assert sheet.found.view.headline.replace("\u00a0", " ") == "Alkalinity 13.2 dKH (as tested), to come to 11 dKH."
    sheet.form.checks["signs.cloudy"].click()
    reckoned(sheet, qtbot)
    assert sheet.found.view.dangers[0].startswith("Seen: cloudy water")
    assert document.value(sheet.records.record, "cloudy").text == "yes"
    document.undo()
    reckoned(sheet, qtbot)
    assert not sheet.form.checks["signs.cloudy"].isChecked()


def test_all_of_it_by_keyboard_with_names_and_room(sheet: RecoverySheet, qtbot):
    ran_in(sheet, qtbot)
    walked = focus_walk(sheet)
    buttons = [
        sheet.form.whole,
        *(panel.choose for panel in sheet.choices.panels.values()),
        sheet.note,
        *sheet.page_actions.buttons,
    ]
    for widget in (*buttons, *(check for path, check in sheet.form.checks.items() if path.startswith("signs."))):
        assert widget in walked or not widget.isEnabled(), widget.accessibleName()
    for button in buttons:
        assert button.height() >= 48 - 4, button.text()
    for field in sheet.form.fields.values():
        spoken = field.spoken_for().accessibleName() if hasattr(field, "spoken_for") else ""
        assert spoken, field
    marks = [
        b.text()[b.text().index("&") + 1].lower()
        for b in sheet.findChildren(QAbstractButton)
        if "&" in b.text() and b.isVisibleTo(sheet)
    ]
    assert len(marks) == len(set(marks)), marks
    qtbot.wait(300)
    assert not clipped(sheet), clipped(sheet)
    assert QTest.qWaitForWindowExposed(sheet)
    assert isinstance(sheet.form.fields["overdose.volume"].line, QLineEdit)
