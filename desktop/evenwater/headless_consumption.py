"""The question kind ``consumption``: what is used in a day, from readings, doses and exchanges."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

from evenwater.engine import consumption_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.consumption import ConsumptionAnswer, solve
from evenwater.engine.consumption_estimate import Span
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.headless_outcome import ANSWERED, Outcome, refused
from evenwater.screens import answer_json, consumption_lines
from evenwater.screens.local_zone import LocalZone
from evenwater.screens.shown import Shown

Json = dict[str, Any]


def answer(raw: Json, known: Catalogue, now: datetime) -> Outcome:
    """Answer a question about what is used.

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
    question = consumption_intake.consumption(raw, known, now)
    if isinstance(question, Unread):
        return refused(*question.reasons)
    result = solve(question)
    if isinstance(result, Refused):
        return refused(*result.reasons, shown=Shown(question.parameter, question.unit, question.water, UTC))
    return Outcome(ANSWERED, _answered(result), lines=consumption_lines.lines(result, LocalZone()))


def _answered(result: ConsumptionAnswer) -> Json:
    found, readings = result.estimate, result.question.record.readings
    shown = consumption_lines.shown_of(result, UTC)
    rises = Shown(shown.parameter, shown.rise_unit, shown.water)

    def value(canonical: float) -> Json:
        return {"value": shown.number(canonical), "unit": shown.unit}

    def rise(canonical: float) -> Json:
        return {"value": rises.number(canonical), "unit": shown.rise_unit}

    def per_day(canonical: float) -> Json:
        return {"value": rises.number(canonical), "unit": f"{shown.rise_unit} per day"}

    def use(span: Span) -> Json:
        return {"use_per_day": per_day(span.value), "low": per_day(span.low), "high": per_day(span.high)}

    changed, trend = found.changed, found.trend_per_week
    return {
        "status": "answered",
        **use(found.use),
        "interval": "90 %",
        "value_now": {
            "value": value(found.value.value),
            "low": value(found.value.low),
            "high": value(found.value.high),
        },
        "last_reading_age": {"value": found.since_days, "unit": "day"},
        "readings_used": found.readings,
        "trend_per_week": None if trend is None else per_day(trend),
        "changed_at": None if changed is None else changed.at.isoformat(),
        "by_period": [{"from": p.start.isoformat(), "until": p.end.isoformat(), **use(p.use)} for p in found.by_period],
        "odd_readings": [
            {
                "reading": odd.index + 1,
                "at": readings[odd.index].at.isoformat(),
                "value": value(readings[odd.index].value),
                "above_the_others": rise(odd.off),
                **answer_json.reason(reason, shown),
            }
            for odd, reason in zip(found.odd, result.odd, strict=True)
        ],
        "jumps": [
            {"reading": jump.index + 1, "at": readings[jump.index].at.isoformat(), "by": rise(jump.by)}
            for jump in found.jumps
        ],
        "reasons": [answer_json.reason(r, shown) for r in result.remarks],
    }
