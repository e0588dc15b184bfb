"""The button below the lists of a room that leads to the glossary and the guide."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtGui import QAction, QPalette
from PySide6.QtWidgets import QMenu, QToolButton, QWidget

from evenwater.ui.icons import put_sign
from evenwater.ui.theme import set_role
from evenwater.wording import say


class HelpButton(QToolButton):
    """Opens a short menu; ``wanted`` carries "glossary" or "guide"."""

    wanted = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        """Make the button; its menu is made when it is asked for."""
        super().__init__(parent)
        self.menu_shown: QMenu | None = None
        set_role(self, "bare")
        put_sign(self, "info", QPalette.ColorRole.Highlight)
        self.setAccessibleName(say("Show the help"))
        self.setToolTip(say("Help: glossary and guide. F1 in a field says why it is there."))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.clicked.connect(self._offer)

    def _offer(self) -> None:
        if self.menu_shown is None:
            self.menu_shown = menu = QMenu(self)
            for what, words in (("glossary", say("&Glossary")), ("guide", say("G&uide"))):
                menu.addAction(words).setData(what)
            menu.addAction(say("F1 in a field says why it is there")).setEnabled(False)
            menu.triggered.connect(self._chosen)
        self.menu_shown.popup(self.mapToGlobal(QPoint(0, -self.menu_shown.sizeHint().height())))

    def _chosen(self, action: QAction) -> None:
        self.wanted.emit(str(action.data()))
