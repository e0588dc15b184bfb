"""Turns the fields of an exchange, as typed, into a question; or says what is missing or wrong."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Any

from evenwater.engine import fields, foods_intake, intake, stock_intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.exchange_question import ExchangeQuestion, Mixing, Moved, OneDose, Pair, as_much_as
from evenwater.engine.foods_question import fed
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.quantities import Water, to_canonical
from evenwater.engine.question import VOLUME_UNCERTAINTY
from evenwater.engine.reader import Field
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import Bottle, StockQuestion
from evenwater.engine.stock import Dissolved

ROWS = ("value", "dose", "food")
PER_DAY = Field("exchange.per_day", "volume per day", "L per day", 0.0, 5_000_000.0)
OUT, IN = replace(PER_DAY, path="exchange.out"), replace(PER_DAY, path="exchange.in")
AS_MUCH_AS = Field("exchange.as_much_as", "share", "%", 0.0, 99.0, above_low=True)
EVERY_DAYS = Field("exchange.every_days", "number", "", 0.0, 365.0, above_low=True, bare=True)
DAYS = Field("exchange.days", "number", "", 0.0, 3650.0, above_low=True, bare=True)
OLD_JUG = Field("exchange.old_jug", "volume", "L", 0.0, 1_000_000.0, above_low=True)
NEW_JUG = replace(OLD_JUG, path="exchange.new_jug")
NEW_SALINITY = Field("new_water.salinity", "salinity", "ppt", 0.0, 45.0, bare=True)
NEW_TEMPERATURE = replace(fields.TEMPERATURE, path="new_water.temperature", low=0.0)
LOSS = Field("loss_per_day", "share", "%", 0.0, 100.0)
AFTER_DAYS = Field("after_days", "number", "", 0.0, 3650.0, bare=True)
MIX_VOLUME = Field("mixing.volume", "volume", "L", 0.0, 1_000_000.0, above_low=True)
LABEL_MASS = Field("mixing.label_mass", "mass", "g", 0.0, 1_000_000.0, above_low=True)
LABEL_WATER = Field("mixing.label_water", "volume", "L", 0.0, 1_000_000.0, above_low=True)
LABEL_SALINITY = Field("mixing.label_salinity", "salinity", "ppt", 5.0, 45.0, bare=True)
MEASURED = Field("mixing.measured", "salinity", "ppt", 0.0, 60.0, bare=True)
DAYS_AHEAD = 30.0
_WEEK = 7.0


def exchange(raw: Raw, catalogue: Catalogue) -> ExchangeQuestion | Unread:
    """Read a question about an exchange.

    Parameters
    ----------
    raw : mapping
        Tables ``system`` and ``exchange``, a list ``value`` of tables, and perhaps tables ``new_water`` and ``mixing`` and lists
        ``dose`` and ``food``, as in a question file; values are ``Typed``, plain text or whole numbers.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    ExchangeQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = Form({**raw, **{name: _numbered(raw.get(name, ())) for name in ROWS}})
    for spec in (fields.SALINITY, fields.TEMPERATURE):
        r.number(spec)
    water = intake.water_of(raw)
    volume = r.needed(fields.NET_VOLUME)
    percent = r.number(fields.VOLUME_UNCERTAINTY)
    evaporation = r.number(fields.EVAPORATION)
    pair = _pair(r, volume)
    days = r.number(DAYS)
    salinity, temperature = r.number(NEW_SALINITY, water), r.number(NEW_TEMPERATURE)
    old_jug, new_jug = r.number(OLD_JUG), r.number(NEW_JUG)
    new_salinity = water.salinity if salinity is None else salinity
    values = tuple(_values(r, catalogue, water, salinity))
    doses = tuple(_doses(r, catalogue, water))
    foods = tuple(foods_intake.read_foods(r, catalogue, water))
    mixing = None if r.value("mixing") is None else _mixing(r)
    if not r.raw["value"]:
        r.missing.append(Reason("missing", {}, "value"))
    if r.missing or r.wrong or volume is None or pair is None:
        return r.unread
    return ExchangeQuestion(
        name=r.text("system.name"),
        volume_l=volume,
        uncertainty=VOLUME_UNCERTAINTY[""] if percent is None else percent / 100.0,
        water=water,
        pair=pair,
        days=DAYS_AHEAD if days is None else days,
        values=fed(values, foods, volume),
        doses=doses,
        new_salinity=new_salinity,
        new_temperature_c=temperature,
        evaporation_l=evaporation,
        old_jug_l=old_jug,
        new_jug_l=new_jug,
        mixing=mixing,
        fed=tuple(food.name for food in foods),
    )


