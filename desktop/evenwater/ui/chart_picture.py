"""The picture inside the chart: the items, made once, and where each of them stands.

Loaded after the first paint, because it imports pyqtgraph. It knows nothing of mouse or keys;
``chart.py`` does.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from datetime import tzinfo

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPen
from PySide6.QtWidgets import QGraphicsRectItem, QWidget

from evenwater.screens.shown import figure
from evenwater.screens.views import ChartView, Floats
from evenwater.ui import chart_water
from evenwater.ui.chart_axis import Axis, Widths, time_ticks, value_ticks
from evenwater.ui.chart_items import (
    FEW,
    Band,
    Cursor,
    DoseBars,
    Edge,
    Grid,
    Line,
    Marks,
    Scale,
    SceneItem,
    cut_to_width,
    visible_points,
)
from evenwater.ui.chart_labels import Label, Labels, end_labels, free_spot
from evenwater.ui.chart_retests import Retests
from evenwater.ui.chart_words import NAMES, name_of
from evenwater.ui.theme import Tokens, scaled
from evenwater.wording import marked, say

_SERIES = ("plan", "uptake_stops", "nothing")
_DASHED, _DOTTED = (7.0, 5.0), (1.0, 3.5)
_MARGIN_STEP = 8
_NOW = marked("now")
_BESIDE = 18.0


class Picture:
    """Owns the view and its items; ``arrange`` puts them in their places."""

    def __init__(self, parent: QWidget, zone: tzinfo | None) -> None:
        self._zone = zone
        self.view = pg.GraphicsView(parent, background=None)
        # The chart itself has the keys; a view that could take them as well would be one more stop without a name.
        for part in (self.view, self.view.viewport()):
            part.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.view.setFrameShape(self.view.Shape.NoFrame)
        self.box = pg.ViewBox(enableMouse=False, enableMenu=False)
        self.box.disableAutoRange()
        self.box.setZValue(0)
        self.band = Band()
        self.curves = {name: Line() for name in _SERIES}
        self.grid, self.bars, self.edge = Grid(), DoseBars(), Edge()
        self.marks, self.cursor, self.labels = Marks(), Cursor(), Labels()
        self.water = chart_water.WaterLines()
        self.retests = Retests()
        self.value_axis, self.dose_axis, self.time_axis = Axis(upright=True), Axis(upright=True), Axis(upright=False)
        self.ph_axis, self.saturation_axis = Axis(upright=True), Axis(upright=True)
        self.veil = QGraphicsRectItem()
        self.veil.setPen(QPen(Qt.PenStyle.NoPen))
        self.veil.setZValue(100)
        self.veil.setVisible(False)
        self.cursor.setVisible(False)
        self.box.addItem(self.band, ignoreBounds=True)
        for name in reversed(_SERIES):
            self.box.addItem(self.curves[name], ignoreBounds=True)
        scene = self.view.scene()
        for item in (self.box, *self._items(), self.veil, *self._axes()):
            scene.addItem(item)
        self.scale = Scale(QRectF(0, 0, 1, 1), 0.0, 1.0, 0.0, 1.0)
        self._right = 0
        self._left = 0
        self._bottom = 0.0
        self._font = QFont()
        self._metrics = QFontMetricsF(self._font)
        self._width = Widths(self._font)

    def _items(self) -> tuple[SceneItem, ...]:
        return (self.grid, self.bars, self.edge, self.water, self.marks, self.retests, self.cursor, self.labels)

    def _axes(self) -> tuple[Axis, ...]:
        return (self.value_axis, self.dose_axis, self.ph_axis, self.saturation_axis, self.time_axis)

    def dress(self, tokens: Tokens, font: QFont, sharpness: float = 0.0) -> None:
        """Set colours and fonts; ``font`` is the base font, ``sharpness`` how many pixels of the paper are one of ours, 0 for the screen's."""
        sharpness = sharpness or self.view.devicePixelRatioF()
        self._font = scaled(font, 10)
        bold = scaled(font, 10, bold=True)
        self._metrics = QFontMetricsF(bold)  # the wider face measures, so that either fits
        self._left = self._right = 0
        self._width = Widths(bold)
        self.view.setBackground(QColor(tokens.leaf))
        ink = QColor(tokens.ink)
        # These pens are in pixels of the screen, of which a sharp one has more.
        self.curves["plan"].setPen(pg.mkPen(QColor(tokens.blue), width=2 * sharpness))
        for name, pattern in (("uptake_stops", _DASHED), ("nothing", _DOTTED)):
            pen = pg.mkPen(ink, width=sharpness)
            pen.setDashPattern(list(pattern))
            self.curves[name].setPen(pen)
        self.band.dress(tokens)
        for item in self._items():
            item.dress(tokens)
        for axis in self._axes():
            axis.dress(tokens, self._font, bold)
        self.labels.set_fonts(self._font, bold)
        veil = QColor(tokens.leaf)
        veil.setAlpha(175)
        self.veil.setBrush(veil)

    def arrange(self, view: ChartView, ramp_end: float, frozen: tuple[float, float] | None) -> None:
        """Put everything in its place.

        ``ramp_end`` [s] is where the handle stands; ``frozen`` holds the time range [s] while the
        handle is in hand, so that the ground does not move under it.
        """
        width, height = float(self.view.width()), float(self.view.height())
        line = self._metrics.height()
        axis_top = height - line - 14
        dose_height = min(84.0, max(44.0, (0.19 if view.water is None else 0.14) * height))
        water_height = 0.0 if view.water is None else min(110.0, max(58.0, 0.2 * height))
        water_rect = QRectF(0, axis_top - water_height, 1, water_height)
        dose_rect = QRectF(0, water_rect.top() - dose_height - (12.0 if water_height else 0.0), 1, dose_height)
        plot = QRectF(0, 10, 1, dose_rect.top() - 14 - 10)
        low, high = _value_range(view)
        values = value_ticks(low, high, plot.height(), 1.5 * line)
        most = float(view.doses_ml.max()) * 1.12 if view.doses_ml.size and view.doses_ml.max() > 0 else 1.0
        doses = value_ticks(0.0, most, dose_height, 1.35 * line)
        value_title = self._wrap(view.title if view.unit in view.title else f"{view.title}, {view.unit}")
        dose_title = self._wrap(view.labels.get("doses", say("mL each dose")))
        left = self._left_margin(value_title + dose_title, [t.text for t in (*values, *doses)])
        names = self._names(view)
        in_row = [] if view.water is None else [view.water.ph_name, view.water.saturation_name]
        right = self._right_margin([*names.values(), *in_row])
        for rect in (plot, dose_rect, water_rect):
            rect.setLeft(left)
            rect.setRight(max(left + 40.0, width - right))
        start, end = frozen or _time_range(view)
        self.scale = scale = Scale(plot, start, end, low, high)
        dose_scale = Scale(dose_rect, start, end, 0.0, most)
        self._bottom = dose_rect.bottom()
        self._feed(view, scale)
        times = time_ticks(start, end, plot.width(), self._width, self._zone)
        midnights = [scale.x(t.at) for t in times if t.major]
        levels = [scale.y(t.at) for t in values]
        self.grid.set_data(plot, levels, midnights, axis_top, scale.y(view.target))
        upright = QRectF(8, plot.top(), left - 8, plot.height())
        self.value_axis.place(upright, [(scale.y(t.at), t) for t in values])
        self.value_axis.set_title(value_title)
        upright = QRectF(8, dose_rect.top(), left - 8, dose_height)
        self.dose_axis.place(upright, [(dose_scale.y(t.at), t) for t in doses])
        self.dose_axis.set_title(dose_title)
        level = QRectF(left, axis_top, plot.width(), height - axis_top)
        self.time_axis.place(level, [(scale.x(t.at), t) for t in times])
        self.bars.set_data(dose_scale, view.doses_at, view.doses_ml)
        self.edge.set_data(scale, *view.fastest)
        reading = QPointF(scale.x(view.measured_at), scale.y(view.measured)) if view.measured_at >= start else None
        handle = None if view.followed else QPointF(scale.x(ramp_end), scale.y(view.target))
        self.marks.set_data(plot, reading, handle)
        placed = self._place_labels(view, names, reading, ramp_end, right)
        placed += self._show_water(view, water_rect, start, end, right)
        self.retests.set_data(scale, view.retests, view.now, self._bottom)
        self.retests.setVisible(view.followed)
        self.labels.set_data(QRectF(0, 0, width, height), placed)
        self.veil.setRect(QRectF(0, 0, width, height))

    def _show_water(self, view: ChartView, rect: QRectF, start: float, end: float, right: int) -> list[Label]:
        """Put the row of pH and saturation in its place, and return the names of its lines; none without one."""
        for item in (self.water, self.ph_axis, self.saturation_axis):
            item.setVisible(view.water is not None)
        if view.water is None:
            return []
        at = chart_water.scales(view.water, rect, start, end)
        levels: list[float] = []
        for axis, scale, title in (
            (self.ph_axis, at.ph, "pH"),
            (self.saturation_axis, at.saturation, say("aragonite")),
        ):
            marks = chart_water.marks(scale, 1.1 * self._metrics.height())
            axis.place(QRectF(8, scale.rect.top(), scale.rect.left() - 8, scale.rect.height()), marks)
            axis.set_title([title])
            levels += [y for y, _ in marks]
        self.water.set_data(view.water, at, levels)
        self._bottom = rect.bottom()
        return chart_water.names(view.water, at, self._metrics, right - _BESIDE)

    def stand_cursor(self, at: float | None) -> None:
        """Stand the cursor at an instant [s], or take it away."""
        self.cursor.setVisible(at is not None)
        if at is not None:
            self.cursor.set_data(self.scale.x(at), self.scale.rect.top(), self._bottom)

    def _feed(self, view: ChartView, scale: Scale) -> None:
        self.box.setGeometry(scale.rect)
        self.box.setRange(
            xRange=(0.0, scale.end - scale.start), yRange=(scale.low, scale.high), padding=0, disableAutoRange=False
        )
        # The box would move its curves while they are painted, and so have them painted twice.
        self.box.prepareForPaint()
        columns = int(scale.rect.width())
        extent = QRectF(0.0, scale.low, scale.end - scale.start, scale.high - scale.low)
        for name in _SERIES:
            x, y = cut_to_width(view.times, getattr(view, name), columns)
            seen = visible_points(scale.xs(x), scale.ys(y))
            self.curves[name].set_extent(extent)
            self.curves[name].setData(x[seen] - scale.start, y[seen])
        keep = _band_points(view, scale, columns)
        self.band.set_data(view.times[keep] - scale.start, view.low[keep], view.high[keep])

    def _names(self, view: ChartView) -> dict[str, str]:
        names = {key: name_of(view, key) for key in NAMES}
        names["target"] = f"{names['target']} {figure(view.target, view.decimals)}"
        names["measured"] = f"{names['measured']} {figure(view.measured, view.decimals)}"
        return names

    def _place_labels(
        self, view: ChartView, names: dict[str, str], reading: QPointF | None, ramp_end: float, right: int
    ) -> list[Label]:
        scale, plot, metrics = self.scale, self.scale.rect, self._metrics
        last = min(scale.end, float(view.times[-1]))
        ends: list[tuple[str, float, bool]] = []
        across = np.linspace(scale.start, last, 160)
        sampled = {
            name: scale.ys(np.interp(across, view.times, getattr(view, name))) for name in (*_SERIES, "low", "high")
        }
        left_early: list[tuple[str, QPointF]] = []
        for name in _SERIES:
            y = sampled[name]
            if plot.top() - 1 <= y[-1] <= plot.bottom() + 1:
                ends.append((names[name], float(y[-1]), name == "plan"))
                continue
            outside = int(np.argmax((y < plot.top()) | (y > plot.bottom())))
            left_early.append((names[name], QPointF(scale.x(float(across[outside])), float(y[outside]))))
        ends.append((names["target"], scale.y(view.target), False))
        placed = end_labels(ends, plot, plot.top() - 4, self._bottom, metrics, right - _BESIDE)
        sampled["target"] = np.full_like(across, scale.y(view.target))
        curves = np.column_stack((np.tile(scale.xs(across), len(sampled)), np.concatenate(list(sampled.values()))))
        at, values = view.fastest
        fast = [
            (float(at[0] + f * (at[-1] - at[0])), float(values[0] + f * (values[-1] - values[0])))
            for f in (1, 0.8, 0.5)
        ]
        inside: list[tuple[str, Iterable[QPointF]]] = [
            (text, [place + QPointF(10, 4), place + QPointF(10, -metrics.height() - 4)]) for text, place in left_early
        ]
        size = self._size_of(names["fastest"])
        if not view.followed:
            inside.append((names["fastest"], _around([QPointF(scale.x(t), scale.y(v)) for t, v in fast], size)))
        if reading is not None:
            inside.append((names["measured"], _around([reading], self._size_of(names["measured"]))))
        knob = QRectF(scale.x(ramp_end) - 14, scale.y(view.target) - 14, 28, 28)
        taken = [] if view.followed else [knob]
        taken += [QRectF(scale.x(m.at) - 12, scale.y(m.value) - 12, 24, 24) for m in view.retests]
        if view.now is not None and scale.start <= view.now <= scale.end:
            foot = QPointF(scale.x(view.now) + 6, plot.bottom() - metrics.height() - 4)
            now = say(_NOW)
            inside.append((now, [foot, foot - QPointF(12 + self._width(now), 0), *_around([foot], self._size_of(now))]))
        for text, anchors in inside:
            box, covers = free_spot(self._size_of(text), anchors, curves, taken, plot)
            taken.append(box)
            placed.append(Label(text, box, ground=covers))
        return placed

    def _size_of(self, text: str) -> QRectF:
        return QRectF(0, 0, self._width(text) + 2, self._metrics.height())

    def _wrap(self, text: str) -> list[str]:
        widest = max(92.0, self._metrics.height() * 5.5)
        lines: list[str] = []
        for word in text.split():
            if lines and self._width(f"{lines[-1]} {word}") <= widest:
                lines[-1] += f" {word}"
            else:
                lines.append(word)
        return lines

    def _left_margin(self, titles: list[str], ticks: list[str]) -> int:
        need = max(map(self._width, titles)) + max(map(self._width, ticks), default=0)
        self._left = max(self._left, _MARGIN_STEP * math.ceil((need + 28) / _MARGIN_STEP))
        return self._left

    def _right_margin(self, names: list[str]) -> int:
        """Return the margin the widest name needs; it never shrinks, so the plot does not breathe."""
        need = _BESIDE + max(map(self._width, names)) + 10
        self._right = max(self._right, _MARGIN_STEP * math.ceil(need / _MARGIN_STEP))
        return self._right


