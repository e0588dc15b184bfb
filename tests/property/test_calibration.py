"""What must hold for the calibration of any pump."""

from __future__ import annotations

import dataclasses
import json
import math
from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from evenwater.engine.calibration import CalibrationAnswer, CalibrationQuestion, Line, solve
from evenwater.engine.calibration_intake import calibration
from evenwater.engine.calibration_runs import Run
from evenwater.engine.calibration_uncertainty import needed
from evenwater.engine.correction import Refused
from evenwater.engine.pump_wear import Calibrated, Wear, wear
from evenwater.engine.units import linear
from evenwater.headless_calibration import answer
from evenwater.screens import words
from tests.engine.calibrations import MEANS, NOW, answered, question, read_off, weighed

FEW = settings(max_examples=60, deadline=None)
VOLUMES = st.lists(st.floats(20.0, 30.0), min_size=2, max_size=6)
WILD = st.one_of(
    st.floats(),
    st.sampled_from([0.0, -0.0, math.nan, math.inf, -math.inf, 5e-324, 1e-300, 1e-9, 1e9, 1.7e308, -1.0]),
)


@FEW
@given(VOLUMES, st.sampled_from(["L", "US gal", "imperial gal"]), st.sampled_from(["s", "min", "h"]))
def test_flow_is_the_same_in_any_unit(volumes: list[float], unit: str, time: str) -> None:
    size, span = linear("volume", unit)[0], linear("time", time)[0]

    def asked(rows: list[dict[str, Any]]) -> CalibrationQuestion:
        found = calibration({"run": rows, "pump": {"setting": "24 mL/min"}, "cylinder": {"graduation": "0.5 mL"}}, NOW)
        assert isinstance(found, CalibrationQuestion), found
        return found

    plain = solve(asked([{"seconds": "60 s", "volume": f"{v:.9f} mL"} for v in volumes]))
    other = solve(
        asked(
            [{"seconds": f"{60.0 / span:.15f} {time}", "volume": f"{v / 1000.0 / size:.15f} {unit}"} for v in volumes]
        )
    )
    assert isinstance(plain, CalibrationAnswer)
    assert isinstance(other, CalibrationAnswer)
    assert other.chosen.summary.mean == pytest.approx(plain.chosen.summary.mean, rel=1e-9)
    assert other.chosen.known.half_width == pytest.approx(plain.chosen.known.half_width, rel=1e-6)
    assert [r.code for r in other.repeat] == [r.code for r in plain.repeat]


@FEW
@given(VOLUMES, st.floats(0.1, 10.0))
def test_pump_of_another_size_has_the_same_spread(volumes: list[float], factor: float) -> None:
    """As much more out of a cylinder as much coarser: all that is relative stays."""
    coarse = replace(MEANS, graduation=factor * MEANS.graduation, tolerance=factor * MEANS.tolerance)
    plain, scaled = answered(read_off(*volumes)), answered(read_off(*(factor * v for v in volumes)), coarse)
    assert scaled.chosen.summary.mean == pytest.approx(factor * plain.chosen.summary.mean)
    assert scaled.chosen.summary.cv == pytest.approx(plain.chosen.summary.cv, rel=1e-6, abs=1e-12)
    assert scaled.chosen.known.half_width == pytest.approx(factor * plain.chosen.known.half_width)
    assert scaled.passed == plain.passed


@FEW
@given(VOLUMES, st.permutations(range(6)))
def test_order_of_the_runs_does_not_matter(volumes: list[float], order: list[int]) -> None:
    turned = [volumes[n] for n in order if n < len(volumes)]
    plain, other = answered(read_off(*volumes)), answered(read_off(*turned))
    assert other.chosen.summary.mean == pytest.approx(plain.chosen.summary.mean, rel=1e-12)
    assert other.chosen.known.half_width == pytest.approx(plain.chosen.known.half_width, rel=1e-9)


COARSER = st.sampled_from(["graduation", "tolerance", "readability", "scale_tolerance", "timing"])


@FEW
@given(
    st.lists(st.floats(20.0, 30.0), min_size=1, max_size=6),
    st.booleans(),
    COARSER,
    st.floats(1.0, 100.0),
    st.floats(0.0, 2.0),
)
def test_coarser_instrument_never_makes_the_flow_better_known(
    volumes: list[float], on_a_scale: bool, field: str, factor: float, more: float
) -> None:
    coarser = replace(MEANS, **{field: factor * getattr(MEANS, field) + more})
    runs = weighed(*volumes) if on_a_scale else read_off(*volumes)
    plain, other = answered(runs), answered(runs, coarser)
    assert other.chosen.known.half_width >= plain.chosen.known.half_width * (1.0 - 1e-12)
    assert other.chosen.known.standard >= plain.chosen.known.standard * (1.0 - 1e-12)
    longer, short = (needed(means, 24.0, 0.01, on_a_scale) for means in (coarser, MEANS))
    assert longer is not None
    assert short is not None
    assert longer.seconds >= short.seconds * (1.0 - 1e-12)


