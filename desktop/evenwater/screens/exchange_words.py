"""The sentences about a continuous exchange: the pair, the new water, the values and the mixing bucket."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import from_canonical
from evenwater.engine.units import KINDS
from evenwater.screens.shown import about, figure, significant, span, with_unit
from evenwater.screens.terms import capitalized, term
from evenwater.wording import marked, say

Params = Mapping[str, Any]
_LEAST_SHARE = 1e-4


def _value(p: Params, name: str) -> str:
    number = from_canonical(p[name], p["kind"], p["unit"], p["water"])
    return with_unit(significant(number, 3), KINDS[p["kind"]].unit(p["unit"]).shown)


def _degrees(celsius: float) -> str:
    return with_unit(figure(celsius, 1), "°C")


def percent(share: float) -> str:
    """Write a share.

    Parameters
    ----------
    share : float
        Share [1].

    Returns
    -------
    str
        Percent, to three digits; of less than a hundredth of a percent, that it is less.
    """
    return (
        say("under {with_unit}", with_unit=with_unit("0.01", "%"))
        if 0.0 < share < _LEAST_SHARE
        else with_unit(significant(100.0 * share, 3), "%")
    )


def between(low: float, high: float) -> str:
    """Write a band of shares rounded inwards, so that what stands at either end is still inside.

    Parameters
    ----------
    low, high : float
        Ends of the band [1].

    Returns
    -------
    str
        Percent, to a tenth.
    """
    inside = math.ceil(1000.0 * low - 1e-9) / 10.0, math.floor(1000.0 * high + 1e-9) / 10.0
    return say(
        "{inside} to {inside_2}",
        inside=with_unit(figure(inside[0], 1), "%"),
        inside_2=with_unit(figure(inside[1], 1), "%"),
    )


SENTENCES: dict[str, Callable[[Params], str]] = {
    "exchange_disagrees": lambda p: say(
        "Two ways to reckon this exchange differ for {what}, so nothing is said. Please report this question.",
        what=", ".join(p["what"]),
    ),
    "exchange_fed": lambda p: say(
        "What is fed ({names}) counts as if all of it became nitrate and phosphate: the most it can bring. Growth and skimmer make it less.",
        names=", ".join(filter(None, p["names"])) or say("without a name"),
    ),
    "exchange_value_twice": lambda p: say(
        "{parameter} stands here twice. Leave one of them out.", parameter=capitalized(p["parameter"])
    ),
    "exchange_dose_of_none": lambda p: say(
        "{parameter} is not among the values looked at. Add it to them, or leave out the dose.",
        parameter=capitalized(p["parameter"]),
    ),
    "exchange_dose_too_late": lambda p: say(
        "This dose comes after the {days} days looked at. Look further, or leave it out.",
        days=significant(p["days"], 4),
    ),
    "exchange_floods": lambda p: say(
        "More comes in than goes out and evaporates: {per_day} a day, until the tank runs over. Set the pump for new water lower.",
        per_day=about(p["per_day_ml"]),
    ),
    "exchange_mix_of_fresh": lambda p: say(
        "Fresh water needs no salt mix. Write the salinity that the new water should have."
    ),
    "exchange_nothing_out": lambda p: say("No old water is taken out, so nothing that gathers leaves the tank."),
    "exchange_pair_apart": lambda p: say(
        "The pumps are not matched: with the level held by top-off, salinity settles at {settles}, new water having {new}. To hold it within 0.5, the new water must be {low} of the old; it is {ratio}. Calibrate both pumps.",
        settles=significant(p["settles"], 3),
        new=significant(p["new"], 3),
        low=between(p["low"], p["high"]),
        ratio=percent(p["ratio"]),
    ),
    "exchange_may_flood": lambda p: say(
        "{per_day} a day more come in than go out. Unless as much evaporates, the tank runs over. Measure the evaporation.",
        per_day=about(p["per_day_ml"]),
    ),
    "exchange_top_off_more": lambda p: say(
        "{per_day} a day more go out than come in. Top-off makes that good with fresh water; without it the level falls.",
        per_day=about(p["per_day_ml"]),
    ),
    "exchange_salinity_apart": lambda p: say(
        "The new water has a salinity of {new}, the tank {tank}. Common practice: bring it within {most} of the tank before the exchange is started.",
        new=significant(p["new"], 3),
        tank=significant(p["tank"], 3),
        most=significant(p["most"], 2),
    ),
    "exchange_temperature_apart": lambda p: say(
        "The new water has {new}, the tank {tank}. Common practice: bring it within {most}, or make sure that the heater keeps up.",
        new=_degrees(p["new"]),
        tank=_degrees(p["tank"]),
        most=_degrees(p["most"]),
    ),
    "exchange_rise_too_fast": lambda p: say(
        "{parameter} would rise by {rise} in 24 hours, more than the {most} that no plan may pass. Exchange less, or bring the new water nearer.",
        parameter=capitalized(p["parameter"]),
        rise=_value(p, "rise"),
        most=_value(p, "most"),
    ),
    "exchange_rise_fast": lambda p: say(
        "{parameter} would rise by {rise} in 24 hours; {most} is recommended at most.",
        parameter=capitalized(p["parameter"]),
        rise=_value(p, "rise"),
        most=_value(p, "most"),
    ),
    "exchange_fall_too_fast": lambda p: say(
        "{parameter} would fall by {fall} in 24 hours, more than the {most} that no plan may pass. Exchange less, bring the new water nearer, or dose what is used.",
        parameter=capitalized(p["parameter"]),
        fall=_value(p, "fall"),
        most=_value(p, "most"),
    ),
    "exchange_fall_fast": lambda p: say(
        "{parameter} would fall by {fall} in 24 hours; {most} is recommended at most.",
        parameter=capitalized(p["parameter"]),
        fall=_value(p, "fall"),
        most=_value(p, "most"),
    ),
    "exchange_alkalinity_apart": lambda p: say(
        "The new water has an alkalinity of {new}, the tank {tank}. Common practice: bring it within {most}, or keep the exchange slow and test often.",
        new=_value(p, "new"),
        tank=_value(p, "tank"),
        most=_value(p, "most"),
    ),
    "exchange_runs_out": lambda p: say(
        "With this use nothing of {parameter} would be left after {days}. Dose it, or look whether the use is right.",
        parameter=term(p["parameter"]),
        days=span(p["days"]),
    ),
    "exchange_never_settles": lambda p: say(
        "{parameter} never settles: nothing that gathers leaves the tank.", parameter=capitalized(p["parameter"])
    ),
    "exchange_settles_outside": lambda p: say(
        "{parameter} settles at {settles}, outside the {low} to {high} usually kept.",
        parameter=capitalized(p["parameter"]),
        settles=_value(p, "settles"),
        low=_value(p, "low"),
        high=_value(p, "high"),
    ),
    "exchange_new_water_assumed": lambda p: say(
        "Nobody said how much {parameter} the new water has: natural seawater is assumed, {value}. Test it.",
        parameter=term(p["parameter"]),
        value=_value(p, "value"),
    ),
    "exchange_brings_too_much": lambda p: say(
        "The new water brings more {parameter} than is used, so that the value rises without any dose.",
        parameter=term(p["parameter"]),
    ),
    "exchange_test_the_bucket": lambda p: say(
        "Test the bucket's salinity when all is dissolved and at the tank's temperature, before it is used."
    ),
    "exchange_salt_alone": lambda p: say(
        "The bucket is {short} short. Common practice: sodium chloride makes good {most} at most, since it shifts the balance of the salts. Add salt mix instead.",
        short=significant(p["short"], 2),
        most=significant(p["most"], 2),
    ),
}

# By what it says nothing else may be mixed.
LABEL_ONLY = marked(
    "Salt mix is reckoned from the bag's own label only. Weigh it, and let all of it dissolve before testing."
)
