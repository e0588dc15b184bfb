"""The figures of a chart as a spreadsheet: units in the headings, points in the numbers, nothing that calculates."""

from __future__ import annotations

import csv
import io
from datetime import UTC, datetime, timedelta, timezone

import numpy as np

from evenwater.screens.chart_table import (
    ChartTable,
    Column,
    of_exchange,
    of_foods,
    of_history,
    of_together,
    of_wear,
    write,
)
from evenwater.screens.exchange_chart import CourseChart
from evenwater.screens.foods_chart import Panel
from evenwater.screens.logbook import HistoryView
from evenwater.screens.pump_drift import WearView
from evenwater.screens.together_views import Course

NOON = datetime(2026, 11, 26, 12, tzinfo=UTC).timestamp()
HOUR = 3600.0


def rows(table: ChartTable) -> list[list[str]]:
    data = write(table, timezone(timedelta(hours=1)))
    assert data.startswith(b"\xef\xbb\xbf")
    assert data.endswith(b"\r\n")
    return list(csv.reader(io.StringIO(data.decode("utf-8-sig"), newline="")))


def test_lines_of_different_places_share_rows_where_they_meet() -> None:
    times = NOON + np.array([0.0, HOUR, 2 * HOUR])
    table = ChartTable(
        "Alkalinity",
        "Date and time",
        (
            Column("plan (dKH)", times, np.array([6.8, 7.125, 1e-7])),
            Column("dose (mL)", NOON + np.array([HOUR + 0.2, 3 * HOUR]), np.array([4.8, 12345.678])),
        ),
        dated=True,
    )
    assert rows(table) == [
        ["Date and time", "plan (dKH)", "dose (mL)"],
        ["2026-11-26T13:00:00+01:00", "6.8", ""],
        ["2026-11-26T14:00:00+01:00", "7.125", "4.8"],
        ["2026-11-26T15:00:00+01:00", "0.0000001", ""],
        ["2026-11-26T16:00:00+01:00", "", "12345.7"],
    ]


def test_a_heading_that_would_calculate_is_guarded_and_no_number_stays_empty() -> None:
    column = Column('=HYPERLINK("x")', np.array([1.0, 2.0]), np.array([np.nan, 2.0]))
    assert rows(ChartTable("x", "Days", (column,), dated=False)) == [
        ["Days", '\'=HYPERLINK("x")'],
        ["1", ""],
        ["2", "2"],
    ]


def test_a_log_gives_what_is_shown_of_it() -> None:
    times = NOON + HOUR * np.arange(4.0)
    none = np.array([])
    view = HistoryView(
        times,
        np.array([8.0, 8.1, 8.2, 8.3]),
        times[:1],
        np.array([5.0]),
        none,
        (7.0, 11.0),
        "dKH",
        "Alkalinity, dKH",
        2,
    )
    found = rows(of_history(view, NOON + 0.5 * HOUR, NOON + 2.5 * HOUR))
    assert found[0] == ["Date and time", "reading (dKH)"], "nothing was dosed in this time"
    assert [line[1] for line in found[1:]] == ["8.1", "8.2"]
    assert len(rows(of_history(view, 0.0, 1.0))) == 1


def test_every_chart_names_its_units() -> None:
    two = np.array([0.0, 1.0])
    course = Course("Alkalinity, dKH, next 30 days", "dKH", NOON + two, two, two, two, two, (7.0, 11.0), True, 2, "")
    assert rows(of_together(course))[0][1:] == [
        "all together (dKH)", "low end (dKH)", "high end (dKH)", "without exchange (dKH)",
    ]  # fmt: skip
    wear = WearView(two, two, two, two, (True, False), 0, 2.0, 24.0, -0.1, 23.9, 0.2)
    assert rows(of_wear(wear, "Wear"))[0][0] == "Running hours (h)"
    assert rows(of_wear(wear, "Wear"))[-1] == ["2", "", "", "", "", "23.9"]
    exchange = CourseChart("calcium", "Calcium", "mg per L", two, two, two, two, 430.0, None, "")
    assert rows(of_exchange(exchange))[0] == [
        "Days from now", "value (mg per L)", "low end (mg per L)", "high end (mg per L)", "new water (mg per L)",
    ]  # fmt: skip
    panel = Panel("Nitrate, mg per L as NO3", (0.0, 1.0), (1.0, 2.0), (1.0, 0.5), 15.0, "")
    assert rows(of_foods((panel,)))[2] == ["1", "2", "0.5", "15"]
