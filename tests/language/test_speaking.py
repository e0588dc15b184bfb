"""The window's language: which one is chosen, and that it is spoken, with Qt's own words and its direction, until another is."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta

import pytest
from PySide6.QtCore import QCoreApplication, QLocale, Qt
from PySide6.QtWidgets import QApplication

from evenwater import wording
from evenwater.screens.when import read_when, written
from evenwater.ui import language
from evenwater.wording import say, say_many
from tests.language.making import translations


@pytest.fixture
def app(qapp: QApplication) -> Iterator[QApplication]:
    yield qapp
    language.apply(qapp, language.ENGLISH)


@pytest.mark.parametrize(
    ("wanted", "of_system", "spoken"),
    [
        ("", ["de-AT", "en-GB"], "de"),
        ("", ["it-IT", "fr_CA", "de"], "fr"),
        ("", ["it-IT"], "en"),
        ("", [], "en"),
        ("es", ["de"], "es"),
        ("en", ["de"], "en"),
        ("xx", ["de"], "en"),
    ],
)
def test_the_keeper_comes_first_then_the_system(wanted: str, of_system: list[str], spoken: str) -> None:
    assert language.chosen(wanted, of_system) == spoken


def test_every_language_has_its_files_and_its_style() -> None:
    tags = [tag for tag, _ in language.LANGUAGES]
    assert tags == [language.ENGLISH, *translations.LANGUAGES]
    assert set(language.STYLES) == set(translations.LANGUAGES)
    for tag in translations.LANGUAGES:
        assert language.STYLES[tag].decimal == QLocale(tag).decimalPoint()


@pytest.mark.parametrize(("tag", "unit"), [("de", "mL pro Tag"), ("es", "mL por día"), ("fr", "mL par jour")])
def test_a_language_is_spoken_until_another_is(app: QApplication, tag: str, unit: str) -> None:
    assert language.apply(app, tag) == tag
    assert say("mL per day") == unit
    assert wording.style().decimal == ","
    # What is not translated yet is English, in the right number.
    assert say("a text that nobody translated") == "a text that nobody translated"
    assert say_many("{n} thing that nobody counts", "{n} things that nobody counts", 1) == "1 thing that nobody counts"
    # Qt's own words come with it, where the library ships them.
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") != "Cancel"
    assert language.apply(app, "en") == "en"
    assert say("mL per day") == "mL per day"
    assert wording.english()
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Cancel"


@pytest.mark.parametrize("tag", translations.LANGUAGES)
def test_a_day_is_read_as_it_is_written(app: QApplication, tag: str) -> None:
    now = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
    language.apply(app, tag)
    assert say("today") != "today"
    for at in (now, now.replace(hour=6), now - timedelta(hours=20), now - timedelta(days=9)):
        assert read_when(written(at, now), now) == at, written(at, now)
    assert read_when(say("now"), now) == now
    assert read_when(f"{say('yesterday').capitalize()}, 18:30", now) == datetime(2026, 11, 24, 18, 30, tzinfo=UTC)


def test_a_language_written_from_right_to_left_turns_the_window(app: QApplication) -> None:
    language.direct(app, "ar")
    assert app.layoutDirection() == Qt.LayoutDirection.RightToLeft
    language.direct(app, "en")
    assert app.layoutDirection() == Qt.LayoutDirection.LeftToRight


def test_the_front_door_without_a_window_speaks_english_whatever_the_system_does() -> None:
    asked = [sys.executable, "-m", "evenwater", "question", "convert"]
    said = [
        subprocess.run(
            asked, capture_output=True, check=True, env={"PYTHONPATH": "desktop", "LANG": lang, "PATH": ""}
        ).stdout
        for lang in ("C", "de_DE.UTF-8")
    ]
    assert said[0] == said[1]
    assert said[0]
