"""A bare pyqtgraph view that draws the items of an inventory: curves, axes of the library itself, and strokes played back."""

from __future__ import annotations

import base64
from typing import Any

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF
from PySide6.QtGui import QFont, QPainter, QPicture
from PySide6.QtWidgets import QWidget


def picture_of(packed: str) -> QPicture:
    """Return recorded strokes."""
    device = QBuffer()
    device.setData(QByteArray(base64.b64decode(packed)))
    device.open(QIODevice.OpenModeFlag.ReadOnly)
    picture = QPicture()
    picture.load(device)
    return picture


class Strokes(pg.GraphicsObject):
    """Plays recorded strokes back."""

    def __init__(self) -> None:
        super().__init__()
        self._rect, self._picture = QRectF(), QPicture()

    def set_data(self, rect: QRectF, picture: QPicture) -> None:
        """Play these strokes in this rectangle."""
        if rect != self._rect:
            self.prepareGeometryChange()
            self._rect = rect
        self._picture = picture
        self.update()

    def boundingRect(self) -> QRectF:
        """Return the rectangle."""
        return self._rect

    def paint(self, painter: QPainter, *_: object) -> None:
        """Play the strokes."""
        self._picture.play(painter)


class BareScene(pg.GraphicsView):
    """Items made once and fed; ranges are set from outside, and nothing follows anything by itself."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent, background="w")
        self._items: dict[str, Any] = {}
        self._states: dict[str, dict[str, Any]] = {}
        self._ready: dict[str, QPicture] = {}

    def prepare(self, states: list[dict[str, dict[str, Any]]]) -> None:
        """Make every item that is ever shown, and unpack all strokes and numbers, so that nothing of it falls on a change."""
        for state in states:
            for each in state.values():
                if "strokes" in each:
                    self._ready[each["strokes"]] = picture_of(each["strokes"])
                for name in ("x", "y"):
                    if name in each:
                        each[name] = np.array(each[name])
            # A box is made before what is in it.
            for key, each in sorted(state.items(), key=lambda kept: kept[1]["kind"] != "box"):
                if key not in self._items:
                    self._make(key, each)

    def _make(self, key: str, state: dict[str, Any]) -> None:
        kind = state["kind"]
        if kind == "box":
            item = pg.ViewBox(enableMouse=False, enableMenu=False)
            item.disableAutoRange()
        elif kind == "curve":
            pen = pg.mkPen(state["pen"]["colour"], width=state["pen"]["width"])
            if state["pen"]["dashes"]:
                pen.setDashPattern(state["pen"]["dashes"])
            item = pg.PlotCurveItem(pen=pen, antialias=state["smooth"])
        elif kind == "axis":
            item = pg.AxisItem("left" if state["upright"] else "bottom")
            font = QFont()
            font.fromString(state["font"])
            item.setStyle(tickFont=font)
        else:
            item = Strokes()
        item.setZValue(state["z"])
        item.setVisible(False)
        box = self._items.get(state.get("box", ""))
        if box is not None:
            box.addItem(item, ignoreBounds=True)
        else:
            self.scene().addItem(item)
        self._items[key] = item

    def show_state(self, state: dict[str, dict[str, Any]]) -> None:
        """Give every item that differs what it shows now."""
        for key, now in state.items():
            then = self._states.get(key)
            if then is not now and (then is None or not _same(then, now)):
                self._feed(self._items[key], now)
        for key in self._states.keys() - state.keys():
            self._items[key].setVisible(False)
        self._states = state

    def _feed(self, item: Any, now: dict[str, Any]) -> None:
        kind = now["kind"]
        if kind == "curve":
            item.setData(now["x"], now["y"])
        elif kind == "strokes":
            item.set_data(QRectF(*now["rect"]), self._ready[now["strokes"]])
        elif kind == "axis":
            item.setGeometry(QRectF(*now["rect"]))
            item.setRange(*now["range"])
        else:
            item.setGeometry(QRectF(*now["rect"]))
            item.setRange(xRange=now["range"][0], yRange=now["range"][1], padding=0, disableAutoRange=False)
            # The box would move its curves while they are painted, and so have them painted twice.
            item.prepareForPaint()
        item.setVisible(True)


def _same(then: dict[str, Any], now: dict[str, Any]) -> bool:
    return then.keys() == now.keys() and all(
        np.array_equal(value, now[name]) if isinstance(value, np.ndarray) else value == now[name]
        for name, value in then.items()
    )
