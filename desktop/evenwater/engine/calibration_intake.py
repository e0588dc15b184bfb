"""Turns the runs of a pump, as typed, into a question about its calibration; or says what is missing or wrong."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

from evenwater.engine import fields
from evenwater.engine.calibration import CalibrationQuestion, Delivered, Earlier, Line
from evenwater.engine.calibration_runs import EXPANSION, Means, Run
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.pump_wear import LIFE_HOURS
from evenwater.engine.quantities import Typed, Water, from_canonical, to_canonical
from evenwater.engine.reader import Field, Ok, Wrong, read
from evenwater.engine.reasons import Reason
from evenwater.engine.weighing import WEIGHTS_G_PER_ML, Conditions, HalfWidths

ROWS = ("run", "earlier")
# Where the flow is known, a run may bring twenty times what is expected.
_ADMITTED = 20.0
# What the reader says of an amount that has no unit of mass.
_NO_MASS = ("unknown_unit", "unit_missing")
# Below this no point can be one of thousands.
_FINEST = 999.0
_FLOW = Field("flow", "flow", "mL/min", 0.0, 100_000.0, above_low=True)
_ACCURACY = Field("accuracy", "share", "%", 0.0, 50.0, above_low=True)
# A hand on a stop watch, twice; tap water in a room; air pressure up to about 900 m above the sea. Common practice, no source.
_HAND_S = 0.3
_WATER_C, _PRESSURE_HPA, _HUMIDITY = 20.0, 1013.25, 50.0
# How far what is said may be off, and what is not said: degC, practical salinity, degC, hPa, %. Common practice, no source.
_SAID = HalfWidths(0.5, 1.0, 1.0, 5.0, 10.0)
_UNSAID = HalfWidths(5.0, 0.0, 5.0, 100.0, 40.0)


def calibration(raw: Raw, now: datetime) -> CalibrationQuestion | Unread:
    """Read a question about a pump's calibration.

    Parameters
    ----------
    raw : mapping
        The tables ``pump``, ``cylinder``, ``scale``, ``conditions``, ``line`` and ``record`` and the lists of tables ``run`` and
        ``earlier``, as in a question file; values are ``Typed``, plain text, plain numbers of seconds and doses, or instants.
    now : datetime
        The present, with zone; a ``now`` in ``raw`` wins.

    Returns
    -------
    CalibrationQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = Form({**raw, **{name: _numbered(raw.get(name, ())) for name in ROWS}, "record": _record(raw.get("record"))})
    moment = r.instant("now") or now.astimezone(UTC)
    setting = r.number(fields.PUMP_SETTING)
    runs = tuple(_runs(r, setting))
    means, assumed = _means(r)
    hours = _hours(r, fields.HEAD_HOURS)
    earlier = tuple(_earlier(r, setting))
    if r.raw["earlier"] and hours is None and not r.wrong:
        r.missing.append(Reason("missing", {"path": fields.HEAD_HOURS.path}, fields.HEAD_HOURS.path))
    line, record = _line(r), _delivered(r, means, setting)
    dose, life, per_day, wanted = (
        r.number(fields.PUMP_DOSE),
        _hours(r, fields.HEAD_LIFE),
        _hours(r, fields.HOURS_PER_DAY),
        r.number(fields.FLOW_WANTED),
    )
    if r.missing or r.wrong:
        return r.unread
    return CalibrationQuestion(
        now=moment, runs=runs, means=means, setting=setting, dose=None if dose is None else 1000.0 * dose,
        wanted=(1.0 if wanted is None else wanted) / 100.0, hours=hours, life=LIFE_HOURS if life is None else life,
        per_day=per_day, earlier=earlier, line=line, record=record, assumed=assumed,
    )  # fmt: skip


def _numbered(rows: Any) -> Mapping[str, Any]:
    """Return a list of tables as a table of them, plain numbers as they would be typed."""
    if not isinstance(rows, Sequence) or isinstance(rows, str):
        return {}
    tables = [row if isinstance(row, Mapping) else {} for row in rows]
    return {str(n): {name: _typed(value) for name, value in row.items()} for n, row in enumerate(tables, start=1)}


