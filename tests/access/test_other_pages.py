"""What a screen reader is told of pages and windows beside the sheets as they open: welcome, backups, plans, an absence, settings."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QWidget

from evenwater.ui.room import Room
from evenwater.ui.sheet_list import SHEETS
from tests.access.rooms import demo, settled
from tests.access.walk import faults, told
from tests.ui.window_making import opened

pytestmark = pytest.mark.usefixtures("young_demo")


def missing(page: QWidget, what: str) -> list[str]:
    settled()
    return [f"{what}: {fault}" for fault in faults(told(page))]


def show(room: Room, name: str) -> None:
    room.sheets.choose(SHEETS.index(name))
    settled()


def test_pages_that_open_on_sheets_and_windows_beside_them(qtbot):
    window, room = demo(qtbot)
    for step in room.sheet.form.steps:
        step.open(True)
    room.sheet.answer.how.click()
    found = missing(window, "everything unfolded")
    qtbot.waitUntil(room.sheet.buttons.plans.start.isEnabled, timeout=5000)
    room.sheet.buttons.plans.start.click()
    assert not room.sheet.followed.isHidden()
    found += missing(window, "a plan that is followed")
    show(room, "Upkeep")
    room.upkeep.plans_together.turn.click()
    found += missing(window, "all plans together")
    show(room, "Jugs")
    room.levels.show_absence()
    found += missing(window, "an absence")
    room.show_backups()
    assert room.backups is not None
    found += missing(room.backups, "backups")
    room.keys.find()
    found += missing(room.keys.finding.panel, "finder")
    assert not found, "\n".join(found)


def test_the_welcome(qtbot, own_home):
    window = opened(own_home / "new.evenwater", qtbot)
    page = window.centralWidget()
    assert not missing(page, "welcome")
    assert window.close()
    for file in own_home.glob("new.evenwater*"):
        file.unlink()
