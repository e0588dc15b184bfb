"""What an addition does to the carbonate system of a tank: at once, and after gas exchange has caught up.

``carbonate_state`` solves the water before; figures are per kilogram of seawater, and ``per_kg`` turns those per litre.
Any figure may be an array, all of which broadcast together: a whole ramp is one call.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from evenwater.engine.carbonate_constants import Figure, Floats, floats
from evenwater.engine.carbonate_solver import carbon_charge, phosphate_charge, share
from evenwater.engine.carbonate_state import State, from_alkalinity_dic, from_alkalinity_pco2, with_more
from evenwater.engine.catalogue import Chemical
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import Water, density_kg_per_l


@dataclass(frozen=True, eq=False)
class Addition:
    """What is added to each kilogram of water: alkalinity [meq/kg], the rest [mmol/kg]; negative when taken away."""

    alkalinity_meq_per_kg: Figure = 0.0
    dic_mmol_per_kg: Figure = 0.0
    calcium_mmol_per_kg: Figure = 0.0
    borate_mmol_per_kg: Figure = 0.0
    phosphate_mmol_per_kg: Figure = 0.0


@dataclass(frozen=True, eq=False)
class Effect:
    """What an addition does: the water before, at once (mixed, no gas exchanged), and after gas exchange caught up."""

    before: State
    at_once: State
    caught_up: State


def addition_of(chemical: Chemical, mmol_per_kg: Figure) -> Addition:
    """Return what an amount of a chemical carries into the water.

    Parameters
    ----------
    chemical : Chemical
        The chemical, with what one mole of it carries.
    mmol_per_kg : float or array
        Amount per kilogram of water [mmol/kg].

    Returns
    -------
    Addition
        What takes part in the carbonate system; other ions are left out.
    """
    amount = floats(mmol_per_kg)
    return Addition(
        alkalinity_meq_per_kg=chemical.per_mole("alkalinity") * amount,
        dic_mmol_per_kg=chemical.per_mole("DIC") * amount,
        calcium_mmol_per_kg=chemical.per_mole("Ca") * amount,
        borate_mmol_per_kg=chemical.per_mole("B") * amount,
        phosphate_mmol_per_kg=chemical.per_mole("PO4") * amount,
    )


def add(state: State, addition: Addition) -> State:
    """Return the water with an addition mixed in, before any gas was exchanged.

    Parameters
    ----------
    state : State
        The water before.
    addition : Addition
        What is added, with arrays of any shape that broadcasts.

    Returns
    -------
    State
        The water after.

    Raises
    ------
    ImpossibleWaterError
        When more is taken away than there is.
    """
    water = with_more(
        state.water,
        addition.calcium_mmol_per_kg,
        addition.borate_mmol_per_kg,
        addition.phosphate_mmol_per_kg,
    )
    return from_alkalinity_dic(
        water,
        state.alkalinity_meq_per_kg + addition.alkalinity_meq_per_kg,
        state.dic_mmol_per_kg + addition.dic_mmol_per_kg,
    )


def effect(state: State, addition: Addition) -> Effect:
    """Return what an addition does at once, and once carbon dioxide is back where it was.

    Parameters
    ----------
    state : State
        The water before, taken to be in balance with the air around it.
    addition : Addition
        What is added, with arrays of any shape that broadcasts.

    Returns
    -------
    Effect
        The water before, at once, and after gas exchange has caught up.

    Raises
    ------
    ImpossibleWaterError
        When more is taken away than there is.
    """
    at_once = add(state, addition)
    return Effect(
        before=state,
        at_once=at_once,
        caught_up=from_alkalinity_pco2(at_once.water, at_once.alkalinity_meq_per_kg, state.pco2_uatm),
    )


def most_below_ph(state: State, one_mole: Addition, ph_total: Figure) -> Floats:
    """Return how many times an addition can be made before it lifts pH, at once, to a ceiling.

    Parameters
    ----------
    state : State
        The water before.
    one_mole : Addition
        What one mmol per kg of the chemical carries.
    ph_total : float or array
        The ceiling, on the total scale [-].

    Returns
    -------
    array
        Amount [mmol/kg]; infinite where the addition does not lift pH that far however much there is of it, zero
        where the water is at the ceiling already.

    Notes
    -----
    At the pH of the ceiling alkalinity is linear in everything that is added, so nothing has to be searched.
    """
    acids, k = state.water.acids, state.water.acids.constants
    hydrogen = np.power(10.0, -floats(ph_total))
    per_carbon = carbon_charge(hydrogen, k.k1, k.k2)[0]
    held = 1000.0 * acids.alkalinity(hydrogen)[0] + state.dic_mmol_per_kg * per_carbon
    lifts = one_mole.alkalinity_meq_per_kg - one_mole.dic_mmol_per_kg * per_carbon
    lifts = lifts - one_mole.borate_mmol_per_kg * share(hydrogen, k.boric)
    lifts = lifts - one_mole.phosphate_mmol_per_kg * phosphate_charge(hydrogen, k.phosphoric)[0]
    room = np.maximum(held - state.alkalinity_meq_per_kg, 0.0)
    return np.where(lifts > 0.0, room / np.where(lifts > 0.0, lifts, 1.0), np.inf)


def per_kg(per_litre: Figure, water: Water) -> Floats:
    """Return a figure per litre of seawater as one per kilogram.

    Parameters
    ----------
    per_litre : float or array
        Alkalinity or a concentration [meq/L or mmol/L].
    water : Water
        Its salinity and temperature.

    Returns
    -------
    array
        The same [meq/kg or mmol/kg].
    """
    return floats(per_litre) / density_kg_per_l(water)


def calcium_mmol_per_kg(calcium_mg_per_l: Figure, water: Water) -> Floats:
    """Return a calcium reading as moles per kilogram of seawater.

    Parameters
    ----------
    calcium_mg_per_l : float or array
        Calcium as measured [mg/L].
    water : Water
        Its salinity and temperature.

    Returns
    -------
    array
        Calcium [mmol/kg].
    """
    return per_kg(calcium_mg_per_l, water) / molar_mass("Ca")
