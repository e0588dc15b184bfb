"""A batch as fields: the jug, what is in it and how strong, and what its label says besides."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.quantities import Typed
from evenwater.screens import shelf, stock_sheet, words
from evenwater.screens.entry import Field
from evenwater.screens.terms import capitalized
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import Sentence
from evenwater.ui.choice import Choice
from evenwater.ui.form_parts import COLUMNS, FieldPort, Step
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.text_field import TextField
from evenwater.ui.theme import GRID
from evenwater.wording import say, say_all

_LABEL = ("label_parameter", "label_dose", "label_water", "label_raises")
_WANTED = ("wanted_dose", "wanted_water", "wanted_raises")


def form_path(path: str) -> str:
    """Return the path of a field in the form for one of a question: additive.also.dissolved, wanted.dose, ..."""
    if path.startswith("wanted.partner"):
        return "batch.partner"
    if path in ("additive.chemical", "additive.also.chemical", "additive.saturated"):
        return "batch.contents"
    head, _, rest = path.partition(".")
    if head == "additive":
        return f"batch.{rest.replace('.', '_')}"
    # A wanted strength that no mass gives belongs to the rise that is wanted.
    return {"wanted": f"batch.wanted_{rest or 'raises'}", "temperature": "batch.temperature"}.get(head, path)


class StockForm(QWidget):
    """All fields by their path; ``edited`` carries a ``FormEdit``, ``committed`` ends an undo step."""

    edited = Signal(object)
    committed = Signal()

    def __init__(self, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the fields, still empty."""
        super().__init__(parent)
        self._catalogue = catalogue
        self._columns = COLUMNS
        self._parameter = next(iter(catalogue.parameters.values()))
        self.fields: dict[str, QWidget] = {}
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2, 0, GRID, GRID)
        layout.setSpacing(GRID + GRID // 2)
        self.steps = [self._jug(), self._contents(), self._label()]
        for step in self.steps:
            step.more.setVisible(False)
            layout.addWidget(step)
        layout.addStretch(1)
        for path, text in stock_sheet.assumed().items():
            field = self.fields[path]
            assert isinstance(field, QuantityField)
            field.set_derived(text)
        for path, field in self.fields.items():
            port = FieldPort(path, field)
            port.edited.connect(self.edited)
            if not isinstance(field, Choice):
                field.committed.connect(self.committed)  # type: ignore[attr-defined]

    # Building

    def _quantity(self, path: str, label: str, spec: Field) -> QuantityField:
        field = QuantityField(label, spec, words.sentence, self)
        self.fields[path] = field
        return field

    def _choice(self, path: str, label: str) -> Choice:
        field = Choice(label, self)
        self.fields[path] = field
        return field

    def _words(self, path: str, label: str, hint: str = "") -> TextField:
        field = TextField(label, hint, self)
        self.fields[path] = field
        return field

    def _jug(self) -> Step:
        step = Step(1, say("The jug"), self)
        self.again = step.button(say("New &batch"))
        self.remove = step.button(say("Remove batch"))
        step.cells.put(self._words("stock.name", say("Name of the jug")), 2)
        step.cells.put(self._quantity("batch.temperature", say("Coolest it gets"), fields.BATCH_TEMPERATURE))
        return step

    def _contents(self) -> Step:
        step = Step(2, say("What is in it"), self)
        put = step.cells.put
        contents = self._choice("batch.contents", say("Contents"))
        contents.set_options(shelf.contents_options(self._catalogue))
        put(contents, 2)
        recipe = self._choice("batch.recipe", say("Its strength"))
        recipe.set_options(say_all(stock_sheet.RECIPES))
        put(recipe)
        self._cautions = Sentence(step, sign="stop")
        put(self._cautions, COLUMNS)
        put(self._choice("batch.partner", say("To match the jug")), 2)
        put(self._quantity("batch.wanted_dose", say("A dose of"), replace(fields.LABEL_DOSE, path="wanted.dose")))
        put(self._quantity("batch.wanted_water", say("in water of"), replace(fields.LABEL_WATER, path="wanted.water")))
        raises = replace(fields.label_raises(self._parameter), path="wanted.raises")
        put(self._quantity("batch.wanted_raises", say("is to raise it by"), raises))
        put(self._quantity("batch.dissolved", say("Dissolved"), fields.DISSOLVED))
        also = replace(fields.DISSOLVED, path="additive.also.dissolved")
        put(self._quantity("batch.also_dissolved", say("And of the sulfate"), also))
        put(self._quantity("batch.made_up_to", say("Made up to"), fields.MADE_UP_TO))
        put(self._quantity("batch.purity", say("Purity"), fields.PURITY))
        also = replace(fields.PURITY, path="additive.also.purity")
        put(self._quantity("batch.also_purity", say("Purity of the sulfate"), also))
        raised = self._choice("batch.label_parameter", say("It raises"))
        raised.set_options(tuple((name, capitalized(name)) for name in self._catalogue.parameters))
        put(raised, COLUMNS)
        put(self._quantity("batch.label_dose", say("By its label, a dose of"), fields.LABEL_DOSE))
        put(self._quantity("batch.label_water", say("in water of"), fields.LABEL_WATER))
        put(self._quantity("batch.label_raises", say("raises by"), fields.label_raises(self._parameter)))
        return step

    def _label(self) -> Step:
        step = Step(3, say("On its label"), self)
        step.cells.put(self._words("batch.mixed_on", say("Mixed on"), say("like 2026-11-25")))
        step.cells.put(self._words("batch.mixed_by", say("Mixed by")))
        step.cells.put(self._words("batch.use_by", say("Use by"), say("like 2027-02-25")))
        return step

    # Showing

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        self._columns = columns
        for step in self.steps:
            step.arrange(columns)

    def set_values(self, values: Mapping[str, Typed], partners: tuple[tuple[str, str], ...]) -> None:
        """Show values by path; fields that are not named are emptied, those that do not apply are put away."""
        partner = self.fields["batch.partner"]
        assert isinstance(partner, Choice)
        partner.set_options(partners)
        contents, recipe = values["batch.contents"].text, values["batch.recipe"].text
        self._set_parameter(self._raised(contents, values.get("batch.label_parameter", Typed("")).text))
        for path, field in self.fields.items():
            typed = values.get(path, Typed(""))
            if isinstance(field, Choice):
                field.set_current(typed.text)
            else:
                field.set_typed(typed)  # type: ignore[attr-defined]
        bottle, lime = contents == shelf.BOTTLE, contents == shelf.LIMEWATER
        weighed = recipe == shelf.WEIGHED and not bottle and not lime
        shown = {
            "batch.recipe": not bottle and not lime and not values.get("batch.in_use_from", Typed("")).text,
            "batch.partner": recipe == shelf.PAIR,
            "batch.dissolved": weighed,
            "batch.also_dissolved": weighed and contents == shelf.MIX,
            "batch.made_up_to": not bottle,
            "batch.purity": not bottle and not lime,
            "batch.also_purity": contents == shelf.MIX,
            "batch.temperature": not bottle,
            **{f"batch.{name}": bottle for name in _LABEL},
            **{f"batch.{name}": recipe == shelf.WANTED for name in _WANTED},
        }
        for path, visible in shown.items():
            self.fields[path].setVisible(visible)
        self.arrange(self._columns)

    def _raised(self, contents: str, label_parameter: str) -> Parameter:
        """Return the parameter whose units the fields of a rise have."""
        parameters, chemicals = self._catalogue.parameters, self._catalogue.chemicals
        if contents == shelf.BOTTLE:
            return parameters.get(label_parameter, next(iter(parameters.values())))
        first = {shelf.MIX: "magnesium", shelf.LIMEWATER: "alkalinity"}.get(contents, "")
        if contents in chemicals:
            first = next(iter(chemicals[contents].raises), "")
        return parameters.get(first, next(iter(parameters.values())))

    def _set_parameter(self, parameter: Parameter) -> None:
        if parameter.name == self._parameter.name:
            return
        self._parameter = parameter
        for path, at in (("batch.wanted_raises", "wanted.raises"), ("batch.label_raises", "additive.label.raises")):
            field = self.fields[path]
            assert isinstance(field, QuantityField)
            field.set_field(replace(fields.label_raises(parameter), path=at))

    def set_cautions(self, cautions: tuple[str, ...]) -> None:
        """Show the handling lines, between what is in the jug and its numbers (H33)."""
        self._cautions.set_text(" ".join(cautions))
        if self._cautions.isHidden() == bool(cautions):
            self._cautions.setVisible(bool(cautions))
            self.arrange(self._columns)

    def set_messages(self, messages: Mapping[str, Message]) -> None:
        """Show refusals beside their fields and clear the others."""
        for path, field in self.fields.items():
            field.set_message(messages.get(path))  # type: ignore[attr-defined]
