"""What a spreadsheet is taken for: said by the file, likely, or asked; every guess can be overruled."""

from __future__ import annotations

import pytest

from evenwater.engine.units import KINDS
from evenwater.screens.csv_choices import Point
from evenwater.screens.csv_guess import with_ruling
from tests.engine.asking import known
from tests.screens.csv_files import asked, figures, guessed, point, refused, sheet, shown, taken
from tests.screens.lint import faults, strings

PLAIN = ("Date;Alkalinity (dKH);Ca mg/l", "2025-11-25 08:00;8,3;420", "2025-11-26 08:30;8,15;415")
FIGURES = ["alkalinity 8,3 dKH", "calcium 420 mg/L", "alkalinity 8,15 dKH", "calcium 415 mg/L"]


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252", "latin-1"])
def test_encodings(encoding: str) -> None:
    data = sheet("Date;Alcalinité (dKH);Ca mg/l;Remarque", *(f"{line};été" for line in PLAIN[1:]), encoding=encoding)
    rows = taken(data)
    assert figures(rows) == FIGURES
    assert {row.note for row in rows} == {"été"}
    last_resort = encoding in ("cp1252", "latin-1")
    found = point(data, "encoding")
    assert (found.value, found.state) == (
        ("cp1252", "guessed") if last_resort else ("utf-16" if encoding == "utf-16" else "utf-8", "said")
    )
    assert bool(found.words) == last_resort


def test_big_endian_and_line_ends() -> None:
    text = "\n".join(PLAIN)
    assert figures(taken(b"\xfe\xff" + text.encode("utf-16-be"))) == FIGURES
    for end in ("\n", "\r", "\r\n"):
        assert figures(taken(sheet(*PLAIN, end=end))) == FIGURES
    assert figures(taken(f"{PLAIN[0]}\r{PLAIN[1]}\r\n\n{PLAIN[2]}".encode())) == FIGURES


def test_an_encoding_can_be_overruled_and_that_can_fail() -> None:
    data = sheet(*PLAIN, encoding="utf-8")
    assert point(data, "encoding", {"encoding": "cp1252"}).state == "chosen"
    assert refused(data, {"encoding": "utf-16"}).code == "csv_not_so_written"
    wrong = refused(sheet(*PLAIN[:2], "2025-11-27;8,3;été", encoding="cp1252"), {"encoding": "utf-8"})
    assert (wrong.code, wrong.line) == ("csv_not_so_written", 3)


@pytest.mark.parametrize("separator", [";", ",", "\t", "|"])
@pytest.mark.parametrize("heading", [True, False])
def test_separators(separator: str, heading: bool) -> None:
    lines = [line.replace(",", ".").replace(";", separator) for line in PLAIN]
    data = sheet(*lines[0 if heading else 1 :])
    assert point(data, "separator").value == separator
    assert point(data, "separator").state == "said"
    rulings = {} if heading else {"column 2": "alkalinity", "column 3": "calcium", "unit 2": "dKH", "unit 3": "mg/L"}
    assert figures(taken(data, rulings)) == [text.replace(",", ".") for text in FIGURES]


def test_a_note_with_the_other_separator_does_not_mislead() -> None:
    data = sheet("Date,KH (dKH),Note", '2025-11-25 08:00,8.3,"clean; new sand, 2 kg"', "2025-11-26 08:00,8.2,a;b;c;d")
    assert [row.note for row in taken(data)] == ["clean; new sand, 2 kg", "a;b;c;d"]


def test_titles_above_the_headings_are_passed_over() -> None:
    data = sheet("Log of the north frag bay;;", "sep=;", "", *PLAIN)
    assert figures(taken(data)) == FIGURES
    assert point(data, "heading").value == "3"
    assert "above" in point(data, "heading").words


def test_without_headings_the_date_is_found_and_the_rest_is_the_keepers_to_name() -> None:
    guess = guessed(sheet(*PLAIN[1:]))
    assert guess.choices.heading == 0
    assert [column.role for column in guess.choices.columns] == ["date", "", ""]
    assert guess.choices.nothing
    assert not shown(sheet(*PLAIN[1:])).ready


