"""The head of a sheet: the system's name and volume, undo and redo, and what was just done."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QAction, QKeySequence, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.reasons import Reason
from evenwater.screens import backup_words, room_words
from evenwater.screens.names import shown_name
from evenwater.session import Document, Label, UndoState
from evenwater.ui.announce import Announcer
from evenwater.ui.icons import put_sign
from evenwater.ui.plain_text import ElidedLabel, allow, set_tip
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import say

_TOLD_MS = 10_000
# Up to here the head has no room for words on its buttons.
_ROOMY = 1040
# Steps that changed entries of a log and no record.
_LOG_CODES = ("log", "change_entry", "remove_entries", "import")


class SheetHeader(QWidget):
    """Names the system and holds undo and redo; a sentence stands beside while there is one.

    ``travelled`` carries the id of the record that undo or redo has changed, ``logTravelled`` the system whose log it has;
    ``findWanted`` asks for the finder.
    """

    travelled = Signal(str)
    logTravelled = Signal(str)
    findWanted = Signal()

    def __init__(self, document: Document, parent: QWidget, nothing: str = "") -> None:
        """Watch ``document``; the keys for undo and redo hold for the whole window of ``parent``.

        ``nothing`` are the words for a sheet without a record.
        """
        super().__init__(parent)
        self._nothing = nothing or say("No system yet")
        self._sheet = parent
        self._document = document
        self._system = ""
        self.name = ElidedLabel(self)
        set_role(self.name, "heading")
        self.volume = QLabel(self)
        self.told = QLabel(self)
        for label in (self.volume, self.told):
            set_role(label, "muted")
        for label in (self.name, self.volume, self.told):
            label.setTextFormat(Qt.TextFormat.PlainText)
        # A long sentence takes a second line; it must not widen the window.
        self.told.setWordWrap(True)
        self.told.setMinimumSize(1, 1)
        self.systems = QPushButton(say("&Fish room"), self)
        self.systems.setCheckable(True)
        self.systems.setAutoDefault(False)
        self.systems.setToolTip(say("Show the lists of sheets, systems and jugs"))
        self.systems.hide()
        self.undo = self._button(say("Undo"), QKeySequence.StandardKey.Undo)
        self.redo = self._button(say("Redo"), QKeySequence.StandardKey.Redo)
        self.finder = self._find_button()
        self._signed = tuple((button, button.text()) for button in (self.finder, self.undo, self.redo))
        for (button, _), sign in zip(self._signed, ("search", "undo", "redo"), strict=True):
            put_sign(button, sign)
        self._quiet = QTimer(self)
        self._quiet.setSingleShot(True)
        self._quiet.timeout.connect(self._hush)
        row = QHBoxLayout()
        row.setSpacing(GRID)
        row.addWidget(self.systems)
        row.addWidget(self.name)
        row.addWidget(self.volume)
        row.addWidget(self.told, 1)
        row.addWidget(self.finder)
        row.addWidget(self.undo)
        row.addWidget(self.redo)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(row)
        self.undo.clicked.connect(self._undo)
        self.redo.clicked.connect(self._redo)
        document.undoChanged.connect(self._show_state)
        document.changed.connect(self._refresh)
        document.saveFailed.connect(self._save_failed)
        document.saveRestored.connect(self._save_restored)
        document.backupFaultChanged.connect(self._hush)
        self._show_state(UndoState(document.undo_text(), document.redo_text()))
        self._hush()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave the room to the names where letters are large: the signs of the buttons are enough then."""
        super().resizeEvent(event)
        narrow = self.width() < pixels(self.font(), _ROOMY)
        for button, words in self._signed:
            button.setText("" if narrow else words)

    def show_system(self, system_id: str) -> None:
        """Name another system."""
        self._system = system_id
        self._refresh()

    def show_volume(self, words: str) -> None:
        """Say the net volume and how well it is known."""
        self.volume.setText(words)

    def tell(self, sentence: str) -> None:
        """Show what was just done, for ten seconds."""
        set_role(self.told, "muted")
        self.told.setText(sentence)
        set_tip(self.told, sentence)
        if self.isVisible():
            Announcer.of(self).say(sentence)
        self._quiet.start(_TOLD_MS)

    def _find_button(self) -> QPushButton:
        button = QPushButton(say("Find an action"), self)
        button.setAutoDefault(False)
        button.setToolTip(say("By some of its words; Ctrl and K"))
        button.setProperty("finds", True)
        # Where there is little room only its sign is left.
        button.setAccessibleName(say("Find an action"))
        button.clicked.connect(self.findWanted)
        return button

    def _button(self, text: str, key: QKeySequence.StandardKey) -> QPushButton:
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        action = QAction(self._sheet)
        action.setShortcuts(QKeySequence.keyBindings(key))
        action.setShortcutContext(Qt.ShortcutContext.WindowShortcut)
        action.triggered.connect(button.click)
        self._sheet.addAction(action)
        return button

    def _refresh(self, *_: object) -> None:
        self.name.setText(shown_name(self._document.values(self._system), "") if self._system else self._nothing)

    def _undo(self) -> None:
        label = self._document.undo_text()
        if self._document.undo(self) and label is not None:
            self._went(say("Undone"), label)

    def _redo(self) -> None:
        label = self._document.redo_text()
        if self._document.redo(self) and label is not None:
            self._went(say("Done again"), label)

    def _went(self, verb: str, label: Label) -> None:
        # Before another sheet is shown: its own words come after these.
        Announcer.of(self).say(self._words(verb, label))
        if label.code in _LOG_CODES:
            self.logTravelled.emit(label.record_id)
        else:
            self.travelled.emit(label.record_id)

    def _show_state(self, state: UndoState) -> None:
        for button, verb, label in ((self.undo, say("Undo"), state.undo), (self.redo, say("Redo"), state.redo)):
            words = self._words(verb, label)
            allow(button, label is not None, say("Nothing was done yet that could be taken back or done again."))
            button.setToolTip(words)
            button.setAccessibleName(words)

    def _words(self, verb: str, label: Label | None) -> str:
        return verb if label is None else room_words.step_words(verb, label.code, label.kind, label.field)

    def _hush(self, *_: object) -> None:
        """Say nothing any more, but that there is no copy of the day as long as there is none."""
        if self._document.unsaved():
            return
        fault = self._document.backup_fault()
        set_role(self.told, "stop" if fault is not None else "muted")
        self.told.setText("" if fault is None else f"\u25b2 {backup_words.no_copy(fault)}")
        set_tip(self.told, self.told.text())

    def _save_failed(self, reason: Reason) -> None:
        self._quiet.stop()
        set_role(self.told, "stop")
        self.told.setText(f"\u25b2 {room_words.sentence(reason)}")
        if self.isVisible():
            Announcer.of(self).say(room_words.sentence(reason), urgent=True)

    def _save_restored(self, _count: int) -> None:
        self.tell(say("Everything is saved again."))
