"""The recipe of a stock both ways: from a weighed mass to its strength, from a wanted strength to the mass."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from evenwater.engine import fields
from evenwater.engine.caps import calcium_per_meq
from evenwater.engine.catalogue import Chemical, Parameter
from evenwater.engine.correction import Refused
from evenwater.engine.formula import molar_mass
from evenwater.engine.judge import undissolved
from evenwater.engine.mix import balanced
from evenwater.engine.quantities import Water, density_kg_per_l
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import (
    NEARLY_SATURATED,
    ROOM_C,
    Dissolved,
    Labelled,
    Portion,
    better_warm,
    carried_per_ml,
    grams_for,
    limewater,
    made_per_litre,
    moles_per_ml,
    saturation,
    strength,
)
from evenwater.engine.units import KINDS

# The dose and the water in which a stock's effect is said.
SAID_DOSE_ML, SAID_WATER_L = 1.0, 100.0
# What a chemical carries besides the parameters, by the names of an answer.
_BESIDES = {"Na": "sodium", "Cl": "chloride", "SO4": "sulfate", "B": "boron"}


@dataclass(frozen=True)
class Strength:
    """A wanted strength: ``per_ml`` of a parameter, in the unit of ``strength`` [meq/mL, mg/mL or g/kg L per mL]."""

    parameter: Parameter
    per_ml: float


@dataclass(frozen=True)
class Unweighed:
    """A batch still to be weighed out, to a strength or to match a partner of a two-part.

    ``made_up_l`` [L] after making up, ``purity`` the mass fraction; ``also`` is the second magnesium salt of a mix with
    seawater's balance of sulfate, its mass still nothing.
    """

    chemical: Chemical
    made_up_l: float
    purity: float
    wanted: Strength | Dissolved
    also: Portion | None = None


@dataclass(frozen=True)
class Bottle:
    """A bottle known by its label, and the parameter the label speaks of."""

    label: Labelled
    parameter: Parameter


@dataclass(frozen=True)
class StockQuestion:
    """What is asked about a stock, at the coolest temperature it will stand at [degC]."""

    batch: Dissolved | Bottle | Unweighed
    parameters: tuple[Parameter, ...]
    temperature_c: float = ROOM_C


@dataclass(frozen=True)
class Carried:
    """How much of one thing a litre of the stock carries [unit]."""

    name: str
    per_litre: float
    unit: str


@dataclass(frozen=True)
class StockAnswer:
    """A stock that can be made.

    ``rises`` is what one millilitre does to 100 L [canonical unit of each parameter]; ``most_g_per_l`` what a litre can
    hold [g/L], or None when that is not known, as for a bottle.
    """

    batch: Dissolved | Bottle
    temperature_c: float
    carries: tuple[Carried, ...]
    rises: tuple[tuple[Parameter, float], ...]
    most_g_per_l: float | None
    remarks: tuple[Reason, ...]


def solve(question: StockQuestion) -> StockAnswer | Refused:
    """Answer a question about a stock.

    Parameters
    ----------
    question : StockQuestion
        The batch, weighed or wanted, or the bottle.

    Returns
    -------
    StockAnswer or Refused
        What it carries, or why it cannot be made.
    """
    asked, at_c = question.batch, question.temperature_c
    if isinstance(asked, Bottle):
        return _bottle(asked, at_c)
    if isinstance(asked, Unweighed):
        partner = replace(asked.wanted, coolest_c=at_c) if isinstance(asked.wanted, Dissolved) else None
        found = weighed(asked)
        refused = tuple(undissolved(partner, "wanted.partner.dissolved")) if partner is not None else ()
        if isinstance(found, Reason) or refused:
            return Refused((*([found] if isinstance(found, Reason) else []), *refused))
        batch, path = found, "wanted"
    else:
        batch, path = asked, "additive.dissolved"
    batch = limewater(batch.chemical, batch.made_up_l, at_c) if batch.saturated else replace(batch, coolest_c=at_c)
    objections = tuple(undissolved(batch, path))
    if objections:
        return Refused(objections)
    return StockAnswer(
        batch=batch,
        temperature_c=at_c,
        carries=carried(batch, question.parameters),
        rises=tuple(_rises(batch, question.parameters)),
        most_g_per_l=most_together(batch),
        remarks=tuple(_remarks(batch)),
    )


def weighed(batch: Unweighed) -> Dissolved | Reason:
    """Return the batch with the mass that gives it the wanted strength.

    Parameters
    ----------
    batch : Unweighed
        The chemical, the volume and what is wanted.

    Returns
    -------
    Dissolved or Reason
        The batch as it is weighed out, or why no mass of the chemical does it.
    """
    chemical, wanted = batch.chemical, batch.wanted
    if isinstance(wanted, Dissolved):
        matched = matching(chemical, wanted)
        if isinstance(matched, Reason):
            return matched
        parameter, per_ml = matched
    else:
        parameter = wanted.parameter.name
        # A rise of salinity is counted per kilogram of the tank's water, the salt in the jug per litre.
        per_ml = wanted.per_ml * (density_kg_per_l(Water()) if parameter == "salinity" else 1.0)
        if chemical.per_gram(parameter) <= 0.0:
            return Reason("does_not_raise", {"chemical": chemical.name, "parameter": parameter}, "additive.chemical")
    if batch.also is not None:
        if parameter != "magnesium":
            return Reason(
                "no_balance", {"first": chemical.name, "second": batch.also.chemical.name}, "wanted.parameter"
            )
        return balanced(Portion(chemical, 0.0, batch.purity), batch.also, per_ml, batch.made_up_l)
    grams = grams_for(chemical, parameter, per_ml, batch.made_up_l, batch.purity)
    most = fields.DISSOLVED.high
    if not 0.0 < grams <= most:
        params = {"number": grams, "low": 0.0, "high": most, "unit": fields.DISSOLVED.unit, "above_low": True}
        return Reason("out_of_range", params, "wanted")
    return Dissolved(chemical, grams, batch.made_up_l, batch.purity)


def matching(chemical: Chemical, partner: Dissolved) -> tuple[str, float] | Reason:
    """Return the strength at which equal millilitres of two stocks carry the calcium of their alkalinity.

    Parameters
    ----------
    chemical : Chemical
        What the stock to be made is of.
    partner : Dissolved
        The other stock of the two-part.

    Returns
    -------
    tuple of (str, float) or Reason
        The parameter and how much of it a millilitre must carry [meq/mL or mg/mL]; a reason when the two are not one
        alkalinity and one calcium stock.

    Notes
    -----
    Source: a mole of calcium carbonate takes one mole of calcium and two equivalents of alkalinity, which is 20.04 mg
    of calcium per milliequivalent.
    """
    here, there = _half(chemical), "" if partner.also else _half(partner.chemical)
    if (here, there) == ("alkalinity", "calcium"):
        return here, carried_per_ml(partner, "calcium") / calcium_per_meq()
    if (here, there) == ("calcium", "alkalinity"):
        return here, carried_per_ml(partner, "alkalinity") * calcium_per_meq()
    params = {"chemical": chemical.name, "partner": partner.chemical.name}
    return Reason("no_pair", params, "wanted.partner.chemical")


def _half(chemical: Chemical) -> str:
    """Return which half of a two-part a chemical can be; empty for neither, and for lime, which is both."""
    carries = [name for name in ("alkalinity", "calcium") if chemical.per_gram(name) > 0.0]
    return carries[0] if len(carries) == 1 else ""


def carried(batch: Dissolved, parameters: tuple[Parameter, ...]) -> tuple[Carried, ...]:
    """Return everything that a litre of the stock carries.

    Parameters
    ----------
    batch : Dissolved
        The batch.
    parameters : tuple of Parameter
        The parameters known; what else the chemical holds follows them.

    Returns
    -------
    tuple of Carried
        Parameters in their canonical unit (salinity as dry salt), dissolved inorganic carbon, other ions.
    """
    found = [
        Carried(p.name, carried_per_ml(batch, p.name) * 1000.0, _unit_per_litre(p))
        for p in parameters
        if carried_per_ml(batch, p.name) != 0.0
    ]
    for what in dict.fromkeys(what for portion in batch.portions for what, _ in portion.chemical.carries):
        mmol_per_l = 1000.0 * moles_per_ml(batch, what)
        if what == "DIC":
            found.append(Carried("dic", mmol_per_l, "mmol/L"))
        elif what in _BESIDES:
            found.append(Carried(_BESIDES[what], mmol_per_l * molar_mass(what), "mg/L"))
    return tuple(found)


def _unit_per_litre(parameter: Parameter) -> str:
    return "g/L" if parameter.kind == "salinity" else KINDS[parameter.kind].canonical.id


def _rises(batch: Dissolved, parameters: tuple[Parameter, ...]) -> Iterator[tuple[Parameter, float]]:
    for parameter in parameters:
        per_ml = strength(batch, parameter.name, parameter.kind)
        if per_ml != 0.0:
            yield parameter, per_ml * SAID_DOSE_ML / SAID_WATER_L


def most_together(batch: Dissolved) -> float | None:
    """Return how much of a batch's chemicals, in its own proportion, a litre can hold.

    Parameters
    ----------
    batch : Dissolved
        The batch.

    Returns
    -------
    float or None
        Mass as weighed, pure [g/L]; None when a solubility is not known.
    """
    near = saturation(batch)
    return None if near is None else made_per_litre(batch) / near


def _remarks(batch: Dissolved) -> Iterator[Reason]:
    near = saturation(batch)
    if near is not None and near > NEARLY_SATURATED and not batch.saturated:
        made = made_per_litre(batch)
        yield Reason("nearly_saturated", {"made": made, "most": made / near, "better_warm": better_warm(batch)})
    if batch.saturated:
        yield Reason("limewater", {"grams_per_l": made_per_litre(batch), "degc": batch.coolest_c})
    if batch.restricted:
        yield Reason("restricted", {"chemical": batch.name})


def _bottle(bottle: Bottle, temperature_c: float) -> StockAnswer:
    parameter = bottle.parameter
    per_ml = strength(bottle.label, parameter.name, parameter.kind)
    salt = density_kg_per_l(Water()) if parameter.kind == "salinity" else 1.0
    return StockAnswer(
        batch=bottle,
        temperature_c=temperature_c,
        carries=(Carried(parameter.name, per_ml * salt * 1000.0, _unit_per_litre(parameter)),),
        rises=((parameter, per_ml * SAID_DOSE_ML / SAID_WATER_L),),
        most_g_per_l=None,
        remarks=(),
    )
