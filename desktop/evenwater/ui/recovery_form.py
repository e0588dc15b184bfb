"""The fields of a recovery: what ran in, what is too high, what can be exchanged, what is seen, and what is held along."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QLabel, QPushButton, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import recovery_sheet, words
from evenwater.screens.recovery_sheet import MOST_PER_DAY, NO, RAN_IN, YES
from evenwater.screens.shown import significant
from evenwater.screens.terms import capitalized, term
from evenwater.screens.views import Message
from evenwater.ui.choice import Choice
from evenwater.ui.form_parts import COLUMNS, FieldPort, FormEdit, Step, set_topic
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.theme import GRID, set_role
from evenwater.wording import marked, say, say_all

_SIGNS = {"signs.cloudy": marked("The water is cl&oudy"), "signs.white_film": marked("There is a white fil&m")}
_TARGET = "change.target"
_MEASURED = "change.measured"
_BEFORE_TEST = marked("empty before a test")


class RecoveryForm(QWidget):
    """All fields by their path; ``edited`` carries a ``FormEdit``, ``committed`` ends an undo step."""

    edited = Signal(object)
    committed = Signal()

    def __init__(self, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the fields, still empty."""
        super().__init__(parent)
        self._catalogue = catalogue
        self.fields: dict[str, QuantityField | Choice] = {}
        self.checks: dict[str, QCheckBox] = {}
        self.whole = QPushButton(say("The &whole jug ran in"), self)
        self.whole.setAutoDefault(False)
        set_role(self.whole, "large")
        self.basis = QLabel(self)
        self.basis.setWordWrap(True)
        set_role(self.basis, "caption")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2, 0, GRID, GRID)
        layout.setSpacing(GRID + GRID // 2)
        self.steps = [self._ran_in(), self._too_high(), self._seen(), self._exchanged()]
        for step in self.steps:
            layout.addWidget(step)
        layout.addStretch(1)
        for path, field in self.fields.items():
            FieldPort(path, field, "recovery").edited.connect(self.edited)
            if isinstance(field, QuantityField):
                field.committed.connect(self.committed)
        for check in self.checks.values():
            check.clicked.connect(self._checked)

    def _ran_in(self) -> Step:
        step = Step(1, say("What ran in"), self)
        step.more.hide()
        jug = Choice(say("Jug"), step)
        self.fields["additive"] = jug
        self.fields["overdose.volume"] = ran_in = QuantityField(say("How much ran in"), RAN_IN, words.sentence, step)
        step.cells.put(jug, COLUMNS)
        step.cells.put(ran_in)
        step.cells.put(self.whole)
        step.cells.put(self.basis, COLUMNS)
        return step

    def _too_high(self) -> Step:
        step = Step(2, say("What is too high"), self)
        step.more.hide()
        parameter = Choice(say("Value"), step)
        parameter.set_options(tuple((name, capitalized(name)) for name in self._catalogue.parameters))
        self.fields["change.parameter"] = parameter
        first = next(iter(self._catalogue.parameters.values()))
        measured = QuantityField(say("Tested since"), recovery_sheet.measured_field(first), words.sentence, step)
        measured.set_help(say(_BEFORE_TEST))
        target = QuantityField(say("To come down to"), recovery_sheet.measured_field(first), words.sentence, step)
        self.fields |= {_MEASURED: measured, _TARGET: target}
        for field in (parameter, measured, target):
            step.cells.put(field)
        return step

    def _seen(self) -> Step:
        step = Step(3, say("What is seen"), self)
        step.more.hide()
        for path, text in say_all(_SIGNS).items():
            step.cells.put(self._check(path, text, step))
        return step

    def _exchanged(self) -> Step:
        step = Step(4, say("What can be done"), self)
        most = QuantityField(say("Exchanged in a day at most"), MOST_PER_DAY, words.sentence, step)
        most.set_help(say("never more than half of the tank"))
        self.fields["exchange.most_per_day"] = most
        step.cells.put(most, COLUMNS)
        for name in self._catalogue.parameters:
            step.extra.put(self._check(f"hold.{name}", say("Hold {name} too", name=term(name)), step))
        return step

    def _check(self, path: str, text: str, step: Step) -> QCheckBox:
        check = QCheckBox(text, step)
        check.setProperty("path", path)
        set_topic(check, path, "recovery")
        check.setAccessibleName(text.replace("&", ""))
        self.checks[path] = check
        return check

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        for step in self.steps:
            step.arrange(columns)

    def set_jugs(self, jugs: tuple[tuple[str, str], ...]) -> None:
        """Offer these jugs (id, name)."""
        jug = self.fields["additive"]
        assert isinstance(jug, Choice)
        jug.set_options((("none", say("None: a test shows it")), *jugs))

    def set_values(self, values: Mapping[str, Typed], parameter: str) -> None:
        """Show values by path; the fields of the reading and the target follow the parameter."""
        p = self._catalogue.parameters.get(parameter)
        for path in (_MEASURED, _TARGET):
            field = self.fields[path]
            assert isinstance(field, QuantityField)
            if p is not None:
                field.set_field(recovery_sheet.measured_field(p))
            field.setEnabled(p is not None)
            if p is None:
                field.set_help(say("Choose first what is too high."))
            elif path == _MEASURED:
                field.set_help(say(_BEFORE_TEST))
            if path == _TARGET and p is not None:
                field.set_derived(significant(p.range_kept[1], 4), say("usually kept"))
        for path, field in self.fields.items():
            typed = values.get(path, Typed(""))
            if isinstance(field, Choice):
                field.set_current(typed.text or ("none" if path == "additive" else parameter))
            else:
                field.set_typed(typed)
        for path, check in self.checks.items():
            check.setChecked(values.get(path, Typed("")).text == YES)
        own = f"hold.{parameter}"
        for path, check in self.checks.items():
            if path.startswith("hold."):
                check.setEnabled(path != own)
                if path == own:
                    check.setChecked(True)

    def set_messages(self, messages: Mapping[str, Message]) -> None:
        """Show refusals beside their fields and clear the others."""
        for path, field in self.fields.items():
            field.set_message(messages.get(path))

    def _checked(self, checked: bool) -> None:
        check = self.sender()
        if isinstance(check, QCheckBox):
            self.edited.emit(FormEdit(str(check.property("path")), Typed(YES if checked else NO)))
            self.committed.emit()
