"""What an import would take is shown before: rows, sentences, counts; and what is taken is what was shown."""

from __future__ import annotations

import cProfile
from datetime import UTC, datetime, timedelta
from decimal import Decimal

import pytest

from evenwater.engine import fields
from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Ok, read
from evenwater.screens.csv_choices import ReadRow
from evenwater.screens.csv_preview import FAULTY_ROWS, FIRST_ROWS, Counts, preview
from evenwater.screens.csv_reading import readings
from tests.engine.asking import known
from tests.screens.csv_files import BERLIN, NOW, figures, guessed, sheet, shown, taken
from tests.screens.lint import faults, strings

HEAD = "Date;KH (dKH);Ca (mg/l);Note"


def test_rows_are_shown_as_they_will_be_taken() -> None:
    found = shown(
        sheet(
            HEAD, "25.11.2025 08:00; 8,30 ;420,0;", "", '26.11.2025 08:00;2,9 meq/L;;"one\ntwo"', "27.11.2025 09:00;;;"
        )
    )
    assert found.headings == ("Alkalinity, dKH", "Calcium, mg per L")
    assert [(row.line, row.when) for row in found.rows] == [
        (2, "Tue 25 Nov 2025 08:00"), (4, "Wed 26 Nov 2025 08:00"), (6, "Thu 27 Nov 2025 09:00"),
    ]  # fmt: skip
    assert [[(cell.words, cell.state) for cell in row.cells] for row in found.rows] == [
        [("8.3\u00a0dKH", "taken"), ("420\u00a0mg per L", "taken")], [("2.9\u00a0meq per L", "taken"), ("", "empty")],
        [("", "empty"), ("", "empty")],
    ]  # fmt: skip
    assert found.counts == Counts(rows=3, readings=3, empty=3)
    assert (found.ready, found.messages, found.points) == (True, ("3 readings in 3 rows.",), ())


def test_counts_and_sentences() -> None:
    data = sheet(
        HEAD, "2025-11-20 08:00;8.3;420;", "2025-11-21 08:00;8.2;;", "2025-11-21 08:00;8.20;;again", "2025-11-22 08:00;none;421;",
        "2025-11-23 08:00;2.1;-5;", "soon;8.1;422;", "2027-01-01 08:00;8.0;;",
    )  # fmt: skip
    found = shown(data)
    assert found.counts == Counts(rows=7, readings=5, unlikely=1, refused=5, duplicates=1, empty=3)
    assert found.ready
    assert found.messages == (
        "5 readings in 7 rows.", "5 cells are not taken.", "1 reading stands in the file twice, and is taken once.",
        "1 reading is not likely, and taken as it stands.",
    )  # fmt: skip
    said = {row.line: [cell.sentence for cell in row.cells] for row in found.rows}
    assert said[2] == ["", ""]
    assert said[4] == ["The same reading stands in line 3.", ""]
    assert said[5] == ["“none” is not a number. Write it like 6.8\u00a0dKH.", ""]
    assert "not a likely reading of alkalinity" in said[6][0]
    assert "outside what can be entered" in said[6][1]
    assert said[7] == ["“soon” is not a date. Write it like 2026-11-25 08:00."] * 2
    assert said[8] == ["Fri 1 Jan 2027 08:00 is still to come. Correct the date.", ""]
    assert [row.sentence[:6] for row in found.rows if row.sentence] == ["“soon”", "Fri 1 "]
    assert [row.faulty for row in found.rows] == [False, False, True, True, True, True, True]
    assert figures(taken(data)) == [
        "alkalinity 8.3 dKH", "calcium 420 mg/L", "alkalinity 8.2 dKH", "calcium 421 mg/L", "alkalinity 2.1 dKH",
    ]  # fmt: skip


