"""What an upkeep does in a week, a month and a year, value by value, and what else a keeper wants to see of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import from_canonical
from evenwater.engine.units import KINDS
from evenwater.engine.upkeep import UpkeepAnswer, UpkeepQuestion
from evenwater.engine.upkeep_balance import BESIDES, Drift, SaltLeft
from evenwater.engine.upkeep_limits import unit_of
from evenwater.screens.shown import about, figure, significant, with_unit
from evenwater.screens.terms import capitalized, term
from evenwater.screens.views import WorkLine
from evenwater.wording import marked, say

# A change below this share of what a test kit tells is nothing; common practice, no source.
_SHARE_OF_KIT = 0.001
# The same of what no kit tells, and of salt in the tank.
_LEAST_MG_PER_L, _LEAST_G = 0.01, 0.001
_NOTHING = marked("no change")


@dataclass(frozen=True)
class SpanLine:
    """What becomes of one value: words for a week, a month and a year, and where it settles (empty without exchange)."""

    what: str
    how: str
    week: str
    month: str
    year: str
    settles: str = ""


def spans(answer: UpkeepAnswer) -> tuple[SpanLine, ...]:
    """Return what a week, a month and a year do to everything that moves, with and without the exchange.

    Parameters
    ----------
    answer : UpkeepAnswer
        The plan.

    Returns
    -------
    tuple of SpanLine
        The salt left first, then the parameters, then sodium, chloride, sulfate and boron.
    """
    return tuple(_spans(answer))


def _spans(answer: UpkeepAnswer) -> Iterator[SpanLine]:
    q = answer.question
    exchanged = say(
        "with {exchange_fraction} exchanged a day",
        exchange_fraction=about(1000.0 * q.exchange_fraction * q.system.volume_l),
    )
    alone = say("without exchange")
    if answer.known:
        yield from _salt(say("Salt left behind"), answer.salt, alone, exchanged)
        yield from _salt(say("Of it sodium chloride"), answer.sodium_chloride, alone, exchanged)
    for drift in answer.drifts:
        # Of a bottle nobody knows what it leaves behind.
        if not answer.known and drift.name == "salinity":
            continue
        name = capitalized(drift.name)
        yield from _moving(q, drift, drift.alone, SpanLine(name, alone, "", "", ""))
        if drift.exchanged is not None:
            yield from _moving(q, drift, drift.exchanged, SpanLine(name, exchanged, "", "", "", _settles(q, drift)))


def _moving(q: UpkeepQuestion, drift: Drift, amounts: tuple[float, ...], line: SpanLine) -> Iterator[SpanLine]:
    """Yield the line with its words, unless nothing moves."""
    week, month, year = (_change(q, drift, amount) for amount in amounts)
    if {week, month, year} != {say(_NOTHING)}:
        yield replace(line, week=week, month=month, year=year)


def _salt(name: str, salt: SaltLeft, alone: str, exchanged: str) -> Iterator[SpanLine]:
    if salt.alone[-1] < _LEAST_G:
        return
    week, month, year = map(_mass, salt.alone)
    yield SpanLine(name, alone, week, month, year)
    if salt.exchanged is not None and salt.steady is not None:
        week, month, year = map(_mass, salt.exchanged)
        yield SpanLine(name, exchanged, week, month, year, say("at {steady} in the tank", steady=_mass(salt.steady)))


def _change(q: UpkeepQuestion, drift: Drift, amount: float) -> str:
    if abs(amount) < _least(q, drift):
        return say(_NOTHING)
    held = drift.start if drift.start is not None else drift.new_water
    if held is not None and held + amount <= 0.0:
        return say("used up")
    figure_ = _figure(q, drift, abs(amount))
    return say("{amount} more", amount=figure_) if amount > 0.0 else say("{amount} less", amount=figure_)


def _settles(q: UpkeepQuestion, drift: Drift) -> str:
    if drift.steady is None:
        return ""
    if drift.new_water is None:
        return say("{drift} than in the new water", drift=_change(q, drift, drift.steady))
    value = drift.new_water + drift.steady
    return say("at {drift}", drift=_figure(q, drift, value)) if value > 0.0 else say("used up")


def _least(q: UpkeepQuestion, drift: Drift) -> float:
    if drift.name in BESIDES:
        return _LEAST_MG_PER_L
    parameter = next(p for p in q.others if p.name == drift.name)
    return _SHARE_OF_KIT * parameter.canonical(parameter.kit_accuracy)


def _figure(q: UpkeepQuestion, drift: Drift, amount: float) -> str:
    """Write an amount in the keeper's unit; of salinity in grams of salt per kilogram."""
    if drift.name in BESIDES:
        return with_unit(significant(amount, 3), say("mg per L"))
    if drift.name == "salinity":
        return with_unit(significant(amount, 3), say("g per kg"))
    parameter = next(p for p in q.others if p.name == drift.name)
    unit = unit_of(q, parameter)
    said = from_canonical(amount, parameter.kind, unit, q.system.water)
    return with_unit(significant(said, 3), KINDS[parameter.kind].unit(unit).shown)


