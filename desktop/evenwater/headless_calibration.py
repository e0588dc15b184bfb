"""The question kind ``calibration``: what a pump gives, how well that is known, and how its flow changes as it wears."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from evenwater.engine import calibration_intake
from evenwater.engine.calibration import CalibrationAnswer, Timed, solve
from evenwater.engine.calibration_runs import volume
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.pump_wear import Head, Leaves, Wear
from evenwater.headless_outcome import ANSWERED, Outcome, refused
from evenwater.screens import answer_json, calibration_lines
from evenwater.screens.local_zone import LocalZone

Json = dict[str, Any]
_FLOW = "mL/min"


def answer(raw: Json, now: datetime) -> Outcome:
    """Answer a question about a pump's calibration.

    Parameters
    ----------
    raw : dict
        The parsed file, of the shape that ``question_file`` asks for.
    now : datetime
        The present, for a question that does not say.

    Returns
    -------
    Outcome
        Answered or refused.
    """
    question = calibration_intake.calibration(raw, now)
    if isinstance(question, Unread):
        return refused(*question.reasons)
    result = solve(question)
    if isinstance(result, Refused):
        return refused(*result.reasons)
    name = str(raw.get("pump", {}).get("name", ""))
    return Outcome(ANSWERED, _answered(result, name), lines=calibration_lines.lines(result, LocalZone()))


def _quantity(value: float, unit: str) -> Json:
    return {"value": value, "unit": unit}


def _percent(share: float) -> Json:
    return _quantity(100.0 * share, "%")


def _optional(value: float | None, unit: str) -> Json | None:
    return None if value is None else _quantity(value, unit)


def _answered(result: CalibrationAnswer, name: str) -> Json:
    q, best = result.question, result.chosen
    weighed = any(run.mass_g is not None for run in q.runs)
    mean, known = best.summary.mean, best.known
    bias, wanted, held = result.bias, result.needed, result.priming
    return {
        "status": "answered",
        "pump": name,
        "verdict": "pass" if result.passed else "repeat",
        "repeat_because": [answer_json.reason(reason, None) for reason in result.repeat],
        **_timed(best),
        "interval": "95 %",
        "standard_uncertainty": _quantity(known.standard, _FLOW),
        "by_source": known.shares,
        "bias": None
        if bias is None
        else {**_percent(bias.value), "low": _percent(bias.low), "high": _percent(bias.high), "state": bias.state},
        "z_factor": _optional(q.means.z_ml_per_g if weighed else None, "mL/g"),
        "runs": [
            {
                "run": index + 1,
                "volume": _quantity(volume(run, q.means), "mL"),
                "flow": _quantity(60.0 * volume(run, q.means) / run.total_seconds, _FLOW),
                "off_the_mean": _percent(60.0 * volume(run, q.means) / run.total_seconds / mean - 1.0),
                "counted": index in best.summary.indices,
            }
            for index, run in enumerate(q.runs)
        ],
        "by_duration": [_timed(timed) for timed in result.groups],
        "short_against_long": None
        if result.shorter is None
        else {
            "seconds": _quantity(result.shorter.seconds, "s"),
            "against": _quantity(result.shorter.than_seconds, "s"),
            "difference": _percent(result.shorter.difference),
            "half_width": _percent(result.shorter.half_width),
        },
        "run_needed": None
        if wanted is None
        else {
            "accuracy": _percent(q.wanted),
            "seconds": _quantity(wanted.seconds, "s"),
            "volume": _quantity(wanted.volume_ml, "mL"),
        },
        "dose_run_time": _optional(result.dose_seconds, "s"),
        "line": None
        if held is None
        else {
            "dead_volume": _quantity(held.dead_volume_ml, "mL"),
            "prime_time": _quantity(held.seconds, "s"),
            "prime_time_at_most": _quantity(held.at_most_seconds, "s"),
        },
        "worst_in_window": [
            {"window": _quantity(m.window_min, "min"), "low": _percent(m.low), "high": _percent(m.high)}
            for m in result.trumpet
        ],
        "wear": None if result.wear is None else _wear(result.wear),
        "head": None if result.head is None else _head(result.head),
        "reasons": [answer_json.reason(reason, None) for reason in result.remarks],
    }


def _timed(timed: Timed) -> Json:
    group, known = timed.summary, timed.known
    return {
        "run_seconds": _quantity(group.seconds, "s"),
        "count": group.count,
        "flow": _quantity(group.mean, _FLOW),
        "low": _quantity(max(0.0, group.mean - known.half_width), _FLOW),
        "high": _quantity(group.mean + known.half_width, _FLOW),
        "uncertainty": _quantity(known.half_width, _FLOW),
        "standard_deviation": _optional(group.sd, _FLOW),
        "spread": None if group.cv is None else _percent(group.cv),
    }


def _wear(wear: Wear) -> Json:
    return {
        "reference_flow": _quantity(wear.reference, _FLOW),
        "drift_per_100_hours": {**_percent(wear.drift), "half_width": _percent(wear.drift_half_width)},
        "expected_flow": _quantity(wear.expected, _FLOW),
        "low": _quantity(max(0.0, wear.expected - wear.expected_half_width), _FLOW),
        "high": _quantity(wear.expected + wear.expected_half_width, _FLOW),
        "run_longer_by": wear.run_longer,
        "leaves_tolerance": [_leaves(each) for each in wear.leaves],
    }


def _leaves(leaves: Leaves) -> Json:
    return {
        "tolerance": _percent(leaves.limit),
        "hours_left": _quantity(leaves.hours, "h"),
        "at_the_earliest": _quantity(leaves.earliest_hours, "h"),
        "date": None if leaves.at is None else leaves.at.date().isoformat(),
        "earliest_date": None if leaves.earliest_at is None else leaves.earliest_at.date().isoformat(),
    }


def _head(head: Head) -> Json:
    return {
        "hours": _quantity(head.hours, "h"),
        "life": _quantity(head.life, "h"),
        "left": _quantity(head.left, "h"),
        "date": None if head.at is None else head.at.date().isoformat(),
    }
