"""H4, H5, H8, H17 and H30 in a spreadsheet that is read, and formulas in one that is written.

Common practice, no source: nothing is taken for something else, and what is not taken is said. That a cell that begins with
an equals, plus, minus or at sign, a tab or a line end is calculated is known as formula injection.
"""

from __future__ import annotations

import csv
import io
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine import fields
from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Ok, read
from evenwater.screens.csv_text import guarded, unguarded
from evenwater.screens.csv_writing import Columns, row_of, write_csv
from tests.engine.asking import known
from tests.property.typed_strings import STYLES, strings
from tests.screens.csv_files import asked, sheet, shown, taken

AT = datetime(2025, 11, 25, 7, 0, tzinfo=UTC)
CALCULATED = ("=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20")
FORMULAS = [
    "=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "=cmd|' /C calc'!A0", '=HYPERLINK("x","y")', "\uff1d1+1", " =1+1", "\u00a0=1",
    "a;=1+1", "a,=1+1", "a\t=1+1", "a|=1+1", "a\n=1+1", "a\r\n=1", 'a;"=1"', "'=1", "''=1", "'", "it's", "a;'=1", "a; '=1", "-", "--", "=", "",
]  # fmt: skip


def begin_as_formulas(data: bytes) -> list[str]:
    """Return the cells that a spreadsheet would calculate, whichever separator it takes the file to have.

    Spaces, tabs and line ends before a formula may be lost on the way.
    """
    text = data.decode("utf-8-sig")
    return [
        cell
        for separator in ",;\t|"
        for row in csv.reader(io.StringIO(text, newline=""), delimiter=separator)
        for cell in row
        if cell.lstrip().startswith(CALCULATED)
    ]


def test_the_check_for_formulas_sees_them() -> None:
    assert begin_as_formulas(b"a,=1\r\n") == ["=1"]
    assert begin_as_formulas(b'a,"b; =1"\r\n') == [' =1"']
    assert begin_as_formulas(b'a,"\t\r=1"\r\n')[0] == "\t\r=1"


@pytest.mark.parametrize("text", FORMULAS)
@pytest.mark.parametrize("wide", [False, True])
def test_nothing_that_is_exported_is_calculated_by_a_spreadsheet(text: str, wide: bool) -> None:
    row = row_of(AT, "alkalinity", Typed("8.3", "dKH"), known(), None, text, text, text)
    data = write_csv([row], Columns(wide=wide))
    assert begin_as_formulas(data) == []
    (again,) = taken(data)
    assert (again.kit, again.who, again.note) == (text, text, text)
    assert (
        begin_as_formulas(write_csv([row_of(AT, "alkalinity", Typed(text, text), known())], Columns(wide=wide))) == []
    )


_SIGNS = st.sampled_from(list("=+-@\t\r\n;,|\"' a1\u00a0\uff1d\u0633\U0001f420"))


@settings(max_examples=300)
@given(st.text(_SIGNS, max_size=12) | st.text(max_size=20))
def test_every_text_is_guarded_and_comes_back_as_it_was(text: str) -> None:
    assert unguarded(guarded(text)) == text
    if "\0" not in text and not any("\ud800" <= c <= "\udfff" for c in text):
        row = row_of(AT, "calcium", Typed("420", "mg/L"), known(), note=text)
        assert begin_as_formulas(write_csv([row])) == []


@pytest.mark.parametrize("style", [style for style in STYLES if style.plain], ids=lambda style: style.name)
def test_H4_a_figure_in_a_sheet_is_what_was_meant_or_is_not_taken(style: object) -> None:
    names = {f"change.{name}": name for name in known().parameters}
    meant = [typed for typed in strings(style, 160) if typed.field.path in names and typed.beside]
    assert len(meant) > 15
    for typed in meant:
        quoted = '"' + typed.text.replace('"', '""') + '"'
        data = sheet("Date;Parameter;Value;Unit", f"2025-11-25 08:00;{names[typed.field.path]};{quoted};{typed.beside}")
        for decimal in (".", ",", "both"):
            rulings = {"decimal": decimal, "unit of series 1": typed.beside}
            found = shown(data, rulings)
            if not found.ready:
                continue
            (row,) = taken(data, rulings)
            grouped = decimal not in ("both", style.decimal)
            assert (Decimal(row.content) == typed.number and row.typed.unit == typed.unit) or grouped, (typed, row)
            again = read(row.typed.text, fields.concentration("", known().parameters[row.parameter]), row.typed.unit)
            assert isinstance(again, Ok)
            assert again.entered.number in (typed.number, typed.number * 1000, typed.number / 1000)


