"""What the Jugs sheet looks like: nothing cut off in a narrow window or in large letters, targets large enough, names."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

import pytest
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit, QPushButton
from pytestqt.exceptions import TimeoutError as NotInTimeError

from evenwater.screens.local_zone import present
from evenwater.ui.main_window import MainWindow
from evenwater.ui.theme import apply_theme
from tests.ui.clipping import clipped
from tests.ui.jugs_making import CALCIUM, NITRATE, jugs_of, looked, put
from tests.ui.stocks_making import click
from tests.ui.window_making import opened, reckoned, sheet_of

# None of it is about the log.
pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture(
    params=[(11.0, 1000, 700), (16.5, 1366, 768), (11.0, 1366, 768)], ids=["narrow", "large letters", "usual"]
)
def window(request: pytest.FixtureRequest, qapp: QApplication, qtbot) -> Iterator[MainWindow]:
    points, width, height = request.param
    font = qapp.font()
    font.setPointSizeF(points)
    qapp.setFont(font)
    made = opened(None, qtbot, demo=True)
    made.resize(width, height)
    reckoned(sheet_of(made), qtbot)
    yield made
    made.close()
    font.setPointSizeF(11.0)
    qapp.setFont(font)
    apply_theme(qapp, font.family(), base_points=11.0)


def _cut_off(sheet, qtbot) -> list[str]:
    """Return what is still cut off when the layouts have had time to settle."""
    try:
        qtbot.waitUntil(lambda: not clipped(sheet), timeout=3000)
    except NotInTimeError:
        return clipped(sheet)
    return []


def test_no_word_is_cut_off(window: MainWindow, qtbot):
    sheet = jugs_of(window, qtbot, NITRATE)
    assert _cut_off(sheet, qtbot) == []
    click(sheet.page.form.refill)
    assert _cut_off(sheet, qtbot) == []
    sheet = jugs_of(window, qtbot, CALCIUM)
    put(sheet, "level", "150")
    click(sheet.page.form.note)
    looked(sheet, qtbot)
    assert _cut_off(sheet, qtbot) == []
    click(sheet.turn)
    QTest.keyClicks(sheet.away.until.line, (present() + timedelta(days=30)).date().isoformat())
    looked(sheet, qtbot)
    assert _cut_off(sheet, qtbot) == []


def test_what_is_pressed_is_large_enough_and_has_a_name(window: MainWindow, qtbot):
    sheet = jugs_of(window, qtbot, NITRATE)
    for kind in (QPushButton, QComboBox, QLineEdit):
        for widget in sheet.findChildren(kind):
            if widget.isVisibleTo(sheet):
                assert widget.accessibleName() or getattr(widget, "text", str)(), widget
                if isinstance(widget, QPushButton):
                    assert widget.height() >= 32, widget.text()
                    assert not widget.autoDefault()
