"""The Foods sheet: the foods of a system, one of them whole, what all of them bring, and where nitrate and phosphate settle."""

from __future__ import annotations

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QStringListModel, Qt, QTimer
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QLabel,
    QListView,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from evenwater.engine.catalogue import Catalogue
from evenwater.screens import correct, foods_sheet
from evenwater.screens.foods_sheet import FoodsView
from evenwater.screens.local_zone import present
from evenwater.screens.views import AnswerView, Message
from evenwater.session import Change, Document, RecordsChange
from evenwater.ui.after_paint import AfterPaint, OldMark
from evenwater.ui.answer_panel import AnswerPanel, WorkTable
from evenwater.ui.answer_parts import MessageList
from evenwater.ui.flow import FlowRow
from evenwater.ui.foods_chart import FoodsChart
from evenwater.ui.foods_form import FoodsForm
from evenwater.ui.foods_records import FoodsRecords
from evenwater.ui.form_column import Column, FormColumn
from evenwater.ui.form_parts import FormEdit
from evenwater.ui.learning import Learning
from evenwater.ui.plain_text import allow
from evenwater.ui.plans import Plans
from evenwater.ui.sheet_header import SheetHeader
from evenwater.ui.table import Table
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.ui.together_panel import TogetherPanel
from evenwater.wording import marked, say, say_all

NONE_YET = marked("No food yet. Press Add a food.")
LIST, LINES, BRINGS, COURSE = (
    marked("Foods of this system"),
    marked("Jug and line"),
    marked("What all of them bring"),
    marked("Where food takes it, without doses and use"),
)
_ANSWER_HEIGHT = 150
_MOST_ROWS = 4
# So that a last day that begins at midnight is said in time.
_REFRESH_MS = 60_000


class FoodList(QListView):
    """Lists foods, as high as its rows at the width that it is given; from the fifth on it scrolls."""

    def __init__(self, parent: QWidget) -> None:
        """Make the list, still empty."""
        super().__init__(parent)
        self.names = QStringListModel(self)
        self.setModel(self.names)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setWordWrap(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say(LIST))
        set_role(self, "rows")

    def show_rows(self, words: list[str]) -> None:
        """Show these rows."""
        if words != self.names.stringList():
            self.names.setStringList(words)
            # A bar would take of the width, so that a row breaks that did not break before.
            bar = (
                Qt.ScrollBarPolicy.ScrollBarAlwaysOff
                if len(words) <= _MOST_ROWS
                else Qt.ScrollBarPolicy.ScrollBarAlwaysOn
            )
            self.setVerticalScrollBarPolicy(bar)
            self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Break the rows anew for another width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._fit()

    def _fit(self) -> None:
        self.doItemsLayout()
        heights = [max(0, self.sizeHintForRow(row)) for row in range(self.names.rowCount())]
        self.setFixedHeight(max(sum(heights[:_MOST_ROWS]), pixels(self.font(), 4 * GRID)) + 4)


