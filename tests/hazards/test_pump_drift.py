"""H22 and H23: a pump that drifts is seen before it matters, and one that pumps air is not calibrated.

Limits of 5 % and 10 %: flow accuracy and alarms of the Generic Infusion Pump requirements (FDA and University of Pennsylvania, 2009).
Three runs, 5 % between them: common practice, no source (drawdown tests of water works).
"""

from __future__ import annotations

import pytest

from evenwater.engine.pump_wear import AMBER, RED
from tests.engine.calibrations import answered, before, read_off, refusal


def test_H22_limits_are_those_of_the_requirements() -> None:
    assert (AMBER, RED) == (0.05, 0.10)


@pytest.mark.parametrize(
    ("flow", "state"),
    [(24.0, "within"), (22.85, "within"), (22.75, "amber"), (21.65, "amber"), (21.55, "red"), (25.15, "within"), (25.25, "amber"), (26.45, "red")],
)  # fmt: skip
def test_H22_flow_is_held_against_the_setting(flow: float, state: str) -> None:
    found = answered(read_off(flow, flow, flow), setting=24.0).bias
    assert found is not None
    assert found.state == state


def test_H22_drift_is_announced_before_the_limit_is_reached() -> None:
    """1.2 % less in each hundred hours, 2.4 % by now: 5 % is reached some 217 hours from now, and maybe earlier."""
    earlier = before((0.0, 24.0), (100.0, 23.712), hours=200.0, accuracy=0.005)
    found = answered(read_off(23.424, 23.43, 23.418), setting=24.0, hours=200.0, earlier=earlier).wear
    assert found is not None
    amber, red = found.leaves
    assert amber.hours == pytest.approx(217.0, abs=3.0)
    assert 0.0 < amber.earliest_hours < amber.hours < red.hours
    assert amber.at is not None
    assert red.at is not None
    assert amber.at < red.at
    assert found.run_longer == pytest.approx(24.0 / 23.424, rel=1e-3)


def test_H23_pump_that_runs_dry_is_not_calibrated() -> None:
    assert refusal(read_off(0.0, 0.0, 0.0), setting=24.0) == [("nothing_delivered", "run.1")]
    assert not answered(read_off(24.0, 24.0, 0.0), setting=24.0).passed


def test_H23_air_shows_as_scatter() -> None:
    assert not answered(read_off(24.0, 21.0, 23.5), setting=24.0).passed


def test_H23_short_doses_are_flagged() -> None:
    (said,) = answered(read_off(24.0, 24.0, 24.0), dose=1.0).remarks
    assert said.code == "dose_not_calibrated"
