"""A room with one invented tank, and a strip above it that leads through the main job. Nothing of it comes near the keeper's log."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import walk
from evenwater.session import Document, Paths
from evenwater.ui.choice import Choice
from evenwater.ui.field_shell import FieldShell
from evenwater.ui.plain_text import WordsLabel
from evenwater.ui.reading_order import go_to
from evenwater.ui.room import Room
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import say, say_all


class WalkStrip(QWidget):
    """Says what to do; ``onwards`` and ``left`` say which button was pressed."""

    onwards = Signal()
    left = Signal()

    def __init__(self, parent: QWidget) -> None:
        """Make the strip, still without words."""
        super().__init__(parent)
        set_role(self, "page")
        self.count = QLabel(self)
        set_role(self.count, "caption")
        self.text = WordsLabel("", self)
        # Two lines are kept, so that the sheet below stays where it is.
        self.text.setMinimumHeight(2 * self.text.fontMetrics().lineSpacing())
        self.go = QPushButton(self)
        set_role(self.go, "main")
        self.leave = QPushButton(say("Lea&ve (Escape)"), self)
        set_role(self.leave, "quiet")
        for button in (self.go, self.leave):
            button.setAutoDefault(False)
            button.setMinimumHeight(pixels(self.font(), 4 * GRID))
        # Words that change move nothing.
        self.go.setFixedWidth(max(self._wide(words) for words in (say("&Next"), say("&Do it for me"))))
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.count)
        words.addWidget(self.text)
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        row.setSpacing(2 * GRID)
        row.addLayout(words, 1)
        row.addWidget(self.go)
        row.addWidget(self.leave)
        self.go.clicked.connect(self.onwards)
        self.leave.clicked.connect(self.left)

    def _wide(self, words: str) -> int:
        self.go.setText(words)
        return self.go.sizeHint().width()


class WalkPage(QWidget):
    """Holds the invented room as long as the walk lasts; ``left`` says that the keeper has seen enough."""

    left = Signal()

    def __init__(self, document: Document, paths: Paths, catalogue: Catalogue) -> None:
        """Walk in ``document``, an empty log at ``paths`` that is thrown away afterwards."""
        super().__init__()
        set_role(self, "page")
        self.document, self._paths = document, paths
        self.number = 0
        document.add_record("system", walk.SYSTEM, self)
        self.strip = WalkStrip(self)
        self.room = Room(document, catalogue, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.strip)
        layout.addWidget(self.room, 1)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._soon.timeout.connect(self._look)
        escape = QAction(self)
        escape.setShortcut(QKeySequence(Qt.Key.Key_Escape))
        escape.triggered.connect(self.left)
        self.addAction(escape)
        self.strip.left.connect(self.left)
        self.strip.onwards.connect(self.go_on)

    def start(self) -> None:
        """Show the sheet and the first step."""
        self.room.start()
        form = self.room.sheet.form
        form.committed.connect(self._soon.start)
        form.fields["additive.chemical"].chosen.connect(self._soon.start)  # type: ignore[attr-defined]
        self.room.sheet.buttons.cards.look.connect(self._soon.start)
        self._show()

    def end(self) -> None:
        """Throw the invented room away."""
        self.room.settle()
        self.document.close()
        self._paths.discard()

    @property
    def step(self) -> walk.Step:
        """The step that is shown."""
        return say_all(walk.STEPS[self.number])

    def go_on(self) -> None:
        """Go on after reading, or do what the step asks for in the keeper's place; after the last step leave."""
        if self.step.path:
            path, wanted = self.step.path, self.step.wanted
            if wanted.text == "now":
                field = self.room.sheet.form.fields[path]
                field.now_button.click()  # type: ignore[attr-defined]
            else:
                self.room.sheet.records.edit(path, wanted, self)
                self.document.commit_point()
            self._soon.start()
        elif self.step.kind == walk.LOOK:
            self.room.sheet.buttons.cards.show.click()
        elif self.number + 1 == len(walk.STEPS):
            self.left.emit()
        else:
            self._next()

    def _look(self) -> None:
        """Go on where the step is done; a step that was done before is passed."""
        if self.step.kind == walk.LOOK:
            preview = self.room.sheet.buttons.preview
            if preview is not None and preview.isVisible():
                self._next()
        elif self.step.path and walk.done(self.step, self.room.sheet.records.by_path()):
            self._next()

    def _next(self) -> None:
        self.number = min(self.number + 1, len(walk.STEPS) - 1)
        self._show()
        self._look()

    def _show(self) -> None:
        step, sheet = self.step, self.room.sheet
        field = sheet.form.fields.get(step.path)
        name = field.label.text() if isinstance(field, FieldShell) else ""
        view = sheet.answer.view
        self.strip.count.setText(walk.counted(self.number))
        self.strip.text.setText(
            walk.said(
                step,
                field=name,
                wanted=_entry(field, step.wanted),
                answer=f"{view.figure} {view.figure_unit}",
                button=sheet.buttons.cards.show.text().replace("&", ""),
            )
        )
        self.strip.go.setText(say("&Do it for me") if step.path else say("&Next"))
        if field is None:
            self.strip.go.setFocus()
            return
        for part in sheet.form.steps:
            if part.hides(field):
                part.open(True)
        go_to(field)


def _entry(field: QWidget | None, wanted: Typed) -> str:
    """Return what an entry is called in its list."""
    return dict(field.combo.options()).get(wanted.text, "") if isinstance(field, Choice) else ""
