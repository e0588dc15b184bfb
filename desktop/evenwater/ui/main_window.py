"""The window: an empty sheet of paper at first, the fish room as soon as it is loaded."""

from __future__ import annotations

import linecache
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QEvent, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel, QMainWindow, QVBoxLayout, QWidget

from evenwater.ui.theme import GRID
from evenwater.wording import say

if TYPE_CHECKING:
    from PySide6.QtGui import QCloseEvent, QPaintEvent

    from evenwater.ui.look import Look
    from evenwater.ui.opening import Opening
    from evenwater.ui.unsaved_question import UnsavedQuestion
    from evenwater.ui.window_keys import WindowKeys

_WIDTH, _HEIGHT = 1366, 768
# By then what works beside the window is loaded as well.
_LOADED_MS = 5000
_KEYS_MS = 200


class MainWindow(QMainWindow):
    """Paints at once; everything that takes time to load comes with the first turn of the event loop.

    The first paint has no use for the namespace ``Qt``: its enumerations alone would make it a tenth slower.
    """

    def __init__(
        self, demo: bool = False, log: Path | str | None = None, parent: QWidget | None = None, look: Look | None = None
    ) -> None:
        """Make the window; ``demo`` opens the invented room, ``log`` another file than the usual, ``look`` is what the keeper chose."""
        super().__init__(parent)
        self._demo, self._log, self._look = demo, log, look
        self._opening: Opening | None = None
        self._started = self._given_up = False
        self.question: UnsavedQuestion | None = None
        self.keys: WindowKeys | None = None
        self.setWindowTitle("Evenwater")
        waiting = QWidget(self)
        waiting.setProperty("role", "page")
        layout = QVBoxLayout(waiting)
        layout.setContentsMargins(4 * GRID, 4 * GRID, 4 * GRID, 4 * GRID)
        words = QLabel(say("Opening the fish room"), waiting)
        words.setProperty("role", "muted")
        layout.addWidget(words)
        layout.addStretch(1)
        self.setCentralWidget(waiting)
        screen = QGuiApplication.primaryScreen().availableGeometry()
        self.resize(min(_WIDTH, screen.width()), min(_HEIGHT, screen.height()))
        self._fills = screen.width() <= _WIDTH

    def appear(self) -> None:
        """Show the window for the first time, over all of a small screen."""
        if self._fills:
            self.showMaximized()
        else:
            self.show()

    def opening(self) -> Opening | None:
        """Return what was opened, or None before it is."""
        return self._opening

    def paintEvent(self, event: QPaintEvent) -> None:
        """Load the rest once the window has been painted: shown is not yet painted."""
        super().paintEvent(event)
        if not self._started:
            self._started = True
            QTimer.singleShot(0, self, self.load)

    def load(self) -> None:
        """Load the libraries, the log and the sheets, and put them in the place of the empty sheet."""
        from evenwater.card.fonts import load_fonts
        from evenwater.ui.look import Look
        from evenwater.ui.opening import Opening
        from evenwater.ui.painted import Painted
        from evenwater.ui.theme import BASE_POINTS

        app = QApplication.instance()
        assert isinstance(app, QApplication)
        if self._look is None:
            self._look = Look(app, letters=round(100.0 * app.font().pointSizeF() / BASE_POINTS), parent=self)
        self._look.dress(load_fonts())
        self._opening = Opening(self._demo, self._log, self)
        self._opening.page_changed.connect(self._show_page)
        self._opening.settings_wanted.connect(self.show_settings)
        self._opening.help_wanted.connect(self.show_help)
        self._look.leaving.connect(self._leave)
        self._look.remade.connect(self._opening.make_again)
        self._opening.start()
        Painted(self.centralWidget() or self, self).once.connect(self._wait_for_keys)
        # PySide reads the source of every module that is imported, and it would stay in memory for ever.
        linecache.clearcache()
        QTimer.singleShot(_LOADED_MS, linecache.clearcache)

    def _wait_for_keys(self) -> None:
        """Let whatever else waited for the first paint go first."""
        QTimer.singleShot(_KEYS_MS, self, self.add_keys)

    def add_keys(self) -> None:
        """Take the keys of the whole window; nobody has pressed one yet."""
        if self.keys is None and self._look is not None:
            from evenwater.ui.window_keys import WindowKeys

            self.keys = WindowKeys(self, self._look)

    def show_help(self, what: str) -> None:
        """Show the glossary or the guide."""
        self.add_keys()
        if self.keys is not None:
            (self.keys.help.show_guide if what == "guide" else self.keys.help.show_glossary)()

    def show_settings(self) -> None:
        """Show the window of settings."""
        self.add_keys()
        if self.keys is not None:
            self.keys.show_settings()

    def _leave(self) -> None:
        """Take the page down at once, or it would be dressed anew before it goes."""
        before = self.centralWidget()
        if self._opening is not None and self._opening.leave():
            QCoreApplication.sendPostedEvents(before, QEvent.Type.DeferredDelete.value)

    def _show_page(self, page: QWidget) -> None:
        self.setCentralWidget(page)
        # Only what is visible can take the focus.
        page.show()

    def changeEvent(self, event: QEvent) -> None:
        """Look for changes by another window when this one comes to the front."""
        super().changeEvent(event)
        if self._opening is None:
            return
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow():
            self._opening.refresh()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Close the log; where something could not be saved, stay open and ask what is to become of it."""
        if self._opening is not None and not self._opening.close(lose=self._given_up):
            event.ignore()
            self._ask(self._opening.unsaved())
            return
        super().closeEvent(event)

    def _ask(self, unsaved: int) -> None:
        from evenwater.ui.unsaved_question import UnsavedQuestion

        if self.question is None:
            self.question = UnsavedQuestion(self)
            self.question.given_up.connect(self._give_up)
        self.question.ask(unsaved)

    def _give_up(self) -> None:
        """Close although edits are lost by it: whoever closes a laptop cannot always bring a disk back."""
        self._given_up = True
        self.close()
