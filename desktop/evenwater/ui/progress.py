"""How far a long piece of work has come: a ticket that it carries along, and a row that shows it and can stop it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF, QSize, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QWidget

from evenwater.ui.theme import GRID, pixels, tokens_of
from evenwater.wording import say

# What is over sooner [ms] needs no bar: one that flashes up says nothing.
SHOWN_AFTER_MS = 500
_BAR_WIDTH, _BAR_HEIGHT = 160, 12


class DroppedError(Exception):
    """Nobody wants the result any more."""


@dataclass
class Ticket:
    """One piece of work beside the window: it has done ``done`` of about ``most``, and ends when it is ``dropped``.

    Two threads touch it, but each field is written by one of them.
    """

    most: int = 0
    done: int = 0
    dropped: bool = False

    def step(self, done: int) -> None:
        """Note how far the work has come; raises ``DroppedError`` to end it."""
        self.done = done
        if self.dropped:
            raise DroppedError


class Bar(QWidget):
    """A bar that fills from the left."""

    def __init__(self, parent: QWidget) -> None:
        """Begin empty."""
        super().__init__(parent)
        self.share = 0.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_share(self, share: float) -> None:
        """Fill this share of it, from 0 to 1."""
        self.share = min(1.0, max(0.0, share))
        self.update()

    def sizeHint(self) -> QSize:
        """Return a size that can be read from across a table."""
        return QSize(pixels(self.font(), _BAR_WIDTH), pixels(self.font(), _BAR_HEIGHT))

    def minimumSizeHint(self) -> QSize:
        """Return half that width."""
        return QSize(self.sizeHint().width() // 2, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint frame and filling."""
        tokens = tokens_of(self.palette())
        frame = QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5)
        filled = frame.adjusted(2, 2, -2, -2)
        with QPainter(self) as painter:
            painter.setPen(QColor(tokens.rule))
            painter.setBrush(QColor(tokens.leaf))
            painter.drawRect(frame)
            filled.setWidth(filled.width() * self.share)
            painter.fillRect(filled, QColor(tokens.blue))


class ProgressRow(QWidget):
    """Words, a bar and a button that stops the work; shown once the work takes its time.

    ``stopped`` says that the button was pressed, ``appeared`` that the row was shown.
    """

    stopped = Signal()
    appeared = Signal()

    def __init__(self, parent: QWidget, stop: str = "") -> None:
        """Make the row, hidden."""
        super().__init__(parent)
        self.words = QLabel(self)
        self.bar = Bar(self)
        self.stop = QPushButton(stop or say("Stop"), self)
        self.stop.setAutoDefault(False)
        self.stop.clicked.connect(self.stopped)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GRID)
        row.addWidget(self.words)
        row.addWidget(self.bar, 1)
        row.addWidget(self.stop)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(SHOWN_AFTER_MS)
        self._later.timeout.connect(self._appear)
        self.hide()

    def begin(self, words: str) -> None:
        """Begin with a piece of work; the row shows itself when it is not over soon."""
        self.say(words, 0, 1)
        self._later.start()

    def say(self, words: str, done: int, most: int) -> None:
        """Say how far it has come."""
        self.words.setText(words)
        self.bar.set_share(done / max(most, 1))
        self.bar.setAccessibleName(words)

    def end(self) -> None:
        """Take the row away."""
        self._later.stop()
        self.hide()

    def _appear(self) -> None:
        self.show()
        self.appeared.emit()
