"""All plans together at the foot of the sheets: once for all of them, never while somebody types, with a stop where it must."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QScrollArea, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens import together
from evenwater.ui.main_window import MainWindow
from evenwater.ui.room import Room
from evenwater.ui.together_panel import TogetherPanel
from tests.ui.stocks_making import click, to_sheet
from tests.ui.window_making import opened, reckoned, room_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def demo(qtbot) -> MainWindow:
    return opened(None, qtbot, demo=True)


@pytest.fixture
def counted(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Note every reckoning of all plans together, with what stands on the sheet or without."""
    found: list[str] = []
    real = together.evaluate

    def evaluate(asked, catalogue, now):
        found.append("running" if asked.standing is None else "standing")
        return real(asked, catalogue, now)

    monkeypatch.setattr(together, "evaluate", evaluate)
    return found


def settled(panel: TogetherPanel, qtbot) -> None:
    qtbot.waitUntil(lambda: not panel.waiting() and bool(panel.view.lines), timeout=8000)


def danger(room: Room) -> None:
    """Let new water bring calcium faster than any tank may have it."""
    water = f"{room.systems.current()}:water"
    for name, typed in {
        "way": Typed("each"),
        "out": Typed("100", "L per day"),
        "in": Typed("100", "L per day"),
        "calcium": Typed("800", "mg/L"),
    }.items():
        room._document.edit(water, name, typed)


def test_upkeep_shows_a_line_for_each_value_and_unfolds_chart_budget_and_card(demo: MainWindow, qtbot, tmp_path: Path):
    to_sheet("Upkeep")
    panel = room_of(demo).upkeep.plans_together
    settled(panel, qtbot)
    assert panel.lines.isVisible()
    assert not panel.page.isVisible()
    click(panel.turn)
    assert panel.page.isVisible()
    assert panel.chart.course is not None
    assert panel.chart.course.title.startswith(panel.view.lines[0].parameter)
    panel.choice.set_current("Calcium")
    panel.choice.picked.emit("Calcium")
    assert panel.chart.course.title.startswith("Calcium")
    qtbot.waitUntil(panel.card.save.isEnabled, timeout=5000)
    file = tmp_path / "all.pdf"
    panel.card.write(file)
    assert file.stat().st_size > 1000
    said: list[str] = []
    panel.told.connect(said.append)
    panel.card.write(file)
    assert said == ["Together card saved as all.pdf."]
    click(panel.turn)
    assert not panel.page.isVisible()


def test_one_watcher_reckons_once_for_all_sheets(demo: MainWindow, qtbot, counted: list[str]):
    room = room_of(demo)
    for name in ("Upkeep", "Timetable"):
        to_sheet(name)
    panels = [room.sheet.plans_together, room.upkeep.plans_together, room.timetable.plans_together]
    assert len({id(panel.together) for panel in panels}) == 1
    settled(panels[2], qtbot)
    counted.clear()
    panels[1].together._again()
    qtbot.waitUntil(lambda: bool(counted), timeout=5000)
    settled(panels[2], qtbot)
    # Hidden sheets ask for nothing, the shown one once.
    assert counted == ["running"]
    to_sheet("Upkeep")
    settled(panels[1], qtbot)
    assert counted == ["running"], "what is known is not reckoned again"


def test_nothing_is_reckoned_while_somebody_types_and_the_card_waits(demo: MainWindow, qtbot, counted: list[str]):
    sheet = room_of(demo).sheet
    reckoned(sheet, qtbot)
    settled(sheet.plans_together, qtbot)
    before = sheet.plans_together.view
    counted.clear()
    type_into(sheet, "change.target", "8.1")
    assert counted == []
    assert sheet.plans_together.together.waiting()
    assert sheet.plans_together.view is before, "the last words stand until then"
    qtbot.waitUntil(lambda: bool(counted), timeout=5000)
    settled(sheet.plans_together, qtbot)
    assert counted == ["standing"], "the correction on the sheet counts there"
    assert sheet.plans_together.view is not before


def test_a_danger_is_a_stop_line_on_every_sheet_and_no_card_is_made(demo: MainWindow, qtbot):
    room = room_of(demo)
    danger(room)
    for sheet, name in ((room.sheet, ""), (room.upkeep, "Upkeep"), (room.timetable, "Timetable")):
        if name:
            to_sheet(name)
        panel = sheet.plans_together
        settled(panel, qtbot)
        assert panel.view.state == "stop"
        assert any("Calcium would rise" in text for text in panel.view.stops)
        assert panel.stops.isVisible(), name
    if not panel.turn.isChecked():
        click(panel.turn)
    qtbot.waitUntil(panel.card.show.isEnabled, timeout=5000)
    page = panel.card.page()
    assert page is not None
    assert any("Calcium would rise" in why for why in page.draft)
    assert not panel.card.print.isEnabled()
    assert not panel.card.save.isEnabled()


def test_no_correction_is_started_and_no_card_made_that_rises_too_fast_with_the_rest(demo: MainWindow, qtbot):
    room = room_of(demo)
    danger(room)
    sheet = room.sheet
    sheet.show_parameter("calcium")
    reckoned(sheet, qtbot)
    for button, begins in ((sheet.buttons.plans.start, "Not started."), (sheet.buttons.cards.save, "No card is made.")):
        click(button)
        assert sheet.header.told.text().startswith(f"{begins} ")
        assert "Calcium would rise" in sheet.header.told.text()
    assert room._document.log.plans() == []
    assert room._document.cards() == []
    room._document.edit(f"{room.systems.current()}:water", "calcium", Typed("430", "mg/L"))
    reckoned(sheet, qtbot)
    click(sheet.buttons.plans.start)
    assert sheet.header.told.text().endswith("Hang its card on the stand and take down the older one.")


def test_correct_keeps_answer_and_ramp_in_sight(demo: MainWindow, qtbot):
    demo.resize(1366, 768)
    sheet = room_of(demo).sheet
    reckoned(sheet, qtbot)
    settled(sheet.plans_together, qtbot)
    area = column_of(sheet.plans_together)
    qtbot.waitUntil(lambda: area.verticalScrollBar().maximum() == 0, timeout=5000)
    assert sheet.chart.height() >= 288
    assert not sheet.plans_together.lines.isVisible(), "one line until it is unfolded"
    click(sheet.plans_together.turn)
    qtbot.waitUntil(lambda: area.verticalScrollBar().value() > 0, timeout=5000)
    assert sheet.plans_together.lines.isVisible()


def column_of(widget: QWidget) -> QScrollArea:
    above = widget.parentWidget()
    while not isinstance(above, QScrollArea):
        above = above.parentWidget()
    return above
