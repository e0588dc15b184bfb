"""What a system's foods do to its water: what they bring in a day, against the limits, and where nitrate and phosphate settle."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from evenwater.engine import exchange
from evenwater.engine.catalogue import Parameter
from evenwater.engine.correction import Refused
from evenwater.engine.exchange import Course, ExchangeAnswer
from evenwater.engine.foods_question import Food, FoodsQuestion, fed, oxygen_per_nitrogen, total
from evenwater.engine.limits import Cap, Guardrail, Nearness, Standing, nearness, pace
from evenwater.engine.reasons import Reason


@dataclass(frozen=True)
class Brought:
    """What all foods bring of one value, and what of it the most that is allowed leaves [canonical unit per day]."""

    parameter: Parameter
    per_day: float
    near: Nearness | None


@dataclass(frozen=True)
class Most:
    """The most of one food beside the others, ``ml`` [mL per day], and the value whose rise allows no more."""

    ml: float
    parameter: Parameter


@dataclass(frozen=True)
class Settling:
    """One value without food and with it."""

    without: Course
    fed: Course


@dataclass(frozen=True)
class FoodsAnswer:
    """What the foods do.

    ``brought`` are the values that foods change, ``most`` how many times as much may be given of all of them [1], as the limit that binds
    allows; None where no food brings anything. ``times`` [day] are those of the courses. ``oxygen`` [mg per L and day] is what nitrification
    alone takes.
    """

    question: FoodsQuestion
    brought: tuple[Brought, ...]
    most: Cap | None
    times: tuple[float, ...]
    values: tuple[Settling, ...]
    oxygen: float
    remarks: tuple[Reason, ...] = ()


def solve(question: FoodsQuestion) -> FoodsAnswer | Refused:
    """Answer a question about foods.

    Parameters
    ----------
    question : FoodsQuestion
        The tank and its foods.

    Returns
    -------
    FoodsAnswer or Refused
        What they do; or why so much must not be given.
    """
    brought = tuple(_brought(question))
    most = _most(question, brought)
    if most is not None and most.fastest < 1.0 - 1e-9:
        return Refused((most.reason,))
    bare = exchange.solve(question.tank)
    tank = replace(question.tank, values=fed(question.tank.values, question.foods, question.tank.volume_l))
    with_food = exchange.solve(tank)
    if isinstance(bare, Refused):
        return bare
    if isinstance(with_food, Refused):
        return with_food
    answer = FoodsAnswer(
        question=question,
        brought=brought,
        most=most,
        times=bare.times,
        values=tuple(_pairs(bare, with_food)),
        oxygen=sum(_nitrified(food) for food in question.foods) / question.tank.volume_l,
    )
    return replace(answer, remarks=tuple(_remarks(answer)))


def most_of(question: FoodsQuestion, food: Food) -> Most | None:
    """Return how much of one food may be given at most beside the others.

    Parameters
    ----------
    question : FoodsQuestion
        The tank and its foods.
    food : Food
        One of them.

    Returns
    -------
    Most or None
        The volume [mL per day]; None where it brings nothing that is limited.
    """
    others = [each for each in question.foods if each is not food]
    litres = _least_l(question)
    found = []
    for p in question.parameters:
        per_ml = food.per_ml(p.name) / litres
        if per_ml > 0.0:
            left = p.canonical(p.rise_hard) - max(0.0, total(others, p.name, litres))
            found.append(Most(max(0.0, left / per_ml), p))
    return min(found, key=lambda most: most.ml, default=None)


def _least_l(question: FoodsQuestion) -> float:
    """Return the low end of the net volume [L]: what is reckoned for too large a volume is too much."""
    return question.tank.volume_l * (1.0 - question.tank.uncertainty)


def _brought(q: FoodsQuestion) -> Iterator[Brought]:
    for p in q.parameters:
        per_day = q.total(p.name)
        if per_day > 0.0:
            worst = total(q.foods, p.name, _least_l(q))
            near = nearness(f"food_rise_{p.name}", worst, p.canonical(p.rise_hard), p.display_unit)
            yield Brought(p, per_day, near)
        elif per_day < 0.0:
            yield Brought(p, per_day, None)


def _most(q: FoodsQuestion, brought: tuple[Brought, ...]) -> Cap | None:
    """Return the limit that binds, as how many times as much may be given: the one exit for all of them."""
    caps = [
        Cap(each.near.code, 1.0 / each.near.share, Reason("food_too_much", _figures(q, each, each.near)))
        for each in brought
        if each.near is not None
    ]
    return pace(caps) if caps else None


def _figures(q: FoodsQuestion, each: Brought, near: Nearness) -> dict[str, object]:
    p = each.parameter
    return {
        "parameter": p.name,
        "kind": p.kind,
        "unit": p.display_unit,
        "water": q.tank.water,
        "rise": near.value,
        "most": near.bound,
        "share": 1.0 / near.share,
    }


def _pairs(bare: ExchangeAnswer, with_food: ExchangeAnswer) -> Iterator[Settling]:
    for without, course in zip(bare.courses, with_food.courses, strict=True):
        yield Settling(without, course)


def _nitrified(food: Food) -> float:
    """Return the oxygen that nitrification of a food takes [mg per day]."""
    return 0.0 if food.salts else food.nitrogen * food.per_day_ml * oxygen_per_nitrogen()


def _remarks(answer: FoodsAnswer) -> Iterator[Reason]:
    q = answer.question
    for each in answer.brought:
        if each.near is None:
            continue
        p = each.parameter
        guard = Guardrail(p.canonical(p.rise_recommended), p.canonical(p.rise_hard))
        if guard.standing(each.near.value) is Standing.BEYOND_RECOMMENDED:
            yield Reason("food_rise_fast", {**_figures(q, each, each.near), "most": guard.recommended})
    for value in answer.values:
        yield from _of_value(q, value)
    for food in q.foods:
        if food.phosphorus is None and not food.salts:
            yield Reason("food_phosphorus_unsaid", {"name": food.name})


def _of_value(q: FoodsQuestion, value: Settling) -> Iterator[Reason]:
    """Yield where a value that food raises ends."""
    p, course = value.fed.moved.parameter, value.fed
    if course.moved.added <= value.without.moved.added:
        return
    figures = {"parameter": p.name, "kind": p.kind, "unit": p.display_unit, "water": q.tank.water}
    high = p.canonical(p.range_kept[1])
    if course.settles is None and course.runs_out is None:
        yield Reason("food_never_settles", {**figures, "rise": 7.0 * q.total(p.name)})
    elif course.settles is not None and course.settles > high:
        yield Reason("food_settles_high", {**figures, "settles": course.settles, "high": high})
