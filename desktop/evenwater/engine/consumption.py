"""The question what the animals use in a day, and its answer with everything a keeper should know about it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from evenwater.engine.catalogue import Parameter
from evenwater.engine.consumption_estimate import Estimate, estimate
from evenwater.engine.consumption_log import Reading, Record, objections
from evenwater.engine.correction import Refused
from evenwater.engine.quantities import Water
from evenwater.engine.reasons import Reason

# So many readings in a row that are alike to the last digit may have been copied or the meter stuck (H9).
FLAT_READINGS = 3
# What food and dead matter bring into the water: these may rise by themselves.
_MADE_IN_THE_TANK = ("nitrate", "phosphate")


@dataclass(frozen=True)
class ConsumptionQuestion:
    """A record of one parameter in one system, in the parameter's canonical unit; ``unit`` is the keeper's own."""

    now: datetime
    parameter: Parameter
    unit: str
    water: Water
    record: Record


@dataclass(frozen=True)
class ConsumptionAnswer:
    """What the record says; ``odd`` names each reading that is not believed, in the order of ``estimate.odd``."""

    question: ConsumptionQuestion
    estimate: Estimate
    odd: tuple[Reason, ...]
    remarks: tuple[Reason, ...]


def solve(question: ConsumptionQuestion) -> ConsumptionAnswer | Refused:
    """Answer what is used in a day.

    Parameters
    ----------
    question : ConsumptionQuestion
        The record.

    Returns
    -------
    ConsumptionAnswer or Refused
        The use, or why nothing can be said of it.
    """
    refused = objections(question.record, question.now)
    if refused:
        return Refused(refused)
    found = estimate(question.record, question.now)
    readings = question.record.readings
    odd = tuple(
        Reason(
            "odd_reading",
            {"at": readings[o.index].at, "value": readings[o.index].value, "off": o.off},
            f"reading.{o.index + 1}.value",
        )
        for o in found.odd
    )
    return ConsumptionAnswer(question, found, odd, tuple(_remarks(question, found)))


def _remarks(q: ConsumptionQuestion, found: Estimate) -> Iterator[Reason]:
    if found.since_days > q.parameter.stale_days:
        yield Reason("use_is_old", {"age_days": found.since_days, "stale_days": q.parameter.stale_days})
    latest = sorted(q.record.readings, key=_when)[-FLAT_READINGS:]
    if len(latest) == FLAT_READINGS and len({reading.value for reading in latest}) == 1:
        yield Reason("flat_readings", {"value": latest[0].value, "count": FLAT_READINGS})
    if found.changed is not None:
        change = found.changed
        yield Reason("use_changed", {"at": change.at, "before": change.before, "after": change.after})
    for jump in found.jumps:
        yield Reason("value_jumped", {"at": q.record.readings[jump.index].at, "by": jump.by})
    use = found.use
    if use.high < 0.0:
        made = q.parameter.name in _MADE_IN_THE_TANK
        yield Reason("made_in_the_tank" if made else "rises_by_itself", {"per_day": -use.value})
    elif use.low <= 0.0:
        yield Reason("use_unclear", {"low": use.low, "high": use.high})


def _when(reading: Reading) -> datetime:
    return reading.at