# What heads a column, and which parameter and unit that is; an empty unit is asked about.
HEADINGS = {
    "Alkalinity (dKH)": ("alkalinity", "dKH"), "KH": ("alkalinity", "dKH"), "dKH": ("alkalinity", "dKH"), "Alk dKH": ("alkalinity", "dKH"),
    "Karbonathärte": ("alkalinity", "dKH"), "Karbonathärte [°dH]": ("alkalinity", "dKH"), "KH-Wert": ("alkalinity", "dKH"),
    "Alcalinidad (dKH)": ("alkalinity", "dKH"), "Alcalinité": ("alkalinity", "dKH"), "Dureté carbonatée (°KH)": ("alkalinity", "dKH"),
    "Ca mg/l": ("calcium", "mg/L"), "Ca": ("calcium", ""), "Ca (ppm)": ("calcium", ""), "Calcium, mg per L": ("calcium", "mg/L"),
    "CALCIUM MG/L": ("calcium", "mg/L"), "Ca²⁺ in mg/L": ("calcium", "mg/L"), "Kalzium mg/Liter": ("calcium", "mg/L"),
    "Calcio (mg/kg)": ("calcium", "mg/kg"), "Mg [mg/l]": ("magnesium", "mg/L"), "magnesio_mg/l": ("magnesium", "mg/L"),
    "Magnésium (mg/L)": ("magnesium", "mg/L"), "Kalium mg/l": ("potassium", "mg/L"), "Potasio (mg/l)": ("potassium", "mg/L"),
    "K+ (mg/l)": ("potassium", "mg/L"), "Strontium mg/L": ("strontium", "mg/L"), "Estroncio (mg/l)": ("strontium", "mg/L"),
    "Jod mg/l": ("iodide", "mg/L"), "Yodo (mg/l)": ("iodide", "mg/L"), "Iode mg/l": ("iodide", "mg/L"),
    "NO3": ("nitrate", ""), "NO₃ (mg/l)": ("nitrate", ""), "Nitrat": ("nitrate", ""), "NO3-N (mg/l)": ("nitrate", "mg/L as N"),
    "Nitrate (mg/L as NO3)": ("nitrate", "mg/L as NO3"), "Nitrates mg/l NO3": ("nitrate", "mg/L as NO3"), "NO3 ppm": ("nitrate", ""),
    "Nitratstickstoff mg/l": ("nitrate", "mg/L as N"), "Nitrato": ("nitrate", ""), "NO3-N": ("nitrate", "mg/L as N"),
    "PO4": ("phosphate", ""), "PO₄³⁻ mg/l": ("phosphate", ""), "PO4-P (mg/l)": ("phosphate", "mg/L as P"), "Fosfato": ("phosphate", ""),
    "Phosphat (mg/l as PO4)": ("phosphate", "mg/L as PO4"), "PO4 (ppb)": ("phosphate", ""),
    "Salinity (ppt)": ("salinity", "ppt"), "Salzgehalt ‰": ("salinity", "ppt"), "Salinité (PSU)": ("salinity", "ppt"),
    "Salinidad": ("salinity", "ppt"), "Salinität": ("salinity", "ppt"),
}  # fmt: skip
LIKELY = {
    "alkalinity": ("8.3", "7.9"), "calcium": ("420", "415"), "magnesium": ("1300", "1290"), "potassium": ("400", "395"),
    "strontium": ("8", "7.5"), "iodide": ("0.06", "0.05"), "nitrate": ("5", "2.5"), "phosphate": ("0.05", "0.03"), "salinity": ("35", "34.5"),
}  # fmt: skip


@pytest.mark.parametrize("parameter", LIKELY)
def test_headings_of_the_trade(parameter: str) -> None:
    one, other = LIKELY[parameter]
    chosen = known().parameters[parameter].display_unit
    headings = {heading: unit for heading, (named, unit) in HEADINGS.items() if named == parameter}
    assert len(headings) >= 2
    for heading, unit in headings.items():
        data = sheet(f"Date;{heading}", f"2025-11-25 08:00;{one}", f"2025-11-26 08:00;{other}")
        column = guessed(data).choices.columns[1]
        assert (column.role, column.parameter, column.unit) == ("reading", parameter, unit), heading
        assert asked(data) == (set() if unit else {"unit 2"}), heading
        assert shown(data).ready == bool(unit)
        rows = taken(data, {"unit 2": chosen})
        assert figures(rows) == [f"{parameter} {value} {chosen}" for value in (one, other)]


@pytest.mark.parametrize(
    "heading",
    [
        "Ca dose mL",
        "Temperature",
        "pH",
        "Calcium reactor",
        "Mg dosed (g)",
        "Light",
        "Nitrite",
        "NO2",
        "x" * 5000,
        "( " * 90,
    ],
)
def test_other_headings_are_no_readings(heading: str) -> None:
    data = sheet(f"Date;KH (dKH);{heading}", "2025-11-25 08:00;8.3;420")
    assert guessed(data).choices.columns[2].role == ""
    assert "heading is not known" in point(data, "column 3").words
    assert figures(taken(data)) == ["alkalinity 8.3 dKH"]


