"""Foods as records have them: as tables of a question, and as what they bring to a system's values in a day."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from typing import Any, NamedTuple

from evenwater.engine import foods_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.foods_question import Food
from evenwater.engine.form import Unread
from evenwater.engine.quantities import Typed, Water
from evenwater.screens.names import shown_name
from evenwater.wording import marked, say

Values = Mapping[str, Typed]

# What a food is, and how its label says what it carries.
LIQUID, AMINO, TRACE = "liquid food", "amino acids", "trace mix"
PER_ML, PERCENT, LABEL = "per_ml", "percent", "label"
YES = "yes"
# The fields that count for each way of saying it.
_CARRIED = {
    PER_ML: ("nitrogen", "phosphorus"),
    PERCENT: ("protein", "nitrogen_share", "phosphorus_share", "density"),
}
_LABEL = {"label_parameter": "parameter", "label_dose": "dose", "label_water": "water", "label_raises": "raises"}
NO_NAME = marked("Unnamed food")


class Addition(NamedTuple):
    """What one food brings of one value [canonical unit per day]; below zero for alkalinity that nitrification takes."""

    parameter: str
    per_day: float
    source: str


def text_of(values: Values, name: str) -> str:
    """Return what was typed into a field, stripped; empty where nothing was."""
    return values.get(name, Typed("")).text.strip()


def name_of(values: Values) -> str:
    """Return what a food is called."""
    return shown_name(values, say(NO_NAME))


def sort_of(values: Values) -> str:
    """Return what a food is: ``LIQUID``, ``AMINO`` or ``TRACE``; whatever spoils soonest where nobody said it."""
    said = text_of(values, "sort")
    return said if said in (AMINO, TRACE) else LIQUID


def says_of(values: Values) -> str:
    """Return how its label says what it carries: ``PER_ML``, ``PERCENT`` or ``LABEL``."""
    said = text_of(values, "says")
    return said if said in (PERCENT, LABEL) else PER_ML


def given(values: Values) -> bool:
    """Return whether a food is given at all: one that is paused is not."""
    return text_of(values, "paused") != YES


def table(values: Values) -> dict[str, Any]:
    """Return a food as the list ``food`` of a question has it.

    Parameters
    ----------
    values : mapping of str to Typed
        Fields of its record, as typed.

    Returns
    -------
    dict of str to Typed, bool or dict
        Only what counts for the way in which its label speaks, only what was filled in.
    """
    says = says_of(values)
    found: dict[str, Any] = {name: values[name] for name in ("name", "per_day") if text_of(values, name)}
    if says == LABEL:
        found["label"] = {row: values[name] for name, row in _LABEL.items() if text_of(values, name)}
    else:
        found |= {name: values[name] for name in _CARRIED[says] if text_of(values, name)}
        if says == PERCENT:
            found.setdefault("protein", Typed(""))
    if sort_of(values) == TRACE:
        found["salts"] = Typed(YES)
    return found


def read(values: Values, catalogue: Catalogue, water: Water | None = None) -> Food | Unread:
    """Read one food.

    Parameters
    ----------
    values : mapping of str to Typed
        Fields of its record, as typed.
    catalogue : Catalogue
        Parameters.
    water : Water or None
        The tank's water, for labels that count per kilogram.

    Returns
    -------
    Food or Unread
        The food, or what is missing or wrong, at paths such as ``food.1.per_day``.
    """
    found = foods_intake.foods({"food": [table(values)]}, catalogue, water)
    return found if isinstance(found, Unread) else found[0]


def additions(
    foods: Iterable[Values], catalogue: Catalogue, water: Water | None, volume_l: float
) -> tuple[Addition, ...]:
    """Return what the foods of a system bring in a day, food by food.

    Parameters
    ----------
    foods : iterable of mapping of str to Typed
        The fields of each food record, as typed. One that is paused brings nothing; one that cannot be read is left out here and named
        by ``unread``.
    catalogue : Catalogue
        Parameters.
    water : Water or None
        The tank's water, for labels that count per kilogram.
    volume_l : float
        Net volume [L], above zero.

    Returns
    -------
    tuple of Addition
        Parameter, what is brought [canonical unit per day] and by what; alkalinity below zero is what nitrification takes.
    """
    return tuple(_additions(foods, catalogue, water, volume_l))


def unread(foods: Iterable[Values], catalogue: Catalogue, water: Water | None = None) -> tuple[str, ...]:
    """Return the names of the foods that are given and cannot be read, so that nobody takes them for nothing.

    Parameters
    ----------
    foods : iterable of mapping of str to Typed
        The fields of each food record, as typed.
    catalogue : Catalogue
        Parameters.
    water : Water or None
        The tank's water.

    Returns
    -------
    tuple of str
        Names, in the order of the records.
    """
    return tuple(name_of(each) for each in foods if given(each) and isinstance(read(each, catalogue, water), Unread))


def _additions(
    foods: Iterable[Values], catalogue: Catalogue, water: Water | None, volume_l: float
) -> Iterator[Addition]:
    for each in foods:
        food = read(each, catalogue, water) if given(each) else None
        if not isinstance(food, Food):
            continue
        for name in catalogue.parameters:
            rise = food.brings(name, volume_l)
            if rise > 0.0:
                yield Addition(name, rise, name_of(each))
            elif rise < 0.0:
                yield Addition(name, rise, say("nitrification of {each}", each=name_of(each)))
