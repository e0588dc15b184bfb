"""The question of a correction: one frozen value that holds everything, with now and all limits."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime

from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Water
from evenwater.engine.stock import Additive

# Common practice, no source: how well the net volume is known by the way it was found, as half the
# width of a 95 % interval over the volume.
VOLUME_UNCERTAINTY = {
    "": 0.10,
    "measured by filling": 0.02,
    "dose and test": 0.05,
    "dimensions": 0.10,
    "unknown": 0.25,
}

# Common practice, no source: the same for a weighed stock, a calibrated pump and the daily use.
STRENGTH_UNCERTAINTY = 0.02
LABEL_UNCERTAINTY = 0.05
PUMP_UNCERTAINTY = 0.05
USE_UNCERTAINTY = 0.20


@dataclass(frozen=True)
class System:
    """The tank: net volume [L], half width of its 95 % interval over the volume, and its water.

    ``ph`` is as measured (NBS scale), ``alkalinity`` [meq/L] and ``calcium`` [mg/L] as last tested when another value
    is corrected, ``evaporation_l`` [L per day] what top-off replaces; each is None when the keeper did not give it.
    """

    name: str
    volume_l: float
    volume_uncertainty: float
    volume_known: str
    water: Water
    ph: float | None = None
    water_assumed: bool = False
    alkalinity: float | None = None
    calcium: float | None = None
    evaporation_l: float | None = None


@dataclass(frozen=True)
class Pump:
    """The pump: flow [mL/min], smallest accurate dose [mL], step [mL], largest share of the time.

    ``smallest_ml`` and ``step_ml`` are None when the keeper did not give them.
    """

    flow_ml_per_min: float
    smallest_ml: float | None
    step_ml: float | None
    largest_share: float
    doses_per_day: int
    name: str = ""


@dataclass(frozen=True)
class CorrectionQuestion:
    """Raise one parameter of one system, from a reading to a target, slowly.

    Values are [canonical unit], rises and use [canonical unit per day]; ``unit`` is the
    keeper's own unit for the answer. ``others`` are all parameters, so that what the additive
    raises besides can be limited too. ``fastest`` is None when the keeper leaves the pace to the
    recommended rise. ``untested`` is what was dosed since the reading, so that no test has shown it, less what was used;
    ``lately`` what was dosed besides in the last 24 hours, tested or not; both in the canonical unit.
    """

    now: datetime
    system: System
    parameter: Parameter
    unit: str
    measured: float
    measured_as: tuple[float, str]
    measured_at: datetime | None
    target: float
    use: float
    fastest: float | None
    reason: str
    additive: Additive
    pump: Pump
    others: tuple[Parameter, ...]
    # Left out of the identity of the many plans that have none: their ids stay what they were.
    untested: float = field(default=0.0, repr=False)
    lately: float = field(default=0.0, repr=False)

    @property
    def start(self) -> float:
        """What the water is taken to hold now [canonical unit]: the reading, and what it could not show yet."""
        return self.measured + self.untested
