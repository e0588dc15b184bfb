"""Parts of a jug's page: what its levels say of the pump, what it would do if it ran in, and how it stands."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.screens.jug_danger import CheckRow, RunInRow
from evenwater.screens.jug_delivery import CheckView
from evenwater.screens.jugs_sheet import JugView
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import MessageList, Sentence, Sign
from evenwater.ui.choice import Combo
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import marked, say, say_all

_UNSAID = "unsaid"
_ANSWERS = ((_UNSAID, marked("Not looked at")), ("yes", marked("Yes")), ("no", marked("No")))
_WORDS = {"yes": marked("Yes"), "no": marked("No"), "": marked("Not known")}


def words_label(parent: QWidget, role: str = "") -> QLabel:
    """Return a label for sentences: plain, wrapped, as high as its words need."""
    label = QLabel(parent)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    label.setMinimumHeight(1)
    set_role(label, role)
    return label


def show_words(label: QLabel, text: str) -> None:
    """Show words in a label, or take it away while there are none."""
    label.setText(text)
    label.setVisible(bool(text))


class CheckPanel(QWidget):
    """The jug check; the flow it proposes stands in a frame of its own, and only its button writes it into the pump."""

    def __init__(self, parent: QWidget) -> None:
        """Make the parts, still empty."""
        super().__init__(parent)
        title = QLabel(say("What the levels say of the pump"), self)
        set_role(title, "title")
        self._told, self._cause, self._possible = (words_label(self, role) for role in ("", "second", "muted"))
        self._first = words_label(self)
        self._first.setText(say("Look at this, in this order:"))
        self._steps = words_label(self)
        self._notes = MessageList(self, sign="ink")
        self._apart = QFrame(self)
        self._apart.setFrameShape(QFrame.Shape.StyledPanel)
        self._flow = words_label(self._apart)
        self.use = QPushButton(say("&Use this flow"), self._apart)
        self.use.setAutoDefault(False)
        apart = QVBoxLayout(self._apart)
        apart.setContentsMargins(GRID, GRID, GRID, GRID)
        apart.setSpacing(GRID)
        apart.addWidget(self._flow)
        row = QHBoxLayout()
        row.addWidget(self.use)
        row.addStretch(1)
        apart.addLayout(row)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(GRID // 2)
        for part in (
            title, self._cause, self._told, self._possible, self._first, self._steps, self._notes, self._apart,
        ):  # fmt: skip
            layout.addWidget(part)

    def show_check(self, view: CheckView) -> None:
        """Show a check."""
        show_words(self._told, "\n".join(view.told))
        show_words(self._cause, view.cause)
        show_words(self._possible, view.possible)
        show_words(self._steps, "\n".join(f"{number}. {step}" for number, step in enumerate(view.steps, start=1)))
        self._first.setVisible(bool(view.steps))
        self._notes.set_messages(tuple(Message(note) for note in view.notes))
        self._flow.setText("" if view.flow is None else view.flow.words)
        self._apart.setVisible(view.flow is not None)


class RunInPanel(QWidget):
    """What every value would come to if the whole jug ran in at once, and how large the jug may be (H25)."""

    def __init__(self, parent: QWidget) -> None:
        """Make the parts, still empty."""
        super().__init__(parent)
        title = QLabel(say("If the whole jug ran in at once"), self)
        set_role(title, "title")
        self._none, self._advice = words_label(self, "muted"), words_label(self, "caption")
        self.rows: list[Sentence] = []
        self._column = QVBoxLayout()
        self._column.setSpacing(GRID // 2)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(GRID // 2)
        layout.addWidget(title)
        layout.addWidget(self._none)
        layout.addLayout(self._column)
        layout.addWidget(self._advice)

    def show_rows(self, rows: tuple[RunInRow, ...], none: str, advice: str) -> None:
        """Show these rows, those that would harm with a sign."""
        while len(self.rows) < len(rows):
            sentence = Sentence(self, "")
            self._column.addWidget(sentence)
            self.rows.append(sentence)
        for number, sentence in enumerate(self.rows):
            sentence.setVisible(number < len(rows))
            if number < len(rows):
                row = rows[number]
                sentence.sign.set_kind("stop" if row.harms else "")
                size = f" \u2013 {row.size}" if row.size else ""
                sentence.set_text(f"{row.system}, {row.what}{size}.")
        show_words(self._none, none)
        show_words(self._advice, advice)


class _Line(QWidget):
    """One line of the checklist; ``answered`` carries its code and "yes", "no" or an empty text."""

    answered = Signal(str, str)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._code = ""
        self.sign = Sign(self, "")
        self.label = words_label(self)
        self.combo = Combo(self)
        self.combo.set_options(say_all(_ANSWERS))
        self.label.setBuddy(self.combo)
        self.known = QLabel(self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GRID)
        row.addWidget(self.sign, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(self.label, 1)
        row.addWidget(self.known)
        row.addWidget(self.combo)
        self.combo.picked.connect(self._picked)

    def show_line(self, line: CheckRow) -> None:
        """Show a line; what follows from figures is only told."""
        self._code = line.code
        self.label.setText(line.words)
        self.combo.setAccessibleName(line.words)
        self.combo.setVisible(line.ticked)
        self.combo.set_current(line.state or _UNSAID)
        self.known.setVisible(not line.ticked)
        self.known.setText(say_all(_WORDS[line.state]))
        self.sign.set_kind("stop" if line.state == "no" else "")

    def _picked(self, answer: str) -> None:
        self.answered.emit(self._code, "" if answer == _UNSAID else answer)


class ChecklistPanel(QWidget):
    """What is looked at before a jug is connected (H25); ``answered`` carries a code and "yes", "no" or an empty text."""

    answered = Signal(str, str)

    def __init__(self, parent: QWidget) -> None:
        """Make the parts, still empty."""
        super().__init__(parent)
        title = QLabel(say("Before the jug is connected"), self)
        set_role(title, "title")
        self.lines: list[_Line] = []
        self.warnings, self.unchecked = MessageList(self, sign="stop"), MessageList(self, sign="ink")
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(GRID // 2)
        self._column.addWidget(title)
        self._column.addWidget(self.warnings)
        self._column.addWidget(self.unchecked)

    def show_lines(self, view: JugView) -> None:
        """Show the checklist of a jug with what is dangerous about it."""
        while len(self.lines) < len(view.checklist):
            line = _Line(self)
            line.answered.connect(self.answered)
            self._column.addWidget(line)
            self.lines.append(line)
        for line, row in zip(self.lines, view.checklist, strict=True):
            line.show_line(row)
        self.warnings.set_messages(tuple(Message(text) for text in view.warnings))
        self.unchecked.set_messages(tuple(Message(text) for text in view.unchecked))
