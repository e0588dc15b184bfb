"""Tanks in which much runs at once, to be put together: the frag bay of 340 L, and random ones."""

from __future__ import annotations

import math

import numpy as np

from evenwater.engine.catalogue import Parameter
from evenwater.engine.exchange_question import ExchangeQuestion, Moved, Pair, Spell
from evenwater.engine.quantities import Water
from evenwater.engine.together import solve
from evenwater.engine.together_answer import Outlook, TogetherAnswer
from evenwater.engine.together_question import CORRECTION, FOOD, UPKEEP, Source, TogetherQuestion
from tests.engine.asking import known

ALL = math.inf


def parameter(name: str) -> Parameter:
    """Return a parameter of the product's own list."""
    return known().parameters[name]


def moved(name: str, now: float, **more: float) -> Moved:
    """Return a value; figures in the display unit, the new water natural unless it is given."""
    p = parameter(name)
    figures = {key: value if key == "loss" else p.canonical(value) for key, value in more.items()}
    new = figures.pop("new_water", p.canonical(p.natural))
    return Moved(p, p.display_unit, p.canonical(now), new, **figures)


def source(sort: str, of: str, name: str, per_day: float, begins: float = -ALL, ends: float = ALL, aims_at: float | None = None) -> Source:  # fmt: skip
    """Return what ``of`` moves of the value ``name``, in its display unit per day."""
    p = parameter(name)
    spell = Spell(p, begins, ends, p.canonical(per_day))
    return Source(sort, of, spell, None if aims_at is None else p.canonical(aims_at))


def tank(*values: Moved, out_l: float = 0.0, in_l: float | None = None, days: float = 30.0) -> ExchangeQuestion:
    """Return the frag bay of 340 L."""
    pair = Pair(out_l, out_l if in_l is None else in_l)
    return ExchangeQuestion("North frag bay", 340.0, 0.03, Water(35.0, 25.0), pair, days, values)


def put(exchange: ExchangeQuestion, *sources: Source, unknown: frozenset[str] = frozenset()) -> TogetherAnswer:
    """Return everything together; the test fails where it is refused."""
    found = solve(TogetherQuestion(exchange, sources, unknown))
    assert isinstance(found, TogetherAnswer), found
    return found


def of(found: TogetherAnswer, name: str) -> Outlook:
    """Return the outlook of a value, which must be there."""
    each = found.outlook(name)
    assert each is not None, name
    return each


def random_question(seed: int) -> TogetherQuestion:
    """Return four values under an unmatched pair, use, loss and a dozen sources that begin and end when they like."""
    rng = np.random.default_rng(seed)
    names = ("alkalinity", "calcium", "nitrate", "phosphate")
    values = []
    for name in names:
        p = parameter(name)
        low, high = p.range_kept
        use, loss = float(rng.uniform(0.0, 0.3)) * p.rise_hard, float(rng.uniform(0.0, 0.1))
        values.append(moved(name, float(rng.uniform(low, high)) + 3.0 * p.rise_hard, use=use, loss=loss))
    sources = []
    for number in range(12):
        name = names[number % 4]
        begins, lasts = float(rng.uniform(-5.0, 20.0)), float(rng.exponential(8.0))
        sort = (UPKEEP, CORRECTION, FOOD)[number % 3]
        per_day = float(rng.uniform(-0.1, 0.6)) * parameter(name).rise_hard
        sources.append(source(sort, f"{name} {number}", name, per_day, begins, begins + lasts))
    out_l = float(rng.uniform(0.0, 30.0))
    return TogetherQuestion(tank(*values, out_l=out_l, in_l=out_l * float(rng.uniform(0.8, 1.0))), tuple(sources))
