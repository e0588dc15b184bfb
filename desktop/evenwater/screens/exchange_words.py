"""The sentences about a continuous exchange: the pair, the new water, the values and the mixing bucket."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.quantities import figure, from_canonical, significant
from evenwater.engine.units import KINDS
from evenwater.screens.shown import about, span, with_unit

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
        f"under {with_unit('0.01', '%')}"
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
    return f"{with_unit(figure(inside[0], 1), '%')} to {with_unit(figure(inside[1], 1), '%')}"


SENTENCES: dict[str, Callable[[Params], str]] = {
    "exchange_disagrees": lambda p: (
        f"Two ways to reckon this exchange differ for {', '.join(p['what'])}, so nothing is said. Please report this question."
    ),
    "exchange_fed": lambda p: (
        f"What is fed ({', '.join(filter(None, p['names'])) or 'without a name'}) counts as if all of it became nitrate and phosphate: "
        "the most it can bring. Growth and skimmer make it less."
    ),
    "exchange_value_twice": lambda p: f"{p['parameter'].capitalize()} stands here twice. Leave one of them out.",
    "exchange_dose_of_none": lambda p: (
        f"{p['parameter'].capitalize()} is not among the values looked at. Add it to them, or leave out the dose."
    ),
    "exchange_dose_too_late": lambda p: (
        f"This dose comes after the {significant(p['days'], 4)} days looked at. Look further, or leave it out."
    ),
    "exchange_floods": lambda p: (
        f"More comes in than goes out and evaporates: {about(p['per_day_ml'])} a day, until the tank runs over. Set the pump for new water "
        "lower."
    ),
    "exchange_mix_of_fresh": lambda p: (
        "Fresh water needs no salt mix. Write the salinity that the new water should have."
    ),
    "exchange_nothing_out": lambda p: "No old water is taken out, so nothing that gathers leaves the tank.",
    "exchange_pair_apart": lambda p: (
        f"The pumps are not matched: with the level held by top-off, salinity settles at {significant(p['settles'], 3)}, new water "
        f"having {significant(p['new'], 3)}. To hold it within 0.5, the new water must be "
        f"{between(p['low'], p['high'])} of the old; it is {percent(p['ratio'])}. Calibrate both pumps."
    ),
    "exchange_may_flood": lambda p: (
        f"{about(p['per_day_ml'])} a day more come in than go out. Unless as much evaporates, the tank runs over. Measure the evaporation."
    ),
    "exchange_top_off_more": lambda p: (
        f"{about(p['per_day_ml'])} a day more go out than come in. Top-off makes that good with fresh water; without it the level falls."
    ),
    "exchange_salinity_apart": lambda p: (
        f"The new water has a salinity of {significant(p['new'], 3)}, the tank {significant(p['tank'], 3)}. Common practice: bring it "
        f"within {significant(p['most'], 2)} of the tank before the exchange is started."
    ),
    "exchange_temperature_apart": lambda p: (
        f"The new water has {_degrees(p['new'])}, the tank {_degrees(p['tank'])}. Common practice: bring it within "
        f"{_degrees(p['most'])}, or make sure that the heater keeps up."
    ),
    "exchange_rise_too_fast": lambda p: (
        f"{p['parameter'].capitalize()} would rise by {_value(p, 'rise')} in 24 hours, more than the {_value(p, 'most')} that no plan "
        "may pass. Exchange less, or bring the new water nearer."
    ),
    "exchange_rise_fast": lambda p: (
        f"{p['parameter'].capitalize()} would rise by {_value(p, 'rise')} in 24 hours; {_value(p, 'most')} is recommended at most."
    ),
    "exchange_fall_too_fast": lambda p: (
        f"{p['parameter'].capitalize()} would fall by {_value(p, 'fall')} in 24 hours, more than the {_value(p, 'most')} that no plan "
        "may pass. Exchange less, bring the new water nearer, or dose what is used."
    ),
    "exchange_fall_fast": lambda p: (
        f"{p['parameter'].capitalize()} would fall by {_value(p, 'fall')} in 24 hours; {_value(p, 'most')} is recommended at most."
    ),
    "exchange_alkalinity_apart": lambda p: (
        f"The new water has an alkalinity of {_value(p, 'new')}, the tank {_value(p, 'tank')}. Common practice: bring it within "
        f"{_value(p, 'most')}, or keep the exchange slow and test often."
    ),
    "exchange_runs_out": lambda p: (
        f"With this use nothing of {p['parameter']} would be left after {span(p['days'])}. Dose it, or look whether the use is right."
    ),
    "exchange_never_settles": lambda p: (
        f"{p['parameter'].capitalize()} never settles: nothing that gathers leaves the tank."
    ),
    "exchange_settles_outside": lambda p: (
        f"{p['parameter'].capitalize()} settles at {_value(p, 'settles')}, outside the {_value(p, 'low')} to {_value(p, 'high')} "
        "usually kept."
    ),
    "exchange_new_water_assumed": lambda p: (
        f"Nobody said how much {p['parameter']} the new water has: natural seawater is assumed, {_value(p, 'value')}. Test it."
    ),
    "exchange_brings_too_much": lambda p: (
        f"The new water brings more {p['parameter']} than is used, so that the value rises without any dose."
    ),
    "exchange_test_the_bucket": lambda p: (
        "Test the bucket's salinity when all is dissolved and at the tank's temperature, before it is used."
    ),
    "exchange_salt_alone": lambda p: (
        f"The bucket is {significant(p['short'], 2)} short. Common practice: sodium chloride makes good {significant(p['most'], 2)} "
        "at most, since it shifts the balance of the salts. Add salt mix instead."
    ),
}

# By what it says nothing else may be mixed.
LABEL_ONLY = "Salt mix is reckoned from the bag's own label only. Weigh it, and let all of it dissolve before testing."
