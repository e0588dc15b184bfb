"""A card or a label as it will be printed, page by page, in a window of its own."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QGuiApplication, QPixmap
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from evenwater.card.label_paper import LabelPaper
from evenwater.card.output import Sheet, lay_out, picture, title_of
from evenwater.card.paper import PAPERS, Paper
from evenwater.screens.jug_label import JugLabel
from evenwater.ui.choice import Choice
from evenwater.ui.flow import FlowRow
from evenwater.ui.form_parts import set_topic
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import say

_DPI = 96.0
# A picture of a page takes some megabytes; nobody looks at more.
_MOST_PAGES = 24


class CardPreview(QWidget):
    """Shows a card or a label on a paper; ``paper_chosen`` carries the name of another paper."""

    paper_chosen = Signal(str)

    def __init__(
        self,
        parent: QWidget | None = None,
        title: str = "",
        choices: Mapping[str, Paper | LabelPaper] = PAPERS,
    ) -> None:
        """Make the window, still empty, for the papers of ``choices``."""
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(title or say("Dose card"))
        set_role(self, "page")
        self._card: Sheet | None = None
        self._choices = choices
        self._paper = next(iter(choices))
        self.papers = Choice(say("Paper"), self)
        set_topic(self.papers, "paper", "printed")
        self.papers.set_options(tuple((name, say(name)) for name in choices))
        self.mono = QCheckBox(say("As a copier sees it, &black and white only"), self)
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
        self._actions = FlowRow(GRID)
        self._said = QLabel(self)
        self._said.setTextFormat(Qt.TextFormat.PlainText)
        self._said.setWordWrap(True)
        self._said.hide()
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
        layout.addLayout(self._actions)
        layout.addWidget(self._said)
        layout.addWidget(scroll, 1)
        self.papers.chosen.connect(self._choose_paper)
        self.mono.toggled.connect(self._paint)
        self.resize(900, 760)

    def add_action(self, button: QWidget) -> None:
        """Put a button above the pages: what can be done with them from here."""
        self._actions.addWidget(button)
        button.show()

    def say(self, words: str) -> None:
        """Say what was done with the pages; nothing for empty words."""
        self._said.setText(words)
        self._said.setVisible(bool(words))

    @property
    def card(self) -> Sheet | None:
        """The card or label that is shown."""
        return self._card

    def show_card(self, card: Sheet, paper: str) -> None:
        """Show a card or a label on a paper."""
        self._card, self._paper = card, paper
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
        made = lay_out(self._card, paper)
        count = min(len(made), _MOST_PAGES)
        self._nothing.setText(
            say("The first {count} of {made} pages; all of them are printed and saved.", count=count, made=len(made))
        )
        self._nothing.setVisible(count < len(made))
        while len(self._labels) < count:
            label = QLabel(self._pages)
            self._column.addWidget(label)
            self._labels.append(label)
        for page, label in enumerate(self._labels):
            label.setVisible(page < count)
            if page < count:
                image = picture(made[page], paper, _DPI * ratio, self.mono.isChecked())
                pixmap = QPixmap.fromImage(image)
                pixmap.setDevicePixelRatio(ratio)
                label.setPixmap(pixmap)
                title = self._card.name if isinstance(self._card, JugLabel) else title_of(self._card)
                label.setAccessibleName(
                    say("Page {page} of {made}: {title}", page=page + 1, made=len(made), title=title)
                )