class FoodsSheet(QWidget):
    """Shows the foods of one system."""

    def __init__(
        self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans, parent: QWidget | None = None
    ) -> None:
        """Make the sheet, still without a system."""
        super().__init__(parent)
        set_role(self, "page")
        self._document, self._catalogue = document, catalogue
        self.records = FoodsRecords(document)
        self._view = FoodsView(AnswerView("empty"))
        self._rows: tuple[str, ...] = ()
        self.header = SheetHeader(document, self)
        self.form = FoodsForm(catalogue, self)
        self.answer = AnswerPanel(self, usual_height=_ANSWER_HEIGHT)
        self.add, self.remove = self._button(say("Add a foo&d")), self._button(say("Re&move this food"))
        self.list = FoodList(self)
        self.brings = Table(self, foods_sheet.table_heads(catalogue), (4, 2, 3, 3, 3))
        self.chart = FoodsChart(self)
        self.course = Table(self, say_all(FoodsView.heads), (4, 2, 2, 2, 2, 2))
        self.lines = WorkTable(self)
        self.notes = MessageList(self, sign="ink")
        self.plans_together = TogetherPanel(document, catalogue, learning, plans, self)
        self._titles = {name: self._title(name) for name in (say(LINES), say(BRINGS), say(COURSE))}
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._minute = QTimer(self)
        self._minute.setInterval(_REFRESH_MS)
        self._minute.start()
        self._lay_out()
        self._after = AfterPaint(self, OldMark(self._side, self))
        self._connect()

    def _button(self, text: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        set_role(button, "quiet")
        return button

    def _title(self, text: str) -> QLabel:
        title = QLabel(text, self)
        set_role(title, "title")
        return title

    def _lay_out(self) -> None:
        for part, name in ((self.lines, say(LINES)), (self.brings, say(BRINGS)), (self.course, say(COURSE))):
            part.setAccessibleName(name)
        # No wider than the form, however much its words would like to have.
        head = FlowRow(GRID, modest=True)
        title = self._title(say(LIST))
        title.setBuddy(self.list)
        for widget in (title, self.add, self.remove):
            head.addWidget(widget)
        self._scroll = FormColumn(self.form, self)
        left = QVBoxLayout()
        left.setSpacing(GRID)
        left.addLayout(head)
        left.addWidget(self.list)
        left.addWidget(self._scroll, 1)
        side = QWidget()
        set_role(side, "page")
        right = QVBoxLayout(side)
        right.setContentsMargins(0, 0, 0, GRID)
        right.setSpacing(GRID)
        right.addWidget(self.plans_together.stops)
        right.addWidget(self.answer)
        for name, part in ((say(BRINGS), self.brings), (say(COURSE), self.course), (say(LINES), self.lines)):
            right.addWidget(self._titles[name])
            if part is self.course:
                right.addWidget(self.chart)
            right.addWidget(part)
        right.addWidget(self.notes)
        right.addWidget(self.plans_together)
        right.addStretch(1)
        self._side = Column(side, self)
        middle = QHBoxLayout()
        middle.setSpacing(2 * GRID)
        middle.addLayout(left)
        middle.addWidget(self._side, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self.header)
        layout.addLayout(middle, 1)

    def _connect(self) -> None:
        document = self._document
        self.form.edited.connect(self._edited)
        self.form.committed.connect(self._committed)
        self._after.due.connect(self.recompute)
        self.add.clicked.connect(self._add)
        self.remove.clicked.connect(self._remove)
        self.list.selectionModel().currentChanged.connect(self._went)
        self._soon.timeout.connect(self.recompute)
        self._minute.timeout.connect(self._again)
        self.plans_together.told.connect(self.header.tell)
        self.header.travelled.connect(self._travelled)
        document.changed.connect(self._changed)
        document.recordsChanged.connect(self._records_changed)
        document.log.logChanged.connect(self._again)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give the form three columns where there is room for them beside the answer, else two."""
        super().resizeEvent(event)
        self._scroll.share(self.width())

    # Showing

    def show_system(self, system_id: str) -> None:
        """Show the foods of another system."""
        if system_id != self.records.system:
            self.records.system = system_id
            self.records.choose("")
            for area in (self._scroll, self._side):
                area.verticalScrollBar().setValue(0)
        self.header.show_system(system_id)
        self.plans_together.show_system(system_id)
        self._fill()

    def show_food(self, food: str) -> None:
        """Show another food of the system."""
        self.records.choose(food)
        self._fill()

    def _fill(self) -> None:
        """Show what the records hold, without touching what is already there."""
        food = self.records.food
        self.records.forget()
        allow(self.add, bool(self.records.system), say("There is no system yet."))
        allow(self.remove, bool(food), say("There is no food yet."))
        self.form.setEnabled(bool(food))
        self.form.set_pumps(self.records.pumps())
        self.form.set_values(self.records.by_path())
        self.recompute()

    @property
    def view(self) -> FoodsView:
        """What is shown; an answer that is still waited for is reckoned first."""
        self._after.finish()
        return self._view

    def waiting(self) -> bool:
        """Return whether what is shown is the answer to what stood in the fields before."""
        return self._soon.isActive() or self._after.waiting()

    def settle(self) -> None:
        """End what is being typed."""
        self._committed()
        self.plans_together.settle()

    # Reckoning

    def recompute(self) -> None:
        """Reckon the foods and show everything that follows from them."""
        self._soon.stop()
        self._after.done()
        self.form.fit(self.records.by_path())
        system, food, today = self.records.system, self.records.food, present().date()
        self.header.show_volume(correct.volume_words(self._document.values(system)) if system else "")
        room = self.records.room()
        self._view = view = foods_sheet.view(room, food, self._catalogue, today)
        self.answer.render(view.answer)
        self.form.set_messages({m.path: m for m in reversed(view.answer.messages) if m.path and m.code != "missing"})
        self.brings.set_rows(view.rows)
        self.chart.set_panels(view.chart)
        self.course.set_rows(view.course)
        self.lines.set_lines(view.lines)
        self.notes.set_messages(tuple(Message(text) for text in view.notes))
        for name, shown in ((say(BRINGS), view.rows), (say(COURSE), view.course), (say(LINES), view.lines)):
            self._titles[name].setVisible(bool(shown))
        self._list_foods([foods_sheet.row(values, today) for _, values in room.foods], food)
        self._scroll.widen()
        self._side.settle()

    def _list_foods(self, words: list[str], food: str) -> None:
        self._rows = ()
        self.list.show_rows(words or [say(NONE_YET)])
        self._rows = self.records.foods()
        if food in self._rows:
            flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
            self.list.selectionModel().setCurrentIndex(self.list.names.index(self._rows.index(food)), flag)

    # Editing

    def _edited(self, edit: FormEdit) -> None:
        self.records.edit(edit.path, edit.typed, self.form)
        self._after.ask(self.form.fields[edit.path])

    def _committed(self) -> None:
        self._document.commit_point()
        self._after.finish()

    def _changed(self, change: Change) -> None:
        if change.initiator is not self.form and self.isVisible():
            self._fill()

    def _records_changed(self, change: RecordsChange) -> None:
        if change.kinds & {"food", "pump", "system", "water", "correction"} and self.isVisible():
            self._fill()

    def _travelled(self, record_id: str) -> None:
        """Go to the food that undo or redo has changed or brought back."""
        if record_id in self.records.foods():
            self.show_food(record_id)

    def _again(self, *_: object) -> None:
        self.records.forget()
        if self.isVisible():
            self._soon.start()

    def _went(self, current: QModelIndex, _before: QModelIndex) -> None:
        if 0 <= current.row() < len(self._rows) and self._rows[current.row()] != self.records.food:
            self._document.commit_point()
            self.show_food(self._rows[current.row()])

    def _add(self) -> None:
        self._document.commit_point()
        self.records.add(self)
        self._fill()
        self.form.fields["food.name"].setFocus()

    def _remove(self) -> None:
        self._document.commit_point()
        self.records.remove(self)
        self._fill()
