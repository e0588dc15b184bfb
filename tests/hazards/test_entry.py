"""H4, H5, H30 and H31 at the reader: what is typed is read as it stands, asked about, or refused.

Common practice, no source.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from evenwater.engine import fields
from evenwater.engine.reader import Ask, Empty, Field, Ok, Wrong, read
from tests.engine.asking import ask, known, worked

UP_TO_50 = Field("pump.flow", "flow", "mL/min", 0.0, 50.0)
DOSE = Field("pump.step", "dose", "mL", 0.0, 99.99)


def _number(text: str, field: Field, beside: str = "mL") -> Decimal:
    result = read(text, field, beside)
    assert isinstance(result, Ok), f"{text!r}: {result}"
    assert result.entered.text == text
    return result.entered.number


@pytest.mark.parametrize(
    ("text", "meant"),
    [("0,25", "0.25"), ("1,5", "1.5"), ("12.5", "12.5"), (".5", "0.5"), (",5", "0.5"), ("12.3", "12.3"), ("12,3", "12.3"),
     ("0.250", "0.25"), ("0,250", "0.25")],
)  # fmt: skip
def test_H4_decimal_slips_of_a_stock_number_box_do_not_happen(text: str, meant: str) -> None:
    # A stock number box reads 0,25 as 25, 1,5 as 15, 12.5 as 125 and .5 as 5, depending on the locale.
    assert _number(text, DOSE) == Decimal(meant)


@pytest.mark.parametrize("text", ["1,250", "1.250", "12,500", "49.999"])
def test_H4_one_mark_before_three_digits_is_a_question(text: str) -> None:
    result = read(f"{text} mg/L", fields.concentration("x", known().parameters["magnesium"]))
    assert isinstance(result, Ask)
    readings = [entered.number for entered in result.readings]
    thousands = Decimal(text.replace(",", "").replace(".", ""))
    assert thousands in readings
    assert set(readings) <= {thousands, thousands / 1000}


@pytest.mark.parametrize("text", ["1,000", "1.000", "1,200", "1.440"])
def test_H4_a_count_with_a_mark_is_a_question_too(text: str) -> None:
    result = read(text, fields.DOSES_PER_DAY)
    assert isinstance(result, Ask)
    assert Decimal(text.replace(",", "").replace(".", "")) in [entered.number for entered in result.readings]
    assert all(entered.number == entered.number.to_integral_value() for entered in result.readings)


@pytest.mark.parametrize(
    "text", ["1 250 L", "1\u00a0250 L", "1\u202f250 L", "1'250 L", "1\u2019250 L", "1_250 L", "1,250.5 L", "1.250,5 L"]
)
def test_H4_grouped_digits_are_refused_not_joined_or_cut(text: str) -> None:
    assert isinstance(read(text, fields.NET_VOLUME), Wrong)


@pytest.mark.parametrize("text", ["1 250 L", "1\u00a0250 L", "1\u202f250 L", "1\u2009250", "1_250 L", "12 50"])
def test_H4_grouped_digits_are_told_apart_from_a_wrong_unit(text: str) -> None:
    result = read(text, fields.NET_VOLUME, "L")
    assert isinstance(result, Wrong)
    assert result.reason.code == "grouped_digits"


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("5 ML", DOSE),
        ("5 Ml", DOSE),
        ("5 MG", fields.DISSOLVED),
        ("5 Mg", fields.DISSOLVED),
        ("420 MG/L", fields.concentration("x", known().parameters["calcium"])),
        ("2.5 MEQ/L", fields.concentration("x", known().parameters["alkalinity"])),
    ],
)
def test_H4_a_capital_M_is_never_taken_for_milli(text: str, field: Field) -> None:
    # Mega is a thousand million times milli; whoever types capitals is asked to write the unit.
    assert isinstance(read(text, field), Wrong)
    lowered = text.replace("M", "m").replace("G", "g").replace("EQ", "eq")
    assert isinstance(read(lowered, field), Ok)


def test_H4_a_question_of_the_reader_stops_the_plan() -> None:
    assert ask(worked(system__net_volume="1,340 L")) == ("two_readings",)


@pytest.mark.parametrize("text", ["120", "120.5", "1200", "50.0001", "-1"])
def test_H5_beyond_the_range_is_an_error_with_the_text_kept(text: str) -> None:
    # A stock number box up to 50 swallows the third key of 120 and keeps 12.
    result = read(text, UP_TO_50, "mL/min")
    assert isinstance(result, Wrong)
    assert result.reason.code == "out_of_range"
    assert result.reason.params["number"] == float(text)
    assert (result.reason.params["low"], result.reason.params["high"]) == (0.0, 50.0)


@pytest.mark.parametrize(
    ("text", "meant"), [("0.25", "0.25"), ("0.123456789", "0.123456789"), ("49.999999", "49.999999"), ("250", None)]
)
def test_H5_no_digit_is_rounded_away_and_nothing_is_clamped(text: str, meant: str | None) -> None:
    result = read(text, UP_TO_50, "mL/min")
    if meant is None:
        assert isinstance(result, Wrong)
    else:
        assert isinstance(result, Ok)
        assert result.entered.number == Decimal(meant)


@pytest.mark.parametrize("text", ["75 gal", "75 x", "75 mL mL", "7 5", "75 L", "75mLs", "mL 75"])
def test_H5_letters_are_not_dropped(text: str) -> None:
    assert isinstance(read(text, DOSE, "mL"), Wrong)


@pytest.mark.parametrize("text", ["", " ", "\t", "\u00a0", "\u202f "])
def test_H5_an_emptied_field_is_empty_and_not_its_old_value(text: str) -> None:
    assert isinstance(read(text, DOSE, "mL"), Empty)


PYTHON_TAKES = [
    "nan",
    "inf",
    "-inf",
    "NaN",
    "Infinity",
    "1_000",
    "1e3",
    "1E-2",
    "\u0661\u0662",
    "\u0967\u0968",
    "\uff11\uff12",
    "+5",
]


@pytest.mark.parametrize("text", PYTHON_TAKES)
def test_H30_what_python_takes_for_a_number_is_refused(text: str) -> None:
    # The hazard is real: Python itself reads it.
    assert isinstance(float(text), float)
    for field, beside in ((DOSE, "mL"), (fields.NET_VOLUME, "L"), (fields.PH, ""), (fields.DOSES_PER_DAY, "")):
        assert isinstance(read(text, field, beside), Wrong)
        assert isinstance(read(f"{text} {beside}".strip(), field), Wrong)


@pytest.mark.parametrize("text", ["1" * 41, "0." + "0" * 40 + "1", "9" * 400, "." + "1" * 41])
def test_H30_more_digits_than_can_be_kept_are_refused(text: str) -> None:
    result = read(f"{text} L", fields.NET_VOLUME)
    assert isinstance(result, Wrong)
    assert result.reason.code == "number_too_long"


def test_H30_fifteen_digits_are_kept_to_the_last() -> None:
    assert _number("123.456789012345", Field("x", "dose", "mL", 0.0, 1000.0)) == Decimal("123.456789012345")


@pytest.mark.parametrize(
    ("text", "repaired"),
    [("1,5", 15.0), ("", 0.0), ("1.2.3", 1.23), ("12a", 12.0), ("a12", 12.0), ("1-2", 12.0), ("5%", 5.0), ("5..", 5.0)],
)
def test_H31_a_guard_that_strips_characters_does_not_exist(text: str, repaired: float) -> None:
    # Keeping only digits and the first point turns 1,5 into 15 and nothing into 0.
    result = read(text, DOSE, "mL")
    if isinstance(result, Ok):
        assert float(result.entered.number) != repaired
        assert result.entered.number == Decimal("1.5")
    else:
        assert isinstance(result, Wrong | Empty)


def test_H31_what_cannot_be_read_is_quoted_back_untouched() -> None:
    for text in ("  1.2.3 mL ", "zw\u00f6lf", "5,,5", "\u0665"):
        result = read(text, DOSE, "mL")
        assert isinstance(result, Wrong)
        assert result.reason.params.get("text", text) == text
