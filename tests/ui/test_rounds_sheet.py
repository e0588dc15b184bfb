"""The Rounds sheet in the real window: by key and by mouse, while the room changes, and what it gives out."""

from __future__ import annotations

import json
import uuid
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QSettings, Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtPrintSupport import QPrinterInfo
from PySide6.QtWidgets import QApplication, QFileDialog, QStyleOptionViewItem

from evenwater.card.output import lay_out
from evenwater.card.paper import ROUND_PAPERS
from evenwater.engine.quantities import Typed
from evenwater.screens import rounds
from evenwater.screens.local_zone import present
from evenwater.screens.round_page import RoundLine, RoundPage, RoundPlace
from evenwater.screens.rounds import WRONG, Duty
from evenwater.session import Card, Entry
from evenwater.ui.card_preview import CardPreview
from evenwater.ui.duty_list import DutyList
from evenwater.ui.main_window import MainWindow
from evenwater.ui.rounds_sheet import RoundsSheet
from evenwater.ui.sheet_list import SHEETS
from tests.ui.stocks_making import ALT, ASH, click, click_row, document_of, jug_named, press, tab_to, to_sheet
from tests.ui.window_making import opened, room_of


@pytest.fixture
def own_settings(tmp_path: Path):
    QSettings.setDefaultFormat(QSettings.Format.IniFormat)
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path))
    yield
    QSettings.setDefaultFormat(QSettings.Format.NativeFormat)


@pytest.fixture
def demo(qtbot, own_settings) -> MainWindow:
    """Return the demonstration with a stale reading in its first system and a jug that runs out."""
    window = opened(None, qtbot, demo=True)
    document = document_of(window)
    system = room_of(window).systems.current()
    stale(window, system, "alkalinity")
    batch = document.batch_in_use(jug_named(window, ASH))
    document.edit(batch, "in_use_from", Typed((datetime.now(UTC) - timedelta(days=60)).isoformat()))
    return window


def stale(window: MainWindow, system: str, parameter: str) -> None:
    document = document_of(window)
    document.edit(f"{system}:{parameter}", "measured_at", Typed("2026-01-05T08:00:00+00:00"))
    ids = [e.id for e in document.log.entries(system, ("reading",), parameter)]
    if ids:
        document.log.remove_entries(ids)


def rounds_of(window: MainWindow, qtbot) -> RoundsSheet:
    to_sheet("Rounds")
    sheet = room_of(window).rounds
    settled(sheet, qtbot)
    return sheet


def settled(sheet: RoundsSheet, qtbot) -> None:
    """Wait until all of the room was looked at."""
    qtbot.waitUntil(lambda: not sheet.waiting(), timeout=10_000)


def row_of(sheet: RoundsSheet, what: str, record: str = "") -> int:
    found = [
        number
        for number, line in enumerate(sheet.list.lines.lines)
        if isinstance(line, Duty) and line.what == what and record in ("", line.record)
    ]
    assert found, f"{what} is not listed: {[d.what for d in sheet.duties]}"
    return found[0]


def test_a_line_opens_with_the_mouse_what_it_is_about(demo: MainWindow, qtbot) -> None:
    sheet, room = rounds_of(demo, qtbot), room_of(demo)
    click_row(sheet.list, row_of(sheet, "Test alkalinity", room.systems.current()))
    assert room.log.isVisible()
    assert room.log.form.said()["parameter"].text == "alkalinity"
    assert SHEETS[0] == "Rounds"


def test_a_jug_that_runs_out_opens_on_the_stocks_sheet(demo: MainWindow, qtbot) -> None:
    sheet = rounds_of(demo, qtbot)
    ash = jug_named(demo, ASH)
    (duty,) = [duty for duty in sheet.duties if duty.record == ash]
    assert duty.urgency == WRONG
    click_row(sheet.list, row_of(sheet, duty.what, ash))
    room = room_of(demo)
    assert room.stocks.isVisible()
    assert room.jugs.current() == ash


def test_keys_go_from_line_to_line_over_the_heads_and_enter_opens(demo: MainWindow, qtbot) -> None:
    sheet = rounds_of(demo, qtbot)
    tab_to(sheet.list)
    walked = []
    for _ in range(len(sheet.list.lines.lines)):
        duty = sheet.list.chosen()
        assert duty is not None, "a head was chosen"
        walked.append(duty.key)
        press(Qt.Key.Key_Down)
    assert list(dict.fromkeys(walked)) == [duty.key for duty in sheet.duties]
    assert len({duty.urgency for duty in sheet.duties}) > 1, "no head lies between"
    press(Qt.Key.Key_End)
    assert sheet.list.chosen() == sheet.duties[-1]
    press(Qt.Key.Key_Home)
    assert sheet.list.chosen() == sheet.duties[0]
    for _ in sheet.duties:
        if sheet.list.chosen().what == "Test alkalinity":
            break
        press(Qt.Key.Key_Down)
    assert sheet.list.chosen().what == "Test alkalinity", [duty.what for duty in sheet.duties]
    press(Qt.Key.Key_Return)
    assert room_of(demo).log.isVisible()


