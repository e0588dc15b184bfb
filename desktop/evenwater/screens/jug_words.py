"""The sentences about a jug: how long it lasts, how it stands, and what its levels say of the pump."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import figure, from_canonical, significant
from evenwater.engine.units import KINDS
from evenwater.screens.shown import about, span, with_unit

Params = Mapping[str, Any]


def _value(p: Params, canonical: float) -> str:
    number = from_canonical(canonical, p["kind"], p["unit"], p["water"])
    return with_unit(significant(number, 3), KINDS[p["kind"]].unit(p["unit"]).shown)


def _would_harm(p: Params) -> str:
    head = (
        f"If the whole jug ran in, {p['parameter']} would reach {_value(p, p['after'])}, more than the {_value(p, p['most'])} no "
        "plan may aim for."
    )
    if p["safe_ml"] < 1.0:
        return f"{head} It is too high already: dose none of it."
    return f"{head} A jug of {about(p['safe_ml'])} or less would not."


SENTENCES: dict[str, Callable[[Params], str]] = {
    "no_level": lambda p: (
        "Read the level of the jug once at least. Two levels some days apart tell how its pump delivers."
    ),
    "nothing_reachable": lambda p: (
        f"The jug holds {about(p['holds_ml'])}, and all of that is said to lie below the intake. Correct one of the two."
    ),
    "level_above_full": lambda p: (
        f"A level of {about(p['given_ml'])} is more than the jug holds, {about(p['holds_ml'])}. Correct one of the two."
    ),
    "refill_above_full": lambda p: (
        f"A refill of {about(p['given_ml'])} is more than the jug holds, {about(p['holds_ml'])}. Correct one of the two."
    ),
    "level_in_the_future": lambda p: "The time of this level is still to come. Correct it.",
    "refill_in_the_future": lambda p: (
        "The time of this refill is still to come. Correct it, or leave it out until it is done."
    ),
    "back_already": lambda p: "The return lies before now. Correct its date.",
    "one_level_only": lambda p: "One level says nothing of the pump. Read it again in a few days.",
    "too_many_levels": lambda p: (
        f"These are {p['count']} levels; {p['most']} can be looked at together. Leave out the oldest."
    ),
    "levels_at_one_time": lambda p: (
        "Two levels have the same time, so nothing is said of the pump. Correct one of them."
    ),
    "no_dose_between": lambda p: "No dose falls between these levels, so they say nothing of the pump.",
    "fell_without_doses": lambda p: (
        "The level fell without any dose. Lift the outlet out of the water at once: the jug may run in by itself."
    ),
    "siphon_possible": lambda p: (
        "More left the jug than the pump should have taken, so it may run in by itself. Stop at once: lift the outlet out of "
        "the water and the jug below it, then test the water before anything is dosed."
    ),
    "nothing_fits": lambda p: "No single cause explains these levels. Read them again, and note every refill.",
    "several_pumps": lambda p: (
        f"{p['count']} pumps draw from this jug. The levels cannot tell which of them is off: look at each."
    ),
    "jug_ran_dry": lambda p: "The jug was found dry, so only what was in it is expected to have been delivered.",
    "level_rose": lambda p: "The level rose without a refill noted. Note the refill, or read the level again.",
    "jug_above_outlet": lambda p: (
        "The jug stands above its outlet, so it can run in by itself when the pump head fails. Set it below the outlet."
    ),
    "outlet_under_water": lambda p: (
        "The outlet ends under water, so the tank can run back into the jug, or the jug into the tank. Hang it above the highest "
        "water line with an air gap."
    ),
    "siphon_not_checked": lambda p: (
        "Look whether the outlet ends above the highest water line and the jug stands below the outlet."
    ),
    "jug_empty": lambda p: (
        "The jug is empty, or too empty for a whole dose. Refill it and prime the line. Go on with the next dose; never make "
        "up what was missed."
    ),
    "jug_low": lambda p: f"The jug is low: it lasts {span(p['days'])}. Mix the next batch.",
    "jug_lasts_hours": lambda p: (
        f"The pumps take {about(p['per_day_ml'])} a day, so a full jug lasts less than two days. Make a stronger stock, as far as it "
        "dissolves."
    ),
    "jug_would_harm": _would_harm,
}

# What is looked at before a jug is connected.
CHECKS = {
    "outlet_above_water": "The outlet ends above the highest water line, with an air gap.",
    "jug_below_outlet": "The jug stands below the outlet.",
    "jug_small_enough": "If the whole jug ran in, no value would leave its hard range.",
    "tube_lifted": "With the tube lifted out of the pump, nothing runs on.",
    "outlets_apart": "Alkalinity and calcium have outlets of their own, apart and in strong flow.",
    "line_primed": "The line is primed: liquid stands at the outlet.",
}

CAUSES = {
    "well": "all is well",
    "worn_head": "a worn pump head",
    "blocked": "air in the line, or a blocked line",
    "crust": "crust, or a line that is partly blocked",
    "siphon": "the jug runs in by itself (siphon)",
    "wrong_factor": "a pump that is not calibrated",
    "wrong_strength": "a batch of another strength than noted, or another net volume",
    "level_misread": "a level misread, or a refill that was not noted",
}
CANNOT_TELL = "The levels cannot tell the cause."

STEPS = {
    "lift_outlet": "Lift the outlet out of the water and set the jug below it. Nothing may run on.",
    "read_again": "Read the level again, at eye height, on level ground.",
    "refill_noted": "Ask whether somebody refilled the jug, or took something out.",
    "watch_outlet": "Watch one dose at the outlet: it comes at once, and stops at once.",
    "look_for_air": "Look along the line for air and kinks, then prime it.",
    "clean_outlet": "Look at the outlet for crust, and clean or cut it. Wear goggles.",
    "check_label": "Compare the jug's label with what is noted: chemical, mass, volume, date.",
    "test_again": "Test the water again with fresh reagent, and check the net volume.",
    "calibrate": "Calibrate the pump: run it a known time into a cylinder, three times.",
    "replace_head": "If it still delivers too little, change the head's tubing and calibrate again.",
}

MARKS = {
    "within": "within 5\u00a0% of what was expected",
    "amber": "more than 5\u00a0% off",
    "red": "more than 10\u00a0% off",
    "too_coarse": "not certain: the levels are too coarse to tell 5\u00a0%",
}

ADVICE = "Common practice: no jug holds more than twice what may be dosed in a day."
NEVER_MADE_UP = "Missed doses are never made up: go on with the next one, as large as ever."


def likely(weight: float) -> str:
    """Say in a word how likely a cause is.

    Parameters
    ----------
    weight : float
        Its weight among all causes [1].

    Returns
    -------
    str
        Likely from seven tenths on, possible from one tenth on, else unlikely.
    """
    return "likely" if weight >= 0.7 else "possible" if weight >= 0.1 else "unlikely"


def percent(share: float) -> str:
    """Write a share.

    Parameters
    ----------
    share : float
        Share [1].

    Returns
    -------
    str
        Percent with up to one digit after the point.
    """
    return with_unit(figure(100.0 * share, 1), "%")
