"""What the chart draws with: made once, then fed. Imports pyqtgraph, so it is loaded after the first paint.

Costs that shaped this file: an antialiased fill and a fill made of two curves cost several times
the rest of the chart, so the band is one polygon painted without antialiasing; wide or dashed
lines of many points are slow, so every line is thinned to the points that can be seen.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import pyqtgraph as pg
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from evenwater.ui.theme import Tokens

Floats = npt.NDArray[np.float64]
_SEEN_PX = 0.3
_BEND = 0.002
# Thinning so few points would cost more than drawing them.
FEW = 40


@dataclass(frozen=True)
class Scale:
    """Between data and scene: ``rect`` [px] shows ``start..end`` [s] and ``low..high`` [unit shown]."""

    rect: QRectF
    start: float
    end: float
    low: float
    high: float

    def x(self, at: float) -> float:
        """Return the scene coordinate [px] of an instant [s]."""
        return self.rect.left() + (at - self.start) / (self.end - self.start) * self.rect.width()

    def y(self, value: float) -> float:
        """Return the scene coordinate [px] of a value."""
        return self.rect.bottom() - (value - self.low) / (self.high - self.low) * self.rect.height()

    def at(self, x: float) -> float:
        """Return the instant [s] at a scene coordinate [px]."""
        return self.start + (x - self.rect.left()) / self.rect.width() * (self.end - self.start)

    def xs(self, at: Floats) -> Floats:
        """Return the scene coordinates [px] of instants [s], same shape."""
        return self.rect.left() + (at - self.start) * (self.rect.width() / (self.end - self.start))

    def ys(self, values: Floats) -> Floats:
        """Return the scene coordinates [px] of values, same shape."""
        return self.rect.bottom() - (values - self.low) * (self.rect.height() / (self.high - self.low))


def cut_to_width(x: Floats, y: Floats, columns: int) -> tuple[Floats, Floats]:
    """Cut a curve of more points than ``columns`` [px] to its lowest and highest point in each column.

    ``x`` and ``y`` have shape (n,), ``x`` in order; a shorter curve comes back unchanged.
    """
    if columns < 1 or x.size <= 2 * columns:
        return x, y
    per_column = math.ceil(x.size / columns)
    whole = x.size // per_column * per_column
    blocks = y[:whole].reshape(-1, per_column)
    starts = np.arange(0, whole, per_column)
    picked = np.concatenate(([0, x.size - 1], starts + blocks.argmin(axis=1), starts + blocks.argmax(axis=1)))
    keep = np.unique(picked)
    return x[keep], y[keep]


def visible_points(x_px: Floats, y_px: Floats) -> npt.NDArray[np.intp]:
    """Return the indices of the points needed to draw a curve within a third of a pixel.

    ``x_px`` and ``y_px`` have shape (n,) [px], ``x_px`` in order.
    """
    size = x_px.size
    if size <= FEW:
        return np.arange(size)
    # Most curves of a plan are straight between a few bends, so begin with the bends.
    slope = np.diff(y_px) / np.maximum(np.diff(x_px), 1e-9)
    keep = np.ones(size, dtype=bool)
    keep[1:-1] = np.abs(np.diff(slope)) > _BEND
    for _ in range(12):
        error = np.abs(y_px - np.interp(x_px, x_px[keep], y_px[keep]))
        if float(error.max()) <= _SEEN_PX:
            return np.flatnonzero(keep)
        # The worst point of every stretch between two kept points becomes a kept point itself.
        stretch = np.cumsum(keep)
        order = np.lexsort((error, stretch))
        worst = order[np.flatnonzero(np.diff(stretch[order], append=stretch[-1] + 1))]
        keep[worst[error[worst] > _SEEN_PX]] = True
    return np.arange(size)


def polygon(x: Floats, y: Floats) -> QPolygonF:
    """Return the points as a polygon; ``x`` and ``y`` have shape (n,)."""
    made: QPolygonF = pg.functions.arrayToQPolygonF(x, y)
    return made


def _runs(left: Floats, tops: Floats, widths: Floats) -> tuple[Floats, Floats, Floats]:
    """Join neighbouring bars of one height that touch; all of shape (n,), in order [px]."""
    if left.size == 0:
        return left, tops, widths
    breaks = (np.diff(tops) != 0) | (np.diff(left) > widths[:-1] + 2)
    first = np.concatenate(([0], np.flatnonzero(breaks) + 1))
    last = np.concatenate((first[1:] - 1, [left.size - 1]))
    return left[first], tops[first], left[last] + widths[last] - left[first]


class Line(pg.PlotCurveItem):
    """One antialiased line. Its extent is the plot's, set with the range, not measured at every paint."""

    def __init__(self) -> None:
        super().__init__(antialias=True, skipFiniteCheck=True)
        self._extent = QRectF()

    def set_extent(self, extent: QRectF) -> None:
        """Set the area the line may touch, in data coordinates."""
        if extent != self._extent:
            self.prepareGeometryChange()
            self._extent = extent

    def boundingRect(self) -> QRectF:
        """Return the extent."""
        return self._extent


