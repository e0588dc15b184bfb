"""The open fish room: the list of systems at the left, the sheet beside it."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.session import Document
from evenwater.ui.correct_sheet import CorrectSheet
from evenwater.ui.systems_pane import SystemsPane
from evenwater.ui.theme import GRID, pixels, set_role

_PANE_WIDTH = 18 * GRID
_ROOMY_WIDTH = 1180


class Room(QWidget):
    """Puts the parts beside each other; the sheet shows the system chosen in the list."""

    def __init__(self, document: Document, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the parts of the room."""
        super().__init__(parent)
        set_role(self, "page")
        self._narrow = False
        self.systems = SystemsPane(document, self)
        self.systems.setFixedWidth(pixels(self.font(), _PANE_WIDTH))
        self.sheet = CorrectSheet(document, catalogue, self)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.systems)
        layout.addWidget(self.sheet, 1)
        self.systems.chosen.connect(self._choose)
        self.sheet.system_wanted.connect(self.systems.choose)
        self.sheet.header.systems.toggled.connect(self.systems.setVisible)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fold the list of systems away where the sheet needs its width; a button brings it back."""
        super().resizeEvent(event)
        narrow = self.width() < pixels(self.font(), _ROOMY_WIDTH)
        if narrow == self._narrow:
            return
        self._narrow = narrow
        self.sheet.header.systems.setVisible(narrow)
        self.sheet.header.systems.setChecked(False)
        self.systems.setVisible(not narrow)

    def start(self) -> None:
        """Show the first system."""
        self.sheet.show_system(self.systems.current())
        self.sheet.focus_first()

    def settle(self) -> None:
        """End what is being typed, before the window closes."""
        self.sheet.settle()

    @Slot(str)
    def _choose(self, system_id: str) -> None:
        self.sheet.show_system(system_id)
