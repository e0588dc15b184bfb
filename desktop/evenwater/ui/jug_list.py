"""All jugs at one glance: painted by hand, each with its level as a bar, so that hundreds open as fast as seven."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QColor, QFont, QFontMetrics, QGuiApplication, QPainter, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from evenwater.screens.jugs_sheet import JugRow
from evenwater.ui.paper_style import draw_sign
from evenwater.ui.theme import GRID, Tokens, chosen_ground, pixels, scaled, set_role, tokens_of
from evenwater.wording import say

Index = QModelIndex | QPersistentModelIndex
# How the width is shared by the jug, its level and how long it lasts.
_SHARES = (0.42, 0.32, 0.26)
_BAR_HEIGHT = 6
_CAPTION_POINTS = 10.0
_BATCH = 40
# So many heights of words are remembered.
_MEASURED = 2000
_WRAP = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)


class JugModel(QAbstractListModel):
    """The rows in the order of the shelf."""

    def __init__(self, parent: QWidget) -> None:
        """Begin without rows."""
        super().__init__(parent)
        self.rows: tuple[JugRow, ...] = ()

    def set_rows(self, rows: Sequence[JugRow]) -> None:
        """Show these rows; where the jugs are the same ones only their words change."""
        rows = tuple(rows)
        if rows and [row.stock_id for row in rows] == [row.stock_id for row in self.rows]:
            other = [number for number, (old, new) in enumerate(zip(self.rows, rows, strict=True)) if old != new]
            self.rows = rows
            if other:
                self.dataChanged.emit(self.index(other[0]), self.index(other[-1]))
            return
        self.beginResetModel()
        self.rows = rows
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's signature)
        """Return the number of jugs."""
        return 0 if parent.isValid() else len(self.rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the name of a jug; read aloud, everything its row says."""
        if not index.isValid():
            return None
        row = self.rows[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return row.name
        if role == Qt.ItemDataRole.AccessibleTextRole:
            said = (
                row.name,
                row.contents,
                row.level,
                row.basis,
                row.lasts,
                say("low") if row.low else "",
                row.refill,
                row.check,
            )
            return ". ".join(part for part in said if part)
        return None


class JugPainter(QStyledItemDelegate):
    """Paints a jug in three columns of two lines, the first bold, none cut off."""

    def __init__(self, parent: QWidget) -> None:
        """Measure nothing yet."""
        super().__init__(parent)
        self._heights: dict[tuple[str, int, str], int] = {}

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Return the height that the longest column needs."""
        view = option.widget
        width = view.viewport().width() if isinstance(view, QListView) else option.rect.width()
        columns = self._columns(QRect(0, 0, width, 1 << 20), option.font, self._row(index))
        return QSize(width, max(bottom for *_, bottom in columns) + GRID)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint ground, words, bar and sign."""
        tokens = tokens_of(QGuiApplication.palette())  # a view's own has the colours of its choice
        row = self._row(index)
        painter.save()
        self._ground(painter, option, tokens)
        side = QFontMetrics(option.font).height()
        if row.empty or row.low or row.check:
            sign = QRectF(option.rect.left() + GRID, option.rect.top() + GRID, side, side).adjusted(1, 1, -1, -1)
            draw_sign(painter, sign, QColor(tokens.stop if row.empty or row.stop else tokens.ink))
        columns = self._columns(option.rect, option.font, row)
        for head, first, second, below, bold, small, _ in columns:
            painter.setFont(bold)
            painter.setPen(QColor(tokens.ink))
            painter.drawText(head, _WRAP, first)
            painter.setFont(small)
            painter.setPen(QColor(tokens.muted))
            painter.drawText(below, _WRAP, second)
        if row.share is not None:
            self._bar(painter, columns[1][0], row, tokens, option.font)
        painter.restore()

    def _bar(self, painter: QPainter, head: QRect, row: JugRow, tokens: Tokens, font: QFont) -> None:
        high = pixels(font, _BAR_HEIGHT)
        frame = QRectF(head.left(), head.bottom() + 3, head.width() - GRID, high)
        painter.setPen(QColor(tokens.rule))
        painter.drawRect(frame)
        filled = QRectF(frame)
        filled.setWidth(frame.width() * (row.share or 0.0))
        painter.fillRect(filled, QColor(tokens.stop if row.empty else tokens.ink))

    def _ground(self, painter: QPainter, option: QStyleOptionViewItem, tokens: Tokens) -> None:
        """Paint hover, choice and focus; the choice has an edge beside its colour, the focus a frame."""
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

    def _row(self, index: Index) -> JugRow:
        model = index.model()
        assert isinstance(model, JugModel)
        return model.rows[index.row()]

    def _columns(self, rect: QRect, font: QFont, row: JugRow) -> list[tuple[QRect, str, str, QRect, QFont, QFont, int]]:
        """Return each column: box and words of the first line, words and box of the second, letters, and its foot [px]."""
        side = QFontMetrics(font).height()
        left, room = rect.left() + side + 2 * GRID, rect.width() - side - 3 * GRID
        bold, small = QFont(font), scaled(font, _CAPTION_POINTS)
        bold.setBold(True)
        lasts = "\n".join(part for part in (row.refill, row.check) if part)
        said = ((row.name, row.contents), (row.level, row.basis), ("STOP" if row.stop else row.lasts, lasts))
        found = []
        for number, (share, (first, second)) in enumerate(zip(_SHARES, said, strict=True)):
            width = round(share * room) - GRID
            head = QRect(left, rect.top() + GRID, width, self._height(bold, width, first))
            gap = pixels(font, _BAR_HEIGHT) + GRID if number == 1 and row.share is not None else 2
            below = QRect(left, head.bottom() + gap, width, self._height(small, width, second) if second else 0)
            found.append((head, first, second, below, bold, small, below.bottom() - rect.top()))
            left += round(share * room)
        return found

    def _height(self, font: QFont, width: int, text: str) -> int:
        """Return the height of words in a width [px], measured once: the same few are asked for at every change of any jug."""
        key = font.key(), width, text
        if key not in self._heights:
            if len(self._heights) > _MEASURED:
                self._heights.clear()
            self._heights[key] = QFontMetrics(font).boundingRect(QRect(0, 0, width, 1 << 20), _WRAP, text).height()
        return self._heights[key]


class JugList(QListView):
    """Lists the jugs; ``chosen`` carries the id of the one the keeper went to, by click or by arrow."""

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make the list, still empty."""
        super().__init__(parent)
        self.jugs = JugModel(self)
        self.setModel(self.jugs)
        self.setItemDelegate(JugPainter(self))
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setLayoutMode(QListView.LayoutMode.Batched)
        self.setBatchSize(_BATCH)
        self.setMouseTracking(True)
        self.setAccessibleName(say("All jugs, what is in them and how long they last"))
        set_role(self, "lines")
        self._shown = ""
        self.selectionModel().currentChanged.connect(self._current_changed)

    def show_rows(self, rows: Sequence[JugRow], stock_id: str) -> None:
        """Show these jugs, one of them as the chosen one."""
        self._shown = stock_id
        if tuple(rows) != self.jugs.rows:
            self.jugs.set_rows(rows)
            # Other words may need other heights.
            self.scheduleDelayedItemsLayout()
        self.choose(stock_id)

    def choose(self, stock_id: str) -> None:
        """Show another jug as the chosen one, and say nothing."""
        self._shown = stock_id
        for number, row in enumerate(self.jugs.rows):
            if row.stock_id == stock_id and self.currentIndex().row() != number:
                flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
                self.selectionModel().setCurrentIndex(self.jugs.index(number), flag)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Break the words anew for another width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()

    def _current_changed(self, current: QModelIndex, _before: QModelIndex) -> None:
        if 0 <= current.row() < len(self.jugs.rows):
            stock_id = self.jugs.rows[current.row()].stock_id
            if stock_id != self._shown:
                self._shown = stock_id
                self.chosen.emit(stock_id)
