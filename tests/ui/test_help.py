"""Help where it is needed: every input of every form says why it is there, by key and by mouse; the glossary behind it."""

from __future__ import annotations

import ast
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QCheckBox, QWidget

from evenwater.engine import catalogue, fields
from evenwater.screens import glossary, why
from evenwater.ui.absence_page import AbsencePage
from evenwater.ui.correct_form import CorrectForm
from evenwater.ui.exchange_form import ExchangeForm
from evenwater.ui.field_shell import FieldShell
from evenwater.ui.foods_form import FoodsForm
from evenwater.ui.form_parts import set_topic
from evenwater.ui.glossary_window import GlossaryWindow
from evenwater.ui.guide_window import GuideWindow
from evenwater.ui.help import Help
from evenwater.ui.jug_page import JugPage
from evenwater.ui.log_form import LogForm
from evenwater.ui.pump_form import PumpForm
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.recovery_form import RecoveryForm
from evenwater.ui.stock_form import StockForm
from evenwater.ui.timetable_form import TimetableForm

RESOURCES = Path(__file__).resolve().parents[2] / "resources"
UI = Path(__file__).resolve().parents[2] / "desktop" / "evenwater" / "ui"
CATALOGUE = catalogue.load(RESOURCES)
WHYS = why.load(RESOURCES)


def _timetable(page: QWidget) -> QWidget:
    form = TimetableForm(page)
    form.show_pumps(("alkalinity",))
    return form


FORMS: dict[str, Callable[[QWidget], QWidget]] = {
    "absence": AbsencePage, "correct": lambda page: CorrectForm(CATALOGUE, page),
    "exchange": lambda page: ExchangeForm(CATALOGUE, page), "foods": lambda page: FoodsForm(CATALOGUE, page), "jug": lambda page: JugPage(CATALOGUE, None, page),
    "log": lambda page: LogForm(CATALOGUE, page), "pump": PumpForm, "recovery": lambda page: RecoveryForm(CATALOGUE, page),
    "stock": lambda page: StockForm(CATALOGUE, page), "timetable": _timetable,
}  # fmt: skip
# Inputs that stand on a sheet itself, by the file that makes them and their topic.
BESIDE = {
    "upkeep_sheet.py": {"system.exchanged"},
    "exchange_sheet.py": {"shown.parameter"},
    "log_sheet.py": {"shown.parameter"},
    "card_preview.py": {"printed.paper"},
}
# Files whose inputs belong to no record: what an import asks explains itself, with the columns it is about.
APART = {"import_points.py"}
_FIELDS = {"QuantityField", "TextField", "Choice", "TimeField", "ClockField"}


@pytest.fixture
def topics(page: QWidget) -> set[str]:
    found: set[str] = set()
    for name, make in FORMS.items():
        form = make(page)
        inputs = [each for kind in (FieldShell, QCheckBox) for each in form.findChildren(kind)]
        assert inputs, name
        for each in inputs:
            asked = str(each.property("topic") or "")
            assert asked, f"{name}: {each.accessibleName() or each} has no topic"
            topic = why.topic_of(asked)
            assert WHYS.of(topic) is not None, f"{name}: nothing is said of {asked} ({topic})"
            found.add(topic)
    return found


def test_every_input_has_a_why_and_every_why_an_input(topics: set[str]):
    beside = {topic for of_file in BESIDE.values() for topic in of_file}
    assert set(WHYS.topics) == topics | beside


def test_no_file_makes_inputs_unseen():
    makers = {
        file.name
        for file in UI.glob("*.py")
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in _FIELDS
    }
    forms = {f"{name}_form.py" for name in FORMS} | {
        "absence_page.py",
        "calibration_form.py",
        "jug_page.py",
        "level_form.py",
    }
    # `shared_pump.Choice` is a value of its own, no input.
    assert makers - forms - APART - {"shared_pump.py"} == set(BESIDE)
    for name in BESIDE:
        assert "set_topic(" in (UI / name).read_text(encoding="utf-8"), name


@pytest.fixture
def asked(page: QWidget, qtbot) -> tuple[Help, QuantityField, QuantityField]:
    """Two fields with the cursor in the first, and help for their window."""
    first, second = (QuantityField(name, fields.FLOW, parent=page) for name in ("Flow", "Other"))
    set_topic(first, "pump.flow")
    for each in (first, second):
        page.layout().addWidget(each)
    page.layout().addStretch(1)
    helped = Help(page)
    page.show()
    page.activateWindow()
    first.setFocus()
    qtbot.waitUntil(first.line.hasFocus)
    return helped, first, second


