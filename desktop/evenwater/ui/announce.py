"""Says aloud, through a screen reader, what changes while the focus is somewhere else."""

from __future__ import annotations

from PySide6.QtCore import QObject, Qt, QTimer, Signal
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QWidget

# Whoever types hears their own keys; an answer waits until they pause for so long [ms].
QUIET_MS = 1000


class Announcer(QObject):
    """Speaks for one window; ``said`` carries (words, urgent) of whatever was handed to the screen reader.

    Urgent words break into what is being read, the others wait for its end.
    """

    said = Signal(str, bool)

    def __init__(self, window: QWidget) -> None:
        """Speak for ``window``."""
        super().__init__(window)
        self._window = window
        self._waiting: dict[object, tuple[str, bool]] = {}
        self._quiet = QTimer(self)
        self._quiet.setSingleShot(True)
        self._quiet.timeout.connect(self._say_waiting)

    @staticmethod
    def of(widget: QWidget) -> Announcer:
        """Return the one of the window that a widget stands in."""
        window = widget.window()
        found = window.findChild(Announcer, options=Qt.FindChildOption.FindDirectChildrenOnly)
        return found if isinstance(found, Announcer) else Announcer(window)

    def say(self, words: str, *, urgent: bool = False) -> None:
        """Say something now."""
        if not words:
            return
        event = QAccessibleAnnouncementEvent(self._window, words)
        manners = QAccessible.AnnouncementPoliteness
        event.setPoliteness(manners.Assertive if urgent else manners.Polite)
        QAccessible.updateAccessibility(event)
        self.said.emit(words, urgent)

    def say_after_quiet(self, source: object, words: str, *, urgent: bool = False) -> None:
        """Say something once nothing new has come for a second; the same source's newer words take its place, no words take it back."""
        if words:
            self._waiting[source] = (words, urgent)
            self._quiet.start(QUIET_MS)
        else:
            self._waiting.pop(source, None)

    def waits(self, source: object) -> bool:
        """Return whether words of this source still wait."""
        return source in self._waiting

    def _say_waiting(self) -> None:
        waiting, self._waiting = self._waiting, {}
        for urgent in (True, False):
            self.say(" ".join(words for words, pressing in waiting.values() if pressing == urgent), urgent=urgent)
