"""Paints names in a narrow list: whole, in as many lines as they need, with the same air above and below as a name of one line."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QGuiApplication, QPainter
from PySide6.QtWidgets import QAbstractItemView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from evenwater.ui.theme import GRID, chosen_ground, pixels, tokens_of

_PLACE = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
_EDGE, _ROW = 4, 33
# Where the names of the sheets begin above it [px].
_BEFORE = 23
Index = QModelIndex | QPersistentModelIndex


class NamePainter(QStyledItemDelegate):
    """Paints one name of a list as the list of sheets paints its own."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Return the height that all lines of a name need."""
        view = option.widget
        width = view.viewport().width() if isinstance(view, QAbstractItemView) else option.rect.width()
        text = self._box(QRect(0, 0, width, 1 << 16))
        metrics, name = QFontMetrics(option.font), str(index.data())
        lines = metrics.boundingRect(text, _wrapped(metrics, name, text.width()), name)
        return QSize(width, max(lines.height() + 2 * GRID - 2, pixels(option.font, _ROW)))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint ground, edge and name."""
        tokens = tokens_of(QGuiApplication.palette())  # a view's own has the colours of its choice
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        painter.save()
        if chosen or option.state & QStyle.StateFlag.State_MouseOver:
            painter.fillRect(option.rect, QColor(chosen_ground(tokens) if chosen else tokens.wash))
        if chosen:
            edge = QRect(option.rect.left(), option.rect.top(), _EDGE, option.rect.height())
            painter.fillRect(edge, QColor(tokens.blue))
        painter.setFont(QFont(option.font))
        painter.setPen(QColor(tokens.ink))
        box, name = self._box(option.rect), str(index.data())
        painter.drawText(box, _wrapped(painter.fontMetrics(), name, box.width()), name)
        painter.restore()

    def _box(self, rect: QRect) -> QRect:
        return rect.adjusted(_BEFORE, 0, -GRID // 2, 0)


def _wrapped(metrics: QFontMetrics, name: str, width: int) -> int:
    """Return how a name is wrapped: between its words, since jugs may differ only at the end; within one that is wider than the list."""
    fits = all(metrics.horizontalAdvance(word) <= width for word in name.split())
    return _PLACE | int(Qt.TextFlag.TextWordWrap if fits else Qt.TextFlag.TextWrapAnywhere)
