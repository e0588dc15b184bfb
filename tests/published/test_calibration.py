"""Calibrating a pump: Z factors, ten weighings, worst errors in a window, and a line with its uncertainty, against published figures."""

from __future__ import annotations

import math
from collections.abc import Sequence

import pytest

from evenwater.engine.calibration_runs import Means, Run, mean_and_sd, summary, volume
from evenwater.engine.quantities import Water
from evenwater.engine.straight_line import Fitted, fit
from evenwater.engine.student import quantile
from evenwater.engine.trumpet import WINDOWS_MIN, trumpet
from evenwater.engine.weighing import Conditions, HalfWidths, air_density
from tests.published.rows import Row, check, rows

GRAVIMETRIC = rows("gravimetric")
TRUMPET = rows("trumpet")
LINE = rows("straight_line")
AIR = rows("air")
SUMMARY = rows("summary")
STUDENT = rows("student")
EXERCISED = GRAVIMETRIC + TRUMPET + LINE + AIR + SUMMARY + STUDENT

FACTORS = [row for row in GRAVIMETRIC if "p_hPa" in row.inputs]
(FORMULA,) = (row for row in GRAVIMETRIC if row.id == "Z.formula")
(WEIGHINGS,) = (row for row in GRAVIMETRIC if row.id == "grav.example")
# The table leaves the humidity open; half is taken, and between dry and saturated air Z changes by 1e-5.
HUMIDITY = 50.0


def z(row: Row) -> float:
    return Conditions(Water(0.0, row.number("T_C")), row.number("T_C"), row.number("p_hPa"), HUMIDITY).z_ml_per_g


def listed(row: Row, name: str) -> list[float]:
    values = row.inputs[name]
    assert isinstance(values, list)
    return [float(value) for value in values]


@pytest.mark.parametrize("row", FACTORS, ids=lambda row: row.id)
def test_z_factor_is_the_published_one(row: Row) -> None:
    check(row, z(row))


def test_z_factors_are_nowhere_further_off_than_the_formula_itself() -> None:
    assert isinstance(FORMULA.expected, float)
    worst = max(abs(z(row) - float(str(row.expected))) for row in FACTORS)
    check(FORMULA, worst)


@pytest.mark.parametrize("row", AIR, ids=lambda row: row.id)
def test_air_has_the_density_of_the_full_equation(row: Row) -> None:
    check(row, 1000.0 * air_density(row.number("T_C"), row.number("p_hPa"), row.number("humidity")))


@pytest.mark.parametrize("row", STUDENT, ids=lambda row: row.id)
def test_students_t_is_the_published_one(row: Row) -> None:
    check(row, quantile(row.number("confidence"), round(row.number("freedom"))))


@pytest.mark.parametrize("row", SUMMARY, ids=lambda row: row.id)
def test_mean_and_standard_deviation_are_the_published_ones(row: Row) -> None:
    if "values" in row.inputs:
        values = listed(row, "values")
    else:
        values = [row.number("first"), *(listed(row, "then") * round(row.number("times")))]
    mean, sd = mean_and_sd(values)
    assert sd is not None
    assert isinstance(row.expected, dict)
    found = {"mean": mean, "sd": sd, "sd_of_mean": sd / math.sqrt(len(values))}
    check(row, {name: found[name] for name in row.expected})


def test_ten_weighings_are_the_published_calibration() -> None:
    """With the published Z: mean, bias, standard deviation and coefficient of variation."""
    masses, nominal = listed(WEIGHINGS, "m_g"), WEIGHINGS.number("V_nominal_mL")
    volumes = [mass * WEIGHINGS.number("Z") for mass in masses]
    mean, sd = mean_and_sd(volumes)
    assert sd is not None
    check(
        WEIGHINGS,
        {"mean_mL": mean, "es_pct": 100.0 * (mean / nominal - 1.0), "s_mL": sd, "CV_pct": 100.0 * sd / mean},
    )


def test_ten_runs_of_a_minute_have_the_published_flow_and_spread() -> None:
    """At 22.0 degC and 1013.25 hPa the product's own Z is the published 1.0033 to its digits."""
    off = HalfWidths(0.5, 0.0, 1.0, 5.0, 10.0)
    conditions = Conditions(Water(0.0, 22.0), 22.0, 1013.25, HUMIDITY)
    means = Means(1.0, 0.0, "glass", 0.01, 0.0, 0.3, conditions, off)
    runs = [Run(60.0, mass_g=mass) for mass in listed(WEIGHINGS, "m_g")]
    found = summary(runs, means, range(len(runs)))
    assert isinstance(WEIGHINGS.expected, dict)
    assert found.mean == pytest.approx(WEIGHINGS.expected["mean_mL"], abs=5e-4)
    assert found.cv is not None
    assert 100.0 * found.cv == pytest.approx(WEIGHINGS.expected["CV_pct"], abs=1e-4)
    assert volume(runs[0], means) == pytest.approx(9.96 * 1.0033, abs=5e-4)


@pytest.mark.parametrize("row", TRUMPET, ids=lambda row: row.id)
def test_worst_error_in_a_window_is_the_published_one(row: Row) -> None:
    if "window_min" not in row.inputs:
        windows: Sequence[float] = WINDOWS_MIN if row.id == "trumpet.windows" else WINDOWS_MIN[1:]
        check(row, {f"window_{n}": window for n, window in enumerate(windows, start=1)})
        return
    amounts = [0.5] * 120
    amounts[70] = 1.0
    (found,) = trumpet(amounts, 0.5, 1.0, [row.number("window_min")])
    check(row, 100.0 * found.high)
    assert found.low == pytest.approx(0.0, abs=1e-12)


def thermometer(row: Row) -> Fitted:
    temperatures, corrections = listed(row, "t"), listed(row, "b")
    # The guide knows nothing of the scatter beforehand: all readings count alike and tell it.
    return fit(temperatures, corrections, [1.0] * len(temperatures))


@pytest.mark.parametrize("row", LINE, ids=lambda row: row.id)
def test_line_says_what_the_guide_says(row: Row) -> None:
    line = thermometer(row)
    assert line.scatter is not None
    s = line.scatter
    height_sd, slope_sd = s * line.sd_at(20.0), s * line.slope_sd
    found = {
        "y1": line.at(20.0),
        "u_y1": height_sd,
        "y2": line.slope,
        "u_y2": slope_sd,
        "r": -(line.middle - 20.0) * slope_sd**2 / (height_sd * slope_sd),
        "b30": line.at(30.0),
        "u_b30": s * line.sd_at(30.0),
        "SSR": s**2 * (len(listed(row, "t")) - 2),
    }
    assert isinstance(row.expected, dict)
    check(row, {name: found[name] for name in row.expected})
    assert math.isfinite(line.height_sd)
