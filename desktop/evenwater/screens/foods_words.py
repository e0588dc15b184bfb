"""The sentences about foods, what their fields are called, and the cautions that stand before any number."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import from_canonical, significant
from evenwater.engine.units import KINDS
from evenwater.screens.foods_given import AMINO, LABEL, LIQUID, PER_ML, PERCENT, TRACE
from evenwater.screens.shown import with_unit

Params = Mapping[str, Any]

SORTS = ((LIQUID, "A liquid food"), (AMINO, "Amino acids"), (TRACE, "A trace mix"))
SAYS = (
    (PER_ML, "What a mL carries"),
    (PERCENT, "Percent by mass"),
    (LABEL, "So many mL raise so much water"),
)
COLD = (("yes", "Yes, kept cold"), ("no", "No, it stands in the room"))
PAUSED = (("no", "Given"), ("yes", "Paused"))

# By the name of the field.
FOOD_WORDS = {
    "name": "the name of the food",
    "sort": "what the food is",
    "per_day": "how much is given in a day",
    "feedings": "the feedings in a day",
    "paused": "whether the food is given",
    "says": "how the label says what it carries",
    "nitrogen": "the nitrogen in a mL",
    "phosphorus": "the phosphorus in a mL",
    "protein": "the protein",
    "nitrogen_share": "the nitrogen",
    "phosphorus_share": "the phosphorus",
    "density": "the density",
    "label_parameter": "what the label says it raises",
    "label_dose": "the dose on the label",
    "label_water": "the water on the label",
    "label_raises": "the rise on the label",
    "jug_volume": "what the jug holds",
    "opened_on": "the date it was opened",
    "keeps_days": "how long it keeps",
    "cold": "whether it is kept cold",
    "line_bore": "the inside diameter of the line",
    "line_length": "the length of the line",
    "pump": "the pump",
}

# Common practice, no source: what is raw or spoils is handled as in a kitchen, apart from people's food.
_RAW = (
    "Raw food: wash your hands before and after, and clean what it touched.",
    "In the fridge keep it closed and apart from people's food, labelled with its name and the date it was opened.",
    "What smells off or was warm for a day is thrown away.",
)
_BOTTLE = (
    "Read the bottle's own label first; it wins over this page.",
    "Write the date it was opened on it. Nothing in drink bottles; keep it away from children.",
)
_EYES = "If it gets in the eyes, rinse for at least 15 minutes and get medical help."
CAUTIONS = {LIQUID: _RAW, AMINO: _BOTTLE, TRACE: (*_BOTTLE, _EYES)}

# Beside the numbers, always. The last is common practice, no source.
AT_MOST = "As if all of it became nitrate and phosphate: the most it can bring. Skimmer and growth make it less; a test tells."
ALONE = (
    "Food, exchange and export alone are reckoned above: what is dosed besides, and what the animals use, is left out. All plans together "
    "follow below."
)
OXYGEN = (
    "Decay takes oxygen, most at night. Feed less when the water is warm or the surface still, and not while the flow "
    "is off."
)


def _value(p: Params, name: str) -> str:
    number = from_canonical(p[name], p["kind"], p["unit"], p["water"])
    return with_unit(significant(number, 3), KINDS[p["kind"]].unit(p["unit"]).shown)


SENTENCES: dict[str, Callable[[Params], str]] = {
    "food_more_than_all": lambda p: (
        "Nitrogen and phosphorus together are more than the whole food. Look at the label again."
    ),
    "food_too_much": lambda p: (
        f"All foods together may bring {_value(p, 'rise')} {p['parameter']} a day, more than the {_value(p, 'most')} that no plan may "
        f"pass, reckoned for the low end of the net volume. Give at most {with_unit(significant(100.0 * p['share'], 2), '%')} of it."
    ),
    "food_rise_fast": lambda p: (
        f"All foods together may bring {_value(p, 'rise')} {p['parameter']} a day; {_value(p, 'most')} is recommended at most."
    ),
    "food_settles_high": lambda p: (
        f"With these foods {p['parameter']} may settle at {_value(p, 'settles')}, above the {_value(p, 'high')} usually kept. Feed less, "
        "or take out more."
    ),
    "food_never_settles": lambda p: (
        f"{p['parameter'].capitalize()} never settles: nothing is said to leave the tank, and up to {_value(p, 'rise')} come in a week. "
        "Say on the Exchange sheet what is exchanged, and what skimmer, algae and media take."
    ),
    "food_phosphorus_unsaid": lambda p: (
        f"The label of {p['name'] or 'a food'} says nothing of phosphorus, so none is counted. Nearly every food brings some: test phosphate."
    ),
}
