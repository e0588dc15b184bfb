"""The solved carbonate system of one water, from any two of alkalinity, dissolved carbon, pH and carbon dioxide.

Seawater of standard composition but for calcium, boron and phosphate, which are counted as they stand. Figures are per
kilogram of seawater. Any figure may be an array, all of which broadcast together: a whole ramp is one call.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from evenwater.engine import carbonate_totals as totals
from evenwater.engine.carbonate_constants import Figure, Floats, floats
from evenwater.engine.carbonate_equilibria import equilibria
from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.carbonate_solver import Acids, carbon_charge, hydrogen_from_co2, hydrogen_from_dic


class ImpossibleWaterError(ValueError):
    """No water has these figures: a concentration would be negative, or a figure is not a number."""


@dataclass(frozen=True, eq=False)
class Seawater:
    """The water without its carbon: acids with their constants, and calcium [mmol/kg] as it stands."""

    acids: Acids
    calcium_mmol_per_kg: Floats


@dataclass(frozen=True, eq=False)
class State:
    """A solved carbonate system: alkalinity [meq/kg], dissolved inorganic carbon [mmol/kg], pH on the total scale."""

    water: Seawater
    alkalinity_meq_per_kg: Floats
    dic_mmol_per_kg: Floats
    ph_total: Floats

    def ph(self, scale: PhScale) -> Floats:
        """Return the pH on a scale.

        Parameters
        ----------
        scale : PhScale
            The scale.

        Returns
        -------
        array
            pH [-].
        """
        return self.ph_total + self.water.acids.constants.ph_offset(scale)

    @property
    def bicarbonate_mmol_per_kg(self) -> Floats:
        """Return bicarbonate, HCO3- [mmol/kg]."""
        k, hydrogen = self.water.acids.constants, np.power(10.0, -self.ph_total)
        return self.dic_mmol_per_kg / (hydrogen / k.k1 + 1.0 + k.k2 / hydrogen)

    @property
    def carbonate_mmol_per_kg(self) -> Floats:
        """Return carbonate, CO3-- [mmol/kg]."""
        return self.bicarbonate_mmol_per_kg * self.water.acids.constants.k2 * np.power(10.0, self.ph_total)

    @property
    def co2_mmol_per_kg(self) -> Floats:
        """Return dissolved carbon dioxide, with carbonic acid [mmol/kg]."""
        return self.bicarbonate_mmol_per_kg * np.power(10.0, -self.ph_total) / self.water.acids.constants.k1

    @property
    def fco2_uatm(self) -> Floats:
        """Return the fugacity of carbon dioxide in air in balance with the water [uatm]."""
        return 1000.0 * self.co2_mmol_per_kg / self.water.acids.constants.k0

    @property
    def pco2_uatm(self) -> Floats:
        """Return the partial pressure of carbon dioxide in moist air in balance with the water [uatm]."""
        return self.fco2_uatm / self.water.acids.constants.fugacity

    @property
    def aragonite_saturation(self) -> Floats:
        """Return the saturation with aragonite: above one it may grow, below one it dissolves [-]."""
        product = self.water.calcium_mmol_per_kg * self.carbonate_mmol_per_kg * 1e-6
        return product / self.water.acids.constants.aragonite


def seawater(
    salinity: Figure,
    temperature_c: Figure,
    *,
    calcium_mmol_per_kg: Figure | None = None,
    borate_mmol_per_kg: Figure | None = None,
    phosphate_mmol_per_kg: Figure = 0.0,
    silicate_mmol_per_kg: Figure = 0.0,
) -> Seawater:
    """Return the water without its carbon.

    Parameters
    ----------
    salinity : float or array
        Practical salinity [-].
    temperature_c : float or array
        Temperature [degC].
    calcium_mmol_per_kg : float, array or None
        Calcium as measured [mmol/kg]; that of natural seawater (Riley and Tongudai 1967) when not given.
    borate_mmol_per_kg : float, array or None
        Boric acid and borate together [mmol/kg]; that of natural seawater (Uppstrom 1974) when not given.
    phosphate_mmol_per_kg : float or array
        Total phosphate [mmol/kg].
    silicate_mmol_per_kg : float or array
        Total silicate [mmol/kg].

    Returns
    -------
    Seawater
        Water that alkalinity and carbon can be given to.

    Raises
    ------
    ImpossibleWaterError
        When a concentration is negative, or not a number.
    """
    calcium = totals.calcium_riley_tongudai_1967(salinity) if calcium_mmol_per_kg is None else calcium_mmol_per_kg
    borate = totals.borate_uppstrom_1974(salinity) if borate_mmol_per_kg is None else borate_mmol_per_kg
    acids = Acids(
        constants=equilibria(salinity, temperature_c),
        borate=_not_negative(borate) / 1000.0,
        phosphate=_not_negative(phosphate_mmol_per_kg) / 1000.0,
        silicate=_not_negative(silicate_mmol_per_kg) / 1000.0,
    )
    return Seawater(acids, _not_negative(calcium))


def from_alkalinity_dic(water: Seawater, alkalinity_meq_per_kg: Figure, dic_mmol_per_kg: Figure) -> State:
    """Return the state of water whose alkalinity and dissolved inorganic carbon are known.

    Parameters
    ----------
    water : Seawater
        The water.
    alkalinity_meq_per_kg : float or array
        Total alkalinity [meq/kg].
    dic_mmol_per_kg : float or array
        Dissolved inorganic carbon [mmol/kg].

    Returns
    -------
    State
        The solved system.

    Raises
    ------
    ImpossibleWaterError
        When carbon is negative, or a figure is not a number.
    """
    alkalinity, dic = _finite(alkalinity_meq_per_kg), _not_negative(dic_mmol_per_kg)
    hydrogen = hydrogen_from_dic(water.acids, alkalinity / 1000.0, dic / 1000.0)
    return State(water, alkalinity, dic, -np.log10(hydrogen))


def from_alkalinity_pco2(water: Seawater, alkalinity_meq_per_kg: Figure, pco2_uatm: Figure) -> State:
    """Return the state of water in balance with air of a partial pressure of carbon dioxide.

    Parameters
    ----------
    water : Seawater
        The water.
    alkalinity_meq_per_kg : float or array
        Total alkalinity [meq/kg].
    pco2_uatm : float or array
        Partial pressure in moist air at one atmosphere [uatm].

    Returns
    -------
    State
        The solved system.

    Raises
    ------
    ImpossibleWaterError
        When the pressure is negative, or a figure is not a number.
    """
    alkalinity, k = _finite(alkalinity_meq_per_kg), water.acids.constants
    co2 = k.k0 * k.fugacity * _not_negative(pco2_uatm) * 1e-6
    hydrogen = hydrogen_from_co2(water.acids, alkalinity / 1000.0, co2)
    dic = 1000.0 * co2 * (1.0 + k.k1 / hydrogen * (1.0 + k.k2 / hydrogen))
    return State(water, alkalinity, dic, -np.log10(hydrogen))


def from_alkalinity_ph(
    water: Seawater, alkalinity_meq_per_kg: Figure, ph: Figure, scale: PhScale = PhScale.TOTAL
) -> State:
    """Return the state of water whose alkalinity and pH are known.

    Parameters
    ----------
    water : Seawater
        The water.
    alkalinity_meq_per_kg : float or array
        Total alkalinity [meq/kg].
    ph : float or array
        pH on the scale named [-].
    scale : PhScale
        The scale the pH is on.

    Returns
    -------
    State
        The solved system.

    Raises
    ------
    ImpossibleWaterError
        When the pH is so high that the rest of the water alone has more alkalinity, or a figure is not a number.
    """
    alkalinity, k = _finite(alkalinity_meq_per_kg), water.acids.constants
    ph_total = _finite(ph) - k.ph_offset(scale)
    hydrogen = np.power(10.0, -ph_total)
    of_carbon = alkalinity - 1000.0 * water.acids.alkalinity(hydrogen)[0]
    dic = _not_negative(of_carbon / carbon_charge(hydrogen, k.k1, k.k2)[0])
    return State(water, alkalinity, dic, ph_total)


def from_dic_ph(water: Seawater, dic_mmol_per_kg: Figure, ph: Figure, scale: PhScale = PhScale.TOTAL) -> State:
    """Return the state of water whose dissolved inorganic carbon and pH are known.

    Parameters
    ----------
    water : Seawater
        The water.
    dic_mmol_per_kg : float or array
        Dissolved inorganic carbon [mmol/kg].
    ph : float or array
        pH on the scale named [-].
    scale : PhScale
        The scale the pH is on.

    Returns
    -------
    State
        The solved system.

    Raises
    ------
    ImpossibleWaterError
        When carbon is negative, or a figure is not a number.
    """
    dic, k = _not_negative(dic_mmol_per_kg), water.acids.constants
    ph_total = _finite(ph) - k.ph_offset(scale)
    hydrogen = np.power(10.0, -ph_total)
    others = 1000.0 * water.acids.alkalinity(hydrogen)[0]
    return State(water, others + dic * carbon_charge(hydrogen, k.k1, k.k2)[0], dic, ph_total)


def with_more(
    water: Seawater, calcium_mmol_per_kg: Figure, borate_mmol_per_kg: Figure, phosphate_mmol_per_kg: Figure
) -> Seawater:
    """Return the water with more of what is counted as it stands; its salinity is left as it is.

    Parameters
    ----------
    water : Seawater
        The water before.
    calcium_mmol_per_kg : float or array
        Calcium added [mmol/kg].
    borate_mmol_per_kg : float or array
        Boric acid and borate added [mmol/kg].
    phosphate_mmol_per_kg : float or array
        Phosphate added [mmol/kg].

    Returns
    -------
    Seawater
        The water after.

    Raises
    ------
    ImpossibleWaterError
        When more is taken away than there is, or a figure is not a number.
    """
    acids = water.acids
    more = Acids(
        constants=acids.constants,
        borate=_not_negative(acids.borate + floats(borate_mmol_per_kg) / 1000.0),
        phosphate=_not_negative(acids.phosphate + floats(phosphate_mmol_per_kg) / 1000.0),
        silicate=acids.silicate,
    )
    return Seawater(more, _not_negative(water.calcium_mmol_per_kg + calcium_mmol_per_kg))


def _finite(figure: Figure) -> Floats:
    array = floats(figure)
    if not np.isfinite(array).all():
        raise ImpossibleWaterError("a figure is not a number")
    return array


def _not_negative(figure: Figure) -> Floats:
    array = _finite(figure)
    if (array < 0.0).any():
        raise ImpossibleWaterError("a concentration would be negative")
    return array
