"""What the forms of all sheets are made of: fields in columns, numbered steps, edits that carry their path."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens.terms import inside
from evenwater.ui.choice import Choice
from evenwater.ui.flow import FlowRow
from evenwater.ui.theme import BUTTON_HEIGHT, GRID, pixels, set_role
from evenwater.wording import say

COLUMNS = 3


def set_topic(field: QWidget, path: str, form: str = "") -> None:
    """Say what an input is about, so that it can be asked why it is there."""
    field.setProperty("topic", f"{form}/{path}")


@dataclass(frozen=True)
class FormEdit:
    """One edit by the keeper: the field's path and what was typed."""

    path: str
    typed: Typed


class FieldPort(QObject):
    """Passes one field's signals on with its path, so that no closure is needed."""

    edited = Signal(object)

    def __init__(self, path: str, field: QWidget, form: str = "") -> None:
        """Listen to ``field``, which owns this; ``form`` tells what it belongs to where its path does not (``screens/why.py``)."""
        super().__init__(field)
        self._path = path
        set_topic(field, path, form)
        if isinstance(field, Choice):
            field.chosen.connect(self._chosen)
        else:
            field.edited.connect(self._edited)  # type: ignore[attr-defined]

    def _edited(self, typed: Typed) -> None:
        self.edited.emit(FormEdit(self._path, typed))

    def _chosen(self, choice: str) -> None:
        self.edited.emit(FormEdit(self._path, Typed(choice)))


class Cells(QGridLayout):
    """Fields placed in order, so many columns wide; a wide field takes what it asks for."""

    def __init__(self) -> None:
        """Make an empty grid."""
        super().__init__()
        self.setContentsMargins(0, 0, 0, 0)
        self.setHorizontalSpacing(GRID)
        self.setVerticalSpacing(GRID // 2)
        self._cells: list[tuple[QWidget, int]] = []
        self._columns = 0
        self._placed: list[tuple[QWidget, int, int, int]] = []

    def put(self, widget: QWidget, span: int = 1) -> QWidget:
        """Add a field that is ``span`` columns wide."""
        self._cells.append((widget, span))
        return widget

    def arrange(self, columns: int) -> None:
        """Place the fields anew; those that are hidden by their own choice take no room."""
        places: list[tuple[QWidget, int, int, int]] = []
        row = column = 0
        for widget, span in self._cells:
            if widget.isHidden():
                continue
            wide = min(span, columns)
            if column + wide > columns:
                row, column = row + 1, 0
            places.append((widget, row, column, wide))
            column += wide
        if (columns, places) == (self._columns, self._placed):
            return
        for widget, *_ in self._placed:
            self.removeWidget(widget)
        for widget, row, column, wide in places:
            self.addWidget(widget, row, column, 1, wide)
        self._columns, self._placed = columns, places
        for number in range(COLUMNS):
            self.setColumnStretch(number, 1 if number < columns else 0)

    def first(self) -> QWidget | None:
        """Return the first thing that is placed and takes the focus, or None."""
        inner = (widget.focusProxy() or widget for widget, *_ in self._placed)
        return next((widget for widget in inner if widget.focusPolicy() != Qt.FocusPolicy.NoFocus), None)


class Step(QWidget):
    """One step: a numbered title, its fields in columns, and further ones behind "More"."""

    def __init__(self, number: int, title: str, parent: QWidget) -> None:
        """Make an empty step."""
        super().__init__(parent)
        self._heading = heading = QLabel(f"{number}\u2002{title}", self)
        set_role(heading, "title")
        self.more = QPushButton(say("More"), self)
        self.more.setCheckable(True)
        self.more.setAccessibleName(say("More about {title}", title=inside(title)))
        self.more.setAutoDefault(False)
        set_role(self.more, "quiet")
        # In large letters the words beside a title take a second line before they make the form wider.
        self.beside = FlowRow(GRID // 2)
        self.beside.addWidget(self.more)
        heading.setMinimumHeight(pixels(self.font(), BUTTON_HEIGHT))
        bar = QHBoxLayout()
        bar.setSpacing(GRID // 2)
        bar.addWidget(heading, 0, Qt.AlignmentFlag.AlignTop)
        bar.addStretch(1)
        bar.addLayout(self.beside)
        self.cells, self.extra = Cells(), Cells()
        # Fields are made inside what they stand in: whatever is moved is dressed all over again.
        self._extra = self.aside = QWidget(self)
        self._extra.setLayout(self.extra)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(GRID // 2)
        layout.addLayout(bar)
        layout.addLayout(self.cells)
        layout.addWidget(self._extra)
        self._extra.hide()
        self.more.toggled.connect(self.open)

    def open(self, shown: bool) -> None:
        """Show or hide the further fields."""
        self.more.setChecked(shown)
        self.more.setText(say("Less") if shown else say("More"))
        self._extra.setVisible(shown)

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        self.cells.arrange(columns)
        self.extra.arrange(columns)
        first = self.cells.first()
        if first is not None and first is not self._heading.buddy():
            # Alt and its number lead to a step.
            if self._heading.buddy() is None:
                self._heading.setText(f"&{self._heading.text().replace('&', '&&')}")
            self._heading.setBuddy(first)

    def hides(self, field: QWidget) -> bool:
        """Return whether the field stands behind a closed "More"."""
        return self._extra.isHidden() and self._extra.isAncestorOf(field)

    def button(self, text: str) -> QPushButton:
        """Add a quiet button to the title's line, before "More"."""
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        set_role(button, "quiet")
        self.beside.insert(self.beside.count() - 1, button)
        return button
