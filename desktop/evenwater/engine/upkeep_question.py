"""The question of an upkeep: several values kept at once in one tank, with everything that is dosed for them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from evenwater.engine.catalogue import Parameter
from evenwater.engine.question import Pump, System
from evenwater.engine.stock import Additive, Dissolved


@dataclass(frozen=True)
class UpkeepItem:
    """One value to keep, and what is dosed for it.

    ``unit`` is the keeper's own unit of the value. ``value`` [canonical unit] is the value now, ``use`` [canonical unit
    per day] what the animals take; each is None when it is not known.
    """

    parameter: Parameter
    unit: str
    value: float | None
    use: float | None
    additive: Additive
    pump: Pump

    @property
    def additive_name(self) -> str:
        """The full name of what is in the jug; empty of a bottle known only by its label."""
        return self.additive.name if isinstance(self.additive, Dissolved) else ""


@dataclass(frozen=True)
class Outstanding:
    """A correction that was planned and not tested since: ``rise`` [canonical unit per day] for ``days_left`` [day].

    ``doses_per_day`` says in how many doses it comes. What it is made of is not known here.
    """

    parameter: Parameter
    rise: float
    days_left: float
    doses_per_day: int = 24


@dataclass(frozen=True)
class UpkeepQuestion:
    """Keep several values of one system at once.

    ``others`` are all parameters, so that what the additives raise besides can be limited and followed too.
    ``exchange_fraction`` [1/day] is the share of the volume that is exchanged continuously, ``new_water`` the value of
    the new water by parameter [canonical unit]; natural seawater where it is not given.
    """

    now: datetime
    system: System
    items: tuple[UpkeepItem, ...]
    others: tuple[Parameter, ...]
    exchange_fraction: float = 0.0
    new_water: tuple[tuple[str, float], ...] = ()
    outstanding: tuple[Outstanding, ...] = ()

    def item(self, name: str) -> UpkeepItem | None:
        """Return what keeps a parameter, or None when it is not kept.

        Parameters
        ----------
        name : str
            Name of the parameter.

        Returns
        -------
        UpkeepItem or None
            Its item.
        """
        return next((item for item in self.items if item.parameter.name == name), None)

    def use(self, name: str) -> float | None:
        """Return the use per day of a parameter that is kept.

        Parameters
        ----------
        name : str
            Name of the parameter.

        Returns
        -------
        float or None
            Use [canonical unit per day]; None when the parameter is not kept.
        """
        item = self.item(name)
        return None if item is None else item.use

    def value_now(self, name: str) -> float | None:
        """Return the value of a parameter now.

        Parameters
        ----------
        name : str
            Name of the parameter.

        Returns
        -------
        float or None
            The value [canonical unit]; None when nobody has said it.
        """
        item = self.item(name)
        if item is not None and item.value is not None:
            return item.value
        salinity = None if self.system.water_assumed else self.system.water.salinity
        told = {"alkalinity": self.system.alkalinity, "calcium": self.system.calcium, "salinity": salinity}
        return told.get(name)
