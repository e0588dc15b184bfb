"""The log as a spreadsheet: written whole or not at all, and read again without a change."""

from __future__ import annotations

import csv
import io
import uuid
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.session import Entry
from evenwater.ui.dialogs import Dialogs
from tests.ui.import_making import NAME, Desk, desk
from tests.ui.stocks_making import click

AT = datetime(2025, 11, 20, 7, 0, tzinfo=UTC)
OWN = "Date and time (ISO 8601),Parameter,Value,Unit,Kit,Who,Note"


@pytest.fixture
def at(qtbot, tmp_path: Path) -> Iterator[Desk]:
    yield from desk(qtbot, tmp_path)


def note(
    at: Desk, text: str, parameter: str = "alkalinity", unit: str = "dKH", hours: float = 0.0, **more: str
) -> None:
    """Log a reading as the form does."""
    form = at.sheet.form
    form.begin_reading(parameter)
    form._said |= {"value": Typed(text, unit), "at": Typed((AT + timedelta(hours=hours)).isoformat())}
    form._said |= {name: Typed(more.get(name, "")) for name in ("kit", "who")}
    before = len(at.readings())
    form.wanted.emit()
    assert len(at.readings()) == before + 1, form.fields["value"].message


def saved(at: Desk, qtbot, path: Path) -> str:
    """Save the log as a spreadsheet, and return what is said of it."""
    at.sheet.transfer._save(path)
    qtbot.waitUntil(lambda: not at.sheet.transfer.export.running, timeout=20_000)
    return at.sheet.header.told.text()


def cells(path: Path) -> list[list[str]]:
    return list(csv.reader(io.StringIO(path.read_bytes().decode("utf-8-sig"), newline=""), strict=True))


def test_all_readings_of_the_system_are_written_in_the_order_of_time(
    at: Desk, qtbot, monkeypatch: pytest.MonkeyPatch
) -> None:
    note(at, "420", "calcium", "mg/L", hours=30)
    note(at, "7,9", kit="drop kit", who="=1+1")
    note(at, "2.9 meq/L", hours=-5)
    other = at.document.add_record("system", {"name": Typed("Other")})
    elsewhere = Entry(uuid.uuid4().hex, other, "reading", "calcium", AT, "", {"value": Typed("1", "mg/L")}, 1.0)
    assert at.document.log.log([elsewhere])
    asked = []

    def ask(_self: Dialogs, suggestion: str, then) -> None:
        asked.append(suggestion)
        then(at.folder / "saved.csv")

    monkeypatch.setattr(Dialogs, "save_csv", ask)
    click(at.sheet.transfer.saving)
    assert not at.sheet.transfer.saving.isEnabled()
    qtbot.waitUntil(lambda: not at.sheet.transfer.export.running)
    assert asked == ["Reef & bboldb readings.csv"], "what no folder takes is left out of the name"
    assert at.sheet.header.told.text() == "Saved 3 readings as saved.csv."
    assert at.sheet.transfer.saving.isEnabled()
    head, *rows = cells(at.folder / "saved.csv")
    assert ",".join(head) == OWN
    assert [row[1:] for row in rows] == [
        ["alkalinity", "2.9", "meq/L", "", "", ""],
        ["alkalinity", "7.9", "dKH", "drop kit", "'=1+1", ""],
        ["calcium", "420", "mg/L", "", "", ""],
    ]
    assert [datetime.fromisoformat(row[0]) - AT for row in rows] == [timedelta(hours=h) for h in (-5, 0, 30)]


def test_what_was_saved_adds_nothing_when_it_is_imported_again(at: Desk, qtbot) -> None:
    note(at, "8,125", "strontium", "mg/L")
    note(at, "1290", "magnesium", "mg/kg", hours=1)
    note(at, "0,05", "phosphate", "mg/L as PO4", hours=2, kit="<b>kit</b>", who="-A")
    note(at, "1.0255", "salinity", "SG 25/25 degC", hours=3)
    saved(at, qtbot, at.folder / "all.csv")
    page = at.begin(at.folder / "all.csv")
    assert page.points.asked() == []
    assert page.counts.text() == "4 readings in 4 rows. Every reading is in the log already."
    assert not page.importing.isEnabled()
    # Figures per kilogram come to another value in another water, but are the same reading.
    at.document.edit(at.system, "salinity", Typed("20", "ppt"))
    at.looked(page)
    assert page.counts.text() == "4 readings in 4 rows. 3 are in the log already."
    click(page.importing)
    assert page.counts.text() == "Nothing was imported. Every reading is in the log already."
    assert len(at.readings()) == 4


