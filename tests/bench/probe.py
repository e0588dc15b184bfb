"""What the measured processes share: the clock, the eye on paint events, the figures they hand back."""

from __future__ import annotations

import gc
import json
import os
import sys
import time
from collections.abc import Callable
from dataclasses import dataclass, field

from PySide6.QtCore import QCoreApplication, QEvent, QEventLoop, QObject, QTimer
from PySide6.QtWidgets import QApplication, QWidget

START = "EVENWATER_BENCH_START"
SIZE = (1366, 768)
# Between two changes [ms]: a quick typist's ten keys a second. What was typed is saved meanwhile, as it is for a keeper.
PAUSE_MS = 100


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
    """Notes when one widget has been painted, together with all that was to be painted in the same pass of its window.

    The window tells it by ``flushed`` at the end of each pass: whatever is reckoned right after the pass, in the same turn of the event loop,
    is no part of it.
    """

    def __init__(self, widget: QWidget) -> None:
        super().__init__(widget)
        self._painted = False
        self.count = 0
        """How many times it was painted."""
        self.at = 0.0
        """When it was on the screen for the first time since ``begin`` [s]; 0 before."""
        self.worked = 0.0
        """What this thread had worked until then [s]."""
        widget.installEventFilter(self)

    def begin(self) -> None:
        """Forget what was painted."""
        self._painted, self.at = False, 0.0

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Notice a paint event; nothing is on the screen yet."""
        if event.type() == QEvent.Type.Paint:
            self.count += 1
            self._painted = True
        return False

    def flushed(self) -> None:
        """Note the time if the widget was painted in the pass that is over."""
        if self._painted and not self.at:
            self.at, self.worked = time.perf_counter(), time.thread_time()


class Flushing:
    """A window that tells a ``PaintWatch`` whenever all that was to be painted has been painted; to be named before Qt's class."""

    eye: PaintWatch | None = None

    def event(self, event: QEvent) -> bool:
        """Paint, then say so."""
        kind = event.type()
        handled = bool(super().event(event))  # type: ignore[misc]
        if kind == QEvent.Type.UpdateRequest and self.eye is not None:
            self.eye.flushed()
        return handled


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
        settle(PAUSE_MS)
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


@dataclass
class Taken:
    """How long keys took [ms], each list of shape (times,).

    ``echo`` until the field that was typed in has been painted, with all that is painted in the same pass; ``painted`` until nothing was left to
    be done at once, ``answered`` until nothing is waited for any more; ``echo_cpu`` and ``cpu`` are what the window's thread worked until the first and the last of them.
    """

    echo: list[float] = field(default_factory=list)
    echo_cpu: list[float] = field(default_factory=list)
    painted: list[float] = field(default_factory=list)
    answered: list[float] = field(default_factory=list)
    cpu: list[float] = field(default_factory=list)


def never() -> bool:
    """Say that nothing is waited for."""
    return False


def time_keys(
    press: Callable[[int], None],
    watch: PaintWatch,
    times: int,
    *,
    pause_ms: float,
    warm_up: int,
    waiting: Callable[[], bool] = never,
) -> Taken:
    """Return how long each of so many keys took.

    ``press(i)`` sends the i-th key, ``watch`` looks at the field, ``waiting()`` says whether an answer is still on its way. Between keys
    the event loop runs for ``pause_ms`` [ms], and the collector of cycles runs there and not inside.
    """
    taken, loop = Taken(), QEventLoop()
    for number in range(warm_up + times):
        settle(pause_ms)
        if number % 20 == 0:
            gc.collect()
        watch.begin()
        painted = 0.0
        began, worked = time.perf_counter(), time.thread_time()
        press(number)
        while True:
            more = loop.processEvents(QEventLoop.ProcessEventsFlag.AllEvents)
            now = time.perf_counter()
            if not more and not painted:
                painted = now
            if not more and watch.at and not waiting():
                break
            if now - began > 10:
                sys.stderr.write(f"key {number} was not painted or answered within 10 s\n")
                sys.stderr.flush()
                os._exit(1)
            if not more:
                time.sleep(0.0002)
        if number >= warm_up:
            taken.cpu.append((time.thread_time() - worked) * 1000)
            taken.echo_cpu.append((watch.worked - worked) * 1000)
            for kept, at in ((taken.echo, watch.at), (taken.painted, painted), (taken.answered, now)):
                kept.append((at - began) * 1000)
    return taken


def until_quiet(quiet_ms: float) -> tuple[float, float]:
    """Run the event loop until nothing was done for so long; return how long it worked in all, and at a time at most [ms]."""
    loop, worked, longest, last = QEventLoop(), 0.0, 0.0, time.perf_counter()
    while True:
        began = time.perf_counter()
        if loop.processEvents(QEventLoop.ProcessEventsFlag.AllEvents):
            last = time.perf_counter()
            worked, longest = worked + last - began, max(longest, last - began)
        elif (began - last) * 1000 > quiet_ms:
            return worked * 1000, longest * 1000
        else:
            time.sleep(0.001)
