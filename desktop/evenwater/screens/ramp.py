"""The chart's series in the keeper's unit and real time."""

from __future__ import annotations

import math

import numpy as np

from evenwater.engine.correction import Answer
from evenwater.engine.projection import WATER_POINTS, WaterAlong, project
from evenwater.screens.shown import Shown, figure
from evenwater.screens.terms import capitalized
from evenwater.screens.views import ChartView, Floats, WaterRow
from evenwater.wording import say

_SECONDS = 86400.0


def chart(answer: Answer, shown: Shown) -> ChartView:
    """Return the chart of a plan.

    Parameters
    ----------
    answer : Answer
        The plan.
    shown : Shown
        The keeper's unit.

    Returns
    -------
    ChartView
        Values in that unit, times in seconds since the epoch (UTC).
    """
    q = answer.question
    p = project(answer)
    start = q.now.timestamp()

    def values(series: Floats) -> Floats:
        # A specific gravity is not proportional to salinity, so every point is converted by itself.
        if q.unit.startswith("SG"):
            return np.array([shown.number(float(v)) for v in series])
        return series * shown.number(1.0)

    name = capitalized(q.parameter.name)
    target = shown.number(q.target)
    decimals = 0 if target >= 100.0 else max(1, 2 - math.floor(math.log10(target)) if target > 0.0 else 2)
    return ChartView(
        times=start + p.days * _SECONDS,
        plan=values(p.plan),
        low=values(p.low),
        high=values(p.high),
        uptake_stops=values(p.uptake_stops),
        nothing=values(p.nothing),
        target=target,
        fastest=(start + p.fastest_days * _SECONDS, values(p.fastest)),
        doses_at=start + p.doses_at * _SECONDS,
        doses_ml=p.doses_ml,
        ramp_end=start + p.ramp_days * _SECONDS,
        measured_at=(q.measured_at or q.now).timestamp(),
        measured=shown.number(q.measured),
        unit=shown.unit_words,
        title=f"{name}, {shown.unit_words}",
        decimals=decimals,
        labels={
            "plan": say("plan"),
            "uptake_stops": say("if uptake stops now"),
            "nothing": say("if nothing is dosed"),
            "target": say("target"),
            "fastest": say("fastest allowed"),
        },
        water=_water(p.water, start, answer),
    )


def _water(along: WaterAlong | None, start: float, answer: Answer) -> WaterRow | None:
    if along is None or answer.tank is None:
        return None
    last = WATER_POINTS - 1
    assumed = "" if answer.tank.ph_known else say(", assumed")
    return WaterRow(
        times=start + along.days * _SECONDS,
        ph=along.ph,
        ph_after=along.ph_after,
        saturation=along.saturation,
        ph_name=say("pH {ph}{assumed}", ph=figure(float(along.ph[last]), 2), assumed=assumed),
        saturation_name=say("aragonite {saturation}", saturation=figure(float(along.saturation[last]), 1)),
    )
