"""The sentences about a jug: how long it lasts, how it stands, and what its levels say of the pump."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import from_canonical
from evenwater.engine.units import KINDS
from evenwater.screens.shown import about, figure, significant, span, with_unit
from evenwater.screens.terms import term
from evenwater.wording import marked, say

Params = Mapping[str, Any]


def _value(p: Params, canonical: float) -> str:
    number = from_canonical(canonical, p["kind"], p["unit"], p["water"])
    return with_unit(significant(number, 3), KINDS[p["kind"]].unit(p["unit"]).shown)


def _would_harm(p: Params) -> str:
    head = say(
        "If the whole jug ran in, {parameter} would reach {after}, more than the {most} no plan may aim for.",
        parameter=term(p["parameter"]),
        after=_value(p, p["after"]),
        most=_value(p, p["most"]),
    )
    if p["safe_ml"] < 1.0:
        return say("{head} It is too high already: dose none of it.", head=head)
    return say("{head} A jug of {safe} or less would not.", head=head, safe=about(p["safe_ml"]))


SENTENCES: dict[str, Callable[[Params], str]] = {
    "no_level": lambda p: say(
        "Read the level of the jug once at least. Two levels some days apart tell how its pump delivers."
    ),
    "nothing_reachable": lambda p: say(
        "The jug holds {holds}, and all of that is said to lie below the intake. Correct one of the two.",
        holds=about(p["holds_ml"]),
    ),
    "level_above_full": lambda p: say(
        "A level of {given} is more than the jug holds, {holds}. Correct one of the two.",
        given=about(p["given_ml"]),
        holds=about(p["holds_ml"]),
    ),
    "refill_above_full": lambda p: say(
        "A refill of {given} is more than the jug holds, {holds}. Correct one of the two.",
        given=about(p["given_ml"]),
        holds=about(p["holds_ml"]),
    ),
    "level_in_the_future": lambda p: say("The time of this level is still to come. Correct it."),
    "refill_in_the_future": lambda p: say(
        "The time of this refill is still to come. Correct it, or leave it out until it is done."
    ),
    "back_already": lambda p: say("The return lies before now. Correct its date."),
    "one_level_only": lambda p: say("One level says nothing of the pump. Read it again in a few days."),
    "too_many_levels": lambda p: say(
        "These are {count} levels; {most} can be looked at together. Leave out the oldest.",
        count=p["count"],
        most=p["most"],
    ),
    "levels_at_one_time": lambda p: say(
        "Two levels have the same time, so nothing is said of the pump. Correct one of them."
    ),
    "no_dose_between": lambda p: say("No dose falls between these levels, so they say nothing of the pump."),
    "fell_without_doses": lambda p: say(
        "The level fell without any dose. Lift the outlet out of the water at once: the jug may run in by itself."
    ),
    "siphon_possible": lambda p: say(
        "More left the jug than the pump should have taken, so it may run in by itself. Stop at once: lift the outlet out of the water and the jug below it, then test the water before anything is dosed."
    ),
    "nothing_fits": lambda p: say("No single cause explains these levels. Read them again, and note every refill."),
    "several_pumps": lambda p: say(
        "{count} pumps draw from this jug. The levels cannot tell which of them is off: look at each.", count=p["count"]
    ),
    "jug_ran_dry": lambda p: say("The jug was found dry, so only what was in it is expected to have been delivered."),
    "level_rose": lambda p: say("The level rose without a refill noted. Note the refill, or read the level again."),
    "jug_above_outlet": lambda p: say(
        "The jug stands above its outlet, so it can run in by itself when the pump head fails. Set it below the outlet."
    ),
    "outlet_under_water": lambda p: say(
        "The outlet ends under water, so the tank can run back into the jug, or the jug into the tank. Hang it above the highest water line with an air gap."
    ),
    "siphon_not_checked": lambda p: say(
        "Look whether the outlet ends above the highest water line and the jug stands below the outlet."
    ),
    "jug_empty": lambda p: say(
        "The jug is empty, or too empty for a whole dose. Refill it and prime the line. Go on with the next dose; never make up what was missed."
    ),
    "jug_low": lambda p: say("The jug is low: it lasts {days}. Mix the next batch.", days=span(p["days"])),
    "jug_lasts_hours": lambda p: say(
        "The pumps take {per_day} a day, so a full jug lasts less than two days. Make a stronger stock, as far as it dissolves.",
        per_day=about(p["per_day_ml"]),
    ),
    "jug_would_harm": _would_harm,
}

# What is looked at before a jug is connected.
CHECKS = {
    "outlet_above_water": marked("The outlet ends above the highest water line, with an air gap."),
    "jug_below_outlet": marked("The jug stands below the outlet."),
    "jug_small_enough": marked("If the whole jug ran in, no value would leave its hard range."),
    "tube_lifted": marked("With the tube lifted out of the pump, nothing runs on."),
    "outlets_apart": marked("Alkalinity and calcium have outlets of their own, apart and in strong flow."),
    "line_primed": marked("The line is primed: liquid stands at the outlet."),
}

CAUSES = {
    "well": marked("all is well"),
    "worn_head": marked("a worn pump head"),
    "blocked": marked("air in the line, or a blocked line"),
    "crust": marked("crust, or a line that is partly blocked"),
    "siphon": marked("the jug runs in by itself (siphon)"),
    "wrong_factor": marked("a pump that is not calibrated"),
    "wrong_strength": marked("a batch of another strength than noted, or another net volume"),
    "level_misread": marked("a level misread, or a refill that was not noted"),
}
CANNOT_TELL = marked("The levels cannot tell the cause.")

STEPS = {
    "lift_outlet": marked("Lift the outlet out of the water and set the jug below it. Nothing may run on."),
    "read_again": marked("Read the level again, at eye height, on level ground."),
    "refill_noted": marked("Ask whether somebody refilled the jug, or took something out."),
    "watch_outlet": marked("Watch one dose at the outlet: it comes at once, and stops at once."),
    "look_for_air": marked("Look along the line for air and kinks, then prime it."),
    "clean_outlet": marked("Look at the outlet for crust, and clean or cut it. Wear goggles."),
    "check_label": marked("Compare the jug's label with what is noted: chemical, mass, volume, date."),
    "test_again": marked("Test the water again with fresh reagent, and check the net volume."),
    "calibrate": marked("Calibrate the pump: run it a known time into a cylinder, three times."),
    "replace_head": marked("If it still delivers too little, change the head's tubing and calibrate again."),
}

MARKS = {
    "within": marked("within 5\u00a0% of what was expected"),
    "amber": marked("more than 5\u00a0% off"),
    "red": marked("more than 10\u00a0% off"),
    "too_coarse": marked("not certain: the levels are too coarse to tell 5\u00a0%"),
}

ADVICE = marked("Common practice: no jug holds more than twice what may be dosed in a day.")
NEVER_MADE_UP = marked("Missed doses are never made up: go on with the next one, as large as ever.")


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
    return say("likely") if weight >= 0.7 else say("possible") if weight >= 0.1 else say("unlikely")


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
