"""The kind `convert`: every pair of units against an independent reckoning, and back again."""

from __future__ import annotations

from decimal import Decimal
from itertools import permutations
from pathlib import Path

import pytest

from evenwater.engine.units import KINDS
from tests.headless.asking import Said, ask

# Standard atomic weights, CIAAW 2021 (conventional values where it gives an interval).
CA, OX, C, N, P = 40.078, 15.999, 12.011, 14.007, 30.973761998
CACO3_PER_EQ, CAO_PER_EQ = (CA + C + 3 * OX) / 2, (CA + OX) / 2

# How much of the first unit of its list each unit is: legal definitions (231 cubic inches, 4.54609 L, 0.45359237 kg),
# and 10 mg of CaO per litre for a degree.
SIZE = {
    "volume": {"L": 1.0, "mL": 1e-3, "US gal": 231 * 0.0254**3 * 1e3, "imperial gal": 4.54609},
    "mass": {"g": 1.0, "mg": 1e-3, "kg": 1e3, "oz": 453.59237 / 16, "lb": 453.59237},
    "alkalinity": {"meq/L": 1.0, "mmol/L": 1.0, "dKH": 10 / CAO_PER_EQ, "ppm as CaCO3": 1 / CACO3_PER_EQ},
    "nitrate": {"mg/L as NO3": 1.0, "mg/L as N": (N + 3 * OX) / N},
    "phosphate": {"mg/L as PO4": 1.0, "mg/L as P": (P + 4 * OX) / P},
}
PARAMETER = {"volume": "", "mass": "", "temperature": "", "ion": "calcium"}


def density(salinity: float, degc: float) -> float:
    """Return kg per litre by the Gibbs function itself, where the product takes the 75-term polynomial (within 1e-6)."""
    import gsw

    return float(1.0 / gsw.specvol_t_exact(gsw.SR_from_SP(salinity), degc, 0.0)) / 1000.0


def plain(value: float) -> str:
    """Write a number with up to 15 digits and no exponent, never so that it could be a thousand."""
    text = format(Decimal(f"{value:.14e}"), "f")
    whole, _, part = text.partition(".")
    part = part[: max(0, 15 - len(whole))].rstrip("0")
    return f"{whole}.{part}{'0' if len(part) == 3 else ''}" if part else whole


def convert(folder: Path, value: str, to: str, parameter: str = "", **water: str) -> Said:
    lines = [f'kind = "convert"\nvalue = "{value}"\nto = "{to}"']
    lines += [f'parameter = "{parameter}"'] if parameter else []
    lines += [f'{name} = "{text}"' for name, text in water.items()]
    return ask(folder, "\n".join(lines))


def result(folder: Path, value: float, unit: str, to: str, parameter: str = "", **water: str) -> float:
    said = convert(folder, f"{plain(value)} {unit}", to, parameter, **water)
    assert said.status == 0, said.out
    assert said.body["result"]["unit"] == to
    found: float = said.body["result"]["value"]
    return found


PAIRS = [(kind, a, b) for kind, sizes in SIZE.items() for a, b in permutations(sizes, 2)]


@pytest.mark.parametrize(("kind", "unit", "to"), PAIRS, ids=lambda part: part.replace("/", " per "))
def test_every_pair_of_units_and_back(tmp_path: Path, kind: str, unit: str, to: str) -> None:
    parameter = PARAMETER.get(kind, kind)
    ratio = SIZE[kind][unit] / SIZE[kind][to]
    # Large enough that both figures keep their 15 digits in front of them.
    value = 1.23456789 * max(1.0, 1.0 / ratio)
    there = result(tmp_path, value, unit, to, parameter)
    assert there == pytest.approx(value * ratio, rel=1e-9)
    assert result(tmp_path, there, to, unit, parameter) == pytest.approx(value, rel=1e-12)


def test_the_table_above_has_every_unit_of_its_lists() -> None:
    for kind, sizes in SIZE.items():
        assert sizes.keys() == {unit.id for unit in KINDS[kind].units}
    others = {"dose", "flow", "pressure", "share", "number", "ion", "salinity", "temperature"}
    # What only the runs of a pump are measured in: tests/engine/test_calibration_intake.py.
    others |= {"time", "length", "area", "air pressure", "density"}
    # What a food carries: tests/engine/test_foods.py.
    others |= {"mass per volume"}
    assert {name for name in KINDS if not name.endswith(" per day")} == SIZE.keys() | others


@pytest.mark.parametrize("unit", [unit.id for kind in SIZE for unit in KINDS[kind].units])
def test_a_unit_into_itself_stays_as_it_is(tmp_path: Path, unit: str) -> None:
    kind = next(name for name, sizes in SIZE.items() if unit in sizes)
    assert result(tmp_path, 7.25, unit, unit, PARAMETER.get(kind, kind)) == pytest.approx(7.25, rel=1e-15)


@pytest.mark.parametrize(
    ("degc", "degf"), [(0.0, 32.0), (25.0, 77.0), (26.5, 79.7), (100.0, 212.0), (15.0 + 5 / 9, 60.0)]
)
def test_temperatures(tmp_path: Path, degc: float, degf: float) -> None:
    assert result(tmp_path, degc, "degC", "degF") == pytest.approx(degf, abs=1e-9)
    assert result(tmp_path, degf, "degF", "degC") == pytest.approx(degc, abs=1e-9)


