"""The jug of a food and its line, for people: the last day it may be used, when it is empty, and how the line is kept clean."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date, datetime, time

from evenwater.engine import foods_keeping
from evenwater.engine.quantities import Typed, to_canonical
from evenwater.engine.reader import Ok, read
from evenwater.engine.visible import quoted
from evenwater.screens import foods_given
from evenwater.screens.foods_fields import number
from evenwater.screens.foods_given import LIQUID, TRACE, YES, Values, sort_of, text_of
from evenwater.screens.pump_fields import PUMP_FIELDS
from evenwater.screens.shown import about, date_words, figure, significant, span, with_unit
from evenwater.screens.views import Message, WorkLine
from evenwater.wording import say

_NO_PUMP: Mapping[str, Typed] = {}


@dataclass(frozen=True)
class Kept:
    """What is known of the jug of a food.

    ``keeps_days`` [day] is how long it keeps as it stands, ``last_day`` the last one on which it may be used, ``empty`` when what was in
    it is used up; None of what is not known. ``warm`` says that it spoils and is not kept cold.
    """

    name: str
    opened: date | None
    keeps_days: float | None
    last_day: date | None
    empty: date | None
    warm: bool

    def spoiled(self, today: date) -> bool:
        """Return whether its last day is over."""
        return self.last_day is not None and today > self.last_day


def opened_on(values: Values) -> date | None:
    """Return when a jug was opened; None where no ISO date stands there."""
    try:
        return date.fromisoformat(text_of(values, "opened_on"))
    except ValueError:
        return None


def kept(values: Values) -> Kept:
    """Return what is known of the jug of a food.

    Parameters
    ----------
    values : mapping of str to Typed
        Fields of its record, as typed.

    Returns
    -------
    Kept
        Dates as far as they follow.
    """
    opened, said = opened_on(values), number(values, "keeps_days")
    spoils = sort_of(values) == LIQUID
    cold = text_of(values, "cold") == YES
    keeps = None if said is None else foods_keeping.keeps(said, spoils, cold)
    per_day, jug = number(values, "per_day"), number(values, "jug_volume")
    given = foods_given.given(values)
    return Kept(
        name=foods_given.name_of(values),
        opened=opened,
        keeps_days=keeps,
        last_day=None if opened is None or keeps is None else foods_keeping.discard_on(opened, keeps),
        empty=None
        if opened is None or per_day is None or jug is None or not given
        else foods_keeping.empty_on(opened, jug, per_day),
        warm=spoils and not cold,
    )


def feedings(values: Values, pump: Values = _NO_PUMP) -> float:
    """Return the feedings in a day: as typed, else the doses of its pump, else one."""
    typed = number(values, "feedings")
    return typed or _of_pump(pump, "doses_per_day") or 1.0


def line_of(values: Values, pump: Values = _NO_PUMP) -> foods_keeping.FoodLine | None:
    """Return what stands in the line of a food: of its own, else of its pump; None where that is not known."""
    bore = number(values, "line_bore") or _of_pump(pump, "line_bore")
    length = number(values, "line_length") or _of_pump(pump, "line_length")
    per_day = number(values, "per_day")
    if bore is None or length is None or per_day is None:
        return None
    return foods_keeping.line(bore, length, 1000.0 * per_day, feedings(values, pump))


def _of_pump(pump: Values, name: str) -> float | None:
    typed, spec = pump.get(name, Typed("")), PUMP_FIELDS[f"pump.{name}"]
    found = read(typed.text, spec, typed.unit)
    return to_canonical(float(found.entered.number), spec.kind, found.entered.unit) if isinstance(found, Ok) else None


def day_words(day: date) -> str:
    """Write a day of the calendar."""
    return date_words(datetime.combine(day, time()))


def messages(values: Values, today: date) -> tuple[Message, ...]:
    """Return what is wrong with the date on which a jug was opened.

    Parameters
    ----------
    values : mapping of str to Typed
        Fields of its record, as typed.
    today : date
        The day, in the keeper's zone.

    Returns
    -------
    tuple of Message
        At most one.
    """
    text, opened = text_of(values, "opened_on"), opened_on(values)
    if text and opened is None:
        said = say("“{text}” is not a date. Write it like 2026-11-25.", text=quoted(text))
        return (Message(said, "food.opened_on", "not_a_date"),)
    if opened is not None and opened > today:
        return (Message(say("That day is still to come."), "food.opened_on", "not_opened_yet"),)
    return ()


def stop(values: Values, today: date) -> str:
    """Return why a food must not be given any more; empty where nothing is against it."""
    found = kept(values)
    if not found.spoiled(today) or found.last_day is None:
        return ""
    why = (
        say("it stood warm")
        if found.warm and found.keeps_days == foods_keeping.WARM_DAYS
        else say("it keeps no longer")
    )
    return say(
        "The last day of {found} was {last_day}: {why}. Stop its pump, throw it away, rinse jug and line, and open a new one.",
        found=found.name,
        last_day=day_words(found.last_day),
        why=why,
    )


def lines(values: Values, pump: Values, today: date) -> tuple[WorkLine, ...]:
    """Return what follows for jug and line.

    Parameters
    ----------
    values, pump : mapping of str to Typed
        Fields of the food and of the pump that gives it, as typed; the pump's may be empty.
    today : date
        The day, in the keeper's zone.

    Returns
    -------
    tuple of WorkLine
        As far as it follows from what is filled in.
    """
    return tuple(_lines(values, pump, today))


def _lines(values: Values, pump: Values, today: date) -> Iterator[WorkLine]:
    found, per_day, times = kept(values), number(values, "per_day"), feedings(values, pump)
    if per_day is not None and times > 1.0:
        yield WorkLine(
            say("A feeding"), say("{times} in a day", times=figure(times, 0)), about(1000.0 * per_day / times)
        )
    if found.last_day is not None and found.opened is not None and found.keeps_days is not None:
        keeps = say(
            "opened {opened}, keeps {keeps_days}{in_}",
            opened=day_words(found.opened),
            keeps_days=_days(found.keeps_days),
            in_=say(" in the warm") if found.warm else "",
        )
        left = (found.last_day - today).days
        ends = "" if left < 0 else say(" (today)") if left == 0 else say(" ({left} left)", left=_days(left))
        yield WorkLine(say("Last day to use it"), keeps, f"{day_words(found.last_day)}{ends}")
    jug = number(values, "jug_volume")
    if jug is not None and per_day is not None:
        yield WorkLine(
            say("The jug lasts"),
            say("{jug} at {per_day} a day", jug=about(1000.0 * jug), per_day=about(1000.0 * per_day)),
            span(jug / per_day),
        )
    if found.empty is not None:
        yield WorkLine(say("Empty on"), say("opened full, as much given every day"), day_words(found.empty))
    held = line_of(values, pump)
    if held is None:
        return
    yield WorkLine(
        say("The line holds"), say("π ÷ 4 × inside diameter × inside diameter × length"), about(held.holds_ml)
    )
    yield WorkLine(say("Food stands in it"), say("what it holds ÷ what is given in a day"), span(held.stands_days))
    rinse = say("{rinses} × what it holds, fresh or salt water", rinses=significant(foods_keeping.RINSES, 2))
    yield WorkLine(say("Flush after a feeding"), rinse, about(held.flush_ml))
    yield WorkLine(
        say("Flush in a day"), say("of fresh water it is a part of the top-off"), about(held.flush_per_day_ml)
    )


def remarks(values: Values, pump: Values) -> tuple[str, ...]:
    """Return what a keeper should know of jug and line.

    Parameters
    ----------
    values, pump : mapping of str to Typed
        Fields of the food and of the pump that gives it, as typed; the pump's may be empty.

    Returns
    -------
    tuple of str
        Sentences.
    """
    return tuple(_remarks(values, pump))


def _remarks(values: Values, pump: Values) -> Iterator[str]:
    found, per_day, jug = kept(values), number(values, "per_day"), number(values, "jug_volume")
    if found.warm:
        yield say("It is not kept cold: raw food in the warm keeps a day at most (common practice, no source).")
    if jug is not None and per_day is not None and found.keeps_days is not None:
        against = foods_keeping.jug(1000.0 * jug, 1000.0 * per_day, found.keeps_days)
        if against.share < 1.0:
            thrown = about(1000.0 * jug * (1.0 - against.share))
            yield (
                say(
                    "The jug lasts {lasts} and keeps {keeps_days}: {thrown} would be thrown away. Open {largest} at a time, or less.",
                    lasts=span(against.lasts),
                    keeps_days=_days(found.keeps_days),
                    thrown=thrown,
                    largest=about(against.largest_ml),
                )
            )
    held = line_of(values, pump)
    if held is not None and sort_of(values) != TRACE and held.stands_days > foods_keeping.STANDS_DAYS:
        yield (
            say(
                "Without flushing, food stands in the line for {stands_days}. In a warm line it spoils within hours (common practice, no source): flush {flush} after each feeding, or bring the jug nearer.",
                stands_days=span(held.stands_days),
                flush=about(held.flush_ml),
            )
        )


def _days(days: float) -> str:
    return with_unit(significant(days, 3), say("day") if days == 1.0 else say("days"))
