"""A stock for people: the hazards and the handling before any number, then the recipe and what it does."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.quantities import figure, from_canonical, significant
from evenwater.engine.recipe import SAID_DOSE_ML, SAID_WATER_L, Bottle, StockAnswer
from evenwater.engine.stock import Portion
from evenwater.screens import words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.shown import with_unit

_CARRIED = {"dic": "dissolved inorganic carbon", "salinity": "dry salt"}
_PER_LITRE = {"g/L": "g per L", "mmol/L": "mmol per L"}


def lines(result: StockAnswer) -> tuple[str, ...]:
    """Return the lines of a stock that can be made.

    Parameters
    ----------
    result : StockAnswer
        The stock.

    Returns
    -------
    tuple of str
        Lines with ordinary spaces; an empty one between the parts.
    """
    said = (*_hazards(result), "", *_recipe(result), *_strength(result), *_remarks(result))
    return tuple(line.replace("\u00a0", " ") for line in said)


def _hazards(result: StockAnswer) -> Iterator[str]:
    if isinstance(result.batch, Bottle):
        yield from (f"Caution: {caution}" for caution in BOTTLE)
        return
    batch = result.batch
    for statement in batch.statements:
        yield f"{batch.signal_word or 'Caution'}: {statement}."
    yield from (f"Caution: {caution}" for caution in batch.cautions)


def _recipe(result: StockAnswer) -> Iterator[str]:
    if isinstance(result.batch, Bottle):
        return
    batch, most = result.batch, result.most_g_per_l
    litres = with_unit(significant(batch.made_up_l, 4), "L")
    if batch.saturated:
        # Twice what dissolves: carbonate forms at the surface, and the ground must never run out.
        yield f"Put {_mass(2.0 * batch.grams)} of {batch.tall_man} into {litres} of water, stir, and let it settle until it is clear."
    else:
        weighed = " and ".join(_portion(portion) for portion in batch.portions)
        them = "them" if batch.also else "it"
        yield f"Weigh out {weighed}. Dissolve {them} in part of the water, then fill up to {litres}."
    if most is not None:
        at = with_unit(figure(result.temperature_c, 1), "°C")
        yield f"At {at} a litre of solution holds {with_unit(significant(most, 3), 'g')} at most."


def _portion(portion: Portion) -> str:
    purity = "" if portion.purity == 1.0 else f" of {with_unit(significant(100.0 * portion.purity, 4), '%')}"
    return f"{_mass(portion.grams)} of {portion.chemical.tall_man}{purity}"


def _mass(grams: float) -> str:
    return with_unit(significant(grams * 1000.0, 4), "mg") if grams < 1.0 else with_unit(significant(grams, 4), "g")


def _strength(result: StockAnswer) -> Iterator[str]:
    for item in result.carries:
        unit = _PER_LITRE.get(item.unit) or words.unit_words(item.unit)
        yield f"Carries {with_unit(significant(item.per_litre, 4), unit)}: {_CARRIED.get(item.name, item.name)}."
    dose, water = with_unit(figure(SAID_DOSE_ML, 0), "mL"), with_unit(figure(SAID_WATER_L, 0), "L")
    for parameter, rise in result.rises:
        unit = parameter.display_unit
        amount = with_unit(significant(from_canonical(rise, parameter.kind, unit), 3), words.unit_words(unit))
        yield f"{dose} raises {water} by {amount}: {parameter.name}."


def _remarks(result: StockAnswer) -> Iterator[str]:
    if result.remarks:
        yield ""
    yield from (f"Note: {words.sentence(reason)}" for reason in result.remarks)
