"""The "?" beside the field that has the focus, and the slip of paper that says why the field is there."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QHideEvent, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QAbstractScrollArea, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.ui.announce import Announcer
from evenwater.ui.field_shell import FieldShell
from evenwater.ui.flow import FlowRow
from evenwater.ui.paper_style import draw_frame
from evenwater.ui.reading_order import SLIP, LaidOver
from evenwater.ui.theme import GRID, pixels, scaled, set_role, tokens_of
from evenwater.wording import say

# What is hit is larger than what is seen: the sign fits beside a field's name and takes no room of its own.
_TARGET, _SIGN = 32, 18
_SLIP_WIDTH = 380


class WhyMark(QAbstractButton):
    """The sign, at the right end of the line with the field's name."""

    def __init__(self, parent: QWidget) -> None:
        """Make the sign; F1 does the same, so Tab passes it by."""
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName(say("Why this is asked (F1)"))
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self._foot = 0
        self.hide()

    def sizeHint(self) -> QSize:
        """Return the size of what can be hit."""
        side = pixels(self.font(), _TARGET)
        return QSize(side, side)

    def put(self, right: int, bottom: int) -> None:
        """Stand with the sign's corner there [px]; at the very top of the page what can be hit reaches below the sign instead."""
        side = self.sizeHint().width()
        top = max(bottom - side, 0)
        self._foot = bottom - top
        self.setGeometry(right - side, top, side, side)
        self.show()
        self.raise_()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint a ring with a question mark in it, in the corner."""
        tokens = tokens_of(self.palette())
        side = pixels(self.font(), _SIGN)
        ring = QRectF(self.width() - side, self._foot - side, side, side).adjusted(1, 1, -1, -1)
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QColor(tokens.blue), 1.4))
            painter.setBrush(QColor(tokens.leaf))
            painter.drawEllipse(ring)
            painter.setFont(scaled(self.font(), 10, bold=True))
            painter.drawText(ring, int(Qt.AlignmentFlag.AlignCenter), "?")


class WhySlip(LaidOver):
    """Says why a field is there, with the terms that go with it; ``termWanted`` carries the key of one, ``closed`` says that Escape was
    pressed in it.
    """

    termWanted = Signal(str)
    closed = Signal()

    def __init__(self, host: QWidget) -> None:
        """Make the slip on the page that it lies on."""
        super().__init__(host)
        self._from: QWidget | None = None
        self._other: object = None
        self.text = QLabel(self)
        self.text.setTextFormat(Qt.TextFormat.PlainText)
        self.text.setWordWrap(True)
        self._keys = QLabel(say("F1 again: glossary. Escape: close."), self)
        set_role(self._keys, "caption")
        self._terms = FlowRow(GRID // 2)
        self._buttons: list[QPushButton] = []
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(GRID, GRID, GRID, GRID)
        self._column.setSpacing(GRID // 2)
        self._column.addWidget(self.text)
        self._column.addLayout(self._terms)
        self._column.addWidget(self._keys)
        self.hide()

    @property
    def buttons(self) -> tuple[QPushButton, ...]:
        """The buttons of the terms that are offered."""
        return tuple(button for button in self._buttons if not button.isHidden())

    def tell(self, about: QWidget, text: str, terms: tuple[tuple[str, str], ...]) -> None:
        """Say a text about an input, below it or, where there is no room, above; ``terms`` are keys and names."""
        self.text.setText(text)
        while len(self._buttons) < len(terms):
            self._buttons.append(self._button())
        for number, button in enumerate(self._buttons):
            button.setVisible(number < len(terms))
            if number < len(terms):
                key, name = terms[number]
                button.setText(name.replace("&", "&&"))
                button.setProperty("term", key)
        self._place(about)
        self.show()
        self.raise_()
        # Tab goes from the field to the terms, and from there on to the next field.
        self._from = about.focusProxy() or about
        self._other = self._from.property(SLIP)
        self._from.setProperty(SLIP, self)
        previous = self._from
        for button in self.buttons:
            QWidget.setTabOrder(previous, button)
            previous = button
        Announcer.of(about).say(text)

    def hideEvent(self, event: QHideEvent) -> None:
        """Give the field back the slip of its own, if it has one."""
        super().hideEvent(event)
        if self._from is not None:
            self._from.setProperty(SLIP, self._other)
            self._from = self._other = None

    def _button(self) -> QPushButton:
        button = QPushButton(self)
        button.setAutoDefault(False)
        set_role(button, "quiet")
        button.clicked.connect(self._wanted)
        self._terms.addWidget(button)
        return button

    def _wanted(self) -> None:
        self.termWanted.emit(str(self.sender().property("term")))

    def _place(self, about: QWidget) -> None:
        host = self.parentWidget()
        assert host is not None
        # Below the frame, over the line that is kept below it.
        frame = (
            about.frame if isinstance(about, FieldShell) and not about.frame.isHidden() else about.focusProxy() or about
        )
        corner = frame.mapTo(host, QPoint(0, frame.height() + 1))
        width = min(max(frame.width(), pixels(self.font(), _SLIP_WIDTH)), host.width() - 2 * GRID)
        left = max(GRID, min(corner.x(), host.width() - width - GRID))
        self.setFixedWidth(width)
        self._column.activate()
        height = self._column.totalHeightForWidth(width)
        top = corner.y()
        if top + height > host.height() - 2:
            top = about.mapTo(host, QPoint(0, 0)).y() - height - 2
        self.setGeometry(left, max(0, top), width, height)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close on Escape, from a term as well."""
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
            event.accept()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the paper."""
        tokens = tokens_of(self.palette())
        with QPainter(self) as painter:
            draw_frame(painter, self.rect(), QColor(tokens.blue), QColor(tokens.leaf), 1)


def host_of(widget: QWidget) -> QWidget:
    """Return the page that a slip about a widget lies on: it scrolls with the widget and is large enough."""
    host = widget
    while not host.isWindow():
        above = host.parentWidget()
        if above is None or isinstance(above.parentWidget(), QAbstractScrollArea):
            break
        host = above
    return host
