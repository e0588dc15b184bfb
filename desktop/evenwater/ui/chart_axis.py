"""The axes of the chart: where the ticks go, what stands beside them, and the items that paint them.

One time axis serves the values and the doses. Ticks stand on local wall-clock hours and midnights,
so a day of 23 or 25 hours keeps its midnights.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from functools import lru_cache

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from evenwater.screens.shown import day_words, decimal, month_words
from evenwater.ui.theme import Tokens
from evenwater.wording import say

_MINUTE_STEPS = (15, 30, 60, 120, 180, 360, 720)
_DAY_STEPS = (1, 2, 3, 4, 7, 14, 28, 56, 112)
_WEEK = 7
_LABEL_GAP = 18.0
# From here on [s] days of the week say nothing; a month is taken as the twelfth of a year.
_LONG_S, _MONTH_S = 150.0 * 86400.0, 30.4375 * 86400.0


@dataclass(frozen=True)
class Tick:
    """One tick: ``at`` [s since the epoch] or the value itself, its label (or empty).

    ``major`` ticks stand at midnight, ``dated`` labels carry a date.
    """

    at: float
    text: str
    major: bool = False
    dated: bool = False


def local(at: float, zone: tzinfo | None) -> datetime:
    """Return the wall-clock time of an instant [s since the epoch], in ``zone`` or the computer's own."""
    return datetime.fromtimestamp(at, zone)


def day_text(when: datetime, *, weekday: bool = True) -> str:
    """Return ``"Thu 26 Nov"``, or without the weekday."""
    return day_words(when, weekday=weekday)


def moment_text(at: float, zone: tzinfo | None) -> str:
    """Return ``"Thu 26 Nov 14:05"`` for an instant [s since the epoch]."""
    when = local(at, zone)
    return f"{day_text(when)} {when:%H:%M}"


def time_ticks(
    start: float, end: float, length: float, width_of: Callable[[str], float], zone: tzinfo | None = None
) -> list[Tick]:
    """Return the ticks of a time axis, as dense as their labels allow.

    Parameters
    ----------
    start, end : float
        Ends of the axis [s since the epoch].
    length : float
        Its length [px].
    width_of : callable
        Width of a text [px].
    zone : tzinfo, optional
        Where the clock hangs; the computer's own zone when missing.

    Returns
    -------
    list of Tick
        In order of time. Midnights carry the weekday and the day; when the axis holds no
        midnight, its first label carries the date.
    """
    if not end > start or length <= 0:
        return []
    per_second = length / (end - start)
    hour_space = width_of("00:00") + _LABEL_GAP
    for minutes in _MINUTE_STEPS:
        if minutes * 60 * per_second >= hour_space and 86400 * per_second >= width_of(say("Wed 28 Nov")) + _LABEL_GAP:
            return _dated(_clear(_hours(start, end, minutes, zone), per_second, width_of), per_second, width_of, zone)
    day_space = width_of(say("Wed 28 Nov")) + _LABEL_GAP
    for days in _DAY_STEPS:
        if days * 86400 * per_second >= day_space:
            return _days(start, end, days, zone)
    return _days(start, end, _DAY_STEPS[-1], zone)


def _midnights(start: float, end: float, zone: tzinfo | None) -> Iterator[datetime]:
    first = local(start, zone)
    day = datetime(first.year, first.month, first.day, tzinfo=zone)
    while day.timestamp() <= end:
        yield day
        day += timedelta(days=1)  # wall-clock arithmetic: the next midnight, however long the day is


def _hours(start: float, end: float, minutes: int, zone: tzinfo | None) -> list[Tick]:
    ticks: list[Tick] = []
    for midnight in _midnights(start, end, zone):
        for tick in _hours_of(midnight, midnight.timestamp(), minutes):
            if start <= tick.at <= end and (not ticks or tick.at > ticks[-1].at):
                ticks.append(tick)
    return ticks


