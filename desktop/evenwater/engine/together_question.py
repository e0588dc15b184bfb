"""Everything that runs in one tank at once: upkeep, corrections, foods, use, loss and exchange, in one mass balance."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from evenwater.engine.exchange_course import course, stretches
from evenwater.engine.exchange_question import ExchangeQuestion, Moved, OneDose, Pair, Spell

UPKEEP, CORRECTION, FOOD = "upkeep", "correction", "food"


@dataclass(frozen=True)
class Source:
    """One thing that moves one value: ``sort`` is ``UPKEEP``, ``CORRECTION`` or ``FOOD``, ``name`` what it is called.

    An upkeep and a correction are called by the value that they are dosed for, which need not be the one that ``spell`` moves.
    ``aims_at`` [canonical unit] is where a correction takes its own value; None of what it moves besides, and of the others.
    """

    sort: str
    name: str
    spell: Spell
    aims_at: float | None = None

    @property
    def plan(self) -> tuple[str, str]:
        """What it is a part of: the same for everything that one jug or one food moves."""
        return self.sort, self.name


@dataclass(frozen=True)
class TogetherQuestion:
    """A tank and everything that runs in it.

    ``tank`` has the values as they are now, with use, loss and exchange, and no additions. ``unknown`` are the values that nobody has
    tested: only their changes mean anything. ``lately`` are the doses by hand of the last 24 hours, days below zero: they count in the
    same 24 hours as what comes. ``looks_ahead`` [day] is how far is looked for a value that leaves its range.
    """

    tank: ExchangeQuestion
    sources: tuple[Source, ...]
    unknown: frozenset[str] = frozenset()
    lately: tuple[OneDose, ...] = ()
    looks_ahead: float = 365.0

    @property
    def running(self) -> ExchangeQuestion:
        """The tank with every source."""
        return replace(self.tank, spells=tuple(source.spell for source in self.sources))

    @property
    def alone(self) -> ExchangeQuestion:
        """The tank with every source and without exchange."""
        return replace(self.running, pair=Pair(0.0, 0.0))

    def at_volume(self, share: float) -> ExchangeQuestion:
        """Return the tank with every source, were its net volume another.

        Parameters
        ----------
        share : float
            The other volume over the one it is taken for [1].

        Returns
        -------
        ExchangeQuestion
            The same millilitres and litres in it; what the animals use was seen in the water itself and stays.
        """
        spells = tuple(replace(s.spell, per_day=s.spell.per_day / share) for s in self.sources)
        return replace(self.tank, volume_l=self.tank.volume_l * share, spells=spells)

    def only(self, plans: Sequence[tuple[str, str]]) -> ExchangeQuestion:
        """Return the tank with some plans only, each with the use that it makes good, and without exchange.

        Parameters
        ----------
        plans : sequence of tuple of str
            What ``Source.plan`` says.

        Returns
        -------
        ExchangeQuestion
            As each sheet reckons its own plan.
        """
        own = [source for source in self.sources if source.plan in plans]
        covered = {name for _, name in plans}
        values = tuple(
            replace(v, loss=0.0, use=v.use if v.parameter.name in covered else 0.0) for v in self.tank.values
        )
        return replace(self.alone, values=values, spells=tuple(source.spell for source in own))


def carried_forward(
    tank: ExchangeQuestion,
    moved: Moved,
    age_days: float,
    sources: Sequence[Source],
    given: Sequence[OneDose] = (),
) -> float:
    """Return what a value has become since it was tested.

    Parameters
    ----------
    tank : ExchangeQuestion
        The tank, for its volume and its exchange.
    moved : Moved
        The value as it was then, with its use and loss.
    age_days : float
        How long ago that was [day].
    sources : sequence of Source
        What runs; instants count from now, what ran before begins below zero.
    given : sequence of OneDose
        Doses since then, counted from the test [day].

    Returns
    -------
    float
        The value now [canonical unit]: exactly, and never below nothing.
    """
    if age_days <= 0.0:
        return moved.now
    past = [
        replace(s.spell, begins=s.spell.begins + age_days, ends=min(s.spell.ends, 0.0) + age_days)
        for s in sources
        if s.spell.parameter == moved.parameter and s.spell.begins < 0.0
    ]
    before = replace(tank, values=(moved,), days=age_days, doses=tuple(given), spells=tuple(past))
    value = course(np.array([moved.now]), stretches(before), np.array([age_days]))[0, 0]
    return max(0.0, float(value))