def test_the_first_rows_and_the_faulty_ones_are_shown() -> None:
    start = datetime(2020, 1, 1, 8, 0)  # noqa: DTZ001  (a clock on a wall)
    lines = [f"{start + timedelta(days=at):%Y-%m-%d %H:%M};{'x' if at % 3 == 0 else 8};;" for at in range(900)]
    found = shown(sheet(HEAD, *lines))
    faulty = [row for row in found.rows if row.faulty]
    assert [row.line for row in found.rows[:FIRST_ROWS]] == list(range(2, 2 + FIRST_ROWS))
    assert len(faulty) == FAULTY_ROWS
    assert len(found.rows) == FAULTY_ROWS + sum(at % 3 != 0 for at in range(FIRST_ROWS))
    assert found.counts == Counts(rows=900, readings=600, refused=300, empty=900)
    assert found.messages[-1] == "Of 300 rows with a fault the first 200 are shown."


# A cell of alkalinity, and what the sentence beside it must say.
CELLS = {
    "8.3 ppm": "as what", "8.3 foo": "“foo” is not a unit", "1.2.3": "more than one", "8.": "ends with", "+8.3": "plus", "<8.3": "not a number",
    "8 3": "between its digits", "1e3": "not a unit", "NaN": "not a number", "09. Okt": "ends with", "٨": "not a number", "5000": "outside",
    "9" * 60: "more digits", "n/a" * 5000: "not a number", "=8.3": "not a number", "8,3": "another decimal mark",
}  # fmt: skip


@pytest.mark.parametrize("text", CELLS, ids=range(len(CELLS)))
def test_a_cell_is_refused_as_if_it_had_been_typed(text: str) -> None:
    data = sheet("Date;KH (dKH)", f"2025-11-25 08:00;{text}", "2025-11-26 08:00;8.3", "2025-11-27 08:00;8.2")
    found = shown(data, {"decimal": "."})
    assert found.counts == Counts(rows=3, readings=2, refused=1)
    (cell,) = found.rows[0].cells
    assert cell.state == "refused"
    assert CELLS[text].replace("as what", "as what it counts") in cell.sentence
    assert len(cell.sentence) < 300
    assert cell.words.startswith(text[:20])


def test_a_row_longer_than_its_headings_is_refused_whole() -> None:
    # Decimal commas that are not quoted, in a file whose cells are parted by commas.
    found = shown(
        sheet(
            "Date,KH (dKH),Ca (mg/l)", "2025-11-25 08:00,8,3,420", "2025-11-26 08:00,8.2,415", "2025-11-27 08:00,8,3,"
        )
    )
    assert found.counts == Counts(rows=3, readings=2, refused=4)
    assert "quotation marks" in found.rows[0].sentence
    short = taken(sheet(HEAD, "2025-11-25 08:00;8.3"))
    assert figures(short) == ["alkalinity 8.3 dKH"]


def test_the_hour_that_comes_twice_is_asked_about_and_the_one_that_never_was_is_refused() -> None:
    data = sheet(
        "Date;KH (dKH)",
        "2025-10-26 02:30;8.3",
        "2025-03-30 02:30;8.2",
        "2025-10-26 02:30+01:00;8.1",
        "2025-10-26 03:30;8",
    )
    found = shown(data)
    assert not found.ready
    assert found.messages[0] == "Choose which is meant of the hour that came twice."
    assert [point.what for point in found.points] == ["twice"]
    assert "came twice" in found.rows[0].sentence
    assert "never was" in found.rows[1].sentence
    for choice, hour in (("first", 0), ("second", 1)):
        chosen = shown(data, {"twice": choice})
        assert chosen.ready
        assert chosen.points[0].value == choice
        assert taken(data, {"twice": choice})[0].at == datetime(2025, 10, 26, hour, 30, tzinfo=UTC)
    assert len(taken(data, {"twice": "none"})) == 2
    # A row without a reading asks nothing.
    assert shown(sheet("Date;KH (dKH);Note", "2025-10-26 02:30;;x", "2025-10-26 03:30;8;")).ready


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (sheet("Date;KH (dKH)", "2025-11-25;x"), "Not one reading can be taken."),
        (sheet("Date;pH", "2025-11-25;8.1"), "Choose which column holds the date, and which hold readings."),
        (sheet("Date;NO3", "2025-11-25;8.1"), "Choose what is still asked. Nothing is imported before."),
    ],
)
def test_what_hinders_an_import_is_said_first(data: bytes, words: str) -> None:
    found = shown(data)
    assert not found.ready
    assert found.messages[0] == words


