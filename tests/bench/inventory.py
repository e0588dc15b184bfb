"""What can be seen of a window, as plain figures: for a bare window that shows the same, and nothing else.

A widget is kept by its kind, its place in the window, its font and its words; what paints itself by hand is kept as the strokes it makes
(a ``QPicture``), which a bare widget plays back without a line of Python. The scene of a pyqtgraph view is kept by its items.
Two inventories, before and after a key, say what the key changed to the eye.
"""

from __future__ import annotations

import base64
from typing import Any

import pyqtgraph as pg
import shiboken6
from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPoint, QRect, Qt
from PySide6.QtGui import QPainter, QPen, QPicture
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QCheckBox,
    QComboBox,
    QGraphicsItem,
    QGraphicsView,
    QHeaderView,
    QLabel,
    QLineEdit,
    QListView,
    QScrollBar,
    QStyleOptionGraphicsItem,
    QTableView,
    QWidget,
)

from evenwater.ui.chart_axis import Axis

Seen = dict[str, dict[str, Any]]
OURS = "evenwater."


def take(window: QWidget) -> Seen:
    """Return everything that can be seen of a window now, by a key that stays the same while the window lives, in order of painting."""
    seen: Seen = {}
    _look(window, window, QRect(QPoint(0, 0), window.size()), seen)
    return seen


def differences(before: Seen, after: Seen) -> Seen:
    """Return what must be done to what was seen before, so that it is what was seen after; a thing that is gone is hidden."""
    changed: Seen = {}
    for key, now in after.items():
        then = before.get(key)
        if then is None:
            changed[key] = {**now, "shown": True}
        elif then != now:
            changed[key] = {name: value for name, value in now.items() if then.get(name) != value}
    changed |= {key: {"shown": False} for key in before if key not in after}
    return changed


def key_of(thing: object) -> str:
    """Return what a widget or an item is known by while it lives."""
    return str(shiboken6.getCppPointer(thing)[0])  # type: ignore[arg-type]


def _look(widget: QWidget, window: QWidget, clip: QRect, seen: Seen) -> None:
    place = QRect(widget.mapTo(window, QPoint(0, 0)), widget.size()).intersected(clip)
    if place.isEmpty() or not widget.isVisible():
        return
    kept = _kept(widget)
    if kept is not None:
        seen[key_of(widget)] = {**kept, "rect": [place.x(), place.y(), place.width(), place.height()]}
    # What is inside these is part of them.
    if isinstance(widget, QAbstractItemView | QGraphicsView | QComboBox | QLineEdit | QAbstractButton | QScrollBar):
        bars = [widget.verticalScrollBar()] if isinstance(widget, QAbstractItemView) else []
        for bar in bars:
            _look(bar, window, place, seen)
        return
    for child in widget.children():
        if isinstance(child, QWidget) and not child.isWindow():
            _look(child, window, place, seen)


def _kept(widget: QWidget) -> dict[str, Any] | None:
    """Return what a widget shows, without its place; None for one that is merely a place for others."""
    font = widget.font().toString()
    if isinstance(widget, QGraphicsView):
        return {"kind": "scene", "items": _scene(widget)}
    if isinstance(widget, QHeaderView):
        return None
    if isinstance(widget, QAbstractItemView):
        return {"kind": "cells", "font": font, "cells": _cells(widget)}
    if isinstance(widget, QComboBox):
        return {"kind": "choice", "font": font, "text": widget.currentText()}
    if isinstance(widget, QCheckBox):
        return {"kind": "check", "font": font, "text": widget.text(), "on": widget.isChecked()}
    if isinstance(widget, QAbstractButton):
        return {"kind": "button", "font": font, "text": widget.text(), "on": widget.isEnabled()}
    if isinstance(widget, QLineEdit):
        return {"kind": "line", "font": font, "text": widget.text(), "hint": widget.placeholderText()}
    if isinstance(widget, QScrollBar):
        return {"kind": "bar", "range": [widget.maximum(), widget.pageStep(), widget.value()]}
    if isinstance(widget, QLabel):
        if not widget.text():
            return None
        colour = widget.palette().color(widget.foregroundRole()).name()
        return {
            "kind": "label", "font": font, "text": widget.text(), "wraps": widget.wordWrap(),
            "align": int(widget.alignment()), "colour": colour,
        }  # fmt: skip
    if any("paintEvent" in each.__dict__ for each in type(widget).__mro__ if each.__module__.startswith(OURS)):
        return {"kind": "strokes", "strokes": _strokes(widget)}
    return None


