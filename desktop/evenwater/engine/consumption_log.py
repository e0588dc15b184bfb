"""What a keeper writes down of one value: readings, doses and exchanges, each with its instant; and what cannot be used of it."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

import numpy as np
import numpy.typing as npt

from evenwater.engine.consumption_steps import Log
from evenwater.engine.reasons import Reason

Floats = npt.NDArray[np.float64]

MOST_READINGS = 20_000
MOST_YEARS = 10
# A clock may run a little fast; further ahead the date or the hour was mistyped (H8).
AHEAD_ALLOWED = timedelta(minutes=5)
# Closer together than this, readings speak of the kit and not of the animals; common practice, no source.
SHORTEST = timedelta(hours=1)
_DAY_S = 86400.0


@dataclass(frozen=True)
class Reading:
    """A test: when, the ``value`` it showed [canonical unit] and the kit's standard deviation ``sd`` [canonical unit]."""

    at: datetime
    value: float
    sd: float


@dataclass(frozen=True)
class Dose:
    """A dose: when, and by how much it raised the value [canonical unit]; below zero for what lowers it."""

    at: datetime
    rise: float


@dataclass(frozen=True)
class Exchange:
    """An exchange of water at once: when, the ``share`` of the volume [1], the value of the new water [canonical unit]."""

    at: datetime
    share: float
    new_value: float


@dataclass(frozen=True)
class Record:
    """One value of one system; in any order."""

    readings: tuple[Reading, ...]
    doses: tuple[Dose, ...] = ()
    exchanges: tuple[Exchange, ...] = ()


def objections(record: Record, now: datetime) -> tuple[Reason, ...]:
    """Return why nothing can be learned from a record.

    Parameters
    ----------
    record : Record
        Readings, doses and exchanges.
    now : datetime
        The present, with zone.

    Returns
    -------
    tuple of Reason
        Every objection; empty when there is none.
    """
    found = list(_objections(record, now))
    instants = {reading.at for reading in record.readings}
    if len(record.readings) < 2:
        found.append(Reason("too_few_readings", {"count": len(record.readings)}, "reading"))
    elif len(record.readings) > MOST_READINGS:
        found.append(Reason("too_many_readings", {"count": len(record.readings), "most": MOST_READINGS}, "reading"))
    elif max(instants) - min(instants) < SHORTEST:
        found.append(Reason("readings_too_close", {"hours": SHORTEST.total_seconds() / 3600.0}, "reading"))
    return tuple(found)


def _objections(record: Record, now: datetime) -> Iterator[Reason]:
    oldest = now - timedelta(days=366 * MOST_YEARS)
    for number, reading in enumerate(record.readings, start=1):
        if not (math.isfinite(reading.value) and math.isfinite(reading.sd) and reading.sd > 0.0):
            yield Reason("figure_unusable", {"what": "reading", "number": number}, f"reading.{number}.value")
        if reading.at > now + AHEAD_ALLOWED:
            yield Reason("reading_in_the_future", {"measured_at": reading.at}, f"reading.{number}.at")
        if reading.at < oldest:
            yield Reason("reading_too_old", {"at": reading.at, "years": MOST_YEARS}, f"reading.{number}.at")
    for number, dose in enumerate(record.doses, start=1):
        if not math.isfinite(dose.rise):
            yield Reason("figure_unusable", {"what": "dose", "number": number}, f"dose.{number}.raises")
        if dose.at > now + AHEAD_ALLOWED:
            yield Reason("entry_in_the_future", {"what": "dose", "at": dose.at}, f"dose.{number}.at")
    for number, exchange in enumerate(record.exchanges, start=1):
        if not (0.0 <= exchange.share <= 1.0 and math.isfinite(exchange.new_value)):
            yield Reason("figure_unusable", {"what": "exchange", "number": number}, f"exchange.{number}.share")
        if exchange.at > now + AHEAD_ALLOWED:
            yield Reason("entry_in_the_future", {"what": "exchange", "at": exchange.at}, f"exchange.{number}.at")


def days_since(instants: Sequence[datetime], origin: datetime) -> Floats:
    """Return instants as days.

    Parameters
    ----------
    instants : sequence of datetime
        Instants with zone.
    origin : datetime
        Instant zero.

    Returns
    -------
    array, shape (n,)
        Days since then [day].
    """
    # In UTC: the difference of two datetimes of one zone is one of wall clocks, an hour wrong over a change.
    zero = origin.astimezone(UTC)
    seconds = [(instant.astimezone(UTC) - zero).total_seconds() for instant in instants]
    return np.array(seconds, dtype=np.float64) / _DAY_S


def log_of(record: Record, origin: datetime) -> Log:
    """Return doses and exchanges in order of time.

    Parameters
    ----------
    record : Record
        The record.
    origin : datetime
        Instant zero of the days.

    Returns
    -------
    Log
        Arrays, in days since the origin.
    """
    doses = sorted(record.doses, key=lambda dose: dose.at)
    exchanges = sorted(record.exchanges, key=lambda exchange: exchange.at)
    return Log(
        dose_days=days_since([dose.at for dose in doses], origin),
        rises=np.array([dose.rise for dose in doses], dtype=np.float64),
        exchange_days=days_since([exchange.at for exchange in exchanges], origin),
        shares=np.array([exchange.share for exchange in exchanges], dtype=np.float64),
        new_values=np.array([exchange.new_value for exchange in exchanges], dtype=np.float64),
    )
