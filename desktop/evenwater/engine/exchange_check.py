"""A second opinion on an exchange that shares no code with the course: amounts in the tank, by superposition, with a ledger.

What is there at a time is the sum of what each source left: the old stock, every addition and the steady flows, each washed out by the
same exponential on its own. The ledger then sums what came and what went, whose difference must be what is there. Plain floats only.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from evenwater.engine.exchange_question import ExchangeQuestion, Moved, Spell


@dataclass(frozen=True)
class Ledger:
    """What became of one value in the tank [canonical unit times L].

    ``before`` and ``there`` are what is dissolved at the start and at the end, ``came`` with new water, steady addition and single
    doses, ``went`` with old water, use and loss.
    """

    before: float
    came: float
    went: float
    there: float

    @property
    def off(self) -> float:
        """What the books are out by [canonical unit times L]."""
        return self.before + self.came - self.went - self.there


def value_at(q: ExchangeQuestion, moved: Moved, day: float) -> float:
    """Return a value after some time, each source on its own.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.
    moved : Moved
        One of its values.
    day : float
        Time since the start [day].

    Returns
    -------
    float
        The value [canonical unit], right after any addition at that instant.
    """
    rate = (q.pair.out_l + moved.loss * q.volume_l) / q.volume_l
    steadily = (q.pair.in_l * moved.new_water + (moved.added - moved.use) * q.volume_l) * _kept_days(rate, day)
    stock = moved.now * q.volume_l * math.exp(-rate * day)
    single = math.fsum(
        dose.raises * q.volume_l * math.exp(-rate * (day - dose.at_day))
        for dose in q.doses
        if dose.parameter.name == moved.parameter.name and dose.at_day <= day
    )
    for_a_time = math.fsum(
        spell.per_day * q.volume_l * _left_of(rate, spell, day)
        for spell in q.spells
        if spell.parameter.name == moved.parameter.name
    )
    return (stock + steadily + single + for_a_time) / q.volume_l


def _left_of(rate: float, spell: Spell, day: float) -> float:
    """Return how many days' worth of an addition for a time are still there [day]."""
    begins, ends = max(0.0, spell.begins), min(spell.ends, day)
    if ends <= begins:
        return 0.0
    return _kept_days(rate, ends - begins) * math.exp(-rate * (day - ends))


def _kept_days(rate: float, days: float) -> float:
    """Return how many days' worth of a steady source are still there [day]."""
    x = rate * days
    if x < 1e-5:
        return days * (1.0 - x / 2.0 + x * x / 6.0)
    return (1.0 - math.exp(-x)) / rate


def net_per_day(q: ExchangeQuestion, moved: Moved, value: float) -> float:
    """Return what the tank gains of one value in a day while it stands at some figure; nothing where it has settled.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.
    moved : Moved
        One of its values.
    value : float
        Where it stands [canonical unit].

    Returns
    -------
    float
        Gain [canonical unit times L per day].
    """
    came = q.pair.in_l * moved.new_water + moved.added * q.volume_l
    return came - moved.use * q.volume_l - (q.pair.out_l + moved.loss * q.volume_l) * value


def ledger(q: ExchangeQuestion, moved: Moved) -> Ledger:
    """Return the books of one value over the days asked about.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.
    moved : Moved
        One of its values.

    Returns
    -------
    Ledger
        What came, what went and what is there.
    """
    v, days = q.volume_l, q.days
    doses = [d for d in q.doses if d.parameter.name == moved.parameter.name and d.at_day <= days]
    rate = (q.pair.out_l + moved.loss * v) / v
    # Day-long averages of what is there: the stock and every dose decay, the steady flows build up.
    held = moved.now * v * _kept_days(rate, days)
    held += math.fsum(d.raises * v * _kept_days(rate, days - d.at_day) for d in doses)
    steadily = q.pair.in_l * moved.new_water + (moved.added - moved.use) * v
    held += steadily * _built(rate, days)
    came = q.pair.in_l * moved.new_water * days + moved.added * v * days + math.fsum(d.raises * v for d in doses)
    for spell in (each for each in q.spells if each.parameter.name == moved.parameter.name):
        begins, ends = max(0.0, spell.begins), min(spell.ends, days)
        if begins < ends:
            # It builds up while it runs, and is washed out from then on.
            after = _kept_days(rate, ends - begins) * _kept_days(rate, days - ends)
            held += spell.per_day * v * (_built(rate, ends - begins) + after)
            came += spell.per_day * v * (ends - begins)
    went = rate * held + moved.use * v * days
    return Ledger(moved.now * v, came, went, value_at(q, moved, days) * v)


def _built(rate: float, days: float) -> float:
    """Return the integral of ``_kept_days`` over the days [day squared]."""
    x = rate * days
    if x < 1e-2:
        return days * days * (0.5 - x / 6.0 + x * x / 24.0 - x**3 / 120.0)
    return (days - _kept_days(rate, days)) / rate
