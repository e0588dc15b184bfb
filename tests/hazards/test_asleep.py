"""H16 and H17 in the real window: the laptop sleeps through a plan that is followed, and its clock is set while the window is open."""

from __future__ import annotations

import time
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from evenwater.session import Entry
from evenwater.ui.main_window import MainWindow
from tests.ui.log_making import Wall, hung, living_in
from tests.ui.stocks_making import document_of, to_sheet
from tests.ui.test_follow_page import start
from tests.ui.window_making import example, left, opened, reckoned, room_of, sheet_of

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
# The night on which Berlin's clocks are set back (tz database).
EVENING = datetime(2026, 10, 24, 22, 0, tzinfo=ZoneInfo("Europe/Berlin"))
# What asks for the time by itself does so this often at most [ms].
_LOOKS_EVERY = 10_000


def followed(at: datetime, file: Path, monkeypatch: pytest.MonkeyPatch, qtbot) -> tuple[MainWindow, Wall, str]:
    """Open an empty room, type the worked example at an instant, and start it."""
    wall = hung(monkeypatch, at)
    window = opened(file, qtbot)
    QTest.keyClick(window.centralWidget().empty, Qt.Key.Key_Space)
    example(sheet_of(window), qtbot)
    return window, wall, start(sheet_of(window), qtbot)


def clocks(window: MainWindow) -> list[QTimer]:
    """Return the timers that look at the clock again and again."""
    timers = window.findChildren(QTimer)
    return [timer for timer in timers if timer.isActive() and timer.interval() >= _LOOKS_EVERY]


def wake(window: MainWindow, qtbot) -> None:
    """Let every timer that looks at the clock do so, as after a minute."""
    for timer in clocks(window):
        timer.timeout.emit()
    reckoned(sheet_of(window), qtbot)
    QApplication.processEvents()


def kept(window: MainWindow) -> tuple[list[Entry], list[str], list[tuple[str, str]]]:
    """Return the entries, the plans that are followed, and the cards with their states."""
    document = document_of(window)
    (system,) = document.records("system")
    plans = [plan.plan_id for plan in document.log.plans()]
    return document.log.entries(system), plans, [(card.plan_id, card.state) for card in document.cards()]


def test_H16_asleep_for_14_hours_of_a_plan_nothing_is_made_up_and_what_is_due_is_said(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qtbot
) -> None:
    with living_in("UTC"):
        window, wall, plan_id = followed(NOON, tmp_path / "evenwater.sqlite", monkeypatch, qtbot)
        sheet, room, before = sheet_of(window), room_of(window), kept(window)
        plan = sheet.followed.plan
        assert plan is not None
        figure, expected = sheet.followed.answer.view.figure, room.plans.view(plan)
        assert expected is not None
        wall.on(hours=14)
        wake(window, qtbot)
        assert kept(window) == before, "no dose is noted by itself, and no plan ends"
        assert before[1] == [plan_id]
        view = sheet.followed.answer.view
        assert view.figure == figure, "the dose is what it was: none is made larger by those that were missed"
        assert room.plans.view(plan) != expected, "it is looked at anew"
        to_sheet("Rounds")
        qtbot.waitUntil(lambda: not room.rounds.waiting(), timeout=10_000)
        said = [duty.what for duty in room.rounds.duties]
        assert not [what for what in said if "mL" in what], "no line says an amount to dose"
        wall.on(hours=40)
        wake(window, qtbot)
        qtbot.waitUntil(lambda: not room.rounds.waiting(), timeout=10_000)
        due = [duty for duty in room.rounds.duties if duty.subject == "alkalinity" and duty.what.startswith("Test")]
        assert [duty.urgency for duty in due] == ["due"], room.rounds.duties
        # What timers have missed while nothing ran they do not make up either.
        ticks: dict[QTimer, int] = {}
        ticking = clocks(window)
        for timer in ticking:
            ticks[timer] = 0
            timer.timeout.connect(lambda timer=timer: ticks.update({timer: ticks[timer] + 1}))
            timer.setInterval(20)
        time.sleep(0.5)
        QApplication.processEvents()
        for timer in ticking:
            timer.setInterval(60_000)
        assert set(ticks.values()) == {1}, "each looks once, whatever it slept through"
        left(window)


def test_H17_a_clock_that_is_set_while_a_plan_is_followed_changes_nothing_that_is_kept(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qtbot
) -> None:
    with living_in("Europe/Berlin"):
        window, wall, plan_id = followed(EVENING, tmp_path / "evenwater.sqlite", monkeypatch, qtbot)
        sheet, before = sheet_of(window), kept(window)
        shown = sheet.followed.answer.view
        # Over the night of the change, a day back, a month forth, years back, and right again.
        for hours in (9, -26, 24 * 30, -24 * 365 * 3):
            wall.at = EVENING + timedelta(hours=hours)
            wake(window, qtbot)
            assert kept(window) == before, hours
            assert sheet.followed.plan is not None
            assert sheet.followed.plan.plan_id == plan_id
            if hours < 0:
                # Before it began there is nothing to judge it by, and no card may be made of that.
                assert sheet.buttons.cards.plan is None or sheet.buttons.cards.plan.plan_id == plan_id
        for name in ("Rounds", "Upkeep", "Timetable", "Log"):
            to_sheet(name)
            wake(window, qtbot)
        wall.at = EVENING
        to_sheet("Correct")
        wake(window, qtbot)
        assert kept(window) == before
        assert sheet.followed.answer.view == shown, "set right again, everything is as it was"
        left(window)
