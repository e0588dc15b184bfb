"""Turns a record of readings, doses and exchanges, as typed, into a question; or says what is missing or wrong."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

from evenwater.engine import fields, intake, stock_intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.consumption import ConsumptionQuestion
from evenwater.engine.consumption_log import Dose, Exchange, Reading, Record
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.quantities import Water, to_canonical
from evenwater.engine.reader import Field
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import Bottle, StockQuestion, Unweighed
from evenwater.engine.stock import strength

ROWS = ("reading", "dose", "exchange")
_SHARE = Field("share", "share", "%", 0.0, 100.0, above_low=True)


def consumption(raw: Raw, catalogue: Catalogue, now: datetime) -> ConsumptionQuestion | Unread:
    """Read a question about what is used.

    Parameters
    ----------
    raw : mapping
        ``parameter``, perhaps ``kit_accuracy`` and the tables ``system`` and ``additive``, and the lists of tables ``reading``,
        ``dose`` and ``exchange``, as in a question file; values are ``Typed``, plain text or instants.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone; a ``now`` in ``raw`` wins.

    Returns
    -------
    ConsumptionQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = Form({**raw, **{name: _numbered(raw.get(name, ())) for name in ROWS}})
    moment = r.instant("now") or now.astimezone(UTC)
    name = r.text("parameter")
    parameter = catalogue.parameters.get(name)
    if parameter is None:
        params = {"text": name, "choices": tuple(catalogue.parameters)}
        r.wrong.append(Reason("unknown_parameter", params, "parameter"))
        return r.unread
    water = _water(r)
    readings = tuple(_readings(r, parameter, water))
    doses = tuple(_doses(r, parameter, water, _per_ml(r, catalogue, parameter, water)))
    exchanges = tuple(_exchanges(r, parameter, water))
    if r.missing or r.wrong:
        return r.unread
    units = [unit for _, unit in readings]
    return ConsumptionQuestion(
        now=moment,
        parameter=parameter,
        unit=units[-1] if units else parameter.display_unit,
        water=water,
        record=Record(tuple(reading for reading, _ in readings), doses, exchanges),
    )


def _numbered(rows: Any) -> Mapping[str, Any]:
    """Return a list of tables as a table of them, so that a path such as ``reading.3.value`` leads into it."""
    if not isinstance(rows, Sequence) or isinstance(rows, str):
        return {}
    return {str(number): row for number, row in enumerate(rows, start=1)}


def _rows(r: Form, name: str) -> Iterator[str]:
    yield from (f"{name}.{number}" for number in r.raw[name])


def _water(r: Form) -> Water:
    for spec in (fields.SALINITY, fields.TEMPERATURE):
        r.number(spec)
    return intake.water_of(r.raw)


def _at(r: Form, path: str) -> datetime | None:
    before = len(r.wrong)
    instant = r.instant(path)
    if instant is None and len(r.wrong) == before:
        r.missing.append(Reason("missing", {"path": ""}, path))
    return instant


def _figure(r: Form, spec: Field, water: Water) -> tuple[float, str] | None:
    """Return a figure in the canonical unit and the unit it was entered in, and note it as missing when it is not there."""
    before = len(r.wrong)
    found = r.entered(spec, water)
    if found is None:
        if len(r.wrong) == before:
            r.missing.append(Reason("missing", {"path": ""}, spec.path))
        return None
    return to_canonical(found[0], spec.kind, found[1], water), found[1]


def _readings(r: Form, parameter: Parameter, water: Water) -> Iterator[tuple[Reading, str]]:
    # Half the width of a 95 % interval, taken as two standard deviations.
    spec = replace(fields.concentration("kit_accuracy", parameter), above_low=True)
    entered = r.number(spec, water)
    sd = (parameter.canonical(parameter.kit_accuracy) if entered is None else entered) / 2.0
    for here in _rows(r, "reading"):
        at = _at(r, f"{here}.at")
        value = _figure(r, fields.concentration(f"{here}.value", parameter), water)
        if at is not None and value is not None:
            yield Reading(at, value[0], sd), value[1]


def _per_ml(r: Form, catalogue: Catalogue, parameter: Parameter, water: Water) -> float | None:
    """Return by how much a millilitre of the stock raises the value, when doses are given in volumes."""
    if not any(r.value(f"{here}.volume") is not None for here in _rows(r, "dose")):
        return None
    volume_l = r.needed(fields.NET_VOLUME)
    additive = r.value("additive")
    table = dict(additive) if isinstance(additive, Mapping) else {}
    if isinstance(table.get("label"), Mapping):
        table["label"] = {"parameter": parameter.name, **table["label"]}
    stock = stock_intake.stock({"additive": table}, catalogue)
    if not isinstance(stock, StockQuestion):
        r.missing += stock.missing
        r.wrong += stock.wrong
        return None
    # Nothing is wanted here, so a batch is weighed or a bottle.
    asked = stock.batch
    batch, chemical = (asked.label, "") if isinstance(asked, Bottle) else (asked, asked.chemical.name)
    carried = 0.0 if isinstance(batch, Unweighed) else strength(batch, parameter.name, parameter.kind, water)
    if carried <= 0.0:
        params = {"chemical": chemical, "parameter": parameter.name}
        r.wrong.append(Reason("does_not_raise", params, "additive.chemical"))
    return None if volume_l is None or carried <= 0.0 else carried / volume_l


def _doses(r: Form, parameter: Parameter, water: Water, per_ml: float | None) -> Iterator[Dose]:
    for here in _rows(r, "dose"):
        at = _at(r, f"{here}.at")
        if r.value(f"{here}.volume") is None:
            raises = replace(fields.label_raises(parameter), path=f"{here}.raises")
            found = _figure(r, raises, water)
            rise = None if found is None else found[0]
        else:
            litres = r.number(replace(fields.LABEL_DOSE, path=f"{here}.volume"))
            rise = None if litres is None or per_ml is None else 1000.0 * litres * per_ml
        if at is not None and rise is not None:
            yield Dose(at, rise)


def _exchanges(r: Form, parameter: Parameter, water: Water) -> Iterator[Exchange]:
    for here in _rows(r, "exchange"):
        at = _at(r, f"{here}.at")
        share = _figure(r, replace(_SHARE, path=f"{here}.share"), water)
        new = _figure(r, fields.concentration(f"{here}.new_water", parameter), water)
        if at is not None and share is not None and new is not None:
            yield Exchange(at, share[0] / 100.0, new[0])
