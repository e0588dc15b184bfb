"""The sentences about a value that is too high: what to do first, what each choice does, and why one is not proposed."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import from_canonical
from evenwater.engine.units import KINDS
from evenwater.screens.field_words import FIELD_WORDS
from evenwater.screens.shown import about, figure, significant, with_unit
from evenwater.screens.terms import capitalized, listed, term
from evenwater.wording import marked, say, say_all

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
    return say(
        "{canonical} per day", canonical=value({**p, "unit": "ppt"} if p["unit"].startswith("SG") else p, canonical)
    )


def change(p: Params, canonical: float) -> str:
    """Write how far a value moves; of a specific gravity in ppt, and nothing that is only noise."""
    unit = "ppt" if p["unit"].startswith("SG") else p["unit"]
    return value({**p, "unit": unit}, canonical if canonical > _NOISE else 0.0)


def missing(path: str) -> str:
    """Return what is still to be filled in, as a sentence."""
    return say(
        "Still to be filled in: {path}.", path=say_all(FIELD_WORDS.get(path, path.rpartition(".")[2].replace("_", " ")))
    )


def _and(names: Any) -> str:
    return listed([term(str(name).replace("_", " ")) for name in names])


def _likely(p: Params) -> str:
    if p["saturation"] is None:
        head = say("Alkalinity is so high that calcium carbonate is likely to fall out and take calcium along.")
    else:
        head = say(
            "Saturation with aragonite is about {saturation}; above {most} calcium carbonate is likely to fall out and take calcium along.",
            saturation=significant(p["saturation"], 2),
            most=figure(p["most"], 1),
        )
    return f"{head} {say('No figure here holds any longer: test alkalinity, calcium and pH before anything else.')}"


SENTENCES: dict[str, Callable[[Params], str]] = {
    "recovery_target_outside": lambda p: say(
        "A target of {value} lies outside what a plan may aim for: {low} to {high}.",
        value=value(p, p["value"]),
        low=value(p, p["low"]),
        high=value(p, p["high"]),
    ),
    "recovery_not_high": lambda p: say(
        "{parameter} at {value} is not above its target of {target}. There is nothing to bring down.",
        parameter=capitalized(p["parameter"]),
        value=value(p, p["value"]),
        target=value(p, p["target"]),
    ),
    "recovery_implausible": lambda p: say(
        "A value of {value} is not likely for the {parameter} of {new}. Likely are {low} to {high}. Look at the unit, or test again.",
        value=value(p, p["value"]),
        parameter=term(p["parameter"]),
        new=say("new water") if p["new_water"] else say("a tank before anything ran in"),
        low=value(p, p["low"]),
        high=value(p, p["high"]),
    ),
    "recovery_new_water_outside": lambda p: say(
        "The new water has {value} of {parameter}, outside the hard limits of {low} to {high}. Use other new water, or put it right first.",
        value=value(p, p["value"]),
        parameter=term(p["parameter"]),
        low=value(p, p["low"]),
        high=value(p, p["high"]),
    ),
    "recovery_volume": lambda p: say(
        "The net volume may be anything from {low} to {high}. Every limit here holds at both ends.",
        low=about(1000.0 * p["low_l"]),
        high=about(1000.0 * p["high_l"]),
    ),
    "recovery_ph_not_followed": lambda p: say(
        "The pH is not followed along an exchange. Test it with every other test, and slow down if it moves by more than 0.2 in an hour."
    ),
    "recovery_raises_nothing": lambda p: say(
        "This stock raises nothing that is reckoned here. Stop the pump, test the water, and ask somebody who knows the chemical."
    ),
    "recovery_check_disagrees": lambda p: say(
        "The second reckoning differs ({what}), so nothing is proposed. Please report this question.",
        what=", ".join(p["what"]),
    ),
    "recovery_no_use": lambda p: say(
        "How much {parameter} the animals use in a day is not known, so nobody can say how long it takes them to draw it down.",
        parameter=term(p["parameter"]),
    ),
    "recovery_use_too_fast": lambda p: say(
        "With its doses held, {parameter} would fall by {use}, more than the {most} it may change.",
        parameter=term(p["parameter"]),
        use=per_day(p, p["use"]),
        most=per_day(p, p["most"]),
    ),
    "recovery_new_water_unknown": lambda p: say(
        "Test the {parameter} of the new water first.", parameter=term(p["parameter"])
    ),
    "recovery_new_water_too_high": lambda p: say(
        "The new water has {new}, which is not below the target of {target}. Exchanging cannot bring it there.",
        new=value(p, p["new"]),
        target=value(p, p["target"]),
    ),
    "recovery_falls_too_low": lambda p: say(
        "{parameter} would fall to {value}, below its hard limit of {bound}.",
        parameter=capitalized(p["parameter"]),
        value=value(p, p["value"]),
        bound=value(p, p["bound"]),
    ),
    "recovery_rises_too_high": lambda p: say(
        "{parameter} would rise to {value}, above its hard limit of {bound}.",
        parameter=capitalized(p["parameter"]),
        value=value(p, p["value"]),
        bound=value(p, p["bound"]),
    ),
    "recovery_too_long": lambda p: say(
        "It would take {parameter} more than {days}\u00a0days to come down.",
        parameter=term(p["parameter"]),
        days=figure(p["days"], 0),
    ),
    "recovery_precipitation_seen": lambda p: say(
        "Seen: {and_}. Calcium carbonate is falling out. No figure here holds any longer: test alkalinity, calcium and pH before anything else.",
        and_=_and({"cloudy": say("cloudy water"), "white_film": say("a white film")}[sign] for sign in p["signs"]),
    ),
    "recovery_precipitation_likely": _likely,
    "recovery_nothing_proposed": lambda p: say(
        "Nothing can be proposed that brings {parameter} down. Keep its doses held, test every day, and ask for advice.",
        parameter=term(p["parameter"]),
    ),
    "recovery_less_than_expected": lambda p: say(
        "{parameter} was found at {value}, less than the {expected} expected from what ran in. Less ran in, or some of it has fallen out already.",
        parameter=capitalized(p["parameter"]),
        value=value(p, p["value"]),
        expected=value(p, p["expected"]),
    ),
    "recovery_also_too_high": lambda p: say(
        "{parameter} is too high as well: {value}, more than the {most} no plan may aim for.",
        parameter=capitalized(p["parameter"]),
        value=value(p, p["value"]),
        most=value(p, p["most"]),
    ),
    "recovery_assumed": lambda p: say(
        "The last test of {names} is not given; the top of the range usually kept is assumed. Test it.",
        names=_and(p["names"]),
    ),
    "recovery_held_use_unknown": lambda p: say(
        "The doses of {names} are held too, but its use is not known: it falls by an unknown amount. Test it as often.",
        names=_and(p["names"]),
    ),
    "recovery_not_followed": lambda p: say(
        "Of {names} the value in the tank or in the new water is not known, so its change is neither reckoned nor limited.",
        names=_and(p["names"]),
    ),
    "recovery_temperature_unknown": lambda p: say("Bring the new water to the tank's temperature before it goes in."),
    "recovery_temperature_differs": lambda p: say(
        "The new water has {new}, the tank {tank}. Bring it to the tank's temperature first.",
        new=with_unit(figure(p["new_c"], 1), "°C"),
        tank=with_unit(figure(p["tank_c"], 1), "°C"),
    ),
}

# What comes first, in this order.
STOP = {
    "pump_off": marked("Switch the dosing pump off, and pull its plug with dry hands."),
    "line_out": marked("Take the line out of the jug and lift its outlet out of the water. Nothing may run on."),
    "no_counter_dose": marked("Dose nothing against it. A second chemical adds a second shock."),
    "no_acid": marked("Add no acid, whatever pH shows."),
    "test": marked(
        "Test alkalinity, calcium, magnesium, pH and salinity now, in water taken far from the outlet. Note the time."
    ),
    "call": marked("Call whoever is in charge of the system, and tell what ran in, how much and when."),
}
# The same in letters that are read from 2 m.
SHORT = {
    "pump_off": marked("Pump off. Pull its plug."),
    "line_out": marked("Line out of the jug."),
    "no_counter_dose": marked("Dose nothing against it."),
    "no_acid": marked("Add no acid."),
    "test": marked("Test the water now."),
    "call": marked("Call the keeper."),
}
# And in two words each, where the paper is a hand wide.
SHORTEST = {
    "pump_off": marked("Pump off"),
    "line_out": marked("Line out"),
    "no_counter_dose": marked("No doses"),
    "no_acid": marked("No acid"),
    "test": marked("Test water"),
    "call": marked("Call keeper"),
}
POSSIBLE, AFTER_TEST, NOT_PROPOSED = marked("possible"), marked("only after a new test"), marked("not proposed")
CHOICES = {
    "hold": marked("Hold the doses and wait"),
    "exchange": marked("Exchange water, not counting on any use"),
    "both": marked("Hold the doses and exchange water, counting on the use"),
}
HELD = marked("In every choice the doses of what is too high stay held, and no chemical is given against it.")
EXCHANGED = marked("New water goes in as fast as old water goes out, far from the animals.")


def names(items: Any) -> str:
    """Join names as a sentence does: a, b and c."""
    return _and(items)


# What the fields of a recovery are called where undo speaks of them.
RECOVERY_FIELDS = {
    "ran_in": marked("how much ran in"),
    "most_per_day": marked("the most that is exchanged in a day"),
    "cloudy": marked("whether the water is cloudy"),
    "white_film": marked("whether there is a white film"),
    "measured": marked("the reading"),
    "target": marked("the target"),
    "chosen": marked("the way that was chosen"),
    **{
        f"hold_{name}": marked("whether {name} is held")
        for name in (
            "alkalinity", "calcium", "magnesium", "potassium", "strontium", "iodide", "nitrate", "phosphate", "salinity",
        )
    },
}  # fmt: skip
