"""What an exchange does to one value, as a chart: its course with the volume's band, the new water, and where it settles."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from evenwater.engine.exchange import Course, ExchangeAnswer
from evenwater.engine.exchange_course import course, stretches
from evenwater.screens.exchange_lines import shown_of, tellable
from evenwater.screens.shown import significant, span, with_unit
from evenwater.screens.terms import capitalized
from evenwater.screens.views import Floats
from evenwater.wording import say

# So many steps of the axis; an exchange bends slowly.
_STEPS = 160


@dataclass(frozen=True)
class CourseChart:
    """One value against days, in the unit it is said in.

    ``days``, ``values``, ``low`` and ``high`` have shape (n,); the last two are the course with the net volume at either end of its 95 %
    interval. ``settles`` is None where the value never settles. ``spoken`` says the whole in words.
    """

    parameter: str
    title: str
    unit: str
    days: Floats
    values: Floats
    low: Floats
    high: Floats
    new_water: float
    settles: float | None
    spoken: str

    def words_at(self, point: int) -> str:
        """Return what the course is at one of its points, counted from the end where it is below zero."""
        day = float(self.days[point])
        value, low, high = (significant(float(row[point]), 3) for row in (self.values, self.low, self.high))
        when = say("now") if day == 0.0 else say("after {day}", day=span(day))
        return f"{when}: {with_unit(value, self.unit)}{('' if low == high else say(' ({low} to {high})', low=low, high=high))}"


def charts(answer: ExchangeAnswer) -> dict[str, CourseChart]:
    """Return the chart of every value.

    Parameters
    ----------
    answer : ExchangeAnswer
        What the exchange does.

    Returns
    -------
    dict of str to CourseChart
        By the name of the parameter, in the order of the question.
    """
    q = answer.question
    days = np.unique(np.concatenate([np.linspace(0.0, q.days, _STEPS + 1), [dose.at_day for dose in q.doses]]))
    start = np.array([moved.now for moved in q.values], dtype=np.float64)
    at = {
        share: course(start, stretches(replace(q, volume_l=q.volume_l * share)), days)
        for share in (1.0, 1.0 - q.uncertainty, 1.0 + q.uncertainty)
    }
    least = np.array([tellable(each) for each in answer.courses])[:, np.newaxis]
    rows = {share: np.where(values >= least, values, 0.0) for share, values in at.items()}
    ends = np.stack(list(rows.values()))
    return {
        each.moved.parameter.name: _chart(
            answer, each, days, rows[1.0][row], (ends.min(axis=0)[row], ends.max(axis=0)[row])
        )
        for row, each in enumerate(answer.courses)
    }


def _chart(
    answer: ExchangeAnswer, each: Course, days: Floats, values: Floats, ends: tuple[Floats, Floats]
) -> CourseChart:
    shown, moved = shown_of(answer, each), each.moved
    name = moved.parameter.name
    # Specific gravity is said in ppt here, so that every unit is proportional to the canonical one.
    per_unit = shown.number(1.0)
    new = say(
        "new water{assumed} {new_water}",
        assumed=say(", assumed") if moved.assumed else "",
        new_water=shown.value(moved.new_water),
    )
    goes = "" if each.settles is None else say(" It settles at {settles}.", settles=shown.value(each.settles))
    first, last = (shown.value(float(values[at])) for at in (0, -1))
    return CourseChart(
        parameter=name,
        title=say("{name} in {unit} against days", name=capitalized(name), unit=shown.unit_words),
        unit=shown.unit_words,
        days=days,
        values=per_unit * values,
        low=per_unit * ends[0],
        high=per_unit * ends[1],
        new_water=shown.number(moved.new_water),
        settles=None if each.settles is None else shown.number(each.settles),
        spoken=say(
            "{name} goes from {first} to {last} in {days}, {new}.{goes}",
            name=capitalized(name),
            first=first,
            last=last,
            days=span(answer.question.days),
            new=new,
            goes=goes,
        ),
    )
