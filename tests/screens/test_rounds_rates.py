"""What is dosed in a day, of an upkeep and of a live plan, against the doses reckoned in full."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from evenwater.engine import intake
from evenwater.engine.correction import Answer, solve
from evenwater.screens import following
from evenwater.screens.rounds_rates import plan_takes, upkeep_rates
from tests.screens.asked import BASE, NOW, catalogue

ITEM = {
    "parameter": "alkalinity",
    "daily_use": "0.9 dKH per day",
    "additive": BASE["additive"],
    "pump": BASE["pump"],
}


def answered() -> Answer:
    answer = solve(intake.correction(BASE, catalogue(), NOW))
    assert isinstance(answer, Answer)
    return answer


def test_an_upkeep_takes_what_its_sheet_says() -> None:
    # 0.9 dKH in 340 L from 2.00024 meq per mL, by hand: 54.6 mL a day, in 24 doses rounded down to the pump's step.
    rates = upkeep_rates({"system": BASE["system"], "item": [ITEM]}, catalogue(), NOW)
    assert set(rates) == {"alkalinity"}
    assert 50.0 < rates["alkalinity"] <= 0.9 / 2.8039 * 340.0 / 2.0


@pytest.mark.parametrize("item", [{**ITEM, "daily_use": ""}, {**ITEM, "daily_use": "90 dKH per day"}])
def test_an_upkeep_without_an_answer_takes_nobody_knows_what(item: dict[str, Any]) -> None:
    assert upkeep_rates({"system": BASE["system"], "item": [item]}, catalogue(), NOW) == {}


def test_a_plan_takes_its_ramp_and_then_its_upkeep() -> None:
    answer = answered()
    text = following.body(answer, {}, "jug:00000001")
    on_ramp = plan_takes(text, catalogue(), answer.ends_at - timedelta(minutes=1))
    after = plan_takes(text, catalogue(), answer.ends_at)
    assert on_ramp == ("jug:00000001", pytest.approx(answer.doses.in_24_hours_ml))
    assert after == ("jug:00000001", pytest.approx(answer.doses.upkeep_ml * answer.doses.per_day))
    upkeep = upkeep_rates({"system": BASE["system"], "item": [ITEM]}, catalogue(), NOW)["alkalinity"]
    assert after[1] == pytest.approx(upkeep), "the plan's own upkeep is that of the Upkeep sheet"


@pytest.mark.parametrize("text", ["", "[]", "{}", "no json", '{"form": 2}'])
def test_a_plan_that_cannot_be_read_takes_nobody_knows_what(text: str) -> None:
    assert plan_takes(text, catalogue(), NOW) is None
