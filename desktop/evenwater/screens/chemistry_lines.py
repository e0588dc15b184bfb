"""What an addition does to a tank's chemistry, for people: the handling first, then the three moments."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.chemistry import ChemistryAnswer, Moment
from evenwater.engine.quantities import figure, from_canonical, significant
from evenwater.screens import words
from evenwater.screens.shown import with_unit


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
    yield from (f"{chemical.signal_word or 'Caution'}: {statement}." for statement in chemical.statements)
    yield from (f"Caution: {caution}" for caution in chemical.cautions)
    yield ""
    yield f"Before: {_moment(result.before, scale)}"
    yield f"At once: {_moment(result.at_once, scale)}"
    yield f"After gas exchange: {_moment(result.after_gas_exchange, scale)}"
    if result.remarks:
        yield ""
    yield from (f"Note: {words.sentence(reason)}" for reason in result.remarks)


def _moment(moment: Moment, scale: str) -> str:
    alkalinity = with_unit(significant(from_canonical(moment.alkalinity, "alkalinity", "dKH"), 3), "dKH")
    return (
        f"pH {figure(moment.ph, 2)} ({scale} scale), aragonite saturation {significant(moment.saturation, 3)}, alkalinity "
        f"{alkalinity}, dissolved inorganic carbon {with_unit(significant(moment.dic, 3), 'mmol per L')}."
    )
