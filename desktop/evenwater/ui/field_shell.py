"""What all fields share: label above, one frame, one line kept below, and a slip for what does not fit there.

Nothing jumps: the line below is always there. A longer sentence, or a question with its buttons,
lies on a slip of paper over what comes next while the keeper is in the field.
"""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetrics,
    QHideEvent,
    QMoveEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QShowEvent,
)
from PySide6.QtWidgets import (
    QAbstractScrollArea,
    QApplication,
    QFrame,
    QHBoxLayout,
    QLabel,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from evenwater.screens.terms import headed
from evenwater.screens.views import Message, Offer
from evenwater.ui.announce import Announcer
from evenwater.ui.answer_parts import MessageRow
from evenwater.ui.paper_style import draw_frame, draw_sign
from evenwater.ui.plain_text import set_tip
from evenwater.ui.reading_order import SLIP, LaidOver
from evenwater.ui.theme import FIELD_HEIGHT, GRID, pixels, scaled, set_role, tokens_of

_SLIP_WIDTH = 340
_SIGN = 20


class FieldFrame(QFrame):
    """The frame around text and unit; its look follows the state and the focus."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.state = "empty"
        self.active = False
        self.refused = False
        self.row = QHBoxLayout(self)
        self.row.setContentsMargins(10, 2, 4, 2)
        self.row.setSpacing(4)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Return the height of a field at this font."""
        return QSize(super().sizeHint().width(), pixels(self.font(), FIELD_HEIGHT))

    def minimumSizeHint(self) -> QSize:
        """Return the same height; the width is what text and unit need."""
        return QSize(super().minimumSizeHint().width(), pixels(self.font(), FIELD_HEIGHT))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the frame."""
        tokens = tokens_of(self.palette())
        with QPainter(self) as painter:
            if self.active:
                draw_frame(painter, self.rect(), QColor(tokens.blue), QColor(tokens.leaf), 2)
            elif self.state == "error" or self.refused:
                draw_frame(painter, self.rect(), QColor(tokens.stop), QColor(tokens.leaf), 2)
            elif self.state == "ask":
                draw_frame(painter, self.rect(), QColor(tokens.ink), QColor(tokens.leaf), 2)
            elif self.state != "derived":
                draw_frame(painter, self.rect(), QColor(tokens.rule), QColor(tokens.leaf), 1)


class NoteLine(QWidget):
    """The one line kept below a field: help, or a sign and as much of the sentence as fits."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.text = ""
        self.sign = ""
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def set_note(self, text: str, sign: str) -> None:
        """Show a text; ``sign`` is "stop", "ink" or empty."""
        if (text, sign) != (self.text, self.sign):
            self.text, self.sign = text, sign
            set_tip(self, text, whole=not self.fits())
            self.update()

    def fits(self) -> bool:
        """Return whether the whole text can be read here."""
        return self._metrics().horizontalAdvance(self.text) <= self._room()

    def sizeHint(self) -> QSize:
        """Return the height of one line."""
        return QSize(40, self._metrics().height())

    def minimumSizeHint(self) -> QSize:
        """Return the height of one line."""
        return QSize(0, self._metrics().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint sign and text."""
        tokens = tokens_of(self.palette())
        colour = QColor({"stop": tokens.stop, "ink": tokens.ink}.get(self.sign, tokens.muted))
        height = self.height()
        with QPainter(self) as painter:
            painter.setFont(scaled(self.font(), 10))
            painter.setPen(colour)
            left = 1
            if self.sign:
                draw_sign(painter, QRectF(1, 1, height - 2, height - 2), colour)
                left = height + 4
            text = painter.fontMetrics().elidedText(self.text, Qt.TextElideMode.ElideRight, self._room())
            painter.drawText(QRectF(left, 0, self.width() - left, height), Qt.AlignmentFlag.AlignVCenter, text)

    def _room(self) -> int:
        return self.width() - (self.height() + 4 if self.sign else 1)

    def _metrics(self) -> QFontMetrics:
        return QFontMetrics(scaled(self.font(), 10))


class Slip(LaidOver):
    """A slip of paper over what comes next: the whole sentence, and the choices it leaves."""

    def __init__(self, host: QWidget) -> None:
        super().__init__(host)
        self.host = host
        self.sign = ""
        self.row = MessageRow(self, "")
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(GRID, GRID, GRID, GRID)
        self._column.addWidget(self.row)

    def show_message(self, message: Message, sign: str) -> None:
        """Write on the slip."""
        self.sign = sign
        self.row.set_message(message, sign)
        self.update()

    def height_at(self, width: int) -> int:
        """Return the height the words need at a width [px]."""
        self.setFixedWidth(width)
        self._column.activate()
        return self._column.totalHeightForWidth(width)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the paper."""
        tokens = tokens_of(self.palette())
        edge = tokens.stop if self.sign == "stop" else tokens.ink
        with QPainter(self) as painter:
            draw_frame(painter, self.rect(), QColor(edge), QColor(tokens.leaf), 1)


class FieldShell(QWidget):
    """Base of the fields. A subclass fills ``frame.row`` and calls ``_say`` when its state changes.

    ``offerTaken`` carries the ``Offer`` whose button was pressed.
    """

    offerTaken = Signal(object)

    def __init__(self, label: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.label = QLabel(label, self)
        self.frame = FieldFrame(self)
        self.note = NoteLine(self)
        self.slip: Slip | None = None
        self._help = self._why = ""
        self._own: Message | None = None
        self._outside: Message | None = None
        self._told: Message | None = None
        self._suggestion: Message | None = None
        self._within = False
        set_role(self.label, "caption")
        # Where the "?" stands beside the name while the field has the focus.
        self.label.setContentsMargins(0, 0, pixels(self.font(), _SIGN), 0)
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(0, 0, 0, 0)
        self.column.setSpacing(2)
        for part in (self.label, self.frame, self.note):
            self.column.addWidget(part)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._focus_moved)

    def set_help(self, text: str) -> None:
        """Set the quiet line shown below while nothing else is to be said."""
        self._help = text
        self._refresh()

    def set_why(self, text: str) -> None:
        """Say, for a screen reader, why the field is there, after what stands below it."""
        self._why = text
        self._refresh()

    def set_message(self, message: Message | None) -> None:
        """Show a refusal that came from outside the field, or take it away."""
        if message != self._outside:
            self._outside = message
            self._refresh()

    def set_suggestion(self, suggestion: Message | None) -> None:
        """Offer a value while the keeper is in the field and nothing is wrong with it; None takes the offer away."""
        if suggestion != self._suggestion:
            self._suggestion = suggestion
            self._refresh()

    @property
    def state(self) -> str:
        """One of empty, typing, ok, ask, error, derived."""
        return self.frame.state

    @property
    def message(self) -> str:
        """The sentence about what stands in the field, or nothing."""
        shown = self._own or self._outside
        return shown.text if shown else ""

    def spoken_for(self) -> QWidget:
        """Return the widget that carries the field's accessible name and description."""
        return self

    def _say(self, state: str, own: Message | None) -> None:
        """Show a state with its own message."""
        alarming = own is not None and own != self._own
        self.frame.state = state
        self._own = own
        self._refresh()
        if alarming and own is not None and self.isVisible():
            words = headed(self.label.text(), own.text)
            Announcer.of(self).say(words, urgent=True)

    def _tell(self, told: Message | None) -> None:
        """Show a remark on a slip until the keeper leaves the field."""
        self._told = told
        self._refresh()

    def _refresh(self) -> None:
        message = self._own or self._outside
        asking = self._own is not None and self.frame.state == "ask"
        sign = "" if message is None else "ink" if asking else "stop"
        self.note.set_note(message.text if message else self._help, sign)
        self.frame.refused = self._outside is not None
        self.frame.update()
        spoken = self.spoken_for()
        description = " ".join(filter(None, (message.text if message else self._help, self._why)))
        if spoken.accessibleDescription() != description:
            spoken.setAccessibleDescription(description)
        on_slip, slip_sign = (self._told, "") if self._told else (message, sign)
        if on_slip is None and self._within and self.frame.state in ("empty", "derived"):
            on_slip = self._suggestion
        needed = on_slip is not None and (
            asking or (self._within and (bool(on_slip.offers) or on_slip is self._told or not self.note.fits()))
        )
        if on_slip is not None and needed and self.isVisible():
            self._lay_slip(on_slip, slip_sign)
        elif self.slip is not None:
            self.slip.hide()

    def _lay_slip(self, message: Message, sign: str) -> None:
        if self.slip is None:
            self.slip = Slip(self._host())
            self.spoken_for().setProperty(SLIP, self.slip)
            self.slip.row.offerChosen.connect(self._offer_chosen)
            self.destroyed.connect(self.slip.deleteLater)
        slip = self.slip
        slip.show_message(message, sign)
        host = slip.host
        corner = self.frame.mapTo(host, QPoint(0, self.frame.height() + 1))
        width = min(max(self.frame.width(), pixels(self.font(), _SLIP_WIDTH)), host.width() - 2 * GRID)
        left = max(GRID, min(corner.x(), host.width() - width - GRID))
        height = slip.height_at(width)
        top = corner.y()
        if top + height > host.height() - 2:
            top = self.mapTo(host, QPoint(0, 0)).y() - height - 2
        slip.setGeometry(left, max(0, top), width, height)
        slip.show()
        slip.raise_()
        previous: QWidget = self.spoken_for()
        for button in slip.row.buttons():
            QWidget.setTabOrder(previous, button)
            previous = button

    def _host(self) -> QWidget:
        """Return the page the slip lies on: it scrolls with the field and is large enough."""
        widget: QWidget = self
        while not widget.isWindow():
            above = widget.parentWidget()
            if above is None or isinstance(above.parentWidget(), QAbstractScrollArea):
                break
            widget = above
        return widget

    def _offer_chosen(self, chosen: tuple[str, Offer]) -> None:
        self.offerTaken.emit(chosen[1])

    def _focus_moved(self, before: QWidget | None, now: QWidget | None) -> None:
        # Another program, or nothing: the keeper has not gone on to another field. And what nobody sees has no focus to lose.
        if now is None or not (self._within or self.isVisible()):
            return
        within = self._holds(now)
        if within != self._within:
            self._within = self.frame.active = within
            if not within:
                self._told = None
            self._refresh()

    def _holds(self, widget: QWidget | None) -> bool:
        while widget is not None:
            if widget is self or (self.slip is not None and widget is self.slip):
                return True
            widget = widget.parentWidget()
        return False

    def hideEvent(self, event: QHideEvent) -> None:
        """Take the slip away with the field."""
        super().hideEvent(event)
        if self.slip is not None:
            self.slip.hide()

    def showEvent(self, event: QShowEvent) -> None:
        """Bring the slip back with the field."""
        super().showEvent(event)
        self._refresh()

    def moveEvent(self, event: QMoveEvent) -> None:
        """Keep the slip at the field."""
        super().moveEvent(event)
        if self.slip is not None and self.slip.isVisible():
            self._refresh()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the slip at the field, and see whether the sentence fits now."""
        super().resizeEvent(event)
        if self._own or self._outside:
            self._refresh()
