"""The four steps of a correction as fields: the water, the change, the additive, the pump."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.quantities import Typed, Water
from evenwater.screens import words
from evenwater.screens.dose_card import KNOWN_WORDS
from evenwater.screens.entry import Field
from evenwater.screens.shelf import BOTTLE, LIMEWATER, MIX, contents_options
from evenwater.screens.terms import capitalized
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import Sentence
from evenwater.ui.choice import Choice
from evenwater.ui.form_parts import COLUMNS, FieldPort, Step
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.reading_order import go_to
from evenwater.ui.text_field import TextField
from evenwater.ui.theme import GRID
from evenwater.ui.time_field import TimeField
from evenwater.wording import say, say_all

_LABEL_PATHS = ("additive.label.dose", "additive.label.water", "additive.label.raises")
_RECIPE_PATHS = ("additive.made_up_to", "additive.mixed_on")


class CorrectForm(QWidget):
    """All fields by their path; ``edited`` carries a ``FormEdit``, ``committed`` ends an undo step."""

    edited = Signal(object)
    committed = Signal()

    def __init__(self, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the fields, still empty."""
        super().__init__(parent)
        self._catalogue = catalogue
        self._columns = COLUMNS
        self.fields: dict[str, QWidget] = {}
        self._missing: frozenset[str] = frozenset()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2, 0, GRID, GRID)
        layout.setSpacing(GRID + GRID // 2)
        self.steps = [self._water(), self._change(), self._additive(), self._pump()]
        for step in self.steps:
            layout.addWidget(step)
        layout.addStretch(1)
        for path, field in self.fields.items():
            port = FieldPort(path, field)
            port.edited.connect(self.edited)
            if not isinstance(field, Choice):
                field.committed.connect(self.committed)  # type: ignore[attr-defined]
                field.line.entered.connect(self._go_on)  # type: ignore[attr-defined]
        self.fields["additive.chemical"].chosen.connect(self._go_on)  # type: ignore[attr-defined]

    # Building

    def _quantity(self, label: str, spec: Field, place: QWidget) -> QuantityField:
        field = QuantityField(label, spec, words.sentence, place)
        self.fields[spec.path] = field
        return field

    def _choice(self, path: str, label: str, place: QWidget) -> Choice:
        field = Choice(label, place)
        self.fields[path] = field
        return field

    def _words(self, path: str, label: str, place: QWidget, hint: str = "") -> TextField:
        field = TextField(label, hint, place)
        self.fields[path] = field
        return field

    def _water(self) -> Step:
        step = Step(1, say("The water"), self)
        parameter = next(iter(self._catalogue.parameters.values()))
        raised = self._choice("change.parameter", say("Raise"), step)
        raised.set_options(tuple((name, capitalized(name)) for name in self._catalogue.parameters))
        self.fields["change.measured_at"] = when = TimeField(say("When"), step)
        known = self._choice("system.volume_known", say("How the volume is known"), step.aside)
        known.set_options(tuple((name, capitalized(text)) for name, text in say_all(KNOWN_WORDS).items()))
        step.cells.put(raised)
        step.cells.put(self._quantity(say("Measured"), fields.concentration("change.measured", parameter), step))
        step.cells.put(when)
        step.extra.put(self._quantity(say("Net volume"), fields.NET_VOLUME, step.aside))
        step.extra.put(known)
        step.extra.put(self._quantity(say("Within"), fields.VOLUME_UNCERTAINTY, step.aside))
        step.extra.put(self._quantity(say("Salinity"), fields.SALINITY, step.aside))
        step.extra.put(self._quantity(say("Temperature"), fields.TEMPERATURE, step.aside))
        step.extra.put(self._quantity("pH", fields.PH, step.aside))
        calcium = self._catalogue.parameters["calcium"]
        step.extra.put(self._quantity(say("Alkalinity now"), fields.ALKALINITY, step.aside))
        step.extra.put(self._quantity(say("Calcium now"), fields.calcium_now(calcium), step.aside))
        step.extra.put(self._quantity(say("Evaporates"), fields.EVAPORATION, step.aside))
        step.extra.put(self._words("system.name", say("Name of the system"), step.aside), COLUMNS)
        return step

    def _change(self) -> Step:
        step = Step(2, say("The change"), self)
        parameter = next(iter(self._catalogue.parameters.values()))
        step.cells.put(self._quantity(say("Raise to"), fields.concentration("change.target", parameter), step))
        step.cells.put(self._quantity(say("At most"), fields.rise("change.fastest_rise", parameter), step))
        step.cells.put(self._quantity(say("Used by the tank"), fields.rise("change.daily_use", parameter), step))
        hint = say("Needed only to go beyond the recommended rise; printed on the card.")
        step.extra.put(self._words("change.reason", say("Reason for a faster rise"), step.aside, hint), COLUMNS)
        return step

    def _additive(self) -> Step:
        step = Step(3, say("The additive"), self)
        parameter = next(iter(self._catalogue.parameters.values()))
        self.new_stock = step.button(say("New &jug"))
        self.remove_stock = step.button(say("Remove jug"))
        step.cells.put(self._choice("stock", say("Jug on the shelf"), step))
        step.cells.put(self._choice("additive.chemical", say("What is in it"), step), 2)
        self._cautions = Sentence(step, sign="stop")
        step.cells.put(self._cautions, COLUMNS)
        step.cells.put(self._quantity(say("Dissolved"), fields.DISSOLVED, step))
        also = replace(fields.DISSOLVED, path="additive.also.dissolved")
        step.cells.put(self._quantity(say("And of the second"), also, step))
        step.cells.put(self._quantity(say("Made up to"), fields.MADE_UP_TO, step))
        step.cells.put(self._words("additive.mixed_on", say("Mixed on"), step))
        step.cells.put(self._quantity(say("By its label, a dose of"), fields.LABEL_DOSE, step))
        step.cells.put(self._quantity(say("in water of"), fields.LABEL_WATER, step))
        step.cells.put(self._quantity(say("raises by"), fields.label_raises(parameter), step))
        step.extra.put(self._words("stock.name", say("Name of the jug"), step.aside))
        step.extra.put(self._quantity(say("Purity"), fields.PURITY, step.aside))
        step.extra.put(self._quantity(say("Coolest it gets"), fields.BATCH_TEMPERATURE, step.aside))
        return step

    def _pump(self) -> Step:
        step = Step(4, say("The pump"), self)
        self.new_pump = step.button(say("New p&ump"))
        self.remove_pump = step.button(say("Remove pump"))
        step.cells.put(self._choice("pump", say("Pump"), step))
        step.cells.put(self._quantity(say("Flow"), fields.FLOW, step))
        step.cells.put(self._quantity(say("Doses a day"), fields.DOSES_PER_DAY, step))
        step.extra.put(self._quantity(say("Smallest dose"), fields.SMALLEST_DOSE, step.aside))
        step.extra.put(self._quantity(say("Step"), fields.STEP, step.aside))
        step.extra.put(self._quantity(say("Runs at most"), fields.LARGEST_SHARE, step.aside))
        step.extra.put(self._words("pump.name", say("Name of the pump"), step.aside), COLUMNS)
        return step

    # Showing

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        self._columns = columns
        for step in self.steps:
            step.arrange(columns)

    def set_parameter(self, parameter: Parameter) -> None:
        """Give the fields of the change the units of another parameter."""
        for path, spec in (
            ("change.measured", fields.concentration("change.measured", parameter)),
            ("change.target", fields.concentration("change.target", parameter)),
            ("change.daily_use", fields.rise("change.daily_use", parameter)),
            ("change.fastest_rise", fields.rise("change.fastest_rise", parameter)),
            ("additive.label.raises", fields.label_raises(parameter)),
        ):
            field = self.fields[path]
            assert isinstance(field, QuantityField)
            field.set_field(spec)
        chemical = self.fields["additive.chemical"]
        assert isinstance(chemical, Choice)
        chemical.set_options(contents_options(self._catalogue, parameter.name))

    def set_values(self, values: Mapping[str, Typed], contents: str) -> None:
        """Show values by path; fields that are not named are emptied. ``contents`` is the choice of what is in it."""
        for path, field in self.fields.items():
            typed = values.get(path, Typed(""))
            if isinstance(field, Choice):
                field.set_current(typed.text)
            else:
                field.set_typed(typed)  # type: ignore[attr-defined]
        for path in _RECIPE_PATHS:
            self.fields[path].setVisible(contents != BOTTLE)
        for path in _LABEL_PATHS:
            self.fields[path].setVisible(contents == BOTTLE)
        self.fields["additive.dissolved"].setVisible(contents not in (BOTTLE, LIMEWATER))
        self.fields["additive.also.dissolved"].setVisible(contents == MIX)
        self.arrange(self._columns)

    def set_hints(self, hints: Mapping[str, str]) -> None:
        """Show the quiet lines below the fields."""
        for path, text in hints.items():
            self.fields[path].set_help(text)  # type: ignore[attr-defined]

    def set_assumed(self, assumed: Mapping[str, str]) -> None:
        """Show in the empty fields what they stand for."""
        for path, text in assumed.items():
            field = self.fields[path]
            assert isinstance(field, QuantityField)
            field.set_derived(text)

    def set_cautions(self, cautions: tuple[str, ...]) -> None:
        """Show the handling lines of the chemical, between its name and its numbers."""
        self._cautions.set_text(" ".join(cautions))
        if self._cautions.isHidden() == bool(cautions):
            self._cautions.setVisible(bool(cautions))
            self.arrange(self._columns)

    def set_water(self, water: Water) -> None:
        """Set the water that figures per kilogram are counted in."""
        for field in self.fields.values():
            if isinstance(field, QuantityField):
                field.set_water(water)

    def set_missing(self, paths: frozenset[str]) -> None:
        """Take over which fields must still be filled in; Enter goes on to the next of them."""
        self._missing = paths

    def _go_on(self) -> None:
        """Go on to the next field that must be filled in: a first question is then type, Enter, type, Enter. Nothing is pressed (H29)."""
        order = list(self.fields)
        here = next((n for n, path in enumerate(order) if self.fields[path].isAncestorOf(self.sender())), -1)  # type: ignore[arg-type]
        if here < 0:
            here = order.index("additive.chemical")
        for path in (*order[here + 1 :], *order[:here]):
            if path in self._missing:
                field = self.fields[path]
                for step in self.steps:
                    if step.hides(field):
                        step.open(True)
                go_to(field)
                return

    def set_messages(self, messages: Mapping[str, Message]) -> None:
        """Show refusals beside their fields and clear the others; hidden fields come to light."""
        for path, field in self.fields.items():
            field.set_message(messages.get(path))  # type: ignore[attr-defined]
        for step in self.steps:
            if any(step.hides(self.fields[path]) for path in messages if path in self.fields):
                step.open(True)
