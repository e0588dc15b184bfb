"""The sentences about a value that is too high: what to do first, what each choice does, and why one is not proposed."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import figure, from_canonical, significant
from evenwater.engine.units import KINDS
from evenwater.screens.field_words import FIELD_WORDS
from evenwater.screens.shown import NBSP, about, with_unit

Params = Mapping[str, Any]
# Below this [canonical unit] two reckonings of nothing differ.
_NOISE = 1e-9


def value(p: Params, canonical: float) -> str:
    """Write a value in the unit of its parameter.

    Parameters
    ----------
    p : mapping
        Kind, unit and water of the parameter.
    canonical : float
        The value [canonical unit].

    Returns
    -------
    str
        Three digits and the unit; five digits of a specific gravity.
    """
    number = from_canonical(canonical, p["kind"], p["unit"], p["water"])
    return with_unit(
        significant(number, 5 if p["unit"].startswith("SG") else 3), KINDS[p["kind"]].unit(p["unit"]).shown
    )


def per_day(p: Params, canonical: float) -> str:
    """Write a change per day; of a specific gravity in ppt."""
    return f"{value({**p, 'unit': 'ppt'} if p['unit'].startswith('SG') else p, canonical)} per day"


def change(p: Params, canonical: float) -> str:
    """Write how far a value moves; of a specific gravity in ppt, and nothing that is only noise."""
    unit = "ppt" if p["unit"].startswith("SG") else p["unit"]
    return value({**p, "unit": unit}, canonical if canonical > _NOISE else 0.0)


def missing(path: str) -> str:
    """Return what is still to be filled in, as a sentence."""
    return f"Still to be filled in: {FIELD_WORDS.get(path, path.rpartition('.')[2].replace('_', ' '))}."


def _and(names: Any) -> str:
    items = [str(name).replace("_", " ") for name in names]
    return items[0] if len(items) == 1 else f"{', '.join(items[:-1])} and {items[-1]}"


def _likely(p: Params) -> str:
    head = "Alkalinity is so high that calcium carbonate is likely to fall out"
    if p["saturation"] is not None:
        head = (
            f"Saturation with aragonite is about {significant(p['saturation'], 2)}; above {figure(p['most'], 1)} calcium carbonate is likely to "
            "fall out"
        )
    return f"{head} and take calcium along. No figure here holds any longer: test alkalinity, calcium and pH before anything else."


SENTENCES: dict[str, Callable[[Params], str]] = {
    "recovery_target_outside": lambda p: (
        f"A target of {value(p, p['value'])} lies outside what a plan may aim for: {value(p, p['low'])} to {value(p, p['high'])}."
    ),
    "recovery_not_high": lambda p: (
        f"{p['parameter'].capitalize()} at {value(p, p['value'])} is not above its target of {value(p, p['target'])}. There is nothing to bring down."
    ),
    "recovery_implausible": lambda p: (
        f"A value of {value(p, p['value'])} is not likely for the {p['parameter']} of "
        f"{'new water' if p['new_water'] else 'a tank before anything ran in'}. "
        f"Likely are {value(p, p['low'])} to {value(p, p['high'])}. Look at the unit, or test again."
    ),
    "recovery_new_water_outside": lambda p: (
        f"The new water has {value(p, p['value'])} of {p['parameter']}, outside the hard limits of {value(p, p['low'])} to {value(p, p['high'])}. "
        "Use other new water, or put it right first."
    ),
    "recovery_volume": lambda p: (
        f"The net volume may be anything from {about(1000.0 * p['low_l'])} to {about(1000.0 * p['high_l'])}. Every limit here holds at both ends."
    ),
    "recovery_ph_not_followed": lambda p: (
        "The pH is not followed along an exchange. Test it with every other test, and slow down if it moves by more than 0.2 in an hour."
    ),
    "recovery_raises_nothing": lambda p: (
        "This stock raises nothing that is reckoned here. Stop the pump, test the water, and ask somebody who knows the chemical."
    ),
    "recovery_check_disagrees": lambda p: (
        f"The second reckoning differs ({', '.join(p['what'])}), so nothing is proposed. Please report this question."
    ),
    "recovery_no_use": lambda p: (
        f"How much {p['parameter']} the animals use in a day is not known, so nobody can say how long it takes them to draw it down."
    ),
    "recovery_use_too_fast": lambda p: (
        f"With its doses held, {p['parameter']} would fall by {per_day(p, p['use'])}, more than the {per_day(p, p['most'])} it may change."
    ),
    "recovery_new_water_unknown": lambda p: f"Test the {p['parameter']} of the new water first.",
    "recovery_new_water_too_high": lambda p: (
        f"The new water has {value(p, p['new'])}, which is not below the target of {value(p, p['target'])}. Exchanging cannot bring it there."
    ),
    "recovery_falls_too_low": lambda p: (
        f"{p['parameter'].capitalize()} would fall to {value(p, p['value'])}, below its hard limit of {value(p, p['bound'])}."
    ),
    "recovery_rises_too_high": lambda p: (
        f"{p['parameter'].capitalize()} would rise to {value(p, p['value'])}, above its hard limit of {value(p, p['bound'])}."
    ),
    "recovery_too_long": lambda p: (
        f"It would take {p['parameter']} more than {figure(p['days'], 0)}{NBSP}days to come down."
    ),
    "recovery_precipitation_seen": lambda p: (
        f"Seen: {_and({'cloudy': 'cloudy water', 'white_film': 'a white film'}[sign] for sign in p['signs'])}. Calcium carbonate is falling "
        "out. No figure here holds any longer: test alkalinity, calcium and pH before anything else."
    ),
    "recovery_precipitation_likely": _likely,
    "recovery_nothing_proposed": lambda p: (
        f"Nothing can be proposed that brings {p['parameter']} down. Keep its doses held, test every day, and ask for advice."
    ),
    "recovery_less_than_expected": lambda p: (
        f"{p['parameter'].capitalize()} was found at {value(p, p['value'])}, less than the {value(p, p['expected'])} expected from what ran in. Less "
        "ran in, or some of it has fallen out already."
    ),
    "recovery_also_too_high": lambda p: (
        f"{p['parameter'].capitalize()} is too high as well: {value(p, p['value'])}, more than the {value(p, p['most'])} no plan may aim for."
    ),
    "recovery_assumed": lambda p: (
        f"The last test of {_and(p['names'])} is not given; the top of the range usually kept is assumed. Test it."
    ),
    "recovery_held_use_unknown": lambda p: (
        f"The doses of {_and(p['names'])} are held too, but its use is not known: it falls by an unknown amount. Test it as often."
    ),
    "recovery_not_followed": lambda p: (
        f"Of {_and(p['names'])} the value in the tank or in the new water is not known, so its change is neither reckoned nor limited."
    ),
    "recovery_temperature_unknown": lambda p: "Bring the new water to the tank's temperature before it goes in.",
    "recovery_temperature_differs": lambda p: (
        f"The new water has {with_unit(figure(p['new_c'], 1), '°C')}, the tank {with_unit(figure(p['tank_c'], 1), '°C')}. Bring it to the "
        "tank's temperature first."
    ),
}

# What comes first, in this order.
STOP = {
    "pump_off": "Switch the dosing pump off, and pull its plug with dry hands.",
    "line_out": "Take the line out of the jug and lift its outlet out of the water. Nothing may run on.",
    "no_counter_dose": "Dose nothing against it. A second chemical adds a second shock.",
    "no_acid": "Add no acid, whatever pH shows.",
    "test": "Test alkalinity, calcium, magnesium, pH and salinity now, in water taken far from the outlet. Note the time.",
    "call": "Call whoever is in charge of the system, and tell what ran in, how much and when.",
}
# The same in letters that are read from 2 m.
SHORT = {
    "pump_off": "Pump off. Pull its plug.",
    "line_out": "Line out of the jug.",
    "no_counter_dose": "Dose nothing against it.",
    "no_acid": "Add no acid.",
    "test": "Test the water now.",
    "call": "Call the keeper.",
}
# And in two words each, where the paper is a hand wide.
SHORTEST = {
    "pump_off": "Pump off",
    "line_out": "Line out",
    "no_counter_dose": "No doses",
    "no_acid": "No acid",
    "test": "Test water",
    "call": "Call keeper",
}
POSSIBLE, AFTER_TEST, NOT_PROPOSED = "possible", "only after a new test", "not proposed"
CHOICES = {
    "hold": "Hold the doses and wait",
    "exchange": "Exchange water, not counting on any use",
    "both": "Hold the doses and exchange water, counting on the use",
}
HELD = "In every choice the doses of what is too high stay held, and no chemical is given against it."
EXCHANGED = "New water goes in as fast as old water goes out, far from the animals."


def names(items: Any) -> str:
    """Join names as a sentence does: a, b and c."""
    return _and(items)


# What the fields of a recovery are called where undo speaks of them.
RECOVERY_FIELDS = {
    "ran_in": "how much ran in",
    "most_per_day": "the most that is exchanged in a day",
    "cloudy": "whether the water is cloudy",
    "white_film": "whether there is a white film",
    "measured": "the reading",
    "target": "the target",
    "chosen": "the way that was chosen",
    **{
        f"hold_{name}": f"whether {name} is held"
        for name in (
            "alkalinity", "calcium", "magnesium", "potassium", "strontium", "iodide", "nitrate", "phosphate", "salinity",
        )
    },
}  # fmt: skip
