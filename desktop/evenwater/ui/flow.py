"""A row that goes on in the next line when the width is used up."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class FlowRow(QLayout):
    """Lays widgets out from left to right, and again from the left below."""

    # The items that take room with what they ask for, and the heights found since the last of them changed: a layout is asked
    # some ten times in one pass.
    _sizes: list[tuple[QLayoutItem, QSize, QSize]] | None = None

    def __init__(self, spacing: int, parent: QWidget | None = None, *, modest: bool = False) -> None:
        """Make an empty row; a ``modest`` one asks for no more width than its widest part needs, and takes what it is given."""
        super().__init__(parent)
        self._modest = modest
        self._heights: dict[int, int] = {}
        self._items: list[QLayoutItem] = []
        self.setContentsMargins(0, 0, 0, 0)
        self.setSpacing(spacing)

    def addItem(self, item: QLayoutItem) -> None:
        """Take an item in at the end."""
        self._sizes = None
        self._items.append(item)

    def insert(self, index: int, widget: QWidget) -> None:
        """Put a widget before the one that stands at ``index``."""
        self.addWidget(widget)
        self._items.insert(index, self._items.pop())
        self.invalidate()

    def invalidate(self) -> None:
        """Forget what was measured."""
        self._sizes = None
        super().invalidate()

    def count(self) -> int:
        """Return the number of items."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        """Return an item, or None."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        """Give an item out of hand, or None; whoever takes it may destroy it."""
        self._sizes = None
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        """Take no more room than needed."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        """Return that the height depends on the width."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Return the height of all lines [px] at a width [px]."""
        shown = self._shown()
        if width not in self._heights:
            self._heights[width] = self._place(shown, QRect(0, 0, width, 0), only_measure=True)
        return self._heights[width]

    def setGeometry(self, rect: QRect) -> None:
        """Place the items."""
        super().setGeometry(rect)
        self._place(self._shown(), rect, only_measure=False)

    def sizeHint(self) -> QSize:
        """Return the size of a single line, or of a modest row's widest part."""
        if self._modest:
            return self.minimumSize()
        shown = [hint for _, hint, _ in self._shown()]
        widths = [size.width() for size in shown]
        height = max((size.height() for size in shown), default=0)
        return QSize(sum(widths) + self.spacing() * max(0, len(widths) - 1), height)

    def minimumSize(self) -> QSize:
        """Return the size of the widest item."""
        least = [size for _, _, size in self._shown()]
        return QSize(
            max((size.width() for size in least), default=0), max((size.height() for size in least), default=0)
        )

    def _shown(self) -> list[tuple[QLayoutItem, QSize, QSize]]:
        if self._sizes is None:
            # A hidden button takes no room, nor the space beside it.
            items = [item for item in self._items if not item.isEmpty()]
            self._sizes = [(item, item.sizeHint(), item.minimumSize()) for item in items]
            self._heights.clear()
        return self._sizes

    def _place(self, shown: list[tuple[QLayoutItem, QSize, QSize]], rect: QRect, *, only_measure: bool) -> int:
        x, y, line = rect.x(), rect.y(), 0
        placed: list[tuple[QLayoutItem, QRect]] = []
        for item, hint, least in shown:
            # What is wider than a whole line gets the line, and must make do with it.
            size = hint.boundedTo(QSize(max(rect.width(), least.width()), 1 << 20))
            if placed and x + size.width() > rect.right() + 1:
                self._settle(placed, y, line, only_measure)
                x, y, line, placed = rect.x(), y + line + self.spacing(), 0, []
            placed.append((item, QRect(QPoint(x, y), size)))
            x += size.width() + self.spacing()
            line = max(line, size.height())
        self._settle(placed, y, line, only_measure)
        return y + line - rect.y()

    @staticmethod
    def _settle(placed: list[tuple[QLayoutItem, QRect]], y: int, line: int, only_measure: bool) -> None:
        """Set one line of items on a common middle."""
        if only_measure:
            return
        for item, place in placed:
            item.setGeometry(QRect(QPoint(place.x(), y + (line - place.height()) // 2), place.size()))
