"""What the label of a jug says: whose it is, what may happen, how to handle it, and only then how strong it is.

Sources: ISMP, Principles of Designing a Medication Label (full names, strength as quantity per volume, no clutter); the
Globally Harmonized System of Classification and Labelling of Chemicals (signal word, hazard and handling statements).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from evenwater.engine.quantities import Water, from_canonical
from evenwater.engine.recipe import SAID_DOSE_ML, SAID_WATER_L, Bottle, StockAnswer
from evenwater.engine.stock import Dissolved
from evenwater.screens import plan_id
from evenwater.screens.answer import BOTTLE
from evenwater.screens.dose_card import strength_words
from evenwater.screens.shown import Shown, date_text, figure, formula, significant, unit_words, with_unit
from evenwater.screens.terms import listed, term, terms
from evenwater.wording import marked, say


@dataclass(frozen=True)
class LabelFacts:
    """What is known of a batch besides what it is; dates as ISO text, and whatever is not known is empty."""

    name: str
    batch_id: str = ""
    mixed_on: str = ""
    mixed_by: str = ""
    use_by: str = ""


@dataclass(frozen=True)
class Contents:
    """One chemical in the jug: its full name with the telling part in capitals, and its formula, smaller."""

    name: str
    formula: str = ""


@dataclass(frozen=True)
class Entry:
    """A labelled fact; an empty ``text`` is printed as room to write on."""

    label: str
    text: str = ""


@dataclass(frozen=True)
class JugLabel:
    """Everything a jug's label says, in the order in which it stands there.

    ``signal_word`` is empty where the chemical has none. ``first_aid`` ends where a telephone number is to be written.
    ``batch`` is the code that matches jug and plan; it stands among the ``entries`` as well, where all that is not known
    is left to be written in by hand, as is the ``name``.
    """

    name: str
    batch: str
    contents: tuple[Contents, ...]
    signal_word: str
    statements: tuple[str, ...]
    handling: tuple[str, ...]
    separation: str
    keep_away: str
    first_aid: str
    strength: str
    does: tuple[str, ...]
    entries: tuple[Entry, ...]


# The last two words stay together, in front of the line for the number.
FIRST_AID = marked("In the eyes: rinse for at least 15 minutes and get medical help. Poison\u00a0centre:")
_KEEP_AWAY = marked("Keep away from children. Not for drinking.")
_BAG = marked("The bag's own safety sheet and local rules come first.")
# Cautions that a line of the label's own says, and says more of.
_IN_THE_EYES = BOTTLE[1]
_NEVER_WITH = "Never mix it with a concentrate of "
_WORD = re.compile("[a-z]+")
# In the words that stand on other jugs.
_ALKALINITY = (marked("carbonate"), marked("bicarbonate"), marked("other alkalinity"))
_CARRIED = {"dic": marked("dissolved inorganic carbon"), "salinity": marked("dry salt")}

# What falls out when two concentrates meet: chalk, magnesium carbonate or hydroxide, gypsum, phosphates, strontium
# sulfate. Source: solubility rules of any chemistry handbook, from memory.
_FALLS_OUT = (
    ("alkalinity", ("calcium", "magnesium", "strontium")),
    ("sulfate", ("calcium", "strontium")),
    ("phosphate", ("calcium", "magnesium", "strontium")),
    ("boron", ("calcium", "magnesium", "strontium")),
)


def label(answer: StockAnswer, facts: LabelFacts) -> JugLabel:
    """Return what the label of a jug says.

    Parameters
    ----------
    answer : StockAnswer
        The stock that is in the jug.
    facts : LabelFacts
        What the keeper noted of it.

    Returns
    -------
    JugLabel
        Its lines, in their order.
    """
    batch = answer.batch if isinstance(answer.batch, Dissolved) else None
    cautions = BOTTLE if batch is None else (*batch.cautions, _BAG)
    apart = _apart({item.name for item in answer.carries})
    separation = say("Never mix with any {named} concentrate.", named=_any_of(terms(apart))) if apart else ""
    code = plan_id.batch_code(facts.batch_id) if facts.batch_id else ""
    return JugLabel(
        name=facts.name.strip(),
        batch=code,
        contents=_contents(batch),
        signal_word="" if batch is None else term(batch.signal_word),
        statements=() if batch is None else tuple(f"{statement}." for statement in terms(batch.statements)),
        handling=tuple(term(caution) for caution in cautions if not _said_elsewhere(caution, apart)),
        separation=separation,
        keep_away=say(_KEEP_AWAY),
        first_aid=say(FIRST_AID),
        strength=_strength(answer),
        does=tuple(_does(answer)),
        entries=_entries(answer, facts, code),
    )


def _contents(batch: Dissolved | None) -> tuple[Contents, ...]:
    if batch is None:
        return (Contents(say("Bottle, by its label")),)
    return tuple(
        Contents(
            f"{(say('and ') if number else '')}{term(portion.chemical.tall_man)}", formula(portion.chemical.formula)
        )
        for number, portion in enumerate(batch.portions)
    )


def _apart(carried: set[str]) -> tuple[str, ...]:
    """Return what must never meet what a jug carries, by the words of the data."""
    apart = {other for one, others in _FALLS_OUT if one in carried for other in others}
    apart |= {one for one, others in _FALLS_OUT if carried & set(others)}
    return (*sorted(apart - {"alkalinity"}), *(_ALKALINITY if "alkalinity" in apart else ()))


def _said_elsewhere(caution: str, apart: Sequence[str]) -> bool:
    """Return whether a caution is said by the first aid, or all that it names by the line of what must never meet."""
    if not caution.startswith(_NEVER_WITH):
        return caution == _IN_THE_EYES
    named = set(_WORD.findall(caution.removeprefix(_NEVER_WITH).partition(":")[0]))
    return named <= set(_WORD.findall(" ".join(apart))) | {"or"}


def _strength(answer: StockAnswer) -> str:
    if isinstance(answer.batch, Bottle):
        said, parameter = answer.batch.label, answer.batch.parameter
        rise = Shown(parameter, parameter.display_unit, Water()).rise(said.raises)
        return say(
            "Strength by its label: {dose} raise {water} by {rise}.",
            dose=_volume(said.dose_ml),
            water=_litres(said.water_l),
            rise=rise,
        )
    if answer.batch.saturated:
        return say(
            "Saturated limewater, dose the clear water only. Strength: {batch}.", batch=strength_words(answer.batch)
        )
    return say("Strength: {batch}.", batch=strength_words(answer.batch))


def _volume(ml: float) -> str:
    """Write a volume, in litres from a thousand millilitres on (L6)."""
    return with_unit(significant(ml, 4), "mL") if ml < 1000.0 else _litres(ml / 1000.0)


def _litres(litres: float) -> str:
    return with_unit(significant(litres, 4), "L")


def _does(answer: StockAnswer) -> Iterator[str]:
    """Say what a millilitre carries, and what it does to a hundred litres."""
    dose, water = with_unit(figure(SAID_DOSE_ML, 0), "mL"), with_unit(figure(SAID_WATER_L, 0), "L")
    carried = []
    for item in answer.carries:
        unit, _, counted_as = item.unit.partition("/L")
        amount = with_unit(significant(item.per_litre * SAID_DOSE_ML / 1000.0, 3), unit)
        carried.append(
            say(
                "{amount} of {item}{counted_as}",
                amount=amount,
                item=term(_CARRIED.get(item.name, item.name)),
                counted_as=counted_as,
            )
        )
    if carried:
        yield say("{dose} carries {carried}.", dose=dose, carried=listed(carried))
    rises = []
    for parameter, rise in answer.rises:
        unit = parameter.display_unit
        amount = with_unit(significant(from_canonical(rise, parameter.kind, unit), 3), unit_words(unit))
        rises.append(say("{parameter} by {amount}", parameter=term(parameter.name), amount=amount))
    if rises:
        yield say("{dose} in {water} raises {rises}.", dose=dose, water=water, rises=listed(rises))


def _any_of(parts: Sequence[str]) -> str:
    *before, end = parts
    return say("{first} or {last}", first=", ".join(before), last=end) if before else end


def _entries(answer: StockAnswer, facts: LabelFacts, code: str) -> tuple[Entry, ...]:
    bottle = isinstance(answer.batch, Bottle)
    done = say("Filled") if bottle else say("Mixed")
    # Nobody knows at what temperature a bottle's contents crystallise.
    coolest = "" if bottle else with_unit(figure(answer.temperature_c, 1), "°C")
    return (
        Entry(say("{done} on", done=done), date_text(facts.mixed_on.strip())),
        Entry(say("{done} by", done=done), facts.mixed_by.strip()),
        Entry(say("Use by"), date_text(facts.use_by.strip())),
        Entry(say("Not colder than"), coolest),
        Entry(say("Batch"), code),
    )
