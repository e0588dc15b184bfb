"""Opens the real window for tests of the whole job, and works in it as a keeper does."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget

from evenwater.ui.correct_sheet import CorrectSheet
from evenwater.ui.main_window import MainWindow
from evenwater.ui.room import Room

Open = Callable[..., MainWindow]


def room_of(window: MainWindow) -> Room:
    opening = window.opening()
    assert opening is not None
    room = opening.room()
    assert room is not None
    return room


def sheet_of(window: MainWindow) -> CorrectSheet:
    return room_of(window).sheet


def reckoned(sheet: CorrectSheet, qtbot) -> None:
    """Wait until the answer belongs to the question again."""
    qtbot.waitUntil(lambda: not sheet.waiting(), timeout=5000)


def type_into(sheet: CorrectSheet, path: str, text: str) -> None:
    """Replace what stands in a field, key by key, and go on with Tab."""
    field = sheet.form.fields[path]
    field.setFocus(Qt.FocusReason.TabFocusReason)
    line = QApplication.focusWidget()
    assert isinstance(line, QLineEdit), f"{path} does not take the focus"
    line.selectAll()
    QTest.keyClicks(line, text) if text else QTest.keyClick(line, Qt.Key.Key_Delete)
    QTest.keyClick(line, Qt.Key.Key_Tab)


def choose(sheet: CorrectSheet, path: str, words: str) -> None:
    """Choose an entry of a list with the keys: open, move, Enter."""
    combo = sheet.form.fields[path].combo  # type: ignore[attr-defined]
    combo.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(combo, Qt.Key.Key_Space)
    view = combo.view()
    target = combo.findText(words)
    assert target >= 0, f"{words} is not offered: {[combo.itemText(n) for n in range(combo.count())]}"
    while view.currentIndex().row() < target:
        QTest.keyClick(view, Qt.Key.Key_Down)
    while view.currentIndex().row() > target:
        QTest.keyClick(view, Qt.Key.Key_Up)
    QTest.keyClick(view, Qt.Key.Key_Return)
    # Without a screen nobody gives the focus back from the list that has closed.
    combo.window().activateWindow()


def focus_walk(window: QWidget, most: int = 200) -> list[QWidget]:
    """Return the widgets that Tab reaches, from the one that has the focus, round once."""
    seen: list[QWidget] = []
    for _ in range(most):
        now = QApplication.focusWidget()
        if now is None or now in seen:
            break
        seen.append(now)
        QTest.keyClick(now, Qt.Key.Key_Tab)
    return seen


def example(sheet: CorrectSheet, qtbot) -> None:
    """Fill in the worked example by keyboard: 6.8 to 8.4 dKH in 340 L with soda ash."""
    type_into(sheet, "change.measured", "6.8")
    type_into(sheet, "system.net_volume", "340")
    type_into(sheet, "change.target", "8,4")
    type_into(sheet, "change.fastest_rise", "1")
    type_into(sheet, "change.daily_use", "0.9")
    choose(sheet, "additive.chemical", "sodium CARBonate anhydrous")
    type_into(sheet, "additive.dissolved", "106")
    type_into(sheet, "additive.made_up_to", "1")
    type_into(sheet, "pump.flow", "24")
    type_into(sheet, "pump.doses_per_day", "24")
    reckoned(sheet, qtbot)


def opened(log: Path | None, qtbot, **options: object) -> MainWindow:
    """Open a window on a log and wait until its page is there."""
    window = MainWindow(log=log, **options)  # type: ignore[arg-type]
    # qtbot holds its widgets weakly; the closure keeps this one until it has been closed, and its log with it.
    qtbot.addWidget(window, before_close_func=lambda _: window.isVisible())
    window.setWindowState(Qt.WindowState.WindowNoState)
    window.resize(1366, 768)
    window.show()
    window.activateWindow()
    qtbot.waitUntil(lambda: window.opening() is not None, timeout=10_000)
    return window


def left(window: MainWindow) -> None:
    """End the program as far as it can be ended here: close the window, and let go of everything in it.

    What stays would be dressed again with the next window, which takes seconds. Taken out first, it would be dressed once more.
    """
    assert window.close()
    page = window.centralWidget()
    window._opening = None
    page.deleteLater()
    QCoreApplication.sendPostedEvents(page, QEvent.Type.DeferredDelete)
