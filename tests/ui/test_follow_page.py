"""A correction is started in the real window, followed, planned again and ended; undo, restarts and the card with it."""

from __future__ import annotations

import uuid
from datetime import timedelta
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from evenwater.engine.quantities import Typed
from evenwater.screens.local_zone import present
from evenwater.session import Entry
from evenwater.ui.correct_sheet import CorrectSheet
from evenwater.ui.main_window import MainWindow
from tests.ui.window_making import example, left, opened, reckoned, room_of, sheet_of, type_into

# One German degree [meq/L]: 10 mg of CaO (56.077 g/mol) in a litre; from memory.
DKH = 10.0 / (56.077 / 2.0)


@pytest.fixture
def log(tmp_path: Path) -> Path:
    return tmp_path / "room" / "evenwater.sqlite"


@pytest.fixture
def room(log: Path, qtbot) -> MainWindow:
    """A room with one system, in which the worked example stands."""
    window = opened(log, qtbot)
    QTest.keyClick(window.centralWidget().empty, Qt.Key.Key_Space)
    example(sheet_of(window), qtbot)
    return window


def start(sheet: CorrectSheet, qtbot) -> str:
    """Start the plan that is shown with the keyboard, and return its id."""
    button = sheet.buttons.plans.start
    assert button.isEnabled()
    button.setFocus()
    QTest.keyClick(button, Qt.Key.Key_Space)
    reckoned(sheet, qtbot)
    assert sheet.followed.plan is not None
    return sheet.followed.plan.plan_id


def begun(sheet: CorrectSheet, qtbot, monkeypatch, hours: float) -> str:
    """Start the plan as it would have been started some hours ago, from a reading an hour before."""
    then = present() - timedelta(hours=hours)
    sheet.records.edit("change.measured_at", Typed((then - timedelta(hours=1)).isoformat()), sheet)
    with monkeypatch.context() as clock:
        for module in ("correct_sheet", "plan_actions", "correct_records"):
            clock.setattr(f"evenwater.ui.{module}.present", lambda: then)
        sheet.recompute()
        found = start(sheet, qtbot)
    sheet.followed.refresh()
    return found


def note(window: MainWindow, hours_ago: float, dkh: float) -> None:
    document = window.opening().document()
    system = sheet_of(window).records.system
    at = present() - timedelta(hours=hours_ago)
    entry = Entry(
        uuid.uuid4().hex, system, "reading", "alkalinity", at, "", {"value": Typed(str(dkh), "dKH")}, dkh * DKH
    )
    assert document.log.log((entry,))


def test_a_correction_is_started_logged_and_its_card_in_use(room: MainWindow, qtbot) -> None:
    sheet, document = sheet_of(room), room.opening().document()
    figure = sheet.answer.view.figure
    plan_id = start(sheet, qtbot)
    assert sheet.followed.isVisible()
    assert not sheet.answer.isVisible()
    assert sheet.followed.answer.view.figure == figure
    (plan,) = document.log.plans()
    assert plan.plan_id == plan_id
    assert [c.plan_id for c in document.cards("in use")] == [plan_id]
    (noted,) = document.log.entries(sheet.records.system, ("note",), since=present() - timedelta(minutes=5))
    assert plan_id in noted.fields["text"].text
    assert not sheet.buttons.plans.start.isVisible(), "a plan is not started twice"


def test_undo_takes_the_start_back_and_its_card_is_void(room: MainWindow, qtbot) -> None:
    sheet, document = sheet_of(room), room.opening().document()
    plan_id = start(sheet, qtbot)
    assert document.undo()
    qtbot.waitUntil(sheet.answer.isVisible)
    assert document.log.plans() == []
    assert [c.state for c in document.cards() if c.plan_id == plan_id] == ["void"]
    assert sheet.void.isVisible(), "what may hang on the stand is named until it is taken down (H26)"


