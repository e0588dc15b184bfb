"""A stock for people: the hazards and the handling before any number, then the recipe and what it does."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.quantities import figure, from_canonical, significant
from evenwater.engine.recipe import SAID_DOSE_ML, SAID_WATER_L, Bottle, StockAnswer
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
    chemical = result.batch.chemical
    for statement in chemical.statements:
        yield f"{chemical.signal_word or 'Caution'}: {statement}."
    yield from (f"Caution: {caution}" for caution in chemical.cautions)


def _recipe(result: StockAnswer) -> Iterator[str]:
    if isinstance(result.batch, Bottle):
        return
    batch, most = result.batch, result.most_g_per_l
    purity = "" if batch.purity == 1.0 else f" of {with_unit(significant(100.0 * batch.purity, 4), '%')}"
    yield (
        f"Weigh out {_mass(batch.grams)} of {batch.chemical.tall_man}{purity}. Dissolve it in part of the water, then fill "
        f"up to {with_unit(significant(batch.made_up_l, 4), 'L')}."
    )
    if most is not None:
        at = with_unit(figure(result.temperature_c, 1), "°C")
        yield f"At {at} a litre of solution holds {with_unit(significant(most, 3), 'g')} at most."


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
