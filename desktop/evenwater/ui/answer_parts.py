"""Parts of the answer: the large figure, a sentence with its sign, a list of messages with offers."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from evenwater.screens.views import Message, Offer
from evenwater.ui.announce import Announcer
from evenwater.ui.paper_style import draw_sign
from evenwater.ui.theme import GRID, scaled, set_role, tokens_of
from evenwater.wording import say

_FIGURE_POINTS, _UNIT_POINTS = 52.0, 20.0
_UNIT_GAP = 14.0
# A figure with a long unit may shrink to this share of its size.
_SMALLEST = 0.6


class Figure(QWidget):
    """The figure in 52 pt with its unit beside it in 20 pt, both on one baseline."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._figure = ""
        self._unit = ""
        self._answered = self._alarm = False
        self._hint = QSize()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_figure(self, figure: str, unit: str, answered: bool) -> None:
        """Show a figure; one that is not ``answered`` stands in grey."""
        if (figure, unit, answered) == (self._figure, self._unit, self._answered):
            return
        before, self._answered = (self._figure, self._unit), answered
        self._figure, self._unit = figure, unit
        self.setAccessibleName(f"{figure} {unit}" if answered else say("No figure yet"))
        if (figure, unit) != before:
            self._hint = QSize()
            self.updateGeometry()
        if self.isVisible():
            Announcer.of(self).say_after_quiet(self, self.text if answered else "")
        self.update()

    def set_spoken(self, sentence: str) -> None:
        """Be read as a whole sentence, now and when the figure that has just changed is announced."""
        self.setAccessibleDescription(sentence)
        if sentence and self.isVisible() and Announcer.of(self).waits(self):
            Announcer.of(self).say_after_quiet(self, sentence)

    def set_alarm(self, alarm: bool) -> None:
        """Let the words stand in the colour of what must stop; they say it without colour as well."""
        if alarm != self._alarm:
            self._alarm = alarm
            self.update()

    @property
    def text(self) -> str:
        """Figure and unit, as read aloud."""
        return f"{self._figure} {self._unit}".strip()

    def baseline(self) -> float:
        """Return the distance of the common baseline from the top [px]."""
        return 6.0 + QFontMetricsF(scaled(self.font(), _FIGURE_POINTS, bold=True)).capHeight()

    def sizeHint(self) -> QSize:
        """Return the room the figure and the unit take, without the white the fonts carry above them."""
        if not self._hint.isValid():
            self._hint = self._measured()
        return self._hint

    def changeEvent(self, event: QEvent) -> None:
        """Measure again in other letters."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._hint = QSize()
            self.updateGeometry()

    def _measured(self) -> QSize:
        big = QFontMetricsF(scaled(self.font(), _FIGURE_POINTS, bold=True))
        small = QFontMetricsF(scaled(self.font(), _UNIT_POINTS))
        width = big.horizontalAdvance(self._figure) + _UNIT_GAP + small.horizontalAdvance(self._unit)
        return QSize(round(width) + 4, round(self.baseline() + small.descent() + 4))

    def minimumSizeHint(self) -> QSize:
        """Return the room at smaller letters: a figure is never cut, it shrinks where there is no room for it."""
        hint = self.sizeHint()
        return QSize(round(hint.width() * _SMALLEST), hint.height())

    def _fitting(self) -> float:
        """Return by how much the letters shrink to fit the width."""
        return min(1.0, max(_SMALLEST, self.width() / max(self.sizeHint().width(), 1)))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint both texts."""
        tokens = tokens_of(self.palette())
        fit = self._fitting()
        big, small = scaled(self.font(), _FIGURE_POINTS * fit, bold=True), scaled(self.font(), _UNIT_POINTS * fit)
        grey = not self.isEnabled()
        with QPainter(self) as painter:
            painter.setFont(big)
            painter.setPen(
                QColor(
                    tokens.rule
                    if grey
                    else tokens.stop
                    if self._alarm
                    else tokens.blue
                    if self._answered
                    else tokens.muted
                )
            )
            painter.drawText(QPointF(-2, self.baseline()), self._figure)
            left = QFontMetricsF(big).horizontalAdvance(self._figure) + _UNIT_GAP
            painter.setFont(small)
            painter.setPen(QColor(tokens.rule if grey else tokens.ink))
            painter.drawText(QPointF(left, self.baseline()), self._unit)


