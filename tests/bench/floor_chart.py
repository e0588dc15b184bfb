"""The floor of a change: a bare pyqtgraph window that draws the same curves and band, with nothing around them.

It is a good bare window: its items are made once and fed by setData, every pen is one pixel wide, the band is one
polygon without antialiasing, the ranges are fixed so that no axis is drawn anew (a third of the time otherwise), and it
neither reads, solves, words nor lays out anything. The doses are drawn too.
"""

from __future__ import annotations

import sys

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPolygonF
from PySide6.QtWidgets import QApplication, QMainWindow

from tests.bench.probe import SIZE, FirstPaint, PaintWatch, hand_back, resident_mib, settle, time_changes


class Band(pg.GraphicsObject):
    """One polygon between two curves."""

    def __init__(self) -> None:
        super().__init__()
        self.polygon = QPolygonF()

    def set_data(self, x: np.ndarray, low: np.ndarray, high: np.ndarray) -> None:
        self.prepareGeometryChange()
        edge = zip(np.concatenate((x, x[::-1])).tolist(), np.concatenate((low, high[::-1])).tolist(), strict=True)
        self.polygon = QPolygonF([QPointF(a, b) for a, b in edge])

    def boundingRect(self) -> QRectF:
        return self.polygon.boundingRect()

    def paint(self, painter: QPainter, *_: object) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor("#DCE7EF"))
        painter.drawPolygon(self.polygon)


class FloorWindow(QMainWindow):
    """Two plots above each other on one time axis."""

    def __init__(self, curves: dict[str, np.ndarray]) -> None:
        super().__init__()
        self.curves = curves
        self.graphics = pg.GraphicsLayoutWidget(self)
        self.graphics.setBackground("w")
        self.setCentralWidget(self.graphics)
        axis = {"bottom": pg.DateAxisItem()}
        self.ramp = self.graphics.addPlot(row=0, col=0)
        self.doses = self.graphics.addPlot(row=1, col=0, axisItems=axis)
        self.doses.setXLink(self.ramp)
        self.band = Band()
        self.ramp.addItem(self.band)
        pens = {"plan": "b", "uptake_stops": "k", "nothing": "k", "fastest": "#5A5852"}
        self.lines = {name: pg.PlotCurveItem(pen=pg.mkPen(pen, width=1), antialias=True) for name, pen in pens.items()}
        for line in self.lines.values():
            self.ramp.addItem(line)
        self.target = pg.InfiniteLine(angle=0, pen=pg.mkPen("#8C897F", width=1))
        self.ramp.addItem(self.target)
        self.bars = pg.PlotCurveItem(pen=pg.mkPen("#8C897F", width=1), connect="pairs")
        self.doses.addItem(self.bars)

    def fix_ranges(self) -> None:
        """Show all of what is drawn now, and keep to it."""
        for plot in (self.ramp, self.doses):
            plot.autoRange()
            plot.disableAutoRange()

    def draw(self, which: int) -> None:
        """Feed one of the two sets of curves to the items."""

        def given(name: str) -> np.ndarray:
            return self.curves[f"{name}{which}"]

        times = given("times")
        self.band.set_data(times, given("low"), given("high"))
        for name in ("plan", "uptake_stops", "nothing"):
            self.lines[name].setData(times, given(name))
        self.lines["fastest"].setData(*given("fastest"))
        self.target.setValue(float(given("target")[0]))
        at, amounts = given("doses_at"), given("doses_ml")
        self.bars.setData(np.repeat(at, 2), np.column_stack((np.zeros_like(amounts), amounts)).ravel())


def main() -> None:
    with np.load(sys.argv[1]) as stored:
        curves = dict(stored)
    times = int(sys.argv[2])
    app = QApplication([])
    window = FloorWindow(curves)
    window.draw(0)
    window.fix_ranges()
    window.resize(SIZE[0], int(sys.argv[3]))
    first = []
    first_paint = FirstPaint(first.append, app)
    window.show()
    settle(300)
    del first_paint
    watch = PaintWatch(window.graphics.viewport())
    seen = 0

    def change(number: int) -> None:
        nonlocal seen
        seen = watch.count
        window.draw((number + 1) % 2)

    taken = time_changes(change, lambda: watch.count > seen, times, warm_up=10) if times else []
    hand_back(first_paint=first[0], changes=taken, memory=resident_mib(), platform=app.platformName())


if __name__ == "__main__":
    main()
