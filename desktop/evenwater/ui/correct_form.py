"""The four steps of a correction as fields: the water, the change, the additive, the pump."""

# ruff: noqa: N815  (Qt's spelling)

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.quantities import Typed, Water
from evenwater.screens import words
from evenwater.screens.correct import BOTTLE
from evenwater.screens.dose_card import KNOWN_WORDS
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import Sentence
from evenwater.ui.choice import Choice
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.text_field import TextField
from evenwater.ui.theme import GRID, set_role
from evenwater.ui.time_field import TimeField

COLUMNS = 3
_LABEL_PATHS = ("additive.label.dose", "additive.label.water", "additive.label.raises")
_RECIPE_PATHS = ("additive.dissolved", "additive.made_up_to", "additive.mixed_on")


@dataclass(frozen=True)
class FormEdit:
    """One edit by the keeper: the field's path and what was typed."""

    path: str
    typed: Typed


class FieldPort(QObject):
    """Passes one field's signals on with its path, so that no closure is needed."""

    edited = Signal(object)

    def __init__(self, path: str, field: QWidget) -> None:
        """Listen to ``field``, which owns this."""
        super().__init__(field)
        self._path = path
        if isinstance(field, Choice):
            field.chosen.connect(self._chosen)
        else:
            field.edited.connect(self._edited)  # type: ignore[attr-defined]

    def _edited(self, typed: Typed) -> None:
        self.edited.emit(FormEdit(self._path, typed))

    def _chosen(self, choice: str) -> None:
        self.edited.emit(FormEdit(self._path, Typed(choice)))


