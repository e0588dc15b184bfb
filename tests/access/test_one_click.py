"""Whatever is read by hovering, dragged or turned with the wheel has a key and a single click as well.

=============================  ==================  ==================================  =============================
What                           With the mouse      With the keys                       With one click
=============================  ==================  ==================================  =============================
End of the ramp                drag the ring       Shift and arrow, Page Up and Down   Slower, Faster
Reading the ramp               hover               Left, Right                         press on the chart
Reading the exchange           hover               Left, Right, Home, End              press on the chart
Reading all plans together     hover               Left, Right                         press on the chart
Reading the wear of a pump     hover               Left, Right; Enter shows it         press on the dot
Reading the log's chart        hover               Shift and Left, Right               press on the chart
Moving the log's chart         drag                Left, Right                         Earlier, Later
Zooming the log's chart        Ctrl and wheel      plus, minus, Home                   Month, Quarter, Year, All
Doses of the day               hover               arrows, Home, End                   press on the dose
A unit beside a number         open the list       Alt and Down (``test_keys``)        press on the list
A line of the rounds           press               Enter, Space                        press
What was cut in the log        hover (tip)         Change entry                        Change entry
=============================  ==================  ==================================  =============================

Nothing needs a double click: lists are opened by one, or by a button below them.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC
from typing import Any

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QVBoxLayout, QWidget

from evenwater.screens.exchange_chart import CourseChart
from evenwater.screens.logbook import HistoryView
from evenwater.screens.pump_drift import WearView
from evenwater.screens.timetable_rows import Lane, Mark
from evenwater.screens.together_views import Course
from evenwater.ui.announce import Announcer
from evenwater.ui.chart import RampChart
from evenwater.ui.exchange_chart import ExchangeChart
from evenwater.ui.log_chart import LogChart
from evenwater.ui.timetable_strip import TimetableStrip
from evenwater.ui.together_chart import TogetherChart
from evenwater.ui.wear_chart import WearChart
from tests.arch.tree import python_files
from tests.ui.chart_view import START, ramp

DAY = 86400.0
TIMES = np.arange(10) * DAY + 1.7e9
VALUES = np.linspace(7.0, 8.0, 10)
NONE = np.array([], dtype=np.float64)
SHIFT = Qt.KeyboardModifier.ShiftModifier


def _ramp(page: QWidget) -> RampChart:
    chart = RampChart(page, zone=UTC)
    chart.render(ramp())
    return chart


def _exchange(page: QWidget) -> ExchangeChart:
    chart = ExchangeChart(page)
    days = np.arange(10.0)
    chart.render(CourseChart("alkalinity", "Alkalinity", "dKH", days, VALUES, VALUES, VALUES, 8.0, None, "It goes up."))
    return chart


def _together(page: QWidget) -> TogetherChart:
    chart = TogetherChart(page, zone=UTC)
    chart.render(
        Course("Alkalinity", "dKH", TIMES, VALUES, VALUES, VALUES, VALUES, (7.0, 11.0), False, 2, "It goes up.")
    )
    return chart


def _log(page: QWidget) -> LogChart:
    chart = LogChart(page, UTC)
    chart.render(HistoryView(TIMES, VALUES, NONE, NONE, NONE, (7.0, 11.0), "dKH", "Alkalinity, dKH", 2))
    return chart


def _wear(page: QWidget) -> WearChart:
    chart = WearChart(page)
    hours, flows = np.array([1.0, 9.0, 17.0]), np.array([24.2, 24.0, 23.9])
    chart.render(WearView(hours, flows, flows - 0.1, flows + 0.1, (True, True, True), 1, 17.0, 24.0, why="Too few."))
    return chart


def _strip(page: QWidget) -> TimetableStrip:
    strip = TimetableStrip(page)
    marks = tuple(Mark(60 * hour, 5.0, f"{hour:02}:00, 2 mL") for hour in range(2, 23, 4))
    strip.show_day((Lane("Shelf pump", "soda ash", "alkalinity", marks),), ())
    return strip


@dataclass(frozen=True)
class Read:
    """A picture that is read: how it is made, what says what was read, and the keys that go forth and back."""

    make: Callable[[QWidget], Any]
    reading: Callable[[Any], str]
    forth: tuple[Any, ...]
    back: tuple[Any, ...]


READ = {
    "ramp": Read(_ramp, lambda chart: chart.readout, (Qt.Key.Key_Right,), (Qt.Key.Key_Left,)),
    "exchange": Read(_exchange, lambda chart: chart.reading_words(), (Qt.Key.Key_Home,), (Qt.Key.Key_End,)),
    "wear": Read(_wear, lambda chart: chart.reading_words(), (Qt.Key.Key_Right,), (Qt.Key.Key_Left,)),
    "together": Read(_together, lambda chart: chart.reading_words(), (Qt.Key.Key_Right,), (Qt.Key.Key_Left,)),
    "log": Read(_log, lambda chart: chart.reading_words(), (Qt.Key.Key_Right, SHIFT), (Qt.Key.Key_Left, SHIFT)),
    "strip": Read(_strip, lambda strip: strip.reading(), (Qt.Key.Key_Right,), (Qt.Key.Key_Left,)),
}


@pytest.fixture
def page(qtbot) -> Iterator[QWidget]:
    window = QWidget()
    qtbot.addWidget(window)
    QVBoxLayout(window)
    window.resize(900, 360)
    yield window
    window.close()


def shown(page: QWidget, picture: QWidget, qtbot) -> list[str]:
    """Show a picture, and return what is said aloud from then on."""
    page.layout().addWidget(picture)
    page.show()
    page.activateWindow()
    picture.setFocus()
    qtbot.waitUntil(picture.hasFocus)
    said: list[str] = []
    Announcer.of(page).said.connect(lambda words, _urgent: said.append(words))
    return said


@pytest.mark.parametrize("name", READ)
def test_a_picture_is_read_with_the_keys_and_said_aloud(page: QWidget, qtbot, name: str):
    read = READ[name]
    picture = read.make(page)
    said = shown(page, picture, qtbot)
    found = []
    for keys in (read.forth, read.forth, read.back, read.back):
        QTest.keyClick(picture, *keys)
        found.append(read.reading(picture))
    assert all(re.search(r"\d", words) for words in found)
    assert len(set(found)) > 1, "the keys go on"
    assert said, "what the keys come to is said"
    assert said[-1] in (found[-1], picture.accessibleDescription())


@pytest.mark.parametrize("name", READ)
def test_a_picture_is_read_with_one_press(page: QWidget, qtbot, name: str):
    read = READ[name]
    picture = read.make(page)
    shown(page, picture, qtbot)
    target = picture.picture.view.viewport() if isinstance(picture, RampChart) else picture
    found = set()
    for share in (0.25, 0.85):
        QTest.mouseClick(
            target, Qt.MouseButton.LeftButton, pos=QPoint(round(share * target.width()), target.height() // 2)
        )
        found.add(read.reading(picture))
    assert len(found) == 2


def test_the_end_of_the_ramp_is_moved_by_buttons(page: QWidget, qtbot):
    chart = _ramp(page)
    shown(page, chart, qtbot)
    moved: list[float] = []
    chart.paceCommitted.connect(moved.append)
    fastest = chart.ramp_end
    assert not chart.paces.faster.isEnabled()
    assert chart.paces.faster.accessibleDescription() == "This is the fastest pace allowed."
    QTest.mouseClick(chart.paces.slower, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: bool(moved), timeout=2000)
    assert moved[0] > fastest
    assert chart.paces.faster.isEnabled()
    QTest.mouseClick(chart.paces.faster, Qt.MouseButton.LeftButton)
    assert chart.ramp_end == fastest
    chart.set_stale(True)
    assert not chart.paces.slower.isEnabled()
    chart.render(ramp(now=START))
    assert chart.paces.isHidden(), "a plan that is followed is not changed"


def test_nothing_waits_for_a_double_click():
    asks = re.compile(
        r"mouseDoubleClickEvent|\bdoubleClicked\b|\.activated\.connect|setDragEnabled|startDrag|dropEvent"
    )
    allowed = {"choice.py"}  # a list that opens says by this signal that an entry was chosen
    files = [file for file in python_files("ui") if asks.search(file.read_text(encoding="utf-8"))]
    assert {file.name for file in files} <= allowed