def _around(places: list[QPointF], size: QRectF) -> Iterator[QPointF]:
    """Yield corners for a name near some places, the best first: above, then below, each time further off."""
    width, height = size.width(), size.height()
    gaps = (12.0, 20.0, 30.0, 44.0)
    for place in places:
        for gap in gaps:
            yield place + QPointF(-width - 2, -height - gap)
            yield place + QPointF(-width / 2, -height - gap)
            yield place + QPointF(gap, -height - gap)
    for place in places:
        for gap in gaps:
            yield place + QPointF(gap, gap)
            yield place + QPointF(-width / 2, gap)
            yield place + QPointF(4 * gap, 0.6 * gap)


def _band_points(view: ChartView, scale: Scale, columns: int) -> np.ndarray:
    step = max(1, math.ceil(view.times.size / max(1, columns)))
    coarse = np.arange(0, view.times.size, step)
    if step == 1 and coarse.size <= FEW:
        return coarse
    x = scale.xs(view.times[coarse])
    low = visible_points(x, scale.ys(view.low[coarse]))
    high = visible_points(x, scale.ys(view.high[coarse]))
    keep: np.ndarray = np.union1d(coarse[np.union1d(low, high)], [view.times.size - 1])
    return keep


def _time_range(view: ChartView) -> tuple[float, float]:
    start, end = float(view.times[0]), float(view.times[-1])
    span = max(end - start, 60.0)
    if start - span <= view.measured_at < start:
        start = view.measured_at
    return start - 0.012 * span, end


def _value_range(view: ChartView) -> tuple[float, float]:
    """Return the range of values: the plan whole, the what-ifs as far as they leave the plan readable."""
    core: Floats = np.concatenate(
        (view.low, view.high, view.plan, [view.target, view.measured, *(m.value for m in view.retests)])
    )
    low, high = float(core.min()), float(core.max())
    span = max(high - low, 10.0**-view.decimals)
    others: Floats = np.concatenate((view.uptake_stops, view.nothing, view.fastest[1]))
    low = min(low, max(float(others.min()), low - 1.5 * span))
    high = max(high, min(float(others.max()), high + 1.5 * span))
    pad = 0.06 * (high - low)
    return low - pad, high + pad
