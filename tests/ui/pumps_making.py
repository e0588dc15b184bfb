"""Works in the Pumps sheet of the real window as a keeper does: keys that go where the focus is, and the mouse."""

from __future__ import annotations

import json
from datetime import timedelta

from PySide6.QtCore import Qt

from evenwater.engine.quantities import Typed
from evenwater.screens import correct
from evenwater.screens.local_zone import present
from evenwater.session import Card
from evenwater.ui.main_window import MainWindow
from evenwater.ui.pumps_sheet import PumpsSheet
from tests.ui.stocks_making import document_of, press, tab_to, to_sheet, write
from tests.ui.window_making import room_of

SHELF, SECOND, RACK, EXCHANGE = "Shelf pump, head 1", "Shelf pump, head 2", "Rack pump", "Exchange pump, new water"


def pumps_of(window: MainWindow) -> PumpsSheet:
    """Go to the Pumps sheet by key."""
    to_sheet("Pumps")
    sheet = room_of(window).pumps
    assert sheet.isVisible()
    return sheet


def pump_named(window: MainWindow, name: str) -> str:
    """Return the id of a pump by its name."""
    document = document_of(window)
    (found,) = [pump for pump in document.records("pump") if document.value(pump, "name").text == name]
    return found


def show_pump(window: MainWindow, name: str, qtbot) -> PumpsSheet:
    """Show a pump on the Pumps sheet."""
    sheet = pumps_of(window)
    room_of(window).pumps_pane.choose(pump_named(window, name))
    settled(sheet, qtbot)
    assert sheet.header.name.text() == name
    return sheet


def settled(sheet: PumpsSheet, qtbot) -> None:
    """Wait until what the sheet shows belongs to what stands in it."""
    qtbot.waitUntil(lambda: not sheet.waiting(), timeout=5000)


def typed_in(sheet: PumpsSheet, path: str) -> Typed:
    """Return what is kept of a field of the pump or the calibration that is shown."""
    return sheet.records.by_path().get(path, Typed(""))


def run_three(sheet: PumpsSheet, seconds: str, reads: tuple[str, ...]) -> None:
    """Type the runs by keyboard alone: Tab to the first field, and from there with Enter."""
    tab_to(sheet.form.fields["calibration.run_1_seconds"].focusProxy())
    write(seconds)
    press(Qt.Key.Key_Return)
    for number, text in enumerate(reads, start=1):
        write(text)
        press(Qt.Key.Key_Return)
        if number < len(reads):
            press(Qt.Key.Key_Return)  # over the time that is like the first


def rows_of(sheet: PumpsSheet) -> list[str]:
    """Return the list of calibrations."""
    return list(sheet.list.model().stringList())


def add_card(window: MainWindow, plan: str, parameter: str = "alkalinity") -> Card:
    """Issue a card for a correction of the first system as it stands in the document."""
    document = document_of(window)
    system = document.records("system")[0]
    values = document.values(f"{system}:{parameter}")
    batch = document.batch_in_use(values["stock"].text)
    raw = correct.raw_question(
        parameter, document.values(system), values, document.values(batch), document.values(values["pump"].text)
    )
    now = present()
    body = json.dumps(correct.question_text(raw))
    card = Card(plan, 1, system, parameter, now, now + timedelta(days=3), body, batch_id=batch)
    assert document.add_card(card)
    return card
