"""The readings on the ramp of a plan that is followed, and the line that says where now is."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from evenwater.screens.views import RetestMark
from evenwater.ui.chart_items import Scale, SceneItem

_HALF = 6.5


class Retests(SceneItem):
    """A disc inside the band, a triangle that points away from it outside: shape says it without colour."""

    def __init__(self) -> None:
        super().__init__(21.0)
        self._marks: list[tuple[QPointF, str]] = []
        self._now: float | None = None
        self._bottom = 0.0

    def set_data(self, scale: Scale, marks: tuple[RetestMark, ...], now: float | None, bottom: float) -> None:
        """Set readings in the keeper's unit and the present [s], whose line goes down to ``bottom`` [px]."""
        rect = scale.rect
        self._marks = [(QPointF(scale.x(m.at), scale.y(m.value)), m.place) for m in marks]
        self._now = scale.x(now) if now is not None and scale.start <= now <= scale.end else None
        self._bottom = bottom
        self.set_area(QRectF(rect.left(), rect.top(), rect.width(), bottom - rect.top()).adjusted(-12, -12, 12, 12))

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Paint the line and the readings."""
        if self._tokens is None:
            return
        ink, leaf, stop = QColor(self._tokens.ink), QColor(self._tokens.leaf), QColor(self._tokens.stop)
        if self._now is not None:
            painter.setPen(QPen(ink, 1, Qt.PenStyle.DashDotLine))
            painter.drawLine(QPointF(self._now, self._area.top() + 12), QPointF(self._now, self._bottom))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(leaf, 1.5))
        for place, where in self._marks:
            painter.setBrush(ink if where == "inside" else stop)
            if where == "inside":
                painter.drawEllipse(place, _HALF, _HALF)
                continue
            away = -1.0 if where == "above" else 1.0
            tip = QPointF(0, away * 1.3 * _HALF)
            foot = QPointF(1.1 * _HALF, -away * 0.8 * _HALF)
            painter.drawPolygon(QPolygonF([place + tip, place + foot, place + QPointF(-foot.x(), foot.y())]))