def test_f1_says_why_and_escape_takes_it_away_and_nothing_else(asked, qtbot):
    helped, first, _ = asked
    QTest.keyClicks(first.line, "24")
    place = first.frame.geometry()
    QTest.keyClick(first.line, Qt.Key.Key_F1)
    assert helped.slip.isVisible()
    assert helped.slip.text.text() == WHYS.of("pump.flow").text
    assert first.frame.geometry() == place, "nothing jumps"
    assert WHYS.of("pump.flow").text in first.line.accessibleDescription()
    QTest.keyClick(first.line, Qt.Key.Key_Escape)
    assert helped.slip.isHidden()
    assert first.typed().text == "24", "Escape closed the slip, it took nothing back"
    QTest.keyClick(first.line, Qt.Key.Key_Escape)
    assert first.typed().text == "", "and is the field's own again"


def test_the_sign_can_be_hit_and_stands_beside_its_field_only(asked, qtbot):
    helped, first, second = asked
    assert helped.mark.isVisible()
    assert min(helped.mark.width(), helped.mark.height()) >= 32
    sign = helped.mark.geometry()
    assert sign.right() == first.geometry().right()
    name = first.label.geometry().translated(first.pos())
    assert sign.contains(name.bottomRight()), "beside the field's name, where room is kept for it"
    assert first.label.contentsMargins().right() >= 18
    QTest.mouseClick(helped.mark, Qt.MouseButton.LeftButton)
    assert helped.slip.isVisible()
    assert first.line.hasFocus(), "a click on it leaves the cursor in the field"
    second.setFocus()
    qtbot.waitUntil(second.line.hasFocus)
    assert helped.slip.isHidden()
    assert not helped.mark.isVisible(), "nothing is said of this one, so nothing is promised"


def test_terms_lead_to_the_glossary_by_keyboard(asked, qtbot):
    helped, first, _ = asked
    QTest.keyClick(first.line, Qt.Key.Key_F1)
    QTest.keyClick(first.line, Qt.Key.Key_Tab)
    button = QApplication.focusWidget()
    assert button is helped.slip.buttons[0]
    assert helped.slip.isVisible(), "the slip stays while somebody is on it"
    QTest.keyClick(button, Qt.Key.Key_Space)
    assert helped.glossary.term.key == "calibration"
    assert helped.slip.isHidden()
    helped.settle()


def test_f1_twice_opens_the_glossary_at_what_the_field_is_about(asked, qtbot):
    helped, first, _ = asked
    for _ in range(2):
        QTest.keyClick(first.line, Qt.Key.Key_F1)
    assert helped.glossary.isVisible()
    assert helped.glossary.term.key == "calibration"
    helped.settle()


@pytest.fixture
def window(page: QWidget, qtbot) -> GlossaryWindow:
    shown = GlossaryWindow(glossary.load(RESOURCES), page)
    page.show()
    shown.open_at("")
    qtbot.waitUntil(shown.search.hasFocus)
    return shown


def test_a_word_is_found_and_its_links_followed_by_keyboard(window: GlossaryWindow):
    QTest.keyClicks(window.search, "two-p")
    assert window.heading.text() == "Two-part"
    QTest.keyClick(window.search, Qt.Key.Key_Down)
    assert window.list.hasFocus()
    QTest.keyClick(window.list, Qt.Key.Key_Tab)
    link = QApplication.focusWidget()
    assert link is window.links[0]
    QTest.keyClick(link, Qt.Key.Key_Space)
    assert window.heading.text() == "Alkalinity"
    QTest.keyClick(window, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert window.heading.text() == "Two-part"
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert not window.isVisible()


def test_what_is_not_there_is_said(window: GlossaryWindow):
    QTest.keyClicks(window.search, "dragon")
    assert window.heading.text() == "No such word here."
    assert not window.links
    window.search.clear()
    QTest.keyClicks(window.search, "a")
    assert window.term is not None


def test_the_guide_goes_to_a_chapter(page: QWidget, qtbot):
    guide = GuideWindow(RESOURCES, page)
    page.show()
    guide.open()
    qtbot.waitUntil(guide.list.hasFocus)
    assert len(guide.chapters) >= 10
    QTest.keyClick(guide.list, Qt.Key.Key_End)
    assert guide.text.textCursor().block().text() == guide.chapters[-1]
    assert "![" not in guide.text.toPlainText()
    QTest.keyClick(guide, Qt.Key.Key_Escape)
    assert not guide.isVisible()
