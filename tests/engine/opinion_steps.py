"""A plan lived through dose by dose, apart from the product: what the water does, and how much of each limit it takes.

Nothing of the planner and nothing of its check is used but the doses. pH and saturation are bisected for many plans at
once, with the constants of ``reckoning_ph``, along the whole ramp and not at its ends alone.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from fractions import Fraction
from typing import Any

import numpy as np
import numpy.typing as npt

from evenwater.engine.correction import Answer
from tests.engine import reckoning_ph
from tests.engine.asking import NOW
from tests.engine.opinion_reading import Told
from tests.engine.reckoning import ATOMS, PO4, density
from tests.engine.reckoning_ph import ASSUMED, CEILING, RISE, SATURATION, Amounts, Constants

Floats = npt.NDArray[np.float64]

# Sums of many doses in another order differ by so much of a limit; two solvers of pH by so much.
NOISE, WATER_NOISE = 1e-9, 1e-7
MOST_DAYS = 365
# A span of one in pH, or at most of eleven, halved so often.
ROUNDS = 36
# Where along the ramp the water is looked at: shares of its doses.
LOOKS = np.linspace(0.0, 1.0, 5)


@dataclass(frozen=True)
class Timetable:
    """So many doses [mL] evenly through the day, the first one interval after the start, then upkeep at the same times."""

    dose: float
    count: int
    upkeep: float
    per_day: int


@dataclass(frozen=True)
class Lived:
    """What came of a timetable: the part of each limit that was taken [1], and the values right after each dose."""

    taken: dict[str, float]
    after: Floats
    end: float

    @property
    def worst(self) -> float:
        """The largest part of any limit."""
        return max(self.taken.values())


def live(t: Told, plan: Timetable) -> Lived:
    """Give the doses one by one, let the animals use their share in between, and two days of upkeep after."""
    tail = 2 * plan.per_day
    doses = np.concatenate(([0.0], np.full(plan.count, plan.dose), np.full(tail, plan.upkeep)))
    falls = np.full(len(doses), t.use / plan.per_day)
    falls[0] = 0.0
    # Before and after each dose in turn.
    moves = np.column_stack((-falls, doses * t.per_ml)).ravel()
    value = float(t.start) + np.cumsum(moves)
    before, after = value[0::2], value[1::2]
    in_a_day = _most_in(doses[1:], plan.per_day)
    jump = float(t.limit(t.bounds.jumps[1 if t.reason else 0]))
    rise = _rise_in_a_day(after, plan.per_day)
    taken = {
        "rise in 24 hours": rise / t.allowed,
        "hard rise with what was given": (rise + t.given) / t.hard(t.name),
        "single dose": float((after - before)[1:].max()) / jump,
        "target": float(value.max()) / float(t.target),
        "pump": in_a_day / (t.share * 1440.0 * t.flow),
        "days": plan.count / plan.per_day / MOST_DAYS,
        "upkeep": plan.upkeep * plan.per_day * t.per_ml / t.use if t.use else float(plan.upkeep > 0.0),
    }
    given = [dose for dose in (plan.dose, plan.upkeep) if dose > 0.0]
    taken["smallest dose"] = max(float(t.smallest) / dose for dose in given)
    for other, per_ml in t.along.items():
        if other != "salinity":
            taken[f"{other} along"] = (in_a_day * per_ml - t.taken(other)) / t.hard(other)
    if t.evaporation_ml is not None and any(chemical == "calcium hydroxide" for chemical, _, _ in t.bags):
        taken["evaporation"] = in_a_day / t.evaporation_ml
    return Lived(taken, after, float(after[plan.count]))


def _rise_in_a_day(after: Floats, per_day: int) -> float:
    """Return the most the value rises between two instants a day apart, or between the start and any within the first."""
    first = float((after[1 : per_day + 1] - after[0]).max())
    return max(first, float((after[per_day:] - after[:-per_day]).max()))


def _most_in(doses: Floats, per_day: int) -> float:
    """Return the most millilitres in any day, of which each holds as many dosing times."""
    run = np.concatenate(([0.0], np.cumsum(doses)))
    return float((run[per_day:] - run[:-per_day]).max())


def reported(t: Told, answer: Answer, lived: Lived) -> list[str]:
    """Return what a plan says of itself that is not so."""
    doses, end = answer.doses, lived.end
    grain = NOISE * float(t.target)
    per_day = timedelta(days=1) / doses.per_day
    # The rest to the target must be less than one more dose would give, or of a single dose than one step more.
    net = max(doses.dose_ml * t.per_ml - t.use / doses.per_day, doses.step_ml * t.per_ml if doses.count == 1 else 0.0)
    left = float(t.target) - end
    said = {
        "dosing times": doses.per_day == t.per_day and math.isclose(doses.interval_days * t.per_day, 1.0),
        "shortfall": abs(left - doses.shortfall) <= grain,
        "nothing left that a dose would give": left < net * (1.0 + 1e-6) + grain,
        "mass": abs(float(t.start) + doses.total_ml * t.per_ml - t.use * doses.lasts_days - end) <= grain,
        "total": math.isclose(doses.total_ml, doses.count * doses.dose_ml, rel_tol=NOISE, abs_tol=1e-9),
        "a day's": math.isclose(doses.in_24_hours_ml, doses.per_day * doses.dose_ml, rel_tol=NOISE, abs_tol=1e-9),
        "whole steps": _whole(doses.dose_ml, doses.step_ml) and _whole(doses.upkeep_ml, doses.step_ml),
        "step": _is_step(t, doses.step_ml),
        "running time": math.isclose(doses.run_time_s, doses.dose_ml / t.flow * 60.0, rel_tol=NOISE),
        "upkeep's running time": math.isclose(doses.upkeep_run_time_s, doses.upkeep_ml / t.flow * 60.0, rel_tol=NOISE),
        "end": abs(answer.ends_at - NOW - doses.count * per_day) < timedelta(seconds=1),
        "never more": doses.in_24_hours_ml <= answer.never_more_ml * (1.0 + NOISE)
        and answer.never_more_ml * t.per_ml - t.use <= max(t.hard(t.name), t.allowed) * (1.0 + NOISE),
    }
    if t.jug_ml is not None:
        whole = float(t.start) + t.jug_ml * t.per_ml
        said["whole jug"] = answer.whole_jug is not None and math.isclose(answer.whole_jug, whole, rel_tol=NOISE)
        said["jug lasts"] = _jug_lasts(t.jug_ml, answer, per_day)
    return [what for what, holds in said.items() if not holds]


def _whole(dose: float, step: float) -> bool:
    return Fraction(str(dose)) % Fraction(str(step)) == 0


def _is_step(t: Told, step: float) -> bool:
    """Return whether a step is the pump's own, or where it has none a power of ten of a tenth or less."""
    if t.step is not None:
        return math.isclose(step, float(t.step), rel_tol=1e-12)
    return step <= 0.1 and Fraction(str(step)) == Fraction(10) ** round(math.log10(step))


