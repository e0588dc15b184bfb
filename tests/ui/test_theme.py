"""The look: contrast in every theme, sizes a wet finger hits, everything growing with the base font."""

from __future__ import annotations

import itertools
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QLineEdit,
    QPushButton,
    QStyle,
    QStyleOptionComboBox,
    QVBoxLayout,
    QWidget,
)

from evenwater.card.fonts import load_fonts
from evenwater.ui.choice import Combo
from evenwater.ui.theme import (
    LIGHT,
    THEMES,
    Tokens,
    apply_theme,
    chosen_ground,
    contrast,
    palette_for,
    pixels,
    set_role,
    stylesheet,
    tokens_of,
)

EVERY = pytest.mark.parametrize("tokens", THEMES, ids=lambda t: t.name)
# What is written on what: words on paper, leaf and a hovered or chosen line; a sign needs less than words, so `stop` is not on a wash.
WORDS = [
    *itertools.product(("ink", "muted", "blue", "stop"), ("paper", "leaf")),
    *itertools.product(("ink", "muted", "blue"), ("wash",)),
]
# Lines, borders, bars, signs and the ring of the focus on what they stand on.
LINES = [
    *itertools.product(("rule", "blue", "stop", "ink", "muted"), ("paper", "leaf")),
    *itertools.product(("blue", "stop", "ink"), ("wash",)),
]


@pytest.fixture
def dressed(qapp: QApplication) -> Iterator[QApplication]:
    font, palette, sheet, style = qapp.font(), qapp.palette(), qapp.styleSheet(), qapp.style().objectName()
    yield qapp
    qapp.setStyleSheet(sheet)
    qapp.setStyle(style)
    qapp.setPalette(palette)
    qapp.setFont(font)


@EVERY
@pytest.mark.parametrize(("text", "ground"), WORDS)
def test_L28_text_has_contrast(tokens: Tokens, text: str, ground: str) -> None:
    assert contrast(getattr(tokens, text), getattr(tokens, ground)) >= (7.0 if "contrast" in tokens.name else 4.5)


@EVERY
def test_L28_lines_and_borders_have_contrast(tokens: Tokens) -> None:
    least = 4.5 if "contrast" in tokens.name else 3.0
    for line, ground in LINES:
        assert contrast(getattr(tokens, line), getattr(tokens, ground)) >= least, (line, ground)
    assert contrast(tokens.on_blue, tokens.blue) >= 4.5
    assert contrast(tokens.on_blue, tokens.blue) >= 3.0, "the light ring inside the focused blue button"


def test_contrast_of_black_and_white_is_twenty_one() -> None:
    # WCAG 2.2: the largest ratio there is.
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)
    assert contrast("#767676", "#FFFFFF") == pytest.approx(4.54, abs=0.005)


@EVERY
def test_a_chosen_line_stands_out_from_those_beside_it(tokens: Tokens) -> None:
    assert contrast(chosen_ground(tokens), tokens.paper) > 1.02
    assert contrast(tokens.ink, chosen_ground(tokens)) >= 4.5


@EVERY
def test_the_palette_carries_the_tokens(tokens: Tokens) -> None:
    carried = tokens_of(palette_for(tokens))
    for name in Tokens.__dataclass_fields__:
        if name != "name":
            assert getattr(carried, name) == getattr(tokens, name).lower()


@pytest.mark.parametrize("points", [11.0, 16.5])
def test_sizes_are_large_enough_and_grow_with_the_font(dressed: QApplication, qtbot, points: float) -> None:
    apply_theme(dressed, load_fonts(), LIGHT, points)
    page = QWidget()
    qtbot.addWidget(page)
    column = QVBoxLayout(page)
    ordinary, main, quiet, line = QPushButton("Undo"), QPushButton("Save card as PDF"), QPushButton("More"), QLineEdit()
    combo = Combo(page)
    set_role(main, "main")
    set_role(quiet, "quiet")
    for widget in (ordinary, main, quiet, line, combo):
        column.addWidget(widget)
    page.show()
    scale = points / 11.0
    assert ordinary.height() >= 32 * scale - 1
    assert quiet.height() >= 32 * scale - 1
    assert main.height() >= 48 * scale - 1
    assert line.height() >= 36 * scale - 1
    assert combo.height() >= 36 * scale - 1


def test_sizes_at_the_usual_font_are_exact(dressed: QApplication, qtbot) -> None:
    apply_theme(dressed, load_fonts())
    page = QWidget()
    qtbot.addWidget(page)
    column = QVBoxLayout(page)
    line, main = QLineEdit(), QPushButton("Save card as PDF")
    set_role(main, "main")
    column.addWidget(line)
    column.addWidget(main)
    page.show()
    assert (line.sizeHint().height(), main.sizeHint().height()) == (36, 48)


def test_a_focused_button_shows_a_blue_ring_of_two_pixels(dressed: QApplication, qtbot) -> None:
    apply_theme(dressed, load_fonts())
    page = QWidget()
    qtbot.addWidget(page)
    column = QVBoxLayout(page)
    first, second = QPushButton("Undo", page), QPushButton("Redo", page)
    column.addWidget(first)
    column.addWidget(second)
    page.show()
    page.activateWindow()
    first.setFocus()
    qtbot.waitUntil(first.hasFocus)
    middle = first.height() // 2
    ring = [first.grab().toImage().pixelColor(x, middle) for x in (0, 1)]
    assert ring == [QColor(LIGHT.blue)] * 2
    assert second.grab().toImage().pixelColor(1, middle) == QColor(LIGHT.leaf)


def test_the_arrow_of_a_list_is_drawn_in_ink_without_a_box(dressed: QApplication, qtbot) -> None:
    apply_theme(dressed, load_fonts())
    page = QWidget()
    qtbot.addWidget(page)
    combo = Combo(page)
    combo.set_options((("a", "Alkalinity"),))
    combo.resize(200, 36)
    page.show()
    image: QImage = combo.grab().toImage()
    option = QStyleOptionComboBox()
    combo.initStyleOption(option)
    arrow = (
        combo.style()
        .subControlRect(QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxArrow, combo)
        .adjusted(0, 4, -4, -4)
    )
    dark = [
        QPoint(x, y)
        for x in range(arrow.left(), arrow.right())
        for y in range(arrow.top(), arrow.bottom())
        if image.pixelColor(x, y).lightness() < 100
    ]
    assert dark, "there is an arrow"
    assert max(p.x() for p in dark) - min(p.x() for p in dark) <= 10
    assert max(p.y() for p in dark) - min(p.y() for p in dark) <= 7, "no line of a button beside it"


def test_titles_and_figures_are_in_points_of_the_base_font() -> None:
    assert "font-size: 13.0pt" in stylesheet(LIGHT, 11.0)
    assert "font-size: 19.5pt" in stylesheet(LIGHT, 16.5)


def test_no_caption_is_smaller_than_ten_points(dressed: QApplication, qtbot) -> None:
    apply_theme(dressed, load_fonts())
    label = QLabel("usually kept: 7 to 11 dKH")
    qtbot.addWidget(label)
    set_role(label, "caption")
    label.ensurePolished()
    assert label.font().pointSizeF() >= 10.0
    assert pixels(label.font(), 36) == 36
