"""A value that is too high, or an overdose just found: what is known of the tank, of the new water, and of what ran in."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime

from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Water
from evenwater.engine.recipe import Bottle
from evenwater.engine.stock import Dissolved

# Common practice, no source: no more than half of a tank's water is exchanged in a day.
LARGEST_SHARE = 0.5
# What takes longer than this is no recovery [day]; common practice, no source.
LONGEST_DAYS = 90.0


@dataclass(frozen=True)
class Overdose:
    """What ran in: so many millilitres [mL] of a stock."""

    batch: Dissolved | Bottle
    ml: float


@dataclass(frozen=True)
class RecoveryQuestion:
    """A value that is too high.

    ``values`` are those of the tank now by parameter, ``before`` those last tested before the overdose, ``new_water`` those of the new
    water [canonical unit]; ``use`` is what the animals use [canonical unit per day]; ``held`` names the parameters whose doses are held,
    the one that is too high among them. ``most_l_per_day`` [L/day] is the most water that can be exchanged, ``new_temperature_c`` [degC]
    that of the new water. ``units`` are those the keeper typed, ``assumed`` the parameters that nobody tested. ``signs`` are what was seen
    of precipitation: ``"cloudy"``, ``"white_film"``. ``ph`` [NBS scale] is the last one measured. ``volume_l`` [L] is known within
    ``volume_share`` [1], half the width of a 95 % interval; ``ran_in`` [canonical unit times L] is what ran in of everything that was not
    tested since, so that ``values`` hold in a tank of just ``volume_l``.
    """

    now: datetime
    name: str
    parameter: Parameter
    parameters: tuple[Parameter, ...]
    target: float
    volume_l: float
    water: Water
    values: Mapping[str, float]
    before: Mapping[str, float]
    new_water: Mapping[str, float]
    use: Mapping[str, float]
    held: tuple[str, ...]
    most_l_per_day: float
    measured: bool
    overdose: Overdose | None = None
    ph: float | None = None
    new_temperature_c: float | None = None
    temperature_said: bool = False
    signs: tuple[str, ...] = ()
    assumed: tuple[str, ...] = ()
    units: Mapping[str, str] = field(default_factory=dict)
    volume_share: float = 0.0
    ran_in: Mapping[str, float] = field(default_factory=dict)

    @property
    def volumes_l(self) -> tuple[float, float]:
        """The smallest and the largest that the net volume may be [L]."""
        return self.volume_l * (1.0 - self.volume_share), self.volume_l * (1.0 + self.volume_share)

    def values_in(self, volume_l: float) -> dict[str, float]:
        """Return the values now, were the net volume another one.

        Parameters
        ----------
        volume_l : float
            The net volume [L]; what ran in raises a smaller tank more.

        Returns
        -------
        dict of str to float
            Values by parameter [canonical unit].
        """
        more = 1.0 / volume_l - 1.0 / self.volume_l
        return {name: value + more * self.ran_in.get(name, 0.0) for name, value in self.values.items()}

    @property
    def known(self) -> tuple[Parameter, ...]:
        """The parameters whose value is known, in the order of the data file."""
        return tuple(p for p in self.parameters if p.name in self.values)

    def unit(self, parameter: Parameter) -> str:
        """Return the id of the unit a parameter is spoken of in.

        Parameters
        ----------
        parameter : Parameter
            The parameter.

        Returns
        -------
        str
            As it was entered in, or its display unit.
        """
        return self.units.get(parameter.name, parameter.display_unit)

    def used(self, name: str) -> float:
        """Return by how much a value falls because its doses are held.

        Parameters
        ----------
        name : str
            Name of the parameter.

        Returns
        -------
        float
            What the animals use [canonical unit per day]; zero where doses go on and make it good.
        """
        return self.use.get(name, 0.0) if name in self.held else 0.0
