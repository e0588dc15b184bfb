"""What holds for any jug: nothing is lost, more drawn never lasts longer, units do not matter, and nothing is ever raised."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine import jug, jug_intake
from evenwater.engine.absence import AbsentJug, absence
from evenwater.engine.jug_causes import Evidence, weigh
from evenwater.engine.jug_check import JugCheck, LevelRead, Levels, Retest, check
from evenwater.engine.jug_level import LONGEST, Draw, Filled, drawn_ml, forecast
from tests.engine.asking import known

NOW = datetime(2026, 11, 25, 8, tzinfo=UTC)
DAY = timedelta(days=1)

hours = st.floats(-100.0, 300.0).map(lambda h: NOW + timedelta(hours=h))
draws = st.builds(Draw, st.just(""), st.floats(0.01, 200.0), st.sampled_from([1, 2, 3, 7, 24, 100, 1440]), hours)
fills = st.builds(Filled, st.just(NOW), st.floats(0.0, 20_000.0), st.floats(0.0, 500.0))


@given(fills, st.lists(draws, min_size=1, max_size=3), st.floats(0.0, 4000.0))
def test_nothing_is_lost(filled: Filled, pumps: list[Draw], later_h: float) -> None:
    """What is left and what was drawn are what was there, until a dose is missing; then nothing more is taken."""
    now = NOW + timedelta(hours=later_h)
    found = forecast(filled, pumps, now)
    until = now if found.refill_before is None else min(now, found.refill_before - timedelta(microseconds=1))
    assert math.isclose(found.level_ml + drawn_ml(pumps, NOW, until), filled.ml, rel_tol=1e-9, abs_tol=1e-6)
    assert found.level_ml >= min(filled.ml, filled.unreachable_ml) - 1e-6


@settings(deadline=None)
@given(st.floats(0.0, 2000.0), st.lists(draws, min_size=1, max_size=3))
def test_last_whole_dose_is_the_one_found_dose_by_dose(ml: float, pumps: list[Draw]) -> None:
    """Dose after dose in order of time; those of one instant belong together."""
    found = forecast(Filled(NOW, ml), pumps, NOW)
    pumps = [replace(pump, per_day=min(pump.per_day, 24)) for pump in pumps]
    found = forecast(Filled(NOW, ml), pumps, NOW)
    left, count = ml * (1.0 + 1e-9) + 1e-9, [0] * len(pumps)
    for _ in range(3000):
        instants = [
            p.first + timedelta(microseconds=math.ceil(n * 86_400_000_000 / p.per_day))
            for p, n in zip(pumps, count, strict=True)
        ]
        at = min(instants)
        due = [k for k, instant in enumerate(instants) if instant == at]
        for k in due:
            count[k] += 1
        if at <= NOW:
            continue
        left -= sum(pumps[k].dose_ml for k in due)
        if left < 0.0:
            if abs(left) > 1e-6:
                assert found.refill_before == at
            return
    assert found.refill_before is None or found.refill_before >= at


@given(fills, st.lists(draws, min_size=1, max_size=2), draws, st.floats(1.0, 3.0))
def test_more_drawn_never_lasts_longer(filled: Filled, pumps: list[Draw], another: Draw, factor: float) -> None:
    def lasts(some: list[Draw]) -> datetime:
        return forecast(filled, some, NOW).refill_before or NOW + LONGEST

    assert lasts([*pumps, another]) <= lasts(pumps)
    assert lasts([replace(pump, dose_ml=factor * pump.dose_ml) for pump in pumps]) <= lasts(pumps)


@given(fills, st.lists(draws, min_size=1, max_size=3), st.floats(0.1, 60.0), st.floats(0.0, 0.2))
def test_filling_for_an_absence_lasts_or_says_until_when(
    filled: Filled, pumps: list[Draw], days: float, reserve: float
) -> None:
    until = NOW + days * DAY
    full = max(filled.ml, 5000.0)
    (found,) = absence([AbsentJug("", filled, full, tuple(pumps), reserve)], [], NOW, until).fillings
    assert 0.0 <= found.add_ml <= full - found.level_ml + 1e-6
    after = forecast(Filled(NOW, found.level_ml + found.add_ml, filled.unreachable_ml), pumps, NOW).refill_before
    assert found.enough == (after is None or after > until)
    if not found.enough:
        assert found.add_ml >= full - found.level_ml - 1e-6
        assert found.missed >= 1


@settings(deadline=None, max_examples=60)
@given(
    st.lists(st.floats(-3000.0, 3000.0), min_size=1, max_size=8),
    st.floats(1e-14, 500.0),
    st.floats(1e-10, 300.0),
    st.floats(1e-6, 0.25),
    st.sampled_from([None, 0.0, 10.0, 700.0, 1e5]),
    st.none() | st.builds(Retest, st.floats(-1e9, 1e9), st.floats(1e-14, 1e9)),
)
def test_check_never_raises_and_its_weights_are_weights(
    drops: list[float], sd: float, dose: float, calibration: float, head: float | None, retest: Retest | None
) -> None:
    ml, readings = 5000.0, [LevelRead(NOW, 5000.0)]
    for day, drop in enumerate(drops, start=1):
        ml -= drop
        readings.append(LevelRead(NOW + day * DAY, ml))
    draw = Draw("", dose, 24, NOW + DAY / 24)
    found = check(Levels(tuple(readings), (draw,), 5000.0, 0.0, sd, calibration, hours=head, retest=retest))
    if isinstance(found, JugCheck):
        assert all(0.0 <= weight <= 1.0 for _, weight in found.candidates)
        assert math.isfinite(found.ratio)
        assert found.factor is None or found.factor.low <= found.factor.value <= found.factor.high


@settings(deadline=None, max_examples=30)
@given(st.lists(st.floats(0.0, 300.0), min_size=2, max_size=6), st.floats(1.0, 30.0), st.floats(0.01, 100.0))
def test_size_of_the_millilitre_does_not_matter(drops: list[float], sd: float, scale: float) -> None:
    """The same jug in other units: the same weights."""

    def weights(by: float) -> list[float]:
        count = len(drops)
        found = weigh(
            Evidence(
                by * np.array(drops),
                by * np.full(count, 120.0),
                np.ones(count),
                (False,) * count,
                by * sd,
                0.025,
                (1.0,),
                by * 5000.0,
            )
        )
        return list(found.weights.values())

    assert np.allclose(weights(1.0), weights(scale), atol=1e-6)
    assert math.isclose(sum(weights(scale)), 1.0, rel_tol=1e-9)


@settings(deadline=None, max_examples=25)
@given(st.floats(300.0, 4500.0), st.floats(0.5, 20.0))
def test_units_do_not_matter(ml: float, dose: float) -> None:
    """Litres, millilitres and gallons for what the jug holds and its level, dKH or meq per litre for the water."""

    def answer(holds: str, level: str, water: str, alkalinity: str) -> jug.JugAnswer:
        raw = {
            "now": NOW,
            "jug": {"holds": holds},
            "system": {"net_volume": water, "alkalinity": alkalinity},
            "additive": {"chemical": "sodium carbonate anhydrous", "dissolved": "106 g", "made_up_to": "1 L"},
            "pump": [{"single_dose": f"{dose:.3f}0 mL", "first_dose_at": NOW + DAY / 24}],
            "level": [{"at": NOW, "level": level}],
        }
        read = jug_intake.jug(raw, known(), NOW)
        assert isinstance(read, jug.JugQuestion), read
        found = jug.solve(read)
        assert isinstance(found, jug.JugAnswer)
        return found

    one = answer("5000.0 mL", f"{ml:.5f} mL", "340 L", "2.8 meq/L")
    other = answer("1.32086026 US gal", f"{ml / 1000.0:.8f} L", "340000 mL", "2.8 mmol/L")
    assert one.forecast.refill_before == other.forecast.refill_before
    assert math.isclose(one.run_in[0].safe_ml, other.run_in[0].safe_ml, rel_tol=1e-9)
    assert math.isclose(one.run_in[0].after, other.run_in[0].after, rel_tol=1e-7)