@pytest.mark.parametrize(
    "heading",
    [
        "Date;Time;Kit;By;Note",
        "Datum;Uhrzeit;Test;Wer;Bemerkung",
        "Fecha;Hora;Prueba;Quién;Observaciones",
        "Jour;Heure;Kit;Qui;Remarque",
    ],
)
def test_other_columns_in_four_languages(heading: str) -> None:
    (row,) = taken(sheet(f"{heading};KH (dKH)", "25.11.2025;8:05;drop test;Ana;after feeding;8,3"))
    assert (row.kit, row.who, row.note) == ("drop test", "Ana", "after feeding")
    assert row.at.isoformat() == "2025-11-25T07:05:00+00:00"


# Values in a column "KH" without unit, what they are taken for, and why.
BARE_ALKALINITY = [
    (("7.2", "8.4", "9"), "dKH", "guessed"),
    (("2.4", "2.8", "3.1"), "meq/L", "guessed"),
    (("120", "150", "165"), "ppm as CaCO3", "guessed"),
    (("4.2", "4.6", "5.1"), "", "ask"),
    (("0.2", "0.4", "0.3"), "", "ask"),
    (("8.3", "150", "2.8"), "", "ask"),
]


@pytest.mark.parametrize(("values", "unit", "state"), BARE_ALKALINITY)
def test_a_unit_is_judged_by_what_is_likely_and_never_taken_silently(
    values: tuple[str, ...], unit: str, state: str
) -> None:
    data = sheet("Date;KH", *(f"2025-11-{day:02d} 08:00;{value}" for day, value in enumerate(values, 20)))
    found = point(data, "unit 2")
    assert (found.value, found.state) == (unit, state)
    assert found.words
    assert {option.value for option in found.options} == {u.id for u in KINDS["alkalinity"].units}


def test_a_unit_that_is_said_is_doubted_when_only_another_is_likely() -> None:
    data = sheet("Date;KH (dKH)", *(f"2025-11-{day} 08:00;2.{day}" for day in range(10, 20)))
    found = point(data, "unit 2")
    assert (found.value, found.state) == ("", "ask")
    assert "dKH" in found.words
    assert "meq per L" in found.words
    assert len(taken(data, {"unit 2": "dKH"})) == 10
    assert shown(data, {"unit 2": "dKH"}).counts.unlikely == 10


def test_a_hydrometer_without_its_temperatures_is_asked_about() -> None:
    data = sheet("Date;SG", "2025-11-25 08:00;1.0264", "2025-11-26 08:00;1.0260")
    assert asked(data) == {"unit 2"}
    assert figures(taken(data, {"unit 2": "SG 25/25 degC"}))[0] == "salinity 1.0264 SG 25/25 degC"


def test_figures_with_a_unit_of_their_own_need_none() -> None:
    data = sheet("Date;KH;NO3", "2025-11-25 08:00;8.3 dKH;5 mg/L as NO3", "2025-11-26 08:00;2.9 meq/L;1.1 mg/l as N")
    assert figures(taken(data)) == [
        "alkalinity 8.3 dKH", "nitrate 5 mg/L as NO3", "alkalinity 2.9 meq/L", "nitrate 1.1 mg/L as N",
    ]  # fmt: skip


# Figures of magnesium and alkalinity, what the decimal mark is taken for, and what 1,250 or 1.250 then is.
MARKS = [
    (("1250", "8.3"), ".", "said", "1250"),
    (("1250", "8,3"), ",", "said", "1250"),
    (("1250", "8"), ".", "said", "1250"),
    (("1,250", "8.3"), ".", "said", "1250"),
    (("1.250", "8,3"), ",", "said", "1250"),
    (("1,250", "8"), ".", "guessed", "1250"),
    (("1.250", "8"), ",", "guessed", "1250"),
    (("1,250", "8,3"), "", "ask", ""),
    (("1.250", "8.3"), "", "ask", ""),
    (("3,250", "8"), "", "ask", ""),
    (("1250,5", "8.3"), "", "ask", ""),
]


