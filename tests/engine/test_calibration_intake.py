"""Reading the runs of a pump: units, what is taken for granted, and what is missing or wrong."""

from __future__ import annotations

from datetime import UTC
from typing import Any

import pytest

from evenwater.engine.calibration import CalibrationQuestion
from evenwater.engine.calibration_intake import calibration
from evenwater.engine.form import Unread
from evenwater.engine.quantities import Typed
from evenwater.engine.units import KINDS, linear
from tests.engine.calibrations import NOW

RUN = {"seconds": 60, "volume": "24 mL"}


def read(**tables: Any) -> CalibrationQuestion:
    found = calibration({"run": [RUN], **tables}, NOW)
    assert isinstance(found, CalibrationQuestion), found
    return found


def faults(**tables: Any) -> list[tuple[str, str]]:
    found = calibration({"run": [RUN], **tables}, NOW)
    assert isinstance(found, Unread), found
    return [(reason.code, reason.path) for reason in found.reasons]


# How much of the first unit of its list each unit is: legal definitions, the standard atmosphere, conventional mercury.
SIZES = {
    "time": {"s": 1.0, "min": 60.0, "h": 3600.0},
    "length": {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "ft": 304.8},
    "air pressure": {"hPa": 1.0, "kPa": 10.0, "mmHg": 1.33322387415, "inHg": 33.86388640341},
    "density": {"g/mL": 1.0, "kg/L": 1.0, "kg/m3": 1e-3},
}


@pytest.mark.parametrize("kind", SIZES)
def test_units_have_their_size(kind: str) -> None:
    assert [unit.id for unit in KINDS[kind].units] == list(SIZES[kind])
    for unit, size in SIZES[kind].items():
        assert linear(kind, unit) == pytest.approx((size, 0.0), rel=1e-9)


@pytest.mark.parametrize("seconds", [90, 90.0, "90", "90 s", "1.5 min", "0.025 h", Typed("1.5", "min")])
def test_time_of_a_run_is_read_as_number_and_as_text(seconds: object) -> None:
    assert read(run=[{**RUN, "seconds": seconds}]).runs[0].seconds == pytest.approx(90.0)


@pytest.mark.parametrize("volume", ["24 mL", "24,0 mL", "0.024 L", Typed("24", "mL")])
def test_volume_is_read_in_any_unit(volume: object) -> None:
    (run,) = read(run=[{"seconds": 60, "volume": volume}]).runs
    assert run.volume_ml == pytest.approx(24.0)
    assert run.mass_g is None


def test_three_decimals_of_a_scale_are_no_thousands_where_the_flow_is_known() -> None:
    runs = [{"seconds": 10, "mass": "4.012 g"}]
    assert read(run=runs, pump={"setting": "24 mL/min"}).runs[0].mass_g == pytest.approx(4.012)
    assert faults(run=runs) == [("two_readings", "run.1.mass")]
    assert read(run=[{"seconds": 60, "mass": "24.012 g"}]).runs[0].mass_g == pytest.approx(24.012)


def test_what_is_not_said_is_taken_for_granted_and_said() -> None:
    plain = read()
    assert (plain.setting, plain.dose, plain.hours, plain.per_day, plain.line, plain.record) == (None,) * 6
    assert (plain.wanted, plain.life, plain.now) == (0.01, 650.0, NOW.astimezone(UTC))
    assert [(r.code, r.params["graduation_ml"]) for r in plain.assumed] == [("graduation_assumed", 1.0)]
    heavy = read(run=[{"seconds": 60, "mass": "23.9 g"}, {"seconds": 60, "mass": "24.05 g"}])
    assert heavy.means.readability == pytest.approx(0.01), "the finest digit that was written"
    assert [r.code for r in heavy.assumed] == ["readability_assumed", "temperature_assumed"]
    assert heavy.means.off.water_c == 5.0
    said = read(
        run=[{"seconds": 60, "mass": "23.9 g"}],
        scale={"readability": "0.1 g"},
        conditions={"water_temperature": "77 degF"},
    )
    assert said.assumed == ()
    assert said.means.conditions.liquid.temperature_c == pytest.approx(25.0)
    assert said.means.conditions.air_c == pytest.approx(25.0), "the air is as warm as the water"
    assert said.means.off.water_c == 0.5


@pytest.mark.parametrize(("volume", "ml"), [("24 mL", 1.0), ("24.5 mL", 0.1), ("0.024 L", 1.0), ("240 mL", 1.0)])
def test_last_digit_is_the_graduation(volume: str, ml: float) -> None:
    assert read(run=[{"seconds": 60, "volume": volume}]).means.graduation == pytest.approx(ml)


