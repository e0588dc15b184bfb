"""The scales of alkalinity, mass per litre against mass per kilogram, and units that laws define."""

from __future__ import annotations

import pytest

from evenwater.engine.quantities import Water, density_kg_per_l, from_canonical, to_canonical
from tests.published.rows import Figures, Row, check, rows

EXERCISED = rows("units")

WATER = Water(35.0, 25.0)


def _alkalinity(value: float, unit: str, to: str) -> float:
    return from_canonical(to_canonical(value, "alkalinity", unit), "alkalinity", to)


def _litre_from_kg(mg_per_kg: float) -> float:
    return to_canonical(mg_per_kg, "ion", "mg/kg", WATER)


def _figures(row: Row) -> Figures:
    match row.id:
        case "unit.dkh_meq":
            return _alkalinity(1.0, "dKH", "meq/L")
        case "unit.meq_dkh":
            return _alkalinity(1.0, "meq/L", "dKH")
        case "unit.rd1":
            degrees = row.number("°dH")
            return {
                "mg_CaCO3_L": _alkalinity(degrees, "dKH", "ppm as CaCO3"),
                "mval_L": _alkalinity(degrees, "dKH", "meq/L"),
            }
        case "unit.rd3":
            return {"°dH": _alkalinity(row.number("meq_L"), "meq/L", "dKH")}
        case "unit.rd3.caco3":
            return {"mg_CaCO3_L": _alkalinity(row.number("meq_L"), "meq/L", "ppm as CaCO3")}
        case "unit.rd4":
            return _alkalinity(row.number("dKH"), "dKH", "ppm as CaCO3")
        case "unit.ppm_mgL" | "unit.ppm_mgL_412":
            return _litre_from_kg(row.number("mg_kg"))
        case "unit.ta_umolkg":
            meq_per_l = row.number("TA") / 1000.0 * density_kg_per_l(WATER)
            return {"meq_L": meq_per_l, "dKH": _alkalinity(meq_per_l, "meq/L", "dKH")}
    canonical = to_canonical(row.number("value"), row.word("kind"), row.word("from"), WATER)
    return from_canonical(canonical, row.word("kind"), row.word("to"), WATER)


@pytest.mark.parametrize("row", EXERCISED, ids=lambda row: row.id)
def test_unit_conversion_is_the_published_one(row: Row) -> None:
    check(row, _figures(row))
