"""A correction reckoned by hand, in fractions, from atomic weights and definitions typed here.

Nothing of the product is used. Sources: atomic weights CIAAW 2021, conventional values where CIAAW gives
an interval; 1 degree of carbonate hardness = 10 mg CaO per litre (definition of the German degree); pound,
US gallon (231 cubic inches) and imperial gallon by law; density of seawater TEOS-10. Limits: common
practice, no source. What the water allows is reckoned in ``reckoning_ph``, in floats.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import lru_cache
from typing import Any

from scipy.optimize import brentq

from tests.engine import reckoning_ph
from tests.engine.reckoning_ph import Amounts, Tank

ATOMS = {
    name: Fraction(weight)
    for name, weight in {
        "H": "1.008", "B": "10.81", "C": "12.011", "N": "14.007", "O": "15.999", "Na": "22.98976928", "Mg": "24.305",
        "P": "30.973761998", "S": "32.06", "Cl": "35.45", "K": "39.0983", "Ca": "40.078", "Sr": "87.62", "I": "126.90447",
    }.items()
}  # fmt: skip


def mass(**atoms: int) -> Fraction:
    """Return a molar mass [g/mol] from counts of atoms."""
    return sum((ATOMS[name] * count for name, count in atoms.items()), Fraction(0))


WATER, NO3, PO4 = mass(H=2, O=1), mass(N=1, O=3), mass(P=1, O=4)
DEGREE = 10 * 2 / mass(Ca=1, O=1)  # meq/L: CaO takes up two protons
CA_PER_MEQ = ATOMS["Ca"] / 2


@dataclass(frozen=True)
class Salt:
    """Molar mass of the dry salt, moles of hydrate water, and what one mole raises [meq, mg or g]."""

    dry: Fraction
    waters: int
    raises: Mapping[str, Fraction]
    along: Mapping[str, Fraction]

    @property
    def molar(self) -> Fraction:
        """Mass of a mole as weighed [g/mol]."""
        return self.dry + self.waters * WATER


def _salt(
    dry: Fraction, waters: int, raises: Mapping[str, Fraction], along: Mapping[str, Fraction] | None = None
) -> Salt:
    return Salt(dry, waters, raises, along or {})


def _mg(atom: str) -> Fraction:
    return 1000 * ATOMS[atom]


_CARBONATE, _LIME = mass(Na=2, C=1, O=3), mass(Ca=1, O=2, H=2)
_CACL2, _MGCL2 = mass(Ca=1, Cl=2), mass(Mg=1, Cl=2)
_EQ = Fraction(1000)

SALTS = {
    "sodium carbonate anhydrous": _salt(_CARBONATE, 0, {"alkalinity": 2 * _EQ}),
    "sodium carbonate monohydrate": _salt(_CARBONATE, 1, {"alkalinity": 2 * _EQ}),
    "sodium carbonate decahydrate": _salt(_CARBONATE, 10, {"alkalinity": 2 * _EQ}),
    "sodium bicarbonate": _salt(mass(Na=1, H=1, C=1, O=3), 0, {"alkalinity": _EQ}),
    "sodium hydroxide": _salt(mass(Na=1, O=1, H=1), 0, {"alkalinity": _EQ}),
    "calcium hydroxide": _salt(_LIME, 0, {"alkalinity": 2 * _EQ, "calcium": _mg("Ca")}),
    "sodium tetraborate decahydrate": _salt(mass(Na=2, B=4, O=7), 10, {"alkalinity": 2 * _EQ}),
    "calcium chloride anhydrous": _salt(_CACL2, 0, {"calcium": _mg("Ca")}),
    "calcium chloride dihydrate": _salt(_CACL2, 2, {"calcium": _mg("Ca")}),
    "calcium chloride hexahydrate": _salt(_CACL2, 6, {"calcium": _mg("Ca")}),
    "magnesium chloride hexahydrate": _salt(_MGCL2, 6, {"magnesium": _mg("Mg")}),
    "magnesium sulfate heptahydrate": _salt(mass(Mg=1, S=1, O=4), 7, {"magnesium": _mg("Mg")}),
    "potassium chloride": _salt(mass(K=1, Cl=1), 0, {"potassium": _mg("K")}),
    "strontium chloride hexahydrate": _salt(mass(Sr=1, Cl=2), 6, {"strontium": _mg("Sr")}),
    "potassium iodide": _salt(mass(K=1, I=1), 0, {"iodide": _mg("I")}, {"potassium": _mg("K")}),
    "sodium nitrate": _salt(mass(Na=1, N=1, O=3), 0, {"nitrate": 1000 * NO3}),
    "potassium nitrate": _salt(mass(K=1, N=1, O=3), 0, {"nitrate": 1000 * NO3}, {"potassium": _mg("K")}),
    "potassium dihydrogen phosphate": _salt(
        mass(K=1, H=2, P=1, O=4), 0, {"phosphate": 1000 * PO4}, {"potassium": _mg("K")}
    ),
    "sodium chloride": _salt(mass(Na=1, Cl=1), 0, {"salinity": mass(Na=1, Cl=1)}),
}

# What a mole brings into the carbonate system: alkalinity [eq], then carbon, calcium, boron and phosphate [mol].
CARBONATES = {
    "sodium carbonate anhydrous": Amounts(2, 1), "sodium carbonate monohydrate": Amounts(2, 1),
    "sodium carbonate decahydrate": Amounts(2, 1), "sodium bicarbonate": Amounts(1, 1), "sodium hydroxide": Amounts(1),
    "calcium hydroxide": Amounts(2, 0, 1), "sodium tetraborate decahydrate": Amounts(2, 0, 0, 4),
    "calcium chloride anhydrous": Amounts(0, 0, 1), "calcium chloride dihydrate": Amounts(0, 0, 1),
    "calcium chloride hexahydrate": Amounts(0, 0, 1), "potassium dihydrogen phosphate": Amounts(0, 0, 0, 0, 1),
}  # fmt: skip
# Alkalinity of natural seawater at salinity 35, taken where none was measured; of the parameter file.
NATURAL_ALKALINITY = Fraction("6.61") * DEGREE
# What the water allows is reckoned in floats: a pace that it sets is good to so much of the dose.
WATER_LIMITS = ("ph_rise", "ph_ceiling", "saturation")


@dataclass(frozen=True)
class Bounds:
    """A parameter's limits in its display unit; common practice, no source."""

    unit: str
    recommended: str
    hard: str
    targets: tuple[str, str]
    plausible: tuple[str, str]
    jumps: tuple[str, str]


