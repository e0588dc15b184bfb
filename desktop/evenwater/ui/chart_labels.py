"""Where the names of the lines stand: at their ends in the right margin, pushed apart, never clipped."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from evenwater.ui.chart_items import SceneItem

Floats = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Label:
    """One placed label: its text in ``box`` [px], and where its leader starts, if it has one.

    ``strong`` is the plan's own; ``ground`` labels cover a line, so they
    stand on a patch of ground.
    """

    text: str
    box: QRectF
    strong: bool = False
    leader: QPointF | None = None
    ground: bool = False


def spread(wanted: list[float], height: float, low: float, high: float) -> list[float]:
    """Move places apart so that none is nearer than ``height`` to the next, all between ``low`` and ``high``.

    ``wanted`` holds the places [px] in any order; the result keeps their order and moves them as
    little as can be (least squares, pooled neighbours).
    """
    order = sorted(range(len(wanted)), key=[round(place) for place in wanted].__getitem__)
    pools: list[tuple[float, int]] = []
    for rank, index in enumerate(order):
        pools.append((wanted[index] - rank * height, 1))
        while len(pools) > 1 and pools[-2][0] > pools[-1][0]:
            (a, m), (b, n) = pools[-2:]
            pools[-2:] = [((a * m + b * n) / (m + n), m + n)]
    ceiling = max(low, high - (len(wanted) - 1) * height)
    flat = [min(max(place, low), ceiling) for place, count in pools for _ in range(count)]
    placed = [0.0] * len(wanted)
    for rank, index in enumerate(order):
        placed[index] = flat[rank] + rank * height
    return placed


def end_labels(
    ends: list[tuple[str, float, bool]], plot: QRectF, low: float, high: float, metrics: QFontMetricsF, width: float
) -> list[Label]:
    """Place names right of the plot beside the ends of their lines.

    ``ends`` holds (text, height of the line's end [px], strong); names stay between ``low`` and
    ``high`` and are ``width`` wide [px].
    """
    height = metrics.height()
    tops = spread([y - height / 2 for _, y, _ in ends], height + 1, low, max(low, high - height))
    left = plot.right() + 18
    return [
        Label(text, QRectF(left, top, width, height), strong, QPointF(plot.right() + 2, y))
        for (text, y, strong), top in zip(ends, tops, strict=True)
    ]


def free_spot(
    size: QRectF, anchors: Iterable[QPointF], curves: Floats, taken: list[QRectF], inside: QRectF
) -> tuple[QRectF, bool]:
    """Return the first place near an anchor where a name covers no line, or the one that covers least, and if it does.

    ``size`` is the name's box at the origin, ``anchors`` the corners it may hang from, ``curves``
    points on all lines [px], shape (k, 2), ``taken`` boxes already used.
    """
    best, least = QRectF(), np.inf
    x, y = np.ascontiguousarray(curves.T)
    width, height = size.width(), size.height()
    leftmost, rightmost = inside.left() + 4, inside.right() - width - 4
    highest, lowest = inside.top() + 2, inside.bottom() - height - 2
    for anchor in anchors:
        left, top = min(max(anchor.x(), leftmost), rightmost), min(max(anchor.y(), highest), lowest)
        covered = (x > left - 3) & (x < left + width + 3) & (y > top - 1) & (y < top + height + 1)
        room = QRectF(left - 3, top - 1, width + 6, height + 2)
        cost = float(np.count_nonzero(covered)) + 1000.0 * sum(room.intersects(other) for other in taken)
        if cost < least:
            best, least = QRectF(left, top, width, height), cost
        if cost == 0:
            break
    return best, least > 0


class Labels(SceneItem):
    """Paints the names and their leaders."""

    def __init__(self) -> None:
        super().__init__(12.0)
        self.placed: list[Label] = []
        self._font = QFont()
        self._bold = QFont()
        self._ascent = 0.0

    def set_fonts(self, font: QFont, bold: QFont) -> None:
        """Set the fonts of plain names and of the plan's."""
        self._font, self._bold = font, bold
        self._ascent = QFontMetricsF(bold).ascent()

    def set_data(self, area: QRectF, placed: list[Label]) -> None:
        """Set the labels."""
        self.placed = placed
        self.set_area(area)

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        """Paint leaders, then names."""
        if self._tokens is None:
            return
        tokens = self._tokens
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(tokens.rule), 1))
        for label in self.placed:
            if label.leader is not None:
                elbow = QPointF(label.box.left() - 3, label.box.center().y())
                painter.drawPolyline(QPolygonF([label.leader, label.leader + QPointF(3, 0), elbow]))
        for label in self.placed:
            if label.ground:
                painter.fillRect(label.box, QColor(tokens.leaf))
            painter.setFont(self._bold if label.strong else self._font)
            painter.setPen(QColor(tokens.blue if label.strong else tokens.ink))
            painter.drawText(label.box.topLeft() + QPointF(0, self._ascent), label.text)
