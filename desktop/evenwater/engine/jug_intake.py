"""Turns the fields of a jug, as typed, into a question; or says what is missing or wrong."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

from evenwater.engine import fields, intake, stock_intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.jug import JugPump, JugQuestion, Line, WaterTest
from evenwater.engine.jug_check import LevelRead, Refill
from evenwater.engine.jug_level import Draw
from evenwater.engine.jug_siphon import Setting, Tank
from evenwater.engine.quantities import Typed, Water
from evenwater.engine.question import PUMP_UNCERTAINTY
from evenwater.engine.reader import Field, Wrong, read
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import Bottle, StockQuestion
from evenwater.engine.stock import Dissolved, strength

ROWS = ("pump", "level", "refill")
HOLDS = Field("jug.holds", "volume", "L", 0.0, 1_000.0, above_low=True)
UNREACHABLE = Field("jug.unreachable", "volume", "mL", 0.0, 1_000_000.0)
CROSS_SECTION = Field("jug.cross_section", "area", "mL/cm", 0.0, 100_000.0, above_low=True)
ACCURACY = Field("jug.level_accuracy", "volume", "mL", 0.0, 100_000.0, above_low=True)
DOSE = Field("single_dose", "dose", "mL", 0.0, 10_000.0, above_low=True)
CALIBRATION = Field("calibration", "share", "%", 0.0, 50.0, above_low=True)
ADDED = Field("added", "volume", "L", 0.0, 1_000.0, above_low=True)
# Common practice, no source: how well a level is read, as half the width of a 95 % interval over the jug.
LEVEL_ACCURACY = 0.01
_HOUR_S = 3600.0
_SAID = {"true": True, "yes": True, "false": False, "no": False}


def jug(raw: Raw, catalogue: Catalogue, now: datetime) -> JugQuestion | Unread:
    """Read a question about a jug.

    Parameters
    ----------
    raw : mapping
        Tables ``jug``, ``system`` and ``additive``, the lists of tables ``pump``, ``level`` and ``refill``, and perhaps tables
        ``setting``, ``line`` and ``retest``, as in a question file; values are ``Typed``, plain text, whole numbers or instants.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone; a ``now`` in ``raw`` wins.

    Returns
    -------
    JugQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = Form({**raw, **{name: _numbered(raw.get(name, ())) for name in ROWS}})
    moment = r.instant("now") or now.astimezone(UTC)
    away = r.instant("away_until")
    r.number(fields.TEMPERATURE)
    water = intake.water_of(raw)
    batch = _batch(r, catalogue)
    tank = _tank(r, catalogue, water)
    holds_l, unreachable_l = r.needed(HOLDS), r.number(UNREACHABLE)
    per_cm = r.number(CROSS_SECTION)
    levels = tuple(_levels(r, per_cm))
    accuracy = _level_ml(r, ACCURACY, per_cm)
    refills = tuple(_refills(r))
    pumps = tuple(_pumps(r, min((level.at for level in levels), default=moment)))
    if not r.raw["pump"]:
        r.missing.append(Reason("missing", {}, "pump"))
    setting = Setting(_said(r, "setting.outlet_above_water"), _said(r, "setting.jug_below_outlet"))
    line = _line(r)
    test = None if r.value("retest") is None else _test(r, catalogue, water, batch)
    if r.missing or r.wrong or batch is None or tank is None or holds_l is None:
        return r.unread
    return JugQuestion(
        now=moment,
        name=r.text("jug.name"),
        holds_ml=1000.0 * holds_l,
        unreachable_ml=1000.0 * (unreachable_l or 0.0),
        accuracy_ml=LEVEL_ACCURACY * 1000.0 * holds_l if accuracy is None else accuracy,
        batch=batch,
        parameters=tuple(catalogue.parameters.values()),
        tank=tank,
        pumps=pumps,
        levels=levels,
        refills=refills,
        setting=setting,
        line=line,
        test=test,
        away_until=away,
    )


def _numbered(rows: Any) -> Mapping[str, Any]:
    """Return a list of tables as a table of them, so that a path such as ``level.3.at`` leads into it."""
    if not isinstance(rows, Sequence) or isinstance(rows, str):
        return {}
    return {str(number): row for number, row in enumerate(rows, start=1)}


def _rows(r: Form, name: str) -> Iterator[str]:
    yield from (f"{name}.{number}" for number in r.raw[name])


def _batch(r: Form, catalogue: Catalogue) -> Dissolved | Bottle | None:
    stock = stock_intake.stock({"additive": r.value("additive")}, catalogue)
    if isinstance(stock, StockQuestion):
        return stock.batch if isinstance(stock.batch, Dissolved | Bottle) else None
    r.missing += stock.missing
    r.wrong += stock.wrong
    return None


def _tank(r: Form, catalogue: Catalogue, water: Water) -> Tank | None:
    volume = r.needed(fields.NET_VOLUME)
    values = {}
    for parameter in catalogue.parameters.values():
        plain = fields.concentration(f"system.{parameter.name}", parameter)
        value = r.number(fields.SALINITY if parameter.name == "salinity" else plain, water)
        if value is not None:
            values[parameter.name] = value
    return None if volume is None else Tank(volume, water, values, r.text("system.name"))


