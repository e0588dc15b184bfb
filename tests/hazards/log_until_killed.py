"""A program that notes one dose after the other in the real Log sheet and says each amount once it stands in the list."""

from __future__ import annotations

import sys
from datetime import datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from evenwater.ui.main_window import MainWindow
from evenwater.ui.sheet_list import SHEETS
from tests.ui.log_making import hung
from tests.ui.window_making import room_of


def say(words: str) -> None:
    """Say something that is heard even when the next moment is the last."""
    sys.stdout.write(f"{words}\n")
    sys.stdout.flush()


def main(file: Path, jug: str, began: str) -> None:
    """Note doses of 1.1, 1.2, 1.3 mL and so on from a jug, two hours apart, until somebody puts an end to it."""
    app = QApplication([])
    wall = hung(pytest.MonkeyPatch(), datetime.fromisoformat(began))
    window = MainWindow(log=file)
    window.show()
    while window.opening() is None or window.opening().room() is None:
        app.processEvents()
    room = room_of(window)
    room.sheets.choose(SHEETS.index("Log"))
    log = room.log
    log.form.kind.set_current("dose")
    log.form.kind.chosen.emit("dose")
    stock = log.form.fields["stock"]
    stock.set_current(next(name for name, words in stock.combo.options() if words == jug))
    stock.chosen.emit(stock.current())
    for tenths in range(11, 1000):
        amount = f"{tenths / 10:g}"
        line = log.form.fields["amount"].focusProxy()
        line.setFocus()
        QTest.keyClicks(line, amount)
        say(f"trying {amount}")
        QTest.mouseClick(log.form.log, Qt.MouseButton.LeftButton)
        shown = [row.amount.replace("\u00a0", " ") for row in log.list.lines.rows]
        if f"{amount} mL" not in shown:
            raise AssertionError(f"{amount} mL is not in the list: {log.form.messages._shown}")
        say(f"logged {amount}")
        wall.on(hours=2)


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2], sys.argv[3])