@pytest.mark.parametrize("text", ["1,250", "1.250"])
def test_H4_a_mark_before_three_digits_that_nothing_settles_stops_the_import(text: str) -> None:
    data = sheet("Date;Ca (mg/l)", f"2025-11-25 08:00;{text}")
    assert asked(data) == {"decimal"}
    assert not shown(data).ready


@pytest.mark.parametrize(
    "text", ["1 250", "1'250", "1,250.5", "1.250,5", "1_250", "1\u202f250", "09. Okt", "9. Okt.", "1,2,3", "45 991"]
)
def test_H5_nothing_is_dropped_clamped_or_repaired(text: str) -> None:
    data = sheet("Date;Mg (mg/l)", f'2025-11-25 08:00;"{text}"', "2025-11-26 08:00;1300")
    for decimal in (".", ",", "both"):
        found = shown(data, {"decimal": decimal})
        assert (found.counts.readings, found.counts.refused) == (1, 1)
        assert found.rows[0].cells[0].sentence


def test_H5_a_figure_beyond_what_a_field_admits_is_refused_and_not_cut() -> None:
    found = shown(sheet("Date;KH (dKH)", "2025-11-25 08:00;301", "2025-11-26 08:00;299", "2025-11-27 08:00;8"))
    assert [row.cells[0].state for row in found.rows] == ["refused", "unlikely", "taken"]
    assert "0 to 300" in found.rows[0].cells[0].sentence


@pytest.mark.parametrize("text", ["nan", "inf", "-inf", "1e3", "0x10", "٣", "３", "½", "1/2", "8..3", "1e999999999"])
def test_H30_odd_digits_and_no_numbers_are_refused(text: str) -> None:
    assert shown(sheet("Date;KH (dKH)", f"2025-11-25 08:00;{text}")).counts.refused == 1
    assert shown(sheet("Date;KH (dKH)", f"{text};8.3"), {"column 1": "date", "order": "dmy"}).counts.refused == 1


def test_H8_the_future_is_refused_to_the_minute() -> None:
    # It is 09:00; a clock may run five minutes fast.
    data = sheet(
        "Date;KH (dKH)",
        "2026-11-25 09:05;8.3",
        "2026-11-25 09:06;8.2",
        "2026-11-25T08:06:00Z;8.1",
        "25.11.2062 08:00;8",
    )
    assert [row.cells[0].state for row in shown(data).rows] == ["taken", "refused", "refused", "refused"]


ZONES = (
    "Europe/Berlin",
    "America/New_York",
    "Australia/Lord_Howe",
    "America/Santiago",
    "Africa/Casablanca",
    "Pacific/Apia",
)


@pytest.mark.parametrize("zone", ZONES)
def test_H17_every_quarter_of_an_hour_of_a_year_is_one_instant_or_is_asked_about(zone: str) -> None:
    here = ZoneInfo(zone)
    start = datetime(2025, 1, 1)  # noqa: DTZ001  (a clock on a wall)
    walls = [start + timedelta(hours=at) for at in range(365 * 24)]
    changes = [
        wall for wall in walls if wall.replace(tzinfo=here).utcoffset() != (wall + timedelta(hours=25)).replace(tzinfo=here).utcoffset()
    ]  # fmt: skip
    near = sorted({wall + timedelta(minutes=15 * at) for wall in changes[::2] for at in range(-8, 120)}) or walls[:24]
    lines = [f"{wall:%Y-%m-%d %H:%M};{1 + at / 10000:.4f}" for at, wall in enumerate(near)]
    data = sheet("Date;Sr (mg/l)", *lines)
    for twice in ("first", "second", "none"):
        taken_at = {row.content: row.at for row in taken(data, {"twice": twice, "decimal": "."}, here)}
        for at, wall in enumerate(near):
            content = f"{1 + at / 10000:.4f}".rstrip("0").rstrip(".")
            first, second = (wall.replace(tzinfo=here, fold=fold) for fold in (0, 1))
            real = [
                moment
                for moment in (first, second)
                if moment.astimezone(UTC).astimezone(here).replace(tzinfo=None) == wall
            ]
            instants = {moment.astimezone(UTC) for moment in real}
            if len(instants) == 1:
                assert taken_at[content] in instants
            elif not instants or twice == "none":
                assert content not in taken_at
            else:
                assert taken_at[content] == (min if twice == "first" else max)(instants)
