"""The pump pair and its water: how well matched, how long jugs last, what the dosing plan changes, and the mixing bucket."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.engine.exchange_question import ExchangeQuestion, Mixing, Moved
from evenwater.engine.quantities import Water, density_kg_per_l

# Common practice, no source: salinity is held within this much of what is wanted.
SALINITY_HELD = 0.5
WEEK_DAYS = 7.0


@dataclass(frozen=True)
class Match:
    """How well the two pumps are matched.

    ``ratio`` is in over out [1], within ``low`` to ``high`` the salinity settles no further than 0.5 from that of the new water;
    ``settles`` is the practical salinity the tank comes to with its level held by top-off. ``level_l`` [L per day] is what the tank
    gains with the level not held and nothing evaporating. All None where nothing is taken out.
    """

    ratio: float | None
    low: float | None
    high: float | None
    settles: float | None
    level_l: float

    @property
    def holds(self) -> bool:
        """Whether the pair is matched well enough."""
        return (
            self.ratio is not None
            and self.low is not None
            and self.high is not None
            and self.low <= self.ratio <= self.high
        )


@dataclass(frozen=True)
class Jugs:
    """Jugs or barrels: how long each lasts [day] (None without a size or a flow), and what a weekly swap takes of each [L]."""

    old_lasts: float | None
    new_lasts: float | None
    old_weekly_l: float
    new_weekly_l: float


@dataclass(frozen=True)
class DosingChange:
    """What keeping a value where it is takes of its stock [mL per day]: without exchange, with it, and what changes.

    ``with_exchange`` is never below zero; ``spare`` [canonical unit per day] is what the new water brings beyond what is used.
    """

    moved: Moved
    without: float
    with_exchange: float
    spare: float

    @property
    def more(self) -> float:
        """Millilitres more per day; below zero, so many less [mL per day]."""
        return self.with_exchange - self.without


@dataclass(frozen=True)
class Bucket:
    """What goes into a bucket of new water: salt mix by the bag's own label [g].

    After a test: ``salt_g`` [g] of sodium chloride that brings it to what is wanted, or ``water_l`` [L] of fresh water; one is zero.
    """

    mix_g: float
    salt_g: float | None
    water_l: float | None


def match(q: ExchangeQuestion) -> Match:
    """Hold the two pumps against each other.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.

    Returns
    -------
    Match
        With the level held by top-off, salinity settles at S_new * Q_in / Q_out.
    """
    level = q.pair.in_l - q.pair.out_l
    if q.pair.out_l <= 0.0:
        return Match(None, None, None, None, level)
    ratio = q.pair.in_l / q.pair.out_l
    if q.new_salinity <= 0.0:
        return Match(ratio, None, None, 0.0, level)
    margin = SALINITY_HELD / q.new_salinity
    return Match(ratio, 1.0 - margin, 1.0 + margin, q.new_salinity * ratio, level)


def jugs(q: ExchangeQuestion) -> Jugs:
    """Return how long the jugs last, and how large they must be to be swapped once a week.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.

    Returns
    -------
    Jugs
        Days and litres.
    """
    return Jugs(
        old_lasts=None if q.old_jug_l is None or q.pair.out_l <= 0.0 else q.old_jug_l / q.pair.out_l,
        new_lasts=None if q.new_jug_l is None or q.pair.in_l <= 0.0 else q.new_jug_l / q.pair.in_l,
        old_weekly_l=WEEK_DAYS * q.pair.out_l,
        new_weekly_l=WEEK_DAYS * q.pair.in_l,
    )


def dosing(q: ExchangeQuestion, moved: Moved) -> DosingChange | None:
    """Return what the exchange changes in the dose that keeps a value where it is now.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.
    moved : Moved
        One of its values.

    Returns
    -------
    DosingChange or None
        None where no stock is given.
    """
    per_ml = moved.per_ml(q.water)
    if per_ml <= 0.0:
        return None
    used = moved.use + moved.loss * moved.now
    brought = q.share_in * moved.new_water - q.share_out * moved.now
    ml = q.volume_l / per_ml
    return DosingChange(moved, used * ml, max(0.0, used - brought) * ml, max(0.0, brought - used))


def bucket(mixing: Mixing, wanted: float, water: Water) -> Bucket:
    """Return what a bucket of new water takes.

    Parameters
    ----------
    mixing : Mixing
        The bucket and the bag's label.
    wanted : float
        Practical salinity it should have [1].
    water : Water
        The tank's water, for the temperature it is mixed at [degC].

    Returns
    -------
    Bucket
        Salt mix in proportion to the label; sodium chloride counts by its mass, as everywhere.
    """
    mix = mixing.label_g * mixing.volume_l / mixing.label_l * wanted / mixing.label_salinity
    if mixing.measured is None:
        return Bucket(mix, None, None)
    short = wanted - mixing.measured
    mass_kg = mixing.volume_l * density_kg_per_l(Water(mixing.measured, water.temperature_c))
    diluted = mixing.volume_l * (mixing.measured / wanted - 1.0) if short < 0.0 else 0.0
    return Bucket(mix, max(0.0, short) * mass_kg, diluted)