def _mass(grams: float) -> str:
    if grams >= 1000.0:
        return with_unit(significant(grams / 1000.0, 3), "kg")
    return with_unit(significant(grams, 3), "g") if grams >= 1.0 else with_unit(significant(1000.0 * grams, 3), "mg")


def lines(answer: UpkeepAnswer) -> tuple[WorkLine, ...]:
    """Return what else an upkeep does, line by line.

    Parameters
    ----------
    answer : UpkeepAnswer
        The plan.

    Returns
    -------
    tuple of WorkLine
        The ratio of calcium to alkalinity, what rounding leaves, the water that comes along, pH after the doses.
    """
    return tuple(_lines(answer))


def _lines(answer: UpkeepAnswer) -> Iterator[WorkLine]:
    q, pair = answer.question, answer.pair
    if pair.of_use is not None:
        skeleton = say(
            "skeleton takes {of_skeleton}, one mole to two equivalents", of_skeleton=_ratio(pair.of_skeleton)
        )
        yield WorkLine(say("Calcium to alkalinity, as used"), skeleton, _ratio(pair.of_use))
    if pair.of_doses is not None and pair.of_doses > 0.0:
        yield WorkLine(
            say("Calcium to alkalinity, as dosed"), say("what all doses bring of both"), _ratio(pair.of_doses)
        )
    for each in answer.doses:
        if each.shortfall > 0.0:
            parameter, unit = each.item.parameter, unit_of(q, each.item.parameter)
            short = from_canonical(each.shortfall, parameter.kind, unit, q.system.water)
            yield WorkLine(
                say("Left of the use of {parameter}", parameter=term(parameter.name)),
                say("by rounding the dose down"),
                say("{short} per day", short=with_unit(significant(short, 2), KINDS[parameter.kind].unit(unit).shown)),
            )
    if answer.sodium_chloride.alone[-1] >= _LEAST_G:
        mole = with_unit(figure(molar_mass("NaCl"), 2), "g")
        yield WorkLine(say("Sodium chloride"), say("one mole for every equivalent made good with a two-part"), mole)
    in_day = sum(each.in_24_hours_ml for each in answer.doses)
    yield WorkLine(say("Water with the doses of 24 hours"), say("comes in place of as much top-off"), about(in_day))
    if answer.hour is not None:
        hour = answer.hour
        ph = say("{ph_nbs} now, before the air has evened it out", ph_nbs=figure(hour.now.ph_nbs, 2))
        yield WorkLine(say("pH after the doses of the fullest hour"), ph, figure(hour.lifted.ph_nbs, 2))
        now = say("{saturation} now", saturation=significant(hour.now.saturation, 3))
        yield WorkLine(say("Aragonite saturation after them"), now, significant(hour.after.saturation, 3))


def _ratio(mg_per_meq: float) -> str:
    return with_unit(significant(mg_per_meq, 4), say("mg per meq"))
