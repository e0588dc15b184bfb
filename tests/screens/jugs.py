"""Stocks as they stand in jugs: every chemical, a mix, limewater and bottles, with what a keeper notes of them."""

from __future__ import annotations

from functools import cache

from evenwater.engine.recipe import Bottle, StockAnswer, StockQuestion, Strength, Unweighed, solve
from evenwater.engine.stock import Dissolved, Labelled, Portion, limewater
from evenwater.screens.jug_label import JugLabel, LabelFacts, label
from tests.screens.asked import catalogue

FACTS = LabelFacts("Soda ash, white jug", "ash:5e1f00d2", "2026-11-24", "K. L.", "2027-02-20")
BARE = LabelFacts("")
LONG = LabelFacts(
    "Propagation gallery behind the quarantine room, lower shelf, third jug from the window",
    "gallery:0badcafe",
    "when the last frags left, in the evening, and shaken again on the day after",
    "Somebody whose name takes all of the room there is in a box and then some more of it",
    "the day on which the new bag is opened",
)
NO_SEPARATION = {
    "potassium chloride", "potassium iodide", "sodium nitrate", "potassium nitrate", "sodium chloride",
}  # fmt: skip


def solved(batch: Dissolved | Bottle | Unweighed, at_c: float = 18.0) -> StockAnswer:
    """Return the answer of a stock that can be made."""
    found = solve(StockQuestion(batch, tuple(catalogue().parameters.values()), at_c))
    assert isinstance(found, StockAnswer), found
    return found


def weighed(name: str, grams: float | None = None, purity: float = 1.0) -> StockAnswer:
    """Return a litre of a chemical, half as strong as it could be when no mass is given."""
    chemical = catalogue().chemicals[name]
    return solved(Dissolved(chemical, grams or 0.5 * (chemical.most_per_litre(18.0) or 1.0), 1.0, purity))


def mix() -> StockAnswer:
    """Return a litre of the two magnesium salts in seawater's balance, 40 mg of magnesium in a millilitre."""
    known = catalogue()
    sulfate = Portion(known.chemicals["magnesium sulfate heptahydrate"], 0.0)
    wanted = Strength(known.parameters["magnesium"], 40.0)
    return solved(Unweighed(known.chemicals["magnesium chloride hexahydrate"], 1.0, 1.0, wanted, sulfate))


def lime() -> StockAnswer:
    """Return ten litres of limewater."""
    return solved(limewater(catalogue().chemicals["calcium hydroxide"], 10.0))


def bottle(name: str = "alkalinity") -> StockAnswer:
    """Return a bottle of which 5 mL raise 100 L by one canonical unit of a parameter."""
    parameter = catalogue().parameters[name]
    return solved(Bottle(Labelled(5.0, 100.0, 1.0, parameter.kind), parameter))


@cache
def jugs() -> dict[str, StockAnswer]:
    """Return everything that can be in a jug, by its name."""
    found = {name: weighed(name) for name in catalogue().chemicals}
    found |= {"a mix": mix(), "limewater": lime()}
    return found | {f"a bottle of {name}": bottle(name) for name in catalogue().parameters}


def labelled(name: str, facts: LabelFacts = FACTS) -> JugLabel:
    """Return the label of one of them."""
    return label(jugs()[name], facts)
