"""The ramp: what the water will do, and under it the doses, on one time axis.

The end of the ramp can be taken with the mouse or moved with the keys to choose a slower pace.
pyqtgraph is imported when the first picture is built, after the window has been painted.
"""

from __future__ import annotations

import math
from datetime import tzinfo
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, QPointF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from evenwater.screens.shown import figure
from evenwater.screens.views import ChartView
from evenwater.ui.announce import Announcer
from evenwater.ui.chart_axis import moment_text
from evenwater.ui.chart_export import ChartExport
from evenwater.ui.chart_words import in_words, reading_at
from evenwater.ui.pace_buttons import PaceButtons
from evenwater.ui.paper_style import draw_frame
from evenwater.ui.theme import set_role, tokens_of
from evenwater.wording import marked, say

if TYPE_CHECKING:
    from evenwater.screens.chart_table import ChartTable
    from evenwater.ui.chart_picture import Picture

_STEPS_S = (300, 900, 1800, 3600, 7200, 10800, 21600, 43200, 86400)
_COMMIT_AFTER_MS = 700
_HINT = marked("Drag the ring, or press Shift and an arrow key:")
_STALE = marked("The question has changed")


class RampChart(QWidget):
    """The chart of a correction.

    ``paceDragged`` carries the end of the ramp [s since the epoch] while it moves,
    ``paceCommitted`` where it was let go, ``paceCancelled`` says that it went back.
    """

    paceDragged = Signal(float)
    paceCommitted = Signal(float)
    paceCancelled = Signal()

    def __init__(self, parent: QWidget | None = None, zone: tzinfo | None = None) -> None:
        super().__init__(parent)
        self._zone = zone
        self._view: ChartView | None = None
        self._picture: Picture | None = None
        self._cursor: float | None = None
        self._ramp_end = 0.0
        self._before = 0.0
        self._held_back = False
        self._frozen: tuple[float, float] | None = None
        self._grip: float | None = None
        self._stale = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumHeight(280)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._readout = QLabel(self)
        self._hint = QLabel(say(_HINT), self)
        self._empty = QLabel(self)
        for label in (self._readout, self._hint):
            label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        set_role(self._hint, "caption")
        set_role(self._empty, "muted")
        self._hint.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._empty.setWordWrap(True)
        top = QHBoxLayout()
        top.setContentsMargins(10, 4, 10, 0)
        self.paces = PaceButtons(self)
        self.paces.pressed.connect(self._step_pace)
        top.addWidget(self._readout, 1)
        top.addWidget(self._hint, 1)
        top.addWidget(self.paces)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(2, 2, 2, 2)
        self._column.setSpacing(0)
        self._column.addLayout(top)
        self._column.addWidget(self._empty, 1)
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(_COMMIT_AFTER_MS)
        self._pause.timeout.connect(self._commit)
        self.setAccessibleName(say("Chart of the correction"))
        self.saving = ChartExport(self, self, 640)
        self.clear_view("")

    def sizeHint(self) -> QSize:
        """Ask for a shelf laptop's width and the least height that stays readable."""
        return QSize(1190, 300)

    def prepare(self) -> None:
        """Build the picture, once; call it after the first paint."""
        if self._picture is not None:
            return
        from evenwater.ui.chart_picture import Picture

        self._picture = picture = Picture(self, self._zone)
        picture.dress(tokens_of(self.palette()), self.font())
        picture.view.viewport().setMouseTracking(True)
        picture.view.viewport().installEventFilter(self)
        picture.view.setVisible(False)
        self._column.addWidget(picture.view, 1)

    def render(self, view: ChartView) -> None:  # type: ignore[override]
        """Show a view. While the end of the ramp is in hand, the range and the handle stay with the hand."""
        self.prepare()
        assert self._picture is not None
        self._view = view
        if self._frozen is None:
            self._ramp_end = view.ramp_end
        if self._empty.isVisibleTo(self) or self.paces.isVisibleTo(self) == view.followed:
            self._empty.setVisible(False)
            for beside in (self._hint, self.paces):
                beside.setVisible(not view.followed)
            self._picture.view.setVisible(True)
            self._column.activate()
        self.saving.offer(True)
        self.set_stale(False)
        self._arrange()
        self._show_readout()
        self.setAccessibleDescription(in_words(view, self._zone))

    def clear_view(self, text: str) -> None:
        """Show nothing but a sentence."""
        self._view = None
        self.saving.offer(False)
        self._cursor = None
        self._let_go()
        if self._picture is not None:
            self._picture.view.setVisible(False)
            self._picture.stand_cursor(None)
        self._readout.clear()
        self._readout.setVisible(False)
        self._hint.setVisible(False)
        self._empty.setText(text)
        self._empty.setVisible(True)
        self.paces.hide()
        self.setAccessibleDescription(text)

    def set_stale(self, stale: bool) -> None:
        """Grey the picture, or not, when its question has changed."""
        if stale == self._stale or (stale and self._view is None):
            return
        self._stale = stale
        if self._picture is not None:
            self._picture.veil.setVisible(stale)
        self._show_readout()

    @property
    def view(self) -> ChartView | None:
        """What is shown now."""
        return self._view

    @property
    def ramp_end(self) -> float:
        """Where the handle stands [s since the epoch]."""
        return self._ramp_end

    @property
    def readout(self) -> str:
        """The line above the plot."""
        return self._readout.text()

    @property
    def picture(self) -> Picture | None:
        """The picture, once built."""
        return self._picture

    def table(self) -> ChartTable | None:
        """Return the figures that are shown."""
        from evenwater.ui.chart_page import table_of

        return None if self._view is None else table_of(self._view)

    def twin(self) -> QWidget:
        """Return the ramp for a page."""
        from evenwater.ui.chart_page import RampPage

        assert self._view is not None
        return RampPage(self._view, self._zone)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the ground and the focus ring."""
        tokens = tokens_of(self.palette())
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), QColor(tokens.leaf))
            if self.hasFocus():
                draw_frame(painter, self.rect(), QColor(tokens.blue), Qt.BrushStyle.NoBrush, 2)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Arrange again at the new size."""
        super().resizeEvent(event)
        self._column.activate()
        self._arrange()

    def changeEvent(self, event: QEvent) -> None:
        """Follow the theme and the base font."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange) and self._picture is not None:
            self._picture.dress(tokens_of(self.palette()), self.font())
            self._arrange()

    def focusOutEvent(self, event: object) -> None:
        """Settle a pace chosen with the keys."""
        self._commit()
        self.update()

    def focusInEvent(self, event: object) -> None:
        """Show the ring."""
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move the cursor with the arrows, the end of the ramp with Shift or Page keys."""
        key, shift = event.key(), bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        away = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1, Qt.Key.Key_PageUp: 6, Qt.Key.Key_PageDown: -6}.get(
            Qt.Key(key)
        )
        if self._view is None:
            event.ignore()
        elif away is not None and (shift or abs(away) > 1):
            if not self._view.followed:
                self._step_pace(away)
        elif away is not None:
            self._step_cursor(away)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._frozen is not None:
            self._commit()
        elif key == Qt.Key.Key_Escape and self._frozen is not None:
            self._cancel()
        elif key == Qt.Key.Key_Escape and self._cursor is not None:
            self._stand_cursor(None)
        else:
            event.ignore()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take the mouse from the picture: it reads and drags, and never pans, zooms or opens a menu."""
        kind = event.type()
        if kind in (QEvent.Type.Wheel, QEvent.Type.ContextMenu):
            event.setAccepted(False)  # the wheel still scrolls the page, and the menu is the chart's own
            return True
        if self._view is None:
            return False
        if isinstance(event, QMouseEvent):
            self._mouse(kind, event)
            return True
        if kind == QEvent.Type.Leave and self._grip is None:
            self._stand_cursor(None)
            if self._picture is not None:
                self._picture.marks.set_hot(False)
        return False

    def _mouse(self, kind: QEvent.Type, event: QMouseEvent) -> None:
        assert self._picture is not None
        place, marks = event.position(), self._picture.marks
        left = event.button() == Qt.MouseButton.LeftButton
        if kind == QEvent.Type.MouseButtonPress and left:
            self.setFocus(Qt.FocusReason.MouseFocusReason)
            if marks.over_handle(place) and marks.handle is not None:
                self._grip = marks.handle.x() - place.x()
                self._take()
            else:
                # Read at once what was pressed, which needs no mouse that hovers.
                self._hover(place)
        elif kind == QEvent.Type.MouseMove and self._grip is not None:
            self._move_pace(self._picture.scale.at(place.x() + self._grip))
        elif kind == QEvent.Type.MouseMove:
            self._hover(place)
        elif kind == QEvent.Type.MouseButtonRelease and left and self._grip is not None:
            self._commit()

    def _hover(self, place: QPointF) -> None:
        assert self._picture is not None
        over = self._picture.marks.over_handle(place)
        self._picture.marks.set_hot(over)
        self._picture.view.viewport().setCursor(Qt.CursorShape.SizeHorCursor if over else Qt.CursorShape.ArrowCursor)
        rect = self._picture.scale.rect
        inside = rect.left() <= place.x() <= rect.right()
        self._stand_cursor(self._picture.scale.at(place.x()) if inside else None)

    def _take(self) -> None:
        """Hold the range still and remember where the ramp ended."""
        if self._frozen is None and self._picture is not None:
            self._frozen = (self._picture.scale.start, self._picture.scale.end)
            self._before = self._ramp_end
            self._picture.marks.set_hot(True)
            self._stand_cursor(None)

    def _let_go(self) -> None:
        self._pause.stop()
        self._frozen = None
        self._grip = None
        if self._picture is not None:
            self._picture.marks.set_hot(False)

    def _step_pace(self, away: int) -> None:
        self._take()
        step = self._step()
        steps = math.floor(self._ramp_end / step) if away > 0 else math.ceil(self._ramp_end / step)
        self._move_pace((steps + away) * step)
        self._pause.start()

    def _move_pace(self, wanted: float) -> None:
        """Move the end of the ramp, no earlier than the fastest allowed pace would bring it."""
        assert self._view is not None
        assert self._picture is not None
        earliest = float(self._view.fastest[0][-1])
        end = max(wanted, earliest)
        self._held_back = wanted < earliest
        self._picture.marks.move_handle(self._picture.scale.x(end), held_back=self._held_back)
        if end != self._ramp_end:
            self._ramp_end = end
            self.paceDragged.emit(end)
        self._show_readout()

    def _commit(self) -> None:
        if self._frozen is None:
            return
        self._let_go()
        self._settle()
        if self._ramp_end != self._before:
            self.paceCommitted.emit(self._ramp_end)

    def _cancel(self) -> None:
        self._let_go()
        self._ramp_end = self._before
        self._settle()
        self.paceCancelled.emit()

    def _settle(self) -> None:
        self._held_back = False
        self._arrange()
        self._show_readout()

    def _step(self) -> float:
        """Return the step of the keys [s]: about a hundredth of what the axis shows."""
        assert self._picture is not None
        hundredth = (self._picture.scale.end - self._picture.scale.start) / 100
        return next((s for s in _STEPS_S if s >= hundredth), _STEPS_S[-1])

    def _step_cursor(self, away: int) -> None:
        assert self._view is not None
        step = self._step()
        start, end = float(self._view.times[0]), float(self._view.times[-1])
        now = start if self._cursor is None else self._cursor
        steps = math.floor(now / step) if away > 0 else math.ceil(now / step)
        self._stand_cursor(min(max((steps + away) * step, start), end))
        Announcer.of(self).say(self._readout.text())

    def _stand_cursor(self, at: float | None) -> None:
        if self._view is None or self._picture is None or at == self._cursor:
            return
        if at is not None:
            at = min(max(at, float(self._view.times[0])), float(self._view.times[-1]))
        self._cursor = at
        self._picture.stand_cursor(at)
        self._show_readout()

    def _arrange(self) -> None:
        if self._picture is not None and self._view is not None and self._picture.view.isVisibleTo(self):
            self._picture.arrange(self._view, self._ramp_end, self._frozen)
            self._picture.stand_cursor(self._cursor)

    def _show_readout(self) -> None:
        """Say what the cursor stands on, or where the ramp is being led to."""
        view = self._view
        if view is None:
            return
        if self._stale:
            self._readout.setText(say(_STALE))
        elif self._frozen is not None:
            held = say("This is the fastest allowed. ") if self._held_back else ""
            target = f"{figure(view.target, view.decimals)} {view.unit}"
            ends = moment_text(self._ramp_end, self._zone)
            said = say("{held}Reaches {target} on {ends}. Escape takes it back.", held=held, target=target, ends=ends)
            self._readout.setText(said)
        elif self._cursor is not None:
            self._readout.setText(
                reading_at(view, self._cursor, self._zone, self._readout.fontMetrics(), self.width() - 24)
            )
            self.setAccessibleDescription(self._readout.text())
        else:
            self._readout.clear()
        self._readout.setVisible(bool(self._readout.text()))
        self._hint.setVisible(not self._readout.text() and not view.followed)
        self.paces.setVisible(not view.followed)
        self.paces.offer(stale=self._stale, fastest=self._ramp_end <= float(view.fastest[0][-1]))
