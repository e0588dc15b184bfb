"""A drawn question read once more, apart from the product: its figures from the text, what its jug carries from atomic weights.

Solubility rows and densities are those of chemicals.toml, whose sources stand there; what is done with them is written once more.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime
from fractions import Fraction
from functools import lru_cache
from itertools import pairwise
from typing import Any

from evenwater.assets import resources
from tests.engine import reckoning_ph
from tests.engine.asking import NOW
from tests.engine.reckoning import (
    ATOMS,
    BOUNDS,
    CARBONATES,
    FACTORS,
    NATURAL_ALKALINITY,
    SALTS,
    Bounds,
    canonical,
    density,
    mass,
)
from tests.engine.reckoning_ph import Amounts

Water = tuple[float, float]
BORIC = mass(H=3, B=1, O=3)
# Half the width of a 95 % interval over the volume, by the way it was found; common practice, no source.
VOLUME_SHARE = {"": 10, "measured by filling": 2, "dose and test": 5, "dimensions": 10, "unknown": 25}


@dataclass(frozen=True)
class Told:
    """What a question says; canonical units, days, L and mL.

    ``per_ml`` is the rise by a millilitre, ``along`` that of every other parameter, ``brings`` what a millilitre brings to
    a kilogram of the tank's water and ``held`` what that holds before but for its carbon; None when it has no part in it.
    ``low_end`` is the smallest that the volume may be, over the volume.
    """

    name: str
    water: Water
    volume: float
    low_end: float
    volume_known: str
    measured: Fraction
    start: Fraction
    target: Fraction
    use: float
    fastest: Fraction | None
    reason: bool
    measured_at: datetime | None
    given: float
    untested: Fraction
    ph: float | None
    evaporation_ml: float | None
    bags: tuple[tuple[str, float, float], ...]
    saturated: bool
    coolest_c: float
    jug_ml: float | None
    per_ml: float
    along: Mapping[str, float]
    brings: Amounts | None
    held: Amounts
    flow: float
    smallest: Fraction
    step: Fraction | None
    share: float
    per_day: int

    @property
    def bounds(self) -> Bounds:
        """The limits of what is corrected, in its display unit."""
        return BOUNDS[self.name]

    def limit(self, figure: str) -> Fraction:
        """Return a figure in the display unit as a canonical one."""
        return Fraction(figure) * FACTORS[self.bounds.unit]

    @property
    def allowed(self) -> float:
        """The fastest rise allowed [canonical unit per day]."""
        return float(self.limit(self.bounds.recommended) if self.fastest is None else self.fastest)

    @property
    def climb(self) -> float:
        """From where the value is taken to be to the target [canonical unit]."""
        return float(self.target - self.start)

    def hard(self, name: str) -> float:
        """Return the hard rise of any parameter in a day [canonical unit]."""
        return float(Fraction(BOUNDS[name].hard) * FACTORS[BOUNDS[name].unit])

    def taken(self, other: str) -> float:
        """Return what the animals take of another parameter with the one in question: skeleton is CaCO3 [canonical unit per day]."""
        per_meq = float(ATOMS["Ca"]) / 2.0
        pairs = {("calcium", "alkalinity"): self.use / per_meq, ("alkalinity", "calcium"): self.use * per_meq}
        return pairs.get((self.name, other), 0.0)


def told(raw: Mapping[str, Any]) -> Told:
    """Read a question of the form of a question file, of which nothing is wrong with a single field."""
    system, change, pump = raw["system"], raw["change"], raw["pump"]
    water = _water(system)
    name = change["parameter"]
    volume = float(canonical(system["net_volume"]))
    known = system.get("volume_known", "")
    share = system.get("volume_uncertainty", f"{VOLUME_SHARE[known]} %")
    low_end = 1.0 - float(canonical(share))
    if known == "unknown":
        # A volume that nobody knows counts at its low end already.
        volume, low_end = volume * low_end, 1.0
    nothing = f"0 {BOUNDS[name].unit}"
    measured, untested = (canonical(change.get(field, nothing), water) for field in ("measured", "untested"))
    bags, jug_ml = _bags(raw["additive"])
    carries = _carries(raw["additive"], bags, jug_ml, name, water)
    rises = {other: amount / volume for other, amount in carries.items()}
    brings = _brings(bags, jug_ml, name, carries) if carries.get(name, 0.0) > 0.0 else None
    at = change.get("measured_at")
    return Told(
        name=name, water=water, volume=volume, low_end=low_end, volume_known=known, measured=measured, start=measured + untested,
        target=canonical(change["target"], water), use=float(canonical(change.get("daily_use", nothing), water)),
        fastest=canonical(change["fastest_rise"], water) if "fastest_rise" in change else None,
        reason=bool(change.get("reason")), measured_at=datetime.fromisoformat(at) if isinstance(at, str) else at,
        given=float(max(untested, canonical(change.get("raised_lately", nothing), water))), untested=untested,
        ph=float(system["ph"]) if "ph" in system else None,
        evaporation_ml=float(canonical(system["evaporation"])) * 1000.0 if "evaporation" in system else None,
        bags=bags, saturated="saturated" in raw["additive"], coolest_c=_celsius(raw["additive"].get("temperature", "20 degC")),
        jug_ml=jug_ml, per_ml=rises.pop(name, 0.0), along=rises,
        brings=None if brings is None else _scaled(brings, 1.0 / volume / density(*water)), held=_held(system, change, water),
        flow=float(canonical(pump["flow"])), smallest=_ml(pump.get("smallest_dose")) or Fraction(0), step=_ml(pump.get("step")),
        share=float(canonical(pump.get("largest_share", "50 %"))), per_day=int(pump.get("doses_per_day", 24)),
    )  # fmt: skip


def _ml(text: str | None) -> Fraction | None:
    return None if text is None else Fraction(text.split()[0])


def _celsius(text: str) -> float:
    number, _, unit = text.partition(" ")
    return float(number) if unit == "degC" else (float(number) - 32.0) / 1.8


@lru_cache(maxsize=256)
def _practical(text: str) -> float:
    return float(canonical(text if " " in text else f"{text} ppt"))


def _water(system: Mapping[str, str]) -> Water:
    return _practical(system.get("salinity", "35")), _celsius(system.get("temperature", "25 degC"))


def _bags(additive: Mapping[str, Any]) -> tuple[tuple[tuple[str, float, float], ...], float | None]:
    """Return name, grams and purity of everything in a jug, and the jug [mL]; nothing of a bottle."""
    if "label" in additive:
        return (), None
    litres = float(canonical(additive["made_up_to"]))
    if "saturated" in additive:
        at_c = _celsius(additive.get("temperature", "20 degC"))
        return ((additive["chemical"], dissolves(additive["chemical"], at_c) * litres, 1.0),), litres * 1000.0
    both = [additive, additive["also"]] if "also" in additive else [additive]
    bags = tuple(
        (bag["chemical"], float(canonical(bag["dissolved"])), float(canonical(bag.get("purity", "100 %"))))
        for bag in both
    )
    return bags, litres * 1000.0


@lru_cache(maxsize=1)
def _rows() -> dict[str, Any]:
    return tomllib.loads((resources() / "chemicals.toml").read_text(encoding="utf-8"))


def hydrated(chemical: str) -> tuple[float, float]:
    """Return the mass of a mole as weighed and of its dry salt [g/mol]."""
    if chemical == "boric acid":
        return float(BORIC), float(BORIC)
    return float(SALTS[chemical].molar), float(SALTS[chemical].dry)


def dissolves(chemical: str, celsius: float) -> float:
    """Return how much of a chemical as weighed a litre of its saturated solution holds [g/L]."""
    rows = _rows()[chemical]["solubility"]
    at = min(max(celsius, rows[0][0]), rows[-1][0])
    percent = next(
        low + (high - low) * (at - t0) / (t1 - t0) for (t0, low), (t1, high) in pairwise(rows) if t0 <= at <= t1
    )
    # A kilogram's volume is taken to change evenly with what is dissolved in it.
    share, known = _rows()[chemical]["density"]
    litres_per_kg = 1.0 + (1.0 / known - 1.0) * percent / share
    molar, dry = hydrated(chemical)
    return 10.0 * percent / litres_per_kg * molar / dry


def _carries(
    additive: Mapping[str, Any],
    bags: tuple[tuple[str, float, float], ...],
    jug_ml: float | None,
    name: str,
    water: Water,
) -> dict[str, float]:
    """Return what a millilitre carries of every parameter [canonical unit times L]."""
    if jug_ml is None:
        label = additive["label"]
        per_dose = canonical(label["raises"], water) * canonical(label["water"])
        return {name: float(per_dose / (canonical(label["dose"]) * 1000))}
    out: dict[str, float] = {}
    for chemical, grams, purity in bags:
        if chemical == "boric acid":
            continue
        salt = SALTS[chemical]
        per_ml = grams * purity / float(salt.molar) / jug_ml
        for other, amount in {**salt.raises, **salt.along}.items():
            if other != "salinity":
                out[other] = out.get(other, 0.0) + per_ml * float(amount)
    if name == "salinity" and any(chemical == "sodium chloride" for chemical, _, _ in bags):
        # Every salt counts in a jug that is meant for salinity.
        dry = sum(grams * purity * hydrated(each)[1] / hydrated(each)[0] for each, grams, purity in bags)
        out[name] = dry / jug_ml / density(*water)
    return out


def _brings(
    bags: tuple[tuple[str, float, float], ...], jug_ml: float | None, name: str, carries: Mapping[str, float]
) -> Amounts | None:
    """Return what a millilitre brings into the carbonate system [mol]; None when nothing."""
    found = Amounts()
    if jug_ml is None:
        # What is in a bottle is not known: hydroxide lifts pH most.
        per_litre = {"alkalinity": Amounts(1e-3), "calcium": Amounts(0, 0, 1e-3 / float(ATOMS["Ca"]))}
        return _scaled(per_litre[name], carries[name]) if name in per_litre else None
    for chemical, grams, purity in bags:
        amounts = Amounts(boron=1) if chemical == "boric acid" else CARBONATES.get(chemical, Amounts())
        found = found.plus(amounts, grams * purity / hydrated(chemical)[0] / jug_ml)
    return None if found == Amounts() else found


def _scaled(amounts: Amounts, times: float) -> Amounts:
    return Amounts().plus(amounts, times)


def _held(system: Mapping[str, str], change: Mapping[str, Any], water: Water) -> Amounts:
    """Return what a kilogram of the tank's water holds now, but for its carbon."""
    name, per_kg = change["parameter"], 1.0 / density(*water)
    now = {field: float(canonical(system[field], water)) for field in ("alkalinity", "calcium") if field in system}
    start = canonical(change["measured"], water) + canonical(change.get("untested", f"0 {BOUNDS[name].unit}"), water)
    now[name] = float(start)
    held = reckoning_ph.natural(water[0])
    alkalinity = now.get("alkalinity", float(NATURAL_ALKALINITY)) * per_kg / 1000.0
    calcium = now["calcium"] / float(ATOMS["Ca"]) * per_kg / 1000.0 if "calcium" in now else held.calcium
    return replace(held, alkalinity=alkalinity, calcium=calcium)


