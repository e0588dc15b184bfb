"""What the Pumps sheet looks like: nothing cut off in a narrow window or in large letters, and a chart that is painted."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication
from pytestqt.exceptions import TimeoutError as NotInTimeError

from evenwater.ui.main_window import MainWindow
from evenwater.ui.theme import apply_theme, tokens_of
from evenwater.ui.wear_chart import WearChart
from tests.ui.clipping import clipped
from tests.ui.pumps_making import EXCHANGE, RACK, SECOND, SHELF, add_card, settled, show_pump
from tests.ui.stocks_making import click
from tests.ui.window_making import choose, opened, reckoned, sheet_of, type_into

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


def laid_out(window: MainWindow, qtbot) -> list[str]:
    """Return what is still cut off when the layouts have had time to settle."""
    try:
        qtbot.waitUntil(lambda: not clipped(window), timeout=3000)
    except NotInTimeError:
        return clipped(window)
    return []


def colours(chart: WearChart) -> set[str]:
    """Return the colours of a painting of the chart."""
    image = chart.grab().toImage()
    return {
        image.pixelColor(x, y).name().upper() for x in range(0, image.width(), 2) for y in range(image.height())
    }  # fmt: skip


def test_nothing_is_cut_off_and_the_line_is_painted(window: MainWindow, qtbot):
    add_card(window, "ASH7")
    for pump in (SHELF, SECOND, RACK, EXCHANGE):
        sheet = show_pump(window, pump, qtbot)
        assert laid_out(window, qtbot) == [], pump
    blue = QColor(tokens_of(sheet.palette()).blue).name().upper()
    assert blue in colours(sheet.chart), "the line, and what is expected today"
    sheet = show_pump(window, SHELF, qtbot)
    for step in sheet.form.steps:
        step.open(True)
    click(sheet.answer.how)
    assert laid_out(window, qtbot) == [], "everything is open"
    type_into(sheet, "pump.outlet_height", "-1")
    type_into(sheet, "calibration.run_2_reads", "25")
    assert sheet.answer.view.state == "stop"
    assert laid_out(window, qtbot) == [], "a calibration to repeat"
    for number in (1, 2, 3):
        type_into(sheet, f"calibration.run_{number}_reads", "21")
    settled(sheet, qtbot)
    assert laid_out(window, qtbot) == [], "red, with a card that would be out of date"
    choose(sheet, "calibration.method", "A scale")
    type_into(sheet, "calibration.run_1_reads", "thirty")
    assert laid_out(window, qtbot) == [], "a refusal"
