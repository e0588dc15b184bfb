"""Calcium against alkalinity, and the volume from a correction's own rise: by hand, and by many random tanks."""

from __future__ import annotations

import numpy as np
import pytest

from evenwater.engine.consumption_estimate import NORMAL_90, Span
from evenwater.engine.consumption_ratio import Measured, effective_volume, fieller, ratio
from evenwater.engine.correction import Refused

# Half of 40.078 g/mol (CIAAW): what goes with an equivalent of alkalinity into calcium carbonate.
SKELETON = 20.039


def around(value: float, half: float) -> Span:
    return Span(value, value - half, value + half)


def test_a_tank_that_builds_skeletons_has_their_ratio() -> None:
    found = ratio(around(0.36, 0.02), around(7.2, 0.6))
    assert found.expected == pytest.approx(SKELETON, abs=0.001)
    assert found.span is not None
    assert found.span.value == pytest.approx(20.0)
    assert found.span.low < SKELETON < found.span.high
    assert (found.departs, found.reasons) == (False, ())


@pytest.mark.parametrize(
    ("calcium", "half", "expected"),
    [
        (14.4, 0.6, ["ratio_departs", "ratio_wrong_test", "ratio_another_sink"]),
        (3.6, 0.6, ["ratio_departs", "ratio_wrong_test", "ratio_precipitation", "ratio_another_sink"]),
        # 26 mg per meq is 1.3 times as much, but may be 24; 16.1 may be 17.
        (9.36, 0.8, []),
        (5.8, 0.5, []),
    ],
)
def test_verdict_only_when_the_whole_interval_is_a_quarter_off(
    calcium: float, half: float, expected: list[str]
) -> None:
    found = ratio(around(0.36, 0.005), around(calcium, half))
    assert [reason.code for reason in found.reasons] == expected
    assert found.departs is bool(expected)
    if expected:
        assert found.span is not None
        assert found.reasons[0].params["ratio"] == found.span.value
        assert found.reasons[-1].params["of_alkalinity"] is (calcium < 7.0)


@pytest.mark.parametrize("alkalinity", [around(0.1, 0.1), around(0.1, 0.2), around(-0.3, 0.1), around(0.0, 0.0)])
def test_no_verdict_without_a_use_of_alkalinity(alkalinity: Span) -> None:
    found = ratio(alkalinity, around(7.0, 0.5))
    assert found.span is None
    assert not found.departs
    assert [reason.code for reason in found.reasons] == ["ratio_unknown"]


def test_volume_by_hand() -> None:
    """184.3 mL of 2 meq/mL raise by 0.571 meq/L while 0.513 are used: diluted in 340 L."""
    found = effective_volume(
        [92.15, 92.15], 2.0, Measured(2.43, 0.0), Measured(3.0, 0.0), 1.6, around(0.32125, 0.0), 0.0
    )
    assert isinstance(found, Span)
    assert found.value == pytest.approx(368.6 / (0.57 + 0.514))
    assert (found.low, found.high) == pytest.approx((found.value, found.value))


def test_volume_lost_in_the_scatter_is_refused() -> None:
    lost = effective_volume([10.0], 2.0, Measured(2.5, 0.05), Measured(2.56, 0.05), 0.5, around(0.0, 0.0))
    assert isinstance(lost, Refused)
    assert [reason.code for reason in lost.reasons] == ["rise_not_seen"]
    for doses, after in (([100.0], 2.0), ([], 3.0)):
        assert isinstance(
            effective_volume(doses, 2.0, Measured(2.5, 0.01), Measured(after, 0.01), 1.0, around(0.0, 0.0)), Refused
        )


def test_a_better_test_and_a_larger_rise_tell_the_volume_better() -> None:
    def width(sd: float, rise: float) -> float:
        found = effective_volume(
            [rise * 170.0], 2.0, Measured(2.0, sd), Measured(2.0 + rise, sd), 1.0, around(0.0, 0.02)
        )
        assert isinstance(found, Span)
        assert found.value == pytest.approx(340.0)
        return found.high - found.low

    assert width(0.05, 1.0) < width(0.05, 0.5) < width(0.1, 0.5)


def test_ninety_of_a_hundred_volumes_lie_in_their_interval() -> None:
    """2,000 corrections of a tank of 340 L, tests and stock as uncertain as is said; within three standard errors."""
    r = np.random.default_rng(5)
    inside = 0
    for _ in range(2000):
        strength = 2.0 * (1.0 + r.normal(0.0, 0.01))
        used = 0.3 + r.normal(0.0, 0.03)
        rise = 150.0 * strength / 340.0 - 0.3 * 2.0
        found = effective_volume(
            [50.0, 100.0], 2.0, Measured(2.4 + r.normal(0.0, 0.05), 0.05), Measured(2.4 + rise + r.normal(0.0, 0.05), 0.05), 2.0,
            around(used, 0.03 * NORMAL_90), 0.02,
        )  # fmt: skip
        inside += isinstance(found, Span) and found.low <= 340.0 <= found.high
    assert inside / 2000 == pytest.approx(0.90, abs=3.0 * (0.09 / 2000) ** 0.5)


def test_quotient_of_figures_without_spread_is_exact() -> None:
    assert fieller((6.0, 0.0), (3.0, 0.0)) == pytest.approx((2.0, 2.0))
    assert fieller((6.0, 0.0), (0.0, 0.0)) is None
    low, high = fieller((6.0, 0.3), (3.0, 0.0)) or (0.0, 0.0)
    assert (high - low) / 2.0 == pytest.approx(NORMAL_90 * 0.1)
