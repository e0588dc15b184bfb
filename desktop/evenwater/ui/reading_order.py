"""The order in which Tab goes through a page: as it is read, above before below, left before right, column by column.

It is taken from where things stand at that moment. The order in which widgets were made is another one, and fields come and go.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from PySide6.QtCore import QRect, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QFrame,
    QLabel,
    QLineEdit,
    QScrollArea,
    QWidget,
)

# The property of a field's line that names the slip of paper with its choices.
SLIP = "slip"
# The property of a part that is read column by column although its lines would fit side by side.
READ_DOWN = "read down"
# What overlaps by less [px] stands beside or below all the same.
_SLACK = 2
_TAB = Qt.FocusPolicy.TabFocus
# In these Tab has nothing to look for.
_WITHOUT_PARTS = (QAbstractButton, QLineEdit, QComboBox, QAbstractItemView)


class LaidOver(QFrame):
    """A slip of paper over what comes next: it is none of the page's parts, its choices belong to what it speaks of."""


@dataclass
class _Place:
    """A widget with what Tab reaches in it."""

    widget: QWidget
    takes_focus: bool
    parts: list[_Place] = field(default_factory=list)


def in_reading_order(page: QWidget) -> list[QWidget]:
    """Return what Tab reaches on a page, in the order in which it is read."""
    found: list[QWidget] = []
    _read(_place(page), found)
    return found


def step(page: QWidget, *, forward: bool) -> bool:
    """Give the focus to what comes next on a page, or before, round and round; False where there is nothing."""
    order = in_reading_order(page)
    if not order:
        return False
    now = QApplication.focusWidget()
    at = order.index(now) + (1 if forward else -1) if now in order else 0 if forward else -1
    go_to(order[at % len(order)], forward=forward)
    return True


def step_region(page: QWidget, *, forward: bool) -> bool:
    """Give the focus to the next region of a page, or to the one before; False where there is none."""
    found, now = _regions(page), QApplication.focusWidget()
    if not found:
        return False
    own = None if now is None else _region_of(now, page)
    keys = list(found)
    if own in found:
        at = keys.index(own) + (1 if forward else -1)
    else:
        # From a loose button to what is read after it, or before it.
        order = in_reading_order(page)
        here = order.index(now) if now in order else -1
        after = sum(order.index(first) < here for first in found.values())
        at = after if forward else after - 1
    region = keys[at % len(keys)]
    go_to(_last_in(region, found[region], page), forward=forward)
    return True


def go_to(widget: QWidget, *, forward: bool = True) -> None:
    """Give the focus to a widget, and bring it into sight wherever it is scrolled."""
    widget.setFocus(Qt.FocusReason.TabFocusReason if forward else Qt.FocusReason.BacktabFocusReason)
    above = widget.parentWidget()
    while above is not None:
        if isinstance(above, QScrollArea):
            above.ensureWidgetVisible(widget)
        above = above.parentWidget()


def _place(widget: QWidget) -> _Place:
    place = _Place(widget, _takes_focus(widget))
    if isinstance(widget, _WITHOUT_PARTS):
        return place
    for child in widget.children():
        # Most of what there is are labels, and nothing may cost a key more than it must.
        if isinstance(child, QLabel) or not isinstance(child, QWidget) or isinstance(child, LaidOver):
            continue
        if not child.isHidden() and not child.isWindow():
            part = _place(child)
            if part.takes_focus or part.parts:
                place.parts.append(part)
    return place


def _takes_focus(widget: QWidget) -> bool:
    return (widget.focusPolicy() & _TAB) == _TAB and widget.isEnabled() and widget.focusProxy() is None


def _read(place: _Place, found: list[QWidget]) -> None:
    if place.takes_focus:
        found.append(place.widget)
        slip = place.widget.property(SLIP)
        if isinstance(slip, QWidget) and slip.isVisible():
            # It lies over what comes next, but its choices belong to this field.
            found += in_reading_order(slip)
    down = len(place.parts) > 1 and bool(place.widget.property(READ_DOWN))
    for part in _cut([(each.widget.geometry(), each) for each in place.parts], down=down):
        _read(part, found)


def _cut(blocks: list[tuple[QRect, _Place]], *, down: bool) -> list[_Place]:
    """Cut along the gaps that go all the way across, then along those that go all the way down, until nothing can be cut.

    With ``down`` the other way about.
    """
    if len(blocks) > 1:
        for across in (not down, down):
            groups = _groups(blocks, across=across)
            if len(groups) > 1:
                return [place for group in groups for place in _cut(group, down=down)]
    return [place for _, place in sorted(blocks, key=_corner)]


def _corner(block: tuple[QRect, _Place]) -> tuple[int, int]:
    return block[0].top(), block[0].left()


def _groups(blocks: list[tuple[QRect, _Place]], *, across: bool) -> list[list[tuple[QRect, _Place]]]:
    spans = [((r.top(), r.bottom()) if across else (r.left(), r.right()), (r, place)) for r, place in blocks]
    groups: list[list[tuple[QRect, _Place]]] = []
    end = 0
    for (begins, ends), block in sorted(spans, key=lambda each: each[0]):
        if groups and begins < end - _SLACK:
            groups[-1].append(block)
            end = max(end, ends)
        else:
            groups.append([block])
            end = ends
    return groups


def _regions(page: QWidget) -> dict[QWidget, QWidget]:
    """Return the regions of a page with the first thing in each: lists, charts, forms and answers; loose buttons are none."""
    found: dict[QWidget, QWidget] = {}
    for widget in in_reading_order(page):
        region = _region_of(widget, page)
        if region is not None:
            found.setdefault(region, widget)
    return found


def _region_of(widget: QWidget, page: QWidget) -> QWidget | None:
    """Return the widget itself where it is a list, a chart or an answer; else the form or answer that it is scrolled with."""
    if not isinstance(widget, QAbstractButton | QLineEdit | QComboBox):
        return widget
    above = widget.parentWidget()
    while above is not None and above is not page:
        if isinstance(above, QScrollArea):
            return above
        above = above.parentWidget()
    return None


def _last_in(region: QWidget, first: QWidget, page: QWidget) -> QWidget:
    """Return what had the focus last in a form, so that a keeper comes back to where they were; else the first thing in it."""
    last = region.focusWidget()
    known = region is not first and last is not None and region.isAncestorOf(last)
    still = known and last is not None and last.isVisible() and _takes_focus(last) and _region_of(last, page) is region
    return last if still and last is not None else first
