"""Finds words that a window cuts off: labels, buttons, lists and fields that got less room than they need."""

from __future__ import annotations

import re
from collections.abc import Iterator

from PySide6.QtCore import QPoint, QRect
from PySide6.QtWidgets import QAbstractScrollArea, QComboBox, QLabel, QLineEdit, QPushButton, QScrollArea, QWidget

from evenwater.ui.answer_parts import Figure


def clipped(page: QWidget) -> list[str]:
    """Return what cannot be read whole on a page, in words; empty when all is well."""
    found = []
    for kind in (QLabel, QPushButton, QComboBox, Figure):
        for widget in page.findChildren(kind):
            if widget.isVisible() and _words(widget):
                found += [f"{_words(widget)!r}: {fault}" for fault in _faults(widget)]
    for line in page.findChildren(QLineEdit):
        if line.isVisible() and line.fontMetrics().horizontalAdvance(line.text()) > line.width():
            found.append(f"{line.text()!r} in {line.accessibleName()}: needs more width")
    return found


def _words(widget: QWidget) -> str:
    text = getattr(widget, "currentText", None) or getattr(widget, "text", str)
    return str(text() if callable(text) else text)


def _faults(widget: QWidget) -> Iterator[str]:
    if isinstance(widget, QLabel) and widget.wordWrap():
        if widget.height() < widget.heightForWidth(widget.width()):
            yield f"{widget.height()} px high, needs {widget.heightForWidth(widget.width())}"
        longest = max(
            widget.fontMetrics().horizontalAdvance(word) for word in re.split("(?<=[^ ]-)|[ \n]", widget.text())
        )
        if widget.width() < longest:
            yield f"{widget.width()} px wide, its longest word needs {longest}"
    elif isinstance(widget, QLabel):
        # The sign before an underlined letter is not shown.
        shown = widget.text() if widget.buddy() is None else re.sub("&(.)", r"\1", widget.text())
        needed = widget.fontMetrics().horizontalAdvance(shown)
        if widget.contentsRect().width() < needed:
            yield f"{widget.contentsRect().width()} px wide, needs {needed}"
        if widget.height() < widget.fontMetrics().height():
            yield f"{widget.height()} px high"
    else:
        # A list may be shorter than its longest entry, and a figure's letters shrink where there is no room for them.
        hint = widget.minimumSizeHint() if isinstance(widget, QComboBox | Figure) else widget.sizeHint()
        if widget.width() < hint.width() or widget.height() < hint.height():
            yield f"{widget.width()} x {widget.height()} px, needs {hint.width()} x {hint.height()}"
    yield from _outside(widget)


def _outside(widget: QWidget) -> Iterator[str]:
    """Yield where a widget leaves what it stands in; a page that scrolls upright may be longer than its view."""
    above = widget.parentWidget()
    while above is not None and not widget.isWindow():
        place = QRect(widget.mapTo(above, QPoint(0, 0)), widget.size())
        scrolls = isinstance(above.parentWidget(), QAbstractScrollArea)
        room = above.rect()
        if place.left() < 0 or place.right() > room.right():
            yield f"leaves {type(above).__name__} at the side: {place.left()} to {place.right()} of {room.right()}"
            return
        if isinstance(above.parentWidget(), QScrollArea) or scrolls:
            area = above.parentWidget()
            assert isinstance(area, QAbstractScrollArea)
            if isinstance(area, QScrollArea):
                above = area
                # What is below the view is reached by scrolling.
                widget = area
                above = area.parentWidget()
                continue
        if place.top() < 0 or place.bottom() > room.bottom():
            yield f"leaves {type(above).__name__} above or below: {place.top()} to {place.bottom()} of {room.bottom()}"
            return
        if above.isWindow():
            return
        above = above.parentWidget()
