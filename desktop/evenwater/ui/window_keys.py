"""What holds for the whole window, whatever page it shows: its keys, and the window of settings."""

from __future__ import annotations

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow

from evenwater.ui.help import Help
from evenwater.ui.look import Look
from evenwater.ui.settings_window import SettingsWindow

_SETTINGS, _LARGER, _SMALLER, _WHOLE = (
    ("Ctrl+,",),
    ("Ctrl++", "Ctrl+="),
    ("Ctrl+-",),
    ("F11",),
)


class WindowKeys(QObject):
    """Adds the keys to a window. Ctrl and 0 is the Log's, so the usual letters are reached step by step."""

    def __init__(self, window: QMainWindow, look: Look) -> None:
        """Serve ``window``, which shows ``look``."""
        super().__init__(window)
        self._window, self._look = window, look
        self.settings: SettingsWindow | None = None
        self.help = Help(window)
        self._key(_SETTINGS).triggered.connect(self.show_settings)
        self._key(_LARGER).triggered.connect(look.larger)
        self._key(_SMALLER).triggered.connect(look.smaller)
        self._key(_WHOLE).triggered.connect(self.turn_whole)

    def _key(self, keys: tuple[str, ...]) -> QAction:
        action = QAction(self)
        action.setShortcuts([QKeySequence(key) for key in keys])
        action.setShortcutContext(Qt.ShortcutContext.WindowShortcut)
        self._window.addAction(action)
        return action

    def show_settings(self) -> None:
        """Show the settings, in a window of their own beside the work."""
        if self.settings is None:
            self.settings = SettingsWindow(self._look, self._window)
        self.settings.show()
        self.settings.raise_()
        self.settings.activateWindow()

    def turn_whole(self) -> None:
        """Take the whole screen, or give it back."""
        self._window.setWindowState(self._window.windowState() ^ Qt.WindowState.WindowFullScreen)