@FEW
@given(st.floats(5.0, 600.0), st.floats(1.1, 20.0), st.floats(0.1, 100.0))
def test_longer_run_is_better_known(seconds: float, factor: float, flow: float) -> None:
    short, long = (Run(each, volume_ml=flow * each / 60.0) for each in (seconds, factor * seconds))
    at_short, at_long = (answered((run,) * 3).chosen.known.half_width for run in (short, long))
    assert at_long < at_short


HOURS = st.lists(st.floats(0.0, 600.0), min_size=2, max_size=8, unique=True)


@FEW
@given(HOURS, st.floats(-0.02, 0.02), st.lists(st.floats(0.02, 0.5), min_size=8, max_size=8))
def test_drift_without_noise_is_recovered(hours: list[float], per_hour: float, sds: list[float]) -> None:
    assume(max(hours) - min(hours) > 5.0)
    points = [
        Calibrated(NOW - timedelta(hours=600.0 - h), h, 24.0 + per_hour * h, sd)
        for h, sd in zip(hours, sds, strict=False)
    ]
    found = wear(points, 600.0, 24.0, 4.0, NOW)
    assert isinstance(found, Wear)
    assert found.drift == pytest.approx(100.0 * per_hour / 24.0, abs=1e-9)
    assert found.expected == pytest.approx(24.0 + 600.0 * per_hour, abs=1e-6)
    for leaves in found.leaves:
        assert 0.0 <= leaves.earliest_hours <= leaves.hours
        reached = 24.0 + per_hour * (600.0 + leaves.hours)
        if leaves.hours > 0.0:
            assert abs(reached / 24.0 - 1.0) == pytest.approx(leaves.limit, abs=1e-6)
        else:
            assert abs(reached / 24.0 - 1.0) >= leaves.limit - 1e-9


def finite(value: object) -> bool:
    """Return whether every figure inside a value is finite."""
    if isinstance(value, float):
        return math.isfinite(value)
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        return all(finite(getattr(value, f.name)) for f in dataclasses.fields(value))
    return all(finite(each) for each in value) if isinstance(value, tuple | list) else True


@settings(max_examples=200, deadline=None)
@given(
    st.lists(st.tuples(WILD, WILD, st.booleans()), max_size=5),
    st.fixed_dictionaries({}, optional=dict.fromkeys(("setting", "dose", "hours", "per_day", "life", "wanted"), WILD)),
    st.one_of(st.none(), st.builds(Line, WILD, WILD)),
)
def test_engine_never_raises_and_answers_in_figures(
    rows: list[tuple[float, float, bool]], fields: dict[str, float], line: Line | None
) -> None:
    runs = tuple(Run(s, mass_g=amount) if heavy else Run(s, volume_ml=amount) for s, amount, heavy in rows)
    result = solve(question(runs, **fields, line=line))
    if isinstance(result, Refused):
        assert all(words.sentence(reason) for reason in result.reasons)
        return
    told = replace(result, question=question(read_off(1.0)))
    assert finite(told)
    assert all(words.sentence(reason) for reason in (*result.repeat, *result.remarks))


TEXTS = st.one_of(
    st.sampled_from(
        [
            "",
            "24 mL",
            "24.125 g",
            "1,250 mL",
            "0 mL",
            "60",
            "60 s",
            "1 h",
            "nan",
            "-1 s",
            "5 gal",
            "24 mL/min",
            "1 %",
            "\u0000",
        ]
    ),
    st.text(max_size=8),
    st.integers(-5, 10**12),
    st.floats(),
    st.booleans(),
    st.none(),
)


@settings(max_examples=150, deadline=None)
@given(
    st.lists(st.fixed_dictionaries({}, optional=dict.fromkeys(("seconds", "volume", "mass", "doses"), TEXTS)), max_size=4),
    st.fixed_dictionaries({}, optional=dict.fromkeys(("setting", "dose", "hours", "hours_per_day", "life"), TEXTS)),
    st.lists(st.fixed_dictionaries({"at": st.just(NOW)}, optional=dict.fromkeys(("hours", "flow", "accuracy"), TEXTS)), max_size=3),
)  # fmt: skip
def test_whatever_is_typed_has_an_outcome_that_is_json(
    runs: list[dict[str, Any]], pump: dict[str, Any], earlier: list[dict[str, Any]]
) -> None:
    outcome = answer({"kind": "calibration", "run": runs, "pump": pump, "earlier": earlier}, NOW)
    assert json.dumps(outcome.body, allow_nan=False)
    assert outcome.status in (0, 3)
    assert all(reason["text"] for reason in outcome.body.get("reasons", []))
