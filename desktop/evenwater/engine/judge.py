"""Judges the question before any planning: what makes it unanswerable, said all at once."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import timedelta

from evenwater.engine.limits import Guardrail, Standing
from evenwater.engine.mix import incompatible
from evenwater.engine.quantities import to_canonical
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Dissolved, made_per_litre, saturation, strength
from evenwater.engine.units import KINDS

# A clock may run a little behind the laptop it is compared with; common practice, no source.
CLOCK_SLACK = timedelta(minutes=5)


def objections(question: CorrectionQuestion) -> tuple[Reason, ...]:
    """Return why a question must be refused, or nothing when it may be planned.

    Parameters
    ----------
    question : CorrectionQuestion
        The whole question.

    Returns
    -------
    tuple of Reason
        Every objection, in the order of the sheet.
    """
    unreadable = tuple(_out_of_reach(question))
    if unreadable:
        return unreadable
    reading = tuple(_reading(question))
    # A reading in the wrong unit says nothing about the target.
    target = () if any(r.code == "implausible" for r in reading) else tuple(_target(question))
    return (*reading, *target, *_pace(question), *_additive(question))


_LARGEST = 1e9


@dataclass(frozen=True)
class _Figure:
    """A figure at the door of the engine, with what makes sense of it at all."""

    path: str
    value: float | None
    low: float = 0.0
    high: float = _LARGEST


# The least that a volume, a mass or a flow can be and still be divided by.
_TRACE = 1e-9


def _figures(q: CorrectionQuestion) -> tuple[_Figure, ...]:
    system, pump, batch = q.system, q.pump, q.additive
    stock = (
        (
            _Figure("additive.dissolved", batch.grams, _TRACE),
            _Figure("additive.made_up_to", batch.made_up_l, _TRACE),
            _Figure("additive.purity", batch.purity, _TRACE, 1.0),
            _Figure("additive.temperature", batch.coolest_c, -5.0, 60.0),
            *(_Figure("additive.also.dissolved", portion.grams, _TRACE) for portion in batch.also),
            *(_Figure("additive.also.purity", portion.purity, _TRACE, 1.0) for portion in batch.also),
        )
        if isinstance(batch, Dissolved)
        else (
            _Figure("additive.label.dose", batch.dose_ml, _TRACE),
            _Figure("additive.label.water", batch.water_l, _TRACE),
            _Figure("additive.label.raises", batch.raises, _TRACE),
        )
    )
    return (
        _Figure("system.net_volume", system.volume_l, _TRACE),
        _Figure("system.volume_uncertainty", system.volume_uncertainty, 0.0, 1.0),
        _Figure("system.salinity", system.water.salinity, 0.0, 60.0),
        _Figure("system.temperature", system.water.temperature_c, -5.0, 60.0),
        _Figure("system.ph", system.ph, 0.0, 14.0),
        _Figure("system.alkalinity", system.alkalinity, 0.0, 100.0),
        _Figure("system.calcium", system.calcium, 0.0, 100_000.0),
        _Figure("system.evaporation", system.evaporation_l, _TRACE),
        _Figure("change.measured", q.measured),
        _Figure("change.untested", q.untested),
        _Figure("change.raised_lately", q.lately),
        _Figure("change.target", q.target),
        _Figure("change.daily_use", q.use),
        _Figure("change.fastest_rise", q.fastest, -_LARGEST),
        *stock,
        _Figure("pump.flow", pump.flow_ml_per_min, _TRACE),
        _Figure("pump.smallest_dose", pump.smallest_ml),
        _Figure("pump.step", pump.step_ml, _TRACE),
        _Figure("pump.largest_share", pump.largest_share, _TRACE, 1.0),
        _Figure("pump.doses_per_day", pump.doses_per_day, 1.0, 1440.0),
    )


def _out_of_reach(q: CorrectionQuestion) -> Iterator[Reason]:
    """Yield the figures that are not finite, or that no field would admit (H30)."""
    for item in _figures(q):
        if item.value is None:
            continue
        if not math.isfinite(item.value):
            yield Reason("not_a_number", {"text": str(item.value)}, item.path)
        elif not item.low <= item.value <= item.high:
            params = {"number": item.value, "low": item.low, "high": item.high, "unit": "", "above_low": False}
            yield Reason("out_of_range", params, item.path)


def _reading(q: CorrectionQuestion) -> Iterator[Reason]:
    p = q.parameter
    low, high = (p.canonical(v) for v in p.plausible)
    if not low <= q.measured <= high:
        number, unit = q.measured_as
        params = {
            "parameter": p.name, "number": number, "unit": unit, "low": low, "high": high,
            "instead": tuple(meant_instead(q)), "shown_unit": q.unit,
        }  # fmt: skip
        yield Reason("implausible", params, "change.measured")
    if q.measured_at is None:
        return
    age = q.now - q.measured_at
    if age < -CLOCK_SLACK:
        yield Reason("reading_in_the_future", {"measured_at": q.measured_at, "now": q.now}, "change.measured_at")
    elif age > timedelta(days=p.stale_days):
        params = {"parameter": p.name, "age_days": age / timedelta(days=1), "stale_days": p.stale_days}
        yield Reason("reading_stale", params, "change.measured_at")


def meant_instead(question: CorrectionQuestion) -> Iterator[tuple[float, str, float]]:
    """Yield the units in which the same number would be an ordinary reading.

    Parameters
    ----------
    question : CorrectionQuestion
        A question whose reading is implausible.

    Yields
    ------
    tuple of (float, str, float)
        The number as typed [unit], the id of the unit it was perhaps meant in, and the canonical
        value it would then have.
    """
    p = question.parameter
    number, unit = question.measured_as
    low, high = (p.canonical(v) for v in p.plausible)
    for other in KINDS[p.kind].units:
        if other.id != unit:
            value = to_canonical(number, p.kind, other.id, question.system.water)
            if low <= value <= high:
                yield number, other.id, value


def _target(q: CorrectionQuestion) -> Iterator[Reason]:
    p = q.parameter
    low, high = (p.canonical(v) for v in p.target_hard)
    params = {"parameter": p.name, "target": q.target, "measured": q.measured, "use": q.use, "low": low, "high": high}
    if not low <= q.target <= high:
        yield Reason("target_outside", params, "change.target")
    elif q.target < q.measured:
        yield Reason("target_below_measured", params, "change.target")
    elif q.target == q.measured:
        yield Reason("target_reached", params, "change.target")
    elif q.target <= q.start:
        yield Reason(
            "untested_reaches", {"parameter": p.name, "untested": q.untested, "target": q.target}, "change.measured"
        )
    elif q.untested > 0.0 and q.system.volume_known == "unknown":
        # How far a dose raised water of unknown volume, only a test can say.
        yield Reason("untested_unknown", {"parameter": p.name}, "change.measured")


def _pace(q: CorrectionQuestion) -> Iterator[Reason]:
    p = q.parameter
    if q.fastest is None:
        return
    rail = Guardrail(p.canonical(p.rise_recommended), p.canonical(p.rise_hard))
    params = {"parameter": p.name, "fastest": q.fastest, "recommended": rail.recommended, "hard": rail.hard}
    # The keeper's figure may have come through another unit: binary noise is no excess.
    standing = rail.standing(q.fastest * (1.0 - 1e-12))
    if q.fastest <= 0.0:
        yield Reason("rise_not_positive", params, "change.fastest_rise")
    elif standing is Standing.BEYOND_HARD:
        yield Reason("rise_beyond_hard", params, "change.fastest_rise")
    elif standing is Standing.BEYOND_RECOMMENDED and not q.reason.strip():
        yield Reason("rise_needs_reason", params, "change.fastest_rise")


def _additive(q: CorrectionQuestion) -> Iterator[Reason]:
    if strength(q.additive, q.parameter.name, q.parameter.kind, q.system.water) <= 0.0:
        name = q.additive.name if isinstance(q.additive, Dissolved) else ""
        yield Reason("does_not_raise", {"chemical": name, "parameter": q.parameter.name}, "additive.chemical")
    if isinstance(q.additive, Dissolved):
        yield from undissolved(q.additive, "additive.dissolved")


def undissolved(batch: Dissolved, path: str) -> Iterator[Reason]:
    """Yield why a batch cannot be dissolved, or must not be, if it is so.

    Parameters
    ----------
    batch : Dissolved
        The batch, with the coolest temperature it must stay dissolved at [degC].
    path : str
        Path of the field that says how much was dissolved.

    Yields
    ------
    Reason
        At most one.
    """
    clash = incompatible(batch, path.replace("dissolved", "also.chemical"))
    if clash is not None:
        yield clash
        return
    near = saturation(batch)
    # A saturated jug holds what dissolves by definition.
    if near is not None and near > 1.0 and not batch.saturated:
        made = made_per_litre(batch)
        params = {"chemical": batch.name, "made": made, "most": made / near, "temperature_c": batch.coolest_c}
        yield Reason("does_not_dissolve", params, path)
