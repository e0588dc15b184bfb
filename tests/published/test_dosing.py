"""Dosing arithmetic of water works and pools, done with the product's units and its dose jump."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from evenwater.engine.balance import pulse
from evenwater.engine.formula import molar_mass
from evenwater.engine.quantities import from_canonical, to_canonical
from evenwater.engine.stock import Dissolved, carried_per_ml, moles_per_ml
from tests.published.rows import Figures, Row, catalogue, check, rows, where

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


def _strength(row: Row) -> float:
    """Return what a gallon of a solution known by mass percent and density holds [lb]."""
    share, density = row.number("pct"), row.number("SG")
    solution = replace(catalogue().chemicals["sodium chloride"], solubility=((20.0, share),), density=(share, density))
    grams_per_litre = solution.most_per_litre(20.0)
    assert grams_per_litre is not None
    return from_canonical(grams_per_litre * _litres(1.0), "mass", "lb")


def _stock(row: Row) -> float:
    """Return the strength of a stock [mg/mL] of a salt that is nothing but nitrate."""
    salt = replace(catalogue().chemicals["sodium nitrate"], formula="NO3", dry="NO3", carries=(("NO3", 1.0),))
    grams = to_canonical(row.number("mg"), "mass", "mg")
    return carried_per_ml(Dissolved(salt, grams, to_canonical(row.number("mL"), "volume", "mL")), "nitrate")


def _titrated(row: Row) -> float:
    """Return the alkalinity [mg/L as CaCO3] that an acid of so many meq/mL meets in a sample."""
    meq_per_l = pulse(row.number("A_mL"), row.number("N"), to_canonical(row.number("V_mL"), "volume", "mL"))
    return from_canonical(meq_per_l, "alkalinity", "ppm as CaCO3")


def _molarity(row: Row) -> float:
    acid = replace(catalogue().chemicals["sodium chloride"], formula=row.word("formula"), carries=(("H", 1.0),))
    litres = to_canonical(row.number("V_mL"), "volume", "mL")
    return moles_per_ml(Dissolved(acid, row.number("m_g"), litres, row.number("P")), "H")


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
    "feed.sg1": _strength,
    "feed.sg3": _strength,
    "feed.polymer": _stock,
    "unit.rd6": _titrated,
    "unit.meq_identity": _titrated,
    "quam.A2": _molarity,
}


@pytest.mark.parametrize("row", EXERCISED, ids=lambda row: row.id)
def test_dose_is_the_published_one(row: Row) -> None:
    check(row, FIGURES[row.id](row))