# Days after which a reading is no basis for a correction; common practice, no source.
STALE_DAYS = {"alkalinity": 3, "calcium": 7, "nitrate": 7, "phosphate": 7}
CLOCK_MINUTES = 5
_BASES = {
    "sodium carbonate anhydrous", "sodium carbonate monohydrate", "sodium carbonate decahydrate", "sodium bicarbonate",
    "sodium hydroxide", "calcium hydroxide", "sodium tetraborate decahydrate",
}  # fmt: skip
_METALS = {
    "calcium": {
        "calcium hydroxide",
        "calcium chloride anhydrous",
        "calcium chloride dihydrate",
        "calcium chloride hexahydrate",
    },
    "magnesium": {"magnesium chloride hexahydrate", "magnesium sulfate heptahydrate"},
    "strontium": {"strontium chloride hexahydrate"},
}


def fall_out(first: str, second: str) -> bool:
    """Return whether two chemicals may not stand in one jug: chalk, magnesium hydroxide, gypsum and their like."""
    heavy = _METALS["calcium"] | _METALS["strontium"]
    metals = heavy | _METALS["magnesium"]
    for one, other in ((first, second), (second, first)):
        if (one in _BASES or one == "potassium dihydrogen phosphate") and other in metals:
            return True
        if one == "magnesium sulfate heptahydrate" and other in heavy:
            return True
        # Boric acid is borate once lime has made it so.
        if one == "boric acid" and other == "calcium hydroxide":
            return True
    return False


