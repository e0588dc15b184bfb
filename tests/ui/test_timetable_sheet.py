"""The Timetable sheet in the real window, worked with the keys and with the mouse alone."""

from __future__ import annotations

import re
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget

from evenwater.engine.quantities import Typed
from evenwater.ui.main_window import MainWindow
from evenwater.ui.theme import HIGH_CONTRAST, LIGHT, palette_for, tokens_of
from evenwater.ui.timetable_sheet import WORKING, TimetableSheet
from tests.card.reading import page_texts, squeezed
from tests.ui.stocks_making import CONTROL, click, click_into, press, to_sheet, write
from tests.ui.window_making import opened, room_of

QUIET = ("quiet_from", "quiet_to")


@pytest.fixture
def demo(qtbot, monkeypatch: pytest.MonkeyPatch) -> MainWindow:
    """The demo without its long log, which no timetable asks."""
    monkeypatch.setattr("evenwater.session.demo.demo_entries", _no_entries)
    return opened(None, qtbot, demo=True)


@pytest.fixture
def sheet(demo: MainWindow, qtbot) -> TimetableSheet:
    to_sheet("Timetable")
    found = room_of(demo).timetable
    worked_out(found, qtbot)
    return found


def _no_entries(*_: object) -> tuple[()]:
    return ()


def worked_out(sheet: TimetableSheet, qtbot) -> None:
    """Wait until what is shown belongs to what stands in the fields."""
    qtbot.waitUntil(lambda: not sheet.waiting(), timeout=10_000)


def line_of(sheet: TimetableSheet, path: str) -> QLineEdit:
    line = sheet.form.fields[path].focusProxy()
    assert isinstance(line, QLineEdit)
    return line


def kept(sheet: TimetableSheet, path: str) -> str:
    """Return what the log keeps of a wish."""
    return sheet.records.wish(path).text


def replace_text(line: QLineEdit, text: str) -> None:
    """Type over what stands in a line, and go on with Tab."""
    line.setFocus(Qt.FocusReason.TabFocusReason)
    line.selectAll()
    QTest.keyClicks(line, text) if text else QTest.keyClick(line, Qt.Key.Key_Delete)
    QTest.keyClick(line, Qt.Key.Key_Tab)


def shown(widget: QWidget) -> bool:
    return widget.isVisible()


def test_all_pumps_of_a_system_stand_on_one_day(sheet: TimetableSheet) -> None:
    assert sheet.view.state == "answered"
    assert [told.parameter for told in sheet.view.pumps] == ["Alkalinity", "Calcium", "Nitrate"]
    assert shown(sheet.strip)
    assert sheet.list.lines.rowCount() == len(sheet.view.rows)
    assert sheet._cautions.label.text().startswith("Warning, sodium carbonate anhydrous")
    assert sheet._cautions.y() < sheet.strip.y() < sheet.list.y(), "cautions before any figure"
    assert all(button.isEnabled() for button in sheet.page_actions.buttons)


