"""The figures behind a chart as CSV, for a spreadsheet: a column for each line, its unit in the heading.

UTF-8 with the mark at its beginning, RFC 4180, instants as ISO 8601 with their offset, a point in every number. Whatever a spreadsheet would
calculate is guarded (``csv_text.guarded``).
"""

from __future__ import annotations

import codecs
import csv
import io
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, tzinfo

import numpy as np

from evenwater.engine import quantities
from evenwater.screens.csv_text import guarded
from evenwater.screens.exchange_chart import CourseChart
from evenwater.screens.foods_chart import BARE, FED, USUAL, Panel
from evenwater.screens.logbook import HistoryView
from evenwater.screens.pump_drift import WearView
from evenwater.screens.together_views import Course
from evenwater.screens.views import ChartView, Floats
from evenwater.wording import marked, say

# More digits than any of these is known to; what is drawn is not what was typed.
_DIGITS = 6
_WHEN, _DAYS, _HOURS = marked("Date and time"), marked("Days from now"), marked("Running hours (h)")


@dataclass(frozen=True)
class Column:
    """One line or set of points: its heading with the unit, where its points are on the axis, and their values; both of shape (n,)."""

    head: str
    at: Floats
    values: Floats


@dataclass(frozen=True)
class ChartTable:
    """A chart's name, the heading of its axis, and its lines; on a ``dated`` axis places are seconds since the epoch, else figures."""

    name: str
    axis: str
    columns: tuple[Column, ...]
    dated: bool


def write(table: ChartTable, zone: tzinfo) -> bytes:
    """Write a chart's figures, a row for each place on the axis that any of its lines has.

    Parameters
    ----------
    table : ChartTable
        What is written.
    zone : tzinfo
        The zone of the instants that are written.

    Returns
    -------
    bytes
        The file.
    """
    # Whole seconds: a dose and a point of a line at one instant stand in one row.
    shown = [np.round(c.at) if table.dated else c.at for c in table.columns]
    places: Floats = np.unique(np.concatenate(shown))
    known = [dict(zip(at.tolist(), c.values.tolist(), strict=True)) for at, c in zip(shown, table.columns, strict=True)]
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow([guarded(text) for text in (table.axis, *(column.head for column in table.columns))])
    for at in places.tolist():
        place = datetime.fromtimestamp(at, zone).isoformat() if table.dated else _number(at)
        writer.writerow([place, *(_number(values[at]) if at in values else "" for values in known)])
    return codecs.BOM_UTF8 + out.getvalue().encode("utf-8")


def _number(value: float) -> str:
    """Write a number with a point and without an exponent; nothing for one that is not known."""
    return quantities.significant(value, _DIGITS) if np.isfinite(value) else ""


def _head(name: str, unit: str) -> str:
    return f"{name} ({unit})" if unit else name


def of_ramp(view: ChartView, names: Mapping[str, str]) -> ChartTable:
    """Return the figures of a correction; ``names`` are those of its lines."""
    lines = (("plan", view.plan), ("uptake_stops", view.uptake_stops), ("nothing", view.nothing))
    columns = [Column(_head(names[key], view.unit), view.times, series) for key, series in lines]
    low, high = say("{name}, low end", name=names["plan"]), say("{name}, high end", name=names["plan"])
    columns[1:1] = [
        Column(_head(low, view.unit), view.times, view.low),
        Column(_head(high, view.unit), view.times, view.high),
    ]
    columns.append(Column(_head(say("dose"), "mL"), view.doses_at, view.doses_ml))
    readings = [(view.measured_at, view.measured), *((mark.at, mark.value) for mark in view.retests)]
    columns.append(_points(_head(say("reading"), view.unit), readings))
    if view.water is not None:
        row = view.water
        columns += [
            Column(say("pH before a dose"), row.times, row.ph),
            Column(say("pH right after a dose"), row.times, row.ph_after),
            Column(say("aragonite saturation"), row.times, row.saturation),
        ]
    return ChartTable(view.title, say(_WHEN), tuple(columns), dated=True)


def of_history(view: HistoryView, start: float, end: float) -> ChartTable:
    """Return what a log's chart shows between two instants [s since the epoch]."""
    columns = [
        Column(_head(say("reading"), view.unit), view.times, view.values),
        Column(_head(say("dose"), "mL"), view.doses_at, view.doses_ml),
        Column(say("new water"), view.exchanges_at, np.ones(view.exchanges_at.size)),
    ]
    for number, one in enumerate(view.projected, start=1):
        columns.append(Column(_head(say("expected by plan {number}", number=number), view.unit), one.times, one.plan))
    shown = [_between(column, start, end) for column in columns]
    return ChartTable(view.title, say(_WHEN), tuple(c for c in shown if c.at.size) or (shown[0],), dated=True)


def of_together(course: Course) -> ChartTable:
    """Return the figures of a value with all plans."""
    rows = [(say("all together"), course.plan), (say("low end"), course.low), (say("high end"), course.high)]
    if course.exchanged:
        rows.append((say("without exchange"), course.alone))
    columns = tuple(Column(_head(name, course.unit), course.times, series) for name, series in rows)
    return ChartTable(course.title, say(_WHEN), columns, dated=True)


def of_wear(view: WearView, title: str) -> ChartTable:
    """Return the calibrations of a pump."""
    rows = ((say("flow"), view.flows), (say("low end"), view.lows), (say("high end"), view.highs))
    columns = [Column(_head(name, say("mL per min")), view.hours, series) for name, series in rows]
    columns.append(Column(say("counts"), view.hours, np.array(view.counts, dtype=np.float64)))
    if view.now is not None and view.expected is not None:
        columns.append(_points(_head(say("expected today"), say("mL per min")), [(view.now, view.expected)]))
    return ChartTable(title, say(_HOURS), tuple(columns), dated=False)


def of_exchange(view: CourseChart) -> ChartTable:
    """Return the course of a value through an exchange."""
    rows = ((say("value"), view.values), (say("low end"), view.low), (say("high end"), view.high))
    columns = [Column(_head(name, view.unit), view.days, series) for name, series in rows]
    columns.append(Column(_head(say("new water"), view.unit), view.days, np.full(view.days.size, view.new_water)))
    return ChartTable(view.title, say(_DAYS), tuple(columns), dated=False)


def of_foods(panels: Sequence[Panel]) -> ChartTable:
    """Return the courses of nitrate and phosphate with food and without."""
    columns: list[Column] = []
    for panel in panels:
        days = np.array(panel.days)
        for name, series in (
            (say(FED), panel.fed),
            (say(BARE), panel.bare),
            (say(USUAL), (panel.usual,) * len(panel.days)),
        ):
            columns.append(Column(f"{panel.title}: {name}", days, np.array(series)))
    return ChartTable(say("Foods"), say(_DAYS), tuple(columns), dated=False)


def _points(head: str, points: Sequence[tuple[float, float]]) -> Column:
    at, values = zip(*points, strict=True)
    return Column(head, np.array(at), np.array(values))


def _between(column: Column, start: float, end: float) -> Column:
    inside = (column.at >= start) & (column.at <= end)
    return Column(column.head, column.at[inside], column.values[inside])
