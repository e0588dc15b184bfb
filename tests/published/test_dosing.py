"""Dosing arithmetic of water works and pools, done with the product's units and its dose jump."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from evenwater.engine.balance import pulse
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import from_canonical, to_canonical
from tests.published.rows import Figures, Row, check, rows, where

EXERCISED = rows("dosing")

_MINUTES_PER_DAY = 1440.0


def _litres(us_gallons: float) -> float:
    return to_canonical(us_gallons, "volume", "US gal")


def _millilitres(us_gallons: float) -> float:
    return from_canonical(_litres(us_gallons), "volume", "mL")


def _pounds(million_gallons: float, mg_per_l: float, strength: float = 1.0) -> float:
    """Return the pounds of a product of some strength that lift a volume by so much."""

    def rise(pounds: float) -> float:
        milligrams = from_canonical(to_canonical(pounds, "mass", "lb"), "mass", "mg")
        return pulse(1.0, milligrams * strength, _litres(million_gallons * 1e6))

    return where(rise, mg_per_l, 0.0, 1e6)


def _gallons_of(percent_in_volume: float, gallons: float, mg_per_l: float) -> float:
    """Return the gallons of a solution of some grams per 100 mL that lift a volume by so much."""
    per_ml = percent_in_volume * 10.0
    return where(lambda dose: pulse(_millilitres(dose), per_ml, _litres(gallons)), mg_per_l, 0.0, 1e5)


def _upkeep(row: Row) -> float:
    """Return the upkeep [mL per day] that makes good the use in the row."""
    rise = to_canonical(row.number("dKH_d"), "alkalinity", "dKH")
    per_ml = row.number("stock_meq_L") / 1000.0
    return where(lambda dose: pulse(dose, per_ml, row.number("V_L")), rise, 0.0, 1e4)


def _chlorine(row: Row) -> float:
    as_chlorine = row.number("pct_wv") * 10.0 * molar_mass("Cl2") / molar_mass("NaClO")
    return pulse(row.number("L_solution") * 1000.0, as_chlorine, _litres(row.number("gal_water")))


def _per_minute(row: Row) -> float:
    litres_per_minute = _litres(row.number("MGD") * 1e6) / _MINUTES_PER_DAY
    return where(lambda dose: pulse(dose, row.number("mg_mL"), litres_per_minute), row.number("mg_L"), 0.0, 1e5)


def _diluted(row: Row) -> float:
    return where(lambda dose: pulse(dose, row.number("C1"), row.number("V2")), row.number("C2"), 0.0, 100.0)


def _spread_over(row: Row) -> float:
    return where(lambda volume: pulse(row.number("V1"), 1.0, volume), row.number("pct") / 100.0, 1.0, 1e6)


def _gallons(row: Row) -> float:
    return _gallons_of(row.number("pct_wv"), row.number("gal"), row.number("mg_L"))


FIGURES: dict[str, Callable[[Row], Figures]] = {
    "feed.tool1": _upkeep,
    "feed.vccs1": lambda row: _pounds(row.number("MGD"), row.number("mg_L")),
    "feed.wwc1": lambda row: _pounds(row.number("MGD"), row.number("mg_L")),
    "feed.mc1": lambda row: _pounds(row.number("MG"), row.number("ppm")),
    "feed.mc2": lambda row: _pounds(row.number("MG"), row.number("ppm")),
    "feed.awm1": lambda row: {"pure_lb": _pounds(row.number("MG"), row.number("ppm"))},
    "feed.awm2": lambda row: _pounds(row.number("MGD"), row.number("mg_L"), row.number("strength")),
    "feed.awm3": lambda row: _pounds(row.number("MGD"), row.number("mg_L"), row.number("strength")),
    "feed.spell1": lambda row: _millilitres(row.number("gpd")) / _MINUTES_PER_DAY,
    "feed.spell2": lambda row: _millilitres(row.number("gpd")) / _MINUTES_PER_DAY,
    "feed.ca1": _chlorine,
    "feed.ks1": lambda row: {"gal": _gallons(row)},
    "feed.ks2": lambda row: {"qt": 4.0 * _gallons(row)},
    "feed.abc_mlmin": _per_minute,
    "feed.c1v1": _diluted,
    "feed.conc": _spread_over,
}


@pytest.mark.parametrize("row", EXERCISED, ids=lambda row: row.id)
def test_dose_is_the_published_one(row: Row) -> None:
    check(row, FIGURES[row.id](row))