BOUNDS = {
    "alkalinity": Bounds("dKH", "1.0", "1.4", ("4", "14"), ("4", "15"), ("0.35", "0.7")),
    "calcium": Bounds("mg/L", "20", "50", ("300", "550"), ("150", "800"), ("12.5", "25")),
    "magnesium": Bounds("mg/L", "50", "100", ("1000", "1700"), ("500", "2500"), ("25", "50")),
    "potassium": Bounds("mg/L", "10", "20", ("250", "500"), ("100", "900"), ("5", "10")),
    "strontium": Bounds("mg/L", "0.5", "1", ("3", "20"), ("0", "40"), ("0.25", "0.5")),
    "iodide": Bounds("mg/L", "0.01", "0.02", ("0.005", "0.15"), ("0", "1"), ("0.005", "0.01")),
    "nitrate": Bounds("mg/L as NO3", "1", "2", ("0", "50"), ("0", "200"), ("0.5", "1")),
    "phosphate": Bounds("mg/L as PO4", "0.01", "0.03", ("0", "0.5"), ("0", "5"), ("0.0075", "0.015")),
    "salinity": Bounds("ppt", "0.5", "1.0", ("25", "40"), ("10", "45"), ("0.25", "0.5")),
}

FACTORS = {
    "meq/L": Fraction(1), "mmol/L": Fraction(1), "dKH": DEGREE, "ppm as CaCO3": 2 / mass(Ca=1, C=1, O=3),
    "mg/L": Fraction(1), "mg/L as NO3": Fraction(1), "mg/L as N": NO3 / ATOMS["N"],
    "mg/L as PO4": Fraction(1), "mg/L as P": PO4 / ATOMS["P"], "ppt": Fraction(1),
    "L": Fraction(1), "mL": Fraction(1, 1000), "US gal": 231 * Fraction("0.254") ** 3, "imperial gal": Fraction("4.54609"),
    "g": Fraction(1), "mg": Fraction(1, 1000), "kg": Fraction(1000), "lb": Fraction("453.59237"),
    "oz": Fraction("453.59237") / 16, "%": Fraction(1, 100), "mL/min": Fraction(1),
}  # fmt: skip
GRAVITIES = {"SG 25/25 degC": 25.0, "SG 20/20 degC": 20.0, "SG 60/60 degF": (60 - 32) / 1.8}
UNITS = {
    "alkalinity": ("dKH", "meq/L", "mmol/L", "ppm as CaCO3"),
    "nitrate": ("mg/L as NO3", "mg/L as N"),
    "phosphate": ("mg/L as PO4", "mg/L as P"),
    "salinity": ("ppt", *GRAVITIES),
    **dict.fromkeys(("calcium", "magnesium", "potassium", "strontium", "iodide"), ("mg/L", "mg/kg")),
}
VOLUMES, MASSES = ("L", "mL", "US gal", "imperial gal"), ("g", "mg", "kg", "oz", "lb")


