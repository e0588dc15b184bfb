"""The right half of a sheet: the figure, what it means, how near each limit is, and why."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from evenwater.screens.views import AnswerView, Message, WorkLine
from evenwater.ui.answer_parts import Figure, MessageList, Sentence
from evenwater.ui.flow import FlowRow
from evenwater.ui.limit_bars import LimitBars, near_and_far
from evenwater.ui.plain_text import WordsLabel, allow
from evenwater.ui.still_grid import StillGrid
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say

MISSING = "--"
STALE = marked("The question has changed")
_USUAL_HEIGHT = 292
# Widths of the columns of a table of working: what, how, what it gives.
_SHARES = (3, 5, 3)
_HOW = marked("How this was worked out")
_HOW_HIDE = marked("Hide the working")
_BESIDES, _BESIDES_HIDE = marked("What else it does"), marked("Hide what else it does")


class WorkTable(QWidget):
    """The arithmetic, one line under the other; its labels are made once and used again."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = StillGrid(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(2 * GRID)
        self._grid.setVerticalSpacing(GRID // 2)
        for column, share in enumerate(_SHARES):
            self._grid.setColumnStretch(column, share)
        self._rows: list[tuple[QLabel, QLabel, QLabel]] = []
        self.setAccessibleName(say(_HOW))

    def set_lines(self, lines: tuple[WorkLine, ...]) -> None:
        """Show these lines."""
        while len(self._rows) < len(lines):
            self._add_row()
        said = [(line.what, line.how, line.gives) for line in lines]
        self._grid.set_words(
            (label, text)
            for labels, row in zip(self._rows, said, strict=False)
            for label, text in zip(labels, row, strict=True)
        )
        for labels in self._rows[len(lines) :]:
            for label in labels:
                label.hide()
                label.setText("")

    def _add_row(self) -> None:
        row = len(self._rows)
        labels = (WordsLabel("", self), WordsLabel("", self), WordsLabel("", self))
        for column, label in enumerate(labels):
            side = Qt.AlignmentFlag.AlignRight if column == 2 else Qt.AlignmentFlag.AlignLeft
            label.setAlignment(side | Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(label, row, column)
        set_role(labels[0], "muted")
        self._rows.append(labels)


class AnswerPanel(QWidget):
    """Shows an ``AnswerView``.

    ``offerChosen`` carries (path, Offer) when the keeper takes an offered reading. The sheet puts
    its own buttons in with ``add_action``. ``how`` and ``hide`` are the words of the button that shows the working. ``usual_height`` [px at the base font] is kept free for an answer.
    """

    offerChosen = Signal(object)

    def __init__(
        self, parent: QWidget | None = None, how: str = _HOW, usual_height: int = _USUAL_HEIGHT, hide: str = _HOW_HIDE
    ) -> None:
        super().__init__(parent)
        self._how, self._hide = say(how), say(hide)
        self._view = AnswerView("empty")
        self._body = QWidget(self)
        # A usual answer's height is kept free, so that the ramp below keeps its place while the keeper types.
        self._body.setMinimumHeight(pixels(self.font(), usual_height))
        self._cautions = Sentence(self._body, sign="stop")
        self._figure = Figure(self._body)
        self._status = QLabel(say(STALE), self)
        self._second, self._third, self._set_by = (self._line() for _ in range(3))
        self._bars = LimitBars(self._body)
        self._far = self._line()
        self._remarks = MessageList(self._body, sign="ink")
        self._messages = MessageList(self._body, sign="stop")
        self._work = WorkTable(self._body)
        self._besides = WorkTable(self._body)
        self._besides.setAccessibleName(say(_BESIDES))
        self._parts: tuple[QWidget, ...] = (self._cautions, self._figure, self._second, self._third, self._messages)
        self._parts += (self._set_by, self._bars, self._far, self._remarks, self._work, self._besides)
        self.how, self.besides = self._toggle(self._how), self._toggle(say(_BESIDES))
        self._row = FlowRow(GRID)
        self._lay_out()
        for label, role in (
            (self._second, "second"),
            (self._third, "caption"),
            (self._far, "caption"),
            (self._status, "title"),
        ):
            set_role(label, role)
        self._messages.offerChosen.connect(self.offerChosen)
        self.how.toggled.connect(self._toggle_work)
        self.besides.toggled.connect(self._toggle_besides)
        self.set_stale(False)
        self.render(self._view)

    def render(self, view: AnswerView) -> None:  # type: ignore[override]
        """Show an answer, a refusal, or what is still missing; takes the staleness away."""
        self._view = view
        self.set_stale(False)
        answered = view.state in ("answered", "stop")
        self._figure.set_figure(view.figure if answered else MISSING, view.figure_unit if answered else "", answered)
        self._figure.set_alarm(view.state == "stop")
        self._figure.set_spoken(view.spoken)
        for label, text in ((self._second, view.second), (self._third, view.third)):
            label.setText(text)
            label.setVisible(bool(text))
        self._set_by.setText(view.set_by)
        self._cautions.set_text(" ".join(view.cautions))
        self._cautions.setVisible(bool(view.cautions))
        self._remarks.set_messages(tuple(Message(text) for text in view.remarks))
        self._messages.set_messages(view.messages, sign="stop" if view.state in ("refused", "stop") else "")
        self._show_work()

    def add_action(self, button: QWidget) -> None:
        """Put a button of the sheet below the answer."""
        self._row.addWidget(button)

    def set_stale(self, stale: bool) -> None:
        """Grey everything, and say why, while the answer does not belong to the question any more."""
        stale = stale and self._view.state != "empty"
        for part in self._parts:
            part.setEnabled(not stale)
        why_not = say(STALE) if stale else say("There is nothing to show yet.")
        allow(self.how, not stale and bool(self._view.working), why_not)
        allow(self.besides, not stale and bool(self._view.side_effects), why_not)
        self.besides.setVisible(bool(self._view.side_effects))
        self._status.setText(say(STALE) if stale else "")
        self._status.setVisible(stale)

    @property
    def view(self) -> AnswerView:
        """What is shown."""
        return self._view

    @property
    def is_stale(self) -> bool:
        """Whether the answer is greyed because its question has changed."""
        return bool(self._status.text())

    def _toggle(self, text: str) -> QPushButton:
        button = QPushButton(text, self._body)
        button.setCheckable(True)
        button.setAutoDefault(False)
        set_role(button, "quiet")
        return button

    def _toggle_work(self, shown: bool) -> None:
        self.how.setText(self._hide if shown else self._how)
        self._show_work()

    def _toggle_besides(self, shown: bool) -> None:
        self.besides.setText(say(_BESIDES_HIDE) if shown else say(_BESIDES))
        self._show_work()

    def _show_work(self) -> None:
        """Show the arithmetic below all limits, or only the limits that are near."""
        view, shown = self._view, self.how.isChecked()
        near, far = near_and_far(view.bars, whole=shown)
        self._bars.set_bars(near)
        self._bars.setVisible(bool(near))
        self._far.setText(far)
        self._far.setVisible(bool(far))
        self._work.set_lines(view.working if shown else ())
        self._work.setVisible(shown)
        besides = self.besides.isChecked()
        self._besides.set_lines(view.side_effects if besides else ())
        self._besides.setVisible(besides and bool(view.side_effects))
        # The bar that binds says it itself.
        said = any(bar.binds for bar in view.bars)
        self._set_by.setVisible(bool(view.set_by) and not shown and not said)

    def _line(self) -> QLabel:
        label = QLabel(self._body)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        label.setMinimumHeight(1)
        return label

    def _lay_out(self) -> None:
        body = QVBoxLayout(self._body)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(GRID // 2)
        body.addWidget(self._cautions)
        # Beside the figure there is room for what explains it; where the letters are large it goes below.
        asides = QWidget(self._body)
        column = QVBoxLayout(asides)
        column.setContentsMargins(2 * GRID, 0, 0, 0)
        column.setSpacing(0)
        for widget in (self._status, self.how, self.besides):
            column.addWidget(widget)
        head = FlowRow(GRID)
        head.addWidget(self._figure)
        head.addWidget(asides)
        body.addLayout(head)
        for widget in (self._second, self._third):
            body.addWidget(widget)
        body.addSpacing(GRID // 2)
        parts: tuple[QWidget, ...] = (
            self._messages,
            self._set_by,
            self._bars,
            self._far,
            self._work,
            self._besides,
            self._remarks,
        )
        for part in parts:
            body.addWidget(part)
        body.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GRID)
        column.addWidget(self._body, 1)
        column.addLayout(self._row)
