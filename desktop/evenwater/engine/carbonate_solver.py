"""Finds [H+] from alkalinity: bounds that always hold, Newton's method inside them, halving where it leaves them.

The method is that of Munhoven 2013, Geosci. Model Dev. 6, 1367. Every acid gives off its charge between two limits,
whatever the pH, so the water's own part of alkalinity, which has no limits, must make up the rest: that brackets
[H+] for any alkalinity, even an impossible one. Alkalinity falls steadily as [H+] rises, so the answer is the only one.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from evenwater.engine.carbonate_constants import Floats
from evenwater.engine.carbonate_equilibria import Equilibria

# Value of a part of alkalinity and its slope against ln [H+], for an [H+].
Part = Callable[[Floats], tuple[Floats, Floats]]

_START = float(np.log(10.0**-8.1))
# A step this small in ln [H+] ends the search: 1e-11 of pH, the square of it after a step of Newton's.
_CLOSE = 2.0e-11
# Newton needs 4 to 9 rounds for the water of a tank. After 20 only halving is allowed, and halving a bracket of any
# width that floats allow ends in under 50.
_NEWTON_ROUNDS, _ROUNDS = 20, 80


@dataclass(frozen=True, eq=False)
class Acids:
    """Everything but carbon that takes up hydrogen: the constants, and totals [mol/kg]."""

    constants: Equilibria
    borate: Floats
    phosphate: Floats
    silicate: Floats

    def alkalinity(self, hydrogen: Floats) -> tuple[Floats, Floats]:
        """Return the alkalinity of everything but carbon.

        Parameters
        ----------
        hydrogen : array
            [H+] on the total scale [mol/kg].

        Returns
        -------
        tuple of two arrays
            Alkalinity as defined by Dickson 1981, Deep-Sea Res. 28, 609 [mol/kg], and its slope against ln [H+]
            [mol/kg].
        """
        k = self.constants
        free = hydrogen / k.total_over_free
        hydroxide = k.kw / hydrogen
        borate = share(hydrogen, k.boric)
        silicate = share(hydrogen, k.silicic)
        sulfate = share(free, k.bisulfate)
        fluoride = share(free, k.fluoride)
        phosphate, phosphate_spread = phosphate_charge(hydrogen, k.phosphoric)
        value = hydroxide - free + self.borate * borate + self.silicate * silicate + self.phosphate * phosphate
        value = value - k.total_sulfate * (1.0 - sulfate) - k.total_fluoride * (1.0 - fluoride)
        # The slope of an acid's mean charge against ln [H+] is the spread of the charge, with its sign turned.
        slope = hydroxide + free + self.borate * borate * (1.0 - borate) + self.phosphate * phosphate_spread
        slope = slope + self.silicate * silicate * (1.0 - silicate) + k.total_sulfate * sulfate * (1.0 - sulfate)
        return value, -(slope + k.total_fluoride * fluoride * (1.0 - fluoride))

    def limits(self) -> tuple[Floats, Floats]:
        """Return what all acids together, without carbon and water, can give at least and at most.

        Returns
        -------
        tuple of two arrays
            Lower and upper limit of their alkalinity [mol/kg].
        """
        k = self.constants
        least = -(k.total_sulfate + k.total_fluoride + self.phosphate)
        return least, self.borate + self.silicate + 2.0 * self.phosphate


def share(hydrogen: Floats, constant: Floats) -> Floats:
    """Return the share of a simple acid that has given off its hydrogen.

    Parameters
    ----------
    hydrogen : array
        [H+] on the scale of the constant [mol/kg].
    constant : array
        Its dissociation constant [mol/kg].

    Returns
    -------
    array
        Share of the base form [-].
    """
    return constant / (constant + hydrogen)


def phosphate_charge(hydrogen: Floats, constants: tuple[Floats, Floats, Floats]) -> tuple[Floats, Floats]:
    """Return what phosphate counts in alkalinity per mole: H3PO4 -1, H2PO4- 0, HPO4-- 1, PO4--- 2.

    Parameters
    ----------
    hydrogen : array
        [H+] on the total scale [mol/kg].
    constants : tuple of three arrays
        KP1, KP2, KP3 on the total scale [mol/kg].

    Returns
    -------
    tuple of two arrays
        Mean [eq/mol] and spread (variance) of what a phosphate counts [eq2/mol2].
    """
    first, second, third = constants
    # Amounts of the four forms over that of H2PO4-.
    three, one = hydrogen / first, second / hydrogen
    none = one * third / hydrogen
    all_forms = three + 1.0 + one + none
    mean = (one + 2.0 * none - three) / all_forms
    return mean, (three + one + 4.0 * none) / all_forms - mean**2


def carbon_charge(hydrogen: Floats, k1: Floats, k2: Floats) -> tuple[Floats, Floats]:
    """Return what dissolved inorganic carbon counts in alkalinity per mole: CO2 0, HCO3- 1, CO3-- 2.

    Parameters
    ----------
    hydrogen : array
        [H+] on the total scale [mol/kg].
    k1, k2 : array
        Constants of carbonic acid on the total scale [mol/kg].

    Returns
    -------
    tuple of two arrays
        Mean [eq/mol] and spread (variance) of what a mole of carbon counts [eq2/mol2].
    """
    # Amounts of CO2 and CO3-- over that of HCO3-.
    two, none = hydrogen / k1, k2 / hydrogen
    all_forms = two + 1.0 + none
    mean = (1.0 + 2.0 * none) / all_forms
    return mean, (1.0 + 4.0 * none) / all_forms - mean**2


def hydrogen_from_dic(acids: Acids, alkalinity: Floats, dic: Floats) -> Floats:
    """Return [H+] from alkalinity and dissolved inorganic carbon.

    Parameters
    ----------
    acids : Acids
        The water without its carbon.
    alkalinity : array
        Total alkalinity, of any sign [mol/kg].
    dic : array
        Dissolved inorganic carbon, zero or more [mol/kg].

    Returns
    -------
    array
        [H+] on the total scale [mol/kg].
    """
    k = acids.constants
    least, most = acids.limits()

    def carbon(hydrogen: Floats) -> tuple[Floats, Floats]:
        mean, spread = carbon_charge(hydrogen, k.k1, k.k2)
        return dic * mean, -dic * spread

    low = _water_alone(k.kw, alkalinity - least, k.total_over_free)
    high = _water_alone(k.kw, alkalinity - most - 2.0 * dic, k.total_over_free)
    return _search(acids, alkalinity, carbon, low, high)


def hydrogen_from_co2(acids: Acids, alkalinity: Floats, co2: Floats) -> Floats:
    """Return [H+] from alkalinity and dissolved carbon dioxide.

    Parameters
    ----------
    acids : Acids
        The water without its carbon.
    alkalinity : array
        Total alkalinity, of any sign [mol/kg].
    co2 : array
        Dissolved carbon dioxide, zero or more [mol/kg].

    Returns
    -------
    array
        [H+] on the total scale [mol/kg].
    """
    k = acids.constants
    least, most = acids.limits()
    # Bicarbonate and carbonate times [H+] and [H+] squared: fixed, so neither has an upper limit.
    once = k.k1 * co2
    twice = once * k.k2

    def carbon(hydrogen: Floats) -> tuple[Floats, Floats]:
        bicarbonate, carbonate = once / hydrogen, twice / hydrogen**2
        return bicarbonate + 2.0 * carbonate, -(bicarbonate + 4.0 * carbonate)

    # Low: carbonate left out. High: where carbonate counts no more than bicarbonate and water do, those counted twice.
    unlimited = k.kw + once
    low = _water_alone(unlimited, alkalinity - least, k.total_over_free)
    high = np.maximum(2.0 * twice / unlimited, _water_alone(2.0 * unlimited, alkalinity - most, k.total_over_free))
    return _search(acids, alkalinity, carbon, low, high)


def _water_alone(product: Floats, alkalinity: Floats, total_over_free: Floats) -> Floats:
    """Return the [H+] where product / [H+] less free [H+] is this alkalinity: the root of a quadratic."""
    root = np.sqrt(alkalinity**2 + 4.0 * product / total_over_free)
    # Of the two equal forms the one that takes no difference of near figures.
    size = root + np.abs(alkalinity)
    return np.where(alkalinity > 0.0, 2.0 * product / size, 0.5 * size * total_over_free)


def _search(acids: Acids, alkalinity: Floats, carbon: Part, low: Floats, high: Floats) -> Floats:
    """Return the [H+] between two bounds at which the alkalinity is met."""
    least, most = np.log(low), np.log(high)
    x: Floats = np.clip(_START, least, most)
    done = np.zeros(x.shape, dtype=np.bool_)
    for number in range(_ROUNDS):
        hydrogen = np.exp(x)
        others, others_slope = acids.alkalinity(hydrogen)
        carbonates, carbonates_slope = carbon(hydrogen)
        excess = others + carbonates - alkalinity
        above = excess > 0.0
        least, most = np.where(above, x, least), np.where(above, most, x)
        new = x - excess / (others_slope + carbonates_slope)
        outside = (new < least) | (new > most) | (number >= _NEWTON_ROUNDS)
        new = np.where(outside, 0.5 * (least + most), new)
        close = np.abs(new - x) < _CLOSE
        x = np.where(done, x, new)
        done = done | close
        if done.all():
            break
    found: Floats = np.exp(x)
    return found