class Band(pg.GraphicsObject):
    """The band between two curves as one polygon in data coordinates, filled without antialiasing."""

    def __init__(self) -> None:
        super().__init__()
        self._shape = QPolygonF()
        self._fill = QColor()

    def dress(self, tokens: Tokens) -> None:
        """Set the colour."""
        self._fill = QColor(tokens.wash)
        self.update()

    def set_data(self, x: Floats, low: Floats, high: Floats) -> None:
        """Set both edges over ``x``; all of shape (n,)."""
        self.prepareGeometryChange()  # also repaints
        self._shape = polygon(np.concatenate((x, x[::-1])), np.concatenate((low, high[::-1])))

    def boundingRect(self) -> QRectF:
        """Return the polygon's extent."""
        return self._shape.boundingRect()

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Fill the polygon."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._fill)
        painter.drawPolygon(self._shape)


class SceneItem(QGraphicsItem):
    """An item in scene coordinates whose area is handed to it."""

    def __init__(self, depth: float) -> None:
        super().__init__()
        self.setZValue(depth)
        self._area = QRectF()
        self._tokens: Tokens | None = None

    def dress(self, tokens: Tokens) -> None:
        """Set the colours."""
        self._tokens = tokens
        self.update()

    def set_area(self, area: QRectF) -> None:
        """Set the painted area [px]."""
        if area != self._area:
            self.prepareGeometryChange()
            self._area = area
        self.update()

    def boundingRect(self) -> QRectF:
        """Return the painted area."""
        return self._area


class Grid(SceneItem):
    """Faint lines at the values and at the midnights, and the thin rule of the target."""

    def __init__(self) -> None:
        super().__init__(-20.0)
        self._lines: list[QLineF] = []
        self._target = QLineF()

    def set_data(self, area: QRectF, levels: list[float], moments: list[float], bottom: float, target: float) -> None:
        """Set the lines: ``levels`` and ``target`` across ``area``, ``moments`` down to ``bottom``, in scene [px]."""
        self._lines = [QLineF(area.left(), round(y), area.right(), round(y)) for y in levels]
        self._lines += [QLineF(round(x), area.top(), round(x), bottom) for x in moments]
        self._target = QLineF(area.left(), round(target), area.right(), round(target))
        self.set_area(QRectF(area.left(), area.top(), area.width(), bottom - area.top()))

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Paint the lines."""
        if self._tokens is not None:
            painter.setPen(QPen(QColor(self._tokens.faint), 1))
            painter.drawLines(self._lines)
            painter.setPen(QPen(QColor(self._tokens.rule), 1))
            painter.drawLine(self._target)


class DoseBars(SceneItem):
    """One bar for each dose; where doses stand closer than pixels, their outline."""

    def __init__(self) -> None:
        super().__init__(-5.0)
        self._bars: list[QRectF] = []

    def set_data(self, scale: Scale, at: Floats, amounts: Floats) -> None:
        """Set the doses: ``at`` [s] and ``amounts`` [mL], both of shape (m,)."""
        inside = (at >= scale.start) & (at <= scale.end)
        x, tops = scale.xs(at[inside]), scale.ys(amounts[inside])
        base = scale.rect.bottom()
        if x.size > scale.rect.width() / 3:
            columns = np.round(x)
            x, first = np.unique(columns, return_index=True)
            tops = np.minimum.reduceat(tops, first)
        step = float(x[-1] - x[0]) / (x.size - 1) if x.size > 1 else 12.0
        width = min(12.0, max(1.0, math.floor(step * 0.6)))
        left = np.round(x)
        widths = np.minimum(left + width, scale.rect.right()) - left
        if step <= width:
            left, tops, widths = _runs(left, np.round(tops), widths)
        rows = zip(left.tolist(), tops.tolist(), widths.tolist(), strict=True)
        self._bars = [QRectF(a, b, w, base - b) for a, b, w in rows]
        self.set_area(scale.rect)

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Paint the bars."""
        if self._tokens is not None:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(self._tokens.rule))
            painter.drawRects(self._bars)


