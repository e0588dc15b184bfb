"""The rows of limits: words beside colours, numbers under each other."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QColor

from evenwater.screens.views import Bar
from evenwater.ui.limit_bars import OVER, SETS_THE_PACE, LimitBars, in_words
from evenwater.ui.theme import LIGHT, palette_for

BARS = (
    Bar("rise", "Daily rise", "1.0 of 1.0 dKH", 1.0, binds=True),
    Bar("dose", "Single dose", "0.08 of 0.35 dKH", 0.23),
    Bar("jug", "Jug", "184 of 1000 mL", 0.184),
)


@pytest.fixture
def bars(qtbot) -> LimitBars:
    widget = LimitBars()
    qtbot.addWidget(widget)
    widget.setPalette(palette_for(LIGHT))
    widget.set_bars(BARS)
    widget.resize(widget.sizeHint())
    widget.show()
    return widget


def colours(widget: LimitBars, row: int) -> dict[str, int]:
    """Return how many pixels of a row have which colour."""
    image = widget.grab().toImage()
    height = widget.row_height()
    found: dict[str, int] = {}
    for y in range(row * height, (row + 1) * height):
        for x in range(image.width()):
            name = image.pixelColor(x, y).name()
            found[name] = found.get(name, 0) + 1
    return found


def test_the_limit_that_sets_the_pace_is_blue_and_says_so(bars: LimitBars) -> None:
    assert colours(bars, 0)[LIGHT.blue.lower()] > 9 * 60, "a whole bar"
    assert LIGHT.blue.lower() not in colours(bars, 1)
    assert in_words(BARS[0]) == f"Daily rise 1.0 of 1.0 dKH, {SETS_THE_PACE}"
    assert "Single dose 0.08 of 0.35 dKH" in bars.accessibleDescription()


def test_a_broken_limit_has_a_word_and_the_stop_colour(bars: LimitBars) -> None:
    bars.set_bars((Bar("rise", "Daily rise", "2.3 of 1.4 dKH", 1.6, over=True),))
    assert colours(bars, 0)[LIGHT.stop.lower()] > 9 * 60
    assert OVER in bars.accessibleDescription()


def test_a_bar_is_as_long_as_its_share(bars: LimitBars) -> None:
    def filled(share: float) -> int:
        bars.set_bars((Bar("a", "Jug", "1 of 2 mL", share, binds=True),))
        image = bars.grab().toImage()
        y = bars.row_height() // 2
        return sum(image.pixelColor(x, y) == QColor(LIGHT.blue) for x in range(image.width()))

    empty = filled(0.0)
    assert filled(0.5) - empty == pytest.approx((filled(1.0) - empty) / 2, abs=2)
    assert filled(7.0) == filled(1.0), "never beyond its frame"


def test_text_is_shown_as_it_is(bars: LimitBars) -> None:
    bars.set_bars((Bar("a", "Jug", "not known", 0.0),))
    assert "Jug not known" in bars.accessibleDescription()
    assert bars.minimumSizeHint().width() >= bars.fontMetrics().horizontalAdvance(
        "Jug"
    ) + bars.fontMetrics().horizontalAdvance("not known")


def test_rows_grow_with_the_font(bars: LimitBars) -> None:
    before = bars.sizeHint()
    font = bars.font()
    font.setPointSizeF(font.pointSizeF() * 1.5)
    bars.setFont(font)
    assert bars.sizeHint().height() > 1.3 * before.height()
    assert bars.sizeHint().width() > 1.2 * before.width()


def test_greyed_bars_have_no_blue_left(bars: LimitBars) -> None:
    bars.setEnabled(False)
    assert LIGHT.blue.lower() not in colours(bars, 0)
