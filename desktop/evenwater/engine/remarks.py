"""What a keeper should know about a plan that is allowed all the same."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from evenwater.engine.limits import Nearness
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from evenwater.engine.schedule import Schedule
from evenwater.engine.stock import NEARLY_SATURATED, Dissolved, better_warm
from evenwater.engine.water_limits import PH_ASSUMED, PH_KEPT, PRECIPITATES, TankChemistry, is_limewater

# A dose rounded by more than this needs a finer step or fewer doses; common practice, no source.
ROUNDING_SHARE = 0.05
SLOWER_SHARE = 1.25
# No metering pump gives less than this; common practice, no source.
TINY_ML = 0.01


@dataclass(frozen=True)
class Plan:
    """The plan before rounding: single dose [mL], length [day], upkeep [mL per day]."""

    single_ml: float
    days: float
    upkeep_ml_per_day: float


def remarks(
    q: CorrectionQuestion,
    doses: Schedule,
    plan: Plan,
    near: Sequence[Nearness],
    whole_jug: float | None,
    tank: TankChemistry | None,
) -> tuple[Reason, ...]:
    """Return the remarks on a plan.

    Parameters
    ----------
    q : CorrectionQuestion
        The question.
    doses : Schedule
        The doses after rounding.
    plan : Plan
        The plan before rounding.
    near : sequence of Nearness
        How near the plan comes to each limit.
    whole_jug : float or None
        Value if the whole jug ran in [canonical unit].
    tank : TankChemistry or None
        The carbonate side, when the additive has one.

    Returns
    -------
    tuple of Reason
        In the order in which they matter.
    """
    return (
        *_water(q),
        *_limits(q, near),
        *_chemistry(q, plan, near, tank),
        *_doses(q, doses, plan),
        *_jug(q, whole_jug),
    )


def _water(q: CorrectionQuestion) -> Iterator[Reason]:
    p = q.parameter
    if q.reason.strip() and q.fastest is not None and q.fastest > p.canonical(p.rise_recommended):
        params = {"reason": q.reason.strip(), "fastest": q.fastest, "recommended": p.canonical(p.rise_recommended)}
        yield Reason("beyond_recommended", params)
    if q.untested > 0.0:
        yield Reason("untested_counted", {"untested": q.untested, "start": q.start})
    if q.measured_at is None:
        yield Reason("age_unknown", {"parameter": p.name, "stale_days": p.stale_days})
    if q.system.volume_known == "unknown":
        yield Reason("low_end_volume", {"volume_l": q.system.volume_l})
    if q.system.water_assumed and q.unit.startswith("mg/kg"):
        yield Reason("water_assumed", {"salinity": q.system.water.salinity, "degc": q.system.water.temperature_c})


def _limits(q: CorrectionQuestion, near: Sequence[Nearness]) -> Iterator[Reason]:
    for item in near:
        if item.code == "target" and item.over:
            yield Reason("target_above_range", {"target": item.value, "top": item.bound, "unit": item.unit})
        elif item.code == "jug" and item.over:
            yield Reason("jug_too_small", {"total_ml": item.value, "jug_ml": item.bound})
        elif item.code == "solubility" and item.share > NEARLY_SATURATED:
            warm = not isinstance(q.additive, Dissolved) or better_warm(q.additive)
            yield Reason("nearly_saturated", {"made": item.value, "most": item.bound, "better_warm": warm})
        elif item.code.startswith("also_raises"):
            other = item.code.removeprefix("also_raises_")
            yield Reason("raises_too", {"other": other, "per_day": item.value, "unit": item.unit})
    if isinstance(q.additive, Dissolved) and q.additive.restricted:
        yield Reason("restricted", {"chemical": q.additive.name})


def _chemistry(
    q: CorrectionQuestion, plan: Plan, near: Sequence[Nearness], tank: TankChemistry | None
) -> Iterator[Reason]:
    if is_limewater(q) and q.system.evaporation_l is None:
        yield Reason("evaporation_unknown", {"in_day_ml": plan.single_ml * q.pump.doses_per_day})
    if tank is None:
        return
    lifts = tank.per_unit.alkalinity > 0.0
    if not tank.ph_known and lifts:
        yield Reason("ph_assumed", {"ph": PH_ASSUMED})
    if not isinstance(q.additive, Dissolved) and lifts:
        yield Reason("bottle_like_hydroxide", {})
    if tank.ph_known and tank.end.ph_nbs > PH_KEPT[1]:
        yield Reason("ph_above_afterwards", {"ph": tank.end.ph_nbs, "most": PH_KEPT[1]})
    for item in near:
        if item.code == "saturation" and item.value > PRECIPITATES:
            yield Reason("may_precipitate", {"saturation": item.value, "most": PRECIPITATES})


def _doses(q: CorrectionQuestion, doses: Schedule, plan: Plan) -> Iterator[Reason]:
    lost = 1.0 - doses.dose_ml / plan.single_ml
    slower = doses.lasts_days / plan.days
    if doses.count > 1 and (lost > ROUNDING_SHARE or slower > SLOWER_SHARE):
        yield Reason("rounding_large", {"lost": lost, "slower": slower, "step_ml": doses.step_ml})
    if q.pump.smallest_ml is None and doses.dose_ml < TINY_ML:
        yield Reason("dose_tiny", {"dose_ml": doses.dose_ml})
    if q.use > 0.0:
        if doses.upkeep_ml <= 0.0:
            least = max(q.pump.smallest_ml or 0.0, doses.step_ml)
            most_doses = math.floor(plan.upkeep_ml_per_day / least)
            yield Reason("upkeep_too_small", {"per_day_ml": plan.upkeep_ml_per_day, "most_doses": most_doses})
    else:
        yield Reason("no_use", {"parameter": q.parameter.name})


def _jug(q: CorrectionQuestion, whole_jug: float | None) -> Iterator[Reason]:
    p = q.parameter
    if whole_jug is not None and whole_jug > p.canonical(p.target_hard[1]):
        yield Reason("whole_jug_harms", {"value": whole_jug, "most": p.canonical(p.target_hard[1])})
