"""Looks at what the focus changes in a widget's picture: where a ring is drawn, how thick and how well it can be seen."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QWidget

LEAST_CONTRAST = 3.0
LEAST_PX = 2
_MOST = 0.6


def picture(page: QWidget, widget: QWidget) -> np.ndarray:
    """Return the pixels of a widget as they stand on its page, colours in the last axis."""
    part = QRect(widget.mapTo(page, QPoint(0, 0)), widget.size())
    image = page.grab(part).toImage().convertToFormat(QImage.Format.Format_RGB32)
    whole = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine() // 4, 4)
    return whole[:, : image.width(), 2::-1].astype(int)


def luminance(colours: np.ndarray) -> np.ndarray:
    """Return relative luminance (WCAG 2.2) of 8-bit colours."""
    share = colours / 255.0
    linear = np.where(share <= 0.04045, share / 12.92, ((share + 0.055) / 1.055) ** 2.4)
    return linear @ np.array([0.2126, 0.7152, 0.0722])


def contrast(one: np.ndarray, other: np.ndarray) -> np.ndarray:
    """Return the contrast of colours, pixel by pixel."""
    a, b = luminance(one), luminance(other)
    return (np.maximum(a, b) + 0.05) / (np.minimum(a, b) + 0.05)


def ring_width(page: QWidget, taker: QWidget, drawn_on: QWidget, elsewhere: QWidget) -> int:
    """Return how many pixels thick the line is that the focus draws along the longest side that it draws along, where it can be seen.

    A pixel counts where the focus changed it to a colour that stands out against the one that was there, or against what lies inside it.
    """
    elsewhere.setFocus(Qt.FocusReason.TabFocusReason)
    QApplication.processEvents()
    before = picture(page, drawn_on)
    taker.setFocus(Qt.FocusReason.TabFocusReason)
    QApplication.processEvents()
    after = picture(page, drawn_on)
    changed = np.any(before != after, axis=-1)
    inside = np.broadcast_to(_ground(after), after.shape)
    seen = changed & (np.maximum(contrast(after, before), contrast(after, inside)) >= LEAST_CONTRAST)
    return max(_widths(seen), default=0)


def _ground(after: np.ndarray) -> np.ndarray:
    """Return the colour that most of a widget has."""
    codes, counts = np.unique(after.reshape(-1, 3) @ np.array([65536, 256, 1]), return_counts=True)
    most = int(codes[int(np.argmax(counts))])
    return np.array([most >> 16, most >> 8 & 255, most & 255])


def _widths(seen: np.ndarray) -> Iterator[int]:
    """Yield how many lines beside each other are drawn along most of a widget, across it and down it."""
    for turned in (seen, seen.T):
        run = 0
        for drawn in turned.mean(axis=1) > _MOST:
            run = run + 1 if drawn else 0
            yield run