class Step(QWidget):
    """One step: a numbered title, its fields in three columns, and further ones behind "More"."""

    def __init__(self, number: int, title: str, parent: QWidget) -> None:
        """Make an empty step."""
        super().__init__(parent)
        heading = QLabel(f"{number}\u2002{title}", self)
        set_role(heading, "title")
        self.more = QPushButton("More", self)
        self.more.setCheckable(True)
        self.more.setAccessibleName(f"More about {title.lower()}")
        self.more.setAutoDefault(False)
        set_role(self.more, "quiet")
        self.bar = QHBoxLayout()
        self.bar.setSpacing(GRID)
        self.bar.addWidget(heading)
        self.bar.addStretch(1)
        self.bar.addWidget(self.more)
        self.grid = QGridLayout()
        self.grid.setHorizontalSpacing(GRID)
        self.grid.setVerticalSpacing(GRID // 2)
        self._extra = QWidget(self)
        self.extra = QGridLayout(self._extra)
        self.extra.setContentsMargins(0, 0, 0, 0)
        self.extra.setHorizontalSpacing(GRID)
        for grid in (self.grid, self.extra):
            for column in range(COLUMNS):
                grid.setColumnStretch(column, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(GRID // 2)
        layout.addLayout(self.bar)
        layout.addLayout(self.grid)
        layout.addWidget(self._extra)
        self._extra.hide()
        self.more.toggled.connect(self.open)

    def open(self, shown: bool) -> None:
        """Show or hide the further fields."""
        self.more.setChecked(shown)
        self.more.setText("Less" if shown else "More")
        self._extra.setVisible(shown)


class CorrectForm(QWidget):
    """All fields by their path; ``edited`` carries a ``FormEdit``, ``committed`` ends an undo step."""

    edited = Signal(object)
    committed = Signal()

    def __init__(self, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the fields, still empty."""
        super().__init__(parent)
        self._catalogue = catalogue
        self.fields: dict[str, QWidget] = {}
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

    # Building

    def _quantity(self, label: str, spec: fields.Field) -> QuantityField:
        field = QuantityField(label, spec, words.sentence, self)
        self.fields[spec.path] = field
        return field

    def _choice(self, path: str, label: str) -> Choice:
        field = Choice(label, self)
        self.fields[path] = field
        return field

    def _words(self, path: str, label: str, hint: str = "") -> TextField:
        field = TextField(label, hint, self)
        self.fields[path] = field
        return field

    def _water(self) -> Step:
        step = Step(1, "The water", self)
        parameter = next(iter(self._catalogue.parameters.values()))
        raised = self._choice("change.parameter", "Raise")
        raised.set_options(tuple((name, name.capitalize()) for name in self._catalogue.parameters))
        self.fields["change.measured_at"] = when = TimeField("When", self)
        known = self._choice("system.volume_known", "How the volume is known")
        known.set_options(tuple((name, text.capitalize()) for name, text in KNOWN_WORDS.items()))
        step.grid.addWidget(raised, 0, 0)
        step.grid.addWidget(self._quantity("Measured", fields.concentration("change.measured", parameter)), 0, 1)
        step.grid.addWidget(when, 0, 2)
        step.grid.addWidget(self._quantity("Net volume", fields.NET_VOLUME), 1, 0)
        step.grid.addWidget(known, 1, 1)
        step.grid.addWidget(self._quantity("Within", fields.VOLUME_UNCERTAINTY), 1, 2)
        step.extra.addWidget(self._quantity("Salinity", fields.SALINITY), 0, 0)
        step.extra.addWidget(self._quantity("Temperature", fields.TEMPERATURE), 0, 1)
        step.extra.addWidget(self._quantity("pH", fields.PH), 0, 2)
        step.extra.addWidget(self._words("system.name", "Name of the system"), 1, 0, 1, COLUMNS)
        return step

    def _change(self) -> Step:
        step = Step(2, "The change", self)
        parameter = next(iter(self._catalogue.parameters.values()))
        step.grid.addWidget(self._quantity("Raise to", fields.concentration("change.target", parameter)), 0, 0)
        step.grid.addWidget(self._quantity("At most", fields.rise("change.fastest_rise", parameter)), 0, 1)
        step.grid.addWidget(self._quantity("Used by the tank", fields.rise("change.daily_use", parameter)), 0, 2)
        hint = "Needed only to go beyond the recommended rise; printed on the card."
        step.extra.addWidget(self._words("change.reason", "Reason for a faster rise", hint), 0, 0, 1, COLUMNS)
        return step

    def _additive(self) -> Step:
        step = Step(3, "The additive", self)
        self.new_stock = self._button("New &batch", step)
        self.remove_stock = self._button("Remove batch", step)
        step.grid.addWidget(self._choice("stock", "Batch on the shelf"), 0, 0)
        step.grid.addWidget(self._choice("additive.chemical", "What is in it"), 0, 1, 1, 2)
        self._cautions = Sentence(step, sign="stop")
        step.grid.addWidget(self._cautions, 1, 0, 1, COLUMNS)
        step.grid.addWidget(self._quantity("Dissolved", fields.DISSOLVED), 2, 0)
        step.grid.addWidget(self._quantity("Made up to", fields.MADE_UP_TO), 2, 1)
        step.grid.addWidget(self._words("additive.mixed_on", "Mixed on"), 2, 2)
        parameter = next(iter(self._catalogue.parameters.values()))
        step.grid.addWidget(self._quantity("By its label, a dose of", fields.LABEL_DOSE), 2, 0)
        step.grid.addWidget(self._quantity("in water of", fields.LABEL_WATER), 2, 1)
        step.grid.addWidget(self._quantity("raises by", fields.label_raises(parameter)), 2, 2)
        step.extra.addWidget(self._words("stock.name", "Name of the batch"), 0, 0, 1, 2)
        step.extra.addWidget(self._quantity("Purity", fields.PURITY), 0, 2)
        return step

    def _pump(self) -> Step:
        step = Step(4, "The pump", self)
        self.new_pump = self._button("New p&ump", step)
        self.remove_pump = self._button("Remove pump", step)
        step.grid.addWidget(self._choice("pump", "Pump"), 0, 0)
        step.grid.addWidget(self._quantity("Flow", fields.FLOW), 0, 1)
        step.grid.addWidget(self._quantity("Doses a day", fields.DOSES_PER_DAY), 0, 2)
        step.extra.addWidget(self._quantity("Smallest dose", fields.SMALLEST_DOSE), 0, 0)
        step.extra.addWidget(self._quantity("Step", fields.STEP), 0, 1)
        step.extra.addWidget(self._quantity("Runs at most", fields.LARGEST_SHARE), 0, 2)
        step.extra.addWidget(self._words("pump.name", "Name of the pump"), 1, 0, 1, COLUMNS)
        return step

    def _button(self, text: str, step: Step) -> QPushButton:
        button = QPushButton(text, step)
        button.setAutoDefault(False)
        set_role(button, "quiet")
        step.bar.insertWidget(step.bar.count() - 1, button)
        return button

    # Showing

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
            assert isinstance(field, QuantityField)  # noqa: S101  (narrowing)
            field.set_field(spec)
        fitting = self._catalogue.raising(parameter.name)
        names = [c.name for c in fitting] + [c.name for c in self._catalogue.chemicals.values() if c not in fitting]
        chemical = self.fields["additive.chemical"]
        assert isinstance(chemical, Choice)  # noqa: S101  (narrowing)
        chemical.set_options(
            tuple((name, self._catalogue.chemicals[name].tall_man) for name in names) + ((BOTTLE, "A bottle, by its label"),)
        )

    def set_values(self, values: Mapping[str, Typed], bottle: bool) -> None:
        """Show values by path; fields that are not named are emptied."""
        for path, field in self.fields.items():
            typed = values.get(path, Typed(""))
            if isinstance(field, Choice):
                field.set_current(typed.text)
            else:
                field.set_typed(typed)  # type: ignore[attr-defined]
        for path in _RECIPE_PATHS:
            self.fields[path].setVisible(not bottle)
        for path in _LABEL_PATHS:
            self.fields[path].setVisible(bottle)

    def set_hints(self, hints: Mapping[str, str]) -> None:
        """Show the quiet lines below the fields."""
        for path, text in hints.items():
            self.fields[path].set_help(text)  # type: ignore[attr-defined]

    def set_cautions(self, cautions: tuple[str, ...]) -> None:
        """Show the handling lines of the chemical, between its name and its numbers."""
        self._cautions.set_text(" ".join(cautions))
        self._cautions.setVisible(bool(cautions))

    def set_water(self, water: Water) -> None:
        """Set the water that figures per kilogram are counted in."""
        for field in self.fields.values():
            if isinstance(field, QuantityField):
                field.set_water(water)

    def set_messages(self, messages: Mapping[str, Message]) -> None:
        """Show refusals beside their fields and clear the others; hidden fields come to light."""
        for path, field in self.fields.items():
            field.set_message(messages.get(path))  # type: ignore[attr-defined]
        for step in self.steps:
            if any(not self.fields[p].isVisibleTo(self) and step.isAncestorOf(self.fields[p]) for p in messages if p in self.fields):
                step.open(True)
