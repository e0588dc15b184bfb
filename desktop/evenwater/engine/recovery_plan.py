"""How a value comes down: by holding doses, by exchanging water steadily, or in single changes.

While the doses of a value are held and a share f of the water is exchanged per day, its rate is -(f*(C - C_new) + u), which only
shrinks while f stays the same. So a share under which no rate passes its hard limit now keeps every 24 hours within it. The share is
found again each day. Hurt animals may use less than they did, so both ends are followed, no use and the use known; since all is linear,
a limit that both keep is kept by any use between them.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field

from evenwater.engine.balance import after, segment
from evenwater.engine.catalogue import Parameter
from evenwater.engine.recovery_question import LONGEST_DAYS, RecoveryQuestion

CHANGES_PER_DAY = 2
# What is left of a day or a value after binary noise.
_NOTHING = 1e-12

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
    """A way down: its stages or its changes, and the values along it. ``done`` says whether it reaches the target in time."""

    points: tuple[Point, ...]
    done: bool
    stages: tuple[Stage, ...] = ()
    changes: tuple[Change, ...] = ()

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
    days = (q.values[q.parameter.name] - q.target) / q.used(q.parameter.name)
    done = days <= LONGEST_DAYS
    last = min(days, LONGEST_DAYS)
    at = [float(day) for day in range(math.ceil(last))]
    return Course(tuple(Point(day, _moved(q, q.values, day, 0.0, 1.0)) for day in (*at, last)), done)


@dataclass
class _Way:
    """A way down while it is found: with which part of the use it reckons, and where it stands."""

    q: RecoveryQuestion
    counted: float
    points: list[Point]
    done: bool = False
    stages: list[Stage] = field(default_factory=list)
    changes: list[Change] = field(default_factory=list)

    @property
    def values(self) -> Values:
        return self.points[-1].values

    @property
    def value(self) -> float:
        return self.values[self.q.parameter.name]

    @property
    def use(self) -> float:
        return self.counted * self.q.used(self.q.parameter.name)

    def course(self) -> Course:
        return Course(tuple(self.points), self.done, tuple(self.stages), tuple(self.changes))

    def move(self, days: float, share: float) -> None:
        at = self.points[-1].at_days + days
        self.points.append(Point(at, _moved(self.q, self.values, days, share, self.counted)))

    def exchange(self, share: float, set_by: str) -> None:
        """Go on for a day, or to the target."""
        needed = _days_needed(self.q, self.value, share, self.use)
        days = min(1.0, needed)
        self.stages.append(Stage(days, share * self.q.volume_l, set_by))
        self.move(days, share)
        self.done = needed <= 1.0

    def change(self, share: float) -> None:
        """Change so much at once, or what is needed, then wait for the next change."""
        every, at = 1.0 / CHANGES_PER_DAY, self.points[-1].at_days
        needed = (self.value - self.q.target) / (self.value - self.q.new_water[self.q.parameter.name])
        part = min(share, needed)
        self.changes.append(Change(at, part * self.q.volume_l))
        mixed = {name: v - part * (v - self.q.new_water.get(name, v)) for name, v in self.values.items()}
        self.points.append(Point(at, mixed))
        if share >= needed:
            self.done = True
            return
        rest = (self.value - self.q.target) / self.use if self.use > 0.0 else math.inf
        self.move(min(every, rest), 0.0)
        self.done = rest <= every


def _both_ways(q: RecoveryQuestion) -> tuple[_Way, _Way]:
    start = Point(0.0, dict(q.values))
    return _Way(q, 0.0, [start]), _Way(q, 1.0, [start])


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
    alone, both = _both_ways(q)
    while not alone.done and len(alone.stages) < LONGEST_DAYS:
        share, set_by = fastest(q, alone.values, *(() if both.done else (both.values,)))
        for way in (alone, both):
            if not way.done:
                way.exchange(share, set_by)
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
    alone, both = _both_ways(q)
    while not alone.done and len(alone.changes) < LONGEST_DAYS * CHANGES_PER_DAY:
        share = fastest(q, alone.values, *(() if both.done else (both.values,)))[0] / CHANGES_PER_DAY
        for way in (alone, both):
            if not way.done:
                way.change(share)
    return alone.course(), both.course()


def fastest(q: RecoveryQuestion, *states: Values) -> tuple[float, str]:
    """Return the largest share of the water that may be exchanged per day from here on.

    Parameters
    ----------
    q : RecoveryQuestion
        The question.
    *states : mapping of str to float
        The values now [canonical unit], with and without use.

    Returns
    -------
    tuple of (float, str)
        Share [1/day], and the parameter that allows no more, or ``"largest_share"``.
    """
    found = (q.most_l_per_day / q.volume_l, "largest_share")
    for p in q.known:
        if p.name not in q.new_water:
            continue
        gap = max(abs(values[p.name] - q.new_water[p.name]) for values in states)
        # What is used goes the same way as a fall.
        room = max(hard(p) - q.used(p.name), 0.0)
        if gap > _NOTHING * hard(p):
            found = min(found, (room / gap, p.name))
    return found


def _days_needed(q: RecoveryQuestion, value: float, share: float, use: float) -> float:
    """Return how long a steady exchange takes to the target [day]; infinite when it never gets there."""
    above, rate = value - q.target, share * (value - q.new_water[q.parameter.name]) + use
    if rate <= 0.0:
        return math.inf
    if share * above <= _NOTHING * rate:
        return above / rate
    # The rate shrinks by exp(-share*t), and with it falls share times the value.
    left = 1.0 - share * above / rate
    return -math.log(left) / share if left > 0.0 else math.inf


def _moved(q: RecoveryQuestion, values: Values, days: float, share: float, counted: float) -> Values:
    moved = {}
    for name, value in values.items():
        mixed = share if name in q.new_water else 0.0
        part = segment(days, 0.0, counted * q.used(name), exchange=mixed, new_water=q.new_water.get(name, 0.0))
        moved[name] = float(after(value, days, part.gain, part.loss))
    return moved