@lru_cache(maxsize=64)
def _hours_of(midnight: datetime, _at: float, minutes: int) -> tuple[Tick, ...]:
    """Return the ticks of one day; ``_at`` [s since the epoch] tells apart days of zones that the machine was taken through."""
    moments = [midnight + timedelta(minutes=minute) for minute in range(0, 24 * 60, minutes)]
    hours = (Tick(when.timestamp(), f"{when:%H:%M}") for when in moments[1:])
    return (Tick(_at, day_text(midnight), True, True), *hours)


def _days(start: float, end: float, step: int, zone: tzinfo | None) -> list[Tick]:
    ticks: list[Tick] = []
    for midnight in _midnights(start, end, zone):
        # Counting from a fixed Monday keeps the labelled days in place while the chart follows the hand.
        labelled = (midnight.toordinal() - 1) % step == 0
        at = midnight.timestamp()
        if at >= start and (labelled or step <= _WEEK):
            ticks.append(Tick(at, day_text(midnight) if labelled else "", labelled, labelled))
    return ticks


def _clear(ticks: list[Tick], per_second: float, width_of: Callable[[str], float]) -> list[Tick]:
    """Take the words from hours that would touch the wider label of a midnight."""
    majors = [tick for tick in ticks if tick.major]
    # One width for all midnights, so that every day keeps or loses the same hours.
    reach = (max((width_of(t.text) for t in majors), default=0.0) + width_of("00:00") + _LABEL_GAP) / 2

    def touches(tick: Tick) -> bool:
        return any(abs(major.at - tick.at) * per_second < reach for major in majors)

    return [t if t.major or not touches(t) else Tick(t.at, "") for t in ticks]


def _dated(ticks: list[Tick], per_second: float, width_of: Callable[[str], float], zone: tzinfo | None) -> list[Tick]:
    """Give the first label the date when no midnight carries one."""
    if not ticks or any(tick.major for tick in ticks):
        return ticks
    text = moment_text(ticks[0].at, zone)
    reach = width_of(text) / 2 + _LABEL_GAP / 2
    first = Tick(ticks[0].at, text, dated=True)
    return [first] + [
        Tick(t.at, "" if (t.at - first.at) * per_second < reach + width_of(t.text) / 2 else t.text) for t in ticks[1:]
    ]


def value_ticks(low: float, high: float, length: float, space: float) -> list[Tick]:
    """Return ticks at 1, 2 or 5 times a power of ten, at least ``space`` [px] apart on ``length`` [px]."""
    if not high > low or length <= 0:
        return []
    least = (high - low) * space / length
    power = 10.0 ** math.floor(math.log10(least))
    step = next(m * power for m in (1, 2, 5, 10) if m * power >= least * (1 - 1e-9))
    decimals = max(0, -math.floor(math.log10(step) + 1e-9))
    first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
    return [Tick(n * step, decimal(f"{n * step:.{decimals}f}")) for n in range(first, last + 1)]


