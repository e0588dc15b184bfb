"""The sentences about a reading, a target, an additive or a pump of a plan."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.screens.following_words import OF_VALUES as _FOLLOWING
from evenwater.screens.shown import Shown, about, date_time, dose, figure, significant, unit_words, with_unit
from evenwater.screens.terms import capitalized, term
from evenwater.wording import say, say_many

Params = Mapping[str, Any]


def smaller_doses(per_day: int) -> str:
    """Return how the doses of the fullest hour become smaller, or nothing where only another additive helps."""
    if per_day < 24:
        return say("Choose more doses a day. ")
    return say("Choose 24 doses a day. ") if per_day % 24 else ""


def _long_time(days: float) -> str:
    return say("more than ten years") if days > 3650.0 else say("{days} days", days=figure(days, 0))


def _implausible(p: Params, s: Shown) -> str:
    typed = with_unit(figure(p["number"], 6), unit_words(p["unit"]))
    head = say("{typed} is not a likely reading of {parameter}", typed=typed, parameter=term(p["parameter"]))
    if p["instead"]:
        number, unit, value = p["instead"][0]
        meant = with_unit(figure(number, 6), unit_words(unit))
        return say(
            "{head}: did you mean {meant} = {value}?",
            head=head,
            meant=meant,
            value=Shown(s.parameter, s.parameter.display_unit, s.water).value(value),
        )
    return say(
        "{head}. Likely are {low} to {high}. Test again.", head=head, low=s.value(p["low"]), high=s.value(p["high"])
    )


# What the planner says about a reading, a target, an additive or a pump.
OF_PLANS: dict[str, Callable[[Params, Shown], str]] = {
    **_FOLLOWING,
    "implausible": _implausible,
    "reading_in_the_future": lambda p, s: say(
        "The reading is dated {measured_at}, which is still to come. Correct the time.",
        measured_at=date_time(p["measured_at"].astimezone(s.zone)),
    ),
    "reading_stale": lambda p, s: say(
        "Reading is {age_days} days old; after {stale_days} days it is too old to correct from. Test again before raising {parameter}.",
        age_days=figure(p["age_days"], 1),
        stale_days=figure(p["stale_days"], 0),
        parameter=term(p["parameter"]),
    ),
    "target_outside": lambda p, s: say(
        "No plan may aim for {target}. Choose a target from {low} to {high}.",
        target=s.value(p["target"]),
        low=s.value(p["low"]),
        high=s.value(p["high"]),
    ),
    "target_below_measured": lambda p, s: say(
        "{parameter} is already above {target}. Nothing that is dosed lowers it: stop dosing and wait while the animals use it, or exchange water.",
        parameter=capitalized(p["parameter"]),
        target=s.value(p["target"]),
    ),
    "target_reached": lambda p, s: say(
        "{parameter} is already at {target}. Nothing to raise; dose only what is used.",
        parameter=capitalized(p["parameter"]),
        target=s.value(p["target"]),
    ),
    "rise_not_positive": lambda p, s: say("The fastest rise must be more than zero."),
    "rise_beyond_hard": lambda p, s: say(
        "{fastest} is faster than animals stand. The most that can be planned is {hard}; recommended is {recommended}.",
        fastest=s.per_day(p["fastest"]),
        hard=s.per_day(p["hard"]),
        recommended=s.per_day(p["recommended"]),
    ),
    "rise_needs_reason": lambda p, s: say(
        "{fastest} is above the recommended {recommended}. Write the reason, or slow it down.",
        fastest=s.per_day(p["fastest"]),
        recommended=s.per_day(p["recommended"]),
    ),
    "single_dose_forbids": lambda p, s: (
        (say_many("With one dose a day, it", "With {n} doses a day, each", p["per_day"]))
        + say(
            " would have to raise by more than {jump} only to keep up. Choose more doses a day.", jump=s.rise(p["jump"])
        )
    ),
    "pump_share_forbids": lambda p, s: say(
        "The pump can give {most} in 24 hours; the tank alone uses up {needs}. Use a stronger stock or a faster pump.",
        most=about(p["most_ml"]),
        needs=about(p["needs_ml"]),
    ),
    "also_raises_forbids": lambda p, s: say(
        "This additive would raise {other} as well, far beyond its limit. Choose another additive.",
        other=term(p["other"]),
    ),
    "ph_rise_forbids": lambda p, s: say(
        "To make good the daily use alone, single doses would lift pH by more than {most} in an hour. {per_day}Sodium bicarbonate does not lift it at once.",
        most=figure(p["most"], 1),
        per_day=smaller_doses(p["per_day"]),
    ),
    "ph_ceiling_forbids": lambda p, s: (
        say(
            "pH is {now} now and would come to {ph} at the target; this additive must not take it above {most}. ",
            now=figure(p["now"], 2),
            ph=figure(p["ph"], 2),
            most=figure(p["most"], 1),
        )
        + (
            say("{per_day}Use sodium bicarbonate.", per_day=smaller_doses(p["per_day"]))
            if p["ph"] < p["most"]
            else say("Use sodium bicarbonate, choose a nearer target, or dose at night and test pH then.")
        )
    ),
    "saturation_forbids": lambda p, s: (
        say(
            "Aragonite saturation is {now} now and would come to {saturation} at the target. Above {most} calcium carbonate falls out. ",
            now=significant(p["now"], 3),
            saturation=significant(p["saturation"], 3),
            most=significant(p["most"], 3),
        )
        + (smaller_doses(p["per_day"]) if p["saturation"] < p["most"] else "")
        + say("Choose a nearer target.")
    ),
    "evaporation_forbids": lambda p, s: say(
        "The tank uses up {needs} of this in 24 hours, but only {most} evaporate. Limewater alone cannot keep up: use a stronger additive besides.",
        needs=about(p["needs_ml"]),
        most=about(p["most_ml"]),
    ),
    "evaporation_unknown": lambda p, s: say(
        "It is not known how much evaporates. Top-off must leave room for {in_day} in 24 hours, or the tank overflows and its salinity falls.",
        in_day=about(p["in_day_ml"]),
    ),
    "too_slow": lambda p, s: say(
        "At this pace the correction takes {days}. Plans end after {most} days: choose a faster rise, a stronger stock or a nearer target.",
        days=_long_time(p["days"]),
        most=figure(p["most"], 0),
    ),
    "step_too_coarse": lambda p, s: say(
        "A dose of {single} rounded down to steps of {step} does not raise the value. Choose fewer doses a day, a finer step or a weaker stock.",
        single=about(p["single_ml"]),
        step=dose(p["step_ml"]),
    ),
    "dose_below_smallest": lambda p, s: _below_smallest(p),
    "check_disagrees": lambda p, s: say(
        "The second reckoning does not agree with the plan, so no plan is given. Please keep this question and report it."
    ),
    "beyond_recommended": lambda p, s: say(
        "Faster than the recommended {recommended}. Reason given: {reason}.",
        recommended=s.per_day(p["recommended"]),
        reason=p["reason"].rstrip("."),
    ),
    "age_unknown": lambda p, s: say(
        "It is not said when this was measured. Test again if it is older than {stale_days} days.",
        stale_days=figure(p["stale_days"], 0),
    ),
    "low_end_volume": lambda p, s: say(
        "The volume is not known, so its low end is used: {volume}.",
        volume=with_unit(significant(p["volume_l"], 3), "L"),
    ),
    "water_assumed": lambda p, s: say(
        "For mg per kg a salinity of {salinity} and {degc} are assumed where not given.",
        salinity=figure(p["salinity"], 1),
        degc=with_unit(figure(p["degc"], 1), "°C"),
    ),
    "target_above_range": lambda p, s: say(
        "The target is above the range usually kept, which ends at {top}.",
        top=with_unit(significant(p["top"], 3), unit_words(p["unit"])),
    ),
    "jug_too_small": lambda p, s: say(
        "One jug of {jug} is not enough: the correction takes {total}. Mix the next batch at the same strength.",
        jug=about(p["jug_ml"]),
        total=about(p["total_ml"]),
    ),
    "raises_too": lambda p, s: say(
        "Also raises {other} by {per_day}.",
        other=term(p["other"]),
        per_day=with_unit(significant(p["per_day"], 2), unit_words(p["unit"])),
    ),
    "rounding_large": lambda p, s: say(
        "Rounding the dose down to steps of {step} makes the correction {slower} times as long. Use fewer doses a day or a finer step.",
        step=dose(p["step_ml"]),
        slower=significant(p["slower"], 2),
    ),
    "dose_tiny": lambda p, s: say(
        "No pump gives {dose} at a time. Make a weaker stock, or choose fewer doses a day.", dose=dose(p["dose_ml"])
    ),
    "upkeep_too_small": lambda p, s: (
        say(
            "The upkeep of {per_day} in 24 hours is too small for this pump in so many doses, so none is given. ",
            per_day=about(p["per_day_ml"]),
        )
        + (say_many("Make a weaker stock for it.", "Give it afterwards in {n} doses a day or fewer.", p["most_doses"]))
    ),
    "no_use": lambda p, s: say(
        "No use per day is entered, so after the correction nothing is dosed. {parameter} falls by whatever the animals use.",
        parameter=capitalized(p["parameter"]),
    ),
    "whole_jug_harms": lambda p, s: say(
        "If the whole jug ran in, {parameter} would reach {value}, more than the {most} no plan may aim for. Use a smaller jug, or fill it less.",
        parameter=term(s.parameter.name),
        value=s.value(p["value"]),
        most=s.value(p["most"]),
    ),
}


def _below_smallest(p: Params) -> str:
    head = say(
        "Each dose would be {single}, below the pump's smallest accurate dose of {smallest}.",
        single=dose(p["single_ml"]),
        smallest=dose(p["smallest_ml"]),
    )
    if p["most_doses"] >= 1:
        return say(
            "{head} Choose {most_doses} doses a day or fewer, or a weaker stock.", head=head, most_doses=p["most_doses"]
        )
    return say("{head} Use a weaker stock or a finer pump.", head=head)