def _jug_lasts(jug_ml: float, answer: Answer, per_day: timedelta) -> bool:
    """Return whether all doses until a jug is said to be empty are in it; of a jug below a dose, until that one is due."""
    doses = answer.doses
    until = answer.runs_out_at - NOW if answer.runs_out_at is not None else timedelta(days=3650)
    number = math.floor(until / per_day + 1e-6)
    given = min(number, doses.count) * doses.dose_ml + max(number - doses.count, 0) * doses.upkeep_ml
    return given <= max(jug_ml, doses.dose_ml) * (1.0 + NOISE)


def in_an_hour(per_day: int) -> int:
    """Return how many evenly spaced doses an hour may hold: those less than an hour after the first, and that one."""
    number = 1
    while Fraction(24 * number, per_day) < 1:
        number += 1
    return number


# -- pH and saturation, of many plans in one go --


def water(cases: Sequence[tuple[Told, Timetable]]) -> list[dict[str, float]]:
    """Return which part of the limits of pH and saturation is taken by each of some plans."""
    asked = [(place, t, plan) for place, (t, plan) in enumerate(cases) if t.brings is not None]
    out: list[dict[str, float]] = [{} for _ in cases]
    if not asked:
        return out
    k = stacked([reckoning_ph.constants(*t.water) for _, t, _ in asked])
    given = np.array([[plan.dose * plan.count] for _, _, plan in asked]) * LOOKS
    used = np.array([[t.use * plan.count / plan.per_day] for _, t, plan in asked]) * LOOKS
    # What use takes out is made good by this additive, and what that leaves behind stays; or it is looked at without.
    made_good = np.array([[t.use * plan.count / plan.per_day / t.per_ml] for _, t, plan in asked]) * LOOKS
    given = np.concatenate((given, given - made_good), axis=1)
    used = np.concatenate((used, np.zeros_like(used)), axis=1)
    hour = np.array([[plan.dose * in_an_hour(plan.per_day)] for _, _, plan in asked])
    rises, highest, saturations = looked_at([t for _, t, _ in asked], k, given, used, hour)
    for row, (place, t, _) in enumerate(asked):
        out[place] = _water_taken(t, rises[row], highest[row], saturations[row])
    return out


def _water_taken(t: Told, rises: Floats, highest: Floats, saturations: Floats) -> dict[str, float]:
    taken = {"pH in an hour": float(rises.max()) / RISE}
    if t.ph is not None:
        # Water above the ceiling is no fault of a dose that does not lift it.
        lifted = highest[rises > WATER_NOISE]
        if len(lifted):
            taken["highest pH"] = float(lifted.max()) / CEILING
        taken["saturation"] = float(saturations.max()) / SATURATION
    return taken