def test_quiet_hours_by_the_keys_alone_are_kept_and_undone(sheet: TimetableSheet, qtbot) -> None:
    """Typed, reckoned, and taken back with Ctrl and Z."""
    line = line_of(sheet, "quiet_to")
    line.setFocus(Qt.FocusReason.TabFocusReason)
    line.selectAll()
    write("09:30")
    press(Qt.Key.Key_Return)
    worked_out(sheet, qtbot)
    assert kept(sheet, "quiet_to") == "09:30"
    assert sheet.view.quiet == ((1320, 570),)
    assert min(row.minute for row in sheet.view.every) >= 570
    press(Qt.Key.Key_Z, CONTROL)
    worked_out(sheet, qtbot)
    assert kept(sheet, "quiet_to") == "07:00"
    assert line.text() == "07:00"
    assert sheet.view.quiet == ((1320, 420),)
    press(Qt.Key.Key_Z, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    worked_out(sheet, qtbot)
    assert kept(sheet, "quiet_to") == "09:30"


def test_half_a_clock_time_is_no_timetable_and_no_wish_is_dropped(sheet: TimetableSheet, qtbot) -> None:
    """While the hour is typed nothing is shown as an answer; the fault is told when the keeper goes on."""
    line = line_of(sheet, "quiet_to")
    line.setFocus(Qt.FocusReason.TabFocusReason)
    line.selectAll()
    write("9")
    worked_out(sheet, qtbot)
    assert sheet.view.state == "refused"
    assert not sheet.view.rows
    assert not any(button.isEnabled() for button in sheet.page_actions.buttons)
    press(Qt.Key.Key_Tab)
    assert "is not a clock time" in sheet.form.fields["quiet_to"].message
    assert kept(sheet, "quiet_to") == "9", "it is kept as typed"


@pytest.mark.parametrize(
    ("path", "text", "said"),
    [("apart", "5", "15"), ("alkalinity.doses_wanted", "200", "below the"), ("quiet_from", "", "begin as well")],
)
def test_a_refused_wish_is_told_beside_its_field(sheet: TimetableSheet, qtbot, path: str, text: str, said: str) -> None:
    before = kept(sheet, path)
    replace_text(line_of(sheet, path), text)
    worked_out(sheet, qtbot)
    field = sheet.form.fields[path]
    assert said in field.message
    assert field.note.text == field.message, "it stands below the field, or on its slip"
    assert field.spoken_for().accessibleDescription() == field.message
    assert not shown(sheet.strip)
    assert sheet.page_actions.page() is None
    replace_text(line_of(sheet, path), before)
    worked_out(sheet, qtbot)
    assert sheet.view.state == "answered"
    assert not field.message


def test_what_would_do_is_taken_with_the_mouse(sheet: TimetableSheet, qtbot) -> None:
    for name in ("alkalinity", "calcium"):
        replace_text(line_of(sheet, f"{name}.doses_wanted"), "24")
    for path in QUIET:
        replace_text(line_of(sheet, path), "")
    replace_text(line_of(sheet, "apart"), "45")
    worked_out(sheet, qtbot)
    assert sheet.view.state == "refused"
    click_into(sheet.form.fields["apart"])
    slip = sheet.form.fields["apart"].slip
    assert slip is not None
    (offer,) = slip.row.buttons()
    minutes = re.findall(r"\d+", offer.text())[0]
    click(offer)
    worked_out(sheet, qtbot)
    assert kept(sheet, "apart") == minutes
    assert sheet.view.state == "answered"


def test_the_mouse_alone_chooses_one_at_a_time_opens_more_and_goes_to_the_correction(
    demo: MainWindow, sheet: TimetableSheet, qtbot
) -> None:
    box = sheet.form.alone
    QTest.mouseClick(box, Qt.MouseButton.LeftButton, pos=QPoint(8, box.height() // 2))
    worked_out(sheet, qtbot)
    assert kept(sheet, "one_at_a_time") == "yes"
    begins = [row.minute for row in sheet.view.every]
    assert len(set(begins)) == len(begins), "no two begin together"
    click(sheet.form.steps["alkalinity"].more)
    fewest = sheet.form.fields["alkalinity.doses_fewest"]
    assert fewest.isVisible()
    click(sheet.form.opens["calcium"])
    assert room_of(demo).sheet.isVisible()
    assert room_of(demo).sheet.records.parameter == "calcium"


def test_the_strip_is_read_with_the_keys(sheet: TimetableSheet) -> None:
    strip = sheet.strip
    strip.setFocus(Qt.FocusReason.TabFocusReason)
    assert "Left and right" in strip.accessibleDescription()
    press(Qt.Key.Key_Home)
    first = sheet.view.every[0]
    assert strip.reading().startswith(f"{first.when}: {first.dose}")
    assert first.pump in strip.accessibleDescription(), "what is read is said as well"
    seen = [strip.cursor_at]
    for row in sheet.view.every[1:]:
        press(Qt.Key.Key_Right)
        assert strip.reading().startswith(row.when)
        assert row.additive in strip.reading()
        seen.append(strip.cursor_at)
    assert len(set(seen)) == len(sheet.view.every), "each dose once"
    press(Qt.Key.Key_Right)
    assert strip.cursor_at == seen[0], "round the clock"
    press(Qt.Key.Key_Left)
    assert strip.cursor_at == seen[-1]
    lane = seen[-1][0]
    press(Qt.Key.Key_Down)
    assert strip.cursor_at[0] == (lane + 1) % 3
    press(Qt.Key.Key_Up)
    assert strip.cursor_at[0] == lane
    press(Qt.Key.Key_Escape)
    assert strip.cursor_at is None


def test_the_strip_is_read_with_the_mouse(sheet: TimetableSheet) -> None:
    strip = sheet.strip
    for lane, pump in enumerate(sheet.view.lanes):
        for number in (0, len(pump.marks) - 1):
            place = QPointF(
                strip._x(pump.marks[number].minute, strip._day()), strip._lane_rect(lane, strip._day()).center().y()
            )
            QTest.mouseMove(strip, place.toPoint())
            QTest.mouseClick(strip, Qt.MouseButton.LeftButton, pos=place.toPoint())
            assert strip.cursor_at == (lane, number)
            assert pump.pump in strip.reading()


@pytest.mark.parametrize("tokens", [LIGHT, HIGH_CONTRAST], ids=lambda tokens: tokens.name)
def test_what_must_stay_apart_differs_by_shape_without_any_colour(sheet: TimetableSheet, qtbot, tokens) -> None:
    """In grey: the head of alkalinity is at the top and filled, that of calcium at the foot and open."""
    strip = sheet.strip
    strip.setPalette(palette_for(tokens))
    image = strip.grab().toImage()
    ratio, day = image.devicePixelRatio(), strip._day()

    def dark(x: float, y: float) -> bool:
        return QColor(image.pixel(round(x * ratio), round(y * ratio))).lightness() < 140

    for lane, (head, foot, middle) in {0: (True, False, True), 1: (False, True, False)}.items():
        where, pump = strip._lane_rect(lane, day), sheet.view.lanes[lane]
        # In the middle of the open hours, where no line is near.
        mark = pump.marks[4]
        centre = strip._x(mark.minute, day) + 1.5
        top, bottom = where.top() + 0.16 * where.height(), where.bottom() - 0.16 * where.height()
        assert any(dark(centre - 3, y) for y in (top + 7, top + 8)) == head
        assert any(dark(centre - 3, y) for y in (bottom - 8, bottom - 7, bottom - 9)) == foot
        assert dark(centre, top + 6 if lane == 0 else bottom - 6) == middle, "filled, or open"
    assert tokens_of(strip.palette()).name


def test_the_sheet_is_saved_as_pdf_with_every_dose(sheet: TimetableSheet, tmp_path: Path) -> None:
    file = tmp_path / "t.pdf"
    sheet.page_actions.write(file)
    text = "".join(page_texts(file))
    for row in sheet.view.every:
        assert squeezed(f"{row.when}{row.dose}{row.runs}") in text
    assert squeezed(sheet.view.code) in text
    assert file.name in sheet.header.told.text()


def test_the_preview_shows_the_sheet_and_says_when_there_is_none_any_more(sheet: TimetableSheet, qtbot) -> None:
    click(sheet.page_actions.show)
    preview = sheet.page_actions._preview
    assert preview is not None
    assert preview.card == sheet.page_actions.page()
    replace_text(line_of(sheet, "apart"), "5")
    worked_out(sheet, qtbot)
    assert preview.card is None
    assert "There is no timetable now" in preview._nothing.text()
    preview.close()


def test_a_change_of_the_upkeep_changes_the_timetable(demo: MainWindow, sheet: TimetableSheet, qtbot) -> None:
    before, code = sheet.view.pumps[0].in_24_hours, sheet.view.code
    document = room_of(demo)._document
    document.edit(f"{sheet.records.system}:alkalinity", "daily_use", Typed("0.5", "dKH per day"))
    worked_out(sheet, qtbot)
    assert sheet.view.pumps[0].in_24_hours != before
    assert sheet.view.code != code


def test_nothing_can_be_done_with_a_timetable_that_is_worked_out_anew(sheet: TimetableSheet, qtbot) -> None:
    """Between the key and the answer no old sheet is printed, and after a moment the window says that it works."""
    QTest.keyClicks(line_of(sheet, "nitrate.doses_wanted"), "6")
    assert sheet.waiting()
    assert not any(button.isEnabled() for button in sheet.page_actions.buttons)
    assert sheet.page_actions.page() is None
    assert not sheet.list.isEnabled()
    sheet._patience.timeout.emit()
    assert shown(sheet.progress)
    assert sheet.progress.text() == WORKING
    worked_out(sheet, qtbot)
    assert not shown(sheet.progress)
    assert len([row for row in sheet.view.every if row.pump == "Rack pump"]) == 6


def test_another_system_has_its_own_wishes_and_never_the_doses_of_the_one_before(
    demo: MainWindow, sheet: TimetableSheet, qtbot
) -> None:
    room = room_of(demo)
    anemones = room._document.records("system")[1]
    room.systems.choose(anemones)
    assert not sheet.view.rows
    worked_out(sheet, qtbot)
    assert line_of(sheet, "apart").text() == "45"
    assert sheet.form.alone.isChecked()
    assert not line_of(sheet, "quiet_from").text()
    assert "nitrate" not in [path.partition(".")[0] for path in sheet.form.paths()]
    assert {told.parameter for told in sheet.view.pumps} == {"Alkalinity", "Calcium"}


def test_a_system_without_upkeep_says_what_is_missing(demo: MainWindow, sheet: TimetableSheet, qtbot) -> None:
    room = room_of(demo)
    made = room._document.add_record("system", {"name": Typed("New tank")})
    room.systems.choose(made)
    worked_out(sheet, qtbot)
    assert shown(sheet._nothing)
    assert not shown(sheet.strip)
    assert not any(button.isEnabled() for button in sheet.page_actions.buttons)


def test_every_field_and_button_is_large_enough_and_reached_by_tab(sheet: TimetableSheet) -> None:
    for button in (*sheet.page_actions.buttons, *sheet.form.opens.values()):
        assert button.height() >= 32
        assert button.accessibleName() or button.text()
    line_of(sheet, "quiet_from").setFocus(Qt.FocusReason.TabFocusReason)
    reached = set()
    for _ in range(60):
        now = QApplication.focusWidget()
        reached.add(now)
        QTest.keyClick(now, Qt.Key.Key_Tab)
    wanted = {
        line_of(sheet, path)
        for path in sheet.form.paths()
        if path in sheet.form.fields and sheet.form.fields[path].isVisible()
    }
    assert wanted <= reached
    assert {sheet.strip, sheet.list, sheet.form.alone, *sheet.page_actions.buttons} <= reached


def test_a_plan_that_is_followed_says_its_number_of_doses(demo: MainWindow, sheet: TimetableSheet, qtbot) -> None:
    """Started on the Correct sheet, it stands here with its id, and nobody can wish for another number."""
    room = room_of(demo)
    to_sheet("Correct")
    qtbot.waitUntil(lambda: not room.sheet.waiting(), timeout=5000)
    click(room.sheet.buttons.plans.start)
    (plan,) = room.plans.live()
    to_sheet("Timetable")
    worked_out(sheet, qtbot)
    (told,) = [one for one in sheet.view.pumps if one.parameter == "Alkalinity"]
    assert told.plan == f"Plan {plan.plan_id}"
    assert not sheet.form.fields["alkalinity.doses_wanted"].isEnabled()
    assert sheet.form.fields["calcium.doses_wanted"].isEnabled()
    page = sheet.page_actions.page()
    assert page is not None
    assert plan.plan_id in page.because
    replace_text(line_of(sheet, "apart"), "5")
    worked_out(sheet, qtbot)
    assert not sheet.form.fields["alkalinity.doses_wanted"].isEnabled(), "refused, it is still the plan's"


def test_a_plan_that_ends_while_the_sheet_is_open_gives_way_to_the_upkeep(
    demo: MainWindow, sheet: TimetableSheet, qtbot, monkeypatch: pytest.MonkeyPatch
) -> None:
    room = room_of(demo)
    to_sheet("Correct")
    qtbot.waitUntil(lambda: not room.sheet.waiting(), timeout=5000)
    click(room.sheet.buttons.plans.start)
    to_sheet("Timetable")
    worked_out(sheet, qtbot)
    assert [one.plan for one in sheet.view.pumps if one.plan]
    (end,) = sheet._ends
    for place in ("timetable_sheet", "timetable_records", "upkeep_records"):
        monkeypatch.setattr(f"evenwater.ui.{place}.present", lambda: end + timedelta(seconds=1))
    sheet._minute.timeout.emit()
    worked_out(sheet, qtbot)
    assert sheet.view.pumps
    assert not [one.plan for one in sheet.view.pumps if one.plan]