def long_ticks(
    start: float, end: float, length: float, width_of: Callable[[str], float], zone: tzinfo | None = None
) -> list[Tick]:
    """Return the ticks of a time axis that may hold years: the first of months, and the year at each January.

    Shorter axes have the ticks of ``time_ticks``, whose arguments these are.
    """
    if end - start < _LONG_S:
        return time_ticks(start, end, length, width_of, zone)
    space = width_of(say("May 2026")) + _LABEL_GAP
    per_month = length / ((end - start) / _MONTH_S)
    step = next((n for n in (1, 2, 3, 6, 12) if n * per_month >= space), 12)
    years = max(1, math.ceil(space / (12.0 * per_month))) if step == 12 else 1
    ticks: list[Tick] = []
    first = local(start, zone)
    month = first.year * 12 + first.month - 1
    while True:
        when = datetime(month // 12, month % 12 + 1, 1, tzinfo=zone)
        at = when.timestamp()
        if at > end:
            return ticks
        if at >= start and month % 12 % step == 0 and month // 12 % years == 0:
            january = when.month == 1
            name = month_words(when.month)
            ticks.append(Tick(at, f"{name} {when.year}" if january or not ticks else name, january, january))
        month += 1


class Widths:
    """Widths of texts in one font [px], remembered, since the same few come at every render."""

    def __init__(self, font: QFont) -> None:
        self._metrics = QFontMetricsF(font)
        self._known: dict[str, float] = {}

    def __call__(self, text: str) -> float:
        """Return the width [px]."""
        if text not in self._known:
            if len(self._known) > 500:
                self._known.clear()
            self._known[text] = self._metrics.horizontalAdvance(text)
        return self._known[text]


class Axis(QGraphicsItem):
    """Paints the ticks of one axis in scene coordinates, and the title of an upright one."""

    def __init__(self, *, upright: bool) -> None:
        super().__init__()
        self._upright = upright
        self._rect = QRectF()
        self._lines: list[QLineF] = []
        self._texts: list[tuple[QPointF, str, bool]] = []
        self._title: list[tuple[QPointF, str]] = []
        self._font = QFont()
        self._bold = QFont()
        self._width, self._bold_width = Widths(self._font), Widths(self._bold)
        self._ink = self._muted = self._rule = QColor()

    def dress(self, tokens: Tokens, font: QFont, bold: QFont) -> None:
        """Set the colours and the fonts of plain and of midnight labels."""
        self._ink, self._muted, self._rule = QColor(tokens.ink), QColor(tokens.muted), QColor(tokens.rule)
        self._font, self._bold = font, bold
        self._width, self._bold_width = Widths(font), Widths(bold)
        self.update()

    def place(self, rect: QRectF, at: list[tuple[float, Tick]]) -> None:
        """Set the axis' own ``rect`` and its ticks with their scene coordinate [px]."""
        if rect != self._rect:
            self.prepareGeometryChange()
            self._rect = rect
        metrics = QFontMetricsF(self._font)
        if self._upright:
            edge, drop = rect.right(), metrics.ascent() - metrics.height() / 2
            self._lines = [QLineF(edge, rect.top(), edge, rect.bottom())]
            self._lines += [QLineF(edge - 4, round(y), edge, round(y)) for y, _ in at]
            self._texts = [(QPointF(edge - 8 - self._width(t.text), y + drop), t.text, False) for y, t in at]
        else:
            top, base = rect.top(), rect.top() + 8 + metrics.ascent()
            self._lines = [QLineF(rect.left(), top, rect.right(), top)]
            self._lines += [QLineF(round(x), top, round(x), top + (7 if t.major else 4)) for x, t in at]
            for_tick = {True: self._bold_width, False: self._width}
            self._texts = [(QPointF(x - for_tick[t.dated](t.text) / 2, base), t.text, t.dated) for x, t in at if t.text]
        self.update()

    def set_title(self, lines: list[str]) -> None:
        """Write a title at the upper left, in lines; after ``place``."""
        metrics = QFontMetricsF(self._font)
        left, base = self._rect.left(), self._rect.top() + metrics.ascent()
        self._title = [(QPointF(left, base + n * metrics.height()), line) for n, line in enumerate(lines)]

    def boundingRect(self) -> QRectF:
        """Return the painted area; labels at the ends may stand out by half their width."""
        return self._rect.adjusted(-100, -12, 100, 12)

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Paint line, ticks, labels and title."""
        painter.setPen(QPen(self._rule, 1))
        painter.drawLines(self._lines)
        painter.setPen(self._ink)
        for bold in (False, True):
            painter.setFont(self._bold if bold else self._font)
            for place, text, dated in self._texts:
                if dated == bold:
                    painter.drawText(place, text)
        painter.setPen(self._muted)
        painter.setFont(self._font)
        for place, text in self._title:
            painter.drawText(place, text)
