"""Away until some instant: what to fill and with how much, what runs out first, and what falls due meanwhile. Missed doses are never summed (H16)."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime

from evenwater.engine.jug_level import Draw, Filled, drawn_ml, forecast
from evenwater.engine.question import PUMP_UNCERTAINTY


@dataclass(frozen=True)
class AbsentJug:
    """A jug that is left alone: as it was read, what it holds [mL], and the pumps that draw from it.

    ``uncertainty`` [1] is by how much pumps may deliver more than they are set to, ``accuracy_ml`` [mL] how far the level may be off;
    both are filled besides what is needed.
    """

    name: str
    filled: Filled
    holds_ml: float
    draws: tuple[Draw, ...]
    uncertainty: float = PUMP_UNCERTAINTY
    accuracy_ml: float = 0.0


@dataclass(frozen=True)
class Due:
    """What falls due: ``what`` is a retest, a card or whatever else has a date; whose it is, and when."""

    what: str
    name: str
    at: datetime


@dataclass(frozen=True)
class Filling:
    """What to do with one jug before leaving.

    ``needed_ml`` [mL] is taken until the return and ``level_ml`` [mL] in the jug now. ``add_ml`` [mL] is to be added before leaving, with the
    reserve; zero when it lasts. ``left_alone_until`` is the instant of the first dose that is missing if nothing is done, ``lasts_until``
    the same once it is filled; None where none is missing before the return. ``missed`` doses are then left out and never made up.
    """

    name: str
    needed_ml: float
    level_ml: float
    add_ml: float
    left_alone_until: datetime | None
    lasts_until: datetime | None
    missed: int

    @property
    def enough(self) -> bool:
        """Whether the jug lasts until the return once it is filled."""
        return self.lasts_until is None


@dataclass(frozen=True)
class Absence:
    """Everything that an absence asks for: jugs in the order in which they would run out, and what falls due, by date."""

    now: datetime
    until: datetime
    fillings: tuple[Filling, ...]
    overdue: tuple[Due, ...]
    due: tuple[Due, ...]

    @property
    def first_out(self) -> Filling | None:
        """The jug that is missed first if nothing is done, or None."""
        return next((filling for filling in self.fillings if filling.left_alone_until is not None), None)


def absence(jugs: Sequence[AbsentJug], due: Sequence[Due], now: datetime, until: datetime) -> Absence:
    """Return what to do before an absence and what it leaves undone.

    Parameters
    ----------
    jugs : sequence of AbsentJug
        All jugs.
    due : sequence of Due
        Retests, cards and the like with their dates.
    now, until : datetime
        When it begins and ends, with zone.

    Returns
    -------
    Absence
        Fillings and what falls due. A dose that a jug cannot give is left out; the next one is as large as ever.
    """
    begin, end = now.astimezone(UTC), until.astimezone(UTC)
    fillings = sorted((_filling(jug, begin, end) for jug in jugs), key=_order)
    dated = sorted(due, key=_date)
    return Absence(
        now=begin,
        until=end,
        fillings=tuple(fillings),
        overdue=tuple(each for each in dated if each.at <= begin),
        due=tuple(each for each in dated if begin < each.at <= end),
    )


def _filling(jug: AbsentJug, begin: datetime, end: datetime) -> Filling:
    seen = forecast(jug.filled, jug.draws, begin)
    needed = drawn_ml(jug.draws, seen.now, end)
    now = Filled(seen.now, seen.level_ml, jug.filled.unreachable_ml)
    alone = _missing(now, jug, end)
    reserve = jug.uncertainty * needed + jug.accuracy_ml
    wanted = needed + reserve + now.unreachable_ml - now.ml if needed > 0.0 else 0.0
    add = min(max(0.0, wanted), max(0.0, jug.holds_ml - now.ml))
    lasts = _missing(replace(now, ml=now.ml + add), jug, end)
    missed = 0 if lasts is None else sum(draw.doses(lasts, end) + (draw.last(lasts) == lasts) for draw in jug.draws)
    return Filling(jug.name, needed, now.ml, add, alone, lasts, missed)


def _missing(filled: Filled, jug: AbsentJug, end: datetime) -> datetime | None:
    """Return the first dose that is missing before the end, or None."""
    missing = forecast(filled, jug.draws, filled.at).refill_before
    return missing if missing is not None and missing <= end else None


def _order(filling: Filling) -> tuple[bool, datetime, str]:
    out = filling.left_alone_until
    return out is None, out or datetime.max.replace(tzinfo=UTC), filling.name


def _date(each: Due) -> datetime:
    return each.at.astimezone(UTC)
