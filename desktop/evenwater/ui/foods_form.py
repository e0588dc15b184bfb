"""A food as fields: what it is and how it is kept, what a millilitre carries, what is given in a day, and its line."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import foods_fields, foods_given, foods_words, words
from evenwater.screens.foods_given import LABEL, PER_ML, PERCENT
from evenwater.screens.terms import capitalized
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import Sentence
from evenwater.ui.choice import Choice
from evenwater.ui.form_parts import COLUMNS, FieldPort, Step
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.text_field import TextField
from evenwater.ui.theme import GRID
from evenwater.wording import say, say_all

NO_PUMP = "none"
# Which fields are shown for each way in which a label speaks.
_SHOWN = {
    PER_ML: ("nitrogen", "phosphorus"),
    PERCENT: ("protein", "nitrogen_share", "phosphorus_share", "density"),
    LABEL: ("label_parameter", "label_dose", "label_water", "label_raises"),
}
# What a choice shows while nothing was chosen.
_AT_FIRST = {"food.cold": "no", "food.paused": "no", "food.pump": NO_PUMP}


class FoodsForm(QWidget):
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
        # Before any number: what is raw is handled before it is measured.
        self.cautions = Sentence(self, sign="stop")
        layout.addWidget(self.cautions)
        # The fields are made in the order in which Tab goes through them.
        self.steps = [self._food(), self._carries(), self._day(), self._line()]
        for step in self.steps:
            layout.addWidget(step)
        layout.addStretch(1)
        for path, field in self.fields.items():
            port = FieldPort(path, field)
            port.edited.connect(self.edited)
            if not isinstance(field, Choice):
                field.committed.connect(self.committed)  # type: ignore[attr-defined]

    def _quantity(self, name: str, label: str, help_text: str = "") -> QuantityField:
        path = f"food.{name}"
        field = QuantityField(label, foods_fields.FOOD_FIELDS[path], words.sentence, self)
        if help_text:
            field.set_help(help_text)
        self.fields[path] = field
        return field

    def _words(self, name: str, label: str, hint: str = "") -> TextField:
        field = TextField(label, hint, self)
        self.fields[f"food.{name}"] = field
        return field

    def _choice(self, name: str, label: str, options: tuple[tuple[str, str], ...]) -> Choice:
        field = Choice(label, self)
        field.set_options(options)
        self.fields[f"food.{name}"] = field
        return field

    def _food(self) -> Step:
        step = Step(1, say("The food"), self)
        step.more.hide()
        step.cells.put(self._words("name", say("Name of the food")), 2)
        step.cells.put(self._choice("sort", say("What it is"), say_all(foods_words.SORTS)))
        step.cells.put(self._words("opened_on", say("Opened on"), say("like 2026-11-25")))
        step.cells.put(self._quantity("keeps_days", say("Keeps once opened, days"), say("as its label says")))
        step.cells.put(self._choice("cold", say("Kept cold"), say_all(foods_words.COLD)))
        step.cells.put(self._quantity("jug_volume", say("In the jug when opened")))
        return step

    def _carries(self) -> Step:
        step = Step(2, say("What a mL carries"), self)
        step.more.hide()
        step.cells.put(self._choice("says", say("The label says"), say_all(foods_words.SAYS)), COLUMNS)
        step.cells.put(self._quantity("nitrogen", say("Nitrogen"), say("as N")))
        step.cells.put(self._quantity("phosphorus", say("Phosphorus"), say("as P, not as P2O5")))
        step.cells.put(self._quantity("protein", say("Protein"), say("÷ 6.25 is nitrogen")))
        step.cells.put(
            self._quantity("nitrogen_share", say("Nitrogen, if it says so"), say("as N; goes before protein"))
        )
        step.cells.put(self._quantity("phosphorus_share", say("Phosphorus"), say("as P, not as P2O5")))
        density = self._quantity("density", say("Density"))
        density.set_derived("1", say("as heavy as water"))
        step.cells.put(density)
        names = tuple((name, capitalized(name)) for name in self._catalogue.parameters)
        step.cells.put(self._choice("label_parameter", say("It raises"), names))
        step.cells.put(self._quantity("label_dose", say("So many mL")))
        step.cells.put(self._quantity("label_water", say("raise so much water")))
        self.raises = QuantityField("by", foods_fields.label_raises(self._catalogue, ""), words.sentence, self)
        self.fields["food.label_raises"] = self.raises
        step.cells.put(self.raises)
        return step

    def _day(self) -> Step:
        step = Step(3, say("The day"), self)
        step.more.hide()
        step.cells.put(self._quantity("per_day", say("Given in a day")))
        feedings = self._quantity("feedings", say("Feedings a day"))
        feedings.set_derived("1", say("or the pump's doses a day"))
        step.cells.put(feedings)
        step.cells.put(self._choice("paused", say("Is it given"), say_all(foods_words.PAUSED)))
        step.cells.put(self._choice("pump", say("By which pump"), ((NO_PUMP, say("By hand, or another pump")),)), 2)
        return step

    def _line(self) -> Step:
        step = Step(4, say("The line"), self)
        step.more.hide()
        step.cells.put(self._quantity("line_bore", say("Line, inside"), say("or as its pump has it")))
        step.cells.put(self._quantity("line_length", say("Line, length"), say("from jug to water")))
        return step

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        self._columns = columns
        for step in self.steps:
            step.arrange(columns)

    def set_pumps(self, pumps: tuple[tuple[str, str], ...]) -> None:
        """Offer these pumps (id, name)."""
        choice = self.fields["food.pump"]
        assert isinstance(choice, Choice)
        choice.set_options(((NO_PUMP, say("By hand, or another pump")), *pumps))

    def set_values(self, values: Mapping[str, Typed]) -> None:
        """Show values by path; fields that are not named are emptied, those that do not apply are put away."""
        for path, field in self.fields.items():
            typed = values.get(path, Typed(""))
            if isinstance(field, Choice):
                field.set_current(typed.text or _AT_FIRST.get(path, ""))
            else:
                field.set_typed(typed)  # type: ignore[attr-defined]
        self.fit(values)

    def fit(self, values: Mapping[str, Typed]) -> None:
        """Let fields, bounds and cautions follow what is chosen, without touching what stands in the fields."""
        food = {path.removeprefix("food."): typed for path, typed in values.items()}
        says = foods_given.says_of(food)
        for way, names in _SHOWN.items():
            for name in names:
                self.fields[f"food.{name}"].setVisible(way == says)
        self.raises.set_field(foods_fields.label_raises(self._catalogue, foods_given.text_of(food, "label_parameter")))
        self.cautions.set_text(" ".join(say_all(foods_words.CAUTIONS[foods_given.sort_of(food)])))
        self.arrange(self._columns)

    def set_messages(self, messages: Mapping[str, Message]) -> None:
        """Show refusals beside their fields and clear the others."""
        for path, field in self.fields.items():
            field.set_message(messages.get(path))  # type: ignore[attr-defined]
