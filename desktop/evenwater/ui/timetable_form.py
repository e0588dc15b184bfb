"""The wishes of a timetable: quiet hours and time apart for the whole system, then doses a day for each pump."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.quantities import Typed
from evenwater.screens import words
from evenwater.screens.terms import capitalized, headed, term
from evenwater.screens.timetable_given import Usual
from evenwater.screens.timetable_wishes import (
    APART,
    APART_FIELD,
    DOSES_FEWEST,
    DOSES_FIELD,
    DOSES_MOST,
    DOSES_WANTED,
    FIRST_AT,
    ONE_AT_A_TIME,
    QUIET_FROM,
    QUIET_TO,
    USUAL_APART_MIN,
    YES,
    pump_path,
)
from evenwater.screens.views import Message
from evenwater.ui.clock_field import ClockField
from evenwater.ui.form_parts import FieldPort, FormEdit, Step, set_topic
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.theme import GRID
from evenwater.wording import say

Wish = ClockField | QuantityField


class TimetableForm(QWidget):
    """Shows the wishes and carries each edit with its path; ``opened`` carries a parameter to open on the Correct sheet."""

    edited = Signal(object)
    committed = Signal()
    opened = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        """Make the fields of the system; those of a pump come with it."""
        super().__init__(parent)
        self.fields: dict[str, Wish] = {}
        self.steps: dict[str, Step] = {}
        self.opens: dict[str, QPushButton] = {}
        self._shown: tuple[str, ...] = ()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, GRID, GRID)
        self._column.setSpacing(2 * GRID)
        step = Step(1, say("When"), self)
        step.more.hide()
        self._clock(step, QUIET_FROM, ClockField(say("Quiet hours from"), say("none"), say("no pump runs then"), step))
        self._clock(step, QUIET_TO, ClockField(say("Quiet hours to"), say("none"), "", step))
        apart = QuantityField(say("Opposing doses apart"), APART_FIELD, words.sentence, step)
        apart.set_derived(str(USUAL_APART_MIN), say("at least, from the end of a dose"))
        self._add(step, APART, apart, 2)
        self.alone = QCheckBox(say("Only &one pump at a time"), step)
        set_topic(self.alone, ONE_AT_A_TIME, "timetable")
        self.alone.clicked.connect(self._alone_clicked)
        step.cells.put(self.alone, 2)
        step.arrange(2)
        self._column.addWidget(step)
        self._column.addStretch(1)

    def show_pumps(self, parameters: Sequence[str]) -> None:
        """Show the wishes of these parameters' pumps, and of no others."""
        if tuple(parameters) == self._shown:
            return
        self._shown = tuple(parameters)
        for number, name in enumerate(parameters):
            if name not in self.steps:
                self._make(name, number)
        for name, step in self.steps.items():
            step.setVisible(name in self._shown)

    def set_wish(self, path: str, typed: Typed) -> None:
        """Show a wish; the one that is already there changes nothing."""
        if path == ONE_AT_A_TIME:
            self.alone.setChecked(typed.text == YES)
        else:
            self.fields[path].set_typed(typed)

    def paths(self) -> tuple[str, ...]:
        """Return the paths of all wishes that can be seen."""
        hidden = tuple(f"{name}." for name in self.steps if name not in self._shown)
        return (*(path for path in self.fields if not path.startswith(hidden)), ONE_AT_A_TIME)

    def set_usual(self, usual: Usual) -> None:
        """Show in each empty wish what stands for it; where a plan says the number of doses, nobody can wish for another."""
        self._derive(APART, str(usual.apart_min))
        for name in self.steps:
            wanted = pump_path(name, DOSES_WANTED)
            self._derive(wanted, str(usual.doses[name]) if name in usual.doses else "")
            for field in (DOSES_WANTED, DOSES_FEWEST, DOSES_MOST):
                self.fields[pump_path(name, field)].setEnabled(name not in usual.fixed)
            self.fields[wanted].set_help(say("its plan says how many") if name in usual.fixed else "")

    def _derive(self, path: str, text: str) -> None:
        field = self.fields[path]
        if isinstance(field, QuantityField):
            field.set_derived(text)

    def set_messages(self, messages: Sequence[Message]) -> None:
        """Put each refusal beside its field, the first of several; and take away those that hold no longer."""
        by_path: dict[str, Message] = {}
        for message in messages:
            by_path.setdefault(message.path, message)
        for path, field in self.fields.items():
            field.set_message(by_path.get(path))
        for name, step in self.steps.items():
            hidden = (self.fields[pump_path(name, field)] for field in (DOSES_FEWEST, DOSES_MOST))
            if any(step.hides(field) and field.message for field in hidden):
                step.open(True)
        said = by_path.get(ONE_AT_A_TIME)
        self.alone.setAccessibleDescription("" if said is None else said.text)

    def _make(self, parameter: str, number: int) -> None:
        title = capitalized(parameter)
        step = Step(number + 2, title, self)
        button = step.button(say("Open"))
        button.setAccessibleName(say("Open {parameter} on the Correct sheet", parameter=term(parameter)))
        button.setToolTip(say("Open it on the Correct sheet"))
        button.setProperty("parameter", parameter)
        button.clicked.connect(self._open)
        self.opens[parameter] = button
        self._add(
            step,
            pump_path(parameter, DOSES_WANTED),
            QuantityField(say("Doses a day"), DOSES_FIELD, words.sentence, step),
        )
        self._clock(
            step, pump_path(parameter, FIRST_AT), ClockField(say("First dose not before"), say("any time"), "", step)
        )
        for field in (self.fields[pump_path(parameter, name)] for name in (DOSES_WANTED, FIRST_AT)):
            field.set_spoken_name(headed(title, field.label.text()))
        for name, label in ((DOSES_FEWEST, say("Fewest")), (DOSES_MOST, say("Most"))):
            field = QuantityField(label, DOSES_FIELD, words.sentence, step)
            field.set_spoken_name(headed(title, label))
            step.extra.put(field)
            self._listen(pump_path(parameter, name), field)
        step.arrange(2)
        self.steps[parameter] = step
        self._column.insertWidget(self._column.count() - 1, step)

    def _clock(self, step: Step, path: str, field: ClockField) -> None:
        self._add(step, path, field)

    def _add(self, step: Step, path: str, field: Wish, wide: int = 1) -> None:
        step.cells.put(field, wide)
        self._listen(path, field)

    def _listen(self, path: str, field: Wish) -> None:
        self.fields[path] = field
        FieldPort(path, field, "timetable").edited.connect(self.edited)
        field.committed.connect(self.committed)

    def _alone_clicked(self, checked: bool) -> None:
        self.edited.emit(FormEdit(ONE_AT_A_TIME, Typed(YES if checked else "")))
        self.committed.emit()

    def _open(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            self.opened.emit(str(button.property("parameter")))