@lru_cache(maxsize=4096)
def density(salinity: float, celsius: float) -> float:
    """Return the density of seawater [kg/L] (TEOS-10)."""
    import gsw

    absolute = 35.16504 / 35.0 * salinity
    return float(gsw.rho(absolute, gsw.CT_from_t(absolute, celsius, 0.0), 0.0)) / 1000.0


def gravity(salinity: float, celsius: float) -> float:
    """Return the specific gravity against pure water of the same temperature [1]."""
    return density(salinity, celsius) / density(0.0, celsius)


def canonical(text: str, water: tuple[float, float] = (35.0, 25.0)) -> Fraction:
    """Return "number unit" (perhaps "per day") in meq/L, mg/L, ppt, L or g."""
    number, _, unit = text.partition(" ")
    unit = unit.removesuffix(" per day")
    if unit in GRAVITIES:
        at = GRAVITIES[unit]
        return Fraction(brentq(lambda s: gravity(s, at) - float(number), 0.0, 60.0, xtol=1e-13, rtol=1e-14))
    factor = Fraction(density(*water)) if unit == "mg/kg" else FACTORS[unit]
    return Fraction(number) * factor


def written(value: Fraction | float, unit: str, water: tuple[float, float] = (35.0, 25.0), tail: str = "") -> str:
    """Return a canonical value as "number unit" with as many digits as the reader takes."""
    if unit in GRAVITIES:
        figure = gravity(float(value), GRAVITIES[unit])
    else:
        factor = Fraction(density(*water)) if unit == "mg/kg" else FACTORS[unit]
        figure = float(Fraction(value) / factor)
    whole = len(str(int(figure)))
    return f"{plain(f'{figure:.{15 - whole}f}')} {unit}{tail}"


def plain(number: str) -> str:
    """Return a decimal number without idle zeros, but never with the three decimals that ask a question back."""
    if "." not in number:
        return number
    number = number.rstrip("0").rstrip(".")
    return f"{number}0" if len(number.partition(".")[2]) == 3 else number


@dataclass(frozen=True)
class Plan:
    """What the hand reckoning says; canonical units, days and mL."""

    pace: Fraction
    set_by: str
    per_ml: Fraction
    in_day: Fraction
    single: Fraction
    lasts: Fraction
    total: Fraction
    upkeep: Fraction
    strength: Fraction
    whole_jug: Fraction | None
    dose: Fraction
    count: int
    upkeep_dose: Fraction
    step: Fraction
    shortfall: Fraction
    margin: float


