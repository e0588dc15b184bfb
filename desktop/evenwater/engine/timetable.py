"""The timetable of all pumps: how many doses, how much, how long, at which minute of the day.

One frozen question in, a ``TimetableAnswer`` or a ``Refused`` out. Minutes are those of the pumps' own clock, see
``timetable_instants``; the day is a circle. Every dose is given the time of the pump's largest one.
"""

from __future__ import annotations

from itertools import pairwise

from evenwater.engine import timetable_check, timetable_judge, timetable_wishes
from evenwater.engine.correction import Refused
from evenwater.engine.reasons import Reason
from evenwater.engine.timetable_check import Seen, Told
from evenwater.engine.timetable_doses import Split, exact, split, takes_s
from evenwater.engine.timetable_plan import PumpDay, TimedDose, TimetableAnswer
from evenwater.engine.timetable_question import APART_BETTER_MIN, DAY_MIN, OPPOSING, TimetableQuestion
from evenwater.engine.timetable_search import groups, search

# Doses that all come within so small a share of the hours in which the pump may run are said to do so; few ones say nothing.
# Common practice, no source.
_BUNCHED_SHARE, _MANY = 0.6, 4

__all__ = ["PumpDay", "Refused", "TimedDose", "TimetableAnswer", "TimetableQuestion", "solve"]


def solve(question: TimetableQuestion) -> TimetableAnswer | Refused:
    """Plan a timetable.

    Parameters
    ----------
    question : TimetableQuestion
        All pumps with what they give in a day, and every wish.

    Returns
    -------
    TimetableAnswer or Refused
        The doses of a day in order of time, checked by a second reckoning; or which wish stands in the way.
    """
    objections = timetable_judge.objections(question)
    if objections:
        return Refused(objections)
    together = groups(question)
    minutes: dict[int, tuple[int, ...]] = {}
    refusals: list[Reason] = []
    for number, group in enumerate(together):
        found = search(question, group, number / len(together) / len(group))
        if found.starts is None:
            refusals += timetable_wishes.in_the_way(question, group, found)
        else:
            minutes |= dict(zip(group, found.starts, strict=True))
    if refusals:
        return Refused(tuple(refusals))
    pumps = tuple(_day(question, place, minutes[place]) for place in range(len(question.pumps)))
    rows = tuple(
        sorted((row for place, each in enumerate(pumps) for row in _rows(place, each, minutes[place])), key=_order)
    )
    seen = timetable_check.look(question, [Told(row.minute, row.pump, row.ml, row.more_ml) for row in rows])
    if seen.faults:
        return Refused((Reason("timetable_disagrees", {"faults": seen.faults}),))
    return TimetableAnswer(question, rows, pumps, _remarks(question, pumps, seen), seen)


def _order(row: TimedDose) -> tuple[int, int]:
    return row.minute, row.pump


def _day(question: TimetableQuestion, place: int, minutes: tuple[int, ...]) -> PumpDay:
    pump = question.pumps[place]
    doses = split(pump, len(minutes))
    between = [later - earlier for earlier, later in pairwise([*minutes, minutes[0] + DAY_MIN])]
    steps = sum(doses.ordinary)
    return PumpDay(pump, doses, min(between), max(between), _ml(pump.step_ml, steps), float(takes_s(pump, steps)))


def _rows(place: int, day: PumpDay, minutes: tuple[int, ...]) -> list[TimedDose]:
    pump, doses = day.pump, day.doses
    more = (_ml(pump.step_ml, 1), float(takes_s(pump, 1))) if doses.carries else (0.0, 0.0)
    return [
        TimedDose(minute, place, _ml(pump.step_ml, steps), float(takes_s(pump, steps)), *(more if number == 0 else ()))
        for number, (minute, steps) in enumerate(zip(minutes, doses.ordinary, strict=True))
    ]


def _ml(step_ml: float, steps: int) -> float:
    return float(steps * exact(step_ml))


def _remarks(question: TimetableQuestion, pumps: tuple[PumpDay, ...], seen: Seen) -> tuple[Reason, ...]:
    found = []
    for number, each in enumerate(pumps, start=1):
        path, pump, doses = f"pump.{number}", each.pump, each.doses
        if doses.count != pump.doses:
            params = {"name": pump.name, "wished": pump.doses, "given": doses.count}
            found.append(Reason("timetable_other_number", params, f"{path}.doses_per_day"))
        if each.longest_min > 2 * each.shortest_min and not question.hours(number - 1):
            params = {"name": pump.name, "shortest_min": each.shortest_min, "longest_min": each.longest_min}
            found.append(Reason("timetable_uneven", params, path))
        # From the first of the doses to the last, round the clock.
        lasts, open_min = DAY_MIN - each.longest_min, _open_min(question, number - 1)
        if doses.count >= _MANY and lasts < _BUNCHED_SHARE * open_min:
            found.append(
                Reason("timetable_bunched", {"name": pump.name, "lasts_min": lasts, "open_min": open_min}, path)
            )
        if doses.carries:
            params = {"name": pump.name, **_carried(doses), "step_ml": pump.step_ml}
            found.append(Reason("timetable_carried", params, f"{path}.per_day"))
    for pair, nearest_s in zip(question.apart, seen.nearest_s, strict=True):
        first, second = question.pumps[pair.first], question.pumps[pair.second]
        if {first.raises, second.raises} == set(OPPOSING) and nearest_s < APART_BETTER_MIN * 60:
            params = {"first": first.name, "second": second.name, "minutes": nearest_s / 60, "better": APART_BETTER_MIN}
            found.append(Reason("timetable_rather_further", params, pair.path))
    return tuple(found)


def _open_min(question: TimetableQuestion, place: int) -> int:
    """Return how long a pump may run in a day at all [min]."""
    closed = {(hours.start + minute) % DAY_MIN for hours in question.hours(place) for minute in range(hours.lasts)}
    return DAY_MIN - len(closed)


def _carried(doses: Split) -> dict[str, int]:
    return {"days": doses.repeats_after, "extra": doses.wanted.numerator % doses.wanted.denominator}
