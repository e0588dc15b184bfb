"""The four steps of a correction as fields: the water, the change, the additive, the pump."""

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
from evenwater.screens.entry import Field
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


class Cells(QGridLayout):
    """Fields placed in order, so many columns wide; a wide field takes what it asks for."""

    def __init__(self) -> None:
        """Make an empty grid."""
        super().__init__()
        self.setContentsMargins(0, 0, 0, 0)
        self.setHorizontalSpacing(GRID)
        self.setVerticalSpacing(GRID // 2)
        self._cells: list[tuple[QWidget, int]] = []

    def put(self, widget: QWidget, span: int = 1) -> QWidget:
        """Add a field that is ``span`` columns wide."""
        self._cells.append((widget, span))
        return widget

    def arrange(self, columns: int) -> None:
        """Place the fields anew; those that are hidden by their own choice take no room."""
        row = column = 0
        for widget, _ in self._cells:
            self.removeWidget(widget)
        for widget, span in self._cells:
            if widget.isHidden():
                continue
            wide = min(span, columns)
            if column + wide > columns:
                row, column = row + 1, 0
            self.addWidget(widget, row, column, 1, wide)
            column += wide
        for number in range(COLUMNS):
            self.setColumnStretch(number, 1 if number < columns else 0)


class Step(QWidget):
    """One step: a numbered title, its fields in columns, and further ones behind "More"."""

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
        self.cells, self.extra = Cells(), Cells()
        self._extra = QWidget(self)
        self._extra.setLayout(self.extra)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(GRID // 2)
        layout.addLayout(self.bar)
        layout.addLayout(self.cells)
        layout.addWidget(self._extra)
        self._extra.hide()
        self.more.toggled.connect(self.open)

    def open(self, shown: bool) -> None:
        """Show or hide the further fields."""
        self.more.setChecked(shown)
        self.more.setText("Less" if shown else "More")
        self._extra.setVisible(shown)

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        self.cells.arrange(columns)
        self.extra.arrange(columns)

    def hides(self, field: QWidget) -> bool:
        """Return whether the field stands behind a closed "More"."""
        return self._extra.isHidden() and self._extra.isAncestorOf(field)


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

    def _quantity(self, label: str, spec: Field) -> QuantityField:
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
        step.cells.put(raised)
        step.cells.put(self._quantity("Measured", fields.concentration("change.measured", parameter)))
        step.cells.put(when)
        step.extra.put(self._quantity("Net volume", fields.NET_VOLUME))
        step.extra.put(known)
        step.extra.put(self._quantity("Within", fields.VOLUME_UNCERTAINTY))
        step.extra.put(self._quantity("Salinity", fields.SALINITY))
        step.extra.put(self._quantity("Temperature", fields.TEMPERATURE))
        step.extra.put(self._quantity("pH", fields.PH))
        step.extra.put(self._words("system.name", "Name of the system"), COLUMNS)
        return step

    def _change(self) -> Step:
        step = Step(2, "The change", self)
        parameter = next(iter(self._catalogue.parameters.values()))
        step.cells.put(self._quantity("Raise to", fields.concentration("change.target", parameter)))
        step.cells.put(self._quantity("At most", fields.rise("change.fastest_rise", parameter)))
        step.cells.put(self._quantity("Used by the tank", fields.rise("change.daily_use", parameter)))
        hint = "Needed only to go beyond the recommended rise; printed on the card."
        step.extra.put(self._words("change.reason", "Reason for a faster rise", hint), COLUMNS)
        return step

    def _additive(self) -> Step:
        step = Step(3, "The additive", self)
        parameter = next(iter(self._catalogue.parameters.values()))
        self.new_stock = self._button("New &batch", step)
        self.remove_stock = self._button("Remove batch", step)
        step.cells.put(self._choice("stock", "Batch on the shelf"))
        step.cells.put(self._choice("additive.chemical", "What is in it"), 2)
        self._cautions = Sentence(step, sign="stop")
        step.cells.put(self._cautions, COLUMNS)
        step.cells.put(self._quantity("Dissolved", fields.DISSOLVED))
        step.cells.put(self._quantity("Made up to", fields.MADE_UP_TO))
        step.cells.put(self._words("additive.mixed_on", "Mixed on"))
        step.cells.put(self._quantity("By its label, a dose of", fields.LABEL_DOSE))
        step.cells.put(self._quantity("in water of", fields.LABEL_WATER))
        step.cells.put(self._quantity("raises by", fields.label_raises(parameter)))
        step.extra.put(self._words("stock.name", "Name of the batch"), 2)
        step.extra.put(self._quantity("Purity", fields.PURITY))
        return step

    def _pump(self) -> Step:
        step = Step(4, "The pump", self)
        self.new_pump = self._button("New p&ump", step)
        self.remove_pump = self._button("Remove pump", step)
        step.cells.put(self._choice("pump", "Pump"))
        step.cells.put(self._quantity("Flow", fields.FLOW))
        step.cells.put(self._quantity("Doses a day", fields.DOSES_PER_DAY))
        step.extra.put(self._quantity("Smallest dose", fields.SMALLEST_DOSE))
        step.extra.put(self._quantity("Step", fields.STEP))
        step.extra.put(self._quantity("Runs at most", fields.LARGEST_SHARE))
        step.extra.put(self._words("pump.name", "Name of the pump"), COLUMNS)
        return step

    def _button(self, text: str, step: Step) -> QPushButton:
        button = QPushButton(text, step)
        button.setAutoDefault(False)
        set_role(button, "quiet")
        step.bar.insertWidget(step.bar.count() - 1, button)
        return button

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
        fitting = self._catalogue.raising(parameter.name)
        names = [c.name for c in fitting] + [c.name for c in self._catalogue.chemicals.values() if c not in fitting]
        chemical = self.fields["additive.chemical"]
        assert isinstance(chemical, Choice)
        chemical.set_options(
            (*((n, self._catalogue.chemicals[n].tall_man) for n in names), (BOTTLE, "A bottle, by its label"))
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

    def set_messages(self, messages: Mapping[str, Message]) -> None:
        """Show refusals beside their fields and clear the others; hidden fields come to light."""
        for path, field in self.fields.items():
            field.set_message(messages.get(path))  # type: ignore[attr-defined]
        for step in self.steps:
            if any(step.hides(self.fields[path]) for path in messages if path in self.fields):
                step.open(True)
