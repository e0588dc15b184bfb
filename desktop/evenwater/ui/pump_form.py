"""A pump as fields: what it gives and how it is set, one calibration, its head and its line."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens import pump_fields, words
from evenwater.screens.pump_fields import LIFE_HOURS
from evenwater.screens.pump_words import CAUTIONS, MOTORS
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import Sentence
from evenwater.ui.calibration_form import CalibrationStep
from evenwater.ui.choice import Choice
from evenwater.ui.form_parts import COLUMNS, FieldPort, Step
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.text_field import TextField
from evenwater.ui.theme import GRID
from evenwater.wording import say, say_all


class PumpForm(QWidget):
    """All fields by their path; ``edited`` carries a ``FormEdit``, ``committed`` ends an undo step."""

    edited = Signal(object)
    committed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        """Make the fields, still empty."""
        super().__init__(parent)
        self._columns = COLUMNS
        self.fields: dict[str, QWidget] = {}
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2, 0, GRID, GRID)
        layout.setSpacing(GRID + GRID // 2)
        # Before any number: whoever works at a pump works beside water (H25).
        self.cautions = Sentence(self, sign="stop")
        self.cautions.set_text(" ".join(say_all(CAUTIONS)))
        layout.addWidget(self.cautions)
        # The fields are made in the order in which Tab goes through them.
        pump = self._pump()
        self.calibration = CalibrationStep(2, self)
        self.fields |= self.calibration.fields
        self.steps = [pump, self.calibration, self._head()]
        for step in self.steps:
            layout.addWidget(step)
        layout.addStretch(1)
        for path, field in self.fields.items():
            port = FieldPort(path, field)
            port.edited.connect(self.edited)
            if not isinstance(field, Choice):
                field.committed.connect(self.committed)  # type: ignore[attr-defined]

    def _quantity(self, name: str, label: str) -> QuantityField:
        path = f"pump.{name}"
        field = QuantityField(label, pump_fields.PUMP_FIELDS[path], words.sentence, self)
        self.fields[path] = field
        return field

    def _words(self, name: str, label: str, hint: str = "") -> TextField:
        field = TextField(label, hint, self)
        self.fields[f"pump.{name}"] = field
        return field

    def _pump(self) -> Step:
        step = Step(1, say("The pump"), self)
        motor = Choice(say("Motor"), self)
        motor.set_options(say_all(MOTORS))
        self.fields["pump.motor"] = motor
        step.cells.put(self._words("name", say("Name of the pump")), 2)
        step.cells.put(self._quantity("flow", say("Flow in use")))
        step.extra.put(motor)
        step.extra.put(self._quantity("doses_per_day", say("Doses a day")))
        step.extra.put(self._quantity("smallest_dose", say("Smallest dose")))
        step.extra.put(self._quantity("step", say("Step")))
        step.extra.put(self._quantity("largest_share", say("Runs at most")))
        return step

    def _head(self) -> Step:
        step = Step(3, say("Head and line"), self)
        step.cells.put(self._quantity("outlet_height", say("Outlet above the water")))
        step.cells.put(self._quantity("line_bore", say("Line, inside")))
        step.cells.put(self._quantity("line_length", say("Line, length")))
        step.cells.put(self._words("head_fitted", say("Head fitted on"), say("like 2026-11-25")))
        ran = self._quantity("head_hours", say("Hours it has run"))
        ran.set_help(say("by now, where it counts"))
        step.cells.put(ran)
        life = self._quantity("head_life", say("Hours a head lasts"))
        life.set_derived(f"{LIFE_HOURS:.0f}")
        step.cells.put(life)
        step.extra.put(self._words("tubing", say("Tubing")), COLUMNS)
        return step

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        self._columns = columns
        for step in self.steps:
            step.arrange(columns)

    def set_values(self, values: Mapping[str, Typed]) -> None:
        """Show values by path; fields that are not named are emptied, those that do not apply are put away."""
        for path, field in self.fields.items():
            typed = values.get(path, Typed(""))
            if isinstance(field, Choice):
                field.set_current(typed.text)
            else:
                field.set_typed(typed)  # type: ignore[attr-defined]
        self.fit(values)
        self.arrange(self._columns)

    def fit(self, values: Mapping[str, Typed]) -> None:
        """Let bounds, hints and the number of runs follow what is typed, without touching what stands in the fields."""
        parts = (
            {path.removeprefix(head): typed for path, typed in values.items() if path.startswith(head)}
            for head in ("pump.", "calibration.")
        )
        self.calibration.show_calibration(*parts)

    def set_messages(self, messages: Mapping[str, Message]) -> None:
        """Show refusals beside their fields and clear the others; hidden fields come to light."""
        for path, field in self.fields.items():
            field.set_message(messages.get(path))  # type: ignore[attr-defined]
        for step in self.steps:
            if any(step.hides(self.fields[path]) for path in messages if path in self.fields):
                step.open(True)
