"""Turns the fields of a value that is too high, as typed, into a question; or says what is missing or wrong."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import replace
from datetime import UTC, datetime

from evenwater.engine import fields, intake, stock_intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.jug_siphon import RunIn, Tank, run_in
from evenwater.engine.quantities import Water
from evenwater.engine.question import VOLUME_UNCERTAINTY
from evenwater.engine.reader import Field
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import Bottle, StockQuestion
from evenwater.engine.recovery_question import LARGEST_SHARE, Overdose, RecoveryQuestion
from evenwater.engine.stock import Dissolved

OVERDOSE = Field("overdose.volume", "volume", "mL", 0.0, 1_000_000.0, above_low=True)
MOST_PER_DAY = Field("exchange.most_per_day", "volume per day", "L per day", 0.0, 5_000_000.0, above_low=True)
SIGNS = ("cloudy", "white_film")


def recovery(raw: Raw, catalogue: Catalogue, now: datetime) -> RecoveryQuestion | Unread:
    """Read a question about a value that is too high.

    Parameters
    ----------
    raw : mapping
        Table ``system``, and perhaps ``change``, ``overdose`` with ``additive``, ``use``, ``new_water``, ``exchange`` and ``signs``, as
        in a question file; values are ``Typed``, plain text or instants.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone; a ``now`` in ``raw`` wins.

    Returns
    -------
    RecoveryQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = Form(raw)
    moment = r.instant("now") or now.astimezone(UTC)
    volume = r.needed(fields.NET_VOLUME)
    share = _volume_share(r)
    r.number(fields.TEMPERATURE)
    ph = r.number(fields.PH)
    water = intake.water_of(raw)
    units: dict[str, str] = {}
    before = _values(r, catalogue, "system", water, units)
    new_temperature = r.number(replace(fields.TEMPERATURE, path="new_water.temperature"))
    # Read apart for the other values' sake; what is wrong with it is noted when its turn comes.
    new_salinity = Form(raw).number(replace(fields.SALINITY, path="new_water.salinity"))
    new = _values(
        r,
        catalogue,
        "new_water",
        Water(water.salinity if new_salinity is None else new_salinity, water.temperature_c),
        {},
    )
    use = {}
    for p in catalogue.parameters.values():
        figure = r.number(fields.rise(f"use.{p.name}", p), water)
        if figure is not None:
            use[p.name] = figure
    _implausible(r, catalogue, "new_water", new, units)
    most = r.number(MOST_PER_DAY)
    overdose = _overdose(r, catalogue)
    found: tuple[RunIn, ...] = ()
    if overdose is not None and volume is not None:
        found = run_in(overdose.batch, tuple(catalogue.parameters.values()), Tank(volume, water, before), overdose.ml)
        if not found:
            r.wrong.append(Reason("recovery_raises_nothing", {}, "additive"))
    parameter = _parameter(r, catalogue, found)
    if parameter is None:
        return r.unread
    measured = _number(r, fields.concentration("change.measured", parameter), water, units, parameter)
    target = r.number(fields.concentration("change.target", parameter), water)
    if measured is None and parameter.name not in before and parameter not in [each.parameter for each in found]:
        r.missing.append(Reason("missing", {"path": "change.measured"}, "change.measured"))
    # Without a test since, and without anything that ran in, the value that is too high is the one last tested.
    itself = parameter.name if measured is None and overdose is None else ""
    _implausible(r, catalogue, "system", {name: value for name, value in before.items() if name != itself}, units)
    if r.missing or r.wrong or volume is None:
        return r.unread
    before |= {each.parameter.name: each.before for each in found if each.assumed}
    values = before | {each.parameter.name: each.after for each in found}
    if measured is not None:
        values[parameter.name] = measured
    raised = {each.parameter.name for each in found}
    return RecoveryQuestion(
        now=moment,
        name=r.text("system.name"),
        parameter=parameter,
        parameters=tuple(catalogue.parameters.values()),
        target=parameter.canonical(parameter.range_kept[1]) if target is None else target,
        volume_l=volume,
        water=water,
        values=values,
        before=before,
        new_water=new,
        use=use,
        held=tuple(
            name for name in catalogue.parameters if name == parameter.name or name in raised or _also_held(r, name)
        ),
        most_l_per_day=min(LARGEST_SHARE * volume * (1.0 - share), math.inf if most is None else most),
        measured=measured is not None,
        overdose=overdose,
        ph=ph,
        new_temperature_c=new_temperature,
        temperature_said=bool(r.text("system.temperature")),
        signs=tuple(name for name in SIGNS if r.flag(f"signs.{name}")),
        assumed=tuple(
            each.parameter.name for each in found if each.assumed and not _known_since(each, measured, parameter)
        ),
        units=units,
        volume_share=share,
        ran_in={
            each.parameter.name: volume * (each.after - each.before)
            for each in found
            if not _known_since(each, measured, parameter)
        },
    )


