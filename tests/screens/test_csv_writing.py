"""Readings written as CSV: what the bytes are, and that they can be read again."""

from __future__ import annotations

import codecs
import csv
import io
import math
from datetime import UTC, datetime, timedelta, timezone

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens.csv_choices import ReadRow
from evenwater.screens.csv_writing import Columns, row_of, write_csv
from tests.engine.asking import known
from tests.screens.csv_files import BERLIN, asked, figures, sheet, shown, taken

AT = datetime(2025, 11, 25, 7, 0, tzinfo=UTC)


def row(text: str, parameter: str = "alkalinity", unit: str = "dKH", at: datetime = AT, **beside: str) -> ReadRow:
    return row_of(at, parameter, Typed(text, unit), known(), None, **beside)


def cells(data: bytes) -> list[list[str]]:
    return list(csv.reader(io.StringIO(data.decode("utf-8-sig"), newline=""), strict=True))


def test_the_bytes_are_as_the_standard_has_them() -> None:
    data = write_csv(
        [row("8.3", note='says "ok", twice'), row("420", "calcium", "mg/L", who="Ana")], Columns(zone=BERLIN)
    )
    assert data == codecs.BOM_UTF8 + (
        b"Date and time (ISO 8601),Parameter,Value,Unit,Kit,Who,Note\r\n"
        b'2025-11-25T08:00:00+01:00,alkalinity,8.3,dKH,,,"says ""ok"", twice"\r\n'
        b"2025-11-25T08:00:00+01:00,calcium,420,mg/L,,Ana,\r\n"
    )


def test_a_column_for_each_parameter_and_unit() -> None:
    rows = [
        row("8.3"), row("420", "calcium", "mg/L"), row("8.2", kit="A"), row("2.9", unit="meq/L"), row("8.1"), row("7.9", at=AT + timedelta(days=1)),
    ]  # fmt: skip
    data = write_csv(rows, Columns(wide=True, who=False, note=False))
    later = "2025-11-26T07:00:00+00:00"
    assert cells(data) == [
        ["Date and time (ISO 8601)", "Alkalinity (dKH)", "Calcium (mg/L)", "Alkalinity (meq/L)", "Kit"],
        [AT.isoformat(), "8.3", "420", "2.9", ""], [AT.isoformat(), "8.2", "", "", "A"], [AT.isoformat(), "8.1", "", "", ""],
        [later, "7.9", "", "", ""],
    ]  # fmt: skip
    assert sorted(r.key for r in taken(data)) == sorted(r.key for r in rows)


@pytest.mark.parametrize(
    ("text", "unit", "figure", "kept"),
    [
        ("8,3", "dKH", "8.3", "dKH"), ("8.30", "dKH", "8.30", "dKH"), (" 2,9 meq/l", "dKH", "2.9", "meq/L"), (",5", "dKH", ".5", "dKH"),
        ("8.3", "", "8.3", "dKH"), ("none", "dKH", "none", "dKH"), ("", "", "", ""), ("=1+1", "dKH", "'=1+1", "dKH"),
    ],
)  # fmt: skip
def test_a_figure_is_written_as_typed_with_a_point_and_its_unit_beside_it(
    text: str, unit: str, figure: str, kept: str
) -> None:
    assert cells(write_csv([row(text, unit=unit)]))[1][1:4] == ["alkalinity", figure, kept]


def test_the_value_goes_with_the_figure() -> None:
    assert row("2.9 meq/L").value == 2.9
    assert row("8.3").value == pytest.approx(2.9602, abs=1e-4)
    assert math.isnan(row("none").value)
    assert math.isnan(row_of(AT, "rain", Typed("8"), known()).value)
    assert row("8.3", at=AT.astimezone(BERLIN)).at.tzinfo == UTC


