"""The answer to an upkeep: what each pump is set to, and what that does to the water."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from evenwater.engine.limits import Nearness
from evenwater.engine.reasons import Reason
from evenwater.engine.upkeep_balance import Drift, SaltLeft
from evenwater.engine.upkeep_check import Seen
from evenwater.engine.upkeep_limits import Hour
from evenwater.engine.upkeep_question import UpkeepItem, UpkeepQuestion


@dataclass(frozen=True)
class UpkeepDose:
    """What one pump is set to.

    ``needed_ml_per_day`` [mL per day] is before rounding, ``dose_ml`` [mL] after it, ``per_day`` times, each
    ``run_time_s`` [s] long; ``own_share`` [1] the part of the use that this additive makes good, the others bringing the rest.
    ``shortfall`` [canonical unit per day] is what rounding leaves of the use. ``jug_days`` [day] is how long a full jug
    lasts and ``empty_at`` when; None of a bottle, of what is not dosed and of a jug that lasts for ten years.
    """

    item: UpkeepItem
    needed_ml_per_day: float
    own_share: float
    dose_ml: float
    step_ml: float
    per_day: int
    run_time_s: float
    shortfall: float
    jug_days: float | None
    empty_at: datetime | None

    @property
    def in_24_hours_ml(self) -> float:
        """The doses of 24 hours, the sum of the rounded ones [mL]; never more is given, whatever was missed before."""
        return round(self.per_day * self.dose_ml, 9)


@dataclass(frozen=True)
class Pair:
    """Calcium to alkalinity [mg/meq]: as skeleton takes them, as they are used, and as they are dosed.

    ``of_use`` is None unless both are kept, ``of_doses`` where no alkalinity is dosed.
    """

    of_skeleton: float
    of_use: float | None
    of_doses: float | None


@dataclass(frozen=True)
class UpkeepAnswer:
    """What to set, item by item, and what it does besides.

    ``known`` is False when an item is a bottle known only by its label: what else is in it then counts nowhere. ``salt`` is
    what is left in the tank, ``sodium_chloride`` the part of it that is sodium and chloride, mole for mole.
    """

    question: UpkeepQuestion
    doses: tuple[UpkeepDose, ...]
    limits: tuple[Nearness, ...]
    remarks: tuple[Reason, ...]
    pair: Pair
    drifts: tuple[Drift, ...]
    salt: SaltLeft
    sodium_chloride: SaltLeft
    known: bool
    hour: Hour | None
    seen: Seen
