"""The parts of the Recovery sheet's answer: the stop list, the choices side by side, and what each does to every value."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import QBoxLayout, QGridLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.screens import recovery_sheet
from evenwater.screens.recovery_sheet import ChoiceView
from evenwater.screens.views import Message
from evenwater.ui.announce import Announcer
from evenwater.ui.answer_parts import MessageList
from evenwater.ui.table import Table
from evenwater.ui.theme import GRID, pixels, scaled, set_role, tokens_of
from evenwater.wording import marked, say, say_all

# The largest that fits; none of them is smaller than any other letter of the sheet.
_STOP_POINTS = (26.0, 22.0, 19.0, 17.0)
_COLUMNS = 2
_IN_FULL_FROM = 640
# Three choices with their buttons, and a table of six columns, need so much [px at the usual letters].
_ACROSS = 500
_FRAME = 4
_CHOOSE = {
    "hold": marked("&Hold only"),
    "exchange": marked("E&xchange"),
    "both": marked("&Both"),
}
_NARROW_HEADS = (marked("Value"), marked("What each choice does"))
_LEGEND = marked(
    "Of each value: its end, in brackets the lowest and highest it comes to wherever in its interval the net volume lies, and the most it moves in 24\u00a0hours."
)
_HEADS = (
    marked("Value"),
    marked("Now"),
    marked("Hold only"),
    marked("Exchange"),
    marked("Both"),
    marked("May move in 24\u00a0h"),
)


class StopList(QWidget):
    """What is done first, numbered, in the largest letters of the sheet; it needs no figure, so it always stands there."""

    def __init__(self, parent: QWidget) -> None:
        """Write the list."""
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        self._grid.setHorizontalSpacing(2 * GRID)
        self._grid.setVerticalSpacing(0)
        said = recovery_sheet.stop_list()
        self.short: list[QLabel] = []
        self._sentences: list[QLabel] = []
        rows = (len(said) + 1) // _COLUMNS
        for place, (short, full) in enumerate(said):
            words, sentence = self._label(f"{place + 1}\u2002{short}", "stop"), self._label(full, "caption")
            sentence.setWordWrap(True)
            sentence.setMinimumHeight(1)
            # The order goes down the first column, then down the second.
            sentence.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
            for below, label in enumerate((words, sentence)):
                self._grid.addWidget(label, 2 * (place % rows) + below, place // rows)
            self.short.append(words)
            self._sentences.append(sentence)
        for column in range(_COLUMNS):
            self._grid.setColumnStretch(column, 1)
        self._points = 0.0
        self._fit(0)
        self.setAccessibleName(
            say("First, in this order: ") + " ".join(f"{n}. {full}" for n, (_, full) in enumerate(said, 1))
        )

    def _label(self, text: str, role: str) -> QLabel:
        label = QLabel(text, self)
        label.setTextFormat(Qt.TextFormat.PlainText)
        set_role(label, role)
        return label

    def _fit(self, width: int) -> None:
        """Take the largest letters with which two columns fit into a width [px]."""
        longest = max((label.text() for label in self.short), key=len)
        room = width / _COLUMNS - 4 * GRID
        fonts = {points: scaled(self.font(), points, bold=True) for points in _STOP_POINTS}
        fitting = (each for each in _STOP_POINTS if QFontMetricsF(fonts[each]).horizontalAdvance(longest) <= room)
        points = next(fitting, _STOP_POINTS[-1])
        if points != self._points:
            self._points = points
            for label in self.short:
                label.setFont(fonts[points])

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep both columns whole."""
        super().resizeEvent(event)
        self._fit(self.width())

    def share(self, height: int) -> None:
        """Say each in full as well where the sheet is so high [px] that there is room below for what follows."""
        for sentence in self._sentences:
            sentence.setVisible(height >= pixels(self.font(), _IN_FULL_FROM))

    def announce(self) -> None:
        """Let a screen reader say the list at once."""
        Announcer.of(self).say(self.accessibleName(), urgent=True)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the heaviest frame of the sheet."""
        with QPainter(self) as painter:
            painter.setPen(QPen(QColor(tokens_of(self.palette()).stop), _FRAME))
            half = _FRAME / 2
            painter.drawRect(QRectF(self.rect()).adjusted(half, half, -half, -half))


class ChoicePanel(QWidget):
    """One choice: whether it can be done, what it takes, or why it is not proposed; ``chosen`` carries its name, or nothing."""

    chosen = Signal(str)

    def __init__(self, name: str, parent: QWidget) -> None:
        """Make the panel, still empty."""
        super().__init__(parent)
        self._name = name
        self.title, self.state, self.takes, self.tests = (self._line() for _ in range(4))
        set_role(self.title, "title")
        self.reasons = MessageList(self, sign="stop")
        self.choose = QPushButton(say_all(_CHOOSE[name]), self)
        self.choose.setCheckable(True)
        self.choose.setAccessibleName(say("Choose: {choose}", choose=say_all(_CHOOSE[name]).replace("&", "")))
        self.choose.setAutoDefault(False)
        set_role(self.choose, "large")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GRID // 2)
        for part in (self.title, self.state, self.takes, self.tests, self.reasons):
            column.addWidget(part)
        column.addStretch(1)
        column.addWidget(self.choose)
        self.choose.clicked.connect(self._clicked)

    def _line(self) -> QLabel:
        label = QLabel(self)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        label.setMinimumHeight(1)
        return label

    def render(self, view: ChoiceView, chosen: bool) -> None:  # type: ignore[override]
        """Show the choice."""
        self.title.setText(view.title)
        self.state.setText(f"{view.state[:1].upper()}{view.state[1:]}.")
        set_role(self.state, "" if view.proposed else "stop")
        for label, text in ((self.takes, view.takes), (self.tests, view.tests)):
            label.setText(text)
            label.setVisible(bool(text))
        self.reasons.set_messages(tuple(Message(text) for text in view.reasons))
        self.choose.setEnabled(view.proposed)
        self.choose.setChecked(chosen and view.proposed)
        self.choose.setText(say_all(_CHOOSE[self._name]) + (say(", chosen") if self.choose.isChecked() else ""))
        set_role(self.choose, "main" if self.choose.isChecked() else "large")
        self.choose.setAccessibleDescription(f"{view.title}: {view.state}. {view.takes}")

    def _clicked(self, checked: bool) -> None:
        self.chosen.emit(self._name if checked else "")


class Choices(QWidget):
    """The choices side by side, then one table of what each does to every value; ``chosen`` carries a name, or nothing."""

    chosen = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        """Make the panels, still empty."""
        super().__init__(parent)
        self.panels = {name: ChoicePanel(name, self) for name in _CHOOSE}
        self._row = row = QHBoxLayout()
        row.setSpacing(2 * GRID)
        for panel in self.panels.values():
            row.addWidget(panel, 1)
            panel.chosen.connect(self.chosen)
        self.table = Table(self, say_all(_HEADS), (2, 2, 4, 4, 4, 2))
        self.narrow = Table(self, say_all(_NARROW_HEADS), (2, 5))
        for table in (self.table, self.narrow):
            table.setAccessibleName(say("What each choice does to every value"))
        self._across = True
        self._legend = QLabel(say(_LEGEND), self)
        self._legend.setWordWrap(True)
        set_role(self._legend, "caption")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2 * GRID)
        column.addLayout(row)
        column.addWidget(self.table)
        column.addWidget(self.narrow)
        column.addWidget(self._legend)

    def share(self, width: int) -> None:
        """Stand side by side where this width [px] has room for three columns, else one under the other."""
        self._across = across = width >= pixels(self.font(), _ACROSS)
        self.table.setVisible(across)
        self.narrow.setVisible(not across)
        self._row.setDirection(QBoxLayout.Direction.LeftToRight if across else QBoxLayout.Direction.TopToBottom)

    def show_choices(self, choices: tuple[ChoiceView, ...], chosen: str) -> None:
        """Show the choices; nothing where there are none."""
        self.setVisible(bool(choices))
        for view in choices:
            self.panels[view.name].render(view, view.name == chosen)
        lines = _cells(choices)
        self.table.set_rows(lines)
        self.narrow.set_rows(tuple(_in_two(line) for line in lines))
        self.table.setVisible(self._across and bool(lines))
        self.narrow.setVisible(not self._across and bool(lines))
        self._legend.setVisible(bool(lines))


def _in_two(line: tuple[str, ...]) -> tuple[str, str]:
    """Return a line of six columns in two, for a narrow place."""
    value, now, *cells, most = line
    told = (f"{head}: {cell.replace(chr(10), ', ')}" for head, cell in zip(say_all(_HEADS[2:5]), cells, strict=True))
    return value, "\n".join((say("now {now}, may move {most}", now=now, most=most), *told))


def _cells(choices: tuple[ChoiceView, ...]) -> tuple[tuple[str, ...], ...]:
    """Return a line for every value that any of the choices follows."""
    by_name = {view.name: {row.parameter: row for row in view.rows} for view in choices}
    first = next((rows for rows in by_name.values() if rows), {})
    lines = []
    for parameter, known in first.items():
        cells = []
        for name in _CHOOSE:
            row = by_name.get(name, {}).get(parameter)
            if row is None:
                cells.append("--")
                continue
            own = "" if row.moves_in == row.unit else f"\u00a0{row.moves_in}"
            cells.append(
                say(
                    "{end} ({low} to {high})\nmoves {moves}{own}",
                    end=row.end,
                    low=row.low,
                    high=row.high,
                    moves=row.moves,
                    own=own,
                )
            )
        most = known.most if known.moves_in == known.unit else f"{known.most}\u00a0{known.moves_in}"
        lines.append((f"{parameter}\n{known.unit}", known.now, *cells, most))
    return tuple(lines)
