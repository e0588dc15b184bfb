"""The signs on buttons: plain strokes of our own, drawn in the ink of the palette in force, so that they follow a change of colours.

A sign stands beside words, or its button has an accessible name and a tip; alone it would have to be guessed.
"""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QRect, QRectF, QSize, Qt
from PySide6.QtGui import QGuiApplication, QIcon, QIconEngine, QPainter, QPalette, QPixmap
from PySide6.QtWidgets import QAbstractButton

from evenwater.assets import resources
from evenwater.ui.theme import pixels

SIGNS = ("info", "page", "print", "redo", "save", "search", "settings", "undo")
_SIDE, _APART = 16, 4


@lru_cache(maxsize=len(SIGNS))
def _drawing(name: str) -> str:
    return (resources() / "icons" / "signs" / f"{name}.svg").read_text(encoding="utf-8")


class Ink(QIconEngine):
    """Paints one sign in the colour that words have on the same button."""

    def __init__(self, name: str, role: QPalette.ColorRole = QPalette.ColorRole.WindowText) -> None:
        """Paint the sign ``name``, one of ``SIGNS``, in the colour of a role."""
        super().__init__()
        self._name, self._role = name, role

    def clone(self) -> QIconEngine:
        """Return another that paints the same."""
        return Ink(self._name, self._role)

    def paint(self, painter: QPainter, rect: QRect, mode: QIcon.Mode, state: QIcon.State) -> None:
        """Paint the sign, greyed where its button cannot be pressed."""
        from PySide6.QtSvg import QSvgRenderer

        role = QPalette.ColorRole.Mid if mode == QIcon.Mode.Disabled else self._role
        colour = QGuiApplication.palette().color(role).name()
        drawing = QSvgRenderer(_drawing(self._name).replace("currentColor", colour).encode())
        side = min(rect.width(), rect.height())
        drawing.render(painter, QRectF(rect.left(), rect.center().y() + 0.5 - side / 2.0, side, side))

    def pixmap(self, size: QSize, mode: QIcon.Mode, state: QIcon.State) -> QPixmap:
        """Return the sign on nothing."""
        made = QPixmap(size)
        made.fill(Qt.GlobalColor.transparent)
        with QPainter(made) as painter:
            self.paint(painter, QRect(0, 0, size.width(), size.height()), mode, state)
        return made


def put_sign(button: QAbstractButton, name: str, role: QPalette.ColorRole = QPalette.ColorRole.WindowText) -> None:
    """Put a sign on a button, in the size of its letters."""
    side = pixels(button.font(), _SIDE)
    button.setIcon(QIcon(Ink(name, role)))
    # Qt leaves hardly any room between a sign and the words beside it.
    button.setIconSize(QSize(side + _APART if button.text() else side, side))
