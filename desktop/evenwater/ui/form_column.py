"""The scrolled columns of a sheet: the form at the left, as wide as its fields need, and what answers it beside it."""

from __future__ import annotations

from typing import Protocol, cast

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QPoint, Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QLabel, QScrollArea, QWidget

from evenwater.ui.form_parts import COLUMNS
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import say

FORM_WIDTH, NARROW_FORM_WIDTH, LEAST_FORM_WIDTH = 552, 400, 260
ANSWER_WIDTH, NARROW_ANSWER_WIDTH = 560, 330


class _Arranged(Protocol):
    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""


# So much of an answer [letters] is read at once; the rest is found line by line.
_READ_AT_ONCE = 1500


class Column(QScrollArea):
    """Scrolls its content up and down, never sideways. Tab stops at it, so that an answer is scrolled, and read, without a mouse.

    Content that is made as a child of ``viewport()``, and its parts inside it, is dressed once; whatever is moved is dressed again.
    """

    def __init__(self, content: QWidget | None, parent: QWidget) -> None:
        """Hold ``content``, or wait for ``setWidget``."""
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setAccessibleName(say("Answer"))
        set_role(self, "answer")
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        if content is not None:
            self.setWidget(content)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Be read as what stands in it now."""
        self.setAccessibleDescription(words_in(self.widget()) or say("There is no answer yet."))
        super().focusInEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Scroll with the arrows and the page keys, as Qt does, and to both ends."""
        bar = self.verticalScrollBar()
        ends = {Qt.Key.Key_Home: bar.minimum(), Qt.Key.Key_End: bar.maximum()}
        wanted = ends.get(Qt.Key(event.key()))
        if wanted is None or not self.hasFocus():
            super().keyPressEvent(event)
        else:
            bar.setValue(wanted)

    def settle(self) -> None:
        """Give everything its place now, from the innermost part outwards, so that it is painted there once, and not before as well."""
        QCoreApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest)


def words_in(page: QWidget | None) -> str:
    """Return what can be read on a page from top to bottom, without its controls, as one text."""
    if page is None:
        return ""
    said: list[tuple[int, int, str]] = []
    for widget in page.findChildren(QWidget):
        if not widget.isVisibleTo(page) or widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            continue
        words = widget.accessibleDescription() or widget.accessibleName()
        if isinstance(widget, QLabel):
            words = widget.text()
        if words:
            place = widget.mapTo(page, QPoint(0, 0))
            said.append((place.y(), place.x(), words if words[-1] in ".:!?" else f"{words}."))
    text = ""
    for *_, words in sorted(said):
        if text and len(text) + len(words) > _READ_AT_ONCE:
            break
        text = f"{text} {words}".lstrip()
    return text


class FormColumn(Column):
    """Holds a form that can be arranged in columns, and follows it when its fields ask for more width. Its fields are Tab's stops."""

    _least = 0

    def __init__(self, content: QWidget | None, parent: QWidget) -> None:
        """Hold a form, or wait for it."""
        super().__init__(content, parent)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName("")
        set_role(self, "")

    def setWidget(self, widget: QWidget) -> None:
        """Hold a form."""
        set_role(widget, "page")
        super().setWidget(widget)

    def share(self, width: int) -> None:
        """Give the form three columns where a sheet of this width [px] has room for them beside the answer, else two, or one in large letters."""
        widths = ((FORM_WIDTH, ANSWER_WIDTH), (NARROW_FORM_WIDTH, NARROW_ANSWER_WIDTH), (LEAST_FORM_WIDTH, 0))
        rooms = (width - self._wide(form) >= pixels(self.font(), answer) for form, answer in widths)
        fewer = next((number for number, room in enumerate(rooms) if room), len(widths) - 1)
        self._least = self._wide(widths[fewer][0])
        cast("_Arranged", self.widget()).arrange(COLUMNS - fewer)
        self.widen()

    def _wide(self, width: int) -> int:
        """Return the width of a form [px] that is ``width`` in the usual letters."""
        return pixels(self.font(), width) + 2 * GRID

    def widen(self) -> None:
        """Take the width that the form's longest units need; a unit cut short could be another unit."""
        bar = self.verticalScrollBar().sizeHint().width()
        self.setFixedWidth(max(self._least, cast("QWidget", self.widget()).minimumSizeHint().width() + bar))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Follow the form, which a scroll area watches anyway."""
        if watched is self.widget() and event.type() == QEvent.Type.LayoutRequest:
            self.widen()
        return super().eventFilter(watched, event)
