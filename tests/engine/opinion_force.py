"""Refusals tried out by force: doses from one that takes a year to one that is the whole climb, in whole steps, none may keep every limit.

No formula of the planner is used: every dose is held against every limit by itself. What looks possible is lived through
dose by dose before a refusal is called refuted.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from tests.engine import opinion_steps, reckoning_ph
from tests.engine.opinion_reading import Told
from tests.engine.opinion_steps import MOST_DAYS, NOISE, Floats, Timetable
from tests.engine.reckoning_ph import ASSUMED, CEILING, RISE, SATURATION, Amounts

# A plan refutes a refusal only when it keeps every limit by more than noise.
SURELY = 1.0 - 1e-7
COARSE, FINE, ROUNDS = 400, 60, 4
OF_WATER = frozenset({"ph_rise_forbids", "ph_ceiling_forbids", "saturation_forbids"})
# An additive that leaves less than this part of the wanted pace is the wrong one.
SIDE_EFFECT_PART = 0.1


def taken(t: Told, doses: Floats) -> dict[str, Floats]:
    """Return the part of each limit [1] that doses of a size take; above 1 it is passed. pH and saturation are apart."""
    in_a_day = doses * t.per_day
    used = t.use / t.per_day
    jump = float(t.limit(t.bounds.jumps[1 if t.reason else 0]))
    net = doses * t.per_ml - used
    with np.errstate(divide="ignore"):
        days = np.where(net > 0.0, np.floor(t.climb / np.where(net > 0.0, net, 1.0)) / t.per_day, np.inf)
        found = {
            "target": net / t.climb,
            "days": days / MOST_DAYS,
            "daily_rise": net * t.per_day / t.allowed,
            "given_lately": (net * t.per_day + t.given) / t.hard(t.name),
            "single_dose": doses * t.per_ml / jump,
            "pump_share": in_a_day / (t.share * 1440.0 * t.flow),
            # The smallest dose itself is accurate.
            "smallest": float(t.smallest) / doses * SURELY**2,
        }
    for other, per_ml in t.along.items():
        if other != "salinity":
            found[f"also_raises {other}"] = (in_a_day * per_ml - t.taken(other)) / t.hard(other)
    if t.evaporation_ml is not None and any(chemical == "calcium hydroxide" for chemical, _, _ in t.bags):
        found["evaporation"] = in_a_day / t.evaporation_ml
    return found


def water_alone(cases: Sequence[tuple[Told, str]]) -> list[bool]:
    """Return, for many refusals at once, whether the doses that only just lift the value pass what the water allows already.

    The water is looked at as it is now, and at the target.
    """
    if not cases:
        return []
    told = [t for t, _ in cases]
    dose = np.array([_smallest_dose(t)[0] for t in told])
    # At the target after a year, in which what use took was made good, and at once.
    given = np.array([(0.0, (t.climb + t.use * MOST_DAYS) / t.per_ml, t.climb / t.per_ml) for t in told])
    used = np.array([(0.0, t.use * MOST_DAYS, 0.0) for t in told])
    hour = dose * np.array([opinion_steps.in_an_hour(t.per_day) for t in told])
    k = opinion_steps.stacked([reckoning_ph.constants(*t.water) for t in told])
    seen = opinion_steps.looked_at(told, k, given, used, hour[:, None])
    rises, highest, saturations = (each.max(axis=1) for each in seen)
    out = []
    for row, (t, code) in enumerate(cases):
        parts = {"ph_rise_forbids": rises[row] / RISE}
        if t.ph is not None:
            # What does not lift water that stands at the ceiling is not to blame for water above it.
            parts["ph_ceiling_forbids"] = highest[row] / CEILING * _lifts(t)
            parts["saturation_forbids"] = saturations[row] / SATURATION
        out.append(bool(parts.get(code, 0.0) >= SURELY))
    return out


def _lifts(t: Told) -> bool:
    """Return whether the additive lifts the pH of water that stands at the ceiling: it brings more alkalinity than it takes there."""
    k = reckoning_ph.constants(*t.water)
    assert t.brings is not None
    takes = reckoning_ph.alkalinity_at(k, t.brings, CEILING - k.nbs)
    return t.brings.alkalinity > takes - reckoning_ph.alkalinity_at(k, Amounts(), CEILING - k.nbs) + 1e-15


def possible(t: Told) -> Timetable | None:
    """Return a plan that keeps every limit, or None when none was found."""
    # So much more than is used comes with each dose: from a plan of a year to one of a single dose.
    doses = _in_steps(
        t, (np.geomspace(t.climb / (MOST_DAYS * t.per_day), t.climb, COARSE) + t.use / t.per_day) / t.per_ml
    )
    for _ in range(ROUNDS):
        if not len(doses):
            return None
        worst = np.max(list(taken(t, doses).values()), axis=0)
        keeps = worst <= SURELY
        if keeps.any():
            for dose in _spread(doses[keeps]):
                plan = _lived(t, float(dose))
                if plan is not None:
                    return plan
            return None
        best = int(worst.argmin())
        doses = _in_steps(t, np.linspace(doses[max(best - 1, 0)], doses[min(best + 1, len(doses) - 1)], FINE))
    return None


def _spread(doses: Floats) -> Floats:
    """Return the smallest of some doses, which lifts pH least, and a few of the others."""
    return doses[np.unique(np.linspace(0, len(doses) - 1, 6).astype(int))]


def _lived(t: Told, dose: float) -> Timetable | None:
    """Return the plan of a dose when it keeps all limits, lived through dose by dose."""
    net = dose * t.per_ml - t.use / t.per_day
    plan = Timetable(dose, int(t.climb / net), 0.0, t.per_day)
    if opinion_steps.water([(t, plan)])[0] and max(opinion_steps.water([(t, plan)])[0].values()) > SURELY:
        return None
    parts = opinion_steps.live(t, plan).taken
    # The target may be met exactly.
    parts["target"] -= NOISE
    return plan if plan.count > 0 and max(parts.values()) <= 1.0 else None


def _in_steps(t: Told, doses: Floats) -> Floats:
    """Return doses in whole steps of the pump, those on either side of each; where its step is not known, of two digits."""
    steps = (
        np.minimum(0.1, 10.0 ** (np.floor(np.log10(doses)) - 1.0))
        if t.step is None
        else np.full(len(doses), float(t.step))
    )
    whole = np.floor(doses / steps)
    near = np.concatenate(((whole - 1.0) * steps, whole * steps, (whole + 1.0) * steps))
    return np.unique(near[near > 0.0])


def _smallest_dose(t: Told) -> Floats:
    """Return doses that bring next to nothing more than is used, and one that brings a tenth of the wanted pace."""
    paces = np.array([t.climb / MOST_DAYS * 1e-3, SIDE_EFFECT_PART * t.allowed])
    return np.asarray((paces + t.use) / t.per_day / t.per_ml)


def alone(t: Told, code: str) -> bool:
    """Return whether the limit that a refusal names is passed by every dose that lifts the value, whatever the others say."""
    limit, parts = code.removesuffix("_forbids"), taken(t, _smallest_dose(t))
    if limit == "also_raises":
        # Of a side effect a tenth of the wanted pace must be left.
        return any(part[1] >= SURELY for name, part in parts.items() if name.startswith(limit))
    return limit in parts and bool(parts[limit][0] >= SURELY)


def impossible_water(t: Told) -> bool:
    """Return whether no carbon at all is left for the pH that was measured, or taken where none was."""
    k = reckoning_ph.constants(*t.water)
    return bool(opinion_steps.carbon_for(k, t.held, (ASSUMED if t.ph is None else t.ph) - k.nbs) <= 0.0)


def fewer_doses(t: Told, most: int) -> bool | None:
    """Return whether a plan is found with so many doses a day in place of those asked for; None when none is advised."""
    return possible(replace(t, per_day=most)) is not None if most >= 1 else None


FORBIDS = frozenset({
    "single_dose_forbids", "pump_share_forbids", "given_lately_forbids", "also_raises_forbids", "evaporation_forbids",
})  # fmt: skip
TRIED = FORBIDS | OF_WATER | {"too_slow", "dose_below_smallest", "step_too_coarse", "impossible_water"}


def why(t: Told, code: str) -> str:
    """Return what justifies a refusal: its own reason "alone", or that "no plan" keeps all limits; empty when nothing does."""
    if code == "impossible_water":
        return "alone" if impossible_water(t) else ""
    if code in FORBIDS and alone(t, code):
        return "alone"
    return "no plan" if code != "also_raises_forbids" and possible(t) is None else ""
