"""The signs: every one is there, plain, painted in the ink of the palette in force, and never alone on a button without a name."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QIcon
from PySide6.QtWidgets import QApplication

from evenwater.assets import resources
from evenwater.ui.icons import SIGNS, Ink
from evenwater.ui.theme import DARK, HIGH_CONTRAST_DARK, LIGHT, palette_for


@pytest.fixture
def palette(qapp: QApplication) -> Iterator[QApplication]:
    before = qapp.palette()
    yield qapp
    qapp.setPalette(before)


def colours(icon: QIcon, mode: QIcon.Mode = QIcon.Mode.Normal) -> set[str]:
    """Return the colours of the pixels that are wholly covered."""
    image = icon.pixmap(QSize(64, 64), 1.0, mode).toImage()
    seen = [image.pixelColor(x, y) for x in range(64) for y in range(64)]
    return {colour.name() for colour in seen if colour.alpha() == 255}


def near(found: set[str], wanted: str) -> bool:
    """Return whether all colours are the one that is wanted, but for the rounding of a blended edge."""
    want = QColor(wanted)
    apart = [abs(a - b) for one in found for a, b in zip(QColor(one).getRgb(), want.getRgb(), strict=True)]
    return bool(apart) and max(apart) <= 2


@pytest.mark.parametrize("name", SIGNS)
def test_a_sign_is_drawn_in_ink_and_follows_the_palette(palette: QApplication, name: str) -> None:
    icon = QIcon(Ink(name))
    for tokens in (LIGHT, DARK, HIGH_CONTRAST_DARK):
        palette.setPalette(palette_for(tokens))
        assert near(colours(icon), tokens.ink)
        assert near(colours(icon, QIcon.Mode.Disabled), tokens.rule)


def test_there_is_no_sign_that_nobody_can_ask_for() -> None:
    assert {file.stem for file in (resources() / "icons" / "signs").iterdir()} == set(SIGNS)


def test_signs_are_small_plain_drawings_without_colours_of_their_own() -> None:
    for name in SIGNS:
        text = (resources() / "icons" / "signs" / f"{name}.svg").read_text(encoding="utf-8")
        assert "#" not in text
        assert text.count("currentColor") == 1
        assert len(text) < 600