def test_nothing_is_read_while_something_is_open_or_cannot_be_read() -> None:
    data = sheet("Date;NO3", "2025-11-25;8.1")
    with pytest.raises(ValueError, match="still to be chosen"):
        readings(data, guessed(data).choices, known(), BERLIN, NOW)
    good = sheet("Date;KH (dKH)", *(f"2025-11-{day:02d} 08:00;8" for day in range(1, 25)))
    choices = guessed(good).choices
    broken = good + b'2025-11-25 08:00;"8.3\n'
    with pytest.raises(ValueError, match="quotation mark"):
        readings(broken, choices, known(), BERLIN, NOW)
    found = preview(broken, choices, known(), BERLIN, NOW)
    assert (found.ready, found.rows, found.messages) == (
        False,
        (),
        ("Line 26: A quotation mark is opened here and never closed.",),
    )


def test_what_the_progress_raises_ends_the_reading() -> None:
    class StopError(Exception):
        pass

    def stop(read: int) -> None:
        seen.append(read)
        if read >= 4000:
            raise StopError

    seen: list[int] = []
    lines = [
        f"2025-{1 + at // 28 % 10:02d}-{1 + at % 28:02d} {12 + at // 280 % 10:02d}:{at // 2800:02d};8"
        for at in range(9000)
    ]
    data = sheet("Date;KH (dKH)", *lines)
    choices = guessed(data).choices
    with pytest.raises(StopError):
        list(readings(data, choices, known(), BERLIN, NOW, stop))
    assert seen == [2000, 4000]
    found: list[int] = []
    assert preview(data, choices, known(), BERLIN, NOW, found.append).counts.readings == 9000
    assert found == [2000, 4000, 6000, 8000]


def test_what_is_taken_is_read_again_as_the_same() -> None:
    texts = ["8,3", "8,30", "0,5", ",5", "12", "4,125", "4.125", "9,9990", "150 ppm as CaCO3", "2,8 meq/L"]
    lines = [f"{at + 1:02d}.11.2025 08:00;{text}" for at, text in enumerate(texts)]
    data = sheet("Date;Alkalinity (dKH)", *lines) + sheet(
        *(f"{at + 1:02d}.10.2025 08:00;{text}" for at, text in enumerate(texts))
    )
    rows = taken(data, {"decimal": "both"})
    strontium = taken(
        sheet("Date;Calcium (mg/l)", "25.11.2025 08:00;4,125", "24.11.2025 08:00;1,250"), {"decimal": ","}
    )
    assert [row.typed.text for row in strontium] == ["4.1250", "1.25"]
    for row in [*rows, *strontium]:
        again = read(row.typed.text, fields.concentration("", known().parameters[row.parameter]), row.typed.unit)
        assert isinstance(again, Ok)
        assert again.entered.number == Decimal(row.content)
        assert again.entered.unit == row.typed.unit


def test_the_same_content_has_the_same_key() -> None:
    (one,) = taken(sheet("Date;KH (dKH)", "25.11.2025 08:00;8,30"))
    (other,) = taken(sheet("When|Parameter|Value", "2025-11-25T07:00:00Z|Alkalinity|8.3 dKH"))
    assert one.key == other.key == ("alkalinity", datetime(2025, 11, 25, 7, 0, tzinfo=UTC), "8.3", "dKH")
    (third,) = taken(sheet("Date;KH (dKH)", "25.11.2025 08:00;8,31"))
    assert third.key != one.key
    texts = {
        "0": "0",
        "0.0": "0",
        "00.50": "0.5",
        ",5": "0.5",
        "420.": "420",
        "x": "x",
        "1e3": "1e3",
        "Infinity": "Infinity",
        "1200": "1200",
    }
    assert {text: ReadRow(one.at, "calcium", Typed(text), 1.0).content for text in texts} == texts


def test_forgetting_figures_changes_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    data = sheet("Date;KH (dKH)", *(f"2025-11-{day:02d} 08:00;{7 + day % 3}" for day in range(1, 25)))
    rows = taken(data)
    monkeypatch.setattr("evenwater.screens.csv_cells._REMEMBERED", 1)
    assert taken(data) == rows


