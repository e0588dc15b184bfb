"""The walk through the main job on an invented tank: by keyboard from the welcome to the card, and away at any time."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

from evenwater.screens import walk
from evenwater.ui.main_window import MainWindow
from evenwater.ui.walk_page import WalkPage
from evenwater.ui.welcome_page import WelcomePage
from tests.ui.window_making import choose, left, opened


@pytest.fixture
def log(tmp_path: Path) -> Path:
    return tmp_path / "room" / "evenwater.sqlite"


def begun(log: Path, qtbot) -> tuple[MainWindow, WalkPage]:
    window = opened(log, qtbot)
    welcome = window.centralWidget()
    assert isinstance(welcome, WelcomePage)
    QTest.keyClick(welcome.empty, Qt.Key.Key_Tab)
    assert QApplication.focusWidget() is welcome.walk
    QTest.keyClick(welcome.walk, Qt.Key.Key_Space)
    page = window.centralWidget()
    assert isinstance(page, WalkPage)
    return window, page


def test_the_walk_by_keyboard_from_the_welcome_to_the_card(log: Path, qtbot):
    window, page = begun(log, qtbot)
    sheet, strip = page.room.sheet, page.strip
    assert "nothing of it is kept" in strip.text.text()
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Space)
    seen = [page.number]
    while page.step.path:
        field = sheet.form.fields[page.step.path]
        assert field.isVisible()
        assert field.isAncestorOf(QApplication.focusWidget()), f"{page.step.path}: the cursor is where the step is"
        assert field.label.text() in strip.text.text(), "the words are those on the sheet"
        before = page.number
        if page.step.path == "additive.chemical":
            choose(sheet, page.step.path, "sodium CARBonate anhydrous")
        else:
            QTest.keyClicks(QApplication.focusWidget(), page.step.wanted.text)
            QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
        qtbot.waitUntil(lambda before=before: page.number > before)
        seen.append(page.number)
    assert seen == list(range(1, 11))
    assert sheet.answer.view.state == "answered"
    assert f"{sheet.answer.view.figure} mL per hour" in strip.text.text()
    for _ in range(2):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: page.number == len(walk.STEPS) - 1)
    assert sheet.buttons.preview.isVisible()
    sheet.buttons.preview.close()
    folder = page.document
    place = page._paths.log.parent
    assert place.exists()
    strip.go.setFocus()
    QTest.keyClick(strip.go, Qt.Key.Key_Space)
    assert isinstance(window.centralWidget(), WelcomePage)
    assert not place.exists(), "the invented tank is thrown away"
    assert folder is not window.opening().document()
    assert window.opening().document().records("system") == ()
    left(window)


def test_another_figure_does_not_go_on_and_the_step_can_be_done_for_one(log: Path, qtbot):
    window, page = begun(log, qtbot)
    page.go_on()
    line = QApplication.focusWidget()
    QTest.keyClicks(line, "6.9")
    QTest.keyClick(line, Qt.Key.Key_Return)
    QApplication.processEvents()
    assert page.number == 1
    for number in range(1, 10):
        assert page.number == number
        QTest.keyClick(
            window, page.strip.go.text()[page.strip.go.text().index("&") + 1].lower(), Qt.KeyboardModifier.AltModifier
        )
        qtbot.waitUntil(lambda number=number: page.number > number)
    assert page.room.sheet.answer.view.state == "answered"
    buttons = [button for button in page.strip.findChildren(QPushButton) if button.isVisible()]
    assert all(button.height() >= 32 for button in buttons)
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert isinstance(window.centralWidget(), WelcomePage)
    # Begun again, and ended with the window.
    window.centralWidget().walk.click()
    place = window.centralWidget()._paths.log.parent
    assert place.exists()
    left(window)
    assert not place.exists()


@pytest.mark.parametrize(
    ("text", "unit", "is_done"),
    [
        ("6.8", "dKH", True),
        ("6,8", "", True),
        ("6.80", "dKH", True),
        ("6.8", "meq/L", False),
        ("6.9", "dKH", False),
        ("", "", False),
    ],
)
def test_a_step_is_done_with_its_figure_in_its_unit(text: str, unit: str, is_done: bool):
    step = next(step for step in walk.STEPS if step.path == "change.measured")
    assert walk.done(step, {step.path: walk.Typed(text, unit)}) is is_done
