"""Published conversions, asked as question files; the rows of tests/published with their sources, and a few more."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.headless.test_convert import result
from tests.published.rows import Row, rows

UNITS = {row.id: row for row in rows("units")}
# Fields admit salinities of seawater only; the rows for pure water are met by the density itself.
DENSITIES = [row for row in rows("density") if (row.inputs.get("S_P") or row.inputs.get("S") or 0)]


def meets(row: Row, figure: float, expected: float) -> None:
    allowed = row.tolerance if row.differs is None else float(str(row.differs["by_at_most"]))
    assert abs(figure - expected) <= allowed * (1 + 1e-9), f"{row.id}: {figure} against {expected} ({row.source})"


def named(row: Row, name: str = "") -> float:
    """Return a published figure of a row."""
    return float(row.expected[name] if not isinstance(row.expected, int | float) else row.expected)


@pytest.mark.parametrize(
    ("row", "name", "value", "unit", "to"),
    [
        ("unit.dkh_meq", "", 1.0, "dKH", "meq/L"),
        ("unit.meq_dkh", "", 1.0, "meq/L", "dKH"),
        ("unit.rd1", "mg_CaCO3_L", 1.0, "dKH", "ppm as CaCO3"),
        ("unit.rd1", "mval_L", 1.0, "dKH", "meq/L"),
        ("unit.rd3", "°dH", 1.0, "meq/L", "dKH"),
        ("unit.rd3.caco3", "mg_CaCO3_L", 1.0, "meq/L", "ppm as CaCO3"),
        ("unit.rd4", "", 1.0, "dKH", "ppm as CaCO3"),
    ],
)
def test_scales_of_alkalinity(tmp_path: Path, row: str, name: str, value: float, unit: str, to: str) -> None:
    meets(UNITS[row], result(tmp_path, value, unit, to, "alkalinity"), named(UNITS[row], name))


@pytest.mark.parametrize("row", ["unit.ppm_mgL", "unit.ppm_mgL_412"])
def test_mass_per_litre(tmp_path: Path, row: str) -> None:
    value = UNITS[row].number("mg_kg")
    meets(UNITS[row], result(tmp_path, value, "mg/kg", "mg/L", "calcium"), named(UNITS[row]))


@pytest.mark.parametrize("row", DENSITIES, ids=lambda row: row.id)
def test_mass_per_litre_is_the_published_density(tmp_path: Path, row: Row) -> None:
    salinity = row.inputs.get("S_P") or row.inputs.get("S")
    temperature = row.inputs.get("T_C") or row.inputs.get("t68_C")
    water = {"salinity": f"{salinity}", "temperature": f"{temperature} degC"}
    # A thousand milligrams per kilogram are as many milligrams per litre as a litre weighs grams.
    meets(row, result(tmp_path, 1000.0, "mg/kg", "mg/L", "magnesium", **water), named(row))


def test_there_are_enough_densities() -> None:
    assert len(DENSITIES) >= 5


MORE = [
    # value, unit, to, parameter, published, tolerance, source
    (1.0, "US gal", "L", "", 3.785411784, 1e-12, "US liquid gallon, 231 cubic inches; NIST Handbook 44, appendix C"),
    (1.0, "imperial gal", "L", "", 4.54609, 1e-12, "UK Units of Measurement Regulations 1995"),
    (1.0, "lb", "g", "", 453.59237, 1e-9, "international avoirdupois pound; NIST Handbook 44, appendix C"),
    (1.0, "oz", "g", "", 28.349523125, 1e-9, "a sixteenth of the pound; NIST Handbook 44, appendix C"),
    (25.0, "US gal", "mL", "", 65.7 * 1440, 72.0, "feed pump arithmetic, 25 gallons a day are 65.7 mL/min"),
    (9.0, "US gal", "mL", "", 24.0 * 1440, 720.0, "feed pump arithmetic, 9 gallons a day are 24 mL/min"),
    (40.6, "meq/L", "dKH", "alkalinity", 113.836, 1.138, "Bates, Bower and Smith 1956: saturated limewater at 25 degC"),
    (399.106, "mg/kg", "mg/L", "potassium", 408.42, 0.123, "Millero et al. 2008 with the TEOS-10 density at 25 degC"),
    (1283.717, "mg/kg", "mg/L", "magnesium", 1313.7, 0.4, "Millero et al. 2008 with the TEOS-10 density at 25 degC"),
    (10.0, "mg/L as N", "mg/L as NO3", "nitrate", 44.3, 0.05, "World Health Organization: 50 mg/L NO3 are 11.3 mg/L N"),
    (50.0, "mg/L as NO3", "mg/L as N", "nitrate", 11.3, 0.05, "World Health Organization: 50 mg/L NO3 are 11.3 mg/L N"),
    (1.0, "mg/L as P", "mg/L as PO4", "phosphate", 3.066, 0.001, "CIAAW 2021 atomic weights"),
]


@pytest.mark.parametrize(
    ("value", "unit", "to", "parameter", "published", "tolerance", "source"), MORE, ids=lambda part: str(part)[:24]
)
def test_more_published_conversions(
    tmp_path: Path, value: float, unit: str, to: str, parameter: str, published: float, tolerance: float, source: str
) -> None:
    assert result(tmp_path, value, unit, to, parameter) == pytest.approx(published, abs=tolerance, rel=0.0), source