def test_every_sentence_of_a_preview_is_safe_to_read() -> None:
    lines = [f"2025-11-{1 + at:02d} 08:00;{text[:300]}" for at, text in enumerate(CELLS)]
    lines += [
        "2027-01-01;8",
        "1066-10-14;8",
        "31.02.2025;8",
        "03/04/2025;8",
        "x;8",
        ";8",
        "2025-11-25 25:00;8",
        "2025-11-25;8;9",
        "2025-11-30 08:00;3",
    ]
    lines += ["2025-10-26 02:30;8", "2025-03-30 02:30;8", "2025-11-25 8:00 pm;8"]
    for rulings in ({"decimal": ".", "clock": "24"}, {"decimal": ".", "clock": "12"}, {"decimal": ",", "order": "dmy"}):
        found = shown(sheet("Date;KH (dKH)", *lines), rulings)
        assert found.counts.refused >= len(lines) - 8
        for text in strings(
            (
                found.messages,
                found.headings,
                tuple(row.sentence for row in found.rows),
                tuple(row.when for row in found.rows if not row.sentence),
            )
        ):
            assert not faults(text), text
        for row in found.rows:
            for cell in row.cells:
                assert not faults(cell.sentence), cell
                assert cell.state in ("refused", "open") or not faults(cell.words)
                assert not cell.sentence or cell.sentence[-1] in ".?"


def test_the_work_for_a_row_is_little() -> None:
    # Counted in calls, so that no clock is needed: at 100 a row, 100,000 rows take two or three seconds.
    start = datetime(2006, 1, 1)  # noqa: DTZ001  (a clock on a wall)
    lines = [
        f"{start + timedelta(minutes=at * 240):%d.%m.%Y %H:%M};{7 + at % 200 / 100:.2f};{380 + at % 90};{1250 + at % 90}"
        for at in range(4000)
    ]
    data = sheet("Date;KH (dKH);Ca (mg/l);Mg (mg/l)", *lines)
    choices = guessed(data, {"twice": "none"}).choices
    profile = cProfile.Profile()
    count = sum(1 for _ in profile.runcall(lambda: list(readings(data, choices, known(), BERLIN, NOW))))
    assert count > 3 * len(lines) - 30
    assert sum(entry.callcount for entry in profile.getstats()) < 100 * len(lines)


def test_nothing_is_shown_as_a_number_or_a_day_before_it_is_chosen_which_it_is() -> None:
    data = sheet("Date;KH (dKH);NO3 (mg/l)", "03/04/2025 08:00;8,1;4", "05/04/2025 08:00;8.2;")
    found = shown(data)
    assert [row.when for row in found.rows] == ["“03/04/2025 08:00”", "“05/04/2025 08:00”"]
    assert [[(cell.words, cell.state) for cell in row.cells] for row in found.rows] == [
        [("8,1", "open"), ("4", "open")], [("8.2", "open"), ("", "empty")],
    ]  # fmt: skip
    assert found.rows[0].cells[0].sentence == "The order of the date is still to be chosen."
    assert not any(row.faulty for row in found.rows)
    assert (found.messages, found.taken) == (("Choose what is still asked. Nothing is imported before.",), ())
    found = shown(data, {"order": "dmy"})
    assert found.rows[0].when == "Thu 3 Apr 2025 08:00"
    assert found.rows[0].cells[0].sentence == "The decimal mark is still to be chosen."
    found = shown(data, {"order": "dmy", "decimal": "both"})
    assert [(cell.words, cell.state) for cell in found.rows[0].cells] == [("8.1\u00a0dKH", "taken"), ("4", "open")]
    assert found.rows[0].cells[1].sentence == "The unit is still to be chosen."


def test_what_was_shown_is_what_is_taken() -> None:
    data = sheet(HEAD, "2025-11-20 08:00;8.3;420;", "2025-11-20 08:00;8.30;x;again", "2025-11-21 08:00;2.1;;")
    found = shown(data)
    assert list(found.taken) == list(readings(data, guessed(data).choices, known(), BERLIN, NOW))
    assert figures(list(found.taken)) == ["alkalinity 8.3 dKH", "calcium 420 mg/L", "alkalinity 2.1 dKH"]