def test_it_comes_back_whole_in_another_log(at: Desk, qtbot) -> None:
    page = at.opened(
        "Date;KH (dKH);Kit;Who;Note",
        '2025-11-20 08:00;8,3;drop kit;A. B.;"two\nlines; @here"',
        "2025-11-21 08:00;8,20;;;",
    )
    click(page.importing)
    first = at.readings()
    saved(at, qtbot, at.folder / "all.csv")
    at.document.log.remove_entries([entry.id for entry in first])
    assert at.readings() == []
    page = at.begin(at.folder / "all.csv")
    click(page.importing)
    again = at.readings()
    assert [(e.id, e.at, e.subject, e.who, e.value) for e in again] == [
        (e.id, e.at, e.subject, e.who, e.value) for e in first
    ]
    assert [
        {name: typed.text.replace(",", ".") for name, typed in e.fields.items() if name == "value"} for e in first
    ] == [{"value": e.fields["value"].text} for e in again]
    assert [e.fields.get("text", Typed("")).text for e in again] == ["two\nlines; @here", ""]


def test_many_readings_at_one_instant_are_all_written(at: Desk, qtbot, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("evenwater.ui.log_export._BITE", 3)
    moments = [AT + timedelta(hours=hour) for hour in (0, 1, 1, 1, 1, 1, 1, 1, 2, 3)]
    entries = [
        Entry(
            f"{n:02d}", at.system, "reading", "calcium", moment, "", {"value": Typed(str(400 + n), "mg/L")}, 400.0 + n
        )
        for n, moment in enumerate(moments)
    ]
    assert at.document.log.log(entries)
    assert saved(at, qtbot, at.folder / "all.csv") == "Saved 10 readings as all.csv."
    assert sorted(row[2] for row in cells(at.folder / "all.csv")[1:]) == [str(400 + n) for n in range(10)]


def test_nothing_to_save_is_said(at: Desk, qtbot) -> None:
    assert saved(at, qtbot, at.folder / "none.csv") == "There are no readings to save."
    assert not (at.folder / "none.csv").exists()


def test_a_place_that_cannot_be_written_is_said(at: Desk, qtbot) -> None:
    note(at, "8.3")
    said = saved(at, qtbot, at.folder / "missing" / "all.csv")
    assert said == "The spreadsheet could not be written there. Choose another folder."


def test_stop_leaves_the_file_as_it_was(at: Desk, qtbot) -> None:
    note(at, "8.3")
    path = at.file("what was there before", name="old.csv")
    before = path.read_bytes()
    transfer = at.sheet.transfer
    transfer.progress._later.setInterval(0)
    transfer._save(path)
    transfer.progress._appear()
    # The bar stands where the buttons stood, so that nothing else moves.
    assert transfer.progress.isVisible()
    assert not transfer.saving.isVisible()
    click(transfer.progress.stop)
    qtbot.waitUntil(lambda: not transfer.export._work.busy())
    assert path.read_bytes() == before
    assert at.sheet.header.told.text() == "Stopped. No spreadsheet was written."
    assert transfer.saving.isVisible()
    assert not transfer.progress.isVisible()
    assert sorted(file.name for file in at.folder.glob("old.csv*")) == ["old.csv"], "no half file stays behind"


def test_half_a_log_does_not_pass_for_the_whole(at: Desk, qtbot) -> None:
    note(at, "8.3")
    transfer = at.sheet.transfer
    transfer._save(at.folder / "half.csv")
    at.document.saveFailed.emit(Reason("store.io", {}))
    assert not transfer.export.running
    assert at.sheet.header.told.text() == "The log could not be read to its end. No spreadsheet was written."
    assert not (at.folder / "half.csv").exists()


def test_without_a_system_nothing_is_read_or_written(at: Desk) -> None:
    assert NAME in at.sheet.header.name.text()
    at.document.remove_record(at.system)
    at.sheet.show_system("")
    assert not at.sheet.transfer.reading.isEnabled()
    assert not at.sheet.transfer.saving.isEnabled()
