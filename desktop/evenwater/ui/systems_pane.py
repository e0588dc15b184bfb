"""The fish room: its systems in a list, with buttons to add and to remove one."""

from __future__ import annotations

from PySide6.QtCore import QItemSelectionModel, QStringListModel, Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QLabel, QListView, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.quantities import Typed
from evenwater.session import Change, Document, RecordsChange
from evenwater.ui.theme import GRID, set_role

UNNAMED = "Unnamed system"


class SystemsPane(QWidget):
    """Lists the systems; ``chosen`` carries the id of the one that is shown, or an empty text."""

    chosen = Signal(str)

    def __init__(self, document: Document, parent: QWidget | None = None) -> None:
        """Show the systems of ``document``."""
        super().__init__(parent)
        self._document = document
        self._ids: tuple[str, ...] = ()
        title = QLabel("Fish room", self)
        set_role(title, "title")
        self._model = QStringListModel(self)
        self.list = QListView(self)
        self.list.setModel(self._model)
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.list.setAccessibleName("Systems")
        set_role(self.list, "nav")
        title.setBuddy(self.list)
        self.add = QPushButton("&Add system", self)
        self.remove = QPushButton("Remove system", self)
        for button in (self.add, self.remove):
            set_role(button, "quiet")
            button.setAutoDefault(False)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 2 * GRID, 0, GRID)
        layout.setSpacing(GRID)
        title.setContentsMargins(2 * GRID, 0, 0, 0)
        layout.addWidget(title)
        layout.addWidget(self.list, 1)
        feet = QVBoxLayout()
        feet.setContentsMargins(GRID, 0, GRID, 0)
        feet.setSpacing(0)
        feet.addWidget(self.add)
        feet.addWidget(self.remove)
        layout.addLayout(feet)
        self.add.clicked.connect(self._add)
        self.remove.clicked.connect(self._remove)
        self.list.selectionModel().currentChanged.connect(self._current_changed)
        document.recordsChanged.connect(self._records_changed)
        document.changed.connect(self._changed)
        self._fill()

    def current(self) -> str:
        """Return the id of the chosen system, or an empty text."""
        row = self.list.currentIndex().row()
        return self._ids[row] if 0 <= row < len(self._ids) else ""

    def choose(self, system_id: str) -> None:
        """Choose a system."""
        if system_id in self._ids:
            index = self._model.index(self._ids.index(system_id))
            self.list.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.ClearAndSelect)

    def _fill(self) -> None:
        before = self.current()
        ids = self._document.records("system")
        names = [self._document.value(i, "name").text.strip() or UNNAMED for i in ids]
        self._ids = ()
        if names != self._model.stringList():
            self._model.setStringList(names)
        self._ids = ids
        self.remove.setEnabled(bool(ids))
        if ids:
            self.choose(before if before in ids else ids[0])
        self.chosen.emit(self.current())

    def _add(self) -> None:
        taken = {self._document.value(i, "name").text for i in self._ids}
        number = next(n for n in range(1, len(taken) + 2) if f"System {n}" not in taken)
        new = self._document.add_record("system", {"name": Typed(f"System {number}")}, self)
        self._fill()
        self.choose(new)

    def _remove(self) -> None:
        # No question is asked: the undo button brings it back whole.
        gone = self.current()
        if gone:
            self._document.remove_record(gone, self)
            self._fill()

    def _records_changed(self, change: RecordsChange) -> None:
        if "system" in change.kinds and change.initiator is not self:
            self._fill()

    def _changed(self, change: Change) -> None:
        if change.record_id in self._ids and "name" in change.fields:
            row = self._ids.index(change.record_id)
            name = self._document.value(change.record_id, "name").text.strip() or UNNAMED
            self._model.setData(self._model.index(row), name)

    def _current_changed(self, *_: object) -> None:
        if self._ids:
            self.chosen.emit(self.current())
