"""The small ramp on the card: black lines told apart by their dashes and by a name at their end."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from evenwater.card import words
from evenwater.card.items import CAPITAL, MM_PER_POINT, Block, Fill, Item, Point, Stroke
from evenwater.card.paper import Paper
from evenwater.card.text import baseline, broken, line, line_height, lines, width_of
from evenwater.screens.shown import decimal
from evenwater.screens.views import ChartView, Floats
from evenwater.wording import say, say_all

HATCH = 1.2
"""Distance of the strokes that fill the band [mm]."""
_BOLD, _THIN, _HAIR = 0.7, 0.4, 0.15
_MARK_EVERY = 15.0
_DASHED, _DOTTED = (2.6, 1.3), (0.01, 1.1)


@dataclass(frozen=True)
class _Scale:
    """Maps one axis: ``low`` to ``high`` in data lies at ``start`` to ``stop`` [mm]."""

    low: float
    high: float
    start: float
    stop: float

    def at(self, value: float) -> float:
        return self.start + (value - self.low) / (self.high - self.low) * (self.stop - self.start)


@dataclass(frozen=True)
class _Name:
    """A name for a line that ends at ``y`` [mm], and the line's thickness and dash."""

    text: str
    y: float
    width: float
    dash: tuple[float, ...]


def ramp(chart: ChartView, paper: Paper, width: float) -> Block:
    """Set the chart ``width`` mm wide, with axis, band, lines and their names."""
    small = paper.sizes.small
    title = lines(chart.title, width, paper.sizes.note, True)
    top = sum(block.height for block in title) + 2.0
    height = 34.0 if width < 110 else 38.0
    low, high, step = _y_range(chart)
    ticks = [low + index * step for index in range(round((high - low) / step) + 1)]
    decimals = max(0, -math.floor(math.log10(step) + 1e-9))
    marks = [decimal(f"{tick:.{decimals}f}") for tick in ticks]
    left = max(width_of(mark, small) for mark in marks) + 2.0
    named = _named(chart)
    column = min(max(width_of(text, small) for text, _, _, _ in named) + 0.5, width * 0.42)
    x = _Scale(min(float(chart.times[0]), chart.measured_at), float(chart.times[-1]), left, width - column - 7.0)
    y = _Scale(low, high, top + height, top)
    items: list[Item] = [item for index, block in enumerate(title) for item in block.moved(0.0, index * block.height)]
    items += _axes(chart, x, y, list(zip(ticks, marks, strict=True)), small)
    items += _band(chart, x, y)
    level = y.at(chart.target)
    items.append(Stroke(((x.start, level), (x.stop, level)), _HAIR * 2))
    for _, series, thick, dash in named[1:]:
        items += _curve(chart.times, series, x, y, thick, dash)
    items += _dot(x.at(chart.measured_at), y.at(chart.measured), 1.1)
    ends = [_Name(text, y.at(_last(series)), thick, dash) for text, series, thick, dash in named]
    items += _names(ends, x.stop, width, column, small, top, top + height)
    return Block(top + height + 2 * line_height(small) + 1.5, tuple(items))


def _named(chart: ChartView) -> list[tuple[str, Floats, float, tuple[float, ...]]]:
    """Return each line's name, series, thickness and dash, the target first."""
    said = {key: chart.labels.get(key, word) for key, word in say_all(words.CHART_LABELS).items()}
    return [
        (f"{said['target']} {_plain(chart.target, chart.decimals)}", np.array([chart.target]), _HAIR * 2, ()),
        (said["plan"], chart.plan, _BOLD, ()),
        (said["uptake_stops"], chart.uptake_stops, _THIN, _DASHED),
        (said["nothing"], chart.nothing, _THIN * 1.3, _DOTTED),
    ]


def _plain(value: float, decimals: int) -> str:
    text = f"{value:.{decimals}f}"
    return decimal(text.rstrip("0").rstrip(".") if "." in text else text)


def _last(series: Floats) -> float:
    known = series[np.isfinite(series)]
    return float(known[-1]) if known.size else math.nan


def _y_range(chart: ChartView) -> tuple[float, float, float]:
    """Return a round low end, high end and step that hold every line."""
    every = np.concatenate(
        [chart.plan, chart.low, chart.high, chart.uptake_stops, chart.nothing, [chart.target, chart.measured]]
    )
    every = every[np.isfinite(every)]
    low, high = float(every.min()), float(every.max())
    span = max(high - low, abs(high) * 1e-3, 1e-9)
    step = _round_step(span / 5)
    least = math.floor(low / step + 1e-9)
    return least * step, max(math.ceil(high / step - 1e-9), least + 1) * step, step


