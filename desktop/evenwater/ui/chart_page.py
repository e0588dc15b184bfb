"""The ramp on a page: the picture alone, without what the hand and the keys need on the screen."""

from __future__ import annotations

from datetime import tzinfo

from PySide6.QtCore import QEvent
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from evenwater.screens.chart_table import ChartTable, of_ramp
from evenwater.screens.views import ChartView
from evenwater.ui.chart_picture import Picture
from evenwater.ui.chart_words import NAMES, name_of
from evenwater.ui.theme import GRID, tokens_of

# The property of a page that says how many pixels of the paper are one of ours.
SHARPNESS = "sharpness"


class RampPage(QWidget):
    """Shows a ``ChartView``, once."""

    def __init__(self, view: ChartView, zone: tzinfo | None) -> None:
        """Show ``view``; the clock hangs in ``zone``."""
        super().__init__()
        self._view = view
        self._picture = Picture(self, zone)
        # Kept as a picture the ground would be one in a drawing as well.
        self._picture.view.setCacheMode(self._picture.view.CacheModeFlag.CacheNone)

    def changeEvent(self, event: QEvent) -> None:
        """Take other letters and colours."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange):
            self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Arrange at the size of the page."""
        super().resizeEvent(event)
        self._picture.view.setGeometry(self.rect().adjusted(GRID, GRID, -GRID, -GRID))
        self._arrange()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the ground."""
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), QColor(tokens_of(self.palette()).leaf))

    def _arrange(self) -> None:
        self._picture.dress(tokens_of(self.palette()), self.font(), float(self.property(SHARPNESS) or 1.0))
        self._picture.arrange(self._view, self._view.ramp_end, None)
        # Nobody takes a handle on paper.
        self._picture.marks.handle = None


def table_of(view: ChartView) -> ChartTable:
    """Return the figures of a correction, with the names that its lines go by."""
    return of_ramp(view, {key: name_of(view, key) for key in NAMES})
