"""The sentences about an upkeep. None needs the keeper's unit: their figures come with it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.screens.shown import about, dose, figure, significant, with_unit
from evenwater.screens.terms import listed, term
from evenwater.wording import say

Params = Mapping[str, Any]


def _cap(text: str) -> str:
    """Return a sentence's first word with its capital; the rest as it is."""
    said = term(text)
    return said[:1].upper() + said[1:]


def _all(names: tuple[str, ...]) -> str:
    """Join names as a sentence does: a, b and c."""
    return listed([term(name) for name in names])


def _amount(p: Params, name: str, digits: int = 3) -> str:
    return with_unit(significant(p[name], digits), p["unit"])


def _too_much(p: Params) -> str:
    additive = _cap(say("{additive} for {for_}", additive=p["additive"] or say("the bottle"), for_=p["for"]))
    head = (
        say("{additive} and the other additives bring", additive=additive)
        if p["with_others"]
        else say("{additive} brings", additive=additive)
    )
    name = p["parameter"]
    return say(
        "{head} {brought} of {name}, more than the {used} used. Choose another additive, or take {name} off the list and watch it rise.",
        head=head,
        brought=_amount(p, "brought", 4),
        name=term(name),
        used=_amount(p, "used", 4),
    )


def _below_smallest(p: Params) -> str:
    head = say(
        "Each dose for {parameter} would be {dose}, below the pump's smallest accurate dose of {smallest}.",
        parameter=term(p["parameter"]),
        dose=dose(p["dose_ml"]),
        smallest=dose(p["smallest_ml"]),
    )
    if p["most_doses"] < 1:
        return say("{head} Use a weaker stock or a finer pump.", head=head)
    return say(
        "{head} Choose {most_doses} doses a day or fewer, or a weaker stock.", head=head, most_doses=p["most_doses"]
    )


def _daily_rise(p: Params) -> str:
    head = say(
        "{parameter} would rise by {rise}, more than the {most} it may.",
        parameter=_cap(p["parameter"]),
        rise=_amount(p, "rise"),
        most=_amount(p, "most"),
    )
    if p["with_correction"]:
        return say(
            "{head} The doses of the correction make good the daily use already: begin this upkeep when it is over.",
            head=head,
        )
    return say("{head} Choose an additive that brings less of it.", head=head)


def _smaller(per_day: tuple[int, ...]) -> str:
    """Return how the doses of the fullest hour become smaller, or nothing where only another additive helps."""
    if min(per_day) < 24:
        return say("Choose more doses a day. ")
    return say("Choose 24 doses a day. ") if any(count % 24 for count in per_day) else ""


def _apart(p: Params) -> str:
    minutes = with_unit(figure(p["minutes"], 0), "min")
    head = say(
        "Keep the doses for {first} and for {second} at least {minutes} apart, and let them flow in at different places: together they fall out.",
        first=term(p["first"]),
        second=term(p["second"]),
        minutes=minutes,
    )
    if p["widest_min"] >= p["minutes"]:
        return head
    widest = with_unit(figure(p["widest_min"], 1), "min")
    return say(
        "{head} With these doses a day they come no further apart than {widest}: choose the same number for both, {most_doses} or fewer.",
        head=head,
        widest=widest,
        most_doses=p["most_doses"],
    )


