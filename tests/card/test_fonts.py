"""The typeface: loaded once, two faces, and a failure that says so instead of boxes on paper."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtGui import QFont, QFontDatabase, QFontInfo

from evenwater.card import fonts
from evenwater.card.failures import CardFailed
from evenwater.card.fonts import FAMILY, load_fonts
from evenwater.card.text import broken, face, width_of
from tests.card.reading import squeezed


def test_loading_twice_loads_once() -> None:
    load_fonts()
    before = len(QFontDatabase.families())
    styles = QFontDatabase.styles(FAMILY)
    assert load_fonts() == FAMILY
    assert len(QFontDatabase.families()) == before
    assert QFontDatabase.styles(FAMILY) == styles


def test_bold_is_a_face_of_its_own_and_not_smeared() -> None:
    load_fonts()
    assert set(QFontDatabase.styles(FAMILY)) >= {"Regular", "Bold"}
    assert QFontInfo(QFont(FAMILY)).family() == FAMILY
    assert width_of("mL", 40, bold=True) > 1.02 * width_of("mL", 40)


def test_missing_face_is_reported(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(fonts, "FAMILY", "A family that no machine has")
    monkeypatch.setattr(fonts, "_PACKAGE", "evenwater_package_that_is_not_installed")
    with pytest.raises(CardFailed) as failed:
        load_fonts()
    assert failed.value.reason.code == "card_fonts_missing"


def test_spoilt_face_is_reported(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(fonts, "FAMILY", "A family that no machine has")
    monkeypatch.setattr(QFontDatabase, "addApplicationFontFromData", lambda data: -1)
    with pytest.raises(CardFailed) as failed:
        load_fonts()
    assert failed.value.reason.code == "card_fonts_missing"


@pytest.mark.parametrize("points", [10.5, 12, 14, 18, 19, 24, 36, 44, 50])
def test_no_letter_is_smaller_than_asked_for(points: float) -> None:
    assert points <= face(points, bold=False).pixelSize() / 100 / 25.4 * 72 < points + 0.03


@settings(max_examples=60)
@given(st.text(st.characters(exclude_categories=["C"]), max_size=80), st.floats(8.0, 90.0))
def test_broken_lines_are_the_whole_text(text: str, width: float) -> None:
    assert squeezed("".join(broken(text, width, 12))) == squeezed(text)


@settings(max_examples=60)
@given(
    st.lists(st.sampled_from(["dose", "4.7\u00a0mL", "again", "sodium", "CARBonate", "a"]), min_size=1),
    st.floats(30, 90),
)
def test_lines_fit_and_numbers_keep_their_unit(parts: list[str], width: float) -> None:
    lines = broken(" ".join(parts), width, 12)
    assert all(width_of(line, 12) <= width + 0.02 for line in lines)
    assert sum(line.count("4.7\u00a0mL") for line in lines) == parts.count("4.7\u00a0mL")
