"""The question kind ``upkeep``: what to dose day by day of several additives, and what that leaves behind."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime
from typing import Any

from evenwater.engine import upkeep_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.quantities import from_canonical
from evenwater.engine.reasons import Reason
from evenwater.engine.upkeep import UpkeepAnswer, UpkeepDose, UpkeepQuestion, solve
from evenwater.engine.upkeep_balance import SPANS, Drift, SaltLeft
from evenwater.engine.upkeep_limits import Hour, unit_of
from evenwater.headless_outcome import ANSWERED, REFUSED, Outcome
from evenwater.screens import upkeep
from evenwater.screens.local_zone import LocalZone

Json = dict[str, Any]


def answer(raw: Json, known: Catalogue, now: datetime) -> Outcome:
    """Answer a question about an upkeep.

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
    question = upkeep_intake.upkeep(raw, known, now)
    if isinstance(question, Unread):
        return _refused(question.reasons, None)
    result = solve(question)
    if isinstance(result, Refused):
        return _refused(result.reasons, question)
    return Outcome(ANSWERED, as_json(result), lines=tuple(_lines(result)))


def _refused(reasons: Sequence[Reason], question: UpkeepQuestion | None) -> Outcome:
    return Outcome(REFUSED, {"status": "refused", "reasons": [_reason(r, question) for r in reasons]})


def _reason(reason: Reason, question: UpkeepQuestion | None) -> Json:
    out = {"code": reason.code, "text": upkeep.sentence(reason, question)}
    return {**out, "field": reason.path} if reason.path else out


def as_json(result: UpkeepAnswer) -> Json:
    """Return the JSON object of an answered upkeep, quantities as value and unit."""
    q, pair = result.question, result.pair
    return {
        "status": "answered",
        "items": [_item(q, dose) for dose in result.doses],
        "calcium_to_alkalinity": {
            "of_skeleton": _quantity(pair.of_skeleton, "mg/meq"),
            "of_use": _maybe(pair.of_use, "mg/meq"),
            "of_doses": _maybe(pair.of_doses, "mg/meq"),
        },
        # Of a bottle nobody knows what else is in it.
        "additives_known": result.known,
        "salt_left": _salt(result.salt) if result.known else None,
        "sodium_chloride_left": _salt(result.sodium_chloride) if result.known else None,
        "changes": {
            drift.name: _change(q, drift) for drift in result.drifts if result.known or drift.name != "salinity"
        },
        "exchange_per_day": _quantity(q.exchange_fraction * q.system.volume_l, "L"),
        "fullest_hour": None if result.hour is None else _hour(result.hour),
        "limits": [
            {
                "code": item.code,
                "value": _quantity(item.value, item.unit),
                "bound": _quantity(item.bound, item.unit),
                "share": item.share,
                "passed": item.over,
            }
            for item in result.limits
        ],
        "check": {"agrees": True, "most_in_24_hours": [_quantity(ml, "mL") for ml in result.seen.most_ml]},
        "reasons": [_reason(r, q) for r in result.remarks],
        "hazards": list(upkeep.hazards(q)),
        "cautions": list(upkeep.cautions(q)),
        "rules": list(upkeep.RULES),
    }


def _item(q: UpkeepQuestion, dose: UpkeepDose) -> Json:
    item = dose.item
    unit = unit_of(q, item.parameter)

    def per_day(value: float) -> Json:
        return _quantity(from_canonical(value, item.parameter.kind, unit, q.system.water), f"{unit} per day")

    return {
        "parameter": item.parameter.name,
        "use": per_day(item.use or 0.0),
        "additive": item.additive_name,
        "dose_per_hour": _quantity(dose.needed_ml_per_day / 24.0, "mL/h"),
        "dose_in_24_hours": _quantity(dose.needed_ml_per_day, "mL"),
        "single_dose": _quantity(dose.needed_ml_per_day / dose.per_day, "mL"),
        "single_dose_rounded": _quantity(dose.dose_ml, "mL"),
        "dose_in_24_hours_rounded": _quantity(dose.in_24_hours_ml, "mL"),
        "doses_per_day": dose.per_day,
        "run_time": _quantity(dose.run_time_s, "s"),
        "own_share_of_use": dose.own_share,
        "left_of_use": per_day(dose.shortfall),
        "jug_lasts": _maybe(dose.jug_days, "d"),
        "jug_empty_at": None if dose.empty_at is None else dose.empty_at.isoformat(),
    }


