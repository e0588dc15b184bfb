"""The second opinion: a dumb dose-by-dose simulation that shares no code with the planners.

It works from the bag and the bottle again, adds one dose after another, lets the animals use their
share in between, and looks at what the water did. Nothing here is taken from the mass balance or
the correction but the doses themselves.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from evenwater.engine import check_ph
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import density_kg_per_l
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.stock import Dissolved, Labelled

_IONS = {"calcium": "Ca", "magnesium": "Mg", "potassium": "K", "strontium": "Sr", "iodide": "I"}
_COUNTED_AS = {"nitrate": "NO3", "phosphate": "PO4"}


@dataclass(frozen=True)
class Doses:
    """What is to be done: so many doses of one size, evenly spaced, then upkeep doses."""

    dose_ml: float
    count: int
    upkeep_ml: float
    upkeep_count: int
    interval_days: float
    per_day: int


@dataclass(frozen=True)
class Seen:
    """What the simulation saw; values and jumps [canonical unit], rises in 24 hours [canonical unit per day].

    ``others_rise`` is what the additive adds of every other parameter in 24 hours, less what the
    animals take of calcium or alkalinity together with the corrected one. ``water`` is what pH and saturation did, when
    pH was measured.
    """

    highest_rise_in_24_hours: float
    highest_value: float
    largest_jump: float
    end_value: float
    total_ml: float
    most_ml_in_24_hours: float
    others_rise: Mapping[str, float]
    water: check_ph.SeenInWater | None


def amount_per_ml(question: CorrectionQuestion) -> float:
    """Return what a millilitre carries, reckoned from the bag or the label once more.

    Parameters
    ----------
    question : CorrectionQuestion
        The question, with its additive.

    Returns
    -------
    float
        Amount per millilitre [canonical unit times litre per mL].
    """
    additive, name = question.additive, question.parameter.name
    if isinstance(additive, Labelled):
        return additive.raises / (additive.dose_ml / additive.water_l)
    return _from_the_bag(question, additive, name)


def _from_the_bag(question: CorrectionQuestion, additive: Dissolved, name: str) -> float:
    """Return what a millilitre of a dissolved chemical carries of any parameter."""
    amount = 0.0
    bags = [(additive.chemical, additive.grams, additive.purity)]
    bags += [(bag.chemical, bag.grams, bag.purity) for bag in additive.also]
    for chemical, grams, purity in bags:
        moles = grams * purity / molar_mass(chemical.formula)
        per_mole = dict(chemical.carries)
        if name == "alkalinity":
            amount += moles * per_mole.get("alkalinity", 0.0) * 1000.0
        elif name == "salinity":
            amount += moles * molar_mass(chemical.dry) / density_kg_per_l(question.system.water)
        else:
            ion = _IONS.get(name) or _COUNTED_AS[name]
            amount += moles * per_mole.get(ion, 0.0) * molar_mass(ion) * 1000.0
    return amount / additive.made_up_l / 1000.0


def simulate(question: CorrectionQuestion, doses: Doses) -> Seen:
    """Give the doses one by one and report what the water did.

    Parameters
    ----------
    question : CorrectionQuestion
        The question, of which volume, reading, use and additive are taken.
    doses : Doses
        What the plan tells the keeper to set.

    Returns
    -------
    Seen
        Highest value, highest rise over any 24 hours, largest jump, value at the end of the
        correction, millilitres in all and within any 24 hours.
    """
    per_ml = amount_per_ml(question)
    litres = question.system.volume_l
    value = question.measured + question.untested
    # The value right after each dose; a day of upkeep follows, since its doses add to the day.
    path = [value]
    given = [0.0]
    highest, largest, end = value, 0.0, value
    for number in range(1, doses.count + doses.upkeep_count + 1):
        dose = doses.dose_ml if number <= doses.count else doses.upkeep_ml
        value -= question.use * doses.interval_days
        before = value
        value += dose * per_ml / litres
        largest = max(largest, value - before)
        highest = max(highest, value)
        path.append(value)
        given.append(dose)
        if number == doses.count:
            end = value
    fullest_day = _most(given[1:], doses.per_day)
    return Seen(
        highest_rise_in_24_hours=_steepest(path, doses.per_day),
        highest_value=highest,
        largest_jump=largest,
        end_value=end,
        total_ml=doses.dose_ml * doses.count,
        most_ml_in_24_hours=fullest_day,
        others_rise=_others(question, fullest_day),
        water=check_ph.look(question, per_ml / litres, doses.dose_ml * -(-doses.per_day // 24)),
    )


def _others(question: CorrectionQuestion, ml: float) -> dict[str, float]:
    """Return what so many millilitres raise of every other parameter, less its share of the daily use."""
    additive = question.additive
    if isinstance(additive, Labelled):
        return {}
    rises = {
        other.name: ml * _from_the_bag(question, additive, other.name) / question.system.volume_l
        for other in question.others
        if other.name not in (question.parameter.name, "salinity")
    }
    # Skeleton is CaCO3: one mole of calcium goes with two equivalents of alkalinity.
    if question.parameter.name == "calcium" and "alkalinity" in rises:
        rises["alkalinity"] -= question.use / molar_mass("Ca") * 2.0
    if question.parameter.name == "alkalinity" and "calcium" in rises:
        rises["calcium"] -= question.use / 2.0 * molar_mass("Ca")
    return rises


def _steepest(path: list[float], per_day: int) -> float:
    """Return the largest rise between any two instants a day apart, or within a shorter plan."""
    if len(path) <= per_day:
        return max(path) - path[0]
    return max(later - earlier for earlier, later in zip(path, path[per_day:], strict=False))


def _most(given: list[float], per_day: int) -> float:
    """Return the most millilitres within any window of a day."""
    window = sum(given[:per_day])
    most = window
    for gone, come in zip(given, given[per_day:], strict=False):
        window += come - gone
        most = max(most, window)
    return most