SENTENCES: dict[str, Callable[[Params], str]] = {
    "upkeep_nothing_kept": lambda p: say("Add a value to keep, with its use per day, its additive and its pump."),
    "upkeep_twice": lambda p: say(
        "{parameter} stands twice on the list. Keep each value with one additive.", parameter=_cap(p["parameter"])
    ),
    "upkeep_no_use": lambda p: say(
        "{parameter} has no use per day, so there is nothing to make good. Test it twice, some days apart, or take it off the list.",
        parameter=_cap(p["parameter"]),
    ),
    "upkeep_same_ratio": lambda p: say(
        "What is dosed for {first} and for {second} raises both in the same proportion, so one of them is enough. Take one off the list, or choose another additive.",
        first=term(p["first"]),
        second=term(p["second"]),
    ),
    "upkeep_brings_too_much": _too_much,
    "upkeep_no_doses": lambda p: say(
        "No doses of these additives make good {parameters} at once. Choose additives that raise one value each.",
        parameters=_all(p["parameters"]),
    ),
    "upkeep_step": lambda p: say(
        "A dose of {single} for {parameter} rounded down to steps of {step} is nothing. Choose fewer doses a day, a finer step or a weaker stock.",
        single=about(p["single_ml"]),
        parameter=term(p["parameter"]),
        step=dose(p["step_ml"]),
    ),
    "upkeep_smallest_dose": _below_smallest,
    "upkeep_pump_share": lambda p: say(
        "{parameter} needs {needs} in 24 hours, and its pump can give {most}. Use a stronger stock or a faster pump.",
        parameter=_cap(p["parameter"]),
        needs=about(p["needs_ml"]),
        most=about(p["most_ml"]),
    ),
    "upkeep_daily_rise": _daily_rise,
    "upkeep_single_dose": lambda p: say(
        "The doses of one moment would raise {parameter} by {rise}, more than the {most} they may. Choose more doses a day.",
        parameter=term(p["parameter"]),
        rise=_amount(p, "rise"),
        most=_amount(p, "most"),
    ),
    "upkeep_evaporation": lambda p: say(
        "The doses of 24 hours are {in_day}, but only {most} evaporate. Use stronger stocks, or something stronger than limewater.",
        in_day=about(p["in_day_ml"]),
        most=about(p["most_ml"]),
    ),
    "upkeep_ph_rise": lambda p: say(
        "The doses of one hour would lift pH by {rise}, more than the {most} they may. {per_day}Sodium bicarbonate does not lift it at once.",
        rise=figure(p["rise"], 2),
        most=figure(p["most"], 1),
        per_day=_smaller(p["per_day"]),
    ),
    "upkeep_ph_ceiling": lambda p: say(
        "pH is {now} now and would come to {ph} after the doses of one hour; they must not take it above {most}. {per_day}Use sodium bicarbonate, or dose at night and test pH then.",
        now=figure(p["now"], 3),
        ph=figure(p["ph"], 3),
        most=figure(p["most"], 1),
        per_day=_smaller(p["per_day"]),
    ),
    "upkeep_saturation": lambda p: say(
        "Aragonite saturation is {now} now and would come to {saturation} after the doses of one hour. Above {most} calcium carbonate falls out. {per_day}Use sodium bicarbonate, or dose at night and test pH then.",
        now=significant(p["now"], 3),
        saturation=significant(p["saturation"], 3),
        most=significant(p["most"], 3),
        per_day=_smaller(p["per_day"]),
    ),
    "upkeep_ratio": lambda p: say(
        "Calcium and alkalinity are used at {of_use}, but skeleton takes {of_skeleton}. A test may be wrong, or something falls out. Test both again.",
        of_use=with_unit(significant(p["of_use"], 3), say("mg per meq")),
        of_skeleton=with_unit(significant(p["of_skeleton"], 4), say("mg per meq")),
    ),
    "upkeep_keep_apart": _apart,
    "upkeep_beside_correction": lambda p: say(
        "A correction of {parameter} goes on for {days} more days. Its doses make good the daily use already: begin this upkeep when it is over.",
        parameter=term(p["parameter"]),
        days=significant(p["days"], 2),
    ),
    "upkeep_covered": lambda p: say(
        "The other additives bring all of the {parameter} that is used, so nothing is dosed for it.",
        parameter=term(p["parameter"]),
    ),
    "upkeep_partner_falls": lambda p: say(
        "Skeleton takes calcium and alkalinity together: {parameter} falls by {falls}, and nothing on the list makes it good.",
        parameter=term(p["parameter"]),
        falls=_amount(p, "falls"),
    ),
    "upkeep_rounding": lambda p: say(
        "Rounding down to steps of {step} leaves {lost} of the dose for {parameter} out. Use fewer doses a day or a finer step.",
        step=dose(p["step_ml"]),
        lost=with_unit(significant(100.0 * p["lost"], 2), "%"),
        parameter=term(p["parameter"]),
    ),
    "upkeep_bottle_unknown": lambda p: say(
        "What else is in the bottle for {parameter} is not known, so what it leaves behind is not counted.",
        parameter=term(p["parameter"]),
    ),
    "upkeep_ph_assumed": lambda p: say(
        "pH was not measured, so {ph} is assumed, and only its rise in an hour is limited. Measure it.",
        ph=figure(p["ph"], 1),
    ),
}
