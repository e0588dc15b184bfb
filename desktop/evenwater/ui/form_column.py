"""The scrolled columns of a sheet: the form at the left, as wide as its fields need, and what answers it beside it."""

from __future__ import annotations

from typing import Protocol, cast

from PySide6.QtCore import QCoreApplication, QEvent, QObject, Qt
from PySide6.QtWidgets import QScrollArea, QWidget

from evenwater.ui.form_parts import COLUMNS
from evenwater.ui.theme import GRID, pixels, set_role

FORM_WIDTH, NARROW_FORM_WIDTH, ANSWER_WIDTH = 552, 400, 560


class _Arranged(Protocol):
    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""


class Column(QScrollArea):
    """Scrolls its content up and down, never sideways, and takes no focus of its own.

    Content that is made as a child of ``viewport()``, and its parts inside it, is dressed once; whatever is moved is dressed again.
    """

    def __init__(self, content: QWidget | None, parent: QWidget) -> None:
        """Hold ``content``, or wait for ``setWidget``."""
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        if content is not None:
            self.setWidget(content)

    def settle(self) -> None:
        """Give everything its place now, from the innermost part outwards, so that it is painted there once, and not before as well."""
        QCoreApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest)


class FormColumn(Column):
    """Holds a form that can be arranged in columns, and follows it when its fields ask for more width."""

    _least = 0

    def setWidget(self, widget: QWidget) -> None:
        """Hold a form."""
        set_role(widget, "page")
        super().setWidget(widget)

    def share(self, width: int) -> None:
        """Give the form three columns where a sheet of this width [px] has room for them beside the answer, else two."""
        wide, narrow = (pixels(self.font(), w) + 2 * GRID for w in (FORM_WIDTH, NARROW_FORM_WIDTH))
        fits = width - wide >= pixels(self.font(), ANSWER_WIDTH)
        cast("_Arranged", self.widget()).arrange(COLUMNS if fits else COLUMNS - 1)
        self._least = wide if fits else narrow
        self.widen()

    def widen(self) -> None:
        """Take the width that the form's longest units need; a unit cut short could be another unit."""
        bar = self.verticalScrollBar().sizeHint().width()
        self.setFixedWidth(max(self._least, cast("QWidget", self.widget()).minimumSizeHint().width() + bar))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Follow the form, which a scroll area watches anyway."""
        if watched is self.widget() and event.type() == QEvent.Type.LayoutRequest:
            self.widen()
        return super().eventFilter(watched, event)
