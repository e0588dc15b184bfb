"""Published recipes through the whole correction: from a question as typed to millilitres of stock."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime

import pytest

from evenwater.engine import correction, intake
from evenwater.engine.correction import Answer
from tests.published.rows import Row, catalogue, check, rows

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
PUMP = {"flow": "24 mL/min"}
RECIPES = [row for row in rows("per_gram") if row.id.startswith("recipe.")]
# Where each recipe starts, so that its rise ends inside the targets, and a stock [g/L] that suits.
START = {"alkalinity": 7.0, "nitrate": 2.0, "phosphate": 0.0}
GRAMS_PER_LITRE = {"alkalinity": 50.0, "nitrate": 20.0, "phosphate": 0.5}


def _solve(system: Mapping[str, str], change: Mapping[str, str], additive: Mapping[str, object]) -> Answer:
    raw = {"system": system, "change": change, "additive": additive, "pump": PUMP}
    question = intake.correction(raw, catalogue(), NOW)
    assert not isinstance(question, intake.Unread), question
    answer = correction.solve(question)
    assert isinstance(answer, Answer), answer
    return answer


@pytest.mark.parametrize("row", RECIPES, ids=lambda row: row.id)
def test_a_correction_spends_the_published_mass(row: Row) -> None:
    name, unit = row.word("parameter"), row.word("unit")
    strength = GRAMS_PER_LITRE[name]
    answer = _solve(
        {"net_volume": f"{row.number('litres')} L"},
        {
            "parameter": name,
            "measured": f"{START[name]} {unit}",
            "target": f"{START[name] + row.number('rise')} {unit}",
        },
        {"chemical": row.word("chemical"), "dissolved": f"{strength} g", "made_up_to": "1 L"},
    )
    check(row, answer.total_ml / 1000.0 * strength)


def test_upkeep_of_a_plan_is_the_published_one() -> None:
    row = next(row for row in rows("dosing") if row.id == "feed.tool1")
    answer = _solve(
        {"net_volume": f"{row.number('V_L')} L"},
        {
            "parameter": "alkalinity",
            "measured": "7.5 dKH",
            "target": "8 dKH",
            "daily_use": f"{row.number('dKH_d')} dKH per day",
        },
        {"label": {"dose": "1 L", "water": "100 L", "raises": f"{row.number('stock_meq_L') / 100.0} meq/L"}},
    )
    check(row, answer.upkeep_ml_per_day)