def test_other_keys_that_open(demo: MainWindow, qtbot) -> None:
    sheet = rounds_of(demo, qtbot)
    for key in (Qt.Key.Key_Enter, Qt.Key.Key_Space):
        to_sheet("Rounds")
        tab_to(sheet.list)
        press(Qt.Key.Key_Home)
        with qtbot.waitSignal(sheet.opened) as opened_line:
            press(key)
        assert opened_line.args == [sheet.duties[0]]


def test_the_line_stays_chosen_and_keeps_the_focus_while_the_room_changes(demo: MainWindow, qtbot) -> None:
    sheet, document = rounds_of(demo, qtbot), document_of(demo)
    tab_to(sheet.list)
    press(Qt.Key.Key_End)
    before = sheet.list.chosen()
    _, other, *_ = document.records("system")
    stale(demo, other, "calcium")
    settled(sheet, qtbot)
    row_of(sheet, "Test calcium", other)
    assert sheet.list.chosen().key == before.key
    assert QApplication.focusWidget() is sheet.list


def test_the_next_line_is_chosen_when_one_is_done(demo: MainWindow, qtbot) -> None:
    sheet, document = rounds_of(demo, qtbot), document_of(demo)
    system = room_of(demo).systems.current()
    sheet.list.setFocus()
    sheet.list.setCurrentIndex(sheet.list.lines.index(row_of(sheet, "Test alkalinity", system)))
    place = sheet.duties.index(sheet.list.chosen())
    reading = Entry(
        uuid.uuid4().hex, system, "reading", "alkalinity", datetime.now(UTC), "", {"value": Typed("7.9", "dKH")}, 2.8
    )
    assert document.log.log([reading])
    settled(sheet, qtbot)
    assert not any(duty.what == "Test alkalinity" and duty.record == system for duty in sheet.duties)
    assert sheet.list.chosen() == sheet.duties[min(place, len(sheet.duties) - 1)]
    assert QApplication.focusWidget() is sheet.list


def test_three_readings_alike_are_questioned_until_another_kit_agrees(demo: MainWindow, qtbot) -> None:
    sheet, document = rounds_of(demo, qtbot), document_of(demo)
    system = document.records("system")[2]
    fields = {"value": Typed("1320", "mg/L"), "kit": Typed("drops")}
    now = datetime.now(UTC)
    for days in (3, 2, 1):
        at = now - timedelta(days=days)
        document.log.log([Entry(uuid.uuid4().hex, system, "reading", "magnesium", at, "", fields, 1320.0)])
    settled(sheet, qtbot)
    (duty,) = [duty for duty in sheet.duties if duty.record == system and duty.subject == "magnesium"]
    assert duty.what == "Test magnesium again with a fresh kit"
    assert "all say 1320\u00a0mg per L." in duty.why
    other = {**fields, "kit": Typed("meter")}
    document.log.log([Entry(uuid.uuid4().hex, system, "reading", "magnesium", now, "", other, 1320.0)])
    settled(sheet, qtbot)
    assert not [duty for duty in sheet.duties if duty.record == system and duty.subject == "magnesium"]


def test_doses_logged_empty_a_jug_and_a_new_batch_fills_it(demo: MainWindow, qtbot) -> None:
    document, ash = document_of(demo), jug_named(demo, ASH)
    batch, now = document.batch_in_use(ash), datetime.now(UTC)
    document.edit(batch, "in_use_from", Typed((now - timedelta(hours=3)).isoformat()))
    sheet = rounds_of(demo, qtbot)
    assert not [duty for duty in sheet.duties if duty.record == ash], "just put in use"
    system = document.records("system")[0]
    document.log.log([Entry(uuid.uuid4().hex, system, "dose", ash, now, "", {}, 1000.0)])
    settled(sheet, qtbot)
    (duty,) = [duty for duty in sheet.duties if duty.record == ash]
    assert (duty.urgency, duty.what, duty.why) == (WRONG, "Mix a new batch", "By the doses logged it is empty.")
    new = document.add_batch(ash, document.values(batch))
    assert document.put_in_use(new, now + timedelta(seconds=1), [])
    settled(sheet, qtbot)
    assert not [duty for duty in sheet.duties if duty.record == ash]


