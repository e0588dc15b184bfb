"""The import of a spreadsheet in real windows: what is asked, what is shown, what is taken, and what undo does."""

from __future__ import annotations

import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton

from evenwater.engine.quantities import Typed
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.import_page import ImportPage
from tests.ui.import_making import CLEAR, NAME, UNCLEAR, Desk, choose_by_key, desk, rule
from tests.ui.stocks_making import click, press, tab_to


@pytest.fixture
def at(qtbot, tmp_path: Path) -> Iterator[Desk]:
    yield from desk(qtbot, tmp_path)


def shown(page: ImportPage, row: int, column: int) -> str:
    return str(page.table.lines.index(row, column).data()).replace("\u00a0", " ")


def read_aloud(page: ImportPage, row: int, column: int) -> str:
    index = page.table.lines.index(row, column)
    return str(index.data(Qt.ItemDataRole.AccessibleTextRole)).replace("\u00a0", " ")


def test_a_clear_file_is_imported_as_one_step(at: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    file = at.file(*CLEAR)
    monkeypatch.setattr(Dialogs, "open_csv", lambda self, then: then(file))
    click(at.sheet.transfer.reading)
    page = at.sheet.transfer.page
    assert page is not None
    at.looked(page)
    assert page.file.text() == "readings.csv"
    assert page.hindrance.isHidden()
    assert page.counts.text() == "5 readings in 3 rows."
    assert page.importing.text() == "&Import 5 readings into Reef && <b>bold</b>"
    assert at.readings() == []
    click(page.importing)
    assert at.typed("alkalinity") == ["8.3 dKH", "8.2 dKH", "8.05 dKH"]
    assert at.typed("calcium") == ["420 mg/L", "418 mg/L"]
    first = at.readings("alkalinity")[0]
    assert (first.who, first.value) == ("A. B.", pytest.approx(8.3 / 2.8039, rel=1e-4))
    assert {name: typed.text for name, typed in first.fields.items()} == {
        "parameter": "alkalinity", "value": "8.3", "kit": "drop kit", "who": "A. B.", "text": "bright",
    }  # fmt: skip
    said = "Imported 5 readings. Undo takes them out again."
    assert (page.counts.text(), at.sheet.header.told.text()) == (said, said)
    assert not page.faulty.isEnabled(), "no row of it is faulty"
    assert at.sheet.list.lines.rowCount() == 5
    click(at.sheet.header.undo)
    assert at.readings() == []
    assert page.importing.text().startswith("&Import 5 readings")
    click(at.sheet.header.redo)
    assert len(at.readings()) == 5


def test_what_can_be_read_in_two_ways_is_asked_first_and_nothing_is_imported_before(at: Desk) -> None:
    page = at.opened(*UNCLEAR)
    asked = page.points.asked()
    assert [row.what for row in asked] == ["decimal", "order", "unit 3"]
    tops = {what: row.mapTo(page.points, row.rect().topLeft()).y() for what, row in page.points.rows.items()}
    assert max(tops[row.what] for row in asked) < min(
        y for what, y in tops.items() if page.points.rows[what] not in asked
    )
    for row in asked:
        # A word and a sign say it, and not colour alone; nothing stands in the list as if it had been chosen.
        assert row.said.label.text().startswith("To be chosen. ")
        assert row.said.sign.isVisible()
        assert row.choice.current() == ""
        assert "To be chosen." in row.choice.combo.accessibleDescription()
    assert "03/04/2025" in page.points.rows["order"].said.label.text()
    assert page.hindrance.label.text() == "Choose what is still asked. Nothing is imported before."
    assert page.hindrance.sign.isVisible()
    # Nothing is shown as a number, nor as a day, as long as it could be another one.
    assert [shown(page, 0, column) for column in range(5)] == ["2", "“03/04/2025 08:10”", "? 8", "? 4", "? 8,1"]
    assert read_aloud(page, 0, 2) == "? 8 The order of the date is still to be chosen."
    for what, value in (("decimal", "both"), ("order", "dmy"), ("unit 3", "mg/L as NO3")):
        assert not page.importing.isEnabled()
        page._import()
        assert at.readings() == []
        rule(page, what, value)
        at.looked(page)
    # What was answered stays where it stood.
    assert [row.what for row in page.points.rows.values() if row.state == "chosen"] == ["decimal", "order", "unit 3"]
    assert page.points._titles[0].isVisible()
    assert page.points.rows["order"].said.label.text().startswith("Chosen by you.")
    assert page.hindrance.isHidden()
    click(page.importing)
    assert at.typed("strontium") == ["8,1 mg/L", "8,25 mg/L"]
    assert [f"{e.at:%d.%m.}" for e in at.readings("nitrate")] == ["03.04.", "04.04."]


def test_everything_is_done_with_the_keys(at: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    file = at.file(*UNCLEAR)
    monkeypatch.setattr(Dialogs, "open_csv", lambda self, then: then(file))
    at.sheet.form.focus_first()
    tab_to(at.sheet.transfer.reading)
    press(Qt.Key.Key_Space)
    page = at.sheet.transfer.page
    assert page is not None
    at.looked(page)
    assert page.isActiveWindow()
    combo = page.points.rows["decimal"].choice.combo
    assert QApplication.focusWidget() is combo, "what must be chosen has the cursor"
    for what, words in (
        ("decimal", "Either, as typed by hand"),
        ("order", "Day, month, year"),
        ("unit 3", "mg per L as NO3"),
    ):
        tab_to(page.points.rows[what].choice.combo)
        choose_by_key(page.points.rows[what].choice.combo, words)
        at.looked(page)
        assert QApplication.focusWidget() is page.points.rows[what].choice.combo
    tab_to(page.table)
    press(Qt.Key.Key_Down)
    assert page.status.text().startswith("Line ")
    tab_to(page.importing)
    press(Qt.Key.Key_Space)
    assert len(at.readings()) == 6
    press(Qt.Key.Key_Escape)
    assert not page.isVisible()


def test_what_is_in_the_log_is_counted_and_left_out(at: Desk) -> None:
    form = at.sheet.form
    form._said |= {"value": Typed("8,30", "dKH"), "at": Typed("2025-11-20T08:00:00+00:00")}
    form.wanted.emit()
    assert len(at.readings()) == 1
    lines = [line.replace(" 08:00,", "T08:00:00+00:00,") for line in CLEAR]
    page = at.opened(*lines)
    assert page.counts.text() == "5 readings in 3 rows. 1 is in the log already."
    click(page.importing)
    assert page.counts.text() == "Imported 4 readings. 1 was in the log already. Undo takes them out again."
    assert len(at.readings()) == 5
    assert at.typed("alkalinity")[0] == "8,30 dKH", "what was noted by hand stays as it was typed"
    # The same file once more, and the same readings in other words.
    page = at.opened(*lines)
    assert page.counts.text() == "5 readings in 3 rows. Every reading is in the log already."
    assert not page.importing.isEnabled()
    page = at.opened("Date;KH (dKH)", "21.11.2025 08:00Z;8,20")
    assert "in the log already" in page.counts.text()
    assert not page.importing.isEnabled()


def test_an_imported_reading_that_was_corrected_since_does_not_come_again(at: Desk) -> None:
    page = at.opened(*CLEAR)
    click(page.importing)
    entry = at.readings("calcium")[0]
    better = type(entry)(**{**vars(entry), "fields": {**entry.fields, "value": Typed("421", "mg/L")}, "value": 421.0})
    assert at.document.log.change_entry(better)
    page = at.opened(*CLEAR)
    click(page.importing)
    assert page.counts.text() == "Nothing was imported. Every reading is in the log already."
    assert sorted(at.typed("calcium")) == ["418 mg/L", "421 mg/L"]


def test_faulty_rows_are_shown_with_words_a_sign_and_their_sentence(at: Desk) -> None:
    page = at.opened(
        "Date;KH (dKH);Ca (mg/L)",
        "2025-11-20 08:00;8.3;420",
        "2025-11-21 08:00;<b>8</b>;-5",
        "2025-11-20 08:00;8.30;",
        "2025-11-22 08:00;2.1;421",
        "soon;8.1;422",
    )
    assert page.importing.text().startswith("&Import 4 readings")
    cells = [[shown(page, row, column) for column in (1, 2, 3)] for row in range(5)]
    assert cells[0] == ["Thu 20 Nov 2025 08:00", "8.3 dKH", "420 mg per L"]
    assert cells[1][1:] == ["▲ Not taken: <b>8</b>", "▲ Not taken: -5"]
    assert cells[2][1:] == ["There twice: 8.3 dKH", ""]
    assert cells[3][1:] == ["▲ Not likely: 2.1 dKH", "421 mg per L"]
    assert cells[4] == ["▲ Not taken: soon", "▲ Not taken: 8.1", "▲ Not taken: 422"]
    assert page.status.text().startswith("Line 3: “<b>8</b>” is not a number."), (
        "the first of them is explained at once"
    )
    assert page.table.rowAt(0) == 0
    page.table.setCurrentIndex(page.table.lines.index(2, 2))
    assert page.status.text() == "Line 4: The same reading stands in line 2."
    page.table.setCurrentIndex(page.table.lines.index(4, 1))
    assert page.status.text() == "Line 6: “soon” is not a date. Write it like 2026-11-25 08:00."
    page.table.setCurrentIndex(page.table.lines.index(0, 2))
    assert page.status.text() == "Line 2: Taken as it is shown."
    assert "outside what can be entered" in read_aloud(page, 1, 3)
    # The last column says all that is said about a row, each sentence once.
    assert shown(page, 4, 4) == "“soon” is not a date. Write it like 2026-11-25 08:00."
    click_box(page)
    assert [shown(page, row, 0) for row in range(page.table.lines.rowCount())] == ["3", "4", "5", "6"]
    click_box(page)
    assert page.table.lines.rowCount() == 5


def click_box(page: ImportPage) -> None:
    page.faulty.setFocus()
    QTest.keyClick(page.faulty, Qt.Key.Key_Space)


UNREADABLE = (
    (b"", "The file is empty."),
    (b"\0\1\2\3" * 50, "This is no text file. Save the sheet as CSV, in UTF-8."),
    (b"just words\r\nand more\r\n", "No columns were found."),
    (b"Date;KH (dKH)\r\n", "There is nothing below the headings."),
    (b'Date;KH (dKH)\r\n2025-11-20 08:00;"8.3\r\n', "Line 2: A quotation mark is opened here and never closed."),
    (None, "The file cannot be opened."),
)


def test_a_file_that_cannot_be_read_is_refused_with_a_sentence(at: Desk) -> None:
    for data, said in UNREADABLE:
        page = at.begin(at.folder / "gone.csv" if data is None else at.file(data=data))
        assert page.isVisible()
        assert page.hindrance.label.text().startswith(said)
        assert page.hindrance.isVisible()
        assert not page.importing.isEnabled()
        assert not page.table.isVisible()
        # Another file can be chosen at once.
        page.begin(at.system, at.file(*CLEAR))
        at.looked(page)
        assert page.hindrance.isHidden()
        assert page.importing.isEnabled()


def test_without_a_date_the_columns_are_asked_first(at: Desk) -> None:
    page = at.opened("One;KH (dKH)", "x;8.1", "y;8.2")
    assert page.hindrance.label.text() == "Choose which column holds the date, and which hold readings."
    assert not page.importing.isEnabled()
    first, guessed = page.points.rows["column 1"], page.points.rows["heading"]
    assert first.mapTo(page, first.pos()).y() < guessed.mapTo(page, guessed.pos()).y()


def test_a_wrong_encoding_can_be_taken_back(at: Desk) -> None:
    page = at.opened(*CLEAR)
    rule(page, "encoding", "utf-16")
    at.looked(page)
    assert page.hindrance.label.text() == "The file is not written in this encoding. Choose another one."
    assert not page.importing.isEnabled()
    assert page.points.rows["encoding"].isVisible()
    rule(page, "encoding", "utf-8")
    at.looked(page)
    assert page.hindrance.isHidden()
    assert page.importing.isEnabled()


def test_an_hour_that_came_twice_is_asked_when_it_turns_up(at: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("TZ", "Europe/Berlin")
    time.tzset()
    try:
        page = at.opened("Date;KH (dKH)", "2025-10-26 02:30;8.1", "2025-10-26 04:30;8.2")
        assert [row.what for row in page.points.asked()] == ["twice"]
        assert page.hindrance.label.text() == "Choose which is meant of the hour that came twice."
        assert not page.importing.isEnabled()
        rule(page, "twice", "second")
        at.looked(page)
        click(page.importing)
        assert [f"{e.at:%H:%M}" for e in at.readings()] == ["01:30", "03:30"]
    finally:
        monkeypatch.undo()
        time.tzset()


def test_what_stands_in_the_file_is_shown_as_plain_text(at: Desk) -> None:
    page = at.begin(at.file(
        "Date;<b>KH</b> & more (dKH);Ca (mg/L)", "2025-11-20 08:00;<i>8</i>;420", name="<b>file.csv"
    ))  # fmt: skip
    page.table.setCurrentIndex(page.table.lines.index(0, 2))
    marked = [label for label in page.findChildren(QLabel) if "<" in label.text()]
    assert len(marked) >= 2
    assert all(label.textFormat() == Qt.TextFormat.PlainText for label in marked)
    assert page.file.text() == "<b>file.csv"
    # An ampersand is shown, and underlines nothing.
    assert [row.choice.label.text() for row in page.points.rows.values() if "&" in row.choice.label.text()] == [
        "“<b>KH</b> && more (dKH)”"
    ]
    assert any(NAME.replace("&", "&&") in button.text() for button in page.findChildren(QPushButton))


def test_the_newest_choice_counts(at: Desk) -> None:
    page = at.opened("Date;Sr (mg/l)", "2025-11-20 08:00;8,125", "2025-11-21 08:00;8,250")
    rule(page, "decimal", ".")
    rule(page, "decimal", ",")
    assert not page.importing.isEnabled()
    at.looked(page)
    assert shown(page, 0, 2) == "8.125 mg per L"
    assert page.points.rows["decimal"].choice.current() == "=,"


def test_figures_per_kilogram_are_reckoned_anew_when_the_salinity_changes(at: Desk) -> None:
    page = at.opened("Date;Mg (mg/kg)", "2025-11-20 08:00;1290")
    before = page._looked.sequels[0].values[0]
    at.document.edit(at.system, "salinity", Typed("20", "ppt"))
    at.looked(page)
    assert page._looked.sequels[0].values[0] < before
    click(page.importing)
    assert at.readings()[0].value == page._looked.sequels[0].values[0]
    # The name on the button follows as well.
    at.document.edit(at.system, "name", Typed("Lagoon"))
    assert page.importing.text().endswith("into Lagoon")


def test_a_system_that_is_gone_takes_nothing(at: Desk) -> None:
    page = at.opened(*CLEAR)
    at.document.remove_record(at.system)
    click(page.importing)
    assert page.hindrance.label.text() == "Nothing was imported. Another window removed this in the meantime."
    assert at.document.undo_text().code == "remove"
