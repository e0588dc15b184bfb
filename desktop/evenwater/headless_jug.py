"""The question kind ``jug``: until when a jug lasts, what it would do if it ran in, and how its pump really delivers."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from evenwater.engine import jug_intake
from evenwater.engine.absence import Absence
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.jug import JugAnswer, solve
from evenwater.engine.jug_check import JugCheck
from evenwater.engine.jug_siphon import CHECKLIST, RunIn
from evenwater.engine.quantities import from_canonical
from evenwater.headless_outcome import ANSWERED, Outcome, refused
from evenwater.screens import answer_json, jug_lines, jug_words
from evenwater.screens.local_zone import LocalZone

Json = dict[str, Any]


def answer(raw: Json, known: Catalogue, now: datetime) -> Outcome:
    """Answer a question about a jug.

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
    question = jug_intake.jug(raw, known, now)
    if isinstance(question, Unread):
        return refused(*question.reasons)
    result = solve(question)
    if isinstance(result, Refused):
        return refused(*result.reasons)
    return Outcome(ANSWERED, as_json(result), lines=jug_lines.lines(result, LocalZone()))


def as_json(result: JugAnswer) -> Json:
    """Return the JSON object of an answered jug: cautions and dangers first, quantities as value and unit."""
    q, seen, line = result.question, result.forecast, result.question.line
    dangers = [reason for reason in result.remarks if reason.code in jug_lines.DANGERS]
    said = {"outlet_above_water": q.setting.outlet_above_water, "jug_below_outlet": q.setting.jug_below_outlet}
    if result.run_in:
        said["jug_small_enough"] = not any(each.harms for each in result.run_in)
    return {
        "status": "answered",
        "cautions": list(jug_lines.cautions(result)),
        "dangers": [answer_json.reason(reason, None) for reason in dangers],
        "level_now": _quantity(seen.level_ml, "mL"),
        "taken_per_day": _quantity(seen.per_day_ml, "mL"),
        "days_left": None if seen.days_left is None else _quantity(seen.days_left, "day"),
        "last_full_dose_at": _instant(seen.last_full),
        "refill_before": _instant(seen.refill_before),
        "refill_before_at_the_earliest": _instant(result.earliest),
        "low": seen.low,
        "prime": None
        if line is None
        else {"line_holds": _quantity(line.volume_ml, "mL"), "doses_lost_unprimed": result.doses_lost},
        "whole_jug": {each.parameter.name: _run_in(each, result) for each in result.run_in},
        "largest_jug": None
        if result.largest is None
        else {"safe": _quantity(result.largest[0], "mL"), "advised": _quantity(result.largest[1], "mL")},
        "checklist": [{"code": code, "text": jug_words.CHECKS[code], "holds": said.get(code)} for code in CHECKLIST],
        "jug_check": None if result.check is None else _check(result.check, q.pumps[0].flow_ml_per_min),
        "absence": None if result.absence is None else _absence(result.absence),
        "reasons": [answer_json.reason(reason, None) for reason in result.remarks if reason not in dangers],
    }


def _quantity(value: float, unit: str) -> Json:
    return {"value": value, "unit": unit}


def _instant(at: datetime | None) -> str | None:
    return None if at is None else at.isoformat()


def _run_in(each: RunIn, result: JugAnswer) -> Json:
    p, water = each.parameter, result.question.tank.water

    def value(canonical: float) -> Json:
        return _quantity(from_canonical(canonical, p.kind, p.display_unit, water), p.display_unit)

    return {
        "before": value(each.before),
        "assumed": each.assumed,
        "after": value(each.after),
        "most": value(each.most),
        "harms": each.harms,
        "safe_jug": _quantity(each.safe_ml, "mL"),
        "advised_jug": _quantity(each.advised_ml, "mL"),
    }


def _check(found: JugCheck, flow: float | None) -> Json:
    factor = found.factor
    return {
        "from": found.since.isoformat(),
        "until": found.until.isoformat(),
        "real": _quantity(found.real_ml, "mL"),
        "real_give_or_take": _quantity(found.real_half_ml, "mL"),
        "expected": _quantity(found.expected_ml, "mL"),
        "expected_give_or_take": _quantity(found.expected_half_ml, "mL"),
        "real_over_expected": found.ratio,
        "real_over_expected_give_or_take": found.ratio_half,
        "mark": found.mark,
        "clear_from": _quantity(found.clear_from_ml, "mL"),
        "cause": found.cause,
        "candidates": [
            {"cause": name, "text": jug_words.CAUSES[name], "how": jug_words.likely(weight), "weight": weight}
            for name, weight in found.candidates
        ],
        "stop_at_once": found.stop,
        "look_at": [{"code": step, "text": jug_words.STEPS[step]} for step in found.steps],
        # Proposed only; nothing is changed by an answer.
        "proposed_factor": None
        if factor is None
        else {
            "value": factor.value,
            "low": factor.low,
            "high": factor.high,
            "flow": None if flow is None else _quantity(flow * factor.value, "mL/min"),
        },
    }


def _absence(away: Absence) -> Json:
    (filling,) = away.fillings
    return {
        "until": away.until.isoformat(),
        "needed": _quantity(filling.needed_ml, "mL"),
        "add_before_leaving": _quantity(filling.add_ml, "mL"),
        "left_alone_until": _instant(filling.left_alone_until),
        "enough": filling.enough,
        "filled_lasts_until": _instant(filling.lasts_until),
        "doses_missed": filling.missed,
        "rule": jug_words.NEVER_MADE_UP,
    }
