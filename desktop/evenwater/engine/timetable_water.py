"""What the doses of a timetable do to the water: those of one moment, and those of the fullest hour.

A timetable may give a day's sum in other doses than it was planned with, and quiet hours press them together. So the two limits
that hang on single doses are held against what is really given; those of a day's sum were held before.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from evenwater.engine import upkeep_limits
from evenwater.engine.carbonate_state import ImpossibleWaterError
from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import from_canonical
from evenwater.engine.question import System
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Additive
from evenwater.engine.timetable_plan import TimetableAnswer
from evenwater.engine.timetable_question import DAY_MIN
from evenwater.engine.units import KINDS
from evenwater.engine.upkeep_balance import Solutes, amount, given, solutes_per_ml
from evenwater.engine.upkeep_limits import Source
from evenwater.engine.upkeep_question import UpkeepQuestion

_HOUR_MIN = 60
_HOURS = 24


@dataclass(frozen=True)
class Carried:
    """What a millilitre from one pump's jug carries in the tank: solutes [mmol/L and meq/L per mL], and the rise that it is dosed for
    [canonical unit per mL].
    """

    solutes: Solutes
    rise: float


def carried(additive: Additive, parameter: Parameter, system: System) -> Carried:
    """Return what a millilitre from a jug carries into a tank.

    Parameters
    ----------
    additive : Additive
        What is in the jug.
    parameter : Parameter
        What it is dosed for.
    system : System
        The tank.

    Returns
    -------
    Carried
        All solutes, and the rise of that parameter.
    """
    solutes = given([(solutes_per_ml(additive, parameter, system.water), 1.0 / system.volume_l)])
    return Carried(solutes, amount(parameter.name, solutes, system.water))


def fullest_hour(minutes: Sequence[int]) -> int:
    """Return the most doses within any hour, round the clock.

    Parameters
    ----------
    minutes : sequence of int
        Minutes of the day at which one pump's doses begin, in order.

    Returns
    -------
    int
        Doses that begin within less than sixty minutes.
    """
    row = [*minutes, *(minute + DAY_MIN for minute in minutes)]
    most, first = 0, 0
    for place, minute in enumerate(row):
        while minute - row[first] >= _HOUR_MIN:
            first += 1
        most = max(most, place - first + 1)
    return min(most, len(minutes))


def objections(q: UpkeepQuestion, plan: TimetableAnswer, each: Sequence[Carried]) -> tuple[Reason, ...]:
    """Return which limits of the water the doses of a timetable pass.

    Parameters
    ----------
    q : UpkeepQuestion
        The tank, with what is kept in it. Corrections that are outstanding are not looked at: they are among the pumps.
    plan : TimetableAnswer
        The timetable.
    each : sequence of Carried
        What a millilitre from each of its pumps carries.

    Returns
    -------
    tuple of Reason
        Those an upkeep has for a single dose, the rise of pH in an hour, its ceiling and aragonite saturation; empty when
        all is well.
    """
    dosing = []
    for place, one in enumerate(each):
        own = [row for row in plan.rows if row.pump == place]
        largest = max(row.ml + row.more_ml for row in own)
        hours = fullest_hour([row.minute for row in own])
        dosing.append(Source({name: largest * value for name, value in one.solutes.items()}, _HOURS * hours))
    found = [reason for p in q.others if (reason := _jump(q, p.name, dosing)) is not None]
    try:
        hour = upkeep_limits.hour_of(q, dosing)
    except ImpossibleWaterError:
        return (upkeep_limits.impossible(q.system.ph),)
    limits = () if hour is None else tuple(upkeep_limits.of_water(q, hour))
    return (*found, *upkeep_limits.refusals(limits))


def _jump(q: UpkeepQuestion, name: str, dosing: Sequence[Source]) -> Reason | None:
    """Return the objection to what one dose of every pump at the same moment raises, or None."""
    p = next(p for p in q.others if p.name == name)
    rise = sum(amount(name, source.solutes, q.system.water) for source in dosing)
    most = p.canonical(p.dose_rise_recommended)
    # The last digit of a figure that was typed is no reason.
    if rise <= most * (1.0 + 1e-9):
        return None
    unit = upkeep_limits.unit_of(q, p)
    value, bound = (
        (v if p.kind == "salinity" else from_canonical(v, p.kind, unit, q.system.water)) for v in (rise, most)
    )
    params = {"parameter": name, "rise": value, "most": bound, "unit": KINDS[p.kind].unit(unit).shown}
    return Reason("upkeep_single_dose", params, upkeep_limits.path_of(q, p))
