"""One water at a time, in plain floats: what the planner asks some twenty times for every key that is pressed.

Figures, formulas and bounds are those of ``carbonate_state`` and ``carbonate_solver``; arrays of one figure would cost
thirty times as much. The tests hold both against each other.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, cast

from evenwater.engine import carbonate_totals as totals
from evenwater.engine.carbonate_equilibria import Equilibria, plain_equilibria
from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.carbonate_solver import Acids, carbon_charge, phosphate_charge, share
from evenwater.engine.carbonate_state import ImpossibleWaterError
from evenwater.engine.quantities import Water

# Value of a part of alkalinity and its slope against ln [H+], for an [H+] [mol/kg].
Part = Callable[[float], tuple[float, float]]

_CLOSE = 2.0e-11
_NEWTON_ROUNDS, _ROUNDS = 20, 80


@dataclass(frozen=True)
class Portions:
    """What goes into a kilogram of water: alkalinity [meq/kg], the rest [mmol/kg]."""

    alkalinity: float = 0.0
    dic: float = 0.0
    calcium: float = 0.0
    borate: float = 0.0
    phosphate: float = 0.0

    def times(self, factor: float) -> Portions:
        """Return so many times the same.

        Parameters
        ----------
        factor : float
            How many times [1].

        Returns
        -------
        Portions
            The multiple.
        """
        return Portions(
            factor * self.alkalinity,
            factor * self.dic,
            factor * self.calcium,
            factor * self.borate,
            factor * self.phosphate,
        )


@dataclass(frozen=True)
class Sample:
    """The carbonate system of one water: alkalinity [meq/kg], the rest [mmol/kg], pH on the total scale."""

    constants: Equilibria
    alkalinity: float
    dic: float
    calcium: float
    borate: float
    phosphate: float
    ph_total: float

    @property
    def ph_nbs(self) -> float:
        """The pH as a meter set with ordinary buffers shows it [-]."""
        return self.ph_total + nbs_offset(self.constants)

    @property
    def carbonate(self) -> float:
        """Carbonate, CO3-- [mmol/kg]."""
        hydrogen = math.pow(10.0, -self.ph_total)
        forms = hydrogen / float(self.constants.k1) + 1.0 + float(self.constants.k2) / hydrogen
        return self.dic / forms * float(self.constants.k2) / hydrogen

    @property
    def saturation(self) -> float:
        """The saturation with aragonite [-]."""
        return self.calcium * self.carbonate * 1e-6 / float(self.constants.aragonite)

    @property
    def co2(self) -> float:
        """Dissolved carbon dioxide, with carbonic acid [mmol/kg]."""
        hydrogen = math.pow(10.0, -self.ph_total)
        forms = hydrogen / float(self.constants.k1) + 1.0 + float(self.constants.k2) / hydrogen
        return self.dic / forms * hydrogen / float(self.constants.k1)

    def mixed(self, added: Portions) -> Sample:
        """Return the water with something mixed in, before any gas was exchanged.

        Parameters
        ----------
        added : Portions
            What goes in [meq/kg and mmol/kg].

        Returns
        -------
        Sample
            The water at once after it.
        """
        held = self.holding(added)
        acids = _acids(held.constants, held.borate, held.phosphate)
        hydrogen = _hydrogen(acids, held.alkalinity / 1000.0, held.dic / 1000.0, held.ph_total)
        return Sample(
            held.constants, held.alkalinity, held.dic, held.calcium, held.borate, held.phosphate, -math.log10(hydrogen)
        )

    def holding(self, added: Portions) -> Sample:
        """Return the water with something put in and its pH as before: for ``aired`` and ``at_ph``, which find the pH that goes with it.

        Parameters
        ----------
        added : Portions
            What goes in [meq/kg and mmol/kg].

        Returns
        -------
        Sample
            The amounts after it; its ``ph_total`` is still that from before.
        """
        return Sample(
            self.constants,
            self.alkalinity + added.alkalinity,
            self.dic + added.dic,
            self.calcium + added.calcium,
            self.borate + added.borate,
            self.phosphate + added.phosphate,
            self.ph_total,
        )

    def at_ph(self, ph_total: float) -> Sample:
        """Return the water with as much carbon as gives it a pH.

        Parameters
        ----------
        ph_total : float
            pH on the total scale [-].

        Returns
        -------
        Sample
            The water, its alkalinity as before.

        Raises
        ------
        ImpossibleWaterError
            When no water of this alkalinity has such a pH.
        """
        hydrogen = math.pow(10.0, -ph_total)
        charge = cast("float", carbon_charge(cast("Any", hydrogen), self.constants.k1, self.constants.k2)[0])
        others = _acids(self.constants, self.borate, self.phosphate).alkalinity(cast("Any", hydrogen))[0]
        dic = (self.alkalinity - 1000.0 * float(others)) / charge
        if not dic >= 0.0:
            raise ImpossibleWaterError("the rest of the water alone has more alkalinity")
        return Sample(self.constants, self.alkalinity, dic, self.calcium, self.borate, self.phosphate, ph_total)

    def most_below(self, ph_total: float, one: Portions) -> float:
        """Return how many times something can be mixed in at once before it lifts pH to a ceiling.

        Parameters
        ----------
        ph_total : float
            The ceiling, on the total scale [-].
        one : Portions
            What goes in each time [meq/kg and mmol/kg].

        Returns
        -------
        float
            Times [1], see ``carbonate.most_below_ph``; infinite where it never lifts pH that far.
        """
        hydrogen = cast("Any", math.pow(10.0, -ph_total))
        k = self.constants
        per_carbon = float(carbon_charge(hydrogen, k.k1, k.k2)[0])
        held = 1000.0 * float(_acids(k, self.borate, self.phosphate).alkalinity(hydrogen)[0]) + self.dic * per_carbon
        lifts = one.alkalinity - one.dic * per_carbon - one.borate * float(share(hydrogen, k.boric))
        lifts -= one.phosphate * float(phosphate_charge(hydrogen, k.phosphoric)[0])
        return max(held - self.alkalinity, 0.0) / lifts if lifts > 0.0 else math.inf

    def aired(self, co2: float) -> Sample:
        """Return the water once gas exchange has brought it to an amount of dissolved carbon dioxide.

        Parameters
        ----------
        co2 : float
            Dissolved carbon dioxide in balance with the air [mmol/kg].

        Returns
        -------
        Sample
            The water, its alkalinity as before.
        """
        acids = _acids(self.constants, self.borate, self.phosphate)
        hydrogen = _hydrogen_from_co2(acids, self.alkalinity / 1000.0, co2 / 1000.0, self.ph_total)
        k1, k2 = float(self.constants.k1), float(self.constants.k2)
        dic = co2 * (1.0 + k1 / hydrogen * (1.0 + k2 / hydrogen))
        return Sample(
            self.constants, self.alkalinity, dic, self.calcium, self.borate, self.phosphate, -math.log10(hydrogen)
        )


def sample(water: Water, alkalinity_meq_per_kg: float, ph_nbs: float, calcium_mmol_per_kg: float | None) -> Sample:
    """Return the water of a tank from what a keeper measures.

    Parameters
    ----------
    water : Water
        Salinity and temperature.
    alkalinity_meq_per_kg : float
        Total alkalinity [meq/kg].
    ph_nbs : float
        pH as a meter set with ordinary buffers shows it [-].
    calcium_mmol_per_kg : float or None
        Calcium [mmol/kg]; that of natural seawater of this salinity when it is not known.

    Returns
    -------
    Sample
        The water.

    Raises
    ------
    ImpossibleWaterError
        When no water of this alkalinity has such a pH.
    """
    constants, borate, calcium = _standing(water)
    held = calcium if calcium_mmol_per_kg is None else calcium_mmol_per_kg
    ph_total = ph_nbs - nbs_offset(constants)
    return Sample(constants, alkalinity_meq_per_kg, 0.0, held, borate, 0.0, ph_total).at_ph(ph_total)


@lru_cache(maxsize=64)
def _standing(water: Water) -> tuple[Equilibria, float, float]:
    """Return the constants as floats, and borate and calcium [mmol/kg] of natural seawater, of one water."""
    constants = plain_equilibria(water.salinity, water.temperature_c)
    borate = float(totals.borate_uppstrom_1974(water.salinity))
    return constants, borate, float(totals.calcium_riley_tongudai_1967(water.salinity))


@lru_cache(maxsize=64)
def nbs_offset(constants: Equilibria) -> float:
    """Return what the NBS scale is above the total one.

    Parameters
    ----------
    constants : Equilibria
        Constants of one water.

    Returns
    -------
    float
        Difference of pH [-].
    """
    return float(constants.ph_offset(PhScale.NBS))


def _acids(constants: Equilibria, borate: float, phosphate: float) -> Acids:
    return Acids(constants, cast("Any", borate / 1000.0), cast("Any", phosphate / 1000.0), cast("Any", 0.0))


def _hydrogen(acids: Acids, alkalinity: float, dic: float, ph_near: float) -> float:
    """Return [H+] [mol/kg] from alkalinity and dissolved carbon [mol/kg], as ``hydrogen_from_dic`` does."""
    k = acids.constants
    least, most = (float(v) for v in acids.limits())

    def carbon(hydrogen: float) -> tuple[float, float]:
        mean, spread = carbon_charge(cast("Any", hydrogen), k.k1, k.k2)
        return dic * float(mean), -dic * float(spread)

    low = _water_alone(float(k.kw), alkalinity - least, float(k.total_over_free))
    high = _water_alone(float(k.kw), alkalinity - most - 2.0 * dic, float(k.total_over_free))
    return _search(acids, alkalinity, carbon, low, high, ph_near)


def _hydrogen_from_co2(acids: Acids, alkalinity: float, co2: float, ph_near: float) -> float:
    """Return [H+] [mol/kg] from alkalinity and carbon dioxide [mol/kg], as ``hydrogen_from_co2`` does."""
    k = acids.constants
    least, most = (float(v) for v in acids.limits())
    once = float(k.k1) * co2
    twice = once * float(k.k2)

    def carbon(hydrogen: float) -> tuple[float, float]:
        bicarbonate, carbonate = once / hydrogen, twice / hydrogen**2
        return bicarbonate + 2.0 * carbonate, -(bicarbonate + 4.0 * carbonate)

    unlimited, ratio = float(k.kw) + once, float(k.total_over_free)
    low = _water_alone(unlimited, alkalinity - least, ratio)
    high = max(2.0 * twice / unlimited, _water_alone(2.0 * unlimited, alkalinity - most, ratio))
    return _search(acids, alkalinity, carbon, low, high, ph_near)


def _water_alone(product: float, alkalinity: float, total_over_free: float) -> float:
    """Return the [H+] where product / [H+] less free [H+] is this alkalinity: the root of a quadratic."""
    size = math.sqrt(alkalinity**2 + 4.0 * product / total_over_free) + abs(alkalinity)
    return 2.0 * product / size if alkalinity > 0.0 else 0.5 * size * total_over_free


def _search(acids: Acids, alkalinity: float, carbon: Part, low: float, high: float, ph_near: float) -> float:
    """Return the [H+] between two bounds at which the alkalinity is met, looking first near a pH."""
    least, most = math.log(low), math.log(high)
    x = min(max(-ph_near * math.log(10.0), least), most)
    for number in range(_ROUNDS):
        hydrogen = math.exp(x)
        others, others_slope = acids.alkalinity(cast("Any", hydrogen))
        carbonates, carbonates_slope = carbon(hydrogen)
        excess = float(others) + carbonates - alkalinity
        if excess > 0.0:
            least = x
        else:
            most = x
        new = x - excess / (float(others_slope) + carbonates_slope)
        if not least <= new <= most or number >= _NEWTON_ROUNDS:
            new = 0.5 * (least + most)
        step, x = abs(new - x), new
        if step < _CLOSE:
            break
    return math.exp(x)
