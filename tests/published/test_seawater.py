"""Natural seawater: its composition in the parameter file, and its density."""

from __future__ import annotations

import pytest

from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import Water, density_kg_per_l, from_canonical
from tests.published.rows import Row, catalogue, check, rows

COMPOSITION = rows("seawater")
DENSITY = rows("density")
EXERCISED = COMPOSITION + DENSITY

SYMBOL = {"calcium": "Ca", "magnesium": "Mg", "potassium": "K", "strontium": "Sr"}
NATURAL = Water(35.0, 25.0)


def _natural(row: Row) -> float:
    """Return the parameter's natural value in the unit of the row."""
    parameter = catalogue().parameters[row.word("parameter")]
    value = parameter.canonical(parameter.natural)
    match row.unit:
        case "mg/L":
            return value
        case "mg/kg":
            return from_canonical(value, parameter.kind, "mg/kg", NATURAL)
        case "mol/kg":
            mg_per_kg = from_canonical(value, parameter.kind, "mg/kg", NATURAL)
            return mg_per_kg / 1000.0 / molar_mass(SYMBOL[parameter.name])
        case "mmol/kg":
            return value / density_kg_per_l(NATURAL)
    raise AssertionError(row.unit)


@pytest.mark.parametrize("row", COMPOSITION, ids=lambda row: row.id)
def test_natural_value_is_that_of_published_seawater(row: Row) -> None:
    check(row, _natural(row))


@pytest.mark.parametrize("row", DENSITY, ids=lambda row: row.id)
def test_density_is_the_published_one(row: Row) -> None:
    """Temperatures on the scale of 1968 are taken as they stand: they differ by 0.006 at 25 degC."""
    salinity = next((row.number(name) for name in ("S_P", "S") if name in row.inputs), 0.0)
    temperature = next(row.number(name) for name in ("T_C", "t68_C") if name in row.inputs)
    scale = {"kg/L": 1.0, "kg/m3": 1000.0}[row.unit]
    check(row, scale * density_kg_per_l(Water(salinity, temperature)))