def test_the_plan_is_there_after_a_restart(room: MainWindow, log: Path, qtbot) -> None:
    plan_id = start(sheet_of(room), qtbot)
    left(room)
    again = opened(log, qtbot)
    assert sheet_of(again).followed.isVisible()
    assert sheet_of(again).followed.plan.plan_id == plan_id
    assert sheet_of(again).followed.answer.view.figure == "4.7"


def test_a_card_saved_before_is_the_card_of_the_plan_that_is_started(room: MainWindow, qtbot, tmp_path: Path) -> None:
    """A minute passes between saving the card and starting: the card on the stand must stay the one that counts."""
    sheet, document = sheet_of(room), room.opening().document()
    sheet.buttons.cards.write(tmp_path / "card.pdf")
    (card,) = document.cards("in use")
    sheet.recompute()
    assert sheet.buttons.cards.plan.plan_id != card.plan_id, "the plan is reckoned from now, and now has moved"
    assert start(sheet, qtbot) == card.plan_id
    assert [c.plan_id for c in document.cards("in use")] == [card.plan_id]
    assert document.cards("void") == []


def test_its_card_can_be_printed_again_as_it_was(room: MainWindow, qtbot, tmp_path: Path) -> None:
    sheet, document = sheet_of(room), room.opening().document()
    plan_id = start(sheet, qtbot)
    sheet.recompute()
    file = tmp_path / "again.pdf"
    sheet.buttons.cards.write(file)
    text = " ".join(" ".join(page.extract_text() for page in PdfReader(file).pages).split())
    assert plan_id in text
    assert [c.plan_id for c in document.cards("in use")] == [plan_id]


def test_a_retest_inside_the_band_lies_on_the_ramp(room: MainWindow, qtbot, monkeypatch) -> None:
    sheet = sheet_of(room)
    begun(sheet, qtbot, monkeypatch, 20.0)
    note(room, 1.0, 7.6)
    chart = sheet.followed.chart.view
    assert [m.place for m in chart.retests] == ["inside"]
    assert "inside the band" in sheet.followed.answer.view.messages[0].text
    assert "inside the band" in sheet.followed.chart.accessibleDescription()


def test_H19_two_readings_above_the_band_say_stop_and_no_card_is_made(
    room: MainWindow, qtbot, monkeypatch, tmp_path: Path
) -> None:
    sheet = sheet_of(room)
    begun(sheet, qtbot, monkeypatch, 20.0)
    note(room, 10.0, 8.1)
    assert sheet.followed.answer.view.state == "answered"
    assert sheet.followed.recover.isHidden()
    note(room, 1.0, 8.6)
    assert sheet.followed.answer.view.state == "stop"
    assert sheet.followed.answer.view.figure == "Stop"
    wanted: list[str] = []
    sheet.recovery_wanted.connect(wanted.append)
    sheet.followed.recover.click()
    assert wanted == [sheet.records.parameter]
    sheet.recompute()
    assert not sheet.buttons.cards.save.isEnabled()
    sheet.buttons.cards.write(tmp_path / "never.pdf")
    assert not (tmp_path / "never.pdf").exists()
    # Also while a new correction is looked at, the strip says so.
    sheet.followed.turn.click()
    assert "Stop dosing alkalinity now" in sheet.followed.strip.findChildren(type(sheet.void.words))[0].text()


def test_it_is_planned_again_from_the_reading_in_one_step(room: MainWindow, qtbot, monkeypatch) -> None:
    sheet, document = sheet_of(room), room.opening().document()
    first = begun(sheet, qtbot, monkeypatch, 20.0)
    note(room, 0.1, 7.2)
    before = dict(sheet.records.values("correction"))
    sheet.followed.again.click()
    reckoned(sheet, qtbot)
    assert sheet.answer.isVisible()
    assert sheet.records.values("correction")["measured"] == Typed("7.2", "dKH")
    assert sheet.answer.view.state == "answered"
    second = start(sheet, qtbot)
    assert second != first
    assert [p.plan_id for p in document.log.plans()] == [second]
    assert [c.plan_id for c in document.cards("void")] == [first]
    assert document.undo(), "the start"
    assert document.undo(), "the reading in the form"
    assert dict(sheet.records.values("correction")) == before