def _volume_share(r: Form) -> float:
    """Return how well the net volume is known [1], as a correction takes it."""
    known = r.text("system.volume_known")
    percent = r.number(fields.VOLUME_UNCERTAINTY)
    if known not in VOLUME_UNCERTAINTY:
        choices = tuple(name for name in VOLUME_UNCERTAINTY if name)
        r.wrong.append(Reason("unknown_choice", {"text": known, "choices": choices}, "system.volume_known"))
        return 0.0
    return VOLUME_UNCERTAINTY[known] if percent is None else percent / 100.0


def _implausible(
    r: Form, catalogue: Catalogue, table: str, values: Mapping[str, float], units: Mapping[str, str]
) -> None:
    """Note which values no tank and no new water has: a wrong unit, or a slip of the finger."""
    water = intake.water_of(r.raw)
    for name, value in values.items():
        p = catalogue.parameters[name]
        low, high = (p.canonical(bound) for bound in p.plausible)
        if not low <= value <= high:
            params = {
                "parameter": name, "kind": p.kind, "unit": units.get(name, p.display_unit), "water": water, "value": value, "low": low,
                "high": high, "new_water": table == "new_water",
            }  # fmt: skip
            r.wrong.append(Reason("recovery_implausible", params, f"{table}.{name}"))


def _known_since(each: RunIn, measured: float | None, parameter: Parameter) -> bool:
    return measured is not None and each.parameter == parameter


def _also_held(r: Form, name: str) -> bool:
    return r.flag(f"hold.{name}")


def _number(r: Form, spec: Field, water: Water, units: dict[str, str], p: Parameter) -> float | None:
    found = r.entered(spec, water)
    if found is None:
        return None
    units[p.name] = found[1]
    return r.number(spec, water)


def _values(r: Form, catalogue: Catalogue, table: str, water: Water, units: dict[str, str]) -> dict[str, float]:
    values = {}
    for p in catalogue.parameters.values():
        if table == "system" and p.name == "salinity":
            spec = fields.SALINITY
        else:
            spec = fields.concentration(f"{table}.{p.name}", p)
        if isinstance(r.value(table), Mapping) and r.value(spec.path) is not None:
            value = _number(r, spec, water, units, p)
            if value is not None:
                values[p.name] = value
    return values


def _overdose(r: Form, catalogue: Catalogue) -> Overdose | None:
    if r.value("overdose") is None:
        return None
    litres = r.needed(OVERDOSE)
    stock = stock_intake.stock({"additive": r.value("additive") or {}}, catalogue)
    if not isinstance(stock, StockQuestion):
        r.missing += stock.missing
        r.wrong += stock.wrong
        return None
    batch = stock.batch
    if litres is None or not isinstance(batch, Dissolved | Bottle):
        return None
    return Overdose(batch, 1000.0 * litres)


def _parameter(r: Form, catalogue: Catalogue, found: tuple[RunIn, ...]) -> Parameter | None:
    name = r.text("change.parameter")
    if name:
        if name not in catalogue.parameters:
            params = {"text": name, "choices": tuple(catalogue.parameters)}
            r.wrong.append(Reason("unknown_parameter", params, "change.parameter"))
        return catalogue.parameters.get(name)
    if not found:
        if r.value("overdose") is None:
            r.missing.append(Reason("missing", {}, "change.parameter"))
        return None
    # The one that takes the most days at its hard pace to come back to what is usually kept.
    return max(found, key=_days_above).parameter


def _days_above(each: RunIn) -> float:
    p = each.parameter
    return (each.after - p.canonical(p.range_kept[1])) / p.canonical(p.rise_hard)
