"""A stock for people: the hazards and the handling before any number, then the recipe and what it does."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.quantities import from_canonical
from evenwater.engine.recipe import SAID_DOSE_ML, SAID_WATER_L, Bottle, StockAnswer
from evenwater.engine.stock import Portion
from evenwater.screens import words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.shown import figure, significant, unit_words, with_unit
from evenwater.screens.terms import term, terms
from evenwater.wording import marked, say, say_all

_CARRIED = {"dic": marked("dissolved inorganic carbon"), "salinity": marked("dry salt")}
_PER_LITRE = {"g/L": marked("g per L"), "mmol/L": marked("mmol per L")}


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
        yield from (say("Caution: {caution}", caution=term(caution)) for caution in say_all(BOTTLE))
        return
    batch = result.batch
    for statement in terms(batch.statements):
        yield f"{term(batch.signal_word) or say('Caution')}: {statement}."
    yield from (say("Caution: {caution}", caution=term(caution)) for caution in terms(batch.cautions))


def _recipe(result: StockAnswer) -> Iterator[str]:
    if isinstance(result.batch, Bottle):
        return
    batch, most = result.batch, result.most_g_per_l
    litres = with_unit(significant(batch.made_up_l, 4), "L")
    if batch.saturated:
        # Twice what dissolves: carbonate forms at the surface, and the ground must never run out.
        yield say(
            "Put {grams} of {tall_man} into {litres} of water, stir, and let it settle until it is clear.",
            grams=_mass(2.0 * batch.grams),
            tall_man=term(batch.tall_man),
            litres=litres,
        )
    else:
        weighed = say(" and ").join(_portion(portion) for portion in batch.portions)
        if batch.also:
            yield say(
                "Weigh out {weighed}. Dissolve them in part of the water, then fill up to {litres}.",
                weighed=weighed,
                litres=litres,
            )
        else:
            yield say(
                "Weigh out {weighed}. Dissolve it in part of the water, then fill up to {litres}.",
                weighed=weighed,
                litres=litres,
            )
    if most is not None:
        at = with_unit(figure(result.temperature_c, 1), "°C")
        yield say("At {at} a litre of solution holds {most} at most.", at=at, most=with_unit(significant(most, 3), "g"))


def _portion(portion: Portion) -> str:
    purity = (
        ""
        if portion.purity == 1.0
        else say(" of {purity}", purity=with_unit(significant(100.0 * portion.purity, 4), "%"))
    )
    return say(
        "{grams} of {tall_man}{purity}",
        grams=_mass(portion.grams),
        tall_man=term(portion.chemical.tall_man),
        purity=purity,
    )


def _mass(grams: float) -> str:
    return with_unit(significant(grams * 1000.0, 4), "mg") if grams < 1.0 else with_unit(significant(grams, 4), "g")


def _strength(result: StockAnswer) -> Iterator[str]:
    for item in result.carries:
        unit = say_all(_PER_LITRE.get(item.unit)) or unit_words(item.unit)
        yield say(
            "Carries {per_litre}: {item}.",
            per_litre=with_unit(significant(item.per_litre, 4), unit),
            item=term(_CARRIED.get(item.name, item.name)),
        )
    dose, water = with_unit(figure(SAID_DOSE_ML, 0), "mL"), with_unit(figure(SAID_WATER_L, 0), "L")
    for parameter, rise in result.rises:
        unit = parameter.display_unit
        amount = with_unit(significant(from_canonical(rise, parameter.kind, unit), 3), unit_words(unit))
        yield say(
            "{dose} raises {water} by {amount}: {parameter}.",
            dose=dose,
            water=water,
            amount=amount,
            parameter=term(parameter.name),
        )


def _remarks(result: StockAnswer) -> Iterator[str]:
    if result.remarks:
        yield ""
    yield from (say("Note: {reason}", reason=words.sentence(reason)) for reason in result.remarks)
