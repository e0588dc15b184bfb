"""The correction: raise one value slowly, at the pace the tightest limit allows, then keep it.

    pace r = smallest of all caps;  q = (r + u) V / s;  T = (C1 - C0) / r;  total = q T;  upkeep u V / s

One frozen question in, an ``Answer`` or a ``Refused`` out; refusals are values with reasons.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

import numpy as np

from evenwater.engine import caps as limits_of
from evenwater.engine import check, judge, schedule, uncertainty, water_limits
from evenwater.engine.balance import pulse
from evenwater.engine.carbonate_state import ImpossibleWaterError
from evenwater.engine.limits import Cap, Nearness, pace
from evenwater.engine.quantities import round_down
from evenwater.engine.question import (
    LABEL_UNCERTAINTY,
    PUMP_UNCERTAINTY,
    STRENGTH_UNCERTAINTY,
    USE_UNCERTAINTY,
    CorrectionQuestion,
)
from evenwater.engine.reasons import Reason
from evenwater.engine.remarks import Plan, remarks
from evenwater.engine.schedule import Schedule
from evenwater.engine.stock import Dissolved, strength
from evenwater.engine.water_limits import PH_ASSUMED, PH_KEPT, PH_RISE_PER_HOUR, SATURATION_CEILING, TankChemistry

LONGEST_DAYS = 365.0
CARD_DAYS = 30.0
# An additive whose side effect slows the plan below this share of the wanted pace is the wrong one.
SIDE_EFFECT_SHARE = 0.1
# The planner and the simulation reckon the same sums in another order; more than this is a fault.
AGREEMENT = 1e-9
# The same of pH, whose two solvers stop at 1e-11 and 1e-12.
PH_AGREEMENT = 1e-8


@dataclass(frozen=True)
class Refused:
    """No plan: the reasons say what stands in the way and what to do instead."""

    reasons: tuple[Reason, ...]


@dataclass(frozen=True)
class Answer:
    """A plan. Nothing is rounded but ``doses``.

    ``per_ml`` is the rise by a millilitre [canonical unit per mL], ``strength`` what a millilitre carries [canonical unit times L per mL],
    ``pace`` the rise [canonical unit per day], ``set_by`` the code of the limit that binds. ``band`` is the end's interval [canonical
    unit], ``by_source`` the share of each source in it [1], ``whole_jug`` what the water would hold had the whole jug run in [canonical
    unit] and ``stop_above`` the reading at which to stop [canonical unit].
    """

    question: CorrectionQuestion
    per_ml: float
    strength: float
    pace: float
    set_by: str
    dose_ml_per_day: float
    single_dose_ml: float
    run_time_s: float
    lasts_days: float
    total_ml: float
    upkeep_ml_per_day: float
    doses: Schedule
    limits: tuple[Nearness, ...]
    remarks: tuple[Reason, ...]
    seen: check.Seen
    band: tuple[float, float]
    by_source: dict[str, float]
    whole_jug: float | None
    never_more_ml: float
    stop_above: float
    retest_at: datetime
    ends_at: datetime
    runs_out_at: datetime | None
    valid_until: datetime
    tank: TankChemistry | None


def solve(question: CorrectionQuestion) -> Answer | Refused:
    """Plan a correction.

    Parameters
    ----------
    question : CorrectionQuestion
        Everything: now, reading, target, use, additive, pump and limits.

    Returns
    -------
    Answer or Refused
        The plan with what binds and how near each limit is, or why there is none.
    """
    objections = judge.objections(question)
    if objections:
        return Refused(objections)
    q = question
    amount = strength(q.additive, q.parameter.name, q.parameter.kind, q.system.water)
    per_ml = pulse(1.0, amount, q.system.volume_l)
    try:
        tank = water_limits.chemistry_of(q, per_ml)
    except ImpossibleWaterError:
        return Refused((_impossible(q, per_ml),))
    bound = pace(limits_of.caps(q, per_ml, tank))
    hopeless = _hopeless(q, bound)
    if hopeless is not None:
        return Refused((hopeless,))
    climb = q.target - q.start
    rise = bound.fastest
    in_day = (rise + q.use) / per_ml
    single = in_day / q.pump.doses_per_day
    # No dose is larger than the whole climb takes, so the step is that of such a dose.
    step = q.pump.step_ml or schedule.default_step(min(single, (climb + q.use / q.pump.doses_per_day) / per_ml))
    terms = schedule.Terms(
        climb, q.use, per_ml, q.pump.doses_per_day, q.pump.flow_ml_per_min, step, q.pump.smallest_ml or 0.0
    )
    doses = schedule.make(single, terms)
    too_small = None if doses is None else _below_smallest(q, in_day, per_ml, doses)
    if too_small is not None:
        return Refused((too_small,))
    if doses is None or doses.lasts_days > LONGEST_DAYS:
        return Refused((Reason("step_too_coarse", {"single_ml": single, "step_ml": step}, "pump.step"),))
    seen = check.simulate(q, _told(doses))
    objection = disagreement(q, doses, per_ml, seen)
    if objection is not None:
        return Refused((objection,))
    return _answer(q, amount, per_ml, bound.code, rise, doses, seen, tank)


def _hopeless(q: CorrectionQuestion, bound: Cap) -> Reason | None:
    """Return why the limit that binds leaves no plan at all, or None."""
    side_effect = bound.code.startswith("also_raises") and bound.fastest < SIDE_EFFECT_SHARE * limits_of.allowed_rise(q)
    if bound.fastest <= 0.0 or side_effect:
        return Reason(f"{bound.reason.code}_forbids", bound.reason.params, bound.reason.path)
    lasts = (q.target - q.start) / bound.fastest
    if lasts > LONGEST_DAYS:
        return Reason("too_slow", {"days": lasts, "most": LONGEST_DAYS}, "change.fastest_rise")
    return None


def _impossible(q: CorrectionQuestion, per_ml: float) -> Reason:
    """Return what to say of a water that cannot be: it has the pH that was measured, or all that this plan would bring."""
    if q.system.ph is not None:
        return Reason("impossible_water", {"ph": q.system.ph}, "system.ph")
    # Nobody measured the pH: what is wrong is the additive, as phosphate for potassium is, or the alkalinity.
    hopeless = _hopeless(q, pace(limits_of.caps(q, per_ml, None)))
    return hopeless or Reason("impossible_water", {"ph": PH_ASSUMED}, "system.alkalinity")


def _below_smallest(q: CorrectionQuestion, in_day: float, per_ml: float, doses: Schedule) -> Reason | None:
    smallest = q.pump.smallest_ml
    if smallest is None or doses.dose_ml >= smallest:
        return None
    fewer = _fewer_doses(q, in_day, per_ml, math.ceil(smallest / doses.step_ml - 1e-9) * doses.step_ml)
    params = {"single_ml": doses.dose_ml, "smallest_ml": smallest, "most_doses": fewer}
    return Reason("dose_below_smallest", params, "pump.doses_per_day")


def _fewer_doses(q: CorrectionQuestion, in_day: float, per_ml: float, least: float) -> int:
    """Return with how many doses a day each is at least so large [mL] and there is a plan; none when fewer do not help."""
    fewer = math.floor(in_day / least + 1e-9)
    # A dose must not be more than the climb takes and what is used until it comes.
    over = least * per_ml - (q.target - q.start)
    if over > 0.0:
        fewer = min(fewer, math.floor(q.use / over + 1e-9))
    if not 1 <= fewer < q.pump.doses_per_day or least * per_ml > limits_of.dose_rise(q):
        return 0
    # What else stands in the way of few and large doses, as pH, only planning them shows.
    planned = solve(replace(q, pump=replace(q.pump, doses_per_day=fewer)))
    if isinstance(planned, Answer):
        return fewer
    (reason, *_) = planned.reasons
    return int(str(reason.params["most_doses"])) if reason.code == "dose_below_smallest" else 0


def _told(doses: Schedule) -> check.Doses:
    return check.Doses(doses.dose_ml, doses.count, doses.upkeep_ml, doses.per_day, doses.interval_days, doses.per_day)


def disagreement(q: CorrectionQuestion, doses: Schedule, per_ml: float, seen: check.Seen) -> Reason | None:
    """Hold the simulation against the plan and the limits; a plan that fails is never given out.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.
    doses : Schedule
        The plan's doses.
    per_ml : float
        Rise by one millilitre, as the planner has it [canonical unit per mL].
    seen : check.Seen
        What the simulation saw.

    Returns
    -------
    Reason or None
        Why the plan must be refused, or None when both agree and no limit is passed.
    """
    ends = q.target - doses.shortfall
    slack = 1.0 + AGREEMENT
    per_second = q.pump.flow_ml_per_min / 60.0
    faults = {
        "end": abs(seen.end_value - ends) <= AGREEMENT * abs(q.target),
        "total": abs(seen.total_ml - doses.total_ml) <= AGREEMENT * doses.total_ml + 1e-9,
        "rise": seen.highest_rise_in_24_hours <= limits_of.allowed_rise(q) * slack,
        "day": seen.highest_rise_in_24_hours + max(q.untested, q.lately)
        <= q.parameter.canonical(q.parameter.rise_hard) * slack,
        "overshoot": seen.highest_value <= q.target * slack,
        "jump": seen.largest_jump <= limits_of.dose_rise(q) * slack,
        "running": doses.per_day * doses.run_time_s <= q.pump.largest_share * 86400.0 * slack,
        "seconds": math.isclose(doses.run_time_s * per_second, doses.dose_ml, rel_tol=AGREEMENT),
        "upkeep seconds": math.isclose(doses.upkeep_run_time_s * per_second, doses.upkeep_ml, rel_tol=AGREEMENT),
        "upkeep": doses.upkeep_ml * per_ml * doses.per_day <= q.use * slack,
        "interval": math.isclose(doses.interval_days * q.pump.doses_per_day, 1.0, rel_tol=AGREEMENT),
        "doses": doses.per_day == q.pump.doses_per_day,
        "smallest": all(ml == 0.0 or ml >= (q.pump.smallest_ml or 0.0) for ml in (doses.dose_ml, doses.upkeep_ml)),
        "side effects": all(
            seen.others_rise.get(other.name, 0.0) <= other.canonical(other.rise_hard) * slack for other in q.others
        ),
    }
    if _is_lime(q) and q.system.evaporation_l is not None:
        faults["evaporation"] = seen.most_ml_in_24_hours <= 1000.0 * q.system.evaporation_l * slack
    if seen.water is not None:
        faults["rise of pH"] = seen.water.highest_ph_rise <= PH_RISE_PER_HOUR + PH_AGREEMENT
        # A base above the ceiling already is no fault of an additive that does not lift pH by more than its solver's noise.
        still = not seen.water.highest_ph_rise > PH_AGREEMENT
        faults["pH"] = still or _below(seen.water.highest_ph, PH_KEPT[1] + PH_AGREEMENT)
        faults["saturation"] = _below(seen.water.highest_saturation, SATURATION_CEILING * (1.0 + PH_AGREEMENT))
    failed = tuple(name for name, holds in faults.items() if not holds)
    if not failed:
        return None
    return Reason("check_disagrees", {"what": failed, "end_value": seen.end_value, "planned": ends})


def _is_lime(q: CorrectionQuestion) -> bool:
    """Look into the bags for lime once more, apart from the planner's own eyes."""
    bags = q.additive.portions if isinstance(q.additive, Dissolved) else ()
    return any(dict(bag.chemical.carries).keys() == {"alkalinity", "Ca"} for bag in bags)


