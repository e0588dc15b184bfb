"""What a plan does besides what is wanted: what comes along, what the upkeep leaves behind, and the chemistry on the way.

Everything is counted in moles per litre of the tank, so that charges and masses balance exactly. What is used up goes
with its partners:

* calcium and alkalinity together, one mole to two equivalents, as calcium carbonate;
* nitrate and phosphate each leave one equivalent of alkalinity per mole when they are taken up (Middelburg, Soetaert
  and Hagens 2020, Rev. Geophys. 58, e2019RG000681, table 2: primary production; denitrification does the same);
* of everything else only the ion itself goes, since nobody knows what the animals take with it.

Salinity counts the mass of what is still in the water: each ion in the form that carries no alkalinity (phosphate as
H2PO4, boron as boric acid), and an equivalent of alkalinity that was not used as one mole of bicarbonate, the heaviest
form it can take. Other carbon is left out: the air takes or gives it, and the animals build with it. Losses are left
out as well, and water comes with the doses in place of top-off, so the figure errs high.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from evenwater.engine.caps import calcium_per_meq
from evenwater.engine.carbonate_point import Sample
from evenwater.engine.catalogue import ION_OF
from evenwater.engine.correction import Answer
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import density_kg_per_l
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.stock import Dissolved, moles_per_ml
from evenwater.engine.water_limits import doses_in_an_hour

YEAR_DAYS = 365.25
MONTH_DAYS = YEAR_DAYS / 12.0

# What is counted in moles, under its name in the chemicals file: the keeper's word, what its mass is counted as, and
# the form it is dissolved in when it carries no alkalinity.
_IONS = {
    "Na": ("sodium", "Na", "Na"),
    "K": ("potassium", "K", "K"),
    "Mg": ("magnesium", "Mg", "Mg"),
    "Ca": ("calcium", "Ca", "Ca"),
    "Sr": ("strontium", "Sr", "Sr"),
    "Cl": ("chloride", "Cl", "Cl"),
    "I": ("iodide", "I", "I"),
    "SO4": ("sulfate", "SO4", "SO4"),
    "NO3": ("nitrate", "NO3", "NO3"),
    "PO4": ("phosphate", "PO4", "H2PO4"),
    "B": ("boron", "B", "H3BO3"),
}
_UNITS = {"nitrate": "mg/L as NO3", "phosphate": "mg/L as PO4"}
# Two ways to the same sum differ by binary noise; less than this share of it is nothing.
_NOISE = 1e-9

# Moles and equivalents per litre of the tank [mmol/L and meq/L].
Amounts = Mapping[str, float]


@dataclass(frozen=True)
class Carried:
    """So much of one thing: ions [mg/L], alkalinity [meq/L], dissolved inorganic carbon [mmol/L], as ``unit`` says."""

    name: str
    amount: float
    unit: str


@dataclass(frozen=True)
class Along:
    """What the doses of the correction carry in.

    ``carried`` is what comes besides the value that is raised; ``salinity`` [g/kg] the rise by the last dose, with what
    is raised counted too. Both are empty of a bottle known only by its label. ``water_l`` [L] comes in place of top-off.
    """

    carried: tuple[Carried, ...]
    salinity: float | None
    water_l: float


@dataclass(frozen=True)
class Upkeep:
    """What some days of upkeep leave behind when nothing is exchanged.

    ``stays`` is what is not used up, ``salt_g`` [g] its mass in the whole tank, ``salinity`` [g/kg] the rise it makes;
    none of them is known of a bottle with a label. ``only_nacl`` says that it is sodium and chloride, mole for mole.
    """

    days: float
    stays: tuple[Carried, ...]
    salinity: float | None
    salt_g: float | None
    only_nacl: bool
    water_l: float


@dataclass(frozen=True)
class Pair:
    """Calcium [mg/meq] that goes with alkalinity, and how much of each [mg/L and meq/L per day] the use implies."""

    calcium_per_meq: float
    calcium_per_day: float
    alkalinity_per_day: float


@dataclass(frozen=True)
class Instant:
    """pH (NBS), saturation with aragonite [-] and dissolved inorganic carbon [mmol/L] at one instant."""

    ph: float
    saturation: float
    dic: float


@dataclass(frozen=True)
class Way:
    """The chemistry along the way; an instant is None where a bottle's contents would have to be known.

    ``at_target`` is with gas exchange caught up. A dose counts as all the ``doses_at_once`` of the fullest hour, in which
    the air brings nothing. The flags say what was measured; see ``TankChemistry`` for what is taken instead.
    """

    now: Instant
    after_dose: Instant | None
    at_target: Instant | None
    after_dose_there: Instant | None
    doses_at_once: int
    ph_known: bool
    calcium_known: bool
    alkalinity_known: bool


@dataclass(frozen=True)
class SideEffects:
    """Everything a plan does besides what is wanted.

    ``known`` is False of a bottle known only by its label. ``month`` and ``year`` are None without a use per day.
    ``partner`` is what the upkeep is taken to be made good with besides: ``"calcium"`` by calcium chloride,
    ``"alkalinity"`` by a sodium salt, or empty. ``pair`` is there for these two parameters only.
    """

    known: bool
    correction: Along
    month: Upkeep | None
    year: Upkeep | None
    partner: str
    pair: Pair | None
    way: Way | None


def side_effects(answer: Answer) -> SideEffects:
    """Return what a plan does besides what is wanted.

    Parameters
    ----------
    answer : Answer
        The plan.

    Returns
    -------
    SideEffects
        Of the correction as its rounded doses give it, and of the upkeep at exactly the use per day.
    """
    q = answer.question
    known = isinstance(q.additive, Dissolved)
    left = _left_per_day(answer) if q.use > 0.0 else {}
    month, year = (_upkeep(answer, left, days) if q.use > 0.0 else None for days in (MONTH_DAYS, YEAR_DAYS))
    return SideEffects(known, _along(answer), month, year, _partner(left), _pair(q), _way(answer))


def _along(answer: Answer) -> Along:
    q, doses = answer.question, answer.doses
    water_l = doses.total_ml / 1000.0
    if not isinstance(q.additive, Dissolved):
        return Along((), None, water_l)
    given = _carried(q.additive, doses.total_ml / q.system.volume_l)
    wanted = _counted(q.parameter.name)
    besides = {what: amount for what, amount in given.items() if what != wanted}
    # What the animals took beyond what was given is no doing of the additive's.
    used = _used(q, doses.lasts_days, answer.per_ml)
    left = {what: max(amount, 0.0) for what, amount in _less(given, used).items()}
    return Along(_listed(besides), _salinity(q, left), water_l)


def _left_per_day(answer: Answer) -> dict[str, float]:
    """Return what a day of upkeep leaves, below zero what something else has to make good [mmol/L and meq/L]."""
    q = answer.question
    if not isinstance(q.additive, Dissolved):
        return {}
    given = _carried(q.additive, q.use / answer.per_ml / q.system.volume_l)
    return _less(given, _used(q, 1.0, answer.per_ml))


def _upkeep(answer: Answer, left: Amounts, days: float) -> Upkeep:
    q = answer.question
    water_l = q.use * days / answer.per_ml / 1000.0
    if not isinstance(q.additive, Dissolved):
        return Upkeep(days, (), None, None, only_nacl=False, water_l=water_l)
    stays = {what: amount * days for what, amount in _with_partner(left).items()}
    only_nacl = stays.keys() == {"Na", "Cl"} and math.isclose(stays["Na"], stays["Cl"], rel_tol=_NOISE)
    salt_g = _mass(stays) * q.system.volume_l / 1000.0
    return Upkeep(days, _listed(stays), _salinity(q, stays), salt_g, only_nacl, water_l)


def _partner(left: Amounts) -> str:
    """Return what is used with the value that is kept and does not come with it."""
    if left.get("Ca", 0.0) < 0.0:
        return "calcium"
    return "alkalinity" if left.get("alkalinity", 0.0) < 0.0 else ""


def _with_partner(left: Amounts) -> dict[str, float]:
    """Return what stays once calcium chloride, or a sodium salt, made good what was short [mmol/L and meq/L]."""
    out = {what: amount for what, amount in left.items() if amount > 0.0}
    out["Cl"] = out.get("Cl", 0.0) + 2.0 * max(-left.get("Ca", 0.0), 0.0)
    out["Na"] = out.get("Na", 0.0) + max(-left.get("alkalinity", 0.0), 0.0)
    return {what: amount for what, amount in out.items() if amount > 0.0}


def _carried(batch: Dissolved, ml_per_l: float) -> dict[str, float]:
    """Return what so much stock per litre of the tank [mL/L] carries [mmol/L and meq/L]."""
    what = (*_IONS, "alkalinity", "DIC")
    return {name: amount for name in what if (amount := moles_per_ml(batch, name) * ml_per_l) != 0.0}


def _counted(parameter: str) -> str:
    """Return the name in the chemicals file of what a parameter counts; none of them is salinity."""
    return ION_OF[parameter][0] if parameter in ION_OF else parameter


def _used(q: CorrectionQuestion, days: float, per_ml: float) -> dict[str, float]:
    """Return what the use of some days takes out, with what goes along with it [mmol/L and meq/L]."""
    amount, name = q.use * days, q.parameter.name
    if name == "alkalinity":
        return {"alkalinity": amount, "Ca": amount / 2.0}
    if name == "salinity":
        salt = _salt(q.additive) if isinstance(q.additive, Dissolved) else None
        return {} if salt is None else _carried(salt, amount / per_ml / q.system.volume_l)
    ion, counted_as = ION_OF[name]
    moles = amount / molar_mass(counted_as)
    if name == "calcium":
        return {"Ca": moles, "alkalinity": 2.0 * moles}
    # Less than nothing of alkalinity is used: uptake leaves it.
    return {ion: moles, "alkalinity": -moles} if name in ("nitrate", "phosphate") else {ion: moles}


def _salt(batch: Dissolved) -> Dissolved | None:
    """Return the part of a batch that counts as salinity."""
    parts = tuple(p for p in batch.portions if p.chemical.per_gram("salinity") > 0.0)
    if not parts:
        return None
    return Dissolved(parts[0].chemical, parts[0].grams, batch.made_up_l, parts[0].purity, parts[1:])


def _less(given: Amounts, used: Amounts) -> dict[str, float]:
    """Return what is given less what is used, without noise, and without carbon, which the air evens out."""
    out = {}
    for what in (*given, *(name for name in used if name not in given)):
        more, less = given.get(what, 0.0), used.get(what, 0.0)
        if what != "DIC" and abs(more - less) > _NOISE * max(abs(more), abs(less)):
            out[what] = more - less
    return out


def _mass(left: Amounts) -> float:
    """Return the mass of what is dissolved [mg/L]."""
    return sum(amount * molar_mass("HCO3" if what == "alkalinity" else _IONS[what][2]) for what, amount in left.items())


def _salinity(q: CorrectionQuestion, left: Amounts) -> float:
    """Return the rise in salinity that what is dissolved makes [g/kg]."""
    return _mass(left) / 1000.0 / density_kg_per_l(q.system.water)


def _listed(amounts: Amounts) -> tuple[Carried, ...]:
    return tuple(_said(what, amount) for what, amount in amounts.items())


def _said(what: str, amount: float) -> Carried:
    if what == "alkalinity":
        return Carried(what, amount, "meq/L")
    if what == "DIC":
        return Carried("dissolved inorganic carbon", amount, "mmol/L")
    name, counted_as, _ = _IONS[what]
    return Carried(name, amount * molar_mass(counted_as), _UNITS.get(name, "mg/L"))


def _pair(q: CorrectionQuestion) -> Pair | None:
    ratio = calcium_per_meq()
    if q.parameter.name == "alkalinity":
        return Pair(ratio, q.use * ratio, q.use)
    return Pair(ratio, q.use, q.use / ratio) if q.parameter.name == "calcium" else None


def _way(answer: Answer) -> Way | None:
    tank, q = answer.tank, answer.question
    if tank is None:
        return None
    density = density_kg_per_l(q.system.water)
    at_once = doses_in_an_hour(answer.doses.per_day)
    rise = answer.doses.dose_ml * at_once * answer.per_ml

    def instant(sample: Sample) -> Instant:
        return Instant(sample.ph_nbs, sample.saturation, sample.dic * density)

    known = isinstance(q.additive, Dissolved)
    # Once the air has evened out the carbon, alkalinity alone decides, whatever form of it a bottle brings.
    settled = known or q.parameter.name == "alkalinity"
    return Way(
        now=instant(tank.start),
        after_dose=instant(tank.after(tank.start, rise)) if known else None,
        at_target=instant(tank.end) if settled else None,
        after_dose_there=instant(tank.after(tank.end, rise)) if known else None,
        doses_at_once=at_once,
        ph_known=tank.ph_known,
        calcium_known=tank.calcium_known,
        alkalinity_known=tank.alkalinity_known,
    )