def test_temperature_below_zero(tmp_path: Path) -> None:
    assert convert(tmp_path, "-40 degC", "degF").body["result"]["value"] == pytest.approx(-40.0, abs=1e-9)
    assert convert(tmp_path, "-274 degC", "degF").status == 3


@pytest.mark.parametrize("parameter", ["calcium", "magnesium", "potassium", "strontium", "iodide"])
@pytest.mark.parametrize(("salinity", "degc"), [(35, 25), (33, 26.5), (30, 20), (38, 28), (10, 15)])
def test_mass_per_kilogram_by_the_density_of_the_water(
    tmp_path: Path, parameter: str, salinity: float, degc: float
) -> None:
    water = {"salinity": f"{salinity}", "temperature": f"{degc} degC"}
    there = result(tmp_path, 412.08, "mg/kg", "mg/L", parameter, **water)
    assert there == pytest.approx(412.08 * density(salinity, degc), rel=1e-6)
    assert result(tmp_path, there, "mg/L", "mg/kg", parameter, **water) == pytest.approx(412.08, rel=1e-12)


def test_water_may_be_given_in_other_units(tmp_path: Path) -> None:
    plain_water = result(tmp_path, 400.0, "mg/kg", "mg/L", "calcium", salinity="35", temperature="25 degC")
    assert result(
        tmp_path, 400.0, "mg/kg", "mg/L", "calcium", salinity="35 ppt", temperature="77 degF"
    ) == pytest.approx(plain_water, rel=1e-12)
    assert result(tmp_path, 400.0, "mg/kg", "mg/L", "calcium") == plain_water, "35 and 25 degC when not given"


SCALES = {"SG 25/25 degC": 25.0, "SG 20/20 degC": 20.0, "SG 60/60 degF": (60.0 - 32.0) / 1.8}


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("salinity", [1.0, 20.0, 33.5, 35.0, 40.0, 59.0])
def test_specific_gravity_both_ways(tmp_path: Path, scale: str, salinity: float) -> None:
    gravity = density(salinity, SCALES[scale]) / density(0.0, SCALES[scale])
    found = result(tmp_path, salinity, "ppt", scale, "salinity")
    # The polynomial is fitted up to 42 and carries on beyond.
    assert found == pytest.approx(gravity, rel=2e-6 if salinity <= 42.0 else 3e-5)
    assert result(tmp_path, found, scale, "ppt", "salinity") == pytest.approx(salinity, rel=1e-11)


@pytest.mark.parametrize(("scale", "to"), list(permutations(SCALES, 2)))
def test_one_hydrometer_scale_into_another(tmp_path: Path, scale: str, to: str) -> None:
    there = result(tmp_path, 1.0264, scale, to, "salinity")
    assert there != 1.0264
    assert result(tmp_path, there, to, scale, "salinity") == pytest.approx(1.0264, rel=1e-12)


@pytest.mark.parametrize(
    ("value", "to", "parameter", "code", "path", "words"),
    [
        ("90 gal", "L", "", "bare_gallon", "value", "imperial gal"),
        ("90 L", "gal", "", "bare_gallon", "to", "imperial gal"),
        ("1,250 L", "mL", "", "two_readings", "value", "1250"),
        ("5 mg/L", "mg/L as N", "nitrate", "as_what", "value", "mg\u00a0per L as NO3"),
        ("5 mg/L as NO3", "mg/L", "nitrate", "as_what", "to", "as N"),
        ("1.026 SG", "ppt", "salinity", "bare_gravity", "value", "SG 25/25"),
        ("35 ppt", "SG", "salinity", "bare_gravity", "to", "SG 20/20"),
        ("0.98 SG 25/25 degC", "ppt", "salinity", "out_of_range", "value", "0.98"),
        ("61 ppt", "SG 25/25 degC", "salinity", "out_of_range", "value", "60"),
        ("-1 L", "mL", "", "out_of_range", "value", "-1"),
        ("7 dKH", "mg/L", "alkalinity", "as_what", "to", "dKH"),
        ("7 dKH", "furlong", "alkalinity", "unknown_unit", "to", "meq per L"),
        ("7 dKH", "meq/L", "", "unknown_unit", "to", "°F"),
        ("7 L", "kg", "", "unknown_unit", "value", "kg"),
        ("7", "mL", "", "unit_missing", "value", "US gal"),
        ("seven L", "mL", "", "not_a_number", "value", "seven L"),
        ("7 dKH", "meq/L", "hardness", "unknown_parameter", "parameter", "alkalinity"),
    ],
)
def test_refused_conversions(
    tmp_path: Path, value: str, to: str, parameter: str, code: str, path: str, words: str
) -> None:
    said = convert(tmp_path, value, to, parameter)
    assert said.status == 3
    assert said.codes == [(code, path)]
    assert words.replace("\u00a0", " ") in said.words


@pytest.mark.parametrize(
    ("field", "value", "code"),
    [("salinity", "four", "not_a_number"), ("salinity", "90", "out_of_range"), ("temperature", "25", "unit_missing")],
)
def test_water_that_cannot_be_read(tmp_path: Path, field: str, value: str, code: str) -> None:
    said = convert(tmp_path, "400 mg/kg", "mg/L", "calcium", **{field: value})
    assert said.status == 3
    assert said.codes == [(code, field)]


def test_text_of_a_conversion(tmp_path: Path) -> None:
    said = ask(tmp_path, 'kind = "convert"\nvalue = "140 ppm as CaCO3"\nto = "dKH"\nparameter = "alkalinity"', "--text")
    assert said.out == "7.84403 dKH\n"
