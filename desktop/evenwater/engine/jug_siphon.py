"""What happens if a whole jug runs into a tank at once, how large a jug may be, and what keeps it from running (H25)."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Water
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import Bottle
from evenwater.engine.stock import Dissolved, strength

# Common practice, no source: a jug holds no more than twice what may be dosed in a day.
DAYS_IN_A_JUG = 2.0
# What to look at before a jug is connected, in this order. Wisconsin Administrative Code NR 811.39 (2) (e) asks for a check valve at the
# injection point and a pump above the solution for drinking water; the rest is common practice, no source.
CHECKLIST = (
    "outlet_above_water", "jug_below_outlet", "jug_small_enough", "tube_lifted", "outlets_apart", "line_primed",
)  # fmt: skip


@dataclass(frozen=True)
class Tank:
    """The tank a jug runs into: net volume [L], its water, and values last tested by parameter [canonical unit]."""

    volume_l: float
    water: Water = field(default_factory=Water)
    values: Mapping[str, float] = field(default_factory=dict)
    name: str = ""


@dataclass(frozen=True)
class Setting:
    """How a jug stands: whether its outlet ends above the highest water line and the jug below the outlet; None if not said."""

    outlet_above_water: bool | None = None
    jug_below_outlet: bool | None = None


@dataclass(frozen=True)
class RunIn:
    """What one parameter would come to if a whole jug ran in at once.

    ``before``, ``after`` and ``most`` (the top of the hard target range) are in the canonical unit. ``assumed`` says that no reading
    was given, so that the top of the range usually kept counts. ``safe_ml`` [mL] is the largest jug that leaves the value in its hard
    range, ``advised_ml`` [mL] twice what the hard rise of a day takes, ``per_ml`` [canonical unit per mL] what one millilitre raises it by.
    """

    parameter: Parameter
    before: float
    assumed: bool
    after: float
    most: float
    safe_ml: float
    advised_ml: float
    per_ml: float

    @property
    def harms(self) -> bool:
        """Whether the value would leave its hard range."""
        return self.after > self.most


def run_in(batch: Dissolved | Bottle, parameters: Sequence[Parameter], tank: Tank, jug_ml: float) -> tuple[RunIn, ...]:
    """Return what every parameter that a stock raises would come to.

    Parameters
    ----------
    batch : Dissolved or Bottle
        What is in the jug.
    parameters : sequence of Parameter
        All parameters known.
    tank : Tank
        The tank; of several on one jug the smallest.
    jug_ml : float
        The full jug [mL].

    Returns
    -------
    tuple of RunIn
        One for each parameter the stock raises. The volume of the jug itself is not added to the tank's, which leaves the figure
        a little high.
    """
    found = []
    for parameter in parameters:
        per_ml = _strength(batch, parameter, tank.water) / tank.volume_l
        if per_ml <= 0.0:
            continue
        assumed = parameter.name not in tank.values
        before = parameter.canonical(parameter.range_kept[1]) if assumed else tank.values[parameter.name]
        most = parameter.canonical(parameter.target_hard[1])
        found.append(
            RunIn(
                parameter=parameter,
                before=before,
                assumed=assumed,
                after=before + jug_ml * per_ml,
                most=most,
                safe_ml=max(0.0, most - before) / per_ml,
                advised_ml=DAYS_IN_A_JUG * parameter.canonical(parameter.rise_hard) / per_ml,
                per_ml=per_ml,
            )
        )
    return tuple(found)


def _strength(batch: Dissolved | Bottle, parameter: Parameter, water: Water) -> float:
    if isinstance(batch, Bottle):
        return strength(batch.label, parameter.name, parameter.kind) if batch.parameter == parameter else 0.0
    return strength(batch, parameter.name, parameter.kind, water)


def largest_ml(found: Sequence[RunIn]) -> tuple[float, float] | None:
    """Return how large a jug may be for every parameter it raises.

    Parameters
    ----------
    found : sequence of RunIn
        What each parameter would come to.

    Returns
    -------
    tuple of float or None
        The largest jug that leaves every value in its hard range [mL], and the largest advised one [mL], which is never larger; None
        of a stock that raises nothing known.
    """
    if not found:
        return None
    safe = min(each.safe_ml for each in found)
    return safe, min(safe, *(each.advised_ml for each in found))


def dangers(setting: Setting) -> Iterator[Reason]:
    """Yield what is wrong with how a jug stands, and what has not been said.

    Parameters
    ----------
    setting : Setting
        How it stands.

    Yields
    ------
    Reason
        The jug above its outlet runs in by itself; an outlet under water lets the tank run back, or the jug in.
    """
    if setting.jug_below_outlet is False:
        yield Reason("jug_above_outlet", {}, "setting.jug_below_outlet")
    if setting.outlet_above_water is False:
        yield Reason("outlet_under_water", {}, "setting.outlet_above_water")
    if None in (setting.jug_below_outlet, setting.outlet_above_water):
        yield Reason("siphon_not_checked", {}, "setting")
