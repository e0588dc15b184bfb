"""One day of all pumps, painted: a lane for each, a mark for each dose, the quiet hours hatched, the present as a line.

Read with the arrow keys or the mouse: a sentence says which dose it is. What must stay apart differs by shape, not by colour.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from evenwater.screens.timetable_rows import DAY_MINUTES, HEAD_DOWN, HEAD_UP, Lane, Mark
from evenwater.screens.timetable_wishes import clock
from evenwater.ui.announce import Announcer
from evenwater.ui.paper_style import draw_frame
from evenwater.ui.theme import Tokens, pixels, scaled, tokens_of
from evenwater.wording import marked, say, say_all

_NOTHING = marked("No timetable yet.")
_LANE = 46
# A dose of some seconds would be thinner than a hair: every mark is as wide as this at least [px].
_LEAST_WIDTH = 3.0
_HEAD = 9.0
# Names of pumps and additives may take so much of the width.
_LEFT_SHARE = 0.42
_HOURS = (1, 2, 3, 4, 6)
_SHAPES = {HEAD_UP: marked("Alkalinity: filled head, upwards."), HEAD_DOWN: marked("Calcium: open head, downwards.")}


class TimetableStrip(QWidget):
    """Shows the lanes of a day; the cursor stands on one dose of one lane."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make the strip, still empty."""
        super().__init__(parent)
        self._lanes: tuple[Lane, ...] = ()
        self._quiet: tuple[tuple[int, int], ...] = ()
        self._now: int | None = None
        self._cursor: tuple[int, int] | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say("Doses of the day"))

    def sizeHint(self) -> QSize:
        """Return the height of the lanes with the sentence above and the hours below."""
        line = QFontMetricsF(scaled(self.font(), 10)).height()
        lanes = max(len(self._lanes), 1) * pixels(self.font(), _LANE)
        return QSize(640, round(lanes + 2.0 * line + 26.0))

    def minimumSizeHint(self) -> QSize:
        """Return the same height; the day shrinks with the width."""
        return QSize(260, self.sizeHint().height())

    def show_day(self, lanes: tuple[Lane, ...], quiet: tuple[tuple[int, int], ...]) -> None:
        """Show a day; the cursor stays where it is when that dose is still there."""
        if (lanes, quiet) == (self._lanes, self._quiet):
            return
        self._lanes, self._quiet = lanes, quiet
        if self._cursor is not None and not self._is_there(self._cursor):
            self._cursor = None
        self.setAccessibleDescription(self.in_words())
        self.updateGeometry()
        self.update()

    def set_now(self, minute: int | None) -> None:
        """Move the line of the present to a minute of the day [min]."""
        if minute != self._now:
            self._now = minute
            self.update()

    @property
    def cursor_at(self) -> tuple[int, int] | None:
        """The dose that is read: number of the lane and of the mark in it."""
        return self._cursor

    def reading(self) -> str:
        """Return what the dose under the cursor says, with the one that comes next; or what comes next after the present."""
        if not self._lanes:
            return ""
        if self._cursor is None:
            at = self._next(self._now) if self._now is not None else None
            return "" if at is None else say("Next at {at}", at=self._said(at))
        mark = self._mark(self._cursor)
        after = self._next(mark.minute, self._cursor)
        if after is None:
            return self._said(self._cursor)
        wait = (self._mark(after).minute - mark.minute) % DAY_MINUTES
        return say(
            "{cursor}.  Then after {wait}\u00a0min: {pump}",
            cursor=self._said(self._cursor),
            wait=wait,
            pump=self._lanes[after[0]].pump,
        )

    def legend(self) -> str:
        """Return what the shapes mean that are to be seen."""
        kinds = {lane.kind for lane in self._lanes}
        shapes = [words for kind, words in say_all(_SHAPES).items() if kind in kinds]
        hatched = [say("Hatched: no doses.")] if self._quiet or any(lane.quiet for lane in self._lanes) else []
        return " ".join((*shapes, *hatched, say("Upright line: now.")))

    def in_words(self) -> str:
        """Return the whole day in words, for whoever cannot see it."""
        if not self._lanes:
            return say(_NOTHING)
        lanes = [
            say("{pump}, {additive}: {marks} doses", pump=lane.pump, additive=lane.additive, marks=len(lane.marks))
            for lane in self._lanes
        ]
        quiet = [say("quiet hours {begin} to {end}", begin=clock(begin), end=clock(end)) for begin, end in self._quiet]
        return say(
            "{join}. Left and right go from dose to dose, up and down from pump to pump.",
            join="; ".join([*lanes, *quiet]),
        )

    # Keys and mouse

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go from dose to dose in order of time, or to another pump's nearest."""
        order = self._in_order()
        if not order:
            event.ignore()
            return
        key = event.key()
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            step = 1 if key == Qt.Key.Key_Right else -1
            self._put(
                (order.index(self._cursor) + step) % len(order) if self._cursor in order else self._first(order), order
            )
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            self._put(0 if key == Qt.Key.Key_Home else len(order) - 1, order)
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self._other_lane(1 if key == Qt.Key.Key_Down else -1, order)
        elif key == Qt.Key.Key_Escape and self._cursor is not None:
            self._set(None)
        else:
            event.ignore()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Read what lies under the mouse; beside the lanes what the keys have chosen stays."""
        found = self._nearest(event.position())
        if found is not None or not self.hasFocus():
            self._set(found)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take the focus, so that the keys go on from here."""
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        self._set(self._nearest(event.position()))

    def leaveEvent(self, event: QEvent) -> None:
        """Read on only what the keys have chosen."""
        if not self.hasFocus():
            self._set(None)

    def _other_lane(self, step: int, order: list[tuple[int, int]]) -> None:
        if self._cursor is None:
            self._put(self._first(order), order)
            return
        lane = (self._cursor[0] + step) % len(self._lanes)
        minute = self._mark(self._cursor).minute
        marks = self._lanes[lane].marks
        self._set((lane, min(range(len(marks)), key=lambda n: abs(marks[n].minute - minute))))

    def _first(self, order: list[tuple[int, int]]) -> int:
        at = None if self._now is None else self._next(self._now)
        return 0 if at is None else order.index(at)

    def _put(self, number: int, order: list[tuple[int, int]]) -> None:
        self._set(order[number])

    def _set(self, cursor: tuple[int, int] | None) -> None:
        if cursor == self._cursor:
            return
        self._cursor = cursor
        self.setAccessibleDescription(self.reading() or self.in_words())
        if self.hasFocus():
            Announcer.of(self).say(self.reading())
        self.update()

    def _in_order(self) -> list[tuple[int, int]]:
        places = [(lane, n) for lane, one in enumerate(self._lanes) for n in range(len(one.marks))]
        return sorted(places, key=lambda at: (self._mark(at).minute, at[0]))

    def _next(self, minute: int, but: tuple[int, int] | None = None) -> tuple[int, int] | None:
        """Return the next dose from a minute of the day on, perhaps tomorrow's."""
        order = [at for at in self._in_order() if at != but]
        if not order:
            return None
        return min(order, key=lambda at: ((self._mark(at).minute - minute) % DAY_MINUTES, at[0]))

    def _is_there(self, at: tuple[int, int]) -> bool:
        return at[0] < len(self._lanes) and at[1] < len(self._lanes[at[0]].marks)

    def _mark(self, at: tuple[int, int]) -> Mark:
        return self._lanes[at[0]].marks[at[1]]

    def _said(self, at: tuple[int, int]) -> str:
        lane, mark = self._lanes[at[0]], self._mark(at)
        return f"{mark.words}, {lane.pump}, {lane.additive}"

    # Places

    def _day(self) -> QRectF:
        """Return where the lanes are."""
        line = QFontMetricsF(scaled(self.font(), 10)).height()
        left = self._names_width()
        return QRectF(left, line + 12.0, self.width() - left - 16.0, self.height() - 2.0 * line - 26.0)

    def _names_width(self) -> float:
        """Return the room for the names: what the longest needs, and never so much that nothing is left for the day [px]."""
        metrics = QFontMetricsF(scaled(self.font(), 10))
        names = [name for lane in self._lanes for name in (lane.pump, lane.additive)]
        wanted = max((metrics.horizontalAdvance(name) for name in names), default=0.0) + 26.0
        return max(min(wanted, self.width() * _LEFT_SHARE), 80.0)

    def _x(self, minute: float, day: QRectF) -> float:
        return day.left() + minute / DAY_MINUTES * day.width()

    def _lane_rect(self, lane: int, day: QRectF) -> QRectF:
        high = day.height() / max(len(self._lanes), 1)
        return QRectF(day.left(), day.top() + lane * high, day.width(), high)

    def _nearest(self, place: QPointF) -> tuple[int, int] | None:
        day = self._day()
        if not self._lanes or not day.adjusted(-8, -4, 8, 4).contains(place):
            return None
        lane = min(int((place.y() - day.top()) / day.height() * len(self._lanes)), len(self._lanes) - 1)
        marks = self._lanes[max(lane, 0)].marks
        minute = (place.x() - day.left()) / day.width() * DAY_MINUTES
        return max(lane, 0), min(range(len(marks)), key=lambda n: abs(marks[n].minute - minute))

    # Painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint everything."""
        tokens = tokens_of(self.palette())
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), QColor(tokens.leaf))
            painter.setFont(scaled(self.font(), 10))
            if not self._lanes:
                painter.setPen(QColor(tokens.muted))
                painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, say(_NOTHING))
            else:
                self._paint(painter, tokens)
            if self.hasFocus():
                draw_frame(painter, self.rect(), QColor(tokens.blue), Qt.BrushStyle.NoBrush, 2)

    def _paint(self, painter: QPainter, tokens: Tokens) -> None:
        day, metrics = self._day(), QFontMetricsF(painter.font())
        for hours in self._quiet:
            self._paint_quiet(painter, tokens, hours, day)
        for number, lane in enumerate(self._lanes):
            for hours in lane.quiet:
                self._paint_quiet(painter, tokens, hours, self._lane_rect(number, day))
        self._paint_hours(painter, tokens, day, metrics)
        for number, lane in enumerate(self._lanes):
            self._paint_lane(painter, tokens, lane, number, day, metrics)
        if self._now is not None:
            x = round(self._x(self._now, day)) + 0.5
            painter.setPen(QPen(QColor(tokens.ink), 2))
            painter.drawLine(QLineF(x, day.top() - 3, x, day.bottom() + 3))
        said = self.reading()
        painter.setPen(QColor(tokens.ink))
        painter.drawText(
            QPointF(12, 6 + metrics.ascent()), metrics.elidedText(said, Qt.TextElideMode.ElideRight, self.width() - 24)
        )

    def _paint_quiet(self, painter: QPainter, tokens: Tokens, hours: tuple[int, int], where: QRectF) -> None:
        """Hatch hours without doses; over midnight they are two pieces."""
        begin, end = hours
        pieces = ((begin, end),) if begin < end else ((begin, DAY_MINUTES), (0, end))
        painter.setPen(QPen(QColor(tokens.rule), 1))
        for first, last in pieces:
            left, right = self._x(first, where), self._x(last, where)
            piece = QRectF(left, where.top(), right - left, where.height())
            painter.fillRect(piece, QBrush(QColor(tokens.faint)))
            painter.fillRect(piece, QBrush(QColor(tokens.rule), Qt.BrushStyle.BDiagPattern))

    def _paint_hours(self, painter: QPainter, tokens: Tokens, day: QRectF, metrics: QFontMetricsF) -> None:
        room = metrics.horizontalAdvance("00:00") + 14.0
        step = next((hours for hours in _HOURS if day.width() * hours / 24.0 >= room), 12)
        edge = 0.0
        for hour in range(25):
            x = round(self._x(60 * hour, day)) + 0.5
            main = hour % step == 0
            painter.setPen(QPen(QColor(tokens.rule if main else tokens.faint), 1))
            painter.drawLine(QLineF(x, day.top(), x, day.bottom() + (4 if main else 0)))
            if main:
                text = "24:00" if hour == 24 else clock(60 * hour)
                width = metrics.horizontalAdvance(text)
                painter.setPen(QColor(tokens.ink))
                left = min(x - width / 2, self.width() - width - 4)
                if left > edge:
                    painter.drawText(QPointF(left, day.bottom() + 6 + metrics.ascent()), text)
                    edge = left + width + 6

    def _paint_lane(
        self, painter: QPainter, tokens: Tokens, lane: Lane, number: int, day: QRectF, metrics: QFontMetricsF
    ) -> None:
        where = self._lane_rect(number, day)
        middle = where.center().y()
        painter.setPen(QPen(QColor(tokens.rule), 1))
        painter.drawLine(QLineF(12, round(where.bottom()) + 0.5, day.right(), round(where.bottom()) + 0.5))
        room = day.left() - 24.0
        for text, colour, base in (
            (lane.pump, tokens.ink, middle - 3.0),
            (lane.additive, tokens.muted, middle + metrics.ascent() + 1.0),
        ):
            painter.setPen(QColor(colour))
            painter.drawText(QPointF(12, base), metrics.elidedText(text, Qt.TextElideMode.ElideRight, room))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for n, mark in enumerate(lane.marks):
            self._paint_mark(painter, tokens, lane, mark, where, self._cursor == (number, n))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)

    def _paint_mark(
        self, painter: QPainter, tokens: Tokens, lane: Lane, mark: Mark, where: QRectF, chosen: bool
    ) -> None:
        """Paint one dose: a bar as long as it runs, and a head by which what must stay apart is told from each other."""
        left = self._x(mark.minute, where)
        width = max(mark.lasts_s / 60.0 / DAY_MINUTES * where.width(), _LEAST_WIDTH)
        ink = QColor(tokens.blue)
        top, bottom = where.top() + 0.16 * where.height(), where.bottom() - 0.16 * where.height()
        centre = left + width / 2
        half = _HEAD / 2
        if lane.kind == HEAD_UP:
            painter.fillRect(QRectF(left, top + _HEAD, width, bottom - top - _HEAD), ink)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(ink)
            painter.drawPolygon(_triangle(centre, top + _HEAD, top, half))
        elif lane.kind == HEAD_DOWN:
            painter.fillRect(QRectF(left, top, width, bottom - top - _HEAD), ink)
            painter.setPen(QPen(ink, 1.6))
            painter.setBrush(QColor(tokens.leaf))
            painter.drawPolygon(_triangle(centre, bottom - _HEAD, bottom, half))
        else:
            painter.fillRect(QRectF(left, top + half, width, bottom - top - _HEAD), ink)
        if chosen:
            painter.setPen(QPen(QColor(tokens.ink), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(
                QRectF(centre - half - 4, where.top() + 3, 2 * half + 8 + max(0.0, width - _HEAD), where.height() - 6)
            )


def _triangle(centre: float, base: float, tip: float, half: float) -> QPolygonF:
    return QPolygonF([QPointF(centre - half, base), QPointF(centre, tip), QPointF(centre + half, base)])
