"""The one record of a system's exchange and its new water, as the question kinds take it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from evenwater.engine import exchange_intake as intake
from evenwater.engine import fields, quantities
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.exchange_question import as_much_as
from evenwater.engine.intake import water_of
from evenwater.engine.quantities import Typed, Water, to_canonical
from evenwater.engine.reader import Field, Ok, read
from evenwater.screens.shown import about
from evenwater.wording import marked, say

Values = Mapping[str, Typed]
Tables = dict[str, dict[str, Any]]

# How the flow of the two pumps is said: one figure for both, a batch change that it is to equal, or one figure each.
BOTH, AS_MUCH_AS, EACH = "", "as_much_as", "each"
_WAYS = {AS_MUCH_AS: ("as_much_as", "every_days"), EACH: ("out", "in")}
_LENGTHS = ("days", "old_jug", "new_jug")
# The mixing bucket, by its field in the record and in the question.
MIXING = {
    "mix_volume": "volume", "label_mass": "label_mass", "label_water": "label_water", "label_salinity": "label_salinity",
    "mix_measured": "measured",
}  # fmt: skip
# Fields of the record that are no value of the new water.
_OTHERS = frozenset({"way", *_LENGTHS, *MIXING, *(name for way in _WAYS.values() for name in way)})
_LOSSES = ("nitrate_loss", "phosphate_loss")
_WEEK_DAYS = 7.0
_DIGITS = 9


def way(water: Values) -> str:
    """Return how the flow is said: ``BOTH``, ``AS_MUCH_AS`` or ``EACH``."""
    said = _text(water, "way")
    return said if said in _WAYS else BOTH


def tables(system: Values, water: Values) -> Tables:
    """Return what is exchanged as the tables of a question.

    Parameters
    ----------
    system, water : mapping of str to Typed
        Fields of the system and of its record of kind ``water``, as typed; both may be empty.

    Returns
    -------
    dict of str to dict
        ``exchange`` as a question of the kind exchange has it, ``new_water`` with ``salinity``, ``temperature`` and every parameter
        that was said, by its name, and ``mixing``; a table is absent where nothing is said for it.
    """
    exchange = _filled(water, (*_WAYS.get(way(water), ()), *_LENGTHS))
    if way(water) == BOTH:
        exchange |= {"per_day": system["exchanged"]} if _text(system, "exchanged") else {}
    new_water = {
        name: typed for name, typed in water.items() if name not in {*_OTHERS, *_LOSSES} and typed.text.strip()
    }
    mixing = {MIXING[name]: typed for name, typed in _filled(water, tuple(MIXING)).items()}
    return {
        name: table for name, table in (("exchange", exchange), ("new_water", new_water), ("mixing", mixing)) if table
    }


def loss(water: Values, parameter: str) -> Typed | None:
    """Return the share of a value that skimmer, algae and media take in a day, as typed; None where nobody said it."""
    name = f"{parameter}_loss"
    return water[name] if name in _LOSSES and _text(water, name) else None


def exchanged_per_day(system: Values, water: Values, volume_l: float | None) -> Typed | None:
    """Return the old water that is taken out in a day, for what knows one figure only.

    Parameters
    ----------
    system, water : mapping of str to Typed
        Fields of the system and of its record of kind ``water``, as typed.
    volume_l : float or None
        The net volume [L], which a batch change is a share of.

    Returns
    -------
    Typed or None
        A volume per day, kept as typed where it was; None where nothing is exchanged, or a batch change cannot be read.
    """
    if way(water) == EACH:
        return water["out"] if _text(water, "out") else None
    if way(water) == BOTH:
        return system["exchanged"] if _text(system, "exchanged") else None
    share = _number(water, "as_much_as", intake.AS_MUCH_AS)
    every = _number(water, "every_days", intake.EVERY_DAYS) if _text(water, "every_days") else _WEEK_DAYS
    if share is None or every is None or volume_l is None:
        return None
    return Typed(quantities.significant(as_much_as(share / 100.0, every, volume_l), _DIGITS), "L per day")


def for_upkeep(system: Values, water: Values, volume_l: float | None, catalogue: Catalogue) -> dict[str, Typed]:
    """Return the table ``exchange`` as a question of the kind upkeep has it.

    Parameters
    ----------
    system, water : mapping of str to Typed
        Fields of the system and of its record of kind ``water``, as typed.
    volume_l : float or None
        The net volume [L].
    catalogue : Catalogue
        Parameters, with natural seawater.

    Returns
    -------
    dict of str to Typed
        ``per_day`` and the new water by parameter; empty where nothing is exchanged.

    Notes
    -----
    Upkeep takes out and puts in alike. Where less comes in than goes out and top-off holds the level, the new water is diluted by as
    much: with its values times Q_in/Q_out every value settles where it does with both pumps.
    """
    per_day = exchanged_per_day(system, water, volume_l)
    if per_day is None:
        return {}
    new = {
        name: typed
        for name, typed in tables(system, water).get("new_water", {}).items()
        if name in catalogue.parameters
    }
    ratio = in_over_out(water)
    if ratio != 1.0:
        tank = water_of({"system": dict(system)})
        new = {p.name: _diluted(p, new.get(p.name), ratio, tank) for p in catalogue.parameters.values()}
    return {"per_day": per_day, **new}


def in_over_out(water: Values) -> float:
    """Return new water in over old water out [1]; one where both pumps are said to be alike, or cannot be read."""
    out, into = (_number(water, name, spec) for name, spec in (("out", intake.OUT), ("in", intake.IN)))
    return into / out if way(water) == EACH and out and into is not None else 1.0


def said_elsewhere(system: Values, water: Values, volume_l: float | None) -> str:
    """Return what the Exchange sheet says of the flow, where it is more than one figure for both pumps.

    Parameters
    ----------
    system, water : mapping of str to Typed
        Fields of the system and of its record of kind ``water``, as typed.
    volume_l : float or None
        The net volume [L].

    Returns
    -------
    str
        A sentence; empty where the system's own figure holds.
    """
    how = way(water)
    if how == BOTH:
        return ""
    if how == EACH:
        out, into = _number(water, "out", intake.OUT), _number(water, "in", intake.IN)
        if out is None or into is None:
            return say(_NOT_YET)
        return say(
            "The Exchange sheet says: {out} a day go out, {into} come in.",
            out=about(1000.0 * out),
            into=about(1000.0 * into),
        )
    per_day = exchanged_per_day(system, water, volume_l)
    litres = None if per_day is None else _read(per_day, intake.PER_DAY)
    return (
        say(_NOT_YET)
        if litres is None
        else say("The Exchange sheet says: {litres} a day, out and in alike.", litres=about(1000.0 * litres))
    )


_NOT_YET = marked("The Exchange sheet does not say yet how much; no exchange is reckoned with.")


def _diluted(parameter: Parameter, typed: Typed | None, ratio: float, tank: Water) -> Typed:
    """Return a value of the new water times a share; one that cannot be read stays, so that it is said to be wrong."""
    field = fields.concentration("", parameter)
    value = parameter.canonical(parameter.natural) if typed is None else _read(typed, field, tank)
    if value is None:
        return typed or Typed("")
    shown = ratio * value / parameter.canonical(1.0)
    return Typed(quantities.significant(shown, _DIGITS), parameter.display_unit)


def _number(values: Values, name: str, field: Field) -> float | None:
    return _read(values.get(name, Typed("")), field)


def _read(typed: Typed, field: Field, tank: Water | None = None) -> float | None:
    found = read(typed.text, field, typed.unit, tank)
    if not isinstance(found, Ok):
        return None
    return to_canonical(float(found.entered.number), field.kind, found.entered.unit, tank)


def _text(values: Values, name: str) -> str:
    return values.get(name, Typed("")).text.strip()


def _filled(values: Values, names: tuple[str, ...]) -> dict[str, Typed]:
    return {name: values[name] for name in names if _text(values, name)}
