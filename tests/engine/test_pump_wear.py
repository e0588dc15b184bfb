"""Wear of a pump: drift by hand and by NIST, when a tolerance is left, and what is not said."""

from __future__ import annotations

import math
from datetime import timedelta

import numpy as np
import pytest

from evenwater.engine.pump_wear import Wear, head, hours_per_day, objections, wear
from evenwater.engine.reasons import Reason
from evenwater.engine.straight_line import fit
from tests.engine.calibrations import NOW, worn
from tests.published.rows import check, rows

# 24 mL/min at first, 0.24 less in a hundred hours: 1 % of 24.
FALLING = worn((0.0, 24.0), (100.0, 23.76), (200.0, 23.52), (300.0, 23.28))


def found(points: object, hours: float = 300.0, reference: float | None = 24.0, per_day: float | None = 10.0) -> Wear:
    result = wear(points, hours, reference, per_day, NOW)  # type: ignore[arg-type]
    assert isinstance(result, Wear), result
    return result


def test_line_is_the_certified_one() -> None:
    (row,) = (row for row in rows("regression") if row.id == "nist.Norris")
    x, y = (np.asarray(row.inputs[name], dtype=float).tolist() for name in ("x", "y"))
    line = fit(x, y, [1.0] * len(x))
    assert line.scatter is not None
    check(
        row,
        {
            "B0": line.at(0.0),
            "B1": line.slope,
            "sd_B0": line.scatter * line.sd_at(0.0),
            "sd_B1": line.scatter * line.slope_sd,
            "residual_sd": line.scatter,
        },
    )


def test_weighted_line_is_that_of_an_independent_program() -> None:
    rng = np.random.default_rng(5)
    x, sd = rng.uniform(0.0, 600.0, 12), rng.uniform(0.05, 0.5, 12)
    y = 24.0 - 0.003 * x + sd * rng.standard_normal(12)
    line = fit(x.tolist(), y.tolist(), sd.tolist())
    (slope, intercept), covariance = np.polyfit(x, y, 1, w=1.0 / sd, cov="unscaled")
    assert line.slope == pytest.approx(slope, rel=1e-11)
    assert line.at(0.0) == pytest.approx(intercept, rel=1e-12)
    assert line.slope_sd == pytest.approx(math.sqrt(covariance[0, 0]), rel=1e-11)
    assert line.sd_at(0.0) == pytest.approx(math.sqrt(covariance[1, 1]), rel=1e-11)


def test_drift_by_hand() -> None:
    """Each known to 0.1: the slope to 0.1 / sqrt(sum of squares about 150 h) = 0.1 / 223.607 per hour."""
    worn_so = found(FALLING)
    assert worn_so.drift == pytest.approx(-0.01)
    assert worn_so.drift_half_width == pytest.approx(1.96 * 100.0 * 0.1 / 223.607 / 24.0, rel=1e-5)
    assert worn_so.expected == pytest.approx(23.28)
    # The mean to 0.1 / 2, and 150 h of the slope.
    assert worn_so.expected_half_width == pytest.approx(1.96 * math.hypot(0.05, 150.0 * 0.1 / 223.607), rel=1e-5)
    assert worn_so.run_longer == pytest.approx(24.0 / 23.28)
    assert worn_so.remarks == ()


def test_tolerance_is_left_where_the_line_comes_to_it() -> None:
    """97 % now and 1 % less in a hundred hours: 5 % after 200 h, 10 % after 700 h; ten hours a day."""
    amber, red = found(FALLING).leaves
    assert (amber.limit, red.limit) == (0.05, 0.10)
    assert (amber.hours, red.hours) == pytest.approx((200.0, 700.0))
    assert amber.at == NOW + timedelta(days=amber.hours / 10.0)
    for each in (amber, red):
        assert 0.0 < each.earliest_hours < each.hours
        line = fit([p.hours for p in FALLING], [p.flow for p in FALLING], [p.sd for p in FALLING])
        there = 300.0 + each.earliest_hours
        assert line.at(there) - 1.96 * line.sd_at(there) == pytest.approx(24.0 * (1.0 - each.limit), abs=1e-6)


def test_pump_that_gives_more_and_more_leaves_upwards() -> None:
    rising = found(worn((0.0, 24.0), (100.0, 24.24), (200.0, 24.48), (300.0, 24.72)))
    assert rising.drift == pytest.approx(0.01)
    assert [each.hours for each in rising.leaves] == pytest.approx([200.0, 700.0])


