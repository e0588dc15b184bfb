"""What is remarked on in an upkeep that is allowed: what to keep apart, small doses, full jugs, bottles (H20).

Margins are common practice, no source; distances between doses are laid out here minute by minute.
"""

from __future__ import annotations

from typing import Any

import pytest

from evenwater.engine.limits import Nearness
from evenwater.engine.reasons import Reason
from evenwater.engine.upkeep import UpkeepAnswer
from tests.engine.upkeeps import LITRES, MEQ_PER_DKH, answered, item, jug, limewater, raw, remarks_of

BOTTLE = {"label": {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}}
LYE = jug("sodium hydroxide", 40.0)


def near(answer: UpkeepAnswer, code: str) -> Nearness:
    return next(limit for limit in answer.limits if limit.code == code)


def remark(question: Any, code: str) -> Reason:
    return next(r for r in answered(question).remarks if r.code == code)


def two_part(**pump: Any) -> dict[str, Any]:
    return raw(item("alkalinity", **pump), item("calcium"))


@pytest.mark.parametrize(
    ("first", "second", "apart"),
    [
        ("alkalinity", "calcium", True), ("alkalinity", "magnesium", True), ("alkalinity", "strontium", True),
        ("calcium", "magnesium", False), ("alkalinity", "potassium", False), ("nitrate", "calcium", False),
    ],
)  # fmt: skip
def test_H20_additives_that_fall_out_together_are_kept_apart(first: str, second: str, apart: bool) -> None:
    for pair in ((first, second), (second, first)):
        assert ("upkeep_keep_apart" in remarks_of(answered(raw(*map(item, pair))))) == apart


def test_H20_bottles_and_limewater_are_kept_apart_too() -> None:
    assert "upkeep_keep_apart" in remarks_of(answered(raw(item("alkalinity", additive=BOTTLE), item("calcium"))))
    soda_and_lime = raw(item("alkalinity", "0.9 dKH per day"), item("calcium", "3 mg/L per day", limewater()))
    assert "upkeep_keep_apart" in remarks_of(answered(soda_and_lime))
    # What is not dosed cannot meet anything.
    covered = raw(
        item("alkalinity", additive=limewater()), item("calcium", f"{0.9 * MEQ_PER_DKH * 20.039:.12f} mg/L per day")
    )
    assert "upkeep_keep_apart" not in remarks_of(answered(covered))


@pytest.mark.parametrize(
    ("first", "second", "widest"),
    [(24, 24, 30.0), (12, 24, 30.0), (8, 12, 30.0), (25, 24, 1.2), (48, 48, 15.0), (3, 3, 240.0)],
)
def test_H20_how_far_apart_the_doses_can_come_is_said(first: int, second: int, widest: float) -> None:
    found = remark(
        raw(item("alkalinity", doses_per_day=first), item("calcium", doses_per_day=second)),
        "upkeep_keep_apart",
    )
    assert found.params["minutes"] == 30.0
    assert found.params["widest_min"] == pytest.approx(widest)
    assert found.params["most_doses"] == 24
    # By laying both rows of doses over each other at every tenth of a minute.
    best = max(
        min(
            min(
                (one / first - other / second - shift / 14400.0) % 1.0,
                (other / second + shift / 14400.0 - one / first) % 1.0,
            )
            for one in range(first)
            for other in range(second)
        )
        for shift in range(0, 14400, 12 if first == 25 else 150)
    )
    assert 1440.0 * best == pytest.approx(widest, abs=0.7)


def test_doses_that_are_small_or_rounded_far_are_remarked_on() -> None:
    far = remark(raw(item("alkalinity"), item("calcium", step="0.4 mL")), "upkeep_rounding")
    # 2.2624 mL down to 2.
    assert far.params["lost"] == pytest.approx(1.0 - 2.0 / 2.26238, rel=1e-4)
    assert (far.params["step_ml"], far.path) == (0.4, "item.2.pump.step")
    assert "upkeep_rounding" not in remarks_of(answered(raw(item("calcium", step="0.1 mL"))))
    tiny = raw(item("iodide", "0.0002 mg/L per day", jug("potassium iodide", 2.0)))
    assert remark(tiny, "dose_tiny").path == "item.1.pump.step"
    assert "dose_tiny" not in remarks_of(answered(raw(item("iodide"))))


def test_what_a_jug_is_near_to_and_who_may_use_it_is_said() -> None:
    full = remark(
        raw(item("magnesium"), item("alkalinity", additive=jug("sodium carbonate anhydrous", 210.0))),
        "nearly_saturated",
    )
    assert full.path == "item.2.additive.dissolved"
    assert "nearly_saturated" not in remarks_of(answered(raw(item("alkalinity", additive=limewater()))))
    assert remark(raw(item("alkalinity", additive=LYE)), "restricted").path == "item.1.additive.chemical"
    assert near(answered(two_part()), "solubility_alkalinity").value == pytest.approx(106.0)
    assert not [
        limit for limit in answered(raw(item("alkalinity", additive=limewater()))).limits if "solub" in limit.code
    ]


def test_a_bottle_of_alkalinity_is_taken_for_hydroxide() -> None:
    found = answered(raw(item("alkalinity", additive=BOTTLE)))
    assert "bottle_like_hydroxide" in remarks_of(found)
    lye = answered(raw(item("alkalinity", additive=LYE)))
    assert near(found, "ph_rise").value == pytest.approx(near(lye, "ph_rise").value, rel=1e-5)
    assert "bottle_like_hydroxide" not in remarks_of(lye)
    assert found.doses[0].needed_ml_per_day == pytest.approx(0.9 * LITRES / 100.0 * 5.0, rel=1e-9)


def test_assumed_water_is_said_where_it_counts() -> None:
    system = {"salinity": None}
    assert "water_assumed" in remarks_of(
        answered(raw(item("calcium", "6 mg/kg per day", measured="400 mg/kg"), system=system))
    )
    assert "water_assumed" not in remarks_of(answered(raw(item("calcium"), system=system)))
