"""The guided calibration as fields: how long to let the pump run, and what each run gave."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QGridLayout, QLabel, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens import pump_fields, words
from evenwater.screens.pump_sheet import FEWEST_RUNS, Values, expected_ml, method_of, seconds_of
from evenwater.screens.pump_words import METHODS, MOST_RUNS, SCALE, TIMED
from evenwater.screens.views import Message, Offer
from evenwater.ui.choice import Choice
from evenwater.ui.form_parts import COLUMNS, Step
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.reading_order import READ_DOWN
from evenwater.ui.text_field import TextField
from evenwater.ui.theme import GRID
from evenwater.ui.time_field import TimeField
from evenwater.wording import say, say_all


class Runs(QWidget):
    """Two fields for each run, one below the other: how long it lasted, what it gave. Tab and Enter go from one to the next."""

    def __init__(self, parent: QWidget) -> None:
        """Make the fields of all runs; three of them are shown at first."""
        super().__init__(parent)
        self.fields: dict[str, QuantityField] = {}
        # Each run is a column: how long it lasted, and below it what it gave.
        self.setProperty(READ_DOWN, True)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(GRID)
        self._grid.setVerticalSpacing(GRID // 2)
        for number in range(1, MOST_RUNS + 1):
            path = f"calibration.run_{number}_seconds"
            spec = pump_fields.CALIBRATION_FIELDS[path]
            self._add(path, QuantityField(say("Run {number} lasted", number=number), spec, words.sentence, self))
            spec = pump_fields.reads(number, "", None)
            self._add(spec.path, QuantityField(say("Run {number} gave", number=number), spec, words.sentence, self))
        self.show_count(FEWEST_RUNS)

    def _add(self, path: str, field: QuantityField) -> None:
        self.fields[path] = field
        assert field.line is not None
        field.line.entered.connect(self._go_on)
        # Whoever reads a cylinder goes from figure to figure; another unit is typed behind one, or chosen with the mouse.
        field.units.setFocusPolicy(Qt.FocusPolicy.ClickFocus)

    def _go_on(self) -> None:
        lines = [field.line for field in self.fields.values() if field.line is not None and field.isVisible()]
        here = QApplication.focusWidget()
        for before, after in pairwise(lines):
            if before is here:
                after.setFocus(Qt.FocusReason.TabFocusReason)
                return

    def show_calibration(self, pump: Values, calibration: Values) -> None:
        """Give the runs units and bounds that fit, and say what empty times stand for."""
        method = method_of(calibration)
        for number in range(1, MOST_RUNS + 1):
            lasted, gave = (self.fields[f"calibration.run_{number}_{name}"] for name in ("seconds", "reads"))
            gave.set_field(pump_fields.reads(number, method, expected_ml(pump, calibration, number)))
            # What an empty time stands for is what the run before it says.
            taken = seconds_of(calibration, number - 1) if number > 1 else Typed("")
            lasted.set_derived(f"{taken.text} {taken.unit}".strip() if number > 1 else "")

    def show_count(self, count: int) -> None:
        """Show so many runs."""
        for number in range(1, MOST_RUNS + 1):
            for name in ("seconds", "reads"):
                self.fields[f"calibration.run_{number}_{name}"].setVisible(number <= count)

    def arrange(self, columns: int) -> None:
        """Place the runs beside each other, so many in a row."""
        for number in range(1, MOST_RUNS + 1):
            row, column = divmod(number - 1, columns)
            for below, name in enumerate(("seconds", "reads")):
                field = self.fields[f"calibration.run_{number}_{name}"]
                self._grid.removeWidget(field)
                self._grid.addWidget(field, 2 * row + below, column)
        for column in range(COLUMNS):
            self._grid.setColumnStretch(column, 1 if column < columns else 0)

    def propose(self, seconds: float | None, said: str) -> None:
        """Offer a running time for the first run [s], as long as none was typed."""
        first = self.fields["calibration.run_1_seconds"]
        offer = None
        if seconds is not None:
            text = f"{seconds:.0f}"
            offer = Message(said, offers=(Offer(say("Run it {text}\u00a0s", text=text), text, "s"),))
        first.set_suggestion(offer)


class CalibrationStep(Step):
    """The step of the sheet for a calibration: when, with what, and the runs."""

    def __init__(self, number: int, parent: QWidget) -> None:
        """Make the fields, still empty."""
        super().__init__(number, say("Calibration"), parent)
        self.fields: dict[str, QWidget] = {}
        self.again = self.button(say("&New calibration"))
        self.remove = self.button(say("Remove calibration"))
        self.fields["calibration.at"] = self.cells.put(TimeField(say("When"), self), 2)
        self.hours = self._quantity("hours", say("Running hours"))
        self.cells.put(self.hours)
        method = self._choice("method", say("Measured with"))
        method.set_options(say_all(METHODS))
        self.cells.put(method)
        self._graduation = self._quantity("graduation", say("Finest line of the cylinder"))
        self._readability = self._quantity("readability", say("Last digit of the scale"))
        self._water = self._quantity("water_temperature", say("Water"))
        self._water.set_help(say("its density counts"))
        for field in (self._graduation, self._readability, self._water):
            self.cells.put(field)
        self.fields["calibration.who"] = self.cells.put(TextField(say("By"), "", self))
        timed = self._choice("timed", say("Timed with"))
        timed.set_options(say_all(TIMED))
        self.extra.put(timed)
        self.extra.put(self._quantity("doses", say("Doses in a run")))
        self.extra.put(self._quantity("air_pressure", say("Air pressure")))
        self.guide = QLabel(self)
        self.guide.setWordWrap(True)
        self.guide.setTextFormat(Qt.TextFormat.PlainText)
        self.guide.setMinimumHeight(1)
        self.runs = Runs(self)
        self.fields |= self.runs.fields
        layout = self.layout()
        assert layout is not None
        layout.addWidget(self.guide)
        layout.addWidget(self.runs)

    def _quantity(self, name: str, label: str) -> QuantityField:
        path = f"calibration.{name}"
        field = QuantityField(label, pump_fields.CALIBRATION_FIELDS[path], words.sentence, self)
        self.fields[path] = field
        return field

    def _choice(self, name: str, label: str) -> Choice:
        field = Choice(label, self)
        self.fields[f"calibration.{name}"] = field
        return field

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        super().arrange(columns)
        self.runs.arrange(columns)

    def show_calibration(self, pump: Values, calibration: Values) -> None:
        """Put away what does not apply to the instrument, and let the runs fit it."""
        weighed = method_of(calibration) == SCALE
        self._graduation.setVisible(not weighed)
        self._readability.setVisible(weighed)
        self._water.setVisible(weighed)
        self.runs.show_calibration(pump, calibration)

    def set_guide(self, text: str) -> None:
        """Say what to do next."""
        self.guide.setText(text)
        self.guide.setVisible(bool(text))

    def propose_hours(self, said: str, hours: float | None) -> None:
        """Offer the running hours as they are estimated [h], while nothing was typed."""
        offer = None
        if said and hours is not None:
            text = f"{hours:.0f}"
            offer = Message(
                say("The head has run {said}.", said=said),
                offers=(Offer(say("Take {text}\u00a0h", text=text), text, "h"),),
            )
        self.hours.set_suggestion(offer)
