"""Works in the Stocks sheet of the real window as a keeper does: keys that go where the focus is, and the mouse."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView, QApplication, QLineEdit, QPushButton, QWidget

from evenwater.engine.quantities import Typed
from evenwater.engine.recipe import Carried
from evenwater.session import Document
from evenwater.ui.main_window import MainWindow
from evenwater.ui.sheet_list import SHEETS
from evenwater.ui.stocks_sheet import StocksSheet
from tests.ui.window_making import room_of

CONTROL, ALT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier
ASH, CALCIUM_JUG = "Soda ash, white jug", "Calcium, clear jug"


def to_sheet(name: str) -> None:
    """Go to a sheet by its key: Ctrl and its number in the list, 0 for the tenth, R for the recovery."""
    number = SHEETS.index(name) + 1
    press(Qt.Key.Key_R if number > 10 else Qt.Key(Qt.Key.Key_0 + number % 10), CONTROL)


def stocks_of(window: MainWindow, qtbot) -> StocksSheet:
    """Go to the Stocks sheet by key, and wait until it shows a jug or nothing."""
    to_sheet("Stocks")
    stocks = room_of(window).stocks
    assert stocks.isVisible()
    settled(stocks, qtbot)
    return stocks


def settled(stocks: StocksSheet, qtbot) -> None:
    """Wait until what the sheet shows belongs to what stands in it, and stands where it belongs."""
    QApplication.processEvents()
    qtbot.waitUntil(lambda: not stocks._soon.isActive(), timeout=5000)


def press(key: Qt.Key, modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    """Press a key wherever the focus is."""
    QTest.keyClick(QApplication.focusWidget() or QApplication.activeWindow(), key, modifier)


def write(text: str) -> None:
    """Type over what stands in the line that has the focus."""
    line = QApplication.focusWidget()
    assert isinstance(line, QLineEdit)
    line.selectAll()
    QTest.keyClicks(line, text)


def tab_to(target: QWidget, most: int = 80) -> None:
    """Go on with Tab until a widget has the focus."""
    for _ in range(most):
        if QApplication.focusWidget() is target:
            return
        press(Qt.Key.Key_Tab)
    pytest.fail(f"Tab does not reach {target.accessibleName() or target}")


def click(button: QPushButton) -> None:
    """Press a button with the mouse; one that cannot be pressed fails the test."""
    assert button.isVisible(), f"{button.text()} is not shown"
    assert button.isEnabled(), f"{button.text()} cannot be pressed"
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def click_row(view: QAbstractItemView, row: int) -> None:
    """Go to a row of a list with the mouse, and click it."""
    index: QModelIndex = view.model().index(row, 0)
    view.scrollTo(index)
    place = view.visualRect(index).center()
    QTest.mouseMove(view.viewport(), place)
    QTest.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)


def click_into(field: QWidget) -> None:
    """Click the line of a field."""
    line = field.focusProxy()
    assert isinstance(line, QLineEdit)
    assert line.isVisible()
    QTest.mouseClick(line, Qt.MouseButton.LeftButton)
    assert QApplication.focusWidget() is line


def document_of(window: MainWindow) -> Document:
    document = window.opening().document()
    assert document is not None
    return document


def jug_named(window: MainWindow, name: str) -> str:
    """Return the id of a jug by its name."""
    document = document_of(window)
    (found,) = [stock for stock in document.records("stock") if document.value(stock, "name").text == name]
    return found


def show_jug(window: MainWindow, name: str, qtbot) -> StocksSheet:
    """Show a jug of the shelf on the Stocks sheet."""
    stocks = stocks_of(window, qtbot)
    room_of(window).jugs.choose(jug_named(window, name))
    settled(stocks, qtbot)
    return stocks


def new_batch(window: MainWindow, jug: str, qtbot) -> StocksSheet:
    """Begin a new batch of a jug."""
    stocks = show_jug(window, jug, qtbot)
    click(stocks.form.again)
    settled(stocks, qtbot)
    return stocks


def typed_in(stocks: StocksSheet, field: str) -> Typed:
    """Return what is kept of a field of the batch that is shown."""
    return stocks.records.values().get(field, Typed(""))


def shown_fields(stocks: StocksSheet) -> set[str]:
    """Return the names of the fields of the batch that can be seen."""
    return {path.removeprefix("batch.") for path, field in stocks.form.fields.items() if field.isVisible()}


def message_at(stocks: StocksSheet, field: str) -> str:
    """Return the sentence beside a field, as long as it is in sight."""
    shell = stocks.form.fields[f"batch.{field}"]
    assert shell.isVisible(), field
    message: str = shell.message  # type: ignore[attr-defined]
    return message


def carried(stocks: StocksSheet, name: str) -> float:
    """Return what a millilitre of the batch that is shown carries [canonical unit per mL]."""
    assert stocks._stocked is not None
    assert stocks._stocked.answer is not None, stocks.answer.view.messages
    found: Carried = next(item for item in stocks._stocked.answer.carries if item.name == name)
    return found.per_litre / 1000.0


def label_can_be_made(stocks: StocksSheet) -> bool:
    """Return whether the label's buttons can be pressed: all or none."""
    enabled = {button.isEnabled() for button in stocks.label_actions.buttons}
    assert len(enabled) == 1
    return enabled.pop()