def test_marks_before_three_digits_stay_what_they_were() -> None:
    rows = [row("1,250", "strontium", "mg/L"), row("4.125", "alkalinity", "dKH"), row("1250", "magnesium", "mg/L", AT)]
    assert [r.content for r in taken(write_csv(rows))] == ["1.25", "4.125", "1250"]
    # Saved again with decimal commas it is no longer the product's own.
    again = write_csv([row("1250.5", "calcium", "mg/L")]).replace(b"1250.5", b'"1,250"')
    assert asked(again) == {"decimal"}


@pytest.mark.parametrize(("value", "figure"), [(1.25, "1.25"), (1250.0, "1250"), (None, "1,250"), (7.0, "1,250")])
def test_a_figure_of_two_readings_is_settled_by_what_it_was_taken_for(value: float | None, figure: str) -> None:
    found = row_of(AT, "calcium", Typed("1,250", "mg/L"), known(), value)
    assert cells(write_csv([found]))[1][2] == figure
    assert math.isnan(found.value) == (figure == "1,250")
    # Where nothing settles it, it is asked about again, and not taken for the decimal that others in the file are.
    if figure == "1,250":
        assert asked(write_csv([found])) == {"decimal"}


def test_the_files_of_the_product_leave_nothing_to_be_asked() -> None:
    # 3 dKH would be taken for meq/L in another file, and nothing in it says as what nitrate counts.
    rows = [row("3", at=AT + timedelta(hours=at)) for at in range(5)]
    for wide in (False, True):
        assert figures(taken(write_csv(rows, Columns(wide=wide)))) == ["alkalinity 3 dKH"] * 5
    foreign = sheet("Date;Alkalinity (dKH)", *(f"2025-11-25 {8 + at:02d}:00;3" for at in range(5)))
    assert asked(foreign) == {"unit 2"}


def test_other_separators_and_decimal_commas() -> None:
    # As a spreadsheet in a country of decimal commas saves it.
    data = sheet(
        "Date and time (ISO 8601);Parameter;Value;Unit;Kit;Who;Note", '2025-11-25T08:00:00+01:00;alkalinity;8,3;dKH;;Ana;"a;b"',
        '2025-11-25T08:00:00+01:00;magnesium;1312,5;mg/L;;;"says ""ok"""', "2025-11-26T08:00:00+01:00;nitrate;0,25;mg/L as N;;;",
        encoding="utf-8-sig",
    )  # fmt: skip
    rows = taken(data)
    assert figures(rows) == ["alkalinity 8,3 dKH", "magnesium 1312,5 mg/L", "nitrate 0,25 mg/L as N"]
    assert [r.note for r in rows] == ["a;b", 'says "ok"', ""]
    assert rows[0].key == row("8.3").key
    wide = sheet(
        "Date and time (ISO 8601)\tAlkalinity (dKH)\tSalinity (SG 25/25 degC)", "2025-11-25T08:00:00+01:00\t8,3\t1,0264",
        "2025-11-26T08:00:00+01:00\t\t1,026", encoding="utf-16",
    )  # fmt: skip
    assert figures(taken(wide)) == [
        "alkalinity 8,3 dKH",
        "salinity 1,0264 SG 25/25 degC",
        "salinity 1,026 SG 25/25 degC",
    ]


def test_instants_are_exact_in_any_zone() -> None:
    odd = timezone(timedelta(hours=-11, minutes=-29, seconds=-17))
    at = datetime(2025, 10, 26, 0, 30, 1, 234567, tzinfo=UTC)
    for zone in (UTC, BERLIN, odd):
        for moment in (at, at + timedelta(hours=1)):
            (again,) = taken(write_csv([row("8.3", at=moment)], Columns(zone=zone)))
            assert again.at == moment


def test_no_row_and_signs_that_no_file_can_hold() -> None:
    assert write_csv([]).count(b"\r\n") == 1
    (again,) = taken(write_csv([row("8.3", note="a\0b\ud800c")]))
    assert again.note == "a\ufffdb\ufffdc"


def test_what_cannot_be_read_is_written_and_refused_in_words() -> None:
    found = shown(write_csv([row("8.3"), row("none")]))
    assert found.counts.readings == found.counts.refused == 1
    assert "not a number" in found.rows[1].cells[0].sentence