def test_the_daily_rate_is_that_of_all_systems_that_take_from_the_jug(demo: MainWindow, qtbot) -> None:
    """The rates are those of the Upkeep sheets, added up."""
    sheet, room = rounds_of(demo, qtbot), room_of(demo)
    document, calcium = document_of(demo), jug_named(demo, "Calcium, clear jug")
    taken = 0.0
    for system in document.records("system"):
        room.upkeep.show_system(system)
        taken += sum(
            float(row.in_24_hours.split("\u00a0")[0]) for row in room.upkeep.view.rows if row.parameter == "Calcium"
        )
    (jug,) = [jug for jug in sheet.watch.room().jugs if jug.stock_id == calcium]
    assert taken > 0.0
    assert jug.per_day == pytest.approx(taken)


def test_H26_a_superseded_card_stands_there_until_it_is_ticked(demo: MainWindow, qtbot) -> None:
    document = document_of(demo)
    system, now = document.records("system")[0], present()
    for number in (1, 2):
        assert document.add_card(
            Card(f"AAAAAA-0{number}", number, system, "alkalinity", now, now + timedelta(days=9), json.dumps({}), "")
        )
    sheet = rounds_of(demo, qtbot)
    row_of(sheet, "Take down card AAAAAA-01")
    assert document.set_card_state("AAAAAA-01", "removed")
    settled(sheet, qtbot)
    assert not any(duty.what == "Take down card AAAAAA-01" for duty in sheet.duties)


def test_a_system_that_is_removed_takes_its_lines_along_and_undo_brings_them_back(demo: MainWindow, qtbot) -> None:
    sheet, document = rounds_of(demo, qtbot), document_of(demo)
    system = room_of(demo).systems.current()
    document.remove_record(system)
    settled(sheet, qtbot)
    assert not any(duty.record == system for duty in sheet.duties)
    assert document.undo()
    settled(sheet, qtbot)
    row_of(sheet, "Test alkalinity", system)


def test_it_is_read_aloud_with_everything_in_it(demo: MainWindow, qtbot) -> None:
    sheet = rounds_of(demo, qtbot)
    assert sheet.list.accessibleName() == "What is wrong and what is due"
    model = sheet.list.lines
    for row, line in enumerate(model.lines):
        spoken = model.data(model.index(row), Qt.ItemDataRole.AccessibleTextRole)
        if isinstance(line, Duty):
            assert all(part in spoken for part in (line.place, line.what, line.why))
        else:
            assert spoken == line


def test_nothing_of_a_line_is_cut_off(demo: MainWindow, qtbot) -> None:
    """On both screens, and in letters of 150 %."""
    sheet = rounds_of(demo, qtbot)
    font = sheet.list.font()
    for width, height, points in ((1366, 768, 11.0), (1920, 1080, 11.0), (1366, 768, 16.5)):
        demo.resize(width, height)
        font.setPointSizeF(points)
        sheet.list.setFont(font)
        _nothing_cut(sheet)


def _nothing_cut(sheet: RoundsSheet) -> None:
    """Every word of a column breaks into the column, and the line is as high as its highest column."""
    painter, model = sheet.list.itemDelegate(), sheet.list.lines
    option = QStyleOptionViewItem()
    sheet.list.initViewItemOption(option)
    assert sum(isinstance(line, Duty) for line in model.lines) >= 2
    for row, line in enumerate(model.lines):
        if not isinstance(line, Duty):
            continue
        size = painter.sizeHint(option, model.index(row))
        assert size.height() >= 32
        assert size.width() <= sheet.list.viewport().width()
        option.rect.setRect(0, 0, size.width(), size.height())
        right = 0
        for box, text, letters in painter._cells(option.rect, option.font, line):
            measure = QFontMetrics(letters)
            assert measure.boundingRect(box, int(Qt.TextFlag.TextWordWrap), text).height() <= box.height()
            assert max(measure.horizontalAdvance(word) for word in text.split(" ")) <= box.width()
            assert right <= box.left()
            right = box.right()
        assert right <= size.width()


def test_a_list_of_thousands_asks_for_heights_a_screen_at_a_time(qtbot, monkeypatch: pytest.MonkeyPatch) -> None:
    """What is shown first costs the same in a room of three systems and of hundreds."""
    asked = []
    view = DutyList()
    qtbot.addWidget(view)
    painter = view.itemDelegate()
    measured = type(painter).sizeHint
    monkeypatch.setattr(type(painter), "sizeHint", lambda *given: asked.append(given) or measured(*given))
    view.resize(900, 600)
    now = present()
    view.show_duties([Duty(rounds.DUE, now, f"Rack {n}", "Test calcium", "Old.", "Log", str(n)) for n in range(3000)])
    view.show()
    view.doItemsLayout()
    assert 0 < len(asked) <= 120


# What the sheet gives out


