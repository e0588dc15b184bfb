"""From a correction of what is too high to the Recovery sheet."""

from __future__ import annotations

import pytest

from evenwater.ui.main_window import MainWindow
from tests.ui.stocks_making import click
from tests.ui.window_making import opened, reckoned, sheet_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def demo(qtbot) -> MainWindow:
    return opened(None, qtbot, demo=True)


def test_reading_above_its_target_leads_to_recovery(demo: MainWindow, qtbot):
    sheet = sheet_of(demo)
    wanted: list[str] = []
    sheet.recovery_wanted.connect(wanted.append)
    assert sheet.too_high.isHidden()
    # Far above what any tank has, it is refused as unlikely, and may be an overdose all the same.
    for reading, high in (("12.5", True), ("7", False), ("23", True), ("1", False), ("12", True)):
        type_into(sheet, "change.measured", reading)
        reckoned(sheet, qtbot)
        assert sheet.too_high.isHidden() is not high, reading
    qtbot.waitUntil(sheet.too_high.isVisible, timeout=2000)
    click(sheet.too_high)
    assert wanted == ["alkalinity"]
