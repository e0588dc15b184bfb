"""The second opinion on an upkeep: dose by dose through two days, then day by day through a year.

It works from the bags and the bottles again and shares no code with the planner: only the doses that the plan tells the
keeper to set are taken from it, and of handbooks molar masses, density and the constants of seawater.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.carbonate_totals import calcium_riley_tongudai_1967
from evenwater.engine.check_ph import Bucket, bucket
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import density_kg_per_l
from evenwater.engine.stock import Labelled
from evenwater.engine.upkeep_question import UpkeepItem, UpkeepQuestion

_YEAR = 365.25
_DAYS = (7.0, _YEAR / 12.0, _YEAR)
# Each value as it is counted: the solute, and the mass it is counted as; alkalinity in equivalents.
_COUNTED = {
    "alkalinity": ("alkalinity", ""), "calcium": ("Ca", "Ca"), "magnesium": ("Mg", "Mg"), "potassium": ("K", "K"),
    "strontium": ("Sr", "Sr"), "iodide": ("I", "I"), "nitrate": ("NO3", "NO3"), "phosphate": ("PO4", "PO4"),
    "sodium": ("Na", "Na"), "chloride": ("Cl", "Cl"), "sulfate": ("SO4", "SO4"), "boron": ("B", "B"),
}  # fmt: skip
_WEIGHS = {"alkalinity": "HCO3", "PO4": "H2PO4", "B": "H3BO3"}
# Taken for a pH (NBS) that was not measured; common practice, no source.
_UNMEASURED = 8.1
# Two solutions for the same pH lie this near each other.
_SAME_PH = 1e-9

Sums = dict[str, float]


@dataclass(frozen=True)
class Seen:
    """What the simulation saw, by the name of the value; values in the canonical unit (besides parameters in mg/L).

    ``comes`` is what the doses of a day bring, ``goes`` what is used. ``jump`` is the most that comes in one instant, ``rise`` the most within any
    24 hours less what is used; where a correction is outstanding it is counted, and the use is not. ``alone`` and
    ``exchanged`` are the changes after a week, a month and a year, ``salt`` and ``salt_exchanged`` [g] the mass left by then.
    ``most_ml`` [mL] is the most of each item in any 24 hours. ``ph_rise`` [-], ``ph`` [NBS] and ``saturation`` [-] are those of the fullest hour, None where nothing takes part.
    """

    comes: Mapping[str, float]
    goes: Mapping[str, float]
    jump: Mapping[str, float]
    rise: Mapping[str, float]
    alone: Mapping[str, tuple[float, ...]]
    exchanged: Mapping[str, tuple[float, ...]]
    salt: tuple[float, ...]
    salt_exchanged: tuple[float, ...]
    most_ml: tuple[float, ...]
    ph_rise: float | None
    ph: float | None
    saturation: float | None


def brought(q: UpkeepQuestion, ml_per_day: Sequence[float]) -> dict[str, float]:
    """Return what so much of each additive brings of every value, reckoned from the bags and labels once more.

    Parameters
    ----------
    q : UpkeepQuestion
        The question, with its additives.
    ml_per_day : sequence of float
        Millilitres of each item's additive [mL per day].

    Returns
    -------
    dict of str to float
        Amounts in the tank [canonical unit per day; mg/L per day besides].
    """
    return _values(q, _mixed(q, ml_per_day))


def simulate(q: UpkeepQuestion, doses: Sequence[tuple[float, int]]) -> Seen:
    """Give the doses one by one for two days, then a year of days, and report what the water did.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    doses : sequence of (float, int)
        What each pump is set to: dose [mL] and times in 24 hours.

    Returns
    -------
    Seen
        What was seen.
    """
    pumps: list[tuple[Sums, int]] = []
    for item, (dose, per_day) in zip(q.items, doses, strict=True):
        pumps.append((_add({}, _bag(q, item), dose), per_day))
    pumps += [
        (_bare(q, plan.parameter.name, plan.rise / plan.doses_per_day), plan.doses_per_day) for plan in q.outstanding
    ]
    taken = _taken(q)
    comes, goes = brought(q, [dose * per_day for dose, per_day in doses]), _values(q, taken)
    jump, rise, counts = _two_days(q, pumps, goes)
    grams = _stays(q, _mixed(q, [dose * per_day for dose, per_day in doses]), taken)
    gains = {name: _without_noise(comes[name], goes[name]) for name in comes}
    starts = {name: _off_new_water(q, name) for name in comes}
    ph_rise, ph, saturation = _fullest_hour(q, pumps)
    return Seen(
        comes=comes,
        goes=goes,
        jump=jump,
        rise=rise,
        alone={name: tuple(_lived(0.0, gain, 0.0, days) for days in _DAYS) for name, gain in gains.items()},
        exchanged={
            name: tuple(_lived(starts[name], gain, q.exchange_fraction, days) for days in _DAYS)
            for name, gain in gains.items()
        },
        salt=tuple(_lived(0.0, grams, 0.0, days) for days in _DAYS),
        salt_exchanged=tuple(_lived(0.0, grams, q.exchange_fraction, days) for days in _DAYS),
        most_ml=tuple(dose * count for (dose, _), count in zip(doses, counts, strict=False)),
        ph_rise=ph_rise,
        ph=ph,
        saturation=saturation,
    )


def _mixed(q: UpkeepQuestion, ml_per_day: Sequence[float]) -> Sums:
    whole: Sums = {}
    for item, ml in zip(q.items, ml_per_day, strict=True):
        _add(whole, _bag(q, item), ml)
    return whole


def _add(to: Sums, more: Mapping[str, float], times: float) -> Sums:
    for what, moles in more.items():
        to[what] = to.get(what, 0.0) + times * moles
    return to


def _bag(q: UpkeepQuestion, item: UpkeepItem) -> Sums:
    """Return what a millilitre brings to a litre of the tank [mmol/L and meq/L]."""
    batch = item.additive
    if isinstance(batch, Labelled):
        return _bare(q, item.parameter.name, batch.raises / (batch.dose_ml / batch.water_l) / q.system.volume_l)
    sums: Sums = {}
    for chemical, grams, purity in [(bag.chemical, bag.grams, bag.purity) for bag in batch.portions]:
        mmol_per_ml = grams * purity / molar_mass(chemical.formula) / batch.made_up_l
        for what, count in chemical.carries:
            sums[what] = sums.get(what, 0.0) + mmol_per_ml * count / q.system.volume_l
    return sums


def _bare(q: UpkeepQuestion, name: str, value: float) -> Sums:
    """Return a value by itself, as solutes; salinity is common salt."""
    if name == "salinity":
        moles = value * 1000.0 * density_kg_per_l(q.system.water) / (molar_mass("Na") + molar_mass("Cl"))
        return {"Na": moles, "Cl": moles}
    solute, weighed_as = _COUNTED[name]
    return {solute: value / molar_mass(weighed_as) if weighed_as else value}


def _values(q: UpkeepQuestion, sums: Mapping[str, float]) -> dict[str, float]:
    out = {
        name: sums.get(solute, 0.0) * (molar_mass(weighed_as) if weighed_as else 1.0)
        for name, (solute, weighed_as) in _COUNTED.items()
    }
    milligrams = sum(moles * molar_mass(_WEIGHS.get(what, what)) for what, moles in sums.items() if what != "DIC")
    out["salinity"] = milligrams / 1000.0 / density_kg_per_l(q.system.water)
    return out


def _taken(q: UpkeepQuestion) -> Sums:
    """Return what the animals take in a day: chalk where half of it is known, and nutrients that leave alkalinity."""
    sums: Sums = {}
    for item in q.items:
        _add(sums, _bare(q, item.parameter.name, item.use or 0.0), 1.0)
    kept = {item.parameter.name for item in q.items}
    nutrients = sums.get("NO3", 0.0) + sums.get("PO4", 0.0)
    if "alkalinity" not in kept:
        sums["alkalinity"] = sums.get("Ca", 0.0) * 2.0 - nutrients
    elif "calcium" not in kept:
        sums["Ca"] = 0.5 * (sums["alkalinity"] + nutrients)
    return sums


def _without_noise(comes: float, goes: float) -> float:
    return comes - goes if abs(comes - goes) > 1e-9 * max(abs(comes), abs(goes)) else 0.0


def _stays(q: UpkeepQuestion, come: Mapping[str, float], taken: Mapping[str, float]) -> float:
    """Return the mass of whatever a day leaves more of in the whole tank [g]."""
    grams = 0.0
    for what, moles in come.items():
        more = _without_noise(moles, taken.get(what, 0.0))
        if what != "DIC" and more > 0.0:
            grams += more * molar_mass(_WEIGHS.get(what, what)) * q.system.volume_l / 1000.0
    # Alkalinity that uptake leaves although none is dosed.
    if "alkalinity" not in come and taken.get("alkalinity", 0.0) < 0.0:
        grams -= taken["alkalinity"] * molar_mass("HCO3") * q.system.volume_l / 1000.0
    return grams


def _two_days(
    q: UpkeepQuestion, pumps: list[tuple[Sums, int]], goes: Mapping[str, float]
) -> tuple[Sums, Sums, list[int]]:
    """Return the largest jump at one instant and the largest rise within any 24 hours, of every value.

    And how many doses of each pump come within any 24 hours, midnight or not.
    """
    day = math.lcm(*(per_day for _, per_day in pumps))
    # Which pumps dose at each instant, and what such a dose of some together brings.
    ticks: dict[int, tuple[int, ...]] = {0: ()}
    brings: dict[tuple[int, ...], dict[str, float]] = {}
    counts = []
    for which, (_one, per_day) in enumerate(pumps):
        at = [number * day // per_day for number in range(1, 2 * per_day + 1)]
        counts.append(max(number + 1 - bisect_right(at, tick - day) for number, tick in enumerate(at)))
        for tick in at:
            ticks[tick] = (*ticks.get(tick, ()), which)
    corrected = {plan.parameter.name for plan in q.outstanding}
    uses = {name: min(use, 0.0) if name in corrected else use for name, use in goes.items()}
    given: Sums = {}
    path: dict[int, dict[str, float]] = {}
    jump: Sums = {}
    for tick in sorted(ticks):
        if ticks[tick] not in brings:
            sums: Sums = {}
            for which in ticks[tick]:
                _add(sums, pumps[which][0], 1.0)
            brings[ticks[tick]] = _values(q, sums)
        here = brings[ticks[tick]]
        for name, value in here.items():
            jump[name] = max(jump.get(name, 0.0), value)
            given[name] = given.get(name, 0.0) + value
        path[tick] = {name: given[name] - uses[name] * tick / day for name in here}
    rise = {
        name: max(path[tick + day][name] - path[tick][name] for tick in path if tick + day in path) for name in jump
    }
    return jump, rise, counts


def _off_new_water(q: UpkeepQuestion, name: str) -> float:
    """Return how far a value is from that of the new water now; nothing where it is not known."""
    told = {"alkalinity": q.system.alkalinity, "calcium": q.system.calcium}
    if not q.system.water_assumed:
        told["salinity"] = q.system.water.salinity
    told |= {item.parameter.name: item.value for item in q.items if item.value is not None}
    now = told.get(name)
    natural = {p.name: p.canonical(p.natural) for p in q.others}
    return 0.0 if now is None or name not in natural else now - {**natural, **dict(q.new_water)}[name]


def _lived(value: float, gain: float, share: float, days: float) -> float:
    """Return the change after one day after the other, the last one perhaps not whole."""
    start, whole = value, int(days)
    if gain == 0.0 and (value == 0.0 or share <= 0.0):
        return 0.0
    for step, times in ((1.0, whole), (days - whole, 1)):
        # What a day brings and how much of what is there it takes is the same every day.
        gone = -math.expm1(-share * step) if share > 0.0 else 0.0
        comes = gain * gone / share if share > 0.0 else gain * step
        for _ in range(times):
            value += comes - value * gone
    return value - start


def _fullest_hour(q: UpkeepQuestion, pumps: list[tuple[Sums, int]]) -> tuple[float | None, float | None, float | None]:
    """Return the rise of pH, the highest pH and saturation after all doses that fall into one hour."""
    per_kg = 1.0 / density_kg_per_l(q.system.water)
    taking = [
        (one, -(-per_day // 24), number < len(q.items))
        for number, (one, per_day) in enumerate(pumps)
        if one.get("alkalinity", 0.0) > 0.0 or one.get("Ca", 0.0) > 0.0
    ]
    # A correction by itself was looked at by its own plan.
    if not any(own for _, _, own in taking):
        return None, None, None
    natural = {p.name: p.canonical(p.natural) for p in q.others}
    told = {"alkalinity": q.system.alkalinity, "calcium": q.system.calcium}
    told |= {item.parameter.name: item.value for item in q.items if item.value is not None}
    alkalinity = told["alkalinity"] if told["alkalinity"] is not None else natural["alkalinity"]
    held = told["calcium"]
    b = bucket(q.system.water)
    off = float(b.k.ph_offset(PhScale.NBS))
    ph = (_UNMEASURED if q.system.ph is None else q.system.ph) - off
    calcium = (
        float(calcium_riley_tongudai_1967(q.system.water.salinity))
        if held is None
        else held / molar_mass("Ca") * per_kg
    )
    start = {
        "alkalinity": alkalinity * per_kg, "DIC": 1000.0 * b.carbon(alkalinity * per_kg / 1000.0, ph), "Ca": calcium,
        "B": 1000.0 * b.borate,
    }  # fmt: skip
    lifting: Sums = dict(start)
    everything: Sums = dict(start)
    by_upkeep = False
    for one, times, own in taking:
        _add(everything, one, times * per_kg)
        if _after(b, _add(dict(start), one, times * per_kg), ph)[0] > ph + _SAME_PH:
            _add(lifting, one, times * per_kg)
            by_upkeep = by_upkeep or own
    lifted, one_way = _after(b, lifting if by_upkeep else start, ph)
    _, other_way = _after(b, everything, ph)
    rise = max(lifted - ph, 0.0)
    return (rise, None, None) if q.system.ph is None else (rise, lifted + off, max(one_way, other_way))


def _after(b: Bucket, water: Mapping[str, float], near: float) -> tuple[float, float]:
    """Return pH (total) and saturation of a kilogram of water [mmol/kg and meq/kg]."""
    here = Bucket(b.k, water["B"] / 1000.0, water.get("PO4", 0.0) / 1000.0)
    alkalinity, carbon = water["alkalinity"] / 1000.0, water["DIC"] / 1000.0
    ph = here.ph(alkalinity, carbon, near)
    return ph, here.saturation(water["Ca"] / 1000.0, carbon, ph)
