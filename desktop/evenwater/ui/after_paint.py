"""Lets an answer be reckoned right after the key that asks for it is seen in its field, and marks the older one until then."""

from __future__ import annotations

import shiboken6
from PySide6.QtCore import QEvent, QObject, QPoint, Qt, QTimer, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget

from evenwater.ui.theme import GRID, pixels

# A window that nobody sees is not painted; the answer is reckoned all the same.
_AT_THE_LATEST_MS = 50
_WIDTH = 4


class OldMark(QWidget):
    """A bar beside a whole answer as long as it is the answer to what stood in the fields before.

    It stands in the free margin: words turned grey are painted, and painted again in ink, which takes longer than reckoning most answers, and a
    page that flashes with each key cannot be read. It is always shown, since all of the window is laid out again for what comes and goes.
    """

    def __init__(self, answer: QWidget, parent: QWidget) -> None:
        """Make the bar for ``answer``, at the left of which ``parent`` has a margin; the answer is not old yet."""
        super().__init__(parent)
        self._answer, self._sheet = answer, parent
        self.old = False
        """Whether the bar is painted."""
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def mark(self, old: bool) -> None:
        """Paint the bar, as high as what is seen of the answer, or nothing."""
        if old:
            corner = self._answer.mapTo(self._sheet, QPoint(0, 0))
            width = pixels(self.font(), _WIDTH)
            self.setGeometry(corner.x() - GRID // 2 - width, corner.y(), width, self._answer.height())
        if old != self.old:
            self.old = old
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the bar in the colour of what cannot be used now."""
        if self.old:
            with QPainter(self) as painter:
                painter.fillRect(event.rect(), self.palette().mid())


class AfterPaint(QObject):
    """Says when an answer is ``due``: once what was typed has been painted, once for many keys that come together.

    The sheet calls ``ask`` at each key, ``done`` when it reckons, for whatever reason, and ``finish`` before anything is made of the answer: it
    is then reckoned at once. In between ``waiting`` holds, and the marks stand beside what is shown.
    """

    due = Signal()

    def __init__(self, parent: QWidget, *marks: OldMark) -> None:
        """Serve the sheet ``parent``, whose older answer is marked by ``marks``."""
        super().__init__(parent)
        self._marks = marks
        self._field: QWidget | None = None
        self._waiting = False
        self._soon, self._latest = QTimer(self), QTimer(self)
        for timer, interval in ((self._soon, 0), (self._latest, _AT_THE_LATEST_MS)):
            timer.setSingleShot(True)
            timer.setInterval(interval)
            timer.timeout.connect(self.finish)

    def waiting(self) -> bool:
        """Return whether what is shown is the answer to what stood in the fields before."""
        return self._waiting

    def ask(self, field: QWidget) -> None:
        """Let the answer be due as soon as ``field`` was painted; at once where nobody types in it: what is chosen is complete."""
        line = QApplication.focusWidget()
        if not isinstance(line, QLineEdit) or not field.isAncestorOf(line):
            self.done()
            self.due.emit()
            return
        self._soon.stop()
        self._watch(line)
        if not self._waiting:
            self._waiting = True
            self._latest.start()
            for mark in self._marks:
                mark.mark(True)

    def finish(self) -> None:
        """Have the answer reckoned now where one is waited for."""
        if self._waiting:
            self.done()
            self.due.emit()

    def done(self) -> None:
        """Wait for nothing any more: the answer is reckoned now."""
        self._waiting = False
        self._watch(None)
        self._soon.stop()
        self._latest.stop()
        for mark in self._marks:
            mark.mark(False)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Notice that the field is painted; the timer comes when all that is painted with it is on the screen, and no key is waiting."""
        if event.type() == QEvent.Type.Paint and watched is self._field:
            self._watch(None)
            self._soon.start()
        return False

    def _watch(self, field: QWidget | None) -> None:
        if field is not self._field:
            if self._field is not None and shiboken6.isValid(self._field):
                self._field.removeEventFilter(self)
            self._field = field
            if field is not None:
                field.installEventFilter(self)
