"""The sentences about everything that runs together in one system."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from evenwater.engine.quantities import from_canonical
from evenwater.engine.together_answer import EXCHANGE, LOSS, USE
from evenwater.engine.together_question import CORRECTION, FOOD, UPKEEP
from evenwater.engine.together_range import BELOW
from evenwater.engine.units import KINDS
from evenwater.screens.shown import NBSP, significant, span, with_unit
from evenwater.screens.terms import capitalized, listed, term
from evenwater.wording import marked, say, say_all

Params = Mapping[str, Any]

_WORDS = {UPKEEP: marked("the upkeep of {}"), CORRECTION: marked("the correction of {}"), FOOD: "{}"}
_BESIDES = {USE: marked("used"), LOSS: marked("taken by skimmer, algae and media"), EXCHANGE: marked("water exchange")}


def source_words(sort: str, name: str) -> str:
    """Return what moves a value in words: the upkeep of calcium, water exchange, a food's name."""
    return say_all(_BESIDES.get(sort)) or say_all(_WORDS[sort]).format(name)


def held(value: str) -> str:
    """Return a value whose unit is never torn apart at the end of a line; what it is counted as may go to the next one."""
    return value.replace(" per L", f"{NBSP}per{NBSP}L")


def _plans(plans: Sequence[tuple[str, str]]) -> str:
    said = [say("the new water") if plan[0] == EXCHANGE else source_words(*plan) for plan in plans]
    return listed(said)


def _value(p: Params, name: str) -> str:
    number = from_canonical(p[name], p["kind"], p["unit"], p["water"])
    return held(with_unit(significant(number, 3), KINDS[p["kind"]].unit(p["unit"]).shown))


def _bound(p: Params) -> str:
    return (
        say("below {low}", low=_value(p, "low")) if p["side"] == BELOW else say("above {high}", high=_value(p, "high"))
    )


def _name(p: Params) -> str:
    return capitalized(str(p["parameter"]))


def _leaves_hard(p: Params) -> str:
    if p["day"] <= 0.0:
        return say(
            "{name} is {bound} and does not come back by itself. Correct it first.", name=_name(p), bound=_bound(p)
        )
    return say(
        "{name} goes {bound} in {day}, where no plan may take it. Change what moves it before that.",
        name=_name(p),
        bound=_bound(p),
        day=span(p["day"]),
    )


def _too_fast(p: Params) -> str:
    limit = say(
        "{name} would rise {rise} in 24 hours, of {most} at the most",
        name=_name(p),
        rise=_value(p, "rise"),
        most=_value(p, "most"),
    )
    if not p["plans"]:
        return say("{limit}: no single plan does that. Let some of them wait.", limit=limit)
    less = say("Bring it nearer, or exchange more slowly.") if p["plans"][0][0] == EXCHANGE else say("Give less of it.")
    return say("{limit}, by {plans}. {less}", limit=limit, plans=_plans(p["plans"]), less=less)


SENTENCES: dict[str, Callable[[Params], str]] = {
    "together_rises_too_fast": lambda p: (
        say("All together {parameter} would rise {rise} in 24 hours, of {most} at the most: {plans} raise it, though each alone keeps the limit. Let one wait until the other is done, or make it slower.", parameter=term(p['parameter']), rise=_value(p, 'rise'), most=_value(p, 'most'), plans=_plans(p['plans']))
    ),
    "together_one_rises_too_fast": _too_fast,
    "together_falls_too_fast": lambda p: (
        say("{name} would fall {fall} in 24 hours, of {most} at the most. Exchange more slowly, or bring the new water nearer.", name=_name(p), fall=_value(p, 'fall'), most=_value(p, 'most'))
    ),
    "together_leaves_hard": _leaves_hard,
    "together_leaves_hard_later": lambda p: (
        say("{name} goes {bound} in {day}, where no plan may take it. Test it before, and change what moves it.", name=_name(p), bound=_bound(p), day=span(p['day']))
    ),
    "together_leaves_usual": lambda p: (
        say("{name} is {bound}, outside of what is usually kept.", name=_name(p), bound=_bound(p))
        if p["day"] <= 0.0
        else say("{name} goes {bound} in {day}, out of what is usually kept.", name=_name(p), bound=_bound(p), day=span(p['day']))
    ),
    "together_used_up": lambda p: say('{name} would be used up in {day}.', name=_name(p), day=span(max(p['day'], 0.0))),
    "together_raised_by_both": lambda p: (
        say("{name} is raised by {plans}: {rise} per day together.", name=_name(p), plans=_plans(p['plans']), rise=_value(p, 'rise'))
    ),
    "together_overshoots": lambda p: (
        say("{name} would come to {comes_to} in {day}, not to the target of {target}: {plans} raise it as well. Plan it lower or slower, or let the other wait.", name=_name(p), comes_to=_value(p, 'comes_to'), day=span(p['day']), target=_value(p, 'target'), plans=_plans(p['plans']))
    ),
    "together_disagrees": lambda p: (
        say("Two ways to reckon all plans together differ for {what}, so nothing is said. Please report this log.", what=', '.join(p['what']))
    ),
}  # fmt: skip
