"""Words that keepers wrote, shown as they stand: never taken for markup, never pushing anything out of the window."""

from __future__ import annotations

from html import escape

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QEnterEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QLabel, QWidget

# So much of a name is seen at the least, in widths of a letter.
_LEAST_LETTERS = 8


def plain_tip(words: str) -> str:
    """Return words for a tool tip, which Qt would take for rich text where they look like it."""
    return f"<span>{escape(words)}</span>" if words else ""


def set_tip(widget: QWidget, words: str, *, whole: bool = True) -> None:
    """Show words in a tool tip, unless they are read ``whole`` without one, and say them to whoever cannot see it.

    Left to itself, Qt would read the tip aloud with its markup.
    """
    tip = plain_tip(words) if whole else ""
    if tip != widget.toolTip():
        widget.setToolTip(tip)
    if words != widget.accessibleDescription():
        widget.setAccessibleDescription(words)


def allow(control: QWidget, allowed: bool, why_not: str) -> None:
    """Let a control be used; where it cannot be, say why to whoever cannot see what is missing beside it."""
    control.setEnabled(allowed)
    why = "" if allowed else why_not
    if why != control.accessibleDescription():
        control.setAccessibleDescription(why)


class ElidedLabel(QLabel):
    """One line of plain text that ends in dots where there is no room for it; the tip and the accessible name have all of it."""

    def __init__(self, parent: QWidget) -> None:
        """Make an empty label."""
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)

    def setText(self, text: str) -> None:
        """Show other words."""
        super().setText(text)
        set_tip(self, text)

    def minimumSizeHint(self) -> QSize:
        """Ask for a few letters."""
        hint = super().minimumSizeHint()
        least = self.fontMetrics().averageCharWidth() * _LEAST_LETTERS
        return QSize(min(hint.width(), least), hint.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the words, or as many as there is room for."""
        if super().sizeHint().width() <= self.width():
            super().paintEvent(event)
            return
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, self.contentsRect().width())
        with QPainter(self) as painter:
            painter.setPen(self.palette().color(self.foregroundRole()))
            painter.drawText(self.contentsRect(), int(self.alignment()), text)


class WordsLabel(QLabel):
    """Plain words on as many lines as they need; they can be marked with the mouse, to be copied.

    A label whose words can be marked keeps a document of them, which takes many times as long to lay out. So they can be from when
    the mouse comes over them.
    """

    def __init__(self, text: str, parent: QWidget) -> None:
        """Make a label."""
        super().__init__(text, parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        # Its height follows its width; the hint is for a narrow one.
        self.setMinimumHeight(1)

    def enterEvent(self, event: QEnterEvent) -> None:
        """Let the words be marked."""
        self.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        super().enterEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        """Let go of the document, unless some words are marked."""
        super().leaveEvent(event)
        if not self.hasSelectedText():
            self.setTextInteractionFlags(Qt.TextInteractionFlag.NoTextInteraction)


class FittedLabel(QLabel):
    """One line of plain text in the longest of several wordings that there is room for, so that none is ever cut off."""

    def __init__(self, parent: QWidget) -> None:
        """Make an empty label."""
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self._wordings: tuple[str, ...] = ()

    def set_wordings(self, wordings: tuple[str, ...]) -> None:
        """Show one of these, the longest first; where not even the last has room, none."""
        self._wordings = wordings
        self.setAccessibleName(wordings[0] if wordings else "")
        self._fit()

    def minimumSizeHint(self) -> QSize:
        """Ask for no width: there is a wording for every room."""
        return QSize(0, super().minimumSizeHint().height())

    def sizeHint(self) -> QSize:
        """Ask for the width of the longest wording."""
        longest = self.fontMetrics().horizontalAdvance(self._wordings[0]) if self._wordings else 0
        return QSize(longest, super().sizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Choose the wording for the new width."""
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        """Choose the wording anew in other letters."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fit()

    def _fit(self) -> None:
        measure, room = self.fontMetrics(), self.contentsRect().width()
        fitting = (words for words in self._wordings if measure.horizontalAdvance(words) <= room)
        self.setText(next(fitting, ""))
        self.updateGeometry()
