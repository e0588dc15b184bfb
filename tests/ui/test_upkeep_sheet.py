"""The Upkeep and the Rounds sheet in the real window."""

from __future__ import annotations

import pytest

from evenwater.engine.quantities import Typed
from evenwater.ui.main_window import MainWindow
from evenwater.ui.room import SHEETS
from tests.ui.stocks_making import click, to_sheet
from tests.ui.window_making import opened, room_of


@pytest.fixture
def demo(qtbot) -> MainWindow:
    return opened(None, qtbot, demo=True)


def test_every_value_with_a_use_is_kept(demo: MainWindow):
    to_sheet("Upkeep")
    sheet = room_of(demo).upkeep
    assert [row.parameter for row in sheet.view.rows] == ["Alkalinity", "Calcium", "Nitrate"]
    # 0.9 dKH in 340 L from 2.00024 meq per mL, by hand: 0.9 / 2.8039 * 340 / 2.00024 / 24 = 2.27 mL, in steps of 0.1 mL.
    assert sheet.view.rows[0].dose.replace("\u00a0", " ") == "2.2 mL every hour"
    assert sheet.view.cautions, "cautions stand before the doses"


def test_exchange_is_saved_and_settles_the_salt(demo: MainWindow, qtbot):
    to_sheet("Upkeep")
    sheet = room_of(demo).upkeep
    assert not any(line.settles for line in sheet.view.spans)
    sheet.exchanged.setFocus()
    qtbot.keyClicks(sheet.exchanged.line, "10")
    assert room_of(demo)._document.value(sheet.records.system, "exchanged") == Typed("10", "L per day")
    assert any(line.settles for line in sheet.view.spans)


def test_a_missing_jug_is_said_with_its_value_and_opens_the_correction(demo: MainWindow):
    room = room_of(demo)
    room._document.edit(f"{room.systems.current()}:calcium", "stock", Typed(""))
    to_sheet("Upkeep")
    assert room.upkeep.view.state == "empty"
    said = [row.label.text() for row in room.upkeep.messages._rows if row.isVisibleTo(room.upkeep)]
    assert any(text.startswith("Calcium: ") for text in said), said
    click(next(b for b in room.upkeep.buttons if b.property("parameter") == "calcium"))
    assert room.sheet.isVisible()
    assert room.sheet.records.parameter == "calcium"


def test_a_line_of_the_rounds_opens_what_it_is_about(demo: MainWindow):
    room = room_of(demo)
    system = room.systems.current()
    room._document.edit(f"{system}:alkalinity", "measured_at", Typed("2026-01-05T08:00:00+00:00"))
    to_sheet("Rounds")
    duty = next(d for d in room.rounds.duties if d.what == "Test alkalinity" and d.record == system)
    row = next(r for r in room.rounds._rows if r._duty == duty)
    click(row.what)
    assert room.log.isVisible()
    assert room.log.form.said()["parameter"].text == "alkalinity"
    assert SHEETS[0] == "Rounds"
