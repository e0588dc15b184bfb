"""Nitrate and phosphate over the next weeks, with the foods and without them, ready to paint."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from evenwater.engine.foods import FoodsAnswer, Settling
from evenwater.engine.quantities import Water
from evenwater.screens.shown import Shown
from evenwater.screens.terms import capitalized
from evenwater.wording import marked, say

FED, BARE, USUAL = marked("with food"), marked("without"), marked("usual, at most")


@dataclass(frozen=True)
class Panel:
    """One value against days, in the unit it is said in: with food, without it, and the upper end of the range usually kept.

    ``days``, ``fed`` and ``bare`` are of one length.
    """

    title: str
    days: tuple[float, ...]
    fed: tuple[float, ...]
    bare: tuple[float, ...]
    usual: float
    spoken: str


def panels(found: FoodsAnswer, tested: Collection[str]) -> tuple[Panel, ...]:
    """Return what can be drawn: nothing of a value that nobody tested, since nobody knows where it begins.

    Parameters
    ----------
    found : FoodsAnswer
        What the foods do.
    tested : collection of str
        Parameters with a reading.

    Returns
    -------
    tuple of Panel
        In the order of the answer.
    """
    water = found.question.tank.water
    return tuple(_panel(found, value, water) for value in found.values if value.fed.moved.parameter.name in tested)


def _panel(found: FoodsAnswer, value: Settling, water: Water) -> Panel:
    moved = value.fed.moved
    p = moved.parameter
    shown = Shown(p, moved.unit, water)
    fed, bare = (tuple(map(shown.number, course.points)) for course in (value.fed, value.without))
    return Panel(
        title=f"{capitalized(p.name)}, {shown.unit_words}",
        days=found.times,
        fed=fed,
        bare=bare,
        usual=shown.number(p.canonical(p.range_kept[1])),
        spoken=(
            say(
                "{name} goes from {points} to {end} with these foods, to {end_2} without.",
                name=capitalized(p.name),
                points=shown.value(value.fed.points[0]),
                end=shown.value(value.fed.end),
                end_2=shown.value(value.without.end),
            )
        ),
    )
