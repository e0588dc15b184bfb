"""What else a plan does, line by line: what comes along, what upkeep leaves behind, the chemistry on the way."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import density_kg_per_l, from_canonical, to_canonical
from evenwater.engine.side_effects import Carried, Instant, Pair, SideEffects, Upkeep, Way
from evenwater.engine.units import KINDS
from evenwater.engine.water_limits import PH_ASSUMED
from evenwater.screens.shown import Shown, about, figure, significant, with_unit
from evenwater.screens.terms import capitalized
from evenwater.screens.views import WorkLine
from evenwater.wording import marked, say, say_all, say_many

TITLE = marked("What else it does")
# A rise in salinity below this is nothing that can be measured.
_LEAST_SALINITY = 0.001
_UNITS = {
    "mmol/L": marked("mmol per L"),
    "mg/L": marked("mg per L"),
    "mg/L as NO3": marked("mg per L as NO3"),
    "mg/L as PO4": marked("mg per L as PO4"),
}
_PARTNERS = {
    "calcium": marked("calcium is taken to be made good with calcium chloride"),
    "alkalinity": marked("alkalinity is taken to be made good with a sodium salt"),
}

Json = dict[str, Any]


def lines(effects: SideEffects, shown: Shown) -> tuple[WorkLine, ...]:
    """Return what else a plan does, in the keeper's words.

    Parameters
    ----------
    effects : SideEffects
        What the engine found.
    shown : Shown
        The keeper's unit of the value that is raised.

    Returns
    -------
    tuple of WorkLine
        The correction first, then the upkeep, then the chemistry; each line with a name of its own.
    """
    return (
        *_correction(effects, shown),
        *(() if effects.pair is None else _pair(effects.pair, shown)),
        *_upkeep(effects, shown),
        *(() if effects.way is None else _way(effects.way)),
    )


def _correction(effects: SideEffects, shown: Shown) -> Iterator[WorkLine]:
    along = effects.correction
    stock = about(1000.0 * along.water_l)
    if not effects.known:
        yield WorkLine(
            say("What comes along"), say("a label does not say what else is in the bottle"), say("not known")
        )
    for item in along.carried:
        yield WorkLine(
            say("{item} with the correction", item=_name(item)),
            say("carried in by {stock} of stock", stock=stock),
            _amount(item, shown),
        )
    if along.salinity is not None and shown.parameter.name != "salinity":
        how = say("what is in the water by then ÷ {density}; alkalinity counts as bicarbonate", density=_density(shown))
        yield WorkLine(say("Salinity by the last dose"), how, _more(along.salinity))
    yield WorkLine(say("Water with the correction"), say("comes in place of as much top-off"), stock)


def _pair(pair: Pair, shown: Shown) -> Iterator[WorkLine]:
    unit = _alkalinity_unit(shown)
    per_unit = pair.calcium_per_meq * to_canonical(1.0, "alkalinity", unit)
    words = KINDS["alkalinity"].unit(unit).shown
    ratio = say(
        "{per_unit} for each {words}", per_unit=with_unit(significant(per_unit, 4), say("mg per L")), words=words
    )
    skeleton = say("skeleton takes one mole of calcium to two equivalents")
    if pair.calcium_per_day <= 0.0:
        yield WorkLine(say("Calcium to alkalinity"), skeleton, ratio)
        return
    calcium = say(
        "{calcium_per_day} per day", calcium_per_day=with_unit(significant(pair.calcium_per_day, 3), say("mg per L"))
    )
    alkalinity = say("{alkalinity_per_day} per day", alkalinity_per_day=_alkalinity(pair.alkalinity_per_day, shown))
    if shown.parameter.name == "alkalinity":
        yield WorkLine(say("Calcium used with it"), f"{alkalinity} × {ratio}; {skeleton}", calcium)
    else:
        yield WorkLine(say("Alkalinity used with it"), f"{calcium} ÷ {ratio}; {skeleton}", alkalinity)


def _upkeep(effects: SideEffects, shown: Shown) -> Iterator[WorkLine]:
    month, year = effects.month, effects.year
    if month is None or year is None:
        return
    if month.salinity is not None and year.salinity is not None and month.salt_g is not None:
        yield _salt(month, month.salt_g, effects.partner)
        if month.stays:
            how = say("of upkeep, {salt_g} in the whole tank, if nothing is exchanged", salt_g=_mass(month.salt_g))
            yield WorkLine(say("Salinity in a month"), how, _more(month.salinity))
            yield WorkLine(say("Salinity in a year"), say("of upkeep, if nothing is exchanged"), _more(year.salinity))
        if not month.only_nacl:
            for item, later in zip(month.stays, year.stays, strict=True):
                why = say("left as the nutrient is taken up") if item.name == "alkalinity" else say("not used up")
                how = say("{why}, if nothing is exchanged; {later} in a year", why=why, later=_amount(later, shown))
                yield WorkLine(say("{item} in a month", item=_name(item)), how, _amount(item, shown))
    yield WorkLine(
        say("Water in a month"), say("of upkeep, comes in place of as much top-off"), about(1000.0 * month.water_l)
    )


def _salt(month: Upkeep, salt_g: float, partner: str) -> WorkLine:
    taken = f"; {say_all(_PARTNERS[partner])}" if partner else ""
    name = say("Salt left behind in a month")
    if not month.stays:
        return WorkLine(name, say("everything that comes is used up"), say("none"))
    if month.only_nacl:
        mole = with_unit(figure(molar_mass("NaCl"), 2), "g")
        return WorkLine(
            name,
            say("every equivalent leaves one mole, {mole}{taken}", mole=mole, taken=taken),
            say("{salt_g} of sodium chloride", salt_g=_mass(salt_g)),
        )
    return WorkLine(name, say("the mass of what is not used up{taken}", taken=taken), _mass(salt_g))


def _way(way: Way) -> Iterator[WorkLine]:
    yield _instants("pH", way, lambda instant: figure(instant.ph, 2))
    yield _instants(say("Aragonite saturation"), way, lambda instant: significant(instant.saturation, 3))
    yield _instants(
        say("Dissolved inorganic carbon"),
        way,
        lambda instant: with_unit(significant(instant.dic, 3), say("mmol per L")),
    )
    yield WorkLine(say("Taken for these"), "; ".join(_taken(way)), "")


def _instants(name: str, way: Way, write: Callable[[Instant], str]) -> WorkLine:
    dose = say_many("right after a dose", "right after the {n} doses of an hour", way.doses_at_once)
    moments = (
        (way.now, say("now")),
        (way.after_dose, dose),
        (way.at_target, say("at the target")),
        (way.after_dose_there, say("{dose} there", dose=dose)),
    )
    said = ", ".join(f"{write(instant)} {when}" for instant, when in moments if instant is not None)
    return WorkLine(
        name, said, "" if way.at_target is None else say("{at_target} at the target", at_target=write(way.at_target))
    )


def _taken(way: Way) -> Iterator[str]:
    if way.ph_known:
        yield say("the air brings the carbon dioxide back between doses")
    else:
        yield say("pH was not measured: {ph_assumed} now and at the target", ph_assumed=figure(PH_ASSUMED, 1))
    if not way.calcium_known:
        yield say("calcium was not given: as in natural seawater")
    if not way.alkalinity_known:
        yield say("alkalinity was not given: as in natural seawater")
    if way.after_dose is None:
        yield say("what a dose of this bottle does at once is not known")


def _name(item: Carried) -> str:
    return capitalized(item.name)


def _amount(item: Carried, shown: Shown) -> str:
    if item.name == "alkalinity":
        return _alkalinity(item.amount, shown)
    return with_unit(significant(item.amount, 3), say_all(_UNITS[item.unit]))


def _alkalinity_unit(shown: Shown) -> str:
    return shown.unit if shown.parameter.name == "alkalinity" else "dKH"


def _alkalinity(meq_per_l: float, shown: Shown) -> str:
    unit = _alkalinity_unit(shown)
    return with_unit(
        significant(from_canonical(meq_per_l, "alkalinity", unit), 3), KINDS["alkalinity"].unit(unit).shown
    )


def _density(shown: Shown) -> str:
    return with_unit(significant(density_kg_per_l(shown.water), 5), say("kg per L"))


def _mass(grams: float) -> str:
    if grams >= 1000.0:
        return with_unit(significant(grams / 1000.0, 3), "kg")
    return with_unit(significant(grams, 3), "g") if grams >= 1.0 else with_unit(significant(1000.0 * grams, 3), "mg")


def _more(salinity: float) -> str:
    if salinity < _LEAST_SALINITY:
        return say(
            "less than {least_salinity} more", least_salinity=with_unit(figure(_LEAST_SALINITY, 3), say("g per kg"))
        )
    return say("{salinity} more", salinity=with_unit(significant(salinity, 2), say("g per kg")))


def as_json(effects: SideEffects) -> Json:
    """Return the same for the JSON answer.

    Parameters
    ----------
    effects : SideEffects
        What the engine found.

    Returns
    -------
    dict
        Quantities as value and unit; what is not known, or does not apply, is None.
    """
    pair, way = effects.pair, effects.way
    return {
        "additive_known": effects.known,
        "correction": {
            "carried": _listed(effects.correction.carried),
            "salinity_rise": _maybe(effects.correction.salinity, "g/kg"),
            "water": _quantity(effects.correction.water_l, "L"),
        },
        "upkeep_month": _upkeep_json(effects.month),
        "upkeep_year": _upkeep_json(effects.year),
        "taken_as_made_good": effects.partner or None,
        "calcium_per_alkalinity": None if pair is None else _quantity(pair.calcium_per_meq, "mg/meq"),
        "used_together": None
        if pair is None
        else {
            "calcium": _quantity(pair.calcium_per_day, "mg/L per day"),
            "alkalinity": _quantity(pair.alkalinity_per_day, "meq/L per day"),
        },
        "along_the_way": None if way is None else _way_json(way),
    }


def _quantity(value: float, unit: str) -> Json:
    return {"value": value, "unit": unit}


def _maybe(value: float | None, unit: str) -> Json | None:
    return None if value is None else _quantity(value, unit)


def _listed(items: tuple[Carried, ...]) -> Json:
    short = {"dissolved inorganic carbon": "dic"}
    return {short.get(item.name, item.name): _quantity(item.amount, item.unit) for item in items}


def _upkeep_json(upkeep: Upkeep | None) -> Json | None:
    if upkeep is None:
        return None
    return {
        "lasts": _quantity(upkeep.days, "d"),
        "stays": _listed(upkeep.stays),
        "salinity_rise": _maybe(upkeep.salinity, "g/kg"),
        "salt_left": _maybe(upkeep.salt_g, "g"),
        "water": _quantity(upkeep.water_l, "L"),
    }


def _way_json(way: Way) -> Json:
    instants = {
        "now": way.now,
        "after_dose": way.after_dose,
        "at_target": way.at_target,
        "after_dose_at_target": way.after_dose_there,
    }
    return {
        **{name: None if instant is None else _instant_json(instant) for name, instant in instants.items()},
        "doses_at_once": way.doses_at_once,
        "ph_known": way.ph_known,
        "calcium_known": way.calcium_known,
        "alkalinity_known": way.alkalinity_known,
    }


def _instant_json(instant: Instant) -> Json:
    return {
        "ph": _quantity(instant.ph, "NBS scale"),
        "aragonite_saturation": _quantity(instant.saturation, ""),
        "dic": _quantity(instant.dic, "mmol/L"),
    }
