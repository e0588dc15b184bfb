"""What building skeleton takes out: calcium and alkalinity in the ratio of calcium carbonate."""

from __future__ import annotations

import pytest

from evenwater.engine.caps import calcium_per_meq
from evenwater.engine.quantities import from_canonical, to_canonical
from tests.published.rows import Row, catalogue, check, rows

EXERCISED = rows("calcification")

_DAYS_PER_YEAR = 365.25


def _figure(row: Row) -> float:
    match row.id:
        case "unit.meq_ca" | "calc.ca_per_meq":
            return calcium_per_meq()
        case "unit.dkh_ca":
            return to_canonical(1.0, "alkalinity", "dKH") * calcium_per_meq()
        case "calc.caco3_per_meq":
            return from_canonical(1.0, "alkalinity", "ppm as CaCO3")
        case "calc.dkh_per_20ca":
            return from_canonical(20.0 / calcium_per_meq(), "alkalinity", "dKH")
    mg_per_day = row.number("kg_m2_yr") * 1e6 / _DAYS_PER_YEAR
    return to_canonical(mg_per_day, "alkalinity per day", "ppm as CaCO3 per day")


@pytest.mark.parametrize("row", EXERCISED, ids=lambda row: row.id)
def test_calcification_takes_the_published_amounts(row: Row) -> None:
    check(row, _figure(row))


def test_limewater_gives_back_calcium_and_alkalinity_as_skeleton_takes_them() -> None:
    lime = catalogue().chemicals["calcium hydroxide"]
    assert lime.per_gram("calcium") / lime.per_gram("alkalinity") == pytest.approx(calcium_per_meq(), rel=1e-12)
