"""One field that takes a quantity, without its widget: what the text means, and what the unit list does to it."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from decimal import Decimal

from evenwater.engine.quantities import Entered, Typed, Water, from_canonical, to_canonical
from evenwater.engine.reader import Ask, Empty, Field, Ok, Wrong, read
from evenwater.engine.reasons import Reason
from evenwater.engine.units import Unit
from evenwater.screens.shown import figure, significant, with_unit
from evenwater.screens.views import Offer
from evenwater.screens.words import sentence
from evenwater.wording import say

__all__ = [
    "Entry",
    "Field",
    "Words",
    "beside",
    "conversion_words",
    "converted",
    "display",
    "judge",
    "number_part",
    "relabels",
    "unit_choices",
    "unit_words",
    "with_unit_followed",
]

Words = Callable[[Reason], str]

_NUMBER = re.compile(r"\s*([+\-\u2212]?[0-9.,]+)", re.ASCII)
_FIGURES_SHOWN = 4


@dataclass(frozen=True)
class Entry:
    """What a field holds: ``state`` is "empty", "ok", "ask" or "error"; ``unit`` the one that was read."""

    state: str
    message: str = ""
    offers: tuple[Offer, ...] = ()
    unit: str = ""


def judge(typed: Typed, field: Field, words: Words = sentence, water: Water | None = None) -> Entry:
    """Return what was typed means, or the sentence that says why it means nothing yet."""
    result = read(typed.text, field, typed.unit or field.unit, water)
    if isinstance(result, Empty):
        return Entry("empty")
    if isinstance(result, Ok):
        return Entry("ok", unit=result.entered.unit)
    if isinstance(result, Ask):
        return Entry("ask", words(result.reason), tuple(_offer(reading, field) for reading in result.readings))
    assert isinstance(result, Wrong)  # noqa: S101  (narrowing)
    return Entry("error", words(result.reason))


def unit_choices(field: Field) -> tuple[tuple[str, str], ...]:
    """Return the units of the field as (id, words); none for a plain number."""
    return tuple((unit.id, say(unit.shown)) for unit in field.units.units if unit.shown)


def unit_words(field: Field, unit: str) -> str:
    """Return the words of one unit of the field."""
    return say(_unit(field, unit).shown)


def beside(typed: Typed, field: Field) -> str:
    """Return the id of the unit to show beside the field.

    A unit that the field does not have any more, as after a change of what a bottle raises, is shown only where the
    text names none of its own.
    """
    for unit in (typed.shown, typed.unit):
        if unit and _knows(field, unit):
            return unit
    result = read(typed.text, field, typed.unit or field.unit)
    return result.entered.unit if isinstance(result, Ok) else typed.unit or field.unit


def display(typed: Typed, field: Field, water: Water | None = None) -> str:
    """Return the text to show before the unit ``beside``.

    The text as typed wherever it can stand; without its own unit when that is the one beside; the
    converted figure when another unit is to be shown. Nothing of this is ever read back.
    """
    result = read(typed.text, field, typed.unit or field.unit, water)
    if not isinstance(result, Ok):
        return typed.text
    unit = beside(typed, field)
    if unit == result.entered.unit:
        return number_part(typed.text)
    return _converted(result.entered, field, unit, water)


def with_unit_followed(typed: Typed, field: Field, water: Water | None = None) -> Typed:
    """Return the value shown in the unit that was typed into the text, if one was."""
    result = read(typed.text, field, typed.unit or field.unit, water)
    if isinstance(result, Ok) and result.entered.unit != beside(typed, field) and not typed.shown:
        return replace(typed, shown=result.entered.unit)
    return typed


def converted(typed: Typed, field: Field, unit: str, water: Water | None = None) -> Typed | None:
    """Return the same quantity shown in another unit; None when the text has no one meaning to convert."""
    result = read(typed.text, field, typed.unit or field.unit, water)
    if isinstance(result, Empty):
        return Typed("", unit)
    if typed.unit and not _knows(field, typed.unit) and number_part(typed.text) == typed.text.strip():
        # There is nothing to convert from: the unit was that of another quantity.
        return Typed(typed.text, unit)
    if not isinstance(result, Ok):
        return None
    own = typed.unit if _knows(field, typed.unit) else field.unit
    return Typed(typed.text, own, "" if unit == own == result.entered.unit else unit)


def conversion_words(typed: Typed, field: Field, water: Water | None = None) -> str:
    """Return what a converted value was typed as, or nothing when it stands as typed."""
    result = read(typed.text, field, typed.unit or field.unit, water)
    if not isinstance(result, Ok) or result.entered.unit == beside(typed, field):
        return ""
    shown = with_unit(display(typed, field, water), unit_words(field, beside(typed, field)))
    was = with_unit(number_part(typed.text), unit_words(field, result.entered.unit))
    return say("Typed as {was}, shown as {shown}.", was=was, shown=shown)


def relabels(typed: Typed, field: Field) -> tuple[Offer, ...]:
    """Return the other units the typed number could have meant, each saying what is there and what it becomes."""
    number = number_part(typed.text)
    if not number:
        return ()
    result = read(typed.text, field, typed.unit or field.unit)
    now = result.entered.unit if isinstance(result, Ok) else typed.unit or field.unit
    was = with_unit(number, unit_words(field, now)) if _knows(field, now) else number
    return tuple(
        Offer(say("Relabel: {was} becomes {number}", was=was, number=with_unit(number, unit.shown)), number, unit.id)
        for unit in field.units.units
        if unit.id != now and unit.shown
    )


def number_part(text: str) -> str:
    """Return the number at the start of a text as it was typed, or nothing."""
    match = _NUMBER.match(text)
    return match.group(1) if match else ""


def _converted(entered: Entered, field: Field, unit: str, water: Water | None) -> str:
    value = to_canonical(float(entered.number), field.kind, entered.unit, water)
    digits = max(_FIGURES_SHOWN, len(Decimal(entered.number).as_tuple().digits))
    return significant(from_canonical(value, field.kind, unit, water), min(digits, 6))


def _offer(reading: Entered, field: Field) -> Offer:
    number = figure(float(reading.number), 9)
    text = number
    if "." in text and isinstance(read(text, field, reading.unit), Ask):
        # Three digits after a point could be thousands: a fourth makes the choice final.
        text += "0"
    return Offer(with_unit(number, unit_words(field, reading.unit)), text, reading.unit)


def _knows(field: Field, unit: str) -> bool:
    return any(known.id == unit for known in field.units.units)


def _unit(field: Field, unit: str) -> Unit:
    return field.units.unit(unit)