class Sign(QWidget):
    """The triangle beside a sentence; ``kind`` is "stop", "ink", or empty for none."""

    def __init__(self, parent: QWidget, kind: str) -> None:
        super().__init__(parent)
        self._kind = kind
        self.setVisible(bool(kind))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def set_kind(self, kind: str) -> None:
        """Change the kind."""
        if kind != self._kind:
            self._kind = kind
            self.setVisible(bool(kind))
            self.update()

    def sizeHint(self) -> QSize:
        """Return the height of a line."""
        side = round(QFontMetricsF(self.font()).height())
        return QSize(side, side)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the triangle."""
        if not self._kind:
            return
        tokens = tokens_of(self.palette())
        colour = tokens.rule if not self.isEnabled() else tokens.stop if self._kind == "stop" else tokens.ink
        with QPainter(self) as painter:
            draw_sign(painter, QRectF(self.rect()).adjusted(1, 1, -1, -1), QColor(colour))


class Sentence(QWidget):
    """A wrapped sentence with a sign before it, and room for buttons in ``below``."""

    def __init__(self, parent: QWidget, sign: str) -> None:
        super().__init__(parent)
        self.sign = Sign(self, sign)
        self.label = QLabel(self)
        self.label.setTextFormat(Qt.TextFormat.PlainText)
        self.label.setWordWrap(True)
        self.label.setMinimumHeight(1)  # its height follows its width; the hint is for a narrow one
        self.below = QHBoxLayout()
        self.below.setSpacing(GRID)
        self.below.addStretch(1)
        column = QVBoxLayout()
        column.setSpacing(GRID // 2)
        column.addWidget(self.label)
        column.addLayout(self.below)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GRID)
        row.addWidget(self.sign, 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(column, 1)

    def set_text(self, text: str) -> None:
        """Show a text."""
        self.label.setText(text)


class OfferButton(QPushButton):
    """Offers one reading; ``offerChosen`` carries (path, Offer)."""

    offerChosen = Signal(object)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._path = ""
        self._offer: Offer | None = None
        self.setAutoDefault(False)
        self.clicked.connect(self._choose)

    def set_offer(self, path: str, offer: Offer | None) -> None:
        """Show an offer for a field, or nothing."""
        self._path, self._offer = path, offer
        self.setText(offer.words if offer else "")
        self.setVisible(offer is not None)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Enter press it, when it has the focus itself and only then."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
            event.accept()
        else:
            super().keyPressEvent(event)

    def _choose(self) -> None:
        if self._offer is not None:
            self.offerChosen.emit((self._path, self._offer))


class MessageRow(Sentence):
    """One message: sign, sentence, and its offers as buttons."""

    offerChosen = Signal(object)

    def __init__(self, parent: QWidget, sign: str) -> None:
        super().__init__(parent, sign)
        self._buttons: list[OfferButton] = []

    def set_message(self, message: Message, sign: str) -> None:
        """Show a message."""
        self.set_text(message.text)
        self.sign.set_kind(sign)
        set_role(self.label, "stop" if sign == "stop" else "muted" if not sign else "")
        while len(self._buttons) < len(message.offers):
            button = OfferButton(self)
            button.offerChosen.connect(self.offerChosen)
            self.below.insertWidget(self.below.count() - 1, button)
            self._buttons.append(button)
        for n, button in enumerate(self._buttons):
            button.set_offer(message.path, message.offers[n] if n < len(message.offers) else None)

    def buttons(self) -> list[OfferButton]:
        """Return the buttons that are shown."""
        return [button for button in self._buttons if button.isVisibleTo(self)]


class MessageList(QWidget):
    """Messages one under the other; rows are made once and used again."""

    offerChosen = Signal(object)

    def __init__(self, parent: QWidget, sign: str) -> None:
        super().__init__(parent)
        self._sign = sign
        self._rows: list[MessageRow] = []
        self._shown: tuple[tuple[Message, ...], str] = ((), sign)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(GRID)
        self.setVisible(False)

    def set_messages(self, messages: tuple[Message, ...], sign: str | None = None) -> None:
        """Show these messages; nothing moves when they are the same as before."""
        sign = self._sign if sign is None else sign
        if (messages, sign) == self._shown:
            return
        self._shown = (messages, sign)
        if self.isVisible() or (messages and self._stands_in_sight()):
            stop = " ".join(message.text for message in messages) if sign == "stop" else ""
            Announcer.of(self).say_after_quiet(self, stop, urgent=True)
        while len(self._rows) < len(messages):
            row = MessageRow(self, sign)
            row.offerChosen.connect(self.offerChosen)
            self._column.addWidget(row)
            self._rows.append(row)
        for n, row in enumerate(self._rows):
            if n < len(messages):
                row.set_message(messages[n], sign)
            row.setVisible(n < len(messages))
        self.setVisible(bool(messages))

    def _stands_in_sight(self) -> bool:
        above = self.parentWidget()
        return above is not None and above.isVisible()
