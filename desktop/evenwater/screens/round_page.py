"""What the printed round sheet says: the duties by place, each with boxes for who did it, when, and what was read."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.units import KINDS
from evenwater.screens.rounds_room import DUE, JUG, TEST, WRONG, Clock, Duty
from evenwater.screens.shown import date_words
from evenwater.screens.terms import inside
from evenwater.wording import marked, say, say_all, say_many

SHELF = marked("Jugs on the shelf")
# Always below the lines; common practice, no source.
RULES = (
    marked("Missed doses are never made up: go on with the next one."),
    marked("This sheet holds for the round it was printed for. Doses stand on the cards, not here."),
)


@dataclass(frozen=True)
class RoundLine:
    """One thing to do: ``when`` in words, and the unit to write after a figure that is read, or nothing."""

    what: str
    when: str
    why: str
    wrong: bool = False
    reads: bool = False
    unit: str = ""


@dataclass(frozen=True)
class RoundPlace:
    """What is to be done at one place."""

    name: str
    lines: tuple[RoundLine, ...]


def _rules() -> tuple[str, ...]:
    """Return what holds for whoever works by it."""
    return say_all(RULES)


@dataclass(frozen=True)
class RoundPage:
    """The whole sheet, before it is dealt out to pages."""

    title: str
    issued: str
    count: str
    places: tuple[RoundPlace, ...]
    rules: tuple[str, ...] = field(default_factory=_rules)


def page(duties: Sequence[Duty], catalogue: Catalogue, now: datetime) -> RoundPage:
    """Return the round sheet of what is wrong, due and due soon.

    Parameters
    ----------
    duties : sequence of Duty
        The lines of the rounds, in their order.
    catalogue : Catalogue
        Parameters, for the unit in which a figure is written down.
    now : datetime
        The present in the keeper's zone, which all dates are written in.

    Returns
    -------
    RoundPage
        Places in the order of their most urgent line, the jugs together; no amounts.
    """
    clock = Clock.of(now)
    by_place: dict[str, list[RoundLine]] = {}
    names: dict[str, str] = {}
    for duty in duties:
        # Two systems may have one name.
        place = JUG if duty.kind == JUG else duty.record
        names[place] = say(SHELF) if duty.kind == JUG else duty.place
        by_place.setdefault(place, []).append(_line(duty, catalogue, clock))
    count = sum(map(len, by_place.values()))
    things = (
        say("Nothing is wrong and nothing is due.")
        if not count
        else say_many("{n} thing to do", "{n} things to do", count)
    )
    return RoundPage(
        title=say("Round sheet"),
        issued=say("Printed {date_words} {clock}", date_words=date_words(now), clock=f"{now:%H:%M}"),
        count=things,
        places=tuple(RoundPlace(names[place], tuple(lines)) for place, lines in by_place.items()),
    )


def _line(duty: Duty, catalogue: Catalogue, clock: Clock) -> RoundLine:
    when = (
        say("At once")
        if duty.urgency == WRONG
        else say("Today")
        if duty.urgency == DUE
        else say("By {at}", at=clock.day(duty.at))
    )
    what = f"{duty.place}: {_small(duty.what)}" if duty.kind == JUG else duty.what
    parameter = catalogue.parameters.get(duty.subject) if duty.kind == TEST else None
    unit = "" if parameter is None else say(KINDS[parameter.kind].unit(parameter.display_unit).shown)
    return RoundLine(what, when, duty.plain, duty.urgency == WRONG, parameter is not None, unit)


def _small(what: str) -> str:
    return inside(what)