def test_what_is_left_already_is_left_now() -> None:
    late = found(FALLING, reference=26.0)
    amber, red = late.leaves
    assert (amber.hours, amber.earliest_hours, amber.at) == (0.0, 0.0, NOW)
    assert (red.hours, red.earliest_hours, red.at) == (0.0, 0.0, NOW)
    assert found(FALLING, reference=22.0).leaves[0].hours == 0.0, "too much counts as too little"


def test_line_is_looked_along_to_the_hours_of_now() -> None:
    later = found(FALLING, hours=400.0)
    assert later.expected == pytest.approx(23.04)
    assert later.expected_half_width > found(FALLING).expected_half_width
    assert later.leaves[0].hours == pytest.approx(100.0)


def test_reference_is_the_line_at_the_first_calibration_where_none_is_said() -> None:
    assert found(FALLING, reference=None).reference == pytest.approx(24.0)


def test_no_date_without_running_hours_a_day() -> None:
    at_one_time = tuple(type(p)(NOW, p.hours, p.flow, p.sd) for p in FALLING)
    leaves = found(at_one_time, per_day=None).leaves
    assert [each.at for each in leaves] == [None, None]
    assert [each.hours for each in leaves] == pytest.approx([200.0, 700.0])
    assert hours_per_day(FALLING) == pytest.approx(10.0)
    assert found(FALLING, per_day=None).leaves[0].at == NOW + timedelta(days=20.0, microseconds=0)


def test_no_date_is_said_years_ahead() -> None:
    assert found(FALLING, per_day=0.05).leaves[0].at is None


def test_drift_that_cannot_be_told_from_none_has_no_date() -> None:
    vague = found(worn((0.0, 24.0), (100.0, 23.76), (200.0, 23.9), (300.0, 23.7), sd=0.4))
    assert vague.leaves == ()
    (said,) = vague.remarks
    assert said.code == "drift_unclear"
    assert float(str(said.params["low"])) < 0.0 < float(str(said.params["high"]))


def test_calibrations_that_scatter_widen_the_interval() -> None:
    """Off the line by 1.5 to each side with 0.1 given: the squares make 300 for two to spare."""
    scattered = found(worn((0.0, 25.0), (100.0, 22.0), (200.0, 25.0), (300.0, 22.0)))
    assert [reason.code for reason in scattered.remarks] == ["drift_unclear", "calibrations_scatter"]
    assert scattered.drift_half_width > 10.0 * found(FALLING).drift_half_width


@pytest.mark.parametrize(
    ("points", "code"),
    [(FALLING[:1], "drift_needs_two"), (worn((100.0, 24.0), (100.0, 23.0)), "drift_same_hours"),
     (worn((0.0, 24.0), (100.0, 6.0)), "drift_unusable")],
)  # fmt: skip
def test_no_line_where_none_can_be_drawn(points: object, code: str) -> None:
    result = wear(points, 300.0, 24.0, 10.0, NOW)  # type: ignore[arg-type]
    assert isinstance(result, Reason)
    assert result.code == code


def test_objections_name_the_row() -> None:
    *earlier, today = FALLING
    assert objections(earlier, today, NOW) == ()
    assert [(r.code, r.path) for r in objections(earlier[::-1], today, NOW)] == []
    back = worn((0.0, 24.0), (300.0, 23.0), (200.0, 23.0), (310.0, 22.0))
    moved = [type(p)(NOW - timedelta(days=40.0 - 10.0 * n), p.hours, p.flow, p.sd) for n, p in enumerate(back)]
    assert [(r.code, r.path) for r in objections(moved[:3], moved[3], NOW)] == [
        ("hours_beyond_clock", "earlier.2.hours"), ("hours_run_back", "earlier.3.hours"),
    ]  # fmt: skip
    ahead = type(today)(NOW + timedelta(days=1), 290.0, 23.0, 0.1)
    assert [(r.code, r.path) for r in objections([ahead], today, NOW)] == [("calibrated_in_the_future", "earlier.1.at")]


def test_head_that_is_left() -> None:
    assert head(420.0, 650.0, 1.0, NOW).at == NOW + timedelta(days=230)
    assert head(420.0, 650.0, None, NOW).at is None
    assert head(420.0, 650.0, None, NOW).left == 230.0
    assert head(700.0, 650.0, None, NOW).at == NOW
