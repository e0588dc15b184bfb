"""The band and the shares (source of the propagation: JCGM 100:2008, 5.1.2)."""

from __future__ import annotations

import math
from dataclasses import fields, replace

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from evenwater.engine import correction
from evenwater.engine.correction import Answer
from evenwater.engine.uncertainty import SOURCES, Spread, _points, band, shares
from tests.property.plans import Drawn, plans

# Standard deviations as they come from the entry fields: up to 50 % of a volume is half a width of two of them.
SHARES = st.floats(0.005, 0.10)


@st.composite
def spreads(draw: st.DrawFn) -> Spread:
    """Return any spread of ordinary size."""
    return Spread(draw(SHARES), draw(st.floats(0.01, 0.3)), draw(SHARES), draw(SHARES), draw(SHARES))


def _ends(start: float, dosed: float, used: float, spread: Spread) -> tuple[float, float]:
    low, high = band(start, np.array([dosed]), np.array([used]), spread)
    return float(low[0]), float(high[0])


@settings(max_examples=100)
@given(drawn=plans())
def test_the_band_holds_the_plan(drawn: Drawn) -> None:
    low, high = drawn.answer.band
    # The end of the doses as rounded, which is where the plan ends.
    end = float(drawn.by_hand.pace * drawn.by_hand.lasts - drawn.by_hand.shortfall) + drawn.answer.question.measured
    assert low < end < high


@settings(max_examples=100)
@given(drawn=plans())
def test_shares_add_to_one_and_name_every_source(drawn: Drawn) -> None:
    found = drawn.answer.by_source
    assert set(found) == {"volume", "reading", "strength", "pump", "use"} == set(SOURCES)
    assert math.fsum(found.values()) == pytest.approx(1.0, rel=1e-12)
    assert all(0.0 <= share <= 1.0 for share in found.values())
    assert (found["use"] == 0.0) == (drawn.answer.question.use == 0.0)


@settings(max_examples=100)
@given(start=st.floats(2.0, 5.0), dosed=st.floats(0.2, 5.0), used=st.floats(0.1, 3.0), spread=spreads())
def test_the_band_widens_with_each_uncertainty(start: float, dosed: float, used: float, spread: Spread) -> None:
    low, high = _ends(start, dosed, used, spread)
    for source in SOURCES:
        more = replace(spread, **{source: 2.0 * getattr(spread, source)})
        wider = _ends(start, dosed, used, more)
        share = shares(dosed, used, more)[source]
        # A source that hardly counts may be lost among 512 points; one that counts must be seen.
        assert wider[1] - wider[0] >= (high - low) * 0.94, source
        if share > 0.5:
            assert wider[1] - wider[0] > (high - low) * 1.10, source


@settings(max_examples=100)
@given(start=st.floats(2.0, 5.0), dosed=st.floats(0.2, 5.0), used=st.floats(0.1, 3.0), spread=spreads())
def test_the_band_is_the_one_of_first_order_propagation(
    start: float, dosed: float, used: float, spread: Spread
) -> None:
    # 1.6449 standard deviations to each side hold 90 % of a normal distribution.
    low, high = _ends(start, dosed, used, spread)
    relative = math.sqrt(spread.volume**2 + spread.strength**2 + spread.pump**2)
    sigma = math.sqrt((dosed * relative) ** 2 + spread.reading**2 + (used * spread.use) ** 2)
    assert (high - low) / 2.0 == pytest.approx(1.6449 * sigma, rel=0.12)
    assert (high + low) / 2.0 == pytest.approx(start + dosed - used, abs=0.35 * sigma)


def test_sources_are_drawn_independently() -> None:
    # A correlation between two of them would widen or narrow every band; 0.1 is what 512 points allow.
    columns = np.corrcoef(_points().T)
    assert np.abs(columns - np.eye(len(SOURCES))).max() < 0.1


def test_shares_by_hand() -> None:
    found = shares(2.0, 1.0, Spread(volume=0.05, reading=0.1, strength=0.01, pump=0.025, use=0.1))
    parts = {"volume": 0.1, "reading": 0.1, "strength": 0.02, "pump": 0.05, "use": 0.1}
    total = sum(part**2 for part in parts.values())
    for name, part in parts.items():
        assert found[name] == pytest.approx(part**2 / total, rel=1e-12)


def test_without_any_spread_the_band_is_the_plan() -> None:
    nothing = Spread(0.0, 0.0, 0.0, 0.0, 0.0)
    assert _ends(2.5, 1.0, 0.4, nothing) == pytest.approx((3.1, 3.1), rel=1e-12)
    assert shares(1.0, 0.4, nothing) == dict.fromkeys(SOURCES, 0.0)


def test_sources_are_the_fields_of_a_spread() -> None:
    assert tuple(f.name for f in fields(Spread)) == SOURCES


@settings(max_examples=50)
@given(drawn=plans(), wider=st.floats(0.15, 0.5))
def test_a_volume_less_well_known_gives_a_wider_band(drawn: Drawn, wider: float) -> None:
    question = drawn.answer.question
    assume(question.system.volume_uncertainty < wider)
    result = correction.solve(replace(question, system=replace(question.system, volume_uncertainty=wider)))
    assert isinstance(result, Answer)
    narrow = drawn.answer.band[1] - drawn.answer.band[0]
    assert result.band[1] - result.band[0] >= narrow * 0.94
    assert result.by_source["volume"] > drawn.answer.by_source["volume"]
    # The plan itself is made for the volume as entered.
    assert result.total_ml == drawn.answer.total_ml
