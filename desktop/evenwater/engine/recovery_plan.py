"""Ways down from a value that is too high: by holding doses, by exchanging water steadily, or in single changes.

While the doses of a value are held and a share f of the water is exchanged per day, its rate is -(f*(C - C_new) + u), which only
shrinks while f stays the same. So a share under which no rate passes its hard limit now keeps every 24 hours within it. The share is
found again each day (``recovery_pace``). Neither the volume nor the use of hurt animals is known well, so the same litres are followed in
tanks from the smallest to the largest, with no use and with the use known.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
import numpy.typing as npt

from evenwater.engine.catalogue import Parameter
from evenwater.engine.recovery_pace import NOTHING, Floats, Tanks, after_change, after_days, begun, most_litres
from evenwater.engine.recovery_question import LONGEST_DAYS, RecoveryQuestion

CHANGES_PER_DAY = 2

Values = Mapping[str, float]


@dataclass(frozen=True)
class Stage:
    """A stretch of steady exchange: ``days`` [day] long at ``l_per_day`` [L/day]; ``set_by`` names what allows no more."""

    days: float
    l_per_day: float
    set_by: str


@dataclass(frozen=True)
class Change:
    """One change of water at once: when [day from the start], how much [L]."""

    at_days: float
    litres: float


@dataclass(frozen=True)
class Point:
    """The values known [canonical unit] at an instant [day from the start]."""

    at_days: float
    values: Values


@dataclass(frozen=True)
class Course:
    """A way down: its stages or its changes, and the values along it, in a tank of the volume that was said.

    ``done`` says whether it reaches the target in time, wherever in its interval the volume lies; ``between_days`` [day] is how long that
    takes at the least and at the most. ``further_stages`` and ``further_changes`` are for a tank that takes longer. ``lowest`` and
    ``highest`` are the ends of each value's way in any of these tanks [canonical unit].
    """

    points: tuple[Point, ...]
    done: bool
    stages: tuple[Stage, ...] = ()
    changes: tuple[Change, ...] = ()
    further_stages: tuple[Stage, ...] = ()
    further_changes: tuple[Change, ...] = ()
    between_days: tuple[float, float] = (0.0, 0.0)
    lowest: Values = field(default_factory=dict)
    highest: Values = field(default_factory=dict)

    @property
    def days(self) -> float:
        """How long it takes [day]."""
        return self.points[-1].at_days

    @property
    def litres(self) -> float:
        """How much water is exchanged [L]."""
        return sum(s.days * s.l_per_day for s in self.stages) + sum(c.litres for c in self.changes)


def hard(parameter: Parameter) -> float:
    """Return the most a value may move in a day, up or down.

    Parameters
    ----------
    parameter : Parameter
        The parameter; its hard rise of a day counts both ways. Common practice, no source.

    Returns
    -------
    float
        Change [canonical unit per day].
    """
    return parameter.canonical(parameter.rise_hard)


def _lasts(excess: Floats, use: float) -> Floats:
    """Return how long using up lasts [day]; without end where next to nothing is used."""
    if use <= 0.0:
        return np.full(len(excess), math.inf)
    with np.errstate(over="ignore"):
        return np.asarray(excess / use)


def held(q: RecoveryQuestion) -> Course:
    """Return what happens while doses are held and nothing else is done.

    Parameters
    ----------
    q : RecoveryQuestion
        The question, with a use above zero of what is too high.

    Returns
    -------
    Course
        Day by day; not done when it takes too long.
    """
    tanks = begun(q, hard)
    days = _lasts(np.maximum(tanks.start[:, tanks.main] - q.target, 0.0), q.used(q.parameter.name))
    last = min(float(days[tanks.said]), LONGEST_DAYS)
    at = [*(float(day) for day in range(math.ceil(last))), last]
    points = tuple(Point(day, _named(q, tanks.start[tanks.said] - day * tanks.use)) for day in at)
    ends = tanks.start - np.minimum(days, LONGEST_DAYS)[:, None] * tanks.use
    lowest, highest = _named(q, ends.min(axis=0)), _named(q, tanks.start.max(axis=0))
    between = (float(days.min()), float(days.max()))
    return Course(points, between[1] <= LONGEST_DAYS, between_days=between, lowest=lowest, highest=highest)


@dataclass
class _Way:
    """A way down while it is found: which part of the use it counts, and how far each tank has come."""

    q: RecoveryQuestion
    tanks: Tanks
    counted: float
    points: list[Point]
    ends: Floats
    lowest: Floats
    highest: Floats
    stages: list[Stage] = field(default_factory=list)
    changes: list[Change] = field(default_factory=list)
    further_stages: list[Stage] = field(default_factory=list)
    further_changes: list[Change] = field(default_factory=list)

    @property
    def going(self) -> npt.NDArray[np.bool_]:
        """Which tanks have not come to their target."""
        return np.isinf(self.ends)

    @property
    def done(self) -> bool:
        return not self.going.any()

    @property
    def use(self) -> Floats:
        return self.counted * self.tanks.use

    def course(self) -> Course:
        q = self.q
        between = (float(self.ends.min()), float(self.ends.max()))
        return Course(
            tuple(self.points), self.done, tuple(self.stages), tuple(self.changes), tuple(self.further_stages), tuple(self.further_changes),
            between, _named(q, self.lowest), _named(q, self.highest),
        )  # fmt: skip

    def see(self, values: Floats, which: npt.NDArray[np.bool_]) -> None:
        """Note how low and how high the values of some tanks are."""
        if which.any():
            self.lowest = np.minimum(self.lowest, values[which].min(axis=0))
            self.highest = np.maximum(self.highest, values[which].max(axis=0))

    def exchange(self, at: float, values: Floats, litres: float, set_by: str) -> None:
        """Go on for a day from ``at`` and ``values``, each tank to its target at the most."""
        tanks, said = self.tanks, self.tanks.said
        going, needed = self.going, self.needed(values, litres)
        days = np.minimum(needed, 1.0)
        after = after_days(tanks, values, litres, days, self.use)
        self.see(after, going)
        if going[said]:
            self.stages.append(Stage(float(days[said]), litres, set_by))
            self.points.append(Point(at + float(days[said]), _named(self.q, after[said])))
        if (going & (needed > days[said])).any() and not (going[said] and days[said] == 1.0):
            self.further_stages.append(Stage(1.0, litres, set_by))
        self.ends = np.where(going & (needed <= 1.0), at + needed, self.ends)

    def change(self, at: float, values: Floats, litres: float) -> None:
        """Change so much at once, or what a tank needs, then wait for the next change."""
        tanks, said, main = self.tanks, self.tanks.said, self.tanks.main
        going, every = self.going, 1.0 / CHANGES_PER_DAY
        above = values[:, main] - self.q.target
        # A tank that has come to its target may stand at anything.
        least = above / np.where(going, values[:, main] - tanks.fresh[main], 1.0) / tanks.per_l
        part = np.minimum(least, litres)
        mixed = after_change(tanks, values, part)
        self.see(mixed, going)
        used = self.use[main]
        rest = _lasts(mixed[:, main] - self.q.target, used)
        at_once = part >= least
        waits = np.where(at_once, 0.0, np.minimum(every, rest))
        after = after_days(tanks, mixed, 0.0, waits, self.use)
        self.see(after, going)
        if going[said]:
            self.changes.append(Change(at, float(part[said])))
            self.points.append(Point(at, _named(self.q, mixed[said])))
            if not at_once[said]:
                self.points.append(Point(at + float(waits[said]), _named(self.q, after[said])))
        if (going & ~at_once).any() and (not going[said] or part[said] < litres):
            self.further_changes.append(Change(at, litres))
        ended = np.where(at_once, at, at + rest)
        self.ends = np.where(going & (at_once | (rest <= every)), ended, self.ends)

    def needed(self, values: Floats, litres: float) -> Floats:
        """Return how long a steady exchange takes each tank to the target [day]; infinite where it never gets there."""
        tanks, main = self.tanks, self.tanks.main
        share = litres * tanks.per_l
        above = np.maximum(values[:, main] - self.q.target, 0.0)
        rate = share * (values[:, main] - tanks.fresh[main]) + self.use[main]
        with np.errstate(divide="ignore", invalid="ignore", over="ignore"):
            straight = np.where(rate > 0.0, above / rate, math.inf)
            # The rate shrinks by exp(-share*t), and with it falls share times the value.
            bent = np.where(share * above < rate, -np.log1p(-share * above / rate) / share, math.inf)
        return np.where((share * above <= NOTHING * rate) | (rate <= 0.0), straight, bent)


def _both_ways(q: RecoveryQuestion) -> tuple[Tanks, _Way, _Way]:
    tanks = begun(q, hard)
    point, reached = Point(0.0, dict(q.values)), tanks.start[:, tanks.main] <= q.target
    ends = np.where(reached, 0.0, math.inf)
    low, high = tanks.start.min(axis=0), tanks.start.max(axis=0)
    alone, both = (_Way(q, tanks, counted, [point], ends, low, high) for counted in (0.0, 1.0))
    return tanks, alone, both


def exchanged(q: RecoveryQuestion) -> tuple[Course, Course]:
    """Return a steady exchange, its pace found again each day.

    Parameters
    ----------
    q : RecoveryQuestion
        The question; the new water has less of what is too high than the target.

    Returns
    -------
    tuple of Course
        If the animals use nothing, and if they use what is known: the same exchange, only shorter. Stages of a day, the last shorter.
    """
    tanks, alone, both = _both_ways(q)
    for day in range(round(LONGEST_DAYS)):
        if alone.done:
            break
        litres, set_by = most_litres(tanks)
        for way in (alone, both):
            if not way.done:
                way.exchange(float(day), tanks.values(way.counted), litres, set_by)
        tanks = tanks.exchanged(litres, 1.0, still=both.going)
    return alone.course(), both.course()


def in_changes(q: RecoveryQuestion) -> tuple[Course, Course]:
    """Return single changes of water, each with its part of what a day allows.

    Parameters
    ----------
    q : RecoveryQuestion
        The question; the new water has less of what is too high than the target.

    Returns
    -------
    tuple of Course
        If the animals use nothing, and if they use what is known. The last change is as large as is needed.
    """
    tanks, alone, both = _both_ways(q)
    for number in range(round(LONGEST_DAYS * CHANGES_PER_DAY)):
        if alone.done:
            break
        litres = most_litres(tanks, at_once=True)[0] / CHANGES_PER_DAY
        for way in (alone, both):
            if not way.done:
                way.change(number / CHANGES_PER_DAY, tanks.values(way.counted), litres)
        tanks = tanks.changed(litres).exchanged(0.0, 1.0 / CHANGES_PER_DAY, still=both.going)
    return alone.course(), both.course()


def _named(q: RecoveryQuestion, row: Floats) -> Values:
    return {p.name: float(value) for p, value in zip(q.known, row, strict=True)}
