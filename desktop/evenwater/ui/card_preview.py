"""A card or a label as it will be printed, page by page, in a window of its own."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QGuiApplication, QPixmap
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from evenwater.card.label_paper import LabelPaper
from evenwater.card.output import lay_out, to_image
from evenwater.card.paper import PAPERS, Paper
from evenwater.screens.jug_label import JugLabel
from evenwater.screens.views import CardView
from evenwater.ui.choice import Choice
from evenwater.ui.theme import GRID, set_role

_DPI = 96.0


class CardPreview(QWidget):
    """Shows a card or a label on a paper; ``paper_chosen`` carries the name of another paper."""

    paper_chosen = Signal(str)

    def __init__(
        self,
        parent: QWidget | None = None,
        title: str = "Dose card",
        choices: Mapping[str, Paper | LabelPaper] = PAPERS,
    ) -> None:
        """Make the window, still empty, for the papers of ``choices``."""
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(title)
        set_role(self, "page")
        self._card: CardView | JugLabel | None = None
        self._choices = choices
        self._paper = next(iter(choices))
        self.papers = Choice("Paper", self)
        self.papers.set_options(tuple((name, name) for name in choices))
        self.mono = QCheckBox("As a copier sees it, &black and white only", self)
        self._pages = QWidget()
        set_role(self._pages, "page")
        self._column = QVBoxLayout(self._pages)
        self._column.setSpacing(2 * GRID)
        self._column.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
        self._labels: list[QLabel] = []
        self._nothing = QLabel(self._pages)
        set_role(self._nothing, "muted")
        self._column.addWidget(self._nothing)
        self._nothing.hide()
        scroll = QScrollArea(self)
        scroll.setWidgetResizable(True)
        scroll.setWidget(self._pages)
        row = QHBoxLayout()
        row.setSpacing(2 * GRID)
        row.addWidget(self.papers)
        row.addWidget(self.mono)
        row.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        layout.addLayout(row)
        layout.addWidget(scroll, 1)
        self.papers.chosen.connect(self._choose_paper)
        self.mono.toggled.connect(self._paint)
        self.resize(900, 760)

    @property
    def card(self) -> CardView | JugLabel | None:
        """The card or label that is shown."""
        return self._card

    def show_card(self, card: CardView | JugLabel, paper: str) -> None:
        """Show a card or a label on a paper."""
        self._card, self._paper = card, paper
        self._nothing.hide()
        self.papers.set_current(paper)
        self._paint()

    def clear(self, words: str) -> None:
        """Show no page but a sentence: what was shown holds no longer."""
        self._card = None
        for label in self._labels:
            label.setVisible(False)
        self._nothing.setText(words)
        self._nothing.setVisible(True)

    def _choose_paper(self, name: str) -> None:
        self._paper = name
        self.paper_chosen.emit(name)
        self._paint()

    def _paint(self, *_: object) -> None:
        if self._card is None:
            return
        ratio = QGuiApplication.primaryScreen().devicePixelRatio()
        paper = self._choices[self._paper]
        count = len(lay_out(self._card, paper))
        while len(self._labels) < count:
            label = QLabel(self._pages)
            self._column.addWidget(label)
            self._labels.append(label)
        for page, label in enumerate(self._labels):
            label.setVisible(page < count)
            if page < count:
                image = to_image(self._card, paper, page, _DPI * ratio, self.mono.isChecked())
                pixmap = QPixmap.fromImage(image)
                pixmap.setDevicePixelRatio(ratio)
                label.setPixmap(pixmap)
                title = self._card.title if isinstance(self._card, CardView) else self._card.name
                label.setAccessibleName(f"Page {page + 1} of {count}: {title}")