def looked_at(
    told: Sequence[Told], k: Constants, given: Floats, used: Floats, hour: Floats
) -> tuple[Floats, Floats, Floats]:
    """Return rise of pH, pH (NBS) and saturation right after the doses of an hour, gas exchange caught up before them.

    ``given`` [mL], ``used`` [canonical unit] and ``hour`` [mL] broadcast to shape (plans, looks).
    """
    held, brings, takes = (_amounts([part(t) for t in told]) for part in (_held, _brings, _takes))
    known = np.array([[t.ph is not None] for t in told])
    ph = np.array([[ASSUMED if t.ph is None else t.ph] for t in told]) - k.nbs
    start = replace(held, carbon=carbon_for(k, held, ph))
    gas = reckoning_ph.gas_of(k, start, ph)
    base = start.plus(brings, given).plus(takes, -used)
    aired = _bisected(lambda at: _alkalinity_in_air(k, base, gas, at) < base.alkalinity, ph, base.alkalinity.shape)
    before = np.where(known, aired, ph)
    base = replace(base, carbon=carbon_for(k, base, before))
    mixed = base.plus(brings, hour)
    after = _bisected(lambda at: reckoning_ph.alkalinity_at(k, mixed, at) < mixed.alkalinity, before, before.shape)
    return after - before, after + k.nbs, reckoning_ph.saturation_of(k, mixed, after)


def carbon_for(k: Constants, held: Amounts, ph: Any) -> Any:
    """Return the carbon [mol/kg] with which water has a pH (total)."""
    rest, carbon, boron, phosphorus = reckoning_ph.charges(k, 10.0**-ph)
    return (held.alkalinity - rest - held.boron * boron - held.phosphate * phosphorus) / carbon


def _alkalinity_in_air(k: Constants, held: Amounts, gas: Floats, ph: Floats) -> Any:
    hydrogen = 10.0**-ph
    carbon = gas * (1.0 + k.k1 / hydrogen + k.k1 * k.k2 / hydrogen**2)
    return reckoning_ph.alkalinity_at(k, replace(held, carbon=carbon), ph)


def _bisected(too_low: Callable[[Floats], Any], near: Floats, shape: tuple[int, ...]) -> Floats:
    """Return where something stops being true, between pH 2 and 13 on the total scale, looking near a pH first."""
    low, high = np.broadcast_to(near - 0.5, shape).copy(), np.broadcast_to(near + 0.5, shape).copy()
    low[~too_low(low)], high[too_low(high)] = 2.0, 13.0
    for _ in range(ROUNDS):
        middle = 0.5 * (low + high)
        below = too_low(middle)
        low, high = np.where(below, middle, low), np.where(below, high, middle)
    return 0.5 * (low + high)


def stacked(several: Sequence[Constants]) -> Any:
    """Return constants whose every figure is a column, a row for each water."""

    def column(figures: Sequence[float]) -> Floats:
        return np.array(figures, dtype=np.float64)[:, None]

    plain = (
        "k1",
        "k2",
        "boric",
        "water",
        "bisulfate",
        "fluoride",
        "aragonite",
        "sulfate_total",
        "fluoride_total",
        "nbs",
    )
    figures: dict[str, Any] = {name: column([getattr(k, name) for k in several]) for name in plain}
    return Constants(**figures, phosphoric=tuple(column([k.phosphoric[n] for k in several]) for n in range(3)))  # type: ignore[arg-type]


def _amounts(several: Sequence[Amounts]) -> Any:
    names = ("alkalinity", "carbon", "calcium", "boron", "phosphate")
    return Amounts(*(np.array([[getattr(each, name)] for each in several]) for name in names))  # type: ignore[arg-type]


def _held(t: Told) -> Amounts:
    return t.held


def _brings(t: Told) -> Amounts:
    assert t.brings is not None
    return t.brings


def _takes(t: Told) -> Amounts:
    """Return what use by one unit takes out of a kilogram [mol], of what the additive brings; the rest is kept by other means."""
    brings, per_kg = _brings(t), 1.0 / density(*t.water) / 1000.0
    if t.name == "alkalinity":
        return Amounts(per_kg, 0.0, per_kg / 2.0 if brings.calcium > 0.0 else 0.0)
    if t.name == "calcium":
        moles = per_kg / float(ATOMS["Ca"])
        return Amounts(2.0 * moles if brings.alkalinity > 0.0 else 0.0, 0.0, moles)
    return Amounts(phosphate=per_kg / float(PO4)) if t.name == "phosphate" else Amounts()