def _level_ml(r: Form, spec: Field, per_cm: float | None) -> float | None:
    """Return a level [mL] that stands there as a volume, or as a length of a jug of known cross-section."""
    value = r.value(spec.path)
    typed = value if isinstance(value, Typed) else Typed("" if value is None else str(value))
    length = replace(spec, kind="length", unit="cm", high=1_000.0)
    if isinstance(read(typed.text, spec, typed.unit), Wrong) and not isinstance(
        read(typed.text, length, typed.unit), Wrong
    ):
        if per_cm is None:
            r.missing.append(Reason("missing", {"path": CROSS_SECTION.path}, CROSS_SECTION.path))
            return None
        # Lengths are reckoned in millimetres, a litre is a thousand millilitres.
        millimetres = r.number(length)
        return None if millimetres is None else millimetres / 10.0 * per_cm
    litres = r.number(spec)
    return None if litres is None else 1000.0 * litres


def _at(r: Form, path: str) -> datetime | None:
    before = len(r.wrong)
    instant = r.instant(path)
    if instant is None and len(r.wrong) == before:
        r.missing.append(Reason("missing", {}, path))
    return instant


def _levels(r: Form, per_cm: float | None) -> Iterator[LevelRead]:
    for here in _rows(r, "level"):
        at = _at(r, f"{here}.at")
        spec = Field(f"{here}.level", "volume", "L", 0.0, 1_000.0)
        before = len(r.wrong) + len(r.missing)
        ml = _level_ml(r, spec, per_cm)
        if ml is None and len(r.wrong) + len(r.missing) == before:
            r.missing.append(Reason("missing", {}, spec.path))
        if at is not None and ml is not None:
            yield LevelRead(at, ml)


def _refills(r: Form) -> Iterator[Refill]:
    for here in _rows(r, "refill"):
        at = _at(r, f"{here}.at")
        litres = _needed(r, replace(ADDED, path=f"{here}.{ADDED.path}"))
        if at is not None and litres is not None:
            yield Refill(at, 1000.0 * litres)


def _needed(r: Form, spec: Field) -> float | None:
    before = len(r.wrong)
    value = r.number(spec)
    if value is None and len(r.wrong) == before:
        r.missing.append(Reason("missing", {}, spec.path))
    return value


def _pumps(r: Form, begin: datetime) -> Iterator[JugPump]:
    for here in _rows(r, "pump"):
        dose = _needed(r, replace(DOSE, path=f"{here}.{DOSE.path}"))
        per_day = r.number(replace(fields.DOSES_PER_DAY, path=f"{here}.doses_per_day"))
        first = r.instant(f"{here}.first_dose_at")
        spread = r.number(replace(CALIBRATION, path=f"{here}.{CALIBRATION.path}"))
        ran_s = r.number(replace(fields.HEAD_HOURS, path=f"{here}.head_hours"))
        flow = r.number(replace(fields.FLOW, path=f"{here}.flow"))
        if dose is None:
            continue
        hours = None if ran_s is None else ran_s / _HOUR_S
        count = intake.DOSES_PER_DAY if per_day is None else round(per_day)
        # Nobody said when it doses: an interval after the first level, as in a plan.
        draw = Draw(r.text(f"{here}.name"), dose, count, first or begin + timedelta(days=1) / count)
        yield JugPump(draw, PUMP_UNCERTAINTY if spread is None else spread / 100.0, hours, flow)


def _said(r: Form, path: str) -> bool | None:
    return _SAID.get(r.text(path).casefold()) if not isinstance(r.value(path), bool) else bool(r.value(path))


def _line(r: Form) -> Line | None:
    if r.value("line") is None:
        return None
    bore, length = r.needed(fields.LINE_BORE), r.needed(fields.LINE_LENGTH)
    return None if bore is None or length is None else Line(bore, length)


def _test(r: Form, catalogue: Catalogue, water: Water, batch: Dissolved | Bottle | None) -> WaterTest | None:
    name = r.text("retest.parameter")
    parameter = catalogue.parameters.get(name)
    if parameter is None:
        params = {"text": name, "choices": tuple(catalogue.parameters)}
        r.wrong.append(Reason("unknown_parameter", params, "retest.parameter"))
        return None
    expected = r.needed(fields.concentration("retest.expected", parameter), water)
    measured = r.needed(fields.concentration("retest.measured", parameter), water)
    kit = r.number(replace(fields.concentration("retest.kit_accuracy", parameter), above_low=True))
    if batch is not None and not _raises(batch, parameter, water):
        chemical = "" if isinstance(batch, Bottle) else batch.name
        r.wrong.append(Reason("does_not_raise", {"chemical": chemical, "parameter": name}, "retest.parameter"))
    if expected is None or measured is None:
        return None
    half = parameter.canonical(parameter.kit_accuracy) if kit is None else kit
    # The expectation rests on a test as well, so that the difference has the errors of two.
    return WaterTest(parameter, measured - expected, math.sqrt(2.0) * half / 2.0)


def _raises(batch: Dissolved | Bottle, parameter: Parameter, water: Water) -> bool:
    if isinstance(batch, Bottle):
        return batch.parameter == parameter
    return strength(batch, parameter.name, parameter.kind, water) > 0.0
