"""The worked example against figures reckoned here by hand.

Source: the example's own figures, printed to five or six digits, and arithmetic on CIAAW 2021 atomic weights
(conventional values where CIAAW gives an interval) with 1 degree = 10 mg CaO per litre.
"""

from __future__ import annotations

import pytest

from evenwater.screens.answer_json import answered as as_json
from tests.engine.asking import answered, worked

# CIAAW 2021.
SODIUM, CARBON, OXYGEN, CALCIUM = 22.98976928, 12.011, 15.999, 40.078
DEGREE_MEQ = 20.0 / (CALCIUM + OXYGEN)
STRENGTH = 2.0 * 106.0 / (2.0 * SODIUM + CARBON + 3.0 * OXYGEN)  # meq per mL, as 106 g are in 1000 mL
PER_ML = STRENGTH / 340.0 / DEGREE_MEQ  # dKH
IN_DAY = 1.9 / PER_ML

BY_HAND = {
    "strength": (STRENGTH, 2.00024, "meq per mL"),
    "per_ml": (PER_ML, 0.0164952, "dKH per mL"),
    "in_day": (IN_DAY, 115.19, "mL in 24 h"),
    "per_hour": (IN_DAY / 24.0, 4.7994, "mL/h"),
    "lasts": ((8.4 - 6.8) / 1.0 * 24.0, 38.4, "h"),
    "total": (IN_DAY * 1.6, 184.30, "mL"),
    "upkeep": (0.9 / PER_ML / 24.0, 2.2734, "mL/h"),
}


def _of_the_product() -> dict[str, float]:
    answer = answered(worked())
    return {
        "strength": answer.strength,
        "per_ml": answer.per_ml / DEGREE_MEQ,
        "in_day": answer.dose_ml_per_day,
        "per_hour": answer.dose_ml_per_day / 24.0,
        "lasts": answer.lasts_days * 24.0,
        "total": answer.total_ml,
        "upkeep": answer.upkeep_ml_per_day / 24.0,
    }


@pytest.mark.parametrize("name", BY_HAND)
def test_figure_to_a_millionth(name: str) -> None:
    by_hand, printed, _ = BY_HAND[name]
    assert _of_the_product()[name] == pytest.approx(by_hand, rel=1e-6)
    # The example prints its figures to five or six digits.
    assert by_hand == pytest.approx(printed, rel=5e-5)


def test_the_daily_rise_binds() -> None:
    answer = answered(worked())
    assert answer.set_by == "daily_rise"
    assert answer.pace / DEGREE_MEQ == pytest.approx(1.0, rel=1e-12)


def test_rounded_doses_reckoned_by_hand() -> None:
    doses = answered(worked()).doses
    # 4.7994 mL in tenths, downwards; each leaves 4.7 * 0.0164952 - 0.9 / 24 dKH in the water.
    assert doses.dose_ml == 4.7
    left = 4.7 * PER_ML - 0.9 / 24.0
    assert doses.count == int(1.6 / left) == 39
    assert doses.total_ml == 183.3
    assert doses.in_24_hours_ml == 112.8
    assert doses.run_time_s == pytest.approx(4.7 / 24.0 * 60.0, rel=1e-12)
    assert doses.shortfall / DEGREE_MEQ == pytest.approx(1.6 - 39 * left, rel=1e-9)
    # 2.2734 mL per hour of upkeep in 24 doses.
    assert doses.upkeep_ml == 2.2


def test_whole_jug_by_hand() -> None:
    whole = answered(worked()).whole_jug
    assert whole is not None
    assert whole / DEGREE_MEQ == pytest.approx(6.8 + 1000.0 * PER_ML, rel=1e-9)


def test_the_answer_as_json_says_the_same() -> None:
    body = as_json(answered(worked()))
    units = {
        "dose_per_hour": ("per_hour", "mL/h"),
        "dose_in_24_hours": ("in_day", "mL"),
        "total": ("total", "mL"),
        "lasts": ("lasts", "h"),
        "upkeep_per_hour": ("upkeep", "mL/h"),
    }
    for field, (name, unit) in units.items():
        assert body[field]["unit"] == unit
        assert body[field]["value"] == pytest.approx(BY_HAND[name][0], rel=1e-6)
    assert body["set_by"] == "daily_rise"
    assert body["rise_per_day"] == {"value": pytest.approx(1.0, rel=1e-9), "unit": "dKH per day"}
    assert body["check"]["agrees"] is True
