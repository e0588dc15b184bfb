"""The systems of the fish room, the jugs of its shelf or its pumps, in a list with buttons to add and to remove one."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QItemSelectionModel, QStringListModel, Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QLabel, QListView, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens.names import shown_name
from evenwater.session import Change, Document, RecordsChange
from evenwater.ui.flow import FlowRow
from evenwater.ui.name_list import NamePainter
from evenwater.ui.plain_text import allow
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import marked, say


@dataclass(frozen=True)
class Listed:
    """What a pane lists: the kind of its records and the words around them."""

    kind: str
    title: str
    named: str
    unnamed: str
    first_name: str
    add: str
    remove: str


SYSTEMS = Listed(
    "system",
    marked("Fish room"),
    marked("Systems"),
    marked("Unnamed system"),
    marked("System"),
    marked("Add system"),
    marked("Remove system"),
)
JUGS = Listed(
    "stock",
    marked("Shelf"),
    marked("Jugs"),
    marked("Unnamed jug"),
    marked("Jug"),
    marked("Add jug"),
    marked("Remove jug"),
)
PUMPS = Listed(
    "pump",
    marked("Pumps"),
    marked("Pumps"),
    marked("Unnamed pump"),
    marked("Pump"),
    marked("Add pump"),
    marked("Remove pump"),
)


def name_of(document: Document, record_id: str, listed: Listed) -> str:
    """Return the name of a record, or what one without a name is called."""
    return shown_name(document.values(record_id), listed.unnamed)


class RecordsPane(QWidget):
    """Lists the records of a kind; ``chosen`` carries the id of the one that is shown, or an empty text."""

    chosen = Signal(str)

    def __init__(self, document: Document, listed: Listed, parent: QWidget | None = None) -> None:
        """Show the records of ``document``."""
        super().__init__(parent)
        self._document, self._listed = document, listed
        self._ids: tuple[str, ...] = ()
        title = QLabel(listed.title, self)
        set_role(title, "title")
        self._model = QStringListModel(self)
        self.list = QListView(self)
        self.list.setModel(self._model)
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setItemDelegate(NamePainter(self.list))
        self.list.setMouseTracking(True)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setAccessibleName(listed.named)
        set_role(self.list, "nav")
        title.setBuddy(self.list)
        # The object of both verbs is the title above them; in a row of three words the list would lose two names.
        self.add, self.remove = QPushButton(say("&Add"), self), QPushButton(say("Remove"), self)
        for button, what in ((self.add, listed.add), (self.remove, listed.remove)):
            set_role(button, "quiet")
            button.setAutoDefault(False)
            button.setAccessibleName(what)
            button.setToolTip(what)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 2 * GRID, 0, GRID)
        layout.setSpacing(GRID)
        title.setIndent(2 * GRID)
        layout.addWidget(title)
        layout.addWidget(self.list, 1)
        feet = FlowRow(0)
        feet.addWidget(self.add)
        feet.addWidget(self.remove)
        row = QVBoxLayout()
        row.setContentsMargins(GRID, 0, GRID, 0)
        row.addLayout(feet)
        layout.addLayout(row)
        self.add.clicked.connect(self._add)
        self.remove.clicked.connect(self._remove)
        self.list.selectionModel().currentChanged.connect(self._current_changed)
        document.recordsChanged.connect(self._records_changed)
        document.changed.connect(self._changed)
        self._fill()

    def current(self) -> str:
        """Return the id of the chosen record, or an empty text."""
        row = self.list.currentIndex().row()
        return self._ids[row] if 0 <= row < len(self._ids) else ""

    def choose(self, record_id: str) -> None:
        """Choose a record."""
        if record_id in self._ids:
            index = self._model.index(self._ids.index(record_id))
            self.list.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.ClearAndSelect)

    def named(self) -> tuple[tuple[str, str], ...]:
        """Return what is listed, each with its id and its name."""
        return tuple(zip(self._ids, self._model.stringList(), strict=True))

    def _fill(self) -> None:
        before = self.current()
        ids = self._document.records(self._listed.kind)
        names = [name_of(self._document, i, self._listed) for i in ids]
        self._ids = ()
        if names != self._model.stringList():
            self._model.setStringList(names)
        self._ids = ids
        allow(self.remove, bool(ids), say("The list is empty."))
        if ids:
            self.choose(before if before in ids else ids[0])
        self.chosen.emit(self.current())

    def _add(self) -> None:
        taken = {self._document.value(i, "name").text for i in self._ids}
        first = self._listed.first_name
        number = next(n for n in range(1, len(taken) + 2) if f"{first} {n}" not in taken)
        new = self._document.add_record(self._listed.kind, {"name": Typed(f"{first} {number}")}, self)
        self._fill()
        self.choose(new)

    def _remove(self) -> None:
        # No question is asked: the undo button brings it back whole.
        gone = self.current()
        if gone:
            self._document.remove_record(gone, self)
            self._fill()

    def _records_changed(self, change: RecordsChange) -> None:
        if self._listed.kind in change.kinds and change.initiator is not self:
            self._fill()

    def _changed(self, change: Change) -> None:
        if change.record_id in self._ids and "name" in change.fields:
            row = self._ids.index(change.record_id)
            name = name_of(self._document, change.record_id, self._listed)
            self._model.setData(self._model.index(row), name)

    def _current_changed(self, *_: object) -> None:
        if self._ids:
            self.chosen.emit(self.current())
