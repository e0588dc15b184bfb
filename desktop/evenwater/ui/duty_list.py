"""The lines of the rounds: painted by hand, so that a room of hundreds of systems opens as fast as one of three."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QPersistentModelIndex,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QFont,
    QFontMetrics,
    QGuiApplication,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QResizeEvent,
)
from PySide6.QtWidgets import QAbstractItemView, QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from evenwater.screens import rounds
from evenwater.screens.rounds import Duty
from evenwater.ui.paper_style import draw_sign
from evenwater.ui.theme import BUTTON_HEIGHT, GRID, chosen_ground, pixels, scaled, set_role, tokens_of
from evenwater.wording import marked, say, say_all

Index = QModelIndex | QPersistentModelIndex
GROUPS = {rounds.WRONG: marked("Wrong"), rounds.DUE: marked("Due"), rounds.SOON: marked("Due soon")}
# How the width is shared by place, what to do and why.
_SHARES = (0.24, 0.27, 0.49)
_HEAD_POINTS = 13.0
# More lines than a screen has.
_BATCH = 40
_WRAP = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)


class DutyModel(QAbstractListModel):
    """The lines in their order, each group under its head; a head is a text, a line a ``Duty``."""

    def __init__(self, parent: QWidget) -> None:
        """Begin without lines."""
        super().__init__(parent)
        self.lines: tuple[str | Duty, ...] = ()

    def set_duties(self, duties: Sequence[Duty]) -> bool:
        """Show these duties; False when they are shown already."""
        lines: list[str | Duty] = []
        for urgency, words in say_all(GROUPS).items():
            here = [duty for duty in duties if duty.urgency == urgency]
            lines += [words, *here] if here else []
        if tuple(lines) == self.lines:
            return False
        self.beginResetModel()
        self.lines = tuple(lines)
        self.endResetModel()
        return True

    def duty(self, index: Index) -> Duty | None:
        """Return the duty of a line, or None of a head."""
        line = self.lines[index.row()] if index.isValid() else None
        return line if isinstance(line, Duty) else None

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's signature)
        """Return the number of lines."""
        return 0 if parent.isValid() else len(self.lines)

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Let a line be chosen, a head not."""
        if self.duty(index) is None:
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the words of a line; read aloud it says how urgent it is as well."""
        if not index.isValid():
            return None
        line = self.lines[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return line if isinstance(line, str) else f"{line.place}: {line.what}"
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return (
                line
                if isinstance(line, str)
                else f"{say_all(GROUPS[line.urgency])}. {line.place}: {line.what}. {line.why}"
            )
        return None


class DutyPainter(QStyledItemDelegate):
    """Paints a line in three columns, each wrapped and none cut off, or a head."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Return the height that the longest column needs."""
        view = option.widget
        width = view.viewport().width() if isinstance(view, QListView) else option.rect.width()
        line = self._line(index)
        if isinstance(line, str):
            font = scaled(option.font, _HEAD_POINTS, bold=True)
            return QSize(width, QFontMetrics(font).height() + 2 * GRID)
        high = max(
            QFontMetrics(font).boundingRect(box, _WRAP, text).height()
            for box, text, font in self._cells(QRect(0, 0, width, 1 << 20), option.font, line)
        )
        return QSize(width, max(high + 2 * GRID, pixels(option.font, BUTTON_HEIGHT + GRID)))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint the ground as the style has it, then the words."""
        tokens = tokens_of(QGuiApplication.palette())  # a view's own has the colours of its choice
        line = self._line(index)
        painter.save()
        if isinstance(line, str):
            painter.setFont(scaled(option.font, _HEAD_POINTS, bold=True))
            painter.setPen(QColor(tokens.ink))
            low = option.rect.adjusted(GRID, 0, 0, -GRID // 2)
            painter.drawText(low, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom), line)
        else:
            self._ground(painter, option)
            side = QFontMetrics(option.font).height()
            if line.urgency == rounds.WRONG:
                sign = QRectF(option.rect.left() + GRID, option.rect.top() + GRID, side, side).adjusted(1, 1, -1, -1)
                draw_sign(painter, sign, QColor(tokens.stop))
            colours = (tokens.ink, tokens.blue, tokens.muted)
            for (box, text, font), colour in zip(self._cells(option.rect, option.font, line), colours, strict=True):
                painter.setFont(font)
                painter.setPen(QColor(colour))
                painter.drawText(box, _WRAP, text)
        painter.restore()

    def _ground(self, painter: QPainter, option: QStyleOptionViewItem) -> None:
        """Paint hover, choice and focus; the choice has an edge beside its colour, the focus a frame."""
        tokens = tokens_of(QGuiApplication.palette())  # a view's own has the colours of its choice
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        if option.state & QStyle.StateFlag.State_MouseOver:
            painter.fillRect(option.rect, QColor(tokens.wash))
        elif chosen:
            painter.fillRect(option.rect, QColor(chosen_ground(tokens)))
        painter.fillRect(option.rect.adjusted(0, option.rect.height() - 1, 0, 0), QColor(tokens.faint))
        if chosen:
            painter.fillRect(QRect(option.rect.left(), option.rect.top(), 4, option.rect.height()), QColor(tokens.blue))
            if isinstance(option.widget, QWidget) and option.widget.hasFocus():
                painter.setPen(QColor(tokens.blue))
                for inset in (0, 1):
                    painter.drawRect(option.rect.adjusted(inset, inset, -1 - inset, -1 - inset))

    def _line(self, index: Index) -> str | Duty:
        model = index.model()
        assert isinstance(model, DutyModel)
        return model.lines[index.row()]

    def _cells(self, rect: QRect, font: QFont, duty: Duty) -> list[tuple[QRect, str, QFont]]:
        """Return place, what to do and why, each with its box and its letters."""
        side = QFontMetrics(font).height()
        left, room = rect.left() + side + 2 * GRID, rect.width() - side - 3 * GRID
        bold = QFont(font)
        bold.setBold(True)
        cells = []
        for share, text, letters in zip(_SHARES, (duty.place, duty.what, duty.why), (font, bold, font), strict=True):
            box = QRect(left, rect.top() + GRID, round(share * room) - 2 * GRID, rect.height() - 2 * GRID)
            cells.append((box, text, letters))
            left += round(share * room)
        return cells


class DutyList(QListView):
    """Lists the duties: arrow keys go from line to line, Enter, Space or a click opens one; ``opened`` carries it."""

    opened = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make the list, still empty."""
        super().__init__(parent)
        self.lines = DutyModel(self)
        self.setModel(self.lines)
        self.setItemDelegate(DutyPainter(self))
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        # Heights are asked for what is seen first, the rest between the window's own work.
        self.setLayoutMode(QListView.LayoutMode.Batched)
        self.setBatchSize(_BATCH)
        self.setMouseTracking(True)
        self.setAccessibleName(say("What is wrong and what is due"))
        set_role(self, "lines")
        self._moved = False
        self.clicked.connect(self._open)

    def show_duties(self, duties: Sequence[Duty]) -> None:
        """Show these duties; the line that was moved to stays chosen while it is there, else the one in its place is."""
        before, row, height = self.chosen(), self.currentIndex().row(), self.verticalScrollBar().value()
        if not self.lines.set_duties(duties) or before is None:
            return
        rows = [n for n, line in enumerate(self.lines.lines) if isinstance(line, Duty)]
        if not self._moved and row <= 1 and rows:
            # Nobody has gone anywhere yet: the most urgent line is chosen, also when it comes last.
            self.setCurrentIndex(self.lines.index(rows[0]))
            return
        same = [n for n in rows if self._duty(n).key == before.key]
        near = same or sorted(rows, key=lambda n: abs(n - row))
        if near:
            self.setCurrentIndex(self.lines.index(near[0]))
            self.verticalScrollBar().setValue(height)
            self.scrollTo(self.currentIndex())

    def chosen(self) -> Duty | None:
        """Return the duty of the chosen line, or None."""
        return self.lines.duty(self.currentIndex())

    def choose_first(self) -> None:
        """Choose the first line, unless one is chosen. Qt makes a line the current one with the focus, but does not show it as chosen."""
        if self.lines.lines and not self.selectionModel().hasSelection():
            self.setCurrentIndex(self.lines.index(1) if self.chosen() is None else self.currentIndex())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Open the chosen line with Enter or Space; Home goes to the first line, which stands below a head."""
        self._moved = True
        if event.key() == Qt.Key.Key_Home and self.lines.lines:
            self.setCurrentIndex(self.lines.index(1))
            self.scrollToTop()
            event.accept()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self._open(self.currentIndex())
            event.accept()
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Choose a line, so that it is seen where the keys are."""
        super().focusInEvent(event)
        self.choose_first()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Break the words anew for another width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take the choice into the keeper's hand."""
        self._moved = True
        super().mousePressEvent(event)

    def _duty(self, row: int) -> Duty:
        line = self.lines.lines[row]
        assert isinstance(line, Duty)
        return line

    def _open(self, index: QModelIndex) -> None:
        duty = self.lines.duty(index)
        if duty is not None:
            self.opened.emit(duty)
