"""The window of the glossary: the words of the trade in their order, what each means, and what goes with it."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QStringListModel, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListView,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from evenwater.screens.glossary import Glossary, Term
from evenwater.ui.flow import FlowRow
from evenwater.ui.plain_text import WordsLabel, allow
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import say

_LIST_WIDTH = 264


class SearchLine(QLineEdit):
    """Finds terms as one types; ``down`` says that the keeper goes on to the list."""

    down = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go on with Down or Enter."""
        if event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.down.emit()
            event.accept()
        else:
            super().keyPressEvent(event)


class GlossaryWindow(QWidget):
    """Shows one term at a time; Alt and Left goes back to the one before."""

    def __init__(self, glossary: Glossary, parent: QWidget | None = None) -> None:
        """List all terms."""
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(say("Glossary"))
        set_role(self, "page")
        self._glossary = glossary
        self._listed: tuple[Term, ...] = ()
        self._before: list[str] = []
        self.term: Term | None = None
        self.search = SearchLine(self)
        self.search.setPlaceholderText(say("Find a word"))
        self.search.setAccessibleName(say("Find a word"))
        self.search.setClearButtonEnabled(True)
        self._names = QStringListModel(self)
        self.list = QListView(self)
        self.list.setModel(self._names)
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setWordWrap(True)
        self.list.setAccessibleName(say("Words of the trade"))
        self.list.setFixedWidth(pixels(self.font(), _LIST_WIDTH))
        set_role(self.list, "nav")
        self.heading = QLabel(self)
        self.heading.setWordWrap(True)
        set_role(self.heading, "heading")
        self.text, self.source = WordsLabel("", self), WordsLabel("", self)
        set_role(self.source, "muted")
        self._see = QLabel(say("See also"), self)
        set_role(self._see, "caption")
        self._links = FlowRow(GRID)
        self._buttons: list[QPushButton] = []
        self.back = self._button(say("&Back"))
        self.back.setAccessibleName(say("Back to the term before"))
        self._lay_out()
        self.search.textEdited.connect(self._find)
        self.search.down.connect(self.list.setFocus)
        self.list.selectionModel().currentChanged.connect(self._chosen)
        self.back.clicked.connect(self.go_back)
        self._list(glossary.terms)
        self.resize(pixels(self.font(), 820), pixels(self.font(), 480))

    def _button(self, words: str) -> QPushButton:
        button = QPushButton(words, self)
        button.setAutoDefault(False)
        return button

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(GRID)
        left.addWidget(self.search)
        left.addWidget(self.list, 1)
        right = QVBoxLayout()
        right.setSpacing(GRID)
        for label in (self.heading, self.text, self.source):
            label.setTextFormat(Qt.TextFormat.PlainText)
            right.addWidget(label)
        right.addSpacing(GRID)
        right.addWidget(self._see)
        right.addLayout(self._links)
        right.addStretch(1)
        foot = QHBoxLayout()
        foot.addWidget(self.back)
        foot.addStretch(1)
        right.addLayout(foot)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        layout.setSpacing(3 * GRID)
        layout.addLayout(left)
        layout.addLayout(right, 1)

    # Showing

    def open_at(self, key: str) -> None:
        """Come to the front with a term, or, where none is named, ready to find one."""
        self.show()
        self.raise_()
        self.activateWindow()
        if key:
            self.show_term(key)
            self.list.setFocus()
        else:
            self.search.setFocus()
            self.search.selectAll()

    def show_term(self, key: str) -> None:
        """Show a term by its key."""
        term = self._glossary.find(key)
        if term is None:
            return
        if term not in self._listed:
            self.search.clear()
            self._list(self._glossary.terms)
        self.list.setCurrentIndex(self._names.index(self._listed.index(term)))

    def go_back(self) -> None:
        """Show the term that was shown before."""
        if self._before:
            key = self._before.pop()
            self.term = None  # so that the one left now is not taken for a step forwards
            self.show_term(key)

    def _find(self, words: str) -> None:
        self._list(self._glossary.matching(words))

    def _list(self, terms: tuple[Term, ...]) -> None:
        self._listed = terms
        self._names.setStringList([term.name for term in terms])
        if terms:
            row = terms.index(self.term) if self.term in terms else 0
            self.list.setCurrentIndex(self._names.index(row))
        else:
            self.term = None
            self.heading.setText(say("No such word here."))
            self.text.setText("")
            self.source.setText("")
            self._show_links(())

    def _chosen(self, index: QModelIndex) -> None:
        if not index.isValid():
            return
        term = self._listed[index.row()]
        if self.term is not None and self.term != term:
            self._before.append(self.term.key)
        self.term = term
        self.heading.setText(term.name)
        self.text.setText(term.text)
        self.source.setText(term.source)
        self._show_links(tuple(found for key in term.see if (found := self._glossary.find(key)) is not None))
        allow(self.back, bool(self._before), say("This is the first term that was looked at."))

    def _show_links(self, terms: tuple[Term, ...]) -> None:
        while len(self._buttons) < len(terms):
            button = self._button("")
            button.clicked.connect(self._follow)
            self._links.addWidget(button)
            self._buttons.append(button)
            QWidget.setTabOrder(self._buttons[-2] if len(self._buttons) > 1 else self.list, button)
            QWidget.setTabOrder(button, self.back)
        self._see.setVisible(bool(terms))
        for number, button in enumerate(self._buttons):
            button.setVisible(number < len(terms))
            if number < len(terms):
                button.setText(terms[number].name.replace("&", "&&"))
                button.setAccessibleName(say("Show {term}", term=terms[number].name))
                button.setProperty("term", terms[number].key)

    @property
    def links(self) -> tuple[QPushButton, ...]:
        """The buttons of the terms that go with the one shown."""
        return tuple(button for button in self._buttons if not button.isHidden())

    def _follow(self) -> None:
        self.show_term(str(self.sender().property("term")))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close with Escape, go back with Alt and Left."""
        if event.key() == Qt.Key.Key_Escape:
            self.close()
        elif event.key() == Qt.Key.Key_Left and event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self.go_back()
        else:
            super().keyPressEvent(event)