class Edge(SceneItem):
    """The fastest allowed slope: a thin line with short ticks on its forbidden side."""

    def __init__(self) -> None:
        super().__init__(4.0)
        self._line = QLineF()
        self._ticks: list[QLineF] = []
        self._clip = QRectF()

    def set_data(self, scale: Scale, at: Floats, values: Floats) -> None:
        """Set the line through two points: ``at`` [s] and ``values``, both of shape (2,)."""
        start, end = (QPointF(scale.x(t), scale.y(v)) for t, v in zip(at.tolist(), values.tolist(), strict=True))
        self._line = QLineF(start, end)
        length = self._line.length()
        self._ticks = []
        if length > 0:
            along = (end - start) / length
            # Forbidden is earlier: the side towards the left of the direction of travel on a rising line,
            # towards the right of it on a falling one.
            lean = QPointF(along.y(), -along.x()) if values[1] >= values[0] else QPointF(-along.y(), along.x())
            # Beside the slope, not on it: a plan at the fastest pace keeps its own line clear.
            start, end = start + lean * 3.0, end + lean * 3.0
            self._line = QLineF(start, end)
            stroke = (lean - along * 0.6) * 5.0
            feet = np.arange(10.0, length, 10.0)
            xs, ys = (start.x() + along.x() * feet).tolist(), (start.y() + along.y() * feet).tolist()
            dx, dy = stroke.x(), stroke.y()
            self._ticks = [QLineF(x, y, x + dx, y + dy) for x, y in zip(xs, ys, strict=True)]
        self._clip = scale.rect
        self.set_area(scale.rect)

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Paint line and ticks inside the plot."""
        if self._tokens is not None:
            painter.setClipRect(self._clip)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QColor(self._tokens.muted), 1))
            painter.drawLine(self._line)
            painter.drawLines(self._ticks)


class Marks(SceneItem):
    """The reading, and the handle at the end of the ramp."""

    handle_target_px = 36.0

    def __init__(self) -> None:
        super().__init__(20.0)
        self._reading: QPointF | None = None
        self.handle: QPointF | None = None
        self._hot = self._held_back = False

    def set_data(self, plot: QRectF, reading: QPointF | None, handle: QPointF | None) -> None:
        """Set the places in scene [px]; ``None`` where there is nothing to show."""
        self._reading, self.handle = reading, handle
        self.set_area(plot.adjusted(-24, -24, 24, 24))

    def move_handle(self, x: float, *, held_back: bool) -> None:
        """Move the handle to ``x`` [px]; ``held_back`` shows that it may go no further."""
        if self.handle is not None:
            self.handle = QPointF(x, self.handle.y())
            self._held_back = held_back
            self.update()

    def set_hot(self, hot: bool) -> None:
        """Show that the handle can be taken."""
        if hot != self._hot:
            self._hot = hot
            self.update()

    def over_handle(self, place: QPointF) -> bool:
        """Return whether a place in the scene is on the handle's target of 36 px."""
        if self.handle is None:
            return False
        away = place - self.handle
        return max(abs(away.x()), abs(away.y())) <= self.handle_target_px / 2

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Paint reading and handle."""
        if self._tokens is None:
            return
        tokens = self._tokens
        ink, leaf, blue = QColor(tokens.ink), QColor(tokens.leaf), QColor(tokens.blue)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._reading is not None:
            painter.setPen(QPen(leaf, 2))
            painter.setBrush(ink)
            painter.drawEllipse(self._reading, 5.5, 5.5)
        if self.handle is None:
            return
        stopped = QColor(tokens.stop) if self._held_back else blue
        painter.setPen(QPen(stopped, 2))
        painter.setBrush(blue if self._hot and not self._held_back else leaf)
        painter.drawEllipse(self.handle, 10, 10)
        painter.setPen(QPen(leaf if self._hot and not self._held_back else stopped, 1.6))
        for side in (-1, 1):
            if side < 0 and self._held_back:
                x = self.handle.x() - 14
                painter.drawLine(QPointF(x, self.handle.y() - 10), QPointF(x, self.handle.y() + 10))
                continue
            tip = self.handle + QPointF(side * 6, 0)
            painter.drawPolyline(QPolygonF([tip + QPointF(-side * 3, -3), tip, tip + QPointF(-side * 3, 3)]))


class Cursor(SceneItem):
    """The upright line at the instant that is read out."""

    def __init__(self) -> None:
        super().__init__(15.0)

    def set_data(self, x: float, top: float, bottom: float) -> None:
        """Stand at ``x`` from ``top`` to ``bottom`` [px]."""
        self.set_area(QRectF(round(x) - 1, top, 2, bottom - top))

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Paint the line."""
        if self._tokens is not None:
            painter.setPen(QPen(QColor(self._tokens.ink), 1))
            x = self._area.left() + 1
            painter.drawLine(QPointF(x, self._area.top()), QPointF(x, self._area.bottom()))
