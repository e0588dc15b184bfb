"""Noting the level of a jug, and a refill: before a refill is noted it is asked whether the line is primed (H23)."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from PySide6.QtCore import QSettings, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens import jug_levels, words
from evenwater.screens.views import Message
from evenwater.ui.flow import FlowRow
from evenwater.ui.form_parts import Cells, FieldPort, FormEdit
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.text_field import TextField
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.ui.time_field import TimeField
from evenwater.wording import marked, say

_NEW_BATCH = marked(
    "Mixed anew? Put the new batch in the jug on the Stocks sheet as well: cards made for another strength become void there."
)
_ASKED = marked("Is the line primed? Run the pump until liquid stands at the outlet.")
# From this width on [px at the base font] all fields of a level stand beside each other.
_WIDE = 560


@dataclass(frozen=True)
class Draft:
    """What stands in the form and is not noted yet; ``refill`` while a refill is being noted."""

    said: Mapping[str, Typed] = field(default_factory=dict)
    refill: bool = False


class LevelForm(QWidget):
    """The fields; ``level_wanted`` says that a level is to be noted, ``refill_wanted`` that a refill is, with whether its line is primed."""

    level_wanted = Signal()
    refill_wanted = Signal(bool)

    def __init__(self, parent: QWidget) -> None:
        """Make the fields, still empty."""
        super().__init__(parent)
        self._refill = False
        self._said: dict[str, Typed] = {}
        self.fields: dict[str, QuantityField | TimeField | TextField] = {
            "level": QuantityField(say("Level now"), jug_levels.LEVEL, words.sentence, self),
            "before": QuantityField(say("Level before the refill"), jug_levels.BEFORE, words.sentence, self),
            "at": TimeField(say("When"), self),
            "who": TextField(say("Who"), "", self),
        }
        self.fields["at"].set_help(say("now, unless you say when"))
        self._cells = Cells()
        for name in ("before", "level", "at", "who"):
            self._cells.put(self.fields[name])
            FieldPort(name, self.fields[name], "level").edited.connect(self._edited)
        self.note, self.refill = (
            self._button(say("&Note this level"), "main"),
            self._button(say("Jug &refilled"), "large"),
        )
        self.asked = QLabel(say(_ASKED), self)
        self.asked.setWordWrap(True)
        set_role(self.asked, "title")
        self._takes = QLabel(self)
        self._takes.setTextFormat(Qt.TextFormat.PlainText)
        self._takes.setWordWrap(True)
        self.primed = self._button(say("Liquid at the &outlet: note the refill"), "main")
        self.unprimed = self._button(say("Not primed &yet: note it so"), "large")
        self.back = self._button(say("&Go back"), "large")
        buttons = FlowRow(GRID)
        for button in (self.note, self.refill, self.primed, self.unprimed, self.back):
            buttons.addWidget(button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2, 0, 0, 0)
        layout.setSpacing(GRID)
        layout.addLayout(self._cells)
        layout.addWidget(self.asked)
        layout.addWidget(self._takes)
        layout.addLayout(buttons)
        self.note.clicked.connect(self.level_wanted)
        self.refill.clicked.connect(self._begin_refill)
        self.primed.clicked.connect(self._with_primed)
        self.unprimed.clicked.connect(self._without)
        self.back.clicked.connect(self._go_back)
        self.show_draft(Draft())

    def _button(self, text: str, role: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        set_role(button, role)
        return button

    def draft(self) -> Draft:
        """Return what stands in the form."""
        return Draft(dict(self._said), self._refill)

    def show_draft(self, draft: Draft) -> None:
        """Show what was typed for a jug before; who notes it stays the same from one to the next."""
        self._said = dict(draft.said)
        self._said.setdefault("who", Typed(str(QSettings().value("who", ""))))
        for name, each in self.fields.items():
            each.set_typed(self._said.get(name, Typed("")))
        self.set_messages(())
        self._show_refill(draft.refill)

    def said(self) -> Mapping[str, Typed]:
        """Return what stands in the fields that are shown."""
        hidden = () if self._refill else ("before",)
        return {name: typed for name, typed in self._said.items() if name not in hidden}

    def clear(self) -> None:
        """Empty what is new with every level."""
        who = self._said.get("who", Typed(""))
        QSettings().setValue("who", who.text)
        self.show_draft(Draft({"who": who}))

    def set_messages(self, messages: tuple[Message, ...]) -> None:
        """Show what is wrong beside its field."""
        by_path = {message.path: message for message in reversed(messages)}
        for name, each in self.fields.items():
            each.set_message(by_path.get(f"level.{name}"))

    def set_priming(self, said: tuple[str, ...]) -> None:
        """Say what priming takes."""
        self._takes.setText("\n".join((*said, say(_NEW_BATCH))))
        self._takes.setVisible(self._refill)

    def focus_first(self) -> None:
        """Put the cursor where a level begins."""
        self.fields["before" if self._refill else "level"].setFocus()

    def _edited(self, edit: FormEdit) -> None:
        self._said[edit.path] = edit.typed
        self.fields[edit.path].set_message(None)

    def _show_refill(self, refill: bool) -> None:
        """Ask about the line in place of noting a level, or the other way round."""
        self._refill = refill
        self.fields["level"].label.setText(say("Level after the refill") if refill else say("Level now"))
        for each in (self.fields["before"], self.asked, self.primed, self.unprimed, self.back):
            each.setVisible(refill)
        self._takes.setVisible(refill)
        for button in (self.note, self.refill):
            button.setVisible(not refill)
        self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Place the fields beside each other as far as there is room."""
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        wide = self.width() >= pixels(self.font(), _WIDE)
        # A refill has four fields: two and two, level beside level.
        self._cells.arrange(3 if wide and not self._refill else 2)

    def _begin_refill(self) -> None:
        self._show_refill(True)
        self.focus_first()

    def _go_back(self) -> None:
        self._show_refill(False)
        self.focus_first()

    def _with_primed(self) -> None:
        self.refill_wanted.emit(True)

    def _without(self) -> None:
        self.refill_wanted.emit(False)
