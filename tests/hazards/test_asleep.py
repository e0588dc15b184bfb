"""H16 and H17 in the real window: the laptop sleeps through a plan that is followed, and its clock is set while the window is open."""

from __future__ import annotations

import time
from datetime import datetime, timedelta
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


def test_H16_H17_asleep_for_14_hours_of_a_plan_or_set_anew_the_clock_makes_nothing_up(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qtbot
) -> None:
    with living_in("Europe/Berlin"):
        window, wall, plan_id = followed(EVENING, tmp_path / "evenwater.sqlite", monkeypatch, qtbot)
        sheet, room, before = sheet_of(window), room_of(window), kept(window)
        assert before[1] == [plan_id]
        shown, plan = sheet.followed.answer.view, sheet.followed.plan
        assert plan is not None
        expected = room.plans.view(plan)
        # Asleep over the night of the change.
        wall.on(hours=14)
        wake(window, qtbot)
        assert kept(window) == before, "no dose is noted by itself, and no plan ends"
        assert sheet.followed.answer.view.figure == shown.figure, "no dose is made larger by those that were missed"
        assert room.plans.view(plan) != expected, "it is looked at anew"
        to_sheet("Rounds")
        qtbot.waitUntil(lambda: not room.rounds.waiting(), timeout=10_000)
        assert not [duty.what for duty in room.rounds.duties if "mL" in duty.what], "no line says an amount to dose"
        wall.on(hours=40)
        wake(window, qtbot)
        qtbot.waitUntil(lambda: not room.rounds.waiting(), timeout=10_000)
        due = [duty for duty in room.rounds.duties if duty.subject == "alkalinity" and duty.what.startswith("Test")]
        assert [duty.urgency for duty in due] == ["due"], room.rounds.duties
        assert set(missed(window).values()) == {1}, "each timer looks once, whatever it slept through"
        # Set a day back, a month forth, years back, and right again.
        for hours in (-26, 24 * 30, -24 * 365 * 3, 0):
            wall.at = EVENING + timedelta(hours=hours)
            wake(window, qtbot)
            assert kept(window) == before, hours
            assert sheet.followed.plan is not None
            assert sheet.followed.plan.plan_id == plan_id
        to_sheet("Correct")
        wake(window, qtbot)
        assert sheet.followed.answer.view == shown, "set right again, everything is as it was"
        left(window)


def missed(window: MainWindow) -> dict[QTimer, int]:
    """Let nothing run for many of the timers' turns, and return how often each of them comes then."""
    ticks = dict.fromkeys(clocks(window), 0)
    usual = {timer: timer.interval() for timer in ticks}
    for timer in ticks:
        timer.timeout.connect(lambda timer=timer: ticks.update({timer: ticks[timer] + 1}))
        timer.setInterval(20)
    time.sleep(0.3)
    QApplication.processEvents()
    for timer, interval in usual.items():
        timer.setInterval(interval)
    return ticks