def _cells(view: QAbstractItemView) -> list[list[Any]]:
    """Return the cells that can be seen: their place in the view, and their words."""
    model, sight, cells = view.model(), view.viewport().rect(), []
    columns = range(model.columnCount()) if isinstance(view, QTableView) else (0,)
    assert isinstance(view, QTableView | QListView)
    for row in range(model.rowCount()):
        for column in columns:
            index = model.index(row, column)
            place = view.visualRect(index)
            if place.intersects(sight) and not place.isEmpty():
                words = str(index.data(Qt.ItemDataRole.DisplayRole) or "")
                chosen = view.currentIndex() == index
                cells.append([place.x(), place.y(), place.width(), place.height(), words, chosen])
        if view.visualRect(model.index(row, 0)).top() > sight.bottom():
            break
    return cells


def _strokes(widget: QWidget) -> str:
    picture = QPicture()
    # Charts of ours have a ``render`` that means something else.
    QWidget.render(widget, picture, QPoint(0, 0), widget.rect(), QWidget.RenderFlag(0))  # type: ignore[call-overload]
    return _packed(picture)


def _packed(picture: QPicture) -> str:
    kept = QByteArray()
    device = QBuffer(kept)
    device.open(QIODevice.OpenModeFlag.WriteOnly)
    picture.save(device)
    return base64.b64encode(kept.data()).decode("ascii")


def _scene(view: QGraphicsView) -> dict[str, dict[str, Any]]:
    """Return the items of a pyqtgraph view: its boxes, curves and axes, and the strokes of everything that paints itself."""
    items: dict[str, dict[str, Any]] = {}
    for item in view.scene().items(Qt.SortOrder.AscendingOrder):
        kept = _item(item)
        if kept is not None and item.isVisible():
            items[key_of(item)] = {**kept, "z": item.zValue()}
    return items


def _item(item: QGraphicsItem) -> dict[str, Any] | None:
    if isinstance(item, pg.ViewBox):
        rect = item.geometry()
        return {"kind": "box", "rect": list(rect.getRect()), "range": [[float(v) for v in r] for r in item.viewRange()]}
    box = _box_of(item)
    if isinstance(item, pg.PlotCurveItem):
        x, y = item.getData()
        return {
            "kind": "curve", "box": box, "x": [] if x is None else x.tolist(), "y": [] if y is None else y.tolist(),
            "pen": _pen(pg.mkPen(item.opts["pen"])), "smooth": bool(item.opts["antialias"]),
        }  # fmt: skip
    if isinstance(item, Axis):
        return _axis(item)
    if type(item).__module__.startswith(OURS):
        picture = QPicture()
        with QPainter(picture) as painter:
            item.paint(painter, QStyleOptionGraphicsItem(), None)  # type: ignore[arg-type]
        return {"kind": "strokes", "box": box, "rect": list(item.boundingRect().getRect()), "strokes": _packed(picture)}
    return None


def _box_of(item: QGraphicsItem) -> str:
    above = item.parentItem()
    while above is not None:
        if isinstance(above, pg.ViewBox):
            return key_of(above)
        above = above.parentItem()
    return ""


def _pen(pen: QPen) -> dict[str, Any]:
    return {"colour": pen.color().name(), "width": pen.widthF(), "dashes": list(pen.dashPattern())}


def _axis(axis: Axis) -> dict[str, Any]:
    """Return an axis as the stretch of numbers along its length."""
    rect, upright = axis._rect, axis._upright
    kept = {"kind": "axis", "upright": upright, "rect": list(rect.getRect()), "font": axis._font.toString()}
    numbers = [(place.y(), float(text)) for place, text, _ in axis._texts if text.replace(".", "").isdigit()]
    if upright and len(numbers) > 1:
        (y0, v0), (y1, v1) = numbers[0], numbers[-1]
        per_pixel = (v1 - v0) / (y1 - y0)
        return {**kept, "range": [v0 + (rect.bottom() - y0) * per_pixel, v0 + (rect.top() - y0) * per_pixel]}
    # An axis of time is told by where its marks stand: so many of them apart, and the first so far from the end.
    marks = [line.x1() for line in axis._lines[1:]]
    if len(marks) < 2:
        return {**kept, "range": [0.0, 1.0]}
    apart = (marks[-1] - marks[0]) / (len(marks) - 1)
    return {**kept, "range": [(rect.left() - marks[0]) / apart, (rect.right() - marks[0]) / apart]}
