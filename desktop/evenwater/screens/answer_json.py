"""A result as the question file's contract has it: JSON values, and the same for people."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from evenwater.engine.correction import Answer
from evenwater.engine.quantities import significant
from evenwater.engine.reasons import Reason
from evenwater.engine.side_effects import side_effects
from evenwater.engine.stock import Dissolved
from evenwater.screens import plan_id, side_effect_lines, words
from evenwater.screens.answer import BOTTLE, shown_of, view
from evenwater.screens.shown import Shown, unit_words

Json = dict[str, Any]


def _quantity(value: float, unit: str) -> Json:
    return {"value": value, "unit": unit}


def reason(item: Reason, shown: Shown | None) -> Json:
    """Return a reason with its code, its field and its sentence."""
    out = {"code": item.code, "text": words.sentence(item, shown)}
    if item.path:
        out["field"] = item.path
    return out


def answered(answer: Answer) -> Json:
    """Return the JSON object of an answered correction.

    Parameters
    ----------
    answer : Answer
        The plan.

    Returns
    -------
    dict
        Quantities as value and unit, unrounded unless the name says rounded.
    """
    q, doses, seen = answer.question, answer.doses, answer.seen
    shown = shown_of(q)

    def value(canonical: float) -> Json:
        return _quantity(shown.number(canonical), q.unit)

    def rise(canonical: float) -> Json:
        plain = Shown(q.parameter, shown.rise_unit, q.system.water)
        return _quantity(plain.number(canonical), f"{shown.rise_unit} per day")

    low, high = answer.band
    batch = q.additive if isinstance(q.additive, Dissolved) else None
    return {
        "status": "answered",
        "plan_id": plan_id.make(q),
        "dose_per_hour": _quantity(answer.dose_ml_per_day / 24.0, "mL/h"),
        "dose_in_24_hours": _quantity(answer.dose_ml_per_day, "mL"),
        "single_dose": _quantity(answer.single_dose_ml, "mL"),
        "single_dose_rounded": _quantity(doses.dose_ml, "mL"),
        "doses_per_day": doses.per_day,
        "doses_rounded": {
            "count": doses.count,
            "total": _quantity(doses.total_ml, "mL"),
            "lasts": _quantity(doses.lasts_days * 24.0, "h"),
            "left_to_target": _quantity(shown.number(q.target) - shown.number(q.target - doses.shortfall), q.unit),
            "upkeep_single_dose": _quantity(doses.upkeep_ml, "mL"),
        },
        "run_time": _quantity(answer.run_time_s, "s"),
        "total": _quantity(answer.total_ml, "mL"),
        "lasts": _quantity(answer.lasts_days * 24.0, "h"),
        "rise_per_day": rise(answer.pace),
        "set_by": answer.set_by,
        "upkeep_per_hour": _quantity(answer.upkeep_ml_per_day / 24.0, "mL/h"),
        "band": {"p5": value(low), "p95": value(high)},
        "by_source": dict(answer.by_source),
        "whole_jug": None if answer.whole_jug is None else value(answer.whole_jug),
        "limits": [
            {
                "code": item.code,
                "value": _quantity(item.value, item.unit),
                "bound": _quantity(item.bound, item.unit),
                "share": item.share,
                "passed": item.over,
            }
            for item in answer.limits
        ],
        "check": {
            "agrees": True,
            "highest_rise_in_24_hours": rise(seen.highest_rise_in_24_hours),
            "highest_value": value(seen.highest_value),
            "end_value": value(seen.end_value),
        },
        "side_effects": side_effect_lines.as_json(side_effects(answer)),
        "reasons": [reason(r, shown) for r in answer.remarks],
        "cautions": list(batch.cautions if batch else BOTTLE),
    }


def text(body: Mapping[str, Any], answer: Answer | None, now: datetime) -> str:
    """Return an outcome for people: cautions before numbers, then the plan, or the reasons.

    Parameters
    ----------
    body : mapping
        The JSON object.
    answer : Answer or None
        The plan, when there is one.
    now : datetime
        The present in the zone that dates are written in.

    Returns
    -------
    str
        Lines.
    """
    if answer is not None:
        shown = view(answer, now)
        lines = [f"Caution: {c}" for c in shown.cautions]
        lines += ["", f"{shown.figure} {shown.figure_unit} {shown.second}", shown.third, shown.set_by, ""]
        lines += [f"{bar.label}: {bar.text}" for bar in shown.bars]
        lines += ["", *(f"Note: {r}" for r in shown.remarks)] if shown.remarks else []
        lines.append("")
        lines += [f"{w.what + ': ' if w.what else ''}{w.how} = {w.gives}" for w in shown.working]
        lines += ["", side_effect_lines.TITLE]
        lines += [f"{w.what}: {w.how}{' = ' + w.gives if w.gives else ''}" for w in shown.side_effects]
        return "\n".join(lines).replace("\u00a0", " ")
    if "result" in body:
        result = body["result"]
        return f"{significant(result['value'], 6)} {unit_words(result['unit'])}"
    if body["status"] == "refused":
        return "\n".join(": ".join(filter(None, ("Refused", r.get("field"), r["text"]))) for r in body["reasons"])
    return "Not a question Evenwater can read; see the messages."
