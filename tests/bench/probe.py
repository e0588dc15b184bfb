"""What the measured processes share: the clock, the eye on paint events, the figures they hand back."""

from __future__ import annotations

import gc
import json
import os
import sys
import time
from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, QEvent, QEventLoop, QObject, QTimer
from PySide6.QtWidgets import QApplication, QWidget

START = "EVENWATER_BENCH_START"
SIZE = (1366, 768)


def since_start_ms() -> float:
    """Return the time since the harness started this process [ms], by the clock both share."""
    return (time.monotonic() - float(os.environ[START])) * 1000


def resident_mib() -> float:
    """Return the memory this process holds now [MiB], from the kernel."""
    with open("/proc/self/status", encoding="ascii") as status:  # noqa: PTH123  (a kernel file, no path to manage)
        held = next(line for line in status if line.startswith("VmRSS:"))
    return float(held.split()[1]) / 1024


def hand_back(**figures: object) -> None:
    """Print the figures for the harness and end the process at once, so that tear-down is not measured."""
    print(json.dumps(figures), flush=True)
    sys.stdout.flush()
    os._exit(0)


class FirstPaint(QObject):
    """Notes when anything has first been painted, and calls back when the event loop is free again."""

    def __init__(self, then: Callable[[float], None], parent: QObject) -> None:
        super().__init__(parent)
        self._then = then
        self._at = 0.0
        self._seen = False
        QCoreApplication.instance().installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Watch for a widget's paint event; the zero timer fires when all of the window has been painted."""
        if not self._seen and event.type() == QEvent.Type.Paint and isinstance(watched, QWidget):
            self._seen = True
            QCoreApplication.instance().removeEventFilter(self)
            QTimer.singleShot(0, self._painted)
        return False

    def _painted(self) -> None:
        self._at = since_start_ms()
        self._then(self._at)


class PaintWatch(QObject):
    """Counts the paint events of one widget."""

    def __init__(self, widget: QWidget) -> None:
        super().__init__(widget)
        self.count = 0
        widget.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Count a paint event."""
        if event.type() == QEvent.Type.Paint:
            self.count += 1
        return False


def settle(milliseconds: float) -> None:
    """Let the event loop run for a while."""
    until = time.perf_counter() + milliseconds / 1000
    while time.perf_counter() < until:
        QApplication.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 5)


def time_changes(change: Callable[[int], None], painted: Callable[[], bool], times: int, warm_up: int) -> list[float]:
    """Return how long each change took until it was painted [ms], shape (times,).

    ``change(i)`` makes the i-th change, ``painted()`` says whether all that it changed has been painted since. The
    event loop runs between changes until it is idle, and the collector of cycles runs there and not inside.
    """
    taken = []
    wake = QTimer()  # so that waiting for events ends even when none comes
    wake.start(1000)
    for number in range(warm_up + times):
        settle(20)
        if number % 20 == 0:
            gc.collect()
        began = time.perf_counter()
        change(number)
        while not painted():
            QApplication.processEvents(
                QEventLoop.ProcessEventsFlag.AllEvents | QEventLoop.ProcessEventsFlag.WaitForMoreEvents
            )
            if time.perf_counter() - began > 10:
                # Inside a slot an exception would only be printed, and the process would wait for ever.
                sys.stderr.write(f"change {number} was not painted within 10 s\n")
                sys.stderr.flush()
                os._exit(1)
        if number >= warm_up:
            taken.append((time.perf_counter() - began) * 1000)
    return taken
