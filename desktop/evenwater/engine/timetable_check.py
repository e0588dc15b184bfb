"""The second opinion: walks through the days second by second of dosing, with an arithmetic of its own.

Nothing is taken from the planner but the rows it would tell the keeper: which minute, which pump, how many millilitres. Seconds,
distances, sums and what is carried from day to day are reckoned again from the question, in decimals, and held against every wish.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Context, Decimal

from evenwater.engine.timetable_question import Quiet, TimedPump, TimetableQuestion

_DAY_S = Decimal(86400)
# Twelve digits undo binary noise; the walk itself is exact to far more.
_READ = Context(prec=12)
_WALK = Context(prec=40)
_NOISE = Decimal("1e-15")
# Days walked through dose by dose, and days whose sums are followed.
_WALKED, _SUMMED = 3, 400


@dataclass(frozen=True)
class Told:
    """One row of the timetable: minute of the day, place of the pump, dose [mL], and how much more on some days [mL]."""

    minute: int
    pump: int
    ml: float
    more_ml: float


@dataclass(frozen=True)
class Seen:
    """What the walk saw.

    ``faults`` names what does not hold; ``nearest_s`` is the shortest time [s] from the end of a dose to the start of the other
    pump's, for each pair that stays apart; ``in_24_hours_ml`` the most of each pump within 24 hours [mL].
    """

    faults: tuple[str, ...]
    nearest_s: tuple[float, ...]
    in_24_hours_ml: tuple[float, ...]


def _number(value: float) -> Decimal:
    return _READ.create_decimal(repr(value))


def look(question: TimetableQuestion, rows: Sequence[Told]) -> Seen:
    """Walk through a timetable and say what does not hold.

    Parameters
    ----------
    question : TimetableQuestion
        The wishes.
    rows : sequence of Told
        The doses of a day, in any order.

    Returns
    -------
    Seen
        Faults, how near the doses of each pair come, and the most in 24 hours.
    """
    faults: list[str] = []
    most: list[float] = []
    for place, pump in enumerate(question.pumps):
        own = [row for row in rows if row.pump == place]
        faults += [f"{fault} of {pump.name}" for fault in _single(pump, own, (*question.quiet, *pump.quiet))]
        faults += [f"{fault} of {pump.name}" for fault in _sums(pump, own)]
        most.append(float(sum((_number(row.ml) + _number(row.more_ml) for row in own), Decimal(0))))
    nearest, near = _walk(question, rows)
    return Seen((*faults, *near), nearest, tuple(most))


def _single(pump: TimedPump, rows: Sequence[Told], quiet: Sequence[Quiet]) -> Iterator[str]:
    """Yield what is wrong with single doses: their number, size and hours, and how long the pump runs."""
    if not pump.fewest <= len(rows) <= pump.most:
        yield "the number"
    step, runs = _number(pump.step_ml), Decimal(0)
    for row in rows:
        small, large = _number(row.ml), _number(row.ml) + _number(row.more_ml)
        if small <= 0 or small % step or large not in (small, small + step):
            yield "the steps"
        if small < _number(pump.smallest_ml) or (pump.largest_ml is not None and large > _number(pump.largest_ml)):
            yield "the size"
        runs += _seconds(pump, large)
        if not 0 <= row.minute < 1440 or _in_quiet_hours(quiet, row.minute, _seconds(pump, large)):
            yield "the hour"
    if runs > _DAY_S * _number(pump.largest_share) * (1 + _NOISE):
        yield "the running time"


def _seconds(pump: TimedPump, ml: Decimal) -> Decimal:
    return _WALK.divide(ml * 60, _number(pump.flow_ml_per_min))


def _in_quiet_hours(quiet: Sequence[Quiet], minute: int, lasts: Decimal) -> bool:
    """Return whether a dose runs in quiet hours, which may begin the day before, this day or the next."""
    begin, end = Decimal(minute * 60), minute * 60 + lasts
    for hours in quiet:
        until = hours.end if hours.end > hours.start else hours.end + 1440
        for shift in (-1440, 0, 1440):
            if begin < (until + shift) * 60 and end > (hours.start + shift) * 60:
                return True
    return False


def _sums(pump: TimedPump, rows: Sequence[Told]) -> Iterator[str]:
    """Yield what is wrong with sums: after every dose of a long time they are near what should have been given by then."""
    want, step = _number(pump.per_day_ml), _number(pump.step_ml)
    order = sorted(rows, key=lambda row: row.minute)
    base = sum((_number(row.ml) for row in order), Decimal(0))
    if len([row for row in order if row.more_ml]) > 1:
        yield "the carried steps"
    given, owed = Decimal(0), Decimal(0)
    for day in range(_SUMMED):
        owed += want
        # A day has one more step as soon as a whole one is owed.
        more = owed - given - base >= step
        if more and not any(row.more_ml for row in order):
            yield "the sum"
            return
        if day < _WALKED:
            before = owed - want
            for number, row in enumerate(order, start=1):
                given += _number(row.ml) + (_number(row.more_ml) if more else 0)
                line = before + want * number / len(order)
                if given > line + step or given < line - 2 * step:
                    yield "the sum within a day"
                    return
        else:
            given += base + (step if more else 0)
        if not Decimal(0) <= owed - given < step:
            yield "the sum"
            return


def _walk(question: TimetableQuestion, rows: Sequence[Told]) -> tuple[tuple[float, ...], list[str]]:
    """Go through some days in order of time, remembering when each pump last ended and began."""
    pumps, faults = question.pumps, []
    nearest = [_DAY_S] * len(question.apart)
    ended = [-9 * _DAY_S] * len(pumps)
    began: list[int | None] = [None] * len(pumps)
    for day in range(_WALKED):
        for row in sorted(rows, key=lambda row: row.minute):
            now, name = day * 86400 + row.minute * 60, pumps[row.pump].name
            for number, pair in enumerate(question.apart):
                if row.pump in (pair.first, pair.second):
                    other = pair.first if row.pump == pair.second else pair.second
                    nearest[number] = min(nearest[number], now - ended[other])
                    if now - ended[other] < _number(pair.minutes) * 60:
                        faults.append(f"{name} too near to {pumps[other].name}")
            if ended[row.pump] > now:
                faults.append(f"{name} overlaps itself")
            if question.one_at_a_time and max(ended) > now:
                faults.append(f"{name} runs together with another")
            last, closest = began[row.pump], pumps[row.pump].closest_min
            if last is not None and closest is not None and now - last < closest * 60:
                faults.append(f"{name} comes too soon")
            began[row.pump] = now
            ended[row.pump] = now + _seconds(pumps[row.pump], _number(row.ml) + _number(row.more_ml))
    return tuple(map(float, nearest)), faults
