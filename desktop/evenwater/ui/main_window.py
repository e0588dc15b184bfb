"""The window: an empty sheet of paper at first, the fish room as soon as it is loaded."""

from __future__ import annotations

import linecache
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel, QMainWindow, QVBoxLayout, QWidget

from evenwater.ui.theme import GRID

if TYPE_CHECKING:
    from PySide6.QtCore import QEvent
    from PySide6.QtGui import QCloseEvent, QPaintEvent

    from evenwater.ui.opening import Opening
    from evenwater.ui.unsaved_question import UnsavedQuestion

_WIDTH, _HEIGHT = 1366, 768
# By then what works beside the window is loaded as well.
_LOADED_MS = 5000


class MainWindow(QMainWindow):
    """Paints at once; everything that takes time to load comes with the first turn of the event loop.

    The first paint has no use for the namespace ``Qt``: its enumerations alone would make it a tenth slower.
    """

    def __init__(self, demo: bool = False, log: Path | None = None, parent: QWidget | None = None) -> None:
        """Make the window; ``demo`` opens the invented room, ``log`` another file than the usual."""
        super().__init__(parent)
        self._demo, self._log = demo, log
        self._opening: Opening | None = None
        self._started = self._given_up = False
        self.question: UnsavedQuestion | None = None
        self.setWindowTitle("Evenwater")
        waiting = QWidget(self)
        waiting.setProperty("role", "page")
        layout = QVBoxLayout(waiting)
        layout.setContentsMargins(4 * GRID, 4 * GRID, 4 * GRID, 4 * GRID)
        words = QLabel("Opening the fish room", waiting)
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
        from evenwater.ui.opening import Opening
        from evenwater.ui.theme import apply_theme

        app = QApplication.instance()
        if isinstance(app, QApplication):
            apply_theme(app, load_fonts(), base_points=app.font().pointSizeF())

        self._opening = Opening(self._demo, self._log, self)
        self._opening.page_changed.connect(self._show_page)
        self._opening.start()
        # PySide reads the source of every module that is imported, and it would stay in memory for ever.
        linecache.clearcache()
        QTimer.singleShot(_LOADED_MS, linecache.clearcache)

    def _show_page(self, page: QWidget) -> None:
        self.setCentralWidget(page)
        # Only what is visible can take the focus.
        page.show()

    def changeEvent(self, event: QEvent) -> None:
        """Look for changes by another window when this one comes to the front."""
        super().changeEvent(event)
        if self._opening is None:
            return
        from PySide6.QtCore import QEvent

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
