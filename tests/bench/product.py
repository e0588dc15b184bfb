"""Starts the product's window as its own command does, and lets a benchmark look on."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QWidget

from evenwater.__main__ import main
from evenwater.ui import start
from evenwater.ui.main_window import MainWindow
from tests.bench.probe import FirstPaint, PaintWatch, since_start_ms


class Look(QObject):
    """Follows a starting window: when it is first painted, and when its chart is."""

    def __init__(self, window: MainWindow, then: Callable[[Look], None]) -> None:
        super().__init__(window)
        self.window = window
        self.first_paint = 0.0
        self.first_chart = 0.0
        self.chart_paints: PaintWatch
        self._then = then
        self._timer = QTimer(self)
        self._timer.setInterval(1)
        self._timer.timeout.connect(self._look)
        self._watching = False
        FirstPaint(self._painted, self)

    def _painted(self, at: float) -> None:
        self.first_paint = at
        self._timer.start()

    def _look(self) -> None:
        if not self._watching:
            viewport = self._chart_viewport()
            if viewport is not None:
                self._watching = True
                self.chart_paints = PaintWatch(viewport)
        elif self.chart_paints.count:
            self.first_chart = since_start_ms()
            self._timer.stop()
            self._then(self)

    def _chart_viewport(self) -> QWidget | None:
        opening = self.window.opening()
        room = opening.room() if opening is not None else None
        picture = room.sheet.chart.picture if room is not None else None
        return picture.view.viewport() if picture is not None else None


def watch(then: Callable[[Look], None]) -> None:
    """Run the window on the demo until ``then``, called once its first chart is painted, ends the process."""

    class WatchedWindow(MainWindow):
        def __init__(self, demo: bool = False, log: object = None) -> None:
            super().__init__(demo=demo, log=log)
            self.look = Look(self, then)

    start.MainWindow = WatchedWindow
    main(["--demo"])