def _numbered(rows: Any) -> Mapping[str, Any]:
    """Return a list of tables as a table of them, so that a path such as ``value.2.now`` leads into it."""
    if not isinstance(rows, Sequence) or isinstance(rows, str):
        return {}
    return {str(number): row for number, row in enumerate(rows, start=1)}


def _needed(r: Form, spec: Field, water: Water | None = None) -> float | None:
    before = len(r.wrong)
    value = r.number(spec, water)
    if value is None and len(r.wrong) == before:
        r.missing.append(Reason("missing", {}, spec.path))
    return value


def _pair(r: Form, volume: float | None) -> Pair | None:
    """Return the pair: one figure for both pumps, one for each, or the batch change that it is to equal."""
    if r.text(AS_MUCH_AS.path):
        share, every = r.number(AS_MUCH_AS), r.number(EVERY_DAYS)
        if share is None or volume is None:
            return None
        per_day = as_much_as(share / 100.0, _WEEK if every is None else every, volume)
        return Pair(per_day, per_day)
    if r.text(OUT.path) or r.text(IN.path):
        out, into = _needed(r, OUT), _needed(r, IN)
        return None if out is None or into is None else Pair(out, into)
    both = _needed(r, PER_DAY)
    return None if both is None else Pair(both, both)


def _parameter(r: Form, catalogue: Catalogue, path: str) -> Parameter | None:
    name = r.text(path)
    found = catalogue.parameters.get(name)
    if found is None and name:
        params = {"text": name, "choices": tuple(catalogue.parameters)}
        r.wrong.append(Reason("unknown_parameter", params, path))
    elif found is None:
        r.missing.append(Reason("missing", {}, path))
    return found


def _values(r: Form, catalogue: Catalogue, water: Water, new_salinity: float | None) -> Iterator[Moved]:
    for number in r.raw["value"]:
        here = f"value.{number}"
        p = _parameter(r, catalogue, f"{here}.parameter")
        if p is None:
            continue
        spec = fields.concentration(f"{here}.now", p)
        now = r.entered(spec, water)
        if now is None and not r.text(spec.path):
            r.missing.append(Reason("missing", {}, spec.path))
        new = r.number(fields.concentration(f"{here}.new_water", p), water)
        if p.kind == "salinity":
            # The pair's own field says it once for all.
            new = water.salinity if new_salinity is None else new_salinity
        use = r.number(fields.rise(f"{here}.daily_use", p), water)
        added = r.number(fields.rise(f"{here}.daily_addition", p), water)
        loss = r.number(replace(LOSS, path=f"{here}.{LOSS.path}"))
        batch = _batch(r, catalogue, here)
        if now is None:
            continue
        yield Moved(
            parameter=p,
            # Specific gravity is not proportional to salinity: it is said in ppt.
            unit="ppt" if p.kind == "salinity" else now[1],
            now=to_canonical(now[0], p.kind, now[1], water),
            new_water=p.canonical(p.natural) if new is None else new,
            use=use or 0.0,
            added=added or 0.0,
            loss=(loss or 0.0) / 100.0,
            assumed=new is None,
            batch=batch,
        )


def _batch(r: Form, catalogue: Catalogue, here: str) -> Dissolved | Bottle | None:
    given = r.value(f"{here}.additive")
    if given is None:
        return None
    stock = stock_intake.stock({"additive": given}, catalogue)
    if isinstance(stock, StockQuestion):
        return stock.batch if isinstance(stock.batch, Dissolved | Bottle) else None
    r.missing += [replace(reason, path=f"{here}.{reason.path}") for reason in stock.missing]
    r.wrong += [replace(reason, path=f"{here}.{reason.path}") for reason in stock.wrong]
    return None


def _doses(r: Form, catalogue: Catalogue, water: Water) -> Iterator[OneDose]:
    for number in r.raw["dose"]:
        here = f"dose.{number}"
        p = _parameter(r, catalogue, f"{here}.parameter")
        day = _needed(r, replace(AFTER_DAYS, path=f"{here}.{AFTER_DAYS.path}"))
        raises = None if p is None else _needed(r, fields.difference(f"{here}.raises", p), water)
        if p is not None and day is not None and raises is not None:
            yield OneDose(p, day, raises)


def _mixing(r: Form) -> Mixing | None:
    volume, grams, water = _needed(r, MIX_VOLUME), _needed(r, LABEL_MASS), _needed(r, LABEL_WATER)
    salinity, measured = _needed(r, LABEL_SALINITY), r.number(MEASURED)
    if volume is None or grams is None or water is None or salinity is None:
        return None
    return Mixing(volume, grams, water, salinity, measured)
