"""The exchange as fields: the two pumps and their jugs, the new water, the mixing bucket, and what leaves besides."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed, Water
from evenwater.screens import exchange_fields, words
from evenwater.screens.exchange_fields import ALIKE, AROUND, BUCKET, EXCHANGED, FIRST, LOSSES, OF_WAY, WAY, WAYS
from evenwater.screens.shown import decimal
from evenwater.screens.terms import capitalized
from evenwater.screens.views import Message
from evenwater.ui.answer_parts import Sentence
from evenwater.ui.choice import Choice
from evenwater.ui.form_parts import COLUMNS, FieldPort, Step
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.theme import GRID
from evenwater.wording import marked, say, say_all

_SEA, _TANK = marked("natural seawater, assumed"), marked("as the tank, assumed")


class ExchangeForm(QWidget):
    """All fields by their name; ``edited`` carries a ``FormEdit``, ``committed`` ends an undo step."""

    edited = Signal(object)
    committed = Signal()

    def __init__(self, catalogue: Catalogue, parent: QWidget | None = None) -> None:
        """Make the fields, still empty."""
        super().__init__(parent)
        self._catalogue = catalogue
        self._columns = COLUMNS
        self.fields: dict[str, QuantityField] = {}
        self.way = Choice(say("How it is said"), self)
        self.way.set_options(say_all(WAYS))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2, 0, GRID, GRID)
        layout.setSpacing(GRID + GRID // 2)
        # Before any number: whoever carries water works beside electricity (H25).
        self.cautions, self.mixing = Sentence(self, sign="stop"), Sentence(self, sign="stop")
        self.cautions.set_text(" ".join(say_all(AROUND)))
        self.mixing.set_text(" ".join(say_all(BUCKET)))
        # The fields are made in the order in which Tab goes through them.
        self.steps = [self._pair(), self._new_water(), self._bucket(), self._besides()]
        for step in self.steps:
            step.more.setVisible(step is self.steps[1])
        for part in (self.cautions, *self.steps[:2], self.mixing, *self.steps[2:]):
            layout.addWidget(part)
        layout.addStretch(1)
        port = FieldPort(WAY, self.way, "water")
        port.edited.connect(self.edited)
        for name, field in self.fields.items():
            port = FieldPort(name, field, "new_water" if name in catalogue.parameters else "water")
            port.edited.connect(self.edited)
            field.committed.connect(self.committed)
        self._fit("")

    def _quantity(self, name: str, label: str, help_: str = "") -> QuantityField:
        field = QuantityField(label, exchange_fields.FIELDS[name], words.sentence, self)
        if help_:
            field.set_help(help_)
        self.fields[name] = field
        return field

    def _pair(self) -> Step:
        step = Step(1, say("The two pumps"), self)
        step.cells.put(self.way)
        step.cells.put(self._quantity(EXCHANGED, say("Out and in, each")))
        step.cells.put(self._quantity("as_much_as", say("Batch change")))
        every = self._quantity("every_days", say("Once in so many days"))
        every.set_derived("7")
        step.cells.put(every)
        step.cells.put(self._quantity("out", say("Old water out")))
        step.cells.put(self._quantity("in", say("New water in")))
        step.cells.put(self._quantity("old_jug", say("Old-water jug holds")))
        step.cells.put(self._quantity("new_jug", say("New-water jug holds")))
        days = self._quantity("days", say("Look ahead, days"))
        days.set_derived("30")
        step.cells.put(days)
        return step

    def _new_water(self) -> Step:
        step = Step(2, say("The new water"), self)
        for name in (*FIRST, *(name for name in self._catalogue.parameters if name not in FIRST)):
            p = self._catalogue.parameters[name]
            field = QuantityField(capitalized(name), exchange_fields.of_new_water(p), words.sentence, self)
            field.set_derived(words_of(p.natural))
            self.fields[name] = field
            (step.cells if name in FIRST else step.extra).put(field)
            if name == "salinity":
                step.cells.put(self._quantity("temperature", say("Temperature")))
        return step

    def _bucket(self) -> Step:
        step = Step(3, say("The mixing bucket"), self)
        step.cells.put(self._quantity("mix_volume", say("New water in it")))
        step.cells.put(self._quantity("label_mass", say("By the label: salt mix")))
        step.cells.put(self._quantity("label_water", say("in so much water")))
        step.cells.put(self._quantity("label_salinity", say("gives salinity")))
        step.cells.put(self._quantity("mix_measured", say("Salinity found"), say("when all is clear")))
        return step

    def _besides(self) -> Step:
        step = Step(4, say("What leaves besides"), self)
        for name in LOSSES:
            label = say("{name}, per day", name=capitalized(name.removesuffix("_loss")))
            step.cells.put(self._quantity(name, label, say("by skimmer, algae, media")))
        return step

    def arrange(self, columns: int) -> None:
        """Lay the fields out in so many columns."""
        self._columns = columns
        for step in self.steps:
            step.arrange(columns)

    def set_values(self, values: Mapping[str, Typed]) -> None:
        """Show values by name; fields that are not named are emptied, those of another way are put away."""
        for name, field in self.fields.items():
            field.set_typed(values.get(name, Typed("")))
        self.fit(values)
        self._fit(values.get(WAY, Typed("")).text)

    def fit(self, values: Mapping[str, Typed]) -> None:
        """Say what stands for the new water where nobody said it, without touching what stands in the fields."""
        for name in self._catalogue.parameters:
            empty = not values.get(name, Typed("")).text.strip()
            self.fields[name].set_help("" if not empty else say(_TANK) if name == "salinity" else say(_SEA))

    def _fit(self, said: str) -> None:
        way = said if said in OF_WAY else ""
        self.way.set_current(way or ALIKE)
        for kind, names in OF_WAY.items():
            for name in names:
                self.fields[name].setVisible(kind == way)
        self.steps[0].arrange(self._columns)

    def set_water(self, water: Water, salinity: str) -> None:
        """Count figures per kilogram in the tank's water, and show its salinity where the new water's is not said."""
        for field in self.fields.values():
            field.set_water(water)
        self.fields["salinity"].set_derived(salinity)

    def set_messages(self, messages: Mapping[str, Message]) -> None:
        """Show refusals beside their fields and clear the others; hidden fields come to light."""
        for name, field in self.fields.items():
            field.set_message(messages.get(name))
        for step in self.steps:
            if any(step.hides(self.fields[name]) for name in messages if name in self.fields):
                step.open(True)


def words_of(natural: float) -> str:
    """Write what natural seawater holds, in the unit the field shows at first."""
    return decimal(f"{natural:g}")
