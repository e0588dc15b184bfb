"""The sentences about everything that runs together in one system."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from evenwater.engine.quantities import from_canonical, significant
from evenwater.engine.together_answer import EXCHANGE, LOSS, USE
from evenwater.engine.together_question import CORRECTION, FOOD, UPKEEP
from evenwater.engine.together_range import BELOW
from evenwater.engine.units import KINDS
from evenwater.screens.shown import NBSP, span, with_unit

Params = Mapping[str, Any]

_WORDS = {UPKEEP: "the upkeep of {}", CORRECTION: "the correction of {}", FOOD: "{}"}
_BESIDES = {USE: "used", LOSS: "taken by skimmer, algae and media", EXCHANGE: "water exchange"}


def source_words(sort: str, name: str) -> str:
    """Return what moves a value in words: the upkeep of calcium, water exchange, a food's name."""
    return _BESIDES.get(sort) or _WORDS[sort].format(name)


def held(value: str) -> str:
    """Return a value whose unit is never torn apart at the end of a line; what it is counted as may go to the next one."""
    return value.replace(" per L", f"{NBSP}per{NBSP}L")


def _plans(plans: Sequence[tuple[str, str]]) -> str:
    said = ["the new water" if plan[0] == EXCHANGE else source_words(*plan) for plan in plans]
    return said[0] if len(said) == 1 else f"{', '.join(said[:-1])} and {said[-1]}"


def _value(p: Params, name: str) -> str:
    number = from_canonical(p[name], p["kind"], p["unit"], p["water"])
    return held(with_unit(significant(number, 3), KINDS[p["kind"]].unit(p["unit"]).shown))


def _bound(p: Params) -> str:
    return f"below {_value(p, 'low')}" if p["side"] == BELOW else f"above {_value(p, 'high')}"


def _name(p: Params) -> str:
    return str(p["parameter"]).capitalize()


def _leaves_hard(p: Params) -> str:
    if p["day"] <= 0.0:
        return f"{_name(p)} is {_bound(p)} and does not come back by itself. Correct it first."
    return (
        f"{_name(p)} goes {_bound(p)} in {span(p['day'])}, where no plan may take it. Change what moves it before that."
    )


def _too_fast(p: Params) -> str:
    limit = f"{_name(p)} would rise {_value(p, 'rise')} in 24 hours, of {_value(p, 'most')} at the most"
    if not p["plans"]:
        return f"{limit}: no single plan does that. Let some of them wait."
    less = "Bring it nearer, or exchange more slowly." if p["plans"][0][0] == EXCHANGE else "Give less of it."
    return f"{limit}, by {_plans(p['plans'])}. {less}"


SENTENCES: dict[str, Callable[[Params], str]] = {
    "together_rises_too_fast": lambda p: (
        f"All together {p['parameter']} would rise {_value(p, 'rise')} in 24 hours, of {_value(p, 'most')} at the most: "
        f"{_plans(p['plans'])} raise it, though each alone keeps the limit. Let one wait until the other is done, or make it slower."
    ),
    "together_one_rises_too_fast": _too_fast,
    "together_falls_too_fast": lambda p: (
        f"{_name(p)} would fall {_value(p, 'fall')} in 24 hours, of {_value(p, 'most')} at the most. "
        "Exchange more slowly, or bring the new water nearer."
    ),
    "together_leaves_hard": _leaves_hard,
    "together_leaves_hard_later": lambda p: (
        f"{_name(p)} goes {_bound(p)} in {span(p['day'])}, where no plan may take it. Test it before, and change what moves it."
    ),
    "together_leaves_usual": lambda p: (
        f"{_name(p)} is {_bound(p)}, outside of what is usually kept."
        if p["day"] <= 0.0
        else f"{_name(p)} goes {_bound(p)} in {span(p['day'])}, out of what is usually kept."
    ),
    "together_used_up": lambda p: f"{_name(p)} would be used up in {span(max(p['day'], 0.0))}.",
    "together_raised_by_both": lambda p: (
        f"{_name(p)} is raised by {_plans(p['plans'])}: {_value(p, 'rise')} per day together."
    ),
    "together_overshoots": lambda p: (
        f"{_name(p)} would come to {_value(p, 'comes_to')} in {span(p['day'])}, not to the target of {_value(p, 'target')}: "
        f"{_plans(p['plans'])} raise it as well. Plan it lower or slower, or let the other wait."
    ),
    "together_disagrees": lambda p: (
        f"Two ways to reckon all plans together differ for {', '.join(p['what'])}, so nothing is said. Please report this log."
    ),
}  # fmt: skip
