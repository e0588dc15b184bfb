"""The question about a continuous exchange: two pumps, the new water, and what else moves each value."""

from __future__ import annotations

import math
from dataclasses import dataclass

from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Water
from evenwater.engine.recipe import Bottle
from evenwater.engine.stock import Dissolved, strength


@dataclass(frozen=True)
class Pair:
    """What the two pumps move: old water out and new water in [L per day]."""

    out_l: float
    in_l: float


@dataclass(frozen=True)
class OneDose:
    """A single addition ``at_day`` [day] after the start that raises a value by ``raises`` [canonical unit]."""

    parameter: Parameter
    at_day: float
    raises: float


@dataclass(frozen=True)
class Spell:
    """A steady addition of ``per_day`` [canonical unit per day] from ``begins`` to ``ends`` [day after the start].

    ``ends`` is infinite of what goes on; what raises nothing but takes something away is below zero.
    """

    parameter: Parameter
    begins: float
    ends: float
    per_day: float


@dataclass(frozen=True)
class Moved:
    """One value and what moves it besides the exchange.

    ``now`` and ``new_water`` are in the canonical unit, ``use`` and ``added`` in it per day, ``loss`` is the first-order share lost per
    day [1/day]. ``unit`` is the one it is said in. ``assumed`` says that natural seawater stands for a new water nobody measured.
    ``batch`` is the stock it is dosed with, where one is given.
    """

    parameter: Parameter
    unit: str
    now: float
    new_water: float
    use: float = 0.0
    added: float = 0.0
    loss: float = 0.0
    assumed: bool = False
    batch: Dissolved | Bottle | None = None

    def per_ml(self, water: Water) -> float:
        """Return what a millilitre of the stock carries.

        Parameters
        ----------
        water : Water
            The tank's water.

        Returns
        -------
        float
            Strength [canonical unit of one litre per mL]; zero without a stock, or of one that does not raise the value.
        """
        p = self.parameter
        if isinstance(self.batch, Bottle):
            return strength(self.batch.label, p.name, p.kind, water) if self.batch.parameter == p else 0.0
        return 0.0 if self.batch is None else strength(self.batch, p.name, p.kind, water)


@dataclass(frozen=True)
class Mixing:
    """A bucket of new water: its volume [L], and what the bag's own label says: mass [g] for so much water [L] to a salinity.

    ``measured`` is the salinity that was found in the bucket, None before it was tested.
    """

    volume_l: float
    label_g: float
    label_l: float
    label_salinity: float
    measured: float | None = None


@dataclass(frozen=True)
class ExchangeQuestion:
    """A tank with a pump pair.

    ``volume_l`` [L] is the net volume and ``uncertainty`` half its 95 % interval as a share; ``days`` [day] is how far to look.
    ``salinity`` and ``new_salinity`` are practical salinities, ``new_temperature_c`` [degC], ``evaporation_l`` [L per day],
    the jugs [L]; None of what is not known. ``spells`` are the additions that run only for a time, ``fed`` names the foods whose
    nutrients are among what is added.
    """

    name: str
    volume_l: float
    uncertainty: float
    water: Water
    pair: Pair
    days: float
    values: tuple[Moved, ...]
    doses: tuple[OneDose, ...] = ()
    spells: tuple[Spell, ...] = ()
    new_salinity: float = 35.0
    new_temperature_c: float | None = None
    evaporation_l: float | None = None
    old_jug_l: float | None = None
    new_jug_l: float | None = None
    mixing: Mixing | None = None
    fed: tuple[str, ...] = ()

    @property
    def share_out(self) -> float:
        """Share of the net volume that is taken out per day [1/day]."""
        return self.pair.out_l / self.volume_l

    @property
    def share_in(self) -> float:
        """Share of the net volume that comes in per day [1/day]."""
        return self.pair.in_l / self.volume_l

    @property
    def top_off_l(self) -> float | None:
        """Fresh water that holds the level [L per day]: evaporation and what the pair takes out in excess; None if not known."""
        return None if self.evaporation_l is None else self.evaporation_l + self.pair.out_l - self.pair.in_l


def as_much_as(fraction: float, every_days: float, volume_l: float) -> float:
    """Return the continuous exchange that leaves as much old water as a batch change repeated in an interval.

    Parameters
    ----------
    fraction : float
        Share of the volume swapped in one batch change [1], below one.
    every_days : float
        Interval between two of them [day].
    volume_l : float
        Net volume [L].

    Returns
    -------
    float
        Exchange [L per day], since a batch leaves 1 - f and a continuous exchange exp(-Q*t/V).
    """
    return -math.log1p(-fraction) * volume_l / every_days