def _typed(value: Any) -> Any:
    """Return a number of a file as text that has one reading only: its point is never one of thousands."""
    if isinstance(value, float):
        return Typed(f"{value:.6f}")
    return Typed(str(value)) if isinstance(value, int) and not isinstance(value, bool) else value


def _record(table: Any) -> Any:
    if not isinstance(table, Mapping):
        return {}
    amounts = table.get("amounts", ())
    if not isinstance(amounts, list | tuple):
        amounts = ()
    return {**table, "amounts": {str(n): amount for n, amount in enumerate(amounts, start=1)}}


def _hours(r: Form, spec: Field) -> float | None:
    seconds = r.number(spec)
    return None if seconds is None else seconds / 3600.0


def _needed(r: Form, spec: Field) -> float | None:
    """Return a quantity of a row [canonical unit] as ``Form.needed`` does; rows have no words of their own."""
    before = len(r.wrong)
    value = r.number(spec)
    if value is None and len(r.wrong) == before:
        r.missing.append(Reason("missing", {"path": ""}, spec.path))
    return value


def _runs(r: Form, setting: float | None) -> Iterator[Run]:
    for number in r.raw["run"]:
        here = f"run.{number}"
        seconds = _needed(r, replace(fields.RUN_SECONDS, path=f"{here}.seconds"))
        doses = r.number(replace(fields.RUN_DOSES, path=f"{here}.doses"))
        count = 1 if doses is None else int(doses)
        weighed = r.value(f"{here}.mass") is not None
        spec = fields.RUN_MASS if weighed else fields.RUN_VOLUME
        span = None if seconds is None else seconds * count
        spec = _admitting(replace(spec, path=f"{here}.{spec.path}"), setting, span)
        amount = _needed(r, spec)
        if seconds is not None and amount is not None:
            if weighed:
                yield Run(seconds, mass_g=amount, doses=count)
            else:
                yield Run(seconds, volume_ml=1000.0 * amount, doses=count)


def _admitting(spec: Field, setting: float | None, seconds: float | None) -> Field:
    """Return the field of an amount that takes what a pump may give, and no more: a scale's three decimals are no thousands."""
    if setting is None or seconds is None:
        return spec
    return replace(spec, high=_ADMITTED * setting * seconds / 60.0)


def _means(r: Form) -> tuple[Means, tuple[Reason, ...]]:
    assumed: list[Reason] = []
    weighed = any(r.value(f"run.{n}.mass") is not None for n in r.raw["run"]) or bool(r.raw["record"])
    read_off = any(r.value(f"run.{n}.volume") is not None for n in r.raw["run"])
    graduation, readability = r.number(fields.GRADUATION), r.number(fields.READABILITY)
    if graduation is None:
        graduation = _grain(r, "volume", fields.RUN_VOLUME, "mL")
        if read_off:
            assumed.append(Reason("graduation_assumed", {"graduation_ml": graduation}, fields.GRADUATION.path))
    else:
        graduation *= 1000.0
    if readability is None:
        readability = _grain(r, "mass", fields.RUN_MASS, "g")
        if weighed:
            assumed.append(Reason("readability_assumed", {"grams": readability}, fields.READABILITY.path))
    material = r.text("cylinder.material").casefold() or "glass"
    if material not in EXPANSION:
        params = {"text": material, "choices": tuple(EXPANSION)}
        r.wrong.append(Reason("unknown_choice", params, "cylinder.material"))
        material = "glass"
    tolerance, scale = r.number(fields.CYLINDER_TOLERANCE), r.number(fields.SCALE_TOLERANCE)
    timing = r.number(fields.TIMING)
    conditions, off, taken = _conditions(r)
    means = Means(
        graduation=graduation, tolerance=0.0 if tolerance is None else 1000.0 * tolerance, material=material,
        readability=readability, scale_tolerance=scale or 0.0, timing=_HAND_S if timing is None else timing,
        conditions=conditions, off=off,
    )  # fmt: skip
    return means, (*assumed, *(taken if weighed else ()))


