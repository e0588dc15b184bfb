"""The sentences about foods, what their fields are called, and the cautions that stand before any number."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import from_canonical
from evenwater.engine.units import KINDS
from evenwater.screens.foods_given import AMINO, LABEL, LIQUID, PER_ML, PERCENT, TRACE
from evenwater.screens.shown import significant, with_unit
from evenwater.screens.terms import capitalized, term
from evenwater.wording import marked, say

Params = Mapping[str, Any]

SORTS = ((LIQUID, marked("A liquid food")), (AMINO, marked("Amino acids")), (TRACE, marked("A trace mix")))
SAYS = (
    (PER_ML, marked("What a mL carries")),
    (PERCENT, marked("Percent by mass")),
    (LABEL, marked("So many mL raise so much water")),
)
COLD = (("yes", marked("Yes, kept cold")), ("no", marked("No, it stands in the room")))
PAUSED = (("no", marked("Given")), ("yes", marked("Paused")))

# By the name of the field.
FOOD_WORDS = {
    "name": marked("the name of the food"),
    "sort": marked("what the food is"),
    "per_day": marked("how much is given in a day"),
    "feedings": marked("the feedings in a day"),
    "paused": marked("whether the food is given"),
    "says": marked("how the label says what it carries"),
    "nitrogen": marked("the nitrogen in a mL"),
    "phosphorus": marked("the phosphorus in a mL"),
    "protein": marked("the protein"),
    "nitrogen_share": marked("the nitrogen"),
    "phosphorus_share": marked("the phosphorus"),
    "density": marked("the density"),
    "label_parameter": marked("what the label says it raises"),
    "label_dose": marked("the dose on the label"),
    "label_water": marked("the water on the label"),
    "label_raises": marked("the rise on the label"),
    "jug_volume": marked("what the jug holds"),
    "opened_on": marked("the date it was opened"),
    "keeps_days": marked("how long it keeps"),
    "cold": marked("whether it is kept cold"),
    "line_bore": marked("the inside diameter of the line"),
    "line_length": marked("the length of the line"),
    "pump": marked("the pump"),
}

# Common practice, no source: what is raw or spoils is handled as in a kitchen, apart from people's food.
_RAW = (
    marked("Raw food: wash your hands before and after, and clean what it touched."),
    marked(
        "In the fridge keep it closed and apart from people's food, labelled with its name and the date it was opened."
    ),
    marked("What smells off or was warm for a day is thrown away."),
)
_BOTTLE = (
    marked("Read the bottle's own label first; it wins over this page."),
    marked("Write the date it was opened on it. Nothing in drink bottles; keep it away from children."),
)
_EYES = marked("If it gets in the eyes, rinse for at least 15 minutes and get medical help.")
CAUTIONS = {LIQUID: _RAW, AMINO: _BOTTLE, TRACE: (*_BOTTLE, _EYES)}

# Beside the numbers, always. The last is common practice, no source.
AT_MOST = marked(
    "As if all of it became nitrate and phosphate: the most it can bring. Skimmer and growth make it less; a test tells."
)
ALONE = marked(
    "Food, exchange and export alone are reckoned above: what is dosed besides, and what the animals use, is left out. All plans together follow below."
)
OXYGEN = marked(
    "Decay takes oxygen, most at night. Feed less when the water is warm or the surface still, and not while the flow is off."
)


def _value(p: Params, name: str) -> str:
    number = from_canonical(p[name], p["kind"], p["unit"], p["water"])
    return with_unit(significant(number, 3), KINDS[p["kind"]].unit(p["unit"]).shown)


SENTENCES: dict[str, Callable[[Params], str]] = {
    "food_more_than_all": lambda p: say(
        "Nitrogen and phosphorus together are more than the whole food. Look at the label again."
    ),
    "food_too_much": lambda p: say(
        "All foods together may bring {rise} {parameter} a day, more than the {most} that no plan may pass, reckoned for the low end of the net volume. Give at most {share} of it.",
        rise=_value(p, "rise"),
        parameter=term(p["parameter"]),
        most=_value(p, "most"),
        share=with_unit(significant(100.0 * p["share"], 2), "%"),
    ),
    "food_rise_fast": lambda p: say(
        "All foods together may bring {rise} {parameter} a day; {most} is recommended at most.",
        rise=_value(p, "rise"),
        parameter=term(p["parameter"]),
        most=_value(p, "most"),
    ),
    "food_settles_high": lambda p: say(
        "With these foods {parameter} may settle at {settles}, above the {high} usually kept. Feed less, or take out more.",
        parameter=term(p["parameter"]),
        settles=_value(p, "settles"),
        high=_value(p, "high"),
    ),
    "food_never_settles": lambda p: say(
        "{parameter} never settles: nothing is said to leave the tank, and up to {rise} come in a week. Say on the Exchange sheet what is exchanged, and what skimmer, algae and media take.",
        parameter=capitalized(p["parameter"]),
        rise=_value(p, "rise"),
    ),
    "food_phosphorus_unsaid": lambda p: say(
        "The label of {name} says nothing of phosphorus, so none is counted. Nearly every food brings some: test phosphate.",
        name=p["name"] or say("a food"),
    ),
}
