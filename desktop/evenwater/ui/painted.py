"""Says when a widget has been painted for the first time, so that what nobody sees yet can wait for it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QTimer, Signal
from PySide6.QtWidgets import QWidget

# What waits for the paint leaves room for a key that was pressed meanwhile.
_AFTER_MS = 50
# A window that is opened behind others may not be painted for long; what waits for it is begun all the same.
_AT_THE_LATEST_MS = 3000


class Painted(QObject):
    """Watches a widget; ``once`` comes soon after it was painted, together with whatever was to be painted at that moment."""

    once = Signal()

    def __init__(self, widget: QWidget, parent: QObject) -> None:
        """Watch ``widget`` from now on."""
        super().__init__(parent)
        self._widget = widget
        self._said = False
        widget.installEventFilter(self)
        QTimer.singleShot(_AT_THE_LATEST_MS, self, self._say)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Notice the first paint."""
        if event.type() == QEvent.Type.Paint:
            self._widget.removeEventFilter(self)
            QTimer.singleShot(0, self, self._wait)
        return False

    def _wait(self) -> None:
        """Begin to wait when the whole window has been painted, which may take longer than the wait."""
        QTimer.singleShot(_AFTER_MS, self, self._say)

    def _say(self) -> None:
        if not self._said:
            self._said = True
            self.once.emit()
