"""The chart: the very doses of the plan, in the keeper's unit, from the reading to the target and never above it."""

from __future__ import annotations

from datetime import timedelta
from functools import cache

import numpy as np
import pytest

from evenwater.screens.answer import shown_of
from evenwater.screens.ramp import chart
from evenwater.screens.views import ChartView
from tests.screens.asked import NOW, answer, grid, over_everything
from tests.screens.reckoned import MEQ_PER_DKH, NO3, PO4, WEIGHT, canonical, density, parameters, per_ml

SERIES = ("plan", "low", "high", "uptake_stops", "nothing")
CACO3 = (WEIGHT["Ca"] + WEIGHT["C"] + 3 * WEIGHT["O"]) / 2
SCALE_C = {"SG 25/25 degC": 25.0, "SG 20/20 degC": 20.0, "SG 60/60 degF": 140 / 9}


@cache
def drawn(name: str) -> ChartView:
    return chart(grid()[name], shown_of(grid()[name].question))


def in_unit(name: str, values: np.ndarray) -> np.ndarray:
    """Return canonical values in the keeper's unit, reckoned here once more."""
    q = grid()[name].question
    if q.unit in SCALE_C:
        import gsw

        at = SCALE_C[q.unit]
        return np.asarray(gsw.rho_t_exact(gsw.SR_from_SP(values), at, 0.0) / gsw.rho_t_exact(0.0, at, 0.0))
    factor = {
        "dKH": 1.0 / MEQ_PER_DKH, "meq/L": 1.0, "mmol/L": 1.0, "ppm as CaCO3": CACO3, "mg/L": 1.0, "mg/kg": 1.0 / density(q.system.water),
        "mg/L as NO3": 1.0, "mg/L as N": WEIGHT["N"] / NO3, "mg/L as PO4": 1.0, "mg/L as P": WEIGHT["P"] / PO4, "ppt": 1.0,
    }  # fmt: skip
    return values * factor[q.unit]


@over_everything
def test_series_start_at_the_reading_and_stay_below_the_target(name: str) -> None:
    view, q = drawn(name), grid()[name].question
    reading, target = in_unit(name, np.array([q.measured, q.target]))
    assert view.measured == pytest.approx(reading, rel=2e-6)
    assert view.target == pytest.approx(target, rel=2e-6)
    for series in ("plan", "uptake_stops", "nothing"):
        assert getattr(view, series)[0] == pytest.approx(view.measured, rel=1e-12)
    assert view.times[0] == q.now.timestamp()
    assert view.measured_at == (q.measured_at or q.now).timestamp()
    assert np.all(view.plan <= view.target * (1 + 1e-12))


@over_everything
def test_series_are_whole_and_in_order(name: str) -> None:
    view = drawn(name)
    assert np.all(np.diff(view.times) > 0.0)
    for series in SERIES:
        values = getattr(view, series)
        assert values.shape == view.times.shape
        assert np.all(np.isfinite(values))
        assert np.all(values >= 0.0)
    assert np.all(view.low <= view.high)
    assert np.all(view.low <= view.plan * (1 + 1e-3))
    assert np.all(view.high >= view.plan * (1 - 1e-3))
    assert np.all(np.diff(view.nothing) <= 0.0)
    assert np.all(view.uptake_stops >= view.plan - 1e-12)
    assert view.times[0] < view.ramp_end < view.times[-1]
    assert np.isclose(view.times, view.ramp_end).any(), "the bend is a point of its own"


@over_everything
def test_the_chart_is_made_of_the_doses_that_are_given(name: str) -> None:
    plan, view = grid()[name], drawn(name)
    q, doses = plan.question, plan.doses
    seconds = 86400.0 / doses.per_day
    assert view.doses_ml.shape == view.doses_at.shape
    assert list(view.doses_ml[: doses.count]) == [doses.dose_ml] * doses.count
    assert set(view.doses_ml[doses.count :]) <= {doses.upkeep_ml}
    assert np.allclose(np.diff(view.doses_at), seconds)
    assert view.doses_at[0] == pytest.approx(q.now.timestamp() + seconds)
    assert view.ramp_end == pytest.approx(q.now.timestamp() + doses.count * seconds)
    # Give them one by one: right after each the water is where the line is.
    value, expected = q.measured, []
    for ml in view.doses_ml:
        value += ml * per_ml(plan) - q.use / doses.per_day
        expected.append(value)
    shown = in_unit(name, np.array(expected))
    line = np.interp(view.doses_at, view.times, view.plan)
    tolerance = 2e-6 * view.target
    if q.unit.startswith("SG"):
        # Between two points of the line the scale is not quite straight.
        tolerance = 1e-5
    assert np.allclose(line, shown, rtol=0.0, atol=tolerance)


@over_everything
def test_nothing_and_uptake_stops_are_what_they_say(name: str) -> None:
    plan, view = grid()[name], drawn(name)
    q = plan.question
    days = (view.times - view.times[0]) / 86400.0
    assert np.allclose(view.nothing, in_unit(name, np.maximum(q.measured - q.use * days, 0.0)), rtol=3e-6)
    ramp = view.times <= view.ramp_end
    dosed = days[ramp] * plan.doses.per_day * plan.doses.dose_ml * per_ml(plan)
    assert np.allclose(view.uptake_stops[ramp], in_unit(name, q.measured + dosed), rtol=3e-6)


@over_everything
def test_fastest_line_is_the_allowed_slope(name: str) -> None:
    q, view = grid()[name].question, drawn(name)
    times, values = view.fastest
    recommended = canonical(q.parameter.name, parameters()[q.parameter.name]["rise_per_day"]["recommended"])
    allowed = recommended if q.fastest is None else q.fastest
    assert list(values) == pytest.approx([view.measured, view.target], rel=1e-12)
    assert (times[1] - times[0]) / 86400.0 == pytest.approx((q.target - q.measured) / allowed, rel=1e-6)
    assert view.ramp_end >= times[1] - 86400.0 / grid()[name].doses.per_day - 1.0, "no plan is faster than allowed"


@over_everything
def test_labels_title_and_decimals(name: str) -> None:
    plan, view = grid()[name], drawn(name)
    shown = shown_of(plan.question)
    assert set(view.labels) == {"plan", "uptake_stops", "nothing", "target", "fastest"}
    assert all(view.labels.values())
    assert len(set(view.labels.values())) == 5
    assert view.unit == shown.unit_words
    assert view.title == f"{plan.question.parameter.name.capitalize()}, {view.unit}"
    assert view.labels["target"].startswith("target")
    # As many decimals as tell the reading from the target.
    assert f"{view.measured:.{view.decimals}f}" != f"{view.target:.{view.decimals}f}"
    assert 0 <= view.decimals <= 6


def test_a_reading_of_yesterday_is_marked_at_its_own_time() -> None:
    plan = answer({"change.measured_at": NOW - timedelta(hours=20)})
    view = chart(plan, shown_of(plan.question))
    assert view.times[0] - view.measured_at == pytest.approx(20 * 3600)
