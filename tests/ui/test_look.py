"""What the keeper chose holds at once, is kept, and follows the system where that was chosen; the settings show it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from evenwater.card.fonts import FAMILY
from evenwater.ui.language import ENGLISH, apply
from evenwater.ui.look import Look
from evenwater.ui.preferences import (
    AS_SYSTEM,
    COLOURS,
    DARK,
    HIGH_CONTRAST,
    HIGH_CONTRAST_DARK,
    LETTERS,
    LIGHT,
    Preferences,
    load,
    save,
)
from evenwater.ui.settings_window import SettingsWindow
from evenwater.ui.theme import THEMES, apply_theme, tokens_of


@pytest.fixture(autouse=True)
def english(qapp: QApplication) -> Iterator[None]:
    yield
    apply(qapp, ENGLISH)


def worn() -> str:
    """Return the name of the theme that the application's palette carries."""
    carried = tokens_of(QApplication.palette())
    return next(t.name for t in THEMES if t.paper.lower() == carried.paper and t.blue.lower() == carried.blue)


@pytest.fixture
def look(qapp: QApplication, tmp_path: Path) -> Iterator[Look]:
    made = Look(qapp, tmp_path / "window.ini")
    made.dress(FAMILY)
    yield made
    qapp.styleHints().unsetColorScheme()
    made.setParent(None)
    made.deleteLater()
    apply_theme(qapp, FAMILY)


def test_colours_hold_at_once_and_are_kept(look: Look, tmp_path: Path) -> None:
    for name, theme in zip(COLOURS[1:], ("light", "dark", "high contrast", "high contrast, dark"), strict=True):
        look.choose(colours=name)
        assert worn() == theme
        assert load(tmp_path / "window.ini") == Preferences(name)


def test_the_system_is_followed_where_that_was_chosen(look: Look) -> None:
    assert look.preferences.colours == AS_SYSTEM
    for dark, contrast, theme in (
        (True, False, "dark"),
        (True, True, "high contrast, dark"),
        (False, True, "high contrast"),
        (False, False, "light"),
    ):
        look.follow(dark, contrast)
        assert worn() == theme
    look.choose(colours=LIGHT)
    look.follow(dark=True, contrast=True)
    assert worn() == "light", "another choice stands, whatever the system does"


def test_a_dark_system_is_known_before_it_is_asked(qapp: QApplication) -> None:
    before = qapp.palette()
    dark = QPalette(before)
    dark.setColor(QPalette.ColorRole.Window, "#101010")
    dark.setColor(QPalette.ColorRole.WindowText, "#f0f0f0")
    qapp.setPalette(dark)
    look = Look(qapp)
    look.prepare(FAMILY)
    assert worn() == "dark"
    qapp.setPalette(before)
    look.deleteLater()


def test_letters_ask_for_a_page_made_anew_once_for_two_presses(look: Look, qtbot) -> None:
    told: list[str] = []
    look.leaving.connect(lambda: told.append("leaving"))
    look.remade.connect(lambda: told.append(f"{QApplication.font().pointSizeF()}"))
    look.larger()
    look.larger()
    qtbot.waitUntil(lambda: len(told) == 2, timeout=2000)
    assert told == ["leaving", "16.5"]


def test_a_size_from_the_command_line_is_for_this_time_only(qapp: QApplication, tmp_path: Path) -> None:
    file = tmp_path / "window.ini"
    save(file, Preferences(letters=125))
    look = Look(qapp, file, letters=200)
    assert look.points == 22.0
    look.choose(language="de")
    assert load(file) == Preferences(letters=125, language="de")
    look.choose(letters=175)
    assert load(file).letters == 175
    look.deleteLater()


def test_settings_show_and_choose_by_the_keyboard(look: Look, qtbot) -> None:
    owner = QWidget()
    qtbot.addWidget(owner)
    owner.show()
    window = SettingsWindow(look, owner)
    window.show()
    assert [b.isChecked() for b in window.colours] == [name == AS_SYSTEM for name in COLOURS]
    assert [b.isChecked() for b in window.letters] == [size == 100 for size in LETTERS]
    window.activateWindow()
    window.colours[0].setFocus()
    qtbot.waitUntil(window.colours[0].hasFocus)
    for name in (LIGHT, DARK, HIGH_CONTRAST, HIGH_CONTRAST_DARK):
        QTest.keyClick(window.focusWidget(), Qt.Key.Key_Down)
        assert look.preferences.colours == name
    assert worn() == "high contrast, dark"
    names = [b.accessibleName() or b.text() for b in (*window.colours, *window.letters, *window.languages)]
    assert all(names)
    assert len(set(names)) == len(names)
    QTest.keyClick(window, Qt.Key.Key_Escape)
    assert not window.isVisible()


def test_settings_say_when_they_cannot_be_kept(qapp: QApplication, tmp_path: Path, qtbot) -> None:
    (tmp_path / "window.ini").mkdir()
    look = Look(qapp, tmp_path / "window.ini")
    owner = QWidget()
    qtbot.addWidget(owner)
    window = SettingsWindow(look, owner)
    window.show()
    look.choose(language="de")
    assert window.told.isVisible()
    assert "could not be written" in window.told.text()
    window.close()
    look.deleteLater()


def test_another_language_is_chosen_by_its_own_name(look: Look, tmp_path: Path, qtbot) -> None:
    owner = QWidget()
    qtbot.addWidget(owner)
    window = SettingsWindow(look, owner)
    window.show()
    german = next(button for button in window.languages if button.text() == "Deutsch")
    with qtbot.waitSignal(look.remade, timeout=2000):
        qtbot.mouseClick(german, Qt.MouseButton.LeftButton)
    assert load(tmp_path / "window.ini").language == "de"
    assert german.isChecked()
    window.close()