def test_what_the_plan_gave_since_the_reading_counts_in_a_new_correction(room: MainWindow, qtbot, monkeypatch) -> None:
    """The form still holds the reading from before the start: a new plan from it must not give everything again (H14)."""
    sheet = sheet_of(room)
    begun(sheet, qtbot, monkeypatch, 10.0)
    sheet.followed.turn.click()
    reckoned(sheet, qtbot)
    found = sheet.records.raw()["change"]["untested"]
    # Ten hours of the ramp, at 1.0 dKH a day less what is lost by rounding down.
    assert 0.36 < float(found.text) / DKH < 0.43
    assert any("no test has shown" in text for text in sheet.answer.view.remarks)


def test_typing_shows_the_new_correction_and_the_plan_goes_on(room: MainWindow, qtbot) -> None:
    sheet, document = sheet_of(room), room.opening().document()
    start(sheet, qtbot)
    type_into(sheet, "change.target", "8.2")
    reckoned(sheet, qtbot)
    assert sheet.answer.isVisible()
    assert not sheet.followed.isVisible()
    assert len(document.log.plans()) == 1


def test_ending_a_plan_makes_its_card_void_and_undo_brings_the_plan_back(room: MainWindow, qtbot) -> None:
    sheet, document = sheet_of(room), room.opening().document()
    plan_id = start(sheet, qtbot)
    sheet.followed.end.click()
    assert document.log.plans() == []
    assert sheet.answer.isVisible()
    assert [c.state for c in document.cards() if c.plan_id == plan_id] == ["void"]
    assert document.undo()
    assert [p.plan_id for p in document.log.plans()] == [plan_id]
    assert [c.state for c in document.cards() if c.plan_id == plan_id] == ["void"], "a card never comes back into use"


def test_note_a_reading_opens_the_log_at_its_parameter(room: MainWindow, qtbot) -> None:
    sheet, sheets = sheet_of(room), room_of(room)
    start(sheet, qtbot)
    sheet.followed.test.click()
    assert sheets.log.isVisible()
    assert sheets.log.shown.current() == "alkalinity"


def test_another_system_shows_its_own(room: MainWindow, qtbot) -> None:
    sheet, document = sheet_of(room), room.opening().document()
    start(sheet, qtbot)
    other = document.add_record("system", {"name": Typed("The other")})
    room_of(room).systems.choose(other)
    assert not sheet.followed.isVisible()
    assert not sheet.followed.strip.isVisible()


def test_an_unreadable_plan_must_not_be_followed(room: MainWindow, qtbot, monkeypatch) -> None:
    sheet = sheet_of(room)
    monkeypatch.setattr("evenwater.screens.following.FORM", 99)
    start(sheet, qtbot)
    monkeypatch.setattr("evenwater.screens.following.FORM", 1)
    room_of(room).plans._kept.clear()
    sheet.followed.refresh()
    assert sheet.followed.answer.view.state == "refused"
    assert "must not be followed" in sheet.followed.answer.view.messages[0].text
    sheet.followed.end.click()
    assert sheet.answer.isVisible()


def test_the_ramp_of_a_followed_plan_cannot_be_dragged(room: MainWindow, qtbot) -> None:
    sheet = sheet_of(room)
    start(sheet, qtbot)
    chart = sheet.followed.chart
    before = chart.ramp_end
    QTest.keyClick(chart, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(chart, Qt.Key.Key_PageUp)
    assert chart.ramp_end == before
    assert chart.picture.marks.handle is None
    QTest.keyClick(chart, Qt.Key.Key_Right)
    assert chart.readout
