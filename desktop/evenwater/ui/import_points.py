"""How a spreadsheet is taken, point by point: what must be chosen first, then what was guessed, then what it says itself."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from evenwater.screens.csv_choices import Point
from evenwater.ui.answer_parts import Sentence
from evenwater.ui.choice import Choice
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import marked, say, say_all

# The groups in their order, each with the states that bring a point into it.
_GROUPS = (
    (marked("Choose these first"), ("ask",)),
    (marked("Guessed. See whether it is right"), ("guessed",)),
    (marked("As the file says"), ("said", "chosen")),
)
_STATE_WORDS = {
    "ask": marked("To be chosen."),
    "guessed": marked("Guessed."),
    "said": marked("Read in the file."),
    "chosen": marked("Chosen by you."),
}
# A list takes an entry without an id for a heading, and "leave out" is an answer like any other.
_MARK = "="


@dataclass(frozen=True)
class Ruling:
    """What the keeper chose: the point, and the value of one of its options."""

    what: str
    value: str


class PointRow(QWidget):
    """One point: a list, and below it in words whether it is asked, guessed or said, and why. ``ruled`` carries a ``Ruling``."""

    ruled = Signal(object)

    def __init__(self, what: str, title: str, parent: QWidget) -> None:
        """Make the row of a point."""
        super().__init__(parent)
        self.what = what
        self.choice = Choice(title, self)
        self.choice.label.setTextFormat(Qt.TextFormat.PlainText)
        # Its sentence stands below in full length.
        self.choice.note.hide()
        self.choice.combo.setPlaceholderText(say("Choose"))
        self.said = Sentence(self, "")
        set_role(self.said.label, "muted")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(self.choice)
        column.addWidget(self.said)
        self.choice.chosen.connect(self._choose)
        self.state = ""

    def show_point(self, point: Point) -> None:
        """Show how the point stands."""
        self.state = point.state
        # A heading of the file may hold the sign that underlines a letter.
        self.choice.label.setText(point.title.replace("&", "&&"))
        self.choice.combo.setAccessibleName(point.title)
        self.choice.set_options(tuple((_MARK + option.value, option.words) for option in point.options))
        self.choice.set_current("" if point.state == "ask" else _MARK + point.value)
        words = f"{say_all(_STATE_WORDS[point.state])} {point.words}".strip()
        self.choice.set_help(words)
        self.said.set_text(words)
        self.said.sign.set_kind("stop" if point.state == "ask" else "")
        set_role(self.said.label, "stop" if point.state == "ask" else "muted")

    def _choose(self, chosen: str) -> None:
        self.ruled.emit(Ruling(self.what, chosen.removeprefix(_MARK)))


class PointList(QWidget):
    """All points of a file. One that was answered stays where it stood, so that nothing moves under the hand."""

    ruled = Signal(object)

    def __init__(self, parent: QWidget) -> None:
        """Begin without points."""
        super().__init__(parent)
        set_role(self, "page")
        self.rows: dict[str, PointRow] = {}
        self._groups: dict[str, int] = {}
        self._titles = [QLabel(words, self) for words, _ in say_all(_GROUPS)]
        self._columns = [QVBoxLayout() for _ in say_all(_GROUPS)]
        column = QVBoxLayout(self)
        column.setContentsMargins(2, 0, 2 * GRID, GRID)
        column.setSpacing(GRID)
        for title, inner in zip(self._titles, self._columns, strict=True):
            set_role(title, "title")
            title.hide()
            inner.setSpacing(2 * GRID)
            inner.setContentsMargins(0, 0, 0, GRID)
            column.addWidget(title)
            column.addLayout(inner)
        column.addStretch(1)

    def clear(self) -> None:
        """Forget the file."""
        self.show_points(())

    def show_points(self, points: Sequence[Point], first: Collection[str] = ()) -> None:
        """Show these points, first those that are asked or whose ``what`` is named in ``first``."""
        groups = {point.what: 0 if point.what in first else self._group(point) for point in points}
        for what in self.rows.keys() - groups.keys():
            row = self.rows.pop(what)
            row.hide()
            row.deleteLater()
        for point in points:
            if point.what not in self.rows:
                row = self.rows[point.what] = PointRow(point.what, point.title, self)
                row.ruled.connect(self.ruled)
            self.rows[point.what].show_point(point)
        if list(groups.items()) != list(self._groups.items()):
            self._place(groups)

    def asked(self) -> list[PointRow]:
        """Return the rows that are still to be chosen, from above."""
        return [row for row in self.in_order() if row.state == "ask"]

    def in_order(self) -> list[PointRow]:
        """Return all rows, from above."""
        return [self.rows[what] for what in sorted(self._groups, key=self._groups.__getitem__)]

    def _group(self, point: Point) -> int:
        usual = next(n for n, (_, states) in enumerate(say_all(_GROUPS)) if point.state in states)
        return usual if point.state == "ask" else self._groups.get(point.what, usual)

    def _place(self, groups: dict[str, int]) -> None:
        """Put each row in its group, in the order of the file."""
        self._groups = groups
        for number, (title, inner) in enumerate(zip(self._titles, self._columns, strict=True)):
            while inner.count():
                inner.takeAt(0)
            inside = [self.rows[what] for what, group in groups.items() if group == number]
            title.setVisible(bool(inside))
            for row in inside:
                inner.addWidget(row)
                row.show()