def _conditions(r: Form) -> tuple[Conditions, HalfWidths, tuple[Reason, ...]]:
    water, salt, air = r.number(fields.RUN_WATER), r.number(fields.RUN_SALINITY), r.number(fields.AIR_TEMPERATURE)
    pressure, humidity, weights = r.number(fields.AIR_PRESSURE), r.number(fields.HUMIDITY), r.number(fields.WEIGHTS)
    taken = (
        ()
        if water is not None
        else (Reason("temperature_assumed", {"degc": _WATER_C, "off": _UNSAID.water_c}, fields.RUN_WATER.path),)
    )
    degc = _WATER_C if water is None else water
    return (
        Conditions(
            liquid=Water(salt or 0.0, degc),
            # Water that has stood in the room is as warm as its air.
            air_c=degc if air is None else air,
            pressure_hpa=_PRESSURE_HPA if pressure is None else pressure,
            humidity=_HUMIDITY if humidity is None else humidity,
            weights=WEIGHTS_G_PER_ML if weights is None else weights,
        ),
        HalfWidths(
            water_c=(_UNSAID if water is None else _SAID).water_c,
            salinity=(_SAID if salt else _UNSAID).salinity,
            air_c=(_UNSAID if air is None else _SAID).air_c,
            pressure_hpa=(_UNSAID if pressure is None else _SAID).pressure_hpa,
            humidity=(_UNSAID if humidity is None else _SAID).humidity,
        ),
        taken,
    )


def _grain(r: Form, name: str, spec: Field, unit: str) -> float:
    """Return the finest last digit that was written, in ``unit``: nobody writes finer than they can read."""
    found = []
    for number in r.raw["run"]:
        value = r.value(f"run.{number}.{name}")
        text, beside = (value.text, value.unit) if isinstance(value, Typed) else (str(value or ""), "")
        result = read(text, replace(spec, high=_FINEST), beside)
        if isinstance(result, Ok):
            exponent = result.entered.number.as_tuple().exponent
            one = 10.0 ** min(int(exponent), 0)
            found.append(from_canonical(to_canonical(one, spec.kind, result.entered.unit), spec.kind, unit))
    return min(found, default=1.0)


def _earlier(r: Form, setting: float | None) -> Iterator[Earlier]:
    for number in r.raw["earlier"]:
        here = f"earlier.{number}"
        before = len(r.wrong)
        at = r.instant(f"{here}.at")
        if at is None and len(r.wrong) == before:
            r.missing.append(Reason("missing", {"path": ""}, f"{here}.at"))
        hours = _needed(r, replace(fields.HEAD_HOURS, path=f"{here}.hours"))
        flow = _needed(r, _admitting(replace(_FLOW, path=f"{here}.flow"), setting, 60.0))
        accuracy = r.number(replace(_ACCURACY, path=f"{here}.accuracy"))
        if at is not None and hours is not None and flow is not None:
            yield Earlier(at, hours / 3600.0, flow, None if accuracy is None else accuracy / 100.0)


def _line(r: Form) -> Line | None:
    if not r.raw.get("line"):
        return None
    bore, length = r.needed(fields.LINE_BORE), r.needed(fields.LINE_LENGTH)
    return None if bore is None or length is None else Line(bore, length)


def _delivered(r: Form, means: Means, setting: float | None) -> Delivered | None:
    if not r.raw["record"]:
        return None
    every = r.needed(fields.RECORD_EVERY)
    amounts = []
    for number in r.value("record.amounts"):
        path = f"record.amounts.{number}"
        # As in the runs: what has a unit of mass was weighed.
        said = read(r.text(path), fields.RUN_MASS)
        heavy = not (isinstance(said, Wrong) and said.reason.code in _NO_MASS)
        found = _needed(
            r, _admitting(replace(fields.RUN_MASS if heavy else fields.RUN_VOLUME, path=path), setting, every)
        )
        if found is not None:
            amounts.append(means.z_ml_per_g * found if heavy else 1000.0 * found)
    return None if every is None else Delivered(every / 60.0, tuple(amounts))
