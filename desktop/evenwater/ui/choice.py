"""A list to choose from that changes only by an explicit choice: no wheel, no typing ahead, no stepping."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QStandardItem, QStandardItemModel, QWheelEvent
from PySide6.QtWidgets import QComboBox, QSizePolicy, QStyledItemDelegate, QWidget

from evenwater.ui.field_shell import FieldShell
from evenwater.ui.paper_style import BARE_COMBO_EXTRA, FRAMED_COMBO_EXTRA
from evenwater.ui.theme import scaled

_ENTRY_EXTRA = 56
_OPENING = (Qt.Key.Key_Space, Qt.Key.Key_Down, Qt.Key.Key_Up, Qt.Key.Key_F4)


class Combo(QComboBox):
    """The bare list. ``picked`` carries the id of an entry the keeper chose; showing one says nothing."""

    picked = Signal(str)

    def __init__(self, parent: QWidget, *, framed: bool = True) -> None:
        super().__init__(parent)
        self.setFrame(framed)
        self.setMaxVisibleItems(14)
        self._delegated = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        if not framed:
            self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred)
        self.activated.connect(self._activated)

    def set_options(self, options: tuple[tuple[str, str], ...]) -> None:
        """Offer these entries (id, words); an entry with an empty id is a heading. Keeps what is chosen."""
        if options == self.options():
            return
        kept = self.current_id()
        model = QStandardItemModel(self)
        for name, words in options:
            item = QStandardItem(words)
            item.setData(name, Qt.ItemDataRole.UserRole)
            if not name:
                item.setFlags(Qt.ItemFlag.NoItemFlags)
                item.setFont(scaled(self.font(), 11, bold=True))
            model.appendRow(item)
        self.setModel(model)  # which deletes the one before
        self.set_current(kept)
        # An entry cut short could be another entry.
        widest = max((self.fontMetrics().horizontalAdvance(words) for _, words in options), default=0)
        self.view().setMinimumWidth(widest + _ENTRY_EXTRA)
        self.updateGeometry()

    def options(self) -> tuple[tuple[str, str], ...]:
        """Return the entries as (id, words)."""
        return tuple((str(self.itemData(n)), self.itemText(n)) for n in range(self.count()))

    def current_id(self) -> str:
        """Return the id of the entry that is shown, or nothing."""
        return str(self.currentData() or "")

    def set_spoken(self, name: str) -> None:
        """Say what is chosen here, for a list that has no label of its own: on Linux, Qt names a list by its entry."""
        if name != self.accessibleName():
            self.setAccessibleName(name)
            self.setAccessibleDescription(name)

    def set_current(self, name: str) -> None:
        """Show an entry; none when there is no such id."""
        index = self.findData(name) if name else -1
        if index != self.currentIndex():
            self.setCurrentIndex(index)
            self.updateGeometry()

    def sizeHint(self) -> QSize:
        """Return the size of the longest entry; beside a number only that of the one shown."""
        return super().sizeHint() if self.hasFrame() else self.minimumSizeHint()

    def minimumSizeHint(self) -> QSize:
        """Return the size at which the entry that is shown can be read whole."""
        extra = FRAMED_COMBO_EXTRA if self.hasFrame() else BARE_COMBO_EXTRA
        height = super().minimumSizeHint().height() if self.hasFrame() else self.fontMetrics().height() + 14
        return QSize(self.fontMetrics().horizontalAdvance(self.currentText()) + extra, height)

    def showPopup(self) -> None:
        """Open the list; what paints its entries is made with the first opening, and most are never opened."""
        if not self._delegated:
            self._delegated = True
            self.setItemDelegate(QStyledItemDelegate(self))
        super().showPopup()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Let the wheel scroll the page; it never changes a choice. The open list scrolls by itself."""
        event.ignore()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Open the list, and nothing else: letters, Home and End would choose without being seen."""
        key = event.key()
        if key in _OPENING:
            self.showPopup()
        elif key in (Qt.Key.Key_Escape, Qt.Key.Key_Tab, Qt.Key.Key_Backtab):
            event.ignore()
            return
        event.accept()

    def _activated(self, index: int) -> None:
        self.updateGeometry()
        self.picked.emit(str(self.itemData(index)))


class Choice(FieldShell):
    """A labelled list. ``chosen`` carries the id of an entry the keeper chose."""

    chosen = Signal(str)

    def __init__(self, label: str, parent: QWidget | None = None) -> None:
        super().__init__(label, parent)
        self.combo = Combo(self)
        self.column.replaceWidget(self.frame, self.combo)
        self.frame.hide()
        self.combo.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.combo.setAccessibleName(label)
        self.label.setBuddy(self.combo)
        self.setFocusProxy(self.combo)
        self.combo.picked.connect(self.chosen)

    def set_options(self, options: tuple[tuple[str, str], ...]) -> None:
        """Offer these entries (id, words); an entry with an empty id is a heading."""
        self.combo.set_options(options)

    def set_current(self, name: str) -> None:
        """Show an entry without saying that it was chosen; none when there is no such id."""
        self.combo.set_current(name)

    def current(self) -> str:
        """Return the id that is shown, or nothing."""
        return self.combo.current_id()

    def spoken_for(self) -> QWidget:
        """Return the list: it carries name and description."""
        return self.combo if hasattr(self, "combo") else self
