"""The window is painted before anything slow is loaded: checked by order, so that no clock is needed."""

from __future__ import annotations

import subprocess
import sys

SLOW = ("gsw", "icalendar", "numpy", "peewee", "periodictable", "pint", "pyqtgraph", "sqlite3")

IMPORTED = """
import sys
import evenwater.ui.start
print(*sorted(name for name in {slow!r} if name in sys.modules))
"""

PAINTED_FIRST = """
import os, sys
from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QWidget
import evenwater.ui.start as start
from evenwater.ui.main_window import MainWindow

class Eye(QObject):
    painted = False

    def eventFilter(self, watched, event):
        self.painted = self.painted or (event.type() == QEvent.Type.Paint and isinstance(watched, QWidget))
        return False

class Watched(MainWindow):
    def __init__(self, *given, **named):
        super().__init__(*given, **named)
        self.eye = Eye(self)
        start.QApplication.instance().installEventFilter(self.eye)

    def load(self):
        print("painted" if self.eye.painted else "not painted", flush=True)
        os._exit(0)

start.MainWindow = Watched
start.run(["--demo", "--close-after", "20"])
"""


def printed(code: str) -> str:
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout.strip()


def test_first_paint_waits_for_no_slow_library() -> None:
    assert printed(IMPORTED.format(slow=SLOW)) == ""


def test_rest_is_loaded_after_the_first_paint() -> None:
    assert printed(PAINTED_FIRST) == "painted"
