"""The Upkeep sheet follows every edit, refuses beside the field that is wrong, and never shows a number of another question."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from evenwater.engine.quantities import Typed
from evenwater.session import Document
from evenwater.store import Store
from evenwater.ui.main_window import MainWindow
from evenwater.ui.upkeep_sheet import NOTHING, UpkeepSheet
from tests.ui.clipping import clipped
from tests.ui.log_making import Wall, furnished, hung, living_in
from tests.ui.stocks_making import ASH, CONTROL, click, document_of, jug_named, press, tab_to, to_sheet
from tests.ui.window_making import left, opened, room_of, sheet_of, type_into

MORNING = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)


@pytest.fixture
def wall(monkeypatch: pytest.MonkeyPatch) -> Iterator[Wall]:
    with living_in("UTC"):
        yield hung(monkeypatch, MORNING)


@pytest.fixture
def file(wall: Wall, tmp_path: Path) -> Path:
    return furnished(tmp_path / "evenwater.sqlite")


@pytest.fixture
def window(file: Path, qtbot) -> MainWindow:
    return opened(file, qtbot)


@pytest.fixture
def sheet(window: MainWindow, qtbot) -> UpkeepSheet:
    to_sheet("Upkeep")
    found = room_of(window).upkeep
    assert found.isVisible()
    qtbot.waitUntil(lambda: not found._soon.isActive(), timeout=5000)
    return found


def settled(sheet: UpkeepSheet, qtbot) -> None:
    qtbot.waitUntil(lambda: not sheet.waiting(), timeout=5000)


def per_hour(sheet: UpkeepSheet) -> dict[str, str]:
    return {row.parameter: row.per_hour.replace("\u00a0", " ") for row in sheet.view.rows}


def said(sheet: UpkeepSheet) -> list[str]:
    """Return the sentences that can be seen, with ordinary spaces."""
    rows = [row for row in sheet.messages._rows if row.isVisibleTo(sheet)]
    return [row.label.text().replace("\u00a0", " ") for row in rows]


def cells(sheet: UpkeepSheet) -> list[str]:
    """Return what the table of doses shows."""
    if not sheet.doses.isVisible():
        return []
    return [label.text() for line in sheet.doses._cells for label in line if label.isVisible()]


# By hand: 0.9 dKH / 2.8039 dKH per meq/L * 340 L / 2.00024 meq per mL / 24 h = 2.27 mL, rounded down to 2.2.


def test_an_edit_on_another_sheet_is_there_when_this_one_is_opened(sheet: UpkeepSheet, window: MainWindow):
    assert per_hour(sheet)["Alkalinity"] == "2.2 mL per hour"
    to_sheet("Correct")
    type_into(sheet_of(window), "change.daily_use", "0,45")
    to_sheet("Upkeep")
    assert per_hour(sheet)["Alkalinity"] == "1.1 mL per hour"
    to_sheet("Correct")
    type_into(sheet_of(window), "system.net_volume", "680")
    to_sheet("Upkeep")
    assert per_hour(sheet)["Alkalinity"] == "2.2 mL per hour"
    assert "680" in sheet.header.volume.text()


def test_an_edit_from_anywhere_arrives_while_the_sheet_is_shown(sheet: UpkeepSheet, window: MainWindow, qtbot):
    document, ash = document_of(window), jug_named(window, ASH)
    document.edit(document.batch_in_use(ash), "dissolved", Typed("53", "g"))
    settled(sheet, qtbot)
    assert per_hour(sheet)["Alkalinity"] == "4.5 mL per hour", "half the strength, twice the dose"
    assert any("4.5" in text for text in cells(sheet))
    press(Qt.Key.Key_Z, CONTROL)
    to_sheet("Upkeep")
    settled(sheet, qtbot)
    assert per_hour(sheet)["Alkalinity"] == "2.2 mL per hour"


def test_a_batch_that_is_only_being_written_changes_nothing(sheet: UpkeepSheet, window: MainWindow, qtbot):
    document, ash = document_of(window), jug_named(window, ASH)
    batch = document.add_batch(ash, {**document.values(document.batch_in_use(ash)), "dissolved": Typed("53", "g")})
    settled(sheet, qtbot)
    assert per_hour(sheet)["Alkalinity"] == "2.2 mL per hour"
    assert document.put_in_use(batch, MORNING, [])
    settled(sheet, qtbot)
    assert per_hour(sheet)["Alkalinity"] == "4.5 mL per hour"


def test_an_edit_of_another_window_is_there_when_this_one_is_looked_at_again(
    sheet: UpkeepSheet, window: MainWindow, file: Path, qtbot
):
    other = Document(Store.open(file))
    other.edit(f"{other.records('system')[0]}:alkalinity", "daily_use", Typed("0.45", "dKH per day"))
    other.close()
    QApplication.sendEvent(window, QEvent(QEvent.Type.ActivationChange))
    settled(sheet, qtbot)
    assert per_hour(sheet)["Alkalinity"] == "1.1 mL per hour"


def test_a_value_is_kept_from_the_first_use_on_and_no_longer(sheet: UpkeepSheet, window: MainWindow, qtbot):
    document, system = document_of(window), sheet.records.system
    assert set(per_hour(sheet)) == {"Alkalinity", "Calcium", "Nitrate"}
    document.edit(f"{system}:nitrate", "daily_use", Typed("  "))
    settled(sheet, qtbot)
    assert set(per_hour(sheet)) == {"Alkalinity", "Calcium"}
    shown = [b.property("parameter") for b in sheet.buttons if b.isVisible()]
    assert shown == ["alkalinity", "calcium"]
    document.undo()
    settled(sheet, qtbot)
    assert set(per_hour(sheet)) == {"Alkalinity", "Calcium", "Nitrate"}


def test_nothing_kept_yet_is_said_and_no_number_is_left_over(sheet: UpkeepSheet, window: MainWindow, qtbot):
    document, system = document_of(window), sheet.records.system
    assert cells(sheet)
    for name in ("alkalinity", "calcium", "nitrate"):
        document.edit(f"{system}:{name}", "daily_use", Typed(""))
    settled(sheet, qtbot)
    assert sheet.view.state == "empty"
    assert sheet._nothing.isVisible()
    assert sheet._nothing.text() == NOTHING
    assert cells(sheet) == []
    assert said(sheet) == []
    for part in (sheet.bars, sheet.spans, sheet.lines, sheet._cautions, sheet.remarks):
        assert not part.isVisible()


# The exchange


@pytest.mark.parametrize("typed", ["-1", "1e3", "3,,4", "ten", "5 gal", "5 g", "1,250", "999999999"])
def test_an_exchange_that_cannot_be_read_stays_and_is_said_beside_it(sheet: UpkeepSheet, typed: str):
    line = sheet.exchanged.line
    line.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClicks(line, typed)
    QTest.keyClick(line, Qt.Key.Key_Tab)
    assert line.text() == typed
    assert sheet.exchanged.message
    assert sheet.view.state == "refused"
    assert cells(sheet) == [], "no dose of another question is left standing (L27)"
    assert not sheet.spans.isVisible()
    line.setFocus(Qt.FocusReason.TabFocusReason)
    line.selectAll()
    QTest.keyClicks(line, "3.4")
    QTest.keyClick(line, Qt.Key.Key_Tab)
    assert sheet.exchanged.message == ""
    assert per_hour(sheet)["Alkalinity"]


def test_an_exchange_is_kept_as_typed_for_its_system_and_undone_as_one_step(
    sheet: UpkeepSheet, window: MainWindow, file: Path, qtbot
):
    room, document = room_of(window), document_of(window)
    first, second = document.records("system")[:2]
    sheet.exchanged.line.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClicks(sheet.exchanged.line, "3,4")
    QTest.keyClick(sheet.exchanged.line, Qt.Key.Key_Tab)
    room.systems.choose(second)
    assert sheet.exchanged.line.text() == ""
    room.systems.choose(first)
    assert sheet.exchanged.line.text() == "3,4"
    assert document.value(first, "exchanged") == Typed("3,4", "L per day")
    assert document.value(second, "exchanged") == Typed("")
    left(window)
    again = opened(file, qtbot)
    to_sheet("Upkeep")
    after = room_of(again).upkeep
    assert after.exchanged.line.text() == "3,4"
    click(after.header.undo)
    assert document_of(again).value(first, "exchanged") == Typed("")
    to_sheet("Upkeep")
    assert after.exchanged.line.text() == ""
    left(again)


# Refusals


def test_a_refusal_of_one_value_names_it(sheet: UpkeepSheet, window: MainWindow, qtbot):
    document, system = document_of(window), sheet.records.system
    # A hundred times as much as anything alive uses: ten decimal slips of a keeper's finger.
    document.edit(f"{system}:calcium", "daily_use", Typed("640", "mg/L per day"))
    settled(sheet, qtbot)
    assert sheet.view.state == "refused"
    assert said(sheet)
    assert any("alcium" in text for text in said(sheet))
    assert cells(sheet) == []


@pytest.mark.parametrize(
    ("record", "field"), [("correction", "stock"), ("correction", "pump"), ("system", "net_volume")]
)
def test_what_is_missing_is_said_and_where(sheet: UpkeepSheet, window: MainWindow, qtbot, record: str, field: str):
    document, system = document_of(window), sheet.records.system
    document.edit(system if record == "system" else f"{system}:calcium", field, Typed(""))
    settled(sheet, qtbot)
    assert sheet.view.state == "empty"
    assert said(sheet)
    if record == "correction":
        assert all(text.startswith("Calcium: ") for text in said(sheet)), said(sheet)
    assert cells(sheet) == []


def test_a_jug_that_was_removed_is_missed_and_nothing_breaks(sheet: UpkeepSheet, window: MainWindow, qtbot):
    document, ash = document_of(window), jug_named(window, ASH)
    document.remove_record(ash)
    settled(sheet, qtbot)
    assert sheet.view.state == "empty"
    assert any(text.startswith("Alkalinity: ") for text in said(sheet))
    document.undo()
    settled(sheet, qtbot)
    assert per_hour(sheet)["Alkalinity"] == "2.2 mL per hour"


def test_the_system_is_removed_while_it_is_shown(sheet: UpkeepSheet, window: MainWindow, qtbot):
    room, document = room_of(window), document_of(window)
    first, second = document.records("system")[:2]
    room.systems.choose(first)
    click(room.systems.remove)
    settled(sheet, qtbot)
    assert sheet.records.system == second
    assert sheet.header.name.text() == document.value(second, "name").text
    while document.records("system"):
        click(room.systems.remove)
    settled(sheet, qtbot)
    assert sheet.records.system == ""
    assert sheet.view.state == "empty"
    assert cells(sheet) == []
    assert not sheet.exchanged.isEnabled(), "what is typed would go nowhere"
    click(sheet.header.undo)
    assert len(document.records("system")) == 1


def test_another_window_removes_the_system_while_it_is_shown(sheet: UpkeepSheet, window: MainWindow, file: Path, qtbot):
    other = Document(Store.open(file))
    first = other.records("system")[0]
    other.remove_record(first)
    other.close()
    document_of(window).refresh()
    settled(sheet, qtbot)
    assert sheet.records.system != first
    assert sheet.header.name.text() == document_of(window).value(sheet.records.system, "name").text
    assert sheet.view.state == "answered"


# Jugs and days


def test_the_day_on_which_a_jug_is_empty_moves_with_the_clock(sheet: UpkeepSheet, wall: Wall):
    # 2.2 mL every hour from 1 L: 454 doses.
    empty = sheet.view.rows[0]
    assert empty.jug.replace("\u00a0", " ") == "19 days"
    assert empty.jug_empty == "Mon 14 Dec 2026"
    wall.at = MORNING + timedelta(days=1)
    to_sheet("Correct")
    to_sheet("Upkeep")
    assert sheet.view.rows[0].jug_empty == "Tue 15 Dec 2026", "of a jug that is full now"
    assert sheet.view.rows[0].jug == empty.jug


# Keys, letters and long names


def test_everything_is_reached_with_tab_and_pressed_with_space(sheet: UpkeepSheet, window: MainWindow):
    sheet.exchanged.line.setFocus(Qt.FocusReason.TabFocusReason)
    shown = [button for button in sheet.buttons if button.isVisible()]
    assert len(shown) == 3
    for button in shown:
        tab_to(button)
        assert button.accessibleName().startswith("Open ")
    press(Qt.Key.Key_Return)
    assert sheet.isVisible(), "Enter presses no button (H29)"
    press(Qt.Key.Key_Space)
    assert sheet_of(window).isVisible()
    assert sheet_of(window).records.parameter == "nitrate"


def test_enter_and_the_wheel_leave_the_exchange_alone(sheet: UpkeepSheet):
    line = sheet.exchanged.line
    line.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClicks(line, "3.4")
    for key in (Qt.Key.Key_Return, Qt.Key.Key_Up, Qt.Key.Key_Down):
        QTest.keyClick(line, key)
    assert line.text() == "3.4"
    assert sheet.isVisible()


@pytest.mark.parametrize("size", [(1000, 700), (1366, 768), (1920, 1080)], ids=str)
def test_no_word_is_cut_and_a_long_name_pushes_nothing_out(
    sheet: UpkeepSheet, window: MainWindow, qtbot, size: tuple[int, int]
):
    document, system = document_of(window), sheet.records.system
    window.resize(*size)
    qtbot.waitUntil(lambda: not sheet.plans_together.waiting(), timeout=5000)
    qtbot.wait(50)
    assert clipped(sheet) == []
    document.edit(
        system,
        "name",
        Typed("<b>North</b> frag bay behind the door of the old workshop & the third rack from the left " * 2),
    )
    settled(sheet, qtbot)
    qtbot.wait(50)
    assert window.width() <= size[0] + 2, "a name does not make the window wider"
    assert sheet.header.name.text().startswith("<b>North</b>"), "shown as typed"
    undo = sheet.header.undo
    assert 0 <= undo.mapTo(window, undo.rect().topLeft()).x() <= window.width() - undo.width()
    assert QApplication.activeWindow() is window
