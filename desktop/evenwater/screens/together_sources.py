"""What runs in a system, as sources of one mass balance: the upkeep, the corrections, the foods."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from evenwater.engine import following
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.correction import Answer
from evenwater.engine.exchange_question import Spell
from evenwater.engine.following import Course
from evenwater.engine.quantities import Water
from evenwater.engine.question import CorrectionQuestion, Pump
from evenwater.engine.stock import Additive
from evenwater.engine.together_question import CORRECTION, FOOD, UPKEEP, Source
from evenwater.engine.upkeep import UpkeepAnswer
from evenwater.engine.upkeep_balance import amount, solutes_per_ml
from evenwater.screens import upkeep
from evenwater.screens.foods_given import Addition
from evenwater.screens.terms import capitalized
from evenwater.screens.views import Message

_DAY = timedelta(days=1)
# Less than this of a value [canonical unit per day] is binary noise.
_NOTHING = 1e-12


@dataclass(frozen=True)
class Tank:
    """What the sources go into: the water, the net volume [L], and now."""

    catalogue: Catalogue
    water: Water
    volume_l: float
    now: datetime

    def days(self, at: datetime) -> float:
        """Return how far an instant is from now [day]."""
        return (at - self.now) / _DAY


@dataclass(frozen=True)
class Jug:
    """What an upkeep or a correction is dosed from, and what it is dosed for."""

    sort: str
    additive: Additive
    parameter: Parameter

    def sources(
        self, tank: Tank, ml_per_day: float, begins: float, ends: float, aims_at: float | None = None
    ) -> Iterator[Source]:
        """Yield a source for every value that the jug moves.

        Parameters
        ----------
        tank : Tank
            What it goes into.
        ml_per_day : float
            What is dosed of it [mL per day].
        begins, ends : float
            From when until when [day from now].
        aims_at : float or None
            Where it takes the value that it is dosed for [canonical unit].

        Yields
        ------
        Source
            By the batch's own strength of every value.
        """
        solutes = solutes_per_ml(self.additive, self.parameter, tank.water)
        for p in tank.catalogue.parameters.values():
            per_day = amount(p.name, solutes, tank.water) * ml_per_day / tank.volume_l
            if abs(per_day) > _NOTHING and ends > begins:
                spell = Spell(p, begins, ends, per_day)
                yield Source(self.sort, self.parameter.name, spell, aims_at if p == self.parameter else None)


@dataclass(frozen=True)
class Ramp:
    """A correction that runs: its course, what it is dosed from by which pump, and the net volume its figures hold for [L].

    ``plan_id`` is empty of one that only stands on the sheet. ``ended`` [day from now] is when something else takes its place.
    """

    parameter: Parameter
    course: Course
    additive: Additive
    pump: Pump
    volume_l: float
    plan_id: str = ""
    ended: float = math.inf

    def ends(self, tank: Tank) -> float:
        """Return when the ramp is over [day from now]."""
        return min(self.ended, tank.days(self.course.ends_at))

    def sources(self, tank: Tank, *, keeps: bool) -> Iterator[Source]:
        """Yield what the correction moves: its ramp, and its own upkeep after that where it ``keeps`` the value.

        The doses count as a steady addition: right after a dose the value then stands where the plan's own ramp has it, and in any 24 hours
        there are as many doses as the day has.
        """
        course, jug = self.course, Jug(CORRECTION, self.additive, self.parameter)
        begins, ends = tank.days(course.started), self.ends(tank)
        # The plan's own strength, which its card was made for.
        own = course.per_ml * self.volume_l / tank.volume_l
        for ml, since, until, aims_at in (
            (course.dose_ml, begins, ends, course.target),
            (course.upkeep_ml if keeps else 0.0, ends, self.ended, None),
        ):
            for source in jug.sources(tank, ml * course.per_day, since, until, aims_at):
                if source.spell.parameter == self.parameter:
                    yield Source(
                        CORRECTION,
                        self.parameter.name,
                        Spell(self.parameter, since, until, own * ml * course.per_day),
                        aims_at,
                    )
                else:
                    yield source


def standing(answer: Answer) -> Ramp:
    """Return the correction that stands on the sheet, as if it were started now."""
    q = answer.question
    return Ramp(q.parameter, following.course(answer), q.additive, q.pump, q.system.volume_l)


def followed(plan_id: str, course: Course, volume_l: float, question: CorrectionQuestion, ended: float) -> Ramp:
    """Return a plan that is followed, by what was kept of it."""
    return Ramp(question.parameter, course, question.additive, question.pump, volume_l, plan_id, ended)


@dataclass(frozen=True)
class Kept:
    """The upkeep as it runs: its sources, its doses as they are now, and why it could not be read."""

    sources: tuple[Source, ...] = ()
    answer: UpkeepAnswer | None = None
    against: tuple[str, ...] = ()


def upkeep_of(raw: Mapping[str, Any], ramps: Sequence[Ramp], tank: Tank) -> Kept:
    """Return the upkeep beside the corrections: the doses of a correction make good the daily use of its own value as well.

    Parameters
    ----------
    raw : mapping
        The question of the upkeep, as typed.
    ramps : sequence of Ramp
        The corrections that run.
    tank : Tank
        What everything goes into.

    Returns
    -------
    Kept
        While a correction runs the upkeep of its value rests; the others are reckoned without it.
    """
    items = raw.get("item", ())
    edges = sorted({0.0, *(ramp.ends(tank) for ramp in ramps if ramp.ends(tank) > 0.0)})
    sources: list[Source] = []
    now: UpkeepAnswer | None = None
    for begins, ends in zip(edges, (*edges[1:], math.inf), strict=True):
        resting = {ramp.parameter.name for ramp in ramps if ramp.ends(tank) > begins}
        dosed = [item for item in items if item["parameter"] not in resting]
        if not dosed:
            continue
        # What is planned besides is in the balance itself, where all of it is held against the limits at once.
        asked = {name: table for name, table in raw.items() if name != "planned"}
        found = upkeep.evaluate({**asked, "item": dosed}, tank.catalogue, tank.now)
        if found.answer is None:
            return Kept(against=tuple(_said(message, dosed) for message in found.view.messages))
        now = found.answer if begins == 0.0 else now
        since = -math.inf if begins == 0.0 else begins
        for each in found.answer.doses:
            jug = Jug(UPKEEP, each.item.additive, each.item.parameter)
            sources += jug.sources(tank, each.in_24_hours_ml, since, ends)
    return Kept(tuple(sources), now)


def _said(message: Message, items: Sequence[Mapping[str, Any]]) -> str:
    """Return a message with the value that it speaks of: its field stands on another sheet."""
    table, _, rest = message.path.partition(".")
    number = rest.partition(".")[0]
    if table == "item" and number.isdigit() and int(number) <= len(items):
        return f"{capitalized(str(items[int(number) - 1]['parameter']))}: {message.text}"
    return message.text


def of_foods(fed: Iterable[Addition], used: Mapping[str, float], catalogue: Catalogue) -> Iterator[Source]:
    """Yield what the foods bring, of values whose use nobody has found: one found by testing has the feeding in it already.

    Parameters
    ----------
    fed : iterable of Addition
        What the foods bring in a day.
    used : mapping of str to float
        The uses that were typed or learned.
    catalogue : Catalogue
        Parameters.

    Yields
    ------
    Source
        For each food and value.
    """
    for each in fed:
        if each.parameter not in used:
            spell = Spell(catalogue.parameters[each.parameter], -math.inf, math.inf, each.per_day)
            yield Source(FOOD, each.source, spell)
