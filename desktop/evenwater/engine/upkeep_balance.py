"""What goes into a tank by upkeep and what is used up: moles first, then values, so that masses and charges balance.

What is used goes with its partners, as ``side_effects`` has it: calcium and alkalinity together as calcium carbonate where
only one of them is kept; nitrate and phosphate leave one equivalent of alkalinity per mole where alkalinity is not kept (a
use of alkalinity that was measured has that in it already); salinity goes as sodium chloride. Of everything else only the
ion itself goes.

Salinity counts the mass of what is dissolved: each ion in the form that carries no alkalinity, an equivalent of alkalinity
as a mole of bicarbonate. Carbon is left out otherwise: the air takes or gives it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from evenwater.engine.balance import after, segment, steady
from evenwater.engine.catalogue import ION_OF, Parameter
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import Water, density_kg_per_l
from evenwater.engine.side_effects import MONTH_DAYS, YEAR_DAYS
from evenwater.engine.stock import Additive, Labelled, moles_per_ml, strength
from evenwater.engine.units import KINDS
from evenwater.engine.upkeep_question import UpkeepQuestion

SPANS = {"week": 7.0, "month": MONTH_DAYS, "year": YEAR_DAYS}

# What is counted besides the parameters, under its name in the chemicals file.
BESIDES = {"sodium": "Na", "chloride": "Cl", "sulfate": "SO4", "boron": "B"}
# The form in which each is dissolved when it carries no alkalinity, and alkalinity itself.
_FORMS = {
    "alkalinity": "HCO3", "Na": "Na", "K": "K", "Mg": "Mg", "Ca": "Ca", "Sr": "Sr", "Cl": "Cl", "I": "I", "SO4": "SO4",
    "NO3": "NO3", "PO4": "H2PO4", "B": "H3BO3",
}  # fmt: skip
# Two ways to the same sum differ by binary noise; less than this share of it is nothing.
NOISE = 1e-9

# Moles and equivalents [mmol and meq], by name in the chemicals file.
Solutes = Mapping[str, float]


@dataclass(frozen=True)
class Drift:
    """What upkeep and exchange do to one value, all in ``unit`` (besides the parameters in mg/L).

    ``gain`` [unit per day] is what comes less what is used. ``alone`` is the change after a week, a month and a year without
    exchange, ``exchanged`` the same with it, ``steady`` how far from the new water the value settles; both are None
    without exchange. ``start`` and ``new_water`` are None where they are not known; the change is then from new water.
    """

    name: str
    unit: str
    gain: float
    alone: tuple[float, ...]
    exchanged: tuple[float, ...] | None
    steady: float | None
    start: float | None
    new_water: float | None


@dataclass(frozen=True)
class SaltLeft:
    """The mass of what upkeep leaves in the whole tank [g].

    ``alone`` is after a week, a month and a year without exchange, ``exchanged`` the same with it, ``steady`` what is there
    in the end; the last two are None without exchange.
    """

    alone: tuple[float, ...]
    exchanged: tuple[float, ...] | None
    steady: float | None


def solutes_per_ml(additive: Additive, parameter: Parameter, water: Water) -> dict[str, float]:
    """Return what a millilitre of an additive carries, of a bottle what its label says and nothing else.

    Parameters
    ----------
    additive : Dissolved or Labelled
        The batch or the bottle.
    parameter : Parameter
        What it is dosed for.
    water : Water
        The tank's water, by whose mass salinity is counted.

    Returns
    -------
    dict of str to float
        Amounts [mmol/mL and meq/mL]; carbon as ``"DIC"``.
    """
    if isinstance(additive, Labelled):
        return counted(parameter.name, strength(additive, parameter.name, parameter.kind, water), water)
    return {what: amount for what in (*_FORMS, "DIC") if (amount := moles_per_ml(additive, what)) != 0.0}


def counted(name: str, amount: float, water: Water) -> dict[str, float]:
    """Return an amount of a parameter in moles; salinity as sodium chloride.

    Parameters
    ----------
    name : str
        Name of the parameter.
    amount : float
        The amount [canonical unit].
    water : Water
        The tank's water.

    Returns
    -------
    dict of str to float
        Amounts per litre [mmol/L and meq/L].
    """
    if name == "alkalinity":
        return {"alkalinity": amount}
    if name == "salinity":
        moles = amount * density_kg_per_l(water) * 1000.0 / molar_mass("NaCl")
        return {"Na": moles, "Cl": moles}
    ion, counted_as = ION_OF[name]
    return {ion: amount / molar_mass(counted_as)}


def amount(name: str, solutes: Solutes, water: Water) -> float:
    """Return how much of a value is in a mixture of solutes.

    Parameters
    ----------
    name : str
        Name of a parameter, or of one of ``BESIDES``.
    solutes : mapping of str to float
        Amounts per litre [mmol/L and meq/L].
    water : Water
        The tank's water.

    Returns
    -------
    float
        The amount [canonical unit of the parameter; mg/L besides].
    """
    if name == "alkalinity":
        return solutes.get("alkalinity", 0.0)
    if name == "salinity":
        return mass(solutes) / 1000.0 / density_kg_per_l(water)
    if name in BESIDES:
        return solutes.get(BESIDES[name], 0.0) * molar_mass(BESIDES[name])
    ion, counted_as = ION_OF[name]
    return solutes.get(ion, 0.0) * molar_mass(counted_as)


def mass(solutes: Solutes) -> float:
    """Return the mass of solutes.

    Parameters
    ----------
    solutes : mapping of str to float
        Amounts per litre [mmol/L and meq/L].

    Returns
    -------
    float
        Mass without loose carbon [mg/L].
    """
    return sum(moles * molar_mass(_FORMS[what]) for what, moles in solutes.items() if what in _FORMS)


def used(q: UpkeepQuestion) -> dict[str, float]:
    """Return what a day takes out of the water, with what goes along with it.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.

    Returns
    -------
    dict of str to float
        Amounts [mmol/L and meq/L per day]; below zero what uptake leaves behind.
    """
    return used_up({item.parameter.name: item.use or 0.0 for item in q.items}, q.system.water)


def used_up(uses: Mapping[str, float], water: Water) -> dict[str, float]:
    """Return what several uses take out of the water in a day, with what goes along with them.

    Parameters
    ----------
    uses : mapping of str to float
        Uses by parameter [canonical unit per day].
    water : Water
        The tank's water.

    Returns
    -------
    dict of str to float
        Amounts [mmol/L and meq/L per day]; below zero what uptake leaves behind.
    """
    out: dict[str, float] = {}
    for name, use in uses.items():
        for what, moles in counted(name, use, water).items():
            out[what] = out.get(what, 0.0) + moles
    taken_up = out.get("NO3", 0.0) + out.get("PO4", 0.0)
    if "alkalinity" not in uses:
        alkalinity = 2.0 * out.get("Ca", 0.0) - taken_up
        if alkalinity != 0.0:
            out["alkalinity"] = alkalinity
    elif "calcium" not in uses:
        # The nutrients' share was given back to the water, so the skeleton took more than the net use.
        out["Ca"] = (out["alkalinity"] + taken_up) / 2.0
    return out


def given(parts: Iterable[tuple[Solutes, float]]) -> dict[str, float]:
    """Return the sum of several additions.

    Parameters
    ----------
    parts : iterable of (mapping, float)
        Solutes of one millilitre and millilitres per litre of the tank [mL/L].

    Returns
    -------
    dict of str to float
        Amounts [mmol/L and meq/L].
    """
    out: dict[str, float] = {}
    for solutes, ml_per_l in parts:
        for what, per_ml in solutes.items():
            out[what] = out.get(what, 0.0) + per_ml * ml_per_l
    return out


def left(come: Solutes, gone: Solutes) -> dict[str, float]:
    """Return what comes less what is used, without noise, and without carbon, which the air evens out.

    Parameters
    ----------
    come, gone : mapping of str to float
        Amounts [mmol/L and meq/L per day].

    Returns
    -------
    dict of str to float
        Amounts [mmol/L and meq/L per day].
    """
    out = {}
    for what in dict.fromkeys((*come, *gone)):
        more, less = come.get(what, 0.0), gone.get(what, 0.0)
        if what in _FORMS and abs(more - less) > NOISE * max(abs(more), abs(less)):
            out[what] = more - less
    return out


def drifts(q: UpkeepQuestion, stays: Solutes) -> tuple[Drift, ...]:
    """Return what upkeep and exchange do to every value.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    stays : mapping of str to float
        What a day leaves [mmol/L and meq/L per day].

    Returns
    -------
    tuple of Drift
        All parameters, then sodium, chloride, sulfate and boron where any of it stays.
    """
    new_water = dict(q.new_water)
    out = []
    for p in q.others:
        new = new_water.get(p.name, p.canonical(p.natural))
        out.append(_drift(q, p.name, amount(p.name, stays, q.system.water), q.value_now(p.name), new))
    out += [
        _drift(q, name, amount(name, stays, q.system.water), None, None) for name in BESIDES if BESIDES[name] in stays
    ]
    return tuple(out)


def _drift(q: UpkeepQuestion, name: str, gain: float, start: float | None, new: float | None) -> Drift:
    share = q.exchange_fraction
    kinds = {p.name: p.kind for p in q.others}
    # Reckoned as the distance from the new water, so that a trace is not lost beside what is there already.
    off = 0.0 if start is None or new is None else start - new
    return Drift(
        name=name,
        unit=KINDS[kinds.get(name, "ion")].canonical.id,
        gain=gain,
        alone=tuple(gain * days for days in SPANS.values()),
        exchanged=tuple(_moved(off, gain, share, days) for days in SPANS.values()) if share > 0.0 else None,
        steady=steady(gain, share) if share > 0.0 else None,
        start=start,
        new_water=new,
    )


def _moved(off: float, gain: float, share: float, days: float) -> float:
    """Return the change [unit] after some days [day], from so far off the new water."""
    part = segment(days, dosed=gain, use=0.0, exchange=share)
    return float(after(off, part.days, part.gain, part.loss)) - off


def salt_left(q: UpkeepQuestion, stays: Solutes) -> SaltLeft:
    """Return the mass of what upkeep leaves in the tank.

    Parameters
    ----------
    q : UpkeepQuestion
        The question.
    stays : mapping of str to float
        What a day leaves [mmol/L and meq/L per day].

    Returns
    -------
    SaltLeft
        Of what comes to more; what is short is made good by nothing here and is not set against it.
    """
    gain = mass({what: moles for what, moles in stays.items() if moles > 0.0}) * q.system.volume_l / 1000.0
    share = q.exchange_fraction
    return SaltLeft(
        alone=tuple(gain * days for days in SPANS.values()),
        exchanged=tuple(_moved(0.0, gain, share, days) for days in SPANS.values()) if share > 0.0 else None,
        steady=steady(gain, share) if share > 0.0 else None,
    )
