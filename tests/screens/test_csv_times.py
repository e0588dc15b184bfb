"""Dates and times of a spreadsheet: said by their form, or asked; with or without an offset, a time of day, am and pm."""

from __future__ import annotations

import pytest

from tests.screens.csv_files import asked, guessed, point, sheet, shown, taken

# Dates of a column, the order, and the day of the first.
ORDERS = [
    (("2025-11-25", "2025-11-26"), "ymd", "2025-11-25"), (("2025/11/05", "2025/11/06"), "ymd", "2025-11-05"),
    (("25.11.2025", "26.11.2025"), "dmy", "2025-11-25"), (("05.11.2025", "06.11.2025"), "dmy", "2025-11-05"),
    (("25/11/2025", "03/11/2025"), "dmy", "2025-11-25"), (("11/25/2025", "11/03/2025"), "mdy", "2025-11-25"),
    (("5.11.25", "6.11.25"), "dmy", "2025-11-05"), (("11/25/25", "11/03/25"), "mdy", "2025-11-25"), (("25-11-2025", "1-2-2025"), "dmy", "2025-11-25"),
    (("03/04/2025", "05/06/2025"), "", ""), (("03/04/25", "05/06/25"), "", ""), (("3-4-2025", "5-6-2025"), "", ""),
    (("25/11/2025", "11/25/2025"), "", ""), (("2025-11-25", "03/04/2025"), "", ""),
]  # fmt: skip


@pytest.mark.parametrize(("dates", "order", "first"), ORDERS)
def test_orders_of_the_date(dates: tuple[str, str], order: str, first: str) -> None:
    data = sheet("Date;KH (dKH)", *(f"{date} 12:30;{8 + at}" for at, date in enumerate(dates)))
    assert point(data, "order").value == order
    if order:
        assert taken(data)[0].at.date().isoformat() == first
    else:
        assert asked(data) == {"order"}
        assert not shown(data).ready


def test_why_an_order_is_taken_is_said() -> None:
    said = {
        dates: point(sheet("Date;KH (dKH)", *(f"{date} 12:30;8" for date in dates)), "order").words
        for dates in (
            ("05.11.2025", "06.11.2025"),
            ("25/11/2025", "03/11/2025"),
            ("2025-11-05",),
            ("25/11/2025", "11/25/2025"),
        )
    }
    assert list(said.values()) == [
        "Dates with points begin with the day.", "Not every date would be one in another order.", "The dates begin with the year.",
        "Some dates fit only with the day first, and some only with the month first.",
    ]  # fmt: skip


def test_the_keeper_says_which_is_the_day() -> None:
    data = sheet("Date;KH (dKH)", "03/04/2025 12:30;8.3")
    assert "03/04/2025" in point(data, "order").words
    assert taken(data, {"order": "dmy"})[0].at.isoformat() == "2025-04-03T10:30:00+00:00"
    assert taken(data, {"order": "mdy"})[0].at.isoformat() == "2025-03-04T11:30:00+00:00"
    assert shown(data, {"order": "ymd"}).counts.refused == 1


@pytest.mark.parametrize(
    ("text", "instant"),
    [
        ("2025-11-25T08:00:00+00:00", "2025-11-25T08:00:00+00:00"), ("2025-11-25T08:00Z", "2025-11-25T08:00:00+00:00"),
        ("2025-11-25 08:00 -0530", "2025-11-25T13:30:00+00:00"), ("2025-11-25 08:00:07.25", "2025-11-25T07:00:07.250000+00:00"),
        ("25.11.2025, 8:05", "2025-11-25T07:05:00+00:00"), ("25.11.2025  08:05", "2025-11-25T07:05:00+00:00"),
        ("11/25/2025 8:05 PM", "2025-11-25T19:05:00+00:00"), ("11/25/2025 12:05 a.m.", "2025-11-24T23:05:00+00:00"),
        ("11/25/2025 12:05pm", "2025-11-25T11:05:00+00:00"), ("11/25/2025 8 am", "2025-11-25T07:00:00+00:00"),
    ],
)  # fmt: skip
def test_times_of_day(text: str, instant: str) -> None:
    assert [row.at.isoformat() for row in taken(sheet("Date;KH (dKH)", f"{text};8.3"))] == [instant]


def test_a_time_in_a_column_of_its_own() -> None:
    data = sheet(
        "Datum;Zeit;KH (dKH)", "25.11.2025;8:05;8,3", "26.11.2025 00:00;18:30;8,2", "27.11.2025 07:00;18:30;8,1"
    )
    assert [f"{row.at:%d %H:%M}" for row in taken(data)] == ["25 07:05", "26 17:30"]
    assert "another one" in shown(data).rows[2].sentence
    unnamed = sheet("25.11.2025;8:05;8,3", "26.11.2025;18:30;8,2")
    assert [column.role for column in guessed(unnamed).choices.columns] == ["date", "time", ""]
    as_time = sheet("Time;KH (dKH)", "2025-11-25 08:00;8.3")
    assert len(taken(as_time)) == 1


def test_am_and_pm_in_some_rows_only_is_asked_about() -> None:
    data = sheet("Date;KH (dKH)", "2025-11-25 8:00 pm;8.3", "2025-11-26 8:00;8.2", "2025-11-27 18:00;8.1")
    assert asked(data) == {"clock"}
    assert [f"{row.at:%d %H}" for row in taken(data, {"clock": "24"})] == ["25 19", "26 07", "27 17"]
    assert [f"{row.at:%d %H}" for row in taken(data, {"clock": "12"})] == ["25 19", "27 17"]


def test_dates_without_a_time_of_day_are_said_and_chosen() -> None:
    data = sheet("Date;KH (dKH)", "2025-11-25;8.3", "2025-11-26;8.2")
    found = point(data, "hour")
    assert (found.value, found.state) == ("12:00", "guessed")
    assert "no time of day" in found.words
    assert [f"{row.at:%H:%M}" for row in taken(data)] == ["11:00", "11:00"]
    assert [f"{row.at:%H:%M}" for row in taken(data, {"hour": "08:00"})] == ["07:00", "07:00"]
    some = sheet("Date;KH (dKH)", "2025-11-25 08:00;8.3", "2025-11-26;8.2")
    assert point(some, "hour").value == ""
    assert len(taken(some)) == 1
    assert len(taken(some, {"hour": "20:00"})) == 2


@pytest.mark.parametrize("text", ["2025-11-25 08:00+25:00", "2025-11-25 08:00-00:75", "2025-11-25 24:00", "2025-11-25 13:00 pm", "2025-11-25 08:00 Uhr",
                                  "2025-11-25 8", "2025-11-25T", "31.11.2025 08:00", "2025-13-01 08:00", "25.11. 08:00", "25.11.125 08:00", "20251125",
                                  "45991.33", "1969-12-31 08:00", "9999-12-31T23:59:59-12:00", "0001-01-01 00:00"])  # fmt: skip
def test_what_is_no_time_is_refused(text: str) -> None:
    found = shown(sheet("Date;KH (dKH)", f"{text};8.3", "26.11.2025 08:00;8.2"))
    assert [row.cells[0].state for row in found.rows] == ["refused", "taken"]
    assert found.rows[0].sentence == found.rows[0].cells[0].sentence != ""
