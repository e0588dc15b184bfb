"""The finder: a slip of paper with one field; typing leaves of everything that can be done what has these words."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, QPoint, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractItemView, QApplication, QLabel, QListView, QVBoxLayout, QWidget

from evenwater.screens.finder import Doing, find
from evenwater.ui.announce import Announcer
from evenwater.ui.field_shell import FieldFrame
from evenwater.ui.line_entry import LineEntry
from evenwater.ui.paper_style import draw_frame
from evenwater.ui.reading_order import LaidOver, step
from evenwater.ui.theme import GRID, pixels, set_role, tokens_of
from evenwater.wording import say, say_many

_WIDTH, _HEIGHT = 560, 420
_PAGE = 8
_Index = QModelIndex | QPersistentModelIndex


class _Doings(QAbstractListModel):
    """What was found; what cannot be done now stands in grey, with the reason."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.found: tuple[Doing, ...] = ()

    def show(self, found: tuple[Doing, ...]) -> None:
        """List these."""
        self.beginResetModel()
        self.found = found
        self.endResetModel()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008  (Qt's signature)
        """Return how many were found."""
        return 0 if parent.isValid() else len(self.found)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Return the line of a row."""
        if not index.isValid():
            return None
        doing = self.found[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return doing.line()
        if role == Qt.ItemDataRole.ForegroundRole and doing.why_not:
            view = self.parent()
            assert isinstance(view, QWidget)
            return QColor(tokens_of(view.palette()).muted)
        return None


class _Line(LineEntry):
    """A line whose arrows move through a list; ``moved`` carries by how many rows."""

    moved = Signal(int)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Take the keys of the list."""
        keys = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1, Qt.Key.Key_PageDown: _PAGE, Qt.Key.Key_PageUp: -_PAGE}
        away = keys.get(Qt.Key(event.key()))
        if away is None:
            super().keyPressEvent(event)
        else:
            self.moved.emit(away)


class FinderPanel(LaidOver):
    """``wanted`` carries the ``Doing`` that was chosen, when the panel has closed and the focus is back where it was."""

    wanted = Signal(object)

    def __init__(self, parent: QWidget) -> None:
        """Make the panel, hidden, over ``parent``."""
        super().__init__(parent)
        self._all: tuple[Doing, ...] = ()
        self._before: QWidget | None = None
        label = QLabel(say("Find an action, a sheet, a system, a jug, a pump or a word of the trade"), self)
        set_role(label, "caption")
        frame = FieldFrame(self)
        self.line = _Line(frame)
        self.line.moved.connect(self._move)
        self.line.setAccessibleName(label.text())
        frame.row.addWidget(self.line)
        label.setBuddy(self.line)
        self.list = QListView(self)
        self._doings = _Doings(self.list)
        self.list.setModel(self._doings)
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.list.setWordWrap(True)
        self.list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setAccessibleName(say("What was found"))
        # The line keeps the focus, so that typing goes on; the arrows move the list all the same.
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        set_role(self.list, "rows")
        self._count = QLabel(self)
        set_role(self._count, "caption")
        column = QVBoxLayout(self)
        column.setContentsMargins(GRID, GRID, GRID, GRID)
        column.setSpacing(GRID // 2)
        for part in (label, frame, self.list, self._count):
            column.addWidget(part)
        column.setStretchFactor(self.list, 1)
        self.frame = frame
        self.line.textEdited.connect(self._search)
        self.line.entered.connect(self._take)
        self.line.escaped.connect(self.close_up)
        self.list.clicked.connect(self._clicked)
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._focus_moved)
        self.hide()

    def open(self, doings: Sequence[Doing], below: QWidget) -> None:
        """Open below a button, with nothing typed, over everything that can be done."""
        self._all = tuple(doings)
        now = QApplication.focusWidget()
        if not self.isVisible():
            self._before = now
        self.line.clear()
        self._lay(below)
        self._search("")
        self.show()
        self.raise_()
        self.line.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def close_up(self) -> None:
        """Close, and give the focus back to what had it."""
        now = QApplication.focusWidget()
        held = now is not None and self.isAncestorOf(now)
        self.hide()
        Announcer.of(self).say_after_quiet(self, "")
        if held and self._before is not None and self._before.isVisible():
            self._before.setFocus(Qt.FocusReason.OtherFocusReason)

    def found(self) -> tuple[Doing, ...]:
        """Return what is listed."""
        return self._doings.found

    def focusNextPrevChild(self, next: bool) -> bool:  # noqa: A002  (Qt's own name)
        """Stay on the slip: Escape leaves it."""
        return step(self, forward=next)

    def _move(self, away: int) -> None:
        """Move through the list; what is chosen is read, since the focus stays in the line."""
        self._stand(min(max(self.list.currentIndex().row() + away, 0), len(self.found()) - 1))
        doing = self._current()
        if doing is not None:
            Announcer.of(self).say(doing.line())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the paper."""
        tokens = tokens_of(self.palette())
        with QPainter(self) as painter:
            draw_frame(painter, self.rect(), QColor(tokens.ink), QColor(tokens.paper), 1)

    def _lay(self, below: QWidget) -> None:
        """Hang the slip below the button, where it has room."""
        host = self.parentWidget()
        assert host is not None
        width = min(pixels(self.font(), _WIDTH), host.width() - 2 * GRID)
        top = below.mapTo(host, QPoint(0, below.height())).y() + GRID // 2
        right = below.mapTo(host, QPoint(below.width(), 0)).x()
        height = min(pixels(self.font(), _HEIGHT), host.height() - top - GRID)
        self.setGeometry(max(GRID, min(right, host.width() - GRID) - width), top, width, height)

    def _search(self, typed: str) -> None:
        self._doings.show(find(self._all, typed))
        self._stand(0)
        count = len(self.found())
        words = say_many("{n} found", "{n} found", count) if count else say("Nothing has these words.")
        self._count.setText(words)
        doing = self._current()
        Announcer.of(self).say_after_quiet(self, words if doing is None else f"{words}. {doing.line()}")

    def _stand(self, row: int) -> None:
        if 0 <= row < len(self.found()):
            self.list.setCurrentIndex(self._doings.index(row))

    def _current(self) -> Doing | None:
        row = self.list.currentIndex().row()
        return self.found()[row] if 0 <= row < len(self.found()) else None

    def _clicked(self, _index: QModelIndex) -> None:
        self._take()

    def _take(self) -> None:
        doing = self._current()
        if doing is None:
            return
        if doing.why_not:
            Announcer.of(self).say(doing.why_not, urgent=True)
            return
        self.close_up()
        self.wanted.emit(doing)

    def _focus_moved(self, _before: QWidget | None, now: QWidget | None) -> None:
        """Close when somebody goes on elsewhere in the window."""
        inside = now is not None and (now is self or self.isAncestorOf(now))
        self.frame.active = inside
        self.frame.update()
        if now is not None and not inside and self.isVisible():
            self.hide()
