"""Foods, amino acids and trace mixes: what a millilitre carries, and what that brings to a tank's values in a day.

All of it counts as eaten and given off, or decayed, to nitrate and phosphate: what the animals keep, and what skimmer and filter take
before it decays, makes it less. Every figure is therefore the most that a food can bring.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from evenwater.engine.catalogue import Parameter
from evenwater.engine.exchange_question import ExchangeQuestion, Moved
from evenwater.engine.formula import molar_mass

# Protein over nitrogen by mass, the general factor: FAO Food and Nutrition Paper 77 (2003), chapter 2.
PROTEIN_PER_NITROGEN = 6.25
# NH4+ + 2 O2 -> NO3- + 2 H+ + H2O.
_OXYGEN_PER_NITROGEN = 2.0


def nitrate_per_nitrogen() -> float:
    """Return the nitrate that nitrogen becomes, from standard atomic weights.

    Returns
    -------
    float
        Nitrate [mg NO3 per mg N].
    """
    return molar_mass("NO3") / molar_mass("N")


def phosphate_per_phosphorus() -> float:
    """Return the phosphate that phosphorus becomes, from standard atomic weights.

    Returns
    -------
    float
        Phosphate [mg PO4 per mg P].
    """
    return molar_mass("PO4") / molar_mass("P")


def alkalinity_per_nitrogen() -> float:
    """Return the alkalinity that organic nitrogen takes on its way to nitrate.

    Returns
    -------
    float
        Alkalinity [meq per mg N].

    Notes
    -----
    One equivalent per mole: ammonium set free gives one, nitrification takes two. Source: Wolf-Gladrow et al. 2007, Marine Chemistry
    106, 287. What phosphate set free takes, a sixteenth of that in matter of Redfield's ratio, is left out.
    """
    return 1.0 / molar_mass("N")


def oxygen_per_nitrogen() -> float:
    """Return the oxygen that nitrification takes, two moles per mole.

    Returns
    -------
    float
        Oxygen [mg O2 per mg N].
    """
    return _OXYGEN_PER_NITROGEN * molar_mass("O2") / molar_mass("N")


@dataclass(frozen=True)
class Food:
    """One food and what is given of it.

    ``per_day_ml`` [mL per day]. A millilitre carries ``nitrogen`` [mg N] and ``phosphorus`` [mg P, None where the label says nothing of it],
    and of ``other``, a parameter that a label speaks of, so much [canonical unit of one litre]. ``salts`` says that its nitrogen is nitrate
    already, which takes no alkalinity.
    """

    name: str
    per_day_ml: float
    nitrogen: float = 0.0
    phosphorus: float | None = 0.0
    other: tuple[Parameter, float] | None = None
    salts: bool = False

    def per_ml(self, parameter: str) -> float:
        """Return what a millilitre brings of a parameter.

        Parameters
        ----------
        parameter : str
            Name of the parameter.

        Returns
        -------
        float
            Strength [canonical unit of one litre per mL]; of alkalinity below zero where nitrification takes it.
        """
        found = self.other[1] if self.other is not None and self.other[0].name == parameter else 0.0
        if parameter == "nitrate":
            found += self.nitrogen * nitrate_per_nitrogen()
        elif parameter == "phosphate":
            found += (self.phosphorus or 0.0) * phosphate_per_phosphorus()
        elif parameter == "alkalinity" and not self.salts:
            found -= self.nitrogen * alkalinity_per_nitrogen()
        return found

    def brings(self, parameter: str, volume_l: float) -> float:
        """Return what the food brings of a parameter.

        Parameters
        ----------
        parameter : str
            Name of the parameter.
        volume_l : float
            Net volume [L].

        Returns
        -------
        float
            Rise [canonical unit per day]; below zero for alkalinity that is taken.
        """
        return self.per_ml(parameter) * self.per_day_ml / volume_l


@dataclass(frozen=True)
class FoodsQuestion:
    """A tank as it is without food, and the foods it is given.

    ``tank`` has nitrate and phosphate among its values; ``parameters`` are all that a food may bring.
    """

    tank: ExchangeQuestion
    foods: tuple[Food, ...]
    parameters: tuple[Parameter, ...]

    def total(self, parameter: str) -> float:
        """Return what all foods bring of a parameter.

        Parameters
        ----------
        parameter : str
            Name of the parameter.

        Returns
        -------
        float
            Rise [canonical unit per day].
        """
        return total(self.foods, parameter, self.tank.volume_l)


def total(foods: Iterable[Food], parameter: str, volume_l: float) -> float:
    """Return what several foods bring of a parameter.

    Parameters
    ----------
    foods : iterable of Food
        The foods, in any order.
    parameter : str
        Name of the parameter.
    volume_l : float
        Net volume [L].

    Returns
    -------
    float
        Rise [canonical unit per day].
    """
    return math.fsum(food.brings(parameter, volume_l) for food in foods)


def fed(values: Sequence[Moved], foods: Sequence[Food], volume_l: float) -> tuple[Moved, ...]:
    """Return values with what foods bring and take.

    Parameters
    ----------
    values : sequence of Moved
        The values as they are moved without food.
    foods : sequence of Food
        The foods.
    volume_l : float
        Net volume [L].

    Returns
    -------
    tuple of Moved
        With more added per day, or more used where nitrification takes alkalinity.
    """
    return tuple(_fed(moved, total(foods, moved.parameter.name, volume_l)) for moved in values)


def _fed(moved: Moved, rise: float) -> Moved:
    if rise >= 0.0:
        return replace(moved, added=moved.added + rise)
    return replace(moved, use=moved.use - rise)