def reckon(raw: Mapping[str, Any]) -> Plan | str:
    """Reckon a question of the form of a question file; a refusal is returned as its codes, with commas."""
    system, change, pump = raw["system"], raw["change"], raw["pump"]
    water = (float(system.get("salinity", "35").split()[0]), float(system.get("temperature", "25 degC").split()[0]))
    name, limits = change["parameter"], BOUNDS[change["parameter"]]
    volume = canonical(system["net_volume"])
    measured, target = canonical(change["measured"], water), canonical(change["target"], water)
    use = canonical(change.get("daily_use", f"0 {limits.unit}"), water)
    recommended = Fraction(limits.recommended) * FACTORS[limits.unit]
    allowed = canonical(change["fastest_rise"], water) if "fastest_rise" in change else recommended
    wrong = _objection(limits, measured, target, allowed, bool(change.get("reason")))
    if wrong:
        return wrong
    strength, along, jug = strength_of(raw["additive"], name, water)
    per_ml = strength / volume
    doses = int(pump.get("doses_per_day", 24))
    paces = _paces(raw, allowed, use, per_ml, along)
    tank = water_side(raw, float(target - measured), water)
    if tank == "impossible_water":
        return tank
    if isinstance(tank, Tank):
        allows = reckoning_ph.paces(tank, doses, float(use), float(min(paces.values())))
        paces |= {code: math.inf if math.isinf(pace) else Fraction(pace) for code, pace in allows.items()}
    set_by = min(paces, key=lambda code: paces[code])
    pace = paces[set_by]
    slowed = set_by.startswith("also_raises") and pace < allowed / 10
    if pace <= 0 or slowed:
        return ("also_raises" if set_by.startswith("also_raises") else set_by) + "_forbids"
    lasts = (target - measured) / pace
    if lasts > 365:
        return "too_slow"
    in_day = (pace + use) / per_ml
    single = in_day / doses
    fall, climb = use / doses, target - measured
    # A pump without a step of its own is taken to be set to two digits of the dose, of which none is more than the whole climb.
    step = Fraction(pump["step"].split()[0]) if "step" in pump else default_step(min(single, (climb + fall) / per_ml))
    dose = single // step * step
    if dose * per_ml - fall > climb:
        dose = (climb + fall) / per_ml // step * step
    net = dose * per_ml - fall
    if net <= 0:
        return "step_too_coarse"
    count = climb // net
    if "smallest_dose" in pump and dose < Fraction(pump["smallest_dose"].split()[0]):
        return "dose_below_smallest"
    if Fraction(count, doses) > 365:
        return "step_too_coarse"
    upkeep_dose = fall / per_ml // step * step
    if "smallest_dose" in pump and upkeep_dose < Fraction(pump["smallest_dose"].split()[0]):
        upkeep_dose = Fraction(0)
    # How far the nearest rounding decision is from its edge: binary floats may fall on either side there.
    edges = (single / step, climb / net, fall / per_ml / step)
    margin = min(float(abs(edge - round(edge))) / max(1.0, float(edge)) for edge in edges if edge)
    return Plan(
        pace=pace, set_by=set_by, per_ml=per_ml, in_day=in_day, single=single, lasts=lasts, total=in_day * lasts,
        upkeep=use / per_ml, strength=strength, whole_jug=None if jug is None else measured + jug * per_ml, dose=dose,
        count=count, upkeep_dose=upkeep_dose, step=step, shortfall=climb - count * net, margin=margin,
    )  # fmt: skip


def _paces(
    raw: Mapping[str, Any], allowed: Fraction, use: Fraction, per_ml: Fraction, along: Mapping[str, Fraction]
) -> dict[str, Any]:
    """Return what each limit allows but those of pH and saturation [canonical unit per day]."""
    limits, pump, system = BOUNDS[raw["change"]["parameter"]], raw["pump"], raw["system"]
    jump = Fraction(limits.jumps[1 if raw["change"].get("reason") else 0]) * FACTORS[limits.unit]
    share = canonical(pump["largest_share"]) if "largest_share" in pump else Fraction(1, 2)
    paces = {"daily_rise": allowed, "single_dose": int(pump.get("doses_per_day", 24)) * jump - use}
    paces["pump_share"] = share * 1440 * canonical(pump["flow"]) * per_ml - use
    for other, ratio in along.items():
        credit = use / CA_PER_MEQ if other == "alkalinity" else use * CA_PER_MEQ if other == "calcium" else Fraction(0)
        hard = Fraction(BOUNDS[other].hard) * FACTORS[BOUNDS[other].unit]
        paces[f"also_raises_{other}"] = (hard + credit) / ratio - use
    if "evaporation" in system and raw["additive"].get("chemical") == "calcium hydroxide":
        paces["evaporation"] = canonical(system["evaporation"]) * 1000 * per_ml - use
    return paces


def water_side(raw: Mapping[str, Any], climb: float, water: tuple[float, float]) -> Tank | str:
    """Return the carbonate side of a correction; a word when it has none, or when no water has such a pH."""
    found = held_and_brought(raw, water)
    if found is None:
        return "brings nothing"
    ph = float(raw["system"]["ph"]) if "ph" in raw["system"] else None
    return reckoning_ph.tank(water, found[0], ph, found[1], climb) or "impossible_water"