def test_every_table_arrives() -> None:
    found = read(
        run=[{"seconds": 5, "doses": 20, "volume": "40 mL"}],
        pump={"setting": "24 mL/min", "dose": "2 mL", "hours": "420", "hours_per_day": "90 min", "life": "700 h"},
        cylinder={"graduation": "0.5 mL", "tolerance": "0.25 mL", "material": "Plastic"},
        scale={"readability": "10 mg", "tolerance": "0.02 g"},
        conditions={"salinity": "35", "air_temperature": "20 degC", "air_pressure": "29.92 inHg", "humidity": "60 %",
                    "weights": "8000 kg/m3", "timing": "0.1 s"},
        line={"bore": "0.25 in", "length": "2 m"},
        record={"every": "0.5 min", "amounts": ["12.1 mL", "11.9 g"]},
        earlier=[{"at": NOW, "hours": "100", "flow": "24.125 mL/min", "accuracy": "1 %"}],
        wanted="2 %",
    )  # fmt: skip
    assert (found.runs[0].doses, found.runs[0].total_seconds) == (20, 100.0)
    assert (found.dose, found.hours, found.per_day, found.life) == pytest.approx((2.0, 420.0, 1.5, 700.0))
    assert found.wanted == 0.02
    means = found.means
    assert (means.graduation, means.tolerance, means.material) == (0.5, 0.25, "plastic")
    assert (means.readability, means.scale_tolerance, means.timing) == pytest.approx((0.01, 0.02, 0.1))
    assert means.conditions.liquid.salinity == 35.0
    assert means.conditions.pressure_hpa == pytest.approx(1013.2, abs=0.05)
    assert means.conditions.weights == pytest.approx(8.0)
    assert found.line is not None
    assert (found.line.bore_mm, found.line.length_mm) == pytest.approx((6.35, 2000.0))
    assert found.record is not None
    assert found.record.every_min == 0.5
    assert found.record.amounts_ml == pytest.approx((12.1, 11.9 * means.z_ml_per_g))
    (earlier,) = found.earlier
    assert (earlier.hours, earlier.flow, earlier.accuracy) == pytest.approx((100.0, 24.125, 0.01))


@pytest.mark.parametrize(
    ("tables", "expected"),
    [
        ({"run": [{"seconds": 60}]}, [("missing", "run.1.volume")]),
        ({"run": [{"volume": "24 mL"}]}, [("missing", "run.1.seconds")]),
        ({"run": [{"seconds": 60, "volume": "24"}]}, [("unit_missing", "run.1.volume")]),
        ({"run": [{"seconds": 60, "volume": "24 g"}]}, [("unknown_unit", "run.1.volume")]),
        ({"run": [{"seconds": 60, "volume": "1 gal"}]}, [("bare_gallon", "run.1.volume")]),
        ({"run": [{"seconds": 0, "volume": "24 mL"}]}, [("out_of_range", "run.1.seconds")]),
        ({"run": [{**RUN, "doses": "1.5"}]}, [("not_whole", "run.1.doses")]),
        ({"run": [{**RUN, "seconds": True}]}, [("not_text", "run.1.seconds")]),
        ({"pump": {"setting": "24"}}, [("unit_missing", "pump.setting")]),
        ({"pump": {"setting": "0.02 mL/min"}}, [("out_of_range", "run.1.volume")]),
        ({"cylinder": {"material": "wood"}}, [("unknown_choice", "cylinder.material")]),
        ({"conditions": {"water_temperature": "60 degC"}}, [("out_of_range", "conditions.water_temperature")]),
        ({"line": {"bore": "4 mm"}}, [("missing", "line.length")]),
        ({"record": {"amounts": ["1 mL", "1"], "every": "30 s"}}, [("unit_missing", "record.amounts.2")]),
        ({"earlier": [{"at": NOW, "hours": "1", "flow": "24 mL/min"}]}, [("missing", "pump.hours")]),
        ({"earlier": [{"hours": "1", "flow": "24 mL/min"}], "pump": {"hours": "2"}}, [("missing", "earlier.1.at")]),
        ({"earlier": [{"at": NOW.replace(tzinfo=None), "hours": "1", "flow": "24 mL/min"}], "pump": {"hours": "2"}},
         [("time_without_zone", "earlier.1.at")]),
    ],
)  # fmt: skip
def test_what_cannot_be_read_is_named(tables: dict[str, Any], expected: list[tuple[str, str]]) -> None:
    assert faults(**tables) == expected
