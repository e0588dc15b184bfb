"""Starts the product's window as its own command does, and lets a benchmark look on."""

from __future__ import annotations

import os
import sys
import traceback
from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import QEvent, QObject, QTimer

from evenwater.__main__ import main
from evenwater.ui import start
from evenwater.ui.main_window import MainWindow
from tests.bench.probe import FirstPaint, Flushing, since_start_ms


class Look(QObject):
    """Follows a starting window: when it is first painted, and when its chart is."""

    def __init__(self, window: MainWindow, then: Callable[[Look], None]) -> None:
        super().__init__(window)
        self.window = window
        self.first_paint = 0.0
        self.first_chart = 0.0
        self._then = then
        FirstPaint(self._painted, self)

    def _painted(self, at: float) -> None:
        """From now on the first chart that is made is watched from the moment it is made: its first paint comes right after."""
        self.first_paint = at
        from evenwater.ui.chart import RampChart  # which the product loads next

        prepare = RampChart.prepare
        look = self

        def prepare_watched(chart: RampChart) -> None:
            RampChart.prepare = prepare  # type: ignore[method-assign]
            prepare(chart)
            assert chart.picture is not None
            chart.picture.view.viewport().installEventFilter(look)

        RampChart.prepare = prepare_watched  # type: ignore[method-assign]

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Note the first paint of the chart; the zero timer fires when all of the window has been painted."""
        if event.type() == QEvent.Type.Paint:
            watched.removeEventFilter(self)
            QTimer.singleShot(0, self._charted)
        return False

    def _charted(self) -> None:
        self.first_chart = since_start_ms()
        try:
            self._then(self)
        except Exception:  # noqa: BLE001  (whatever it is, the harness must hear of it)
            # Inside a slot it would only be printed, and the window would stay open for ever.
            traceback.print_exc()
            sys.stderr.flush()
            os._exit(1)


def watch(then: Callable[[Look], None], words: Sequence[str] = ("--demo",)) -> None:
    """Run the window, on the demo or as ``words`` say, until ``then``, called once its first chart is painted, ends the process."""

    class WatchedWindow(Flushing, MainWindow):
        def __init__(self, **options: Any) -> None:
            super().__init__(**options)
            self.look = Look(self, then)

    start.MainWindow = WatchedWindow
    main(words)
