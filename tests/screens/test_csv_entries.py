"""Readings of a spreadsheet as entries of the log, and which of them the log has already."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import numpy as np
import pytest

from evenwater.engine.quantities import Typed, Water
from evenwater.screens import csv_entries
from evenwater.screens.csv_choices import ReadRow
from evenwater.screens.csv_entries import button_words, done_words, in_log, says, sequels, there_words
from evenwater.screens.logbook import FIELDS, READING
from tests.engine.asking import known
from tests.screens.csv_files import sheet, taken
from tests.screens.lint import faults

AT = datetime(2025, 11, 25, 7, 0, tzinfo=UTC)
SEA = Water()
BRACKISH = Water(20.0, 25.0)


def row(text: str, parameter: str = "alkalinity", unit: str = "dKH", value: float = 2.9, **more: object) -> ReadRow:
    return ReadRow(more.pop("at", AT), parameter, Typed(text, unit), value, **more)  # type: ignore[arg-type]


def test_what_is_noted_is_what_the_form_notes() -> None:
    noted = csv_entries.taken(row("8,3", value=2.96, kit="drop kit", who="A. B.", note="bright"), known(), SEA)
    assert (noted.kind, noted.subject, noted.at, noted.who, noted.value) == (READING, "alkalinity", AT, "A. B.", 2.96)
    assert noted.fields == {
        "parameter": Typed("alkalinity"), "value": Typed("8,3", "dKH"), "kit": Typed("drop kit"), "who": Typed("A. B."),
        "text": Typed("bright"),
    }  # fmt: skip
    assert set(noted.fields) - {"text"} <= set(FIELDS[READING])


def test_what_is_blank_is_not_noted() -> None:
    noted = csv_entries.taken(row("8.3", kit=" ", who="", note="\t"), known(), SEA)
    assert set(noted.fields) == {"parameter", "value"}


def test_figures_per_kilogram_hang_on_the_water() -> None:
    reading = row("1290", "magnesium", "mg/kg", 1290 * 1.0233)
    sea, brackish = (csv_entries.value(reading, known(), water) for water in (SEA, BRACKISH))
    # Kilograms in a litre of seawater at 25 degC, from the tables of TEOS-10: 1.0233 at 35, 1.0121 at 20.
    assert sea == pytest.approx(1290 * 1.0233, rel=2e-4)
    assert brackish == pytest.approx(1290 * 1.0121, rel=2e-4)
    plain = row("1290", "magnesium", "mg/L", 1290.0)
    assert csv_entries.value(plain, known(), BRACKISH) == 1290.0


def test_readings_of_a_file_by_parameter() -> None:
    rows = taken(sheet("Date;KH (dKH);Ca (mg/l)", "2025-11-26 08:00;8.3;420", "2025-11-25 08:00;8.1;"))
    one, other = sequels(rows, known(), SEA)
    assert (one.parameter, one.places.tolist(), other.parameter, other.places.tolist()) == (
        "alkalinity", [0, 2], "calcium", [1],
    )  # fmt: skip
    assert (one.first, one.last) == (rows[2].at, rows[0].at)
    assert one.seconds.tolist() == [rows[0].at.timestamp(), rows[2].at.timestamp()]
    assert one.values.tolist() == [rows[0].value, rows[2].value]
    assert sequels([], known(), SEA) == ()


def test_a_reading_is_there_with_the_same_instant_and_value() -> None:
    hours = [timedelta(hours=hour) for hour in range(6)]
    (sequel,) = sequels([row("8", value=2.0 + hour, at=AT + hours[hour]) for hour in range(6)], known(), SEA)
    start = AT.timestamp()
    # The log has: the first as it is; the second with another value; the third twice, the second time as it is;
    # the fourth a microsecond later; nothing at the fifth; the sixth, but for the last digit of a float.
    seconds = np.array([start, start + 3600, start + 7200, start + 7200, start + 10800.000001, start + 18000])
    values = np.array([2.0, 3.1, 5.0, 4.0, 5.0, 7.0 * (1 + 1e-15)])
    there, near = in_log(sequel, seconds, values)
    assert there.tolist() == [True, False, True, False, False, True]
    assert near.tolist() == [False, True, False, False, False, False]


def test_an_empty_log_has_nothing() -> None:
    (sequel,) = sequels([row("8")], known(), SEA)
    there, near = in_log(sequel, np.zeros(0), np.zeros(0))
    assert (there.tolist(), near.tolist()) == ([False], [False])


@pytest.mark.parametrize(
    ("typed", "same"),
    [
        (Typed("1290", "mg/kg"), True), (Typed("1290,0", "mg/kg"), True), (Typed("1290 mg/kg", "mg/L"), True),
        (Typed("1290", "mg/L"), False), (Typed("1291", "mg/kg"), False), (Typed("none", "mg/kg"), False),
    ],
)  # fmt: skip
def test_a_figure_is_known_again_whatever_it_came_to(typed: Typed, same: bool) -> None:
    reading = row("1290", "magnesium", "mg/kg", 1320.0)
    assert says(reading, [(AT, Typed("5", "mg/L"), 5.0), (AT, typed, 1305.6)], known()) is same
    assert not says(reading, [], known())


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (button_words(1204, "North frag bay"), "Import 1204 readings into North frag bay"),
        (button_words(1, "A"), "Import 1 reading into A"),
        (button_words(0, "A"), "Import into A"),
        (there_words(0, 5), ""),
        (there_words(1, 5), "1 is in the log already."),
        (there_words(12, 50), "12 are in the log already."),
        (there_words(5, 5), "Every reading is in the log already."),
        (there_words(1, 1), "The reading is in the log already."),
        (done_words(1204, 1204), "Imported 1204 readings. Undo takes them out again."),
        (done_words(1, 1), "Imported 1 reading. Undo takes it out again."),
        (done_words(8, 20), "Imported 8 readings. 12 were in the log already. Undo takes them out again."),
        (done_words(19, 20), "Imported 19 readings. 1 was in the log already. Undo takes them out again."),
        (done_words(0, 20), "Nothing was imported. Every reading is in the log already."),
    ],
)
def test_words(words: str, said: str) -> None:
    assert words == said
    assert not faults(words)


def test_a_long_name_is_cut_on_the_button() -> None:
    assert button_words(2, "x" * 200).endswith("x…")
