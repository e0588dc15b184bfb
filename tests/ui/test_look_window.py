"""The real window in other colours and letters: nothing stays behind of the light, and work goes on where it was."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication

from evenwater.ui.look import TOKENS
from evenwater.ui.main_window import MainWindow
from evenwater.ui.preferences import DARK, HIGH_CONTRAST_DARK, LIGHT
from evenwater.ui.sheet_list import CORRECT, JUGS, LOG, PUMPS, SHEETS
from tests.ui.window_making import left, opened, room_of, sheet_of, type_into


@pytest.fixture
def window(young_demo: None, qtbot) -> Iterator[MainWindow]:
    made = opened(None, qtbot, demo=True)
    qtbot.waitUntil(lambda: room_of(made).sheet.chart.view is not None and made.keys is not None, timeout=10_000)
    yield made
    assert made._look is not None
    made._look.choose(colours=LIGHT)
    left(made)


def light(image: QImage) -> float:
    """Return the share of pixels [1] in the papers of the light theme, looking at every fourth of every fourth line."""
    grounds = {QColor(colour).rgb() for colour in (TOKENS[LIGHT].paper, TOKENS[LIGHT].leaf, TOKENS[LIGHT].wash)}
    places = [(x, y) for x in range(0, image.width(), 4) for y in range(0, image.height(), 4)]
    return sum(image.pixel(x, y) in grounds for x, y in places) / len(places)


def test_nothing_light_is_left_in_the_dark(window: MainWindow, qtbot) -> None:
    room = room_of(window)
    look = window._look
    assert look is not None
    look.choose(colours=LIGHT)
    assert light(window.grab().toImage()) > 0.8
    for colours in (DARK, HIGH_CONTRAST_DARK):
        look.choose(colours=colours)
        for name in (CORRECT, PUMPS, JUGS, LOG):
            room.sheets.choose(SHEETS.index(name))
            QApplication.processEvents()
            image = window.grab().toImage()
            # White ink has a pixel here and there that is as white as light paper.
            assert light(image) < (0.002 if colours == DARK else 0.06), (colours, name)
            ground = QColor(TOKENS[colours].paper).rgb()
            assert sum(image.pixel(x, 5) == ground for x in range(0, image.width(), 7)) > 100, (colours, name)


def test_larger_letters_keep_the_place_and_what_was_typed(window: MainWindow, qtbot) -> None:
    before = room_of(window)
    system = before.systems._ids[1]
    before.systems.choose(system)
    type_into(before.sheet, "change.target", "8.2")
    field = before.sheet.form.fields["change.target"]
    field.setFocus(Qt.FocusReason.TabFocusReason)
    held = QApplication.focusWidget()
    assert held is not None
    name = held.accessibleName()
    qtbot.keyClick(window, Qt.Key.Key_Plus, Qt.KeyboardModifier.ControlModifier)
    opening = window.opening()
    assert opening is not None
    qtbot.waitUntil(lambda: opening.room() not in (None, before), timeout=5000)
    after = room_of(window)
    assert QApplication.font().pointSizeF() == pytest.approx(11.0 * 1.25)
    assert after.systems.current() == system
    assert after.shown() == CORRECT
    assert sheet_of(window).form.fields["change.target"].typed().text == "8.2"
    now = QApplication.focusWidget()
    assert now is not None
    assert now.accessibleName() == name
    qtbot.keyClick(window, Qt.Key.Key_Minus, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: opening.room() not in (None, after), timeout=5000)
    assert QApplication.font().pointSizeF() == 11.0


def test_settings_and_the_whole_screen_are_reached_by_keys(window: MainWindow, qtbot) -> None:
    qtbot.keyClick(window, Qt.Key.Key_Comma, Qt.KeyboardModifier.ControlModifier)
    assert window.keys is not None
    settings = window.keys.settings
    assert settings is not None
    assert settings.isVisible()
    settings.close()
    room_of(window).settings.click()
    assert settings.isVisible()
    settings.close()
    window.activateWindow()
    qtbot.keyClick(window, Qt.Key.Key_F11)
    assert window.isFullScreen()
    qtbot.keyClick(window, Qt.Key.Key_F11)
    assert not window.isFullScreen()
