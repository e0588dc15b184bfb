"""An independent reckoning of what a card must say: atomic weights, the data file as it stands, doses one by one."""

from __future__ import annotations

import math
import tomllib
from datetime import datetime, timedelta
from decimal import Decimal
from functools import cache
from typing import Any

from evenwater.assets import resources
from evenwater.engine.correction import Answer
from evenwater.engine.quantities import Water
from evenwater.engine.stock import Labelled

# Standard atomic weights, CIAAW 2021 (conventional values where it gives an interval).
WEIGHT = {
    "H": 1.008, "B": 10.81, "C": 12.011, "N": 14.007, "O": 15.999, "Na": 22.98976928, "Mg": 24.305, "P": 30.973761998,
    "S": 32.06, "Cl": 35.45, "K": 39.0983, "Ca": 40.078, "Sr": 87.62, "I": 126.90447,
}  # fmt: skip
NO3, PO4 = WEIGHT["N"] + 3 * WEIGHT["O"], WEIGHT["P"] + 4 * WEIGHT["O"]
MEQ_PER_DKH = 10.0 / ((WEIGHT["Ca"] + WEIGHT["O"]) / 2)
# What a mole carries of the parameter: milliequivalents, or milligrams.
PER_MOLE = {
    "alkalinity": {"carbonate": 2000.0, "bicarbonate": 1000.0, "sodium hydroxide": 1000.0, "calcium hydroxide": 2000.0,
                   "tetraborate": 2000.0},
    "calcium": {"calcium": 1000.0 * WEIGHT["Ca"]},
    "magnesium": {"magnesium": 1000.0 * WEIGHT["Mg"]},
    "potassium": {"potassium": 1000.0 * WEIGHT["K"]},
    "strontium": {"strontium": 1000.0 * WEIGHT["Sr"]},
    "iodide": {"iodide": 1000.0 * WEIGHT["I"]},
    "nitrate": {"nitrate": 1000.0 * NO3},
    "phosphate": {"phosphate": 1000.0 * PO4},
}  # fmt: skip


def mass(formula: str) -> float:
    """Return grams per mole of a formula with brackets one deep."""
    total, stack = 0.0, [0.0]
    place = 0
    while place < len(formula):
        if formula[place] == "(":
            stack.append(0.0)
            place += 1
            continue
        if formula[place] == ")":
            part, place = stack.pop(), place + 1
        else:
            end = place + 1
            while end < len(formula) and formula[end].islower():
                end += 1
            part, place = WEIGHT[formula[place:end]], end
        end = place
        while end < len(formula) and formula[end].isdigit():
            end += 1
        stack[-1] += part * int(formula[place:end] or 1)
        place = end
    return total + stack[0]


@cache
def parameters() -> dict[str, Any]:
    """Return the parameter file as it stands."""
    return tomllib.loads((resources() / "parameters.toml").read_text(encoding="utf-8"))


def canonical(name: str, value: float) -> float:
    """Return a figure of the parameter file in meq/L, mg/L or g/kg."""
    return value * (MEQ_PER_DKH if name == "alkalinity" else 1.0)


def density(water: Water) -> float:
    """Return kg per litre of seawater by the Gibbs function itself (the product takes the 75-term polynomial)."""
    import gsw

    return float(gsw.rho_t_exact(gsw.SR_from_SP(water.salinity), water.temperature_c, 0.0)) / 1000.0


def per_ml(plan: Answer) -> float:
    """Return how much one millilitre raises the tank [meq/L, mg/L or g/kg]."""
    q = plan.question
    name, additive, litres = q.parameter.name, q.additive, q.system.volume_l
    if isinstance(additive, Labelled):
        return additive.raises * additive.water_l / additive.dose_ml / litres
    bags = [(additive.chemical, additive.grams, additive.purity)]
    bags += [(bag.chemical, bag.grams, bag.purity) for bag in additive.also]
    raised = 0.0
    for chemical, grams, purity in bags:
        moles = grams * purity / mass(chemical.formula) / (additive.made_up_l * 1000.0)
        if name == "salinity":
            raised += moles * mass(chemical.formula) / density(q.system.water)
            continue
        (carried,) = (
            amount for word, amount in PER_MOLE[name].items()
            if word in chemical.name and not (word == "carbonate" and "bicarbonate" in chemical.name)
        )  # fmt: skip
        raised += moles * carried
    return raised / litres


def most_in_a_day(plan: Answer) -> float:
    """Return the millilitres a day that raise by the hard daily rise while the animals use theirs.

    Of limewater no more than evaporates, or the tank overflows.
    """
    q = plan.question
    hard = canonical(q.parameter.name, parameters()[q.parameter.name]["rise_per_day"]["hard"])
    most = (hard + q.use) / per_ml(plan)
    lime = not isinstance(q.additive, Labelled) and "calcium hydroxide" in q.additive.name
    return min(most, 1000.0 * q.system.evaporation_l) if lime and q.system.evaporation_l is not None else most


def emptied(plan: Answer, within_days: float) -> datetime | None:
    """Return when the last dose that a full jug holds is given, taking one after another; None when later."""
    if isinstance(plan.question.additive, Labelled):
        return None
    left = Decimal(repr(plan.question.additive.made_up_l)) * 1000
    doses = plan.doses
    number = 0
    while number / doses.per_day <= within_days:
        dose = Decimal(repr(doses.dose_ml if number < doses.count else doses.upkeep_ml))
        if dose == 0:
            return None
        # A millionth of a millilitre is no missing dose.
        if left - dose < Decimal("-1e-6"):
            return plan.question.now + timedelta(days=1) * number / doses.per_day
        left -= dose
        number += 1
    return None


def floor_to(value: float, step: float) -> float:
    """Round down to a step, forgiving binary noise."""
    return math.floor(value / step * (1 + 1e-9)) * step
