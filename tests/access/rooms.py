"""The demo's room in a window, sheet by sheet; made once for all that a test looks at, since making it costs most of a second."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QPoint
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QWidget,
)

from evenwater.ui.main_window import MainWindow
from evenwater.ui.room import Room
from evenwater.ui.sheet_list import SHEETS
from tests.ui.window_making import opened, room_of


def settled() -> None:
    """Let everything be worked out and put in its place."""
    for _ in range(4):
        QApplication.processEvents()


def demo(qtbot) -> tuple[MainWindow, Room]:
    window = opened(None, qtbot, demo=True)
    return window, room_of(window)


def each_sheet(room: Room, qtbot) -> Iterator[tuple[str, QWidget]]:
    """Show one sheet after the other, each with its answer."""
    for number, name in enumerate(SHEETS):
        room.sheets.choose(number)
        sheet = room.by_name(name)
        settled()
        waiting = getattr(sheet, "waiting", None)
        if waiting is not None:
            qtbot.waitUntil(lambda asks=waiting: not asks(), timeout=5000)
        settled()
        yield name, sheet


def controls(window: QWidget) -> list[QWidget]:
    """Return what can be pressed, typed into or chosen from, as it is seen now."""
    kinds = QAbstractButton | QComboBox | QAbstractItemView | QLineEdit
    return [
        w
        for w in window.findChildren(QWidget)
        if w.isVisible() and isinstance(w, kinds) and not isinstance(w, QHeaderView)
    ]


def place(widget: QWidget) -> QPoint:
    """Return the corner of a widget in its window."""
    return widget.mapTo(widget.window(), QPoint(0, 0))


def called(widget: QWidget) -> str:
    """Return a widget in words, for what a test says."""
    words = widget.text() if isinstance(widget, QAbstractButton | QLabel) else ""
    return f"{type(widget).__name__} {widget.accessibleName() or words!r}"


def press(key: object, *modifiers: object) -> None:
    """Press a key where the focus is."""
    held = QApplication.focusWidget()
    assert held is not None, "nothing has the focus"
    QTest.keyClick(held, key, *modifiers)  # type: ignore[call-overload]
    QApplication.processEvents()
