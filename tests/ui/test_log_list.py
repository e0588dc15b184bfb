"""The list of the log in little room, and what its chart says of other years."""

from __future__ import annotations

from datetime import UTC, datetime

import numpy as np
import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QMouseEvent

from evenwater.screens.logbook import HistoryView, LogRow
from evenwater.ui.log_chart import LogChart
from evenwater.ui.log_list import LogList

ROWS = (
    LogRow("1", "Wed 25 Nov 2026 19:25", "Alkalinity", "6.8 dKH", "titration kit · K. L."),
    LogRow("2", "Tue 24 Nov 2026 20:00", "Note", "", "The tubing has cracked. · K. L."),
    LogRow("3", "Mon 23 Nov 2026 23:30", "Dose: Soda ash, white jug", "56.1 mL", ""),
)


@pytest.fixture
def listed(qtbot) -> LogList:
    listed = LogList()
    qtbot.addWidget(listed)
    listed.resize(900, 300)
    listed.show_rows(ROWS)
    listed.show()
    return listed


def cell(listed: LogList, row: int, column: int) -> str:
    return listed.model().data(listed.model().index(row, column))


def needed(listed: LogList, column: int) -> int:
    return max(listed.fontMetrics().horizontalAdvance(cell(listed, row, column)) for row in range(len(ROWS)))


@pytest.mark.parametrize("width", [900, 700, 560, 480, 420])
def test_when_and_how_much_are_never_cut_and_nothing_lies_outside(listed: LogList, width: int, qtbot):
    listed.resize(width, 300)
    qtbot.waitUntil(lambda: listed.width() == width)
    for column in (0, 2):
        assert listed.columnWidth(column) > needed(listed, column)
    shown = [column for column in range(4) if not listed.isColumnHidden(column)]
    assert sum(listed.columnWidth(column) for column in shown) <= listed.viewport().width()


def test_in_little_room_a_note_is_still_there(listed: LogList, qtbot):
    assert cell(listed, 1, 1) == "Note"
    listed.resize(420, 300)
    qtbot.waitUntil(lambda: listed.isColumnHidden(3))
    assert cell(listed, 1, 1) == "Note: The tubing has cracked. · K. L."
    assert cell(listed, 0, 1) == "Alkalinity"
    listed.resize(900, 300)
    qtbot.waitUntil(lambda: not listed.isColumnHidden(3))
    assert cell(listed, 1, 1) == "Note"


def test_the_tip_of_a_line_has_all_of_it(listed: LogList):
    tip = listed.model().data(listed.model().index(0, 0), Qt.ItemDataRole.ToolTipRole)
    for words in ("Wed 25 Nov 2026 19:25", "Alkalinity", "6.8 dKH", "titration kit"):
        assert words in tip


def stamp(year: int) -> float:
    return datetime(year, 11, 25, 12, 0, tzinfo=UTC).timestamp()


def test_a_reading_of_another_year_says_its_year(qtbot):
    chart = LogChart(zone=UTC)
    qtbot.addWidget(chart)
    chart.resize(800, 320)
    nothing = np.array([], dtype=np.float64)
    chart.render(
        HistoryView(
            times=np.array([stamp(2024), stamp(2026)]),
            values=np.array([7.5, 8.0]),
            doses_at=nothing,
            doses_ml=nothing,
            exchanges_at=np.array([stamp(2025)]),
            kept=(7.0, 11.0),
            unit="dKH",
            title="Alkalinity, dKH",
            decimals=2,
        )
    )
    assert "2026" not in chart.reading_words()
    assert chart.reading_words().endswith("8.00 dKH")
    there = QPointF(chart._scales()[0].x(stamp(2024)), 100.0)
    no = Qt.MouseButton.NoButton
    chart.mouseMoveEvent(QMouseEvent(QMouseEvent.Type.MouseMove, there, there, no, no, Qt.KeyboardModifier.NoModifier))
    assert "2024" in chart.reading_words()
    assert chart.reading_words().endswith("7.50 dKH")
    assert not chart.grab().isNull()
