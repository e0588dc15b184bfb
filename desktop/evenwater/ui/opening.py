"""Opens the log and the data files, and decides which page the window shows."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from evenwater.assets import resources
from evenwater.engine import catalogue
from evenwater.engine.reasons import Reason
from evenwater.session import Copy, Document, Paths, open_log, restore_damaged, usable_copy
from evenwater.ui.room import Room


class Opening(QObject):
    """Holds the open log; ``page_changed`` carries the page that the window has to show."""

    page_changed = Signal(QWidget)

    def __init__(self, demo: bool, log: Path | None, parent: QObject | None = None) -> None:
        """Prepare to open the demo, a given file, or the keeper's own log."""
        super().__init__(parent)
        self._paths = Paths.of_demo() if demo else Paths(log) if log is not None else Paths.of_keeper()
        self._demo = demo
        self._document: Document | None = None
        self._room: Room | None = None
        self._copy: Copy | None = None
        self._catalogue = catalogue.load(resources())

    def start(self) -> None:
        """Open the log and show the room, the welcome to an empty one, or why it cannot be opened."""
        opened = open_log(self._paths.log, self)
        if isinstance(opened, Reason):
            self._show_notice(opened)
            return
        self._document = opened
        if self._demo:
            self._fill(self._document)
        if self._document.records("system"):
            self._show_room()
            return
        from evenwater.ui.welcome_page import WelcomePage

        welcome = WelcomePage()
        welcome.demo_wanted.connect(self._fill_demo)
        welcome.empty_wanted.connect(self._start_empty)
        self.page_changed.emit(welcome)

    def _show_notice(self, reason: Reason) -> None:
        """Say why the log cannot be opened, and offer the newest copy where the log is damaged."""
        from evenwater.screens import room_words
        from evenwater.ui.backups_window import copy_offered
        from evenwater.ui.notice_page import NoticePage

        self._copy = usable_copy(self._paths.log) if reason.code == "store.damaged" else None
        offer, what_then = copy_offered(self._copy) if self._copy is not None else ("", "")
        page = NoticePage(room_words.sentence(reason), str(self._paths.log), None, offer, what_then)
        page.again.connect(self.start)
        page.restore_wanted.connect(self._restore)
        self.page_changed.emit(page)

    def _restore(self) -> None:
        """Put the copy that was offered in the place of the damaged log, and open it."""
        if self._copy is None:
            return
        done = restore_damaged(self._paths.log, self._copy.file)
        if isinstance(done, Reason):
            self._show_notice(done)
        else:
            self.start()

    def room(self) -> Room | None:
        """Return the open fish room, or None."""
        return self._room

    def document(self) -> Document | None:
        """Return the open document, or None."""
        return self._document

    def refresh(self) -> None:
        """Show what other windows have saved."""
        if self._document is not None:
            self._document.refresh()

    def unsaved(self) -> int:
        """Return how many edits are only in memory."""
        return 0 if self._document is None else self._document.unsaved()

    def close(self, *, lose: bool = False) -> bool:
        """Save and close; False when something could not be saved, unless that may be lost."""
        # First of all, since a sheet that was settled does not work on.
        if not (self._saved() or lose):
            return False
        if self._room is not None:
            self._room.settle()
        if self._document is not None:
            if not (self._saved() or lose):
                return False
            self._document.close()
        self._paths.discard()
        return True

    def _saved(self) -> bool:
        return self._document is None or not self._document.unsaved() or self._document.save()

    def _fill_demo(self) -> None:
        assert self._document is not None
        self._fill(self._document)
        self._show_room()

    @staticmethod
    def _fill(document: Document) -> None:
        """Fill a log with the invented room; nobody else's start loads what makes it."""
        from evenwater.screens.local_zone import present
        from evenwater.session.demo import fill_from

        fill_from(document, resources() / "demo.toml", present())

    def _start_empty(self) -> None:
        self._show_room()
        if self._room is not None:
            self._room.systems.add.click()

    def _show_room(self) -> None:
        assert self._document is not None
        self._room = Room(self._document, self._catalogue)
        self.page_changed.emit(self._room)
        self._room.start()