def test_the_round_sheet_is_saved_as_pdf_on_the_paper_chosen(demo: MainWindow, qtbot, tmp_path: Path) -> None:
    sheet = rounds_of(demo, qtbot)
    click(sheet.actions_row.save)
    dialog = sheet.findChild(QFileDialog)
    assert dialog.windowTitle() == "Save round sheet as PDF"
    dialog.close()
    sheet.actions_row.set_paper("A5")
    file = tmp_path / "round.pdf"
    sheet.actions_row.write(file)
    pages = PdfReader(file).pages
    assert float(pages[0].mediabox.width) / 72.0 * 25.4 == pytest.approx(148.0, abs=0.5)
    text = "".join("".join(page.extract_text().split()) for page in pages)
    for duty in sheet.duties:
        assert "".join(duty.plain.split()) in text
    assert "mL" not in text
    assert sheet.header.told.text() == "Round sheet saved as round.pdf."
    sheet.actions_row.write(tmp_path / "nowhere" / "round.pdf")
    assert sheet.header.told.text() == "The card could not be written there. Choose another folder."


def test_the_round_sheet_is_looked_at_and_follows_the_room(demo: MainWindow, qtbot) -> None:
    sheet, document = rounds_of(demo, qtbot), document_of(demo)
    press(Qt.Key.Key_L, ALT)
    # A key presses a button for a moment before it lets go.
    qtbot.waitUntil(lambda: sheet.actions_row._preview is not None)
    preview = sheet.actions_row._preview
    assert preview.isVisible()
    before = preview.card
    assert before == sheet.actions_row.page()
    stale(demo, document.records("system")[1], "calcium")
    settled(sheet, qtbot)
    assert preview.card == sheet.actions_row.page() != before
    preview.close()


def test_without_a_printer_it_is_said(demo: MainWindow, qtbot, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(QPrinterInfo, "availablePrinterNames", staticmethod(list))
    sheet = rounds_of(demo, qtbot)
    click(sheet.actions_row.print)
    assert sheet.header.told.text().startswith("No printer is set up")


def test_reminders_are_saved_whole_or_not_at_all(demo: MainWindow, qtbot, tmp_path: Path) -> None:
    from icalendar import Calendar

    sheet = rounds_of(demo, qtbot)
    click(sheet.actions_row.remind)
    dialog = next(d for d in sheet.findChildren(QFileDialog) if d.windowTitle() == "Save reminders")
    assert dialog.defaultSuffix() == "ics"
    dialog.close()
    file = tmp_path / "round.ics"
    with qtbot.waitSignal(sheet.actions_row.told) as told:
        sheet.actions_row.write_reminders(file)
    found = Calendar.from_ical(file.read_bytes()).walk("VEVENT")
    assert told.args == [f"{len(found)} reminders saved as round.ics. Open the file with your calendar."]
    assert any(str(event["SUMMARY"]).endswith("test alkalinity") for event in found)
    with qtbot.waitSignal(sheet.actions_row.told) as told:
        sheet.actions_row.write_reminders(tmp_path / "nowhere" / "round.ics")
    assert told.args == ["The reminders could not be written there. Choose another folder."]
    assert not (tmp_path / "nowhere").exists()


def test_nothing_is_given_out_before_all_of_the_room_was_looked_at(demo: MainWindow, qtbot, tmp_path: Path) -> None:
    """Half a round would look like a whole one."""
    sheet = rounds_of(demo, qtbot)
    sheet.actions_row.set_room(None, sheet.duties, present())
    assert not any(button.isEnabled() for button in sheet.actions_row.buttons)
    sheet.actions_row.write(tmp_path / "round.pdf")
    sheet.actions_row.write_reminders(tmp_path / "round.ics")
    assert list(tmp_path.glob("round.*")) == []
    sheet.refresh()
    settled(sheet, qtbot)
    assert all(button.isEnabled() for button in sheet.actions_row.buttons)


def test_of_a_sheet_of_very_many_pages_the_first_are_looked_at(qtbot) -> None:
    """A picture of each page of 500 systems would take half a gigabyte."""
    preview = CardPreview(None, "Round sheet", ROUND_PAPERS)
    qtbot.addWidget(preview)
    line = RoundLine("Test calcium", "Today", "It is old.", reads=True, unit="mg per L")
    page = RoundPage("Round sheet", "Printed", "400 things to do", (RoundPlace("Rack", (line,) * 400),))
    preview.show_card(page, "A5")
    pages = len(lay_out(page, ROUND_PAPERS["A5"]))
    assert pages > 24
    assert sum(label.pixmap() is not None and not label.pixmap().isNull() for label in preview._labels) == 24
    assert preview._nothing.text() == f"The first 24 of {pages} pages; all of them are printed and saved."
    preview.show_card(replace(page, places=(RoundPlace("Rack", (line,)),)), "A5")
    assert preview._nothing.isHidden()
