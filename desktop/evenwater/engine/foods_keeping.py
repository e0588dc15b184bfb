"""How long a food keeps, how long its jug lasts against that, and what stands in its line."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta

from evenwater.engine.pump_line import dead_volume

# Common practice, no source: what spoils and is not kept cold is thrown away after a day.
WARM_DAYS = 1.0
# Common practice, no source: twice what the line holds rinses out what clings to its wall.
RINSES = 2.0
# Common practice, no source: what spoils does not stand in a warm line for longer than this [day].
STANDS_DAYS = 4.0 / 24.0


@dataclass(frozen=True)
class JugOfFood:
    """A jug against its date: how long it ``lasts`` [day] at what is given, the ``share`` of it that is used by then [1], and the largest
    one that is used up in time [mL].
    """

    lasts: float
    share: float
    largest_ml: float


@dataclass(frozen=True)
class FoodLine:
    """A line with food in it: what it ``holds`` [mL], how long food stands in it that is not flushed out [day], how much water rinses it
    after a feeding [mL], and how much that is in a day [mL per day].
    """

    holds_ml: float
    stands_days: float
    flush_ml: float
    flush_per_day_ml: float


def keeps(keeps_days: float, spoils: bool, cold: bool) -> float:
    """Return how long an opened jug keeps.

    Parameters
    ----------
    keeps_days : float
        What its label says [day].
    spoils : bool
        Whether it goes off in the warm.
    cold : bool
        Whether it stands cold.

    Returns
    -------
    float
        Time [day]; a day at most for what spoils and stands warm.
    """
    return min(keeps_days, WARM_DAYS) if spoils and not cold else keeps_days


def discard_on(opened: date, keeps_days: float) -> date:
    """Return the last day on which an opened jug may be used.

    Parameters
    ----------
    opened : date
        When it was opened.
    keeps_days : float
        How long it keeps [day]; a part of a day does not count.

    Returns
    -------
    date
        The day.
    """
    return opened + timedelta(days=math.floor(keeps_days))


def empty_on(opened: date, jug_ml: float, per_day_ml: float) -> date:
    """Return the day on which a jug that was opened full is empty.

    Parameters
    ----------
    opened : date
        When it was opened.
    jug_ml : float
        What was in it [mL].
    per_day_ml : float
        What is given [mL per day], above zero.

    Returns
    -------
    date
        The day, the calendar's last one where it lasts for ever.
    """
    days = jug_ml / per_day_ml
    return date.max if days >= (date.max - opened).days else opened + timedelta(days=math.floor(days))


def jug(jug_ml: float, per_day_ml: float, keeps_days: float) -> JugOfFood:
    """Hold a jug against its date.

    Parameters
    ----------
    jug_ml : float
        What is in it when it is opened [mL].
    per_day_ml : float
        What is given [mL per day], above zero.
    keeps_days : float
        How long it keeps once opened [day].

    Returns
    -------
    JugOfFood
        Times and volumes.
    """
    largest = per_day_ml * keeps_days
    return JugOfFood(jug_ml / per_day_ml, min(1.0, largest / jug_ml), largest)


def line(bore_mm: float, length_mm: float, per_day_ml: float, feedings: float) -> FoodLine:
    """Return what stands in a line, and what rinses it.

    Parameters
    ----------
    bore_mm, length_mm : float
        Inside diameter and whole length of the tubing [mm].
    per_day_ml : float
        What is given through it [mL per day], above zero.
    feedings : float
        How many feedings, each with its rinse [1/day].

    Returns
    -------
    FoodLine
        Volumes and times; a line that is not flushed holds each drop until as much was given as it holds.
    """
    holds = dead_volume(bore_mm, length_mm)
    flush = RINSES * holds
    return FoodLine(holds, holds / per_day_ml, flush, flush * feedings)
