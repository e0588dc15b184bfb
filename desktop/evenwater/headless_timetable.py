"""The question kind ``timetable``: when each pump of a system gives its doses, and how long it runs."""

from __future__ import annotations

from typing import Any

from evenwater.engine import timetable_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.form import Unread
from evenwater.engine.timetable import PumpDay, Refused, TimedDose, TimetableAnswer, solve
from evenwater.headless_outcome import ANSWERED, Outcome, refused
from evenwater.screens import answer_json, timetable_lines

Json = dict[str, Any]
# Days of a long round that are listed.
_LISTED = 31


def answer(raw: Json, known: Catalogue) -> Outcome:
    """Answer a question about a timetable.

    Parameters
    ----------
    raw : dict
        The parsed file, of the shape that ``question_file`` asks for.
    known : Catalogue
        Parameters and chemicals.

    Returns
    -------
    Outcome
        Answered or refused.
    """
    question = timetable_intake.timetable(raw, known)
    if isinstance(question, Unread):
        return refused(*question.reasons)
    result = solve(question)
    if isinstance(result, Refused):
        return refused(*result.reasons)
    return Outcome(ANSWERED, as_json(result), lines=timetable_lines.lines(result))


def as_json(result: TimetableAnswer) -> Json:
    """Return the JSON object of a timetable, quantities as value and unit."""
    q, seen = result.question, result.seen
    return {
        "status": "answered",
        "doses": [_dose(q.pumps[row.pump].name, row) for row in result.rows],
        "pumps": [_pump(day) for day in result.pumps],
        "apart": [
            {
                "first": q.pumps[pair.first].name,
                "second": q.pumps[pair.second].name,
                "at_least": _quantity(pair.minutes, "min"),
                "nearest": _quantity(nearest_s / 60.0, "min"),
            }
            for pair, nearest_s in zip(q.apart, seen.nearest_s, strict=True)
        ],
        "check": {"agrees": True, "most_in_24_hours": [_quantity(ml, "mL") for ml in seen.in_24_hours_ml]},
        "reasons": [answer_json.reason(remark, None) for remark in result.remarks],
        "rules": list(timetable_lines.RULES),
    }


def _dose(name: str, row: TimedDose) -> Json:
    return {
        "at": timetable_lines.clock(row.minute),
        "minute": row.minute,
        "pump": name,
        "dose": _quantity(row.ml, "mL"),
        "run_time": _quantity(row.run_time_s, "s"),
        "more_on_some_days": _quantity(row.more_ml, "mL"),
    }


def _pump(day: PumpDay) -> Json:
    pump, doses = day.pump, day.doses
    carried = {"days": doses.repeats_after, "one_step_more_on": list(doses.extra_days(_LISTED))}
    return {
        "pump": pump.name,
        "doses_per_day": doses.count,
        "dose_in_24_hours": _quantity(pump.per_day_ml, "mL"),
        "single_dose": _quantity(pump.per_day_ml / doses.count, "mL"),
        "dose_in_24_hours_rounded": _quantity(day.in_day_ml, "mL"),
        "step": _quantity(pump.step_ml, "mL"),
        "run_time_in_24_hours": _quantity(day.runs_s, "s"),
        "shortest_interval": _quantity(day.shortest_min, "min"),
        "longest_interval": _quantity(day.longest_min, "min"),
        "carried": carried if doses.carries else None,
    }


def _quantity(value: float, unit: str) -> Json:
    return {"value": value, "unit": unit}
