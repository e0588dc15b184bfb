"""What the forms of all sheets are made of: fields in columns, numbered steps, edits that carry their path."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.quantities import Typed
from evenwater.ui.choice import Choice
from evenwater.ui.theme import GRID, set_role

COLUMNS = 3


@dataclass(frozen=True)
class FormEdit:
    """One edit by the keeper: the field's path and what was typed."""

    path: str
    typed: Typed


class FieldPort(QObject):
    """Passes one field's signals on with its path, so that no closure is needed."""

    edited = Signal(object)

    def __init__(self, path: str, field: QWidget) -> None:
        """Listen to ``field``, which owns this."""
        super().__init__(field)
        self._path = path
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


class Step(QWidget):
    """One step: a numbered title, its fields in columns, and further ones behind "More"."""

    def __init__(self, number: int, title: str, parent: QWidget) -> None:
        """Make an empty step."""
        super().__init__(parent)
        heading = QLabel(f"{number}\u2002{title}", self)
        set_role(heading, "title")
        self.more = QPushButton("More", self)
        self.more.setCheckable(True)
        self.more.setAccessibleName(f"More about {title.lower()}")
        self.more.setAutoDefault(False)
        set_role(self.more, "quiet")
        self.bar = QHBoxLayout()
        self.bar.setSpacing(GRID)
        self.bar.addWidget(heading)
        self.bar.addStretch(1)
        self.bar.addWidget(self.more)
        self.cells, self.extra = Cells(), Cells()
        # Fields are made inside what they stand in: whatever is moved is dressed all over again.
        self._extra = self.aside = QWidget(self)
        self._extra.setLayout(self.extra)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(GRID // 2)
        layout.addLayout(self.bar)
        layout.addLayout(self.cells)
        layout.addWidget(self._extra)
        self._extra.hide()
        self.more.toggled.connect(self.open)

    def open(self, shown: bool) -> None:
        """Show or hide the further fields."""
        self.more.setChecked(shown)
        self.more.setText("Less" if shown else "More")
        self._extra.setVisible(shown)

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        self.cells.arrange(columns)
        self.extra.arrange(columns)

    def hides(self, field: QWidget) -> bool:
        """Return whether the field stands behind a closed "More"."""
        return self._extra.isHidden() and self._extra.isAncestorOf(field)

    def button(self, text: str) -> QPushButton:
        """Add a quiet button to the title's line, before "More"."""
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        set_role(button, "quiet")
        self.bar.insertWidget(self.bar.count() - 1, button)
        return button
