"""What an addition does to a tank's chemistry, for people: the handling first, then the three moments."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.chemistry import ChemistryAnswer, Moment
from evenwater.engine.quantities import from_canonical
from evenwater.screens import words
from evenwater.screens.shown import figure, significant, with_unit
from evenwater.screens.terms import term, terms
from evenwater.wording import say


def lines(result: ChemistryAnswer) -> tuple[str, ...]:
    """Return the lines of an answer.

    Parameters
    ----------
    result : ChemistryAnswer
        The three moments.

    Returns
    -------
    tuple of str
        Lines with ordinary spaces; an empty one between the parts.
    """
    return tuple(line.replace("\u00a0", " ") for line in _lines(result))


def _lines(result: ChemistryAnswer) -> Iterator[str]:
    chemical, scale = result.question.chemical, result.question.scale
    yield from (
        f"{term(chemical.signal_word) or say('Caution')}: {statement}." for statement in terms(chemical.statements)
    )
    yield from (say("Caution: {caution}", caution=term(caution)) for caution in terms(chemical.cautions))
    yield ""
    yield say("Before: {before}", before=_moment(result.before, scale))
    yield say("At once: {at_once}", at_once=_moment(result.at_once, scale))
    yield say("After gas exchange: {after_gas_exchange}", after_gas_exchange=_moment(result.after_gas_exchange, scale))
    if result.remarks:
        yield ""
    yield from (say("Note: {reason}", reason=words.sentence(reason)) for reason in result.remarks)


def _moment(moment: Moment, scale: str) -> str:
    alkalinity = with_unit(significant(from_canonical(moment.alkalinity, "alkalinity", "dKH"), 3), "dKH")
    return say(
        "pH {ph} ({scale} scale), aragonite saturation {saturation}, alkalinity {alkalinity}, dissolved inorganic carbon {dic}.",
        ph=figure(moment.ph, 2),
        scale=scale,
        saturation=significant(moment.saturation, 3),
        alkalinity=alkalinity,
        dic=with_unit(significant(moment.dic, 3), say("mmol per L")),
    )
