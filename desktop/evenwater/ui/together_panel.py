"""What every sheet of a system shows at its foot: all plans together, a line for each value; on demand chart, budget and card."""

from __future__ import annotations

from PySide6.QtCore import QPoint, Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QScrollArea, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.screens.local_zone import LocalZone
from evenwater.screens.terms import term
from evenwater.screens.together_views import TogetherView, ValueLine
from evenwater.screens.views import Message
from evenwater.session import Document
from evenwater.ui.answer_parts import MessageList
from evenwater.ui.choice import Combo
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.flow import FlowRow
from evenwater.ui.learning import Learning
from evenwater.ui.plain_text import FittedLabel
from evenwater.ui.plans import Plans
from evenwater.ui.table import Table
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.ui.together import QUIET_MS, shared
from evenwater.ui.together_actions import TogetherActions
from evenwater.ui.together_chart import TogetherChart
from evenwater.wording import marked, say, say_all

_UNFOLD, _FOLD = marked("All plans together"), marked("Fold all plans away")
_HEADS = (marked("Together"), marked("now"), marked("in a week"), marked("in a month"), marked("then"))
_BUDGET = (marked("What moves it"), marked("per day"), "")
_CHART_HEIGHT = 250


class TogetherPanel(QWidget):
    """Shows all plans of one system together; ``told`` carries a sentence for the status line.

    ``stops`` are what must not go on; a sheet puts them where they are seen first, before its own figures. With ``brief`` the panel is one
    line until it is unfolded, for a sheet without room, and counts the correction that stands there.
    """

    told = Signal(str)

    def __init__(
        self,
        document: Document,
        catalogue: Catalogue,
        learning: Learning,
        plans: Plans,
        parent: QWidget | None = None,
        *,
        brief: bool = False,
    ) -> None:
        """Make the panel, still without a system."""
        super().__init__(parent)
        self.together = shared(document, catalogue, learning, plans)
        self.view = TogetherView("empty")
        self._system, self._brief = "", brief
        self.turn = QPushButton(say(_UNFOLD), self)
        self.turn.setAutoDefault(False)
        self.turn.setCheckable(True)
        set_role(self.turn, "quiet")
        self.summary = FittedLabel(self)
        set_role(self.summary, "caption")
        self.stops = MessageList(self, sign="stop")
        self.lines = Table(self, say_all(_HEADS), (4, 2, 2, 2, 4))
        self.page = QWidget(self)
        self.choice = Combo(self.page)
        self.choice.set_spoken(say("Value to look at"))
        self.chart = TogetherChart(self.page, zone=LocalZone())
        self.budget = Table(self.page, say_all(_BUDGET), (5, 3, 4))
        self.remarks = MessageList(self.page, sign="ink")
        self.left_out = MessageList(self.page, sign="")
        self.card = TogetherActions(Dialogs(self), self.page)
        self._soon, self._reveal = QTimer(self), QTimer(self)
        for timer in (self._soon, self._reveal):
            timer.setSingleShot(True)
            timer.setInterval(0)
        if brief:
            # The sheet's own answer comes first.
            self._soon.setInterval(QUIET_MS)
        self._lay_out()
        self._soon.timeout.connect(self.refresh)
        self.turn.toggled.connect(self._turn)
        self.choice.picked.connect(self._choose)
        self._reveal.timeout.connect(self._bring_into_sight)
        self.card.told.connect(self.told)
        self.together.stale.connect(self._stale)
        self.together.changed.connect(self._again)

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.setSpacing(GRID)
        head.addWidget(self.summary, 1)
        head.addWidget(self.turn, 0, Qt.AlignmentFlag.AlignRight)
        self.chart.setMinimumHeight(pixels(self.font(), _CHART_HEIGHT))
        page = QVBoxLayout(self.page)
        page.setContentsMargins(0, 0, 0, 0)
        page.setSpacing(GRID)
        page.addWidget(self.choice, 0, Qt.AlignmentFlag.AlignLeft)
        for part in (self.chart, self.budget, self.remarks, self.left_out):
            page.addWidget(part)
        buttons = FlowRow(GRID)
        for button in self.card.buttons:
            buttons.addWidget(button)
        page.addLayout(buttons)
        self.page.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GRID // 2)
        column.addWidget(self.stops)
        column.addLayout(head)
        column.addWidget(self.lines)
        column.addWidget(self.page)

    def show_system(self, system_id: str) -> None:
        """Show another system."""
        if system_id != self._system:
            self._system = system_id
            # Nothing of another system may stand there.
            self._show(TogetherView("empty"))
        self._again()

    def refresh(self) -> None:
        """Show everything of the system together, as it is now."""
        self._soon.stop()
        # A window that opens is painted first; then everybody is asked to look again.
        if self._system and self.isVisible() and not self.together.resting():
            self._show(self.together.of(self._system, standing=self._brief).view)

    def showEvent(self, event: QShowEvent) -> None:
        """Look at what has changed while nobody saw it."""
        super().showEvent(event)
        self._again()

    def waiting(self) -> bool:
        """Return whether what is shown may be old."""
        return self._soon.isActive() or self.together.resting() or self.together.waiting()

    def _again(self) -> None:
        # While somebody types it waits; the last words stand until then.
        if self.isVisible() and not self.together.waiting():
            self._soon.start()

    def settle(self) -> None:
        """Close the window of the card."""
        self.card.close()

    def _stale(self) -> None:
        """Let no card be made of what is old; folded away there is none."""
        if self.turn.isChecked():
            self.card.suspend()

    def _turn(self, open_: bool) -> None:
        self.turn.setText(say(_FOLD) if open_ else say(_UNFOLD))
        self._show(self.view)
        if open_:
            self._again()
            self._reveal.start()
        else:
            self.card.suspend()

    def _bring_into_sight(self) -> None:
        """Scroll so far that what was unfolded is seen from its first line on."""
        above: QWidget | None = self.parentWidget()
        while above is not None and not isinstance(above, QScrollArea):
            above = above.parentWidget()
        page = above.widget() if isinstance(above, QScrollArea) else None
        if isinstance(above, QScrollArea) and page is not None:
            above.verticalScrollBar().setValue(self.mapTo(page, QPoint(0, 0)).y())

    def _show(self, view: TogetherView) -> None:
        self.view = view
        open_ = self.turn.isChecked()
        self.summary.set_wordings(() if self.lines_shown() else view.summary)
        self.stops.set_messages(tuple(Message(text) for text in view.stops))
        self.lines.set_rows(tuple(map(_row, view.lines)) if self.lines_shown() else ())
        self.page.setVisible(open_)
        if open_:
            self.choice.set_options(tuple((line.parameter, line.parameter) for line in view.lines))
            self.choice.setVisible(bool(view.lines))
            self._show_value()
            self.remarks.set_messages(tuple(Message(text) for text in view.remarks))
            self.left_out.set_messages(tuple(map(Message, (*view.left_out, *filter(None, (view.still,))))))
            self.card.set_page(self.together.page(self._system) if self._system and view.lines else None)

    def lines_shown(self) -> bool:
        """Return whether a line for each value is shown."""
        return bool(self.view.lines) and (not self._brief or self.turn.isChecked())

    def _show_value(self) -> None:
        lines = {line.parameter: line for line in self.view.lines}
        if self.choice.current_id() not in lines and lines:
            stopped = [name for name, line in lines.items() if line.stop]
            self.choice.set_current((stopped or list(lines))[0])
        chosen: ValueLine | None = lines.get(self.choice.current_id())
        self.chart.render(None if chosen is None else chosen.course)
        rows = () if chosen is None else (*chosen.budget, *chosen.limits)
        self.budget.set_rows(tuple((row.what, row.per_day, row.when) for row in rows))

    def _choose(self, _name: str) -> None:
        self._show_value()


def _row(line: ValueLine) -> tuple[str, ...]:
    name = f"{line.parameter}, {line.unit}"
    return (say("Stop: {name}", name=term(name)) if line.stop else name, *line.figures, line.then)
