"""The Upkeep sheet in the real window."""

from __future__ import annotations

import pytest

from evenwater.engine.quantities import Typed
from evenwater.ui.main_window import MainWindow
from tests.ui.stocks_making import click, to_sheet
from tests.ui.window_making import opened, room_of

# None of it is about the log.
pytestmark = pytest.mark.usefixtures("young_demo")


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
    """One figure is the sheet's own; where the Exchange sheet says more than one, it is shown and no second figure taken."""
    to_sheet("Upkeep")
    sheet, document = room_of(demo).upkeep, room_of(demo)._document
    water = f"{sheet.records.system}:water"
    assert not sheet.exchanged.isVisible()
    assert "10\u00a0L (litres) a day go out, 9.9\u00a0L" in sheet.elsewhere.text()
    sheet.records.edit_exchanged(Typed("55", "L per day"), sheet)
    assert document.value(sheet.records.system, "exchanged") == Typed("")
    settled = {line.what: line.settles for line in sheet.view.spans if line.settles}
    # (9.9 L * 8 dKH + 340 L * (dosed - used)) / 10 L, from 52.8 mL of 2.00024 meq per mL and 0.9 dKH.
    assert settled["Alkalinity"].replace("\u00a0", " ") == "at 6.93 dKH"
    document.edit(water, "alkalinity", Typed("much", "dKH"))
    qtbot.waitUntil(lambda: sheet.view.state == "refused")
    said = [row.label.text() for row in sheet.messages._rows if row.isVisibleTo(sheet)]
    assert said[0].startswith("New water, alkalinity: ")
    for name in ("alkalinity", "way"):
        document.edit(water, name, Typed(""))
    qtbot.waitUntil(sheet.exchanged.isVisible)
    assert not any(line.settles for line in sheet.view.spans)
    sheet.exchanged.setFocus()
    qtbot.keyClicks(sheet.exchanged.line, "10")
    assert document.value(sheet.records.system, "exchanged") == Typed("10", "L per day")
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
