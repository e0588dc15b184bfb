"""H19: the animals use less than before, and the plan goes on; H26: a card of a plan that was left hangs on.

The stop rule must come before the water leaves the range that animals stand.
"""

from __future__ import annotations

from datetime import timedelta

import numpy as np
import pytest

from evenwater.engine.following import ABOVE, INSIDE, STOP, course, expected, follow
from tests.engine.asking import NOW, answered, worked

# Common practice, no source: the hard range of alkalinity ends at 14 dKH.
HARD_TOP = 14.0


@pytest.mark.parametrize("use", [0.3, 0.9, 1.8])
@pytest.mark.parametrize("stops_after_h", [0, 12, 30, 60])
@pytest.mark.parametrize("every_h", [12, 24, 48, 72])
def test_H19_the_stop_rule_comes_before_the_limit_when_use_falls_to_nothing(
    use: float, stops_after_h: int, every_h: int
) -> None:
    p = course(answered(worked(change__daily_use=f"{use} dKH per day", system__volume_uncertainty="3 %")))
    one = p.measured / 6.8
    readings = []
    for hour in range(1, 24 * 30):
        at = NOW + timedelta(hours=hour)
        ramp = min(hour, p.count)
        dosed = (ramp * p.dose_ml + (hour - ramp) * p.upkeep_ml) * p.per_ml
        value = p.measured + dosed - p.use * min(hour, stops_after_h) / 24.0
        assert value < HARD_TOP * one, "the limit was passed before anybody was told to stop"
        if hour % every_h == 0:
            readings.append((at, value))
            if follow(p, readings, at).state == STOP:
                return
    pytest.fail("nobody was told to stop within a month")


def test_H19_two_readings_above_the_band_stop_and_one_does_not() -> None:
    p = course(answered(worked(system__volume_uncertainty="3 %")))
    one = p.measured / 6.8
    first = (NOW + timedelta(hours=6), 7.75 * one)
    second = (NOW + timedelta(hours=12), 8.05 * one)
    assert follow(p, [first], first[0]).state == ABOVE
    assert follow(p, [first, second], second[0]).state == STOP
    # A reading between them that lies inside takes the first back: it was a bad test.
    between = (NOW + timedelta(hours=9), float(expected(p, _days(9.0)).plan[0]))
    assert follow(p, [first, between, second], second[0]).state == ABOVE


def test_H19_one_reading_above_what_the_card_says_stops_at_once() -> None:
    answer = answered(worked())
    p = course(answer)
    at = NOW + timedelta(hours=30)
    assert follow(p, [(at, answer.stop_above * 1.001)], at).state == STOP
    assert follow(p, [(at, answer.stop_above * 0.93)], at).state == INSIDE


def _days(hours: float) -> np.ndarray:

    return np.array([hours / 24.0])
