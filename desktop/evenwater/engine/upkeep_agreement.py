"""Holds the second opinion on an upkeep against the plan and its limits: a plan that fails is never given out."""

from __future__ import annotations

import math
from collections.abc import Sequence

from evenwater.engine import upkeep_check
from evenwater.engine.carbonate_point import nbs_offset
from evenwater.engine.correction import AGREEMENT, PH_AGREEMENT
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Dissolved
from evenwater.engine.upkeep_balance import SPANS, Drift
from evenwater.engine.upkeep_plan import UpkeepAnswer, UpkeepDose
from evenwater.engine.water_limits import PH_KEPT, PH_RISE_PER_HOUR, SATURATION_CEILING

_SLACK = 1.0 + AGREEMENT


def disagreement(answer: UpkeepAnswer) -> Reason | None:
    """Hold the simulation against the plan and the limits.

    Parameters
    ----------
    answer : UpkeepAnswer
        The plan, with what the simulation saw.

    Returns
    -------
    Reason or None
        Why the plan must be refused, or None when both agree and no limit is passed.
    """
    q, seen = answer.question, answer.seen
    kept = [dose.item.parameter.name for dose in answer.doses]
    exact = upkeep_check.brought(q, [dose.needed_ml_per_day for dose in answer.doses])
    short = {name: seen.goes[name] - seen.comes[name] for name in kept}
    evaporates = q.system.evaporation_l
    faults = {
        "uses": all(abs(exact[name] - seen.goes[name]) <= AGREEMENT * seen.goes[name] for name in kept),
        "rounding": all(short[name] >= -AGREEMENT * seen.goes[name] for name in kept),
        "shortfall": all(
            abs(max(short[dose.item.parameter.name], 0.0) - dose.shortfall)
            <= AGREEMENT * seen.goes[dose.item.parameter.name]
            for dose in answer.doses
        ),
        "pumps": all(_pump(dose, most) for dose, most in zip(answer.doses, seen.most_ml, strict=True)),
        "jugs": all(map(_jug, answer.doses)),
        "rise": all(
            seen.rise[p.name] <= p.canonical(p.rise_hard) * _SLACK
            for p in q.others
            if seen.comes[p.name] > 0.0 or seen.goes[p.name] < 0.0
        ),
        "jump": all(
            seen.jump[p.name] <= p.canonical(p.dose_rise_recommended) * _SLACK
            for p in q.others
            if seen.comes[p.name] > 0.0
        ),
        "evaporation": evaporates is None or sum(seen.most_ml) <= 1000.0 * evaporates * _SLACK,
        "balance": all(_followed(answer, drift) for drift in answer.drifts),
        "salt": _close(answer.salt.alone, seen.salt),
        "salt exchanged": answer.salt.exchanged is None or _close(answer.salt.exchanged, seen.salt_exchanged),
        "water": _water(answer),
    }
    failed = tuple(name for name, holds in faults.items() if not holds)
    return Reason("check_disagrees", {"what": failed}) if failed else None


def _pump(dose: UpkeepDose, most_ml: float) -> bool:
    """Return whether a pump can do it, and gives no more within any 24 hours than the plan says and the use needs."""
    pump = dose.item.pump
    return (
        math.isclose(most_ml, dose.in_24_hours_ml, rel_tol=AGREEMENT, abs_tol=1e-9)
        and most_ml <= dose.needed_ml_per_day * _SLACK
        and math.isclose(dose.run_time_s * pump.flow_ml_per_min / 60.0, dose.dose_ml, rel_tol=AGREEMENT)
        and dose.run_time_s * dose.per_day <= pump.largest_share * 86400.0 * _SLACK
        and dose.per_day == pump.doses_per_day
        and (dose.dose_ml == 0.0 or dose.dose_ml >= (pump.smallest_ml or 0.0))
    )


def _jug(dose: UpkeepDose) -> bool:
    """Return whether a full jug lasts as long as the plan says."""
    batch = dose.item.additive
    if dose.jug_days is None or not isinstance(batch, Dissolved):
        return dose.jug_days is None
    return math.isclose(dose.jug_days * dose.dose_ml * dose.per_day, batch.made_up_l * 1000.0, rel_tol=AGREEMENT)


def _followed(answer: UpkeepAnswer, drift: Drift) -> bool:
    """Return whether a value goes where the day-by-day reckoning takes it."""
    q, seen, name = answer.question, answer.seen, drift.name
    moved = abs(seen.comes[name]) + abs(seen.goes[name])
    off = 0.0 if drift.start is None or drift.new_water is None else abs(drift.start - drift.new_water)

    def agree(planned: Sequence[float], lived: Sequence[float], lasts: float) -> bool:
        # Nothing that has moved longer ago than that is still in the water.
        pairs = zip(planned, lived, SPANS.values(), strict=True)
        return all(abs(one - other) <= AGREEMENT * (moved * min(days, lasts) + off) for one, other, days in pairs)

    if not agree(drift.alone, seen.alone[name], math.inf):
        return False
    if drift.exchanged is None or drift.steady is None:
        return q.exchange_fraction == 0.0 and drift.exchanged is None and drift.steady is None
    settled = abs(drift.steady * q.exchange_fraction - (seen.comes[name] - seen.goes[name])) <= AGREEMENT * moved
    return settled and agree(drift.exchanged, seen.exchanged[name], 1.0 / q.exchange_fraction)


def _close(planned: Sequence[float], counted: Sequence[float]) -> bool:
    return all(abs(one - other) <= AGREEMENT * other for one, other in zip(planned, counted, strict=True))


def _water(answer: UpkeepAnswer) -> bool:
    """Return whether pH and saturation of the fullest hour are what the plan says, and below their limits."""
    hour, seen = answer.hour, answer.seen
    if hour is None or seen.ph_rise is None:
        return hour is None and seen.ph_rise is None
    rise = max(hour.lifted.ph_total - hour.now.ph_total, 0.0)
    if abs(rise - seen.ph_rise) > PH_AGREEMENT or seen.ph_rise > PH_RISE_PER_HOUR + PH_AGREEMENT:
        return False
    if seen.ph is None or seen.saturation is None:
        return answer.question.system.ph is None
    planned = hour.lifted.ph_total + nbs_offset(hour.now.constants)
    return (
        abs(planned - seen.ph) <= PH_AGREEMENT
        and (seen.ph_rise <= 0.0 or seen.ph <= PH_KEPT[1] + PH_AGREEMENT)
        and seen.saturation <= SATURATION_CEILING * (1.0 + PH_AGREEMENT)
    )
