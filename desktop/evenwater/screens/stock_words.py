"""The sentences about a stock by itself and about a tank's chemistry."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.screens.shown import figure, significant, with_unit
from evenwater.screens.terms import capitalized, term
from evenwater.wording import say

Params = Mapping[str, Any]

# What is said about a stock by itself.
OF_STOCKS: dict[str, Callable[[Params], str]] = {
    "does_not_dissolve": lambda p: say(
        "{made} of {chemical} in a litre cannot dissolve: at {temperature} the most is {most} in a litre. Make the stock weaker.",
        made=with_unit(significant(p["made"], 3), "g"),
        chemical=term(p["chemical"]),
        temperature=with_unit(figure(p["temperature_c"], 1), "°C"),
        most=with_unit(significant(p["most"], 3), "g"),
    ),
    "nearly_saturated": lambda p: say(
        "The stock is near its limit ({made} of {most} in a litre). Keep it {warm} and look for crystals.",
        made=significant(p["made"], 3),
        most=with_unit(significant(p["most"], 3), "g"),
        warm=say("warm") if p["better_warm"] else say("cool"),
    ),
    "restricted": lambda p: say(
        "{chemical} is dangerous to people and easy to overdose. Use it only if you are trained for it.",
        chemical=capitalized(p["chemical"]),
    ),
    "never_in_one_jug": lambda p: say(
        "{first} and {second} fall out when they are dissolved together. Give each a jug of its own.",
        first=capitalized(p["first"]),
        second=term(p["second"]),
    ),
    "same_chemical": lambda p: say(
        "{chemical} is named twice. Add its masses up and name it once.", chemical=capitalized(p["chemical"])
    ),
    "no_balance": lambda p: say(
        "{first} and {second} cannot be mixed to the magnesium and sulfate of seawater. Take magnesium chloride and magnesium sulfate.",
        first=capitalized(p["first"]),
        second=term(p["second"]),
    ),
    "not_limewater": lambda p: say(
        "A jug of {chemical} must not be saturated: it crystallises when the room cools. Only limewater is dosed so.",
        chemical=term(p["chemical"]),
    ),
    "limewater": lambda p: say(
        "Limewater holds {grams_per} in a litre at {degc}, and less when it is warmer. Dose the clear water only, and keep the jug closed: air turns it into chalk.",
        grams_per=with_unit(significant(p["grams_per_l"], 3), "g"),
        degc=with_unit(figure(p["degc"], 1), "°C"),
    ),
    "no_pair": lambda p: say(
        "{chemical} and {partner} are no pair. Of a matched pair one stock carries alkalinity only and the other calcium only.",
        chemical=capitalized(p["chemical"]),
        partner=term(p["partner"]),
    ),
}


# What is said about a tank's chemistry.
OF_CHEMISTRY: dict[str, Callable[[Params], str]] = {
    "impossible_water": lambda p: say(
        "No seawater of this alkalinity has a pH of {ph}. Test both again, and see on which scale the pH is.",
        ph=significant(p["ph"], 4),
    ),
    "may_precipitate": lambda p: say(
        "Aragonite saturation reaches {saturation}; above {most} calcium carbonate may fall out, and these figures hold no longer. Add less at a time.",
        saturation=significant(p["saturation"], 3),
        most=significant(p["most"], 3),
    ),
    "calcium_assumed": lambda p: say(
        "No calcium is given, so {calcium} is assumed, as natural seawater of this salinity has.",
        calcium=with_unit(significant(p["calcium"], 3), say("mg per L")),
    ),
    "ph_assumed": lambda p: say(
        "pH was not measured, so {ph} is assumed all along, and only its rise in an hour is limited. Measure it before a large correction.",
        ph=figure(p["ph"], 2),
    ),
    "ph_above_afterwards": lambda p: say(
        "At the target pH comes to {ph} once gas exchange has caught up, above the {most} usually kept. More air from outdoors does not lower it; a nearer target does.",
        ph=figure(p["ph"], 2),
        most=figure(p["most"], 1),
    ),
    "bottle_like_hydroxide": lambda p: say(
        "What is in the bottle is not known. For pH it is reckoned as hydroxide, which lifts it most."
    ),
    "constants_extrapolated": lambda p: say(
        "At a salinity of {salinity} and {degc} not all constants were measured; these figures are less certain.",
        salinity=figure(p["salinity"], 1),
        degc=with_unit(figure(p["degc"], 1), "°C"),
    ),
}
