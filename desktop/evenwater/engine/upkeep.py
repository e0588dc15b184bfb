"""The upkeep: give back every day what is used of several values, with additives that may raise more than one.

    A x = use, solved for all items together; each dose rounded down once; what stays followed by the exact mass balance

One frozen question in, an ``UpkeepAnswer`` or a ``Refused`` out; refusals are values with reasons.
"""

from __future__ import annotations

import math
from datetime import timedelta

from evenwater.engine import schedule, upkeep_check, upkeep_judge, upkeep_limits
from evenwater.engine.caps import calcium_per_meq
from evenwater.engine.carbonate_state import ImpossibleWaterError
from evenwater.engine.correction import LONGEST_DAYS, Refused
from evenwater.engine.limits import Nearness
from evenwater.engine.quantities import round_down
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Dissolved
from evenwater.engine.upkeep_agreement import disagreement
from evenwater.engine.upkeep_balance import Solutes, amount, drifts, given, left, salt_left, used
from evenwater.engine.upkeep_doses import Together, together
from evenwater.engine.upkeep_limits import Hour
from evenwater.engine.upkeep_plan import Pair, UpkeepAnswer, UpkeepDose
from evenwater.engine.upkeep_question import Outstanding, UpkeepItem, UpkeepQuestion
from evenwater.engine.upkeep_remarks import remarks

__all__ = ["Outstanding", "Pair", "UpkeepAnswer", "UpkeepDose", "UpkeepItem", "UpkeepQuestion", "solve"]

# Below it neither a pump nor a syringe gives anything [mL]; keeps the default step a number.
_LEAST_ML = 1e-6


def solve(question: UpkeepQuestion) -> UpkeepAnswer | Refused:
    """Plan an upkeep.

    Parameters
    ----------
    question : UpkeepQuestion
        Everything: now, the tank, the values kept with their use, additive and pump, exchange and corrections.

    Returns
    -------
    UpkeepAnswer or Refused
        The doses with what they do besides and how near each limit is, or why there are none.
    """
    q = question
    objections = upkeep_judge.objections(q)
    if objections:
        return Refused(objections)
    found = together(q)
    if isinstance(found, Refused):
        return found
    rounded = _rounded(q, found)
    if isinstance(rounded, Refused):
        return rounded
    doses_ml = tuple(dose.dose_ml for dose in rounded)
    limits = tuple(upkeep_limits.plain(q, found.solutes, doses_ml, found.ml_per_day))
    # Chemistry only of what the water may stand at all.
    refusals = upkeep_limits.refusals(limits)
    if refusals:
        return Refused(refusals)
    try:
        hour = upkeep_limits.hour_of(q, upkeep_limits.sources(q, found.solutes, doses_ml))
    except ImpossibleWaterError:
        return Refused((upkeep_limits.impossible(q.system.ph),))
    limits += () if hour is None else tuple(upkeep_limits.of_water(q, hour))
    refusals = upkeep_limits.refusals(limits)
    if refusals:
        return Refused(refusals)
    return _checked(q, found, rounded, (*(limit.near for limit in limits), *upkeep_limits.stocks(q)), hour)


def _rounded(q: UpkeepQuestion, found: Together) -> tuple[UpkeepDose, ...] | Refused:
    """Return what each pump is set to, rounded down once; refused where nothing is left of a dose that is needed."""
    water, volume = q.system.water, q.system.volume_l
    singles = [need / item.pump.doses_per_day for need, item in zip(found.ml_per_day, q.items, strict=True)]
    steps = [
        item.pump.step_ml or schedule.default_step(max(single, _LEAST_ML))
        for single, item in zip(singles, q.items, strict=True)
    ]
    doses_ml = [round_down(single, step) for single, step in zip(singles, steps, strict=True)]
    lost = tuple(
        Reason(
            "upkeep_step",
            {"parameter": item.parameter.name, "single_ml": single, "step_ml": step},
            f"item.{n}.pump.step",
        )
        for n, (item, single, step, dose) in enumerate(zip(q.items, singles, steps, doses_ml, strict=True), start=1)
        if dose == 0.0 < single
    )
    if lost:
        return Refused(lost)
    come = given(
        (each, dose * item.pump.doses_per_day / volume)
        for each, dose, item in zip(found.solutes, doses_ml, q.items, strict=True)
    )
    need = used(q)
    out = []
    for n, item in enumerate(q.items):
        name, dose = item.parameter.name, doses_ml[n]
        jug = _jug_days(item, dose)
        out.append(
            UpkeepDose(
                item=item,
                needed_ml_per_day=found.ml_per_day[n],
                own_share=found.own_share[n],
                dose_ml=dose,
                step_ml=steps[n],
                per_day=item.pump.doses_per_day,
                run_time_s=dose / item.pump.flow_ml_per_min * 60.0,
                shortfall=max(amount(name, need, water) - amount(name, come, water), 0.0),
                jug_days=jug,
                empty_at=None if jug is None else q.now + timedelta(days=_whole_doses(item, jug)),
            )
        )
    return tuple(out)


def _jug_days(item: UpkeepItem, dose_ml: float) -> float | None:
    if not isinstance(item.additive, Dissolved) or dose_ml <= 0.0:
        return None
    days = item.additive.made_up_l * 1000.0 / (dose_ml * item.pump.doses_per_day)
    return days if days < 10.0 * LONGEST_DAYS else None


def _whole_doses(item: UpkeepItem, days: float) -> float:
    """Return when the last whole dose is taken from a full jug [day]; a jug below one dose lasts until that is due."""
    return max(1, math.floor(days * item.pump.doses_per_day * (1.0 + 1e-12))) / item.pump.doses_per_day


def _checked(
    q: UpkeepQuestion, found: Together, doses: tuple[UpkeepDose, ...], limits: tuple[Nearness, ...], hour: Hour | None
) -> UpkeepAnswer | Refused:
    """Return the answer, once the second reckoning agrees with all of it."""
    come = given(
        (each, dose.in_24_hours_ml / q.system.volume_l) for each, dose in zip(found.solutes, doses, strict=True)
    )
    stays = left(come, used(q))
    moves, salt = drifts(q, stays), salt_left(q, stays)
    seen = upkeep_check.simulate(q, tuple((dose.dose_ml, dose.per_day) for dose in doses))
    answer = UpkeepAnswer(
        question=q,
        doses=doses,
        limits=limits,
        remarks=remarks(q, doses, stays, limits, hour),
        pair=_pair(q, come),
        drifts=moves,
        salt=salt,
        sodium_chloride=salt_left(q, _common_salt(stays)),
        known=all(isinstance(item.additive, Dissolved) for item in q.items),
        hour=hour,
        seen=seen,
    )
    objection = disagreement(answer)
    return answer if objection is None else Refused((objection,))


def _common_salt(stays: Solutes) -> dict[str, float]:
    both = max(min(stays.get("Na", 0.0), stays.get("Cl", 0.0)), 0.0)
    return {"Na": both, "Cl": both}


def _pair(q: UpkeepQuestion, come: Solutes) -> Pair:
    calcium, alkalinity = q.use("calcium"), q.use("alkalinity")
    dosed = amount("alkalinity", come, q.system.water)
    return Pair(
        of_skeleton=calcium_per_meq(),
        of_use=calcium / alkalinity if calcium is not None and alkalinity is not None else None,
        of_doses=amount("calcium", come, q.system.water) / dosed if dosed > 0.0 else None,
    )
