"""What a continuous exchange does: every value against time, where it settles, the pair, the jugs and the dosing it changes."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

import numpy as np

from evenwater.engine import exchange_check, exchange_pair, exchange_remarks
from evenwater.engine.balance import Floats, steady
from evenwater.engine.correction import AGREEMENT, Refused
from evenwater.engine.exchange_course import course, fall_in_a_day, gains, losses, rise_in_a_day, runs_out, stretches
from evenwater.engine.exchange_pair import Bucket, DosingChange, Jugs, Match
from evenwater.engine.exchange_question import ExchangeQuestion, Moved
from evenwater.engine.reasons import Reason

# So many steps of the course are given; up to this many days they are whole days.
_STEPS = 60
# Nobody looks further ahead than this for a value that runs out [day].
_CENTURY = 36_525.0


@dataclass(frozen=True)
class Course:
    """One value in time, in its canonical unit.

    ``points`` stand at the answer's times. ``band`` is the end with the net volume at either end of its 95 % interval. ``settles`` is
    the steady value, None where it never settles or would fall below nothing; half of the way there is done after ``half_way`` [day].
    ``runs_out`` [day] is when nothing would be left, ``rise`` and ``fall`` [canonical unit] the greatest rise and fall in 24 hours.
    """

    moved: Moved
    points: tuple[float, ...]
    band: tuple[float, float]
    settles: float | None
    half_way: float | None
    runs_out: float | None
    rise: float
    fall: float

    @property
    def end(self) -> float:
        """The value on the last day [canonical unit]."""
        return self.points[-1]


@dataclass(frozen=True)
class ExchangeAnswer:
    """What an exchange does.

    ``times`` [day] are those of the courses' points. ``left`` is the share of the old water that is still there on the last day [1], with
    ``left_band`` for the net volume's interval; ``batch_weekly`` and ``batch_whole`` are the batch changes that leave as much after a week
    and on the last day [1].
    """

    question: ExchangeQuestion
    times: tuple[float, ...]
    courses: tuple[Course, ...]
    left: float
    left_band: tuple[float, float]
    batch_weekly: float
    batch_whole: float
    match: Match
    jugs: Jugs
    dosing: tuple[DosingChange, ...]
    bucket: Bucket | None
    remarks: tuple[Reason, ...] = ()


def solve(question: ExchangeQuestion) -> ExchangeAnswer | Refused:
    """Answer a question about an exchange.

    Parameters
    ----------
    question : ExchangeQuestion
        The tank, the pair and the values.

    Returns
    -------
    ExchangeAnswer or Refused
        The courses, or why nothing can be said.
    """
    q = question
    refused = tuple(_objections(q))
    if refused:
        return Refused(refused)
    times = _times(q)
    courses = _courses(q, times)
    spread = (1.0 - q.uncertainty, 1.0 + q.uncertainty)
    lefts = sorted(math.exp(-q.share_out / at * q.days) for at in spread)
    changes = [exchange_pair.dosing(q, moved) for moved in q.values]
    answer = ExchangeAnswer(
        question=q,
        times=tuple(float(t) for t in times),
        courses=courses,
        left=math.exp(-q.share_out * q.days),
        left_band=(lefts[0], lefts[1]),
        batch_weekly=-math.expm1(-q.share_out * exchange_pair.WEEK_DAYS),
        batch_whole=-math.expm1(-q.share_out * q.days),
        match=exchange_pair.match(q),
        jugs=exchange_pair.jugs(q),
        dosing=tuple(change for change in changes if change is not None),
        bucket=None if q.mixing is None else exchange_pair.bucket(q.mixing, q.new_salinity, q.water),
    )
    objection = disagreement(answer)
    if objection is not None:
        return Refused((objection,))
    return replace(answer, remarks=tuple(_remarks(answer)))


def disagreement(answer: ExchangeAnswer) -> Reason | None:
    """Hold the second opinion against the courses.

    Parameters
    ----------
    answer : ExchangeAnswer
        The answer.

    Returns
    -------
    Reason or None
        Why it must not be given out, or None when both agree and the books balance.
    """
    failed = tuple(each.moved.parameter.name for each in answer.courses if not _agrees(answer, each))
    return Reason("exchange_disagrees", {"what": failed}) if failed else None


def _agrees(answer: ExchangeAnswer, each: Course) -> bool:
    """Return whether the books balance, every point is seen twice alike, and the value settles and ends where it is said to."""
    q, moved = answer.question, each.moved
    books = exchange_check.ledger(q, moved)
    most = (books.before + books.came + books.went) / q.volume_l
    per_day = moved.added + moved.use + q.share_in * moved.new_water
    gone = each.runs_out
    return (
        abs(books.off) <= AGREEMENT * most * q.volume_l
        and all(
            abs(exchange_check.value_at(q, moved, day) - point) <= AGREEMENT * most
            for day, point in zip(answer.times, each.points, strict=True)
        )
        and (
            each.settles is None
            or abs(exchange_check.net_per_day(q, moved, each.settles)) <= AGREEMENT * per_day * q.volume_l
        )
        and (gone is None or abs(exchange_check.value_at(q, moved, gone)) <= AGREEMENT * (most + per_day * gone))
    )


def _objections(q: ExchangeQuestion) -> Iterator[Reason]:
    names = [moved.parameter.name for moved in q.values]
    for number, name in enumerate(names, start=1):
        if name in names[: number - 1]:
            yield Reason("exchange_value_twice", {"parameter": name}, f"value.{number}.parameter")
    for number, dose in enumerate(q.doses, start=1):
        if dose.parameter.name not in names:
            yield Reason("exchange_dose_of_none", {"parameter": dose.parameter.name}, f"dose.{number}.parameter")
        if dose.at_day > q.days:
            yield Reason("exchange_dose_too_late", {"days": q.days}, f"dose.{number}.after_days")
    for number, moved in enumerate(q.values, start=1):
        if moved.batch is not None and moved.per_ml(q.water) <= 0.0:
            params = {"chemical": getattr(moved.batch, "name", ""), "parameter": moved.parameter.name}
            yield Reason("does_not_raise", params, f"value.{number}.additive.chemical")
    top_off = q.top_off_l
    if top_off is not None and top_off < 0.0:
        yield Reason("exchange_floods", {"per_day_ml": -1000.0 * top_off}, "exchange.in")
    if q.mixing is not None and q.new_salinity <= 0.0:
        yield Reason("exchange_mix_of_fresh", {}, "new_water.salinity")


def _times(q: ExchangeQuestion) -> Floats:
    """Return the times of the course [day]: whole days where there are few, every dose, and the last day."""
    grid = np.arange(0.0, q.days) if q.days <= _STEPS else np.linspace(0.0, q.days, _STEPS + 1)
    return np.unique(np.concatenate([grid, [dose.at_day for dose in q.doses], [q.days]]))


def _courses(q: ExchangeQuestion, times: Floats) -> tuple[Course, ...]:
    start = np.array([moved.now for moved in q.values], dtype=np.float64)
    parts = stretches(q)
    points = course(start, parts, times)
    band = [_end(replace(q, volume_l=q.volume_l * at), start) for at in (1.0 - q.uncertainty, 1.0 + q.uncertainty)]
    ends = runs_out(start, parts, _CENTURY)
    rises, falls = rise_in_a_day(start, parts, q.days), fall_in_a_day(start, parts, q.days)
    gain, loss = gains(q), losses(q)
    out = []
    for row, moved in enumerate(q.values):
        leaves = float(loss[row])
        value = steady(float(gain[row]), leaves) if leaves > 0.0 else None
        out.append(
            Course(
                moved=moved,
                points=tuple(float(point) for point in points[row]),
                band=(min(float(b[row]) for b in band), max(float(b[row]) for b in band)),
                settles=value if value is not None and value >= 0.0 else None,
                half_way=math.log(2.0) / leaves if leaves > 0.0 else None,
                runs_out=ends[row],
                rise=float(rises[row]),
                fall=float(falls[row]),
            )
        )
    return tuple(out)


def _end(q: ExchangeQuestion, start: Floats) -> Floats:
    """Return every value on the last day, shape (n,) [canonical units]."""
    return course(start, stretches(q), np.array([q.days]))[:, 0]


def _remarks(answer: ExchangeAnswer) -> Iterator[Reason]:
    q = answer.question
    yield from exchange_remarks.of_pair(q, answer.match)
    yield from exchange_remarks.of_water(q)
    for each in answer.courses:
        yield from exchange_remarks.of_pace(q, each.moved, each.rise, each.fall)
        yield from exchange_remarks.of_value(q, each.moved, each.settles, each.runs_out)
    yield from exchange_remarks.of_dosing(answer.dosing)
    if q.mixing is not None:
        yield from exchange_remarks.of_bucket(q.mixing, q.new_salinity)
