"""Says which cards on the stand are void, until the keeper has taken them down."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QWidget

from evenwater.session import Document
from evenwater.ui.theme import GRID, set_role


class VoidCards(QWidget):
    """A strip with the oldest void card of the system that is shown, and a button to tick it off."""

    def __init__(self, document: Document, parent: QWidget | None = None) -> None:
        """Watch the cards of ``document``."""
        super().__init__(parent)
        self._document = document
        self._system = ""
        self._plan_id = ""
        self.words = QLabel(self)
        set_role(self.words, "stop")
        self.done = QPushButton(self)
        self.done.setAutoDefault(False)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(GRID)
        layout.addWidget(self.words)
        layout.addWidget(self.done)
        layout.addStretch(1)
        self.done.clicked.connect(self._taken_down)
        document.cardsChanged.connect(self._refresh)
        self.hide()

    def show_system(self, system_id: str) -> None:
        """Show the void cards of another system."""
        self._system = system_id
        self._refresh()

    def _refresh(self, *_: object) -> None:
        void = [c for c in self._document.cards("void") if c.system_id == self._system]
        self.setVisible(bool(void))
        if void:
            self._plan_id = void[0].plan_id
            more = f", and {len(void) - 1} more" if len(void) > 1 else ""
            self.words.setText(f"\u25b2 Card {self._plan_id} is void{more}.")
            self.done.setText("It is taken &down")
            self.done.setAccessibleName(f"Card {self._plan_id} is taken down")

    def _taken_down(self) -> None:
        self._document.set_card_state(self._plan_id, "removed")
        self._refresh()
