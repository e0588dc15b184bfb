"""Foods to ask about: the frag bay of 340 L with 10 L exchanged in a day, and random foods."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import numpy as np

from evenwater.engine import exchange_intake, foods, foods_intake
from evenwater.engine.exchange_question import ExchangeQuestion
from evenwater.engine.foods import FoodsAnswer
from evenwater.engine.foods_question import Food, FoodsQuestion
from evenwater.engine.form import Unread
from evenwater.engine.reasons import Reason
from tests.engine.asking import known

# Standard atomic weights (CIAAW, conventional): nitrogen, phosphorus, oxygen.
N, P, OX = 14.007, 30.973761998, 15.999
MASH: Mapping[str, Any] = {"name": "Mash", "per_day": "10 mL", "nitrogen": "5 mg/mL", "phosphorus": "0.05 mg/mL"}
BAY: Mapping[str, Any] = {
    "system": {"net_volume": "340 L", "volume_uncertainty": "0 %"},
    "exchange": {"per_day": "10 L per day", "days": 56},
    "value": [
        {"parameter": "nitrate", "now": "5 mg/L as NO3", "new_water": "0 mg/L as NO3", "loss_per_day": "3 %"},
        {"parameter": "phosphate", "now": "0.05 mg/L as PO4", "new_water": "0 mg/L as PO4", "loss_per_day": "5 %"},
        {"parameter": "alkalinity", "now": "8 dKH", "new_water": "8 dKH"},
    ],
}


def food(**changes: Any) -> Food:
    """Return the mash with some fields replaced, or left out where None; the test fails when it cannot be read."""
    found = foods_intake.foods({"food": [_row(changes)]}, known())
    assert not isinstance(found, Unread), found
    return found[0]


def unread(**changes: Any) -> list[tuple[str, str]]:
    """Return why the mash so changed cannot be read: code and path of each reason."""
    found = foods_intake.foods({"food": [_row(changes)]}, known())
    assert isinstance(found, Unread), found
    return [(reason.code, reason.path) for reason in found.reasons]


def _row(changes: Mapping[str, Any]) -> dict[str, Any]:
    row = {"per_day": "10 mL per day", **{name: text for name, text in MASH.items() if name != "per_day"}, **changes}
    return {name: text for name, text in row.items() if text is not None}


def tank(**changes: Any) -> ExchangeQuestion:
    """Return the frag bay without food, with some tables replaced."""
    found = exchange_intake.exchange({**BAY, **changes}, known())
    assert isinstance(found, ExchangeQuestion), found
    return found


def question(*given: Food, **changes: Any) -> FoodsQuestion:
    """Return the frag bay with these foods."""
    return FoodsQuestion(tank(**changes), given, tuple(known().parameters.values()))


def answer(*given: Food, **changes: Any) -> FoodsAnswer:
    """Return what these foods do; the test fails when it is refused."""
    found = foods.solve(question(*given, **changes))
    assert isinstance(found, FoodsAnswer), found
    return found


def reasons(*given: Food, **changes: Any) -> tuple[Reason, ...]:
    """Return why so much is refused, or what is remarked."""
    found = foods.solve(question(*given, **changes))
    return found.remarks if isinstance(found, FoodsAnswer) else found.reasons


def random_foods(seed: int) -> tuple[Food, ...]:
    """Return two to six foods of little nitrogen and phosphorus, one in three of salts."""
    rng = np.random.default_rng(seed)
    made = []
    for number in range(int(rng.integers(2, 7))):
        per_day, nitrogen = (float(each) for each in rng.uniform(0.1, 20.0, 2))
        one = Food(f"Food {number}", per_day, nitrogen, float(nitrogen * rng.uniform(0.0, 0.2)))
        made.append(replace(one, salts=bool(rng.random() < 1 / 3)))
    return tuple(made)