def objections(t: Told) -> set[str]:
    """Return the codes of everything that is wrong with a question before anything is planned."""
    found = set()
    least, most = (t.limit(v) for v in t.bounds.plausible)
    bottom, top = (t.limit(v) for v in t.bounds.targets)
    if not least <= t.measured <= most:
        found.add("implausible")
    elif not bottom <= t.target <= top:
        found.add("target_outside")
    elif t.target <= t.measured:
        found.add("target_reached" if t.target == t.measured else "target_below_measured")
    elif t.target <= t.start:
        found.add("untested_reaches")
    elif t.untested > 0 and t.volume_known == "unknown":
        found.add("untested_unknown")
    if t.measured_at is not None:
        days = (NOW - t.measured_at).total_seconds() / 86400.0
        if days > STALE_DAYS.get(t.name, 14):
            found.add("reading_stale")
        elif days < -CLOCK_MINUTES / 1440.0:
            found.add("reading_in_the_future")
    return found | _wishes(t) | _jug(t)


def _wishes(t: Told) -> set[str]:
    if t.fastest is None:
        return set()
    # A rise written in another unit has so many digits: a limit met is not a limit passed.
    noise = 1 + Fraction(1, 10**12)
    if t.fastest <= 0:
        return {"rise_not_positive"}
    if t.fastest > t.limit(t.bounds.hard) * noise:
        return {"rise_beyond_hard"}
    return {"rise_needs_reason"} if t.fastest > t.limit(t.bounds.recommended) * noise and not t.reason else set()


def _jug(t: Told) -> set[str]:
    found: set[str] = set() if t.per_ml > 0.0 else {"does_not_raise"}
    if len(t.bags) == 2 and fall_out(t.bags[0][0], t.bags[1][0]):
        return found | {"never_in_one_jug"}
    if t.jug_ml is None or t.saturated:
        return found
    litres = t.jug_ml / 1000.0
    # Salts leave each other no more room than what is left of the litre; common practice, no source.
    full = sum(grams * purity / litres / dissolves(chemical, t.coolest_c) for chemical, grams, purity in t.bags)
    return found | ({"does_not_dissolve"} if full > 1.0 else set())
