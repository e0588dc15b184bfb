"""The question kind ``recovery``: what to do first when a value is too high, and the choices side by side."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from evenwater.engine import recovery, recovery_intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.quantities import from_canonical
from evenwater.engine.recovery import STOP, Choice, RecoveryAnswer
from evenwater.engine.recovery_check import Lived
from evenwater.engine.recovery_plan import Course, Point, hard
from evenwater.engine.recovery_question import RecoveryQuestion
from evenwater.headless_outcome import ANSWERED, Outcome, refused
from evenwater.screens import answer_json, recovery_lines, recovery_words

Json = dict[str, Any]


def answer(raw: Json, known: Catalogue, now: datetime) -> Outcome:
    """Answer a question about a value that is too high.

    Parameters
    ----------
    raw : dict
        The parsed file, of the shape that ``question_file`` asks for.
    known : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, for a question that does not say.

    Returns
    -------
    Outcome
        Answered or refused.
    """
    question = recovery_intake.recovery(raw, known, now)
    if isinstance(question, Unread):
        return refused(*question.reasons)
    result = recovery.solve(question)
    if isinstance(result, Refused):
        return refused(*result.reasons)
    return Outcome(ANSWERED, as_json(result), lines=recovery_lines.lines(result))


def as_json(result: RecoveryAnswer) -> Json:
    """Return the JSON object of the choices: what comes first before all, quantities as value and unit."""
    q = result.question
    return {
        "status": "answered",
        "cautions": list(recovery_lines.cautions(result)),
        "first": [{"code": step, "text": recovery_words.STOP[step]} for step in STOP],
        "parameter": q.parameter.name,
        "value_now": _value(q, q.parameter, q.values[q.parameter.name]),
        "value_between": [
            _value(q, q.parameter, v) for v in sorted(q.values_in(v)[q.parameter.name] for v in q.volumes_l)
        ],
        "target": _value(q, q.parameter, q.target),
        "measured": q.measured,
        "assumed": list(q.assumed),
        "held": list(q.held),
        "values_now": {p.name: _value(q, p, q.values[p.name]) for p in q.known},
        "aragonite_saturation": result.saturation,
        "test_before_anything": result.test_first,
        "choices": [_choice(q, choice) for choice in result.choices],
        "reasons": [answer_json.reason(reason, None) for reason in result.remarks],
    }


def _quantity(value: float, unit: str) -> Json:
    return {"value": value, "unit": unit}


def _value(q: RecoveryQuestion, p: Parameter, canonical: float) -> Json:
    return _quantity(from_canonical(canonical, p.kind, p.display_unit, q.water), p.display_unit)


def _choice(q: RecoveryQuestion, choice: Choice) -> Json:
    course = choice.course if choice.proposed else None
    changes = choice.changes if choice.proposed else None
    return {
        "name": choice.name,
        "text": recovery_words.CHOICES[choice.name],
        "proposed": choice.proposed,
        "takes": None if course is None else _quantity(course.days, "day"),
        "takes_between": None if course is None else [_quantity(days, "day") for days in course.between_days],
        "exchanged": None if course is None else _quantity(course.litres, "L"),
        "largest_changes": {} if choice.seen is None else _largest(q, choice.seen),
        "stages": [] if course is None else _stages(course),
        "single_changes": None if changes is None else _changes(changes),
        "tests_after": [_quantity(day, "day") for day in choice.tests] if choice.proposed else [],
        "course": [] if course is None else [_point(q, point) for point in course.points],
        "reasons": [answer_json.reason(reason, None) for reason in choice.reasons],
    }


def _largest(q: RecoveryQuestion, seen: Lived) -> dict[str, Json]:
    """Return the most each value moves in 24 hours and the most it may, in the worst of the tanks this may be."""
    return {
        p.name: {
            "in_24_hours": _change(p, max(seen.rise[p.name], seen.fall[p.name])),
            "most": _change(p, hard(p)),
            "lowest": _value(q, p, seen.lowest[p.name]),
            "highest": _value(q, p, seen.highest[p.name]),
        }
        for p in q.known
    }


def _change(p: Parameter, canonical: float) -> Json:
    return _quantity(canonical / p.canonical(1.0), p.display_unit)


def _stages(course: Course) -> list[Json]:
    return [
        {
            "lasts": _quantity(24.0 * s.days, "h"),
            "exchange_per_day": _quantity(s.l_per_day, "L per day"),
            "set_by": s.set_by,
        }
        for s in course.stages
    ]


def _changes(course: Course) -> Json:
    return {
        "takes": _quantity(course.days, "day"),
        "exchanged": _quantity(course.litres, "L"),
        "changes": [{"after": _quantity(c.at_days, "day"), "volume": _quantity(c.litres, "L")} for c in course.changes],
    }


def _point(q: RecoveryQuestion, point: Point) -> Json:
    values = {p.name: _value(q, p, point.values[p.name]) for p in q.known}
    return {"after": _quantity(point.at_days, "day"), "values": values}
