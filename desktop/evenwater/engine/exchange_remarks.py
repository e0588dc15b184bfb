"""What a keeper should know of an exchange: how far the new water may differ, and what goes wrong with a pair that is not matched."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from evenwater.engine.exchange_pair import DosingChange, Match
from evenwater.engine.exchange_question import ExchangeQuestion, Mixing, Moved
from evenwater.engine.reasons import Reason

# Common practice, no source: new water that differs by more than this is first brought nearer.
SALINITY_APART = 1.0
TEMPERATURE_APART_C = 2.0
ALKALINITY_APART_MEQ = 1.0
# Common practice, no source: beyond this sodium chloride alone would shift the balance of the salts.
SALT_ALONE = 1.0


def of_pair(q: ExchangeQuestion, found: Match) -> Iterator[Reason]:
    """Yield what a pair does to level and salinity.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.
    found : Match
        How well the pumps match.

    Yields
    ------
    Reason
        Remarks.
    """
    litres = found.level_l
    if found.ratio is None:
        yield Reason("exchange_nothing_out", {}, "exchange.out")
    elif found.settles is not None and not found.holds and found.low is not None and found.high is not None:
        params = {
            "settles": found.settles,
            "new": q.new_salinity,
            "ratio": found.ratio,
            "low": found.low,
            "high": found.high,
        }
        yield Reason("exchange_pair_apart", params, "exchange.in")
    if litres > 0.0 and q.evaporation_l is None:
        yield Reason("exchange_may_flood", {"per_day_ml": 1000.0 * litres}, "exchange.in")
    elif litres < 0.0:
        yield Reason("exchange_top_off_more", {"per_day_ml": -1000.0 * litres}, "exchange.out")


def of_water(q: ExchangeQuestion) -> Iterator[Reason]:
    """Yield how far the new water differs from the tank's, and how foods are counted.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.

    Yields
    ------
    Reason
        Remarks; common practice, no source.
    """
    # What was measured last counts, where salinity is among the values.
    tank = next((moved.now for moved in q.values if moved.parameter.name == "salinity"), q.water.salinity)
    if abs(q.new_salinity - tank) > SALINITY_APART:
        params = {"new": q.new_salinity, "tank": tank, "most": SALINITY_APART}
        yield Reason("exchange_salinity_apart", params, "new_water.salinity")
    if q.new_temperature_c is not None and abs(q.new_temperature_c - q.water.temperature_c) > TEMPERATURE_APART_C:
        params = {"new": q.new_temperature_c, "tank": q.water.temperature_c, "most": TEMPERATURE_APART_C}
        yield Reason("exchange_temperature_apart", params, "new_water.temperature")
    if q.fed:
        yield Reason("exchange_fed", {"names": q.fed}, "food")


def of_pace(q: ExchangeQuestion, moved: Moved, rise: float, fall: float) -> Iterator[Reason]:
    """Yield where a value moves too fast, up or down, or the new water differs too much from the tank's.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.
    moved : Moved
        The value.
    rise, fall : float
        Its greatest rise and fall in 24 hours [canonical unit].

    Yields
    ------
    Reason
        Remarks. The paces hold both ways: a fast fall harms as a fast rise does (common practice, no source).
    """
    p, base, here = moved.parameter, _base(q, moved), f"{_place(q, moved)}.new_water"
    hard, recommended = p.canonical(p.rise_hard), p.canonical(p.rise_recommended)
    for way, change in (("rise", rise), ("fall", fall)):
        if change > hard:
            yield Reason(f"exchange_{way}_too_fast", {**base, way: change, "most": hard}, here)
        elif change > recommended:
            yield Reason(f"exchange_{way}_fast", {**base, way: change, "most": recommended}, here)
    if p.name == "alkalinity" and abs(moved.new_water - moved.now) > ALKALINITY_APART_MEQ:
        params = {"new": moved.new_water, "tank": moved.now, "most": ALKALINITY_APART_MEQ}
        yield Reason("exchange_alkalinity_apart", {**base, **params}, here)


def of_value(q: ExchangeQuestion, moved: Moved, settles: float | None, runs_out: float | None) -> Iterator[Reason]:
    """Yield what is to be known of one value's course.

    Parameters
    ----------
    q : ExchangeQuestion
        The question.
    moved : Moved
        The value.
    settles : float or None
        Where it settles [canonical unit].
    runs_out : float or None
        When nothing would be left [day].

    Yields
    ------
    Reason
        Remarks.
    """
    p, base, here = moved.parameter, _base(q, moved), _place(q, moved)
    if runs_out is not None:
        yield Reason("exchange_runs_out", {**base, "days": runs_out}, f"{here}.daily_use")
    elif settles is None and q.share_in * moved.new_water + moved.added != moved.use:
        yield Reason("exchange_never_settles", base, here)
    low, high = (p.canonical(end) for end in p.range_kept)
    if settles is not None and not low <= settles <= high:
        yield Reason("exchange_settles_outside", {**base, "settles": settles, "low": low, "high": high}, here)
    if moved.assumed:
        yield Reason("exchange_new_water_assumed", {**base, "value": moved.new_water}, f"{here}.new_water")


def _base(q: ExchangeQuestion, moved: Moved) -> dict[str, object]:
    p = moved.parameter
    return {"parameter": p.name, "kind": p.kind, "unit": moved.unit, "water": q.water}


def _place(q: ExchangeQuestion, moved: Moved) -> str:
    return f"value.{q.values.index(moved) + 1}"


def of_dosing(changes: Sequence[DosingChange]) -> Iterator[Reason]:
    """Yield where the new water brings more than is used, so that no dose is small enough.

    Parameters
    ----------
    changes : sequence of DosingChange
        What the exchange changes in the doses.

    Yields
    ------
    Reason
        Remarks.
    """
    for change in changes:
        if change.spare > 0.0:
            yield Reason("exchange_brings_too_much", {"parameter": change.moved.parameter.name})


def of_bucket(mixing: Mixing, wanted: float) -> Iterator[Reason]:
    """Yield what is to be known of a bucket of new water.

    Parameters
    ----------
    mixing : Mixing
        The bucket.
    wanted : float
        Practical salinity it should have [1].

    Yields
    ------
    Reason
        Remarks.
    """
    if mixing.measured is None:
        yield Reason("exchange_test_the_bucket", {}, "mixing.measured")
    elif wanted - mixing.measured > SALT_ALONE:
        yield Reason("exchange_salt_alone", {"short": wanted - mixing.measured, "most": SALT_ALONE}, "mixing.measured")