@pytest.mark.parametrize(("figures_", "mark", "state", "magnesium"), MARKS)
def test_decimal_marks(figures_: tuple[str, str], mark: str, state: str, magnesium: str) -> None:
    data = sheet("Date;Mg (mg/l);KH (dKH)", f"2025-11-25 08:00;{figures_[0]};{figures_[1]}")
    found = point(data, "decimal")
    assert (found.value, found.state) == (mark, state)
    assert found.words
    if mark:
        assert taken(data)[0].content == magnesium
    else:
        assert asked(data) == {"decimal"}
        assert not shown(data).ready


def test_the_keeper_says_what_a_mark_before_three_digits_is() -> None:
    data = sheet("Date;Sr (mg/l)", "2025-11-25 08:00;4.125")
    assert [row.content for row in taken(data, {"decimal": "."})] == ["4.125"]
    calcium = sheet("Date;Ca (mg/l)", "2025-11-25 08:00;1.125")
    assert asked(calcium) == {"decimal"}
    (as_decimal,), (grouped,) = taken(calcium, {"decimal": "."}), taken(calcium, {"decimal": ","})
    assert (as_decimal.value, grouped.value) == (1.125, 1125.0)
    assert shown(calcium, {"decimal": "both"}).counts.refused == 1


LONG = (
    "Datum;Parameter;Wert;Einheit;Test", "25.11.2025 08:00;KH;8,3;°dKH;A", "25.11.2025 08:05;Ca;420;mg/l;B",
    "25.11.2025 08:10;NO3;5;mg/l;B", "26.11.2025 08:00;pH;8,1;;C", "26.11.2025 08:00;KH;8,1;°dKH;A", "27.11.2025 08:00;KH;2,9 meq/L;;A",
)  # fmt: skip


def test_a_row_for_each_reading() -> None:
    data = sheet(*LONG)
    guess = guessed(data)
    assert guess.choices.long_form
    assert [(s.name, s.said, s.parameter, s.unit) for s in guess.choices.series] == [
        ("KH", "°dKH", "alkalinity", "dKH"), ("Ca", "mg/l", "calcium", "mg/L"), ("NO3", "mg/l", "nitrate", ""),
        ("pH", "", "", ""), ("KH", "", "alkalinity", "dKH"),
    ]  # fmt: skip
    assert asked(data) == {"unit of series 3"}
    rows = taken(data, {"unit of series 3": "mg/L as NO3"})
    assert figures(rows) == [
        "alkalinity 8,3 dKH", "calcium 420 mg/L", "nitrate 5 mg/L as NO3", "alkalinity 8,1 dKH", "alkalinity 2,9 meq/L",
    ]  # fmt: skip
    assert [row.kit for row in rows] == ["A", "B", "B", "A", "A"]
    left_out = shown(data, {"series 3": ""})
    assert left_out.ready
    assert left_out.counts.readings == 4
    assert [row.cells[0].words for row in left_out.rows][:3] == [
        "Alkalinity 8.3\u00a0dKH",
        "Calcium 420\u00a0mg per L",
        "NO3 5",
    ]
    assert "left out" in left_out.rows[3].cells[0].sentence


def test_every_guess_can_be_overruled() -> None:
    data = sheet("Date;A;B;Note", "2025-11-25 08:00;8.3;420;x")
    rulings = {"column 2": "alkalinity", "unit 2": "dKH", "column 3": "calcium", "unit 3": "mg/kg", "column 4": ""}
    rows = taken(data, rulings)
    assert figures(rows) == ["alkalinity 8.3 dKH", "calcium 420 mg/kg"]
    assert {row.note for row in rows} == {""}
    states = {p.what: p.state for p in guessed(data, rulings).points}
    assert {states[what] for what in rulings} == {"chosen"}
    moved = sheet("Date;Measured;KH (dKH)", "2025-11-25 08:00;2025-11-20 08:00;8.3")
    assert taken(moved)[0].at.day == 25
    assert taken(moved, {"column 2": "date"})[0].at.day == 20
    assert not shown(moved, {"column 1": ""}).ready


def test_a_ruling_that_fits_nothing_is_passed_over() -> None:
    data = sheet(*PLAIN)
    rulings = {
        "decimal": "x",
        "unit 2": "mg/L",
        "column 2": "rain",
        "heading": "77",
        "separator": ":",
        "encoding": "?",
        "series 1": "y",
        "no": "",
    }
    assert guessed(data, rulings) == guessed(data)