def held_and_brought(raw: Mapping[str, Any], water: tuple[float, float]) -> tuple[Amounts, Amounts] | None:
    """Return what a kilogram of the water holds but carbon, and what a rise by one canonical unit brings to it."""
    system, name, additive = raw["system"], raw["change"]["parameter"], raw["additive"]
    per_kg = 1 / density(*water)
    if "label" in additive:
        # What is in a bottle is not known: hydroxide lifts pH most.
        kinds = {"alkalinity": Amounts(per_kg / 1000.0), "calcium": Amounts(0, 0, per_kg / 1000.0 / float(ATOMS["Ca"]))}
        per_unit = kinds.get(name, Amounts())
    else:
        # Moles of the salt per litre of the tank for a rise by one unit.
        raises = SALTS[additive["chemical"]].raises
        moles = per_kg / float(raises[name]) if name in raises else 0.0
        per_unit = Amounts().plus(CARBONATES.get(additive["chemical"], Amounts()), moles)
    if per_unit == Amounts():
        return None
    told = {field: canonical(system[field], water) for field in ("alkalinity", "calcium") if field in system}
    told[name] = canonical(raw["change"]["measured"], water)
    held = reckoning_ph.natural(water[0])
    alkalinity = float(told.get("alkalinity", NATURAL_ALKALINITY)) * per_kg / 1000.0
    calcium = float(told["calcium"] / ATOMS["Ca"]) * per_kg / 1000.0 if "calcium" in told else held.calcium
    return replace(held, alkalinity=alkalinity, calcium=calcium), per_unit


def _objection(limits: Bounds, measured: Fraction, target: Fraction, allowed: Fraction, reason: bool) -> str:
    """Return the codes of everything that is wrong with a reading, its target and the pace; empty when nothing is."""
    size = FACTORS[limits.unit]
    found = []
    low, high = (Fraction(v) * size for v in limits.plausible)
    bottom, top = (Fraction(v) * size for v in limits.targets)
    if not low <= measured <= high:
        found.append("implausible")
    elif not bottom <= target <= top:
        found.append("target_outside")
    elif target <= measured:
        found.append("target_reached" if target == measured else "target_below_measured")
    # A rise written in another unit has fifteen digits, so a limit met is not a limit passed.
    if allowed <= 0:
        found.append("rise_not_positive")
    elif allowed > Fraction(limits.hard) * size * (1 + Fraction(1, 10**12)):
        found.append("rise_beyond_hard")
    elif allowed > Fraction(limits.recommended) * size * (1 + Fraction(1, 10**12)) and not reason:
        found.append("rise_needs_reason")
    return ", ".join(found)


def strength_of(
    additive: Mapping[str, Any], name: str, water: tuple[float, float]
) -> tuple[Fraction, dict[str, Fraction], Any]:
    """Return amount per mL, ratio of everything raised along, and the jug [mL]."""
    if "label" in additive:
        label = additive["label"]
        dose_ml = canonical(label["dose"]) * 1000
        return canonical(label["raises"], water) * canonical(label["water"]) / dose_ml, {}, None
    salt = SALTS[additive["chemical"]]
    jug_ml = canonical(additive["made_up_to"]) * 1000
    purity = canonical(additive["purity"]) if "purity" in additive else Fraction(1)
    moles_per_ml = canonical(additive["dissolved"]) * purity / salt.molar / jug_ml
    everything = {**salt.raises, **salt.along}
    per_ml = {other: moles_per_ml * amount for other, amount in everything.items()}
    meant = per_ml.pop(name) if name in salt.raises else Fraction(0)
    along = {other: amount / meant for other, amount in per_ml.items()} if meant else {}
    return (meant / Fraction(density(*water)) if name == "salinity" else meant), along, jug_ml


def default_step(single: Fraction) -> Fraction:
    """Return a tenth of a millilitre, or the finer power of ten that keeps two digits of the dose."""
    step = Fraction(1, 10)
    while single < 10 * step:
        step /= 10
    return step


def nearly(actual: float, expected: Fraction | float, tolerance: float = 1e-9) -> bool:
    """Return whether two figures agree to a relative tolerance."""
    return math.isclose(actual, float(expected), rel_tol=tolerance, abs_tol=0.0)
