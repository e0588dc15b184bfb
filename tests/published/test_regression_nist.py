"""Use that neither wanders nor changes is a least squares line: held to certified values, x as days and y as readings."""

from __future__ import annotations

import numpy as np
import pytest

from evenwater.engine.consumption_line import Line, line
from evenwater.engine.consumption_steps import Floats, Log, begin, steps
from evenwater.engine.straight_line import fit
from tests.published.rows import Row, check, rows

EXERCISED = rows("regression")
NORRIS, WITHOUT_INTERCEPT, *SINGLE = EXERCISED
DATA = {row.id: row for row in (NORRIS, WITHOUT_INTERCEPT)}
NOTHING = np.array([])
UNTOUCHED = Log(NOTHING, NOTHING, NOTHING, NOTHING, NOTHING)
# All of the water made new, with nothing in it, on day zero: the line starts there without a test.
ALL_NEW = Log(NOTHING, NOTHING, np.array([0.0]), np.array([1.0]), np.array([0.0]))


def drawn(row: Row, log: Log, weights: Floats | float = 1.0) -> Line:
    """Draw the line through a data set, seen from day zero; every reading trusted by its weight."""
    days, values = (np.asarray(row.inputs[name], dtype=float) for name in ("x", "y"))
    order = np.argsort(days, kind="stable")
    start, known = begin(days[order], log)
    # Without a known beginning, day zero is looked back to from the first reading.
    times = np.concatenate([[start if known is not None else 0.0], days[order]])
    variances = np.concatenate([[np.inf], np.broadcast_to(1.0 / np.asarray(weights), days.shape)[order]])
    still = np.zeros_like(times)
    return line(np.concatenate([[0.0], values[order]]), variances, steps(times, log), still, still, known)


def figures(found: Line) -> dict[str, float]:
    """Return what is certified; readings were taken to scatter by one."""
    assert found.scatter is not None
    return {
        "B0": float(found.value[0]),
        "B1": -float(found.use[0]),
        "sd_B0": float(found.value_sd[0]) * found.scatter,
        "sd_B1": float(found.use_sd[0]) * found.scatter,
        "residual_sd": found.scatter,
    }


@pytest.mark.parametrize(
    ("row", "log"), [(NORRIS, UNTOUCHED), (WITHOUT_INTERCEPT, ALL_NEW)], ids=lambda x: getattr(x, "id", "")
)
def test_line_is_the_certified_one_to_its_digits(row: Row, log: Log) -> None:
    assert isinstance(row.expected, dict)
    found = {name: figure for name, figure in figures(drawn(row, log)).items() if name in row.expected}
    check(row, found)
    assert found == pytest.approx(row.expected, rel=2e-14, abs=0.0)


def certified(row: Row) -> dict[str, float]:
    """Return the certified figures of a line: of calibrations where it has a height at nought, else of the log."""
    data = DATA[row.word("data")]
    if data is WITHOUT_INTERCEPT:
        found = figures(drawn(data, ALL_NEW))
        return found | {"SSE": found["residual_sd"] ** 2 * (len(listed(data, "x")) - 1)}
    x = listed(data, "x")
    line = fit(x, listed(data, "y"), [1.0] * len(x))
    assert line.scatter is not None
    slope_sd, mean_square = line.scatter * line.slope_sd, line.scatter**2
    return {
        "B1": line.slope,
        "sd_B1": slope_sd,
        "residual_sd": line.scatter,
        "SSE": mean_square * (len(x) - 2),
        "MSE": mean_square,
        "F": (line.slope / slope_sd) ** 2,
    }


def listed(row: Row, name: str) -> list[float]:
    values = row.inputs[name]
    assert isinstance(values, list)
    return [float(value) for value in values]


@pytest.mark.parametrize("row", SINGLE, ids=lambda row: row.id)
def test_each_certified_figure_is_met(row: Row) -> None:
    check(row, certified(row)[row.word("figure")])


def test_line_is_the_same_seen_from_every_reading() -> None:
    found = drawn(NORRIS, UNTOUCHED)
    days = np.concatenate([[0.0], np.sort(np.asarray(NORRIS.inputs["x"], dtype=float))])
    assert np.ptp(found.use) == 0.0
    assert found.value == pytest.approx(found.value[0] - found.use[0] * days, rel=1e-12, abs=1e-12)


def test_weighted_line_is_that_of_an_independent_program() -> None:
    """Readings trusted unevenly, against numpy's own weighted fit (by singular values; its covariance unscaled)."""
    weights = np.random.default_rng(20).uniform(0.1, 10.0, len(np.asarray(NORRIS.inputs["x"])))
    found = drawn(NORRIS, UNTOUCHED, weights)
    x, y = (np.asarray(NORRIS.inputs[name], dtype=float) for name in ("x", "y"))
    (slope, intercept), covariance = np.polyfit(x, y, 1, w=np.sqrt(weights), cov="unscaled")
    assert -found.use[0] == pytest.approx(slope, rel=1e-11)
    assert found.value[0] == pytest.approx(intercept, rel=1e-10)
    assert found.use_sd[0] == pytest.approx(np.sqrt(covariance[0, 0]), rel=1e-10)
    assert found.value_sd[0] == pytest.approx(np.sqrt(covariance[1, 1]), rel=1e-10)
