"""What the log learned, and the plan that is followed, reach the Upkeep sheet; what the keeper typed is never replaced."""

from __future__ import annotations

import uuid
from datetime import timedelta

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens.local_zone import present
from evenwater.session import Entry
from evenwater.ui.main_window import MainWindow
from tests.ui.stocks_making import click, to_sheet
from tests.ui.window_making import opened, reckoned, room_of, sheet_of

# One German degree [meq/L]: 10 mg of CaO (56.077 g/mol) in a litre; from memory.
DKH = 10.0 / (56.077 / 2.0)


@pytest.fixture
def demo(qtbot, monkeypatch) -> MainWindow:
    """The demo without its three years of entries."""
    monkeypatch.setattr("evenwater.session.demo.demo_entries", lambda *_: ())
    window = opened(None, qtbot, demo=True)
    reckoned(sheet_of(window), qtbot)
    return window


def note(window: MainWindow, parameter: str, days_ago: float, value: float) -> None:
    document, system = window.opening().document(), room_of(window).systems.current()
    at = present() - timedelta(days=days_ago)
    assert document.log.log((Entry(uuid.uuid4().hex, system, "reading", parameter, at, "", {}, value),))


def falling(window: MainWindow, parameter: str, from_: float, per_day: float) -> None:
    """Note nine readings of a value that falls steadily, the last one an hour ago."""
    for day in range(9):
        note(window, parameter, 8.0 - day + 1.0 / 24.0, from_ - per_day * day)


def first_cell(window: MainWindow, row: int) -> str:
    return room_of(window).upkeep.doses._cells[row][0].text().replace("\u00a0", " ")


def shown(window: MainWindow, qtbot, parameter: str) -> None:
    """Show the sheet and wait until the log was asked."""
    to_sheet("Upkeep")
    room = room_of(window)
    qtbot.waitUntil(lambda: room.learning.known(room.systems.current(), parameter) is not None, timeout=20_000)
    qtbot.waitUntil(lambda: not room.upkeep._soon.isActive())


def test_a_typed_use_stays_and_what_the_log_says_stands_beside_it(demo: MainWindow, qtbot) -> None:
    falling(demo, "alkalinity", 8.5 * DKH, 0.5 * DKH)
    shown(demo, qtbot, "alkalinity")
    assert "used: 0.9 dKH per day" in first_cell(demo, 0)
    assert "From the log: 0.5" in first_cell(demo, 0)
    assert "last reading 1 h ago" in first_cell(demo, 0)
    assert room_of(demo).upkeep.view.rows[0].use.replace("\u00a0", " ") == "0.9 dKH per day"


def test_a_use_that_nobody_typed_is_kept_as_the_log_has_it_with_interval_and_age(demo: MainWindow, qtbot) -> None:
    room = room_of(demo)
    room._document.edit(f"{room.systems.current()}:alkalinity", "daily_use", Typed(""))
    falling(demo, "alkalinity", 8.5 * DKH, 0.5 * DKH)
    shown(demo, qtbot, "alkalinity")
    qtbot.waitUntil(lambda: len(room.upkeep.view.rows) == 3, timeout=20_000)
    row = room.upkeep.view.rows[0]
    assert row.parameter == "Alkalinity"
    assert row.use.replace("\u00a0", " ").startswith("0.5")
    # 0.5 dKH in 340 L from 2.00024 meq per mL, by hand: 1.26 mL per hour, down to the pump's tenth.
    assert row.dose.replace("\u00a0", " ") == "1.2 mL every hour"
    assert first_cell(demo, 0).startswith("Alkalinity\nFrom the log: 0.5")
    assert room._document.value(f"{room.systems.current()}:alkalinity", "daily_use") == Typed("")


def test_a_ratio_far_from_that_of_skeletons_is_said(demo: MainWindow, qtbot) -> None:
    """Skeletons take 20.04 mg of calcium for each meq; here it is 40."""
    falling(demo, "alkalinity", 8.5 * DKH, 0.5 * DKH)
    falling(demo, "calcium", 450.0, 0.5 * DKH * 40.0)
    shown(demo, qtbot, "calcium")
    sheet = room_of(demo).upkeep
    qtbot.waitUntil(lambda: bool(sheet._ratio()), timeout=20_000)
    sheet.recompute()
    said = [r.label.text() for r in sheet.remarks._rows if r.isVisibleTo(sheet)]
    assert any("For each meq of alkalinity" in text for text in said), said


def test_a_plan_that_is_followed_is_said_beside_the_upkeep_of_its_value(demo: MainWindow, qtbot) -> None:
    room = room_of(demo)
    sheet_of(demo).show_parameter("alkalinity")
    reckoned(sheet_of(demo), qtbot)
    click(sheet_of(demo).buttons.plans.start)
    to_sheet("Upkeep")
    sheet = room.upkeep
    said = [r.label.text() for r in (*sheet.remarks._rows, *sheet.messages._rows) if r.isVisibleTo(sheet)]
    assert any("begin this upkeep when it is over" in text for text in said), said


def test_what_a_plan_gave_is_not_taken_for_less_use(demo: MainWindow, qtbot, monkeypatch) -> None:
    """The water rises by the plan's own doses; the use learned must stay what it was before."""
    room = room_of(demo)
    system = room.systems.current()
    falling(demo, "alkalinity", 8.5 * DKH, 0.5 * DKH)
    sheet_of(demo).show_parameter("alkalinity")
    room._document.edit(f"{system}:alkalinity", "measured_at", Typed((present() - timedelta(hours=31)).isoformat()))
    then = present() - timedelta(hours=30)
    with monkeypatch.context() as clock:
        for module in ("correct_sheet", "plan_actions", "correct_records"):
            clock.setattr(f"evenwater.ui.{module}.present", lambda: then)
        sheet_of(demo).recompute()
        click(sheet_of(demo).buttons.plans.start)
    plan = room.plans.of(system, "alkalinity")
    kept = room.plans.kept(plan)
    given = room.plans.given(system, "alkalinity", then, present())
    assert sum(ml for _, ml, _ in given) == pytest.approx(30 * kept.course.dose_ml, rel=0.04)
    assert all(carries == pytest.approx(2.0, rel=1e-3) for _, _, carries in given)
