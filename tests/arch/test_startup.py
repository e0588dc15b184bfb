"""The window is painted before anything slow is loaded: checked by order, so that no clock is needed."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.arch.tree import PRODUCT

ROOT = PRODUCT.parents[1]
ENVIRONMENT = {**os.environ, "PYTHONPATH": os.pathsep.join((str(PRODUCT.parent), str(ROOT)))}

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

# What is not on the Correct sheet when it is first painted, and the libraries whose figures are kept.
AFTER_THE_CHART = (
    "PySide6.QtPrintSupport", "evenwater.card.output", "evenwater.screens.learned", "evenwater.screens.together",
    "evenwater.session.demo", "evenwater.ui.backups_window", "evenwater.ui.jugs_sheet", "evenwater.ui.log_sheet",
    "evenwater.ui.rounds_sheet", "icalendar", "periodictable", "pint",
    # Only for a log on a server, if at all: peewee would load the driver as soon as it is loaded itself.
    "evenwater.store.facility", "evenwater.store.postgres", "evenwater.ui.server_page", "keyring", "psycopg",
)  # fmt: skip

CHART_FIRST = """
import os, sys, time
os.environ["EVENWATER_BENCH_START"] = repr(time.monotonic())
from pathlib import Path
from PySide6.QtCore import QCoreApplication
from tests.bench.product import watch

def seen(look):
    learning = look.window.opening().room().learning
    print(learning.resting, *sorted(name for name in {after!r} if name in sys.modules), flush=True)
    learning.learned.connect(woken)

def woken():
    print("woken", flush=True)
    os._exit(0)

watch(seen, ["--log", {log!r}])
"""


def printed(code: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, env=ENVIRONMENT, capture_output=True, text=True, timeout=60, check=False
    )
    assert done.returncode == 0, done.stderr
    return done.stdout.strip()


@pytest.fixture
def log(tmp_path: Path) -> str:
    """A log with a room in it."""
    file = str(tmp_path / "log.evenwater")
    made = [sys.executable, "-m", "tests.bench.start_log", file]
    subprocess.run(made, cwd=ROOT, env=ENVIRONMENT, timeout=60, check=True)
    return file


def test_first_paint_waits_for_no_slow_library() -> None:
    assert printed(IMPORTED.format(slow=SLOW)) == ""


def test_rest_is_loaded_after_the_first_paint() -> None:
    assert printed(PAINTED_FIRST) == "painted"


def test_what_is_not_on_the_first_sheet_is_loaded_after_its_chart_is_painted(log: str) -> None:
    assert printed(CHART_FIRST.format(after=AFTER_THE_CHART, log=log)).split() == ["True", "woken"]
