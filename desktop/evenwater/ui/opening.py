"""Opens the log and the data files, and decides which page the window shows."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal, Slot
from PySide6.QtWidgets import QWidget

from evenwater.assets import resources
from evenwater.engine import catalogue
from evenwater.engine.reasons import Reason
from evenwater.session import (
    Copy,
    Document,
    Paths,
    Reached,
    choose_server,
    chosen_server,
    open_log,
    open_reached,
    restore_damaged,
    usable_copy,
)
from evenwater.ui.room import Place, Room

if TYPE_CHECKING:
    from evenwater.ui.server_page import ServerPage
    from evenwater.ui.walk_page import WalkPage

# While a spreadsheet is read or written, it is asked this often whether it is done.
_BUSY_MS = 500


class Opening(QObject):
    """Holds the open log; ``page_changed`` carries the page that the window has to show, ``settings_wanted`` asks for the
    settings, ``help_wanted`` for "glossary" or "guide".
    """

    page_changed = Signal(QWidget)
    settings_wanted = Signal()
    help_wanted = Signal(str)

    def __init__(self, demo: bool, log: Path | str | None, parent: QObject | None = None) -> None:
        """Prepare to open the demo, a given file or address of a server, or what the keeper has chosen: their own file, or a server."""
        super().__init__(parent)
        self._paths = Paths.of_demo() if demo else Paths(log) if isinstance(log, Path) else Paths.of_keeper()
        self._server = "" if demo or isinstance(log, Path) else log or chosen_server()
        self._page: ServerPage | None = None
        self._demo = demo
        self._document: Document | None = None
        self._room: Room | None = None
        self._copy: Copy | None = None
        self._reason: Reason | None = None
        self._place: Place | None = None
        self._walk: WalkPage | None = None
        self._again = QTimer(self)
        self._again.setSingleShot(True)
        self._again.setInterval(_BUSY_MS)
        self._again.timeout.connect(self.make_again)
        self._catalogue = catalogue.load(resources())

    def start(self) -> None:
        """Open the log and show the room, the welcome to an empty one, or why it cannot be opened."""
        if self._server:
            self._show_server()
            if self._page is not None:
                self._page.ask()
            return
        opened = open_log(self._paths.log, self)
        if isinstance(opened, Reason):
            self._show_notice(opened)
            return
        self._take(opened)

    def _take(self, opened: Document) -> None:
        self._document = opened
        if self._demo:
            self._fill(self._document)
        if self._document.records("system"):
            self._show_room()
            return
        self._show_welcome()

    @Slot()
    def _choose_server(self) -> None:
        """Close the log that is open and ask for a server's; what is not saved, or a spreadsheet on its way, keeps it open."""
        if not self._saved() or (self._room is not None and self._room.busy()):
            return
        if self._room is not None:
            self._room.settle()
            self._room = None
        if self._document is not None:
            self._document.close()
            self._document = None
        self._show_server()

    def _show_server(self) -> None:
        from evenwater.ui.server_page import ServerPage

        self._page = ServerPage(self._server)
        self._page.reached.connect(self._open_reached)
        self._page.own_wanted.connect(self._open_own)
        self.page_changed.emit(self._page)

    @Slot(object)
    def _open_reached(self, reached: Reached) -> None:
        """Show the log of a server that answered, or its copy, and open it again next time."""
        opened = open_reached(reached, self)
        if isinstance(opened, Reason):
            if self._page is not None:
                self._page.refuse(opened)
            return
        self._server = reached.address.text
        choose_server(self._server)
        self._page = None
        self._take(opened)

    @Slot()
    def _open_own(self) -> None:
        """Open the log in this computer's own file, now and next time."""
        self._server, self._page = "", None
        choose_server("")
        self.start()

    def _show_welcome(self) -> None:
        from evenwater.ui.welcome_page import WelcomePage

        self._end_walk()
        welcome = WelcomePage()
        welcome.demo_wanted.connect(self._fill_demo)
        welcome.empty_wanted.connect(self._start_empty)
        welcome.walk_wanted.connect(self._start_walk)
        welcome.server_wanted.connect(self._choose_server)
        self.page_changed.emit(welcome)

    def _start_walk(self) -> None:
        """Lead through the main job on an invented tank, in a log of its own; the keeper's stays open, and as it is."""
        from evenwater.ui.walk_page import WalkPage

        paths = Paths.of_demo()
        opened = open_log(paths.log, self)
        if isinstance(opened, Reason):
            paths.discard()
            self._show_notice(opened)
            return
        self._walk = WalkPage(opened, paths, self._catalogue)
        self._walk.left.connect(self._show_welcome)
        self.page_changed.emit(self._walk)
        self._walk.start()

    def _end_walk(self) -> None:
        if self._walk is not None:
            self._walk.end()
            self._walk = None

    def walk(self) -> WalkPage | None:
        """Return the walk that is under way, or None."""
        return self._walk

    def _show_notice(self, reason: Reason) -> None:
        """Say why the log cannot be opened, and offer the newest copy where the log is damaged."""
        from evenwater.screens import room_words
        from evenwater.ui.backups_window import copy_offered
        from evenwater.ui.notice_page import NoticePage

        self._reason = reason
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
        self._end_walk()
        if self._page is not None:
            self._page.settle()
        if self._room is not None:
            self._room.settle()
        if self._document is not None:
            if not (self._saved() or lose):
                return False
            self._document.close()
        self._paths.discard()
        return True

    def _saved(self) -> bool:
        document = self._document
        # What waits for a server on this computer's disk is not lost.
        return document is None or not document.unsaved() or document.save() or document.kept()

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
            # Where the first figure goes, not in the list of systems.
            self._room.sheet.focus_first()

    def _show_room(self, place: Place | None = None) -> None:
        assert self._document is not None
        self._room = Room(self._document, self._catalogue)
        self._room.serverWanted.connect(self._choose_server)
        self._room.settingsWanted.connect(self.settings_wanted)
        self._room.helpWanted.connect(self.help_wanted)
        self.page_changed.emit(self._room)
        self._room.start(place)

    def leave(self) -> bool:
        """Take the room down that is shown, and return whether it went; what was typed is kept, a spreadsheet on its way keeps the room."""
        if self._room is None or self._room.busy():
            return False
        self._place = self._room.place()
        self._room.settle()
        self._room = None
        page = QWidget()
        page.setProperty("role", "page")
        self.page_changed.emit(page)
        return True

    def make_again(self) -> None:
        """Make the page anew that is shown, in other letters or another language; a room that is busy, as soon as it no longer is."""
        self.leave()
        if self._room is not None:
            self._again.start()
        elif self._place is not None:
            place, self._place = self._place, None
            self._show_room(place)
        elif self._document is not None:
            self._show_welcome()
        elif self._reason is not None:
            self._show_notice(self._reason)
