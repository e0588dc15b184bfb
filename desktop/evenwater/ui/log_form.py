"""What is noted, as fields: a reading, a dose given, a water exchange, a note."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QSettings, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import logbook, words
from evenwater.screens.terms import capitalized
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import MessageList
from evenwater.ui.choice import Choice
from evenwater.ui.form_parts import FieldPort, FormEdit, Step, set_topic
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.text_field import TextField
from evenwater.ui.theme import GRID, set_role
from evenwater.ui.time_field import TimeField
from evenwater.wording import say, say_all

_COLUMNS = 2
# What stays from one entry to the next.
_STAYS = ("parameter", "stock", "kit", "who")


class LogForm(QWidget):
    """The fields; ``wanted`` says that the entry is to be logged, ``dropped`` that a change is given up, ``edited`` that it says something else."""

    wanted = Signal()
    dropped = Signal()
    edited = Signal()

    def __init__(self, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the fields, still empty."""
        super().__init__(parent)
        self._catalogue = catalogue
        self.fields: dict[str, QWidget] = {}
        self._said: dict[str, Typed] = {}
        self._make_fields()
        self.log = QPushButton(say("&Log it"), self)
        self.drop = QPushButton(say("Leave it as it was"), self)
        for button, role in ((self.log, "main"), (self.drop, "large")):
            button.setAutoDefault(False)
            set_role(button, role)
        self.messages = MessageList(self, sign="stop")
        row = QHBoxLayout()
        row.setSpacing(GRID)
        row.addWidget(self.log)
        row.addWidget(self.drop)
        row.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2, 0, GRID, GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self._step)
        layout.addWidget(self.messages)
        layout.addLayout(row)
        # What the sheet has to say about the parameter stands below its form.
        self.below = QVBoxLayout()
        self.below.setContentsMargins(0, 2 * GRID, 0, 0)
        layout.addLayout(self.below)
        layout.addStretch(1)
        self.kind.chosen.connect(self._choose_kind)
        self.log.clicked.connect(self.wanted)
        self.drop.clicked.connect(self.dropped)
        who = str(QSettings().value("who", ""))
        self._said = {"parameter": Typed(next(iter(catalogue.parameters))), "who": Typed(who)}
        self.show_entry(logbook.READING, self._said, changing=False)

    def _make_fields(self) -> None:
        self._step = step = Step(1, say("Note in the log"), self)
        step.more.hide()
        self.kind = Choice(say("What"), self)
        set_topic(self.kind, "kind", "entry")
        self.kind.set_options(say_all(logbook.KINDS))
        self.kind.set_current(logbook.READING)
        step.cells.put(self.kind, _COLUMNS)
        parameter = Choice(say("Measured"), self)
        parameter.set_options(tuple((name, capitalized(name)) for name in self._catalogue.parameters))
        first = next(iter(self._catalogue.parameters.values()))
        self.fields["parameter"] = parameter
        self.fields["value"] = QuantityField(say("Value"), logbook.reading_field(first), words.sentence, self)
        self.fields["stock"] = Choice(say("From the jug"), self)
        self.fields["amount"] = QuantityField(say("Amount given"), logbook.DOSE_GIVEN, words.sentence, self)
        self.fields["litres"] = QuantityField(say("Exchanged"), logbook.EXCHANGED, words.sentence, self)
        self.fields["text"] = TextField(say("Note"), "", self)
        self.fields["at"] = TimeField(say("When"), self)
        self.fields["kit"] = TextField(say("Kit"), "", self)
        self.fields["who"] = TextField(say("Who"), "", self)
        for name, field in self.fields.items():
            step.cells.put(field, _COLUMNS if name in ("text", "stock") else 1)
            port = FieldPort(name, field, "entry")
            port.edited.connect(self._edited)

    def said(self) -> Mapping[str, Typed]:
        """Return what stands in the fields of the kind that is shown."""
        names = logbook.FIELDS[self.kind.current()]
        return {name: self._said[name] for name in names if name in self._said}

    def draft(self) -> tuple[str, Mapping[str, Typed]]:
        """Return the kind that is shown, and everything that stands in the fields of any kind."""
        return self.kind.current(), dict(self._said)

    def set_jugs(self, jugs: tuple[tuple[str, str], ...]) -> None:
        """Offer these jugs."""
        stock = self.fields["stock"]
        assert isinstance(stock, Choice)
        stock.set_options(jugs)

    def show_entry(self, kind: str, said: Mapping[str, Typed], *, changing: bool) -> None:
        """Show an entry to be changed, or one to begin with."""
        self._said = dict(said)
        self.kind.set_current(kind)
        self.kind.setEnabled(not changing)
        self.log.setText(say("Sa&ve the change") if changing else say("&Log it"))
        self.drop.setVisible(changing)
        self.messages.set_messages(())
        self._fill()

    def begin_reading(self, parameter: str) -> None:
        """Begin to note a reading of a parameter."""
        self.show_entry(
            logbook.READING, {**self._said, "parameter": Typed(parameter), "value": Typed("")}, changing=False
        )
        self.focus_first()

    def clear(self) -> None:
        """Empty what is new with every entry; what and who stay."""
        kept = {name: self._said[name] for name in _STAYS if name in self._said}
        QSettings().setValue("who", kept.get("who", Typed("")).text)
        self.show_entry(self.kind.current(), kept, changing=False)

    def focus_first(self) -> None:
        """Put the cursor where the entry begins."""
        name = {logbook.READING: "value", logbook.DOSE: "amount", logbook.EXCHANGE: "litres"}.get(
            self.kind.current(), "text"
        )
        self.fields[name].setFocus()

    def set_messages(self, messages: tuple[Message, ...]) -> None:
        """Show what is wrong beside its field, and the rest below."""
        by_path = {m.path: m for m in reversed(messages) if m.path}
        for name, field in self.fields.items():
            field.set_message(by_path.get(f"log.{name}"))  # type: ignore[attr-defined]
        self.messages.set_messages(tuple(m for m in messages if not m.path))

    def _fill(self) -> None:
        parameter = self._catalogue.parameters.get(self._said.get("parameter", Typed("")).text)
        value = self.fields["value"]
        assert isinstance(value, QuantityField)
        if parameter is not None:
            value.set_field(logbook.reading_field(parameter))
        shown = logbook.FIELDS[self.kind.current()]
        for name, field in self.fields.items():
            typed = self._said.get(name, Typed(""))
            if isinstance(field, Choice):
                field.set_current(typed.text)
            else:
                field.set_typed(typed)  # type: ignore[attr-defined]
            field.set_message(None)  # type: ignore[attr-defined]
            field.setVisible(name in shown)
        self._step.arrange(_COLUMNS)

    def _choose_kind(self, kind: str) -> None:
        self.show_entry(kind, self._said, changing=False)

    def _edited(self, edit: FormEdit) -> None:
        self._said[edit.path] = edit.typed
        self.edited.emit()
        if edit.path == "parameter":
            # Another parameter has other units: a number that stays would be another reading.
            self._said.pop("value", None)
            self._fill()
        field = self.fields[edit.path]
        field.set_message(None)  # type: ignore[attr-defined]
