"""What is wrong with a timetable before any minute is looked for: figures, names, and what a single pump cannot do."""

from __future__ import annotations

import math
from collections.abc import Iterator

from evenwater.engine.reasons import Reason
from evenwater.engine.timetable_doses import exact, fits, split, takes_s
from evenwater.engine.timetable_question import (
    APART_MIN,
    DAY_MIN,
    MOST_DOSES,
    MOST_PUMPS,
    OPPOSING,
    TimedPump,
    TimetableQuestion,
)

# Beyond these no figure is a dose, a flow or a volume of a tank [mL, mL/min].
_LEAST, _MOST = 1e-6, 1e9


def objections(question: TimetableQuestion) -> tuple[Reason, ...]:
    """Return what keeps a question from being planned; empty when nothing does.

    Parameters
    ----------
    question : TimetableQuestion
        The question.

    Returns
    -------
    tuple of Reason
        Reasons with the fields they are about.
    """
    q = question
    if not q.pumps:
        return (Reason("timetable_no_pumps", {}, "pump"),)
    if len(q.pumps) > MOST_PUMPS:
        return (Reason("timetable_too_many", {"count": len(q.pumps), "most": MOST_PUMPS}, "pump"),)
    broken = [
        Reason("timetable_figure", {"what": pump.name or str(n)}, f"pump.{n}")
        for n, pump in enumerate(q.pumps, start=1)
        if not (
            _usable(pump)
            and all(0 <= minute < DAY_MIN for hours in q.hours(n - 1) for minute in (hours.start, hours.end))
        )
    ]
    if broken:
        return tuple(broken)
    names = [pump.name.casefold() for pump in q.pumps]
    twice = [n for n, name in enumerate(names) if name in names[:n]]
    if twice:
        # Which of them a pair means is not known.
        return tuple(Reason("timetable_same_name", {"name": q.pumps[n].name}, f"pump.{n + 1}.name") for n in twice)
    found = list(_pairs(q))
    for n, pump in enumerate(q.pumps, start=1):
        found += _alone(pump, f"pump.{n}")
    return tuple(found)


def _usable(pump: TimedPump) -> bool:
    figures = (pump.per_day_ml, pump.flow_ml_per_min, pump.step_ml, pump.largest_share)
    more = (pump.smallest_ml, _MOST if pump.largest_ml is None else pump.largest_ml)
    return (
        all(_LEAST <= figure <= _MOST for figure in figures)
        and all(0.0 <= figure <= _MOST for figure in more)
        and pump.largest_share <= 1.0
        and 1 <= pump.fewest <= pump.doses <= pump.most <= MOST_DOSES
        and (pump.closest_min is None or 0 <= pump.closest_min <= DAY_MIN)
    )


def _pairs(q: TimetableQuestion) -> Iterator[Reason]:
    for pair in q.apart:
        places = (pair.first, pair.second)
        known = all(0 <= place < len(q.pumps) for place in places)
        if not known or not math.isfinite(pair.minutes) or not 0.0 <= pair.minutes <= DAY_MIN:
            yield Reason("timetable_figure", {"what": "keep_apart"}, pair.path)
            continue
        first, second = (q.pumps[place] for place in places)
        if pair.first == pair.second:
            yield Reason("timetable_apart_itself", {"name": first.name}, pair.path)
        elif {first.raises, second.raises} == set(OPPOSING) and pair.minutes < APART_MIN:
            params = {"first": first.name, "second": second.name, "minutes": pair.minutes, "least": APART_MIN}
            yield Reason("timetable_apart_least", params, pair.path)


def _alone(pump: TimedPump, path: str) -> Iterator[Reason]:
    """Yield what one pump cannot do, whatever the others do."""
    doses = split(pump, 1)
    if doses.wanted < 1:
        params = {"name": pump.name, "per_day_ml": pump.per_day_ml, "step_ml": pump.step_ml}
        yield Reason("timetable_step", params, f"{path}.step")
        return
    may_run_s = exact(pump.largest_share) * DAY_MIN * 60
    if takes_s(pump, math.ceil(doses.wanted)) > may_run_s:
        most_ml = float(may_run_s / 60 * exact(pump.flow_ml_per_min))
        params = {"name": pump.name, "per_day_ml": pump.per_day_ml, "most_ml": most_ml, "share": pump.largest_share}
        yield Reason("timetable_pump_share", params, f"{path}.flow")
    numbers = range(pump.fewest, pump.most + 1)
    against = {count: fits(pump, count) for count in numbers}
    if not all(against.values()):
        return
    would_do = [count for count in range(1, MOST_DOSES + 1) if not fits(pump, count)]
    nearest = min(would_do, key=lambda count: abs(count - pump.doses), default=0)
    params = {
        "name": pump.name, "per_day_ml": pump.per_day_ml, "step_ml": pump.step_ml, "would_do": nearest, "fewest": pump.fewest, "most": pump.most,
        "smallest_ml": pump.smallest_ml, "largest_ml": pump.largest_ml,
        "small_ml": float(split(pump, pump.fewest).least * exact(pump.step_ml)),
        "large_ml": float(split(pump, pump.most).largest * exact(pump.step_ml)),
    }  # fmt: skip
    said = set(against.values())
    squeezed = len(said) > 1 or (not nearest and pump.largest_ml is not None)
    code = "timetable_between" if squeezed else f"timetable_{said.pop()}"
    yield Reason(code, params, f"{path}.doses_per_day")