def _below(seen: float | None, bound: float) -> bool:
    return seen is None or seen <= bound


def spread(q: CorrectionQuestion) -> uncertainty.Spread:
    """Return the standard deviations of the five sources; half widths count as two of them.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.

    Returns
    -------
    uncertainty.Spread
        Reading in the canonical unit, the others over their own value [1].
    """
    known = STRENGTH_UNCERTAINTY if isinstance(q.additive, Dissolved) else LABEL_UNCERTAINTY
    kit = q.parameter.canonical(q.parameter.kit_accuracy)
    return uncertainty.Spread(
        volume=q.system.volume_uncertainty / 2.0,
        reading=kit / 2.0,
        strength=known / 2.0,
        pump=PUMP_UNCERTAINTY / 2.0,
        use=USE_UNCERTAINTY / 2.0,
    )


def _answer(
    q: CorrectionQuestion,
    amount: float,
    per_ml: float,
    set_by: str,
    rise: float,
    doses: Schedule,
    seen: check.Seen,
    tank: TankChemistry | None,
) -> Answer:
    lasts = (q.target - q.start) / rise
    in_day, upkeep = (rise + q.use) / per_ml, q.use / per_ml
    # The band is that of the doses which are really given, like the chart's.
    dosed, used = doses.total_ml * per_ml, q.use * doses.lasts_days
    widths = spread(q)
    low, high = uncertainty.band(q.measured, np.array([q.untested + dosed]), np.array([used]), widths)
    jug = q.additive.made_up_l * 1000.0 if isinstance(q.additive, Dissolved) else None
    near = tuple(limits_of.near(q, per_ml, rise, doses, tank))
    hard = max(q.parameter.canonical(q.parameter.rise_hard), rise)
    runs_out = None if jug is None else _runs_out(q.now, jug, doses)
    ends = q.now + timedelta(days=doses.lasts_days)
    stale = timedelta(days=q.parameter.stale_days)
    whole = None if jug is None else q.start + jug * per_ml
    return Answer(
        question=q,
        per_ml=per_ml,
        strength=amount,
        pace=rise,
        set_by=set_by,
        dose_ml_per_day=in_day,
        single_dose_ml=in_day / q.pump.doses_per_day,
        run_time_s=in_day / q.pump.doses_per_day / q.pump.flow_ml_per_min * 60.0,
        lasts_days=lasts,
        total_ml=in_day * lasts,
        upkeep_ml_per_day=upkeep,
        doses=doses,
        limits=near,
        remarks=remarks(q, doses, Plan(in_day / q.pump.doses_per_day, lasts, upkeep), near, whole, tank),
        seen=seen,
        band=(max(0.0, float(low[0])), float(high[0])),
        by_source=uncertainty.shares(q.untested + dosed, used, widths),
        whole_jug=whole,
        never_more_ml=round_down(min((hard + q.use) / per_ml, _room_ml(q)), doses.step_ml),
        stop_above=q.target + q.parameter.canonical(q.parameter.kit_accuracy),
        retest_at=max(q.now, min(q.now + timedelta(days=doses.lasts_days) / 2, (q.measured_at or q.now) + stale)),
        ends_at=ends,
        runs_out_at=runs_out,
        valid_until=min(t for t in (ends + stale, runs_out, q.now + timedelta(days=CARD_DAYS)) if t is not None),
        tank=tank,
    )


def _room_ml(q: CorrectionQuestion) -> float:
    """Return the most that fits into the tank in 24 hours [mL]: what evaporates, where limewater replaces it."""
    evaporates = q.system.evaporation_l
    return math.inf if evaporates is None or not water_limits.is_limewater(q) else 1000.0 * evaporates


def _runs_out(now: datetime, jug_ml: float, doses: Schedule) -> datetime | None:
    """Return when a full jug is empty, doses and upkeep together; None when it lasts for years."""
    if jug_ml < doses.total_ml:
        # A jug below one dose lasts until that dose is due: the card says to refill, and is not void at once.
        return now + timedelta(days=max(1, math.floor(jug_ml / doses.dose_ml)) * doses.interval_days)
    if doses.upkeep_ml <= 0.0:
        return None
    further = math.floor((jug_ml - doses.total_ml) / doses.upkeep_ml) * doses.interval_days
    days = doses.lasts_days + further
    return now + timedelta(days=days) if days < 10.0 * LONGEST_DAYS else None
