"""The window of backups: the copies of the log, what each holds, restoring one, and carrying one away."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, QStandardPaths, Qt, QUrl, Signal
from PySide6.QtGui import QDesktopServices, QKeyEvent, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFileDialog,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from evenwater.engine.reasons import Reason
from evenwater.screens import backup_words, room_words
from evenwater.screens.backup_words import CopyRow
from evenwater.screens.local_zone import present
from evenwater.session import Copy, CopyList, Document, LatestOnly, listed
from evenwater.ui.plain_text import allow
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say, say_all

COLUMNS = (marked("When"), marked("What"), marked("Holds"), marked("Size"))
Index = QModelIndex | QPersistentModelIndex


class CopyModel(QAbstractTableModel):
    """The lines that are shown."""

    def __init__(self, parent: QWidget) -> None:
        """Begin without lines."""
        super().__init__(parent)
        self.copies: tuple[Copy, ...] = ()
        self.rows: tuple[CopyRow, ...] = ()

    def show_copies(self, copies: tuple[Copy, ...]) -> None:
        """Show these copies."""
        self.beginResetModel()
        self.copies, self.rows = copies, tuple(_row(copy) for copy in copies)
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's signature)
        """Return the number of lines."""
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  (Qt's signature)
        """Return the number of columns."""
        return 0 if parent.isValid() else len(COLUMNS)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the words of a cell."""
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole) and index.isValid():
            row = self.rows[index.row()]
            return (row.when, row.what, row.holds, row.size)[index.column()]
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the name of a column."""
        if role == Qt.ItemDataRole.DisplayRole and orientation == Qt.Orientation.Horizontal:
            return say_all(COLUMNS[section])
        return None


class BackupsWindow(QWidget):
    """Shows the copies of the log of a document; nothing waits inside a call for an answer.

    ``serverWanted`` says that the log is to be another one, on a server.
    """

    serverWanted = Signal()

    def __init__(self, document: Document, parent: QWidget | None = None) -> None:
        """Make the window, still empty; it reads what lies there when it is shown."""
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(say("Backups"))
        set_role(self, "page")
        self._document = document
        self._work = LatestOnly(self)
        self._dialog: QFileDialog | None = None
        self._asked: Copy | None = None
        self.where, self.fault, self.told = self._label("muted"), self._label("stop"), self._label("muted")
        self.lines = CopyModel(self)
        self.list = self._list()
        self.restore = self._button(say("&Restore this copy"))
        self.carry = self._button(say("&Save a copy elsewhere"))
        self.open = self._button(say("&Open the folder"))
        self.server = self._button(say("One log for several &laptops"))
        self.question, self.lost, self.kept = self._label("title"), self._label("stop"), self._label("muted")
        self.sure, self.leave = self._button(say("&Yes, restore it")), self._button(say("&Keep the log as it is"))
        self.asking = QWidget(self)
        self._lay_out()
        self.list.selectionModel().selectionChanged.connect(self._selected)
        self.restore.clicked.connect(self._ask)
        self.carry.clicked.connect(self._choose_place)
        self.open.clicked.connect(self._open_folder)
        self.server.clicked.connect(self.serverWanted)
        self.sure.clicked.connect(self._restore)
        self.leave.clicked.connect(self._leave)
        self._work.done.connect(self._listed)
        document.backupFaultChanged.connect(self._show_fault)
        self._show_fault(document.backup_fault())
        self.resize(pixels(self.font(), 980), pixels(self.font(), 560))

    def _label(self, role: str) -> QLabel:
        label = QLabel(self)
        set_role(label, role)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        label.setWordWrap(True)
        return label

    def _button(self, text: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        return button

    def _list(self) -> QTableView:
        table = QTableView(self)
        table.setModel(self.lines)
        set_role(table, "plain")
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setShowGrid(False)
        table.setTabKeyNavigation(False)
        table.verticalHeader().hide()
        table.verticalHeader().setDefaultSectionSize(pixels(self.font(), 4 * GRID))
        table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header = table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setHighlightSections(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(COLUMNS.index("Holds"), QHeaderView.ResizeMode.Stretch)
        table.setAccessibleName(say("Copies of the log"))
        return table

    def _lay_out(self) -> None:
        row = self._row(self.restore, self.carry, self.open, self.server)
        column = QVBoxLayout(self.asking)
        column.setContentsMargins(0, GRID, 0, 0)
        column.setSpacing(GRID)
        for label in (self.question, self.lost, self.kept):
            column.addWidget(label)
        column.addLayout(self._row(self.sure, self.leave))
        self.asking.hide()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.where)
        layout.addWidget(self.fault)
        layout.addWidget(self.list, 1)
        layout.addLayout(row)
        layout.addWidget(self.asking)
        layout.addWidget(self.told)

    def _row(self, *buttons: QPushButton) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(GRID)
        for button in buttons:
            row.addWidget(button)
        row.addStretch(1)
        return row

    # Showing

    def showEvent(self, event: QShowEvent) -> None:
        """Look at what lies there now."""
        super().showEvent(event)
        self.told.clear()
        self.refresh()

    def refresh(self) -> None:
        """Read the copies again, beside the window: a large log takes a while."""
        self._leave()
        file, folder = self._document.backups.file, self._document.backups.folder
        self.where.setText(backup_words.where(str(folder)) if folder is not None else "")
        for button in (self.carry, self.open):
            button.setEnabled(file is not None)
        if file is None:
            self.tell(Reason("store.no_copies"))
        else:
            self._work.submit(partial(listed, file), file)
        self._selected()

    def settle(self) -> None:
        """Close for good, and wait for the reading that is under way, before the log is closed."""
        self.close()
        self._work.close()

    def tell(self, said: str | Reason) -> None:
        """Say what was done, or why it was not."""
        wrong = isinstance(said, Reason)
        set_role(self.told, "stop" if wrong else "muted")
        self.told.setText(f"\u25b2 {room_words.sentence(said)}" if isinstance(said, Reason) else said)

    def chosen(self) -> Copy | None:
        """Return the chosen line, or None."""
        rows = self.list.selectionModel().selectedRows()
        return self.lines.copies[rows[0].row()] if rows else None

    def _listed(self, done: object) -> None:
        found = done.result  # type: ignore[attr-defined]
        if isinstance(found, CopyList):
            self.lines.show_copies(found.copies)
            if found.fault is not None:
                self.tell(found.fault)
        self._selected()

    def _selected(self, *_: object) -> None:
        self._leave()
        copy = self.chosen()
        usable = copy is not None and copy.fault is None
        first = say("Choose a copy of the list that can be read.")
        allow(self.restore, usable and copy is not None and copy.kind != backup_words.PRESENT, first)
        allow(self.carry, usable, first)

    def _show_fault(self, reason: object) -> None:
        self.fault.setVisible(isinstance(reason, Reason))
        if isinstance(reason, Reason):
            self.fault.setText(f"\u25b2 {backup_words.no_copy(reason)}")

    # Restoring

    def _ask(self) -> None:
        """Say what would be lost, and wait for a second word."""
        copy = self.chosen()
        if copy is None:
            return
        gone = self._document.backups.lost_with(copy.file)
        if isinstance(gone, Reason):
            self.tell(gone)
            return
        self._asked = copy
        self.told.clear()
        self.question.setText(backup_words.asked(_when(copy)))
        self.lost.setText(backup_words.lost(dict(gone.entries), gone.edits, gone.cards))
        self.kept.setText(f"{say(backup_words.KEPT)} {say(backup_words.UNDO)}")
        self.asking.show()
        # A stray key leaves everything as it is.
        self.leave.setFocus()

    def _leave(self) -> None:
        self._asked = None
        self.asking.hide()

    def _restore(self) -> None:
        copy = self._asked
        if copy is None:
            return
        done = self._document.backups.restore(copy.file)
        if isinstance(done, Reason):
            self._leave()
            self.tell(done)
            return
        self.refresh()
        self.tell(backup_words.restored(_when(copy), done.stem))

    # Carrying away

    def _choose_place(self) -> None:
        copy = self.chosen()
        if copy is None:
            return
        if self._dialog is None:
            self._dialog = QFileDialog(self, say("Save a copy of the log"))
            self._dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
            self._dialog.setNameFilter(say("Log (*.sqlite)"))
            self._dialog.setDefaultSuffix("sqlite")
            self._dialog.setDirectory(
                QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
            )
            self._dialog.fileSelected.connect(self._place_chosen)
        self._dialog.selectFile(
            say("Evenwater {date}.sqlite", date=f"{copy.made.astimezone(present().tzinfo):%Y-%m-%d %H%M}")
        )
        self._dialog.open()

    def _place_chosen(self, name: str) -> None:
        self.carry_to(Path(name))

    def carry_to(self, place: Path) -> None:
        """Write the chosen line to a place."""
        copy = self.chosen()
        if copy is None:
            return
        fault = self._document.backups.carry(copy.file, place)
        self.tell(backup_words.carried(str(place)) if fault is None else fault)

    def _open_folder(self) -> None:
        folder = self._document.backups.folder
        if folder is None:
            return
        # Before the first copy there is only the folder of the log.
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(folder if folder.exists() else folder.parent)))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Leave the question with Escape, and then the window."""
        if event.key() != Qt.Key.Key_Escape:
            super().keyPressEvent(event)
        elif self._asked is not None:
            self._leave()
        else:
            self.close()


def _when(copy: Copy) -> str:
    return backup_words.moment(copy.made.astimezone(present().tzinfo))


def copy_offered(copy: Copy) -> tuple[str, str]:
    """Return the words of the button that offers a copy in the place of a damaged log, and what it would do."""
    return backup_words.offered(_when(copy)), backup_words.damaged(_when(copy), _row(copy).holds)


def _row(copy: Copy) -> CopyRow:
    zone, holds = present().tzinfo, copy.holds
    known = None
    if holds is not None:
        newest = None if holds.newest is None else holds.newest.astimezone(zone)
        known = (holds.systems, holds.entries, newest)
    return backup_words.row(copy.kind, copy.made.astimezone(zone), copy.size_bytes, known, copy.fault)