def _change(q: UpkeepQuestion, drift: Drift) -> Json:
    parameter = next((p for p in q.others if p.name == drift.name), None)
    unit = drift.unit if parameter is None else unit_of(q, parameter)

    def said(value: float) -> float:
        return value if parameter is None else from_canonical(value, parameter.kind, unit, q.system.water)

    def spans(values: tuple[float, ...]) -> Json:
        return {name: _quantity(said(value), unit) for name, value in zip(SPANS, values, strict=True)}

    new = drift.new_water
    return {
        "per_day": _quantity(said(drift.gain), f"{unit} per day"),
        "without_exchange": spans(drift.alone),
        "with_exchange": None if drift.exchanged is None else spans(drift.exchanged),
        "now": None if drift.start is None else _quantity(said(drift.start), unit),
        "new_water": None if new is None else _quantity(said(new), unit),
        "settles_above_new_water": None if drift.steady is None else _quantity(said(drift.steady), unit),
    }


def _salt(salt: SaltLeft) -> Json:
    def spans(values: tuple[float, ...]) -> Json:
        return {name: _quantity(value, "g") for name, value in zip(SPANS, values, strict=True)}

    return {
        "without_exchange": spans(salt.alone),
        "with_exchange": None if salt.exchanged is None else spans(salt.exchanged),
        "steady_state": _maybe(salt.steady, "g"),
    }


def _hour(hour: Hour) -> Json:
    return {
        "ph_now": _quantity(hour.now.ph_nbs, "NBS scale"),
        "ph_after": _quantity(hour.lifted.ph_nbs, "NBS scale"),
        "aragonite_saturation_now": _quantity(hour.now.saturation, ""),
        "aragonite_saturation_after": _quantity(hour.after.saturation, ""),
    }


def _quantity(value: float, unit: str) -> Json:
    return {"value": value, "unit": unit}


def _maybe(value: float | None, unit: str) -> Json | None:
    return None if value is None else _quantity(value, unit)


def _lines(result: UpkeepAnswer) -> Iterator[str]:
    """Yield the answer for people: the handling before any number, then the doses, then what they do in time."""
    shown = upkeep.view(result, result.question.now.astimezone(LocalZone()))
    for line in _text(shown):
        yield line.replace("\u00a0", " ")


def _text(shown: upkeep.UpkeepView) -> Iterator[str]:
    yield from shown.hazards
    yield from (f"Caution: {line}" for line in shown.cautions)
    for row in shown.rows:
        yield ""
        yield f"{row.parameter}: {row.use} used"
        if row.dose:
            yield f"{row.per_hour} of {row.additive}"
            yield f"{row.dose} ({row.run_time}), {row.in_24_hours} in 24 hours"
        if row.share:
            yield row.share
        if row.jug:
            yield f"A full jug lasts {row.jug}, until {row.jug_empty}"
    yield ""
    yield from shown.rules
    yield from (f"Note: {remark}" for remark in shown.remarks)
    yield ""
    yield from (f"{bar.label}: {bar.text}" for bar in shown.bars)
    yield ""
    yield from (f"{line.what}: {line.how} = {line.gives}" for line in shown.lines)
    yield ""
    for span in shown.spans:
        settles = f"; settles {span.settles}" if span.settles else ""
        yield f"{span.what}, {span.how}: {span.week} in a week, {span.month} in a month, {span.year} in a year{settles}"
