"""A grid of words that stays as it is while the words in it change, as long as each has the room that it needs."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtWidgets import QGridLayout, QLabel, QWidget


class StillGrid(QGridLayout):
    """Lays out labels in rows; ``set_words`` changes what they say.

    A label that says something else asks for a place anew, and everything around it is laid out again, up to the window; most figures
    are as wide as the one before, and so nothing has to move.
    """

    def __init__(self, parent: QWidget) -> None:
        """Make an empty grid."""
        super().__init__(parent)
        self._held = False

    def invalidate(self) -> None:
        """Ask for everything to be laid out again, unless it stays as it is."""
        if not self._held:
            super().invalidate()

    def set_words(self, words: Iterable[tuple[QLabel, str]]) -> None:
        """Let each label that wraps its words say these, and be shown; where its needs change, all are laid out again."""
        moved = False
        for label, text in words:
            if label.isHidden():
                label.setText(text)
                label.show()
            elif text != label.text():
                moved |= self._say(label, text)
        if moved:
            self.invalidate()

    def _say(self, label: QLabel, text: str) -> bool:
        """Change what is said; return whether it needs another room than before."""
        width = label.width()
        before = label.heightForWidth(width), label.minimumSizeHint().width() > width
        self._held = True
        label.setText(text)
        self._held = False
        return before != (label.heightForWidth(width), label.minimumSizeHint().width() > width)