def test_a_ruling_makes_those_void_that_hang_on_it() -> None:
    rulings = {
        "encoding": "utf-8",
        "separator": ";",
        "decimal": ",",
        "column 2": "date",
        "unit 2": "dKH",
        "series 1": "calcium",
    }
    assert with_ruling(rulings, "separator", ",") == {"encoding": "utf-8", "separator": ","}
    assert with_ruling(rulings, "decimal", ".") == {**rulings, "decimal": "."}
    assert with_ruling(rulings, "column 3", "date") == {
        "encoding": "utf-8", "separator": ";", "decimal": ",", "unit 2": "dKH", "column 3": "date",
    }  # fmt: skip
    assert "unit 2" not in with_ruling(rulings, "column 2", "calcium")
    named = {"series 1": "calcium", "unit of series 1": "mg/L"}
    assert with_ruling(named, "series 1", "nitrate") == {"series 1": "nitrate"}


REFUSED = {
    b"": "csv_empty", b" \r\n\t\n": "csv_empty", b"\xef\xbb\xbf": "csv_empty", b"\x89PNG\r\n\0\0": "csv_no_text",
    "a;b".encode("utf-16-le"): "csv_no_text", b"\xff\xfe\0\0a\0\0\0": "csv_no_text", b"\xff\xfea\0\0\0": "csv_no_text",
    b"Date\n2025-11-25\n": "csv_one_column", b"\x81\x8d;1\n": "csv_not_so_written", b"Date;KH\n": "csv_no_rows",
    b'Date;KH\n2025-11-25;"8.3\n2025-11-26;8\n': "csv_unclosed", b'Date;KH\n2025-11-25;"8"3\n': "csv_quote",
    b"Date;Note\n2025-11-25;" + b"x" * 140_000: "csv_long_cell", b"Date;Note\n2025-11-25;" + b"x" * 1_000_001: "csv_long_line",
    b"Date" + b";x" * 1000: "csv_many_columns", b"Date" + b",x" * 1000: "csv_many_columns",
}  # fmt: skip


@pytest.mark.parametrize("data", REFUSED, ids=[f"{code} {at}" for at, code in enumerate(REFUSED.values())])
def test_what_is_no_sheet_is_refused_in_words(data: bytes) -> None:
    refusal = refused(data)
    assert refusal.code == REFUSED[data]
    assert not faults(refusal.words)
    assert refusal.line == (2 if refusal.code in ("csv_unclosed", "csv_quote", "csv_long_cell", "csv_long_line") else
                            1 if refusal.code in ("csv_not_so_written", "csv_many_columns") else 0)  # fmt: skip


def test_a_file_too_large_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("evenwater.screens.csv_text.MOST_BYTES", 20)
    assert refused(sheet(*PLAIN)).code == "csv_too_large"


def points() -> list[Point]:
    """Return all points of files of every kind."""
    files = [
        sheet(*PLAIN), sheet(*PLAIN[1:]), sheet(*LONG), sheet("Title;;", *PLAIN), sheet("Date;é", "2025-11-25;1", encoding="cp1252"),
        sheet("Date;KH", "03/04/2025;4.2"), sheet("Date;Mg (mg/l);KH", "2025-11-25;1,250;8,3"), sheet("Date;Mg (mg/l)", "2025-11-25;3,250"),
        sheet("Date;SG", "2025-11-25;1.026"), sheet("Date;Ca (ppm)", "2025-11-25 8 am;420", "2025-11-25 8:00;420"), sheet("x;y", "1;2", "3;4"),
        sheet("Date;KH (dKH)", "25/11/2025;2.8", "11/25/2025;2.9"), sheet("Date;Mg mg/l", "2025-11-25;1.250", "2025-11-26;1300,5"),
        sheet("Date;Mg mg/l", "2025-11-25;1250,5", "2025-11-26;1300.5"), sheet("Date;PO4 (ppb)", "2025-11-25;30"),
    ]  # fmt: skip
    return [point for data in files for point in guessed(data).points]


def test_points_are_safe_to_read_and_hold_their_value() -> None:
    found = points()
    assert {point.state for point in found} == {"said", "guessed", "ask"}
    for point_ in found:
        values = [option.value for option in point_.options]
        assert len(set(values)) == len(values)
        assert point_.state == "ask" or point_.value in values, point_
        assert point_.value == "" or point_.state != "ask"
        assert point_.words or point_.state != "ask"
        for text in strings((point_.title, point_.words, point_.options)):
            # The units of a hydrometer, and empty values, are no words.
            assert not faults(text.replace("/", " ") if text in values else text), text
        assert not point_.words or point_.words[-1] in ".?"
