"""When something was measured: typed in plain words, kept as one instant, its age beside it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QPushButton, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens.local_zone import present
from evenwater.screens.views import Message, Offer
from evenwater.screens.when import AskWhen, age_words, choice_words, read_when, when_words, written
from evenwater.ui.field_shell import FieldShell
from evenwater.ui.line_entry import LineEntry
from evenwater.ui.theme import set_role
from evenwater.wording import say

_MINUTE_MS = 60_000


class TimeField(FieldShell):
    """Takes an instant.

    ``edited`` carries a ``Typed`` whose text is the instant in ISO 8601 with its offset, or the
    text as typed while it cannot be taken; ``committed`` says that the change is complete.
    """

    edited = Signal(object)
    committed = Signal()

    def __init__(self, label: str, parent: QWidget | None = None, now: Callable[[], datetime] = present) -> None:
        self.line: LineEntry | None = None
        super().__init__(label, parent)
        self._now = now
        self._typed = self._before = Typed("")
        self._changed = False
        self.line = LineEntry(self.frame)
        self.line.setAccessibleName(say("{label}, date and time", label=label))
        self.line.setPlaceholderText(say("today 08:00"))
        self.now_button = QPushButton(say("Now"), self.frame)
        self.now_button.setAutoDefault(False)
        self.now_button.setAccessibleName(say("{label}: now", label=label))
        set_role(self.now_button, "quiet")
        self.frame.row.addWidget(self.line, 1)
        self.frame.row.addWidget(self.now_button)
        self.label.setBuddy(self.line)
        self.setFocusProxy(self.line)
        self.line.textEdited.connect(self._text_edited)
        self.line.entered.connect(self._commit)
        self.line.left.connect(self._leave)
        self.line.escaped.connect(self._take_back)
        self.line.arrived.connect(self._arrive)
        self.now_button.clicked.connect(self._take_now)
        self.offerTaken.connect(self._take_offer)
        self._clock = QTimer(self)
        self._clock.setInterval(_MINUTE_MS)
        self._clock.timeout.connect(self.refresh)
        self._clock.start()
        self._judge()

    def set_typed(self, typed: Typed) -> None:
        """Show an instant (ISO 8601), or text that could not be taken. The same again changes nothing."""
        if typed != self._typed:
            self._put(typed)

    def typed(self) -> Typed:
        """Return the instant in ISO 8601, or the text as typed while it cannot be taken."""
        return self._typed

    def instant(self) -> datetime | None:
        """Return the instant, or None while there is none."""
        found = read_when(self._typed.text, self._now())
        return found if isinstance(found, datetime) else None

    def refresh(self) -> None:
        """Show the age again; "today" becomes "yesterday" at midnight. What is being typed is left alone."""
        if not self._changed:
            self._show_text()
            self._judge()

    def spoken_for(self) -> QWidget:
        """Return the line of text: it carries name and description."""
        return self.line or self

    def _text_edited(self, text: str) -> None:
        self._typed = Typed(text)
        self._changed = True
        self.set_help("")
        self._say("typing", None)
        self.edited.emit(self._typed)

    def _arrive(self) -> None:
        self._before = self._typed

    def _leave(self) -> None:
        if self._changed:
            self._commit()

    def _commit(self) -> None:
        if self._changed:
            self._changed = False
            found = read_when(self._typed.text, self._now())
            if isinstance(found, datetime):
                self._typed = Typed(found.isoformat())
                self._show_text()
                self.edited.emit(self._typed)
        self._judge()
        self._before = self._typed
        self.committed.emit()

    def _take_back(self) -> None:
        if self._typed != self._before:
            self._put(self._before)
            self.edited.emit(self._typed)

    def _take_now(self) -> None:
        self._settle(self._now().replace(second=0, microsecond=0))

    def _take_offer(self, offer: Offer) -> None:
        self._settle(datetime.fromisoformat(offer.text))
        assert self.line is not None
        self.line.setFocus()

    def _settle(self, instant: datetime) -> None:
        self._put(Typed(instant.isoformat()))
        self.edited.emit(self._typed)
        self.committed.emit()

    def _put(self, typed: Typed) -> None:
        self._typed = typed
        self._changed = False
        self._show_text()
        self._judge()

    def _show_text(self) -> None:
        assert self.line is not None
        instant = self._stored()
        text = written(instant, self._now()) if instant else self._typed.text
        if text != self.line.text():
            self.line.setText(text)

    def _stored(self) -> datetime | None:
        """Return the instant when the text is one in ISO 8601 with its offset."""
        try:
            instant = datetime.fromisoformat(self._typed.text)
        except ValueError:
            return None
        return instant if instant.tzinfo else None

    def _judge(self) -> None:
        now = self._now()
        found = read_when(self._typed.text, now)
        self.set_help(age_words(found, now) if isinstance(found, datetime) else "")
        if found is None:
            self._say("empty", None)
        elif isinstance(found, datetime):
            self._say("ok", None)
        elif isinstance(found, AskWhen):
            offers = tuple(Offer(choice_words(t, now), t.isoformat(), "") for t in found.readings)
            self._say("ask", Message(when_words(found.reason), offers=offers))
        else:
            self._say("error", Message(when_words(found)))