def _round_step(rough: float) -> float:
    """Return the smallest of 1, 2, 5 times a power of ten that is not under ``rough``."""
    power = 10.0 ** math.floor(math.log10(rough))
    return next(power * factor for factor in (1, 2, 5, 10) if power * factor >= rough * (1 - 1e-9))


def _axes(chart: ChartView, x: _Scale, y: _Scale, marks: Sequence[tuple[float, str]], small: float) -> list[Item]:
    items: list[Item] = [Stroke(((x.start, y.stop), (x.start, y.start), (x.stop, y.start)), 0.3)]
    centre = CAPITAL * small * MM_PER_POINT / 2
    for tick, mark in marks:
        level = y.at(tick)
        items.append(Stroke(((x.start - 1.2, level), (x.start, level)), 0.3))
        words_width = width_of(mark, small)
        items += line(mark, small).moved(x.start - 2.0 - words_width, level + centre - baseline(small))
    hours = (x.high - chart.measured_at) / 3600
    most = max(2.0, (x.stop - x.start) / _MARK_EVERY)
    unit, seconds = (say(words.HOURS), 3600.0) if hours <= 96 else (say(words.DAYS), 86400.0)
    step = _whole_step((x.high - chart.measured_at) / seconds / most, unit == say(words.HOURS))
    count = 0
    while chart.measured_at + count * step * seconds <= x.high + 1:
        place = x.at(chart.measured_at + count * step * seconds)
        if place >= x.start - 0.01:
            items.append(Stroke(((place, y.start), (place, y.start + 1.2)), 0.3))
            mark = f"{count * step:g}"
            items += line(mark, small).moved(place - width_of(mark, small) / 2, y.start + 1.5)
        count += 1
    items += line(unit, small).moved(x.start, y.start + 1.5 + line_height(small))
    return items


def _whole_step(rough: float, hours: bool) -> int:
    """Return a step a person counts in: parts of a day in hours, else 1, 2, 5 times a power of ten."""
    if hours:
        return next((step for step in (1, 2, 3, 6, 12) if step >= rough), 24)
    return max(1, round(_round_step(rough)))


def _band(chart: ChartView, x: _Scale, y: _Scale) -> list[Item]:
    """Return upright strokes from the band's low to its high edge: hatching needs no grey."""
    items: list[Item] = []
    count = int((x.stop - x.start) / HATCH)
    places = x.start + HATCH * np.arange(1, count + 1)
    moments = x.low + (places - x.start) / (x.stop - x.start) * (x.high - x.low)
    lows = np.interp(moments, chart.times, chart.low)
    highs = np.interp(moments, chart.times, chart.high)
    for place, low, high in zip(places.tolist(), lows.tolist(), highs.tolist(), strict=True):
        if math.isfinite(low) and math.isfinite(high):
            items.append(Stroke(((place, y.at(low)), (place, y.at(high))), _HAIR))
    return items


def _curve(times: Floats, series: Floats, x: _Scale, y: _Scale, width: float, dash: tuple[float, ...]) -> list[Item]:
    """Return the line, in pieces where values are missing."""
    pieces: list[list[Point]] = [[]]
    for moment, value in zip(times.tolist(), series.tolist(), strict=True):
        if math.isfinite(value):
            pieces[-1].append((x.at(moment), y.at(value)))
        elif pieces[-1]:
            pieces.append([])
    return [Stroke(tuple(piece), width, dash) for piece in pieces if len(piece) > 1]


def _dot(x: float, y: float, radius: float) -> list[Item]:
    corners = [(x + radius * math.cos(turn), y + radius * math.sin(turn)) for turn in np.linspace(0, 2 * math.pi, 24)]
    return [Fill(tuple(corners))]


def _names(
    ends: Sequence[_Name], edge: float, width: float, column: float, small: float, top: float, bottom: float
) -> list[Item]:
    """Set each name beside its line's end, pushed apart where ends are close, joined by a short leader."""
    ends = sorted((end for end in ends if math.isfinite(end.y)), key=lambda end: end.y)
    set_in = [broken(end.text, column, small) for end in ends]
    heights = [len(rows) * line_height(small) for rows in set_in]
    tops: list[float] = []
    for end, high in zip(ends, heights, strict=True):
        tops.append(max(end.y - high / 2, tops[-1] + heights[len(tops) - 1] if tops else top - 2.0))
    limit = bottom + 3.0
    for index in range(len(tops) - 1, -1, -1):
        tops[index] = min(tops[index], limit - heights[index])
        limit = tops[index]
    items: list[Item] = []
    for end, rows, high, place in zip(ends, set_in, heights, tops, strict=True):
        middle = place + high / 2
        items.append(Stroke(((edge, end.y), (edge + 1.5, end.y), (edge + 5.5, middle)), min(end.width, 0.4), end.dash))
        for index, row in enumerate(rows):
            items += line(row, small).moved(width - column, place + index * line_height(small))
    return items
